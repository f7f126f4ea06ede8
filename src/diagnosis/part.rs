//! Parts of clouds, side by side: figures that follow the conditions linearly, and what is left varies together.

use super::coordinates::{CONDITIONS, FIGURES, beyond_fit};
use super::figures::{LINES, line};
use super::lanes::{LANES, Lanes};
use super::list::List;
use super::own::Apart;
use crate::names::Fault;
use crate::numerics::sqrt;

/// The figures and the severity.
pub(super) const DIMENSIONS: usize = FIGURES + 1;
/// The place of the severity.
pub(super) const SEVERITY: usize = FIGURES;
/// All of them.
pub(super) const EVERY: [usize; DIMENSIONS] = [0, 1, 2, 3, 4, 5, 6, SEVERITY];
/// Pairs of dimensions.
const PAIRS: usize = DIMENSIONS * (DIMENSIONS - 1) / 2;
/// Unit in which the table holds each figure and the severity.
const STEP: [f64; DIMENSIONS] = [0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 1e-3, 1e-4];
/// Unit of a condition at the centre of a part, and of the part's width.
const CENTRE_STEP: f64 = 1.0 / 32.0;
const WIDTH_STEP: f64 = 1.0 / 64.0;

/// Parts side by side, as the table holds them.
pub(super) struct Parts {
    pub(super) fault: [Fault; LANES],
    /// Share of its cloud, of 65,535; none where no part is left.
    pub(super) weight: [u16; LANES],
    /// The conditions at the centre, and how far they reach.
    pub(super) centre: [[i8; LANES]; CONDITIONS],
    pub(super) width: [[u8; LANES]; CONDITIONS],
    /// Figures and severity at the centre.
    pub(super) at: [[i16; LANES]; DIMENSIONS],
    /// Largest slope of each, and all slopes as shares of it, of 127.
    pub(super) steepest: [[u16; LANES]; DIMENSIONS],
    pub(super) slope: [[[i8; LANES]; CONDITIONS]; DIMENSIONS],
    /// Spread of each about what the conditions say, and correlations, of 32,767, row by row below the diagonal.
    pub(super) spread: [[u16; LANES]; DIMENSIONS],
    pub(super) correlation: [[i16; LANES]; PAIRS],
}

/// Scale of the covariances of the fit: the population is wider than the fit knows. Chosen together with the share of slight
/// faults in `cloud.rs`, which says by what.
const WIDER: f64 = 1.25;
/// Beyond this squared distance conditions are all equally far.
const FARTHEST: f64 = 1_000.0;

/// What is known of the conditions and of the vehicle.
pub(super) struct Told<'a> {
    known: List<(usize, f64), CONDITIONS>,
    unsure: List<(usize, Reach), CONDITIONS>,
    apart: &'a [Apart; FIGURES],
}

/// How far a condition may lie from where it is taken to be, as one standard deviation.
#[derive(Clone, Copy)]
enum Reach {
    /// Nobody told it: as far as the vehicles of a part do.
    OfPart,
    /// It lies so far beyond those of the fit: what it does there may be as much again, or nothing.
    Beyond(f64),
}

impl<'a> Told<'a> {
    pub(super) fn of(conditions: &[Option<f64>; CONDITIONS], apart: &'a [Apart; FIGURES]) -> Self {
        let (mut known, mut unsure) = (List::new((0, 0.0)), List::new((0, Reach::OfPart)));
        for (j, (condition, beyond)) in conditions.iter().zip(beyond_fit(conditions)).enumerate() {
            match condition {
                Some(value) => known.push((j, *value)),
                None => unsure.push((j, Reach::OfPart)),
            }
            if beyond > 0.0 {
                unsure.push((j, Reach::Beyond(beyond)));
            }
        }
        Self { known, unsure, apart }
    }
}

/// How far the conditions lie from the centres of parts: known ones, in the order of [`Told`].
pub(super) type Off = [Lanes; CONDITIONS];

impl Parts {
    /// How much each part weighs in these conditions.
    pub(super) fn gate(&self, told: &Told<'_>) -> Lanes {
        let (mut distance, mut reach) = (Lanes::ZERO, Lanes::ONE);
        for (j, value) in &told.known {
            let (centre, width) = (&self.centre[j % CONDITIONS], &self.width[j % CONDITIONS]);
            distance.add(|l| {
                let z = (value - CENTRE_STEP * f64::from(centre[l])) / (WIDTH_STEP * f64::from(width[l]));
                z * z
            });
            reach.multiply(|l| WIDTH_STEP * f64::from(width[l]));
        }
        Lanes::of(|l| {
            let near = libm::exp(-0.5 * f64::min(distance.at(l), FARTHEST));
            f64::from(self.weight[l]) / reach.at(l) * near
        })
    }

    /// How far the conditions lie from the centres.
    pub(super) fn off(&self, told: &Told<'_>) -> Off {
        let mut off = [Lanes::ZERO; CONDITIONS];
        for (off, (j, value)) in off.iter_mut().zip(&told.known) {
            let centre = &self.centre[j % CONDITIONS];
            off.set(|l| value - CENTRE_STEP * f64::from(centre[l]));
        }
        off
    }

    /// Unit of the slopes of a dimension.
    fn unit(&self, i: usize) -> Lanes {
        let steepest = &self.steepest[i];
        Lanes::of(|l| STEP[i] / 127.0 * f64::from(steepest[l]))
    }

    /// Means of a dimension.
    pub(super) fn mean(&self, i: usize, told: &Told<'_>, off: &Off, mean: &mut Lanes) {
        let (at, unit) = (&self.at[i], self.unit(i));
        mean.set(|_| 0.0);
        for (off, (j, _)) in off.iter().zip(&told.known) {
            let slope = &self.slope[i][j % CONDITIONS];
            mean.add(|l| f64::from(slope[l]) * off.at(l));
        }
        mean.change(|l, along| STEP[i] * f64::from(at[l]) + unit.at(l) * along);
    }
}

/// Parts in some conditions, along some of their dimensions, in the coordinates of [`LINES`].
pub(super) struct Placed {
    pub(super) mean: [Lanes; DIMENSIONS],
    /// How the dimensions vary together once these conditions are known; the later one first.
    covariance: [Lanes; PAIRS + DIMENSIONS],
}

impl Placed {
    pub(super) const NOWHERE: Self = Self {
        mean: [Lanes::ZERO; DIMENSIONS],
        covariance: [Lanes::ZERO; PAIRS + DIMENSIONS],
    };

    /// How two dimensions vary together.
    #[inline(always)]
    pub(super) fn together(&self, i: usize, k: usize) -> &Lanes {
        &self.covariance[pair(i, k)]
    }

    #[inline(always)]
    fn together_mut(&mut self, i: usize, k: usize) -> &mut Lanes {
        &mut self.covariance[pair(i, k)]
    }

    /// Places parts in these conditions, along dimensions that rise and begin with the two sides.
    pub(super) fn take(&mut self, parts: &Parts, told: &Told<'_>, dimensions: &[usize]) {
        let off = parts.off(told);
        let mut spread = [Lanes::ZERO; DIMENSIONS];
        for (n, i) in dimensions.iter().map(|i| i % DIMENSIONS).enumerate() {
            parts.mean(i, told, &off, &mut self.mean[i]);
            let whole = &parts.spread[i];
            spread[i].set(|l| STEP[i] * f64::from(whole[l]));
            if let Some(apart) = told.apart.get(i).filter(|apart| **apart != Apart::NOT) {
                spread[i].change(|_, spread| spread * sqrt(apart.times(spread * spread)));
            }
            let correlations = &parts.correlation[i * (i + 1) / 2 - i..];
            for k in dimensions[..n].iter().map(|k| k % DIMENSIONS) {
                let (correlation, one, other) = (&correlations[k], &spread[i], &spread[k]);
                self.together_mut(i, k)
                    .set(|l| WIDER / 32_767.0 * f64::from(correlation[l]) * one.at(l) * other.at(l));
            }
            let own = &spread[i];
            self.together_mut(i, i).set(|l| WIDER * own.at(l) * own.at(l));
        }
        // What is not sure of the conditions moves all dimensions together.
        let mut units = spread;
        for i in dimensions.iter().map(|i| i % DIMENSIONS) {
            units[i] = parts.unit(i);
        }
        let mut moves = spread;
        for (j, reach) in told.unsure.iter().map(|(j, reach)| (j % CONDITIONS, reach)) {
            let width = match reach {
                Reach::OfPart => Lanes::of(|l| WIDTH_STEP * f64::from(parts.width[j][l])),
                Reach::Beyond(by) => Lanes::of(|_| *by),
            };
            for (n, i) in dimensions.iter().map(|i| i % DIMENSIONS).enumerate() {
                let (unit, slope) = (&units[i], &parts.slope[i][j]);
                moves[i].set(|l| unit.at(l) * width.at(l) * f64::from(slope[l]));
                for k in dimensions[..=n].iter().map(|k| k % DIMENSIONS) {
                    let (one, other) = (&moves[i], &moves[k]);
                    self.together_mut(i, k).add(|l| one.at(l) * other.at(l));
                }
            }
        }
        for (line, sign, side) in LINES.into_iter().filter(|(line, ..)| dimensions.contains(line)) {
            let of_side = self.mean[side];
            self.mean[line].add(|l| sign * of_side.at(l));
            let before = *self.together(line, side);
            for i in dimensions.iter().map(|i| i % DIMENSIONS).filter(|i| *i != line) {
                let of_side = *self.together(side, i);
                self.together_mut(line, i).add(|l| sign * of_side.at(l));
            }
            let after = *self.together(line, side);
            self.together_mut(line, line)
                .add(|l| sign * (before.at(l) + after.at(l)));
        }
    }

    /// A figure as it is read, and not as the temperature of a line: mean and variance.
    pub(super) fn as_read(&self, i: usize) -> (Lanes, Lanes) {
        let (mut mean, mut variance) = (self.mean[i], *self.together(i, i));
        if let Some((_, sign, side)) = line(i) {
            let (of_side, own, across) = (&self.mean[side], self.together(side, side), self.together(i, side));
            mean.add(|l| -sign * of_side.at(l));
            variance.add(|l| own.at(l) - 2.0 * sign * across.at(l));
        }
        (mean, variance)
    }

    /// Covariance of a figure as it is read to a dimension.
    pub(super) fn as_read_with(&self, i: usize, k: usize) -> Lanes {
        let mut covariance = *self.together(i, k);
        if let Some((_, sign, side)) = line(i) {
            let of_side = self.together(side, k);
            covariance.add(|l| -sign * of_side.at(l));
        }
        covariance
    }

    /// Mean and standard deviation of a figure of which only the conditions are known.
    pub(super) fn figure(&self, i: usize) -> [Lanes; 2] {
        let (mean, variance) = self.as_read(i);
        [mean, variance.root()]
    }
}

/// The place of two dimensions among the pairs.
#[inline(always)]
fn pair(i: usize, k: usize) -> usize {
    let (later, earlier) = (i.max(k) % DIMENSIONS, i.min(k) % DIMENSIONS);
    later * (later + 1) / 2 + earlier
}

#[cfg(test)]
mod tests {
    use super::super::cloud_table::CLOUDS;
    use super::*;

    /// By as much as a condition beyond the fit moves a figure on, the figure is less sure.
    #[test]
    fn what_lies_beyond_the_fit_is_unsure() {
        let at_air = |thin: f64| {
            let mut conditions = [Some(0.0); CONDITIONS];
            conditions[2] = Some(thin);
            let mut placed = Placed::NOWHERE;
            placed.take(&CLOUDS[0][0], &Told::of(&conditions, &[Apart::NOT; FIGURES]), &EVERY);
            placed
        };
        let (edge, beyond) = (at_air(1.84), at_air(3.84));
        for i in 0..FIGURES {
            let ([mean, spread], [far, wide]) = (edge.figure(i), beyond.figure(i));
            for lane in 0..LANES {
                let more = wide.at(lane) * wide.at(lane) - spread.at(lane) * spread.at(lane);
                let moved = far.at(lane) - mean.at(lane);
                assert!(
                    (more - moved * moved).abs() < 1e-9,
                    "figure {i}, part {lane}: {more} {moved}"
                );
            }
        }
    }
}
