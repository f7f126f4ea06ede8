//! Temperature and density of the standard atmosphere.

use crate::error::Error;
use crate::range::ALTITUDE;
use crate::units::{DRY_AIR_J_KG_K, LAPSE_K_M, SEA_LEVEL_K, standard_pressure_pa};

/// Temperature of the standard atmosphere at a geopotential altitude, K.
///
/// Source: ISO 2533:1975, equation 8.
///
/// Errors: `NotFinite` and `OutOfRange` outside [`ALTITUDE`].
pub fn standard_temperature_k(altitude_m: f64) -> Result<f64, Error> {
    Ok(SEA_LEVEL_K - LAPSE_K_M * ALTITUDE.check(altitude_m)?)
}

/// Density of the standard atmosphere at a geopotential altitude, kg/m3.
///
/// Source: ISO 2533:1975, equation 14.
///
/// Errors: `NotFinite` and `OutOfRange` outside [`ALTITUDE`].
///
/// ```
/// use coldloop::air::standard_density_kg_m3;
/// assert!((standard_density_kg_m3(0.0)? - 1.225).abs() < 1e-5);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn standard_density_kg_m3(altitude_m: f64) -> Result<f64, Error> {
    Ok(standard_pressure_pa(altitude_m)? / (DRY_AIR_J_KG_K * standard_temperature_k(altitude_m)?))
}
