//! The standard atmosphere, as far as roads go.

use crate::error::Error;
use crate::range::ALTITUDE;

/// Standard pressure at sea level, Pa. Source: ISO 2533:1975, table 1.
pub const STANDARD_PRESSURE_PA: f64 = 101_325.0;

const SEA_LEVEL_K: f64 = 288.15; // ISO 2533:1975, table 1
const LAPSE_K_PER_M: f64 = 0.0065; // ISO 2533:1975, table 4, layer from -2 to 11 km
const GRAVITY_M_PER_S2: f64 = 9.806_65; // ISO 2533:1975, table 1
const GAS_CONSTANT_J_PER_KG_K: f64 = 287.052_87; // ISO 2533:1975, table 1

/// Pressure of the standard atmosphere at a geopotential altitude, Pa.
///
/// Source: ISO 2533:1975, equation 12, for the layer with a lapse rate of 6.5 K/km.
///
/// Errors: `NotFinite` and `OutOfRange` outside [`ALTITUDE`].
///
/// ```
/// use coldloop::units::standard_pressure_pa;
/// assert!((standard_pressure_pa(1_000.0)? - 89_874.6).abs() < 0.1);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn standard_pressure_pa(altitude_m: f64) -> Result<f64, Error> {
    let altitude_m = ALTITUDE.check(altitude_m)?;
    let exponent = GRAVITY_M_PER_S2 / (GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M);
    Ok(STANDARD_PRESSURE_PA * libm::pow(1.0 - LAPSE_K_PER_M * altitude_m / SEA_LEVEL_K, exponent))
}
