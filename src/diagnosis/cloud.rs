//! Likelihoods fitted to the vehicle model: clouds of simulated vehicles, one for each fault of each kind of system.
//!
//! A cloud is a mixture of parts. Within a part the figures follow the conditions linearly, and what is left is a
//! multivariate t distribution over the figures and the severity together; a part weighs the more the nearer the
//! conditions are to its own. A figure that was not read drops out of such a distribution exactly, and so does a
//! condition that nobody told; what the instruments add to the spread is added when the readings are judged. The figures
//! that are still to be read, and the severity, are predicted by the same distribution.

use super::cloud_table::CLOUDS;
use super::coordinates::{self, CONDITIONS, FIGURES};
use super::faults::index;
use super::features::{FEATURES, Features};
use super::part::{CONSTANT, Factor, Figures, HIGH, LOW, Placed, SEVERITY, student_below, tail};
use crate::circuit::Estimate;
use crate::names::{Fault, MixUp};

/// The most parts that the clouds of one kind of system have.
pub(super) const MOST_PARTS: usize = 96;

/// Density of the first k figures under every fault; all zero where a fault has no cloud.
pub(super) type Likelihoods = [[f64; FEATURES + 1]; Fault::ALL.len()];

/// The most sets of figures that are judged together: those at face value, and one for each mix-up.
pub(super) const MOST_SETS: usize = 1 + MixUp::ALL.len();

/// A part with a smaller share in these conditions is passed over.
const LEAST_SHARE: f64 = 1e-4;

/// The clouds of one kind of system in some conditions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cloud {
    kind: usize,
    conditions: [Option<f64>; CONDITIONS],
    /// The faults that have a cloud.
    faults: [bool; Fault::ALL.len()],
    /// Share of each part in its cloud in these conditions.
    shares: [f64; MOST_PARTS],
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
/// points less often than said, "no fault" above all; a tenth halves the calibration error, of own and shifted vehicles and
/// in both mixes, brings the loss to its least, and costs 0.3 points of first names.
const SLIGHT: f64 = 0.1;

/// How much each of the two counts.
pub(super) const STANDS: usize = 2;
const STAND_SHARE: [f64; STANDS] = [0.7, 0.3];

/// What one part expects.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Prediction {
    pub(super) fault: Fault,
    /// Share in the likelihood of its fault.
    pub(super) share: f32,
    /// Mean and standard deviation of each figure; where it was read, without that.
    mean: [f32; FIGURES],
    spread: [f32; FIGURES],
    /// Mean of the severity, and its standard deviation.
    pub(super) severity: (f32, f32),
}

impl Cloud {
    /// The clouds of the system of this bit; `None` where there are none.
    ///
    /// The trade has sound vehicles at `trade`; where a vehicle has its own table, its two sides stand there for sure.
    pub(super) fn of(
        bit: u8,
        conditions: [Option<f64>; CONDITIONS],
        ambient_k: f64,
        unsettled: [f64; 3],
        (trade, own_table): ([Option<f64>; FIGURES], bool),
    ) -> Option<Self> {
        let kind = bit.trailing_zeros() as usize;
        let parts = CLOUDS[kind];
        let (mut shares, mut totals) = ([0.0; MOST_PARTS], [0.0; Fault::ALL.len()]);
        for (part, share) in parts.iter().zip(&mut shares) {
            *share = part.gate(&conditions);
            totals[index(part.fault)] += *share;
        }
        let mut model = [0.0; FIGURES];
        for (part, share) in parts.iter().zip(&mut shares) {
            *share /= totals[index(part.fault)];
            if part.fault == Fault::NoFault {
                let mean = part.placed(&conditions).mean;
                for (sum, mean) in model.iter_mut().zip(mean) {
                    *sum += *share * mean;
                }
            }
        }
        let trade: [f64; FIGURES] = core::array::from_fn(|i| trade[i].map_or(0.0, |trade| trade - model[i]));
        let own = if own_table {
            core::array::from_fn(|i| if i == LOW || i == HIGH { trade[i] } else { 0.0 })
        } else {
            [0.0; FIGURES]
        };
        (!parts.is_empty()).then_some(Self {
            kind,
            conditions,
            faults: totals.map(|total| total > 0.0),
            shares,
            ambient_k,
            unsettled,
            stands: [own, trade],
            lift_k: f64::max(model[HIGH] - model[LOW], 1.0),
        })
    }

    /// The fault of each part.
    pub(super) fn parts(&self) -> impl Iterator<Item = Fault> + use<> {
        CLOUDS[self.kind].iter().map(|part| part.fault)
    }

    fn figures(&self, features: &Features) -> Figures {
        Figures::of(&coordinates::figures(features, self.ambient_k), &self.unsettled)
    }

    /// Where sound vehicles stand, as far as a part still works.
    fn stands(&self, works: f64) -> [[f64; FIGURES]; STANDS] {
        self.stands.map(|stand| stand.map(|above| works * above))
    }

    /// How much of its lift a system still has: one that does not pump stands where the ambient has it, whatever the trade
    /// says of sound ones.
    fn works(&self, placed: &Placed) -> f64 {
        ((placed.mean[HIGH] - placed.mean[LOW]) / self.lift_k).clamp(0.0, 1.0)
    }

    /// The density of the figures under every fault, for each of several sets of figures; `weights` becomes the share of
    /// each part in the density of the first set, for each stand. A part under which the pressures are less likely than
    /// `least` is followed no further.
    pub(super) fn likelihoods(
        &self,
        sets: &[Features],
        least: f64,
        found: &mut [Likelihoods],
        weights: &mut [[f64; STANDS]; MOST_PARTS],
    ) {
        let mut each = [Figures::NOTHING; MOST_SETS];
        for (figures, features) in each.iter_mut().zip(sets) {
            *figures = self.figures(features);
        }
        for ((part, share), weights) in CLOUDS[self.kind].iter().zip(self.shares).zip(weights) {
            if share < LEAST_SHARE {
                continue;
            }
            let placed = part.placed(&self.conditions);
            let stands = self.stands(self.works(&placed));
            for (set, (figures, found)) in each.iter().zip(found.iter_mut()).enumerate() {
                let Some(mut factor) = hopeful(&placed, figures, &stands, least / share) else {
                    continue;
                };
                factor.grow(&placed, figures, figures.count);
                let of = &mut found[index(part.fault)];
                let mut last = [1.0; STANDS];
                factor.against(&placed, figures, &stands, |n, density| {
                    for (share_there, density) in STAND_SHARE.iter().zip(&density) {
                        of[n + 1] += share * share_there * density;
                    }
                    last = density;
                });
                if set == 0 {
                    *weights = core::array::from_fn(|stand| share * STAND_SHARE[stand] * last[stand]);
                }
            }
        }
        for (figures, found) in each.iter().zip(found) {
            for (of, has) in found.iter_mut().zip(self.faults) {
                if has {
                    *of = spread_out(of, figures);
                }
            }
            let sound = found[index(Fault::NoFault)];
            for fault in Fault::ALL.into_iter().filter(|fault| in_degrees(*fault)) {
                let of = &mut found[index(fault)];
                if of[0] > 0.0 {
                    for (of, sound) in of.iter_mut().zip(sound) {
                        *of += SLIGHT * (sound - *of);
                    }
                }
            }
        }
    }

    /// What a part expects once these figures are read, sound vehicles standing there.
    pub(super) fn prediction(&self, (place, stand): (usize, usize), share: f64, features: &Features) -> Prediction {
        let part = &CLOUDS[self.kind][place];
        let figures = self.figures(features);
        let placed = part.placed(&self.conditions);
        let works = self.works(&placed);
        let factor = Factor::of(&placed, &figures);
        let above = self.stands(works)[stand];
        let off = factor.against(&placed, &figures, &[above], |_, _| ());
        let mut prediction = Prediction {
            fault: part.fault,
            share: share as f32,
            ..Prediction::BLANK
        };
        let (mean, spread) = factor.predicted(&placed, SEVERITY, &figures, &off);
        prediction.severity = (mean as f32, spread as f32);
        for (i, above) in above.iter().enumerate() {
            let (mean, spread) = if figures.read(i) {
                (placed.mean[i], libm::sqrt(placed.covariance[i][i]))
            } else {
                factor.predicted(&placed, i, &figures, &off)
            };
            prediction.mean[i] = (mean + above) as f32;
            prediction.spread[i] = spread as f32;
        }
        prediction
    }
}

impl Prediction {
    pub(super) const BLANK: Self = Self {
        fault: Fault::NoFault,
        share: 0.0,
        mean: [0.0; FIGURES],
        spread: [0.0; FIGURES],
        severity: (0.0, 0.0),
    };

    /// Distance of a figure from what is expected, in spreads, and the spread.
    fn off(&self, figure: usize, x: f64, uncertainty: f64) -> (f64, f64) {
        let spread = libm::hypot(f64::from(self.spread[figure]), uncertainty);
        ((x - f64::from(self.mean[figure])) / spread, spread)
    }

    /// Density of a figure that was read.
    pub(super) fn density(&self, figure: usize, measured: Estimate, origin_k: f64) -> f64 {
        let (z, spread) = self.off(figure, measured.value - origin_k, measured.standard_uncertainty);
        CONSTANT[0] / spread * tail(z * z, 1)
    }

    /// Probability that a figure would read below `x`.
    pub(super) fn below(&self, figure: usize, x: f64, uncertainty: f64) -> f64 {
        let (z, _) = self.off(figure, x, uncertainty);
        student_below(z)
    }
}

/// The factor of the pressures, unless a part makes them less likely than `least`: first by each alone, which is quickly
/// seen.
#[inline]
fn hopeful(placed: &Placed, figures: &Figures, stands: &[[f64; FIGURES]; STANDS], least: f64) -> Option<Factor> {
    let pressures = figures.pressures();
    // The density of the one once the other is known is nowhere above one: no spread is below half a kelvin.
    if (0..pressures).any(|n| figures.likeliest(n, placed, stands) < least) {
        return None;
    }
    let mut factor = Factor::EMPTY;
    factor.grow(placed, figures, pressures);
    let mut last = [1.0; STANDS];
    factor.against(placed, figures, stands, |_, density| last = density);
    (last.into_iter().fold(0.0, f64::max) >= least).then_some(factor)
}

/// Whether the vehicles of a fault's cloud have it more or less; the others have all of it, or none.
const fn in_degrees(fault: Fault) -> bool {
    !matches!(
        fault,
        Fault::NoFault | Fault::ClutchNotEngaged | Fault::WrongRefrigerant | Fault::GaugeError
    )
}

/// Sums up to each figure that was read, spread over all figures: what was not read changes nothing.
fn spread_out(sums: &[f64; FEATURES + 1], figures: &Figures) -> [f64; FEATURES + 1] {
    let mut spread = [1.0; FEATURES + 1];
    for (n, i) in figures.order[..figures.count].iter().enumerate() {
        spread[i + 1..].fill(sums[n + 1]);
    }
    spread
}
