//! R-744 beside its bands: no fault is named, and the answer says why.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose, exists};
use coldloop::units::{GaugePressure, Surroundings, celsius};
use coldloop::vehicle::{Conditions, FaultSeverity, Instruments, Population, System, simulate};
use coldloop::{
    AirSource, Caution, Compressor, Expansion, Fault, Feature, QualityNote, Refrigerant, RestFinding, VehicleClass,
    VerdictKind,
};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// A vehicle drawn at random, read in a workshop and judged.
fn with(refrigerant: Refrigerant, rng: &mut ChaCha8Rng, fault: Fault, severity: f64) -> Option<(Case, Diagnosis)> {
    let least = if refrigerant == Refrigerant::R744 { 1 } else { 0 };
    let system = System::new(
        refrigerant,
        Expansion::ALL[rng.random_range(0..2)],
        Compressor::ALL[rng.random_range(least..4)],
    );
    // Few buses come to a shop, and the bands know it.
    let class = VehicleClass::ALL[rng.random_range(0..4)];
    let vehicle = Population::usual(system, class).vehicle(&std::array::from_fn(|_| rng.random()));
    let conditions = Conditions {
        relative_humidity: Some(rng.random_range(0.2..0.8)),
        engine_speed_hz: Some(25.0).filter(|_| system.compressor != Compressor::Electric),
        air_source: Some(AirSource::Fresh),
        blower: Some(1.0),
        vehicle_speed_m_s: Some(0.0),
        running_s: Some(900.0),
        ..Conditions::new(
            celsius(rng.random_range(20.0..40.0)),
            Surroundings::at_altitude(1_600.0).unwrap(),
        )
    };
    let errors = std::array::from_fn(|_| rng.random());
    if !exists(fault, &system) {
        return None;
    }
    let truth = simulate(&vehicle.ok()?, &conditions, &[FaultSeverity::new(fault, severity)]).ok()?;
    let shop = Instruments {
        missing: 0.0,
        ..Instruments::SHOP
    };
    let readings = shop.measure(&truth, conditions.surroundings, &errors).ok()?;
    let case = Case::new(system, conditions, readings);
    // A discharge line above 200 °C is beyond what a thermometer is believed.
    let answer = diagnose(&case, &Settings::default()).ok()?;
    Some((case, answer))
}

/// No fault of R-744 is named from readings, sound or not: they stand beside the bands of sound vehicles, also above the critical
/// pressure, and the answer says so, with the caution of its pressure.
#[test]
fn r744_stands_beside_its_bands_and_is_not_named() {
    let mut rng = ChaCha8Rng::seed_from_u64(744);
    let sides = [Feature::LowSide, Feature::HighSide, Feature::Vent];
    for (fault, severity) in [(Fault::NoFault, 0.0), (Fault::Undercharge, 0.6)] {
        let (mut seen, mut beyond, mut out) = (0, 0, 0);
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
            assert_eq!(answer.verdict.kind, VerdictKind::NotEnoughEvidence);
            assert!(answer.faults.is_empty() && answer.quality.contains(&QualityNote::BandsOnly));
            assert!(
                answer.cautions.contains(&Caution::CarbonDioxide) && answer.cautions.contains(&Caution::Ventilation)
            );
            assert!(answer.derived.subcooling_k.is_some() && answer.expected.is_some());
            let of = |feature| answer.deviations.iter().find(|d| d.feature == feature);
            out += usize::from(sides.into_iter().filter_map(of).any(|d| d.deviation.abs() > 1.96));
        }
        println!("{fault}: {beyond} of {seen} above the critical pressure, {out} beyond a band");
        assert!(beyond > seen / 3);
        // Each band holds 95 % or a little less of the standing ones.
        assert!(
            if fault == Fault::NoFault {
                out < seen / 4
            } else {
                out > seen / 2
            },
            "{out}"
        );
    }
}

/// Near its critical temperature the pressure of a sound R-744 system at rest is not that of saturation, and tells nothing of it
/// here.
#[test]
fn r744_at_rest_is_judged_only_where_liquid_is_left() {
    let at = |ambient_c: f64, psig: f64| {
        let system = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
        let conditions = Conditions {
            engine_speed_hz: Some(0.0),
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
