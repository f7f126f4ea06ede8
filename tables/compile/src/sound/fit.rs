//! Mean, deviation and correlations of sound vehicles, by maximum likelihood under t distributions of 5 degrees of freedom.
//!
//! Each feature by itself first: its mean is linear in the 62 terms of the weather, the logarithm of its deviation in the
//! first 13 of them. Weighted least squares and Newton steps in turns, with the weights (nu + 1) / (nu + z^2) of the t
//! distribution (K. L. Lange, R. J. A. Little and J. M. G. Taylor, J. Am. Stat. Assoc. 84, 1989, 881). Then the
//! correlations of the deviations: the part that lasts over all weathers of one vehicle, and the rest.

use super::draw::{Sample, WEATHERS};
use crate::features::FEATURES;
use crate::linear::{Matrix, cholesky, distance, solve};
use coldloop::expected::Weather;
use nalgebra::DMatrix;

/// Degrees of freedom.
pub(crate) const DEGREES: f64 = 5.0;
/// Terms that the logarithm of a deviation is linear in.
pub(crate) const DEVIATION_TERMS: usize = 13;
/// Rounds of the two fits.
const ROUNDS: usize = 14;
const CORRELATION_ROUNDS: usize = 40;
/// Weight of keeping coefficients small, per sample: of the mean (in squared deviations) and of the deviation.
const MEAN_RIDGE: f64 = 3e-6;
const DEVIATION_RIDGE: f64 = 2e-3;
/// What a reading is noted to: half a kelvin in steps, and a count of cycles. No deviation becomes smaller than that.
pub(crate) const NOTED: [f64; FEATURES] = [0.15, 0.15, 0.15, 0.15, 0.15, 0.15, 0.15, 0.05];
/// How many vehicles are drawn again to see whether a table is of the model as it is.
pub(crate) const DRAWN: usize = 3;
/// Median of |t| with 5 degrees of freedom.
const MEDIAN: f64 = 0.727;

/// What sound vehicles of one kind read.
#[derive(Clone)]
pub(crate) struct Kind {
    pub(crate) mean: [[f64; Weather::TERMS]; FEATURES],
    pub(crate) ln_deviation: [[f64; DEVIATION_TERMS]; FEATURES],
    pub(crate) lasting: Matrix<FEATURES>,
    pub(crate) passing: Matrix<FEATURES>,
    /// Mean features of the first vehicles that were drawn.
    pub(crate) drawn: [f64; FEATURES],
}

impl Kind {
    /// Mean and deviation in the weather of these terms.
    pub(crate) fn at(&self, terms: &[f64; Weather::TERMS]) -> ([f64; FEATURES], [f64; FEATURES]) {
        let mean = self.mean.map(|row| dot(&row, terms));
        let deviation = self.ln_deviation.map(|row| dot(&row, &terms[..DEVIATION_TERMS]).exp());
        (mean, deviation)
    }

    /// Fitted to these vehicles, of which the first `features` features vary.
    ///
    /// Errors: vehicles so few or so alike that a system of equations has no solution.
    pub(crate) fn fitted(vehicles: &[[Sample; WEATHERS]], features: usize) -> Result<Self, String> {
        let samples: Vec<&Sample> = vehicles.iter().flatten().collect();
        let mut kind = Self {
            mean: [[0.0; Weather::TERMS]; FEATURES],
            ln_deviation: [[0.0; DEVIATION_TERMS]; FEATURES],
            lasting: [[0.0; FEATURES]; FEATURES],
            passing: [[0.0; FEATURES]; FEATURES],
            drawn: first(vehicles),
        };
        for feature in 0..features {
            (kind.mean[feature], kind.ln_deviation[feature]) = regression(&samples, feature)?;
        }
        let deviations: Vec<[[f64; FEATURES]; WEATHERS]> = vehicles
            .iter()
            .map(|vehicle| {
                vehicle.map(|sample| {
                    let (mean, deviation) = kind.at(&sample.terms);
                    std::array::from_fn(|i| (sample.features[i] - mean[i]) / deviation[i])
                })
            })
            .collect();
        (kind.lasting, kind.passing) = correlations(&deviations, features)?;
        Ok(kind)
    }
}

/// Mean features of the first [`DRAWN`] vehicles: drawn again, they tell whether the model is the one that was fitted to.
pub(crate) fn first(vehicles: &[[Sample; WEATHERS]]) -> [f64; FEATURES] {
    let mut mean = [0.0; FEATURES];
    let samples = || vehicles.iter().take(DRAWN).flatten();
    for sample in samples() {
        for (mean, feature) in mean.iter_mut().zip(&sample.features) {
            *mean += feature / samples().count() as f64;
        }
    }
    mean
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

/// Coefficients of the mean and of the logarithm of the deviation of one feature.
fn regression(samples: &[&Sample], feature: usize) -> Result<([f64; Weather::TERMS], [f64; DEVIATION_TERMS]), String> {
    let count = samples.len() as f64;
    let noted = NOTED[feature] * NOTED[feature];
    let mut mean = [0.0; Weather::TERMS];
    let mut theta = [0.0; DEVIATION_TERMS];
    // The first weights are all alike.
    let mut weights = vec![1.0; samples.len()];
    for round in 0..ROUNDS {
        let mut matrix = [[0.0; Weather::TERMS]; Weather::TERMS];
        let mut right = [0.0; Weather::TERMS];
        for (sample, weight) in samples.iter().zip(&weights) {
            accumulate(
                &mut matrix,
                &mut right,
                &sample.terms,
                *weight,
                weight * sample.features[feature],
            );
        }
        let total: f64 = weights.iter().sum();
        for (i, row) in matrix.iter_mut().enumerate() {
            row[i] += MEAN_RIDGE * total;
        }
        mean = solve(&cholesky(&matrix)?, right);
        let squares: Vec<f64> = samples
            .iter()
            .map(|sample| (sample.features[feature] - dot(&mean, &sample.terms)).powi(2) + noted)
            .collect();
        if round == 0 {
            let mut sorted = squares.clone();
            sorted.sort_by(f64::total_cmp);
            theta[0] = 0.5 * (sorted[sorted.len() / 2] / (MEDIAN * MEDIAN)).ln();
        }
        let (steps, damped) = if round < 2 { (3, 0.5) } else { (2, 1.0) };
        for _ in 0..steps {
            let mut matrix = [[0.0; DEVIATION_TERMS]; DEVIATION_TERMS];
            let mut right = [0.0; DEVIATION_TERMS];
            for (sample, square) in samples.iter().zip(&squares) {
                let x: [f64; DEVIATION_TERMS] = std::array::from_fn(|i| sample.terms[i]);
                let z2 = square / (2.0 * dot(&theta, &x)).exp();
                // Score and expected information of ln(deviation): w z^2 - 1 and 2 nu / (nu + 3).
                let score = (DEGREES + 1.0) / (DEGREES + z2) * z2 - 1.0;
                accumulate(&mut matrix, &mut right, &x, 2.0 * DEGREES / (DEGREES + 3.0), score);
            }
            for i in 0..DEVIATION_TERMS {
                let ridge = if i == 0 { 0.0 } else { DEVIATION_RIDGE * count };
                matrix[i][i] += ridge + 1e-9 * count;
                right[i] -= ridge * theta[i];
            }
            let step = solve(&cholesky(&matrix)?, right);
            for (theta, step) in theta.iter_mut().zip(step) {
                *theta += damped * step.clamp(-1.0, 1.0);
            }
        }
        for ((weight, sample), square) in weights.iter_mut().zip(samples).zip(&squares) {
            let variance = (2.0 * dot(&theta, &sample.terms[..DEVIATION_TERMS])).exp();
            *weight = (DEGREES + 1.0) / (DEGREES + square / variance) / variance;
        }
    }
    Ok((mean, theta))
}

/// Adds one sample to the normal equations.
fn accumulate<const N: usize>(matrix: &mut [[f64; N]; N], right: &mut [f64; N], x: &[f64; N], weight: f64, value: f64) {
    for (row, (entries, right)) in matrix.iter_mut().zip(right).enumerate() {
        let weighted = weight * x[row];
        *right += value * x[row];
        for (entry, x) in entries.iter_mut().zip(x).take(row + 1) {
            *entry += weighted * x;
        }
    }
}

/// Correlations of what lasts with a vehicle and of what passes, from its deviations in several weathers.
///
/// Expectation maximisation of the t distribution over all weathers of a vehicle together; the mean over the weathers and
/// what is left of each are independent, of covariances L + P / K and P. The sum of both has a unit diagonal.
///
/// Errors: a covariance that is not positive definite.
fn correlations(
    vehicles: &[[[f64; FEATURES]; WEATHERS]],
    features: usize,
) -> Result<(Matrix<FEATURES>, Matrix<FEATURES>), String> {
    let (count, many) = (vehicles.len() as f64, WEATHERS as f64);
    let mut means = identity(0.6);
    let mut passing = identity(0.5);
    for _ in 0..CORRELATION_ROUNDS {
        let (of_means, of_passing) = (cholesky(&means)?, cholesky(&passing)?);
        let mut next = (identity(0.0), identity(0.0));
        for vehicle in vehicles {
            let mean: [f64; FEATURES] = std::array::from_fn(|i| vehicle.iter().map(|z| z[i]).sum::<f64>() / many);
            let left = vehicle.map(|z| std::array::from_fn(|i| z[i] - mean[i]));
            let distance = distance(&of_means, mean, features)
                + left.iter().map(|z| distance(&of_passing, *z, features)).sum::<f64>();
            let weight = (DEGREES + many * features as f64) / (DEGREES + distance);
            add(&mut next.0, &mean, weight / count);
            for z in &left {
                add(&mut next.1, z, weight / count / (many - 1.0));
            }
        }
        (means, passing) = next;
        for i in features..FEATURES {
            (means[i][i], passing[i][i]) = (1.0, 1.0);
        }
    }
    let mut lasting = means;
    for i in 0..FEATURES {
        for j in 0..=i {
            lasting[i][j] -= passing[i][j] / many;
        }
        if i >= features {
            lasting[i][i] = 0.0;
        }
    }
    // As estimated it may fall short of a covariance by a little: the diagonal makes up for it.
    while !positive(&lasting, features) {
        (0..features).for_each(|i| lasting[i][i] += 0.005);
    }
    let scale: [f64; FEATURES] = std::array::from_fn(|i| (lasting[i][i] + passing[i][i]).sqrt());
    for i in 0..FEATURES {
        for j in 0..=i {
            lasting[i][j] /= scale[i] * scale[j];
            passing[i][j] /= scale[i] * scale[j];
        }
    }
    Ok((lasting, passing))
}

fn identity(value: f64) -> Matrix<FEATURES> {
    std::array::from_fn(|i| std::array::from_fn(|j| if i == j { value } else { 0.0 }))
}

/// Adds w z z' to a lower triangle.
fn add(sum: &mut Matrix<FEATURES>, z: &[f64; FEATURES], weight: f64) {
    for (i, row) in sum.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate().take(i + 1) {
            *cell += weight * z[i] * z[j];
        }
    }
}

/// Whether the first `count` rows of a symmetric matrix, given by its lower triangle, are positive definite.
fn positive(matrix: &Matrix<FEATURES>, count: usize) -> bool {
    let factor = DMatrix::from_fn(count, count, |i, j| matrix[i][j]).cholesky();
    factor.is_some_and(|factor| factor.l_dirty().diagonal().iter().all(|pivot| pivot * pivot > 1e-4))
}
