//! Before and after a repair are judged together, each in its own weather.

#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Settings};
use coldloop::expected::OwnVehicle;
use coldloop::proof::{VentSample, prove, pull_down};
use coldloop::units::{
    GaugePressure, RelativeHumidity, RotationalSpeed, Surroundings, Temperature, TimeSpan, celsius,
    difference_in_kelvins, fahrenheit, in_kelvins, kelvins_difference,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    AirSource, Compressor, ErrorKind, Expansion, Fault, Feature, PullDownFinding, Refrigerant, RepairFinding,
    Thermometer,
};

fn degrees(c: f64, limit_k: f64) -> Reading<Temperature> {
    Reading::within(celsius(c), kelvins_difference(limit_k))
}

fn visit(ambient_f: f64, low: f64, high: f64, vent_f: f64) -> Case {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let mut conditions = Conditions::new(fahrenheit(ambient_f), Surroundings::SEA_LEVEL);
    conditions.running_for = Some(TimeSpan::from_seconds(720.0));
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_psig(low), Gauge::LOW_SIDE)),
        high_side: Some(Reading::pressure(GaugePressure::from_psig(high), Gauge::HIGH_SIDE)),
        vent: Some(Reading::temperature(fahrenheit(vent_f), Thermometer::PocketDigital)),
        ..Readings::default()
    };
    Case::new(system, conditions, readings)
}

fn proved(before: &Case, after: &Case) -> coldloop::proof::Proof {
    prove(before, after, &Settings::default()).unwrap()
}

#[test]
fn before_and_after_are_judged_together() {
    let (worn, sound) = (visit(74.0, 70.0, 125.0, 64.0), visit(74.0, 40.0, 170.0, 41.0));
    let proof = proved(&worn, &sound);
    // By the vent and both gauges it helped; to show that no wear is left takes more readings.
    assert_eq!(
        (proof.finding, proof.fault),
        (RepairFinding::Better, Fault::WornCompressor)
    );
    assert!(proof.sound > 0.65 && proof.unchanged < 0.05, "{proof:?}");
    assert!((difference_in_kelvins(proof.vent_gained.unwrap()) - 23.0 / 1.8).abs() < 0.01);
    let low = proof.seen.iter().find(|seen| seen.feature == Feature::LowSide).unwrap();
    assert!(low.before.unwrap() > 1.5 && low.after.unwrap().abs() < 1.6, "{low:?}");
    assert_eq!(proved(&worn, &worn).finding, RepairFinding::StillFaulty);
    // A slight fault reads like a sound system by the vent and both gauges.
    assert_eq!(proved(&sound, &sound).finding, RepairFinding::CannotTell);
}

/// With both lines and the discharge line at both times, and an earlier sound visit on file.
#[test]
fn more_readings_and_an_earlier_visit_prove_what_the_gauges_leave_open() {
    let (mut worn, mut sound) = (visit(74.0, 70.0, 125.0, 64.0), visit(74.0, 40.0, 170.0, 41.0));
    let mut earlier = visit(78.0, 41.0, 180.0, 42.0);
    for (case, suction_f, liquid_f) in [
        (&mut worn, 78.0, 92.0),
        (&mut sound, 54.0, 104.0),
        (&mut earlier, 56.0, 107.0),
    ] {
        case.conditions.engine_speed = Some(RotationalSpeed::from_hz(25.0));
        case.readings.suction_line = Some(Reading::temperature(
            fahrenheit(suction_f),
            Thermometer::ClampThermistor,
        ));
        case.readings.liquid_line = Some(Reading::temperature(fahrenheit(liquid_f), Thermometer::ClampThermistor));
    }
    let mut own = OwnVehicle::new(earlier.system);
    own.learn(&earlier.conditions, &earlier.readings).unwrap();
    (worn.own_readings, sound.own_readings) = (Some(own), Some(own));
    let proof = proved(&worn, &sound);
    println!(
        "{} {} {} {}",
        proof.finding, proof.set_right, proof.sound, proof.same_fault
    );
    assert_eq!(proof.finding, RepairFinding::Proven);
    assert!(proof.set_right > 0.75 && proof.same_fault < 0.2);
}

/// Two fifths of the way back are no proof.
#[test]
fn half_a_repair_is_no_proof() {
    let (worn, half) = (visit(74.0, 70.0, 125.0, 64.0), visit(74.0, 55.0, 145.0, 53.0));
    let proof = proved(&worn, &half);
    println!(
        "{} {} {} {}",
        proof.finding, proof.set_right, proof.gone, proof.same_fault
    );
    assert_eq!(proof.finding, RepairFinding::CannotTell);
    assert!(proof.gone < 0.6, "{}", proof.gone);
}

#[test]
fn nothing_changed_and_worse_are_told() {
    let (mild, grown) = (visit(74.0, 55.0, 145.0, 53.0), visit(74.0, 80.0, 110.0, 70.0));
    let proof = proved(&mild, &grown);
    assert_eq!(proof.finding, RepairFinding::Worse);
    assert!(proof.gone < -0.1);
    let bad = visit(95.0, 70.0, 390.0, 70.0);
    assert_eq!(proved(&bad, &bad).finding, RepairFinding::StillFaulty);
}

#[test]
fn what_was_found_before_makes_the_same_pattern_likelier_after() {
    let worn = visit(74.0, 70.0, 125.0, 64.0);
    let half = visit(74.0, 55.0, 145.0, 53.0);
    let alone = coldloop::diagnosis::diagnose(&half, &Settings::default()).unwrap();
    let together = proved(&worn, &half);
    assert!(together.same_fault > alone.probability_of(&[Fault::WornCompressor]));
}

#[test]
fn a_cool_morning_proves_nothing() {
    // The vent fell by 9 K, and so did the weather.
    let (hot, cool) = (visit(95.0, 75.0, 160.0, 80.0), visit(72.0, 70.0, 120.0, 64.0));
    let proof = proved(&hot, &cool);
    assert_ne!(proof.finding, RepairFinding::Proven);
    assert!(proof.vent_gained.unwrap() < kelvins_difference(5.0));
    let mut unread = visit(74.0, 40.0, 170.0, 41.0);
    unread.readings.vent = None;
    assert_eq!(proved(&hot, &unread).finding, RepairFinding::CannotTell);
}

#[test]
fn two_vehicles_prove_nothing_of_each_other() {
    let before = visit(74.0, 70.0, 125.0, 64.0);
    let mut after = visit(74.0, 40.0, 170.0, 41.0);
    after.system.expansion = Expansion::OrificeTube;
    let refused = prove(&before, &after, &Settings::default()).unwrap_err();
    assert_eq!(refused.kind, ErrorKind::Inconsistent);
}

/// A vent that falls from 30 °C to `end_c` with a time constant of three minutes, read at `minutes`.
fn falling(end_c: f64, minutes: &[f64]) -> Vec<VentSample> {
    minutes
        .iter()
        .map(|m| VentSample {
            after: TimeSpan::from_seconds(60.0 * m),
            vent: degrees(end_c + (30.0 - end_c) * (-m / 3.0).exp(), 0.3),
        })
        .collect()
}

#[test]
fn a_vent_is_judged_by_its_final_temperature() {
    let mut case = visit(86.0, 0.0, 0.0, 0.0);
    // The conditions in which vents are judged: 1,500 rpm and recirculated air. Unknown conditions widen the band.
    case.conditions.engine_speed = Some(RotationalSpeed::from_hz(25.0));
    case.conditions.relative_humidity = Some(RelativeHumidity::from_fraction(0.4));
    case.conditions.air_source = Some(AirSource::Recirculated);
    let judged = |samples: &[VentSample]| pull_down(&case.system, &case.conditions, samples).unwrap();
    let sound = judged(&falling(6.0, &[1.0, 3.0, 5.0, 8.0, 12.0]));
    assert_eq!(sound.finding, PullDownFinding::Reached);
    assert!(
        sound
            .reached
            .is_some_and(|after| after.seconds() > 60.0 && after.seconds() <= 720.0)
    );
    assert_eq!(
        judged(&falling(4.0, &[0.5, 0.8, 1.1, 1.4, 1.7, 2.0])).finding,
        PullDownFinding::Falling
    );
    let stalled = judged(&falling(22.0, &[1.0, 3.0, 5.0, 8.0, 12.0, 16.0]));
    assert_eq!(stalled.finding, PullDownFinding::Stalled);
    assert!((in_kelvins(stalled.levels_off.unwrap().value) - in_kelvins(celsius(22.0))).abs() < 0.5);
    let mut icing = falling(8.0, &[1.0, 4.0, 8.0, 15.0]);
    icing.push(VentSample {
        after: TimeSpan::from_seconds(1_200.0),
        vent: degrees(14.0, 0.3),
    });
    assert_eq!(judged(&icing).finding, PullDownFinding::Rising);
    assert_eq!(judged(&falling(22.0, &[1.0, 2.0])).finding, PullDownFinding::CannotTell);
    let none = pull_down(&case.system, &case.conditions, &[]).unwrap_err();
    assert_eq!(none.kind, ErrorKind::Missing);
}
