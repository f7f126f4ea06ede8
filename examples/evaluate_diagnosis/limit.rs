//! How much do the readings tell at most? An answer that knows the population itself, beside ours, on the same vehicles.
//!
//! Vehicles are drawn in the usual mix of faults until so many have a significant one, and each is judged by the vehicles
//! that the clouds were fitted to, without a cloud: those of its kind and refrigerant, the nearer in weather and driving the
//! more, moved to its own conditions by a regression of their own (Beaumont, Zhang & Balding 2002, Genetics 162:2025-2035),
//! with what its instruments add; the density of its figures among those of each fault is Bayes' likelihood, by kernels of
//! the shape in which vehicles of one severity differ (Silverman 1986, section 4.3).
//!
//! It is an estimate and no bound: what it has right could be had right, and of more vehicles it would have a little more.
//! How much is told by judging the same cases with an eighth, a quarter, a half and all of them. How near is near and how
//! wide are the kernels are those of a few tried under which the truth of these cases is the least surprise; two numbers
//! for all cases flatter the estimate by next to nothing.

mod near;
mod share;

use crate::cases::{self, Judged, answer, settings, write};
use crate::draws::{self, KINDS, World};
use crate::tally::Standing;
use coldloop::Fault;
use coldloop::diagnosis::Settings;
use near::{Asked, PARTS, Population, TRIED};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use share::{Shares, better};
use std::error::Error;
use std::path::Path;
use std::{fs, thread};

/// Log densities of a case under one fault, by every part of the vehicles and every pair of widths.
type Densities = [[f64; TRIED.len()]; PARTS.len()];

/// Where the fit of the clouds keeps what it drew.
const DRAWN: &str = "target/clouds";

/// A case under every fault that its kind can have.
type Known = Vec<(Fault, Densities)>;

/// Prints what both say of `count` vehicles with a significant fault; with a folder, the cases and how common each fault is
/// are written there for the classifier.
pub(crate) fn print(count: usize, folder: Option<&Path>) -> Result<(), Box<dyn Error>> {
    println!("own population, all lines: {count} significant faults of the usual mix");
    let cases = significant(count)?;
    if let Some(folder) = folder {
        write(&folder.join("limit.csv"), &cases)?;
        let priors = Fault::ALL.map(|fault| format!("{},{}\n", fault.code(), Settings::default().prior(fault)));
        fs::write(folder.join("priors.csv"), priors.concat())?;
    }
    let mut ours = Vec::new();
    for case in &cases {
        let answer = answer(case, 0, &settings(case, true))?;
        ours.push(Standing::of(answer.as_ref()).ranked);
    }
    let known = judged(&cases, Path::new(DRAWN))?;
    println!("  {:<52} {:>14} {:>14} {:>7}", "", "first", "three", "loss");
    let ours = Shares::of(&cases, &ours);
    ours.print("this diagnosis");
    let mut last = None;
    for (part, of) in PARTS.into_iter().enumerate() {
        let tried = (0..TRIED.len()).map(|width| {
            let ranked: Vec<_> = cases
                .iter()
                .zip(&known)
                .map(|(c, k)| ranked(c, k, part, width))
                .collect();
            (width, Shares::of(&cases, &ranked))
        });
        let best = tried.min_by(|a, b| a.1.loss().total_cmp(&b.1.loss()));
        let Some((width, shares)) = best else { continue };
        let (reach, kernel) = TRIED[width];
        shares.print(&format!("1/{of} of the population (reach {reach}, kernels {kernel})"));
        last = Some(shares);
    }
    if let Some(population) = last {
        better("the population above this diagnosis", &population, &ours);
    }
    Ok(())
}

/// Vehicles with a significant fault, as often of every kind, each fault as often as it is met.
fn significant(count: usize) -> Result<Vec<Judged>, coldloop::Error> {
    let mut rng = ChaCha8Rng::seed_from_u64(174);
    let mut found = Vec::new();
    while found.len() < count {
        let kind = found.len() % KINDS;
        let faults = draws::faults(kind);
        let usual = Settings::default();
        let met = |fault: &Fault| {
            if *fault == Fault::NoFault {
                0.0
            } else {
                usual.prior(*fault)
            }
        };
        let mut left = rng.random::<f64>() * faults.iter().map(met).sum::<f64>();
        let fault = faults.iter().find(|fault| {
            left -= met(fault);
            left < 0.0
        });
        let Some(fault) = fault else { continue };
        let case = cases::one(&mut rng, World::Own, kind, *fault)?;
        if case.significant {
            found.push(case);
        }
    }
    Ok(found)
}

/// The log densities of every case under every fault that its kind can have.
fn judged(cases: &[Judged], drawn: &Path) -> Result<Vec<Known>, Box<dyn Error>> {
    let mut all: Vec<Known> = cases.iter().map(|_| Vec::new()).collect();
    for kind in 0..KINDS {
        for fault in draws::faults(kind) {
            let population = Population::read(drawn, kind, fault)?;
            let here: Vec<usize> = (0..cases.len()).filter(|at| cases[*at].kind == kind).collect();
            let threads = thread::available_parallelism().map_or(1, |n| n.get());
            let found: Vec<(usize, Densities)> = thread::scope(|scope| {
                let population = &population;
                let workers: Vec<_> = here
                    .chunks(here.len().div_ceil(threads).max(1))
                    .map(|some| {
                        let of = |at: &usize| Asked::of(&cases[*at]).map(|asked| (*at, population.densities(&asked)));
                        scope.spawn(move || some.iter().filter_map(of).collect::<Vec<_>>())
                    })
                    .collect();
                workers.into_iter().filter_map(|w| w.join().ok()).flatten().collect()
            });
            for (at, densities) in found {
                all[at].push((fault, densities));
            }
        }
    }
    Ok(all)
}

/// Faults with their probabilities, the likeliest first.
fn ranked(case: &Judged, known: &[(Fault, Densities)], part: usize, width: usize) -> Vec<(Fault, f64)> {
    let usual = settings(case, true);
    let most = known
        .iter()
        .map(|(_, d)| d[part][width])
        .fold(f64::NEG_INFINITY, f64::max);
    let mut odds: Vec<(Fault, f64)> = known
        .iter()
        .map(|(fault, densities)| (*fault, usual.prior(*fault) * (densities[part][width] - most).exp()))
        .collect();
    let all: f64 = odds.iter().map(|(_, p)| p).sum();
    odds.iter_mut().for_each(|(_, p)| *p /= all);
    odds.sort_by(|a, b| b.1.total_cmp(&a.1));
    odds
}
