//! The surrounding air.

use crate::arrays::{binary, unary};
use coldloop::units::{AbsolutePressure, GaugePressure, Surroundings, standard_pressure_pa};
use coldloop::{Error, Quantity};
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
    binary(pressure_pa_gauge, air_pa_abs, strict, |gauge, air| {
        if !gauge.is_finite() {
            return Err(Error::not_finite(Quantity::GaugePressure, gauge));
        }
        let air = Surroundings::measured(AbsolutePressure::from_pa(air))?;
        Ok(GaugePressure::from_pa(gauge).absolute(air).pa())
    })
}
