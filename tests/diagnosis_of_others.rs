//! Refrigerants that no cloud of simulated vehicles was drawn with: judged where the clouds can be moved to them, refused by name
//! elsewhere.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose, exists};
use coldloop::units::{Surroundings, celsius};
use coldloop::vehicle::{Conditions, FaultSeverity, Instruments, Population, System, simulate};
use coldloop::{Caution, Compressor, Expansion, Fault, Refrigerant, VehicleClass, VerdictKind};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// A vehicle with R-152a drawn at random, read in a workshop and judged.
fn judged(rng: &mut ChaCha8Rng, fault: Fault, severity: f64) -> Option<(Case, Diagnosis)> {
    let system = System::new(
        Refrigerant::R152a,
        Expansion::ALL[rng.random_range(0..2)],
        Compressor::ALL[rng.random_range(0..4)],
    );
    let class = VehicleClass::ALL[rng.random_range(0..5)];
    let vehicle = Population::usual(system, class).vehicle(&std::array::from_fn(|_| rng.random()));
    let conditions = Conditions {
        relative_humidity: Some(rng.random_range(0.2..0.8)),
        engine_speed_hz: Some(25.0).filter(|_| system.compressor != Compressor::Electric),
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

/// Of the sound ones few are called faulty, and a gross fault is among the first three names of most: R-152a boils and condenses
/// at nearly the pressures of R-134a, and its clouds stand where its own bands are.
#[test]
fn r152a_is_judged_beside_r134a() {
    let mut rng = ChaCha8Rng::seed_from_u64(152);
    let (mut sound, mut alarms) = (0, 0);
    while sound < 300 {
        let Some((_, answer)) = judged(&mut rng, Fault::NoFault, 0.0) else {
            continue;
        };
        sound += 1;
        alarms += usize::from(answer.verdict.kind == VerdictKind::NamedFault);
    }
    println!("{alarms} of {sound} sound ones called faulty");
    assert!(alarms <= 36, "{alarms}");
    for (fault, severity, least) in [
        (Fault::WornCompressor, 0.6, 0.75),
        (Fault::Undercharge, 0.6, 0.6),
        (Fault::CondenserAirflowLoss, 0.8, 0.5),
        (Fault::HeaterAirMixing, 0.6, 0.75),
    ] {
        let (mut seen, mut named) = (0u32, 0u32);
        while seen < 80 {
            let Some((_, answer)) = judged(&mut rng, fault, severity) else {
                continue;
            };
            seen += 1;
            named += u32::from(answer.faults.iter().take(3).any(|ranked| ranked.fault == fault));
        }
        println!("{fault}: {named} of {seen} among the first three");
        assert!(f64::from(named) >= least * f64::from(seen), "{fault}: {named}");
    }
}

/// R-152a burns (A2): whatever opens the circuit says so.
#[test]
fn r152a_comes_with_the_caution_of_what_burns() {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    let (_, answer) = judged(&mut rng, Fault::Undercharge, 0.7).unwrap();
    assert!(answer.cautions.contains(&Caution::Flammable) && answer.cautions.contains(&Caution::Ventilation));
    assert!(!answer.cautions.contains(&Caution::CarbonDioxide));
}
