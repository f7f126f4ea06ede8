//! Facts of the trade, or claims that the library met earlier, which it does not meet now: each with its own limit.
//!
//! `cargo test --test not_met -- --ignored` shows how far each is off. Other files hold weaker limits of some of these, so that
//! nothing gets worse. Unless a source is named, each figure is common practice, no source.

#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Action, Case, Diagnosis, Settings, diagnose};
use coldloop::expected::Bands;
use coldloop::proof::prove;
use coldloop::units::{
    GaugePressure, Pressure, RelativeHumidity, RotationalSpeed, Surroundings, TimeSpan, celsius, fahrenheit,
    in_fahrenheit,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    Compressor, Expansion, Fault, Observation, Refrigerant, RepairFinding, Thermometer, VerdictKind, intake,
};

/// A vehicle with R-134a at sea level after twelve minutes on the coldest setting.
fn vehicle(expansion: Expansion, compressor: Compressor, ambient_f: f64) -> Case {
    let system = System::new(Refrigerant::R134a, expansion, compressor);
    let mut conditions = Conditions::new(fahrenheit(ambient_f), Surroundings::SEA_LEVEL);
    conditions.running_for = Some(TimeSpan::from_seconds(720.0));
    Case::new(system, conditions, Readings::default())
}

fn car(ambient_f: f64) -> Case {
    vehicle(Expansion::Txv, Compressor::FixedClutch, ambient_f)
}

fn read(mut case: Case, low: impl Into<Pressure>, high: impl Into<Pressure>, vent_f: Option<f64>) -> Case {
    case.readings.low_side = Some(Reading::pressure(low, Gauge::LOW_SIDE));
    case.readings.high_side = Some(Reading::pressure(high, Gauge::HIGH_SIDE));
    case.readings.vent = vent_f.map(|f| Reading::temperature(fahrenheit(f), Thermometer::PocketDigital));
    case
}

fn psig(case: Case, low: f64, high: f64, vent_f: Option<f64>) -> Case {
    read(
        case,
        GaugePressure::from_psig(low),
        GaugePressure::from_psig(high),
        vent_f,
    )
}

fn judged(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

fn systems() -> impl Iterator<Item = (Expansion, Compressor)> {
    let compressors = |expansion| Compressor::ALL.map(|compressor| (expansion, compressor));
    Expansion::ALL.into_iter().flat_map(compressors)
}

#[test]
#[ignore = "not met: charts and both simulators have the low side lower, at 17 to 39 psig"]
fn a_low_side_of_35_to_45_psig_at_74_f_lies_in_the_80_percent_band() {
    let case = car(74.0);
    let low = Bands::of(&case.system, &case.conditions).unwrap().low_side;
    assert!(low.low_80.psig() <= 35.0 && low.high_80.psig() >= 45.0, "{low:?}");
}

#[test]
#[ignore = "not met: 61 F, for sources that disagree make the band wide"]
fn a_vent_of_60_f_at_74_f_lies_outside_the_95_percent_band() {
    let case = car(74.0);
    let vent = Bands::of(&case.system, &case.conditions).unwrap().vent;
    assert!(in_fahrenheit(vent.high_95) < 60.0);
}

#[test]
#[ignore = "not met: 0.08 to 0.17"]
fn a_vent_of_60_to_70_f_at_74_f_leaves_little_of_no_fault() {
    for (expansion, compressor) in systems() {
        for vent_f in [60.0, 65.0, 70.0] {
            let mut case = vehicle(expansion, compressor, 74.0);
            case.conditions.engine_speed = Some(RotationalSpeed::from_hz(25.0));
            case.conditions.relative_humidity = Some(RelativeHumidity::from_fraction(0.5));
            case.readings.vent = Some(Reading::temperature(fahrenheit(vent_f), Thermometer::PocketDigital));
            let none = judged(&case).probability_of(&[Fault::NoFault]);
            assert!(none < 0.12, "{expansion} {compressor} {vent_f}: {none}");
        }
    }
}

#[test]
#[ignore = "not met: no source has a running system with its low side so far above saturation at the ambient"]
fn sides_of_115_and_125_psig_are_a_worn_compressor() {
    const NOT_PUMPING: [Fault; 4] = [
        Fault::WornCompressor,
        Fault::CompressorControlFault,
        Fault::ClutchNotEngaged,
        Fault::ClutchSlipping,
    ];
    for (expansion, compressor) in systems() {
        let answer = judged(&psig(vehicle(expansion, compressor, 74.0), 115.0, 125.0, None));
        assert_eq!(
            answer.faults[0].fault,
            Fault::WornCompressor,
            "{expansion} {compressor}"
        );
        let p = answer.probability_of(&NOT_PUMPING);
        assert!(p / (1.0 - p) > 15.0, "{expansion} {compressor}: {p}");
    }
}

#[test]
#[ignore = "not met: it leads with 0.3 to 0.6, which names nothing"]
fn a_compressor_that_holds_60_to_80_against_125_psig_is_named() {
    for expansion in Expansion::ALL {
        for (low, vent_f) in [(60.0, 61.0), (70.0, 64.0), (80.0, 68.0)] {
            let case = psig(
                vehicle(expansion, Compressor::FixedClutch, 74.0),
                low,
                125.0,
                Some(vent_f),
            );
            let verdict = judged(&case).verdict;
            assert_eq!(verdict.kind, VerdictKind::NamedFault, "{expansion} {low}");
            assert_eq!(*verdict.faults, [Fault::WornCompressor]);
        }
    }
}

#[test]
#[ignore = "not met: 0.89; a fixed clutch and a variable compressor without an external control reach 0.9"]
fn a_hub_that_turns_freely_leaves_the_worn_compressor_of_an_external_control() {
    let mut case = psig(
        vehicle(Expansion::Txv, Compressor::VariableExternal, 74.0),
        70.0,
        125.0,
        Some(64.0),
    );
    for seen in [Observation::ClutchEngaged, Observation::HubTurnsFreely] {
        case.observations = case.observations.with(seen, true);
    }
    let worn = judged(&case).probability_of(&[Fault::WornCompressor]);
    assert!(worn > 0.9, "{worn}");
}

#[test]
#[ignore = "not met: a compressor that pumps nothing reads alike"]
fn equal_sides_of_a_motor_driven_compressor_are_its_control() {
    let answer = judged(&psig(
        vehicle(Expansion::Txv, Compressor::Electric, 74.0),
        84.0,
        86.0,
        None,
    ));
    assert_eq!(answer.faults[0].fault, Fault::CompressorControlFault);
}

#[test]
#[ignore = "not met: 0.30 after no fault with 0.31, for sound systems reach as far at an unknown engine speed"]
fn little_subcooling_beside_a_high_side_is_airflow() {
    let mut case = psig(car(85.0), 50.0, 320.0, Some(52.0));
    // 320 psig condenses R-134a at 73.7 °C.
    case.readings.liquid_line = Some(Reading::temperature(celsius(67.5), Thermometer::ClampThermistor));
    assert_eq!(judged(&case).faults[0].fault, Fault::CondenserAirflowLoss);
}

#[test]
fn much_subcooling_beside_a_high_side_is_overcharge_or_air() {
    let mut case = psig(car(85.0), 50.0, 320.0, Some(52.0));
    // 320 psig condenses R-134a at 73.7 °C.
    case.readings.liquid_line = Some(Reading::temperature(celsius(55.0), Thermometer::ClampThermistor));
    let first = judged(&case).faults[0].fault;
    assert!([Fault::Overcharge, Fault::NonCondensables].contains(&first), "{first}");
}

#[test]
#[ignore = "not met: 0.48, for pressures in kPa for psi read like an empty system"]
fn psi_typed_as_kpa_are_all_but_certain() {
    let kpa = GaugePressure::from_kpa;
    let p = judged(&read(car(74.0), kpa(40.0), kpa(175.0), Some(41.0))).probability_of(&[Fault::GaugeError]);
    assert!(p > 0.9, "{p}");
}

#[test]
#[ignore = "not met: every fault may show itself in an unknown way, and none of these keeps what is left"]
fn readings_that_nothing_explains_are_none_of_these() {
    let answer = judged(&psig(car(74.0), 110.0, 400.0, Some(37.0)));
    assert!(answer.none_of_these > 0.5, "{}", answer.none_of_these);
}

#[test]
#[ignore = "not met: the gauges are doubted with 0.66 instead, and a plan that clears them goes on to repairs"]
fn where_nothing_fits_no_part_is_planned() {
    let case = intake::case_from_toml(include_str!("../examples/readings/fits-nothing.toml")).unwrap();
    let answer = judged(&case);
    assert_eq!(answer.verdict.kind, VerdictKind::NothingFits);
    let plan = coldloop::diagnosis::judge(&case, &Settings::default())
        .unwrap()
        .plan(&Settings::default());
    let part = |action| matches!(action, Action::Repair(fault) if fault != Fault::GaugeError);
    assert!(!plan.steps.iter().any(|step| part(step.action)));
    assert!(plan.expected_minutes < 0.2 * plan.without_checks_minutes);
}

#[test]
#[ignore = "not met: the vent of a faulty system is late too, and no fault gains little"]
fn a_system_that_has_just_started_is_far_more_likely_sound() {
    let mut case = psig(car(74.0), 40.0, 170.0, Some(60.0));
    let settled = judged(&case).probability_of(&[Fault::NoFault]);
    case.conditions.running_for = Some(TimeSpan::from_seconds(60.0));
    let early = judged(&case).probability_of(&[Fault::NoFault]);
    assert!(early > 2.5 * settled, "{early} {settled}");
}

#[test]
#[ignore = "not met: better, for a tenth of the wear may be left by the vent and both gauges; with both lines it is proven (tests/repair.rs)"]
fn a_repair_that_shows_in_every_reading_is_proven() {
    let worn = psig(car(74.0), 70.0, 125.0, Some(64.0));
    let sound = psig(car(74.0), 40.0, 170.0, Some(41.0));
    let proof = prove(&worn, &sound, &Settings::default()).unwrap();
    assert_eq!(proof.finding, RepairFinding::Proven, "{}", proof.set_right);
}
