//! What a sound system may show at most, and at rest.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Settings, diagnose};
use coldloop::expected::{Bands, SoundModel};
use coldloop::units::{GaugePressure, RotationalSpeed, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, Expansion, Feature, Refrigerant};

/// Protection stops a compressor at 27 to 32 bar gauge, so that no sound system shows more than 32.5 bar absolute: at 50 °C and at idle
/// the widest band of a high side ends there. R-744 has its protection at 140 bar.
#[test]
fn the_band_of_the_high_side_ends_where_protection_stops_the_compressor() {
    let air = Surroundings::SEA_LEVEL;
    // bar gauge
    let most_bar = |r744: bool| {
        let systems = SoundModel::systems().filter(|system| (system.refrigerant == Refrigerant::R744) == r744);
        let bands = systems.map(|system| {
            let hot = Conditions {
                engine_speed: Some(RotationalSpeed::from_hz(12.0)),
                ..Conditions::new(celsius(50.0), air)
            };
            Bands::of(&system, &hot).unwrap().high_side.high_95.pa() / 1e5
        });
        bands.fold(0.0, f64::max)
    };
    for (r744, protection_bar) in [(false, 32.5), (true, 140.0)] {
        let most_bar = most_bar(r744) + air.pressure().pa() / 1e5;
        assert!((most_bar - protection_bar).abs() < 0.01 * protection_bar, "{most_bar}");
    }
}

/// A system at rest stands at the saturation of its coldest part: by engineering judgement 1 K above the ambient for the warmth of the
/// vehicle, 1.5 K scatter below that and 3 K above, where parts are still warm. 95 % of sound systems lie within 1.96 of either.
#[test]
fn a_sound_system_at_rest_stands_at_saturation_or_a_little_above() {
    let air = Surroundings::at_altitude(1_600.0).unwrap();
    let side = Some(Reading::pressure(GaugePressure::from_bar(4.8), Gauge::DIGITAL));
    let readings = Readings {
        low_side: side,
        high_side: side,
        ..Readings::default()
    };
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions {
        compressor_running: Some(false),
        ..Conditions::new(celsius(21.0), air)
    };
    let told = diagnose(&Case::new(system, conditions, readings), &Settings::default()).unwrap();
    let rest = told
        .deviations
        .iter()
        .find(|one| one.feature == Feature::RestPressure)
        .unwrap();
    let band = rest.expected;
    for (limit_k, wanted_k) in [
        (band.low_95, 1.0 - 1.96 * 1.5),
        (band.low_80, 1.0 - 1.28 * 1.5),
        (band.median, 1.0),
        (band.high_80, 1.0 + 1.28 * 3.0),
        (band.high_95, 1.0 + 1.96 * 3.0),
    ] {
        assert!((limit_k - wanted_k).abs() < 0.01, "{limit_k} {wanted_k}");
    }
}
