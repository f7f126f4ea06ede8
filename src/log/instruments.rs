//! What a log was read with.

use crate::circuit::{Estimate, Gauge, Reading};
use crate::names::Thermometer;
use crate::units::{AbsolutePressure, GaugePressure, InSi, Measurable, Pressure, Temperature, kelvins};

/// From what a log counts its pressures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Datum {
    /// The surrounding air.
    Gauge,
    /// Vacuum.
    Absolute,
}

/// The instruments of a log.
///
/// ```
/// use coldloop::{Thermometer, log::Instruments};
/// let infrared = Instruments { lines: Thermometer::Infrared, ..Instruments::default() };
/// assert_ne!(infrared, Instruments::default());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Instruments {
    /// The low side's gauge.
    pub low_side: Gauge,
    /// The high side's gauge.
    pub high_side: Gauge,
    /// The vehicle's own transducer.
    pub transducer: Gauge,
    /// The thermometers of vent, cabin and evaporator.
    pub air: Thermometer,
    /// The thermometers of the lines.
    pub lines: Thermometer,
}

impl Datum {
    /// A logged number of pascals as a pressure.
    pub(super) const fn pressure(self, pa: f64) -> Pressure {
        match self {
            Self::Gauge => Pressure::Gauge(GaugePressure::from_pa(pa)),
            Self::Absolute => Pressure::Absolute(AbsolutePressure::from_pa(pa)),
        }
    }
}

impl Default for Instruments {
    /// An electronic manifold, a thermometer in the vent, thermocouples on the lines.
    fn default() -> Self {
        Self {
            low_side: Gauge::DIGITAL,
            high_side: Gauge::DIGITAL,
            transducer: Gauge::TRANSDUCER,
            air: Thermometer::PocketDigital,
            lines: Thermometer::ClampThermocouple,
        }
    }
}

impl Instruments {
    /// A mean as a reading of this gauge.
    pub(super) fn pressure(mean: Estimate, gauge: Gauge, datum: Datum) -> Reading<Pressure> {
        with(Reading::pressure(datum.pressure(mean.value), gauge), mean)
    }

    /// A mean as a reading of this thermometer.
    pub(super) fn temperature(mean: Estimate, thermometer: Thermometer) -> Reading<Temperature> {
        with(Reading::temperature(kelvins(mean.value), thermometer), mean)
    }
}

/// The uncertainty of the instrument beside that of what was seen.
fn with<Q: Measurable>(reading: Reading<Q>, mean: Estimate) -> Reading<Q> {
    let together = libm::hypot(reading.standard_uncertainty.si(), mean.standard_uncertainty);
    Reading {
        standard_uncertainty: InSi::from_si(together),
        ..reading
    }
}
