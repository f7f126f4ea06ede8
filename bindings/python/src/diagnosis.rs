//! From readings to a verdict.

use crate::errors::{raised, refused};
use crate::settings::settings;
use coldloop::diagnosis::diagnose as judge;
use coldloop::expected::{Band, Bands};
use coldloop::units::{difference_in_kelvins, in_kelvins};
use coldloop::{Error, intake, report, vehicle};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// The answer as JSON and as text for readings in JSON.
#[pyfunction]
pub(crate) fn diagnose(py: Python<'_>, readings_json: &str, options: &Bound<'_, PyDict>) -> PyResult<(String, String)> {
    let settings = settings(py, options)?;
    let case = intake::case_from_json(readings_json).map_err(|refusal| refused(py, &refusal))?;
    let answer: Result<(String, String), Error> = py.detach(|| {
        let diagnosis = judge(&case, &settings)?;
        let units = report::Units::as_written(readings_json);
        Ok((
            report::json(&case, &diagnosis)?,
            report::text(&case, &diagnosis, units)?,
        ))
    });
    answer.map_err(|error| raised(py, error))
}

/// What a sound system shows in the conditions of readings in JSON: name of the reading with its unit, then the limits
/// of the 95 % band, of the 80 % band and the median, from low to high.
#[pyfunction]
pub(crate) fn expected<'py>(py: Python<'py>, readings_json: &str) -> PyResult<Bound<'py, PyDict>> {
    let case = intake::case_from_json(readings_json).map_err(|refusal| refused(py, &refusal))?;
    let bands = Bands::of(&case.system, &case.conditions).map_err(|error| raised(py, error))?;
    let all = PyDict::new(py);
    all.set_item("low_side_pa_gauge", limits(bands.low_side, |pressure| pressure.pa()))?;
    all.set_item("high_side_pa_gauge", limits(bands.high_side, |pressure| pressure.pa()))?;
    all.set_item("vent_k", limits(bands.vent, in_kelvins))?;
    all.set_item("approach_k", limits(bands.approach, difference_in_kelvins))?;
    all.set_item("superheat_k", limits(bands.superheat, difference_in_kelvins))?;
    all.set_item("subcooling_k", limits(bands.subcooling, difference_in_kelvins))?;
    all.set_item(
        "discharge_superheat_k",
        limits(bands.discharge_superheat, difference_in_kelvins),
    )?;
    all.set_item(
        "clutch_cycles_hz",
        bands.clutch_cycles_hz.map(|band| limits(band, |hz| hz)),
    )?;
    Ok(all)
}

fn limits<Q: Copy>(band: Band<Q>, si: impl Fn(Q) -> f64) -> [f64; 5] {
    [band.low_95, band.low_80, band.median, band.high_80, band.high_95].map(si)
}

/// What a vehicle reads, as JSON, for its description in JSON.
#[pyfunction]
pub(crate) fn simulate(py: Python<'_>, trial_json: &str) -> PyResult<String> {
    let trial = intake::trial_from_json(trial_json).map_err(|refusal| refused(py, &refusal))?;
    let simulation = py.detach(|| vehicle::simulate(&trial.vehicle, &trial.conditions, &trial.faults));
    simulation
        .map(|simulation| report::simulation_json(&simulation, trial.conditions.surroundings))
        .map_err(|error| raised(py, error))
}
