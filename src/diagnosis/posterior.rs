//! From features and observations to probabilities.

mod ahead;
mod entry_errors;
mod reasons;
mod severity;

use super::atlas::Pages;
use super::batch::Seen;
use super::case::Case;
use super::fault_table::FAULTS;
use super::faults::{HYPOTHESES, NONE, Priors, index};
use super::features::{self, FEATURES, FIGURE_OF, place};
use super::likelihood::{Grounds, unknown_way};
use super::list::List;
use super::looks::{Looks, Sights, sights};
use super::rest;
use super::scene::Scene;
use super::settings::Settings;
use crate::circuit::{Estimate, FeatureVector, Observations};
use crate::names::{EntryError, Fault, Feature, Observation};

/// Faults that are less likely than this are left out of predictions.
pub(super) const NEGLIGIBLE: f64 = 1e-3;

/// A number for each fault, and last one for none of the list.
pub(crate) type OfEach = [f64; HYPOTHESES];

/// The evidence of one visit by itself.
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
    pages: Pages,
    weighed: Weighed,
    observations: Observations,
    sights: Sights,
    /// Probability of each hypothesis; they sum to one.
    pub(super) probability: [f64; HYPOTHESES],
    /// Probability that the cause is on no list, or shows itself in a way that the atlas does not know.
    pub(super) unexplained: f64,
    /// Probability of all that was read and seen.
    pub(super) evidence: f64,
}

/// All that the readings say.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Weighed {
    /// The features as noted; at rest the pressure.
    features: Option<FeatureVector>,
    rest: Option<Estimate>,
    off_scale: bool,
    known: [bool; FEATURES],
    /// The figures that were read, in the order in which they are weighed.
    figures: List<Feature, { FeatureVector::COUNT }>,
    /// Likelihood under each hypothesis of no figure, of the first one, of the first two, and so on.
    likelihood: [[f64; HYPOTHESES]; FeatureVector::COUNT + 1],
    /// The severities that explain the readings: the middle 80 %.
    severity: [(f64, f64); Fault::ALL.len()],
    /// Share of each entry error within the gauge error.
    entry_errors: [f64; EntryError::ALL.len()],
}

impl Weighed {
    /// Nothing was read.
    const NOTHING: Self = Self {
        features: None,
        rest: None,
        off_scale: false,
        known: [false; FEATURES],
        figures: List::new(Feature::LowSide),
        likelihood: [[1.0; HYPOTHESES]; FeatureVector::COUNT + 1],
        severity: [(0.0, 1.0); Fault::ALL.len()],
        entry_errors: [0.0; EntryError::ALL.len()],
    };

    /// The features of a running system.
    #[inline(never)]
    fn running(case: &Case, grounds: &Grounds<'_>, features: &FeatureVector, priors: &Priors) -> Self {
        let mut weighed = Self::as_read(grounds, features, priors);
        if priors[index(Fault::GaugeError)] > 0.0 {
            let count = weighed.figures.len();
            let misled = weighed.misled(case, grounds);
            for (likelihood, misled) in weighed.likelihood[1..=count].iter_mut().zip(&misled[1..]) {
                likelihood[index(Fault::GaugeError)] = *misled;
            }
            weighed.share(misled[count]);
        }
        weighed
    }

    /// The same with instruments that do not mislead.
    #[inline(never)] // so that the entry errors are weighed on less stack
    fn as_read(grounds: &Grounds<'_>, features: &FeatureVector, priors: &Priors) -> Self {
        let seen = Seen::of(features);
        let count = seen.read.count();
        let mut severities = severity::Tally::NONE;
        let mut densities = [[0.0; HYPOTHESES]; FeatureVector::COUNT + 1];
        let wanted = |h: usize| priors[h] > 0.0 || h == NONE;
        grounds.each_batch(&seen, &wanted, &mut |batch| {
            batch.add_steps(&mut densities, |terms, of_terms| {
                for (at, hypothesis, row) in batch.each(terms) {
                    severities.add(hypothesis, &row.severity, of_terms[at]);
                }
            });
        });
        let mut weighed = Self {
            features: Some(*features),
            off_scale: features.off_scale,
            severity: severities.middle_80(),
            ..Self::NOTHING
        };
        weighed.know(features);
        if count == 0 {
            weighed.likelihood[0] = mixed(&densities[0]);
        }
        for (at, i) in seen.read.places().iter().enumerate() {
            weighed.figures.push(FIGURE_OF[*i]);
            weighed.likelihood[at + 1] = mixed(&densities[at + 1]);
        }
        weighed
    }

    /// The pressure of a system at rest. Sides that differ speak for misleading gauges, though no pressure at rest is known.
    fn resting(case: &Case, priors: &Priors) -> Self {
        let mut weighed = Self::NOTHING;
        if let Some((measured, off_scale, _)) = features::resting(case, None) {
            weighed.off_scale = off_scale;
            weighed.rest = Some(measured);
            weighed.known[place(Feature::RestPressure)] = true;
            weighed.likelihood[1] = rest::densities(measured);
        }
        let misled = weighed.misled_at_rest(case, priors);
        weighed.figures.push(Feature::RestPressure);
        weighed.share(misled);
        if weighed.rest.is_none() && *weighed.of_all() == [1.0; HYPOTHESES] {
            weighed.figures.clear();
        }
        weighed
    }

    /// The likelihood of all that was read, under each hypothesis.
    fn of_all(&self) -> &[f64; HYPOTHESES] {
        &self.likelihood[self.figures.len()]
    }

    /// Marks the figures of these features as known.
    fn know(&mut self, features: &FeatureVector) {
        for (reading, figure) in features.read.iter().zip(FIGURE_OF) {
            self.known[place(figure)] |= reading.is_some();
        }
    }
}

impl Posterior {
    /// The posterior of a case: of a running system by its features, of one at rest by its pressure, where nothing was read by
    /// the observations alone.
    #[inline(never)]
    pub(super) fn of(
        case: &Case,
        (settings, priors): (&Settings, &Priors),
        scene: &Scene,
        (read, at_rest): (Option<FeatureVector>, bool),
    ) -> Self {
        let (priors, pages) = (possible(priors, scene.bit), Pages::of(&case.system));
        let weighed = match (&scene.sound, read) {
            (Some(sound), Some(read)) => Weighed::running(case, &Grounds { sound, pages }, &read, &priors),
            (None, _) if at_rest => Weighed::resting(case, &priors),
            (Some(_) | None, _) => Weighed::NOTHING,
        };
        Self::concluded((priors, pages), weighed, &settings.looks, &case.observations)
    }

    /// The posterior once the readings are weighed.
    #[inline(never)] // so that it is weighed on less stack
    fn concluded(
        (priors, pages): (Priors, Pages),
        weighed: Weighed,
        looks: &Looks,
        observations: &Observations,
    ) -> Self {
        let sights = sights(observations);
        // Prior times likelihood times the chances of what was seen.
        let mut probability = priors;
        for (p, likelihood) in probability.iter_mut().zip(weighed.of_all()) {
            *p *= likelihood;
        }
        for sight in &sights {
            for (h, p) in probability.iter_mut().enumerate() {
                *p *= sight.chance(looks, h);
            }
        }
        let evidence = probability.iter().sum();
        let mut posterior = Self {
            priors,
            pages,
            weighed,
            observations: *observations,
            sights,
            probability: normalised(probability),
            unexplained: 0.0,
            evidence,
        };
        posterior.unexplained = posterior.in_an_unknown_way();
        posterior
    }

    /// The evidence of this visit by itself.
    pub(super) fn alone(&self, looks: &Looks) -> Alone {
        let chances = |h: usize| self.sights.iter().map(move |sight| sight.chance(looks, h));
        Alone {
            prior: self.priors,
            seen: core::array::from_fn(|h| chances(h).product()),
            likelihood: *self.weighed.of_all(),
            features: self.weighed.features,
        }
    }

    /// The probability that no term of the atlas accounts for.
    fn in_an_unknown_way(&self) -> f64 {
        let mut unexplained = self.probability[NONE];
        if self.weighed.features.is_some() {
            let of_all = self.weighed.of_all();
            for fault in Fault::ALL.into_iter().filter(|fault| *fault != Fault::GaugeError) {
                let (p, likelihood) = (self.probability[index(fault)], of_all[index(fault)]);
                if likelihood > 0.0 {
                    unexplained += p * unknown_way(fault) * of_all[NONE] / likelihood;
                }
            }
        }
        unexplained
    }

    /// Information in the readings and observations, nats: the divergence of the posterior from the prior.
    pub(super) fn information(&self) -> f64 {
        let mut gained = 0.0;
        for (p, prior) in self.probability.iter().zip(self.priors) {
            if *p > 0.0 && prior > 0.0 {
                gained += p * libm::log(p / prior);
            }
        }
        gained
    }

    /// How well a fault explains each figure: its density given the other readings, over its density under an unlisted cause;
    /// `None` for one that was not read.
    pub(super) fn fits(&self, scene: &Scene, fault: Fault) -> [Option<f64>; FEATURES] {
        let (Some(sound), Some(features)) = (scene.sound.as_ref(), self.features()) else {
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
                let given = self.weighed.of_all()[index(fault)] / ((1.0 - share) * others + share * any);
                (alone > 0.0).then(|| given / alone)
            })
    }

    /// The chance of a fault before anything was read.
    pub(super) fn prior(&self, fault: Fault) -> f64 {
        self.priors[index(fault)]
    }

    /// The chances of the answers that count, under each of these faults.
    pub(super) fn sights<const N: usize>(&self, looks: &Looks, faults: [Fault; N]) -> impl Iterator<Item = [f64; N]> {
        let each = self.sights.iter();
        each.map(move |sight| faults.map(|fault| sight.chance(looks, index(fault))))
    }

    /// What was seen.
    pub(super) fn observations(&self) -> &Observations {
        &self.observations
    }

    /// The features as noted.
    pub(super) fn features(&self) -> Option<&FeatureVector> {
        self.weighed.features.as_ref()
    }

    /// Whether a pressure is one that no sound gauge shows of this refrigerant.
    pub(super) fn off_scale(&self) -> bool {
        self.weighed.off_scale
    }

    /// Share of each entry error within the gauge error.
    pub(super) fn entry_errors(&self) -> &[f64; EntryError::ALL.len()] {
        &self.weighed.entry_errors
    }

    /// The pressure at rest as a temperature above the ambient, K.
    pub(super) fn rest(&self) -> Option<Estimate> {
        self.weighed.rest
    }

    /// The part of the atlas that applies to the system.
    pub(super) fn pages(&self) -> Pages {
        self.pages
    }

    /// The severities that explain the readings: the middle 80 %.
    pub(super) fn severity(&self, fault: Fault) -> (f64, f64) {
        self.weighed.severity[index(fault)]
    }

    /// Whether a figure is known already.
    pub(super) fn knows(&self, feature: Feature) -> bool {
        self.weighed.known[place(feature)]
    }

    /// Whether a question is answered already.
    pub(super) fn answers(&self, observation: Observation) -> bool {
        self.observations.answer(observation).is_some()
    }
}

/// The likelihoods with the share of each fault for an unknown way.
fn mixed(densities: &[f64; HYPOTHESES]) -> [f64; HYPOTHESES] {
    let any = densities[NONE];
    let mut mixed = *densities;
    for (density, fault) in mixed.iter_mut().zip(Fault::ALL) {
        let share = unknown_way(fault);
        *density = (1.0 - share) * *density + share * any;
    }
    mixed
}

/// The priors of the faults that exist in a system, summing to one.
fn possible(priors: &Priors, bit: u8) -> Priors {
    let mut possible = *priors;
    for row in FAULTS.iter().filter(|row| !row.exists(bit)) {
        possible[index(row.fault)] = 0.0;
    }
    normalised(possible)
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
