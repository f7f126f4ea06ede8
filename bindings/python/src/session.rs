//! A visit as it grows: a session with the file that it is stored in.

use crate::errors::{raised, refused, refused_key, unknown};
use crate::log::Recorder;
use coldloop::diagnosis::{Action, step_cautions};
use coldloop::intake::{self, Refusal, SessionFile};
use coldloop::session::{Done, Undone};
use coldloop::{Check, Error, ErrorKind, Fault, Observation, Quantity, ReadingKind, ResultKind, report};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// A session with what its file keeps beside it.
#[pyclass(module = "coldloop._core")]
pub(crate) struct Session(Box<SessionFile>);

#[pymethods]
impl Session {
    /// The session that a text of either kind holds.
    #[new]
    fn new(py: Python<'_>, text: &str) -> PyResult<Self> {
        let file = intake::session_from_text(text);
        file.map(Self).map_err(|refusal| refused(py, &refusal))
    }

    fn to_toml(&self, py: Python<'_>) -> PyResult<String> {
        intake::session_to_toml(&self.0).map_err(|refusal| refused(py, &refusal))
    }

    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        intake::session_to_json(&self.0).map_err(|refusal| refused(py, &refusal))
    }

    fn meta(&self, key: &str) -> Option<String> {
        self.0.meta(key).map(String::from)
    }

    fn set_meta(&mut self, key: &str, text: &str) {
        self.0.set_meta(key, text);
    }

    /// Adds the readings and observations of a readings file of this vehicle, one step each, and with `conditions` also its
    /// conditions. Where one is refused, none is added.
    fn add(&mut self, py: Python<'_>, readings: &str, conditions: bool) -> PyResult<()> {
        let case = intake::case_from_json(readings).map_err(|refusal| refused(py, &refusal))?;
        let mut session = self.0.session.clone();
        if conditions {
            let changed = session.set_conditions(case.conditions);
            changed.map_err(|error| refused_key(py, error, "conditions"))?;
        }
        for kind in ReadingKind::ALL {
            if let Some(measured) = case.readings.get(kind) {
                let added = session.add_reading(kind, measured);
                added.map_err(|error| refused_key(py, error, &format!("readings.{}", kind.id())))?;
            }
        }
        for (observation, answer) in case.observations.answered() {
            let added = session.add_observation(observation, answer);
            added.map_err(|error| refused_key(py, error, &format!("observations.{}", observation.id())))?;
        }
        self.0.session = session;
        Ok(())
    }

    /// Adds the state of a log that is known best, with the speeds that were logged in it.
    fn add_log(&mut self, py: Python<'_>, log: &Recorder) -> PyResult<()> {
        let summary = log.now(py)?;
        let Some(state) = summary.judged().next() else {
            let error = Error::of(ErrorKind::Missing, Quantity::Duration);
            let message = format!(
                "log: no state of it has lasted long enough to be judged; log for {:.0} s more",
                summary.wait.seconds()
            );
            return Err(crate::errors::told(py, error, &message, "log"));
        };
        let mut session = self.0.session.clone();
        let conditions = state.conditions(&session.case().conditions);
        let added = if conditions == session.case().conditions {
            Ok(())
        } else {
            session.set_conditions(conditions)
        };
        added
            .and_then(|()| session.add_log(&state.readings(log.instruments()), &summary.observations()))
            .map_err(|error| refused_key(py, error, "log"))?;
        self.0.session = session;
        Ok(())
    }

    #[pyo3(signature = (check, result, question=None))]
    fn add_outcome(&mut self, py: Python<'_>, check: &str, result: &str, question: Option<&str>) -> PyResult<()> {
        let check = Check::from_id(check).ok_or_else(|| unknown(py, check, Check::ALL.map(Check::id)))?;
        let result =
            ResultKind::from_id(result).ok_or_else(|| unknown(py, result, ResultKind::ALL.map(ResultKind::id)))?;
        let known = |id| Observation::from_id(id).ok_or_else(|| unknown(py, id, Observation::ALL.map(Observation::id)));
        let question = question.map(known).transpose()?;
        let added = self.0.session.add_outcome(check, result, question);
        added.map_err(|error| refused_key(py, error, check.id()))
    }

    fn add_repair(&mut self, py: Python<'_>, fault: &str, helped: bool) -> PyResult<()> {
        let fault = Fault::from_id(fault).ok_or_else(|| unknown(py, fault, Fault::ALL.map(Fault::id)))?;
        let added = match helped {
            true => self.0.session.add_repair(fault),
            false => self.0.session.add_vain_repair(fault),
        };
        added.map_err(|error| refused_key(py, error, fault.id()))
    }

    /// What was taken back, as a kind and an id; nothing where there was nothing to take back.
    fn undo(&mut self, py: Python<'_>) -> PyResult<Option<(&'static str, &'static str)>> {
        match self.0.session.undo() {
            Undone::Step(done) => Ok(Some(told(done))),
            Undone::Nothing => Ok(None),
            Undone::TooOld => Err(refused_key(
                py,
                Error::of(ErrorKind::NotAvailable, Quantity::Rows),
                "only steps are left that are too old to be undone",
            )),
            _ => Err(raised(py, Error::of(ErrorKind::NotAvailable, Quantity::Rows))),
        }
    }

    fn done(&self) -> Vec<(&'static str, &'static str)> {
        self.0.session.done().map(told).collect()
    }

    /// The whole answer as JSON; its next step is held from here on.
    fn answer(&mut self, py: Python<'_>) -> PyResult<String> {
        let session = &mut self.0.session;
        let answer = py.detach(|| {
            let diagnosis = session.answer()?;
            let (judgement, settings) = (session.judge()?, session.settings());
            let reasons = judgement.reasons(&settings);
            Ok(report::json(&session.case(), &diagnosis, &reasons, settings.language))
        });
        answer.map_err(|error| raised(py, error))
    }

    /// What to do next, with the entry that it fills; it is held from here on.
    fn next<'py>(&mut self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyDict>>> {
        let session = &mut self.0.session;
        let found = py.detach(|| {
            let next = session.next_step()?;
            Ok(next.zip(session.plan()?.steps.first().copied()))
        });
        let Some((next, step)) = found.map_err(|error: Error| raised(py, error))? else {
            return Ok(None);
        };
        let (check, repair) = match next.action {
            Action::Check(check) => (Some(check.id()), None),
            Action::Repair(fault) => (None, Some(fault.id())),
            Action::HandOver => (None, None),
            _ => return Err(raised(py, Error::of(ErrorKind::NotAvailable, Quantity::Name))),
        };
        let system = session.case().system;
        let told = PyDict::new(py);
        told.set_item("check", check)?;
        told.set_item("repair", repair)?;
        told.set_item("fills", next.key.map(|key| key.to_string()))?;
        told.set_item(
            "says",
            report::step_says(next.action, &system, session.settings().language),
        )?;
        told.set_item("minutes", step.minutes)?;
        let cautions = step_cautions(next.action, &system);
        told.set_item(
            "cautions",
            cautions.iter().map(|caution| caution.id()).collect::<Vec<_>>(),
        )?;
        Ok(Some(told))
    }

    fn plan(&self, py: Python<'_>) -> PyResult<String> {
        let session = &self.0.session;
        let plan = py.detach(|| Ok(report::plan_json(&session.plan()?, &session.case().system)));
        plan.map_err(|error| raised(py, error))
    }

    /// The judgement of what was done, as JSON.
    fn proof(&self, py: Python<'_>) -> PyResult<String> {
        self.told(py, |file| {
            let visit = file.visit()?;
            Ok(report::proof_json(&visit.prove()?, visit.settings.language))
        })
    }

    fn text(&self, py: Python<'_>) -> PyResult<String> {
        self.told(py, |file| report::visit_text(&*file.visit()?, report::Units::Metric))
    }

    fn html(&self, py: Python<'_>) -> PyResult<String> {
        self.told(py, |file| report::html(&*file.visit()?, report::Units::Metric))
    }

    /// The verdict now, and what is named; this does not hold the next step.
    fn verdict(&self, py: Python<'_>) -> PyResult<(&'static str, Vec<&'static str>)> {
        let session = &self.0.session;
        let judgement = py.detach(|| session.judge()).map_err(|error| raised(py, error))?;
        let verdict = judgement.verdict();
        let named = verdict.faults.iter().map(|fault| fault.id());
        Ok((verdict.kind.id(), named.collect()))
    }
}

impl Session {
    fn told(
        &self,
        py: Python<'_>,
        body: impl Fn(&SessionFile) -> Result<String, Refusal> + Sync + Send,
    ) -> PyResult<String> {
        py.detach(|| body(&self.0)).map_err(|refusal| refused(py, &refusal))
    }
}

/// What a step did: a kind and an id.
const fn told(done: Done) -> (&'static str, &'static str) {
    match done {
        Done::Reading(kind) => ("reading", kind.id()),
        Done::Log => ("log", ""),
        Done::Observation(observation) => ("observation", observation.id()),
        Done::Outcome(check) => ("check", check.id()),
        Done::Conditions => ("conditions", ""),
        Done::Repaired(fault) => ("repair", fault.id()),
        Done::RepairedInVain(fault) => ("in-vain", fault.id()),
        _ => ("other", ""),
    }
}
