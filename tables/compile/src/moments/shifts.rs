//! How far each fault moves the readings: by expansion device, severity and group of compressors.

use super::conditions::Usual;
use super::fit::{Fit, Prior, Sample, fit};
use super::sound::{Kind, Sound, makes, residual};
use super::truth::Case;
use super::{Covariance, FEATURES};
use coldloop::{Compressor, Expansion, Fault};

/// Cases that the shift of all compressors weighs in that of a group, and that of all severities in that of one bin.
const GROUP_CASES: f64 = 15.0;
const BIN_CASES: f64 = 1.0;
/// Cases that the covariance of sound systems weighs in that of a fault, and that of a fault in that of its parts.
const FAULT_SCALE_CASES: f64 = 15.0;
const PART_SCALE_CASES: f64 = 30.0;
/// Cases of a fault from which on it has two bins of severity, and three.
const TWO_BINS: usize = 60;
const THREE_BINS: usize = 150;

/// Compressors that are fitted together.
pub(crate) const GROUPS: [(&str, &[Compressor]); 3] = [
    ("fixed-clutch", &[Compressor::FixedClutch]),
    (
        "variable",
        &[Compressor::VariableInternal, Compressor::VariableExternal],
    ),
    ("electric", &[Compressor::Electric]),
];

/// One row group of the table.
pub(crate) struct Shift {
    pub(crate) expansion: Expansion,
    /// A name of [`GROUPS`], or `all`.
    pub(crate) group: &'static str,
    pub(crate) fault: Fault,
    /// Least and most severity of the bin, and the mean over its cases.
    pub(crate) severity: [f64; 3],
    pub(crate) cases: usize,
    pub(crate) makes: usize,
    pub(crate) read: [usize; FEATURES],
    pub(crate) shift: [f64; FEATURES],
    pub(crate) covariance: Covariance,
}

/// Every fault with an only fault's cases, in the order of the vocabulary.
pub(crate) fn all(cases: &[Case], usual: &Usual, sound: &Sound) -> Result<Vec<Shift>, String> {
    let mut shifts = Vec::new();
    for fault in Fault::ALL {
        let edges = edges(cases, fault);
        for kind in &sound.kinds {
            let own: Vec<&Case> = cases
                .iter()
                .filter(|case| case.expansion == kind.expansion && case.is(fault))
                .collect();
            if !own.is_empty() {
                of_fault(&own, fault, &edges, usual, kind, &mut shifts).map_err(|e| format!("{fault}: {e}"))?;
            }
        }
    }
    Ok(shifts)
}

/// Severities that divide the cases of a fault into bins of equal number, with the least and the most.
fn edges(cases: &[Case], fault: Fault) -> Vec<f64> {
    let of = |case: &Case| case.truth.filter(|(found, _)| *found == fault);
    let mut severities: Vec<f64> = cases.iter().filter_map(|case| of(case).map(|(_, s)| s)).collect();
    severities.sort_by(f64::total_cmp);
    let (Some(least), Some(most)) = (severities.first(), severities.last()) else {
        return Vec::new();
    };
    let bins = if least == most || severities.len() < TWO_BINS {
        1
    } else if severities.len() < THREE_BINS {
        2
    } else {
        3
    };
    let mut edges = vec![*least];
    edges.extend((1..bins).map(|bin| severities[severities.len() * bin / bins]));
    edges.push(*most);
    edges
}

/// Whether a severity lies in the bin that begins at `edges[bin]`; an edge belongs to the bin above it.
fn lies_in(severity: f64, edges: &[f64], bin: usize) -> bool {
    let last = bin + 2 == edges.len();
    severity >= edges[bin] && (severity < edges[bin + 1] || last)
}

fn of_fault(
    cases: &[&Case],
    fault: Fault,
    edges: &[f64],
    usual: &Usual,
    kind: &Kind,
    shifts: &mut Vec<Shift>,
) -> Result<(), String> {
    let part = |own: &[&Case], prior: &Fit, weight: f64, scale_cases: f64| {
        let samples = own
            .iter()
            .map(|case| {
                let residual = residual(case, usual, &kind.fit)?;
                Ok(Sample {
                    terms: vec![1.0],
                    read: residual.read,
                    known: residual.known,
                })
            })
            .collect::<Result<Vec<_>, String>>()?;
        let prior = Prior {
            coefficients: prior.coefficients.clone(),
            cases: &[weight],
            scale: prior.scale,
            scale_cases,
        };
        fit(&samples, &prior)
    };
    let sound = Fit {
        coefficients: vec![[0.0; FEATURES]],
        scale: kind.fit.scale,
    };
    let whole = part(
        cases,
        &sound,
        1e-6,
        if fault == Fault::NoFault {
            0.0
        } else {
            FAULT_SCALE_CASES
        },
    )?;
    for bin in 0..edges.len() - 1 {
        let severity = |case: &&&Case| case.truth.is_some_and(|(_, s)| lies_in(s, edges, bin));
        let own: Vec<&Case> = cases.iter().filter(severity).copied().collect();
        if own.is_empty() {
            continue;
        }
        let alone = edges.len() == 2;
        let of_bin = if alone {
            None
        } else {
            Some(part(&own, &whole, BIN_CASES, PART_SCALE_CASES)?)
        };
        let of_bin = of_bin.as_ref().unwrap_or(&whole);
        let bounds = [edges[bin], edges[bin + 1]];
        shifts.push(row(&own, "all", fault, bounds, kind, of_bin));
        for (group, compressors) in GROUPS {
            let of_group: Vec<&Case> = own
                .iter()
                .filter(|case| compressors.contains(&case.compressor))
                .copied()
                .collect();
            if !of_group.is_empty() {
                let fitted = part(&of_group, of_bin, GROUP_CASES, PART_SCALE_CASES)?;
                shifts.push(row(&of_group, group, fault, bounds, kind, &fitted));
            }
        }
    }
    Ok(())
}

fn row(cases: &[&Case], group: &'static str, fault: Fault, bounds: [f64; 2], kind: &Kind, fit: &Fit) -> Shift {
    let sum: f64 = cases.iter().filter_map(|case| case.truth).map(|(_, s)| s).sum();
    Shift {
        expansion: kind.expansion,
        group,
        fault,
        severity: [bounds[0], bounds[1], sum / cases.len() as f64],
        cases: cases.len(),
        makes: makes(cases.iter().map(|case| case.make.as_str())),
        read: std::array::from_fn(|i| cases.iter().filter(|case| case.read[i].is_some()).count()),
        shift: fit.coefficients[0],
        covariance: fit.scale,
    }
}
