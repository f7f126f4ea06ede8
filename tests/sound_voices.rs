//! The bands of sound systems beside the voices that publish pressures of sound systems.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::expected::Bands;
use coldloop::units::{Surroundings, celsius, fahrenheit};
use coldloop::vehicle::{Conditions, System};
use coldloop::{AirSource, Compressor, Expansion, Refrigerant};

/// The middle of the high side beside the median over published voices (tests/data/sound_voices.csv, where each row has its
/// source): within 12 %, and within 10 % from 33 °C on.
#[test]
fn the_middle_of_the_high_side_is_near_the_median_over_voices() {
    let lines = include_str!("data/sound_voices.csv").lines();
    let rows: Vec<Vec<&str>> = lines
        .filter(|line| !line.starts_with('#'))
        .skip(1)
        .map(|line| line.split(',').collect())
        .collect();
    let middle = |row: &[&str], column: usize| {
        0.5 * (row[column].parse::<f64>().unwrap() + row[column + 1].parse::<f64>().unwrap())
    };
    for (weather, limit) in [
        (15.0..23.0, 0.12),
        (23.0..28.0, 0.12),
        (28.0..33.0, 0.12),
        (33.0..47.0, 0.10),
    ] {
        let mut voices: std::collections::BTreeMap<&str, Vec<f64>> = Default::default();
        for row in rows.iter().filter(|row| weather.contains(&middle(row, 4))) {
            let off = high_psig(row, middle(row, 4)) / middle(row, 12) - 1.0;
            voices.entry(row[1]).or_default().push(off);
        }
        let mut off: Vec<f64> = voices
            .values()
            .map(|all| all.iter().sum::<f64>() / all.len() as f64)
            .collect();
        off.sort_by(f64::total_cmp);
        let median = 0.5 * (off[(off.len() - 1) / 2] + off[off.len() / 2]);
        println!("{weather:?} C, {} voices: {median:+.3}", off.len());
        assert!(off.len() >= 5 && median.abs() < limit, "{weather:?} {off:.2?}");
    }
}

/// What the bands have in the middle for the conditions of a row, over the systems that it may be about, psig.
fn high_psig(row: &[&str], ambient_c: f64) -> f64 {
    let expansions = Expansion::from_id(row[2]).map_or(Expansion::ALL.to_vec(), |one| vec![one]);
    let compressors = Compressor::from_id(row[3])
        .map_or(vec![Compressor::FixedClutch, Compressor::VariableInternal], |one| {
            vec![one]
        });
    let mut highs = Vec::new();
    for expansion in expansions {
        for compressor in &compressors {
            let conditions = Conditions {
                relative_humidity: Some(row[7].parse::<f64>().unwrap_or(0.4).min(0.55)), // 0.6 at 40 °C is beyond the fit
                engine_speed_hz: row[6].parse::<f64>().ok().map(|rpm| rpm / 60.0),
                air_source: AirSource::from_id(row[8]).or(Some(AirSource::Fresh)),
                ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
            };
            let conditions = Conditions {
                engine_speed_hz: conditions
                    .engine_speed_hz
                    .filter(|_| *compressor != Compressor::Electric),
                ..conditions
            };
            let system = System::new(Refrigerant::R134a, expansion, *compressor);
            highs.push(Bands::of(&system, &conditions).unwrap().high_side.median.psig());
        }
    }
    highs.iter().sum::<f64>() / highs.len() as f64
}

/// Common practice, no source: R-134a at about 74 F, clutch engaged: low side 35 to 45 psig, high side about 175.
#[test]
fn trade_facts_lie_in_the_bands() {
    for expansion in Expansion::ALL {
        let system = System::new(Refrigerant::R134a, expansion, Compressor::FixedClutch);
        let bands = Bands::of(&system, &Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL)).unwrap();
        let (low, high) = (bands.low_side, bands.high_side);
        println!(
            "{expansion}: low {:.0} to {:.0}, high {:.0} to {:.0}",
            low.low_95.psig(),
            low.high_95.psig(),
            high.low_95.psig(),
            high.high_95.psig()
        );
        assert!(
            low.low_95.psig() < 35.0 && low.high_95.psig() > 45.0,
            "{expansion}: {low:?}"
        );
        assert!(
            high.low_95.psig() < 175.0 && high.high_95.psig() > 175.0,
            "{expansion}: {high:?}"
        );
    }
}
