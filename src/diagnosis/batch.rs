//! Scale matrices worked out side by side: the terms of a likelihood that share each, and their densities.

use super::atlas::{ANYTHING, MOST_ROWS, STILL};
use super::faults::NONE;
use super::rows::{Bits, FaultRows, ShiftRow, number};
use crate::circuit::FeatureVector;
use crate::expected::{Component, View};
use crate::numerics::multivariate_t::{
    DIMENSIONS, Factor, Lanes, Matrix, Read, Student, TRIANGLE, Vector, Vectors, entry_of,
};
use crate::numerics::sqrt;

/// What was read: values and variances of the instruments, in the order of `read`.
pub(super) struct Seen {
    pub(super) value: Vector,
    pub(super) noise: Vector,
    pub(super) read: Read,
}

impl Seen {
    pub(super) fn of(features: &FeatureVector) -> Self {
        let read = Read::of(|i| features.read[i].is_some());
        let (mut value, mut noise) = ([0.0; DIMENSIONS], [0.0; DIMENSIONS]);
        for (n, i) in read.places().iter().enumerate() {
            if let Some(reading) = features.read[*i] {
                value[n] = reading.value;
                noise[n] = reading.standard_uncertainty * reading.standard_uncertainty;
            }
        }
        Self { value, noise, read }
    }

    /// The same of some of the features.
    pub(super) fn keeping(&self, kept: impl Fn(usize) -> bool) -> Self {
        let read = Read::of(|i| self.read.places().contains(&i) && kept(i));
        let (mut value, mut noise) = ([0.0; DIMENSIONS], [0.0; DIMENSIONS]);
        let places = self.read.places().iter().enumerate();
        for (to, (n, _)) in places.filter(|(_, i)| kept(**i)).enumerate() {
            value[to] = self.value[n];
            noise[to] = self.noise[n];
        }
        Self { value, noise, read }
    }

    /// What a feature reads; `None` where it was not read.
    pub(super) fn value_of(&self, feature: usize) -> Option<f64> {
        let at = self.read.places().iter().position(|i| *i == feature)?;
        Some(self.value[at])
    }

    /// The readings less a mean.
    pub(super) fn off(&self, mean: &Vector) -> Vector {
        let mean = self.read.part(mean);
        core::array::from_fn(|n| self.value[n] - mean[n])
    }
}

/// So many scale matrices are worked out side by side.
pub(super) const WIDE: usize = 4;

/// Some scale matrices by one source, each with the severities of a hypothesis that share it.
pub(super) struct Batch<'a> {
    pub(super) source: &'a OfSource<'a>,
    /// How many of the lanes are used.
    pub(super) used: usize,
    pub(super) lanes: [Lane<'a>; WIDE],
    pub(super) factor: Factor<WIDE>,
    /// The readings less the mean of a sound system.
    pub(super) off: Vectors<WIDE>,
}

/// A scale matrix, and the t distributions that have it: they differ in their mean.
#[derive(Clone, Copy)]
pub(super) struct Lane<'a> {
    /// A fault's place, or [`NONE`].
    pub(super) hypothesis: usize,
    pub(super) base: &'a Vector,
    pub(super) scale: Scale<'a>,
    pub(super) rows: &'static [ShiftRow],
    /// The chance of the source over that of all rows of the fault, which sum to one only nearly, as they are stored in short.
    pub(super) weight: f64,
}

/// One row of each lane.
pub(super) struct Terms {
    place: usize,
    /// Chances of source and severity; nought where a lane has no such row.
    weight: Lanes<WIDE>,
    /// The readings less the means, in independent deviations.
    independent: Vectors<WIDE>,
}

/// A figure that was not read: its covariances with what was, and the part of its variance that they leave.
pub(super) type Explained = (Vectors<WIDE>, Lanes<WIDE>);

impl<'a> Batch<'a> {
    pub(super) fn new(source: &'a OfSource<'a>) -> Self {
        let blank = Lane {
            hypothesis: NONE,
            base: &source.component.mean,
            scale: Scale::of(&source.component.more),
            rows: &[],
            weight: 0.0,
        };
        Self {
            source,
            used: 0,
            lanes: [blank; WIDE],
            factor: Factor::empty(source.seen.read.count()),
            off: [[0.0; WIDE]; DIMENSIONS],
        }
    }

    /// Adds a scale matrix of which `entry` gives what was read, and hands the batch on when it is full.
    #[inline]
    pub(super) fn add(
        &mut self,
        lane: Lane<'a>,
        (off, noise): (&Vector, &Vector),
        entry: impl Fn(usize) -> f64,
        take: &mut impl FnMut(&Batch<'_>),
    ) {
        let at = self.used;
        self.factor.fill(at, entry, noise);
        for (to, off) in self.off.iter_mut().zip(off) {
            to[at] = *off;
        }
        self.lanes[at] = lane;
        self.used += 1;
        if self.used == WIDE {
            self.end(take);
        }
    }

    /// Hands on what it holds.
    pub(super) fn end(&mut self, take: &mut impl FnMut(&Batch<'_>)) {
        if self.used > 0 {
            self.factor.factorise();
            take(self);
            self.used = 0;
        }
    }

    pub(super) fn lanes(&self) -> &[Lane<'a>] {
        &self.lanes[..self.used]
    }

    /// The terms of the sum, one row of each lane after the other.
    #[inline]
    pub(super) fn terms(&self) -> impl Iterator<Item = Terms> {
        let seen = self.source.seen;
        let most = self.lanes().iter().map(|lane| lane.rows.len()).max().unwrap_or(0);
        (0..most).map(move |place| {
            let (mut weight, mut independent) = ([0.0; WIDE], self.off);
            for (at, lane) in self.lanes().iter().enumerate() {
                if let Some(row) = lane.rows.get(place) {
                    weight[at] = lane.weight * f64::from(row.weight);
                    for (off, i) in independent.iter_mut().zip(seen.read.places()) {
                        off[at] -= row.shift_of(*i, self.source.few);
                    }
                }
            }
            self.factor.solve(&mut independent);
            Terms {
                place,
                weight,
                independent,
            }
        })
    }

    /// Density at the means over the first `count` features.
    pub(super) fn tops(&self, count: usize) -> Lanes<WIDE> {
        self.factor
            .narrow(count)
            .map(|narrow| self.source.peaks[count] * narrow)
    }

    /// The densities of terms, weighed; `tops` are those of all features.
    #[inline]
    pub(super) fn densities(&self, terms: &Terms, tops: &Lanes<WIDE>) -> Lanes<WIDE> {
        let squared = self.factor.product(&terms.independent, &terms.independent);
        let fall = self
            .source
            .component
            .freedom
            .fall(squared, self.source.seen.read.count());
        core::array::from_fn(|at| terms.weight[at] * tops[at] * fall[at])
    }

    /// The place and hypothesis of each lane that has such a row, and the row.
    pub(super) fn each(&self, terms: &Terms) -> impl Iterator<Item = (usize, usize, &'static ShiftRow)> {
        let place = terms.place;
        let lanes = self.lanes().iter().enumerate();
        lanes.filter_map(move |(at, lane)| Some((at, lane.hypothesis, lane.rows.get(place)?)))
    }

    /// Adds the densities of all terms.
    #[inline]
    pub(super) fn add_to<const N: usize>(&self, densities: &mut [f64; N]) {
        let tops = self.tops(self.source.seen.read.count());
        for terms in self.terms() {
            let lanes = self.lanes().iter().zip(self.densities(&terms, &tops));
            for (lane, density) in lanes {
                densities[lane.hypothesis] += density;
            }
        }
    }

    /// Adds the densities of all that was read but one figure, at one or two places in the order of reading.
    pub(super) fn add_without(&self, (first, second): (usize, Option<usize>), mut add: impl FnMut(usize, f64)) {
        let count = self.source.seen.read.count();
        let unit = |place: usize| {
            let mut unit = [[0.0; WIDE]; DIMENSIONS];
            unit[place] = [1.0; WIDE];
            self.factor.solve(&mut unit);
            unit
        };
        // By the block of the figure in the inverse of the matrix.
        let one = unit(first);
        let other = second.map(unit);
        let own = self.factor.product(&one, &one);
        let (both, others) = other.map_or(([0.0; WIDE], [1.0; WIDE]), |other| {
            (self.factor.product(&one, &other), self.factor.product(&other, &other))
        });
        let left = count - 1 - usize::from(second.is_some());
        let narrow = self.factor.narrow(count);
        let determinant: Lanes<WIDE> = core::array::from_fn(|at| own[at] * others[at] - both[at] * both[at]);
        for terms in self.terms() {
            let squared = self.factor.product(&terms.independent, &terms.independent);
            let u = self.factor.product(&one, &terms.independent);
            let v = other.map_or([0.0; WIDE], |other| self.factor.product(&other, &terms.independent));
            let squared: Lanes<WIDE> = core::array::from_fn(|at| {
                let told = u[at] * u[at] * others[at] - 2.0 * u[at] * v[at] * both[at] + v[at] * v[at] * own[at];
                f64::max(squared[at] - told / determinant[at], 0.0)
            });
            let fall = self.source.component.freedom.fall(squared, left);
            for (at, hypothesis, _) in self.each(&terms) {
                let top = self.source.peaks[left] * narrow[at] / sqrt(determinant[at]);
                add(hypothesis, terms.weight[at] * top * fall[at]);
            }
        }
    }

    /// The density of the readings under every severity of these rows together with those of each lane.
    pub(super) fn of_pairs(&self, rows: &[ShiftRow]) -> Lanes<WIDE> {
        let (seen, few) = (self.source.seen, self.source.few);
        let count = seen.read.count();
        let solved = |mut vectors: Vectors<WIDE>| {
            self.factor.solve(&mut vectors);
            vectors
        };
        // Shifts add up in independent deviations too.
        let off = solved(self.source.off.map(|off| [off; WIDE]));
        let tops = self.tops(count);
        let mut firsts = [[[0.0; WIDE]; DIMENSIONS]; MOST_ROWS];
        for (first, row) in firsts.iter_mut().zip(rows) {
            for (first, i) in first.iter_mut().zip(seen.read.places()) {
                *first = [row.shift_of(*i, few); WIDE];
            }
            self.factor.solve(first);
        }
        let mut densities = [0.0; WIDE];
        let most = self.lanes().iter().map(|lane| lane.rows.len()).max().unwrap_or(0);
        for place in 0..most {
            let (mut weight, mut shift) = ([0.0; WIDE], [[0.0; WIDE]; DIMENSIONS]);
            for (at, lane) in self.lanes().iter().enumerate() {
                if let Some(row) = lane.rows.get(place) {
                    weight[at] = f64::from(row.weight);
                    for (shift, i) in shift.iter_mut().zip(seen.read.places()) {
                        shift[at] = row.shift_of(*i, few);
                    }
                }
            }
            let second = solved(shift);
            for (row, first) in rows.iter().zip(&firsts) {
                let mut left = off;
                for ((left, first), second) in left.iter_mut().zip(first).zip(&second).take(count) {
                    for at in 0..WIDE {
                        left[at] -= first[at] + second[at];
                    }
                }
                let fall = self
                    .source
                    .component
                    .freedom
                    .fall(self.factor.product(&left, &left), count);
                for at in 0..WIDE {
                    densities[at] += f64::from(row.weight) * weight[at] * tops[at] * fall[at];
                }
            }
        }
        densities
    }

    /// Adds the densities of the first feature, of the first two, and so on, behind an unused place.
    pub(super) fn add_steps<const N: usize>(&self, steps: &mut [[f64; N]; FeatureVector::COUNT + 1]) {
        let tops: [Lanes<WIDE>; DIMENSIONS + 1] = core::array::from_fn(|count| self.tops(count));
        for terms in self.terms() {
            for (n, squared) in self.factor.squares(&terms.independent).enumerate() {
                let fall = self.source.component.freedom.fall(squared, n + 1);
                for (at, lane) in self.lanes().iter().enumerate() {
                    steps[n + 1][lane.hypothesis] += terms.weight[at] * tops[n + 1][at] * fall[at];
                }
            }
        }
    }

    /// What the readings explain of a figure that was not read.
    pub(super) fn explained(&self, view: &View) -> Explained {
        let seen = self.source.seen;
        let (mut with, mut own) = ([[0.0; WIDE]; DIMENSIONS], [0.0; WIDE]);
        let open = || view.features().filter(|(i, _)| seen.value_of(*i).is_none());
        for (at, lane) in self.lanes().iter().enumerate() {
            for (i, one) in open() {
                for (with, j) in with.iter_mut().zip(seen.read.places()) {
                    with[at] += one * lane.scale.entry(i, *j);
                }
                for (j, other) in open() {
                    own[at] += one * other * lane.scale.entry(i, j);
                }
            }
        }
        self.factor.explained(with, own)
    }

    /// Such a figure, given what was read, by each lane; a feature of it that was read stands as read.
    pub(super) fn foreseen(&self, terms: &Terms, view: &View, (row, left): &Explained) -> [Student; WIDE] {
        let (seen, freedom) = (self.source.seen, self.source.component.freedom);
        let squared = self.factor.product(&terms.independent, &terms.independent);
        let told = self.factor.product(row, &terms.independent);
        core::array::from_fn(|at| {
            let lane = &self.lanes[at];
            let mut mean = view.from + told[at];
            for (i, one) in view.features() {
                let shift = || {
                    lane.rows
                        .get(terms.place)
                        .map_or(0.0, |row| row.shift_of(i, self.source.few))
                };
                mean += one * seen.value_of(i).unwrap_or_else(|| lane.base[i] + shift());
            }
            Student {
                mean,
                scale: sqrt(left[at] * freedom.stretch(squared[at], seen.read.count())),
                freedom: freedom.after(seen.read.count()),
            }
        })
    }
}

/// What the scale matrices of one source have in common.
pub(super) struct OfSource<'a> {
    pub(super) component: &'a Component,
    pub(super) seen: &'a Seen,
    pub(super) few: &'a [f64; 4],
    pub(super) peaks: [f64; DIMENSIONS + 1],
    /// Whether something is known of the vehicle itself.
    pub(super) known: bool,
    /// The readings less the mean of a sound system, and of its kind.
    pub(super) off: Vector,
    pub(super) off_kind: Vector,
}

impl<'a> OfSource<'a> {
    pub(super) fn new(component: &'a Component, seen: &'a Seen, few: &'a [f64; 4]) -> Self {
        Self {
            component,
            seen,
            few,
            peaks: component.freedom.peaks(),
            known: component.is_known(),
            off: seen.off(&component.mean),
            off_kind: seen.off(&component.of_kind),
        }
    }

    /// Adds a sound system and anything at all, as far as they are wanted, for each of these readings; with each the numbers
    /// by which the two are told apart.
    #[inline]
    pub(super) fn add_unmoved<'b>(
        &self,
        batch: &mut Batch<'b>,
        sound: &'b Matrix,
        each: impl IntoIterator<Item = (&'b Seen, [usize; 2])>,
        wanted: &impl Fn(usize) -> bool,
        take: &mut impl FnMut(&Batch<'_>),
    ) where
        'a: 'b,
    {
        let read = &self.seen.read;
        let part = read.part_of(|i, j| sound[i][j]);
        let more = read.part_of(|i, j| ANYTHING[i][j]);
        for (seen, [of_sound, of_any]) in each {
            let off = seen.off(&self.component.mean);
            let lane = |hypothesis: usize, more: Option<&'static Matrix>| Lane {
                hypothesis,
                base: &self.component.mean,
                scale: Scale {
                    more,
                    ..Scale::of(sound)
                },
                rows: &STILL,
                weight: self.component.weight,
            };
            if wanted(of_sound) {
                batch.add(lane(of_sound, None), (&off, &seen.noise), |at| part[at], take);
            }
            if wanted(of_any) {
                let entry = |at: usize| part[at] + more[at];
                batch.add(lane(of_any, Some(&ANYTHING)), (&off, &seen.noise), entry, take);
            }
        }
    }

    /// A scale matrix of a fault.
    pub(super) fn scale(&self, rows: &FaultRows, table: &'static [Bits; TRIANGLE]) -> Scale<'a> {
        let mut scale = Scale {
            table: Some(table),
            ..Scale::of(&self.component.more)
        };
        if self.known && !rows.absorbing {
            // What is known of this vehicle is known of it with a fault too.
            scale.left = Some(core::array::from_fn(|i| {
                let gained = KNOWN_OF_FAULTY * self.component.gained[i][i] / scale.entry(i, i);
                sqrt(f64::max(1.0 - gained, 0.0))
            }));
        }
        scale
    }
}

/// A scale matrix in this case: the table's or a sound system's, and what comes on top of it.
#[derive(Clone, Copy)]
pub(super) struct Scale<'a> {
    pub(super) base: &'a Matrix,
    pub(super) table: Option<&'static [Bits; TRIANGLE]>,
    pub(super) more: Option<&'a Matrix>,
    /// What is left of each standard deviation where this vehicle is known; `None` where it is not.
    pub(super) left: Option<Vector>,
}

impl<'a> Scale<'a> {
    const fn of(base: &'a Matrix) -> Self {
        Self {
            base,
            table: None,
            more: None,
            left: None,
        }
    }

    pub(super) fn entry(&self, i: usize, j: usize) -> f64 {
        let table = self.table.map_or(0.0, |table| number(table[entry_of(i, j)]));
        let more = self.more.map_or(0.0, |more| more[i][j]);
        let left = self.left.as_ref().map_or(1.0, |left| left[i] * left[j]);
        (self.base[i][j] + table + more) * left
    }
}

/// Part of what is known of a vehicle's own place that holds for it with a fault. Source: engineering judgement; a fault hides part of it.
pub(super) const KNOWN_OF_FAULTY: f64 = 0.7;
