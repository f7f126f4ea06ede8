//! Linear regression of several readings at once, with readings missing and errors of known size.
//!
//! y = B' x + e + v: e is multivariate t with 5 degrees of freedom and unknown scale S, v has the known covariance V of a
//! case (instruments, conditions that were not noted). B by generalised least squares, S by expectation maximisation, in
//! turns, as in Little & Rubin, Statistical Analysis with Missing Data (2nd ed., 2002), chapters 8 and 11, with weights
//! (nu + d) / (nu + q) of the t distribution.

use super::{Covariance, FEATURES};

/// Degrees of freedom of the t distribution; the likelihood that reads the table has the same.
pub(crate) const DEGREES: f64 = 5.0;
/// Steps, at most, and the change of a coefficient or of a standard deviation, K, below which they end: a tenth of the last
/// digit that is written.
const STEPS: usize = 2_000;
const SETTLED: f64 = 1e-4;

/// One case of a regression.
pub(crate) struct Sample {
    pub(crate) terms: Vec<f64>,
    pub(crate) read: [Option<f64>; FEATURES],
    /// Covariance of the errors whose size is known, K2.
    pub(crate) known: Covariance,
}

/// What is believed beforehand, and how many cases it weighs.
pub(crate) struct Prior<'a> {
    pub(crate) coefficients: Vec<[f64; FEATURES]>,
    pub(crate) cases: &'a [f64],
    pub(crate) scale: Covariance,
    pub(crate) scale_cases: f64,
}

/// The fitted coefficients, one row per term, and the scale of the t distribution, K2.
pub(crate) struct Fit {
    pub(crate) coefficients: Vec<[f64; FEATURES]>,
    pub(crate) scale: Covariance,
}

/// What the readings of a case say of the deviations of all its readings.
pub(crate) struct Deviation {
    pub(crate) weight: f64,
    pub(crate) mean: [f64; FEATURES],
    pub(crate) covariance: Covariance,
    /// S (S + V)^-1 of what was read: by how much a change of the mean moves `mean`.
    pub(crate) gain: Covariance,
    /// (S + V)^-1 of what was read, zero elsewhere.
    pub(crate) precision: Covariance,
}

/// Given the deviations that were read, those of all readings under the scale `scale`.
pub(crate) fn deviation(read: &[Option<f64>; FEATURES], scale: &Covariance, known: &Covariance) -> Deviation {
    let mut total = *scale;
    for (i, row) in total.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate() {
            let both = read[i].is_some() && read[j].is_some();
            *cell = if both {
                *cell + known[i][j]
            } else {
                f64::from(u8::from(i == j))
            };
        }
    }
    let mut precision = inverse(&total);
    for (i, row) in precision.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate() {
            if read[i].is_none() || read[j].is_none() {
                *cell = 0.0;
            }
        }
    }
    let residual = read.map(|value| value.unwrap_or(0.0));
    let gain = product(scale, &precision);
    let mean = gain.map(|row| dot(&row, &residual));
    let distance = dot(&precision.map(|row| dot(&row, &residual)), &residual);
    let count = read.iter().flatten().count() as f64;
    let taken = product(&gain, scale);
    let mut covariance = *scale;
    for (i, row) in covariance.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate() {
            *cell -= taken[i][j];
        }
    }
    Deviation {
        weight: (DEGREES + count) / (DEGREES + distance),
        mean,
        covariance,
        gain,
        precision,
    }
}

/// The coefficients and the scale that make these readings likeliest, beside what is believed beforehand.
///
/// Errors: no end within the permitted steps.
pub(crate) fn fit(samples: &[Sample], prior: &Prior<'_>) -> Result<Fit, String> {
    let mut now = Fit {
        coefficients: prior.coefficients.clone(),
        scale: prior.scale,
    };
    for _ in 0..STEPS {
        let next = step(samples, prior, &now);
        let changes = now
            .coefficients
            .iter()
            .flatten()
            .zip(next.coefficients.iter().flatten());
        let moved = changes.map(|(now, next)| (next - now).abs()).fold(0.0, f64::max);
        let spreads = (0..FEATURES).map(|i| (next.scale[i][i].sqrt() - now.scale[i][i].sqrt()).abs());
        let moved = spreads.fold(moved, f64::max);
        now = next;
        if moved < SETTLED {
            return Ok(now);
        }
    }
    Err(format!("{} cases: no fit within {STEPS} steps", samples.len()))
}

fn step(samples: &[Sample], prior: &Prior<'_>, now: &Fit) -> Fit {
    let found: Vec<Deviation> = samples
        .iter()
        .map(|sample| deviation(&residual(sample, &now.coefficients), &now.scale, &sample.known))
        .collect();
    let coefficients = least_squares(samples, &found, prior, &now.scale);
    let mut scale = prior.scale.map(|row| row.map(|value| prior.scale_cases * value));
    for (sample, deviation) in samples.iter().zip(&found) {
        let read = residual(sample, &coefficients).map(|value| value.unwrap_or(0.0));
        let mean = deviation.gain.map(|row| dot(&row, &read));
        add(&mut scale, &mean, deviation.weight, &deviation.covariance);
    }
    let cases = samples.len() as f64 + prior.scale_cases;
    Fit {
        coefficients,
        scale: scale.map(|row| row.map(|value| value / cases)),
    }
}

fn residual(sample: &Sample, coefficients: &[[f64; FEATURES]]) -> [Option<f64>; FEATURES] {
    let mean = mean(&sample.terms, coefficients);
    std::array::from_fn(|i| sample.read[i].map(|value| value - mean[i]))
}

/// The coefficients for given weights and precisions: the normal equations of all readings at once. What is believed
/// beforehand counts as cases without errors of their own.
fn least_squares(
    samples: &[Sample],
    found: &[Deviation],
    prior: &Prior<'_>,
    scale: &Covariance,
) -> Vec<[f64; FEATURES]> {
    let terms = prior.cases.len();
    let mut normal = vec![vec![0.0; terms * FEATURES]; terms * FEATURES];
    let mut right = vec![[0.0]; terms * FEATURES];
    let put = |normal: &mut Vec<Vec<f64>>, (m, n): (usize, usize), weight: f64, precision: &Covariance| {
        for (i, row) in precision.iter().enumerate() {
            for (j, value) in row.iter().enumerate() {
                normal[m * FEATURES + i][n * FEATURES + j] += weight * value;
            }
        }
    };
    let believed = inverse(scale);
    for (term, weight) in prior.cases.iter().enumerate() {
        put(&mut normal, (term, term), *weight, &believed);
        for (i, row) in believed.iter().enumerate() {
            right[term * FEATURES + i][0] += weight * dot(row, &prior.coefficients[term]);
        }
    }
    for (sample, deviation) in samples.iter().zip(found) {
        let read = sample.read.map(|value| value.unwrap_or(0.0));
        let weighed = deviation.precision.map(|row| deviation.weight * dot(&row, &read));
        let own: Vec<(usize, f64)> = sample
            .terms
            .iter()
            .copied()
            .enumerate()
            .filter(|(_, term)| *term != 0.0)
            .collect();
        for (m, first) in &own {
            for (n, second) in own.iter().filter(|(n, _)| n <= m) {
                put(
                    &mut normal,
                    (*m, *n),
                    deviation.weight * first * second,
                    &deviation.precision,
                );
            }
            for (i, value) in weighed.iter().enumerate() {
                right[m * FEATURES + i][0] += first * value;
            }
        }
    }
    for m in 0..terms * FEATURES {
        let (above, below) = normal.split_at_mut(m + 1);
        for (cell, row) in above[m].iter_mut().skip(m + 1).zip(below) {
            *cell = row[m];
        }
    }
    let solved = solve(normal, right);
    (0..terms)
        .map(|term| std::array::from_fn(|i| solved[term * FEATURES + i][0]))
        .collect()
}

/// Adds w m m' + C.
pub(crate) fn add(sum: &mut Covariance, mean: &[f64; FEATURES], weight: f64, covariance: &Covariance) {
    for ((row, own), first) in sum.iter_mut().zip(covariance).zip(mean) {
        for ((cell, value), second) in row.iter_mut().zip(own).zip(mean) {
            *cell += weight * first * second + value;
        }
    }
}

/// B' x.
pub(crate) fn mean(terms: &[f64], coefficients: &[[f64; FEATURES]]) -> [f64; FEATURES] {
    let mut mean = [0.0; FEATURES];
    for (term, row) in terms.iter().zip(coefficients) {
        for (value, coefficient) in mean.iter_mut().zip(row) {
            *value += term * coefficient;
        }
    }
    mean
}

fn dot(a: &[f64; FEATURES], b: &[f64; FEATURES]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

/// A B.
pub(crate) fn product(a: &Covariance, b: &Covariance) -> Covariance {
    a.map(|row| std::array::from_fn(|j| (0..FEATURES).map(|k| row[k] * b[k][j]).sum()))
}

/// The inverse of a positive definite matrix.
pub(crate) fn inverse(matrix: &Covariance) -> Covariance {
    let rows = solve(
        matrix.iter().map(|row| row.to_vec()).collect(),
        (0..FEATURES)
            .map(|i| std::array::from_fn(|j| f64::from(u8::from(i == j))))
            .collect(),
    );
    std::array::from_fn(|i| rows[i])
}

/// X of A X = R for a positive definite A, by Gauss's elimination; the order of a Cholesky factor needs no pivots.
fn solve<const N: usize>(mut a: Vec<Vec<f64>>, mut right: Vec<[f64; N]>) -> Vec<[f64; N]> {
    let count = a.len();
    for i in 0..count {
        let (above, below) = a.split_at_mut(i + 1);
        let (right_above, right_below) = right.split_at_mut(i + 1);
        for (row, right_row) in below.iter_mut().zip(right_below) {
            let factor = row[i] / above[i][i];
            if factor != 0.0 {
                for (cell, pivot) in row.iter_mut().zip(&above[i]).skip(i) {
                    *cell -= factor * pivot;
                }
                for (cell, pivot) in right_row.iter_mut().zip(&right_above[i]) {
                    *cell -= factor * pivot;
                }
            }
        }
    }
    for i in (0..count).rev() {
        let (above, below) = right.split_at_mut(i + 1);
        for (j, cell) in above[i].iter_mut().enumerate() {
            let known: f64 = a[i].iter().skip(i + 1).zip(&*below).map(|(a, row)| a * row[j]).sum();
            *cell = (*cell - known) / a[i][i];
        }
    }
    right
}
