//! Figures against parts: how likely the parts make them, what changes when a few of them change, and what those that
//! were not read would be.

use super::coordinates::FIGURES;
use super::figures::{Change, Changes, Figures, HIGH, LOW, line};
use super::lanes::Lanes;
use super::list::List;
use super::part::Placed;
use super::student::{self, FREEDOM};

/// Places below a diagonal.
const BELOW: usize = FIGURES * (FIGURES - 1) / 2;

/// Where a row below the diagonal begins, and where it ends.
#[inline(always)]
const fn row(n: usize) -> core::ops::Range<usize> {
    let n = n % FIGURES;
    n * n.saturating_sub(1) / 2..n * (n + 1) / 2
}

/// The least part of a variance that is left when all other figures are known.
const LEAST_LEFT: f64 = 1e-4;

/// Figures against parts, seen from several stands: their covariance as L D L', and the deviations made independent.
/// Figures are taken in one after the other.
pub(super) struct Against<const L: usize> {
    order: List<usize, FIGURES>,
    /// Row by row, below the diagonal of ones.
    lower: [Lanes; BELOW],
    /// One over the variance that those before leave of each figure.
    inverse: [Lanes; FIGURES],
    /// How far each figure lies from where those before let expect it.
    off: [[Lanes; L]; FIGURES],
    distance: [Lanes; L],
    /// One over the determinant.
    narrow: Lanes,
}

impl<const L: usize> Against<L> {
    /// To be cleared before anything is taken in.
    pub(super) const NOTHING: Self = Self {
        order: List::new(0),
        lower: [Lanes::ZERO; BELOW],
        inverse: [Lanes::ZERO; FIGURES],
        off: [[Lanes::ZERO; L]; FIGURES],
        distance: [Lanes::ZERO; L],
        narrow: Lanes::ZERO,
    };

    /// Takes in what was read, and nothing else; sound vehicles stand `above` where the parts have them.
    pub(super) fn take(&mut self, placed: &Placed, figures: &Figures, above: &[[Lanes; FIGURES]; L]) {
        self.clear();
        for i in 0..FIGURES {
            if figures.read[i] {
                self.add(placed, figures, above, i);
            }
        }
    }

    /// Takes all out.
    pub(super) fn clear(&mut self) {
        self.order.clear();
        self.distance = [Lanes::ZERO; L];
        self.narrow = Lanes::ONE;
    }

    /// Takes in one figure more.
    pub(super) fn add(&mut self, placed: &Placed, figures: &Figures, above: &[[Lanes; FIGURES]; L], i: usize) {
        let n = self.order.len() % FIGURES;
        let (before, rest) = self.lower.split_at_mut(row(n).start);
        let row = &mut rest[..n];
        let (own, noise, value) = (placed.together(i, i), figures.noise[i], figures.value[i]);
        let mut left = *own;
        explain(
            row,
            (before, &self.inverse),
            &|n| *placed.together(i, self.order[n]),
            &mut left,
        );
        let inverse = &mut self.inverse[n];
        inverse.set(|lane| 1.0 / larger(left.at(lane) + noise, LEAST_LEFT * own.at(lane)));
        self.narrow.multiply(|lane| inverse.at(lane));
        let (mean, (off_before, rest)) = (&placed.mean[i], self.off.split_at_mut(n));
        for (l, off) in rest[0].iter_mut().enumerate() {
            let above = &above[l][i];
            off.set(|lane| value - mean.at(lane) - above.at(lane));
            for (row, before) in row.iter().zip(off_before.iter()) {
                off.add(|lane| -row.at(lane) * before[l].at(lane));
            }
            self.distance[l].add(|lane| inverse.at(lane) * off.at(lane) * off.at(lane));
        }
        self.order.push(i);
    }

    /// The density of the figures.
    pub(super) fn density(&self) -> [Lanes; L] {
        student::density(&self.distance, &self.narrow, self.order.len())
    }

    /// What the density is, and what it becomes when figures change.
    pub(super) fn weigh(&self, weighed: &mut Weighed<L>) {
        let count = self.order.len().min(FIGURES);
        weighed.count = count;
        weighed.distance = self.distance;
        weighed.narrow = self.narrow;
        // The columns of the inverse of L; those of the two sides are kept.
        let (mut sides, mut column) = ([[Lanes::ZERO; FIGURES]; 2], [Lanes::ZERO; FIGURES]);
        for (n, i) in self.order.iter().map(|i| i % FIGURES).enumerate().take(FIGURES) {
            column[n] = Lanes::ONE;
            weighed.stiff[i] = self.inverse[n];
            for (pull, off) in weighed.pull[i].iter_mut().zip(&self.off[n]) {
                let inverse = &self.inverse[n];
                pull.set(|lane| inverse.at(lane) * off.at(lane));
            }
            for k in n + 1..count {
                let mut sum = Lanes::ZERO;
                for (lower, before) in self.lower[row(k)][n..].iter().zip(&column[n..k]) {
                    sum.add(|lane| -lower.at(lane) * before.at(lane));
                }
                column[k] = sum;
                let scaled = Lanes::of(|lane| sum.at(lane) * self.inverse[k].at(lane));
                weighed.stiff[i].add(|lane| scaled.at(lane) * sum.at(lane));
                for (pull, off) in weighed.pull[i].iter_mut().zip(&self.off[k]) {
                    pull.add(|lane| scaled.at(lane) * off.at(lane));
                }
            }
            if let Some(side) = sides.get_mut(n) {
                *side = column;
            }
        }
        if let [LOW, HIGH, ..] = *self.order {
            let [low, high] = &sides;
            weighed.across.set(|_| 0.0);
            for k in 1..count {
                let (low, high, inverse) = (&low[k], &high[k], &self.inverse[k]);
                weighed
                    .across
                    .add(|lane| low.at(lane) * high.at(lane) * inverse.at(lane));
            }
        }
    }

    /// What a figure that was not read, or the severity, would be, seen from each stand: its means, and its standard
    /// deviations.
    pub(super) fn predicted(&self, placed: &Placed, i: usize, figures: &Figures) -> [[Lanes; L]; 2] {
        let (mean, own) = placed.as_read(i);
        let count = self.order.len().min(FIGURES);
        let (mut row, mut left) = ([Lanes::ZERO; FIGURES], own);
        let row = &mut row[..count];
        let with = |n: usize| {
            let mut covariance = placed.as_read_with(i, self.order[n]);
            if let Some((_, sign, side)) = line(i).filter(|(.., side)| *side == self.order[n]) {
                // It will be read with the gauge that has been read already.
                covariance.add(|_| -sign * figures.gauge[side]);
            }
            covariance
        };
        explain(row, (&self.lower, &self.inverse), &with, &mut left);
        // Whatever lies far out is less certain in all it says.
        let freedom = 1.0 / (FREEDOM + self.order.len() as f64);
        left.change(|lane, left| freedom * larger(left, LEAST_LEFT * own.at(lane)));
        let mut means = [mean; L];
        for (row, off) in row.iter().zip(&self.off).take(count) {
            for (mean, off) in means.iter_mut().zip(off) {
                mean.add(|lane| row.at(lane) * off.at(lane));
            }
        }
        let spread = |distance: &Lanes| Lanes::of(|lane| (FREEDOM + distance.at(lane)) * left.at(lane)).root();
        [means, core::array::from_fn(|l| spread(&self.distance[l]))]
    }
}

/// Figures weighed against parts: how far they lie from what is expected, and how they hold each other there, which are half
/// the first and half the second derivative of the squared distance.
#[derive(Clone, Copy)]
pub(super) struct Weighed<const L: usize> {
    count: usize,
    distance: [Lanes; L],
    /// One over the determinant of the covariance.
    narrow: Lanes,
    pull: [[Lanes; L]; FIGURES],
    stiff: [Lanes; FIGURES],
    /// Between the two sides, which alone change together.
    across: Lanes,
}

impl<const L: usize> Weighed<L> {
    pub(super) const NOTHING: Self = Self {
        count: 0,
        distance: [Lanes::ZERO; L],
        narrow: Lanes::ZERO,
        pull: [[Lanes::ZERO; L]; FIGURES],
        stiff: [Lanes::ZERO; FIGURES],
        across: Lanes::ZERO,
    };

    /// The density once some of the figures have changed.
    ///
    /// A variance that is added to one figure changes the inverse of the covariance by a matrix of rank one (Sherman &
    /// Morrison), and its determinant by a factor.
    pub(super) fn density(&self, changes: &Changes) -> [Lanes; L] {
        let (mut distance, mut narrow) = (self.distance, self.narrow);
        let mut bound = Lanes::ZERO; // how much stiffer the second one is held by the first one than after its change
        let mut drawn = [Lanes::ZERO; L]; // and how much the first one pulls at it
        for (n, Change { figure, value, noise }) in changes.iter().enumerate() {
            let mut stiff = self.stiff[figure % FIGURES];
            stiff.add(|lane| -bound.at(lane));
            let softer = Lanes::of(|lane| 1.0 / larger(1.0 + noise * stiff.at(lane), LEAST_LEFT));
            narrow.multiply(|lane| softer.at(lane));
            let across = &self.across;
            for l in 0..L {
                let (pull, before) = (&self.pull[figure % FIGURES][l], &mut drawn[l]);
                distance[l].add(|lane| {
                    let before = pull.at(lane) + before.at(lane);
                    let pull = before + value * stiff.at(lane);
                    value * (before + pull) - noise * softer.at(lane) * pull * pull
                });
                if n + 1 < changes.len() {
                    before.set(|lane| {
                        let pull = pull.at(lane) + value * stiff.at(lane);
                        across.at(lane) * (value - noise * softer.at(lane) * pull)
                    });
                }
            }
            if n + 1 < changes.len() {
                bound.set(|lane| noise * softer.at(lane) * across.at(lane) * across.at(lane));
            }
        }
        for distance in &mut distance {
            distance.change(|_, distance| larger(distance, 0.0));
        }
        student::density(&distance, &narrow, self.count)
    }
}

/// A row of the factor below those before, from the covariances to their figures; `left` is the variance of the row's own
/// figure, and loses what they explain.
#[inline(never)] // it is large
fn explain(
    of: &mut [Lanes],
    (before, inverse): (&[Lanes], &[Lanes; FIGURES]),
    covariance: &dyn Fn(usize) -> Lanes,
    left: &mut Lanes,
) {
    for n in 0..of.len().min(FIGURES) {
        let mut sum = covariance(n);
        for (scaled, of) in of[..n].iter().zip(&before[row(n)]) {
            sum.add(|lane| -scaled.at(lane) * of.at(lane));
        }
        left.add(|lane| -sum.at(lane) * sum.at(lane) * inverse[n].at(lane));
        of[n] = sum;
    }
    for (of, inverse) in of.iter_mut().zip(inverse) {
        of.multiply(|lane| inverse.at(lane));
    }
}

/// The larger one; neither may be NaN.
#[inline(always)]
fn larger(a: f64, b: f64) -> f64 {
    if a > b { a } else { b }
}

#[cfg(test)]
mod tests {
    use super::super::cloud_table::CLOUDS;
    use super::super::coordinates::CONDITIONS;
    use super::super::figures::{NO_CHANGES, SUBCOOLING, SUPERHEAT, VENT};
    use super::super::own::Apart;
    use super::super::part::{EVERY, Told};
    use super::*;
    use crate::circuit::Estimate;
    use crate::names::Fault;

    /// Fixed-clutch systems with an expansion valve in weather of the fit; sound ones come first.
    const KIND: usize = 0;
    const MILD: [Option<f64>; CONDITIONS] = [
        Some(0.2),
        Some(0.0),
        None,
        Some(0.0),
        Some(-2.0),
        None,
        Some(0.3),
        Some(1.0),
        None,
    ];
    const HERE: [[Lanes; FIGURES]; 1] = [[Lanes::ZERO; FIGURES]];

    fn read(values: &[(usize, f64)], sd: f64) -> Figures {
        let mut figures = [None; FIGURES];
        for (at, value) in values {
            figures[*at] = Some(Estimate {
                value: *value,
                standard_uncertainty: sd,
            });
        }
        Figures::of(&figures, &[0.0; 3])
    }

    fn against(placed: &Placed, figures: &Figures) -> Against<1> {
        let mut against = Against::NOTHING;
        against.take(placed, figures, &HERE);
        against
    }

    /// The density of some figures in a lane.
    fn density(placed: &Placed, values: &[(usize, f64)], lane: usize) -> f64 {
        let [density] = against(placed, &read(values, 1.0)).density();
        density.at(lane)
    }

    fn each_sound_part(mut test: impl FnMut(&Placed, usize)) {
        let (parts, mut placed) = (&CLOUDS[KIND][0], Placed::NOWHERE);
        placed.take(parts, &Told::of(&MILD, &[Apart::NOT; FIGURES]), &EVERY);
        for lane in (0..2).filter(|lane| parts.fault[*lane] == Fault::NoFault) {
            test(&placed, lane);
        }
    }

    fn figure(placed: &Placed, i: usize, lane: usize) -> (f64, f64) {
        let [mean, spread] = placed.figure(i);
        (mean.at(lane), spread.at(lane))
    }

    /// Numerical integration over the figure that was not read.
    #[test]
    fn a_figure_that_was_not_read_drops_out_exactly() {
        each_sound_part(|placed, lane| {
            for (seen, unseen) in [(LOW, HIGH), (HIGH, SUBCOOLING), (LOW, SUPERHEAT)] {
                let at = figure(placed, seen, lane).0 + 2.0;
                let alone = density(placed, &[(seen, at)], lane);
                let (mean, spread) = figure(placed, unseen, lane);
                let step = libm::hypot(spread, 1.0) / 20.0;
                let both: f64 = (-2_000..2_000)
                    .map(|k| mean + step * f64::from(k))
                    .map(|x| step * density(placed, &[(seen, at), (unseen, x)], lane))
                    .sum();
                assert!((both / alone - 1.0).abs() < 1e-6, "{seen} {unseen}: {both} {alone}");
            }
        });
    }

    /// What becomes of the density when figures change is what it is when they are weighed anew.
    #[test]
    fn figures_that_change_need_not_be_weighed_anew() {
        each_sound_part(|placed, lane| {
            let at = |i: usize, off: f64| (i, figure(placed, i, lane).0 + off);
            let mut before = [
                at(LOW, 2.0),
                at(HIGH, -3.0),
                at(VENT, 1.0),
                at(SUPERHEAT, 2.5),
                at(SUBCOOLING, -1.5),
            ];
            let first = read(&before, 1.0);
            let mut weighed = Weighed::NOTHING;
            against(placed, &first).weigh(&mut weighed);
            let holds = |figures: &Figures| {
                let changes = figures.changes_from(&first).unwrap();
                let ([found], [anew]) = (weighed.density(&changes), against(placed, figures).density());
                assert!(
                    (found.at(lane) / anew.at(lane) - 1.0).abs() < 1e-10,
                    "{found:?} {anew:?}"
                );
                changes.len()
            };
            assert_eq!(holds(&first), NO_CHANGES.len());
            for i in 2..5 {
                let mut figures = first;
                figures.value[i] -= 7.0;
                figures.noise[i] += 9.0;
                assert_eq!(holds(&figures), 1);
            }
            // A pressure, with the lines as warm as they were.
            before[0].1 += 4.0;
            before[3].1 -= 4.0;
            let mut one_side = read(&before, 1.0);
            one_side.noise[LOW] += 30.0;
            assert_eq!(holds(&one_side), 1);
            before[1].1 -= 8.0;
            before[4].1 -= 8.0;
            let mut both_sides = read(&before, 1.0);
            both_sides.noise[HIGH] -= 0.7;
            assert_eq!(holds(&both_sides), 2);
        });
    }

    /// What is predicted of a figure is what the joint density says of it once the other is known.
    #[test]
    fn a_prediction_is_the_joint_density_along_its_figure() {
        each_sound_part(|placed, lane| {
            let (seen, at) = (HIGH, figure(placed, HIGH, lane).0 + 3.0);
            let alone = density(placed, &[(seen, at)], lane);
            let figures = read(&[(seen, at)], 1.0);
            let [[mean], [spread]] = against(placed, &figures).predicted(placed, VENT, &figures);
            let (mean, spread) = (mean.at(lane), spread.at(lane));
            // The density of the pair has the uncertainty of the second reading in it.
            let step = 0.2 * spread;
            let (mut total, mut moment) = (0.0, 0.0);
            for k in -2_000..2_000 {
                let x = mean + step * f64::from(k);
                let p = step * density(placed, &[(seen, at), (VENT, x)], lane) / alone;
                total += p;
                moment += p * x;
            }
            assert!(
                (total - 1.0).abs() < 1e-6 && (moment - mean).abs() < 1e-4 * spread,
                "{moment} {mean}"
            );
        });
    }
}
