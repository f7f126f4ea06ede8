//! One part of a cloud: figures that follow the conditions linearly, with a multivariate t distribution about that.

use super::coordinates::{CONDITIONS, FIGURES};
use super::figures::{Figures, HIGH, LINES, LOW};
use super::list::List;
use crate::names::Fault;

/// The figures and the severity.
pub(super) const DIMENSIONS: usize = FIGURES + 1;
/// The place of the severity.
pub(super) const SEVERITY: usize = FIGURES;
/// Pairs of dimensions.
const PAIRS: usize = DIMENSIONS * (DIMENSIONS - 1) / 2;
/// All of them.
pub(super) const EVERY: [usize; DIMENSIONS] = [0, 1, 2, 3, 4, 5, 6, SEVERITY];
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

/// How the dimensions of a part vary together once some conditions are known, in the coordinates of [`LINES`]. It does not
/// depend on what these conditions are.
#[derive(Clone, Copy)]
pub(super) struct Shape([[f64; DIMENSIONS]; DIMENSIONS]);

/// A part where the conditions are known.
pub(super) struct Placed<'a> {
    pub(super) mean: [f64; DIMENSIONS],
    shape: &'a Shape,
}

/// As many conditions can be left untold: the ambient and the air pressure never are.
const UNTOLD: usize = 8;

/// What is known of the conditions, and which of them nobody told.
pub(super) struct Told {
    value: [f64; CONDITIONS],
    /// One where a condition is known, zero where it is not.
    known: [f64; CONDITIONS],
    untold: List<usize, UNTOLD>,
}

impl Told {
    pub(super) fn of(conditions: &[Option<f64>; CONDITIONS]) -> Self {
        let mut told = Self {
            value: conditions.map(|condition| condition.unwrap_or(0.0)),
            known: conditions.map(|condition| f64::from(u8::from(condition.is_some()))),
            untold: List::new(0),
        };
        for (j, condition) in conditions.iter().enumerate() {
            if condition.is_none() {
                told.untold.push(j);
            }
        }
        told
    }

    /// The conditions that nobody told, one bit each.
    pub(super) fn untold_bits(&self) -> u16 {
        self.untold.iter().fold(0, |bits, j| bits | 1 << j)
    }
}

impl Shape {
    pub(super) const NONE: Self = Self([[0.0; DIMENSIONS]; DIMENSIONS]);
}

impl Placed<'_> {
    /// A figure as it is read, and not as the temperature of a line: mean, variance, and covariance to each dimension.
    fn as_read(&self, i: usize) -> (f64, f64, [f64; DIMENSIONS]) {
        let Shape(covariance) = self.shape;
        let (mut mean, mut row) = (self.mean[i], covariance[i]);
        let mut variance = row[i];
        if let Some((_, sign, side)) = LINES.into_iter().find(|(line, ..)| *line == i) {
            mean -= sign * self.mean[side];
            variance += covariance[side][side] - 2.0 * sign * row[side];
            for (own, other) in row.iter_mut().zip(covariance[side]) {
                *own -= sign * other;
            }
        }
        (mean, variance, row)
    }

    /// Mean and standard deviation of a figure of which only the conditions are known.
    pub(super) fn figure(&self, i: usize) -> (f64, f64) {
        let (mean, variance, _) = self.as_read(i);
        (mean, libm::sqrt(variance))
    }
}

impl Part {
    /// How much the part weighs in these conditions.
    pub(super) fn gate(&self, told: &Told) -> f64 {
        let (mut distance, mut reach) = (0.0, 1.0);
        for j in 0..CONDITIONS {
            if told.known[j] > 0.0 {
                let width = WIDTH_STEP * f64::from(self.width[j]);
                let z = (told.value[j] - CENTRE_STEP * f64::from(self.centre[j])) / width;
                distance += z * z;
                reach *= width;
            }
        }
        f64::from(self.weight) / reach * libm::exp(-0.5 * f64::min(distance, FARTHEST))
    }

    /// How far the conditions lie from the centre of the part; nowhere along those that nobody told.
    pub(super) fn off(&self, told: &Told) -> [f64; CONDITIONS] {
        core::array::from_fn(|j| told.known[j] * (told.value[j] - CENTRE_STEP * f64::from(self.centre[j])))
    }

    fn unit(&self, i: usize) -> f64 {
        STEP[i] / 127.0 * f64::from(self.steepest[i])
    }

    /// Mean of a dimension.
    pub(super) fn mean(&self, i: usize, off: &[f64; CONDITIONS]) -> f64 {
        let mut along = 0.0;
        for (slope, off) in self.slope[i].iter().zip(off) {
            along += f64::from(*slope) * off;
        }
        STEP[i] * f64::from(self.at[i]) + self.unit(i) * along
    }

    /// The part in these conditions along some of its dimensions, which rise, where it has this shape.
    pub(super) fn placed<'a>(&self, told: &Told, dimensions: &[usize], shape: &'a Shape) -> Placed<'a> {
        let off = self.off(told);
        let mut mean = [0.0; DIMENSIONS];
        for i in dimensions.iter().map(|i| i % DIMENSIONS) {
            mean[i] = self.mean(i, &off);
        }
        for (line, sign, side) in LINES {
            mean[line] += sign * mean[side];
        }
        Placed { mean, shape }
    }

    /// Finds the shape of the part along some of its dimensions, which rise and begin with the two sides.
    pub(super) fn shape(&self, told: &Told, dimensions: &[usize], shape: &mut Shape) {
        let Shape(rows) = shape;
        let mut width = [0.0; UNTOLD];
        for (width, j) in width.iter_mut().zip(told.untold.iter()) {
            *width = WIDTH_STEP * f64::from(self.width[*j]);
        }
        // What nobody told moves all dimensions together.
        let mut moves = [[0.0; UNTOLD]; DIMENSIONS];
        let mut spread = [0.0; DIMENSIONS];
        for (n, i) in dimensions.iter().map(|i| i % DIMENSIONS).enumerate() {
            let unit = self.unit(i);
            for ((moves, width), j) in moves[i].iter_mut().zip(width).zip(told.untold.iter()) {
                *moves = unit * width * f64::from(self.slope[i][*j]);
            }
            spread[i] = STEP[i] * f64::from(self.spread[i]);
            let correlations = &self.correlation[i * (i + 1) / 2 - i..];
            for k in dimensions[..n].iter().map(|k| k % DIMENSIONS) {
                let fitted = WIDER / 32_767.0 * spread[i] * spread[k] * f64::from(correlations[k]);
                rows[i][k] = fitted + together(&moves[i], &moves[k]);
                rows[k][i] = rows[i][k];
            }
            rows[i][i] = WIDER * spread[i] * spread[i] + together(&moves[i], &moves[i]);
        }
        for (line, sign, side) in LINES.into_iter().filter(|(line, ..)| dimensions.contains(line)) {
            let of_side = rows[side];
            for (own, other) in rows[line].iter_mut().zip(of_side) {
                *own += sign * other;
            }
            for row in rows.iter_mut() {
                row[line] += sign * row[side];
            }
        }
    }
}

/// How far the same conditions move two dimensions together.
fn together(one: &[f64; UNTOLD], other: &[f64; UNTOLD]) -> f64 {
    let [a, b, c, d, e, f, g, h] = core::array::from_fn(|j| one[j] * other[j]);
    ((a + b) + (c + d)) + ((e + f) + (g + h))
}

/// Figures against a part, seen from several stands: the Cholesky factor of their covariance, and the deviations made
/// independent. Figures are taken in one after the other.
pub(super) struct Against<const L: usize> {
    order: List<usize, FIGURES>,
    rows: [[f64; FIGURES]; FIGURES],
    /// One over the diagonal of the rows.
    inverse: [f64; FIGURES],
    z: [[f64; L]; FIGURES],
    distance: [f64; L],
    /// Peak of the density.
    scale: f64,
}

impl<const L: usize> Against<L> {
    pub(super) const NOTHING: Self = Self {
        order: List::new(0),
        rows: [[0.0; FIGURES]; FIGURES],
        inverse: [0.0; FIGURES],
        z: [[0.0; L]; FIGURES],
        distance: [0.0; L],
        scale: 1.0,
    };

    /// A new row of the factor, what it leaves of a variance, and where its dimension is then expected.
    fn row(&self, covariance: &[f64; DIMENSIONS], variance: f64, mean: [f64; L]) -> ([f64; FIGURES], f64, [f64; L]) {
        let (mut row, mut left, mut mean) = ([0.0; FIGURES], variance, mean);
        for (n, k) in self.order.iter().enumerate() {
            let mut sum = covariance[*k % FIGURES];
            for (a, b) in row[..n].iter().zip(&self.rows[n]) {
                sum -= a * b;
            }
            let part = sum * self.inverse[n];
            row[n] = part;
            left -= part * part;
            for (mean, z) in mean.iter_mut().zip(&self.z[n]) {
                *mean += part * z;
            }
        }
        (row, left, mean)
    }

    /// Takes in one figure more.
    pub(super) fn add(&mut self, placed: &Placed<'_>, figures: &Figures, stands: &[[f64; FIGURES]; L], i: usize) {
        let (n, covariance) = (self.order.len(), &placed.shape.0[i]);
        let own = covariance[i];
        let mean = core::array::from_fn(|l| placed.mean[i] + stands[l][i]);
        let (row, left, mean) = self.row(covariance, own, mean);
        let inverse = 1.0 / libm::sqrt(f64::max(left + figures.noise[i], LEAST_LEFT * own));
        let z = mean.map(|mean| inverse * (figures.value[i] - mean));
        for (distance, z) in self.distance.iter_mut().zip(z) {
            *distance += z * z;
        }
        self.scale *= CONSTANT[n] * inverse;
        self.rows[n] = row;
        self.inverse[n] = inverse;
        self.z[n] = z;
        self.order.push(i);
    }

    /// Takes in what was read from this figure on, and nothing else.
    pub(super) fn take(&mut self, placed: &Placed<'_>, figures: &Figures, stands: &[[f64; FIGURES]; L], from: usize) {
        self.order.clear();
        self.distance = [0.0; L];
        self.scale = 1.0;
        for i in from..FIGURES {
            if figures.read[i] {
                self.add(placed, figures, stands, i);
            }
        }
    }

    /// The density of the figures.
    pub(super) fn density(&self) -> [f64; L] {
        self.distance
            .map(|distance| self.scale * tail(distance, self.order.len()))
    }

    /// The two sides, once all else that was read is taken in.
    pub(super) fn sides(&self, placed: &Placed<'_>, stands: &[[f64; FIGURES]; L]) -> Sides<L> {
        let mut sides = Sides {
            across: placed.shape.0[HIGH][LOW],
            ..Sides::NOTHING
        };
        let mut rows = [[0.0; FIGURES]; 2];
        for side in [LOW, HIGH] {
            let own = placed.shape.0[side][side];
            let mean = core::array::from_fn(|l| placed.mean[side] + stands[l][side]);
            let (row, left, mean) = self.row(&placed.shape.0[side], own, mean);
            (rows[side], sides.own[side], sides.left[side], sides.mean[side]) = (row, own, left, mean);
        }
        let [low, high] = &rows;
        for (low, high) in low.iter().zip(high).take(self.order.len()) {
            sides.across -= low * high;
        }
        sides
    }

    /// What a figure that was not read, or the severity, would be, seen from each stand: its means, and its standard
    /// deviations.
    #[inline(never)] // it is large
    pub(super) fn predicted(&self, placed: &Placed<'_>, i: usize, figures: &Figures) -> ([f64; L], [f64; L]) {
        let (mean, own, mut covariance) = placed.as_read(i);
        if let Some((_, sign, side)) = LINES.into_iter().find(|(line, ..)| *line == i) {
            // It will be read with the gauge that has been read already.
            covariance[side] -= sign * figures.gauge[side];
        }
        let (_, left, mean) = self.row(&covariance, own, [mean; L]);
        // Whatever lies far out is less certain in all it says.
        let left = f64::max(left, LEAST_LEFT * own) / (FREEDOM + self.order.len() as f64);
        (
            mean,
            self.distance.map(|distance| libm::sqrt((FREEDOM + distance) * left)),
        )
    }
}

/// What is expected of the two sides when all else is known, without what the gauges add.
pub(super) struct Sides<const L: usize> {
    own: [f64; 2],
    left: [f64; 2],
    across: f64,
    mean: [[f64; L]; 2],
}

impl<const L: usize> Sides<L> {
    pub(super) const NOTHING: Self = Self {
        own: [0.0; 2],
        left: [0.0; 2],
        across: 0.0,
        mean: [[0.0; L]; 2],
    };

    /// The density of all figures: of the sides as they are in `figures`, and of all else `against` the part.
    pub(super) fn density(&self, against: &Against<L>, figures: &Figures) -> [f64; L] {
        let (mut distance, mut scale, mut count) = (against.distance, against.scale, against.order.len());
        let (mut known, mut slope) = ([0.0; L], 0.0);
        for side in [LOW, HIGH] {
            if !figures.read[side] {
                continue;
            }
            // The high side as the low side lets expect it.
            let left = f64::max(
                self.left[side] + figures.noise[side] - slope * self.across * f64::from(u8::from(side == HIGH)),
                LEAST_LEFT * self.own[side],
            );
            for l in 0..L {
                let off = figures.value[side] - self.mean[side][l] - slope * known[l];
                distance[l] += off * off / left;
                known[l] = off;
            }
            slope = self.across / left;
            scale *= CONSTANT[count] / libm::sqrt(left);
            count += 1;
        }
        distance.map(|distance| scale * tail(distance, count))
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
    use super::super::figures::{BESIDE_SIDES, SUBCOOLING, SUPERHEAT, VENT};
    use super::*;
    use crate::circuit::Estimate;

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
        Figures::of(&figures, &[0.0; 3])
    }

    const HERE: [[f64; FIGURES]; 1] = [[0.0; FIGURES]];

    fn against(placed: &Placed<'_>, figures: &Figures) -> Against<1> {
        let mut against = Against::NOTHING;
        against.take(placed, figures, &HERE, 0);
        against
    }

    fn density(placed: &Placed<'_>, values: &[(usize, f64)]) -> f64 {
        against(placed, &read(values)).density()[0]
    }

    fn each_sound_part(mut test: impl FnMut(&Placed<'_>)) {
        for part in CLOUDS[KIND].iter().filter(|part| part.fault == Fault::NoFault) {
            let told = Told::of(&MILD);
            let mut shape = Shape::NONE;
            part.shape(&told, &EVERY, &mut shape);
            test(&part.placed(&told, &EVERY, &shape));
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
                let at = placed.figure(seen).0 + 2.0;
                let alone = density(placed, &[(seen, at)]);
                let (mean, spread) = placed.figure(unseen);
                let spread = libm::hypot(spread, 1.0);
                let step = spread / 20.0;
                let both: f64 = (-2_000..2_000)
                    .map(|k| mean + step * f64::from(k))
                    .map(|x| step * density(placed, &[(seen, at), (unseen, x)]))
                    .sum();
                assert!((both / alone - 1.0).abs() < 1e-6, "{seen} {unseen}: {both} {alone}");
            }
        });
    }

    /// The order in which figures are taken in changes nothing, and the sides may come last.
    #[test]
    fn the_sides_may_come_last() {
        each_sound_part(|placed| {
            let off = [
                (LOW, 2.0),
                (HIGH, -3.0),
                (VENT, 1.0),
                (SUPERHEAT, 2.5),
                (SUBCOOLING, -1.5),
            ];
            let values = off.map(|(i, off)| (i, placed.figure(i).0 + off));
            let figures = read(&values);
            let mut others = Against::NOTHING;
            others.take(placed, &figures, &HERE, BESIDE_SIDES);
            let [found] = others.sides(placed, &HERE).density(&others, &figures);
            assert!((found / density(placed, &values) - 1.0).abs() < 1e-12);
            let one_side = read(&values[1..3]);
            let mut vent = Against::NOTHING;
            vent.take(placed, &one_side, &HERE, BESIDE_SIDES);
            let [found] = vent.sides(placed, &HERE).density(&vent, &one_side);
            assert!((found / density(placed, &values[1..3]) - 1.0).abs() < 1e-12);
        });
    }

    /// What is predicted of a figure is what the joint density says of it once the other is known.
    #[test]
    fn a_prediction_is_the_joint_density_along_its_figure() {
        each_sound_part(|placed| {
            let (seen, at) = (HIGH, placed.mean[HIGH] + 3.0);
            let alone = density(placed, &[(seen, at)]);
            let figures = read(&[(seen, at)]);
            let ([mean], [spread]) = against(placed, &figures).predicted(placed, VENT, &figures);
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
