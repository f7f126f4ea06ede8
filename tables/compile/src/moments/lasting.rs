//! The part of the deviation that the sound cases of one make share, and the rest.

use super::fit::{deviation, inverse};
use super::{Covariance, FEATURES};
use nalgebra::SVector;
use std::collections::BTreeMap;

/// Steps, and the makes that what is believed beforehand weighs.
const STEPS: usize = 300;

/// Deviations of a sound case from the mean of its conditions.
pub(crate) struct Residual<'a> {
    pub(crate) make: &'a str,
    pub(crate) read: [Option<f64>; FEATURES],
    pub(crate) known: Covariance,
}

impl Residual<'_> {
    /// What was read, counted from a mean.
    fn from(&self, mean: &SVector<f64, FEATURES>) -> [Option<f64>; FEATURES] {
        std::array::from_fn(|i| self.read[i].map(|value| value - mean[i]))
    }
}

/// Covariance between makes, and between vehicles (and moments) of one make, K2.
pub(crate) struct Lasting {
    pub(crate) makes: Covariance,
    pub(crate) vehicles: Covariance,
}

/// Both covariances by expectation maximisation, each make's own mean being what is not seen; cases weigh as under the t
/// distribution. `prior` is a covariance between makes and how many makes it weighs.
///
/// Errors: a covariance that is not positive definite.
pub(crate) fn split(
    residuals: &[Residual<'_>],
    prior: (&Covariance, f64),
    start: &Covariance,
) -> Result<Lasting, String> {
    let mut by_make: BTreeMap<&str, Vec<&Residual<'_>>> = BTreeMap::new();
    for residual in residuals {
        by_make.entry(residual.make).or_default().push(residual);
    }
    let mut now = Lasting {
        makes: *prior.0,
        vehicles: *start,
    };
    // The weight of a case counts from its own make's mean, as the step before has it.
    let mut means: BTreeMap<&str, SVector<f64, FEATURES>> = BTreeMap::new();
    for _ in 0..STEPS {
        let mut makes = prior.1 * prior.0;
        let mut vehicles = Covariance::zeros();
        for (make, cases) in &by_make {
            let before = means.entry(make).or_default();
            let (mean, spread) = own_mean(cases, &now, before)?;
            *before = mean;
            makes += mean * mean.transpose() + spread;
            for case in cases {
                let found = deviation(&case.from(&mean), &now.vehicles, &case.known)?;
                let doubt = found.gain * spread * found.gain.transpose();
                vehicles += found.weight * (found.mean * found.mean.transpose() + doubt) + found.covariance;
            }
        }
        now = Lasting {
            makes: makes / (by_make.len() as f64 + prior.1),
            vehicles: vehicles / residuals.len() as f64,
        };
    }
    Ok(now)
}

/// Mean and covariance of what a make's cases have in common.
fn own_mean(
    cases: &[&Residual<'_>],
    now: &Lasting,
    before: &SVector<f64, FEATURES>,
) -> Result<(SVector<f64, FEATURES>, Covariance), String> {
    let mut precision = inverse(now.makes)?;
    let mut right = SVector::zeros();
    for case in cases {
        let found = deviation(&case.from(before), &now.vehicles, &case.known)?;
        let own = found.weight * found.precision;
        precision += own;
        right += own * SVector::from(case.read.map(|value| value.unwrap_or(0.0)));
    }
    let spread = inverse(precision)?;
    Ok((spread * right, spread))
}
