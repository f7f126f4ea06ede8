//! Turns what was weighed and tested into answers, as evidence for the diagnosis and for the proof of the repair.

use super::visit::Visit;
use crate::circuit::{Estimate, Observations};
use crate::names::{ChargeFinding, EvacuationFinding, HoldFinding, LeakFinding, Observation};
use crate::units::Mass;

/// Adds the answers that follow from the tables of what was done; an answer that the shop gave itself is kept.
///
/// The recovered mass answers for the charge as the vehicle came in, the charged mass for that after the repair. A leak that a
/// test shows was there before and after the repair. A test without a leak answers only for the time after the repair, which
/// may have closed one.
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
    // A vacuum that held is as deep as one that was read.
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

/// Share of the nominal charge below which a shortage or an excess is not called a fault. Source: the mildest severities of
/// `tables/faults/charge.toml`.
const NO_FAULT: f64 = 0.1;

/// Answers whether a weighed charge lies below or above the label.
///
/// "Yes" where it is certainly outside the tolerance, "no" where it is certainly closer to the label than a fault.
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
