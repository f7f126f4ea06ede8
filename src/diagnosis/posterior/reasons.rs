//! What each piece of evidence says of every hypothesis.

use super::{Posterior, mix_ups, mixed};
use crate::circuit::FeatureVector;
use crate::diagnosis::answer::{Contribution, EVIDENCE, Evidence};
use crate::diagnosis::batch::Seen;
use crate::diagnosis::faults::{HYPOTHESES, NONE, index};
use crate::diagnosis::features::FIGURE_OF;
use crate::diagnosis::likelihood::Grounds;
use crate::diagnosis::list::List;
use crate::diagnosis::scene::Scene;
use crate::names::{Fault, Feature, MixUp};

/// Likelihood of the first k features that were read, under every hypothesis.
pub(in crate::diagnosis) struct Steps {
    /// The figure of each step.
    figures: List<Feature, { FeatureVector::COUNT }>,
    likelihood: [[f64; HYPOTHESES]; FeatureVector::COUNT + 1],
}

impl Posterior {
    /// Likelihood of the first k features under every hypothesis. This costs about as much as weighing them did.
    #[inline(never)]
    pub(in crate::diagnosis) fn steps(&self, scene: &Scene) -> Steps {
        let mut steps = Steps {
            figures: List::new(Feature::LowSide),
            likelihood: [[1.0; HYPOTHESES]; FeatureVector::COUNT + 1],
        };
        // Sides that differ at rest speak for misleading gauges, though no pressure at rest is known.
        if self.rest.is_some() || (scene.sound.is_none() && self.likelihood != [1.0; HYPOTHESES]) {
            steps.figures.push(Feature::RestPressure);
            steps.likelihood[1] = self.likelihood;
        }
        let (Some(sound), Some(features)) = (&scene.sound, &self.features) else {
            return steps;
        };
        let grounds = Grounds {
            sound,
            pages: self.pages,
        };
        let seen = Seen::of(features);
        for i in seen.read.places() {
            steps.figures.push(FIGURE_OF[*i]);
        }
        let mut densities = [[0.0; HYPOTHESES]; FeatureVector::COUNT + 1];
        let wanted = |h: usize| self.priors[h] > 0.0 || h == NONE;
        grounds.each_batch(&seen, wanted, |batch| batch.add_steps(&mut densities));
        for (likelihood, densities) in steps.likelihood.iter_mut().zip(densities).skip(1) {
            *likelihood = mixed(densities);
        }
        self.steps_of_gauge_error(&grounds, &mut steps);
        steps
    }

    /// The same under misleading gauges: the sum over the entry errors that can have happened.
    fn steps_of_gauge_error(&self, grounds: &Grounds<'_>, steps: &mut Steps) {
        let gauge_error = index(Fault::GaugeError);
        let count = steps.figures.len();
        let mut densities = [[0.0; 2 * MixUp::ALL.len()]; FeatureVector::COUNT + 1];
        grounds.of_unmoved(&self.seen_as_meant(), |batch| batch.add_steps(&mut densities));
        let sums = densities.map(|densities| {
            let each = self.meant.iter().zip(densities.chunks_exact(2));
            each.map(|((_, chance, _), densities)| chance * mix_ups::behind(densities[0], densities[1]))
                .sum::<f64>()
        });
        for (step, sum) in steps.likelihood.iter_mut().zip(sums).skip(1).take(count) {
            step[gauge_error] = sum;
        }
        if let Some(last) = steps.likelihood.get_mut(count) {
            last[gauge_error] = self.likelihood[gauge_error];
        }
    }

    /// What argues for `fault` and against `rival`, by the likelihoods of [`Self::steps`].
    pub(in crate::diagnosis) fn because(
        &self,
        steps: &Steps,
        fault: Fault,
        rival: Fault,
    ) -> List<Contribution, EVIDENCE> {
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
        for (at, figure) in steps.figures.iter().enumerate() {
            let step = |h: usize| libm::log(steps.likelihood[at + 1][h] / steps.likelihood[at][h]);
            let log_odds = step(a) - step(b);
            // Two lines may be read for one figure.
            let known = because
                .items_mut()
                .iter_mut()
                .find(|contribution| contribution.evidence == Evidence::Feature(*figure));
            match known {
                Some(contribution) => contribution.log_odds += log_odds,
                None => because.push(Contribution {
                    evidence: Evidence::Feature(*figure),
                    log_odds,
                }),
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
}
