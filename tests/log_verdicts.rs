//! What logs lead to: the logs of the garage, and published traces whose verdict is known.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)]

use coldloop::diagnosis::{Case, Judgement, Settings, judge, judge_states};
use coldloop::intake::{LogColumns, case_from_json};
use coldloop::log::{Datum, Instruments, Recorder, Sample, Summary};
use coldloop::units::{RotationalSpeed, Surroundings, celsius, kelvins_difference};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Channel, Compressor, Expansion, Fault, LogNote, LogPhase, Observation, Refrigerant, VerdictKind};
use proptest::prelude::*;

#[path = "../examples/make_logs.rs"]
#[allow(dead_code)] // its main function
mod make_logs;

const PSI_PA: f64 = 6_894.757_293;

/// `cargo run --release --example make_logs -- examples/logs` writes them again.
#[test]
fn the_logs_of_the_garage_are_what_the_example_makes() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/examples/logs");
    let made = make_logs::files().unwrap();
    for (name, text) in &made {
        let there = std::fs::read_to_string(format!("{folder}/{name}")).unwrap();
        let differs = text.lines().zip(there.lines()).position(|(made, there)| made != there);
        assert!(
            *text == there,
            "{name} differs, first in line {:?}",
            differs.map(|at| at + 1)
        );
    }
    assert_eq!(std::fs::read_dir(folder).unwrap().count(), made.len());
}

/// The cases that a log stands for.
fn cases(case: &Case, summary: &Summary) -> Vec<Case> {
    let of = |state: &coldloop::log::LogState| Case {
        conditions: state.conditions(&case.conditions),
        readings: state.readings(&Instruments::default()),
        observations: summary.observations(),
        ..*case
    };
    let mut cases: Vec<Case> = summary.judged().map(of).collect();
    for case in cases.iter_mut().skip(1) {
        case.observations = coldloop::circuit::Observations::NONE;
    }
    cases
}

/// A log of the garage and what is told of it.
fn of_the_garage(name: &str) -> (Summary, Judgement) {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/examples/logs");
    let mut table: toml::Table = std::fs::read_to_string(format!("{folder}/{name}.toml"))
        .unwrap()
        .parse()
        .unwrap();
    let log = table.remove("log").unwrap();
    let case = case_from_json(&serde_json::to_string(&table).unwrap()).unwrap();
    let mut reader = csv::Reader::from_path(format!("{folder}/{}", log.as_str().unwrap())).unwrap();
    let columns = LogColumns::from_header(reader.headers().unwrap().iter()).unwrap();
    let mut recorder = Recorder::new(columns.datum());
    for row in reader.records() {
        recorder.push(&columns.sample(row.unwrap().iter()).unwrap());
    }
    let summary = recorder.summary();
    let judgement = judge_states(&cases(&case, &summary), &Settings::default()).unwrap();
    (summary, judgement)
}

fn first_three(judgement: &Judgement) -> Vec<Fault> {
    judgement.faults().iter().take(3).map(|ranked| ranked.fault).collect()
}

#[test]
fn the_cycling_van_is_sound_and_its_switch_is_found() {
    let (summary, judgement) = of_the_garage("cycling-van");
    assert_eq!(summary.phase, LogPhase::Cycling);
    assert_eq!(judgement.verdict().kind, VerdictKind::Healthy);
    assert!(summary.states().last().unwrap().swing().unwrap().repeats);
}

#[test]
fn the_bus_pulls_down_and_is_sound() {
    let (summary, judgement) = of_the_garage("bus-pull-down");
    let cabin = summary.cabin.unwrap();
    assert!(
        cabin.from - cabin.to > kelvins_difference(15.0) && cabin.half.seconds() > 100.0,
        "{cabin:?}"
    );
    assert_eq!(first_three(&judgement)[0], Fault::NoFault);
}

#[test]
fn frozen_moisture_comes_and_goes() {
    let (summary, judgement) = of_the_garage("frozen-moisture");
    assert!(summary.recoveries >= 3);
    assert_eq!(
        summary.observations().answer(Observation::CoolingComesAndGoes),
        Some(true)
    );
    assert!(first_three(&judgement).contains(&Fault::MoistureIcing));
}

#[test]
fn the_sweeper_is_judged_at_idle_and_at_speed_together() {
    let (summary, judgement) = of_the_garage("worn-compressor");
    assert_eq!(summary.judged().count(), 2);
    assert_eq!(first_three(&judgement)[0], Fault::WornCompressor);
}

#[test]
fn a_log_with_a_sensor_that_drops_out_is_judged_by_its_valid_samples() {
    let (summary, judgement) = of_the_garage("sensor-drops-out");
    assert!(summary.notes.of(LogNote::Dropout) > 100 && summary.notes.of(LogNote::Spike) > 4);
    assert_eq!(judgement.verdict().kind, VerdictKind::Healthy);
}

/// What is told of a saw-tooth in a car with an orifice tube at 1,500 rpm.
fn saw_tooth(ambient_c: f64, (on_s, off_s): (f64, f64), vent_c: f64) -> Judgement {
    let conditions = Conditions {
        engine_speed: Some(RotationalSpeed::from_hz(25.0)),
        blower: Some(1.0),
        ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
    };
    let system = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    let mut recorder = Recorder::new(Datum::Gauge);
    for second in 0..600 {
        let at = f64::from(second).rem_euclid(on_s + off_s);
        let down = if at < on_s {
            at / on_s
        } else {
            1.0 - (at - on_s) / off_s
        };
        let sample = Sample::at(f64::from(second))
            .with(Channel::LowSide, (43.0 - 19.0 * down) * PSI_PA)
            .with(Channel::HighSide, (120.0 + 60.0 * down) * PSI_PA)
            .with(Channel::Vent, vent_c + 273.15);
        recorder.push(&sample);
    }
    let case = Case::new(system, conditions, Default::default());
    judge_states(&cases(&case, &recorder.summary()), &Settings::default()).unwrap()
}

fn probability(judgement: &Judgement, fault: Fault) -> f64 {
    judgement
        .faults()
        .iter()
        .find(|ranked| ranked.fault == fault)
        .unwrap()
        .probability
}

/// Source: workshop manuals of 1987 to 2000 for cars with an orifice tube: the low side between 24 and 43 psi at 21 to 27 °C is normal, with
/// outlet air near 1 °C where it is dry; low charge cools too little and cycles rapidly at high air temperature.
#[test]
fn a_normal_saw_tooth_is_sound_and_a_rapid_one_on_a_hot_day_is_low_charge() {
    let normal = saw_tooth(24.0, (12.0, 24.0), 5.0);
    assert_eq!(normal.verdict().kind, VerdictKind::Healthy);
    let rapid = saw_tooth(35.0, (3.0, 4.0), 20.0);
    let odds =
        |judgement: &Judgement| probability(judgement, Fault::Undercharge) / probability(judgement, Fault::NoFault);
    assert!(
        odds(&rapid) > 10.0 * odds(&normal),
        "{} {}",
        odds(&rapid),
        odds(&normal)
    );
}

/// Whichever state comes first, the same fault leads, and likelier than by one state; one state is judged as ever.
#[test]
fn states_are_judged_together_in_any_order() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let state = |rpm: f64, low: f64, high: f64| {
        let mut recorder = Recorder::new(Datum::Gauge);
        for second in 0..200 {
            let sample = Sample::at(f64::from(second))
                .with(Channel::LowSide, low)
                .with(Channel::HighSide, high)
                .with(Channel::EngineSpeed, rpm / 60.0);
            recorder.push(&sample);
        }
        let case = Case::new(
            system,
            Conditions::new(celsius(29.0), Surroundings::SEA_LEVEL),
            Default::default(),
        );
        cases(&case, &recorder.summary())[0]
    };
    let (idle, speed) = (state(800.0, 390e3, 850e3), state(2_000.0, 330e3, 1.0e6));
    let settings = Settings::default();
    let alone = judge(&idle, &settings).unwrap();
    assert_eq!(judge_states(&[idle], &settings).unwrap().faults(), alone.faults());
    let (one, other) = (
        judge_states(&[idle, speed], &settings).unwrap(),
        judge_states(&[speed, idle], &settings).unwrap(),
    );
    assert_eq!(one.faults()[0].fault, other.faults()[0].fault);
    assert!(probability(&one, Fault::WornCompressor) > probability(&alone, Fault::WornCompressor));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Any cells make columns and samples, or a refusal that says something; whatever comes out is taken by a recorder.
    #[test]
    fn any_cells_are_read_or_refused(
        header in proptest::collection::vec("(time|low side|high side|vent|clutch|note|Engine Speed)?( )?(\\[(s|min|kPa|kPa gauge|psi gauge|psia|°C|°F|K|rpm)?\\]?)?|\\PC{0,12}", 0..8),
        rows in proptest::collection::vec(proptest::collection::vec("-?[0-9]{0,4}\\.?[0-9]{0,2}|nan|inf|-inf|1e999|\\PC{0,6}", 0..10), 0..40),
    ) {
        match LogColumns::from_header(header.iter().map(String::as_str)) {
            Err(refusal) => prop_assert!(!refusal.to_string().is_empty()),
            Ok(columns) => {
                let mut recorder = Recorder::new(columns.datum());
                for row in &rows {
                    match columns.sample(row.iter().map(String::as_str)) {
                        Ok(sample) => recorder.push(&sample),
                        Err(refusal) => prop_assert!(!refusal.to_string().is_empty()),
                    }
                }
                prop_assert!(recorder.summary().elapsed.seconds().is_finite());
            }
        }
    }
}
