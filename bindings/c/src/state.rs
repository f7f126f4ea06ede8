//! States
//!
//! Two figures fix the state of a refrigerant, and each pair has its function: temperature and pressure, pressure and
//! enthalpy, and so on. A state always tells its phase. Enthalpy and entropy count from a reference
//! state: COLDLOOP_REFERENCE_IIR, COLDLOOP_REFERENCE_ASHRAE or COLDLOOP_REFERENCE_NORMAL_BOILING_POINT.
//!
//!     coldloop_state suction = {.size = sizeof suction};
//!     if (coldloop_state_temperature_pressure(COLDLOOP_REFRIGERANT_R134A, COLDLOOP_REFERENCE_IIR, 283.15, 300e3, &suction, NULL) == 0)
//!         printf("%.1f kg/m3, %.1f kJ/kg\n", suction.density_kg_m3, suction.enthalpy_j_kg / 1e3);
//!
//! A state with a quality of exactly 0 or 1 is a saturated liquid or vapour and has all figures of one phase. Where liquid and
//! vapour are present together some figures are undefined: has_response is 0 then, and they are 0. A figure is NaN only
//! where a function has failed.
//!
//! All of them refuse a number that is no coldloop_refrigerant or no coldloop_reference with UNKNOWN_NAME, NaN and
//! infinities with NOT_FINITE, figures beyond the limits of the equation of state (see coldloop_facts) with
//! OUT_OF_RANGE, and a reference state that the refrigerant does not have with NOT_AVAILABLE.

use crate::arrays::rows;
use crate::boundary::{Failure, Record, answer, known, member, record, sized};
use crate::error::ColdloopError;
use crate::memory::{Answers, Column, size_of_record, write};
use crate::names::ColdloopStatus;
use coldloop::saturation::{self, Line, Response, State};
use coldloop::units::{SpecificHeat, Speed, in_kelvins};
use coldloop::{Error, ErrorKind, Quantity, Reference};
use core::mem::size_of;

/// Temperature (K) and absolute pressure (Pa).
pub const COLDLOOP_PAIR_TP: u32 = 1;
/// Temperature (K) and density (kg/m3).
pub const COLDLOOP_PAIR_TD: u32 = 2;
/// Temperature (K) and quality (0 liquid, 1 vapour).
pub const COLDLOOP_PAIR_TQ: u32 = 3;
/// Absolute pressure (Pa) and quality (0 liquid, 1 vapour).
pub const COLDLOOP_PAIR_PQ: u32 = 4;
/// Absolute pressure (Pa) and enthalpy (J/kg).
pub const COLDLOOP_PAIR_PH: u32 = 5;
/// Absolute pressure (Pa) and entropy (J/(kg K)).
pub const COLDLOOP_PAIR_PS: u32 = 6;
/// Enthalpy (J/kg) and entropy (J/(kg K)).
pub const COLDLOOP_PAIR_HS: u32 = 7;

/// A state in SI. Set `size` to sizeof(coldloop_state) before the call.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopState {
    /// sizeof(coldloop_state), so that the struct can grow.
    pub size: usize,
    /// A coldloop_phase; 0 where there is no state.
    pub phase: u32,
    /// Mass fraction of vapour, where has_quality is 1; otherwise 0.
    pub quality: f64,
    /// Temperature, K.
    pub temperature_k: f64,
    /// Pressure above vacuum, Pa.
    pub pressure_pa_abs: f64,
    /// Molar density, mol/m3.
    pub density_mol_m3: f64,
    /// Density, kg/m3.
    pub density_kg_m3: f64,
    /// Specific enthalpy, J/kg, from the reference state.
    pub enthalpy_j_kg: f64,
    /// Specific entropy, J/(kg K), from the reference state.
    pub entropy_j_kg_k: f64,
    /// Specific internal energy, J/kg, from the reference state.
    pub internal_energy_j_kg: f64,
    /// Specific heat at constant volume, J/(kg K); where has_response is 0 it is 0, as all that follow.
    pub cv_j_kg_k: f64,
    /// Specific heat at constant pressure, J/(kg K).
    pub cp_j_kg_k: f64,
    /// Speed of sound, m/s.
    pub speed_of_sound_m_s: f64,
    /// (dT/dp) at constant enthalpy, K/Pa.
    pub joule_thomson_k_pa: f64,
    /// (dp/dT) at constant density, Pa/K.
    pub pressure_slope_pa_k: f64,
    /// (dp/drho) at constant temperature, J/mol.
    pub dp_drho_j_mol: f64,
    /// Isothermal compressibility, 1/Pa.
    pub isothermal_compressibility_1_pa: f64,
    /// Isobaric expansion, 1/K.
    pub isobaric_expansion_1_k: f64,
    /// 1 in two phases, where there is a quality; 0 elsewhere.
    pub has_quality: u32,
    /// 1 where the figures from cv_j_kg_k on have a meaning: in one phase, and in a saturated liquid or vapour (quality exactly
    /// 0 or 1); 0 where liquid and vapour are present together, and at the critical point.
    pub has_response: u32,
}

const NAN: f64 = f64::NAN;

sized!(
    ColdloopState,
    Self {
        size: 0,
        phase: 0,
        quality: NAN,
        temperature_k: NAN,
        pressure_pa_abs: NAN,
        density_mol_m3: NAN,
        density_kg_m3: NAN,
        enthalpy_j_kg: NAN,
        entropy_j_kg_k: NAN,
        internal_energy_j_kg: NAN,
        cv_j_kg_k: NAN,
        cp_j_kg_k: NAN,
        speed_of_sound_m_s: NAN,
        joule_thomson_k_pa: NAN,
        pressure_slope_pa_k: NAN,
        dp_drho_j_mol: NAN,
        isothermal_compressibility_1_pa: NAN,
        isobaric_expansion_1_k: NAN,
        has_quality: 0,
        has_response: 0,
    }
);

impl From<State> for ColdloopState {
    fn from(state: State) -> Self {
        // A figure that a state does not have is 0, and its flag says so: NaN is for failures.
        let absent = Response {
            cv: SpecificHeat::from_j_kg_k(0.0),
            cp: SpecificHeat::from_j_kg_k(0.0),
            speed_of_sound: Speed::from_m_s(0.0),
            joule_thomson_k_pa: 0.0,
            dp_dt_pa_k: 0.0,
            dp_drho_j_mol: 0.0,
            isothermal_compressibility_1_pa: 0.0,
            isobaric_expansion_1_k: 0.0,
        };
        let response = state.response.unwrap_or(absent);
        Self {
            size: 0,
            phase: state.phase.code(),
            quality: state.quality.unwrap_or(0.0),
            temperature_k: in_kelvins(state.temperature()),
            pressure_pa_abs: state.pressure().pa(),
            density_mol_m3: state.molar_density().mol_m3(),
            density_kg_m3: state.density().kg_m3(),
            enthalpy_j_kg: state.enthalpy().j_kg(),
            entropy_j_kg_k: state.entropy().j_kg_k(),
            internal_energy_j_kg: state.internal_energy().j_kg(),
            cv_j_kg_k: response.cv.j_kg_k(),
            cp_j_kg_k: response.cp.j_kg_k(),
            speed_of_sound_m_s: response.speed_of_sound.m_s(),
            joule_thomson_k_pa: response.joule_thomson_k_pa,
            pressure_slope_pa_k: response.dp_dt_pa_k,
            dp_drho_j_mol: response.dp_drho_j_mol,
            isothermal_compressibility_1_pa: response.isothermal_compressibility_1_pa,
            isobaric_expansion_1_k: response.isobaric_expansion_1_k,
            has_quality: u32::from(state.quality.is_some()),
            has_response: u32::from(state.response.is_some()),
        }
    }
}

/// A function of the library from two figures to a state.
pub(crate) type Pair = fn(Line, f64, f64, Reference) -> Result<State, Error>;

fn one(
    pair: Pair,
    (refrigerant, reference): (u32, u32),
    (first, second): (f64, f64),
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    record(state, error, || {
        let reference = member(reference, Reference::from_code)?;
        Ok(pair(saturation::line_of(known(refrigerant)?), first, second, reference)?.into())
    })
}

fn state_td(line: Line, t_k: f64, rho_kg_m3: f64, reference: Reference) -> Result<State, Error> {
    line.state_t_rho(t_k, rho_kg_m3 / line.molar_mass(), reference)
}

/// The state at a temperature and pressure.
///
/// Errors: those above, and TWO_PHASE on the saturation line, where the two do not fix a state.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_temperature_pressure(
    refrigerant: u32,
    reference: u32,
    temperature_k: f64,
    pressure_pa_abs: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (temperature_k, pressure_pa_abs);
    one(Line::state_tp, (refrigerant, reference), figures, state, error)
}

/// The state at a temperature and a density, kg/m3.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_temperature_density(
    refrigerant: u32,
    reference: u32,
    temperature_k: f64,
    density_kg_m3: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (temperature_k, density_kg_m3);
    one(state_td, (refrigerant, reference), figures, state, error)
}

/// The state on the saturation line at a temperature and a quality, 0 (liquid) to 1 (vapour).
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_temperature_quality(
    refrigerant: u32,
    reference: u32,
    temperature_k: f64,
    quality: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (temperature_k, quality);
    one(Line::state_tq, (refrigerant, reference), figures, state, error)
}

/// The state on the saturation line at a pressure and a quality, 0 (liquid) to 1 (vapour).
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_pressure_quality(
    refrigerant: u32,
    reference: u32,
    pressure_pa_abs: f64,
    quality: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (pressure_pa_abs, quality);
    one(Line::state_pq, (refrigerant, reference), figures, state, error)
}

/// The state at a pressure and a specific enthalpy, J/kg.
///
/// Errors: those above, and NO_CONVERGENCE with the relative residual as its value.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_pressure_enthalpy(
    refrigerant: u32,
    reference: u32,
    pressure_pa_abs: f64,
    enthalpy_j_kg: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (pressure_pa_abs, enthalpy_j_kg);
    one(Line::state_ph, (refrigerant, reference), figures, state, error)
}

/// The state at a pressure and a specific entropy, J/(kg K). Errors as coldloop_state_pressure_enthalpy.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_pressure_entropy(
    refrigerant: u32,
    reference: u32,
    pressure_pa_abs: f64,
    entropy_j_kg_k: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (pressure_pa_abs, entropy_j_kg_k);
    one(Line::state_ps, (refrigerant, reference), figures, state, error)
}

/// The state at a specific enthalpy, J/kg, and a specific entropy, J/(kg K). Errors as coldloop_state_pressure_enthalpy.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_state_enthalpy_entropy(
    refrigerant: u32,
    reference: u32,
    enthalpy_j_kg: f64,
    entropy_j_kg_k: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (enthalpy_j_kg, entropy_j_kg_k);
    one(Line::state_hs, (refrigerant, reference), figures, state, error)
}

/// The liquid at a temperature (K) below its saturation pressure (Pa above vacuum), which has not boiled yet: an
/// extrapolation of the equation of state, between the saturation line and the spinodal.
///
/// Errors: as coldloop_state_temperature_pressure; OUT_OF_RANGE in pressure with the spinodal and the saturation line as bounds.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_superheated_liquid(
    refrigerant: u32,
    reference: u32,
    temperature_k: f64,
    pressure_pa_abs: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (temperature_k, pressure_pa_abs);
    one(
        Line::superheated_liquid,
        (refrigerant, reference),
        figures,
        state,
        error,
    )
}

/// The vapour at a temperature (K) above its saturation pressure (Pa above vacuum), which has not condensed yet. Errors
/// as coldloop_superheated_liquid.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_subcooled_vapour(
    refrigerant: u32,
    reference: u32,
    temperature_k: f64,
    pressure_pa_abs: f64,
    state: *mut ColdloopState,
    error: *mut ColdloopError,
) -> u32 {
    let figures = (temperature_k, pressure_pa_abs);
    one(Line::subcooled_vapour, (refrigerant, reference), figures, state, error)
}

/// States of `count` rows; `pair` is one of COLDLOOP_PAIR_TP to COLDLOOP_PAIR_HS and says what the two columns are.
///
/// The strides are as for coldloop_dew_pressures. The `size` of the first state has to be set and counts for all. A row
/// without an answer has phase 0 and NaN figures, and the rest are computed all the same; `failed` (may be NULL)
/// receives how many there were, and status and `error` are those of the first.
///
/// Errors: UNKNOWN_NAME also for a number that is no pair, otherwise those of the function of the pair.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_states(
    refrigerant: u32,
    reference: u32,
    pair: u32,
    count: usize,
    first: *const f64,
    first_stride: isize,
    second: *const f64,
    second_stride: isize,
    states: *mut ColdloopState,
    states_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let output = Answers::new(states, states_stride);
    let size = if count > 0 { size_of_record(states) } else { None };
    let size = size.unwrap_or(size_of::<ColdloopState>());
    if size < size_of::<ColdloopState>() {
        let status = answer(error, || Err(Failure::Door(ColdloopStatus::StructSize)));
        write(failed, 0);
        return status;
    }
    let columns = [Column::new(first, first_stride), Column::new(second, second_stride)];
    let blank = ColdloopState::BLANK.sized(size);
    let given = pair_of(pair).and_then(|pair| {
        let reference = member(reference, Reference::from_code)?;
        Ok((pair, saturation::line_of(known(refrigerant)?), reference))
    });
    rows(count, columns, output, (failed, error), blank, |[first, second]| {
        let (pair, line, reference) = given?;
        Ok(ColdloopState::from(pair(line, first, second, reference)?).sized(size))
    })
}

pub(crate) fn pair_of(pair: u32) -> Result<Pair, Error> {
    Ok(match pair {
        COLDLOOP_PAIR_TP => Line::state_tp,
        COLDLOOP_PAIR_TD => state_td,
        COLDLOOP_PAIR_TQ => Line::state_tq,
        COLDLOOP_PAIR_PQ => Line::state_pq,
        COLDLOOP_PAIR_PH => Line::state_ph,
        COLDLOOP_PAIR_PS => Line::state_ps,
        COLDLOOP_PAIR_HS => Line::state_hs,
        _ => {
            return Err(Error {
                value: f64::from(pair),
                ..Error::of(ErrorKind::UnknownName, Quantity::Name)
            });
        }
    })
}

/// The second (m3/mol) and third (m6/mol2) virial coefficients of the equation of state at a temperature; either place
/// may be NULL.
///
/// Errors: UNKNOWN_NAME, NOT_FINITE, OUT_OF_RANGE; NOT_AVAILABLE for a blend.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_virial_coefficients(
    refrigerant: u32,
    temperature_k: f64,
    second_m3_mol: *mut f64,
    third_m6_mol2: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    let mut coefficients = (NAN, NAN);
    let status = answer(error, || {
        let pure = saturation::pure(known(refrigerant)?)?;
        coefficients = (
            pure.second_virial_m3_mol(temperature_k)?,
            pure.third_virial_m6_mol2(temperature_k)?,
        );
        Ok(())
    });
    write(second_m3_mol, coefficients.0);
    write(third_m6_mol2, coefficients.1);
    status
}
