//! The likelihood of a feature vector under every hypothesis: one sum over sources and severities.

use super::atlas::{FaultRows, Pages, ShiftRow, anything};
use super::faults::{HYPOTHESES, NONE, index};
use crate::circuit::FeatureVector;
use crate::expected::{Component, SoundModel, TRIANGLE, View};
use crate::names::Fault;
use crate::numerics::multivariate_t::{DIMENSIONS, Distance, Factor, Freedom, Matrix, Read, Student, Vector};
use crate::numerics::sqrt;

/// Part of every fault that shows itself in a way the atlas does not know, so that no tail decides alone; of sound systems a third of
/// it. Source: loss on makes that were left out; 7 to 15 % serve alike.
const UNKNOWN_WAY: f64 = 0.07;
const UNKNOWN_WAY_SOUND: f64 = UNKNOWN_WAY / 3.0;

/// The share of [`NONE`] in the likelihood of a fault.
pub(super) const fn unknown_way(fault: Fault) -> f64 {
    if matches!(fault, Fault::NoFault) {
        UNKNOWN_WAY_SOUND
    } else {
        UNKNOWN_WAY
    }
}

/// What was read: values, variances of the instruments, and which.
pub(super) struct Seen {
    value: Vector,
    noise: Vector,
    pub(super) read: Read,
}

impl Seen {
    pub(super) fn of(features: &FeatureVector) -> Self {
        let value = features
            .read
            .map(|reading| reading.map_or(0.0, |reading| reading.value));
        let noise = features.read.map(|reading| {
            reading.map_or(0.0, |reading| {
                reading.standard_uncertainty * reading.standard_uncertainty
            })
        });
        Self {
            value,
            noise,
            read: Read::of(|i| features.read[i].is_some()),
        }
    }

    /// The same of some of the features.
    pub(super) fn keeping(features: &FeatureVector, kept: impl Fn(usize) -> bool) -> Self {
        let mut some = *features;
        for (i, reading) in some.read.iter_mut().enumerate() {
            *reading = reading.filter(|_| kept(i));
        }
        Self::of(&some)
    }
}

/// One term of the sum: a source's t distribution for a hypothesis at one severity.
pub(super) struct Term<'a> {
    /// A fault's place, or [`NONE`].
    pub(super) hypothesis: usize,
    /// Chance of source and severity.
    pub(super) weight: f64,
    pub(super) severity: Option<[f64; 3]>,
    pub(super) mean: &'a Vector,
    pub(super) scale: &'a Scale<'a>,
    pub(super) freedom: Freedom,
    pub(super) factor: &'a Factor<'a>,
    pub(super) distance: Distance,
}

impl Term<'_> {
    /// Its density, weighed.
    pub(super) fn density(&self) -> f64 {
        self.weight * self.factor.density_of_all(self.freedom, &self.distance)
    }

    /// The same of the first `count` features.
    pub(super) fn density_of(&self, count: usize) -> f64 {
        self.weight * self.factor.density(self.freedom, &self.distance, count)
    }

    /// A figure that was not read, given what was; a feature of it that was read stands as read.
    pub(super) fn foreseen(&self, seen: &Seen, view: &View, explained: &(Vector, f64)) -> Student {
        let mut mean = view.from;
        for (i, one) in view.features() {
            mean += one
                * if seen.read.places().contains(&i) {
                    seen.value[i]
                } else {
                    self.mean[i]
                };
        }
        self.factor
            .given(self.freedom, &self.distance, mean, (&explained.0, explained.1))
    }

    /// What the readings explain of such a figure.
    pub(super) fn explained(&self, seen: &Seen, view: &View) -> (Vector, f64) {
        let (mut with, mut own) = ([0.0; DIMENSIONS], 0.0);
        let open = || view.features().filter(|(i, _)| !seen.read.places().contains(i));
        for (i, one) in open() {
            for (j, with) in with.iter_mut().enumerate() {
                *with += one * self.scale.entry(i, j);
            }
            for (j, other) in open() {
                own += one * other * self.scale.entry(i, j);
            }
        }
        self.factor.explained(&with, own)
    }
}

/// What is judged: a sound model, and the part of the atlas that speaks of the system.
#[derive(Clone, Copy)]
pub(super) struct Grounds<'a> {
    pub(super) sound: &'a SoundModel,
    pub(super) pages: Pages,
}

impl Grounds<'_> {
    /// Takes every term of the hypotheses that are `wanted`, those of one source and fault after each other.
    #[inline]
    pub(super) fn each_term(&self, seen: &Seen, wanted: impl Fn(usize) -> bool, mut take: impl FnMut(&Term<'_>)) {
        let any = anything();
        for component in self.sound.components() {
            let sound = component.scale();
            let mut one = |hypothesis: usize, more: Option<&Matrix>| {
                let scale = Scale {
                    more,
                    ..Scale::of(&sound)
                };
                let factor = Factor::of_entries(|i, j| scale.at(i, j), &seen.noise, &seen.read);
                take(&Term {
                    hypothesis,
                    weight: component.weight,
                    severity: None,
                    mean: &component.mean,
                    scale: &scale,
                    freedom: component.freedom,
                    distance: factor.distance(&off(seen, &component.mean)),
                    factor: &factor,
                });
            };
            if wanted(index(Fault::NoFault)) {
                one(index(Fault::NoFault), None);
            }
            if wanted(NONE) {
                one(NONE, Some(&any));
            }
            for rows in self.pages.of_source(component.source) {
                if wanted(index(rows.fault)) {
                    self.of_fault(seen, component, rows, &mut take);
                }
            }
        }
    }

    #[inline]
    fn of_fault(&self, seen: &Seen, component: &Component, rows: &'static FaultRows, take: &mut impl FnMut(&Term<'_>)) {
        let base = if rows.absorbing {
            &component.of_kind
        } else {
            &component.mean
        };
        // Stored in short, they sum to one only nearly.
        let all: f64 = self
            .pages
            .severities(rows)
            .iter()
            .map(|row| f64::from(row.weight))
            .sum();
        for severe in [false, true] {
            let severities = || self.pages.severities(rows).iter().filter(|row| row.severe == severe);
            if severities().next().is_none() {
                continue;
            }
            let scale = Scale::of_fault(component, rows, severe);
            let factor = Factor::of_entries(|i, j| scale.at(i, j), &seen.noise, &seen.read);
            for row in severities() {
                let mean = moved(base, row, self.sound.few());
                take(&Term {
                    hypothesis: index(rows.fault),
                    weight: component.weight * f64::from(row.weight) / all,
                    severity: Some(row.severity.map(f64::from)),
                    mean: &mean,
                    scale: &scale,
                    freedom: component.freedom,
                    distance: factor.distance(&off(seen, &mean)),
                    factor: &factor,
                });
            }
        }
    }

    /// Density under every hypothesis, the unknown way not yet mixed in.
    pub(super) fn densities(&self, seen: &Seen, wanted: impl Fn(usize) -> bool) -> [f64; HYPOTHESES] {
        let mut densities = [0.0; HYPOTHESES];
        self.each_term(seen, wanted, |term| densities[term.hypothesis] += term.density());
        densities
    }

    /// Density under pairs of faults, whose shifts add up, by the source that counts most; one severity of each, weighed.
    ///
    /// No pair has a fault that lets nothing pump, for it hides every other.
    pub(super) fn each_pair(
        &self,
        seen: &Seen,
        pair: impl Fn(Fault, Fault) -> bool,
        mut take: impl FnMut(Fault, Fault, f64),
    ) {
        let by_weight = |one: &&Component, other: &&Component| one.weight.total_cmp(&other.weight);
        let Some(component) = self.sound.components().iter().max_by(by_weight) else {
            return;
        };
        let page = self.pages.of_source(component.source);
        let pumps = |rows: &&FaultRows| !rows.absorbing;
        for (place, one) in page.iter().enumerate().filter(|(_, rows)| pumps(rows)) {
            for other in page[place + 1..].iter().filter(pumps) {
                if pair(one.fault, other.fault) {
                    take(one.fault, other.fault, self.of_pair(seen, component, one, other));
                }
            }
        }
    }

    fn of_pair(&self, seen: &Seen, component: &Component, one: &'static FaultRows, other: &'static FaultRows) -> f64 {
        // The spread of a sound system stands in both: a pair is judged a little wider than it is.
        let (first, second) = (
            Scale::of_fault(component, one, false),
            Scale::of_fault(component, other, false),
        );
        let entry = |i: usize, j: usize| first.at(i, j) + second.at(i, j) - component.more[i][j];
        let factor = Factor::of_entries(entry, &seen.noise, &seen.read);
        let few = self.sound.few();
        let mut density = 0.0;
        for first in self.pages.severities(one) {
            let mean = moved(&component.mean, first, few);
            for second in self.pages.severities(other) {
                let distance = factor.distance(&off(seen, &moved(&mean, second, few)));
                let weight = f64::from(first.weight) * f64::from(second.weight);
                density += weight * factor.density_of_all(component.freedom, &distance);
            }
        }
        density
    }
}

/// A scale matrix in this case: the table's or a sound system's, and what comes on top of it.
pub(super) struct Scale<'a> {
    base: &'a Matrix,
    table: Option<&'static [f32; TRIANGLE]>,
    more: Option<&'a Matrix>,
    /// What is left of each standard deviation where this vehicle is known; `None` where it is not.
    left: Option<Vector>,
}

impl<'a> Scale<'a> {
    fn of(base: &'a Matrix) -> Self {
        Self {
            base,
            table: None,
            more: None,
            left: None,
        }
    }

    fn of_fault(component: &'a Component, rows: &'static FaultRows, severe: bool) -> Self {
        let mut scale = Self {
            table: Some(&rows.scales[usize::from(severe)]),
            ..Self::of(&component.more)
        };
        if component.is_known() && !rows.absorbing {
            // What is known of this vehicle is known of it with a fault too.
            scale.left = Some(core::array::from_fn(|i| {
                sqrt(f64::max(
                    1.0 - KNOWN_OF_FAULTY * component.gained[i][i] / scale.at(i, i),
                    0.0,
                ))
            }));
        }
        scale
    }

    /// An entry; the row is the larger one.
    #[inline]
    fn at(&self, row: usize, column: usize) -> f64 {
        let mut entry = self.base[row][column];
        if let Some(table) = self.table {
            entry += f64::from(table[row * (row + 1) / 2 + column]);
        }
        if let Some(more) = self.more {
            entry += more[row][column];
        }
        match &self.left {
            Some(left) => entry * left[row] * left[column],
            None => entry,
        }
    }

    fn entry(&self, i: usize, j: usize) -> f64 {
        if i < j { self.at(j, i) } else { self.at(i, j) }
    }
}

/// Part of what is known of a vehicle's own place that holds for it with a fault. Source: engineering judgement; a fault hides part of it.
const KNOWN_OF_FAULTY: f64 = 0.7;

fn moved(mean: &Vector, row: &ShiftRow, few: &[f64; 4]) -> Vector {
    let shift = row.shift(few);
    core::array::from_fn(|i| mean[i] + shift[i])
}

fn off(seen: &Seen, mean: &Vector) -> Vector {
    core::array::from_fn(|i| seen.value[i] - mean[i])
}
