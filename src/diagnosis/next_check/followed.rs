//! The hypotheses that a plan follows: those that are likely enough to be worth the work.

use super::super::faults::index;
use super::super::faults::{HYPOTHESES, NONE};
use super::super::posterior::NEGLIGIBLE;
use super::super::prices::Prices;
use super::cost::{Belief, Job, Jobs, REPAIRS};
use crate::names::Fault;
use crate::numerics::put_in_order;

/// The hypotheses that are followed, in the order of [`Jobs`].
pub(super) struct Followed {
    of: [usize; HYPOTHESES],
    count: usize,
}

impl Followed {
    /// The faults that are followed in the order of probability over cost, then none of these; and what their repairs cost. A
    /// [`NEGLIGIBLE`] fault is not followed, as predictions treat it like a sound system too: it counts as something that no repair
    /// sets right.
    pub(super) fn of(probability: &Belief, prices: &Prices, recovers: &dyn Fn(Fault) -> bool) -> (Self, Jobs) {
        let verify = prices.in_minutes(prices.verify());
        let blank = Job {
            fault: Fault::NoFault,
            minutes: 0.0,
            per_minute: 0.0,
            recovery: false,
        };
        let (mut jobs, mut count) = ([blank; REPAIRS], 0);
        for fault in Fault::ALL {
            if probability[index(fault)] >= NEGLIGIBLE {
                let minutes = prices.in_minutes(prices.repair(fault)) + verify;
                jobs[count] = Job {
                    fault,
                    minutes,
                    per_minute: 1.0 / minutes,
                    recovery: recovers(fault),
                };
                count += 1;
            }
        }
        put_in_order(&mut jobs[..count], |a, b| {
            probability[index(a.fault)] * b.minutes > probability[index(b.fault)] * a.minutes
        });
        let (recovery, hand_over) = (prices.recovery(), prices.unknown());
        let jobs = Jobs::of(jobs, count, prices.in_minutes(recovery), prices.in_minutes(hand_over));
        let mut of = [NONE; HYPOTHESES];
        for (place, job) in of.iter_mut().zip(jobs.all()) {
            *place = index(job.fault);
        }
        (Self { of, count: count + 1 }, jobs)
    }

    /// Their probabilities; those of faults that are not followed are added to none of these.
    pub(super) fn belief(&self, probability: &Belief) -> Belief {
        let mut belief = [0.0; HYPOTHESES];
        let mut left: f64 = probability.iter().sum();
        for (p, hypothesis) in belief.iter_mut().zip(&self.of[..self.count - 1]) {
            *p = probability[*hypothesis];
            left -= *p;
        }
        belief[self.count - 1] = f64::max(left, 0.0);
        belief
    }

    /// The values of `of` for the hypotheses that are followed.
    pub(super) fn gather(&self, of: impl Fn(usize) -> f64) -> Belief {
        let mut figures = [0.0; HYPOTHESES];
        for (figure, hypothesis) in figures.iter_mut().zip(&self.of[..self.count]) {
            *figure = of(*hypothesis);
        }
        figures
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A fault of one in a thousand is worth following, since a wrong repair costs hours; a rarer one counts as none of these, and
    /// nothing of its probability is lost (engineering judgement).
    #[test]
    fn faults_are_followed_from_one_in_a_thousand_on() {
        let mut probability = [0.0; HYPOTHESES];
        probability[index(Fault::Undercharge)] = 0.9;
        probability[index(Fault::Overcharge)] = 1.05e-3;
        probability[index(Fault::WornCompressor)] = 0.95e-3;
        probability[NONE] = 0.098;
        let (followed, jobs) = Followed::of(&probability, &Prices::default(), &|_| false);
        let faults: alloc::vec::Vec<Fault> = jobs.all().iter().map(|job| job.fault).collect();
        assert_eq!(faults, [Fault::Undercharge, Fault::Overcharge]);
        let belief = followed.belief(&probability);
        assert!((belief[2] - 0.098_95).abs() < 1e-12);
        assert!((belief.iter().sum::<f64>() - 1.0).abs() < 1e-12);
    }
}
