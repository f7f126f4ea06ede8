//! What sound vehicles read by the vehicle model: fitted into `tables/atlas/vehicle-model-sound.csv` by `--fit-sound`, and
//! judged on makes that no fit has seen by `--cover-sound`; what more is known moves them by
//! `tables/atlas/vehicle-model-known.csv`, from `--fit-known`.

mod cover;
pub(crate) mod draw;
pub(crate) mod fit;
pub(crate) mod known;
pub(crate) mod known_table;
pub(crate) mod rust;
pub(crate) mod table;

pub(crate) use cover::cover;

use crate::features::{FEATURES, THERMAL};
use crate::work;
use coldloop::vehicle::{Make, System};
use coldloop::{Compressor, Refrigerant};
use fit::Kind;
use std::fs;
use std::path::Path;

pub(crate) const TABLE: &str = "tables/atlas/vehicle-model-sound.csv";
pub(crate) const SEED: u64 = 1_913;
/// Least part of the vehicles that must have an answer.
const ANSWERED: f64 = 0.7;

/// How many features vary in a system.
pub(crate) fn features(system: &System) -> usize {
    if system.compressor == Compressor::FixedClutch {
        FEATURES
    } else {
        THERMAL
    }
}

/// Fits every kind, or those of the refrigerants named, to `count` vehicles each, and writes the table.
pub(crate) fn fit(root: &Path, named: &[Refrigerant], count: usize) -> Result<(), String> {
    let kept = if named.is_empty() {
        Vec::new()
    } else {
        table::read(root)?
    };
    let systems: Vec<(usize, System)> = draw::systems().into_iter().enumerate().collect();
    let began = std::time::Instant::now();
    let fitted = work::all(&systems, |(stream, system)| {
        if !named.is_empty() && !named.contains(&system.refrigerant) {
            let own = kept.iter().find(|(of, _)| of == system);
            let own = own.ok_or(format!("{}: no row yet", table::id(system)))?;
            return Ok((*system, own.1.clone()));
        }
        let vehicles = draw::vehicles(system, count, Make::TO_FIT, (SEED, *stream as u64));
        if (vehicles.len() as f64) < ANSWERED * count as f64 {
            return Err(format!("{}: {} of {count} vehicles", table::id(system), vehicles.len()));
        }
        let kind = Kind::fitted(&vehicles, features(system))?;
        eprintln!(
            "{:.0?} {}: {} vehicles",
            began.elapsed(),
            table::id(system),
            vehicles.len()
        );
        Ok((*system, kind))
    })?;
    fs::write(root.join(TABLE), table::text(&fitted)).map_err(|e| format!("{TABLE}: {e}"))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)] // tests

    use super::fit::DRAWN;
    use super::*;

    /// Vehicles drawn as the fit drew its first ones read what they read then; otherwise the model or its population has
    /// changed, and `--fit-sound` and `--fit-atlas` are due.
    #[test]
    fn the_sound_table_is_of_the_model_as_it_is() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let kinds = table::read(&root).unwrap();
        let systems = draw::systems();
        assert_eq!(kinds.len(), systems.len());
        for (stream, (system, kind)) in kinds.iter().enumerate() {
            assert_eq!(*system, systems[stream]);
            let vehicles = draw::vehicles(system, 2 * DRAWN, Make::TO_FIT, (SEED, stream as u64));
            for (now, then) in fit::first(&vehicles).iter().zip(&kind.drawn) {
                assert!(
                    (now - then).abs() < 1e-3,
                    "{}: {now} now, {then} when fitted",
                    table::id(system)
                );
            }
        }
    }
}
