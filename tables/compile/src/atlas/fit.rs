//! How far a fault moves the features: shifts by severity, form and group of compressors, and one scale matrix for all of them.
//!
//! Maximum likelihood under a multivariate t distribution of 5 degrees of freedom round each shift (weighted least squares with
//! the weights (nu + q) / (nu + d) in turns), the scale pooled over all rows of a fault. The cycles of a clutch are a
//! monotone missing feature of the other compressors: their row of the scale is that of the clutch's regression on the
//! thermal features (R. J. A. Little and D. B. Rubin, Statistical Analysis with Missing Data, 2nd ed., 2002, chapter 7).

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::draw::Point;
use super::group::Group;
use super::{Bin, FaultRows, Row};
use crate::features::{CYCLES, FEATURES, THERMAL};
use crate::linear::{Matrix, cholesky, distance, solve};
use crate::sound::fit::{DEGREES, NOTED};

/// Rounds of the fit.
const ROUNDS: usize = 30;
/// Cases that no effect of weather and speed weighs in a shift's slope, and the shift of all compressors in that of a group.
const SLOPE_CASES: f64 = 10.0;
const GROUP_CASES: f64 = 10.0;
/// A finer division must raise the log likelihood of a case by this much, nats.
const WORTH: f64 = 0.05;
/// Fewer cases than this are no row of their own.
const LEAST: usize = 25;

/// How the cases of a fault are told apart beside severity and compressor.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Parts {
    One,
    Causes,
    Stands,
    Both,
}

impl Parts {
    const ALL: [Self; 4] = [Self::One, Self::Causes, Self::Stands, Self::Both];

    fn of(self, point: &Point) -> String {
        let stands = if point.stands { "compressor stands" } else { "" };
        match self {
            Self::One => String::new(),
            Self::Causes => point.cause.to_string(),
            Self::Stands => stands.to_string(),
            Self::Both => [point.cause, stands]
                .iter()
                .filter(|part| !part.is_empty())
                .copied()
                .collect::<Vec<_>>()
                .join(", "),
        }
    }
}

/// The rows of a fault, told apart as raises the likelihood of cases that the fit has not seen: each half of the cases judges
/// the fit to the other half. Gives the rows, how they are told apart, and the log likelihood of a case, nats.
///
/// Errors: a scale that is not positive definite.
pub(crate) fn best(points: &[Point], bins: &[Bin], of: &FaultRows) -> Result<(FaultRows, Parts, f64), String> {
    let halves = [0, 1].map(|half| {
        let own = points.iter().filter(|point| point.place % 2 == half);
        own.cloned().collect::<Vec<Point>>()
    });
    let mut best = (Parts::One, f64::NEG_INFINITY);
    for parts in Parts::ALL {
        let [first, second] = &halves;
        let judged = |own, other| score(other, &fitted(own, bins, parts, of)?);
        let score = (judged(first, second)? + judged(second, first)?) / 2.0;
        if score > best.1 + WORTH {
            best = (parts, score);
        }
    }
    Ok((fitted(points, bins, best.0, of)?, best.0, best.1))
}

/// How the means of drawn sound vehicles differ from the sound model, by group: what they differ by from those that the model was
/// fitted to (other classes, other weather) is no effect of a fault.
///
/// Errors: a scale that is not positive definite.
pub(crate) fn control(points: &[Point], of: &FaultRows) -> Result<Vec<Row>, String> {
    let whole = Bin {
        low: 0.0,
        high: 1.0,
        weight: 1.0,
        last: true,
    };
    Ok(fitted(points, &[whole], Parts::One, of)?.rows)
}

/// The cases of one row, by their place.
struct Cell {
    group: Group,
    bin: usize,
    cause: String,
    points: Vec<usize>,
}

fn fitted(points: &[Point], bins: &[Bin], parts: Parts, of: &FaultRows) -> Result<FaultRows, String> {
    let cells = cells(points, bins, parts);
    let mut shifts = vec![[[0.0; 4]; FEATURES]; cells.len()];
    let mut weights = vec![1.0; points.len()];
    let mut scales = [identity(1.0); 2];
    for _ in 0..ROUNDS {
        for (place, cell) in cells.iter().enumerate() {
            // All compressors of the same bin and form first, and from there those of the group.
            let family = cells
                .iter()
                .filter(|other| other.bin == cell.bin && other.cause == cell.cause);
            let family: Vec<usize> = family.flat_map(|other| other.points.iter().copied()).collect();
            let all = regression(points, &weights, &family, None)?;
            shifts[place] = regression(points, &weights, &cell.points, Some(&all))?;
        }
        let left = |cell: usize, point: &Point| -> [f64; FEATURES] {
            std::array::from_fn(|i| point.shift[i] - dot(&shifts[cell][i], &point.moves))
        };
        scales = pooled_twice(points, &cells, &weights, &left)?;
        let factors = [cholesky(&scales[0])?, cholesky(&scales[1])?];
        for (place, cell) in cells.iter().enumerate() {
            let count = count(cell.group);
            let factor = &factors[usize::from(severe(cell))];
            for index in &cell.points {
                let distance = distance(factor, left(place, &points[*index]), count);
                weights[*index] = (DEGREES + count as f64) / (DEGREES + distance);
            }
        }
    }
    let rows = cells
        .iter()
        .zip(shifts)
        .map(|(cell, shift)| {
            let of_group = points
                .iter()
                .filter(|p| p.group == cell.group && bins[cell.bin].holds(p.severity))
                .count();
            let sum: f64 = cell.points.iter().map(|index| points[*index].severity).sum();
            Row {
                group: cell.group,
                cause: cell.cause.clone(),
                weight: bins[cell.bin].weight * cell.points.len() as f64 / of_group.max(1) as f64,
                severity: [bins[cell.bin].low, sum / cell.points.len() as f64, bins[cell.bin].high],
                cases: cell.points.len(),
                shift,
            }
        })
        .collect();
    Ok(FaultRows {
        scales: scales.map(|scale| both(&scale)),
        rows,
        ..of.clone()
    })
}

/// Whether a row is of a severe fault.
const fn severe(cell: &Cell) -> bool {
    cell.bin >= 2
}

/// The scatter of mild and middling rows, and of severe ones; of all of them where there is one of the two only.
fn pooled_twice(
    points: &[Point],
    cells: &[Cell],
    weights: &[f64],
    left: &dyn Fn(usize, &Point) -> [f64; FEATURES],
) -> Result<[Matrix<FEATURES>; 2], String> {
    let of = |chosen: &dyn Fn(&Cell) -> bool| pooled(points, cells, weights, left, chosen);
    if cells.iter().any(severe) && cells.iter().any(|cell| !severe(cell)) {
        Ok([of(&|cell| !severe(cell))?, of(&severe)?])
    } else {
        Ok([of(&|_| true)?; 2])
    }
}

/// The cases shared out to rows; a form with few cases joins the one with most of them.
fn cells(points: &[Point], bins: &[Bin], parts: Parts) -> Vec<Cell> {
    let mut cells: Vec<Cell> = Vec::new();
    for group in Group::ALL {
        for bin in 0..bins.len() {
            let mut own: Vec<Cell> = Vec::new();
            for (index, point) in points.iter().enumerate() {
                if point.group != group || !bins[bin].holds(point.severity) {
                    continue;
                }
                let cause = parts.of(point);
                match own.iter_mut().find(|cell| cell.cause == cause) {
                    Some(cell) => cell.points.push(index),
                    None => own.push(Cell {
                        group,
                        bin,
                        cause,
                        points: vec![index],
                    }),
                }
            }
            own.sort_by(|a, b| b.points.len().cmp(&a.points.len()).then(a.cause.cmp(&b.cause)));
            while own.len() > 1 && own.last().is_some_and(|cell| cell.points.len() < LEAST) {
                if let (Some(few), Some(most)) = (own.pop(), own.first_mut()) {
                    most.points.extend(few.points);
                }
            }
            cells.extend(own);
        }
    }
    cells
}

/// Coefficients of [1, a, w, s] for each feature; `all` is what the group is pooled towards.
fn regression(
    points: &[Point],
    weights: &[f64],
    own: &[usize],
    all: Option<&[[f64; 4]; FEATURES]>,
) -> Result<[[f64; 4]; FEATURES], String> {
    let mut matrix = [[0.0; 4]; 4];
    let mut right = [[0.0; 4]; FEATURES];
    for index in own {
        let (point, weight) = (&points[*index], weights[*index]);
        for (i, row) in matrix.iter_mut().enumerate() {
            for (j, cell) in row.iter_mut().enumerate() {
                *cell += weight * point.moves[i] * point.moves[j];
            }
        }
        for (right, shift) in right.iter_mut().zip(&point.shift) {
            for (right, term) in right.iter_mut().zip(&point.moves) {
                *right += weight * term * shift;
            }
        }
    }
    for i in 0..4 {
        let cases = match all {
            Some(_) => GROUP_CASES,
            None if i == 0 => 1e-6,
            None => SLOPE_CASES,
        };
        matrix[i][i] += cases;
        if let Some(all) = all {
            for (right, all) in right.iter_mut().zip(all) {
                right[i] += cases * all[i];
            }
        }
    }
    let factor = cholesky(&matrix)?;
    Ok(right.map(|right| solve(&factor, right)))
}

/// The weighted scatter of the chosen rows; the cycles' row from the clutch's cases.
fn pooled(
    points: &[Point],
    cells: &[Cell],
    weights: &[f64],
    left: &dyn Fn(usize, &Point) -> [f64; FEATURES],
    chosen: &dyn Fn(&Cell) -> bool,
) -> Result<Matrix<FEATURES>, String> {
    let (mut all, mut clutch) = (identity(0.0), identity(0.0));
    let (mut of_all, mut of_clutch) = (0.0, 0.0);
    for (place, cell) in cells.iter().enumerate().filter(|(_, cell)| chosen(cell)) {
        let cycling = cell.group == Group::FixedClutch;
        for index in &cell.points {
            let z = left(place, &points[*index]);
            add(&mut all, &z, weights[*index]);
            of_all += 1.0;
            if cycling {
                add(&mut clutch, &z, weights[*index]);
                of_clutch += 1.0;
            }
        }
    }
    let divide = |matrix: &mut Matrix<FEATURES>, count: f64| {
        for (i, row) in matrix.iter_mut().enumerate() {
            row.iter_mut().for_each(|cell| *cell /= f64::max(count, 1.0));
            row[i] += NOTED[i] * NOTED[i];
        }
    };
    divide(&mut all, of_all);
    divide(&mut clutch, of_clutch);
    if of_clutch == 0.0 {
        all[CYCLES] = [0.0; FEATURES];
        all[CYCLES][CYCLES] = NOTED[CYCLES] * NOTED[CYCLES];
        return Ok(all);
    }
    let thermal = |matrix: &Matrix<FEATURES>| -> Matrix<THERMAL> {
        std::array::from_fn(|i| std::array::from_fn(|j| matrix[i.max(j)][i.min(j)]))
    };
    let with: [f64; THERMAL] = std::array::from_fn(|j| clutch[CYCLES][j]);
    let slope = solve(&cholesky(&thermal(&clutch))?, with);
    let full = thermal(&all);
    let moved: [f64; THERMAL] = std::array::from_fn(|i| dot(&full[i], &slope));
    all[CYCLES][..THERMAL].copy_from_slice(&moved);
    all[CYCLES][CYCLES] = clutch[CYCLES][CYCLES] - dot(&slope, &with) + dot(&slope, &moved);
    Ok(all)
}

/// Mean log density of the cases, given their compressor.
fn score(points: &[Point], rows: &FaultRows) -> Result<f64, String> {
    let factors = [cholesky(&rows.scales[0])?, cholesky(&rows.scales[1])?];
    let total: f64 = points
        .iter()
        .map(|point| {
            let count = count(point.group);
            let own = rows.rows.iter().filter(|row| row.group == point.group);
            let density: f64 = own
                .map(|row| {
                    let left = std::array::from_fn(|i| point.shift[i] - dot(&row.shift[i], &point.moves));
                    let factor = &factors[usize::from(rows.severe(row))];
                    let distance = distance(factor, left, count);
                    let pivots = factor.l_dirty().diagonal();
                    let ln_scale: f64 = pivots.iter().take(count).map(|pivot| pivot.ln()).sum();
                    row.weight * (-ln_scale).exp() * (1.0 + distance / DEGREES).powf(-0.5 * (DEGREES + count as f64))
                })
                .sum();
            density.max(1e-300).ln()
        })
        .sum();
    Ok(total / points.len() as f64)
}

/// How many features vary in a group.
const fn count(group: Group) -> usize {
    match group {
        Group::FixedClutch => FEATURES,
        Group::Variable | Group::Electric => THERMAL,
    }
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
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

/// Both triangles of a matrix of which the lower one is filled.
fn both(matrix: &Matrix<FEATURES>) -> Matrix<FEATURES> {
    std::array::from_fn(|i| std::array::from_fn(|j| matrix[i.max(j)][i.min(j)]))
}
