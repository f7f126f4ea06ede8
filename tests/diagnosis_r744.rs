//! R-744 judged by an atlas of its own, and at rest only where liquid is left.

#![allow(clippy::unwrap_used)] // helpers of tests

#[path = "shared/workshop.rs"]
mod workshop;

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Action, Case, Diagnosis, Settings, diagnose, judge};
use coldloop::units::{GaugePressure, Surroundings, celsius};
use coldloop::vehicle::{Conditions, FaultSeverity, System};
use coldloop::{
    AirSource, Caution, Compressor, Expansion, Fault, QualityNote, Refrigerant, RestFinding, VehicleClass, VerdictKind,
};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use workshop::judged_in_a_workshop;

/// A vehicle drawn at random, read in a workshop and judged.
fn with(refrigerant: Refrigerant, rng: &mut ChaCha8Rng, fault: Fault, severity: f64) -> Option<(Case, Diagnosis)> {
    let least = if refrigerant == Refrigerant::R744 { 1 } else { 0 };
    let system = System::new(
        refrigerant,
        Expansion::ALL[rng.random_range(0..2)],
        Compressor::ALL[rng.random_range(least..4)],
    );
    // Few buses come to a shop, and the bands are weighted accordingly.
    let class = VehicleClass::ALL[rng.random_range(0..4)];
    let fault = FaultSeverity::new(fault, severity);
    judged_in_a_workshop(rng, (system, class), Some(AirSource::Fresh), fault)
}

/// R-744 is judged by an atlas of its own, above and below the critical pressure: sound systems are seldom called faulty, most of
/// those that have lost three fifths of their charge are recognised, and answer and plan have all their parts.
#[test]
fn r744_is_judged_by_an_atlas_of_its_own() {
    let mut rng = ChaCha8Rng::seed_from_u64(744);
    for (fault, severity) in [(Fault::NoFault, 0.0), (Fault::Undercharge, 0.6)] {
        let (mut seen, mut beyond, mut named, mut first, mut three) = (0, 0, 0, 0, 0);
        while seen < 300 {
            let Some((case, answer)) = with(Refrigerant::R744, &mut rng, fault, severity) else {
                continue;
            };
            seen += 1;
            let high = case
                .readings
                .high_side
                .unwrap()
                .value
                .absolute(case.conditions.surroundings);
            beyond += usize::from(high.pa() > 7.377e6);
            let odds: f64 = answer.faults.iter().map(|ranked| ranked.probability).sum();
            assert!((odds + answer.none_of_these - 1.0).abs() < 1e-9, "{odds}");
            assert!(!answer.quality.contains(&QualityNote::BandsOnly));
            assert!(
                answer.cautions.contains(&Caution::CarbonDioxide) && answer.cautions.contains(&Caution::ReleaseSlowly)
            );
            assert!(answer.derived.subcooling.is_some() && answer.expected.is_some());
            let [one, two] = [answer.faults[0], answer.faults[1]];
            let reasons = judge(&case, &Settings::default()).unwrap();
            let because = reasons.reasons(&Settings::default()).because(one.fault, two.fault);
            let told: f64 = because.iter().map(|reason| reason.log_odds).sum();
            assert!((told - (one.probability / two.probability).ln()).abs() < 1e-6, "{told}");
            named += usize::from(answer.verdict.kind == VerdictKind::NamedFault);
            first += usize::from(one.fault == fault);
            three += usize::from(answer.faults.iter().take(3).any(|ranked| ranked.fault == fault));
        }
        println!(
            "{fault}: {beyond} of {seen} above the critical pressure, {named} named, first {first}, three {three}"
        );
        assert!(beyond > seen / 4);
        if fault == Fault::NoFault {
            assert!(named < seen / 10, "{named}");
        } else {
            assert!(first > seen / 2 && three > 3 * seen / 4, "{first} {three}");
        }
    }
}

/// The plan starts from the odds of the readings: a nearly certain fault is repaired without a check first.
#[test]
fn a_plan_for_r744_starts_from_its_odds() {
    let mut rng = ChaCha8Rng::seed_from_u64(745);
    let settings = Settings::default();
    let mut asked = 0;
    while asked < 5 {
        let Some((case, answer)) = with(Refrigerant::R744, &mut rng, Fault::Undercharge, 0.6) else {
            continue;
        };
        asked += 1;
        let plan = judge(&case, &settings).unwrap().plan(&settings);
        assert!(answer.probability_of(&[Fault::Undercharge]) > 0.9);
        assert_eq!(plan.steps[0].action, Action::Repair(Fault::Undercharge));
    }
}

/// Near the critical temperature the pressure of a sound R-744 system at rest is not the saturation pressure, and is not judged.
#[test]
fn r744_at_rest_is_judged_only_where_liquid_is_left() {
    let at = |ambient_c: f64, psig: f64| {
        let system = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
        let conditions = Conditions {
            compressor_running: Some(false),
            ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
        };
        let gauge = |psig: f64| Some(Reading::pressure(GaugePressure::from_psig(psig), Gauge::HIGH_SIDE));
        let readings = Readings {
            low_side: gauge(psig),
            high_side: gauge(psig),
            ..Readings::default()
        };
        diagnose(&Case::new(system, conditions, readings), &Settings::default()).unwrap()
    };
    assert_eq!(at(20.0, 816.0).rest, Some(RestFinding::Consistent));
    let warm = at(38.0, 1_050.0);
    assert!(warm.rest.is_none() && warm.verdict.kind == VerdictKind::NotEnoughEvidence);
    assert!(warm.faults.is_empty() && warm.quality.contains(&QualityNote::BandsOnly));
}
