//! One next step, the same in every door, and in the order in which the trade works.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)]

use coldloop::circuit::{Gauge, Observations, Reading, Readings};
use coldloop::diagnosis::{
    Action, Case, Cost, Diagnosis, Judgement, Plan, Settings, can_check, diagnose, judge, questions, repair,
};
use coldloop::units::{GaugePressure, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Check, Compressor, Expansion, Fault, Language, Observation, Refrigerant, Thermometer, intake, report};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::fs;

/// A case as it may come in: some of the readings, some looks.
fn drawn(rng: &mut ChaCha8Rng) -> Case {
    let refrigerant = [Refrigerant::R134a, Refrigerant::R1234yf][rng.random_range(0..2)];
    let expansion = Expansion::ALL[rng.random_range(0..2)];
    let mut system = System::new(refrigerant, expansion, Compressor::ALL[rng.random_range(0..4)]);
    system.sight_glass = [None, Some(false)][rng.random_range(0..2)];
    let conditions = Conditions::new(celsius(rng.random_range(16.0..40.0)), Surroundings::SEA_LEVEL);
    let seldom = |rng: &mut ChaCha8Rng| rng.random::<f64>() < 0.35;
    let psig = |psig: f64, gauge| Some(Reading::pressure(GaugePressure::from_psig(psig), gauge));
    let mut readings = Readings::default();
    // Most read about what a sound system reads, or one that cools little.
    let (low, high, vent) = match rng.random_range(0..4) {
        0 => (5.0..90.0, 90.0..380.0, 2.0..25.0),
        1 => (5.0..22.0, 90.0..160.0, 10.0..20.0),
        _ => (28.0..42.0, 150.0..230.0, 4.0..10.0),
    };
    if !seldom(rng) {
        readings.low_side = psig(rng.random_range(low), Gauge::LOW_SIDE);
    }
    if !seldom(rng) {
        readings.high_side = psig(rng.random_range(high), Gauge::HIGH_SIDE);
    }
    if !seldom(rng) {
        let vent = celsius(rng.random_range(vent));
        readings.vent = Some(Reading::temperature(vent, Thermometer::PocketDigital));
    }
    if seldom(rng) {
        readings.high_side_transducer = psig(rng.random_range(90.0..380.0), Gauge::TRANSDUCER);
    }
    // A few looks, or many, as a sound vehicle or one with a fault would answer them.
    let looks = Settings::default().looks;
    let fault = [Fault::NoFault, Fault::ALL[rng.random_range(0..Fault::ALL.len())]][rng.random_range(0..2)];
    let many = rng.random::<f64>();
    let mut observations = Observations::NONE;
    let asked = Check::ALL.into_iter().flat_map(|check| questions(check, &system));
    for observation in asked.collect::<Vec<_>>() {
        let plain = observation != Observation::TransducerAgrees && observation != Observation::CoolsOnTheRoad;
        if plain && rng.random::<f64>() < many * many {
            observations = observations.with(observation, looks.yes(observation, fault) > 0.5);
        }
    }
    Case {
        observations,
        ..Case::new(system, conditions, readings)
    }
}

/// 300 drawn cases with their answers, and those of the garage.
fn cases() -> Vec<(Case, Diagnosis, Plan)> {
    let mut rng = ChaCha8Rng::seed_from_u64(17);
    let mut cases: Vec<Case> = (0..300).map(|_| drawn(&mut rng)).collect();
    for file in fs::read_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/readings")).unwrap() {
        let text = fs::read_to_string(file.unwrap().path()).unwrap();
        cases.extend(intake::case_from_toml(&text).ok());
    }
    assert!(cases.len() > 315, "{}", cases.len());
    let settings = Settings::default();
    let judged = cases.into_iter().map(|case| {
        let judgement = judge(&case, &settings).unwrap();
        let (answer, plan) = (judgement.diagnosis(&settings).unwrap(), judgement.plan(&settings));
        (case, answer, plan)
    });
    judged.collect()
}

fn checks(plan: &Plan) -> impl Iterator<Item = Check> + '_ {
    plan.steps.iter().filter_map(|step| match step.action {
        Action::Check(check) => Some(check),
        Action::Repair(_) | Action::HandOver => None,
        _ => unreachable!("a new member of the vocabulary"),
    })
}

fn reasons_of(case: &Case) -> Judgement {
    judge(case, &Settings::default()).unwrap()
}

#[test]
fn every_door_names_the_same_next_step() {
    let (mut looked, mut mended, mut nothing) = (0, 0, 0);
    for (case, answer, plan) in cases() {
        assert_eq!(answer.next_step, plan.steps.first().map(|step| step.action), "{case:?}");
        let page: serde_json::Value = serde_json::from_str(&report::json(
            &case,
            &answer,
            &reasons_of(&case).reasons(&Settings::default()),
            Language::English,
        ))
        .unwrap();
        let first = answer.next_checks.first().map(|ranked| ranked.check);
        match answer.next_step {
            Some(Action::Check(check)) => {
                assert_eq!(first, Some(check), "{case:?}");
                assert_eq!(page["next_step"]["check"], check.id());
                assert_eq!(page["next_checks"][0]["check"], check.id());
                looked += 1;
            }
            Some(Action::Repair(fault)) => {
                assert_eq!(
                    (first, &page["next_step"]["repair"]),
                    (None, &fault.id().into()),
                    "{case:?}"
                );
                mended += 1;
            }
            Some(Action::HandOver) => assert!(first.is_none(), "{case:?}"),
            None => {
                assert!(first.is_none() && page["next_step"].is_null(), "{case:?}");
                nothing += 1;
            }
            Some(_) => unreachable!("a new member of the vocabulary"),
        }
        let text = report::text(
            &case,
            &answer,
            &reasons_of(&case).reasons(&Settings::default()),
            report::Units::Metric,
        );
        assert_eq!(text.contains("DO FIRST"), answer.next_step.is_some(), "{text}");
    }
    assert!(looked > 100 && mended > 5 && nothing > 1, "{looked} {mended} {nothing}");
}

#[test]
fn the_order_of_the_trade_is_kept() {
    let charge = [Fault::Undercharge, Fault::Overcharge];
    let gauges = [Check::ReadLowSide, Check::ReadHighSide];
    let (mut weighed, mut bare, mut driven) = (0, 0, 0);
    // Driving and weighing cost next to nothing, so that only the order of the trade puts them later.
    let nearly_free = Cost {
        minutes: 0.01,
        money: 0.0,
    };
    let mut settings = Settings::default();
    settings.prices = settings
        .prices
        .with_check(Check::RoadTest, nearly_free)
        .and_then(|prices| prices.with_check(Check::RecoverAndWeigh, nearly_free))
        .and_then(|prices| prices.with_recovery(nearly_free))
        .unwrap();
    for (case, ..) in cases() {
        let judgement = judge(&case, &settings).unwrap();
        let (answer, plan) = (judgement.diagnosis(&settings).unwrap(), judgement.plan(&settings));
        let Readings {
            low_side,
            high_side,
            high_side_transducer: transducer,
            vent,
            ..
        } = case.readings;
        let no_pressure = low_side.is_none() && high_side.is_none() && transducer.is_none();
        let read = low_side.is_some() && (high_side.is_some() || transducer.is_some()) && vent.is_some();
        let at_rest = answer.expected.is_none();
        let leading = answer.faults[0].fault;
        match answer.next_step {
            Some(Action::Check(Check::RecoverAndWeigh)) => {
                assert!(read && charge.contains(&leading), "{case:?}");
                weighed += 1;
            }
            Some(Action::Check(Check::RoadTest)) => {
                assert!(vent.is_none() || leading == Fault::NoFault, "{case:?}");
                driven += 1;
            }
            Some(Action::Repair(fault)) => assert!(read || !repair(fault).recovery, "{case:?}"),
            Some(Action::HandOver) | None => assert!(read, "{case:?}"),
            Some(Action::Check(check)) if no_pressure && !at_rest && gauges.contains(&check) => {
                let seen = |observation| case.observations.answer(observation).is_some();
                assert!(seen(Observation::CondenserFanRunning), "{case:?}");
                bare += 1;
            }
            Some(Action::Check(_)) => bare += usize::from(no_pressure),
            Some(_) => unreachable!("a new member of the vocabulary"),
        }
        // No plan opens the circuit before both sides and the vent are read.
        for step in plan.steps.iter().filter(|step| step.recovers) {
            let first = &plan.steps[0];
            assert!(read || step != first, "{case:?}");
        }
    }
    assert!(bare > 5 && driven > 0 && weighed > 0, "{bare} {driven} {weighed}");
}

#[test]
fn no_plan_asks_for_what_a_system_cannot_have_or_repairs_what_is_sound() {
    for (case, answer, plan) in cases() {
        let listed = answer.next_checks.iter().map(|ranked| ranked.check);
        for check in listed.chain(checks(&plan)) {
            assert!(can_check(check, &case.system), "{check}: {case:?}");
        }
        let mends_nothing = |action| action == Action::Repair(Fault::NoFault);
        assert!(!plan.steps.iter().any(|step| mends_nothing(step.action)), "{case:?}");
    }
}

/// What was tried in vain, and has no prior any more, is not tried again.
#[test]
fn what_is_ruled_out_is_not_repaired() {
    let mut changed = 0;
    for (case, _, plan) in cases() {
        let Some(Action::Repair(fault)) = plan.steps.first().map(|step| step.action) else {
            continue;
        };
        let settings = Settings::default().with_prior(fault, 0.0);
        let plan = judge(&case, &settings).unwrap().plan(&settings);
        let again = plan.steps.iter().any(|step| step.action == Action::Repair(fault));
        assert!(!again, "{fault}: {case:?}");
        changed += 1;
    }
    assert!(changed > 5, "{changed}");
}

/// Comparing the vehicle's own transducer with the gauge is a step only where one of the two was not read.
#[test]
fn a_transducer_is_compared_once() {
    let settings = Settings::default();
    let nearly_free = Cost {
        minutes: 1e-6,
        money: 0.0,
    };
    let mut cheap = settings;
    cheap.prices = settings
        .prices
        .with_check(Check::CompareTransducer, nearly_free)
        .unwrap();
    let mut offered = 0;
    for (case, ..) in cases() {
        let answer = diagnose(&case, &cheap).unwrap();
        let listed = answer
            .next_checks
            .iter()
            .any(|ranked| ranked.check == Check::CompareTransducer);
        let one = case.readings.high_side.is_some() != case.readings.high_side_transducer.is_some();
        assert!(one || !listed, "{case:?}");
        offered += usize::from(listed);
    }
    assert!(offered > 10, "{offered}");
    // It speaks of the gauge.
    let looks = settings.looks;
    let agrees = Observation::TransducerAgrees;
    assert!(looks.yes(agrees, Fault::GaugeError) < 0.5 * looks.yes(agrees, Fault::NoFault));
}

/// After a proven repair nothing is left to do, whichever door is asked.
#[test]
fn a_proven_repair_is_not_planned_again() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/examples/readings/repaired-van.toml");
    let visit = intake::visit_from_toml(&fs::read_to_string(path).unwrap()).unwrap();
    assert!(!visit.judge().unwrap().plan(&visit.settings).steps.is_empty());
    assert!(visit.plan().unwrap().steps.is_empty());
    let text = report::visit_text(&visit, report::Units::Metric).unwrap();
    assert!(!text.contains("DO FIRST"), "{text}");
    let page: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
    assert!(page["next_step"].is_null() && page["next_checks"].as_array().unwrap().is_empty());
}
