//! What is published of a refrigerant.

use crate::errors::raised;
use crate::saturation::known;
use coldloop::saturation::Sourced;
use coldloop::saturation::{Line, line_of};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// The facts of a refrigerant by the names of `coldloop.Facts`; what is not known is `None`.
#[pyfunction]
pub(crate) fn facts(py: Python<'_>, code: u32) -> PyResult<Bound<'_, PyDict>> {
    let refrigerant = known(code).map_err(|error| raised(py, error))?;
    let line = line_of(refrigerant);
    let facts = line.facts();
    let molar_mass = line.molar_mass();

    let composition = PyDict::new(py);
    match line {
        Line::Pure(_) => composition.set_item(refrigerant.id(), 1.0)?,
        Line::Blend(blend) => {
            for part in blend.parts {
                composition.set_item(part.refrigerant.id(), part.mass_fraction)?;
            }
        }
    }
    let (warming, bounds, sources) = (PyDict::new(py), PyDict::new(py), PyDict::new(py));
    for row in facts.warming {
        warming.set_item(row.value.report, row.value.value)?;
        bounds.set_item(row.value.report, row.value.is_upper_bound)?;
        sources.set_item(format!("gwp {}", row.value.report), row.source)?;
    }
    note(&sources, "safety_group", facts.safety_group.as_ref())?;
    note(&sources, "flammability", facts.flammability_limit.as_ref())?;
    note(&sources, "ozone_depletion", facts.ozone_depletion.as_ref())?;
    let burns = facts.flammability_limit.as_ref().map(|limit| limit.value);

    let all = PyDict::new(py);
    all.set_item("designation", refrigerant.id())?;
    all.set_item("chemical_name", facts.name)?;
    all.set_item("cas_number", facts.cas)?;
    all.set_item("composition", composition)?;
    all.set_item("molar_mass_kg_mol", molar_mass)?;
    all.set_item(
        "safety_group",
        facts.safety_group.as_ref().map(|group| group.value.id()),
    )?;
    all.set_item(
        "flammability_limit_volume",
        burns.and_then(|limit| limit.volume_fraction),
    )?;
    all.set_item("flammability_limit_kg_m3", burns.and_then(|limit| limit.kg_m3))?;
    all.set_item("ozone_depletion", facts.ozone_depletion.as_ref().map(|row| row.value))?;
    all.set_item("gwp", warming)?;
    all.set_item("gwp_is_upper_bound", bounds)?;
    all.set_item("critical_temperature_k", line.critical_t_k())?;
    all.set_item("critical_pressure_pa_abs", line.critical_p_pa())?;
    all.set_item("critical_density_kg_m3", line.critical_rho_mol_m3() * molar_mass)?;
    all.set_item("lowest_temperature_k", line.valid_temperatures().low)?;
    all.set_item("highest_temperature_k", line.valid_temperatures().high)?;
    all.set_item("highest_pressure_pa_abs", line.valid_pressures().high)?;
    all.set_item("equation", facts.equation)?;
    all.set_item("equation_doi", facts.equation_doi)?;
    all.set_item("equation_uncertainty", facts.equation_uncertainty)?;
    let blend = match line {
        Line::Pure(_) => None,
        Line::Blend(blend) => Some(blend),
    };
    let pairs: Vec<(&str, &str)> = blend.map_or(Vec::new(), |blend| {
        let pairs = blend.estimated_pairs.iter();
        pairs.map(|[one, other]| (one.id(), other.id())).collect()
    });
    all.set_item("bubble_uncertainty_k", blend.map(|blend| blend.bubble.uncertainty_k))?;
    all.set_item("dew_uncertainty_k", blend.map(|blend| blend.dew.uncertainty_k))?;
    all.set_item("bubble_is_reliable", blend.is_none_or(|blend| blend.bubble.is_reliable))?;
    all.set_item("estimated_pairs", pairs)?;
    all.set_item("on_the_road", blend.map(|blend| blend.on_the_road))?;
    if let Some(blend) = blend {
        sources.set_item("composition", blend.composition_source)?;
    }
    all.set_item("sources", sources)?;
    Ok(all)
}

fn note<T>(sources: &Bound<'_, PyDict>, name: &str, fact: Option<&Sourced<T>>) -> PyResult<()> {
    match fact {
        Some(fact) => sources.set_item(name, fact.source),
        None => Ok(()),
    }
}
