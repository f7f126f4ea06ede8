//! The typed door: temperatures, pressures with their datum, the surrounding air, and text.
//!
//! This is the one room that names `uom`. Inner rooms speak `f64` in SI with the unit in the name.

mod atmosphere;
pub mod constants;
mod pressure;
pub mod text;

pub(crate) use atmosphere::{DRY_AIR_J_KG_K, LAPSE_K_M, SEA_LEVEL_K};
pub use atmosphere::{STANDARD_PRESSURE_PA, standard_altitude_m, standard_pressure_pa};
pub use pressure::{AbsolutePressure, GaugePressure, Pressure, Surroundings, absolute_pressure_pa, gauge_pressure_pa};

use uom::si::temperature_interval::kelvin as kelvin_difference;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit, kelvin};

/// A thermodynamic temperature: a point on the scale. Two of them cannot be added.
///
/// ```compile_fail,E0369
/// use coldloop::units::celsius;
/// let _ = celsius(20.0) + celsius(5.0);
/// ```
///
/// A difference can:
///
/// ```
/// use coldloop::units::{celsius, in_celsius, kelvins_difference};
/// assert!((in_celsius(celsius(20.0) + kelvins_difference(5.0)) - 25.0).abs() < 1e-12);
/// ```
pub type Temperature = uom::si::f64::ThermodynamicTemperature;

/// A temperature difference: superheat, subcooling, condensing above ambient.
pub type TemperatureDifference = uom::si::f64::TemperatureInterval;

/// The temperature of `value` kelvin.
pub fn kelvins(value: f64) -> Temperature {
    Temperature::new::<kelvin>(value)
}

/// The temperature of `value` degrees Celsius.
pub fn celsius(value: f64) -> Temperature {
    Temperature::new::<degree_celsius>(value)
}

/// The temperature of `value` degrees Fahrenheit.
pub fn fahrenheit(value: f64) -> Temperature {
    Temperature::new::<degree_fahrenheit>(value)
}

/// The temperature in kelvin.
pub fn in_kelvins(temperature: Temperature) -> f64 {
    temperature.get::<kelvin>()
}

/// The temperature in degrees Celsius.
pub fn in_celsius(temperature: Temperature) -> f64 {
    temperature.get::<degree_celsius>()
}

/// The temperature in degrees Fahrenheit.
pub fn in_fahrenheit(temperature: Temperature) -> f64 {
    temperature.get::<degree_fahrenheit>()
}

/// The temperature difference of `value` kelvin.
pub fn kelvins_difference(value: f64) -> TemperatureDifference {
    TemperatureDifference::new::<kelvin_difference>(value)
}

/// The temperature difference in kelvin.
pub fn difference_in_kelvins(difference: TemperatureDifference) -> f64 {
    difference.get::<kelvin_difference>()
}
