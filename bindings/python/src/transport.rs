//! Viscosity, thermal conductivity and surface tension.

use crate::arrays::{Answer, each};
use crate::saturation::known;
use crate::state::{Solve, solve};
use coldloop::saturation::{State, line_of};
use coldloop::{Error, Reference, Refrigerant, transport};
use pyo3::prelude::*;

/// A transport property of a refrigerant in a state.
type Property = fn(Refrigerant, &State) -> Result<f64, Error>;

/// Dynamic viscosity, Pa s, in the states at two given figures.
#[pyfunction]
pub(crate) fn viscosity<'py>(
    py: Python<'py>,
    first: &Bound<'py, PyAny>,
    second: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    given: &str,
) -> Answer<'py> {
    property(
        py,
        [first, second],
        strict,
        code,
        (solve(given)?, transport::viscosity_pa_s),
    )
}

/// Thermal conductivity, W/(m K), in the states at two given figures.
#[pyfunction]
pub(crate) fn conductivity<'py>(
    py: Python<'py>,
    first: &Bound<'py, PyAny>,
    second: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    given: &str,
) -> Answer<'py> {
    property(
        py,
        [first, second],
        strict,
        code,
        (solve(given)?, transport::conductivity_w_m_k),
    )
}

/// Surface tension, N/m.
#[pyfunction]
pub(crate) fn surface_tension<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        transport::surface_tension_n_m(known(code)?, t_k)
    })
}

fn property<'py>(
    py: Python<'py>,
    figures: [&Bound<'py, PyAny>; 2],
    strict: bool,
    code: u32,
    (solve, property): (Solve, Property),
) -> Answer<'py> {
    each(py, figures, strict, |[first, second]| {
        let refrigerant = known(code)?;
        // Transport properties do not depend on the reference state; every refrigerant with a correlation has this one.
        property(
            refrigerant,
            &solve(line_of(refrigerant), first, second, Reference::Iir)?,
        )
    })
}
