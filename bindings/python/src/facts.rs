//! What is published of a refrigerant.

use crate::errors::raised;
use crate::saturation::known;
use coldloop::fluid::Sourced;
use coldloop::saturation::of;
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// The facts of a refrigerant by the names of `coldloop.Facts`; what is not known is `None`.
#[pyfunction]
pub(crate) fn facts(py: Python<'_>, code: u32) -> PyResult<Bound<'_, PyDict>> {
    let refrigerant = known(code).map_err(|error| raised(py, error))?;
    let pure = of(refrigerant);
    let (fluid, facts) = (pure.fluid, &pure.fluid.facts);
    let molar_mass = fluid.equation.molar_mass;

    let composition = PyDict::new(py);
    composition.set_item(refrigerant.id(), 1.0)?;
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
    all.set_item("critical_temperature_k", pure.critical_t_k)?;
    all.set_item("critical_pressure_pa_abs", pure.critical_p_pa)?;
    all.set_item("critical_density_kg_m3", pure.critical_rho_mol_m3 * molar_mass)?;
    all.set_item("lowest_temperature_k", fluid.lowest_t_k)?;
    all.set_item("highest_temperature_k", fluid.highest_t_k)?;
    all.set_item("highest_pressure_pa_abs", fluid.highest_p_pa)?;
    all.set_item("equation", facts.equation)?;
    all.set_item("equation_doi", facts.equation_doi)?;
    all.set_item("equation_uncertainty", facts.equation_uncertainty)?;
    all.set_item("sources", sources)?;
    Ok(all)
}

fn note<T>(sources: &Bound<'_, PyDict>, name: &str, fact: Option<&Sourced<T>>) -> PyResult<()> {
    match fact {
        Some(fact) => sources.set_item(name, fact.source),
        None => Ok(()),
    }
}
