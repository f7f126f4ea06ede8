//! A plan as JSON.

use super::finding::Finding;
use super::json::{fills, ids};
use super::language::step_says;
use super::record::{Json, record, tell};
use super::texts::Short;
use super::words::finding_says;
use crate::diagnosis::{Action, Branch, Plan, Step, step_cautions};
use crate::names::{Language, Observation};
use crate::vehicle::System;
use alloc::string::String;
use alloc::vec::Vec;

/// A plan as one JSON object, on one line.
///
/// Keys: `expected_minutes` (of work, until the vehicle is repaired), `without_checks_minutes`, `steps`. Each step has
/// `check` or `repair` (an id; the other is `null`, and both where it is handed over), `says`, `fills` (the entries of a
/// readings file that a check fills), `cautions`, `probability` of getting there, `minutes` of labour, `parts_in_minutes`,
/// `recovers_charge`, and `branches`: `outcome` (the id of a [`Finding`](super::Finding)) and what was `seen`, `result`, `of`
/// (the question that is answered), `probability`, `then`, `then_probability`, `next` (the place of the next step in `steps`,
/// counted from zero, or `null` at the end).
///
/// ```
/// use coldloop::{diagnosis::{Settings, judge}, intake, report};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/overcharge.toml"))?;
/// let settings = Settings::default();
/// let plan = judge(&case, &settings)?.plan(&settings);
/// assert!(report::plan_json(&plan, &case.system).starts_with(r#"{"expected_minutes":"#));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn plan_json(plan: &Plan, system: &System) -> String {
    record!({
        "expected_minutes": plan.expected_minutes,
        "without_checks_minutes": plan.without_checks_minutes,
        "steps": plan.steps.iter().map(|planned| step(planned, system, Language::English)).collect::<Vec<_>>(),
    })
    .answer()
}

/// One step of a plan, for the technician who does it next, as one JSON object, on one line.
///
/// Keys: those of a step of [`plan_json`], with `says` and `seen` in the language, and `care`: its cautions in a few words each.
///
/// ```
/// use coldloop::{Language, intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/overcharge.toml"))?;
/// let plan = visit.plan()?;
/// let told = report::step_json(&plan.steps[0], &visit.case.system, Language::Spanish);
/// assert!(told.contains(r#""care":["#));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn step_json(step: &Step, system: &System, language: Language) -> String {
    let care = step_cautions(step.action, system);
    let care = care.iter().map(|caution| caution.short(language));
    let mut told = self::step(step, system, language);
    if let Json::Object(entries) = &mut told {
        tell(entries, "care", care.collect::<Vec<_>>());
    }
    told.answer()
}

fn step(step: &Step, system: &System, language: Language) -> Json {
    record!({
        "check": checked(step.action),
        "repair": repaired(step.action),
        "says": step_says(step.action, system, language),
        "fills": filled(step.action),
        "cautions": ids(&step_cautions(step.action, system)),
        "probability": step.probability,
        "minutes": step.minutes,
        "parts_in_minutes": step.parts_in_minutes,
        "recovers_charge": step.recovers,
        "branches": step.branches.iter().map(|told| branch(step.action, told, language)).collect::<Vec<_>>(),
    })
}

/// The id of the check, where the step is one.
pub(super) const fn checked(action: Action) -> Option<&'static str> {
    match action {
        Action::Check(check) => Some(check.id()),
        Action::Repair(_) | Action::HandOver => None,
    }
}

/// The entries of a readings file that a step fills; none for a step that is not a check.
pub(super) fn filled(action: Action) -> Json {
    match action {
        Action::Check(check) => fills(check),
        Action::Repair(_) | Action::HandOver => Json::List(Vec::new()),
    }
}

/// The id of the fault that a step repairs.
pub(super) const fn repaired(action: Action) -> Option<&'static str> {
    match action {
        Action::Repair(fault) => Some(fault.id()),
        Action::Check(_) | Action::HandOver => None,
    }
}

fn branch(action: Action, branch: &Branch, language: Language) -> Json {
    let finding = Finding::of(action, branch.result, branch.observation);
    record!({
        "outcome": finding.id(),
        "seen": finding_says(finding, language),
        "result": branch.result.id(),
        "of": branch.observation.map(Observation::id),
        "probability": branch.probability,
        "then": branch.leading.id(),
        "then_probability": branch.leading_probability,
        "next": branch.next,
    })
}
