//! States, by columns.

use crate::arrays::{Answer, Columns, each, several};
use crate::errors::{raised, unknown};
use crate::saturation::known;
use coldloop::saturation::{Line, Pure, State, line_of};
use coldloop::units::in_kelvins;
use coldloop::{Error, Phase, Reference};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// The columns that `state` returns: code of the phase, quality, then figures in SI; NaN where a state has none.
const COLUMNS: usize = 15;

/// A function of the library from two figures to a state.
pub(crate) type Solve = fn(Line, f64, f64, Reference) -> Result<State, Error>;

/// The states at two given figures, element by element: floats for floats, arrays otherwise; with `strict`, the first
/// element that fails is raised, otherwise its figures are NaN.
#[pyfunction]
pub(crate) fn state<'py>(
    py: Python<'py>,
    given: &str,
    first: &Bound<'py, PyAny>,
    second: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    reference: &str,
) -> Columns<'py> {
    let reference =
        Reference::from_id(reference).ok_or_else(|| unknown(py, reference, Reference::ALL.map(Reference::id)))?;
    let line = line_of(known(code).map_err(|error| raised(py, error))?);
    let solve = solve(given)?;
    let columns = several(py, [first, second], strict, |[first, second]| {
        Ok(figures(&solve(line, first, second, reference)?))
    })?;
    Ok(columns.into())
}

/// The function from the figures of these names to a state.
pub(crate) fn solve(given: &str) -> PyResult<Solve> {
    Ok(match given {
        "temperature_k pressure_pa_abs" => Line::state_tp,
        "temperature_k quality" => Line::state_tq,
        "pressure_pa_abs quality" => Line::state_pq,
        "pressure_pa_abs enthalpy_j_kg" => Line::state_ph,
        "pressure_pa_abs entropy_j_kg_k" => Line::state_ps,
        "enthalpy_j_kg entropy_j_kg_k" => Line::state_hs,
        "temperature_k density_kg_m3" => {
            |line, t_k, rho_kg_m3, reference| line.state_t_rho(t_k, rho_kg_m3 / line.molar_mass(), reference)
        }
        "superheated liquid" => Line::superheated_liquid,
        "subcooled vapour" => Line::subcooled_vapour,
        _ => return Err(PyValueError::new_err("these two do not fix a state here")),
    })
}

fn figures(state: &State) -> [f64; COLUMNS] {
    let response =
        |figure: fn(&coldloop::saturation::Response) -> f64| state.response.as_ref().map_or(f64::NAN, figure);
    [
        f64::from(state.phase.code()),
        state.quality.unwrap_or(f64::NAN),
        in_kelvins(state.temperature()),
        state.pressure().pa(),
        state.density().kg_m3(),
        state.enthalpy().j_kg(),
        state.entropy().j_kg_k(),
        state.internal_energy().j_kg(),
        response(|r| r.cp.j_kg_k()),
        response(|r| r.cv.j_kg_k()),
        response(|r| r.speed_of_sound.m_s()),
        response(|r| r.joule_thomson_k_pa),
        response(|r| r.dp_dt_pa_k),
        response(|r| r.isothermal_compressibility_1_pa),
        response(|r| r.isobaric_expansion_1_k),
    ]
}

/// Second virial coefficient, m3/mol.
#[pyfunction]
pub(crate) fn second_virial<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    virial(py, temperature_k, strict, code, Pure::second_virial_m3_mol)
}

/// Third virial coefficient, m6/mol2.
#[pyfunction]
pub(crate) fn third_virial<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    virial(py, temperature_k, strict, code, Pure::third_virial_m6_mol2)
}

fn virial<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    coefficient: fn(&Pure, f64) -> Result<f64, Error>,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        coefficient(line_of(known(code)?).pure()?, t_k)
    })
}

/// The ids of the phases by code; the first stands for no state.
#[pyfunction]
pub(crate) fn phases() -> Vec<&'static str> {
    std::iter::once("")
        .chain(Phase::ALL.iter().map(|phase| phase.id()))
        .collect()
}
