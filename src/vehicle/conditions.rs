//! The conditions in which the readings were taken.

use crate::names::AirSource;
use crate::units::{Surroundings, Temperature};

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
