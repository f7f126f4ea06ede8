//! From a readings file to a case: TOML, or JSON of the same shape.
//!
//! ```toml
//! [system]
//! refrigerant = "R-134a"
//! expansion = "txv"                  # or orifice-tube
//! compressor = "fixed-clutch"        # variable-internal, variable-external, electric
//! nominal_charge = "850 g"           # optional, from the label
//!
//! [conditions]
//! ambient = "74 °F"
//! altitude = "1600 m"                # or barometer = "83.5 kPa abs"
//! humidity = "30 %"                  # this and the rest: optional, and each makes the answer sharper
//! engine_speed = "1500 rpm"          # "0 rpm" when the system stands still
//! air_source = "recirculated"        # or fresh
//! blower = "100 %"
//! vehicle_speed = "0 km/h"
//! running = "12 min"
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
//! ```
//!
//! A quantity is text with its unit, and a pressure says its datum; what cannot be read is refused with its key, its
//! value and what to write instead, and nothing is guessed. An unknown key is refused too, for a misspelt reading is a
//! missing one.

mod case;
mod counts;
mod own_table;
mod refusal;
mod tree;
mod trial;

pub use counts::{counts_from_toml, counts_to_toml};
pub use refusal::Refusal;
pub use trial::Trial;

use crate::diagnosis::Case;
use alloc::string::ToString;
use serde_json::Value;

/// The case that a readings file in TOML describes.
///
/// Errors: a [`Refusal`] that names the key, the value and what to write instead.
///
/// ```
/// let case = coldloop::intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// assert_eq!(case.system.refrigerant, coldloop::Refrigerant::R134a);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn case_from_toml(text: &str) -> Result<Case, Refusal> {
    let value: Value = toml::from_str(text).map_err(|error| Refusal::syntax(error.to_string().trim_end()))?;
    case::case(&tree::Table::root(&value)?)
}

/// The case that a readings file in JSON describes; the shape is that of the TOML file.
///
/// Errors: a [`Refusal`] that names the key, the value and what to write instead.
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
    let value: Value = serde_json::from_str(text).map_err(|error| Refusal::syntax(&error.to_string()))?;
    case::case(&tree::Table::root(&value)?)
}

/// The vehicle, conditions and faults that a text in JSON asks to simulate.
///
/// `system` and `conditions` are those of a readings file; `vehicle` names the class of the vehicle (`car` where it is
/// left out) and `faults` gives each fault its severity as [`FaultSeverity::new`](crate::vehicle::FaultSeverity::new)
/// means it, or the other refrigerant for a wrong one.
///
/// Errors: a [`Refusal`] that names the key, the value and what to write instead.
///
/// ```
/// use coldloop::{intake, vehicle::simulate};
/// let trial = intake::trial_from_json(r#"{
///     "vehicle": { "class": "van" },
///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal" },
///     "conditions": { "ambient": "30 °C", "altitude": "1600 m" },
///     "faults": { "undercharge": "40 %" }
/// }"#)?;
/// let read = simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
/// assert!(read.subcooling_k < 2.0);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn trial_from_json(text: &str) -> Result<Trial, Refusal> {
    let value: Value = serde_json::from_str(text).map_err(|error| Refusal::syntax(&error.to_string()))?;
    trial::trial(&tree::Table::root(&value)?)
}
