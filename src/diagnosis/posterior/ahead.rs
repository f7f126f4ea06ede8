//! What a figure that is still to be read would show.

use super::{NEGLIGIBLE, Posterior};
use crate::diagnosis::batch::Seen;
use crate::diagnosis::faults::{HYPOTHESES, NONE, index};
use crate::diagnosis::features::{FEATURES, place};
use crate::diagnosis::likelihood::{Grounds, unknown_way};
use crate::diagnosis::scene::Scene;
use crate::expected::View;
use crate::names::{Fault, Feature};

/// Standard uncertainty of a figure that is still to be read, K, and of clutch cycles in their logarithm. Source: engineering
/// judgement.
const FUTURE_UNCERTAINTY: f64 = 1.2;
const FUTURE_CYCLES: f64 = 0.1;

/// Normal quantile of the limits between "below", "within" and "above": the 80 % band.
const LIMIT: f64 = 1.281_551_565_544_600_4;

/// The figures that are still to be read, against the 80 % band of sound systems.
pub(in crate::diagnosis) struct Foreseen {
    /// Sums of the weights under each hypothesis, and of each figure those below either limit.
    totals: [f64; HYPOTHESES],
    below: [[[f64; 2]; HYPOTHESES]; FEATURES],
}

/// A figure that can be read, and between which limits it counts as within.
#[derive(Clone, Copy)]
struct Open {
    view: View,
    limits: [f64; 2],
    noise: f64,
}

impl Foreseen {
    /// The chances of a figure to lie below, within and above the limits, under one hypothesis: by the atlas, and in an unknown way.
    pub(in crate::diagnosis) fn chances(&self, posterior: &Posterior, feature: Feature, hypothesis: usize) -> [f64; 3] {
        let sound = index(Fault::NoFault);
        let (of, share) = match Fault::ALL.get(hypothesis) {
            // Behind misleading gauges a sound system is assumed, and for a negligible fault too.
            Some(Fault::GaugeError) => (sound, 0.0),
            Some(_) if posterior.probability[hypothesis] < NEGLIGIBLE => (sound, 0.0),
            Some(fault) => (hypothesis, unknown_way(*fault)),
            None => (NONE, 0.0),
        };
        let (totals, below) = (&self.totals, &self.below[place(feature)]);
        let weight = (1.0 - share) * totals[of] + share * totals[NONE];
        if weight <= 0.0 {
            return [0.1, 0.8, 0.1];
        }
        let at = |limit: usize| ((1.0 - share) * below[of][limit] + share * below[NONE][limit]) / weight;
        let (low, high) = (at(0), at(1));
        [low, f64::max(high - low, 0.0), f64::max(1.0 - high, 0.0)]
    }
}

impl Posterior {
    /// What every figure that was not read would show, given all that was.
    #[inline(never)]
    pub(in crate::diagnosis) fn foreseen(&self, scene: &Scene) -> Foreseen {
        let mut foreseen = Foreseen {
            totals: [0.0; HYPOTHESES],
            below: [[[0.0; 2]; HYPOTHESES]; FEATURES],
        };
        let (Some(sound), Some(features)) = (&scene.sound, self.features()) else {
            return foreseen;
        };
        let grounds = Grounds {
            sound,
            pages: self.pages,
        };
        let seen = Seen::of(features);
        let mut open: [Option<Open>; FEATURES] = [None; FEATURES];
        for feature in Feature::ALL {
            if let Some(view) = sound.view(feature).filter(|_| !self.knows(feature)) {
                let uncertainty = if feature == Feature::ClutchCycles {
                    FUTURE_CYCLES
                } else {
                    FUTURE_UNCERTAINTY
                };
                open[place(feature)] = Some(Open {
                    view,
                    limits: sound.quantiles(&view, [-LIMIT, LIMIT]),
                    noise: uncertainty * uncertainty,
                });
            }
        }
        let likely = |h: usize| h == NONE || h == index(Fault::NoFault) || self.probability[h] >= NEGLIGIBLE;
        grounds.each_batch(&seen, &likely, &mut |batch| {
            let tops = batch.tops()[seen.read.count()];
            let mut explained = [None; FEATURES];
            for (explained, open) in explained.iter_mut().zip(&open) {
                *explained = open.as_ref().map(|open| batch.explained(&open.view));
            }
            batch.each_term(|terms| {
                let densities = batch.densities(terms, &tops);
                for (at, hypothesis, _) in batch.each(terms) {
                    foreseen.totals[hypothesis] += densities[at];
                }
                for ((open, below), explained) in open.iter().zip(&mut foreseen.below).zip(&explained) {
                    let (Some(open), Some(explained)) = (open, explained) else {
                        continue;
                    };
                    let students = batch.foreseen(terms, &open.view, explained);
                    for (at, hypothesis, _) in batch.each(terms) {
                        let student = students[at].as_read(open.noise);
                        for (sum, limit) in below[hypothesis].iter_mut().zip(open.limits) {
                            *sum += densities[at] * student.below(limit);
                        }
                    }
                }
            });
        });
        foreseen
    }
}
