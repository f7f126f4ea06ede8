//! How much do the readings tell at most? An answer that knows the population itself, beside ours, on the same vehicles.
//!
//! For every vehicle that is judged, hundreds of others are simulated with every fault at every severity, of the same kind
//! and with the same refrigerant, in its own weather as far as it was told; the density of its figures among those of
//! each fault is Bayes' likelihood, estimated by kernels of the shape of their covariance (Silverman 1986, section 4.3),
//! drawn together so that they keep the covariance (West 1993, J. R. Stat. Soc. B 55:409-422). No cloud, no table and no
//! straight line stands between the population and this answer, so what it confuses, the readings hardly tell apart. It
//! is an estimate from so many vehicles and no strict bound: with more of them it gains a little.

use crate::cases::{Judged, answer, drawn, settings};
use crate::draws::{self, Draw, World};
use crate::tally::Standing;
use coldloop::Fault;
use coldloop::diagnosis::{Case, Coordinates};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use std::error::Error;
use std::thread;

/// Figures of a vehicle, those that the judged vehicle shows.
type Figures = Vec<f64>;

/// Least spread of a figure about which a kernel is laid, in its own unit: what instruments add in any case.
const LEAST_SPREAD: f64 = 0.15;

/// Prints what both say of `count` vehicles of each kind, each weighed against `simulated` with every fault.
pub(crate) fn print(count: usize, simulated: usize) -> Result<(), Box<dyn Error>> {
    println!(
        "own population, all lines, even mix: {count} vehicles of each kind, each beside {simulated} with every fault"
    );
    let cases = drawn(World::Own, 174, count)?;
    let (mut ours, mut theirs) = (Sums::default(), Sums::default());
    let halves: Vec<Result<Vec<_>, coldloop::Error>> = thread::scope(|scope| {
        let numbered: Vec<(usize, &Judged)> = cases.iter().enumerate().collect();
        let workers: Vec<_> = numbered
            .chunks(cases.len().div_ceil(2).max(1))
            .map(|half| {
                let half = half.to_vec();
                scope.spawn(move || half.into_iter().map(|(at, case)| known(at, case, simulated)).collect())
            })
            .collect();
        workers.into_iter().filter_map(|worker| worker.join().ok()).collect()
    });
    let mut known = Vec::new();
    for half in halves {
        known.extend(half?);
    }
    for (case, known) in cases.iter().zip(known) {
        let answer = answer(case, 0, &settings(case.kind, false))?;
        if let (Some(known), Some(answer)) = (known, answer) {
            ours.add(case, &Standing::of(Some(&answer)).ranked);
            theirs.add(case, &known);
        }
    }
    println!(
        "  {:<30} {:>6} {:>6} {:>6} {:>6} {:>9}",
        "", "first", "three", "loss", "ECE", "first, as"
    );
    println!("  {:<30} {:>6} {:>6} {:>6} {:>6} {:>9}", "", "", "", "", "", "expected");
    ours.print("this diagnosis");
    theirs.print("the population itself");
    println!(
        "  of {} significant faults; a share of them is uncertain by {:.1} points (one standard error)",
        ours.significant,
        50.0 / (ours.significant.max(1) as f64).sqrt()
    );
    Ok(())
}

/// Faults with their probabilities, the likeliest first, as the population itself has them; `None` where the vehicle
/// shows something that no vehicle can.
fn known(number: usize, case: &Judged, simulated: usize) -> Result<Option<Vec<(Fault, f64)>>, coldloop::Error> {
    let told = case.conditions;
    let shown = |draw: &Draw| Coordinates::of(&Case::new(case.draw.system, told, draw.readings)).ok();
    let asked = Case::new(case.draw.system, told, case.readings[0]);
    let Ok(seen) = Coordinates::of(&asked) else {
        return Ok(None);
    };
    let places: Vec<usize> = (0..seen.figures.len()).filter(|i| seen.figures[*i].is_some()).collect();
    let of =
        |coordinates: &Coordinates| -> Option<Figures> { places.iter().map(|i| coordinates.figures[*i]).collect() };
    let Some(at) = of(&seen) else { return Ok(None) };
    let mut rng = ChaCha8Rng::seed_from_u64(175);
    rng.set_stream(number as u64);
    let settings = settings(case.kind, false);
    let mut odds = Vec::new();
    for fault in draws::faults(case.kind) {
        let mut points = Vec::new();
        for _ in 0..4 * simulated {
            if points.len() == simulated {
                break;
            }
            // A vehicle that the model cannot solve, or whose readings are refused, stands for none that is judged.
            let drawn = Draw::like(&mut rng, case.draw.system, &told, fault);
            points.extend(drawn.ok().as_ref().and_then(shown).as_ref().and_then(of));
        }
        odds.push((fault, settings.prior(fault) * density(&points, &at)));
    }
    let all: f64 = odds.iter().map(|(_, p)| p).sum();
    if all > 0.0 {
        odds.iter_mut().for_each(|(_, p)| *p /= all);
    }
    odds.sort_by(|a, b| b.1.total_cmp(&a.1));
    Ok(Some(odds))
}

/// Density among points by kernels of the shape of their covariance.
fn density(points: &[Figures], at: &Figures) -> f64 {
    let (n, d) = (points.len() as f64, at.len());
    if points.len() <= d {
        return 0.0;
    }
    let mean: Vec<f64> = (0..d).map(|i| points.iter().map(|p| p[i]).sum::<f64>() / n).collect();
    // The Cholesky factor of the covariance.
    let mut factor = vec![vec![0.0; d]; d];
    for i in 0..d {
        for k in 0..=i {
            let mut sum = points.iter().map(|p| (p[i] - mean[i]) * (p[k] - mean[k])).sum::<f64>() / n;
            if i == k {
                sum += LEAST_SPREAD * LEAST_SPREAD;
            }
            sum -= (0..k).map(|m| factor[i][m] * factor[k][m]).sum::<f64>();
            factor[i][k] = if i == k {
                sum.max(1e-9).sqrt()
            } else {
                sum / factor[k][k]
            };
        }
    }
    let dimensions = d as f64;
    let width = (4.0 / (dimensions + 2.0) / n).powf(1.0 / (dimensions + 4.0));
    let together = (1.0 - width * width).max(0.0).sqrt();
    let scale: f64 = (0..d).map(|i| factor[i][i] * width).product();
    let sum: f64 = points
        .iter()
        .map(|p| {
            let mut z = vec![0.0; d];
            for i in 0..d {
                let centre = mean[i] + together * (p[i] - mean[i]);
                let left = at[i] - centre - (0..i).map(|k| factor[i][k] * z[k]).sum::<f64>();
                z[i] = left / factor[i][i];
            }
            let distance: f64 = z.iter().map(|z| z * z).sum::<f64>() / (width * width);
            (-0.5 * distance).exp()
        })
        .sum();
    sum / (n * scale)
}

/// What is counted.
#[derive(Default)]
struct Sums {
    all: usize,
    significant: usize,
    first: usize,
    three: usize,
    loss: f64,
    /// Probability said of the first name of significant cases.
    expected: f64,
    /// Probability said, right.
    bins: [[f64; 2]; 10],
}

impl Sums {
    fn add(&mut self, case: &Judged, ranked: &[(Fault, f64)]) {
        let truth = case.draw.fault.fault;
        let Some((first, p)) = ranked.first().copied() else {
            return;
        };
        self.all += 1;
        let given = ranked
            .iter()
            .find(|(fault, _)| *fault == truth)
            .map_or(0.0, |(_, p)| *p);
        self.loss -= given.max(1e-6).ln();
        let bin = &mut self.bins[((10.0 * p) as usize).min(9)];
        bin[0] += p;
        bin[1] += f64::from(u8::from(first == truth));
        if case.significant {
            self.significant += 1;
            self.expected += p;
            self.first += usize::from(first == truth);
            self.three += usize::from(ranked.iter().take(3).any(|(fault, _)| *fault == truth));
        }
    }

    fn print(&self, name: &str) {
        let percent = |part: f64| 100.0 * part / self.significant.max(1) as f64;
        let error: f64 = self.bins.iter().map(|[said, right]| (said - right).abs()).sum();
        println!(
            "  {name:<30} {:>6.1} {:>6.1} {:>6.3} {:>6.3} {:>9.1}",
            percent(self.first as f64),
            percent(self.three as f64),
            self.loss / self.all.max(1) as f64,
            error / self.all.max(1) as f64,
            percent(self.expected),
        );
    }
}
