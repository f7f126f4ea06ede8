//! Coverage of the sound model on makes that were not fitted.

use super::draw::{self, Sample};
use super::{features, table};
use crate::features::NAMES;
use crate::work;
use coldloop::expected::Weather;
use coldloop::vehicle::Make;
use std::path::Path;

const SEED: u64 = 77_001;
/// Quantiles of |t| with 5 degrees of freedom: 80 % and 95 % lie within.
const QUANTILES: [f64; 2] = [1.475_884, 2.570_582];
/// Share of samples that lie within, as the README of the tables of makes promises it: cells outside are marked.
const WANTED: [(f64, f64); 2] = [(0.77, 0.83), (0.93, 0.97)];
/// Fewer samples than this are no cell.
const CELL: usize = 200;

type Corner = (&'static str, fn(&[f64; Weather::TERMS]) -> bool);

/// Terms 1, 2, 4 and 6 are ambient ((t - 303.15 K) / 16 K), humidity ratio ((w - 0.011) / 0.011), ln(speed) and standstill.
const CORNERS: [Corner; 8] = [
    ("all", |_| true),
    ("below 15 °C", |x| x[1] < -0.9375),
    ("above 40 °C", |x| x[1] > 0.625),
    ("dry, above 25 °C", |x| x[1] > -0.3125 && x[2] < -0.45),
    ("humid, above 25 °C", |x| x[1] > -0.3125 && x[2] > 0.6),
    ("slow", |x| x[4] < -0.5),
    ("fast", |x| x[4] > 0.6),
    ("standstill", |x| x[6] > 0.99),
];

/// Prints the coverage of `count` vehicles of each kind, a row for each feature and corner of the weather.
///
/// With `of_fit` they are other vehicles of the makes that were fitted: then only the form of the model is judged.
pub(crate) fn cover(root: &Path, count: usize, of_fit: bool) -> Result<(), String> {
    let kinds = table::read(root)?;
    let makes = if of_fit { Make::TO_FIT } else { Make::TO_JUDGE };
    let numbered: Vec<_> = kinds.iter().enumerate().collect();
    let found = work::all(&numbered, |(stream, (system, kind))| {
        let vehicles = draw::vehicles(system, count, makes.clone(), (SEED, *stream as u64));
        let samples: Vec<&Sample> = vehicles.iter().flatten().collect();
        let mut rows = Vec::new();
        for (corner, within) in CORNERS {
            let own: Vec<_> = samples.iter().filter(|sample| within(&sample.terms)).collect();
            if own.len() < CELL {
                continue;
            }
            for (feature, name) in NAMES.iter().enumerate().take(features(system)) {
                let z: Vec<f64> = own
                    .iter()
                    .map(|sample| {
                        let (mean, deviation) = kind.at(&sample.terms);
                        (sample.features[feature] - mean[feature]) / deviation[feature]
                    })
                    .collect();
                let share = |most: f64| z.iter().filter(|z| z.abs() <= most).count() as f64 / z.len() as f64;
                let middle = z.iter().map(|z| z.clamp(-4.0, 4.0)).sum::<f64>() / z.len() as f64;
                rows.push((
                    format!("{},{name},{corner},{}", table::id(system), z.len()),
                    QUANTILES.map(share),
                    middle,
                ));
            }
        }
        Ok(rows)
    })?;
    println!("refrigerant,expansion,compressor,feature,corner,samples,within 80 %,within 95 %,mean deviation,held");
    let mut tally = [0, 0, 0];
    for (cell, shares, middle) in found.into_iter().flatten() {
        let held = shares
            .iter()
            .zip(WANTED)
            .map(|(share, (low, high))| (low..=high).contains(share));
        let held: Vec<bool> = held.collect();
        tally[0] += 1;
        tally[1] += usize::from(held[0]);
        tally[2] += usize::from(held[1]);
        let mark = if held.iter().all(|held| *held) { "yes" } else { "no" };
        println!("{cell},{:.3},{:.3},{middle:+.2},{mark}", shares[0], shares[1]);
    }
    println!(
        "# of {} cells {} hold the 80 % interval and {} that of 95 %",
        tally[0], tally[1], tally[2]
    );
    Ok(())
}
