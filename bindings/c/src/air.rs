//! The surrounding air
//!
//! A gauge shows the pressure above the air around it. At 1,600 m that air weighs a fifth less than at sea level, so
//! a gauge pressure becomes absolute only with the air's own pressure: a barometer's, or the standard atmosphere's
//! at that altitude.

use crate::boundary::number;
use crate::error::ColdloopError;
use coldloop::units::{absolute_pressure_pa, standard_pressure_pa};
use core::mem::MaybeUninit;

/// Pressure of the standard atmosphere at a geopotential altitude from -500 m to 9,000 m. Source: ISO 2533:1975.
///
/// Errors: NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_standard_pressure(
    altitude_m: f64,
    pressure_pa_abs: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(pressure_pa_abs, error, || Ok(standard_pressure_pa(altitude_m)?))
}

/// Pressure above vacuum of what a gauge shows that was zeroed in air of `air_pa_abs`, 28,000 Pa to 112,000 Pa.
///
/// Errors: NOT_FINITE; OUT_OF_RANGE, also for a gauge that shows less than a vacuum.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_absolute_pressure(
    pressure_pa_gauge: f64,
    air_pa_abs: f64,
    pressure_pa_abs: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(pressure_pa_abs, error, || {
        Ok(absolute_pressure_pa(pressure_pa_gauge, air_pa_abs)?)
    })
}
