//! Saturation
//!
//! Bubble is where a liquid begins to boil, dew where a vapour begins to condense. For a pure refrigerant they are
//! one line, for a blend they are two: superheat is measured from dew, subcooling from bubble.

use crate::boundary::{Failure, answer, known, map, number};
use crate::error::ColdloopError;
use coldloop::saturation::{bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use core::mem::MaybeUninit;

/// Pressure at which the liquid begins to boil, from the lowest temperature of the equation of state to the critical
/// point.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bubble_pressure(
    refrigerant: u32,
    temperature_k: f64,
    pressure_pa_abs: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(pressure_pa_abs, error, || {
        Ok(bubble_pressure_pa(known(refrigerant)?, temperature_k)?)
    })
}

/// Pressure at which the vapour begins to condense. Range and errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_dew_pressure(
    refrigerant: u32,
    temperature_k: f64,
    pressure_pa_abs: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(pressure_pa_abs, error, || {
        Ok(dew_pressure_pa(known(refrigerant)?, temperature_k)?)
    })
}

/// Temperature at which the liquid begins to boil, up to the critical pressure. Errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bubble_temperature(
    refrigerant: u32,
    pressure_pa_abs: f64,
    temperature_k: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(temperature_k, error, || {
        Ok(bubble_temperature_k(known(refrigerant)?, pressure_pa_abs)?)
    })
}

/// Temperature at which the vapour begins to condense, up to the critical pressure. Errors as
/// coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_dew_temperature(
    refrigerant: u32,
    pressure_pa_abs: f64,
    temperature_k: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(temperature_k, error, || {
        Ok(dew_temperature_k(known(refrigerant)?, pressure_pa_abs)?)
    })
}

/// Dew pressures of `count` temperatures that stand `temperature_stride` bytes apart, written `pressure_stride` bytes
/// apart; sizeof(double) for plain arrays, the size of a struct for one of its fields. The arrays may be the same.
///
/// An element without an answer becomes NaN and the rest are computed all the same; `failed` (may be NULL) receives
/// how many there were, and status and `error` are those of the first. Errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_dew_pressures(
    refrigerant: u32,
    count: usize,
    temperature_k: *const f64,
    temperature_stride: usize,
    pressure_pa_abs: *mut f64,
    pressure_stride: usize,
    failed: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    answer(error, || {
        let (input, output) = ((temperature_k, temperature_stride), (pressure_pa_abs, pressure_stride));
        let refrigerant = known(refrigerant);
        let each = |t_k| refrigerant.and_then(|refrigerant| dew_pressure_pa(refrigerant, t_k));
        let (failures, first) = map(input, output, count, each)?;
        if let Some(failed) = failed {
            failed.write(failures);
        }
        first.map_or(Ok(()), |error| Err(Failure::Library(error)))
    })
}
