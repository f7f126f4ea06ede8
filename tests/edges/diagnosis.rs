//! What a diagnosis says of readings, instruments and time.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::units::{GaugePressure, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Check, Compressor, Expansion, QualityNote, Refrigerant, Thermometer};

fn case() -> Case {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let air = Surroundings::at_altitude(1_600.0).unwrap();
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_bar(2.0), Gauge::DIGITAL)),
        high_side: Some(Reading::pressure(GaugePressure::from_bar(13.0), Gauge::DIGITAL)),
        vent: Some(Reading::temperature(celsius(8.0), Thermometer::PocketDigital)),
        ..Readings::default()
    };
    Case::new(system, Conditions::new(celsius(28.0), air), readings)
}

fn noted(case: &Case, note: QualityNote) -> bool {
    told(case).quality.contains(&note)
}

fn told(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

/// A system counts as settled after ten minutes, and starting, settling and reading are priced at just these.
#[test]
fn a_run_costs_the_time_in_which_a_system_settles() {
    let minutes = Settings::default().prices.check(Check::RunAndRead).minutes;
    let settled = |minutes: f64| {
        let mut case = case();
        case.conditions.running_s = Some(60.0 * minutes);
        !noted(&case, QualityNote::NotSettled)
    };
    assert_eq!((settled(9.9), settled(10.0)), (false, true));
    assert_eq!((settled(0.99 * minutes), settled(minutes)), (false, true));
}
