//! One part of a cloud: figures that follow the conditions linearly, with a multivariate t distribution about that.

use super::coordinates::{CONDITIONS, FIGURES};
use crate::circuit::Estimate;
use crate::names::Fault;

/// The figures and the severity.
pub(super) const DIMENSIONS: usize = FIGURES + 1;
/// The place of the severity.
pub(super) const SEVERITY: usize = FIGURES;
/// Pairs of dimensions.
const PAIRS: usize = DIMENSIONS * (DIMENSIONS - 1) / 2;
/// Unit in which the table holds each figure and the severity.
const STEP: [f64; DIMENSIONS] = [0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 1e-3, 1e-4];
/// Unit of a condition at the centre of a part, and of the part's width.
const CENTRE_STEP: f64 = 1.0 / 32.0;
const WIDTH_STEP: f64 = 1.0 / 64.0;

/// One part of a cloud, as the table holds it.
pub(super) struct Part {
    pub(super) fault: Fault,
    /// Share of its cloud, of 65,535.
    pub(super) weight: u16,
    /// The conditions at its centre, and how far they reach.
    pub(super) centre: [i8; CONDITIONS],
    pub(super) width: [u8; CONDITIONS],
    /// Figures and severity at the centre.
    pub(super) at: [i16; DIMENSIONS],
    /// Largest slope of each, and all slopes as shares of it, of 127.
    pub(super) steepest: [u16; DIMENSIONS],
    pub(super) slope: [[i8; CONDITIONS]; DIMENSIONS],
    /// Spread of each about what the conditions say, and correlations, of 32,767, row by row below the diagonal.
    pub(super) spread: [u16; DIMENSIONS],
    pub(super) correlation: [i16; PAIRS],
}

/// Degrees of freedom: vehicles stray farther than a normal distribution would have them.
const FREEDOM: f64 = 8.0;
/// Scale of the covariances of the fit: the population is wider than the fit knows.
const WIDER: f64 = 1.1;
/// Beyond this squared distance conditions are all equally far.
const FARTHEST: f64 = 1_000.0;

/// What was read, as the clouds see it: the figures one after the other, those that were not read left out.
#[derive(Clone, Copy)]
pub(super) struct Figures {
    /// How many were read, and which.
    pub(super) count: usize,
    pub(super) order: [usize; FIGURES],
    pub(super) value: [f64; FIGURES],
    /// Covariance of what the instruments add, the lower triangle.
    noise: [[f64; FIGURES]; FIGURES],
    /// Variance of what the two gauges add.
    gauges: [f64; 2],
}

pub(super) const LOW: usize = 0;
pub(super) const HIGH: usize = 1;
#[cfg(test)]
const VENT: usize = 2;
const SUPERHEAT: usize = 3;
const SUBCOOLING: usize = 4;
const DISCHARGE: usize = 5;

impl Figures {
    pub(super) const NOTHING: Self = Self {
        count: 0,
        order: [0; FIGURES],
        value: [0.0; FIGURES],
        noise: [[0.0; FIGURES]; FIGURES],
        gauges: [0.0; 2],
    };

    /// The figures with what their instruments add, and `more` on top of that.
    pub(super) fn of(figures: &[Option<Estimate>; FIGURES], more: &[f64]) -> Self {
        let variance = |i: usize| {
            let more = more.get(i).copied().unwrap_or(0.0);
            figures[i].map_or(0.0, |figure| {
                figure.standard_uncertainty * figure.standard_uncertainty + more * more
            })
        };
        let mut of = Self {
            gauges: [variance(LOW), variance(HIGH)],
            ..Self::NOTHING
        };
        for (i, figure) in figures.iter().enumerate() {
            let Some(figure) = figure else {
                continue;
            };
            let n = of.count;
            of.value[n] = figure.value;
            for k in 0..n {
                of.noise[n][k] = of.shared(i, of.order[k]);
            }
            of.noise[n][n] = variance(i);
            of.order[n] = i;
            of.count += 1;
        }
        of
    }

    /// Covariance of two figures from their instruments, the later one first: a gauge that errs takes the superheats and
    /// the subcooling along.
    fn shared(&self, i: usize, k: usize) -> f64 {
        let [low, high] = self.gauges;
        match (i, k) {
            (SUPERHEAT, LOW) => -low,
            (SUBCOOLING, HIGH) => high,
            (DISCHARGE, HIGH | SUBCOOLING) => -high,
            _ => 0.0,
        }
    }

    /// The density of one figure by itself, from the stand where it is likeliest.
    pub(super) fn likeliest<const L: usize>(&self, n: usize, placed: &Placed, stands: &[[f64; FIGURES]; L]) -> f64 {
        let i = self.order[n];
        let inverse = 1.0 / libm::sqrt(placed.covariance[i][i] + self.noise[n][n]);
        let nearest = stands.iter().fold(f64::INFINITY, |nearest, stand| {
            f64::min(nearest, libm::fabs(self.value[n] - placed.mean[i] - stand[i]))
        });
        let z = nearest * inverse;
        CONSTANT[0] * inverse * tail(z * z, 1)
    }

    /// How many of the pressures were read.
    pub(super) fn pressures(&self) -> usize {
        self.order[..self.count].iter().filter(|i| **i <= HIGH).count()
    }

    /// Whether a figure was read.
    pub(super) fn read(&self, i: usize) -> bool {
        self.order[..self.count].contains(&i)
    }
}

/// A part where the conditions are known.
pub(super) struct Placed {
    pub(super) mean: [f64; DIMENSIONS],
    pub(super) covariance: [[f64; DIMENSIONS]; DIMENSIONS],
}

impl Part {
    /// How much the part weighs in these conditions.
    pub(super) fn gate(&self, conditions: &[Option<f64>; CONDITIONS]) -> f64 {
        let mut gate = f64::from(self.weight);
        let mut distance = 0.0;
        for (j, condition) in conditions.iter().enumerate() {
            if let Some(condition) = condition {
                let width = WIDTH_STEP * f64::from(self.width[j]);
                let z = (condition - CENTRE_STEP * f64::from(self.centre[j])) / width;
                distance += z * z;
                gate /= width;
            }
        }
        gate * libm::exp(-0.5 * f64::min(distance, FARTHEST))
    }

    /// The part in these conditions.
    pub(super) fn placed(&self, conditions: &[Option<f64>; CONDITIONS]) -> Placed {
        let off: [f64; CONDITIONS] = core::array::from_fn(|j| {
            conditions[j].map_or(0.0, |condition| condition - CENTRE_STEP * f64::from(self.centre[j]))
        });
        let unit: [f64; DIMENSIONS] = core::array::from_fn(|i| STEP[i] * f64::from(self.steepest[i]) / 127.0);
        let spread: [f64; DIMENSIONS] = core::array::from_fn(|i| STEP[i] * f64::from(self.spread[i]));
        let mut placed = Placed {
            mean: [0.0; DIMENSIONS],
            covariance: [[0.0; DIMENSIONS]; DIMENSIONS],
        };
        let mut pair = 0;
        for i in 0..DIMENSIONS {
            let mut along = 0.0;
            for (slope, off) in self.slope[i].iter().zip(&off) {
                along += f64::from(*slope) * off;
            }
            placed.mean[i] = STEP[i] * f64::from(self.at[i]) + unit[i] * along;
            for k in 0..i {
                let correlation = WIDER / 32_767.0 * f64::from(self.correlation[pair]);
                placed.covariance[i][k] = correlation * spread[i] * spread[k];
                pair += 1;
            }
            placed.covariance[i][i] = WIDER * spread[i] * spread[i];
        }
        for j in (0..CONDITIONS).filter(|j| conditions[*j].is_none()) {
            let width = WIDTH_STEP * f64::from(self.width[j]);
            let slope: [f64; DIMENSIONS] = core::array::from_fn(|i| width * unit[i] * f64::from(self.slope[i][j]));
            for i in 0..DIMENSIONS {
                for k in 0..=i {
                    placed.covariance[i][k] += slope[i] * slope[k];
                }
            }
        }
        placed
    }
}

/// The covariance of the figures that were read, in one part, as a Cholesky factor.
pub(super) struct Factor {
    count: usize,
    rows: [[f64; FIGURES]; FIGURES],
}

/// Readings against a part, seen from several stands: deviations made independent, and their squared distance.
pub(super) struct Off<const L: usize> {
    z: [[f64; L]; FIGURES],
    distance: [f64; L],
}

impl Factor {
    /// Of no figure yet.
    pub(super) const EMPTY: Self = Self {
        count: 0,
        rows: [[0.0; FIGURES]; FIGURES],
    };

    /// Of all figures that were read.
    pub(super) fn of(placed: &Placed, figures: &Figures) -> Self {
        let mut factor = Self::EMPTY;
        factor.grow(placed, figures, figures.count);
        factor
    }

    /// Grows to this many of the figures that were read.
    pub(super) fn grow(&mut self, placed: &Placed, figures: &Figures, count: usize) {
        for n in self.count..count {
            let covariance = &placed.covariance[figures.order[n]];
            let mut row = self.row(|k| covariance[figures.order[k]] + figures.noise[n][k]);
            let own = covariance[figures.order[n]];
            let mut left = own + figures.noise[n][n];
            for part in &row[..n] {
                left -= part * part;
            }
            row[n] = libm::sqrt(f64::max(left, LEAST_LEFT * own));
            self.rows[n] = row;
            self.count += 1;
        }
    }

    /// The row of the factor for a dimension with this covariance to each figure.
    fn row(&self, covariance: impl Fn(usize) -> f64) -> [f64; FIGURES] {
        let mut row = [0.0; FIGURES];
        for (k, known) in self.rows[..self.count].iter().enumerate() {
            let mut sum = covariance(k);
            for (a, b) in row[..k].iter().zip(known) {
                sum -= a * b;
            }
            row[k] = sum / known[k];
        }
        row
    }

    /// How far off the figures are once `stands` are taken off; `each` is given the place of every figure that was read,
    /// with the density up to and with it.
    pub(super) fn against<const L: usize>(
        &self,
        placed: &Placed,
        figures: &Figures,
        stands: &[[f64; FIGURES]; L],
        mut each: impl FnMut(usize, [f64; L]),
    ) -> Off<L> {
        let mut off = Off {
            z: [[0.0; L]; FIGURES],
            distance: [0.0; L],
        };
        let mut scale = 1.0;
        for (n, (row, constant)) in self.rows[..self.count].iter().zip(CONSTANT).enumerate() {
            let i = figures.order[n];
            let mean = figures.value[n] - placed.mean[i];
            let mut z: [f64; L] = core::array::from_fn(|l| mean - stands[l][i]);
            for (a, b) in row[..n].iter().zip(&off.z) {
                for (z, b) in z.iter_mut().zip(b) {
                    *z -= a * b;
                }
            }
            let inverse = 1.0 / row[n];
            for (z, distance) in z.iter_mut().zip(&mut off.distance) {
                *z *= inverse;
                *distance += *z * *z;
            }
            off.z[n] = z;
            scale *= constant * inverse;
            each(n, off.distance.map(|distance| scale * tail(distance, n + 1)));
        }
        off
    }

    /// What a dimension that was not read would be: mean and standard deviation.
    #[inline(never)] // it is large
    pub(super) fn predicted(&self, placed: &Placed, i: usize, figures: &Figures, off: &Off<1>) -> (f64, f64) {
        let row = self.row(|k| {
            let (k, later) = (figures.order[k].min(i), figures.order[k].max(i));
            placed.covariance[later][k] + figures.shared(later, k)
        });
        let own = placed.covariance[i][i];
        let (mut mean, mut left) = (placed.mean[i], own);
        for (part, z) in row[..self.count].iter().zip(&off.z) {
            mean += part * z[0];
            left -= part * part;
        }
        // Whatever lies far out is less certain in all it says.
        let farther = (FREEDOM + off.distance[0]) / (FREEDOM + self.count as f64);
        (mean, libm::sqrt(farther * f64::max(left, LEAST_LEFT * own)))
    }
}

/// The least part of a variance that is left when all other figures are known.
const LEAST_LEFT: f64 = 1e-4;

/// (1 + q / n)^-((n + d) / 2), n the degrees of freedom: eight, so that half of it is four.
pub(super) fn tail(distance: f64, dimensions: usize) -> f64 {
    let square = 1.0 / (1.0 + distance / FREEDOM);
    let fourth = square * square;
    let mut power = fourth * fourth;
    for _ in 0..dimensions / 2 {
        power *= square;
    }
    if dimensions % 2 == 1 {
        power *= libm::sqrt(square);
    }
    power
}

/// Factor by which each further dimension d changes the peak of the density at unit scale:
/// gamma((n + d) / 2) / (gamma((n + d - 1) / 2) sqrt(n pi)).
pub(super) const CONSTANT: [f64; FIGURES] = [
    0.3866990209613931,
    0.4115731731003915,
    0.43503639858156734,
    0.4573035256671016,
    0.47854003843972415,
    0.49887657345501984,
    0.5184183749763678,
];

/// Probability of the t distribution with eight degrees of freedom below `z`.
///
/// Source: Abramowitz & Stegun 26.7.4.
pub(super) fn student_below(z: f64) -> f64 {
    let cosine2 = FREEDOM / (FREEDOM + z * z);
    let sine = z / libm::sqrt(FREEDOM + z * z);
    0.5 + 0.5 * sine * (1.0 + cosine2 * (0.5 + cosine2 * (0.375 + cosine2 * 0.3125)))
}

#[cfg(test)]
mod tests {
    use super::super::cloud_table::CLOUDS;
    use super::*;

    /// A sound fixed-clutch system with an expansion valve in weather of the fit.
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

    fn read(values: &[(usize, f64)]) -> Figures {
        let mut figures = [None; FIGURES];
        for (at, value) in values {
            figures[*at] = Some(Estimate {
                value: *value,
                standard_uncertainty: 1.0,
            });
        }
        Figures::of(&figures, &[])
    }

    const HERE: [[f64; FIGURES]; 1] = [[0.0; FIGURES]];

    fn density(placed: &Placed, values: &[(usize, f64)]) -> f64 {
        let mut density = 1.0;
        let figures = read(values);
        Factor::of(placed, &figures).against(placed, &figures, &HERE, |_, [up_to]| density = up_to);
        density
    }

    fn each_sound_part(mut test: impl FnMut(&Placed)) {
        for part in CLOUDS[KIND].iter().filter(|part| part.fault == Fault::NoFault) {
            test(&part.placed(&MILD));
        }
    }

    #[test]
    fn every_part_has_its_place() {
        assert!(
            CLOUDS
                .iter()
                .all(|parts| parts.len() <= super::super::cloud::MOST_PARTS)
        );
    }

    /// Source: Student's t, eight degrees of freedom, two-sided 5 % and 1 %: 2.3060, 3.3554.
    #[test]
    fn quantiles_are_those_of_the_printed_tables() {
        assert!((student_below(2.306_004) - 0.975).abs() < 1e-7);
        assert!((student_below(-3.355_387) - 0.005).abs() < 1e-7);
    }

    /// Numerical integration over the figure that was not read.
    #[test]
    fn a_figure_that_was_not_read_drops_out_exactly() {
        each_sound_part(|placed| {
            for (seen, unseen) in [(LOW, HIGH), (HIGH, SUBCOOLING), (LOW, SUPERHEAT)] {
                let at = placed.mean[seen] + 2.0;
                let alone = density(placed, &[(seen, at)]);
                let spread = libm::sqrt(placed.covariance[unseen][unseen] + 1.0);
                let step = spread / 20.0;
                let both: f64 = (-2_000..2_000)
                    .map(|k| placed.mean[unseen] + step * f64::from(k))
                    .map(|x| step * density(placed, &[(seen, at), (unseen, x)]))
                    .sum();
                assert!((both / alone - 1.0).abs() < 1e-6, "{seen} {unseen}: {both} {alone}");
            }
        });
    }

    /// What is predicted of a figure is what the joint density says of it once the other is known.
    #[test]
    fn a_prediction_is_the_joint_density_along_its_figure() {
        each_sound_part(|placed| {
            let (seen, at) = (HIGH, placed.mean[HIGH] + 3.0);
            let alone = density(placed, &[(seen, at)]);
            let figures = read(&[(seen, at)]);
            let factor = Factor::of(placed, &figures);
            let off = factor.against(placed, &figures, &HERE, |_, _| ());
            let (mean, spread) = factor.predicted(placed, VENT, &figures, &off);
            // The density of the pair has the uncertainty of the second reading in it.
            let step = 0.02 * spread;
            let (mut total, mut moment) = (0.0, 0.0);
            for k in -20_000..20_000 {
                let x = mean + step * f64::from(k);
                let p = step * density(placed, &[(seen, at), (VENT, x)]) / alone;
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
