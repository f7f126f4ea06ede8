//! One table of ranges; the check and its error come from it, and the property tests draw from it.

use crate::error::Error;
use crate::names::Quantity;

/// A closed range of a quantity in SI.
///
/// ```
/// use coldloop::{ErrorKind, range};
/// assert_eq!(range::MASS.check(0.85), Ok(0.85));
/// let error = range::MASS.check(-0.1).unwrap_err();
/// assert_eq!((error.kind, error.low), (ErrorKind::OutOfRange, 0.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// The quantity.
    pub quantity: Quantity,
    /// The lowest value, in SI.
    pub low: f64,
    /// The highest value, in SI.
    pub high: f64,
}

impl Range {
    /// The range of `quantity` from `low` to `high`, both in SI and both included.
    pub const fn new(quantity: Quantity, low: f64, high: f64) -> Self {
        Self { quantity, low, high }
    }

    /// The value itself when it is finite and within the range.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    ///
    /// ```
    /// use coldloop::range::RELATIVE_HUMIDITY;
    /// assert_eq!(RELATIVE_HUMIDITY.check(0.4), Ok(0.4));
    /// assert!(RELATIVE_HUMIDITY.check(40.0).is_err());
    /// ```
    pub const fn check(self, value: f64) -> Result<f64, Error> {
        if !value.is_finite() {
            return Err(Error::not_finite(self.quantity, value));
        }
        if value < self.low || value > self.high {
            return Err(Error::out_of_range(self.quantity, value, self.low, self.high));
        }
        Ok(value)
    }
}

/// Ambient temperatures in which a vehicle is judged.
pub const AMBIENT: Range = Range::new(Quantity::Temperature, 233.15, 333.15);
/// Relative humidity.
pub const RELATIVE_HUMIDITY: Range = Range::new(Quantity::RelativeHumidity, 0.0, 1.0);
/// Altitudes with roads on them, and some below and above; ISO 2533 holds well beyond.
pub const ALTITUDE: Range = Range::new(Quantity::Altitude, -500.0, 9_000.0);
/// Barometric pressure at those altitudes, weather included.
pub const BAROMETER: Range = Range::new(Quantity::AbsolutePressure, 28_000.0, 112_000.0);
/// Absolute pressures that a reading can have; the upper bound leaves room for R-744 and its safety valve.
pub const ABSOLUTE_PRESSURE: Range = Range::new(Quantity::AbsolutePressure, 0.0, 40_000_000.0);
/// Gauge pressures that a reading can have, and the ends of a gauge's scale; none lies further below the surrounding
/// air than that air's own pressure.
pub const GAUGE_PRESSURE: Range = Range::new(Quantity::GaugePressure, -BAROMETER.high, 40_000_000.0);
/// Gauge pressures of a vacuum.
pub const VACUUM: Range = Range::new(Quantity::GaugePressure, -BAROMETER.high, 0.0);
/// Temperatures that can be written.
pub const TEMPERATURE: Range = Range::new(Quantity::Temperature, 0.0, 2_000.0);
/// Temperatures that a line or a vent of a vehicle can have.
pub const LINE_TEMPERATURE: Range = Range::new(Quantity::Temperature, 193.15, 473.15);
/// Temperature differences that can be written.
pub const TEMPERATURE_DIFFERENCE: Range = Range::new(Quantity::TemperatureDifference, -500.0, 500.0);
/// Vehicle speeds.
pub const SPEED: Range = Range::new(Quantity::Speed, 0.0, 100.0);
/// Speeds of an engine or a compressor, up to 18,000 revolutions per minute.
pub const ROTATIONAL_SPEED: Range = Range::new(Quantity::RotationalSpeed, 0.0, 300.0);
/// Masses of refrigerant or oil in a vehicle or a cylinder.
pub const MASS: Range = Range::new(Quantity::Mass, 0.0, 1_000.0);
/// Volumes of a circuit, a part of it or a hose.
pub const VOLUME: Range = Range::new(Quantity::Volume, 0.0, 1.0);
/// Durations, up to a year.
pub const DURATION: Range = Range::new(Quantity::Duration, 0.0, 366.0 * 86_400.0);
/// Frequencies of events such as clutch engagements.
pub const FREQUENCY: Range = Range::new(Quantity::Frequency, 0.0, 1_000.0);
/// Voltages, up to those of an electric compressor.
pub const VOLTAGE: Range = Range::new(Quantity::Voltage, -2_000.0, 2_000.0);
/// Temperatures of moist air.
pub const AIR_TEMPERATURE: Range = Range::new(Quantity::Temperature, 203.15, 373.15);
/// Temperatures at which the saturation pressure of ice and water is known: ASHRAE Fundamentals 2017, ch. 1.
pub const WATER_TEMPERATURE: Range = Range::new(Quantity::Temperature, 173.15, 473.15);
/// Humidity ratios of moist air.
pub const HUMIDITY_RATIO: Range = Range::new(Quantity::HumidityRatio, 0.0, 10.0);
/// Blower setting.
pub const BLOWER: Range = Range::new(Quantity::BlowerSetting, 0.0, 1.0);
/// Displacement that a control commands, of the full one.
pub const DISPLACEMENT: Range = Range::new(Quantity::Displacement, 0.0, 1.0);
/// Command of a condenser's fan.
pub const FAN_COMMAND: Range = Range::new(Quantity::FanCommand, 0.0, 1.0);
/// Evaporators of a system.
pub const EVAPORATORS: Range = Range::new(Quantity::Evaporators, 1.0, 2.0);
/// Pressures at which a switch or a control stops the compressor of a system that condenses.
///
/// Source: eight limits of makers' service data in `tables/evidence/limits.csv`, 2.70 to 3.34 MPa; a fifth more room on either
/// side by engineering judgement.
pub const HIGH_CUT_OUT: Range = Range::new(Quantity::GaugePressure, 2_150_000.0, 4_000_000.0);
/// The same for R-744. Source: engineering judgement: above any high side that its control asks for, below the burst disc.
pub const HIGH_CUT_OUT_R744: Range = Range::new(Quantity::GaugePressure, 10_000_000.0, 17_000_000.0);
/// Severity of a fault.
pub const SEVERITY: Range = Range::new(Quantity::Severity, 0.0, 1.0);
