//! Transport properties
//!
//! Viscosity, thermal conductivity and surface tension by published correlations, for R-134a, R-1234yf, R-744, R-152a, R-32,
//! R-290, R-600a, R-125, R-1234ze(E), R-22 and R-12; for all others, and for blends, NOT_AVAILABLE.
//!
//! Two figures fix a state of one phase as in the chapter of states: COLDLOOP_PAIR_TP, COLDLOOP_PAIR_TD, or COLDLOOP_PAIR_TQ and
//! COLDLOOP_PAIR_PQ with a quality of exactly 0 (saturated liquid) or 1 (saturated vapour).
//!
//!     double viscosity_pa_s;
//!     if (coldloop_viscosity(COLDLOOP_REFRIGERANT_R134A, COLDLOOP_PAIR_TP, 283.15, 300e3, &viscosity_pa_s, NULL) == 0)
//!         printf("%.2f uPa s\n", viscosity_pa_s * 1e6);

use crate::arrays::rows;
use crate::boundary::{known, number};
use crate::error::ColdloopError;
use crate::memory::{Answers, Column};
use crate::state::{COLDLOOP_PAIR_PQ, COLDLOOP_PAIR_TD, COLDLOOP_PAIR_TP, COLDLOOP_PAIR_TQ, pair_of};
use coldloop::saturation::{self, State};
use coldloop::{Error, ErrorKind, Quantity, Reference, Refrigerant, transport};

/// A transport property of a refrigerant in a state.
type Property = fn(Refrigerant, &State) -> Result<f64, Error>;

fn of(property: Property, refrigerant: u32, pair: u32, first: f64, second: f64) -> Result<f64, Error> {
    let refrigerant = known(refrigerant)?;
    if ![COLDLOOP_PAIR_TP, COLDLOOP_PAIR_TD, COLDLOOP_PAIR_TQ, COLDLOOP_PAIR_PQ].contains(&pair) {
        return Err(Error {
            value: f64::from(pair),
            ..Error::of(ErrorKind::UnknownName, Quantity::Name)
        });
    }
    // Transport properties do not depend on the reference state; every refrigerant with a correlation has this one.
    let state = pair_of(pair)?(saturation::line_of(refrigerant), first, second, Reference::Iir)?;
    property(refrigerant, &state)
}

/// Dynamic viscosity, Pa s, in the state of a pair.
///
/// Errors: those of the function of the pair; UNKNOWN_NAME also for another pair; NOT_AVAILABLE without a correlation, and for liquid and
/// vapour together; OUT_OF_RANGE beyond the temperatures and pressures of the correlation.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_viscosity(
    refrigerant: u32,
    pair: u32,
    first: f64,
    second: f64,
    viscosity_pa_s: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(viscosity_pa_s, error, || {
        Ok(of(transport::viscosity_pa_s, refrigerant, pair, first, second)?)
    })
}

/// Thermal conductivity, W/(m K), in the state of a pair. Errors as coldloop_viscosity, and NOT_AVAILABLE at the critical point.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_conductivity(
    refrigerant: u32,
    pair: u32,
    first: f64,
    second: f64,
    conductivity_w_m_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(conductivity_w_m_k, error, || {
        Ok(of(transport::conductivity_w_m_k, refrigerant, pair, first, second)?)
    })
}

/// Surface tension, N/m, between saturated liquid and vapour at a temperature, up to the critical one.
///
/// Errors: UNKNOWN_NAME, NOT_FINITE, OUT_OF_RANGE; NOT_AVAILABLE without a correlation.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_surface_tension(
    refrigerant: u32,
    temperature_k: f64,
    surface_tension_n_m: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(surface_tension_n_m, error, || {
        Ok(transport::surface_tension_n_m(known(refrigerant)?, temperature_k)?)
    })
}

/// Viscosities of `count` rows in the states of a pair. Strides and failures as for coldloop_dew_pressures, errors as
/// coldloop_viscosity.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_viscosities(
    refrigerant: u32,
    pair: u32,
    count: usize,
    first: *const f64,
    first_stride: isize,
    second: *const f64,
    second_stride: isize,
    viscosity_pa_s: *mut f64,
    viscosity_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = [Column::new(first, first_stride), Column::new(second, second_stride)];
    let output = Answers::new(viscosity_pa_s, viscosity_stride);
    rows(count, columns, output, (failed, error), f64::NAN, |[first, second]| {
        of(transport::viscosity_pa_s, refrigerant, pair, first, second)
    })
}

/// Thermal conductivities of `count` rows in the states of a pair. Strides and failures as for coldloop_dew_pressures, errors as
/// coldloop_conductivity.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_conductivities(
    refrigerant: u32,
    pair: u32,
    count: usize,
    first: *const f64,
    first_stride: isize,
    second: *const f64,
    second_stride: isize,
    conductivity_w_m_k: *mut f64,
    conductivity_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = [Column::new(first, first_stride), Column::new(second, second_stride)];
    let output = Answers::new(conductivity_w_m_k, conductivity_stride);
    rows(count, columns, output, (failed, error), f64::NAN, |[first, second]| {
        of(transport::conductivity_w_m_k, refrigerant, pair, first, second)
    })
}

/// Surface tensions of `count` temperatures. Strides and failures as for coldloop_dew_pressures, errors as
/// coldloop_surface_tension.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_surface_tensions(
    refrigerant: u32,
    count: usize,
    temperature_k: *const f64,
    temperature_stride: isize,
    surface_tension_n_m: *mut f64,
    surface_tension_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = [Column::new(temperature_k, temperature_stride)];
    let output = Answers::new(surface_tension_n_m, surface_tension_stride);
    rows(count, columns, output, (failed, error), f64::NAN, |[t_k]| {
        transport::surface_tension_n_m(known(refrigerant)?, t_k)
    })
}
