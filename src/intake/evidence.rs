//! What was weighed and tested, as answers: evidence of the diagnosis, and of the proof of the repair.

use super::visit::Visit;
use crate::circuit::{Estimate, Observations};
use crate::names::{ChargeFinding, EvacuationFinding, HoldFinding, LeakFinding, Observation};
use crate::units::Mass;

/// Answers what the tables of what was done answer; what the shop has answered itself stands.
///
/// What was recovered tells of the charge as the vehicle came in, what was charged of the one after the repair. A leak that a test
/// shows was there both times. That a test shows none speaks of the time after the repair alone: what it mended leaked before.
pub(super) fn answer(visit: &mut Visit) {
    let balance = visit.charge.and_then(|book| book.balance().ok());
    let label = visit.charge.and_then(|book| book.nominal);
    let found = balance.and_then(|balance| balance.charge_found.zip(balance.found));
    let now = balance.and_then(|balance| balance.charge_now.zip(balance.now));
    let pressed = visit.pressure_test.and_then(|test| test.judge().ok());
    let held = visit.hold().and_then(|hold| hold.judge().ok());
    let pumped = visit.evacuation.and_then(|evacuation| evacuation.judge().ok());
    let pressure_holds = pressed.and_then(|test| holds(test.finding));
    let vacuum_holds = held.and_then(|hold| stays(hold.finding));
    let leaks = held.is_some_and(|hold| hold.finding == HoldFinding::Leak);
    // A vacuum that was held is as deep as one that was read.
    let deep = pumped.and_then(|vacuum| left_water(vacuum.finding)).or(vacuum_holds);

    let case = &mut visit.case.observations;
    weighed(case, label, found);
    note(
        case,
        Observation::TestPressureHolds,
        pressure_holds.filter(|holds| !holds),
    );
    note(case, Observation::VacuumHolds, leaks.then_some(false));
    let Some(after) = &mut visit.after else { return };
    let after = &mut after.observations;
    weighed(after, label, now);
    note(after, Observation::TestPressureHolds, pressure_holds);
    note(after, Observation::VacuumHolds, vacuum_holds);
    note(after, Observation::EvacuatedBeforeFilling, deep);
}

fn note(answers: &mut Observations, question: Observation, answer: Option<bool>) {
    if let (None, Some(answer)) = (answers.answer(question), answer) {
        *answers = answers.with(question, answer);
    }
}

/// A part of the charge of the label: where less of it is missing or in excess, neither is called a fault. Source: the mildest
/// severities of `tables/faults/charge.toml`.
const NO_FAULT: f64 = 0.1;

/// Whether a charge that was weighed lies below the label or above it: "yes" where it surely lies outside the tolerance, "no" where it
/// surely lies nearer than what is called a fault.
fn weighed(answers: &mut Observations, label: Option<Mass>, charge: Option<(Estimate<Mass>, ChargeFinding)>) {
    let (Some(label), Some((charge, finding))) = (label, charge) else {
        return;
    };
    let (label_kg, charge) = (label.kg(), charge.si());
    let half_kg = 2.0 * charge.standard_uncertainty;
    let near = |off_kg: f64| off_kg + half_kg <= NO_FAULT * label_kg;
    let below = match finding {
        ChargeFinding::Under => Some(true),
        ChargeFinding::Over | ChargeFinding::Within => Some(false),
        ChargeFinding::CannotTell => near(label_kg - charge.value).then_some(false),
    };
    let above = match finding {
        ChargeFinding::Over => Some(true),
        ChargeFinding::Under | ChargeFinding::Within => Some(false),
        ChargeFinding::CannotTell => near(charge.value - label_kg).then_some(false),
    };
    note(answers, Observation::RecoveredBelowLabel, below);
    note(answers, Observation::RecoveredAboveLabel, above);
}

const fn holds(finding: LeakFinding) -> Option<bool> {
    match finding {
        LeakFinding::Tight => Some(true),
        LeakFinding::Leaks => Some(false),
        LeakFinding::NoLossSeen | LeakFinding::LiquidPresent | LeakFinding::GasGained | LeakFinding::LimitUnclear => {
            None
        }
    }
}

const fn stays(finding: HoldFinding) -> Option<bool> {
    match finding {
        HoldFinding::Tight => Some(true),
        HoldFinding::Leak | HoldFinding::Moisture => Some(false),
        HoldFinding::RiseUnclear
        | HoldFinding::TooShort
        | HoldFinding::GaugeCannotTell
        | HoldFinding::Falling
        | HoldFinding::NotDeep => None,
    }
}

const fn left_water(finding: EvacuationFinding) -> Option<bool> {
    match finding {
        EvacuationFinding::Deep => Some(true),
        EvacuationFinding::WaterStays => Some(false),
        EvacuationFinding::WaterBoils | EvacuationFinding::GaugeCannotTell => None,
    }
}
