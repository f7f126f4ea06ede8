//! Quantities written so that reading them gives the same bits.

use crate::names::Quantity;
use crate::units::{AbsolutePressure, GaugePressure, Pressure};
use core::fmt;

/// A value in SI, written with its unit.
///
/// The number has as many digits as it takes to read the same value back, and no more.
///
/// ```
/// use coldloop::{Quantity, units::text::{Written, altitude_m}};
/// let written = Written { quantity: Quantity::Altitude, si: altitude_m("5250 ft")? }.to_string();
/// assert_eq!(written, "1600.2 m");
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Written {
    /// The quantity.
    pub quantity: Quantity,
    /// Its value in SI.
    pub si: f64,
}

impl fmt::Display for Written {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let datum = if self.quantity == Quantity::AbsolutePressure {
            " abs"
        } else {
            ""
        };
        write!(f, "{}{}{datum}", self.si, self.quantity.unit())
    }
}

/// `"101325 Pa abs"`.
impl fmt::Display for AbsolutePressure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        Written {
            quantity: Quantity::AbsolutePressure,
            si: self.pa(),
        }
        .fmt(f)
    }
}

/// `"241000 Pa gauge"`.
impl fmt::Display for GaugePressure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        Written {
            quantity: Quantity::GaugePressure,
            si: self.pa(),
        }
        .fmt(f)
    }
}

/// As an absolute or a gauge pressure, according to its datum.
impl fmt::Display for Pressure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Pressure::Absolute(pressure) => pressure.fmt(f),
            Pressure::Gauge(pressure) => pressure.fmt(f),
        }
    }
}
