//! The operations of a session. The caller holds the session as its stored text, passes it in and receives the new one; the
//! answer to a question follows on a line of its own.

use coldloop::intake::{self, Refusal, SessionFile};
use coldloop::session::NextStep;
use coldloop::{Check, Error, ErrorKind, Fault, Language, Observation, Quantity, ReadingKind, ResultKind, report};

/// What an id names.
pub(crate) fn known<T>(id: &str, from_id: fn(&str) -> Option<T>) -> Result<T, Error> {
    from_id(id).ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))
}

/// The stored session after a change.
fn changed(stored: &str, change: impl FnOnce(&mut SessionFile) -> Result<(), Refusal>) -> Result<String, Refusal> {
    let mut file = intake::session_from_text(stored)?;
    change(&mut file)?;
    intake::session_to_json(&file)
}

/// The stored session, and below it the answer to a question that was asked of it.
fn asked(stored: &str, ask: impl FnOnce(&mut SessionFile) -> Result<String, Refusal>) -> Result<String, Refusal> {
    let mut file = intake::session_from_text(stored)?;
    let answer = ask(&mut file)?;
    Ok(intake::session_to_json(&file)? + "\n" + &answer)
}

/// A session that starts from a readings file, or that was stored.
pub(crate) fn started(readings: &str) -> Result<String, Refusal> {
    changed(readings, |_| Ok(()))
}

/// With the readings, observations and conditions of a readings file, each as a step of its own. With a gauge zero among them, to
/// which all readings belong, they are one step.
pub(crate) fn added(stored: &str, given: &str) -> Result<String, Refusal> {
    let given = intake::case_from_json(given)?;
    changed(stored, |file| {
        let session = &mut file.session;
        if given.conditions != session.case().conditions {
            session.set_conditions(given.conditions)?;
        }
        if given.readings.gauge_zero.is_some() {
            session.add_log(&given.readings, &given.observations)?;
            return Ok(());
        }
        for kind in ReadingKind::ALL {
            if let Some(measured) = given.readings.get(kind) {
                session.add_reading(kind, measured)?;
            }
        }
        for (observation, answer) in given.observations.answered() {
            session.add_observation(observation, answer)?;
        }
        Ok(())
    })
}

/// With the outcome of a check: its id, the result, and the question that is answered, if any.
pub(crate) fn came_out(stored: &str, outcome: &str) -> Result<String, Refusal> {
    let mut ids = outcome.split(' ');
    let mut id = || ids.next().unwrap_or_default();
    let (check, result) = (known(id(), Check::from_id)?, known(id(), ResultKind::from_id)?);
    let question = match id() {
        "" => None,
        question => Some(known(question, Observation::from_id)?),
    };
    changed(stored, |file| {
        file.session.add_outcome(check, result, question)?;
        Ok(())
    })
}

/// With a repair: its fault, followed by `in-vain` where it did not help.
pub(crate) fn repaired(stored: &str, repair: &str) -> Result<String, Refusal> {
    let (fault, in_vain) = match repair.strip_suffix(" in-vain") {
        Some(fault) => (fault, true),
        None => (repair, false),
    };
    let fault = known(fault, Fault::from_id)?;
    changed(stored, |file| {
        let noted = match in_vain {
            true => file.session.add_vain_repair(fault),
            false => file.session.add_repair(fault),
        };
        noted.map_err(Refusal::from)
    })
}

/// Without its last step; as it is where no step can be undone.
pub(crate) fn undone(stored: &str) -> Result<String, Refusal> {
    changed(stored, |file| {
        file.session.undo();
        Ok(())
    })
}

/// The next step, which is held from here on; a refusal names the entry of the readings file that caused it, where there is one.
fn held(file: &mut SessionFile) -> Result<Option<NextStep>, Refusal> {
    file.session.next_step().or_else(|error| {
        file.visit()?.judge()?;
        Err(error.into())
    })
}

/// The next step in a language, which is held from here on, or `null`.
pub(crate) fn next(stored: &str, language: &str) -> Result<String, Refusal> {
    let language = known(language, Language::from_id)?;
    asked(stored, |file| {
        if held(file)?.is_none() {
            return Ok("null".into());
        }
        let plan = file.session.plan()?;
        let system = file.session.came_in().system;
        let step = plan.steps.first();
        Ok(step.map_or("null".into(), |step| report::step_json(step, &system, language)))
    })
}

/// What is known now, as the answer to its readings file; the step that it names is held from here on.
pub(crate) fn answer(stored: &str) -> Result<String, Refusal> {
    asked(stored, |file| {
        held(file)?;
        report::visit_json(&*file.visit()?)
    })
}

/// The same as a page, with its language and its units.
pub(crate) fn page(stored: &str, wording: &str) -> Result<String, Refusal> {
    let (language, units) = wording.split_once(' ').unwrap_or((wording, ""));
    let language = known(language, Language::from_id)?;
    let units = match units {
        "" | "metric" => report::Units::Metric,
        "bar" => report::Units::Bar,
        "us" => report::Units::Us,
        _ => return Err(Error::of(ErrorKind::UnknownName, Quantity::Name).into()),
    };
    asked(stored, |file| {
        held(file)?;
        let mut visit = file.visit()?;
        visit.settings.language = language;
        report::html(&visit, units)
    })
}
