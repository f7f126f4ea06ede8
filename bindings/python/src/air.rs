//! The surrounding air: the standard atmosphere, moist air, and water under vacuum.

use crate::arrays::{Answer, Columns, each, several};
use coldloop::Error;
use coldloop::air::{self, MoistAir};
use coldloop::units::{absolute_pressure_pa, gauge_pressure_pa, standard_altitude_m, standard_pressure_pa};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// Pressure of the standard atmosphere, Pa.
#[pyfunction]
pub(crate) fn standard_pressure<'py>(py: Python<'py>, altitude_m: &Bound<'py, PyAny>, strict: bool) -> Answer<'py> {
    each(py, [altitude_m], strict, |[altitude_m]| {
        standard_pressure_pa(altitude_m)
    })
}

/// Temperature of the standard atmosphere, K.
#[pyfunction]
pub(crate) fn standard_temperature<'py>(py: Python<'py>, altitude_m: &Bound<'py, PyAny>, strict: bool) -> Answer<'py> {
    each(py, [altitude_m], strict, |[altitude_m]| {
        air::standard_temperature_k(altitude_m)
    })
}

/// Density of the standard atmosphere, kg/m3.
#[pyfunction]
pub(crate) fn standard_density<'py>(py: Python<'py>, altitude_m: &Bound<'py, PyAny>, strict: bool) -> Answer<'py> {
    each(py, [altitude_m], strict, |[altitude_m]| {
        air::standard_density_kg_m3(altitude_m)
    })
}

/// Altitude of a pressure in the standard atmosphere, m.
#[pyfunction]
pub(crate) fn standard_altitude<'py>(py: Python<'py>, air_pa_abs: &Bound<'py, PyAny>, strict: bool) -> Answer<'py> {
    each(py, [air_pa_abs], strict, |[p_pa]| standard_altitude_m(p_pa))
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

/// Pressure at which water boils or ice sublimes, Pa.
#[pyfunction]
pub(crate) fn water_saturation_pressure<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
) -> Answer<'py> {
    each(py, [temperature_k], strict, |[t_k]| {
        air::water_saturation_pressure_pa(t_k)
    })
}

/// What a gauge shows of a pressure above vacuum, Pa.
#[pyfunction]
pub(crate) fn gauge_pressure<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
) -> Answer<'py> {
    each(py, [pressure_pa_abs, air_pa_abs], strict, |[p_pa, air_pa]| {
        gauge_pressure_pa(p_pa, air_pa)
    })
}

/// Temperature at which water boils or ice sublimes, K.
#[pyfunction]
pub(crate) fn water_boiling_point<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
) -> Answer<'py> {
    each(py, [pressure_pa_abs], strict, |[p_pa]| air::water_boiling_point_k(p_pa))
}

/// How much more vapour saturated air holds than the same space without air.
#[pyfunction]
pub(crate) fn enhancement_factor<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
) -> Answer<'py> {
    each(py, [temperature_k, pressure_pa_abs], strict, |[t_k, p_pa]| {
        air::enhancement_factor(t_k, p_pa)
    })
}

type Build = fn(f64, f64, f64) -> Result<MoistAir, Error>;

/// The figures of moist air of one given humidity; the frost point of air too dry for one is NaN.
#[pyfunction]
pub(crate) fn moist_air<'py>(
    py: Python<'py>,
    given: &str,
    temperature_k: &Bound<'py, PyAny>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    humidity: &Bound<'py, PyAny>,
    strict: bool,
) -> Columns<'py> {
    let build: Build = match given {
        "relative_humidity" => MoistAir::from_relative_humidity,
        "humidity_ratio" => MoistAir::from_humidity_ratio,
        "dew_point_k" => MoistAir::from_dew_point,
        "wet_bulb_k" => MoistAir::from_wet_bulb,
        "enthalpy_j_kg" => MoistAir::from_enthalpy,
        _ => return Err(PyValueError::new_err("this is not a humidity")),
    };
    let arguments = [temperature_k, pressure_pa_abs, humidity];
    let columns = several(py, arguments, strict, |[t_k, p_pa, humidity]| {
        let air = build(t_k, p_pa, humidity)?;
        Ok([
            air.t_k(),
            air.p_pa(),
            air.relative_humidity(),
            air.humidity_ratio(),
            air.dew_point_k().unwrap_or(f64::NAN),
            air.wet_bulb_k()?,
            air.vapour_pressure_pa(),
            air.enthalpy_j_kg(),
            air.volume_m3_kg(),
            air.density_kg_m3(),
        ])
    })?;
    Ok(columns.into())
}
