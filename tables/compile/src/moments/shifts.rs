//! How far each fault moves the readings: by expansion device, severity and group of compressors.

use super::conditions::Usual;
use super::fit::{Prior, Sample, fit, mean};
use super::sound::{Kind, Sound, makes, residual};
use super::truth::Case;
use super::{Covariance, FEATURES};
use coldloop::{Compressor, Expansion, Fault};

/// Cases that "like the others" weighs: in the slopes of a fault (towards no effect of weather and speed), in the shift of one
/// bin of severity and in its slopes (towards those of the fault), and in those of a group of compressors (towards all).
const SLOPE_CASES: f64 = 8.0;
const BIN_CASES: [f64; 4] = [1.0, 25.0, 25.0, 25.0];
const GROUP_CASES: [f64; 4] = [15.0, 30.0, 30.0, 30.0];
/// Cases that the covariance of sound systems weighs in that of a fault.
const FAULT_SCALE_CASES: f64 = 15.0;
/// Cases that the covariance of a whole fault weighs in that of its severe ones, and in that of the others.
const PART_SCALE_CASES: f64 = 30.0;
/// Cases that "no shift more" weighs where only the covariance is sought.
const HELD_CASES: f64 = 1e6;
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
    /// A name of [`GROUPS`], or `all`.
    pub(crate) group: &'static str,
    /// Least and most severity of the bin, and the mean over its cases.
    pub(crate) severity: [f64; 3],
    pub(crate) cases: usize,
    pub(crate) makes: usize,
    pub(crate) read: [usize; FEATURES],
    /// Coefficients of 1, a, w and s.
    pub(crate) shift: [[f64; FEATURES]; MOVES],
}

/// All shifts of a fault with one expansion device, and the covariance round them.
pub(crate) struct Shifts {
    pub(crate) expansion: Expansion,
    pub(crate) fault: Fault,
    pub(crate) cases: usize,
    pub(crate) makes: usize,
    /// Round mild and middling ones, and round severe ones where the severities have three bins.
    pub(crate) covariance: Covariance,
    pub(crate) severe: Option<Covariance>,
    pub(crate) rows: Vec<Shift>,
}

/// Terms of a shift: 1, a, w and s, the first ones of [`Usual::terms`].
pub(crate) const MOVES: usize = 4;

/// Every fault with an only fault's cases, in the order of the vocabulary.
pub(crate) fn all(cases: &[Case], usual: &Usual, sound: &Sound) -> Result<Vec<Shifts>, String> {
    let mut shifts = Vec::new();
    for fault in Fault::ALL.into_iter().filter(|fault| *fault != Fault::NoFault) {
        let edges = edges(cases, fault);
        for kind in &sound.kinds {
            let own: Vec<&Case> = cases
                .iter()
                .filter(|case| case.expansion == kind.expansion && case.is(fault))
                .collect();
            if !own.is_empty() {
                shifts.push(of_fault(&own, fault, &edges, usual, kind).map_err(|e| format!("{fault}: {e}"))?);
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

/// One regression: the shift of the fault, by how much each bin differs from it, and by how much each group of compressors.
fn of_fault(cases: &[&Case], fault: Fault, edges: &[f64], usual: &Usual, kind: &Kind) -> Result<Shifts, String> {
    let bins = if edges.len() == 2 { 0 } else { edges.len() - 1 };
    let bin = |case: &Case| {
        let severity = case.truth.map_or(0.0, |(_, severity)| severity);
        (0..edges.len() - 1)
            .find(|bin| lies_in(severity, edges, *bin))
            .unwrap_or(0)
    };
    let blocks = 1 + bins + GROUPS.len();
    // The blocks of a row: the fault, its bin unless that is the only one, its group unless that is all of them.
    let of = |bin: usize, group: Option<usize>| {
        let bin = (bins > 0).then_some(1 + bin);
        [Some(0), bin, group.map(|group| 1 + bins + group)]
            .into_iter()
            .flatten()
    };
    let samples = cases
        .iter()
        .map(|case| {
            let residual = residual(case, usual, &kind.fit)?;
            let moves = &usual.terms(case)?[..MOVES];
            let group = GROUPS
                .iter()
                .position(|(_, compressors)| compressors.contains(&case.compressor));
            let mut terms = vec![0.0; blocks * MOVES];
            for block in of(bin(case), group) {
                terms[block * MOVES..(block + 1) * MOVES].copy_from_slice(moves);
            }
            Ok(Sample {
                terms,
                read: residual.read,
                known: residual.known,
            })
        })
        .collect::<Result<Vec<_>, String>>()?;
    let mut weights = vec![1e-6, SLOPE_CASES, SLOPE_CASES, SLOPE_CASES];
    (0..bins).for_each(|_| weights.extend(BIN_CASES));
    GROUPS.iter().for_each(|_| weights.extend(GROUP_CASES));
    let fitted = fit(
        &samples,
        &Prior {
            coefficients: vec![[0.0; FEATURES]; weights.len()],
            cases: &weights,
            scale: kind.fit.scale,
            scale_cases: FAULT_SCALE_CASES,
        },
    )?;
    // What is left round the shifts, of the bins below the third and of that.
    let left = |severe: bool| {
        let chosen = cases
            .iter()
            .zip(&samples)
            .filter(|(case, _)| (bin(case) >= 2) == severe);
        let left = chosen.map(|(_, sample)| {
            let mean = mean(&sample.terms, &fitted.coefficients);
            Sample {
                terms: vec![1.0],
                read: std::array::from_fn(|i| sample.read[i].map(|read| read - mean[i])),
                known: sample.known,
            }
        });
        let prior = Prior {
            coefficients: vec![[0.0; FEATURES]],
            cases: &[HELD_CASES],
            scale: fitted.scale,
            scale_cases: PART_SCALE_CASES,
        };
        Ok::<_, String>(fit(&left.collect::<Vec<_>>(), &prior)?.scale)
    };
    let three = edges.len() > 3;
    let (covariance, severe) = if three {
        (left(false)?, Some(left(true)?))
    } else {
        (fitted.scale, None)
    };
    let row = |own: &[&Case], group: (&'static str, Option<usize>), place: usize| {
        let mut shift = [[0.0; FEATURES]; MOVES];
        for block in of(place, group.1) {
            for (sum, row) in shift.iter_mut().zip(&fitted.coefficients[block * MOVES..]) {
                for (sum, value) in sum.iter_mut().zip(row) {
                    *sum += value;
                }
            }
        }
        let sum: f64 = own.iter().filter_map(|case| case.truth).map(|(_, s)| s).sum();
        Shift {
            group: group.0,
            severity: [edges[place], edges[place + 1], sum / own.len() as f64],
            cases: own.len(),
            makes: makes(own.iter().map(|case| case.make.as_str())),
            read: std::array::from_fn(|i| own.iter().filter(|case| case.read[i].is_some()).count()),
            shift,
        }
    };
    let mut rows = Vec::new();
    for place in 0..edges.len() - 1 {
        let own: Vec<&Case> = cases.iter().filter(|case| bin(case) == place).copied().collect();
        if own.is_empty() {
            continue;
        }
        rows.push(row(&own, ("all", None), place));
        for (group, (name, compressors)) in GROUPS.into_iter().enumerate() {
            let of_group: Vec<&Case> = own
                .iter()
                .filter(|case| compressors.contains(&case.compressor))
                .copied()
                .collect();
            if !of_group.is_empty() {
                rows.push(row(&of_group, (name, Some(group)), place));
            }
        }
    }
    Ok(Shifts {
        expansion: kind.expansion,
        fault,
        cases: cases.len(),
        makes: makes(cases.iter().map(|case| case.make.as_str())),
        covariance,
        severe,
        rows,
    })
}
