//! What each piece of evidence says of every hypothesis.

use super::{HYPOTHESES, NONE, Posterior, least, mix_ups, trust};
use crate::diagnosis::answer::{Contribution, EVIDENCE, Evidence};
use crate::diagnosis::chart::{Chart, none};
use crate::diagnosis::cloud::Cloud;
use crate::diagnosis::faults::index;
use crate::diagnosis::features::{FEATURES, Features, place};
use crate::diagnosis::list::List;
use crate::diagnosis::scene::Scene;
use crate::names::{Fault, Feature};

/// Likelihood of the first k figures under every hypothesis.
pub(in crate::diagnosis) type Steps = [[f64; FEATURES + 1]; HYPOTHESES];

impl Posterior {
    /// Likelihood of the first k figures under every hypothesis. This costs about as much as weighing the figures did.
    pub(in crate::diagnosis) fn steps(&self, scene: &Scene) -> Steps {
        let none = none(scene, &self.figures);
        let mut steps = [none; HYPOTHESES];
        let mut chart = Chart::beside(scene, &self.figures);
        chart.take(self.others().map(|(row, _)| row));
        self.steps_of_faults(scene, &mut chart, &self.figures, 0.0, &mut steps);
        steps[NONE] = none;
        steps[index(Fault::GaugeError)] = self.steps_of_gauge_error(scene, &mut chart, &none);
        steps
    }

    /// The same under the faults beside misleading gauges; a pattern under which the pressures are less likely than `least`
    /// is followed no further.
    fn steps_of_faults(&self, scene: &Scene, chart: &mut Chart<'_>, figures: &Features, least: f64, steps: &mut Steps) {
        let by_chart = chart.steps(figures, least);
        let by_cloud = scene.cloud.as_ref().map(|cloud| Cloud::steps(cloud, figures));
        for (row, _) in self.others() {
            let (fault, share) = (index(row.fault), trust(scene, row.fault));
            steps[fault] = by_chart[fault];
            if let Some(by_cloud) = by_cloud.as_ref().filter(|_| share > 0.0) {
                for (step, by_cloud) in steps[fault].iter_mut().zip(by_cloud[fault]) {
                    *step = share * by_cloud + (1.0 - share) * *step;
                }
            }
        }
    }

    /// The same under misleading gauges: the mean over the mix-ups that can have happened, beside every other fault.
    fn steps_of_gauge_error(
        &self,
        scene: &Scene,
        chart: &mut Chart<'_>,
        none: &[f64; FEATURES + 1],
    ) -> [f64; FEATURES + 1] {
        if self.mix_ups.iter().all(|share| *share <= 0.0) {
            return *none;
        }
        let mut sum = [0.0; FEATURES + 1];
        for (mix_up, figures) in &self.mixed_up {
            let mut steps = [*none; HYPOTHESES];
            self.steps_of_faults(scene, chart, figures, least(none), &mut steps);
            for (row, prior) in self.others() {
                let weight = mix_ups::chance(*mix_up) * figures.beside * prior;
                for (sum, step) in sum.iter_mut().zip(steps[index(row.fault)]) {
                    *sum += weight * step;
                }
            }
        }
        // The first figure bears what the other mix-ups, which cannot have happened, take away.
        let first = self.measured.iter().position(|known| *known).unwrap_or(0);
        sum[..=first].fill(1.0);
        sum
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
        for feature in Feature::ALL {
            let i = place(feature);
            if self.measured[i] {
                let step = |steps: &[f64; FEATURES + 1]| libm::log(steps[i + 1] / steps[i]);
                because.push(Contribution {
                    evidence: Evidence::Feature(feature),
                    log_odds: step(&steps[a]) - step(&steps[b]),
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
}
