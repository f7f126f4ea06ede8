//! Bubble and dew.

use crate::arrays::{Answer, each, whole};
use coldloop::saturation::{self, Unanswered};
use coldloop::{Error, ErrorKind, Quantity, Refrigerant};
use pyo3::prelude::*;

/// The refrigerant of a code that came from `refrigerant(name)`.
pub(crate) fn known(code: u32) -> Result<Refrigerant, Error> {
    Refrigerant::from_code(code).ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))
}

/// One curve: of a refrigerant at one value, and over an array.
type One = fn(Refrigerant, f64) -> Result<f64, Error>;
type Many = fn(Refrigerant, &[f64], &mut [f64]) -> Result<(), Unanswered>;

fn curve<'py>(
    py: Python<'py>,
    argument: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    one: One,
    many: Many,
) -> Answer<'py> {
    whole(
        py,
        argument,
        strict,
        |x| one(known(code)?, x),
        |from, to| many(known(code)?, from, to).map_err(|unanswered| unanswered.error),
    )
}

/// Pressure at which the liquid begins to boil, Pa.
#[pyfunction]
pub(crate) fn bubble_pressure<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    let (one, many): (One, Many) = (saturation::bubble_pressure_pa, saturation::bubble_pressures_pa);
    curve(py, temperature_k, strict, code, one, many)
}

/// Pressure at which the vapour begins to condense, Pa.
#[pyfunction]
pub(crate) fn dew_pressure<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    let (one, many): (One, Many) = (saturation::dew_pressure_pa, saturation::dew_pressures_pa);
    curve(py, temperature_k, strict, code, one, many)
}

/// Temperature at which the liquid begins to boil, K.
#[pyfunction]
pub(crate) fn bubble_temperature<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    let (one, many): (One, Many) = (saturation::bubble_temperature_k, saturation::bubble_temperatures_k);
    curve(py, pressure_pa_abs, strict, code, one, many)
}

/// Temperature at which the vapour begins to condense, K.
#[pyfunction]
pub(crate) fn dew_temperature<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    let (one, many): (One, Many) = (saturation::dew_temperature_k, saturation::dew_temperatures_k);
    curve(py, pressure_pa_abs, strict, code, one, many)
}

/// Slope of the saturation line, Pa/K.
#[pyfunction]
pub(crate) fn saturation_slope<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        saturation::slope_pa_k(known(code)?, t_k)
    })
}

/// Heat that boils liquid into vapour, J/kg.
#[pyfunction]
pub(crate) fn latent_heat<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        saturation::latent_heat_j_kg(known(code)?, t_k)
    })
}

/// Density of the saturated liquid, kg/m3.
#[pyfunction]
pub(crate) fn liquid_density<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        let pure = saturation::of(known(code)?);
        Ok(pure.liquid(t_k)?.rho_mol_m3 * pure.fluid.equation.molar_mass)
    })
}

/// Density of the saturated vapour, kg/m3.
#[pyfunction]
pub(crate) fn vapour_density<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        let pure = saturation::of(known(code)?);
        Ok(pure.vapour(t_k)?.rho_mol_m3 * pure.fluid.equation.molar_mass)
    })
}
