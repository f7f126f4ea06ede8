//! Bubble and dew lines of a blend, and its critical point.
//!
//! The line is followed in f64 from a cold start, in steps so short that no step can leave it; one more step of Newton's
//! method in extended precision, which squares the error of about 1e-14, then gives each point all its digits.

use crate::double::Double;
use crate::root::root_between;
use coldloop::inner::mixture::{Fixed, Incipient, Mixture, Side, Split, Vector};
use coldloop::inner::numerics::Real;
use std::f64::consts::PI;

/// Bins of the master interpolation, and its nodes in each.
const BINS: usize = 24;
const NODES: usize = 16;
/// How far from the line, relative in pressure, the phase that has the composition is tested for stability.
const BESIDE: f64 = 1e-4;

/// One blend: its model in two precisions.
pub(crate) struct Model {
    pub(crate) coarse: Mixture<f64>,
    fine: Mixture<Double>,
    pub(crate) z: Vec<f64>,
}

/// The critical point.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Critical {
    pub(crate) t_k: f64,
    pub(crate) p_pa: f64,
    pub(crate) rho_mol_m3: f64,
}

impl Model {
    pub(crate) fn new(components: &[&'static coldloop::inner::mixture::Component], z: &[f64]) -> Result<Self, String> {
        Ok(Self {
            coarse: Mixture::new(components).map_err(|e| e.to_string())?,
            fine: Mixture::new(components).map_err(|e| e.to_string())?,
            z: z.to_vec(),
        })
    }

    /// The point in extended precision next to one in f64.
    fn polished(&self, rough: &Incipient<f64>, t_k: Double) -> Result<Incipient<Double>, String> {
        let number = Double::from_f64;
        let z: Vec<Double> = self.z.iter().map(|&z| number(z)).collect();
        let start = Incipient {
            t_k,
            p_pa: number(rough.p_pa),
            rho_mol_m3: number(rough.rho_mol_m3),
            new: rough.new.map(number),
        };
        self.fine
            .incipient(&z, Fixed::Temperature(t_k), &start)
            .map_err(|e| format!("{} K: {e}", t_k.to_f64()))
    }

    /// Enthalpy (J/mol) and entropy (J/(mol K)) of the phase that has the composition.
    pub(crate) fn enthalpy_entropy(&self, point: &Incipient<Double>) -> (Double, Double) {
        let mut rho: Vector<Double> = point.new.map(|_| Double::from_f64(1.0));
        for (rho, &z) in rho.iter_mut().zip(&self.z) {
            *rho = Double::from_f64(z) * point.rho_mol_m3;
        }
        let phase = self.fine.phase(point.t_k, &rho);
        self.fine.enthalpy_entropy(point.t_k, &rho, &phase)
    }

    /// Solves for the point at which two phases become one: the least eigenvalue of the curvature of the energy is zero,
    /// and so is its change along the eigenvector.
    ///
    /// Source of the conditions: Heidemann and Khalil, AIChE J. 26 (1980) 769, doi 10.1002/aic.690260510.
    pub(crate) fn critical(&self) -> Result<Critical, String> {
        let (mut ln_t, mut ln_rho) = self.near_critical()?;
        for _ in 0..60 {
            let h = 1e-5;
            let (f, g) = self.criticality(ln_t, ln_rho);
            let (f_t, g_t) = self.criticality(ln_t + h, ln_rho);
            let (f_r, g_r) = self.criticality(ln_t, ln_rho + h);
            let (a, b, c, d) = ((f_t - f) / h, (f_r - f) / h, (g_t - g) / h, (g_r - g) / h);
            let determinant = a * d - b * c;
            let (step_t, step_r) = (-(f * d - b * g) / determinant, -(a * g - f * c) / determinant);
            let held = (0.03 / step_t.abs().max(0.3 * step_r.abs())).min(1.0);
            ln_t += held * step_t;
            ln_rho += held * step_r;
            if step_t.abs() < 1e-10 && step_r.abs() < 1e-7 {
                let (t_k, rho_mol_m3) = (ln_t.exp(), ln_rho.exp());
                let phase = self.coarse.phase(t_k, &self.filled(rho_mol_m3));
                return Ok(Critical {
                    t_k,
                    p_pa: phase.pi * coldloop::inner::numerics::GAS_J_MOL_K * t_k,
                    rho_mol_m3,
                });
            }
        }
        Err("no critical point found".to_string())
    }

    /// Where the bubble line ends when it is followed with shrinking steps.
    fn near_critical(&self) -> Result<(f64, f64), String> {
        let reducing = self.coarse.reducing_t_k(&self.z);
        let mut t_k = 0.8 * reducing;
        let error = |e: coldloop::Error| e.to_string();
        let mut point = self
            .coarse
            .point(&self.z, Side::Bubble, Fixed::Temperature(t_k))
            .map_err(error)?;
        let mut step = 0.02 * reducing;
        while step > 1e-3 {
            match self.coarse.incipient(&self.z, Fixed::Temperature(t_k + step), &point) {
                Ok(next) if (next.rho_mol_m3 / point.rho_mol_m3).ln().abs() < 0.15 => {
                    t_k += step;
                    point = next;
                }
                Ok(_) | Err(_) => step *= 0.5,
            }
        }
        let new: f64 = point.new[..self.z.len()].iter().sum();
        Ok((t_k.ln(), (0.5 * (new + point.rho_mol_m3)).ln()))
    }

    fn filled(&self, rho_mol_m3: f64) -> Vector<f64> {
        let mut rho = [1.0; coldloop::inner::mixture::MOST_COMPONENTS];
        for (rho, &z) in rho.iter_mut().zip(&self.z) {
            *rho = z * rho_mol_m3;
        }
        rho
    }

    /// The least eigenvalue of delta_ij + sqrt(rho_i rho_j) Psi_ij, and the change of the form along its vector.
    fn criticality(&self, ln_t: f64, ln_rho: f64) -> (f64, f64) {
        let n = self.z.len();
        let t_k = ln_t.exp();
        let rho = self.filled(ln_rho.exp());
        let curvature = |rho: &Vector<f64>| {
            let phase = self.coarse.phase(t_k, rho);
            let entry = |i: usize, j: usize| {
                let own = if i == j { 1.0 / rho[i] } else { 0.0 };
                own + phase.mu_by_rho[i][j]
            };
            (0..n)
                .map(|i| (0..n).map(|j| entry(i, j)).collect::<Vec<_>>())
                .collect::<Vec<_>>()
        };
        let root = |i: usize| rho[i].sqrt();
        let plain = curvature(&rho);
        let scaled: Vec<Vec<f64>> = (0..n)
            .map(|i| (0..n).map(|j| plain[i][j] * root(i) * root(j)).collect())
            .collect();
        let (least, vector) = least_eigen(scaled);
        let along: Vec<f64> = (0..n).map(|i| vector[i] * root(i)).collect();
        let total = ln_rho.exp();
        let form = |by: f64| {
            let mut moved = rho;
            for i in 0..n {
                moved[i] += by * along[i];
            }
            let matrix = curvature(&moved);
            (0..n)
                .map(|i| (0..n).map(|j| matrix[i][j] * along[i] * along[j]).sum::<f64>())
                .sum::<f64>()
        };
        let size = along.iter().map(|a| a.abs()).fold(0.0, f64::max);
        let step = 1e-4 * total / size;
        (least, (form(step) - form(-step)) / (2.0 * step) * total / size)
    }
}

/// The least eigenvalue of a symmetric matrix with its vector, by Jacobi's rotations.
fn least_eigen(mut a: Vec<Vec<f64>>) -> (f64, Vec<f64>) {
    let n = a.len();
    let mut v: Vec<Vec<f64>> = (0..n).map(|i| (0..n).map(|j| f64::from(i == j)).collect()).collect();
    for _ in 0..40 {
        for p in 0..n {
            for q in p + 1..n {
                if a[p][q].abs() < 1e-300 {
                    continue;
                }
                let theta = (a[q][q] - a[p][p]) / (2.0 * a[p][q]);
                let t = theta.signum() / (theta.abs() + theta.hypot(1.0));
                let c = 1.0 / t.hypot(1.0);
                let s = t * c;
                for row in a.iter_mut() {
                    (row[p], row[q]) = (c * row[p] - s * row[q], s * row[p] + c * row[q]);
                }
                let (first, second) = (a[p].clone(), a[q].clone());
                a[p] = first.iter().zip(&second).map(|(x, y)| c * x - s * y).collect();
                a[q] = first.iter().zip(&second).map(|(x, y)| s * x + c * y).collect();
                for row in v.iter_mut() {
                    (row[p], row[q]) = (c * row[p] - s * row[q], s * row[p] + c * row[q]);
                }
            }
        }
    }
    let least = (0..n).fold(0, |least, k| if a[k][k] < a[least][least] { k } else { least });
    let vector: Vec<f64> = v.iter().map(|row| row[least]).collect();
    // The sign must not jump while the point is searched.
    let sign = vector
        .iter()
        .copied()
        .fold(0.0, |most: f64, x| if x.abs() > most.abs() { x } else { most });
    (a[least][least], vector.iter().map(|x| x * sign.signum()).collect())
}

/// ln p of one side over temperature, interpolated in extended precision.
pub(crate) struct Traced {
    pub(crate) low: f64,
    pub(crate) high: f64,
    edges: Vec<f64>,
    /// For each bin: argument, barycentric weight, value.
    bins: Vec<Vec<(Double, Double, Double)>>,
}

impl Traced {
    /// Follows one side of a blend from `low` to `high`, K, and tests on the way that the phase is stable and that the
    /// pressure rises.
    pub(crate) fn new(model: &Model, side: Side, low: f64, high: f64) -> Result<Self, String> {
        let number = Double::from_f64;
        // The bins shrink towards the end, which lies close to the critical point.
        let edges: Vec<f64> = (0..=BINS)
            .map(|k| {
                let x = k as f64 / BINS as f64;
                low + (high - low) * x * (1.75 - 0.75 * x)
            })
            .collect();
        let mut rough = model
            .coarse
            .point(&model.z, side, Fixed::Temperature(low))
            .map_err(|e| format!("{low} K: {e}"))?;
        let mut bins = Vec::new();
        let mut last = f64::NEG_INFINITY;
        for bin in edges.windows(2) {
            let xs: Vec<f64> = (0..NODES)
                .rev()
                .map(|k| 0.5 * (bin[0] + bin[1]) + 0.5 * (bin[1] - bin[0]) * node(k, NODES))
                .collect();
            let mut nodes = Vec::new();
            for &x in &xs {
                rough = model
                    .coarse
                    .incipient(&model.z, Fixed::Temperature(x), &rough)
                    .map_err(|e| format!("{x} K: {e}"))?;
                let point = model.polished(&rough, number(x))?;
                let value = point.p_pa.logarithm();
                if value.to_f64() <= last {
                    return Err(format!("{side:?}: the pressure does not rise at {x} K"));
                }
                last = value.to_f64();
                let mut weight = number(1.0);
                for &other in xs.iter().filter(|&&other| other != x) {
                    weight = weight * number(bin[1] - bin[0]) / (number(x) - number(other));
                }
                nodes.push((number(x), weight, value));
            }
            stable(model, side, &rough)?;
            bins.push(nodes);
        }
        Ok(Self { low, high, edges, bins })
    }

    /// ln p at a temperature, K.
    pub(crate) fn ln_p(&self, t_k: Double) -> Double {
        let number = Double::from_f64;
        let bin = self.edges[1..BINS].partition_point(|&edge| edge <= t_k.to_f64());
        let (mut top, mut bottom) = (number(0.0), number(0.0));
        for &(x, weight, value) in &self.bins[bin] {
            let off = t_k - x;
            if off.to_f64() == 0.0 {
                return value;
            }
            let share = weight / off;
            top = top + share * value;
            bottom = bottom + share;
        }
        top / bottom
    }

    /// The temperature (K) at which ln p has a value, by the secant rule within a shrinking bracket.
    pub(crate) fn temperature(&self, ln_p: Double) -> Double {
        let (low, high) = (Double::from_f64(self.low), Double::from_f64(self.high));
        root_between(low, high, 12, |t| self.ln_p(t) - ln_p)
    }

    /// The point at a temperature, in extended precision.
    pub(crate) fn point(model: &Model, side: Side, t_k: f64) -> Result<Incipient<Double>, String> {
        let rough = model
            .coarse
            .point(&model.z, side, Fixed::Temperature(t_k))
            .map_err(|e| format!("{t_k} K: {e}"))?;
        model.polished(&rough, Double::from_f64(t_k))
    }
}

/// The tangent plane test beside the line, on the side where there is one phase.
fn stable(model: &Model, side: Side, point: &Incipient<f64>) -> Result<(), String> {
    let p_pa = match side {
        Side::Bubble => point.p_pa * (1.0 + BESIDE),
        Side::Dew => point.p_pa * (1.0 - BESIDE),
    };
    match model.coarse.split(&model.z, point.t_k, p_pa) {
        Ok(Split::One { .. }) => Ok(()),
        Ok(Split::Two(_)) => Err(format!("{side:?}: the phase is not stable at {} K", point.t_k)),
        Err(error) => Err(format!("{side:?}: no stability at {} K: {error}", point.t_k)),
    }
}

/// The zeros of the Chebyshev polynomial, from the upper end down.
pub(crate) fn node(k: usize, count: usize) -> f64 {
    (PI * (k as f64 + 0.5) / count as f64).cos()
}
