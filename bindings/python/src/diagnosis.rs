//! From readings to a verdict, a plan and a proof: text in, text out.

use crate::errors::{raised, refused, unknown};
use crate::tree::Told;
use coldloop::diagnosis::Settings;
use coldloop::evaluate::{Priors, evaluate as evaluated};
use coldloop::expected::{Band, Bands, SoundModel};
use coldloop::intake::{self, Refusal, Visit};
use coldloop::units::{Frequency, difference_in_kelvins, in_kelvins};
use coldloop::{Fault, Picture, report, vehicle};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// The answer to readings as a text.
#[pyfunction]
#[pyo3(signature = (readings, settings=None))]
pub(crate) fn diagnose(py: Python<'_>, readings: &str, settings: Option<&str>) -> PyResult<Told> {
    let tree = py.detach(|| report::visit_tree(&*visit(readings, settings)?));
    tree.map(Told).map_err(|refusal| refused(py, &refusal))
}

/// The answer for people.
#[pyfunction]
#[pyo3(signature = (readings, settings=None))]
pub(crate) fn report_text(py: Python<'_>, readings: &str, settings: Option<&str>) -> PyResult<String> {
    told(py, || {
        report::visit_text(&*visit(readings, settings)?, report::Units::as_written(readings))
    })
}

/// The answer as an HTML document, or as a part of another one.
#[pyfunction]
#[pyo3(signature = (readings, settings=None, part=false))]
pub(crate) fn page_html(py: Python<'_>, readings: &str, settings: Option<&str>, part: bool) -> PyResult<String> {
    told(py, || {
        let (visit, units) = (visit(readings, settings)?, report::Units::as_written(readings));
        if part {
            report::html_part(&visit, units)
        } else {
            report::html(&visit, units)
        }
    })
}

/// A drawing as SVG; `None` where there is nothing to draw.
#[pyfunction]
#[pyo3(signature = (readings, picture, settings=None))]
pub(crate) fn picture_svg(
    py: Python<'_>,
    readings: &str,
    picture: &str,
    settings: Option<&str>,
) -> PyResult<Option<String>> {
    let picture = Picture::from_id(picture).ok_or_else(|| unknown(py, picture, Picture::ALL.map(Picture::id)))?;
    let svg = py.detach(|| {
        let units = report::Units::as_written(readings);
        report::svg(&*visit(readings, settings)?, picture, units)
    });
    svg.map_err(|refusal| refused(py, &refusal))
}

/// What to do next, as JSON.
#[pyfunction]
#[pyo3(signature = (readings, settings=None))]
pub(crate) fn plan(py: Python<'_>, readings: &str, settings: Option<&str>) -> PyResult<String> {
    told(py, || {
        let visit = visit(readings, settings)?;
        Ok(report::plan_json(&*visit.plan()?, &visit.case.system))
    })
}

/// The judgement of what was done, as JSON.
#[pyfunction]
#[pyo3(signature = (readings, settings=None))]
pub(crate) fn prove(py: Python<'_>, readings: &str, settings: Option<&str>) -> PyResult<String> {
    told(py, || {
        let visit = visit(readings, settings)?;
        Ok(report::proof_json(&visit.prove()?, visit.settings.language))
    })
}

/// The counts with one more confirmed case, as the text of their file; `None` is a cause that is none of the faults.
#[pyfunction]
#[pyo3(signature = (counts, readings, cause=None))]
pub(crate) fn record(py: Python<'_>, counts: &str, readings: &str, cause: Option<&str>) -> PyResult<String> {
    let cause = cause
        .map(|id| Fault::from_id(id).ok_or_else(|| unknown(py, id, Fault::ALL.map(Fault::id))))
        .transpose()?;
    told(py, || {
        let mut counts = intake::counts_from_toml(counts)?;
        counts.record(cause, &visit(readings, None)?.case.observations);
        Ok(intake::counts_to_toml(&counts))
    })
}

/// The counts with the confirmed cases of these lines, as the text of their file.
#[pyfunction]
pub(crate) fn learn(py: Python<'_>, counts: &str, cases: &str) -> PyResult<String> {
    told(py, || {
        let counts = intake::counts_from_toml(counts)?;
        Ok(intake::counts_to_toml(&*intake::counts_from_cases(&counts, cases)?))
    })
}

/// How good the answers to confirmed cases are, as JSON and for people.
#[pyfunction]
#[pyo3(signature = (cases, settings=None, told=false))]
pub(crate) fn evaluate(py: Python<'_>, cases: &str, settings: Option<&str>, told: bool) -> PyResult<(String, String)> {
    let summary = py.detach(|| -> Result<_, Refusal> {
        let settings = settings.map(intake::settings_from_json).transpose()?;
        let priors = if told { Priors::Told } else { Priors::Given };
        Ok(evaluated(cases, &settings.unwrap_or_default(), priors)?)
    });
    let summary = summary.map_err(|refusal| refused(py, &refusal))?;
    Ok((report::evaluation_json(&summary), report::evaluation_text(&summary)))
}

/// The same counts, written as the library writes them.
#[pyfunction]
pub(crate) fn counts(py: Python<'_>, text: &str) -> PyResult<String> {
    told(py, || Ok(intake::counts_to_toml(&intake::counts_from_toml(text)?)))
}

/// Cases of a cause in the text of a file of counts.
#[pyfunction]
#[pyo3(signature = (counts, cause=None))]
pub(crate) fn cases(py: Python<'_>, counts: &str, cause: Option<&str>) -> PyResult<u32> {
    let counts = intake::counts_from_toml(counts).map_err(|refusal| refused(py, &refusal))?;
    let cause = cause
        .map(|id| Fault::from_id(id).ok_or_else(|| unknown(py, id, Fault::ALL.map(Fault::id))))
        .transpose()?;
    Ok(counts.cases(cause))
}

/// The faults, checks and observations of the system of readings, as JSON.
#[pyfunction]
pub(crate) fn catalogue(py: Python<'_>, readings: &str) -> PyResult<String> {
    told(py, || Ok(report::catalogue_json(&intake::system_from_text(readings)?)))
}

/// What a vehicle reads, as JSON, for its description.
#[pyfunction]
pub(crate) fn simulate(py: Python<'_>, trial: &str) -> PyResult<String> {
    told(py, || {
        let trial = intake::trial_from_text(trial)?;
        let simulation = vehicle::simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
        Ok(report::simulation_json(&simulation, trial.conditions.surroundings))
    })
}

/// What a sound system shows in the conditions of readings, with earlier visits and the vehicle's own pressure table: name of the
/// reading with its unit, then the limits of the 95 % band, of the 80 % band and the median, from low to high.
#[pyfunction]
pub(crate) fn expected<'py>(py: Python<'py>, readings: &str) -> PyResult<Bound<'py, PyDict>> {
    let case = intake::visit_from_text(readings)
        .map_err(|refusal| refused(py, &refusal))?
        .case;
    let bands = SoundModel::of(&case.system, &case.conditions)
        .and_then(|sound| {
            let (visits, table) = (case.own_readings.as_ref(), case.own_table.as_ref());
            sound.knowing(&case.system, &case.conditions, visits, table)
        })
        .and_then(|sound| Bands::from_model(&sound, case.system.refrigerant, case.conditions.surroundings))
        .map_err(|error| raised(py, error))?;
    let all = PyDict::new(py);
    all.set_item("low_side_pa_gauge", limits(bands.low_side, |pressure| pressure.pa()))?;
    all.set_item("high_side_pa_gauge", limits(bands.high_side, |pressure| pressure.pa()))?;
    all.set_item("vent_k", limits(bands.vent, in_kelvins))?;
    all.set_item(
        "condensing_above_ambient_k",
        limits(bands.condensing_above_ambient, difference_in_kelvins),
    )?;
    all.set_item("superheat_k", limits(bands.superheat, difference_in_kelvins))?;
    all.set_item("subcooling_k", limits(bands.subcooling, difference_in_kelvins))?;
    all.set_item(
        "discharge_superheat_k",
        limits(bands.discharge_superheat, difference_in_kelvins),
    )?;
    all.set_item(
        "clutch_cycles_hz",
        bands.clutch_cycles.map(|band| limits(band, Frequency::hz)),
    )?;
    Ok(all)
}

fn limits<Q: Copy>(band: Band<Q>, si: impl Fn(Q) -> f64) -> [f64; 5] {
    [band.low_95, band.low_80, band.median, band.high_80, band.high_95].map(si)
}

/// The settings of a JSON object in the shape of `[settings]`.
pub(crate) fn settings(py: Python<'_>, json: &str) -> PyResult<Settings> {
    intake::settings_from_json(json).map_err(|refusal| refused(py, &refusal))
}

/// The visit of a readings file; settings that are given replace its own.
fn visit(readings: &str, settings: Option<&str>) -> Result<Box<Visit>, Refusal> {
    let mut visit = intake::visit_from_text(readings)?;
    if let Some(settings) = settings {
        visit.settings = intake::settings_from_json(settings)?;
    }
    Ok(visit)
}

/// What `body` tells, the interpreter released, or its refusal raised.
fn told(py: Python<'_>, body: impl Fn() -> Result<String, Refusal> + Sync + Send) -> PyResult<String> {
    py.detach(&body).map_err(|refusal| refused(py, &refusal))
}
