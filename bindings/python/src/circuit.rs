//! Superheat and subcooling.

use crate::arrays::{Answer, each};
use crate::saturation::known;
use coldloop::Error;
use coldloop::circuit::{Estimate, Reading, subcooling as subcooled, superheat as superheated};
use coldloop::units::{AbsolutePressure, GaugePressure, Pressure, Surroundings, Temperature, kelvins};
use pyo3::prelude::*;

/// Superheat, K; without air the pressure counts from vacuum, with air from there.
#[pyfunction]
pub(crate) fn superheat<'py>(
    py: Python<'py>,
    suction_line_k: &Bound<'py, PyAny>,
    pressure_pa: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    difference(
        py,
        [suction_line_k, pressure_pa, air_pa_abs],
        strict,
        |line, pressure, air| superheated(known(code)?, line, pressure, air),
    )
}

/// Subcooling, K; arguments as `superheat`.
#[pyfunction]
pub(crate) fn subcooling<'py>(
    py: Python<'py>,
    liquid_line_k: &Bound<'py, PyAny>,
    pressure_pa: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    difference(
        py,
        [liquid_line_k, pressure_pa, air_pa_abs],
        strict,
        |line, pressure, air| subcooled(known(code)?, line, pressure, air),
    )
}

fn difference<'py>(
    py: Python<'py>,
    arguments: [&Bound<'py, PyAny>; 3],
    strict: bool,
    f: impl Fn(Reading<Temperature>, Reading<Pressure>, Surroundings) -> Result<Estimate, Error> + Sync,
) -> Answer<'py> {
    let [line, pressure, air] = arguments;
    if air.is_none() {
        return each(py, [line, pressure], strict, |[line_k, pa]| {
            let pressure = Pressure::Absolute(AbsolutePressure::from_pa(pa));
            Ok(f(exact(kelvins(line_k)), exact(pressure), Surroundings::SEA_LEVEL)?.value)
        });
    }
    each(py, [line, pressure, air], strict, |[line_k, pa, air_pa]| {
        let pressure = Pressure::Gauge(GaugePressure::from_pa(pa));
        let air = Surroundings::measured(AbsolutePressure::from_pa(air_pa))?;
        Ok(f(exact(kelvins(line_k)), exact(pressure), air)?.value)
    })
}

const fn exact<Q>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: 0.0,
    }
}
