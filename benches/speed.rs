//! Nanoseconds per call of the hot paths, one line each: `what|refrigerant|ns`. `benches/compare.py` reads them beside a peer.
//!
//! Each figure is the least of several passes, so that other work on the machine has the least effect. `cargo test` runs one short pass. With
//! `blends` behind `--` only the lines of the blends are measured.

#[allow(dead_code)] // other programs use the rest
mod paths;

use coldloop::diagnosis::{Settings, diagnose};
use coldloop::expected::{Bands, SoundModel};
use coldloop::log::{Datum, Recorder, Sample};
use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, celsius, in_kelvins};
use coldloop::vehicle::{Conditions, System};
use coldloop::{AirSource, Channel, Compressor, Expansion, Refrigerant, intake};
use std::hint::black_box;
use std::time::Instant;

fn main() {
    let passes = if std::env::args().any(|argument| argument == "--bench") {
        60
    } else {
        1
    };
    for path in paths::BLENDS.into_iter().flat_map(paths::of_blend) {
        measure(path.what, path.refrigerant.id(), passes, paths::INPUTS, path.pass);
    }
    if std::env::args().any(|argument| argument == "blends") {
        return;
    }
    for path in Refrigerant::ALL.into_iter().flat_map(paths::of) {
        measure(path.what, path.refrigerant.id(), passes, paths::INPUTS, path.pass);
    }
    let cases = [
        ("diagnosis", include_str!("../examples/readings/low-charge.toml")),
        (
            "diagnosis with instruments in doubt",
            include_str!("../examples/readings/worn-compressor.toml"),
        ),
    ];
    for (what, file) in cases {
        match intake::case_from_toml(file) {
            Ok(case) => measure(what, "R-134a", passes, 100, || {
                let odds = |_| diagnose(&case, &Settings::default()).map_or(f64::NAN, |answer| answer.none_of_these);
                (0..100).map(odds).sum()
            }),
            Err(refusal) => eprintln!("{refusal}"),
        }
    }
    bands(passes);
    log(passes);
}

/// Samples of a cycling system into a recorder, one a second.
fn log(passes: usize) {
    let sample = |k: usize| {
        let down = (k % 30) as f64 / 30.0;
        Sample::at(k as f64)
            .with(Channel::LowSide, 290e3 - 120e3 * down)
            .with(Channel::HighSide, 1.0e6 + 3e5 * down)
            .with(Channel::Vent, 280.0 + down)
            .with(Channel::EngineSpeed, 25.0)
    };
    let samples: Vec<Sample> = (0..1_000).map(sample).collect();
    measure("sample of a log", "R-134a", passes, samples.len(), || {
        let mut recorder = Recorder::new(Datum::Gauge);
        recorder.extend(&samples);
        recorder.summary().elapsed.seconds()
    });
}

/// The sound model in a thousand weathers.
fn bands(passes: usize) {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let scattered = |k: usize| (k as f64 * 0.618_033_988_749_894_9).fract();
    let day = |k: usize| Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.3 + 0.3 * scattered(k + 7))),
        engine_speed: Some(RotationalSpeed::from_hz(15.0 + 25.0 * scattered(k + 11))),
        air_source: Some(AirSource::Fresh),
        blower: Some(1.0),
        vehicle_speed: Some(Speed::from_m_s(0.0)),
        ..Conditions::new(celsius(15.0 + 20.0 * scattered(k)), Surroundings::SEA_LEVEL)
    };
    let days: Vec<Conditions> = (0..paths::INPUTS).map(day).collect();
    measure("sound model", "R-134a", passes, paths::INPUTS, || {
        let beyond =
            |day| SoundModel::of(&system, day).map_or(f64::NAN, |model| f64::from(u8::from(model.is_beyond_fit())));
        days.iter().map(|day| beyond(black_box(day))).sum()
    });
    measure("its bands", "R-134a", passes, paths::INPUTS, || {
        let vent = |day| Bands::of(&system, day).map_or(f64::NAN, |bands| in_kelvins(bands.vent.median));
        days.iter().map(|day| vent(black_box(day))).sum()
    });
}

fn measure(what: &str, refrigerant: &str, passes: usize, calls: usize, mut pass: impl FnMut() -> f64) {
    let mut least = f64::INFINITY;
    for _ in 0..passes {
        let began = Instant::now();
        black_box(pass());
        least = least.min(began.elapsed().as_secs_f64() * 1e9 / calls as f64);
    }
    println!("{what}|{refrigerant}|{least:.1}");
}
