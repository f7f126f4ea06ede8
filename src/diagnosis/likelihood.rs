//! The likelihood of a feature vector under every hypothesis: one sum over sources and severities.

use super::atlas::{ANYTHING, FaultRows, Pages, STILL, ShiftRow};
use super::faults::{NONE, index};
use super::features::{FEATURES, FIGURE_OF, place};
use crate::circuit::FeatureVector;
use crate::expected::{Component, SoundModel, View};
use crate::names::Fault;
use crate::numerics::multivariate_t::{
    DIMENSIONS, Factor, Lanes, Matrix, Read, Student, TRIANGLE, Vector, Vectors, entry_of,
};
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

/// What was read: values and variances of the instruments, in the order of `read`.
pub(super) struct Seen {
    value: Vector,
    noise: Vector,
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
    fn keeping(&self, kept: impl Fn(usize) -> bool) -> Self {
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
    fn value_of(&self, feature: usize) -> Option<f64> {
        let at = self.read.places().iter().position(|i| *i == feature)?;
        Some(self.value[at])
    }

    /// The readings less a mean.
    fn off(&self, mean: &Vector) -> Vector {
        let mean = self.read.part(mean);
        core::array::from_fn(|n| self.value[n] - mean[n])
    }
}

/// So many scale matrices are worked out side by side.
const WIDE: usize = 4;

/// Some scale matrices by one source, each with the severities of a hypothesis that share it.
pub(super) struct Batch<'a> {
    source: &'a OfSource<'a>,
    /// How many of the lanes are used.
    used: usize,
    lanes: [Lane<'a>; WIDE],
    factor: Factor<WIDE>,
    /// The readings less the mean of a sound system.
    off: Vectors<WIDE>,
}

/// A scale matrix, and the t distributions that have it: they differ in their mean.
#[derive(Clone, Copy)]
struct Lane<'a> {
    /// A fault's place, or [`NONE`].
    hypothesis: usize,
    base: &'a Vector,
    scale: Scale<'a>,
    rows: &'static [ShiftRow],
    /// The chance of the source over that of all rows of the fault, which sum to one only nearly, as they are stored in short.
    weight: f64,
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
    fn new(source: &'a OfSource<'a>) -> Self {
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
    fn add(
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
    fn end(&mut self, take: &mut impl FnMut(&Batch<'_>)) {
        if self.used > 0 {
            self.factor.factorise();
            take(self);
            self.used = 0;
        }
    }

    fn lanes(&self) -> &[Lane<'a>] {
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
    fn add_without(&self, (first, second): (usize, Option<usize>), mut add: impl FnMut(usize, f64)) {
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
    fn of_pairs(&self, rows: &[ShiftRow]) -> Lanes<WIDE> {
        let (seen, few) = (self.source.seen, self.source.few);
        let count = seen.read.count();
        let solved = |mut vectors: Vectors<WIDE>| {
            self.factor.solve(&mut vectors);
            vectors
        };
        // Shifts add up in independent deviations too.
        let off = solved(self.source.off.map(|off| [off; WIDE]));
        let tops = self.tops(count);
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
            for row in rows {
                let mut shift = [[0.0; WIDE]; DIMENSIONS];
                for (shift, i) in shift.iter_mut().zip(seen.read.places()) {
                    *shift = [row.shift_of(*i, few); WIDE];
                }
                let mut left = solved(shift);
                for ((left, off), second) in left.iter_mut().zip(&off).zip(&second) {
                    for at in 0..WIDE {
                        left[at] = off[at] - left[at] - second[at];
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

/// What is judged: a sound model, and the part of the atlas that speaks of the system.
#[derive(Clone, Copy)]
pub(super) struct Grounds<'a> {
    pub(super) sound: &'a SoundModel,
    pub(super) pages: Pages,
}

impl Grounds<'_> {
    /// Takes the terms of the hypotheses that are `wanted`, by each source.
    #[inline]
    pub(super) fn each_batch(&self, seen: &Seen, wanted: impl Fn(usize) -> bool, mut take: impl FnMut(&Batch<'_>)) {
        for component in self.sound.components() {
            let source = OfSource::new(component, seen, self.sound.few());
            let mut batch = Batch::new(&source);
            let sound = component.scale();
            source.add_unmoved(
                &mut batch,
                &sound,
                [(seen, [index(Fault::NoFault), NONE])],
                &wanted,
                &mut take,
            );
            let (mut part, entries) = (None, seen.read.entries());
            for rows in self.pages.of_source(component.source) {
                if !wanted(index(rows.fault)) {
                    continue;
                }
                let part = part.get_or_insert_with(|| seen.read.part_of(|i, j| component.more[i][j]));
                let (base, off) = if rows.absorbing {
                    (&component.of_kind, &source.off_kind)
                } else {
                    (&component.mean, &source.off)
                };
                let severities = self.pages.severities(rows);
                let all: f64 = severities.iter().map(|row| f64::from(row.weight)).sum();
                let (mild, severe) = severities.split_at(severities.partition_point(|row| !row.severe));
                for (severities, table) in [mild, severe].into_iter().zip(&rows.scales) {
                    if severities.is_empty() {
                        continue;
                    }
                    let lane = Lane {
                        hypothesis: index(rows.fault),
                        base,
                        scale: source.scale(rows, table),
                        rows: severities,
                        weight: component.weight / all,
                    };
                    let entry = |at: usize| part[at] + f64::from(table[entries(at)]);
                    match &lane.scale.left {
                        None => batch.add(lane, (off, &seen.noise), entry, &mut take),
                        Some(left) => {
                            let left = seen.read.part_of(|i, j| left[i] * left[j]);
                            batch.add(lane, (off, &seen.noise), |at| entry(at) * left[at], &mut take);
                        }
                    }
                }
            }
            batch.end(&mut take);
        }
    }

    /// Density of a sound system and of anything at all, for several sets of readings of the same features.
    pub(super) fn of_unmoved<const N: usize>(&self, seen: &[Option<Seen>; N], mut take: impl FnMut(&Batch<'_>)) {
        let Some(first) = seen.iter().flatten().next() else {
            return;
        };
        for component in self.sound.components() {
            let source = OfSource::new(component, first, self.sound.few());
            let (mut batch, sound) = (Batch::new(&source), component.scale());
            let each = seen.iter().enumerate();
            let each = each.filter_map(|(at, seen)| Some((seen.as_ref()?, [2 * at, 2 * at + 1])));
            source.add_unmoved(&mut batch, &sound, each, &|_| true, &mut take);
            batch.end(&mut take);
        }
    }

    /// For each figure in turn the density of all other readings, under one hypothesis and [`NONE`], and of that figure alone
    /// under [`NONE`]; noughts where the figure was not read.
    pub(super) fn without_each(&self, seen: &Seen, hypothesis: usize) -> [([f64; 2], f64); FEATURES] {
        let mut densities = [([0.0; 2], 0.0); FEATURES];
        // The places of each figure in the order of reading; two lines may be read for one.
        let of = |figure: usize| {
            let places = seen.read.places().iter().enumerate();
            let mut own = places
                .filter(move |(_, i)| place(FIGURE_OF[**i]) == figure)
                .map(|(n, _)| n);
            Some((own.next()?, own.next()))
        };
        let figures: [Option<(usize, Option<usize>)>; FEATURES] = core::array::from_fn(of);
        self.each_batch(
            seen,
            |h| h == hypothesis || h == NONE,
            |batch| {
                for (figure, densities) in figures.iter().zip(&mut densities) {
                    let Some(places) = figure else { continue };
                    batch.add_without(*places, |at, density| densities.0[usize::from(at == NONE)] += density);
                }
            },
        );
        for (figure, densities) in densities.iter_mut().enumerate() {
            let alone = seen.keeping(|i| place(FIGURE_OF[i]) == figure);
            let count = alone.read.count();
            for component in self.sound.components().iter().filter(|_| count > 0) {
                let part = alone
                    .read
                    .part_of(|i, j| component.lasting[i][j] + component.passing[i][j] + ANYTHING[i][j]);
                let mut factor = Factor::<1>::empty(count);
                factor.fill(0, |at| part[at], &alone.noise);
                factor.factorise();
                let mut off = alone.off(&component.mean).map(|off| [off]);
                factor.solve(&mut off);
                let [fall] = component.freedom.fall(factor.product(&off, &off), count);
                densities.1 += component.weight * component.freedom.peaks()[count] * factor.narrow(count)[0] * fall;
            }
        }
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
        let source = OfSource::new(component, seen, self.sound.few());
        let more = seen.read.part_of(|i, j| component.more[i][j]);
        let entries = seen.read.entries();
        let page = self.pages.of_source(component.source);
        let pumps = |rows: &&FaultRows| !rows.absorbing;
        let part = |rows: &'static FaultRows| {
            let scale = source.scale(rows, &rows.scales[0]);
            match scale.left {
                None => core::array::from_fn(|at| more[at] + f64::from(rows.scales[0][entries(at)])),
                Some(_) => seen.read.part_of(|i, j| scale.entry(i, j)),
            }
        };
        for (place, one) in page.iter().enumerate().filter(|(_, rows)| pumps(rows)) {
            let mut others = page[place + 1..]
                .iter()
                .filter(pumps)
                .filter(|other| pair(one.fault, other.fault));
            let first = part(one);
            loop {
                let mut pairs = Batch::new(&source);
                for other in others.by_ref().take(WIDE) {
                    // The spread of a sound system stands in both: a pair is judged a little wider than it is.
                    let (at, second) = (pairs.used, part(other));
                    pairs
                        .factor
                        .fill(at, |at| first[at] + second[at] - more[at], &seen.noise);
                    pairs.lanes[at] = Lane {
                        hypothesis: index(other.fault),
                        rows: self.pages.severities(other),
                        ..pairs.lanes[at]
                    };
                    pairs.used += 1;
                }
                if pairs.used == 0 {
                    break;
                }
                pairs.factor.factorise();
                let densities = pairs.of_pairs(self.pages.severities(one));
                for (lane, density) in pairs.lanes().iter().zip(densities) {
                    take(one.fault, Fault::ALL[lane.hypothesis], density);
                }
            }
        }
    }
}

/// What the scale matrices of one source have in common.
struct OfSource<'a> {
    component: &'a Component,
    seen: &'a Seen,
    few: &'a [f64; 4],
    peaks: [f64; DIMENSIONS + 1],
    /// Whether something is known of the vehicle itself.
    known: bool,
    /// The readings less the mean of a sound system, and of its kind.
    off: Vector,
    off_kind: Vector,
}

impl<'a> OfSource<'a> {
    fn new(component: &'a Component, seen: &'a Seen, few: &'a [f64; 4]) -> Self {
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
    fn add_unmoved<'b>(
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
    fn scale(&self, rows: &FaultRows, table: &'static [f32; TRIANGLE]) -> Scale<'a> {
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
struct Scale<'a> {
    base: &'a Matrix,
    table: Option<&'static [f32; TRIANGLE]>,
    more: Option<&'a Matrix>,
    /// What is left of each standard deviation where this vehicle is known; `None` where it is not.
    left: Option<Vector>,
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

    fn entry(&self, i: usize, j: usize) -> f64 {
        let table = self.table.map_or(0.0, |table| f64::from(table[entry_of(i, j)]));
        let more = self.more.map_or(0.0, |more| more[i][j]);
        let left = self.left.as_ref().map_or(1.0, |left| left[i] * left[j]);
        (self.base[i][j] + table + more) * left
    }
}

/// Part of what is known of a vehicle's own place that holds for it with a fault. Source: engineering judgement; a fault hides part of it.
const KNOWN_OF_FAULTY: f64 = 0.7;
