//! From figures and observations to probabilities.

use super::answer::{Contribution, EVIDENCE, Evidence};
use super::case::{Case, Observations, Settings};
use super::fault_table::FAULTS;
use super::faults::{Effect, FaultRow, SEVERITIES, index};
use super::features::{FEATURES, Features, place};
use super::list::List;
use super::looks::{Sights, sights};
use super::scene::{Scene, about, anything};
use crate::circuit::Estimate;
use crate::expected::Spread;
use crate::names::{Fault, Feature, MixUp, Observation};

/// The faults, and none of them.
pub(super) const HYPOTHESES: usize = Fault::ALL.len() + 1;
/// The place of "none of these".
pub(super) const NONE: usize = Fault::ALL.len();

/// A figure that does not move although the fault is there is the less likely the more severe the fault: the chance in
/// the table is multiplied by this. Source: engineering judgement.
pub(super) const UNMOVED: [f64; SEVERITIES] = [1.0, 0.8, 0.4, 0.1];

/// Steps of the temperature at rest about its median, in its spreads, and their weights: three points of a
/// Gauss-Hermite rule.
const REST_STEPS: [(f64, f64); 3] = [
    (-1.732_050_807_568_877_2, 1.0 / 6.0),
    (0.0, 2.0 / 3.0),
    (1.732_050_807_568_877_2, 1.0 / 6.0),
];

/// What is less likely than this changes no prediction.
pub(super) const NEGLIGIBLE: f64 = 1e-3;

/// Most patterns: five faults draw towards rest or move with three steps, the others with one.
const PATTERNS: usize = Fault::ALL.len() * SEVERITIES + 8 * SEVERITIES;

/// One fault at one severity, and its weight after the readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Pattern {
    pub(super) fault: Fault,
    pub(super) severity: usize,
    /// The temperature at rest above its median, K.
    pub(super) rest_k: f64,
    /// Chance of the severity times likelihood of the readings.
    pub(super) weight: f64,
}

/// All that the readings and observations say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Posterior {
    /// Prior of each hypothesis; they sum to one.
    priors: [f64; HYPOTHESES],
    /// Likelihood of the first k figures under each hypothesis.
    cumulative: [[f64; FEATURES + 1]; HYPOTHESES],
    measured: [bool; FEATURES],
    observations: Observations,
    sights: Sights,
    /// Probability of each hypothesis; they sum to one.
    pub(super) probability: [f64; HYPOTHESES],
    pub(super) patterns: List<Pattern, PATTERNS>,
    /// Probability of all that was read and seen.
    pub(super) evidence: f64,
    /// Share of each mix-up within the gauge error.
    pub(super) mix_ups: [f64; MixUp::ALL.len()],
}

impl Posterior {
    /// The posterior of a case; `figures` are those at face value, `mixed_up` gives those that a mix-up would have
    /// hidden, where it can have happened.
    pub(super) fn of(
        case: &Case,
        settings: &Settings,
        scene: &Scene,
        figures: &Features,
        mixed_up: impl Fn(MixUp) -> Option<Features>,
    ) -> Self {
        let mut posterior = Self {
            priors: priors(settings, scene.bit),
            cumulative: [[1.0; FEATURES + 1]; HYPOTHESES],
            measured: core::array::from_fn(|i| figures.measured[i].is_some() && scene.healthy[i].is_some()),
            observations: case.observations,
            sights: sights(&settings.looks, &case.observations),
            probability: [0.0; HYPOTHESES],
            patterns: List::new(Pattern {
                fault: Fault::NoFault,
                severity: 0,
                rest_k: 0.0,
                weight: 0.0,
            }),
            evidence: 0.0,
            mix_ups: [0.0; MixUp::ALL.len()],
        };
        posterior.face_value(scene, figures);
        posterior.none(scene, figures);
        posterior.gauge_error(scene, mixed_up);
        let mut probability = posterior.priors;
        for (hypothesis, p) in probability.iter_mut().enumerate() {
            *p *= posterior.cumulative[hypothesis][FEATURES];
        }
        for sight in &posterior.sights {
            for (p, chance) in probability.iter_mut().zip(sight.chance) {
                *p *= chance;
            }
        }
        posterior.evidence = probability.iter().sum();
        posterior.probability = normalised(probability);
        posterior
    }

    /// The faults with the readings as they stand.
    fn face_value(&mut self, scene: &Scene, figures: &Features) {
        for row in &FAULTS {
            let hypothesis = index(row.fault);
            if self.priors[hypothesis] <= 0.0 || row.fault == Fault::GaugeError {
                continue;
            }
            let patterns = &mut self.patterns;
            self.cumulative[hypothesis] = likelihoods(scene, figures, row, |pattern| patterns.push(pattern));
        }
    }

    /// No fault of the list: every figure strays as far as it can.
    fn none(&mut self, scene: &Scene, figures: &Features) {
        let mut product = 1.0;
        for i in 0..FEATURES {
            if let (Some(measured), Some(healthy)) = (figures.measured[i], scene.healthy[i]) {
                product *= anything(i, healthy).density(measured.value);
            }
            self.cumulative[NONE][i + 1] = product;
        }
    }

    /// Misleading gauges: any of the other faults, or none, with the pressures that a mix-up would have hidden.
    fn gauge_error(&mut self, scene: &Scene, mixed_up: impl Fn(MixUp) -> Option<Features>) {
        let others: f64 = FAULTS
            .iter()
            .filter(|row| row.fault != Fault::GaugeError)
            .map(|row| self.priors[index(row.fault)])
            .sum();
        let mut sum = [0.0; FEATURES + 1];
        let mut possible = 0.0;
        for (share, mix_up) in self.mix_ups.iter_mut().zip(MixUp::ALL) {
            let Some(figures) = mixed_up(mix_up) else {
                continue;
            };
            possible += 1.0;
            for row in &FAULTS {
                let prior = self.priors[index(row.fault)] / others;
                if prior <= 0.0 || row.fault == Fault::GaugeError {
                    continue;
                }
                let cumulative = likelihoods(scene, &figures, row, |_| ());
                for (sum, likelihood) in sum.iter_mut().zip(cumulative) {
                    *sum += prior * likelihood;
                }
                *share += prior * cumulative[FEATURES];
            }
        }
        let total: f64 = self.mix_ups.iter().sum();
        if total > 0.0 {
            self.cumulative[index(Fault::GaugeError)] = sum.map(|likelihood| likelihood / possible);
            self.mix_ups = self.mix_ups.map(|share| share / total);
        } else {
            // No mix-up is possible: a gauge that errs in another way says no more than an unknown cause.
            self.cumulative[index(Fault::GaugeError)] = self.cumulative[NONE];
        }
    }

    /// Nats of information that the readings and observations brought.
    pub(super) fn information(&self) -> f64 {
        let mut gained = 0.0;
        for (p, prior) in self.probability.iter().zip(self.priors) {
            if *p > 0.0 && prior > 0.0 {
                gained += p * libm::log(p / prior);
            }
        }
        gained
    }

    /// How well a fault explains one figure, at the severities that explain them all: its density there over its
    /// density when the cause is anything.
    pub(super) fn fit(&self, scene: &Scene, figures: &Features, fault: Fault, feature: Feature) -> Option<f64> {
        let i = place(feature);
        let (measured, healthy) = (figures.measured[i]?, scene.healthy[i]?);
        let judged = Judged::of(scene, measured, healthy, &FAULTS[index(fault)], feature);
        let (mut density, mut total) = (0.0, 0.0);
        for pattern in self.patterns.iter().filter(|pattern| pattern.fault == fault) {
            density += pattern.weight * judged.density(scene, pattern.severity, pattern.rest_k);
            total += pattern.weight;
        }
        (total > 0.0).then(|| density / total / anything(i, healthy).density(measured.value))
    }

    pub(super) fn because(&self, fault: Fault, rival: Fault) -> List<Contribution, EVIDENCE> {
        let mut because = List::new(Contribution {
            evidence: Evidence::Prior,
            log_odds: 0.0,
        });
        let (a, b) = (index(fault), index(rival));
        if self.priors[a] <= 0.0 || self.priors[b] <= 0.0 {
            return because;
        }
        because.push(Contribution {
            evidence: Evidence::Prior,
            log_odds: libm::log(self.priors[a] / self.priors[b]),
        });
        for feature in Feature::ALL {
            let i = place(feature);
            if self.measured[i] {
                let step = |of: usize| libm::log(self.cumulative[of][i + 1] / self.cumulative[of][i]);
                because.push(Contribution {
                    evidence: Evidence::Feature(feature),
                    log_odds: step(a) - step(b),
                });
            }
        }
        for sight in &self.sights {
            because.push(Contribution {
                evidence: Evidence::Observation(sight.observation),
                log_odds: libm::log(sight.chance[a] / sight.chance[b]),
            });
        }
        because
    }

    /// Weight of each severity of a fault after the readings; they sum to one unless the fault has none.
    pub(super) fn severities(&self, fault: Fault) -> [f64; SEVERITIES] {
        let mut weights = [0.0; SEVERITIES];
        for pattern in &self.patterns {
            if pattern.fault == fault {
                weights[pattern.severity] += pattern.weight;
            }
        }
        normalised(weights)
    }

    /// Probability that `feature` would read below `x` under each hypothesis, given what was read.
    pub(super) fn below(&self, scene: &Scene, feature: Feature, x: f64, uncertainty: f64) -> [f64; HYPOTHESES] {
        let i = place(feature);
        let mut below = [0.0; HYPOTHESES];
        let Some(healthy) = scene.healthy[i] else {
            return below;
        };
        let sound = about(healthy, uncertainty).below(x);
        for (hypothesis, below) in below.iter_mut().enumerate() {
            if self.probability[hypothesis] < NEGLIGIBLE {
                *below = sound;
            }
        }
        for pattern in &self.patterns {
            let hypothesis = index(pattern.fault);
            let total = self.cumulative[hypothesis][FEATURES];
            if self.probability[hypothesis] < NEGLIGIBLE {
                continue;
            }
            let chance = match scene.effect(&FAULTS[hypothesis], feature) {
                // A pattern that the readings rule out predicts nothing.
                Some(_) if pattern.weight < NEGLIGIBLE * total => sound,
                None => sound,
                Some(effect) => {
                    let moved = scene.moved(effect, (pattern.severity, pattern.rest_k), healthy, uncertainty);
                    mixed(effect, pattern.severity, sound, moved.below(x))
                }
            };
            if total > 0.0 {
                below[hypothesis] += pattern.weight / total * chance;
            }
        }
        below[index(Fault::GaugeError)] = sound;
        below[NONE] = anything(i, healthy).below(x);
        below
    }

    /// The chance of a fault before anything was read.
    pub(super) fn prior(&self, fault: Fault) -> f64 {
        self.priors[index(fault)]
    }

    /// The answers that count, with their chances.
    pub(super) fn sights(&self) -> &Sights {
        &self.sights
    }

    /// What was seen.
    pub(super) fn observations(&self) -> &Observations {
        &self.observations
    }

    /// Whether a figure is known already.
    pub(super) fn knows(&self, feature: Feature) -> bool {
        self.measured[place(feature)]
    }

    /// Whether a question is answered already.
    pub(super) fn answers(&self, observation: Observation) -> bool {
        self.observations.answer(observation).is_some()
    }
}

/// Likelihood of the first k figures under a fault, its severities weighed; `keep` is given each pattern.
fn likelihoods(
    scene: &Scene,
    figures: &Features,
    row: &'static FaultRow,
    mut keep: impl FnMut(Pattern),
) -> [f64; FEATURES + 1] {
    let judged: [Option<Judged>; FEATURES] = core::array::from_fn(|i| {
        let (measured, healthy) = (figures.measured[i]?, scene.healthy[i]?);
        Some(Judged::of(scene, measured, healthy, row, Feature::ALL[i]))
    });
    let mut cumulative = [0.0; FEATURES + 1];
    let moves_to_rest = row.rest_spread_k > 0.0;
    let steps = if moves_to_rest {
        &REST_STEPS[..]
    } else {
        &REST_STEPS[1..2]
    };
    for severity in 0..SEVERITIES {
        for (step, step_weight) in steps {
            let mut product = row.weight[severity] * if moves_to_rest { *step_weight } else { 1.0 };
            if product <= 0.0 {
                continue;
            }
            let rest_k = step * row.rest_spread_k;
            cumulative[0] += product;
            for (i, judged) in judged.iter().enumerate() {
                if let Some(judged) = judged {
                    product *= judged.density(scene, severity, rest_k);
                }
                cumulative[i + 1] += product;
            }
            keep(Pattern {
                fault: row.fault,
                severity,
                rest_k,
                weight: product,
            });
        }
    }
    cumulative
}

/// One measured figure and what moves it.
pub(super) struct Judged {
    pub(super) measured: Estimate,
    pub(super) healthy: Spread,
    sound: f64,
    pub(super) effect: Option<&'static Effect>,
}

impl Judged {
    pub(super) fn of(
        scene: &Scene,
        measured: Estimate,
        healthy: Spread,
        row: &'static FaultRow,
        feature: Feature,
    ) -> Self {
        let sound = about(healthy, measured.standard_uncertainty).density(measured.value);
        Self {
            measured,
            healthy,
            sound,
            effect: scene.effect(row, feature),
        }
    }

    pub(super) fn density(&self, scene: &Scene, severity: usize, rest_k: f64) -> f64 {
        let Some(effect) = self.effect else {
            return self.sound;
        };
        let moved = scene.moved(
            effect,
            (severity, rest_k),
            self.healthy,
            self.measured.standard_uncertainty,
        );
        mixed(effect, severity, self.sound, moved.density(self.measured.value))
    }
}

/// A figure that moved, or did not.
pub(super) fn mixed(effect: &Effect, severity: usize, sound: f64, moved: f64) -> f64 {
    let unmoved = effect.no_change * UNMOVED[severity];
    unmoved * sound + (1.0 - unmoved) * moved
}

/// The priors of the faults that exist in a system, summing to one.
fn priors(settings: &Settings, bit: u8) -> [f64; HYPOTHESES] {
    let mut priors = [0.0; HYPOTHESES];
    for row in &FAULTS {
        if row.exists(bit) {
            priors[index(row.fault)] = settings.prior(row.fault);
        }
    }
    priors[NONE] = settings.none_of_these;
    normalised(priors)
}

/// The weights over their sum; unchanged when all are zero.
fn normalised<const N: usize>(weights: [f64; N]) -> [f64; N] {
    let sum: f64 = weights.iter().sum();
    if sum > 0.0 {
        weights.map(|weight| weight / sum)
    } else {
        weights
    }
}
