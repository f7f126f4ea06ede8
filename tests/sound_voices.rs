//! The bands of sound systems beside the voices that publish pressures of sound systems.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::circuit::{Gauge, Reading, dew_temperature};
use coldloop::expected::{Bands, SoundModel};
use coldloop::units::{GaugePressure, RelativeHumidity, RotationalSpeed, Surroundings, celsius, fahrenheit};
use coldloop::vehicle::{Conditions, System};
use coldloop::{AirSource, Compressor, Expansion, Feature, Refrigerant};

/// The middle of the high side beside the median over published voices (tests/data/sound_voices.csv, where each row has its
/// source): within 12 %, and within 10 % from 33 °C on.
#[test]
fn the_middle_of_the_high_side_is_near_the_median_over_voices() {
    let rows = rows();
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

/// Middles of the published bands in standard deviations of ours, a mean for each voice and then over the voices. One voice of nine moves
/// what the charts say by 1 K at most, and that weighs 0.15: with each voice left out in turn the figures change by 0.05 at most.
///
/// Found on 2026-11-30: low side +0.11, 78 % of the voices' middles in the 80 % band and all in the 95 % band; high side +0.24, 89 and 98 %.
#[test]
fn published_middles_lie_about_ours() {
    for (side, column, feature) in [("low", 10, Feature::LowSide), ("high", 12, Feature::HighSide)] {
        let mut voices: std::collections::BTreeMap<&str, Vec<f64>> = Default::default();
        let rows = rows();
        // A needle read at the moment when the clutch disengages is no mean over a cycle.
        for row in rows
            .iter()
            .filter(|row| feature == Feature::HighSide || row[9] != "lowest")
        {
            let read = Reading::pressure(GaugePressure::from_psig(middle(row, column)), Gauge::LOW_SIDE);
            let t_k = dew_temperature(Refrigerant::R134a, read, Surroundings::SEA_LEVEL)
                .unwrap()
                .si()
                .value;
            let deviations = kinds(row, middle(row, 4)).map(|(system, conditions)| {
                let model = SoundModel::of(&system, &conditions).unwrap();
                model.deviation(feature, t_k, 0.0).unwrap()
            });
            voices
                .entry(row[1])
                .or_default()
                .push(mean(&deviations.collect::<Vec<_>>()));
        }
        let share = |limit: f64| {
            let within = |all: &Vec<f64>| {
                mean(
                    &all.iter()
                        .map(|z| f64::from(u8::from(z.abs() < limit)))
                        .collect::<Vec<_>>(),
                )
            };
            mean(&voices.values().map(within).collect::<Vec<_>>())
        };
        let middle = mean(&voices.values().map(|all| mean(all)).collect::<Vec<_>>());
        println!(
            "{side} side, {} voices: {middle:+.2}, inside {:.2} and {:.2}",
            voices.len(),
            share(1.2816),
            share(1.96)
        );
        assert!(voices.len() >= 8 && middle.abs() < 0.25, "{side}: {voices:.2?}");
        assert!(
            (0.75..0.90).contains(&share(1.2816)) && share(1.96) >= 0.93,
            "{side}: {voices:.2?}"
        );
    }
}

fn rows() -> Vec<Vec<&'static str>> {
    let lines = include_str!("data/sound_voices.csv").lines();
    let lines = lines.filter(|line| !line.starts_with('#')).skip(1);
    lines.map(|line| line.split(',').collect()).collect()
}

fn middle(row: &[&str], column: usize) -> f64 {
    0.5 * (row[column].parse::<f64>().unwrap() + row[column + 1].parse::<f64>().unwrap())
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

/// What the bands have in the middle for the conditions of a row, over the systems that it may be about, psig.
fn high_psig(row: &[&str], ambient_c: f64) -> f64 {
    let highs = kinds(row, ambient_c).map(|(system, conditions)| {
        let bands = Bands::of(&system, &conditions).unwrap();
        bands.high_side.median.psig()
    });
    mean(&highs.collect::<Vec<_>>())
}

/// The systems that a row may be about, in its conditions.
fn kinds(row: &[&str], ambient_c: f64) -> impl Iterator<Item = (System, Conditions)> {
    let expansions = Expansion::from_id(row[2]).map_or(Expansion::ALL.to_vec(), |one| vec![one]);
    let compressors = Compressor::from_id(row[3])
        .map_or(vec![Compressor::FixedClutch, Compressor::VariableInternal], |one| {
            vec![one]
        });
    let conditions = Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(
            row[7].parse::<f64>().unwrap_or(0.4).min(0.55),
        )), // 0.6 at 40 °C is beyond the fit
        engine_speed: row[6]
            .parse::<f64>()
            .ok()
            .map(|rpm| rpm / 60.0)
            .map(RotationalSpeed::from_hz),
        air_source: AirSource::from_id(row[8]).or(Some(AirSource::Fresh)),
        ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
    };
    expansions.into_iter().flat_map(move |expansion| {
        compressors.clone().into_iter().map(move |compressor| {
            let driven = compressor != Compressor::Electric;
            let conditions = Conditions {
                engine_speed: conditions.engine_speed.filter(|_| driven),
                ..conditions
            };
            (System::new(Refrigerant::R134a, expansion, compressor), conditions)
        })
    })
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
