//! Scale matrices worked out side by side: the terms of a likelihood that share each, and their densities.

use super::atlas::{AMBIENT, ANYTHING, MOST_ROWS, STILL};
use super::faults::NONE;
use super::features::FEATURES;
use super::rows::{Bits, CountedFrom, FaultRows, ShiftRow};
use super::scale::{KNOWN_OF_FAULTY, Scale};
use crate::circuit::FeatureVector;
use crate::expected::{Component, View};
use crate::numerics::multivariate_t::{
    DIMENSIONS, Factor, Lanes, Read, Student, Symmetric, TRIANGLE, Vector, Vectors, more,
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
        let (value, noise) = values(&read, features);
        Self { value, noise, read }
    }

    /// What a feature reads; `None` where it was not read.
    pub(super) fn value_of(&self, feature: usize) -> Option<f64> {
        let at = self.read.places().iter().position(|i| *i == feature)?;
        Some(self.value[at])
    }
}

/// Values and variances of the instruments of what was read, in order.
pub(super) fn values(read: &Read, features: &FeatureVector) -> (Vector, Vector) {
    let (mut value, mut noise) = ([0.0; DIMENSIONS], [0.0; DIMENSIONS]);
    for (n, i) in read.places().iter().enumerate() {
        if let Some(reading) = features.read[*i] {
            value[n] = reading.value;
            noise[n] = reading.standard_uncertainty * reading.standard_uncertainty;
        }
    }
    (value, noise)
}

/// Number of scale matrices that are factorised side by side.
pub(super) const WIDE: usize = 4;

/// Positions of a figure among the features that were read: two lines may be read for one figure.
pub(super) type Places = (usize, Option<usize>);

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
    /// The weight of the source divided by the sum over all rows of the fault, which is not exactly one, as the weights are
    /// stored as `f32`.
    pub(super) weight: f64,
}

/// One row of each lane.
pub(super) struct Terms {
    place: usize,
    /// Weights of source and severity; zero where a lane has no such row.
    weight: Lanes<WIDE>,
    /// The readings less the means, decorrelated: multiplied by the inverse of the factor L.
    independent: Vectors<WIDE>,
}

/// A figure that was not read: its decorrelated covariances with the features that were, and its variance given them.
pub(super) type Explained = (Vectors<WIDE>, Lanes<WIDE>);

/// Takes a batch of scale matrices once they are factorised.
pub(super) type Take<'t> = &'t mut dyn FnMut(&Batch<'_>);

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

    /// Adds a scale matrix, restricted to the features that were read, and passes the batch on when it is full.
    #[inline]
    pub(super) fn add(
        &mut self,
        lane: Lane<'a>,
        (off, noise): (&Vector, &Vector),
        entry: impl Fn(usize) -> f64,
        take: Take<'_>,
    ) {
        let at = self.used % WIDE;
        self.factor.fill(at, entry, noise);
        for (to, off) in self.off.iter_mut().zip(off) {
            to[at] = *off;
        }
        self.lanes[at] = lane;
        self.used = at + 1;
        if self.used == WIDE {
            self.end(take);
        }
    }

    /// Passes on the lanes that are in use.
    pub(super) fn end(&mut self, take: Take<'_>) {
        if self.used > 0 {
            self.factor.factorise();
            take(self);
            self.used = 0;
        }
    }

    pub(super) fn lanes(&self) -> &[Lane<'a>] {
        &self.lanes[..self.used]
    }

    /// The largest number of rows in a lane.
    fn most_rows(&self) -> usize {
        self.lanes().iter().map(|lane| lane.rows.len()).max().unwrap_or(0)
    }

    /// Calls `take` with the terms of the sum: the first row of each lane, the second, and so on.
    #[inline]
    pub(super) fn each_term(&self, mut take: impl FnMut(&Terms)) {
        let (seen, few) = (self.source.seen, self.source.few);
        for place in 0..self.most_rows() {
            let mut terms = Terms {
                place,
                weight: [0.0; WIDE],
                independent: self.off,
            };
            for (at, lane) in self.lanes().iter().enumerate() {
                if let Some(row) = lane.rows.get(place) {
                    terms.weight[at] = lane.weight * f64::from(row.weight);
                    for (n, i) in seen.read.places().iter().enumerate() {
                        terms.independent[n][at] -= row.shift_of(*i, few);
                    }
                }
            }
            self.factor.solve(&mut terms.independent);
            take(&terms);
        }
    }

    /// Density at the means over no feature, the first one, the first two, and so on.
    pub(super) fn tops(&self) -> [Lanes<WIDE>; DIMENSIONS + 1] {
        self.factor.tops(&self.source.peaks)
    }

    /// The weighted densities of the terms; `tops` are those at the means of all features.
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

    /// Adds to each hypothesis its densities over no feature, the first one, the first two, and so on; calls `each` with every
    /// term and its densities over all features.
    pub(super) fn add_steps<const N: usize>(
        &self,
        steps: &mut [[f64; N]; FeatureVector::COUNT + 1],
        mut each: impl FnMut(&Terms, &Lanes<WIDE>),
    ) {
        let (tops, freedom) = (self.tops(), self.source.component.freedom);
        let mut sums = [[0.0; WIDE]; FeatureVector::COUNT + 1];
        self.each_term(|terms| {
            let mut densities = terms.weight;
            more(&mut sums[0], &densities);
            let squares = self.factor.squares(&terms.independent);
            for count in 1..=self.source.seen.read.count().min(DIMENSIONS) {
                let fall = freedom.fall(squares[count - 1], count);
                densities = core::array::from_fn(|at| terms.weight[at] * tops[count][at] * fall[at]);
                more(&mut sums[count], &densities);
            }
            each(terms, &densities);
        });
        for (at, lane) in self.lanes().iter().enumerate() {
            for (step, sum) in steps.iter_mut().zip(&sums).take(self.source.seen.read.count() + 1) {
                step[lane.hypothesis] += sum[at];
            }
        }
    }

    /// For each figure in turn, the density of all features that were read but its own, which are one or two.
    ///
    /// Method: the block of the figure in the inverse of the scale matrix.
    pub(super) fn each_without(&self, figures: &[Option<Places>; FEATURES], mut take: impl FnMut(usize, usize, f64)) {
        let count = self.source.seen.read.count();
        let narrow = self.factor.narrow();
        let unit = |place: usize| {
            let mut unit = [[0.0; WIDE]; DIMENSIONS];
            unit[place] = [1.0; WIDE];
            self.factor.solve(&mut unit);
            unit
        };
        let block = |(first, second): Places| {
            let (one, other) = (unit(first), second.map(unit));
            let own = self.factor.product(&one, &one);
            other.map_or((own, [0.0; WIDE], [1.0; WIDE]), |other| {
                (
                    own,
                    self.factor.product(&one, &other),
                    self.factor.product(&other, &other),
                )
            })
        };
        let blocks = figures.map(|figure| figure.map(block));
        self.each_term(|terms| {
            let squared = self.factor.product(&terms.independent, &terms.independent);
            let whole = self.factor.whole(&terms.independent);
            for (figure, (places, block)) in figures.iter().zip(&blocks).enumerate() {
                let (Some((first, second)), Some((own, both, others))) = (places, block) else {
                    continue;
                };
                let (u, v) = (whole[*first], second.map_or([0.0; WIDE], |second| whole[second]));
                let left = count - 1 - usize::from(second.is_some());
                let determinant: Lanes<WIDE> = core::array::from_fn(|at| own[at] * others[at] - both[at] * both[at]);
                let squared: Lanes<WIDE> = core::array::from_fn(|at| {
                    let told = u[at] * u[at] * others[at] - 2.0 * u[at] * v[at] * both[at] + v[at] * v[at] * own[at];
                    f64::max(squared[at] - told / determinant[at], 0.0)
                });
                let fall = self.source.component.freedom.fall(squared, left);
                for (at, hypothesis, _) in self.each(terms) {
                    let top = self.source.peaks[left] * narrow[at] / sqrt(determinant[at]);
                    take(figure, hypothesis, terms.weight[at] * top * fall[at]);
                }
            }
        });
    }

    /// The density of the readings under every severity of these rows together with those of each lane.
    pub(super) fn of_pairs(&self, rows: &[ShiftRow]) -> Lanes<WIDE> {
        let (seen, few) = (self.source.seen, self.source.few);
        let count = seen.read.count();
        let solved = |mut vectors: Vectors<WIDE>| {
            self.factor.solve(&mut vectors);
            vectors
        };
        // Decorrelating is linear, so that decorrelated shifts add up too.
        let off = solved(self.source.off.map(|off| [off; WIDE]));
        let tops = self.tops()[count];
        let mut firsts = [[[0.0; WIDE]; DIMENSIONS]; MOST_ROWS];
        for (first, row) in firsts.iter_mut().zip(rows) {
            for (n, i) in seen.read.places().iter().enumerate() {
                first[n] = [row.shift_of(*i, few); WIDE];
            }
            self.factor.solve(first);
        }
        let mut densities = [0.0; WIDE];
        for place in 0..self.most_rows() {
            let (mut weight, mut shift) = ([0.0; WIDE], [[0.0; WIDE]; DIMENSIONS]);
            for (at, lane) in self.lanes().iter().enumerate() {
                if let Some(row) = lane.rows.get(place) {
                    weight[at] = f64::from(row.weight);
                    for (n, i) in seen.read.places().iter().enumerate() {
                        shift[n][at] = row.shift_of(*i, few);
                    }
                }
            }
            let second = solved(shift);
            for (row, first) in rows.iter().zip(&firsts) {
                let mut left = off;
                for n in 0..count.min(DIMENSIONS) {
                    for at in 0..WIDE {
                        left[n][at] -= first[n][at] + second[n][at];
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

    /// The distribution of such a figure given the readings, for each lane; a feature of it that was read keeps its value.
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
            off: seen.read.off(&seen.value, &component.mean),
            off_kind: seen.read.off(&seen.value, &component.of_kind),
        }
    }

    /// Adds the lanes of a sound system and of an unlisted cause, where they are wanted, for each of these sets of readings:
    /// values, variances of the instruments, and the numbers of the two hypotheses.
    pub(super) fn add_unmoved<'b>(
        &self,
        batch: &mut Batch<'b>,
        sound: &'b Symmetric,
        each: impl IntoIterator<Item = (&'b Vector, &'b Vector, [usize; 2])>,
        wanted: &dyn Fn(usize) -> bool,
        take: Take<'_>,
    ) where
        'a: 'b,
    {
        let read = &self.seen.read;
        let part = read.part_of(|i, j| sound.at(i, j));
        let more = read.part_of(|i, j| ANYTHING.at(i, j));
        for (value, noise, [of_sound, of_any]) in each {
            let off = read.off(value, &self.component.mean);
            let lane = |hypothesis: usize, more: Option<&'static Symmetric>| Lane {
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
                batch.add(lane(of_sound, None), (&off, noise), |at| part[at], take);
            }
            if wanted(of_any) {
                let entry = |at: usize| part[at] + more[at];
                batch.add(lane(of_any, Some(&ANYTHING)), (&off, noise), entry, take);
            }
        }
    }

    /// The mean from which the shifts of a fault count, and the readings less that.
    pub(super) fn counted_from(&self, rows: &FaultRows) -> (&'a Vector, &Vector) {
        match rows.counted_from {
            CountedFrom::Vehicle => (&self.component.mean, &self.off),
            CountedFrom::Kind => (&self.component.of_kind, &self.off_kind),
            CountedFrom::Ambient => (&AMBIENT, &self.seen.value),
        }
    }

    /// A scale matrix of a fault.
    pub(super) fn scale(&self, rows: &FaultRows, table: &'static [Bits; TRIANGLE]) -> Scale<'a> {
        let more = match rows.counted_from {
            CountedFrom::Vehicle | CountedFrom::Kind => &self.component.more,
            CountedFrom::Ambient => &Symmetric::ZERO,
        };
        let mut scale = Scale {
            table: Some(table),
            ..Scale::of(more)
        };
        if self.known && !rows.nothing_pumps() {
            // What is known of this vehicle narrows its faulty states too.
            scale.left = Some(core::array::from_fn(|i| {
                let gained = KNOWN_OF_FAULTY * self.component.gained[i] / scale.entry(i, i);
                sqrt(f64::max(1.0 - gained, 0.0))
            }));
        }
        scale
    }
}
