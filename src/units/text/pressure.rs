//! Pressures as text, each with its datum.

use super::scan::{Unit, scan};
use super::{Row, fraction, row};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use crate::range::{ABSOLUTE_PRESSURE, GAUGE_PRESSURE, VACUUM};
use crate::units::constants::{ATMOSPHERE_PA, INHG_PA, KGF_CM2_PA, MICRON_PA, MMHG_PA, PSI_PA};
use crate::units::{AbsolutePressure, GaugePressure, Pressure, PressureDifference};

const UNITS: [Row; 12] = [
    row(
        &[
            "psi",
            "lb/in2",
            "lbs/in2",
            "lbf/in2",
            "lb/sqin",
            "lbf/sqin",
            "poundspersquareinch",
        ],
        PSI_PA,
    ),
    row(&["kpa", "kilopascal", "kilopascals"], 1_000.0),
    row(&["bar", "bars"], 100_000.0),
    row(&["mpa", "megapascal", "megapascals"], 1_000_000.0),
    row(&["pa", "pascal", "pascals"], 1.0),
    row(
        &["inhg", "inchhg", "incheshg", "\"hg", "inchesofmercury", "inchmercury"],
        INHG_PA,
    ),
    row(&["mmhg", "mmofmercury"], MMHG_PA),
    fraction(&["torr"], ATMOSPHERE_PA, 760.0),
    row(
        &["kg/cm2", "kgf/cm2", "kgcm2", "kgfcm2", "kp/cm2", "kg/sqcm"],
        KGF_CM2_PA,
    ),
    row(&["mbar", "millibar", "millibars", "hpa", "hectopascal"], 100.0),
    row(&["atm", "atmosphere", "atmospheres"], ATMOSPHERE_PA),
    row(&["cmhg"], 10.0 * MMHG_PA),
];

/// Units that are written of deep vacuum only and count from nothing.
const VACUUM_UNITS: [Row; 2] = [
    row(
        &[
            "micron",
            "microns",
            "umhg",
            "um",
            "micronhg",
            "micronshg",
            "micronsofmercury",
        ],
        MICRON_PA,
    ),
    fraction(&["mtorr", "millitorr"], ATMOSPHERE_PA, 760_000.0),
];

#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Datum {
    Absolute,
    Gauge,
    Vacuum,
    Unsaid,
}

fn datum(suffix: &[u8]) -> Option<Datum> {
    match suffix {
        b"a" | b"abs" | b"absolute" => Some(Datum::Absolute),
        b"g" | b"gauge" | b"gage" | b"ga" | b"gaug" => Some(Datum::Gauge),
        b"v" | b"vac" | b"vacuum" | b"vacuumgauge" | b"vacuumgage" | b"ofvacuum" => Some(Datum::Vacuum),
        b"" => Some(Datum::Unsaid),
        _ => None,
    }
}

/// The first unit of `rows` that the text starts with and that leaves a datum.
fn unit_and_datum<'r>(unit: &Unit, rows: &'r [Row]) -> Option<(&'r Row, Datum)> {
    rows.iter().find_map(|row| {
        let datum = row.spellings.iter().find_map(|spelling| datum(unit.after(spelling)?))?;
        Some((row, datum))
    })
}

/// A unit of pressure and its datum; a vacuum in microns counts from nothing.
pub(super) fn unit_of(unit: &Unit) -> Option<(&'static Row, Datum)> {
    unit_and_datum(unit, &UNITS).or_else(|| match unit_and_datum(unit, &VACUUM_UNITS)? {
        (row, Datum::Unsaid) => Some((row, Datum::Unsaid)),
        (row, Datum::Absolute | Datum::Vacuum) => Some((row, Datum::Absolute)),
        (_, Datum::Gauge) => None,
    })
}

/// A pressure with its datum: `"35 psig"`, `"2.4 bar gauge"`, `"101.3 kPa abs"`, `"18 inHg vacuum"`, `"500 micron"`.
///
/// A vacuum counts downwards from the surrounding air, except in microns (and millitorr), which count from nothing.
///
/// Errors: `MissingDatum` when the text does not say gauge, absolute or vacuum; `NotANumber`, `NotFinite`,
/// `DecimalComma`, `MissingUnit`, `UnknownUnit`; `OutOfRange` outside [`ABSOLUTE_PRESSURE`], [`GAUGE_PRESSURE`],
/// [`VACUUM`].
///
/// ```
/// use coldloop::units::{AbsolutePressure, GaugePressure, text};
/// assert_eq!(text::pressure("2.4 bar gauge"), Ok(GaugePressure::from_pa(240_000.0).into()));
/// assert_eq!(text::pressure("101.3 kPa abs"), Ok(AbsolutePressure::from_pa(101_300.0).into()));
/// assert_eq!(text::pressure("50 kPa vacuum"), Ok(GaugePressure::from_pa(-50_000.0).into()));
/// ```
pub fn pressure(text: &str) -> Result<Pressure, Error> {
    let (number, unit, _) = scan(text, Quantity::GaugePressure)?;
    if unit.is_empty() {
        return Err(Error::of(ErrorKind::MissingUnit, Quantity::GaugePressure));
    }
    let absolute = |row: &Row| {
        ABSOLUTE_PRESSURE
            .check(row.si(number))
            .map(|pa| AbsolutePressure::from_pa(pa).into())
    };
    let gauge = |pa: f64| GaugePressure::from_pa(pa).into();
    let unknown = Error::of(ErrorKind::UnknownUnit, Quantity::GaugePressure);
    if let Some((row, datum)) = unit_and_datum(&unit, &UNITS) {
        let pa = row.si(number);
        return match datum {
            Datum::Absolute => absolute(row),
            Datum::Gauge => GAUGE_PRESSURE.check(pa).map(gauge),
            Datum::Vacuum => VACUUM.check(-pa).map(gauge),
            Datum::Unsaid => Err(Error::of(ErrorKind::MissingDatum, Quantity::GaugePressure)),
        };
    }
    match unit_and_datum(&unit, &VACUUM_UNITS) {
        Some((row, Datum::Absolute | Datum::Vacuum | Datum::Unsaid)) => absolute(row),
        Some((_, Datum::Gauge)) | None => Err(unknown),
    }
}

/// A pressure that must be absolute, a barometer's for one: `"101.3 kPa abs"`, `"29.92 inHg abs"`.
///
/// Errors: as [`pressure`]; `UnknownUnit` when the datum is gauge or vacuum.
pub fn absolute_pressure(text: &str) -> Result<AbsolutePressure, Error> {
    match pressure(text)? {
        Pressure::Absolute(pressure) => Ok(pressure),
        Pressure::Gauge(_) => Err(Error::of(ErrorKind::UnknownUnit, Quantity::AbsolutePressure)),
    }
}

/// A pressure that must be gauge or vacuum: `"35 psig"`, `"18 inHg vacuum"`.
///
/// Errors: as [`pressure`]; `UnknownUnit` when the datum is absolute.
pub fn gauge_pressure(text: &str) -> Result<GaugePressure, Error> {
    match pressure(text)? {
        Pressure::Gauge(pressure) => Ok(pressure),
        Pressure::Absolute(_) => Err(Error::of(ErrorKind::UnknownUnit, Quantity::GaugePressure)),
    }
}

/// How far two pressures lie apart, which has no datum: `"2 psi"`, `"1 kPa"`, `"10 micron"`.
///
/// Errors: as [`pressure`], `MissingDatum` apart; `UnknownUnit` when a datum is said; `OutOfRange` outside
/// [`ABSOLUTE_PRESSURE`].
///
/// ```
/// use coldloop::units::{PressureDifference, text};
/// assert_eq!(text::pressure_difference("1.5 kPa"), Ok(PressureDifference::from_kpa(1.5)));
/// assert!(text::pressure_difference("1.5 kPa gauge").is_err());
/// ```
pub fn pressure_difference(text: &str) -> Result<PressureDifference, Error> {
    let (number, unit, _) = scan(text, Quantity::AbsolutePressure)?;
    if unit.is_empty() {
        return Err(Error::of(ErrorKind::MissingUnit, Quantity::AbsolutePressure));
    }
    match unit_and_datum(&unit, &UNITS).or_else(|| unit_and_datum(&unit, &VACUUM_UNITS)) {
        Some((row, Datum::Unsaid)) => ABSOLUTE_PRESSURE.check(row.si(number)).map(PressureDifference::from_pa),
        Some((_, Datum::Absolute | Datum::Gauge | Datum::Vacuum)) | None => {
            Err(Error::of(ErrorKind::UnknownUnit, Quantity::AbsolutePressure))
        }
    }
}
