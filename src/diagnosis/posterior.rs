//! From figures and observations to probabilities.

mod ahead;
mod mix_ups;
mod reasons;
mod severity;

use super::case::{Case, Observations, Settings};
use super::chart::{Chart, Judged, PATTERNS, Pattern, none};
use super::cloud::{InCloud, UNKNOWN, Weights};
use super::coordinates::running_place;
use super::fault_table::FAULTS;
use super::faults::{FaultRow, index};
use super::features::{FEATURES, Features, NOTHING, place};
use super::list::List;
use super::looks::{Sights, sights};
use super::prediction::Prediction;
use super::scene::{Scene, anything};
use crate::names::{Fault, Feature, MixUp, Observation};
use mix_ups::Doubted;
pub(super) use reasons::Steps;

/// The faults, and none of them.
pub(super) const HYPOTHESES: usize = Fault::ALL.len() + 1;
/// The place of "none of these".
pub(super) const NONE: usize = Fault::ALL.len();

/// What is less likely than this changes no prediction.
pub(super) const NEGLIGIBLE: f64 = 1e-3;

/// The most parts that predict something.
const MOST_PREDICTIONS: usize = 160;

/// A part of a cloud with a smaller share of its fault's likelihood predicts nothing.
const LEAST_SHARE: f64 = 0.01;

/// A severity under a mix-up that makes the two pressures this much less likely than an unknown cause does is followed no
/// further: whatever else was read, it comes out far below the unknown cause.
const HOPELESS: f64 = 1e-4;

/// How much the clouds of the vehicle model count in a likelihood; the rest is the tables of the trade. The model knows
/// how the figures hang together, the tables reach to where no simulated vehicle stands.
const TRUST: f64 = 0.5;

/// All that the readings and observations say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Posterior {
    /// Prior of each hypothesis; they sum to one.
    priors: [f64; HYPOTHESES],
    /// Likelihood of the figures under each hypothesis.
    likelihood: [f64; HYPOTHESES],
    /// The figures at face value, and as each mix-up that can have happened would have hidden them.
    figures: Features,
    mixed_up: List<(MixUp, Features), { MixUp::ALL.len() }>,
    measured: [bool; FEATURES],
    observations: Observations,
    sights: Sights,
    /// Probability of each hypothesis; they sum to one.
    pub(super) probability: [f64; HYPOTHESES],
    pub(super) patterns: List<Pattern, PATTERNS>,
    /// Share of the clouds in the likelihood of each hypothesis.
    by_cloud: [f64; HYPOTHESES],
    predictions: List<Prediction, MOST_PREDICTIONS>,
    /// Probability of all that was read and seen.
    pub(super) evidence: f64,
    /// Share of each mix-up within the gauge error.
    pub(super) mix_ups: [f64; MixUp::ALL.len()],
}

impl Posterior {
    /// What is believed of a case before its figures, those at face value, are weighed.
    pub(super) fn before(case: &Case, settings: &Settings, scene: &Scene, figures: &Features) -> Self {
        Self {
            priors: priors(settings, scene.bit),
            likelihood: [1.0; HYPOTHESES],
            figures: *figures,
            mixed_up: List::new((MixUp::SwappedHoses, NOTHING)),
            measured: core::array::from_fn(|i| figures.measured[i].is_some() && scene.healthy[i].is_some()),
            observations: case.observations,
            sights: sights(&settings.looks, &case.observations),
            probability: [0.0; HYPOTHESES],
            patterns: List::new(Pattern::BLANK),
            by_cloud: [0.0; HYPOTHESES],
            predictions: List::new(Prediction::BLANK),
            evidence: 0.0,
            mix_ups: [0.0; MixUp::ALL.len()],
        }
    }

    /// Weighs the figures; `mixed_up` gives those that a mix-up would have hidden, where it can have happened.
    pub(super) fn weigh(&mut self, scene: &Scene, mixed_up: &dyn Fn(MixUp) -> Option<Features>) {
        let figures = self.figures;
        let none = none(scene, &figures);
        self.likelihood[NONE] = none[FEATURES];
        let mut in_cloud = scene.cloud.as_ref().map(|cloud| cloud.unweighed(&figures));
        if let Some(in_cloud) = &mut in_cloud {
            in_cloud.weigh();
        }
        let weights = in_cloud.as_ref().map(InCloud::weights);
        let mut chart = Chart::beside(scene, &figures);
        chart.take(self.others().map(|(row, _)| row));
        self.face_value(scene, &mut chart, in_cloud.as_mut());
        let mut doubted = Doubted {
            scene,
            mixed_up,
            in_cloud: in_cloud.as_mut(),
            chart: &mut chart,
            least: least(&none),
        };
        self.gauge_error(&mut doubted, |mix_up| !mix_ups::strays(mix_up));
        if self.unexplained() {
            self.gauge_error(&mut doubted, mix_ups::strays);
        }
        self.share_gauge_error();
        let mut probability = self.priors;
        for (p, likelihood) in probability.iter_mut().zip(self.likelihood) {
            *p *= likelihood;
        }
        for sight in &self.sights {
            for (p, chance) in probability.iter_mut().zip(sight.chance) {
                *p *= chance;
            }
        }
        self.evidence = probability.iter().sum();
        self.probability = normalised(probability);
        if let (Some(in_cloud), Some(weights)) = (&in_cloud, &weights) {
            self.predict(in_cloud, weights);
        }
    }

    /// The faults with the readings as they stand.
    fn face_value(&mut self, scene: &Scene, chart: &mut Chart<'_>, in_cloud: Option<&mut InCloud<'_>>) {
        let by_cloud = in_cloud.map_or(UNKNOWN, |in_cloud| in_cloud.likelihoods(&self.figures));
        let by_chart = chart.likelihoods(&self.figures, 0.0);
        for (row, _) in self.others() {
            let hypothesis = index(row.fault);
            let share = trust(scene, row.fault);
            let of_cloud = share * by_cloud[hypothesis];
            let total = of_cloud + (1.0 - share) * by_chart[hypothesis];
            self.likelihood[hypothesis] = total;
            self.by_cloud[hypothesis] = if total > 0.0 { of_cloud / total } else { 0.0 };
        }
        self.patterns = chart.patterns;
    }

    /// What each part of the clouds that counts says of every figure.
    fn predict(&mut self, in_cloud: &InCloud<'_>, weights: &Weights) {
        let (probability, predictions) = (&self.probability, &mut self.predictions);
        let wanted = |fault: Fault, share: f64| probability[index(fault)] >= NEGLIGIBLE && share >= LEAST_SHARE;
        in_cloud.predictions(weights, wanted, |prediction| predictions.push(prediction));
    }

    /// The faults beside misleading gauges, and how common each is among them.
    fn others(&self) -> impl Iterator<Item = (&'static FaultRow, f64)> + use<> {
        let priors = self.priors;
        let real = || FAULTS.iter().filter(|row| row.fault != Fault::GaugeError);
        let all: f64 = real().map(|row| priors[index(row.fault)]).sum();
        real()
            .map(move |row| (row, priors[index(row.fault)] / all))
            .filter(|(_, prior)| *prior > 0.0)
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
        let share = self.by_cloud[index(fault)];
        if total <= 0.0 && share < 1.0 {
            return None;
        }
        let by_chart = if total > 0.0 { density / total } else { 0.0 };
        let mut by_cloud = 0.0;
        if let Some(at) = running_place(feature) {
            for prediction in self.predictions.iter().filter(|prediction| prediction.fault == fault) {
                by_cloud += f64::from(prediction.share) * prediction.density(at, measured, scene.origin_k(feature));
            }
        }
        let density = share * by_cloud + (1.0 - share) * by_chart;
        Some(density / anything(i, healthy).density(measured.value))
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

/// How much the clouds count under a fault: nothing where it has none, and all where no tables speak of the system.
fn trust(scene: &Scene, fault: Fault) -> f64 {
    let has = scene.cloud.as_ref().is_some_and(|cloud| cloud.has(fault));
    match (has, scene.by_tables) {
        (true, true) => TRUST,
        (true, false) => 1.0,
        (false, _) => 0.0,
    }
}

/// The least likelihood of two pressures that is worth following, where `none` is that of an unknown cause.
fn least(none: &[f64; FEATURES + 1]) -> f64 {
    HOPELESS * none[place(Feature::HighSide) + 1]
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
