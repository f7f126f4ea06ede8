//! States, by columns.

use crate::errors::raised;
use crate::saturation::known;
use coldloop::saturation::{State, of};
use coldloop::{Error, ErrorKind, Phase, Quantity, Reference};
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// The columns that `state` returns: code of the phase, quality, then figures in SI; NaN where a state has none.
const COLUMNS: usize = 9;

/// The states at two given figures ("tp", "tq" or "pq"), element by element; with `strict`, the first element that
/// fails is raised, otherwise its figures are NaN and its phase is 0.
#[pyfunction]
pub(crate) fn state<'py>(
    py: Python<'py>,
    given: &str,
    first: PyReadonlyArray1<'py, f64>,
    second: PyReadonlyArray1<'py, f64>,
    strict: bool,
    code: u32,
    reference: &str,
) -> PyResult<Vec<Bound<'py, PyArray1<f64>>>> {
    let unknown = Error::of(ErrorKind::UnknownName, Quantity::Name);
    let reference = Reference::from_id(reference).ok_or_else(|| raised(py, unknown))?;
    let pure = of(known(code).map_err(|error| raised(py, error))?);
    let solve = match given {
        "tp" => |pure: &coldloop::saturation::Pure, t, p, r| pure.state_tp(t, p, r),
        "tq" => |pure: &coldloop::saturation::Pure, t, q, r| pure.state_tq(t, q, r),
        "pq" => |pure: &coldloop::saturation::Pure, p, q, r| pure.state_pq(p, q, r),
        _ => return Err(PyValueError::new_err("give tp, tq or pq")),
    };
    let (first, second) = (first.as_slice()?, second.as_slice()?);
    let columns: Result<[Vec<f64>; COLUMNS], Error> = py.detach(|| {
        let mut columns = [const { Vec::new() }; COLUMNS];
        for (&first, &second) in first.iter().zip(second) {
            let figures = match solve(pure, first, second, reference) {
                Ok(state) => figures(&state),
                Err(error) if strict => return Err(error),
                Err(_) => {
                    let mut none = [f64::NAN; COLUMNS];
                    none[0] = 0.0;
                    none
                }
            };
            for (column, figure) in columns.iter_mut().zip(figures) {
                column.push(figure);
            }
        }
        Ok(columns)
    });
    let columns = columns.map_err(|error| raised(py, error))?;
    Ok(columns
        .into_iter()
        .map(|column| PyArray1::from_vec(py, column))
        .collect())
}

fn figures(state: &State) -> [f64; COLUMNS] {
    let (cp, w) = state.response.map_or((f64::NAN, f64::NAN), |r| (r.cp_j_kg_k, r.w_m_s));
    [
        f64::from(state.phase.code()),
        state.quality.unwrap_or(f64::NAN),
        state.t_k,
        state.p_pa,
        state.rho_kg_m3,
        state.h_j_kg,
        state.s_j_kg_k,
        cp,
        w,
    ]
}

/// The ids of the phases by code; the first stands for no state.
#[pyfunction]
pub(crate) fn phases() -> Vec<&'static str> {
    std::iter::once("")
        .chain(Phase::ALL.iter().map(|phase| phase.id()))
        .collect()
}
