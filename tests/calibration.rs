//! The odds are calibrated on simulated vehicles that no fit has used, read and described as in a workshop.
//!
//! A small and fixed part of what `examples/evaluate_diagnosis` measures at length; the limits allow for the sampling error of
//! a small sample, not for wrong odds.

#![allow(clippy::unwrap_used)] // helpers of tests

#[allow(dead_code, unreachable_pub)] // the evaluation, which shares it, needs more of it
#[path = "../examples/evaluate_diagnosis/draws.rs"]
mod draws;

use coldloop::diagnosis::{Case, Diagnosis, diagnose};
use coldloop::{ErrorKind, Fault, VerdictKind};
use draws::{Draw, KINDS, Lines, World};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

/// Vehicles of each kind.
const EACH: usize = 125;

type Bins = [[f64; 2]; 10];

/// Counts over the answers.
#[derive(Default)]
struct Kept {
    answers: f64,
    /// Sum of the log losses: minus the logarithm of the probability of the true fault, nats.
    loss: f64,
    /// Sum of the squares of the log losses.
    loss_squared: f64,
    /// For each tenth of probability: sum of the probabilities of the first name, and how often it was right.
    bins: Bins,
    /// The same with all odds squared, as an overconfident judge would give them.
    surer: Bins,
    sound: f64,
    alarms: f64,
    significant: f64,
    three: f64,
    misnamed: f64,
}

impl Kept {
    fn add(&mut self, draw: &Draw, answer: &Diagnosis) {
        let truth = draw.fault.fault;
        let first = answer.faults[0];
        self.answers += 1.0;
        let loss = -answer.probability_of(&[truth]).max(1e-6).ln();
        self.loss += loss;
        self.loss_squared += loss * loss;
        let square = |p: f64| p * p;
        let squares: f64 = answer.faults.iter().map(|ranked| square(ranked.probability)).sum();
        let surer = square(first.probability) / (squares + square(answer.none_of_these));
        for (bins, p) in [(&mut self.bins, first.probability), (&mut self.surer, surer)] {
            let bin = &mut bins[((10.0 * p) as usize).min(9)];
            bin[0] += p;
            bin[1] += f64::from(u8::from(first.fault == truth));
        }
        let named = answer.verdict.kind == VerdictKind::NamedFault && answer.verdict.faults[0] != truth;
        if truth == Fault::NoFault {
            self.sound += 1.0;
            self.alarms += f64::from(u8::from(named));
        } else {
            match draw.significant() {
                Ok(true) => {
                    self.significant += 1.0;
                    self.misnamed += f64::from(u8::from(named));
                    let three = answer.faults.iter().take(3).any(|ranked| ranked.fault == truth);
                    self.three += f64::from(u8::from(three));
                }
                Ok(false) => {}
                // The same vehicle without its fault has no steady state: how much the fault costs is not known.
                Err(error) => assert_eq!(error.kind, ErrorKind::NoConvergence),
            }
        }
    }

    /// The expected calibration error.
    fn error(&self, bins: &Bins) -> f64 {
        bins.iter().map(|[said, right]| (said - right).abs()).sum::<f64>() / self.answers
    }
}

fn judged(world: World) -> Kept {
    let mut kept = Kept::default();
    for kind in 0..KINDS {
        let mut rng = ChaCha8Rng::seed_from_u64(61);
        rng.set_stream(kind as u64);
        let faults = draws::faults(kind);
        let mut settings = draws::even_settings(&faults);
        settings.next_checks = false;
        for _ in 0..EACH {
            let fault = draws::even(&mut rng, &faults);
            let severity = draws::severity(&mut rng, fault);
            let draw = draws::solved(&mut rng, world, kind, fault, severity).unwrap();
            let readings = draws::taken(&mut rng, &draw.readings, Lines::All);
            let case = Case::new(draw.system, draws::told(&mut rng, &draw.conditions), readings);
            match diagnose(&case, &settings) {
                Ok(answer) => kept.add(&draw, &answer),
                // A discharge line that is hotter than possible is rightly refused.
                Err(error) => assert_eq!(error.kind, ErrorKind::OutOfRange),
            }
        }
    }
    assert!(kept.answers > 0.98 * (EACH * KINDS) as f64, "{}", kept.answers);
    kept
}

/// Limits: the values of 12,000 vehicles of each population on 2026-11-30 (a log loss of 2.050 and 2.080) plus three standard errors
/// of a sample of this size.
fn holds(kept: &Kept, loss: f64) {
    let error = kept.error(&kept.bins);
    assert!(error < 0.07, "calibration error {error}: {:?}", kept.bins);
    // The bins show overconfident odds.
    assert!(kept.error(&kept.surer) > 0.14, "{:?}", kept.surer);
    let mean = kept.loss / kept.answers;
    let standard_error = ((kept.loss_squared / kept.answers - mean * mean) / kept.answers).sqrt();
    assert!(mean < loss + 3.0 * standard_error, "log loss {mean} ± {standard_error}");
    assert!(
        kept.three > 0.75 * kept.significant,
        "{} of {}",
        kept.three,
        kept.significant
    );
    assert!(
        kept.misnamed < 0.06 * kept.significant,
        "{} of {}",
        kept.misnamed,
        kept.significant
    );
    assert!(kept.alarms < 0.08 * kept.sound, "{} of {}", kept.alarms, kept.sound);
}

#[test]
#[ignore = "not met: the two simulators disagree about faults, and odds mixed from both stray by 0.07 to 0.10 in the world of one"]
fn odds_are_calibrated_on_vehicles_like_those_of_the_fit() {
    holds(&judged(World::Own), 2.05);
}

#[test]
#[ignore = "not met: the two simulators disagree about faults, and odds mixed from both stray by 0.07 to 0.10 in the world of one"]
fn odds_are_calibrated_on_vehicles_of_another_population() {
    holds(&judged(World::Shifted), 2.08);
}
