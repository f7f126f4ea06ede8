//! Quantities as text: a number, a unit, and for a pressure its datum.
//!
//! Reading is strict, because a misread unit is a misdiagnosis: a unit is required, a pressure must say gauge, absolute
//! or vacuum, a comma is refused. It is lenient in spelling: case, spaces (also no-break ones), dots, brackets and
//! degree signs do not matter, but for `mPa`, which is not a megapascal. Nothing is allocated.
//!
//! ```
//! use coldloop::units::text;
//! assert_eq!(text::pressure("35 psig"), text::pressure("35 PSI (gauge)"));
//! assert_eq!(text::altitude_m("5250 ft")?, 1600.2);
//! # Ok::<(), coldloop::Error>(())
//! ```
//!
//! What cannot be read says what to write instead:
//!
//! ```
//! use coldloop::units::text;
//! let error = text::pressure("35 psi").unwrap_err();
//! assert_eq!(error.to_string(), "a pressure needs its datum: write psig or psia, \"kPa gauge\" or \"kPa abs\", inHg vacuum");
//! let error = text::temperature("23,3 °C").unwrap_err();
//! assert_eq!(error.to_string(), "a comma marks neither decimals nor thousands here: write 2.4 and 1500, not 2,4 and 1,500");
//! ```

mod pressure;
mod scan;
mod stated;
mod written;

pub use pressure::{absolute_pressure, gauge_pressure, pressure, pressure_difference};
pub use stated::{Restated, Stated};
pub use written::Written;

use super::constants::{FOOT_M, INCH_M, MILE_M, POUND_KG};
use super::{
    Frequency, Mass, RelativeHumidity, RotationalSpeed, Speed, Temperature, TemperatureDifference, TimeSpan, Volume,
    celsius, fahrenheit, kelvins, kelvins_difference,
};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use crate::range::{
    ALTITUDE, BLOWER, DISPLACEMENT, DURATION, FAN_COMMAND, FREQUENCY, MASS, RELATIVE_HUMIDITY, ROTATIONAL_SPEED, Range,
    SEVERITY,
};
use crate::range::{SPEED, TEMPERATURE, TEMPERATURE_DIFFERENCE, VOLTAGE, VOLUME};
use scan::{Unit, scan};

/// Spellings of one unit, normalised, and its size: a value times `size` over `over` is in SI.
struct Row {
    spellings: &'static [&'static str],
    size: f64,
    over: f64,
}

impl Row {
    const fn si(&self, number: f64) -> f64 {
        number * self.size / self.over
    }
}

const fn row(spellings: &'static [&'static str], size: f64) -> Row {
    Row {
        spellings,
        size,
        over: 1.0,
    }
}

const fn fraction(spellings: &'static [&'static str], size: f64, over: f64) -> Row {
    Row { spellings, size, over }
}

const ALTITUDES: [Row; 3] = [
    row(&["m", "metre", "metres", "meter", "meters"], 1.0),
    row(&["ft", "foot", "feet", "'"], FOOT_M),
    row(&["km", "kilometre", "kilometres", "kilometer", "kilometers"], 1_000.0),
];

const SPEEDS: [Row; 3] = [
    row(&["m/s", "mps"], 1.0),
    fraction(&["km/h", "kmh", "kph", "km/hr"], 1_000.0, 3_600.0),
    fraction(&["mph", "mi/h", "miles/h", "milesperhour", "mile/h"], MILE_M, 3_600.0),
];

const ROTATIONAL_SPEEDS: [Row; 2] = [
    row(&["1/s", "/s", "s1", "rps", "r/s", "rev/s", "hz"], 1.0),
    fraction(
        &[
            "rpm",
            "r/min",
            "rev/min",
            "revs/min",
            "1/min",
            "/min",
            "min1",
            "revolutionsperminute",
        ],
        1.0,
        60.0,
    ),
];

const MASSES: [Row; 4] = [
    row(&["kg", "kilogram", "kilograms"], 1.0),
    fraction(&["g", "gram", "grams", "gramme", "grammes"], 1.0, 1_000.0),
    row(&["lb", "lbs", "lbm", "pound", "pounds"], POUND_KG),
    fraction(&["oz", "ounce", "ounces"], POUND_KG, 16.0),
];

const VOLUMES: [Row; 6] = [
    row(&["m3"], 1.0),
    fraction(&["l", "litre", "litres", "liter", "liters", "dm3"], 1.0, 1_000.0),
    fraction(
        &[
            "ml",
            "cm3",
            "cc",
            "ccm",
            "millilitre",
            "millilitres",
            "milliliter",
            "milliliters",
        ],
        1.0,
        1_000_000.0,
    ),
    // A US fluid ounce is 1/128 of a gallon of 231 cubic inches. Source: NIST Special Publication 811 (2008), B.8.
    fraction(
        &["floz", "usfloz", "fluidounce", "fluidounces"],
        231.0 * INCH_M * INCH_M * INCH_M,
        128.0,
    ),
    row(&["in3", "cuin", "cubicinches"], INCH_M * INCH_M * INCH_M),
    row(&["ft3", "cuft", "cubicfeet"], FOOT_M * FOOT_M * FOOT_M),
];

const DURATIONS: [Row; 3] = [
    row(&["s", "sec", "secs", "second", "seconds"], 1.0),
    row(&["min", "mins", "minute", "minutes"], 60.0),
    row(&["h", "hr", "hrs", "hour", "hours"], 3_600.0),
];

const FREQUENCIES: [Row; 3] = [
    row(
        &["1/s", "/s", "hz", "pers", "persecond", "cycles/s", "cyclespersecond"],
        1.0,
    ),
    fraction(
        &[
            "/min",
            "1/min",
            "permin",
            "perminute",
            "cpm",
            "cycles/min",
            "cyclespermin",
            "cyclesperminute",
            "x/min",
        ],
        1.0,
        60.0,
    ),
    fraction(&["/h", "1/h", "perhour", "cycles/h", "cyclesperhour"], 1.0, 3_600.0),
];

const VOLTAGES: [Row; 3] = [
    row(&["v", "volt", "volts", "vdc"], 1.0),
    fraction(&["mv", "millivolt", "millivolts"], 1.0, 1_000.0),
    row(&["kv", "kilovolt", "kilovolts"], 1_000.0),
];

/// The value in SI of a number with a unit from `rows`, within `range`; and of two such in a row, as `1 lb 4 oz`.
fn read_in_two(text: &str, rows: &[Row], range: Range) -> Result<f64, Error> {
    let unknown = match read(text, rows, range) {
        Err(error) if error.kind == ErrorKind::UnknownUnit => error,
        told => return told,
    };
    let digit_after_unit = |(at, c): (usize, char)| c.is_ascii_digit() && text[..at].contains(char::is_alphabetic);
    let Some((at, _)) = text.char_indices().find(|&found| digit_after_unit(found)) else {
        return Err(unknown);
    };
    let (whole, part) = text.split_at(at);
    let (number, unit, _) = scan(whole, range.quantity)?;
    let (part_number, part_unit, _) = scan(part, range.quantity)?;
    let (Some(row), Some(part_row)) = (find(&unit, rows), find(&part_unit, rows)) else {
        return Err(unknown);
    };
    // The part counts in a smaller unit, and is less than one of the larger.
    if number < 0.0 || part_row.si(part_number) >= row.si(1.0) || part_row.si(1.0) >= row.si(1.0) {
        return Err(unknown);
    }
    range.check(row.si(number) + part_row.si(part_number))
}

/// The value in SI of a number with a unit from `rows`, within `range`.
fn read(text: &str, rows: &[Row], range: Range) -> Result<f64, Error> {
    let (number, unit, _) = scan(text, range.quantity)?;
    if unit.is_empty() {
        return Err(Error::of(ErrorKind::MissingUnit, range.quantity));
    }
    let row = find(&unit, rows).ok_or(Error::of(ErrorKind::UnknownUnit, range.quantity))?;
    range.check(row.si(number))
}

fn find<'r>(unit: &Unit, rows: &'r [Row]) -> Option<&'r Row> {
    rows.iter()
        .find(|row| row.spellings.iter().any(|spelling| unit.is(spelling)))
}

/// The units of a quantity that is a number of them; `None` for one that is read otherwise, or not at all.
fn rows(quantity: Quantity) -> Option<&'static [Row]> {
    match quantity {
        Quantity::Altitude => Some(&ALTITUDES),
        Quantity::Speed => Some(&SPEEDS),
        Quantity::RotationalSpeed => Some(&ROTATIONAL_SPEEDS),
        Quantity::Mass => Some(&MASSES),
        Quantity::Volume => Some(&VOLUMES),
        Quantity::Duration => Some(&DURATIONS),
        Quantity::Frequency => Some(&FREQUENCIES),
        Quantity::Voltage => Some(&VOLTAGES),
        Quantity::Temperature
        | Quantity::TemperatureDifference
        | Quantity::AbsolutePressure
        | Quantity::GaugePressure
        | Quantity::RelativeHumidity
        | Quantity::BlowerSetting
        | Quantity::Severity
        | Quantity::HumidityRatio
        | Quantity::Density
        | Quantity::Enthalpy
        | Quantity::Entropy
        | Quantity::Quality
        | Quantity::Probability
        | Quantity::Cost
        | Quantity::Name
        | Quantity::Residual
        | Quantity::Rows
        | Quantity::Displacement
        | Quantity::FanCommand
        | Quantity::Evaporators
        | Quantity::Size
        | Quantity::Viscosity
        | Quantity::Conductivity
        | Quantity::SurfaceTension => None,
    }
}

/// A temperature: `"74 °F"`, `"23.3 °C"`, `"296.5 K"`.
///
/// Errors: `NotANumber`, `NotFinite`, `DecimalComma`, `MissingUnit`, `UnknownUnit`; `OutOfRange` outside [`TEMPERATURE`].
///
/// ```
/// use coldloop::units::{fahrenheit, text};
/// for spelling in ["74 °F", "74F", "74 deg F", "74 degrees Fahrenheit", "74\u{a0}℉"] {
///     assert_eq!(text::temperature(spelling), Ok(fahrenheit(74.0)));
/// }
/// ```
pub fn temperature(text: &str) -> Result<Temperature, Error> {
    let (number, unit, _) = scan(text, Quantity::Temperature)?;
    let temperature = match scale(&unit, Quantity::Temperature)? {
        Scale::Kelvin => kelvins(number),
        Scale::Celsius => celsius(number),
        Scale::Fahrenheit => fahrenheit(number),
        Scale::Rankine => kelvins(number * 5.0 / 9.0),
    };
    TEMPERATURE.check(super::in_kelvins(temperature))?;
    Ok(temperature)
}

/// A temperature difference, superheat for one: `"5 K"`, `"9 °F"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`TEMPERATURE_DIFFERENCE`].
///
/// ```
/// use coldloop::units::{difference_in_kelvins, text};
/// assert_eq!(difference_in_kelvins(text::temperature_difference("9 °F")?), 5.0);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn temperature_difference(text: &str) -> Result<TemperatureDifference, Error> {
    let (number, unit, _) = scan(text, Quantity::TemperatureDifference)?;
    let kelvin = match scale(&unit, Quantity::TemperatureDifference)? {
        Scale::Kelvin | Scale::Celsius => number,
        Scale::Fahrenheit | Scale::Rankine => number * 5.0 / 9.0,
    };
    Ok(kelvins_difference(TEMPERATURE_DIFFERENCE.check(kelvin)?))
}

enum Scale {
    Kelvin,
    Celsius,
    Fahrenheit,
    Rankine,
}

fn scale(unit: &Unit, quantity: Quantity) -> Result<Scale, Error> {
    if unit.is_empty() {
        return Err(Error::of(ErrorKind::MissingUnit, quantity));
    }
    let any = |spellings: &[&str]| spellings.iter().any(|spelling| unit.is(spelling));
    if any(&["k", "kelvin", "kelvins", "degk"]) {
        Ok(Scale::Kelvin)
    } else if any(&[
        "c",
        "degc",
        "degreec",
        "degreesc",
        "celsius",
        "degcelsius",
        "degreescelsius",
        "centigrade",
    ]) {
        Ok(Scale::Celsius)
    } else if any(&[
        "f",
        "degf",
        "degreef",
        "degreesf",
        "fahrenheit",
        "degfahrenheit",
        "degreesfahrenheit",
    ]) {
        Ok(Scale::Fahrenheit)
    } else if any(&["r", "degr", "rankine", "degreesrankine"]) {
        Ok(Scale::Rankine)
    } else {
        Err(Error::of(ErrorKind::UnknownUnit, quantity))
    }
}

/// An altitude in metres: `"5250 ft"`, `"1600 m"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`ALTITUDE`].
pub fn altitude_m(text: &str) -> Result<f64, Error> {
    read(text, &ALTITUDES, ALTITUDE)
}

/// A relative humidity: `"40 %"`, or as a fraction of one without a unit, `"0.4"`.
///
/// Errors: as [`temperature`]; `MissingUnit` for a bare number above one, which may be meant in per cent.
///
/// ```
/// use coldloop::{ErrorKind, units::{RelativeHumidity, text}};
/// assert_eq!(text::relative_humidity("40 % RH"), Ok(RelativeHumidity::from_fraction(0.4)));
/// assert_eq!(text::relative_humidity("0.4"), text::relative_humidity("40 % RH"));
/// assert_eq!(text::relative_humidity("40").unwrap_err().kind, ErrorKind::MissingUnit);
/// ```
pub fn relative_humidity(text: &str) -> Result<RelativeHumidity, Error> {
    part_of_one(text, RELATIVE_HUMIDITY).map(RelativeHumidity::from_fraction)
}

/// A blower setting, 0 (off) to 1 (highest): `"75 %"`, or as a fraction of one without a unit, `"0.75"`.
///
/// Errors: as [`relative_humidity`].
pub fn blower_setting(text: &str) -> Result<f64, Error> {
    part_of_one(text, BLOWER)
}

/// A commanded displacement, 0 to 1 of the full one: `"60 %"`, or as a fraction of one without a unit, `"0.6"`.
///
/// Errors: as [`relative_humidity`].
pub fn commanded_displacement(text: &str) -> Result<f64, Error> {
    part_of_one(text, DISPLACEMENT)
}

/// A command of a fan, 0 (off) to 1 (full speed): `"50 %"`, or as a fraction of one without a unit, `"0.5"`.
///
/// Errors: as [`relative_humidity`].
pub fn fan_command(text: &str) -> Result<f64, Error> {
    part_of_one(text, FAN_COMMAND)
}

/// A severity of a fault, 0 (sound) to 1: `"40 %"`, or as a fraction of one without a unit, `"0.4"`.
///
/// Errors: as [`relative_humidity`].
pub fn severity(text: &str) -> Result<f64, Error> {
    part_of_one(text, SEVERITY)
}

/// A number in per cent, or one without a unit that cannot be meant so.
fn part_of_one(text: &str, range: Range) -> Result<f64, Error> {
    let (number, unit, _) = scan(text, range.quantity)?;
    let part = if per_cent(&unit) {
        number / 100.0
    } else if !unit.is_empty() {
        return Err(Error::of(ErrorKind::UnknownUnit, range.quantity));
    } else if number > 1.0 {
        return Err(Error::of(ErrorKind::MissingUnit, range.quantity));
    } else {
        number
    };
    range.check(part)
}

/// A share that is written in per cent, `"5 %"`; `None` for anything else.
#[cfg(feature = "report")]
pub(crate) fn share(text: &str) -> Option<f64> {
    let (number, unit, _) = scan(text, Quantity::Probability).ok()?;
    let known = per_cent(&unit) && (0.0..=100.0).contains(&number);
    known.then_some(number / 100.0)
}

fn per_cent(unit: &Unit) -> bool {
    ["%", "%rh", "percent", "percentrh", "pct"]
        .iter()
        .any(|spelling| unit.is(spelling))
}

/// A vehicle speed: `"50 km/h"`, `"30 mph"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`SPEED`].
pub fn speed(text: &str) -> Result<Speed, Error> {
    read(text, &SPEEDS, SPEED).map(Speed::from_m_s)
}

/// A speed of rotation: `"1500 rpm"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`ROTATIONAL_SPEED`].
pub fn rotational_speed(text: &str) -> Result<RotationalSpeed, Error> {
    read(text, &ROTATIONAL_SPEEDS, ROTATIONAL_SPEED).map(RotationalSpeed::from_hz)
}

/// A mass: `"650 g"`, `"1.4 lb"`, `"1 lb 4 oz"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`MASS`].
pub fn mass(text: &str) -> Result<Mass, Error> {
    read_in_two(text, &MASSES, MASS).map(Mass::from_kg)
}

/// A volume: `"2.1 L"`, `"90 cm3"`, `"0.07 cu ft"`, `"1 fl oz"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`VOLUME`].
///
/// ```
/// use coldloop::units::text;
/// assert!((text::volume("90 cm3")?.litres() - 0.09).abs() < 1e-15);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn volume(text: &str) -> Result<Volume, Error> {
    read(text, &VOLUMES, VOLUME).map(Volume::from_m3)
}

/// A duration: `"10 min"`, `"1 h 30 min"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`DURATION`].
pub fn duration(text: &str) -> Result<TimeSpan, Error> {
    read_in_two(text, &DURATIONS, DURATION).map(TimeSpan::from_seconds)
}

/// How often something happens: `"3 /min"`, `"3 cycles per minute"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`FREQUENCY`].
pub fn frequency(text: &str) -> Result<Frequency, Error> {
    read(text, &FREQUENCIES, FREQUENCY).map(Frequency::from_hz)
}

/// A voltage in volts: `"2.5 V"`.
///
/// Errors: as [`temperature`]; `OutOfRange` outside [`VOLTAGE`].
pub fn voltage_v(text: &str) -> Result<f64, Error> {
    read(text, &VOLTAGES, VOLTAGE)
}
