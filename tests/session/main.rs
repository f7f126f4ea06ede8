//! A visit as it grows: what is undone leads back to the same bits, what is stored is resumed to the same bits, and the step that
//! somebody was sent to do stays unless another one saves clearly more.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used, clippy::panic, clippy::print_stdout)] // tests fail by panicking, and one prints a figure

mod repair;

use coldloop::circuit::{Gauge, Measured, Observations, Reading, Readings};
use coldloop::diagnosis::{Action, Settings, diagnose, judge};
use coldloop::session::{Done, Session, Undone};
use coldloop::units::{
    Frequency, GaugePressure, Pressure, PressureDifference, RotationalSpeed, Surroundings, celsius,
    difference_in_kelvins, in_kelvins, kelvins, kelvins_difference,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    Check, Compressor, ErrorKind, Expansion, Fault, Observation, Quantity, ReadingKind, Refrigerant, ResultKind,
    Thermometer, intake,
};
use proptest::prelude::*;

/// A van of the garage at 1,600 m.
fn van() -> Session {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let yard = Surroundings::at_altitude(1_600.0).unwrap();
    Session::new(system, Conditions::new(celsius(26.0), yard), Settings::default()).unwrap()
}

fn psig(kind: ReadingKind, psig: f64) -> (ReadingKind, Measured) {
    let gauge = if kind == ReadingKind::LowSide {
        Gauge::LOW_SIDE
    } else {
        Gauge::HIGH_SIDE
    };
    (kind, Reading::pressure(GaugePressure::from_psig(psig), gauge).into())
}

fn warm(kind: ReadingKind, c: f64) -> (ReadingKind, Measured) {
    (
        kind,
        Reading::temperature(celsius(c), Thermometer::PocketDigital).into(),
    )
}

/// What can be added to a session.
#[derive(Clone, Debug)]
enum Add {
    Reading(ReadingKind, Measured),
    Look(Observation, bool),
    Log(Box<Readings>),
    Vain(Fault),
    Ambient(f64),
    Repair(Fault),
    Ask,
}

impl Add {
    /// Adds it; whether that was a step.
    fn to(&self, session: &mut Session) -> bool {
        match self {
            Self::Reading(kind, measured) => session.add_reading(*kind, *measured).is_ok(),
            Self::Look(observation, answer) => session.add_observation(*observation, *answer).is_ok(),
            Self::Log(readings) => session.add_log(readings, &Observations::NONE).is_ok(),
            Self::Vain(fault) => session.add_vain_repair(*fault).is_ok(),
            Self::Repair(fault) => session.add_repair(*fault).is_ok(),
            Self::Ambient(c) => {
                let conditions = Conditions {
                    ambient: celsius(*c),
                    ..session.case().conditions
                };
                session.set_conditions(conditions).is_ok()
            }
            Self::Ask => {
                session.answer().unwrap();
                false
            }
        }
    }
}

fn reading() -> impl Strategy<Value = (ReadingKind, Measured)> {
    prop_oneof![
        (5.0..80.0).prop_map(|p| psig(ReadingKind::LowSide, p)),
        (90.0..320.0).prop_map(|p| psig(ReadingKind::HighSide, p)),
        (2.0..25.0).prop_map(|c| warm(ReadingKind::Vent, c)),
        (2.0..25.0).prop_map(|c| warm(ReadingKind::SuctionLine, c)),
        (25.0..60.0).prop_map(|c| warm(ReadingKind::LiquidLine, c)),
        (50.0..110.0).prop_map(|c| warm(ReadingKind::DischargeLine, c)),
        (0.0..8.0).prop_map(|n| (
            ReadingKind::ClutchCycles,
            Reading::counted(Frequency::from_per_minute(n)).into()
        )),
    ]
}

fn add() -> impl Strategy<Value = Add> {
    let log = (reading(), reading()).prop_map(|((one, first), (other, second))| {
        let readings = Readings::default().with(one, first).unwrap();
        Add::Log(Box::new(readings.with(other, second).unwrap()))
    });
    let fault = (1..Fault::ALL.len()).prop_map(|at| Fault::ALL[at]);
    prop_oneof![
        6 => reading().prop_map(|(kind, measured)| Add::Reading(kind, measured)),
        4 => (0..Observation::ALL.len(), any::<bool>()).prop_map(|(at, yes)| Add::Look(Observation::ALL[at], yes)),
        1 => log,
        1 => fault.clone().prop_map(Add::Vain),
        1 => fault.prop_map(Add::Repair),
        1 => (18.0..38.0).prop_map(Add::Ambient),
        2 => Just(Add::Ask),
    ]
}

/// Every bit of an answer with its plan, or the refusal.
fn bits(session: &Session) -> String {
    let mut session = session.clone();
    let plan = session.plan();
    format!("{:?} {plan:?} {:?}", session.answer(), session.proof())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn undoing_leads_back_to_the_same_bits(before in prop::collection::vec(add(), 0..6), then in prop::collection::vec(add(), 1..8)) {
        let mut session = van();
        for add in &before {
            add.to(&mut session);
        }
        session.answer().unwrap();
        let (known, told) = (session.clone(), bits(&session));
        let steps = then.iter().filter(|add| add.to(&mut session)).count();
        for _ in 0..steps {
            prop_assert!(matches!(session.undo(), Undone::Step(_)));
        }
        if steps > 0 {
            prop_assert_eq!(&session, &known);
            prop_assert_eq!(bits(&session), told);
        }
    }

    #[test]
    fn what_is_stored_is_resumed_to_the_same_bits(all in prop::collection::vec(add(), 0..22)) {
        let mut session = van();
        for add in &all {
            add.to(&mut session);
        }
        let file = intake::SessionFile::new(session);
        let (toml, json) = (intake::session_to_toml(&file).unwrap(), intake::session_to_json(&file).unwrap());
        let again = intake::session_from_toml(&toml).unwrap();
        prop_assert_eq!(&*again, &file);
        prop_assert_eq!(&*intake::session_from_json(&json).unwrap(), &file);
        prop_assert_eq!(bits(&again.session), bits(&file.session));
        prop_assert_eq!(intake::session_to_toml(&again).unwrap(), toml);
    }

    /// No question is asked in between: the step of an answer is held from then on, which depends on the time of the question.
    #[test]
    fn independent_additions_give_the_same_answer_in_any_order(seed in any::<u64>()) {
        let mut all = vec![
            Add::Reading(ReadingKind::LowSide, psig(ReadingKind::LowSide, 18.0 + (seed % 40) as f64).1),
            Add::Reading(ReadingKind::HighSide, psig(ReadingKind::HighSide, 150.0 + (seed % 90) as f64).1),
            Add::Reading(ReadingKind::Vent, warm(ReadingKind::Vent, 9.0).1),
            Add::Look(Observation::OilTraces, seed % 2 == 0),
            Add::Look(Observation::CondenserFanRunning, true),
            Add::Vain(Fault::Overcharge),
            Add::Ambient(29.0),
        ];
        let of = |all: &[Add]| {
            let mut session = van();
            all.iter().for_each(|add| assert!(add.to(&mut session)));
            bits(&session)
        };
        let told = of(&all);
        let (turn, at) = ((seed % 7) as usize, (seed / 7 % 7) as usize);
        all.rotate_left(turn);
        all.swap(0, at);
        prop_assert_eq!(of(&all), told);
    }
}

#[test]
fn a_session_answers_as_its_case_does() {
    let mut session = van();
    for (kind, measured) in [psig(ReadingKind::LowSide, 62.0), psig(ReadingKind::HighSide, 118.0)] {
        session.add_reading(kind, measured).unwrap();
    }
    let answer = session.answer().unwrap();
    assert_eq!(answer, diagnose(&session.case(), &Settings::default()).unwrap());
    // So does its file.
    let file = intake::SessionFile::new(session);
    assert_eq!(file.visit().unwrap().diagnose().unwrap(), answer);
    let toml = intake::session_to_toml(&file).unwrap();
    assert_eq!(intake::visit_from_toml(&toml).unwrap().diagnose().unwrap(), answer);
}

/// Whatever is added, a session has the same size, so that a machine without an allocator can hold one.
#[test]
fn a_session_has_a_fixed_size() {
    let bytes = size_of::<Session>();
    assert!(bytes < 24_576, "{bytes} bytes");
    println!(
        "{bytes} bytes, of which {} are settings and {} the vehicle",
        size_of::<Settings>(),
        size_of::<coldloop::diagnosis::Case>()
    );
}

#[test]
fn old_steps_become_part_of_the_start_and_undoing_says_so() {
    let mut session = van();
    assert_eq!(session.undo(), Undone::Nothing);
    for at in 0..Session::UNDOABLE + 3 {
        let (kind, measured) = warm(ReadingKind::Vent, 8.0 + at as f64 / 8.0);
        session.add_reading(kind, measured).unwrap();
    }
    assert_eq!(session.undoable(), Session::UNDOABLE);
    for _ in 0..Session::UNDOABLE {
        assert_eq!(session.undo(), Undone::Step(Done::Reading(ReadingKind::Vent)));
    }
    assert_eq!(session.undo(), Undone::TooOld);
    let vent = session.case().readings.vent.unwrap();
    assert_eq!(vent.value, celsius(8.0 + 2.0 / 8.0));
}

#[test]
fn the_outcome_of_a_check_answers_its_questions() {
    let mut session = van();
    let seen = |session: &Session| {
        [Observation::HubTurnsFreely, Observation::HubLocked].map(|o| session.case().observations.answer(o))
    };
    session
        .add_outcome(Check::TurnHub, ResultKind::Yes, Some(Observation::HubLocked))
        .unwrap();
    assert_eq!(seen(&session), [Some(false), Some(true)]);
    session.add_outcome(Check::TurnHub, ResultKind::No, None).unwrap();
    assert_eq!(seen(&session), [Some(false), Some(false)]);
    session.undo();
    session.undo();
    assert_eq!(seen(&session), [None, None]);
    session.add_outcome(Check::WatchClutch, ResultKind::Yes, None).unwrap();
    assert_eq!(
        session.case().observations.answer(Observation::ClutchEngaged),
        Some(true)
    );
    // Weighing empties the circuit.
    session
        .add_outcome(
            Check::RecoverAndWeigh,
            ResultKind::Yes,
            Some(Observation::RecoveredBelowLabel),
        )
        .unwrap();
    assert!(session.settings().recovered);
    session.undo();
    assert!(!session.settings().recovered);
}

#[test]
fn what_cannot_be_is_refused_by_name_and_changes_nothing() {
    let mut session = van();
    let (kind, measured) = psig(ReadingKind::LowSide, 30.0);
    session.add_reading(kind, measured).unwrap();
    let before = session.clone();
    let refused = |result: Result<(), coldloop::Error>, kind: ErrorKind, quantity: Quantity| {
        let error = result.unwrap_err();
        assert_eq!((error.kind, error.quantity), (kind, quantity), "{error}");
        error
    };
    let (_, hot) = warm(ReadingKind::Vent, 900.0);
    let error = refused(
        session.add_reading(ReadingKind::Vent, hot),
        ErrorKind::OutOfRange,
        Quantity::Temperature,
    );
    assert!(error.value > error.high);
    let nothing = Reading::within(kelvins(f64::NAN), kelvins_difference(1.0));
    refused(
        session.add_reading(ReadingKind::Cabin, nothing),
        ErrorKind::NotFinite,
        Quantity::Temperature,
    );
    refused(
        session.add_reading(ReadingKind::Vent, measured),
        ErrorKind::Inconsistent,
        Quantity::Temperature,
    );
    let below: Pressure = GaugePressure::from_pa(-99_000.0).into();
    refused(
        session.add_reading(
            ReadingKind::HighSide,
            Reading::within(below, PressureDifference::from_pa(1e3)),
        ),
        ErrorKind::OutOfRange,
        Quantity::AbsolutePressure,
    );
    let mut fast = session.case().conditions;
    fast.engine_speed = Some(RotationalSpeed::from_hz(1e9));
    refused(
        session.set_conditions(fast),
        ErrorKind::OutOfRange,
        Quantity::RotationalSpeed,
    );
    // A figure needs its value, a question its check, a fault its system.
    let outcome = session.add_outcome(Check::ReadVent, ResultKind::Above, None);
    refused(outcome, ErrorKind::Missing, Quantity::Name);
    for (check, result, question) in [
        (Check::ReadVent, ResultKind::Yes, None),
        (Check::WatchClutch, ResultKind::No, Some(Observation::OilTraces)),
        (Check::TurnHub, ResultKind::Yes, None),
        (Check::DriveControl, ResultKind::Yes, None),
    ] {
        refused(
            session.add_outcome(check, result, question),
            ErrorKind::Inconsistent,
            Quantity::Name,
        );
    }
    refused(
        session.add_repair(Fault::NoFault),
        ErrorKind::Inconsistent,
        Quantity::Name,
    );
    refused(
        session.add_vain_repair(Fault::OrificeRestricted),
        ErrorKind::Inconsistent,
        Quantity::Name,
    );
    assert_eq!(session, before);
}

/// A reading that changes within its noise does not make the held step alternate.
#[test]
fn a_reading_within_its_noise_does_not_alternate_the_step() {
    let mut cases = 0;
    for file in std::fs::read_dir("examples/readings").unwrap() {
        let text = std::fs::read_to_string(file.unwrap().path()).unwrap();
        let Ok(case) = intake::case_from_toml(&text) else {
            continue;
        };
        for kind in [ReadingKind::LowSide, ReadingKind::HighSide, ReadingKind::Vent] {
            let Some(read) = case.readings.get(kind) else { continue };
            let mut session = Session::of(case, Settings::default()).unwrap();
            let mut told = Vec::new();
            for way in [0.0, 1.0, -1.0, 1.0, -1.0, 1.0, -1.0, 1.0] {
                session.add_reading(kind, moved(read, way)).unwrap();
                told.push(session.next_step().unwrap());
            }
            let changes = told.windows(2).filter(|two| two[0] != two[1]).count();
            assert!(changes <= 1, "{kind}: {told:?}\n{text}");
            cases += 1;
        }
    }
    assert!(cases > 40, "{cases}");
}

/// The same reading so many standard uncertainties higher.
fn moved(read: Measured, by: f64) -> Measured {
    match read {
        Measured::Pressure(reading) => {
            let pa = by * reading.standard_uncertainty.pa();
            let value = match reading.value {
                Pressure::Gauge(p) => GaugePressure::from_pa(p.pa() + pa).into(),
                Pressure::Absolute(p) => coldloop::units::AbsolutePressure::from_pa(p.pa() + pa).into(),
            };
            Reading { value, ..reading }.into()
        }
        Measured::Temperature(reading) => {
            let value = kelvins(in_kelvins(reading.value) + by * difference_in_kelvins(reading.standard_uncertainty));
            Reading { value, ..reading }.into()
        }
        Measured::Frequency(reading) => Measured::Frequency(reading),
        _ => unreachable!("a new member of the vocabulary"),
    }
}

#[test]
fn the_held_step_leads_answer_and_plan_alike() {
    let mut held = 0;
    for file in std::fs::read_dir("examples/readings").unwrap() {
        let text = std::fs::read_to_string(file.unwrap().path()).unwrap();
        let Ok(case) = intake::case_from_toml(&text) else {
            continue;
        };
        let usual = diagnose(&case, &Settings::default()).unwrap();
        for check in Check::ALL {
            let mut settings = Settings::default();
            settings.held = Some(Action::Check(check));
            let judgement = judge(&case, &settings).unwrap();
            let (answer, plan) = (judgement.diagnosis(&settings).unwrap(), judgement.plan(&settings));
            assert_eq!(answer.next_step, plan.steps.first().map(|step| step.action));
            if let (Some(Action::Check(next)), Some(first)) = (answer.next_step, answer.next_checks.first()) {
                assert_eq!(next, first.check);
            }
            held += usize::from(answer.next_step != usual.next_step);
            assert!(answer.next_step == usual.next_step || answer.next_step == Some(Action::Check(check)));
            // The probabilities do not depend on the held step.
            assert_eq!(answer.faults, usual.faults);
        }
    }
    assert!(held > 0);
}
