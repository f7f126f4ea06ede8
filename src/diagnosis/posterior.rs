//! From features and observations to probabilities.

mod ahead;
mod mix_ups;
mod reasons;
mod severity;

use super::atlas::Pages;
use super::batch::Seen;
use super::case::Case;
use super::fault_table::FAULTS;
use super::faults::{HYPOTHESES, NONE, index};
use super::features::{self, FEATURES, FIGURE_OF, place};
use super::likelihood::{Grounds, unknown_way};
use super::list::List;
use super::looks::{NO_SIGHTS, Observations, Sights, add_sights};
use super::rest;
use super::rows::FaultRow;
use super::scene::Scene;
use super::settings::Settings;
use crate::circuit::{Estimate, FeatureVector};
use crate::names::{Fault, Feature, MixUp, Observation};
pub(super) use ahead::Foreseen;
pub(super) use reasons::Steps;

/// What is less likely than this changes no prediction.
pub(super) const NEGLIGIBLE: f64 = 1e-3;

/// A number for each fault, and behind them one for none of the list.
pub(crate) type OfEach = [f64; HYPOTHESES];

/// What one visit says by itself.
pub(super) struct Alone {
    pub(super) prior: OfEach,
    pub(super) seen: OfEach,
    pub(super) likelihood: OfEach,
    pub(super) features: Option<FeatureVector>,
}

/// All that the readings and observations say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Posterior {
    /// Prior of each hypothesis; they sum to one.
    priors: [f64; HYPOTHESES],
    /// Likelihood of the readings under each hypothesis.
    likelihood: [f64; HYPOTHESES],
    /// The features as they stand; at rest the pressure.
    features: Option<FeatureVector>,
    rest: Option<Estimate>,
    pages: Pages,
    /// The features as each entry error that can have happened would have hidden them, with its chance.
    meant: List<(MixUp, f64, FeatureVector), { MixUp::ALL.len() }>,
    pub(super) off_scale: bool,
    known: [bool; FEATURES],
    observations: Observations,
    sights: Sights,
    /// Probability of each hypothesis; they sum to one.
    pub(super) probability: [f64; HYPOTHESES],
    /// The severities that explain the readings: the middle 80 %.
    severity: [(f64, f64); Fault::ALL.len()],
    /// Probability that the cause is on no list, or shows itself in a way that the atlas does not know.
    pub(super) unexplained: f64,
    /// Probability of all that was read and seen.
    pub(super) evidence: f64,
    /// Share of each entry error within the gauge error.
    pub(super) mix_ups: [f64; MixUp::ALL.len()],
}

impl Posterior {
    /// What is believed of a case once everything was weighed: of a running system with its features, of one at rest by its
    /// pressure, of one of which `scene` knows nothing by what was seen alone.
    #[inline(never)]
    pub(super) fn of(
        case: &Case,
        settings: &Settings,
        scene: &Scene,
        (read, at_rest): (Option<FeatureVector>, bool),
    ) -> Self {
        let mut posterior = Self {
            priors: priors(settings, scene.bit),
            likelihood: [1.0; HYPOTHESES],
            features: None,
            rest: None,
            pages: Pages::of(&case.system),
            meant: List::new((MixUp::SwappedHoses, 0.0, NOTHING)),
            off_scale: false,
            known: [false; FEATURES],
            observations: case.observations,
            sights: NO_SIGHTS,
            probability: [0.0; HYPOTHESES],
            severity: [(0.0, 1.0); Fault::ALL.len()],
            unexplained: 0.0,
            evidence: 0.0,
            mix_ups: [0.0; MixUp::ALL.len()],
        };
        add_sights(&mut posterior.sights, &settings.looks, &case.observations);
        match (&scene.sound, read) {
            (Some(sound), Some(read)) => {
                let grounds = Grounds {
                    sound,
                    pages: posterior.pages,
                };
                posterior.weigh_running(case, &grounds, read);
            }
            (None, _) if at_rest => posterior.weigh_resting(case),
            (Some(_) | None, _) => {}
        }
        posterior.conclude();
        posterior
    }

    /// Prior times likelihood times the chances of what was seen.
    fn conclude(&mut self) {
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
        self.unexplained = self.in_an_unknown_way();
    }

    #[inline(never)]
    fn weigh_running(&mut self, case: &Case, grounds: &Grounds<'_>, features: FeatureVector) {
        self.off_scale = features.off_scale;
        for (reading, figure) in features.read.iter().zip(FIGURE_OF) {
            self.known[place(figure)] |= reading.is_some();
        }
        let seen = Seen::of(&features);
        let mut severities = severity::Tally::NONE;
        let mut densities = [0.0; HYPOTHESES];
        let wanted = |h: usize| self.priors[h] > 0.0 || h == NONE;
        grounds.each_batch(&seen, wanted, |batch| {
            let tops = batch.tops(seen.read.count());
            for terms in batch.terms() {
                let of_terms = batch.densities(&terms, &tops);
                for (at, hypothesis, row) in batch.each(&terms) {
                    densities[hypothesis] += of_terms[at];
                    severities.add(hypothesis, &row.severity, of_terms[at]);
                }
            }
        });
        self.likelihood = mixed(densities);
        self.severity = severities.middle_80();
        self.features = Some(features);
        self.gauge_error(case, grounds);
    }

    fn weigh_resting(&mut self, case: &Case) {
        let Some((measured, off_scale, _)) = features::resting(case, None) else {
            self.gauge_error_at_rest(case);
            return;
        };
        self.off_scale = off_scale;
        self.rest = Some(measured);
        self.known[place(Feature::RestPressure)] = true;
        self.likelihood = rest::densities(measured);
        self.gauge_error_at_rest(case);
    }

    /// What this visit says by itself.
    pub(super) fn alone(&self) -> Alone {
        let mut seen = [1.0; HYPOTHESES];
        for sight in &self.sights {
            for (seen, chance) in seen.iter_mut().zip(sight.chance) {
                *seen *= chance;
            }
        }
        Alone {
            prior: self.priors,
            seen,
            likelihood: self.likelihood,
            features: self.features,
        }
    }

    /// The part of the belief that no term of the atlas carries.
    fn in_an_unknown_way(&self) -> f64 {
        let mut unexplained = self.probability[NONE];
        if self.features.is_some() {
            for fault in Fault::ALL.into_iter().filter(|fault| *fault != Fault::GaugeError) {
                let (p, likelihood) = (self.probability[index(fault)], self.likelihood[index(fault)]);
                if likelihood > 0.0 {
                    unexplained += p * unknown_way(fault) * self.likelihood[NONE] / likelihood;
                }
            }
        }
        unexplained
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

    /// How well a fault explains each figure: its density given the other readings, over its density when the cause is anything;
    /// `None` for one that was not read.
    pub(super) fn fits(&self, scene: &Scene, fault: Fault) -> [Option<f64>; FEATURES] {
        let (Some(sound), Some(features)) = (scene.sound.as_ref(), self.features.as_ref()) else {
            return [None; FEATURES];
        };
        if matches!(fault, Fault::GaugeError) {
            return [None; FEATURES];
        }
        let grounds = Grounds {
            sound,
            pages: self.pages,
        };
        let share = unknown_way(fault);
        grounds
            .without_each(&Seen::of(features), index(fault))
            .map(|([others, any], alone)| {
                let given = self.likelihood[index(fault)] / ((1.0 - share) * others + share * any);
                (alone > 0.0).then(|| given / alone)
            })
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

    /// The features as they stand.
    pub(super) fn features(&self) -> Option<&FeatureVector> {
        self.features.as_ref()
    }

    /// The pressure at rest as a temperature above the ambient, K.
    pub(super) fn rest(&self) -> Option<Estimate> {
        self.rest
    }

    /// The part of the atlas that speaks of the system.
    pub(super) fn pages(&self) -> Pages {
        self.pages
    }

    /// The severities that explain the readings: the middle 80 %.
    pub(super) fn severity(&self, fault: Fault) -> (f64, f64) {
        self.severity[index(fault)]
    }

    /// Whether a figure is known already.
    pub(super) fn knows(&self, feature: Feature) -> bool {
        self.known[place(feature)]
    }

    /// Whether a question is answered already.
    pub(super) fn answers(&self, observation: Observation) -> bool {
        self.observations.answer(observation).is_some()
    }
}

/// Nothing was read.
const NOTHING: FeatureVector = FeatureVector {
    read: [None; FeatureVector::COUNT],
    off_scale: false,
};

/// The likelihoods once every fault may show itself in an unknown way.
pub(super) fn mixed(densities: [f64; HYPOTHESES]) -> [f64; HYPOTHESES] {
    let any = densities[NONE];
    let mut mixed = densities;
    for (density, fault) in mixed.iter_mut().zip(Fault::ALL) {
        let share = unknown_way(fault);
        *density = (1.0 - share) * *density + share * any;
    }
    mixed
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
