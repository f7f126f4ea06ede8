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
use super::figures::{BESIDE_SIDES, Figures, HIGH, LOW, sheared};
use super::list::List;
use super::memory::{Memory, Shapes};
use super::part::{Against, CONSTANT, EVERY, Part, Placed, SEVERITY, Shape, Sides, Told, student_below, tail};
use crate::circuit::Estimate;
use crate::names::{Fault, MixUp};

/// The most parts that the clouds of one kind of system have.
pub(super) const MOST_PARTS: usize = 96;

/// Density of the figures under every fault.
pub(super) type Likelihoods = [f64; Fault::ALL.len()];

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
    /// The trade has sound vehicles at `trade`; where a vehicle has its own table, its two sides stand there for sure. Those of
    /// a refrigerant that the clouds have not seen stand `beside` those that they have.
    pub(super) fn of(
        bit: u8,
        conditions: [Option<f64>; CONDITIONS],
        ambient_k: f64,
        unsettled: [f64; 3],
        (trade, own_table, beside): ([Option<f64>; FIGURES], bool, [f64; FIGURES]),
    ) -> Option<Self> {
        let kind = bit.trailing_zeros() as usize;
        let parts = CLOUDS[kind];
        let told = Told::of(&conditions);
        let (mut shares, mut totals) = ([0.0; MOST_PARTS], [0.0; Fault::ALL.len()]);
        for (part, share) in parts.iter().zip(&mut shares) {
            *share = part.gate(&told);
            totals[index(part.fault)] += *share;
        }
        let mut model = [0.0; FIGURES];
        for (part, share) in parts.iter().zip(&mut shares) {
            *share /= totals[index(part.fault)];
            if part.fault == Fault::NoFault {
                let off = part.off(&told);
                for (i, sum) in model.iter_mut().enumerate() {
                    *sum += *share * part.mean(i, &off);
                }
            }
        }
        let trade: [f64; FIGURES] = core::array::from_fn(|i| trade[i].map_or(0.0, |trade| trade - model[i]));
        let own = if own_table {
            core::array::from_fn(|i| if i == LOW || i == HIGH { trade[i] } else { beside[i] })
        } else {
            beside
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

    /// Whether a fault has a cloud.
    pub(super) fn has(&self, fault: Fault) -> bool {
        self.faults[index(fault)]
    }

    /// The fault of each part.
    pub(super) fn parts(&self) -> impl Iterator<Item = Fault> + use<> {
        CLOUDS[self.kind].iter().map(|part| part.fault)
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
    fn stands(&self, placed: &Placed<'_>) -> [[f64; FIGURES]; STANDS] {
        let works = ((placed.mean[HIGH] - placed.mean[LOW]) / self.lift_k).clamp(0.0, 1.0);
        self.stands.map(|stand| stand.map(|above| works * above))
    }

    /// The parts that count here: place, part and share.
    fn parts_here(&self) -> impl Iterator<Item = (usize, &'static Part, f64)> {
        let parts = CLOUDS[self.kind].iter().zip(&self.shares).enumerate();
        parts
            .filter(|(_, (_, share))| **share >= LEAST_SHARE)
            .map(|(place, (part, share))| (place, part, *share))
    }

    /// The density of the figures under every fault, for each of several sets of figures; `weights` becomes the share of
    /// each part in the density of the first set, for each stand.
    pub(super) fn likelihoods(
        &self,
        sets: &[Features],
        memory: Option<&mut Memory>,
        found: &mut [Likelihoods],
        weights: &mut [[f64; STANDS]; MOST_PARTS],
    ) {
        let mut each = [Figures::NOTHING; MOST_SETS];
        // Whether all but the two sides is as in the set before.
        let mut alike = [false; MOST_SETS];
        for (set, features) in sets.iter().enumerate() {
            each[set] = self.figures(features);
            alike[set] = set > 0 && each[set].differ_by_sides(&each[set - 1]);
        }
        let told = Told::of(&self.conditions);
        let dimensions = along(&each);
        let (mut shapes, mut against) = (Shapes::of(memory, self.kind, &told), Against::NOTHING);
        for (place, part, share) in self.parts_here() {
            let shape = shapes.shape(place, part, &told, &dimensions);
            let placed = part.placed(&told, &dimensions, shape);
            let stands = self.stands(&placed).map(sheared);
            let there = STAND_SHARE.map(|stand| share * stand);
            let mut sides = Sides::NOTHING;
            for (set, (figures, found)) in each.iter().zip(found.iter_mut()).enumerate() {
                if !alike[set] {
                    against.take(&placed, figures, &stands, BESIDE_SIDES);
                    sides = against.sides(&placed, &stands);
                }
                let density = sides.density(&against, figures);
                let counted: [f64; STANDS] = core::array::from_fn(|stand| there[stand] * density[stand]);
                found[index(part.fault)] += counted.iter().sum::<f64>();
                if set == 0 {
                    weights[place] = counted;
                }
            }
        }
        for found in found {
            let sound = found[index(Fault::NoFault)];
            for fault in Fault::ALL.into_iter().filter(|fault| self.has_slight(*fault)) {
                let of = &mut found[index(fault)];
                *of += SLIGHT * (sound - *of);
            }
        }
    }

    /// The density of the first k figures under one fault.
    pub(super) fn steps(&self, fault: Fault, features: &Features) -> [f64; FEATURES + 1] {
        let mut steps = self.steps_of_parts(fault, features);
        if self.has_slight(fault) {
            for (step, sound) in steps.iter_mut().zip(self.steps_of_parts(Fault::NoFault, features)) {
                *step += SLIGHT * (sound - *step);
            }
        }
        steps
    }

    fn steps_of_parts(&self, fault: Fault, features: &Features) -> [f64; FEATURES + 1] {
        let figures = self.figures(features);
        let told = Told::of(&self.conditions);
        let (mut shape, mut against) = (Shape::NONE, Against::NOTHING);
        let dimensions = along(&[figures]);
        let mut steps = [0.0; FEATURES + 1];
        for (_, part, share) in self.parts_here().filter(|(_, part, _)| part.fault == fault) {
            part.shape(&told, &dimensions, &mut shape);
            let placed = part.placed(&told, &dimensions, &shape);
            let stands = self.stands(&placed).map(sheared);
            against.take(&placed, &figures, &stands, FIGURES);
            for i in 0..FIGURES {
                if figures.read[i] {
                    against.add(&placed, &figures, &stands, i);
                }
                let density = against.density();
                for (stand, density) in STAND_SHARE.iter().zip(density) {
                    steps[i + 1] += share * stand * density;
                }
            }
        }
        steps[0] = 1.0;
        steps[FEATURES] = steps[FIGURES];
        steps
    }

    /// What the parts expect once these figures are read, sound vehicles standing in either place: `wanted` gives the
    /// share of a part and stand in its fault, and `keep` is given what they expect.
    pub(super) fn predictions(
        &self,
        features: &Features,
        memory: Option<&mut Memory>,
        wanted: impl Fn(Fault, usize, usize) -> Option<f64>,
        mut keep: impl FnMut(Prediction),
    ) {
        let figures = self.figures(features);
        let told = Told::of(&self.conditions);
        let (mut shapes, mut against) = (Shapes::of(memory, self.kind, &told), Against::NOTHING);
        for (place, part, _) in self.parts_here() {
            let shares: [Option<f64>; STANDS] = core::array::from_fn(|stand| wanted(part.fault, place, stand));
            if shares.iter().all(Option::is_none) {
                continue;
            }
            let shape = shapes.shape(place, part, &told, &EVERY);
            let placed = part.placed(&told, &EVERY, shape);
            let above = self.stands(&placed);
            against.take(&placed, &figures, &above.map(sheared), 0);
            let severity = against.predicted(&placed, SEVERITY, &figures);
            let expected: [_; FIGURES] = core::array::from_fn(|i| {
                if figures.read[i] {
                    let (mean, spread) = placed.figure(i);
                    ([mean; STANDS], [spread; STANDS])
                } else {
                    against.predicted(&placed, i, &figures)
                }
            });
            for (stand, share) in shares.into_iter().enumerate() {
                if let Some(share) = share {
                    keep(Prediction {
                        fault: part.fault,
                        share: share as f32,
                        mean: core::array::from_fn(|i| (expected[i].0[stand] + above[stand][i]) as f32),
                        spread: expected.map(|(_, spread)| spread[stand] as f32),
                        severity: (severity.0[stand] as f32, severity.1[stand] as f32),
                    });
                }
            }
        }
    }
}

/// The two sides, and all else that was read in any set.
fn along(sets: &[Figures]) -> List<usize, FIGURES> {
    let mut dimensions = List::new(0);
    for i in 0..FIGURES {
        if i < BESIDE_SIDES || sets.iter().any(|figures| figures.read[i]) {
            dimensions.push(i);
        }
    }
    dimensions
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
        let spread = f64::from(self.spread[figure]);
        let spread = libm::sqrt(spread * spread + uncertainty * uncertainty);
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

/// Whether the vehicles of a fault's cloud have it more or less; the others have all of it, or none.
const fn in_degrees(fault: Fault) -> bool {
    !matches!(
        fault,
        Fault::NoFault | Fault::ClutchNotEngaged | Fault::WrongRefrigerant | Fault::GaugeError
    )
}
