//! The part of the deviation that the sound cases of one make share, and the rest.

use super::fit::{add, deviation, inverse, product};
use super::{Covariance, FEATURES};
use std::collections::BTreeMap;

/// Steps, and the makes that what is believed beforehand weighs.
const STEPS: usize = 300;

/// Deviations of a sound case from the mean of its conditions.
pub(crate) struct Residual<'a> {
    pub(crate) make: &'a str,
    pub(crate) read: [Option<f64>; FEATURES],
    pub(crate) known: Covariance,
}

/// Covariance between makes, and between vehicles (and moments) of one make, K2.
pub(crate) struct Lasting {
    pub(crate) makes: Covariance,
    pub(crate) vehicles: Covariance,
}

/// Both covariances by expectation maximisation, each make's own mean being what is not seen; cases weigh as under the t
/// distribution. `prior` is a covariance between makes and how many makes it weighs.
pub(crate) fn split(residuals: &[Residual<'_>], prior: (&Covariance, f64), start: &Covariance) -> Lasting {
    let mut by_make: BTreeMap<&str, Vec<&Residual<'_>>> = BTreeMap::new();
    for residual in residuals {
        by_make.entry(residual.make).or_default().push(residual);
    }
    let mut now = Lasting {
        makes: *prior.0,
        vehicles: *start,
    };
    // The weight of a case counts from its own make's mean, as the step before has it.
    let mut means: BTreeMap<&str, [f64; FEATURES]> = BTreeMap::new();
    for _ in 0..STEPS {
        let mut makes = prior.0.map(|row| row.map(|value| prior.1 * value));
        let mut vehicles = [[0.0; FEATURES]; FEATURES];
        for (make, cases) in &by_make {
            let before = means.entry(make).or_insert([0.0; FEATURES]);
            let (mean, spread) = own_mean(cases, &now, before);
            *before = mean;
            add(&mut makes, &mean, 1.0, &spread);
            for case in cases {
                let read = std::array::from_fn(|i| case.read[i].map(|value| value - mean[i]));
                let found = deviation(&read, &now.vehicles, &case.known);
                let doubt = product(&product(&found.gain, &spread), &transposed(&found.gain));
                let mut covariance = found.covariance;
                for (row, more) in covariance.iter_mut().zip(&doubt) {
                    for (cell, more) in row.iter_mut().zip(more) {
                        *cell += found.weight * more;
                    }
                }
                add(&mut vehicles, &found.mean, found.weight, &covariance);
            }
        }
        let (groups, cases) = (by_make.len() as f64 + prior.1, residuals.len() as f64);
        now = Lasting {
            makes: makes.map(|row| row.map(|value| value / groups)),
            vehicles: vehicles.map(|row| row.map(|value| value / cases)),
        };
    }
    now
}

/// Mean and covariance of what a make's cases have in common.
fn own_mean(cases: &[&Residual<'_>], now: &Lasting, before: &[f64; FEATURES]) -> ([f64; FEATURES], Covariance) {
    let mut precision = inverse(&now.makes);
    let mut right = [0.0; FEATURES];
    for case in cases {
        let read = std::array::from_fn(|i| case.read[i].map(|value| value - before[i]));
        let found = deviation(&read, &now.vehicles, &case.known);
        let rows = precision.iter_mut().zip(&found.precision).zip(&mut right);
        for ((row, own), right) in rows {
            for ((cell, value), read) in row.iter_mut().zip(own).zip(&case.read) {
                *cell += found.weight * value;
                *right += found.weight * value * read.unwrap_or(0.0);
            }
        }
    }
    let spread = inverse(&precision);
    let mean = spread.map(|row| row.iter().zip(&right).map(|(a, b)| a * b).sum());
    (mean, spread)
}

fn transposed(matrix: &Covariance) -> Covariance {
    std::array::from_fn(|i| std::array::from_fn(|j| matrix[j][i]))
}
