//! Vehicles drawn at random, read in a workshop and judged.

use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose, exists};
use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, TimeSpan, celsius};
use coldloop::vehicle::{Conditions, FaultSeverity, Instruments, Population, System, simulate};
use coldloop::{AirSource, Compressor, VehicleClass};
use rand::RngExt;
use rand_chacha::ChaCha8Rng;

/// A vehicle of this system and class with a fault, and its diagnosis; `None` where the system cannot have the fault, and where the
/// model has no answer.
pub(crate) fn judged_in_a_workshop(
    rng: &mut ChaCha8Rng,
    (system, class): (System, VehicleClass),
    air_source: Option<AirSource>,
    fault: FaultSeverity,
) -> Option<(Case, Diagnosis)> {
    let vehicle = Population::usual(system, class).vehicle(&std::array::from_fn(|_| rng.random()));
    let conditions = Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(rng.random_range(0.2..0.8))),
        engine_speed: Some(RotationalSpeed::from_hz(25.0)).filter(|_| system.compressor != Compressor::Electric),
        air_source,
        blower: Some(1.0),
        vehicle_speed: Some(Speed::from_m_s(0.0)),
        running_for: Some(TimeSpan::from_seconds(900.0)),
        ..Conditions::new(
            celsius(rng.random_range(20.0..40.0)),
            Surroundings::at_altitude(1_600.0).unwrap(),
        )
    };
    let errors = std::array::from_fn(|_| rng.random());
    if !exists(fault.fault, &system) {
        return None;
    }
    let truth = simulate(&vehicle.ok()?, &conditions, &[fault]).ok()?;
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
