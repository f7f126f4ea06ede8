//! The likelihood of a feature vector under every hypothesis: one sum over sources and severities.

use super::atlas::{ANYTHING, Pages};
use super::batch::{Batch, Lane, OfSource, Seen, WIDE};
use super::faults::{NONE, index};
use super::features::{FEATURES, FIGURE_OF, place};
use super::rows::{FaultRows, number};
use crate::expected::{Component, SoundModel};
use crate::names::Fault;
use crate::numerics::multivariate_t::Factor;

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
                    let entry = |at: usize| part[at] + number(table[entries(at)]);
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
                None => core::array::from_fn(|at| more[at] + number(rows.scales[0][entries(at)])),
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
