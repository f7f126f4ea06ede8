//! From readings to a verdict.

use crate::errors::{raised, refused};
use coldloop::diagnosis::{Settings, diagnose as judge};
use coldloop::{Error, intake, report};
use pyo3::prelude::*;

/// The answer as JSON and as text for readings in JSON.
#[pyfunction]
pub(crate) fn diagnose(py: Python<'_>, readings_json: &str) -> PyResult<(String, String)> {
    let case = intake::case_from_json(readings_json).map_err(|refusal| refused(py, &refusal))?;
    let answer: Result<(String, String), Error> = py.detach(|| {
        let diagnosis = judge(&case, &Settings::default())?;
        let units = report::Units::as_written(readings_json);
        Ok((
            report::json(&case, &diagnosis)?,
            report::text(&case, &diagnosis, units)?,
        ))
    });
    answer.map_err(|error| raised(py, error))
}
