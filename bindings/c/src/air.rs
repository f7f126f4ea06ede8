//! The surrounding air
//!
//! A gauge shows the pressure above the air around it. At 1,600 m the pressure of that air is a fifth less than at
//! sea level, so a gauge pressure becomes absolute only with the pressure of the air: from a barometer, or from the
//! standard atmosphere at that altitude.

use crate::boundary::number;
use crate::error::ColdloopError;
use coldloop::air::{standard_density_kg_m3, standard_temperature_k};
use coldloop::units::{absolute_pressure_pa, gauge_pressure_pa, standard_altitude_m, standard_pressure_pa};

/// Pressure of the standard atmosphere at a geopotential altitude from -500 m to 9,000 m. Source: ISO 2533:1975.
///
/// Errors: NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_standard_pressure(
    altitude_m: f64,
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(pressure_pa_abs, error, || Ok(standard_pressure_pa(altitude_m)?))
}

/// Geopotential altitude at which the standard atmosphere has this pressure; the inverse of coldloop_standard_pressure.
///
/// Errors: NOT_FINITE; OUT_OF_RANGE beyond the pressures from -500 m to 9,000 m.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_standard_altitude(
    pressure_pa_abs: f64,
    altitude_m: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(altitude_m, error, || Ok(standard_altitude_m(pressure_pa_abs)?))
}

/// Temperature of the standard atmosphere. Range, errors and source as coldloop_standard_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_standard_temperature(
    altitude_m: f64,
    temperature_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(temperature_k, error, || Ok(standard_temperature_k(altitude_m)?))
}

/// Density of the standard atmosphere. Range, errors and source as coldloop_standard_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_standard_density(
    altitude_m: f64,
    density_kg_m3: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(density_kg_m3, error, || Ok(standard_density_kg_m3(altitude_m)?))
}

/// Pressure above vacuum of what a gauge shows that was zeroed in air of `air_pa_abs`, 28,000 Pa to 112,000 Pa.
///
/// Errors: NOT_FINITE; OUT_OF_RANGE, also for a gauge that shows less than a vacuum.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_absolute_pressure(
    pressure_pa_gauge: f64,
    air_pa_abs: f64,
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(pressure_pa_abs, error, || {
        Ok(absolute_pressure_pa(pressure_pa_gauge, air_pa_abs)?)
    })
}

/// What a gauge shows of a pressure above vacuum when it was zeroed in air of `air_pa_abs`, 28,000 Pa to 112,000 Pa.
///
/// Errors: NOT_FINITE; OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_gauge_pressure(
    pressure_pa_abs: f64,
    air_pa_abs: f64,
    pressure_pa_gauge: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(pressure_pa_gauge, error, || {
        Ok(gauge_pressure_pa(pressure_pa_abs, air_pa_abs)?)
    })
}
