//! The surrounding air.

use crate::arrays::{binary, unary};
use coldloop::units::{absolute_pressure_pa, standard_pressure_pa};
use pyo3::prelude::*;

/// Pressure of the standard atmosphere, Pa.
#[pyfunction]
pub(crate) fn standard_pressure<'py>(altitude_m: &Bound<'py, PyAny>, strict: bool) -> PyResult<Bound<'py, PyAny>> {
    unary(altitude_m, strict, standard_pressure_pa)
}

/// Pressure above vacuum of what a gauge shows, Pa.
#[pyfunction]
pub(crate) fn absolute_pressure<'py>(
    pressure_pa_gauge: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
) -> PyResult<Bound<'py, PyAny>> {
    binary(pressure_pa_gauge, air_pa_abs, strict, absolute_pressure_pa)
}
