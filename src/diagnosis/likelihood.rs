//! The likelihood of a feature vector under every hypothesis: one sum over sources and severities.

use super::atlas::{ANYTHING, Pages};
use super::batch::{Batch, Lane, OfSource, Places, Seen, Take, WIDE};
use super::faults::{NONE, index};
use super::features::{FEATURES, FIGURE_OF, place};
use super::rows::{Bits, CountedFrom, FaultRows, number};
use crate::expected::{Component, SoundModel};
use crate::names::{EntryError, Fault};
use crate::numerics::multivariate_t::{DIMENSIONS, Factor, TRIANGLE, Triangle, Vector, entries_of};

/// Share of each fault's likelihood for effects that the atlas does not know, so that no tail of a distribution decides alone;
/// for sound systems a third of it. Source: log loss on makes that were left out of the fit; 7 to 15 % do equally well.
const UNKNOWN_WAY: f64 = 0.07;
const UNKNOWN_WAY_SOUND: f64 = UNKNOWN_WAY / 3.0;

/// What is added to the scale matrix of a fault that counts from the ambient.
const NOTHING: Triangle = [0.0; TRIANGLE];

/// The share of [`NONE`] in the likelihood of a fault.
pub(super) const fn unknown_way(fault: Fault) -> f64 {
    if matches!(fault, Fault::NoFault) {
        UNKNOWN_WAY_SOUND
    } else {
        UNKNOWN_WAY
    }
}

/// What a likelihood is calculated from: a sound model, and the part of the atlas that applies to the system.
#[derive(Clone, Copy)]
pub(super) struct Grounds<'a> {
    pub(super) sound: &'a SoundModel,
    pub(super) pages: Pages,
}

impl Grounds<'_> {
    /// Calls `take` with the batches of the hypotheses that are `wanted`, source by source; mild rows come before severe ones,
    /// so that the lanes of a batch have similar numbers of rows.
    #[inline(never)]
    pub(super) fn each_batch(&self, seen: &Seen, wanted: &dyn Fn(usize) -> bool, take: Take<'_>) {
        for component in self.sound.components() {
            let source = OfSource::new(component, seen, self.sound.few());
            let mut batch = Batch::new(&source);
            let sound = component.scale();
            let unmoved = [(&seen.value, &seen.noise, [index(Fault::NoFault), NONE])];
            source.add_unmoved(&mut batch, &sound, unmoved, wanted, take);
            let more = seen.read.part_of(|i, j| component.more.at(i, j));
            let page = self.pages.of_source(component.source);
            for severe in [false, true] {
                for rows in page.iter().filter(|rows| wanted(index(rows.fault))) {
                    let severities = self.pages.severities(rows);
                    let (mut mild, mut all) = (0, 0.0);
                    for row in severities {
                        mild += usize::from(!row.severe);
                        all += f64::from(row.weight);
                    }
                    let (mild, of_severe) = severities.split_at(mild);
                    let part = if severe { of_severe } else { mild };
                    if part.is_empty() {
                        continue;
                    }
                    let (base, off) = source.counted_from(rows);
                    let table = &rows.scales[usize::from(severe)];
                    let lane = Lane {
                        hypothesis: index(rows.fault),
                        base,
                        scale: source.scale(rows, table),
                        rows: part,
                        weight: component.weight / all,
                    };
                    let more = if rows.counted_from == CountedFrom::Ambient {
                        &NOTHING
                    } else {
                        &more
                    };
                    let entry = |at: usize| more[at] + entry_of(seen, table, at);
                    match &lane.scale.left {
                        None => batch.add(lane, (off, &seen.noise), entry, take),
                        Some(left) => {
                            let left = seen.read.part_of(|i, j| left[i] * left[j]);
                            batch.add(lane, (off, &seen.noise), |at| entry(at) * left[at], take);
                        }
                    }
                }
            }
            batch.end(take);
        }
    }

    /// Density under a sound system and under an unlisted cause, for several sets of readings of the same features: values and
    /// variances of the instruments of each, in the order of `read`.
    #[inline(never)]
    pub(super) fn of_unmoved(&self, seen: &Seen, all: &[(EntryError, Vector, Vector)], take: Take<'_>) {
        for component in self.sound.components() {
            let source = OfSource::new(component, seen, self.sound.few());
            let (mut batch, sound) = (Batch::new(&source), component.scale());
            let each = all.iter().enumerate();
            let each = each.map(|(at, (_, value, noise))| (value, noise, [2 * at, 2 * at + 1]));
            source.add_unmoved(&mut batch, &sound, each, &|_| true, take);
            batch.end(take);
        }
    }

    /// For each figure in turn the density of all other readings, under one hypothesis and [`NONE`], and of that figure alone
    /// under [`NONE`]; zeros where the figure was not read.
    pub(super) fn without_each(&self, seen: &Seen, hypothesis: usize) -> [([f64; 2], f64); FEATURES] {
        let mut densities = [([0.0; 2], 0.0); FEATURES];
        let of = |figure: usize| {
            let places = seen.read.places().iter().enumerate();
            let mut own = places.filter(|(_, i)| place(FIGURE_OF[**i]) == figure).map(|(n, _)| n);
            Some((own.next()?, own.next()))
        };
        let figures: [Option<Places>; FEATURES] = core::array::from_fn(of);
        let wanted = |h: usize| h == hypothesis || h == NONE;
        self.each_batch(seen, &wanted, &mut |batch| {
            batch.each_without(&figures, |figure, at, density| {
                densities[figure].0[usize::from(at == NONE)] += density;
            });
        });
        for ((_, alone), figure) in densities.iter_mut().zip(figures) {
            let Some((first, second)) = figure else { continue };
            let places = [first, second.unwrap_or(first)];
            let count = 1 + usize::from(second.is_some());
            for component in self.sound.components() {
                let [(i, value), (j, other)] = places.map(|n| (seen.read.places()[n], seen.value[n]));
                let scale =
                    |i: usize, j: usize| component.lasting.at(i, j) + component.passing.at(i, j) + ANYTHING.at(i, j);
                let entries = [scale(i, i), scale(i, j), scale(j, j)];
                let mut noise = [0.0; DIMENSIONS];
                noise[..2].copy_from_slice(&places.map(|n| seen.noise[n]));
                let mut factor = Factor::<1>::empty(count);
                factor.fill(0, |at| entries[at], &noise);
                factor.factorise();
                let mut off = [[0.0]; DIMENSIONS];
                (off[0], off[1]) = ([value - component.mean[i]], [other - component.mean[j]]);
                factor.solve(&mut off);
                let [fall] = component.freedom.fall(factor.product(&off, &off), count);
                *alone += component.weight * component.freedom.peaks()[count] * factor.narrow()[0] * fall;
            }
        }
        densities
    }

    /// Density under pairs of faults, whose shifts add up, by the source with the largest weight, summed over the severities of
    /// both.
    ///
    /// Faults that stop the compressor from pumping are left out, because they hide every other fault.
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
        let more = seen.read.part_of(|i, j| component.more.at(i, j));
        let page = self.pages.of_source(component.source);
        let pumps = |rows: &&FaultRows| !rows.nothing_pumps();
        let part = |rows: &'static FaultRows| {
            let scale = source.scale(rows, &rows.scales[0]);
            match scale.left {
                None => {
                    let mut part = more;
                    for (at, part) in part.iter_mut().enumerate().take(entries_of(seen.read.count())) {
                        *part += entry_of(seen, &rows.scales[0], at);
                    }
                    part
                }
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
                    // Both tables contain the scatter of sound systems, so that a pair gets a little more of it than it has.
                    let (at, second) = (pairs.used, part(other));
                    let entry = |at: usize| first[at] + second[at] - more[at];
                    pairs.factor.fill(at, entry, &seen.noise);
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

/// An entry of a table, by its place in the triangle of what was read.
#[inline]
fn entry_of(seen: &Seen, table: &[Bits; TRIANGLE], at: usize) -> f64 {
    table.get(seen.read.entry(at)).map_or(0.0, |bits| number(*bits))
}
