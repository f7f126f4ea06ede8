//! The multivariate t distribution: density, conditional distributions, and the distribution of one number.
//!
//! Source: Kotz & Nadarajah, Multivariate t Distributions and Their Applications, Cambridge 2004, chapter 1: density (1.1),
//! marginals (1.9), conditionals (1.11).

#![allow(clippy::needless_range_loop)] // rows, columns and lanes of matrices

use super::sqrt;

/// The most dimensions.
pub(crate) const DIMENSIONS: usize = 8;
/// A point, or a difference of two.
pub(crate) type Vector = [f64; DIMENSIONS];
/// Entries of a lower triangle, row by row.
pub(crate) const TRIANGLE: usize = DIMENSIONS * (DIMENSIONS + 1) / 2;
/// A lower triangle, row by row.
pub(crate) type Triangle = [f64; TRIANGLE];

/// Least part of a variance that is left when all other dimensions are known, so that the factorisation does not break down
/// where two dimensions are equal.
const LEAST_LEFT: f64 = 1e-6;

/// Where a row of a lower triangle starts.
const ROW: [usize; DIMENSIONS] = {
    let mut starts = [0; DIMENSIONS];
    let mut row = 1;
    while row < DIMENSIONS {
        starts[row] = starts[row - 1] + row;
        row += 1;
    }
    starts
};

/// Which dimensions were read. Vectors and triangles of what was read have these in their order, and nothing behind them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Read {
    order: [usize; DIMENSIONS],
    count: usize,
    /// The place of each entry of their triangle in that of all dimensions.
    entries: [u8; TRIANGLE],
}

impl Read {
    /// Those that were read.
    pub(crate) fn of(read: impl Fn(usize) -> bool) -> Self {
        let mut of = Self {
            order: [0; DIMENSIONS],
            count: 0,
            entries: [0; TRIANGLE],
        };
        for i in (0..DIMENSIONS).filter(|i| read(*i)) {
            of.order[of.count] = i;
            of.count += 1;
            for (m, j) in of.order[..of.count].iter().enumerate() {
                of.entries[ROW[of.count - 1] + m] = (ROW[i] + j) as u8;
            }
        }
        of
    }

    /// Their places, in order.
    pub(crate) fn places(&self) -> &[usize] {
        &self.order[..self.count]
    }

    /// How many there are.
    pub(crate) const fn count(&self) -> usize {
        self.count
    }

    /// Those entries of a vector.
    pub(crate) fn part(&self, of: &Vector) -> Vector {
        let mut part = [0.0; DIMENSIONS];
        for (part, i) in part.iter_mut().zip(self.places()) {
            *part = of[*i];
        }
        part
    }

    /// What was read, in order, less those entries of a mean.
    pub(crate) fn off(&self, value: &Vector, mean: &Vector) -> Vector {
        let mut off = *value;
        for (off, i) in off.iter_mut().zip(self.places()) {
            *off -= mean[*i];
        }
        off
    }

    /// The place of an entry of their triangle in a lower triangle of all dimensions.
    #[inline]
    pub(crate) fn entry(&self, at: usize) -> usize {
        usize::from(self.entries[at])
    }

    /// Their triangle of a matrix of all dimensions.
    pub(crate) fn part_of(&self, of: impl Fn(usize, usize) -> f64) -> Triangle {
        let mut part = [0.0; TRIANGLE];
        for (n, i) in self.places().iter().enumerate() {
            for (m, j) in self.places()[..=n].iter().enumerate() {
                part[ROW[n] + m] = of(*i, *j);
            }
        }
        part
    }
}

/// A symmetric matrix, as its lower triangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Symmetric(pub(crate) Triangle);

impl Symmetric {
    /// The zero matrix.
    pub(crate) const ZERO: Self = Self([0.0; TRIANGLE]);

    /// The matrix with these entries.
    pub(crate) fn of(entry: impl Fn(usize, usize) -> f64) -> Self {
        let mut matrix = Self::ZERO;
        for i in 0..DIMENSIONS {
            for j in 0..=i {
                matrix.0[ROW[i] + j] = entry(i, j);
            }
        }
        matrix
    }

    /// The entry of a row and a column.
    pub(crate) const fn at(&self, i: usize, j: usize) -> f64 {
        self.0[entry_of(i, j)]
    }

    /// The same entry, to be changed.
    pub(crate) const fn at_mut(&mut self, i: usize, j: usize) -> &mut f64 {
        &mut self.0[entry_of(i, j)]
    }

    /// The sum of two.
    pub(crate) fn plus(&self, other: &Self) -> Self {
        Self(core::array::from_fn(|at| self.0[at] + other.0[at]))
    }

    /// Adds the variance of a shift along a known direction, `deviation` being one standard deviation.
    pub(crate) fn add_along(&mut self, deviation: &Vector) {
        *self = self.plus(&Self::of(|i, j| deviation[i] * deviation[j]));
    }

    /// Rows and columns times these factors.
    pub(crate) fn scaled(&self, by: &Vector) -> Self {
        Self::of(|i, j| self.at(i, j) * (by[i] * by[j]))
    }
}

/// How many entries a lower triangle of so many dimensions has.
pub(crate) fn entries_of(count: usize) -> usize {
    ROW.get(count).copied().unwrap_or(TRIANGLE)
}

/// The place of an entry in a lower triangle, whichever of its row and column is the larger one.
pub(crate) const fn entry_of(i: usize, j: usize) -> usize {
    if i < j { ROW[j] + i } else { ROW[i] + j }
}

/// One number of each of `L` matrices or vectors that are calculated side by side, so that a processor can add several at a
/// time.
pub(crate) type Lanes<const L: usize> = [f64; L];
/// Vectors side by side.
pub(crate) type Vectors<const L: usize> = [Lanes<L>; DIMENSIONS];

/// `from` less a product, lane by lane.
#[inline(always)]
fn less<const L: usize>(from: &mut Lanes<L>, one: &Lanes<L>, other: &Lanes<L>) {
    for lane in 0..L {
        from[lane] -= one[lane] * other[lane];
    }
}

/// `to` and more, lane by lane.
#[inline(always)]
pub(crate) fn more<const L: usize>(to: &mut Lanes<L>, more: &Lanes<L>) {
    for lane in 0..L {
        to[lane] += more[lane];
    }
}

/// Scale matrices side by side, each as L D L', L a lower triangle with ones on its diagonal.
pub(crate) struct Factor<const L: usize> {
    count: usize,
    /// L below the diagonal; on it one over D.
    lower: [Lanes<L>; TRIANGLE],
}

impl<const L: usize> Factor<L> {
    /// For matrices of this many dimensions, all zero until they are filled in.
    pub(crate) const fn empty(count: usize) -> Self {
        let lower = [[0.0; L]; TRIANGLE];
        Self { count, lower }
    }

    /// Fills in a matrix by the entries of its lower triangle in order, and what is added to its diagonal.
    #[inline]
    pub(crate) fn fill(&mut self, lane: usize, entry: impl Fn(usize) -> f64, variances: &Vector) {
        for (at, to) in self.lower[..entries_of(self.count)].iter_mut().enumerate() {
            to[lane] = entry(at);
        }
        for (n, variance) in variances.iter().enumerate().take(self.count) {
            self.lower[ROW[n] + n][lane] += variance;
        }
    }

    /// Replaces the matrices by their factors.
    ///
    /// Each row is a function of its own: the compiler then knows its length and unrolls its loops, which halves the time.
    pub(crate) fn factorise(&mut self) {
        self.factorise_row::<0>();
        self.factorise_row::<1>();
        self.factorise_row::<2>();
        self.factorise_row::<3>();
        self.factorise_row::<4>();
        self.factorise_row::<5>();
        self.factorise_row::<6>();
        self.factorise_row::<7>();
    }

    #[inline(always)]
    fn factorise_row<const N: usize>(&mut self) {
        if N >= self.count {
            return;
        }
        // The row of L times D, then of L.
        let mut times_d = [[0.0; L]; DIMENSIONS];
        for m in 0..N {
            let mut sum = self.lower[ROW[N] + m];
            for k in 0..m {
                less(&mut sum, &times_d[k], &self.lower[ROW[m] + k]);
            }
            times_d[m] = sum;
        }
        let own = self.lower[ROW[N] + N];
        let mut left = own;
        for m in 0..N {
            let inverse = self.lower[ROW[m] + m];
            let entry = core::array::from_fn(|lane| times_d[m][lane] * inverse[lane]);
            less(&mut left, &times_d[m], &entry);
            self.lower[ROW[N] + m] = entry;
        }
        self.lower[ROW[N] + N] = core::array::from_fn(|lane| 1.0 / f64::max(left[lane], LEAST_LEFT * own[lane]));
    }

    /// One over the square root of the determinant of no row, the first one, the first two, and so on, times these `peaks`.
    #[inline]
    pub(crate) fn tops(&self, peaks: &[f64; DIMENSIONS + 1]) -> [Lanes<L>; DIMENSIONS + 1] {
        let mut tops = peaks.map(|peak| [peak; L]);
        let mut product = [1.0; L];
        for n in 0..self.count.min(DIMENSIONS) {
            for lane in 0..L {
                product[lane] *= self.lower[ROW[n] + n][lane];
                tops[n + 1][lane] *= sqrt(product[lane]);
            }
        }
        tops
    }

    /// One over the square root of the determinant.
    pub(crate) fn narrow(&self) -> Lanes<L> {
        self.tops(&[1.0; DIMENSIONS + 1])[self.count.min(DIMENSIONS)]
    }

    /// Decorrelates vectors: L^-1 times each.
    pub(crate) fn solve(&self, vectors: &mut Vectors<L>) {
        self.solve_row::<1>(vectors);
        self.solve_row::<2>(vectors);
        self.solve_row::<3>(vectors);
        self.solve_row::<4>(vectors);
        self.solve_row::<5>(vectors);
        self.solve_row::<6>(vectors);
        self.solve_row::<7>(vectors);
    }

    #[inline(always)]
    fn solve_row<const N: usize>(&self, vectors: &mut Vectors<L>) {
        if N >= self.count {
            return;
        }
        let mut left = vectors[N];
        for m in 0..N {
            less(&mut left, &self.lower[ROW[N] + m], &vectors[m]);
        }
        vectors[N] = left;
    }

    /// The product of such vectors with the inverse of the matrix between them.
    #[inline]
    pub(crate) fn product(&self, one: &Vectors<L>, other: &Vectors<L>) -> Lanes<L> {
        let mut sum = [0.0; L];
        for n in 0..self.count.min(DIMENSIONS) {
            let inverse = &self.lower[ROW[n] + n];
            for lane in 0..L {
                sum[lane] += one[n][lane] * other[n][lane] * inverse[lane];
            }
        }
        sum
    }

    /// The inverse of the matrix times what such vectors were before.
    pub(crate) fn whole(&self, independent: &Vectors<L>) -> Vectors<L> {
        let mut whole = *independent;
        for n in (0..self.count.min(DIMENSIONS)).rev() {
            let mut own = [0.0; L];
            for lane in 0..L {
                own[lane] = independent[n][lane] * self.lower[ROW[n] + n][lane];
            }
            for m in n + 1..self.count.min(DIMENSIONS) {
                less(&mut own, &self.lower[ROW[m] + n], &whole[m]);
            }
            whole[n] = own;
        }
        whole
    }

    /// The squared distances of such vectors over the first dimension, the first two, and so on.
    #[inline]
    pub(crate) fn squares(&self, independent: &Vectors<L>) -> Vectors<L> {
        let (mut squares, mut sum) = ([[0.0; L]; DIMENSIONS], [0.0; L]);
        for n in 0..self.count.min(DIMENSIONS) {
            for lane in 0..L {
                sum[lane] += independent[n][lane] * independent[n][lane] * self.lower[ROW[n] + n][lane];
            }
            squares[n] = sum;
        }
        squares
    }

    /// One more number given what was read: its decorrelated covariances with what was read, and its remaining variance.
    pub(crate) fn explained(&self, mut with: Vectors<L>, own: Lanes<L>) -> (Vectors<L>, Lanes<L>) {
        self.solve(&mut with);
        let told = self.product(&with, &with);
        let left = core::array::from_fn(|lane| f64::max(own[lane] - told[lane], LEAST_LEFT * own[lane]));
        (with, left)
    }
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

    /// Density at the mean for unit scales, in no dimension, one, two, and so on:
    /// gamma((n + d) / 2) / (gamma(n / 2) (n pi)^(d / 2)).
    pub(crate) fn peaks(self) -> [f64; DIMENSIONS + 1] {
        if self == Self::USUAL {
            return PEAKS;
        }
        let half = 0.5 * self.value();
        let spread = self.value() * core::f64::consts::PI;
        let mut peaks = [1.0; DIMENSIONS + 1];
        peaks[1] = libm::exp(libm::lgamma(half + 0.5) - libm::lgamma(half)) / sqrt(spread);
        for count in 2..=DIMENSIONS {
            // gamma(x + 1) = x gamma(x)
            peaks[count] = peaks[count - 2] * (half + 0.5 * (count - 2) as f64) / spread;
        }
        peaks
    }

    /// Fall of the density from its peak: (1 + q / n)^-((n + d) / 2).
    #[inline]
    pub(crate) fn fall<const L: usize>(self, squared: Lanes<L>, count: usize) -> Lanes<L> {
        let inverse = squared.map(|squared| self.value() / (self.value() + squared));
        let twice = self.0 as usize + count;
        let mut power = if twice % 2 == 1 { inverse.map(sqrt) } else { [1.0; L] };
        let (mut square, mut left) = (inverse, twice / 2);
        loop {
            if left % 2 == 1 {
                for lane in 0..L {
                    power[lane] *= square[lane];
                }
            }
            left /= 2;
            if left == 0 {
                break;
            }
            for lane in 0..L {
                square[lane] *= square[lane];
            }
        }
        power
    }

    /// Five, because vehicles scatter farther than a normal distribution has them; three to eight do equally well.
    pub(crate) const USUAL: Self = Self(5);
}

/// [`Freedom::peaks`] for five degrees.
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

    /// Density at the mean.
    pub(crate) fn top(self) -> f64 {
        self.freedom.peaks()[1] / self.scale
    }

    /// Density at `x` and its slope there, from the density at the mean.
    #[inline]
    pub(crate) fn density_from(self, top: f64, x: f64) -> (f64, f64) {
        let z = (x - self.mean) / self.scale;
        let [fall] = self.freedom.fall([z * z], 1);
        let n = self.freedom.value();
        (top * fall, -top * fall * (n + 1.0) * z / ((n + z * z) * self.scale))
    }

    /// Probability below `x`.
    ///
    /// Sources: Abramowitz & Stegun, 26.7.3 and 26.7.4; beyond [`SERIES`] degrees of freedom the expansion of Hill 1970, Comm. ACM
    /// 13(10):617-619 (algorithm 395), which differs from them by less than 1e-11 there.
    #[inline]
    pub(crate) fn below(self, x: f64) -> f64 {
        let t = (x - self.mean) / self.scale;
        let (n, many) = (self.freedom.value(), self.freedom.0);
        if many > SERIES {
            return near_normal(t, n);
        }
        let inverse = 1.0 / (n + t * t);
        let cosine2 = n * inverse;
        let even = many.is_multiple_of(2);
        let (mut term, mut sum) = (1.0, 0.0);
        for share in SHARES
            .iter()
            .take(many as usize - 1)
            .skip(usize::from(!even))
            .step_by(2)
        {
            sum += term;
            term *= cosine2 * share;
        }
        if even {
            0.5 + 0.5 * t * sqrt(inverse) * sum
        } else {
            let root = sqrt(n);
            let angle = libm::atan(t / root);
            0.5 + (angle + t * root * inverse * sum) * core::f64::consts::FRAC_1_PI
        }
    }
}

/// The most degrees of freedom for which the series is summed.
const SERIES: u32 = 30;

/// (k + 1) / (k + 2).
const SHARES: [f64; SERIES as usize] = {
    let mut shares = [0.0; SERIES as usize];
    let mut k = 0;
    while k < SERIES as usize {
        shares[k] = (k + 1) as f64 / (k + 2) as f64;
        k += 1;
    }
    shares
};

/// Probability below `t` for many degrees of freedom.
fn near_normal(t: f64, n: f64) -> f64 {
    let a = n - 0.5;
    let b = 48.0 * a * a;
    let y = a * libm::log1p(t * t / n);
    let fall = (((-0.4 * y - 3.3) * y - 24.0) * y - 85.5) / (0.8 * y * y + 100.0 + b);
    let z = ((fall + y + 3.0) / b + 1.0) * sqrt(y);
    let beyond = 0.5 * libm::erfc(z * core::f64::consts::FRAC_1_SQRT_2);
    if t > 0.0 { 1.0 - beyond } else { beyond }
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
        for freedom in [1, 2, 3, 5, 6, 12, 30, 31, 400] {
            for step in -12..12 {
                let (t, z) = (standard(freedom), 0.4 * f64::from(step) + 0.1);
                let slope = (t.below(z + 1e-5) - t.below(z - 1e-5)) / 2e-5;
                let density = |z: f64| t.density_from(t.top(), z);
                assert!((slope - density(z).0).abs() < 1e-8, "{freedom} {z}");
                let second = (density(z + 1e-5).0 - density(z - 1e-5).0) / 2e-5;
                assert!((second - density(z).1).abs() < 1e-8, "{freedom} {z}");
            }
        }
    }

    #[test]
    fn the_stored_peaks_are_those_of_the_formula() {
        for count in 0..=DIMENSIONS {
            let five = 5.0 * core::f64::consts::PI;
            let formula =
                libm::tgamma(2.5 + 0.5 * count as f64) / libm::tgamma(2.5) / libm::pow(five, 0.5 * count as f64);
            assert!((PEAKS[count] / formula - 1.0).abs() < 1e-12, "{count}");
        }
        for freedom in [1, 9, 400] {
            let peaks = Freedom(freedom).peaks();
            assert!((peaks[2] - 1.0 / core::f64::consts::TAU).abs() < 1e-12); // in two dimensions always
            assert!(
                (peaks[4] / (f64::from(freedom + 2) / f64::from(freedom))
                    - 1.0 / libm::pow(core::f64::consts::TAU, 2.0))
                .abs()
                    < 1e-12
            );
        }
    }

    /// Some scale matrix, and a point.
    fn some() -> (Symmetric, Vector) {
        let scale = Symmetric::of(|i, j| {
            let apart = i.abs_diff(j) as f64;
            4.0 * libm::exp(-0.4 * apart) + if i == j { 1.0 + i as f64 } else { 0.0 }
        });
        (scale, [1.0, -2.0, 0.5, 3.0, -1.0, 0.3, 2.0, -0.7])
    }

    /// Numerical integration over the number that was not read, and its conditional mean by the same sum.
    #[test]
    fn what_was_not_read_drops_out_and_follows_from_the_rest() {
        let (scale, mut off) = some();
        let some_read = Read::of(|i| [0, 2, 5].contains(&i));
        let more_read = Read::of(|i| [0, 2, 5, 6].contains(&i));
        let noise = [0.5; DIMENSIONS];
        let factor = |read: &Read| {
            let mut factor = Factor::<1>::empty(read.count());
            let part = read.part_of(|i, j| scale.at(i, j));
            factor.fill(0, |at| part[at], &noise);
            factor.factorise();
            factor
        };
        let (fewer, more) = (factor(&some_read), factor(&more_read));
        let five = Freedom::USUAL;
        let at = |factor: &Factor<1>, read: &Read, off: &Vector| {
            let mut independent = read.part(off).map(|off| [off]);
            factor.solve(&mut independent);
            (independent, factor.product(&independent, &independent))
        };
        let density = |factor: &Factor<1>, squared, count: usize| {
            factor.tops(&five.peaks())[count][0] * five.fall(squared, count)[0]
        };
        let given = |own: f64, (independent, [squared]): (Vectors<1>, [f64; 1])| {
            let (row, [left]) = fewer.explained(
                some_read
                    .part(&core::array::from_fn(|i| scale.at(i, 6)))
                    .map(|with| [with]),
                [own],
            );
            Student {
                mean: fewer.product(&row, &independent)[0],
                scale: sqrt(left * five.stretch(squared, 3)),
                freedom: five.after(3),
            }
        };
        let seen = at(&fewer, &some_read, &off);
        let (mut sum, mut first) = (0.0, 0.0);
        for step in -4_000..4_000 {
            off[6] = 0.05 * f64::from(step);
            let density = 0.05 * density(&more, at(&more, &more_read, &off).1, 4);
            sum += density;
            first += density * off[6];
        }
        let alone = density(&fewer, seen.1, 3);
        assert!((sum / alone - 1.0).abs() < 1e-6, "{sum} {alone}");
        let mean = given(scale.at(6, 6), seen).mean;
        assert!((first / sum - mean).abs() < 1e-4, "{} {mean}", first / sum);
        // The density at a point is that of the others times that of the last one.
        off[6] = 1.3;
        let last = given(scale.at(6, 6) + noise[6], seen);
        let last = last.density_from(last.top(), 1.3).0;
        let (independent, squared) = at(&more, &more_read, &off);
        let both = density(&more, squared, 4);
        assert!((both / (alone * last) - 1.0).abs() < 1e-12, "{both}");
        // The squares contain those of the first three dimensions alone.
        let squares = more.squares(&independent);
        assert!(
            (density(&more, squares[2], 3) / alone - 1.0).abs() < 1e-12 && (squares[3][0] - squared[0]).abs() < 1e-12
        );
    }
}
