//! Vehicles of the model, drawn with every fault, into the clouds of `src/diagnosis/cloud_table.rs`.
//!
//! This takes minutes, so it happens only when asked for by `--fit-clouds`. What was drawn is kept under `target/clouds`.

#[allow(dead_code)] // the evaluation, which shares it, needs more of it
#[path = "../../../../examples/evaluate_diagnosis/draws.rs"]
mod draws;
mod em;
mod linear;
mod table;

use crate::output::Output;
use coldloop::Fault;
use coldloop::diagnosis::{Case, Coordinates};
use coldloop::vehicle::Instruments;
use draws::{Draw, KINDS, World};
use em::{Floor, Part, Point};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use std::path::Path;
use std::{fs, thread};

/// Conditions and figures of a point; the severity stands last.
pub(crate) const X: usize = 9;
pub(crate) const Y: usize = 8;

/// Vehicles drawn for each fault of each kind, and how many of them only judge the fit.
const DRAWN: usize = 5_000;
const JUDGES: usize = 1_000;
/// Numbers of parts that are tried, until one more is not worth it.
const TRIED: [usize; 4] = [1, 2, 3, 4];
/// A further part must raise the score by this much, nats per vehicle.
const WORTH: f64 = 0.15;

const SEED: u64 = 20_261_126;

const FLOOR: Floor<Y> = Floor {
    spread: [0.3, 0.3, 0.3, 0.3, 0.3, 0.5, 0.05, 0.01],
    width: 0.3,
    ridge: 20.0,
};

/// The parts of one cloud.
pub(crate) struct Cloud {
    pub(crate) fault: Fault,
    pub(crate) parts: Vec<Part<X, Y>>,
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
    out.finish()
}

fn of_kind(folder: &Path, kind: usize) -> Result<Vec<Cloud>, String> {
    let mut clouds = Vec::new();
    for fault in draws::faults(kind) {
        let path = folder.join(format!("{kind}-{}.bin", fault.id()));
        let points = match read(&path) {
            Some(points) => points,
            None => {
                let points = drawn(kind, fault)?;
                write(&path, &points)?;
                points
            }
        };
        let (judges, learnt) = points.split_at(points.len() * JUDGES / DRAWN);
        let mut best: Option<(f64, Vec<Part<X, Y>>)> = None;
        for count in TRIED {
            let mixture = mixture(learnt, count);
            let score = em::score(&mixture, judges);
            match &best {
                Some((least, _)) if score < least + WORTH => break,
                _ => best = Some((score, mixture)),
            }
        }
        let (score, parts) = best.ok_or("no fit")?;
        eprintln!("{kind} {:<30} {} parts, score {score:.3}", fault.id(), parts.len());
        clouds.push(Cloud { fault, parts });
    }
    Ok(clouds)
}

/// The best of two searches: parts by rank of the severity, and by rank of the superheat.
fn mixture(points: &[Point<X, Y>], count: usize) -> Vec<Part<X, Y>> {
    let mut guesses = Vec::new();
    for along in [Y - 1, 3] {
        guesses.push(quantiles(points, along, count));
        if count == 1 {
            break;
        }
    }
    guesses
        .into_iter()
        .map(|first| em::fit(points, &first, count, &FLOOR))
        .max_by(|a, b| em::score(a, points).total_cmp(&em::score(b, points)))
        .unwrap_or_default()
}

/// Parts of equal size by rank along a figure.
fn quantiles(points: &[Point<X, Y>], along: usize, count: usize) -> Vec<usize> {
    let mut order: Vec<usize> = (0..points.len()).collect();
    order.sort_by(|a, b| points[*a].y[along].total_cmp(&points[*b].y[along]));
    let mut of = vec![0; points.len()];
    for (rank, at) in order.into_iter().enumerate() {
        of[at] = rank * count / points.len();
    }
    of
}

fn drawn(kind: usize, fault: Fault) -> Result<Vec<Point<X, Y>>, String> {
    let mut rng = ChaCha8Rng::seed_from_u64(SEED);
    rng.set_stream(kind as u64 * 64 + u64::from(fault.code()));
    let mut points = Vec::new();
    for attempt in 0.. {
        if points.len() == DRAWN {
            break;
        }
        if attempt > 4 * DRAWN {
            return Err(format!("{kind} {fault}: too many vehicles without an answer"));
        }
        let severity = draws::severity(&mut rng, fault);
        let Ok(draw) = Draw::new(&mut rng, World::Own, kind, fault, severity) else {
            continue;
        };
        points.extend(point(&draw));
    }
    Ok(points)
}

/// What faultless instruments show of a vehicle, in conditions as somebody wrote them down; `None` where a figure is
/// beyond what instruments or tables reach.
fn point(draw: &Draw) -> Option<Point<X, Y>> {
    let faultless = Instruments {
        missing: 0.0,
        pressure_step_pa: 0.0,
        temperature_step_k: 0.0,
        ..Instruments::SHOP
    };
    let middle = [0.5; Instruments::UNIFORMS];
    let readings = faultless.measure(&draw.truth, draw.actual.surroundings, &middle).ok()?;
    let coordinates = Coordinates::of(&Case::new(draw.system, draw.conditions, readings)).ok()?;
    let mut y = [0.0; Y];
    for (y, figure) in y.iter_mut().zip(coordinates.figures) {
        *y = figure?;
    }
    // How much of the charge a wrong refrigerant is changes nothing about what is to be done.
    let whole = draw.fault.fault == Fault::WrongRefrigerant;
    y[Y - 1] = if whole { 1.0 } else { draw.fault.severity };
    Some(Point {
        x: coordinates.conditions.map(|c| c.unwrap_or(0.0)),
        y,
    })
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
