//! Whether the committed clouds are of the vehicle model as it is: vehicles drawn as the fit drew its judges have the density
//! that they had then.
//!
//! The model, its population and what is drawn from them are in the same draws; what changes any of them moves the figures of
//! these vehicles, and the clouds have to be fitted anew (`cargo run --release -p tables-compile -- --fit-clouds`).

#![allow(clippy::unwrap_used)]

#[allow(unreachable_pub)]
#[path = "../../tables/compile/src/clouds/drawn.rs"]
mod drawn;
#[allow(dead_code, unreachable_pub)] // the evaluation, which shares it, needs more of it
#[path = "../../examples/evaluate_diagnosis/draws.rs"]
mod draws;

use super::cloud::Cloud;
use super::coordinates::{self, FIGURES};
use super::features::{Features, NOTHING};
use super::own::{Apart, Own};
use crate::circuit::Estimate;
use crate::names::{Fault, Feature};
use crate::units::in_kelvins;
use drawn::Seen;

/// Log densities, written to four digits, may be off by this much: per cloud, and on average over all of them.
const CLOUD: f64 = 0.01;
const ALL: f64 = 0.001;
/// How many of the judges are drawn again: the first so many.
const DRAWN: usize = 12;

#[test]
fn the_clouds_are_of_the_model_as_it_is() {
    let text = include_str!("../../tables/clouds/said.csv");
    let mut said: Vec<(usize, Fault, f64)> = Vec::new();
    for row in text.lines().filter(|row| !row.starts_with('#')).skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let fault = Fault::from_id(cells[1]).unwrap();
        said.push((cells[0].parse().unwrap(), fault, cells[2].parse().unwrap()));
    }
    let clouds: usize = (0..drawn::KINDS).map(|kind| drawn::faults(kind).len()).sum();
    assert_eq!(said.len(), clouds);
    let own = Own {
        above: [0.0; FIGURES],
        apart: [Apart::NOT; FIGURES],
    };
    let (mut sum, mut far) = (0.0, Vec::new());
    for (kind, fault, then) in said {
        let mut now = 0.0;
        let vehicles = drawn::vehicles(kind, fault).take(10 * DRAWN).flatten().take(DRAWN);
        for (draw, seen) in vehicles {
            let ambient_k = in_kelvins(draw.conditions.ambient);
            let cloud = Cloud::of(
                coordinates::kind(&draw.system),
                seen.conditions.map(Some),
                ambient_k,
                [0.0; 3],
                ([None; FIGURES], false, &own),
            );
            now += cloud.unwrap().density(fault, &exact(&seen, ambient_k)).ln();
        }
        let off = now / DRAWN as f64 - then;
        sum += off.abs();
        if off.abs() > CLOUD {
            far.push(format!("{kind} {}: {then:.3} then, {off:+.3}", fault.id()));
        }
    }
    let mean = sum / clouds as f64;
    println!("{clouds} clouds, off by {mean:.4} on average");
    assert!(far.is_empty() && mean < ALL, "{mean} on average; {}", far.join("; "));
}

/// The figures of faultless instruments that nobody doubts.
fn exact(seen: &Seen, ambient_k: f64) -> Features {
    let mut features = NOTHING;
    for (i, figure) in seen.figures.into_iter().enumerate() {
        features.measured[i] = Some(Estimate {
            value: figure + coordinates::origin_k(Feature::ALL[i], ambient_k),
            standard_uncertainty: 0.0,
        });
    }
    features
}
