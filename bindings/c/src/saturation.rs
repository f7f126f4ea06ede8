//! Saturation
//!
//! Bubble is where a liquid begins to boil, dew where a vapour begins to condense. For a pure refrigerant they are
//! one line, for a blend they are two: superheat is measured from dew, subcooling from bubble.

use crate::arrays::blocks;
use crate::boundary::{known, member, number, record, sized};
use crate::error::ColdloopError;
use crate::memory::{Answers, Column};
use coldloop::Reference;
use coldloop::saturation::{self, bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use coldloop::saturation::{bubble_pressures_pa, bubble_temperatures_k, dew_pressures_pa, dew_temperatures_k};

/// Pressure at which the liquid begins to boil, from the lowest temperature of the equation of state to the critical
/// point.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bubble_pressure(
    refrigerant: u32,
    temperature_k: f64,
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
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
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
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
    temperature_k: *mut f64,
    error: *mut ColdloopError,
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
    temperature_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(temperature_k, error, || {
        Ok(dew_temperature_k(known(refrigerant)?, pressure_pa_abs)?)
    })
}

/// Slope dp/dT of the saturation line, of a blend of its dew line, Pa/K. Range and errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_saturation_slope(
    refrigerant: u32,
    temperature_k: f64,
    slope_pa_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(slope_pa_k, error, || {
        Ok(saturation::slope_pa_k(known(refrigerant)?, temperature_k)?)
    })
}

/// Glide, K: how much warmer the dew point is than the bubble point at a pressure; 0 for a pure refrigerant. Errors as
/// coldloop_bubble_temperature.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_glide(
    refrigerant: u32,
    pressure_pa_abs: f64,
    glide_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(glide_k, error, || {
        Ok(saturation::glide_k(known(refrigerant)?, pressure_pa_abs)?)
    })
}

/// Heat that boils a kilogram of liquid into vapour, J/kg; of a blend, over its glide, at the bubble pressure. Range and errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_latent_heat(
    refrigerant: u32,
    temperature_k: f64,
    latent_heat_j_kg: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(latent_heat_j_kg, error, || {
        Ok(saturation::latent_heat_j_kg(known(refrigerant)?, temperature_k)?)
    })
}

/// Slope dp/dT of the bubble line, Pa/K. Range and errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bubble_slope(
    refrigerant: u32,
    temperature_k: f64,
    slope_pa_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(slope_pa_k, error, || {
        Ok(saturation::bubble_slope_pa_k(known(refrigerant)?, temperature_k)?)
    })
}

/// The mean of the evaporating range, K: half way between the temperature of the inlet, where the mass fraction `quality`
/// is vapour, and the dew point. Of a pure refrigerant it is the saturation temperature. Superheat does not count from
/// here, but from the dew point. Source: EN 12900 and AHRI Standard 540, from memory.
///
/// Errors: as coldloop_state_pressure_quality.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_evaporating_mean(
    refrigerant: u32,
    pressure_pa_abs: f64,
    quality: f64,
    mean_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(mean_k, error, || {
        let line = saturation::line_of(known(refrigerant)?);
        Ok(line.evaporating_mean_pq(pressure_pa_abs, quality)?)
    })
}

/// The same for an inlet of the enthalpy of the liquid line, J/kg, counted from a coldloop_reference; where liquid comes in
/// below its bubble point, the range begins at the bubble point.
///
/// Errors: as coldloop_state_pressure_enthalpy; OUT_OF_RANGE for an inlet above the dew point.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_evaporating_mean_ph(
    refrigerant: u32,
    reference: u32,
    pressure_pa_abs: f64,
    enthalpy_j_kg: f64,
    mean_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(mean_k, error, || {
        let reference = member(reference, Reference::from_code)?;
        let line = saturation::line_of(known(refrigerant)?);
        Ok(line.evaporating_mean_ph(pressure_pa_abs, enthalpy_j_kg, reference)?)
    })
}

/// Both sides of the saturation line at one temperature, in SI. Set `size` to sizeof(coldloop_saturation).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopSaturation {
    /// sizeof(coldloop_saturation), so that the struct can grow.
    pub size: usize,
    /// Temperature, K.
    pub temperature_k: f64,
    /// Pressure above vacuum, Pa; for a blend the bubble pressure, while the vapour is at its dew pressure.
    pub pressure_pa_abs: f64,
    /// Density of the liquid, kg/m3.
    pub liquid_density_kg_m3: f64,
    /// Density of the vapour, kg/m3.
    pub vapour_density_kg_m3: f64,
    /// Specific enthalpy of the liquid, J/kg, from the reference state.
    pub liquid_enthalpy_j_kg: f64,
    /// Specific enthalpy of the vapour, J/kg, from the reference state.
    pub vapour_enthalpy_j_kg: f64,
    /// Specific entropy of the liquid, J/(kg K), from the reference state.
    pub liquid_entropy_j_kg_k: f64,
    /// Specific entropy of the vapour, J/(kg K), from the reference state.
    pub vapour_entropy_j_kg_k: f64,
}

const NAN: f64 = f64::NAN;

sized!(
    ColdloopSaturation,
    Self {
        size: 0,
        temperature_k: NAN,
        pressure_pa_abs: NAN,
        liquid_density_kg_m3: NAN,
        vapour_density_kg_m3: NAN,
        liquid_enthalpy_j_kg: NAN,
        vapour_enthalpy_j_kg: NAN,
        liquid_entropy_j_kg_k: NAN,
        vapour_entropy_j_kg_k: NAN,
    }
);

/// Densities, enthalpies and entropies of the boiling liquid and of the vapour over it, at one temperature.
///
/// `reference` is a coldloop_reference: where enthalpy and entropy count from.
///
/// Errors: those of coldloop_bubble_pressure; UNKNOWN_NAME also for a number that is no coldloop_reference; NOT_AVAILABLE
/// when the refrigerant has no such reference state.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_saturated(
    refrigerant: u32,
    reference: u32,
    temperature_k: f64,
    saturation: *mut ColdloopSaturation,
    error: *mut ColdloopError,
) -> u32 {
    record(saturation, error, || {
        let reference = member(reference, Reference::from_code)?;
        let pure = saturation::line_of(known(refrigerant)?);
        let liquid = pure.state_tq(temperature_k, 0.0, reference)?;
        let vapour = pure.state_tq(temperature_k, 1.0, reference)?;
        Ok(ColdloopSaturation {
            size: 0,
            temperature_k,
            pressure_pa_abs: liquid.pressure().pa(),
            liquid_density_kg_m3: liquid.density().kg_m3(),
            vapour_density_kg_m3: vapour.density().kg_m3(),
            liquid_enthalpy_j_kg: liquid.enthalpy().j_kg(),
            vapour_enthalpy_j_kg: vapour.enthalpy().j_kg(),
            liquid_entropy_j_kg_k: liquid.entropy().j_kg_k(),
            vapour_entropy_j_kg_k: vapour.entropy().j_kg_k(),
        })
    })
}

/// Dew pressures of `count` temperatures, with the bits of coldloop_dew_pressure. The temperatures are
/// `temperature_stride` bytes apart, the pressures `pressure_stride` bytes: sizeof(double) for plain arrays, the size of a
/// struct for one of its fields, 0 for one number that serves every row. The arrays may be the same.
///
/// A row without an answer becomes NaN and the rest are computed all the same; `failed` (may be NULL) receives how many
/// there were, and status and `error` are those of the first. Errors as coldloop_bubble_pressure.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_dew_pressures(
    refrigerant: u32,
    count: usize,
    temperature_k: *const f64,
    temperature_stride: isize,
    pressure_pa_abs: *mut f64,
    pressure_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = (
        Column::new(temperature_k, temperature_stride),
        Answers::new(pressure_pa_abs, pressure_stride),
    );
    blocks(dew_pressures_pa, refrigerant, count, columns, (failed, error))
}

/// Bubble pressures of `count` temperatures. Strides and failures as for coldloop_dew_pressures.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bubble_pressures(
    refrigerant: u32,
    count: usize,
    temperature_k: *const f64,
    temperature_stride: isize,
    pressure_pa_abs: *mut f64,
    pressure_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = (
        Column::new(temperature_k, temperature_stride),
        Answers::new(pressure_pa_abs, pressure_stride),
    );
    blocks(bubble_pressures_pa, refrigerant, count, columns, (failed, error))
}

/// Dew temperatures of `count` pressures. Strides and failures as for coldloop_dew_pressures.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_dew_temperatures(
    refrigerant: u32,
    count: usize,
    pressure_pa_abs: *const f64,
    pressure_stride: isize,
    temperature_k: *mut f64,
    temperature_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = (
        Column::new(pressure_pa_abs, pressure_stride),
        Answers::new(temperature_k, temperature_stride),
    );
    blocks(dew_temperatures_k, refrigerant, count, columns, (failed, error))
}

/// Bubble temperatures of `count` pressures. Strides and failures as for coldloop_dew_pressures.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bubble_temperatures(
    refrigerant: u32,
    count: usize,
    pressure_pa_abs: *const f64,
    pressure_stride: isize,
    temperature_k: *mut f64,
    temperature_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = (
        Column::new(pressure_pa_abs, pressure_stride),
        Answers::new(temperature_k, temperature_stride),
    );
    blocks(bubble_temperatures_k, refrigerant, count, columns, (failed, error))
}
