//! The conditions in which the readings were taken.

use crate::error::Error;
use crate::names::AirSource;
use crate::range::{AMBIENT, BLOWER, DURATION, RELATIVE_HUMIDITY, ROTATIONAL_SPEED, SPEED};
use crate::units::{Surroundings, Temperature, in_kelvins};

/// Weather, place and how the vehicle is run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conditions {
    /// Air in the shade, in front of the vehicle.
    pub ambient: Temperature,
    /// Relative humidity of that air, 0 to 1.
    pub relative_humidity: Option<f64>,
    /// The pressure of that air.
    pub surroundings: Surroundings,
    /// Engine speed (compressor speed when the compressor is electric), revolutions per second.
    pub engine_speed_hz: Option<f64>,
    /// Where the blower draws from.
    pub air_source: Option<AirSource>,
    /// Blower setting, 0 (off) to 1 (highest).
    pub blower: Option<f64>,
    /// Vehicle speed, m/s; zero at a standstill.
    pub vehicle_speed_m_s: Option<f64>,
    /// Time since the system was switched on, s.
    pub running_s: Option<f64>,
}

impl Conditions {
    /// A place and its temperature, of which nothing more is known.
    pub const fn new(ambient: Temperature, surroundings: Surroundings) -> Self {
        Self {
            ambient,
            relative_humidity: None,
            surroundings,
            engine_speed_hz: None,
            air_source: None,
            blower: None,
            vehicle_speed_m_s: None,
            running_s: None,
        }
    }

    /// Nothing, when every figure is finite and within its range.
    ///
    /// Errors: `NotFinite` and `OutOfRange`, naming the quantity.
    pub fn check(&self) -> Result<(), Error> {
        AMBIENT.check(in_kelvins(self.ambient))?;
        let optional = [
            (RELATIVE_HUMIDITY, self.relative_humidity),
            (ROTATIONAL_SPEED, self.engine_speed_hz),
            (BLOWER, self.blower),
            (SPEED, self.vehicle_speed_m_s),
            (DURATION, self.running_s),
        ];
        for (range, value) in optional {
            if let Some(value) = value {
                range.check(value)?;
            }
        }
        Ok(())
    }

    /// Whether the engine (or the electric compressor) is known to stand still.
    pub fn at_rest(&self) -> bool {
        self.engine_speed_hz == Some(0.0)
    }
}
