//! Likelihoods fitted to the vehicle model: clouds of simulated vehicles, one for each fault of each kind of system.
//!
//! A cloud is a mixture of parts. Within a part the figures follow the conditions linearly, and what is left is a
//! multivariate t distribution over the figures and the severity together; a part weighs the more the nearer the
//! conditions are to its own. A figure that was not read drops out of such a distribution exactly, and so does a
//! condition that nobody told; what the instruments add to the spread is added when the readings are judged. The figures
//! that are still to be read, and the severity, are predicted by the same distribution.

use super::against::{Against, Weighed};
use super::cloud_table::CLOUDS;
use super::coordinates::{self, CONDITIONS, FIGURES};
use super::faults::index;
use super::features::{FEATURES, Features};
use super::figures::{BESIDE_SIDES, Figures, HIGH, LOW, NO_CHANGES, sheared};
use super::lanes::Lanes;
use super::list::List;
use super::own::{Apart, Own};
use super::part::{EVERY, Parts, Placed, SEVERITY, Told};
use super::prediction::Prediction;
use crate::names::Fault;

/// The most parts that the clouds of one kind of system have: as many times [`super::lanes::LANES`].
const MOST: usize = 3;

/// Density of the figures under every fault.
pub(super) type Likelihoods = [f64; Fault::ALL.len()];

/// Of no fault.
pub(super) const UNKNOWN: Likelihoods = [0.0; Fault::ALL.len()];

/// A part with a smaller share in these conditions is passed over.
const LEAST_SHARE: f64 = 1e-4;

/// The clouds of one kind of system in some conditions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cloud {
    kind: usize,
    conditions: [Option<f64>; CONDITIONS],
    apart: [Apart; FIGURES],
    /// The faults that have a cloud.
    faults: [bool; Fault::ALL.len()],
    /// Share of each part in its cloud in these conditions.
    shares: [Lanes; MOST],
    ambient_k: f64,
    /// Spread that low side, high side and vent have more while a system settles.
    unsettled: [f64; 3],
    /// Where sound vehicles stand, above where the model has them: as the model says, and as the trade says.
    stands: [[f64; FIGURES]; STANDS],
    /// Saturation temperature of the high side above that of the low side in a sound vehicle of the model, K.
    lift_k: f64,
}

/// Part of the vehicles with a fault that read like sound ones, in the likelihood of every fault that comes in degrees: few
/// smooth parts and their straight lines leave too little of the slight ones there. Of vehicles drawn for this purpose (2,000
/// of each kind and population, other seeds than the fit's and the evaluation's) names given 30 to 80 % were right 7
/// points less often than said, "no fault" above all. With this share and parts as wide as `part.rs` has them, 700 of each
/// kind strayed by 0.020 and 0.027 (own and shifted, usual mix) instead of 0.030 and 0.030 with a tenth and 1.1, with 4.9
/// and 4.1 instead of 6.1 and 5.0 % false alarms and the same loss, for half a point of first names.
const SLIGHT: f64 = 0.15;

/// How much each of the two counts.
pub(super) const STANDS: usize = 2;
const STAND_SHARE: [f64; STANDS] = [0.7, 0.3];

/// The share of each part in a density, for each stand.
pub(super) type Weights = [[Lanes; STANDS]; MOST];

/// None of any part.
pub(super) const WEIGHTLESS: Weights = [[Lanes::ZERO; STANDS]; MOST];

impl Cloud {
    /// The clouds of a kind of system ([`coordinates::kind`]); `None` where there are none.
    ///
    /// The trade has sound vehicles at `trade`; where a vehicle has its own table, its two sides stand there for sure. This one
    /// has its own place beside those of the fit.
    pub(super) fn of(
        kind: usize,
        conditions: [Option<f64>; CONDITIONS],
        ambient_k: f64,
        unsettled: [f64; 3],
        (trade, own_table, own): ([Option<f64>; FIGURES], bool, &Own),
    ) -> Option<Self> {
        let clouds = CLOUDS[kind];
        let told = Told::of(&conditions, &own.apart);
        let (mut shares, mut totals) = ([Lanes::ZERO; MOST], [0.0; Fault::ALL.len()]);
        for (parts, shares) in clouds.iter().zip(&mut shares) {
            *shares = parts.gate(&told);
            for (lane, fault) in parts.fault.into_iter().enumerate() {
                totals[index(fault)] += shares.at(lane);
            }
        }
        // What is passed over leaves its share to the other parts of its fault.
        let mut kept = [0.0; Fault::ALL.len()];
        for (parts, shares) in clouds.iter().zip(&mut shares) {
            shares.change(|lane, share| {
                let least = LEAST_SHARE * totals[index(parts.fault[lane])];
                if share < least { 0.0 } else { share }
            });
            for (lane, fault) in parts.fault.into_iter().enumerate() {
                kept[index(fault)] += shares.at(lane);
            }
        }
        let mut model = [0.0; FIGURES];
        for (parts, shares) in clouds.iter().zip(&mut shares) {
            shares.change(|lane, share| {
                let kept = kept[index(parts.fault[lane])];
                if kept > 0.0 { share / kept } else { 0.0 }
            });
            if parts.fault.contains(&Fault::NoFault) {
                let (off, mut mean) = (parts.off(&told), Lanes::ZERO);
                for (i, sum) in model.iter_mut().enumerate() {
                    parts.mean(i, &told, &off, &mut mean);
                    for (lane, _) in of(parts, Fault::NoFault) {
                        *sum += shares.at(lane) * mean.at(lane);
                    }
                }
            }
        }
        let trade: [f64; FIGURES] = core::array::from_fn(|i| trade[i].map_or(0.0, |trade| trade - model[i]));
        let above = core::array::from_fn(|i| {
            let of_table = own_table && (i == LOW || i == HIGH);
            if of_table { trade[i] } else { own.above[i] }
        });
        (!clouds.is_empty()).then_some(Self {
            kind,
            conditions,
            faults: totals.map(|total| total > 0.0),
            shares,
            ambient_k,
            unsettled,
            apart: own.apart,
            stands: [above, trade],
            lift_k: f64::max(model[HIGH] - model[LOW], 1.0),
        })
    }

    /// Whether some condition lies beyond those of the fit.
    pub(super) fn is_beyond_fit(&self) -> bool {
        coordinates::beyond_fit(&self.conditions)
            .iter()
            .any(|beyond| *beyond > 0.0)
    }

    /// Whether a fault has a cloud.
    pub(super) fn has(&self, fault: Fault) -> bool {
        self.faults[index(fault)]
    }

    /// Whether some of the vehicles of a fault's cloud count as sound ones.
    fn has_slight(&self, fault: Fault) -> bool {
        self.has(fault) && in_degrees(fault)
    }

    fn figures(&self, features: &Features) -> Figures {
        Figures::of(&coordinates::figures(features, self.ambient_k), &self.unsettled)
    }

    /// Where sound vehicles stand, as far as a part still works: one that does not pump stands where the ambient has it,
    /// whatever the trade says of sound ones.
    fn stands(&self, placed: &Placed, stands: &[[f64; FIGURES]; STANDS]) -> [[Lanes; FIGURES]; STANDS] {
        let (low, high) = (&placed.mean[LOW], &placed.mean[HIGH]);
        let works = Lanes::of(|lane| ((high.at(lane) - low.at(lane)) / self.lift_k).clamp(0.0, 1.0));
        let mut above = [[Lanes::ZERO; FIGURES]; STANDS];
        for (above, stand) in above.as_flattened_mut().iter_mut().zip(stands.as_flattened()) {
            above.set(|lane| stand * works.at(lane));
        }
        above
    }

    /// The parts that count here, side by side: their place, they, and their shares.
    fn parts_here(&self) -> impl Iterator<Item = (usize, &'static Parts, &Lanes)> {
        let parts = CLOUDS[self.kind].iter().zip(&self.shares).enumerate();
        parts
            .filter(|(_, (_, shares))| **shares != Lanes::ZERO)
            .map(|(place, (parts, shares))| (place, parts, shares))
    }

    /// These figures, to be weighed against every part.
    #[inline(always)] // it is large
    pub(super) fn unweighed(&self, features: &Features) -> InCloud<'_> {
        InCloud {
            cloud: self,
            figures: self.figures(features),
            parts: [Weighed::NOTHING; MOST],
            foreseen: [Foreseen::NOTHING; MOST],
        }
    }

    /// The density of the first k figures under every fault.
    pub(super) fn steps(&self, features: &Features) -> [[f64; FEATURES + 1]; Fault::ALL.len()] {
        let mut steps = self.steps_of_parts(features);
        let sound = steps[index(Fault::NoFault)];
        for fault in Fault::ALL.into_iter().filter(|fault| self.has_slight(*fault)) {
            for (step, sound) in steps[index(fault)].iter_mut().zip(sound) {
                *step += SLIGHT * (sound - *step);
            }
        }
        steps
    }

    /// The density of the figures in the cloud of one fault alone.
    #[cfg(test)]
    pub(super) fn density(&self, fault: Fault, features: &Features) -> f64 {
        self.steps_of_parts(features)[index(fault)][FEATURES]
    }

    fn steps_of_parts(&self, features: &Features) -> [[f64; FEATURES + 1]; Fault::ALL.len()] {
        let figures = self.figures(features);
        let told = Told::of(&self.conditions, &self.apart);
        let (mut placed, mut against) = (Placed::NOWHERE, Against::NOTHING);
        let dimensions = along(&figures);
        let stands = self.stands.map(sheared);
        let mut steps = [[0.0; FEATURES + 1]; Fault::ALL.len()];
        for (_, parts, share) in self.parts_here() {
            placed.take(parts, &told, &dimensions);
            let above = self.stands(&placed, &stands);
            against.clear();
            for i in 0..FIGURES {
                if figures.read[i] {
                    against.add(&placed, &figures, &above, i);
                }
                for (stand, density) in STAND_SHARE.into_iter().zip(against.density()) {
                    for (lane, fault) in parts.fault.into_iter().enumerate() {
                        steps[index(fault)][i + 1] += stand * share.at(lane) * density.at(lane);
                    }
                }
            }
        }
        for steps in &mut steps {
            steps[0] = 1.0;
            steps[FEATURES] = steps[FIGURES];
        }
        steps
    }
}

/// What parts expect once some figures are read, sound vehicles standing in either place: mean and standard deviation of
/// each figure, of one that was read without that, and of the severity.
#[derive(Clone, Copy)]
struct Foreseen {
    figures: [[[Lanes; STANDS]; 2]; FIGURES],
    severity: [[Lanes; STANDS]; 2],
}

impl Foreseen {
    const NOTHING: Self = Self {
        figures: [[[Lanes::ZERO; STANDS]; 2]; FIGURES],
        severity: [[Lanes::ZERO; STANDS]; 2],
    };
}

/// Figures weighed against every part of a cloud.
pub(super) struct InCloud<'a> {
    cloud: &'a Cloud,
    figures: Figures,
    parts: [Weighed<STANDS>; MOST],
    foreseen: [Foreseen; MOST],
}

impl InCloud<'_> {
    /// Weighs them, and looks ahead.
    pub(super) fn weigh(&mut self) {
        let (cloud, figures, foreseen) = (self.cloud, &self.figures, &mut self.foreseen);
        weigh(cloud, figures, &EVERY, &mut self.parts, |place, placed, against| {
            let above = cloud.stands(placed, &cloud.stands);
            let foreseen = &mut foreseen[place];
            foreseen.severity = against.predicted(placed, SEVERITY, figures);
            for (i, foreseen) in foreseen.figures.iter_mut().enumerate() {
                *foreseen = if figures.read[i] {
                    placed.figure(i).map(|of| [of; STANDS])
                } else {
                    against.predicted(placed, i, figures)
                };
                for (mean, above) in foreseen[0].iter_mut().zip(&above) {
                    mean.add(|lane| above[i].at(lane));
                }
            }
        });
    }

    /// Weighs them again after a change.
    fn weigh_again(&mut self) {
        let dimensions = along(&self.figures);
        weigh(self.cloud, &self.figures, &dimensions, &mut self.parts, |_, _, _| ());
    }

    /// What the parts expect, `weights` being those of [`Self::weights`]: `wanted` is asked of each part and stand by its
    /// share in its fault, and `keep` is given what it expects.
    pub(super) fn predictions(
        &self,
        weights: &Weights,
        wanted: impl Fn(Fault, f64) -> bool,
        mut keep: impl FnMut(Prediction),
    ) {
        let mut totals = UNKNOWN;
        for (place, parts, _) in self.cloud.parts_here() {
            let [own, trade] = &weights[place];
            for (lane, fault) in parts.fault.into_iter().enumerate() {
                totals[index(fault)] += own.at(lane) + trade.at(lane);
            }
        }
        for (place, parts, _) in self.cloud.parts_here() {
            let Foreseen { figures, severity } = &self.foreseen[place];
            for (stand, weights) in weights[place].iter().enumerate() {
                for (lane, fault) in parts.fault.into_iter().enumerate() {
                    let share = weights.at(lane) / totals[index(fault)];
                    if !wanted(fault, share) {
                        continue;
                    }
                    let of = |lanes: &[Lanes; STANDS]| lanes[stand].at(lane) as f32;
                    keep(Prediction {
                        fault,
                        share: share as f32,
                        mean: core::array::from_fn(|i| of(&figures[i][0])),
                        spread: core::array::from_fn(|i| of(&figures[i][1])),
                        severity: (of(&severity[0]), of(&severity[1])),
                    });
                }
            }
        }
    }

    /// The share of each part in the density of the figures.
    pub(super) fn weights(&self) -> Weights {
        let mut weights = WEIGHTLESS;
        for (place, _, share) in self.cloud.parts_here() {
            weights[place] = self.parts[place].density(&NO_CHANGES);
            for (weights, stand) in weights[place].iter_mut().zip(STAND_SHARE) {
                weights.multiply(|lane| stand * share.at(lane));
            }
        }
        weights
    }

    /// The density under every fault, of a set of figures that are these but for a few; of others, which then take their
    /// place, it is as long in coming as that of these.
    pub(super) fn likelihoods(&mut self, features: &Features) -> Likelihoods {
        let figures = self.cloud.figures(features);
        let changes = figures.changes_from(&self.figures).unwrap_or_else(|| {
            self.figures = figures;
            self.weigh_again();
            NO_CHANGES
        });
        let mut found = UNKNOWN;
        for (place, parts, share) in self.cloud.parts_here() {
            let [own, trade] = &self.parts[place].density(&changes);
            for (lane, fault) in parts.fault.into_iter().enumerate() {
                let [of_own, of_trade] = STAND_SHARE;
                found[index(fault)] += share.at(lane) * (of_own * own.at(lane) + of_trade * trade.at(lane));
            }
        }
        let sound = found[index(Fault::NoFault)];
        for fault in Fault::ALL.into_iter().filter(|fault| self.cloud.has_slight(*fault)) {
            let of = &mut found[index(fault)];
            *of += SLIGHT * (sound - *of);
        }
        found
    }
}

/// Weighs figures against the parts of a cloud, placed along these dimensions; `also` is shown each group of parts.
fn weigh(
    cloud: &Cloud,
    figures: &Figures,
    dimensions: &[usize],
    weighed: &mut [Weighed<STANDS>; MOST],
    mut also: impl FnMut(usize, &Placed, &Against<STANDS>),
) {
    let told = Told::of(&cloud.conditions, &cloud.apart);
    let stands = cloud.stands.map(sheared);
    let (mut placed, mut against) = (Placed::NOWHERE, Against::NOTHING);
    for (place, parts, _) in cloud.parts_here() {
        placed.take(parts, &told, dimensions);
        against.take(&placed, figures, &cloud.stands(&placed, &stands));
        against.weigh(&mut weighed[place]);
        also(place, &placed, &against);
    }
}

/// The parts of a fault among those side by side, by their lanes.
fn of(parts: &Parts, fault: Fault) -> impl Iterator<Item = (usize, Fault)> {
    parts.fault.into_iter().enumerate().filter(move |(_, of)| *of == fault)
}

/// The two sides, and all else that was read.
fn along(figures: &Figures) -> List<usize, FIGURES> {
    let mut dimensions = List::new(0);
    for i in 0..FIGURES {
        if i < BESIDE_SIDES || figures.read[i] {
            dimensions.push(i);
        }
    }
    dimensions
}

/// Whether the vehicles of a fault's cloud have it more or less; the others have all of it, or none.
const fn in_degrees(fault: Fault) -> bool {
    !matches!(
        fault,
        Fault::NoFault | Fault::ClutchNotEngaged | Fault::WrongRefrigerant | Fault::GaugeError
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_part_has_its_place() {
        assert!(CLOUDS.iter().all(|clouds| clouds.len() <= MOST));
    }
}
