//! The standard atmosphere at the altitudes of roads.

use super::constants::{ATMOSPHERE_PA, STANDARD_GRAVITY_M_S2};
use crate::error::Error;
use crate::names::Quantity;
use crate::range::{ALTITUDE, Range};

/// Standard pressure at sea level, Pa. Source: ISO 2533:1975, table 1.
pub const STANDARD_PRESSURE_PA: f64 = ATMOSPHERE_PA;

pub(crate) const SEA_LEVEL_K: f64 = 288.15; // ISO 2533:1975, table 1
pub(crate) const LAPSE_K_M: f64 = 0.0065; // ISO 2533:1975, table 4, layer from -2 to 11 km
pub(crate) const DRY_AIR_J_KG_K: f64 = 287.052_87; // ISO 2533:1975, table 1

/// Gravity over gas constant and lapse rate, 5.2559.
const EXPONENT: f64 = STANDARD_GRAVITY_M_S2 / (DRY_AIR_J_KG_K * LAPSE_K_M);

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
    Ok(pressure_pa(ALTITUDE.check(altitude_m)?))
}

/// The geopotential altitude at which the standard atmosphere has this pressure, m.
///
/// The inverse of [`standard_pressure_pa`].
///
/// Errors: `NotFinite`; `OutOfRange` outside the pressures of [`ALTITUDE`].
///
/// ```
/// use coldloop::units::standard_altitude_m;
/// assert!((standard_altitude_m(89_874.6)? - 1_000.0).abs() < 0.01);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn standard_altitude_m(p_pa: f64) -> Result<f64, Error> {
    let range = Range::new(
        Quantity::AbsolutePressure,
        pressure_pa(ALTITUDE.high),
        pressure_pa(ALTITUDE.low),
    );
    let ratio = range.check(p_pa)? / STANDARD_PRESSURE_PA;
    Ok((1.0 - libm::pow(ratio, 1.0 / EXPONENT)) * SEA_LEVEL_K / LAPSE_K_M)
}

fn pressure_pa(altitude_m: f64) -> f64 {
    STANDARD_PRESSURE_PA * libm::pow(1.0 - LAPSE_K_M * altitude_m / SEA_LEVEL_K, EXPONENT)
}
