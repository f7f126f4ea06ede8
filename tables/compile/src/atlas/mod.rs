//! What faults do: fitted to the vehicle model into `tables/atlas/vehicle-model.csv` by `--fit-atlas`, compiled with the
//! rows of the other sources into `src/diagnosis/atlas_table.rs`.

mod draw;
#[allow(dead_code)] // the evaluation, which shares it, needs more of it
#[path = "../../../../examples/evaluate_diagnosis/draws.rs"]
pub(crate) mod draws;
mod fit;
pub(crate) mod group;
mod independent;
mod not_driven;
mod published;
mod rust;
mod table;

pub(crate) use rust::compile;

use crate::features::FEATURES;
use crate::linear::Matrix;
use crate::{sound, work};
use coldloop::{Expansion, Fault};
use draw::Job;
use group::Group;
use std::fs;
use std::path::Path;

const TABLE: &str = "tables/atlas/vehicle-model.csv";

/// Weights of the bins, mild to severe. Engineering judgement: equal; weights that favour mild or severe faults have no better log
/// likelihood on makes that were left out.
pub(crate) const WEIGHTS: [f64; 3] = [1.0 / 3.0; 3];

/// A range of severities and its share of what is met.
#[derive(Clone, Copy)]
pub(crate) struct Bin {
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) weight: f64,
    /// Whether no other follows.
    pub(crate) last: bool,
}

impl Bin {
    /// Whether a severity lies in it; its upper end belongs to the next one.
    fn holds(&self, severity: f64) -> bool {
        severity >= self.low && (severity < self.high || self.last)
    }
}

/// One row of a fault.
#[derive(Clone)]
pub(crate) struct Row {
    pub(crate) group: Group,
    /// The form of the fault; empty for all of them.
    pub(crate) cause: String,
    pub(crate) weight: f64,
    /// Least, mean and most.
    pub(crate) severity: [f64; 3],
    pub(crate) cases: usize,
    /// Coefficients of 1, a, w and s.
    pub(crate) shift: [[f64; 4]; FEATURES],
}

/// All rows of a fault by one source.
#[derive(Clone)]
pub(crate) struct FaultRows {
    pub(crate) source: &'static str,
    pub(crate) carbon_dioxide: bool,
    pub(crate) expansion: Expansion,
    pub(crate) fault: Fault,
    /// Scale matrices round the shifted mean of a sound system: of mild and middling severities, and of severe ones; both
    /// triangles are filled.
    pub(crate) scales: [Matrix<FEATURES>; 2],
    pub(crate) rows: Vec<Row>,
    /// Mean shift of the first vehicles that were drawn.
    pub(crate) drawn: [f64; FEATURES],
}

impl FaultRows {
    /// Whether a row is of a severe fault: its severities are the third ones from below, or higher still.
    pub(crate) fn severe(&self, row: &Row) -> bool {
        let own = self.rows.iter().filter(|other| other.group == row.group);
        let mut lows: Vec<f64> = own.map(|row| row.severity[0]).collect();
        lows.sort_by(f64::total_cmp);
        lows.dedup();
        lows.iter()
            .position(|low| *low == row.severity[0])
            .is_some_and(|place| place >= 2)
    }
}

/// The bins of a fault as it is drawn: thirds of the range of severities.
fn bins(fault: Fault) -> Vec<Bin> {
    if matches!(fault, Fault::ClutchNotEngaged | Fault::WrongRefrigerant) {
        return vec![Bin {
            low: 0.0,
            high: 1.0,
            weight: 1.0,
            last: true,
        }];
    }
    let (least, most) = if fault == Fault::Overcharge {
        (0.02, 0.5)
    } else {
        (0.03, 0.95)
    };
    let third = (most - least) / 3.0;
    let edges = [least, least + third, most - third, most];
    WEIGHTS
        .into_iter()
        .enumerate()
        .map(|(bin, weight)| Bin {
            low: edges[bin],
            high: edges[bin + 1],
            weight,
            last: bin == 2,
        })
        .collect()
}

/// Draws `count` vehicles of each fault and kind of compressor, fits, and writes the table.
pub(crate) fn fit(root: &Path, count: usize) -> Result<(), String> {
    let sound = sound::table::read(root)?;
    let jobs = jobs();
    let began = std::time::Instant::now();
    let sound_jobs: Vec<Job> = jobs
        .iter()
        .filter(|job| job.fault == Fault::WornCompressor)
        .map(Job::sound)
        .collect();
    let control = work::all(&sound_jobs, |job| {
        let points = job.points(count, &sound)?;
        fit::control(&points, &job.rows(&points))
    })?;
    let fitted = work::all(&jobs, |job| {
        let mut points = job.points(count, &sound)?;
        if points.is_empty() {
            return Ok(None);
        }
        let of = job.rows(&points);
        let own = sound_jobs.iter().zip(&control).find(|(sound, _)| sound.is_of(job));
        let (_, control) = own.ok_or("no sound vehicles")?;
        for point in &mut points {
            let Some(row) = control.iter().find(|row| row.group == point.group) else {
                return Err(format!("no sound vehicles {}", point.group.id()));
            };
            for (shift, own) in point.shift.iter_mut().zip(&row.shift) {
                *shift -= own.iter().zip(&point.moves).map(|(c, x)| c * x).sum::<f64>();
            }
        }
        let (rows, parts, score) = fit::best(&points, &bins(job.fault), &of)?;
        eprintln!(
            "{:.0?} {} {} {}: {} rows, {parts:?}, {score:.2} nats",
            began.elapsed(),
            if job.carbon_dioxide { "R-744" } else { "other" },
            job.expansion,
            job.fault,
            rows.rows.len()
        );
        Ok(Some(rows))
    })?;
    let fitted: Vec<FaultRows> = fitted.into_iter().flatten().collect();
    fs::write(root.join(TABLE), table::text(&fitted)).map_err(|e| format!("{TABLE}: {e}"))
}

/// Every fault with every expansion device, with R-744 and with the others.
fn jobs() -> Vec<Job> {
    let mut jobs = Vec::new();
    for carbon_dioxide in [false, true] {
        for expansion in Expansion::ALL {
            for fault in Fault::ALL.into_iter().filter(|fault| *fault != Fault::NoFault) {
                jobs.push(Job {
                    carbon_dioxide,
                    expansion,
                    fault,
                });
            }
        }
    }
    jobs
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)] // tests

    use super::draw::DRAWN;
    use super::*;

    /// Vehicles drawn as the fit drew its first ones lie as far from the sound mean as they did then; otherwise the model, its
    /// population or the sound table has changed, and `--fit-atlas` is due.
    #[test]
    fn the_atlas_is_of_the_model_as_it_is() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let sound = sound::table::read(&root).unwrap();
        let faults = table::read(&root).unwrap();
        let mut seen = 0;
        for job in jobs() {
            let points = job.points(DRAWN, &sound).unwrap();
            if points.is_empty() {
                continue;
            }
            let key = |of: &&FaultRows| {
                (of.carbon_dioxide, of.expansion, of.fault) == (job.carbon_dioxide, job.expansion, job.fault)
            };
            let of = faults.iter().find(key).unwrap();
            for (now, then) in draw::first(&points).iter().zip(&of.drawn) {
                assert!(
                    (now - then).abs() < 2e-3,
                    "{}: {now} now, {then} when fitted",
                    job.fault
                );
            }
            seen += 1;
        }
        assert_eq!(seen, faults.len());
    }
}
