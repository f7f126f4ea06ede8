//! Bubble and dew.

use crate::arrays::{Answer, each};
use coldloop::saturation::{bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use coldloop::{Error, ErrorKind, Quantity, Refrigerant};
use pyo3::prelude::*;

/// The refrigerant of a code that came from `refrigerant(name)`.
pub(crate) fn known(code: u32) -> Result<Refrigerant, Error> {
    Refrigerant::from_code(code).ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))
}

/// Pressure at which the liquid begins to boil, Pa.
#[pyfunction]
pub(crate) fn bubble_pressure<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        bubble_pressure_pa(known(code)?, t_k)
    })
}

/// Pressure at which the vapour begins to condense, Pa.
#[pyfunction]
pub(crate) fn dew_pressure<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| dew_pressure_pa(known(code)?, t_k))
}

/// Temperature at which the liquid begins to boil, K.
#[pyfunction]
pub(crate) fn bubble_temperature<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [pressure_pa_abs], strict, |[p_pa]| {
        bubble_temperature_k(known(code)?, p_pa)
    })
}

/// Temperature at which the vapour begins to condense, K.
#[pyfunction]
pub(crate) fn dew_temperature<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [pressure_pa_abs], strict, |[p_pa]| {
        dew_temperature_k(known(code)?, p_pa)
    })
}
