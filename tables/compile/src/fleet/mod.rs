//! The bands of the fleet: fitted to the vehicle model into `tables/bands/fleet.csv`, and from there into
//! `src/expected/fleet/constants.rs`.

mod cover;
mod draw;
mod fit;

pub(crate) use cover::cover;

use crate::output::Output;
use coldloop::expected::Weather;
use coldloop::vehicle::System;
use coldloop::{Compressor, Expansion, Refrigerant};
use draw::{FIGURES, Sample, WEATHERS};
use std::fmt::Write;
use std::fs;
use std::path::Path;

const TABLE: &str = "tables/bands/fleet.csv";
/// Vehicles of each kind that the fit sees.
const VEHICLES: usize = 4_000;
const SEED: u64 = 1_913;
/// Terms that a spread is linear in.
const SPREAD_TERMS: usize = 13;
/// Figures of a system whose clutch does not cycle.
const STEADY_FIGURES: usize = 6;
/// Deviations beyond this many spreads count as this many for the covariances.
const FARTHEST: f64 = 4.0;

/// How many figures a system has.
fn figures(system: &System) -> usize {
    if system.compressor == Compressor::FixedClutch {
        FIGURES
    } else {
        STEADY_FIGURES
    }
}

/// Fits every kind, or those of the refrigerants named, and writes `tables/bands/fleet.csv`.
pub(crate) fn fit(root: &Path, named: &[Refrigerant]) -> Result<(), String> {
    let present = fs::read_to_string(root.join(TABLE)).unwrap_or_default();
    let mut table = String::from(
        "# The bands of sound vehicles, fitted to the vehicle model by `tables-compile -- --fit-bands`; see fleet.md.\n\
         # refrigerant, expansion, compressor, part, then for each figure the coefficients of its median, its spread\n\
         # down and its spread up, and for the kind the lower triangles of the covariances kept and changing\n",
    );
    let began = std::time::Instant::now();
    for system in draw::systems() {
        if !named.is_empty() && !named.contains(&system.refrigerant) {
            let ids = [system.refrigerant.id(), system.expansion.id(), system.compressor.id()];
            let kept = format!("{},", ids.join(","));
            for row in present.lines().filter(|row| row.starts_with(&kept)) {
                let _ = writeln!(table, "{row}");
            }
            continue;
        }
        let vehicles = draw::vehicles(&system, VEHICLES, SEED);
        eprintln!(
            "{:?} {} {} {}: {} of {VEHICLES} vehicles",
            began.elapsed(),
            system.refrigerant,
            system.expansion,
            system.compressor,
            vehicles.len()
        );
        for (part, values) in kind(&system, &vehicles) {
            let _ = write!(
                table,
                "{},{},{},{part}",
                system.refrigerant.id(),
                system.expansion.id(),
                system.compressor.id()
            );
            for value in values {
                let _ = write!(table, ",{:?}", value as f32);
            }
            table.push('\n');
        }
    }
    fs::write(root.join(TABLE), table).map_err(|e| format!("{TABLE}: {e}"))
}

/// The parts of one kind, named, in the order in which they are compiled.
fn kind(system: &System, vehicles: &[[Sample; WEATHERS]]) -> Vec<(String, Vec<f64>)> {
    let samples: Vec<&Sample> = vehicles.iter().flatten().collect();
    let terms: Vec<&[f64; Weather::TERMS]> = samples.iter().map(|sample| &sample.terms).collect();
    let spread_terms: Vec<&[f64]> = terms.iter().map(|terms| &terms[..SPREAD_TERMS]).collect();
    let mut parts = Vec::new();
    let mut all: Vec<Vec<Vec<f64>>> = vehicles
        .iter()
        .map(|v| v.iter().map(|_| Vec::new()).collect())
        .collect();
    for figure in 0..figures(system) {
        let values: Vec<f64> = samples.iter().map(|sample| sample.figures[figure]).collect();
        let median = fit::median(&terms, &values);
        let at = |coefficients: &[f64], x: &[f64]| coefficients.iter().zip(x).map(|(c, x)| c * x).sum::<f64>();
        let deviations: Vec<f64> = terms
            .iter()
            .zip(&values)
            .map(|(x, value)| value - at(&median, &x[..]))
            .collect();
        let down = fit::spread(&spread_terms, &deviations, -1.0);
        let up = fit::spread(&spread_terms, &deviations, 1.0);
        for (index, (x, deviation)) in spread_terms.iter().zip(&deviations).enumerate() {
            let raw = at(if *deviation < 0.0 { &down } else { &up }, x);
            let scale = 0.5 * (raw + raw.hypot(0.1));
            all[index / WEATHERS][index % WEATHERS].push((deviation / scale).clamp(-FARTHEST, FARTHEST));
        }
        for (name, values) in [("median", median), ("down", down), ("up", up)] {
            parts.push((format!("{figure} {name}"), values));
        }
    }
    let (kept, changing) = fit::covariances(&all);
    parts.push(("kept".into(), kept));
    parts.push(("changing".into(), changing));
    parts
}

const HEADER: &str = "//! The bands of sound vehicles, fitted to the vehicle model.\n//!\n\
    //! Generated from tables/bands/fleet.csv by tables/compile; fit anew with `tables-compile -- --fit-bands`.\n\n\
    use super::steps::Steps;\nuse super::{Kind, Row};\nuse crate::names::{Compressor, Expansion, Refrigerant};\n\n\
    /// Every kind of vehicle that has bands.\npub(super) static KINDS: &[Kind] = &[\n";

/// Reads `tables/bands/fleet.csv` and writes `src/expected/fleet/constants.rs`.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let text = fs::read_to_string(root.join(TABLE)).map_err(|e| format!("{TABLE}: {e}"))?;
    let source = rust(&text).map_err(|e| format!("{TABLE}: {e}"))?;
    out.rust("src/expected/fleet/constants.rs", &source)
}

fn rust(text: &str) -> Result<String, String> {
    let mut source = String::from(HEADER);
    let mut lines = text.lines().filter(|line| !line.starts_with('#')).peekable();
    while let Some(first) = lines.peek() {
        let name: Vec<String> = first.split(',').take(3).map(str::to_string).collect();
        let [refrigerant, expansion, compressor] = name.as_slice() else {
            return Err(format!("{first} is no row"));
        };
        let system = System::new(
            Refrigerant::from_id(refrigerant).ok_or(format!("{refrigerant} is no refrigerant"))?,
            Expansion::from_id(expansion).ok_or(format!("{expansion} is no expansion device"))?,
            Compressor::from_id(compressor).ok_or(format!("{compressor} is no compressor"))?,
        );
        let figures = figures(&system);
        let mut part = |wanted: &str, count: usize| {
            let line = lines.next().ok_or(format!("{wanted} is missing"))?;
            let mut fields = line.split(',').skip(3);
            if fields.next() != Some(wanted) {
                return Err(format!("{line} does not give {wanted}"));
            }
            let values: Result<Vec<f32>, String> = fields
                .map(|digits| digits.parse().map_err(|_| format!("{digits} is no number")))
                .collect();
            let values = values?;
            if values.len() != count {
                return Err(format!("{wanted} has {} values, not {count}", values.len()));
            }
            Ok(values)
        };
        let _ = write!(
            source,
            "Kind {{ refrigerant: Refrigerant::{:?}, expansion: Expansion::{:?}, compressor: Compressor::{:?}, rows: &[",
            system.refrigerant, system.expansion, system.compressor
        );
        for figure in 0..figures {
            let median = part(&format!("{figure} median"), Weather::TERMS)?;
            let down = part(&format!("{figure} down"), SPREAD_TERMS)?;
            let up = part(&format!("{figure} up"), SPREAD_TERMS)?;
            let [level, median @ ..] = median.as_slice() else {
                return Err(format!("{figure} median has no constant"));
            };
            let (median, down, up) = (steps(median), steps(&down), steps(&up));
            let _ = write!(
                source,
                "Row {{ level: {level:?}, median: {median}, down: {down}, up: {up} }},"
            );
        }
        let triangle = figures * (figures + 1) / 2;
        let (kept, changing) = (part("kept", triangle)?, part("changing", triangle)?);
        let _ = writeln!(source, "], kept: &{kept:?}, changing: &{changing:?} }},");
    }
    Ok(source + "];\n")
}

/// Coefficients as counts of a step of which the largest is as many as an `i16` can be.
fn steps(coefficients: &[f32]) -> String {
    let largest = coefficients.iter().fold(f32::MIN_POSITIVE, |most, c| most.max(c.abs()));
    let step = largest / f32::from(i16::MAX);
    let counts: Vec<i16> = coefficients.iter().map(|c| (c / step).round() as i16).collect();
    format!("Steps {{ step: {step:?}, counts: {counts:?} }}")
}
