//! Vehicles of the model, drawn with every fault, into the clouds of `src/diagnosis/cloud_table.rs`.
//!
//! This takes minutes, so it happens only when asked for by `--fit-clouds`. What was drawn is kept under `target/clouds`.

mod drawn;
#[allow(dead_code)] // the evaluation, which shares it, needs more of it
#[path = "../../../../examples/evaluate_diagnosis/draws.rs"]
mod draws;
mod em;
mod growing;
mod linear;
mod said;
mod table;

use crate::output::Output;
use coldloop::Fault;
use coldloop::diagnosis::Settings;
use drawn::{KINDS, Seen, faults, vehicles};
use draws::Draw;
use em::{Part, Point};
use growing::Growing;
use std::path::Path;
use std::{fs, thread};

/// Conditions and figures of a point; the severity stands last.
pub(crate) const X: usize = 9;
pub(crate) const Y: usize = 8;

/// Vehicles drawn for each fault of each kind, and how many of them only judge the fit.
const DRAWN: usize = 5_000;
const JUDGES: usize = 1_000;
/// How many of those are drawn again to see whether the clouds are of the model as it is; `src/diagnosis/stale.rs` has the same.
const DRAWN_AGAIN: usize = 12;
/// Rows of the table that the clouds of a kind of system share; R-744 has one for each expansion device, for its size.
const ROWS: usize = 2;
const ROWS_R744: usize = 1;
/// A further part must raise the score by this much, nats per vehicle.
const WORTH: f64 = 0.02;

/// The parts of one cloud.
pub(crate) struct Cloud {
    pub(crate) fault: Fault,
    pub(crate) parts: Vec<Part<X, Y>>,
    /// Mean log density of some judges, as the crate has it.
    pub(crate) said: f64,
}

/// Draws, fits, and writes `src/diagnosis/cloud_table.rs`.
pub(crate) fn fit(root: &Path) -> Result<(), String> {
    let folder = root.join("target/clouds");
    fs::create_dir_all(&folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    let halves: Vec<Result<Vec<Vec<Cloud>>, String>> = thread::scope(|scope| {
        let workers: Vec<_> = [0..KINDS / 2, KINDS / 2..KINDS]
            .into_iter()
            .map(|kinds| {
                let folder = &folder;
                scope.spawn(move || kinds.map(|kind| of_kind(folder, kind)).collect())
            })
            .collect();
        workers
            .into_iter()
            .map(|worker| worker.join().unwrap_or_else(|_| Err("a thread died".to_string())))
            .collect()
    });
    let mut kinds = Vec::new();
    for half in halves {
        kinds.extend(half?);
    }
    let mut out = Output::new(root, false);
    out.rust("src/diagnosis/cloud_table.rs", &table::rust(&kinds))?;
    out.text("tables/clouds/said.csv", &said::csv(&kinds))?;
    out.finish()
}

fn of_kind(folder: &Path, kind: usize) -> Result<Vec<Cloud>, String> {
    let mut growing = Vec::new();
    for fault in faults(kind) {
        let path = folder.join(format!("{kind}-{}.bin", fault.id()));
        let points = match read(&path) {
            Some(points) => points,
            None => {
                let points = drawn(kind, fault)?;
                write(&path, &points)?;
                points
            }
        };
        growing.push(Growing::of(fault, points));
    }
    // A part goes where it gains most, half by how often each fault is met and half as if all were met alike.
    let (usual, count) = (Settings::default(), growing.len() as f64);
    let rows = if kind < draws::KINDS { ROWS } else { ROWS_R744 };
    while growing.iter().map(|cloud| cloud.parts.len()).sum::<usize>() < rows * table::LANES {
        let worth = |cloud: &Growing| cloud.gain() * (0.5 * usual.prior(cloud.fault) + 0.5 / count);
        let enough = growing.iter_mut().filter(|cloud| cloud.gain() >= WORTH);
        match enough.max_by(|a, b| worth(a).total_cmp(&worth(b))) {
            Some(cloud) => cloud.grow(),
            None => break,
        }
    }
    for cloud in &growing {
        let (fault, parts) = (cloud.fault.id(), cloud.parts.len());
        eprintln!("{kind} {fault:<30} {parts} parts, score {:.3}", cloud.score);
    }
    Ok(growing.into_iter().map(Growing::grown).collect())
}

fn drawn(kind: usize, fault: Fault) -> Result<Vec<Point<X, Y>>, String> {
    let points: Vec<Point<X, Y>> = vehicles(kind, fault)
        .take(4 * DRAWN)
        .flatten()
        .take(DRAWN)
        .map(|(draw, figures)| point(&draw, &figures))
        .collect();
    if points.len() == DRAWN {
        Ok(points)
    } else {
        Err(format!("{kind} {fault}: too many vehicles without an answer"))
    }
}

fn point(draw: &Draw, seen: &Seen) -> Point<X, Y> {
    let mut y = [0.0; Y];
    y[..Y - 1].copy_from_slice(&seen.figures);
    // How much of the charge a wrong refrigerant is changes nothing about what is to be done.
    let whole = draw.fault.fault == Fault::WrongRefrigerant;
    y[Y - 1] = if whole { 1.0 } else { draw.fault.severity };
    Point { x: seen.conditions, y }
}

fn read(path: &Path) -> Option<Vec<Point<X, Y>>> {
    let bytes = fs::read(path).ok()?;
    let numbers: Vec<f64> = bytes
        .chunks_exact(8)
        .map(|b| f64::from_le_bytes(std::array::from_fn(|i| b[i])))
        .collect();
    let points: Vec<Point<X, Y>> = numbers
        .chunks_exact(X + Y)
        .map(|row| Point {
            x: std::array::from_fn(|j| row[j]),
            y: std::array::from_fn(|i| row[X + i]),
        })
        .collect();
    (points.len() == DRAWN).then_some(points)
}

fn write(path: &Path, points: &[Point<X, Y>]) -> Result<(), String> {
    let bytes: Vec<u8> = points
        .iter()
        .flat_map(|p| p.x.into_iter().chain(p.y))
        .flat_map(f64::to_le_bytes)
        .collect();
    fs::write(path, bytes).map_err(|e| format!("{}: {e}", path.display()))
}
