//! The conditions in which the readings were taken.

use crate::error::Error;
use crate::names::{AirSource, Compressor};
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
    /// Engine speed (compressor speed when the compressor is electric, of which zero says nothing), revolutions per second.
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

    /// Whether a compressor of this kind is known to stand still: a motor-driven one runs without the engine.
    ///
    /// ```
    /// use coldloop::Compressor;
    /// use coldloop::units::{Surroundings, celsius};
    /// use coldloop::vehicle::Conditions;
    /// let parked = Conditions {
    ///     engine_speed_hz: Some(0.0),
    ///     ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
    /// };
    /// assert!(parked.at_rest(Compressor::FixedClutch) && !parked.at_rest(Compressor::Electric));
    /// ```
    pub fn at_rest(&self, compressor: Compressor) -> bool {
        compressor != Compressor::Electric && self.engine_speed_hz == Some(0.0)
    }
}
