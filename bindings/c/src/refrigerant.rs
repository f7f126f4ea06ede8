//! Refrigerants
//!
//! A refrigerant is a number from coldloop_refrigerant; text names it by its ANSI/ASHRAE Standard 34 designation, which
//! may be written R-134a, R134a, r134a or 134a.

use crate::boundary::{Page, known, page, record, sized};
use crate::error::ColdloopError;
use crate::memory::write_codes;
use coldloop::{Refrigerant, report, saturation};
use core::ffi::c_char;

/// Writes at most `capacity` codes of refrigerants to `codes`, which may be NULL, and returns how many there are.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerants(codes: *mut u32, capacity: usize) -> usize {
    write_codes(
        Refrigerant::ALL.iter().map(|refrigerant| refrigerant.code()),
        codes,
        capacity,
    );
    Refrigerant::ALL.len()
}

/// Limits and published figures of a refrigerant, in SI; what is not known is NaN or 0. Set `size` to
/// sizeof(coldloop_facts).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopFacts {
    /// sizeof(coldloop_facts), so that the struct can grow.
    pub size: usize,
    /// A coldloop_safety_group; 0 where none is known.
    pub safety_group: u32,
    /// Whether `gwp` is only an upper bound: 1 or 0.
    pub gwp_is_upper_bound: u32,
    /// Molar mass, kg/mol.
    pub molar_mass_kg_mol: f64,
    /// Critical temperature of the equation of state, K: the upper end of the saturation line. The lines of a blend end at 0.99
    /// of it.
    pub critical_temperature_k: f64,
    /// Critical pressure of the equation of state, Pa.
    pub critical_pressure_pa_abs: f64,
    /// Critical density of the equation of state, kg/m3.
    pub critical_density_kg_m3: f64,
    /// The lowest temperature of the equation of state, K: the lower end of the saturation line.
    pub lowest_temperature_k: f64,
    /// The highest temperature of the equation of state, K.
    pub highest_temperature_k: f64,
    /// The highest pressure of the equation of state, Pa.
    pub highest_pressure_pa_abs: f64,
    /// The published uncertainty of the saturation pressure, relative.
    pub saturation_uncertainty: f64,
    /// Lower flammability limit in air, by volume, 0 to 1; NaN for a refrigerant that does not burn, and for a blend.
    pub flammability_limit_volume: f64,
    /// Lower flammability limit in air, kg/m3.
    pub flammability_limit_kg_m3: f64,
    /// Ozone depletion potential, R-11 being 1.
    pub ozone_depletion: f64,
    /// Global warming potential over 100 years of the latest report, carbon dioxide being 1.
    pub gwp: f64,
}

const NAN: f64 = f64::NAN;

sized!(
    ColdloopFacts,
    Self {
        size: 0,
        safety_group: 0,
        gwp_is_upper_bound: 0,
        molar_mass_kg_mol: NAN,
        critical_temperature_k: NAN,
        critical_pressure_pa_abs: NAN,
        critical_density_kg_m3: NAN,
        lowest_temperature_k: NAN,
        highest_temperature_k: NAN,
        highest_pressure_pa_abs: NAN,
        saturation_uncertainty: NAN,
        flammability_limit_volume: NAN,
        flammability_limit_kg_m3: NAN,
        ozone_depletion: NAN,
        gwp: NAN,
    }
);

/// The limits and published figures of a refrigerant. Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerant_facts(
    refrigerant: u32,
    facts: *mut ColdloopFacts,
    error: *mut ColdloopError,
) -> u32 {
    record(facts, error, || {
        let line = saturation::line_of(known(refrigerant)?);
        let facts = line.facts();
        let flammability = facts.flammability_limit.map(|limit| limit.value);
        let warming = facts.warming.last().map(|warming| warming.value);
        Ok(ColdloopFacts {
            size: 0,
            safety_group: facts.safety_group.map_or(0, |group| group.value.code()),
            gwp_is_upper_bound: u32::from(warming.is_some_and(|warming| warming.is_upper_bound)),
            molar_mass_kg_mol: line.molar_mass(),
            critical_temperature_k: line.critical_t_k(),
            critical_pressure_pa_abs: line.critical_p_pa(),
            critical_density_kg_m3: line.critical_rho_mol_m3() * line.molar_mass(),
            lowest_temperature_k: line.valid_temperatures().low,
            highest_temperature_k: line.valid_temperatures().high,
            highest_pressure_pa_abs: line.valid_pressures().high,
            saturation_uncertainty: facts.saturation_uncertainty.unwrap_or(NAN),
            flammability_limit_volume: flammability.and_then(|limit| limit.volume_fraction).unwrap_or(NAN),
            flammability_limit_kg_m3: flammability.and_then(|limit| limit.kg_m3).unwrap_or(NAN),
            ozone_depletion: facts.ozone_depletion.map_or(NAN, |potential| potential.value),
            gwp: warming.map_or(NAN, |warming| warming.value),
        })
    })
}

/// What is published of a refrigerant, with the source of each fact, as one JSON object: "name", "cas",
/// "safety_group", "flammability_limit", "ozone_depletion", "warming" by report, "equation" with its DOI and stated
/// uncertainty, "blend" with its components, the pairs without published parameters and the standard uncertainty (K) of
/// either line. What is not known is null. The text is written as coldloop_diagnose writes its answer.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, with an empty text.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerant_sources(
    refrigerant: u32,
    sources_json: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let out = Page::new(sources_json, capacity, length);
    page(out, error, || Ok(Ok(report::facts_json(known(refrigerant)?))))
}
