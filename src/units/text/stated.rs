//! The unit of an input text, so that errors can be stated in it.

use super::pressure::Datum;
use super::scan::scan;
use super::{Scale, find, per_cent, pressure, rows, scale};
use crate::error::{self, Error};
use crate::names::{ErrorKind, Quantity};
use core::fmt;

/// Longest unit that is repeated, in bytes; a longer one is mostly blanks.
const LONGEST: usize = 24;

const SHARES: [Quantity; 5] = [
    Quantity::RelativeHumidity,
    Quantity::BlowerSetting,
    Quantity::Displacement,
    Quantity::FanCommand,
    Quantity::Severity,
];

const TEMPERATURES: [Quantity; 2] = [Quantity::Temperature, Quantity::TemperatureDifference];

/// The unit of a text, as it was written.
///
/// ```
/// use coldloop::{Quantity, units::text::Stated};
/// let fahrenheit = Stated::of("74 °F", Quantity::Temperature).unwrap();
/// assert_eq!(fahrenheit.unit(), "°F");
/// assert!((fahrenheit.figure(310.927_777_8) - 100.0).abs() < 1e-6);
/// assert!(Stated::of("74 °F", Quantity::Mass).is_none());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stated<'t> {
    unit: &'t str,
    /// SI units in one of these.
    size: f64,
    /// The figure at an SI value of zero.
    zero: f64,
    /// Whether the figure counts from zero upwards, as that of a vacuum.
    from_zero: bool,
}

impl<'t> Stated<'t> {
    /// The unit of a text that states this quantity; `None` where it states none or another one.
    pub fn of(text: &'t str, quantity: Quantity) -> Option<Self> {
        let (_, unit, written) = scan(text, quantity).ok()?;
        let (size, zero, from_zero) = if let Some(rows) = rows(quantity) {
            (find(&unit, rows)?.si(1.0), 0.0, false)
        } else if let Some(datum) = datum(quantity) {
            match pressure::unit_of(&unit)? {
                (row, Datum::Vacuum) if datum == Datum::Gauge => (-row.si(1.0), 0.0, true),
                (row, written) if written == datum => (row.si(1.0), 0.0, false),
                (row, Datum::Unsaid) if datum == Datum::Absolute => (row.si(1.0), 0.0, false),
                (_, Datum::Absolute | Datum::Gauge | Datum::Vacuum | Datum::Unsaid) => return None,
            }
        } else if SHARES.contains(&quantity) && per_cent(&unit) {
            (0.01, 0.0, false)
        } else if TEMPERATURES.contains(&quantity) {
            let scale = scale(&unit, quantity).ok()?;
            let (size, zero) = match scale {
                Scale::Kelvin => (1.0, 0.0),
                Scale::Celsius => (1.0, -273.15),
                Scale::Fahrenheit => (5.0 / 9.0, -459.67),
                Scale::Rankine => (5.0 / 9.0, 0.0),
            };
            match quantity == Quantity::Temperature {
                true => (size, zero, false),
                false => (size, 0.0, false),
            }
        } else {
            return None;
        };
        (written.len() <= LONGEST).then_some(Self {
            unit: written,
            size,
            zero,
            from_zero,
        })
    }

    /// The unit as it was written.
    pub const fn unit(&self) -> &'t str {
        self.unit
    }

    /// The figure that a value in SI has in this unit.
    pub const fn figure(&self, si: f64) -> f64 {
        let figure = si / self.size + self.zero;
        if self.from_zero && figure < 0.0 { 0.0 } else { figure }
    }
}

/// The datum of the two quantities that are pressures.
fn datum(quantity: Quantity) -> Option<Datum> {
    if quantity == Quantity::AbsolutePressure {
        Some(Datum::Absolute)
    } else if quantity == Quantity::GaugePressure {
        Some(Datum::Gauge)
    } else {
        None
    }
}

/// An error, stated in the unit of the text that it is about.
///
/// ```
/// use coldloop::units::text::{Restated, temperature};
/// let error = temperature("4000 °F").unwrap_err();
/// let told = Restated { error, text: "4000 °F" };
/// assert_eq!(told.to_string(), "temperature 4000 °F is outside -459.67 °F to 3140.33 °F");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Restated<'t> {
    /// The error.
    pub error: Error,
    /// The text as it was written.
    pub text: &'t str,
}

impl fmt::Display for Restated<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { error, text } = *self;
        if error.kind == ErrorKind::OutOfRange
            && let Some(stated) = Stated::of(text, error.quantity)
        {
            let [value, low, high] = [error.value, error.low, error.high].map(|si| stated.figure(si));
            let figures = [value, low.min(high), low.max(high)];
            return error::outside(f, error.quantity, figures, stated.unit);
        }
        error.fmt(f)
    }
}
