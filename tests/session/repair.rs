//! After a repair: what did not help, what was found before, and what the proof still lacks.

use super::{psig, van, warm};
use coldloop::diagnosis::{Action, Key, Settings};
use coldloop::session::{NextStep, Session};
use coldloop::{Check, Fault, ReadingKind, RepairFinding, intake};

#[test]
fn what_did_not_help_is_not_the_cause() {
    let mut session = van();
    for (kind, measured) in [psig(ReadingKind::LowSide, 62.0), psig(ReadingKind::HighSide, 118.0)] {
        session.add_reading(kind, measured).unwrap();
    }
    let leading = session.answer().unwrap().faults[0].fault;
    session.add_vain_repair(leading).unwrap();
    let answer = session.answer().unwrap();
    assert_eq!(answer.probability_of(&[leading]), 0.0);
    assert_ne!(answer.next_step, Some(Action::Repair(leading)));
    // Told again, it stays excluded.
    session.add_vain_repair(leading).unwrap();
    assert_eq!(session.settings().prior(leading), 0.0);
    session.undo();
    // The settings of the start come back with the step.
    session.undo();
    assert_eq!(session.settings().prior(leading), Settings::default().prior(leading));
}

/// The examples of a repaired van, added one by one.
#[test]
fn after_a_repair_the_vehicle_is_judged_with_what_was_found_before() {
    let text = std::fs::read_to_string("examples/readings/repaired-van.toml").unwrap();
    let visit = intake::visit_from_toml(&text).unwrap();
    let after = visit.after.unwrap();
    let mut session = Session::of(visit.case, visit.settings).unwrap();
    assert!(session.proof().unwrap().is_none());
    assert!(!session.is_after_repair());
    session.add_repair(Fault::Undercharge).unwrap();
    assert!(session.is_after_repair());
    // Nothing is known after the repair yet: the vehicle is read again before it is handed over.
    let next = session.next_step().unwrap().unwrap();
    assert!(matches!(next.action, Action::Check(_)), "{next:?}");
    session.set_conditions(after.conditions).unwrap();
    session.add_log(&after.readings, &after.observations).unwrap();
    let proof = session.proof().unwrap().unwrap();
    let expected = visit.prove().unwrap().repair.unwrap();
    assert_eq!(proof.finding, RepairFinding::Proven);
    assert_eq!(proof, *expected);
    assert_eq!(session.next_step().unwrap(), None);
    assert!(session.plan().unwrap().steps.is_empty());
    for _ in 0..3 {
        session.undo();
    }
    assert!(!session.is_after_repair());
    assert_eq!(session.case(), visit.case);
}

/// The same van, of which only pressures and vent were read after the repair, with some of the cooling still missing.
///
/// The proof is open: the visit goes on with what it still lacks, the lines that were read before, until all is read.
#[test]
fn an_open_proof_has_a_next_step_until_all_is_read() {
    let text = std::fs::read_to_string("examples/readings/repaired-van.toml").unwrap();
    let visit = intake::visit_from_toml(&text).unwrap();
    let after = visit.after.unwrap();
    let mut session = Session::of(visit.case, visit.settings).unwrap();
    session.add_repair(Fault::Undercharge).unwrap();
    session.set_conditions(after.conditions).unwrap();
    for (kind, measured) in [
        psig(ReadingKind::LowSide, 27.0),
        psig(ReadingKind::HighSide, 180.0),
        warm(ReadingKind::Vent, 8.0),
    ] {
        session.add_reading(kind, measured).unwrap();
    }
    for (kind, c) in [
        (ReadingKind::SuctionLine, 12.0),
        (ReadingKind::LiquidLine, 41.0),
        (ReadingKind::DischargeLine, 70.0),
    ] {
        assert_eq!(session.proof().unwrap().unwrap().finding, RepairFinding::Better);
        // By itself the vehicle counts as sound.
        assert_eq!(
            session
                .judge()
                .unwrap()
                .diagnosis(&session.settings())
                .unwrap()
                .next_step,
            None
        );
        let next = session.next_step().unwrap().unwrap();
        assert_eq!(next.key, Some(Key::Reading(kind)));
        let plan = session.plan().unwrap();
        assert_eq!(plan.steps[0].action, next.action);
        assert!(plan.steps[0].minutes > 0.0 && !plan.steps[0].branches.is_empty());
        assert_eq!(session.answer().unwrap().next_checks[0].check, next_check(&next));
        let (kind, measured) = warm(kind, c);
        session.add_reading(kind, measured).unwrap();
    }
    assert_eq!(session.next_step().unwrap(), None);
}

fn next_check(next: &NextStep) -> Check {
    match next.action {
        Action::Check(check) => check,
        other @ (Action::Repair(_) | Action::HandOver | _) => panic!("{other:?}"),
    }
}
