//! The density of a vehicle's figures among drawn vehicles, moved to its conditions.

use crate::cases::Judged;
use coldloop::circuit::Reading;
use coldloop::diagnosis::{Case, Coordinates};
use coldloop::units::Pressure;
use coldloop::{Fault, saturation};
use std::fs;
use std::path::Path;

/// Conditions and figures of a drawn vehicle; its severity stands last. As `tables/compile/src/clouds` keeps them.
const CONDITIONS: usize = 9;
const FIGURES: usize = 7;
const ROW: usize = CONDITIONS + FIGURES + 1;
/// Conditions of two kinds, that are alike or are not.
const REFRIGERANT: usize = 7;
const AIR_SOURCE: usize = 5;

/// Parts of the vehicles that are used: one in so many.
pub(crate) const PARTS: [usize; 4] = [8, 4, 2, 1];

/// How far other conditions count, in their coordinates, and how wide the kernels are per what vehicles of one severity differ.
pub(crate) const TRIED: [(f64, f64); 9] = [
    (1.0, 0.3),
    (1.0, 0.45),
    (1.0, 0.65),
    (1.6, 0.3),
    (1.6, 0.45),
    (1.6, 0.65),
    (3.0, 0.3),
    (3.0, 0.45),
    (3.0, 0.65),
];

/// Least spread of a figure about which a kernel is laid, in its own unit.
const LEAST_SPREAD: f64 = 0.05;

/// The vehicle that is judged: what was told of its conditions, and its figures, lines as temperatures of lines.
pub(crate) struct Asked {
    conditions: [Option<f64>; CONDITIONS],
    figures: [Option<f64>; FIGURES],
    /// Variance of what the instruments add.
    noise: [f64; FIGURES],
}

impl Asked {
    /// `None` where a vehicle shows what none can.
    pub(crate) fn of(case: &Judged) -> Option<Self> {
        let readings = &case.readings[0];
        let seen = Coordinates::of(&Case::new(case.draw.system, case.conditions, *readings)).ok()?;
        let place = case.conditions.surroundings;
        let side = |reading: Option<Reading<Pressure>>| {
            reading.map_or(0.0, |reading| {
                let p_pa = reading.value.absolute(place).pa();
                let t_k = |p_pa| saturation::dew_temperature_k(case.draw.system.refrigerant, p_pa).unwrap_or(f64::NAN);
                let off_k = t_k(p_pa + reading.standard_uncertainty) - t_k(p_pa);
                if off_k.is_finite() { off_k } else { 0.0 }
            })
        };
        let line = |reading: Option<Reading<_>>| reading.map_or(0.0, |r: Reading<_>| r.standard_uncertainty);
        let cycles = readings.clutch_cycles_hz.map_or(0.0, |reading| {
            60.0 * reading.standard_uncertainty / (1.0 + 60.0 * reading.value)
        });
        let spreads = [
            side(readings.low_side),
            side(readings.high_side),
            line(readings.vent),
            line(readings.suction_line),
            line(readings.liquid_line),
            line(readings.discharge_line),
            cycles,
        ];
        Some(Self {
            conditions: seen.conditions,
            figures: as_lines(seen.figures),
            noise: spreads.map(|spread| spread * spread),
        })
    }
}

/// Superheats and subcooling as temperatures of lines, which no gauge moves.
fn as_lines(figures: [Option<f64>; FIGURES]) -> [Option<f64>; FIGURES] {
    let [low, high, vent, superheat, subcooling, discharge, cycles] = figures;
    let with = |line: Option<f64>, side: Option<f64>, sign: f64| Some(side? + sign * line?);
    [
        low,
        high,
        vent,
        with(superheat, low, 1.0),
        with(subcooling, high, -1.0),
        with(discharge, high, 1.0),
        cycles,
    ]
}

/// Drawn vehicles with one fault.
pub(crate) struct Population {
    rows: Vec<[f64; ROW]>,
}

impl Population {
    /// What the fit of the clouds drew for a fault of a kind of system.
    pub(crate) fn read(folder: &Path, kind: usize, fault: Fault) -> Result<Self, String> {
        let path = folder.join(format!("{kind}-{}.bin", fault.id()));
        let bytes = fs::read(&path)
            .map_err(|e| format!("{}: {e}; `tables-compile -- --fit-clouds` draws them", path.display()))?;
        let numbers: Vec<f64> = bytes
            .chunks_exact(8)
            .map(|b| f64::from_le_bytes(std::array::from_fn(|i| b[i])))
            .collect();
        let mut rows = Vec::new();
        for row in numbers.chunks_exact(ROW) {
            let mut row: [f64; ROW] = std::array::from_fn(|i| row[i]);
            let figures = as_lines(std::array::from_fn(|i| Some(row[CONDITIONS + i])));
            for (to, from) in row[CONDITIONS..].iter_mut().zip(figures) {
                *to = from.unwrap_or(0.0);
            }
            rows.push(row);
        }
        Ok(Self { rows })
    }

    /// Log density of the figures that were asked for, by every part of the vehicles and every pair of widths.
    pub(crate) fn densities(&self, asked: &Asked) -> [[f64; TRIED.len()]; PARTS.len()] {
        PARTS.map(|of| {
            let some = self.rows[..self.rows.len() / of].iter();
            let alike = |row: &&[f64; ROW]| {
                let same = |j: usize| asked.conditions[j].is_none_or(|told| (told - row[j]).abs() < 0.5);
                same(REFRIGERANT) && same(AIR_SOURCE)
            };
            let rows: Vec<&[f64; ROW]> = some.filter(alike).collect();
            let mut moved = (0.0, Moved::default());
            TRIED.map(|(reach, kernel)| {
                if moved.0 != reach {
                    moved = (reach, Moved::of(&rows, asked, reach));
                }
                moved.1.density(asked, kernel)
            })
        })
    }
}

/// Vehicles moved to other conditions, with how much each counts.
#[derive(Default)]
struct Moved {
    figures: Vec<Vec<f64>>,
    weights: Vec<f64>,
    /// How vehicles of one severity differ.
    covariance: Vec<Vec<f64>>,
}

impl Moved {
    fn of(rows: &[&[f64; ROW]], asked: &Asked, reach: f64) -> Self {
        let told: Vec<(usize, f64)> = (0..CONDITIONS)
            .filter(|j| *j != REFRIGERANT && *j != AIR_SOURCE)
            .filter_map(|j| Some((j, asked.conditions[j]?)))
            .collect();
        let read: Vec<usize> = (0..FIGURES).filter(|i| asked.figures[*i].is_some()).collect();
        let off = |row: &[f64; ROW]| told.iter().map(|(j, told)| row[*j] - told).collect::<Vec<f64>>();
        let weights: Vec<f64> = rows
            .iter()
            .map(|row| (-0.5 * off(row).iter().map(|d| d * d).sum::<f64>() / (reach * reach)).exp())
            .collect();
        // One, the severity and its powers; the conditions, and these times the severity.
        let regressors = |row: &[f64; ROW]| {
            let severity = row[ROW - 1];
            let mut all = vec![1.0, severity, severity * severity, severity.powi(3)];
            let off = off(row);
            all.extend(&off);
            all.extend(off.iter().map(|d| d * severity));
            all
        };
        let count = 4 + 2 * told.len();
        let mut matrix = vec![vec![0.0; count]; count];
        let mut right = vec![vec![0.0; count]; read.len()];
        for (row, weight) in rows.iter().zip(&weights) {
            let x = regressors(row);
            for a in 0..count {
                for b in 0..=a {
                    matrix[a][b] += weight * x[a] * x[b];
                }
                for (right, i) in right.iter_mut().zip(&read) {
                    right[a] += weight * x[a] * row[CONDITIONS + i];
                }
            }
        }
        let all: f64 = weights.iter().sum();
        for (a, row) in matrix.iter_mut().enumerate() {
            row[a] += 1e-4 * all + 1e-9;
        }
        let factor = cholesky(matrix);
        let slopes: Vec<Vec<f64>> = right.into_iter().map(|right| solved(&factor, right)).collect();
        let mut covariance = vec![vec![0.0; read.len()]; read.len()];
        let mut figures = Vec::new();
        for (row, weight) in rows.iter().zip(&weights) {
            let x = regressors(row);
            let along =
                |slopes: &[f64], from: usize| slopes[from..].iter().zip(&x[from..]).map(|(s, x)| s * x).sum::<f64>();
            let left: Vec<f64> = read
                .iter()
                .zip(&slopes)
                .map(|(i, slopes)| row[CONDITIONS + i] - along(slopes, 0))
                .collect();
            for a in 0..read.len() {
                for b in 0..=a {
                    covariance[a][b] += weight * left[a] * left[b] / all.max(1e-300);
                }
            }
            figures.push(
                read.iter()
                    .zip(&slopes)
                    .map(|(i, slopes)| row[CONDITIONS + i] - along(slopes, 4))
                    .collect(),
            );
        }
        Self {
            figures,
            weights,
            covariance,
        }
    }

    fn density(&self, asked: &Asked, kernel: f64) -> f64 {
        let read: Vec<usize> = (0..FIGURES).filter(|i| asked.figures[*i].is_some()).collect();
        let at: Vec<f64> = asked.figures.into_iter().flatten().collect();
        let mut shape = self.covariance.clone();
        for (a, row) in shape.iter_mut().enumerate() {
            row.iter_mut().for_each(|entry| *entry *= kernel * kernel);
            row[a] += asked.noise[read[a]] + LEAST_SPREAD * LEAST_SPREAD;
        }
        let factor = cholesky(shape);
        let scale: f64 = (0..at.len()).map(|a| factor[a][a].ln()).sum();
        let all: f64 = self.weights.iter().sum();
        let logs: Vec<f64> = self
            .figures
            .iter()
            .zip(&self.weights)
            .map(|(figures, weight)| {
                let mut z: Vec<f64> = at.iter().zip(figures).map(|(at, figure)| at - figure).collect();
                lower(&factor, &mut z);
                (weight / all).ln() - 0.5 * z.iter().map(|z| z * z).sum::<f64>() - scale
            })
            .collect();
        let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max).max(-1e6);
        most + logs.iter().map(|log| (log - most).exp()).sum::<f64>().max(1e-300).ln()
    }
}

/// The lower triangle whose product with its transpose is a symmetric matrix given by its own.
fn cholesky(mut matrix: Vec<Vec<f64>>) -> Vec<Vec<f64>> {
    for i in 0..matrix.len() {
        for k in 0..=i {
            let sum = matrix[i][k] - (0..k).map(|m| matrix[i][m] * matrix[k][m]).sum::<f64>();
            matrix[i][k] = if i == k {
                sum.max(1e-12).sqrt()
            } else {
                sum / matrix[k][k]
            };
        }
    }
    matrix
}

/// L z = b, in the place of b.
fn lower(factor: &[Vec<f64>], b: &mut [f64]) {
    for i in 0..b.len() {
        let sum: f64 = (0..i).map(|k| factor[i][k] * b[k]).sum();
        b[i] = (b[i] - sum) / factor[i][i];
    }
}

/// L L' x = b.
fn solved(factor: &[Vec<f64>], mut b: Vec<f64>) -> Vec<f64> {
    lower(factor, &mut b);
    for i in (0..b.len()).rev() {
        let sum: f64 = (i + 1..b.len()).map(|k| factor[k][i] * b[k]).sum();
        b[i] = (b[i] - sum) / factor[i][i];
    }
    b
}
