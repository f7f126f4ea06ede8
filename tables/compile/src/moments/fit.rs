//! Linear regression of several readings at once, with readings missing and errors of known size.
//!
//! y = B' x + e + v: e is multivariate t with 5 degrees of freedom and unknown scale S, v has the known covariance V of a
//! case (instruments, conditions that were not noted). B by generalised least squares, S by expectation maximisation, in
//! turns, as in Little & Rubin, Statistical Analysis with Missing Data (2nd ed., 2002), chapters 8 and 11, with weights
//! (nu + d) / (nu + q) of the t distribution.

use super::{Covariance, FEATURES};
use nalgebra::{DMatrix, DVector, SVector};

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
    pub(crate) mean: SVector<f64, FEATURES>,
    pub(crate) covariance: Covariance,
    /// S (S + V)^-1 of what was read: by how much a change of the mean moves `mean`.
    pub(crate) gain: Covariance,
    /// (S + V)^-1 of what was read, zero elsewhere.
    pub(crate) precision: Covariance,
}

/// Given the deviations that were read, those of all readings under the scale `scale`.
///
/// Errors: a scale that is not positive definite.
pub(crate) fn deviation(
    read: &[Option<f64>; FEATURES],
    scale: &Covariance,
    known: &Covariance,
) -> Result<Deviation, String> {
    let both = |i: usize, j: usize| read[i].is_some() && read[j].is_some();
    let total = inverse(Covariance::from_fn(|i, j| {
        if both(i, j) {
            scale[(i, j)] + known[(i, j)]
        } else {
            f64::from(u8::from(i == j))
        }
    }))?;
    let precision = Covariance::from_fn(|i, j| if both(i, j) { total[(i, j)] } else { 0.0 });
    let residual = vector(read);
    let gain = scale * precision;
    let distance = residual.dot(&(precision * residual));
    let count = read.iter().flatten().count() as f64;
    Ok(Deviation {
        weight: (DEGREES + count) / (DEGREES + distance),
        mean: gain * residual,
        covariance: scale - gain * scale,
        gain,
        precision,
    })
}

/// The coefficients and the scale that make these readings likeliest, beside what is believed beforehand.
///
/// Errors: no end within the permitted steps; a covariance that is not positive definite.
pub(crate) fn fit(samples: &[Sample], prior: &Prior<'_>) -> Result<Fit, String> {
    let mut now = Fit {
        coefficients: prior.coefficients.clone(),
        scale: prior.scale,
    };
    for _ in 0..STEPS {
        let next = step(samples, prior, &now)?;
        let changes = now
            .coefficients
            .iter()
            .flatten()
            .zip(next.coefficients.iter().flatten());
        let moved = changes.map(|(now, next)| (next - now).abs()).fold(0.0, f64::max);
        let spreads = (0..FEATURES).map(|i| (next.scale[(i, i)].sqrt() - now.scale[(i, i)].sqrt()).abs());
        let moved = spreads.fold(moved, f64::max);
        now = next;
        if moved < SETTLED {
            return Ok(now);
        }
    }
    Err(format!("{} cases: no fit within {STEPS} steps", samples.len()))
}

fn step(samples: &[Sample], prior: &Prior<'_>, now: &Fit) -> Result<Fit, String> {
    let found = samples
        .iter()
        .map(|sample| deviation(&residual(sample, &now.coefficients), &now.scale, &sample.known))
        .collect::<Result<Vec<_>, String>>()?;
    let coefficients = least_squares(samples, &found, prior, now.scale)?;
    let mut scale = prior.scale_cases * prior.scale;
    for (sample, deviation) in samples.iter().zip(&found) {
        let mean = deviation.gain * vector(&residual(sample, &coefficients));
        scale += deviation.weight * mean * mean.transpose() + deviation.covariance;
    }
    Ok(Fit {
        coefficients,
        scale: scale / (samples.len() as f64 + prior.scale_cases),
    })
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
    scale: Covariance,
) -> Result<Vec<[f64; FEATURES]>, String> {
    let terms = prior.cases.len();
    let mut normal = DMatrix::zeros(terms * FEATURES, terms * FEATURES);
    let mut right = DVector::zeros(terms * FEATURES);
    let believed = inverse(scale)?;
    for (term, weight) in prior.cases.iter().enumerate() {
        let at = term * FEATURES;
        let mut block = normal.fixed_view_mut::<FEATURES, FEATURES>(at, at);
        block += *weight * believed;
        let mut rows = right.fixed_rows_mut::<FEATURES>(at);
        rows += *weight * believed * SVector::from(prior.coefficients[term]);
    }
    for (sample, deviation) in samples.iter().zip(found) {
        let weighed = deviation.weight * deviation.precision;
        let read = weighed * vector(&sample.read);
        let own = || sample.terms.iter().enumerate().filter(|(_, term)| **term != 0.0);
        for (m, first) in own() {
            // The factorisation reads the lower triangle only.
            for (n, second) in own().take_while(|(n, _)| *n <= m) {
                let mut block = normal.fixed_view_mut::<FEATURES, FEATURES>(m * FEATURES, n * FEATURES);
                block += first * second * weighed;
            }
            let mut rows = right.fixed_rows_mut::<FEATURES>(m * FEATURES);
            rows += *first * read;
        }
    }
    let factor = normal.cholesky().ok_or("the normal equations are singular")?;
    factor.solve_mut(&mut right);
    Ok((0..terms)
        .map(|term| std::array::from_fn(|i| right[term * FEATURES + i]))
        .collect())
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

/// Deviations, zero where nothing was read.
fn vector(read: &[Option<f64>; FEATURES]) -> SVector<f64, FEATURES> {
    read.map(|value| value.unwrap_or(0.0)).into()
}

/// The inverse of a positive definite matrix.
pub(crate) fn inverse(matrix: Covariance) -> Result<Covariance, String> {
    let factor = matrix.cholesky().ok_or("a covariance is not positive definite")?;
    Ok(factor.inverse())
}
