//! From a readings file to a case: TOML, or JSON of the same shape.
//!
//! ```toml
//! [system]
//! refrigerant = "R-134a"
//! expansion = "txv"                  # or orifice-tube
//! compressor = "fixed-clutch"        # variable-internal, variable-external, electric
//! nominal_charge = "850 g"           # this and the rest: optional, from the label
//! low_port = "compressor"            # or evaporator
//! high_port = "liquid-line"          # or discharge-line
//! sight_glass = true                 # false: nobody is sent to look at it
//! high_cut_out = "27 bar gauge"      # where a switch or the control stops the compressor
//! evaporators = 1                    # or 2
//!
//! [conditions]
//! ambient = "74 °F"
//! altitude = "1600 m"                # or barometer = "83.5 kPa abs"
//! humidity = "30 %"                  # this and the rest: optional, and each makes the answer sharper
//! engine_speed = "1500 rpm"          # "0 rpm" when the engine is off; a compressor without a motor stands still then
//! compressor_running = true          # goes before the speeds: false when the compressor stands still
//! compressor_speed = "1900 rpm"      # this and the next: what a scan tool tells
//! fan_command = "50 %"
//! air_source = "recirculated"        # or fresh
//! blower = "100 %"
//! vehicle_speed = "0 km/h"
//! running = "12 min"
//! # commanded_displacement = "60 %"  # of a variable-external compressor
//!
//! [readings]                         # all optional
//! low_side = "37 psig"               # or { value = "37 psig", gauge = "digital" }
//! high_side = "172 psig"
//! vent = "40 °F"                     # or { value = "40 °F", thermometer = "pocket-dial" }
//! suction_line = "56 °F"
//! discharge_line = "150 °F"
//! liquid_line = "104 °F"
//! condenser_outlet = "105 °F"
//! cabin = "70 °F"
//! high_side_transducer = "174 psig"  # a scan tool's; stands in for a gauge, or is pooled with one that agrees
//! evaporator_sensor = "38 °F"        # a scan tool's
//! clutch_cycles = "3 /min"
//! gauge_zero_altitude = "0 m"        # where a sealed gauge was zeroed, when that was elsewhere
//!
//! [observations]                     # true or false, all optional
//! clutch_engaged = true
//!
//! [pressure_table]                   # optional: the vehicle's own pressures, instead of the general bands
//! rows = [
//!   { ambient = "70 °F", low_side = ["30 psig", "40 psig"], high_side = ["150 psig", "190 psig"] },
//!   { ambient = "90 °F", low_side = ["32 psig", "45 psig"], high_side = ["200 psig", "250 psig"] },
//! ]
//!
//! [settings]                         # optional: how to judge; numbers stand alone
//! named = 0.7                        # each as in `diagnosis::Settings`
//! stakes = { sound_part = 300 }      # what wrong answers cost, as in `diagnosis::Stakes`: thresholds follow from it
//! priors = { undercharge = 0.3 }
//! looks.undercharge = { oil_traces = 0.6 }
//! prices = { per_minute = 1.5, repairs.worn-compressor = { minutes = 150, money = 420 } }
//! language = "en"                    # of the page as text; or es
//! details = false                    # true: the page tells every figure, limit and caution in full
//! counts.cases = { undercharge = 14 }  # a shop's confirmed cases, as in `counts_from_toml`
//!
//! [[baseline]]                       # optional, any number: earlier visits at which this vehicle was sound
//! conditions = { ambient = "68 °F", altitude = "1600 m", humidity = "40 %", engine_speed = "1500 rpm" }
//! readings = { low_side = "31 psig", high_side = "148 psig", vent = "41 °F" }
//! ```
//!
//! What was done to the vehicle since may stand in the same file, and is judged by [`Visit::prove`]; all of it is optional:
//!
//! ```toml
//! [pressure_test]
//! gas = "nitrogen"                   # or refrigerant: the vapour of the system's own
//! start = "10 bar gauge"             # a digital manifold where no gauge is named
//! start_temperature = "26 °C"
//! end = "9.85 bar gauge"
//! end_temperature = "22 °C"
//! held = "60 min"
//! repeatability = "1 kPa"            # optional: how differently the same gauge is read twice
//! volume = "2.4 L"                   # optional: for a rate
//! allowed = "5 g/year"               # optional, of this gas; or "0.5 oz/yr"
//! label = "25 bar gauge"             # optional: the highest test pressure that the label allows
//!
//! [evacuation]
//! reached = "420 micron"             # or { value = "420 micron", within = "8 micron" }
//! coldest = "18 °C"                  # the ambient where it is left out
//!
//! [hold]
//! samples = [{ after = "0 min", pressure = "420 micron" }, { after = "20 min", pressure = "450 micron" }]
//! warmest = "24 °C"                  # the ambient where it is left out
//! volume = "2.4 L"                   # optional: for a rate
//! allowed = { rise = "50 micron", over = "10 min" }  # optional: the rise that is allowed once it has settled
//!
//! [charge]                           # against nominal_charge
//! tolerance = "15 g"                 # or "5 %"; 15 g or 5 %, whichever is more, where it is left out
//! recovered = "430 g"                # or { value = "430 g", within = "5 g" }
//! oil_recovered = "10 g"
//! oil_weighed_in = true              # whether `recovered` has the oil in it
//! evacuated = true
//! charged = "900 g"
//! hose = { volume = "40 cm3", temperature = "24 °C" }  # full of liquid, or with a pressure of vapour
//! left = { volume = "2.4 L", pressure = "20 kPa gauge" }
//! oil_added = "15 g"                 # or as poured: "20 ml", "1 fl oz"
//!
//! [pull_down]                        # in the conditions of [after], or of [conditions]
//! samples = [{ after = "1 min", vent = "24 °C" }, { after = "8 min", vent = "8 °C" }]
//!
//! [after.conditions]                 # the same vehicle after the repair, in the weather of that time
//! ambient = "26 °C"
//! altitude = "1600 m"
//!
//! [after.readings]
//! low_side = "225 kPa gauge"
//! ```
//!
//! A file may say of which version of the format it is, and carry what belongs to its owner; a session that is stored has two
//! more tables, and what was tried in vain counts in any file:
//!
//! ```toml
//! format = 1                         # a later one than this library knows is refused
//! [meta]                             # any keys; kept, and never judged
//! "work order" = "117"
//! [repairs]
//! done = ["undercharge"]             # `[after]` tells the vehicle after these
//! in_vain = ["overcharge"]           # what did not help was not the cause
//! [settings]
//! held = { check = "read-vent" }     # the step that somebody was sent to do; or repair = "undercharge", hand_over = true
//! [[undo]]                           # what was there before each step, the oldest first
//! step = { reading = "vent" }
//! conditions = { ambient = "24 °C", altitude = "1600 m" }
//! ```
//!
//! A reading may say how far it may be off instead of naming its instrument: `{ value = "37 psig", within = "1 psi" }`; a
//! pressure, a mass and a volume also in per cent of what was read: `{ value = "650 g", within = "1 %" }`. A reading that
//! comes out of a calculation says its standard uncertainty: `{ value = "37 psig", uncertainty = "0.4 psi" }`, as a
//! `barometer` may, too.
//!
//! A quantity is text with its unit, and a pressure says its datum; what cannot be read is refused with its key, its
//! value and what to write instead, and nothing is guessed. An unknown key is refused too, for a misspelt reading is a
//! missing one, and so is a key that stands twice. A [`Refusal`] tells all mistakes of a file, up to a dozen.
//!
//! A byte order mark before the text does not matter. A text above 4 MB is refused unread, unless a [`Limit`] says otherwise.

mod case;
mod confirmed;
mod counts;
mod evidence;
mod file;
mod instruments;
mod judged;
mod kept;
mod limit;
mod log_columns;
mod mistakes;
mod node;
mod own_readings;
mod own_table;
mod read_json;
mod read_toml;
mod refusal;
#[cfg(feature = "serde")]
mod serde_shape;
mod session;
mod settings;
mod shown;
mod tree;
mod trial;
mod visit;
mod work;
mod written;

pub use confirmed::{Cause, Confirmed, cases_of, confirmed_from_json, counts_from_cases};
pub use counts::{counts_from_toml, counts_to_toml};
pub use judged::Judgements;
pub(crate) use judged::proves;
pub use limit::Limit;
pub use log_columns::LogColumns;
pub use refusal::{Mistake, Position, Refusal};
pub use session::{
    SessionFile, session_from_json, session_from_text, session_from_toml, session_to_json, session_to_toml,
};
pub use trial::Trial;
pub use visit::Visit;
pub use written::readings_to_json;

use crate::diagnosis::{Case, Settings};
use crate::vehicle::System;
use alloc::boxed::Box;

/// The version of the formats: of readings files, which may say it as `format`, and of the answers, which do.
///
/// It grows where a program that knows the one before would misread something, and not where something is added.
pub const FORMAT: u32 = 1;

/// The case that a readings file in TOML describes.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
///
/// ```
/// let case = coldloop::intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// assert_eq!(case.system.refrigerant, coldloop::Refrigerant::R134a);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn case_from_toml(text: &str) -> Result<Case, Refusal> {
    visit_from_toml(text)?.whole().map(|visit| visit.case)
}

/// The case that a readings file in JSON describes; the shape is that of the TOML file.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
///
/// ```
/// let text = r#"{
///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
///     "conditions": { "ambient": "74 °F", "altitude": "1600 m" },
///     "readings": { "low_side": "37 psig", "high_side": "172 psig", "vent": "40 °F" }
/// }"#;
/// assert!(coldloop::intake::case_from_json(text)?.readings.vent.is_some());
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn case_from_json(text: &str) -> Result<Case, Refusal> {
    visit_from_json(text)?.whole().map(|visit| visit.case)
}

/// All that a readings file in TOML holds: the case, how to judge it, and what was done since.
///
/// A table of what was done that has a mistake in it is left out, and its mistakes stand in [`Visit::refused`], so that one bad
/// entry does not silence the other tables.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead, where the case or the
/// settings have one.
pub fn visit_from_toml(text: &str) -> Result<Box<Visit>, Refusal> {
    Limit::default().visit_from_toml(text)
}

/// The same from JSON of the same shape.
///
/// Errors: as [`visit_from_toml`].
pub fn visit_from_json(text: &str) -> Result<Box<Visit>, Refusal> {
    Limit::default().visit_from_json(text)
}

/// The same from a text of either kind: JSON starts with a brace, which no TOML does.
///
/// Errors: as [`visit_from_toml`].
///
/// ```
/// let file = include_str!("../../examples/readings/low-charge.toml");
/// assert_eq!(coldloop::intake::visit_from_text(file), coldloop::intake::visit_from_toml(file));
/// ```
pub fn visit_from_text(text: &str) -> Result<Box<Visit>, Refusal> {
    Limit::default().visit_from_text(text)
}

/// The system that a text of either kind describes; what else stands in it is not looked at.
///
/// Errors: as [`visit_from_toml`].
///
/// ```
/// let file = include_str!("../../examples/readings/low-charge.toml");
/// assert_eq!(coldloop::intake::system_from_text(file)?.expansion, coldloop::Expansion::Txv);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn system_from_text(text: &str) -> Result<System, Refusal> {
    Limit::default().system_from_text(text)
}

/// The settings that the `[settings]` of a readings file would hold, from a JSON object of that shape.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
///
/// ```
/// use coldloop::{Fault, intake};
/// let shop = intake::settings_from_json(r#"{ "named": 0.8, "priors": { "undercharge": 0.3 } }"#)?;
/// assert_eq!((shop.named, shop.prior(Fault::Undercharge)), (0.8, 0.3));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn settings_from_json(text: &str) -> Result<Settings, Refusal> {
    Limit::default().settings_from_json(text)
}

/// The vehicle, conditions and faults that a text in JSON asks to simulate.
///
/// `system` and `conditions` are those of a readings file; `vehicle` names the class of the vehicle (`car` where it is
/// left out) and `faults` gives each fault its severity as [`FaultSeverity::new`](crate::vehicle::FaultSeverity::new)
/// means it; for a wrong refrigerant its name, or how much of the charge it is and its name: `"30 % R-22"`.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
///
/// ```
/// use coldloop::{intake, units::kelvins_difference, vehicle::simulate};
/// let trial = intake::trial_from_json(r#"{
///     "vehicle": { "class": "van" },
///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal" },
///     "conditions": { "ambient": "30 °C", "altitude": "1600 m" },
///     "faults": { "undercharge": "40 %" }
/// }"#)?;
/// let read = simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
/// assert!(read.subcooling < kelvins_difference(2.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn trial_from_json(text: &str) -> Result<Trial, Refusal> {
    Limit::default().trial_from_json(text)
}

/// The same from TOML of the same shape, or from JSON: a text of either kind, as for [`visit_from_text`].
///
/// Errors: as [`trial_from_json`].
pub fn trial_from_text(text: &str) -> Result<Trial, Refusal> {
    Limit::default().trial_from_text(text)
}
