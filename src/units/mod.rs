//! The typed door: temperatures, pressures with their datum, the surrounding air, and text.
//!
//! Inner rooms speak `f64` in SI with the unit in the name, and so do the functions of `saturation`, `transport` and `air` that are
//! the arithmetic below this door.

mod atmosphere;
pub mod constants;
mod pressure;
mod quantities;
mod temperature;
pub mod text;

pub(crate) use atmosphere::{DRY_AIR_J_KG_K, LAPSE_K_M, SEA_LEVEL_K};
pub use atmosphere::{STANDARD_PRESSURE_PA, standard_altitude_m, standard_pressure_pa};
pub use pressure::{AbsolutePressure, GaugePressure, Pressure, Surroundings, absolute_pressure_pa, gauge_pressure_pa};
pub use quantities::{
    Density, DynamicViscosity, Frequency, InSi, Mass, MassFlow, Measurable, MolarDensity, Power, PressureDifference,
    PressureRate, RelativeHumidity, RotationalSpeed, SpecificEnergy, SpecificEntropy, SpecificHeat, Speed,
    SurfaceTension, ThermalConductivity, TimeSpan, Volume,
};
pub use temperature::{
    Temperature, TemperatureDifference, celsius, difference_in_kelvins, fahrenheit, in_celsius, in_fahrenheit,
    in_kelvins, kelvins, kelvins_difference,
};
