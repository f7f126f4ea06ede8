//! The surrounding air.

use crate::arrays::{Answer, each};
use coldloop::units::{absolute_pressure_pa, standard_pressure_pa};
use pyo3::prelude::*;

/// Pressure of the standard atmosphere, Pa.
#[pyfunction]
pub(crate) fn standard_pressure<'py>(py: Python<'py>, altitude_m: &Bound<'py, PyAny>, strict: bool) -> Answer<'py> {
    each(py, [altitude_m], strict, |[altitude_m]| {
        standard_pressure_pa(altitude_m)
    })
}

/// Pressure above vacuum of what a gauge shows, Pa.
#[pyfunction]
pub(crate) fn absolute_pressure<'py>(
    py: Python<'py>,
    pressure_pa_gauge: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
) -> Answer<'py> {
    each(py, [pressure_pa_gauge, air_pa_abs], strict, |[gauge_pa, air_pa]| {
        absolute_pressure_pa(gauge_pa, air_pa)
    })
}
