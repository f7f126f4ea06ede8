//! What sound systems read, as a regression on the conditions.

use super::conditions::{Usual, names};
use super::fit::{Fit, Prior, Sample, fit, mean};
use super::lasting::{Lasting, Residual, split};
use super::truth::Case;
use super::{Covariance, FEATURES};
use coldloop::{Expansion, Fault};
use nalgebra::SVector;

/// Cases that "no effect of its own" weighs in each term of a kind of system, and in each other term.
const KIND_CASES: f64 = 5.0;
const TERM_CASES: f64 = 1e-6;
/// Makes that the covariance of all kinds weighs in that of one expansion device.
const MAKES: f64 = 7.0;

/// The sound regression of one expansion device.
pub(crate) struct Kind {
    pub(crate) expansion: Expansion,
    pub(crate) cases: usize,
    pub(crate) makes: usize,
    pub(crate) fit: Fit,
    pub(crate) lasting: Lasting,
}

/// The sound regressions, and the covariance between makes over all kinds.
pub(crate) struct Sound {
    pub(crate) kinds: Vec<Kind>,
    pub(crate) makes: usize,
    pub(crate) lasting: Lasting,
}

/// K2; the first guess of a scale.
const FIRST: f64 = 16.0;

pub(crate) fn diagonal(value: f64) -> Covariance {
    Covariance::from_diagonal_element(value)
}

impl Sound {
    /// Fitted to the sound ones of these cases.
    pub(crate) fn of(cases: &[Case], usual: &Usual) -> Result<Self, String> {
        let mut kinds = Vec::new();
        let mut residuals = Vec::new();
        for expansion in Expansion::ALL {
            let own: Vec<&Case> = cases
                .iter()
                .filter(|case| case.expansion == expansion && case.is(Fault::NoFault))
                .collect();
            if own.is_empty() {
                continue;
            }
            let fit = regression(&own, usual)?;
            let of_kind = own
                .iter()
                .map(|case| residual(case, usual, &fit))
                .collect::<Result<Vec<_>, String>>()?;
            kinds.push((expansion, own.len(), fit, of_kind.len()));
            residuals.extend(of_kind);
        }
        let first = kinds.first().ok_or("no sound case")?.2.scale;
        let all = split(&residuals, (&diagonal(FIRST), 1e-6), &first)?;
        let mut rest = residuals.as_slice();
        let mut done = Vec::new();
        for (expansion, count, fit, many) in kinds {
            let (own, others) = rest.split_at(many);
            rest = others;
            done.push(Kind {
                expansion,
                cases: count,
                makes: makes(own.iter().map(|residual| residual.make)),
                lasting: split(own, (&all.makes, MAKES), &fit.scale)?,
                fit,
            });
        }
        Ok(Self {
            kinds: done,
            makes: makes(residuals.iter().map(|residual| residual.make)),
            lasting: all,
        })
    }
}

/// How many makes there are among these.
pub(crate) fn makes<'a>(names: impl Iterator<Item = &'a str>) -> usize {
    names.collect::<std::collections::BTreeSet<_>>().len()
}

/// Fitted twice: what a condition that was not noted does is known after the first time.
fn regression(cases: &[&Case], usual: &Usual) -> Result<Fit, String> {
    let weights: Vec<f64> = names()
        .iter()
        .map(|(_, of_kind)| if *of_kind { KIND_CASES } else { TERM_CASES })
        .collect();
    let prior = |fit: Option<&Fit>| Prior {
        coefficients: vec![[0.0; FEATURES]; weights.len()],
        cases: &weights,
        scale: fit.map_or(diagonal(FIRST), |fit| fit.scale),
        scale_cases: 0.0,
    };
    let samples = |fit: Option<&Fit>| {
        cases
            .iter()
            .map(|case| sample(case, usual, fit))
            .collect::<Result<Vec<_>, String>>()
    };
    let first = fit(&samples(None)?, &prior(None))?;
    fit(&samples(Some(&first))?, &prior(Some(&first)))
}

fn sample(case: &Case, usual: &Usual, fit: Option<&Fit>) -> Result<Sample, String> {
    Ok(Sample {
        terms: usual.terms(case)?,
        read: case.read.map(|reading| reading.map(|reading| reading.value)),
        known: known(case, usual, fit)?,
    })
}

/// Covariance of the errors of a case that are known: its instruments', and those from conditions that were not noted.
fn known(case: &Case, usual: &Usual, fit: Option<&Fit>) -> Result<Covariance, String> {
    let mut known = diagonal(0.0);
    for (i, reading) in case.read.iter().enumerate() {
        known[(i, i)] = reading.map_or(0.0, |reading| reading.standard_uncertainty.powi(2));
    }
    let Some(fit) = fit else { return Ok(known) };
    for change in usual.doubts(case)? {
        let by = SVector::from(mean(&change, &fit.coefficients));
        known += by * by.transpose();
    }
    Ok(known)
}

/// A case's readings less those of a sound system in the same conditions.
pub(crate) fn residual<'a>(case: &'a Case, usual: &Usual, fit: &Fit) -> Result<Residual<'a>, String> {
    let mean = mean(&usual.terms(case)?, &fit.coefficients);
    Ok(Residual {
        make: &case.make,
        read: std::array::from_fn(|i| case.read[i].map(|reading| reading.value - mean[i])),
        known: known(case, usual, Some(fit))?,
    })
}
