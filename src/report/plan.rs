//! A plan as JSON and as text.

use super::json::ids;
use super::record::{Json, record};
use super::words::{per_cent, result, spoken};
use crate::diagnosis::{Action, Branch, Cautions, Plan, Step, check_cautions, repair, repair_cautions};
use crate::names::{Caution, Observation, ResultKind};
use crate::vehicle::System;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt::{self, Write};

/// A plan as one JSON object, on one line.
///
/// Keys: `expected_minutes` (of work, until the vehicle is repaired), `without_checks_minutes`, `steps`. Each step has
/// `check` or `repair` (an id; the other is `null`, and both where it is handed over), `says`, `cautions`, `probability` of
/// getting there, `minutes`, `recovers_charge`, and `branches`: `result`, `of` (the question that is answered),
/// `probability`, `then`, `then_probability`, `next` (the place of the next step in `steps`, counted from zero, or `null` at the end).
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
        "steps": plan.steps.iter().map(|planned| step(planned, system)).collect::<Vec<_>>(),
    })
    .to_string()
}

fn step(step: &Step, system: &System) -> Json {
    record!({
        "check": checked(step.action),
        "repair": repaired(step.action),
        "says": says(step.action),
        "cautions": ids(&asked(step.action, system)),
        "probability": step.probability,
        "minutes": step.minutes,
        "recovers_charge": step.recovers,
        "branches": step.branches.iter().map(branch).collect::<Vec<_>>(),
    })
}

/// The check that a step is.
pub(super) const fn checked(action: Action) -> Option<&'static str> {
    match action {
        Action::Check(check) => Some(check.id()),
        Action::Repair(_) | Action::HandOver => None,
    }
}

/// The fault that a step sets right.
pub(super) const fn repaired(action: Action) -> Option<&'static str> {
    match action {
        Action::Repair(fault) => Some(fault.id()),
        Action::Check(_) | Action::HandOver => None,
    }
}

fn branch(branch: &Branch) -> Json {
    record!({
        "result": branch.result.id(),
        "of": branch.observation.map(Observation::id),
        "probability": branch.probability,
        "then": branch.leading.id(),
        "then_probability": branch.leading_probability,
        "next": branch.next,
    })
}

/// How many steps deep a plan is told as text; what comes then is weighed again with what was found.
const TOLD: usize = 2;
/// What a result less likely than this would mean is not told.
const TOLD_FROM: f64 = 0.01;

/// The first steps as text; nothing where nothing is to be done.
pub(super) fn write(out: &mut String, plan: &Plan) -> fmt::Result {
    if plan.steps.is_empty() {
        return Ok(());
    }
    let minutes = |minutes: f64| format!("{minutes:.0} min");
    writeln!(
        out,
        "\nTHE PLAN  {} of work on average, parts counted as work{}",
        minutes(plan.expected_minutes),
        if plan.without_checks_minutes > plan.expected_minutes + 0.5 {
            format!("; without looking first {}", minutes(plan.without_checks_minutes))
        } else {
            String::new()
        }
    )?;
    write_step(out, plan, 0, 1)
}

/// What the steps that are told ask to be careful of.
pub(super) fn cautions(plan: &Plan, system: &System) -> Vec<Caution> {
    let first = plan.steps.iter().take(1);
    let next = first
        .clone()
        .flat_map(|step| step.branches.iter().filter_map(|branch| branch.next));
    let told = first.chain(next.filter_map(|at| plan.steps.get(at)));
    told.flat_map(|step| asked(step.action, system).to_vec()).collect()
}

fn asked(action: Action, system: &System) -> Cautions {
    match action {
        Action::Check(check) => check_cautions(check, system),
        Action::Repair(fault) => repair_cautions(fault, system),
        Action::HandOver => Cautions::new(Caution::LocalRules),
    }
}

/// What to do when neither a look nor a repair is worth its cost.
const HAND_OVER: &str = "Change nothing on suspicion: hand over to somebody who knows more.";

/// What to do, in a line.
pub(super) fn says(action: Action) -> &'static str {
    match action {
        Action::Check(check) => check.description(),
        Action::Repair(fault) => repair(fault).says,
        Action::HandOver => HAND_OVER,
    }
}

fn write_step(out: &mut String, plan: &Plan, at: usize, depth: usize) -> fmt::Result {
    let Some(step) = plan.steps.get(at) else { return Ok(()) };
    let indent = "      ".repeat(depth - 1);
    let is_repair = matches!(step.action, Action::Repair(_));
    let says = says(step.action).trim_end_matches('.');
    writeln!(out, "{indent}  {says} ({:.0} min)", step.minutes)?;
    for branch in &step.branches {
        let helped = branch.result == ResultKind::Yes;
        let found = if is_repair {
            if helped {
                "it helped".into()
            } else {
                "it did not".into()
            }
        } else {
            result(branch.result, branch.observation, step.branches.len())
        };
        let chance = per_cent(branch.probability);
        if (is_repair && helped) || branch.probability < TOLD_FROM {
            writeln!(out, "{indent}    {found} ({chance})")?;
            continue;
        }
        let (leading, odds) = (spoken(branch.leading.id()), per_cent(branch.leading_probability));
        writeln!(out, "{indent}    {found} ({chance}): {leading} ({odds})")?;
        if let Some(next) = branch.next.filter(|_| depth < TOLD) {
            write_step(out, plan, next, depth + 1)?;
        }
    }
    Ok(())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::diagnosis::List;
    use crate::names::{Check, Fault};

    /// What a result would mean is told from one per cent on: it is shown in whole per cents, and below one it would be nearly 0 %.
    #[test]
    fn a_result_below_one_per_cent_is_not_followed() {
        let told = |probability: f64| {
            let branch = Branch {
                result: ResultKind::Yes,
                observation: None,
                probability,
                leading: Fault::Undercharge,
                leading_probability: 0.8,
                next: None,
            };
            let mut branches = List::new(branch);
            branches.push(branch);
            let mut plan = Plan::EMPTY;
            plan.steps.push(Step {
                action: Action::Check(Check::RunAndRead),
                probability: 1.0,
                minutes: 10.0,
                recovers: false,
                branches,
            });
            let mut out = String::new();
            write(&mut out, &plan).unwrap();
            out.contains(&spoken(Fault::Undercharge.id()))
        };
        assert_eq!((told(0.0095), told(0.0105)), (false, true));
    }
}
