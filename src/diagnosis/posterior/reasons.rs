//! What each piece of evidence says of every hypothesis.

use super::Posterior;
use crate::diagnosis::answer::{Contribution, EVIDENCE, Evidence};
use crate::diagnosis::faults::index;
use crate::diagnosis::list::List;
use crate::diagnosis::looks::Looks;
use crate::names::Fault;

impl Posterior {
    /// What argues for `fault` and against `rival`: contributions that add up to the logarithm of their odds.
    pub(in crate::diagnosis) fn because(
        &self,
        looks: &Looks,
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
        for (figure, steps) in self.weighed.figures.iter().zip(self.weighed.likelihood.windows(2)) {
            let step = |h: usize| libm::log(steps[1][h] / steps[0][h]);
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
        for (sight, [a, b]) in self.sights.iter().zip(self.sights(looks, [fault, rival])) {
            because.push(Contribution {
                evidence: Evidence::Observation(sight.observation),
                log_odds: libm::log(a / b),
            });
        }
        because
    }
}
