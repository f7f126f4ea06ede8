//! A plan as JSON.

use super::json::ids;
use crate::diagnosis::{Action, Branch, Plan, Step, check_cautions, repair, repair_cautions};
use crate::names::{Check, Fault, Observation};
use crate::vehicle::System;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde_json::{Value, json};

/// A plan as one JSON object, on one line.
///
/// Keys: `expected_minutes` (of work, until the vehicle is repaired), `without_checks_minutes`, `steps`. Each step has
/// `check` or `repair` (an id; the other is `null`), `says`, `cautions`, `probability` of getting there, `minutes`,
/// `recovers_charge`, and `branches`: `result`, `of` (the question that is answered), `probability`, `then`,
/// `then_probability`, `next` (the place of the next step in `steps`, counted from zero, or `null` at the end).
///
/// ```
/// use coldloop::{diagnosis::{Settings, diagnose}, intake, report};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/overcharge.toml"))?;
/// let settings = Settings::default();
/// let plan = diagnose(&case, &settings)?.plan(&settings);
/// assert!(report::plan_json(&plan, &case.system).starts_with(r#"{"expected_minutes":"#));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn plan_json(plan: &Plan, system: &System) -> String {
    json!({
        "expected_minutes": plan.expected_minutes,
        "without_checks_minutes": plan.without_checks_minutes,
        "steps": plan.steps.iter().map(|planned| step(planned, system)).collect::<Vec<_>>(),
    })
    .to_string()
}

fn step(step: &Step, system: &System) -> Value {
    let (check, repaired) = match step.action {
        Action::Check(check) => (Some(check), None),
        Action::Repair(fault) => (None, Some(fault)),
    };
    let (says, cautions) = match step.action {
        Action::Check(check) => (check.description(), check_cautions(check, system)),
        Action::Repair(fault) => (repair(fault).says, repair_cautions(fault, system)),
    };
    json!({
        "check": check.map(Check::id),
        "repair": repaired.map(Fault::id),
        "says": says,
        "cautions": ids(&cautions),
        "probability": step.probability,
        "minutes": step.minutes,
        "recovers_charge": step.recovers,
        "branches": step.branches.iter().map(branch).collect::<Vec<_>>(),
    })
}

fn branch(branch: &Branch) -> Value {
    json!({
        "result": branch.result.id(),
        "of": branch.observation.map(Observation::id),
        "probability": branch.probability,
        "then": branch.leading.id(),
        "then_probability": branch.leading_probability,
        "next": branch.next,
    })
}
