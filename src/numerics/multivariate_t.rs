//! The multivariate t distribution: density, what part of a reading tells of the rest, and the distribution of one number.
//!
//! Source: Kotz & Nadarajah, Multivariate t Distributions and Their Applications, Cambridge 2004, chapter 1: density (1.1),
//! marginals (1.9), conditionals (1.11).

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::sqrt;

/// The most dimensions.
pub(crate) const DIMENSIONS: usize = 8;
/// A point, or a difference of two.
pub(crate) type Vector = [f64; DIMENSIONS];
/// A scale matrix; both triangles are filled.
pub(crate) type Matrix = [[f64; DIMENSIONS]; DIMENSIONS];

/// All noughts.
pub(crate) const ZERO: Matrix = [[0.0; DIMENSIONS]; DIMENSIONS];

/// The part of a variance that is left at least when all other dimensions are known: keeps a factor from breaking down where two
/// dimensions repeat each other.
const LEAST_LEFT: f64 = 1e-6;

/// Which dimensions were read, in the order in which they are taken in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Read {
    order: [usize; DIMENSIONS],
    count: usize,
}

impl Read {
    /// Those that were read.
    pub(crate) fn of(read: impl Fn(usize) -> bool) -> Self {
        let mut of = Self {
            order: [0; DIMENSIONS],
            count: 0,
        };
        for i in (0..DIMENSIONS).filter(|i| read(*i)) {
            of.order[of.count] = i;
            of.count += 1;
        }
        of
    }

    /// Their places, in order.
    pub(crate) fn places(&self) -> &[usize] {
        &self.order[..self.count]
    }
}

/// The Cholesky factor of the part of a scale matrix that belongs to what was read.
pub(crate) struct Factor<'a> {
    read: &'a Read,
    /// Row by row, lower triangle; the diagonal holds one over the factor's.
    lower: Matrix,
    /// One over the square root of the determinant, for the first k dimensions.
    narrow: [f64; DIMENSIONS + 1],
}

impl<'a> Factor<'a> {
    /// The factor of a matrix plus the variances `noise`.
    pub(crate) fn of(scale: &Matrix, noise: &Vector, read: &'a Read) -> Self {
        Self::of_entries(|i, j| scale[i][j], noise, read)
    }

    /// The same of a matrix of which `entry` gives row and column, the row being the larger one.
    #[inline]
    pub(crate) fn of_entries(entry: impl Fn(usize, usize) -> f64, noise: &Vector, read: &'a Read) -> Self {
        let mut factor = Self {
            read,
            lower: ZERO,
            narrow: [1.0; DIMENSIONS + 1],
        };
        for (n, i) in read.places().iter().copied().enumerate() {
            let own = entry(i, i) + noise[i];
            let mut left = own;
            for m in 0..n {
                let mut sum = entry(i, read.order[m]);
                for k in 0..m {
                    sum -= factor.lower[n][k] * factor.lower[m][k];
                }
                let entry = sum * factor.lower[m][m];
                factor.lower[n][m] = entry;
                left -= entry * entry;
            }
            let inverse = 1.0 / sqrt(f64::max(left, LEAST_LEFT * own));
            factor.lower[n][n] = inverse;
            factor.narrow[n + 1] = factor.narrow[n] * inverse;
        }
        factor
    }

    /// How far a point lies from the mean: its independent deviations, and the squared distance over the first k dimensions.
    #[inline]
    pub(crate) fn distance(&self, off: &Vector) -> Distance {
        let mut distance = Distance {
            independent: [0.0; DIMENSIONS],
            squared: [0.0; DIMENSIONS + 1],
        };
        for (n, i) in self.read.places().iter().copied().enumerate() {
            let mut left = off[i];
            for k in 0..n {
                left -= self.lower[n][k] * distance.independent[k];
            }
            let independent = left * self.lower[n][n];
            distance.independent[n] = independent;
            distance.squared[n + 1] = distance.squared[n] + independent * independent;
        }
        distance
    }

    /// Density of the first `count` dimensions read at a squared distance.
    #[inline]
    pub(crate) fn density(&self, freedom: Freedom, distance: &Distance, count: usize) -> f64 {
        freedom.peak(count) * self.narrow[count] * freedom.fall(distance.squared[count], count)
    }

    /// Density of all that was read.
    #[inline]
    pub(crate) fn density_of_all(&self, freedom: Freedom, distance: &Distance) -> f64 {
        self.density(freedom, distance, self.read.count)
    }

    /// A row of coefficients on the independent deviations for one more number, whose covariances with every dimension are
    /// `with`, and the part of its variance `own` that they leave.
    pub(crate) fn explained(&self, with: &Vector, own: f64) -> (Vector, f64) {
        let (mut row, mut left) = ([0.0; DIMENSIONS], own);
        for (n, i) in self.read.places().iter().copied().enumerate() {
            let mut sum = with[i];
            for k in 0..n {
                sum -= self.lower[n][k] * row[k];
            }
            row[n] = sum * self.lower[n][n];
            left -= row[n] * row[n];
        }
        (row, f64::max(left, LEAST_LEFT * own))
    }

    /// One more number, given what was read: mean, scale and degrees of freedom of its t distribution.
    pub(crate) fn given(
        &self,
        freedom: Freedom,
        distance: &Distance,
        mean: f64,
        (row, left): (&Vector, f64),
    ) -> Student {
        let count = self.read.count;
        let told: f64 = row.iter().zip(&distance.independent).map(|(row, off)| row * off).sum();
        let after = freedom.after(count);
        Student {
            mean: mean + told,
            scale: sqrt(left * freedom.stretch(distance.squared[count], count)),
            freedom: after,
        }
    }

    /// How many dimensions were read.
    pub(crate) const fn count(&self) -> usize {
        self.read.count
    }
}

/// How far a point lies from a mean.
#[derive(Clone, Copy)]
pub(crate) struct Distance {
    /// Deviations, made independent, in scales; in the order of what was read.
    pub(crate) independent: Vector,
    /// Squared distance over the first k of them.
    pub(crate) squared: [f64; DIMENSIONS + 1],
}

/// Degrees of freedom: a whole number, at least 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Freedom(pub(crate) u32);

impl Freedom {
    fn value(self) -> f64 {
        f64::from(self.0)
    }

    /// After `count` more numbers are known.
    pub(crate) const fn after(self, count: usize) -> Self {
        Self(self.0 + count as u32)
    }

    /// By how much every variance grows once `count` numbers lie at this squared distance.
    pub(crate) fn stretch(self, squared: f64, count: usize) -> f64 {
        (self.value() + squared) / (self.value() + count as f64)
    }

    /// Density at the mean for unit scales: gamma((n + d) / 2) / (gamma(n / 2) (n pi)^(d / 2)).
    pub(crate) fn peak(self, count: usize) -> f64 {
        if self == Self::USUAL {
            return PEAKS[count];
        }
        let half = 0.5 * self.value();
        let more = half + 0.5 * count as f64;
        let spread = 0.5 * count as f64 * libm::log(self.value() * core::f64::consts::PI);
        libm::exp(libm::lgamma(more) - libm::lgamma(half) - spread)
    }

    /// Fall of the density from its peak: (1 + q / n)^-((n + d) / 2).
    #[inline]
    pub(crate) fn fall(self, squared: f64, count: usize) -> f64 {
        let inverse = 1.0 / (1.0 + squared / self.value());
        let twice = self.0 as usize + count;
        let mut power = if twice % 2 == 1 { sqrt(inverse) } else { 1.0 };
        let (mut square, mut left) = (inverse, twice / 2);
        while left > 0 {
            if left % 2 == 1 {
                power *= square;
            }
            square *= square;
            left /= 2;
        }
        power
    }

    /// Five: vehicles stray farther than a normal distribution would have them. Three to eight serve alike.
    pub(crate) const USUAL: Self = Self(5);
}

/// [`Freedom::peak`] for five degrees.
const PEAKS: [f64; DIMENSIONS + 1] = [
    1.0,
    0.379_606_689_822_494_1,
    0.159_154_943_091_895_2,
    0.072_499_537_339_202_24,
    0.035_462_414_274_818_23,
    0.018_461_855_583_055_138,
    0.010_159_233_346_457_84,
    0.005_876_591_149_383_871,
    0.003_557_162_851_248_113_2,
];

/// The t distribution of one number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Student {
    pub(crate) mean: f64,
    pub(crate) scale: f64,
    pub(crate) freedom: Freedom,
}

impl Student {
    /// The same with an independent error of variance `noise`.
    pub(crate) fn as_read(self, noise: f64) -> Self {
        Self {
            scale: sqrt(self.scale * self.scale + noise),
            ..self
        }
    }

    /// Density at `x`.
    pub(crate) fn density(self, x: f64) -> f64 {
        let z = (x - self.mean) / self.scale;
        self.freedom.peak(1) / self.scale * self.freedom.fall(z * z, 1)
    }

    /// Probability below `x`.
    ///
    /// Source: Abramowitz & Stegun, 26.7.3 and 26.7.4.
    pub(crate) fn below(self, x: f64) -> f64 {
        let t = (x - self.mean) / self.scale;
        let (n, many) = (self.freedom.value(), self.freedom.0);
        let cosine2 = n / (n + t * t);
        let sine = t / sqrt(n + t * t);
        let even = many.is_multiple_of(2);
        let mut term = if even { 1.0 } else { sqrt(cosine2) };
        let (mut sum, mut power) = (0.0, u32::from(!even));
        while power + 2 <= many {
            sum += term;
            term *= cosine2 * f64::from(power + 1) / f64::from(power + 2);
            power += 2;
        }
        if even {
            0.5 + 0.5 * sine * sum
        } else {
            let angle = libm::atan(t / sqrt(n));
            0.5 + (angle + sine * sum) * core::f64::consts::FRAC_1_PI
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn standard(freedom: u32) -> Student {
        Student {
            mean: 0.0,
            scale: 1.0,
            freedom: Freedom(freedom),
        }
    }

    /// Source: Abramowitz & Stegun, table 26.10: two-sided 5 % points of 1, 2, 5, 8, 30 degrees of freedom.
    #[test]
    fn quantiles_are_those_of_the_printed_tables() {
        for (freedom, t) in [(1, 12.706_2), (2, 4.302_65), (5, 2.570_58), (8, 2.306), (30, 2.042_27)] {
            assert!((standard(freedom).below(t) - 0.975).abs() < 1e-5, "{freedom}");
            assert!((standard(freedom).below(-t) - 0.025).abs() < 1e-5, "{freedom}");
        }
    }

    #[test]
    fn the_density_is_the_slope_of_the_probability() {
        for freedom in [1, 2, 3, 5, 6, 12, 33] {
            for step in -12..12 {
                let (t, z) = (standard(freedom), 0.4 * f64::from(step) + 0.1);
                let slope = (t.below(z + 1e-5) - t.below(z - 1e-5)) / 2e-5;
                assert!((slope - t.density(z)).abs() < 1e-8, "{freedom} {z}");
            }
        }
    }

    #[test]
    fn the_stored_peaks_are_those_of_the_formula() {
        for count in 0..=DIMENSIONS {
            let five = 5.0 * core::f64::consts::PI;
            let formula =
                libm::tgamma(2.5 + 0.5 * count as f64) / libm::tgamma(2.5) / libm::pow(five, 0.5 * count as f64);
            assert!((Freedom::USUAL.peak(count) / formula - 1.0).abs() < 1e-12, "{count}");
        }
        assert!((Freedom(9).peak(2) - 1.0 / core::f64::consts::TAU).abs() < 1e-12); // in two dimensions always
    }

    /// Some scale matrix, and a point.
    fn some() -> (Matrix, Vector) {
        let mut scale = ZERO;
        for i in 0..DIMENSIONS {
            for j in 0..DIMENSIONS {
                let apart = i.abs_diff(j) as f64;
                scale[i][j] = 4.0 * libm::exp(-0.4 * apart) + if i == j { 1.0 + i as f64 } else { 0.0 };
            }
        }
        (scale, [1.0, -2.0, 0.5, 3.0, -1.0, 0.3, 2.0, -0.7])
    }

    /// Numerical integration over the number that was not read, and its conditional mean by the same sum.
    #[test]
    fn what_was_not_read_drops_out_and_follows_from_the_rest() {
        let (scale, mut off) = some();
        let some_read = Read::of(|i| [0, 2, 5].contains(&i));
        let more_read = Read::of(|i| [0, 2, 5, 6].contains(&i));
        let noise = [0.5; DIMENSIONS];
        let fewer = Factor::of(&scale, &noise, &some_read);
        let more = Factor::of(&scale, &noise, &more_read);
        let five = Freedom::USUAL;
        let distance = fewer.distance(&off);
        let (row, left) = fewer.explained(&scale[6], scale[6][6]);
        let given = fewer.given(five, &distance, 0.0, (&row, left)).as_read(0.0);
        let (mut sum, mut first) = (0.0, 0.0);
        for step in -4_000..4_000 {
            off[6] = 0.05 * f64::from(step);
            let density = 0.05 * more.density_of_all(five, &more.distance(&off));
            sum += density;
            first += density * off[6];
        }
        let alone = fewer.density_of_all(five, &distance);
        assert!((sum / alone - 1.0).abs() < 1e-6, "{sum} {alone}");
        assert!(
            (first / sum - given.mean).abs() < 1e-4,
            "{} {}",
            first / sum,
            given.mean
        );
        assert_eq!(given.freedom, Freedom(8));
        // The density at a point is that of the others times that of the last one.
        off[6] = 1.3;
        let (row, left) = fewer.explained(&scale[6], scale[6][6] + noise[6]);
        let last = fewer.given(five, &distance, 0.0, (&row, left)).density(1.3);
        let both = more.density_of_all(five, &more.distance(&off));
        assert!((both / (alone * last) - 1.0).abs() < 1e-12, "{both}");
    }
}
