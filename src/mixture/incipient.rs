//! A phase of given composition in equilibrium with the first trace of another: bubble and dew points.
//!
//! The unknowns are the logarithms of the given phase's density, of the amounts per volume in the new phase, and of the
//! temperature; the equations are equal chemical potentials, equal pressures, and what is fixed. No density is searched
//! for within a step, so no step can land on a root of the wrong branch. Newton's method; from a solution nearby, its
//! first step is the tangent of the line, which makes following the line a matter of moving what is fixed.
//!
//! Source of the formulation: Bell and Deiters, AIChE J. 64 (2018) 2745, doi 10.1002/aic.16074.

use super::MOST_COMPONENTS;
use super::phase::{Mixture, PhaseProperties, Vector};
use crate::error::Error;
use crate::numerics::{GAS_J_MOL_K, Real, solve};

/// Unknowns at most.
const MOST: usize = MOST_COMPONENTS + 2;
const MOST_STEPS: usize = 30;
/// The step, in logarithms, after which the next would be of the order of its square: below rounding.
const STEP: f64 = 3e-8;

/// What is given of a point of a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fixed<R> {
    /// The temperature, K.
    Temperature(R),
    /// The pressure, Pa.
    Pressure(R),
}

/// A phase of given composition with a trace of another.
#[derive(Clone, Copy, Debug)]
pub struct Incipient<R> {
    /// Temperature, K.
    pub t_k: R,
    /// Pressure, Pa.
    pub p_pa: R,
    /// Molar density of the given phase, mol/m3.
    pub rho_mol_m3: R,
    /// Amounts per volume in the new phase, mol/m3.
    pub new: Vector<R>,
}

impl<R: Real> Incipient<R> {
    /// Molar density of the new phase, mol/m3.
    pub fn new_rho_mol_m3(&self, mixture: &Mixture<R>) -> R {
        let new = &self.new[..mixture.components().len()];
        new.iter().fold(R::from_f64(0.0), |sum, &rho| sum + rho)
    }

    /// ln of the density ratio of the two phases, without sign: 0 in the critical point.
    pub(super) fn contrast(&self, mixture: &Mixture<R>) -> f64 {
        libm::fabs(libm::log(
            self.rho_mol_m3.to_f64() / self.new_rho_mol_m3(mixture).to_f64(),
        ))
    }
}

impl<R: Real> Mixture<R> {
    /// The equilibrium of a phase of the mole fractions `z` with a trace of another, from a start nearby.
    ///
    /// Method: see the head of this module. One step closes at most half of the gap between the two phases, because two equal
    /// phases solve the equations too.
    ///
    /// Errors: `NoConvergence` with the last step.
    pub fn incipient(&self, z: &[R], fixed: Fixed<R>, start: &Incipient<R>) -> Result<Incipient<R>, Error> {
        let n = z.len();
        let mut point = *start;
        let mut last = f64::INFINITY;
        for _ in 0..MOST_STEPS {
            let given = filled(z, point.rho_mol_m3);
            let (one, other) = (self.phase(point.t_k, &given), self.phase(point.t_k, &point.new));
            let Some(step) = step(n, &given, &one, &point, &other, fixed) else {
                break;
            };
            let change = step[..n + 2].iter().map(|s| libm::fabs(s.to_f64())).fold(0.0, f64::max);
            if !change.is_finite() {
                break;
            }
            last = change;
            let held = R::from_f64(held(n, &point, &step));
            let grow = |value: R, by: R| value * (held * by).exponential();
            point.rho_mol_m3 = grow(point.rho_mol_m3, step[0]);
            for i in 0..n {
                point.new[i] = grow(point.new[i], step[1 + i]);
            }
            point.t_k = grow(point.t_k, step[n + 1]);
            if change <= STEP {
                let contrast = point.contrast(self);
                let vapour = if point.rho_mol_m3 < point.new_rho_mol_m3(self) {
                    self.phase(point.t_k, &filled(z, point.rho_mol_m3))
                } else {
                    self.phase(point.t_k, &point.new)
                };
                point.p_pa = vapour.pi * R::from_f64(GAS_J_MOL_K) * point.t_k;
                // Two equal phases are not a solution.
                if contrast < 1e-3 && same(z, &point) {
                    break;
                }
                return Ok(point);
            }
        }
        Err(Error::no_convergence(last, STEP))
    }
}

/// Whether the new phase has the composition of the given one.
fn same<R: Real>(z: &[R], point: &Incipient<R>) -> bool {
    let ratio = |(i, &z): (usize, &R)| libm::fabs(libm::log((point.new[i] / (z * point.rho_mol_m3)).to_f64()));
    z.iter().enumerate().map(ratio).fold(0.0, f64::max) < 1e-3
}

/// The amounts per volume of a composition at a density.
pub(super) fn filled<R: Real>(z: &[R], rho_mol_m3: R) -> Vector<R> {
    let mut rho = [R::from_f64(1.0); MOST_COMPONENTS];
    for (rho, &z) in rho.iter_mut().zip(z) {
        *rho = z * rho_mol_m3;
    }
    rho
}

/// d mu_i / d ln rho_j, without the part of the ideal gas: rho_j Psi_ij.
fn responses<R: Real>(n: usize, rho: &Vector<R>, phase: &PhaseProperties<R>) -> [Vector<R>; MOST_COMPONENTS] {
    let mut by = phase.mu_by_rho;
    for row in by.iter_mut().take(n) {
        for (value, &rho) in row.iter_mut().zip(rho).take(n) {
            *value = *value * rho;
        }
    }
    by
}

/// d pi / d ln rho_j = rho_j (1 + sum_i rho_i Psi_ij).
#[inline(never)]
pub(super) fn pi_by_ln_rho<R: Real>(n: usize, rho: &Vector<R>, phase: &PhaseProperties<R>) -> Vector<R> {
    let one = R::from_f64(1.0);
    let mut by = [R::from_f64(0.0); MOST_COMPONENTS];
    for j in 0..n {
        let sum = (0..n).fold(one, |sum, i| sum + rho[i] * phase.mu_by_rho[i][j]);
        by[j] = rho[j] * sum;
    }
    by
}

/// Newton's step in the logarithms: given density, new amounts, temperature.
fn step<R: Real>(
    n: usize,
    given: &Vector<R>,
    one: &PhaseProperties<R>,
    point: &Incipient<R>,
    other: &PhaseProperties<R>,
    fixed: Fixed<R>,
) -> Option<[R; MOST]> {
    let (zero, unit) = (R::from_f64(0.0), R::from_f64(1.0));
    let mut matrix = [[zero; MOST]; MOST];
    let mut right = [zero; MOST];
    let (by_one, by_other) = (responses(n, given, one), responses(n, &point.new, other));
    for i in 0..n {
        let row = &mut matrix[i];
        row[0] = (0..n).fold(unit, |sum, j| sum + by_one[i][j]);
        for j in 0..n {
            row[1 + j] = -by_other[i][j];
        }
        row[1 + i] = row[1 + i] - unit;
        row[n + 1] = one.mu_by_ln_t[i] - other.mu_by_ln_t[i];
        right[i] = (point.new[i] / given[i]).logarithm() + other.mu[i] - one.mu[i];
    }
    let (pi_one, pi_other) = (pi_by_ln_rho(n, given, one), pi_by_ln_rho(n, &point.new, other));
    let pi_one_all = (0..n).fold(zero, |sum, j| sum + pi_one[j]);
    // The row of pressures is brought to the size of the others.
    let mut scale = if pi_one_all < zero { -pi_one_all } else { pi_one_all };
    for &by in &pi_other[..n] {
        let by = if by < zero { -by } else { by };
        scale = if by > scale { by } else { scale };
    }
    matrix[n][0] = pi_one_all / scale;
    for j in 0..n {
        matrix[n][1 + j] = -(pi_other[j] / scale);
    }
    matrix[n][n + 1] = (one.pi_by_ln_t - other.pi_by_ln_t) / scale;
    right[n] = (other.pi - one.pi) / scale;
    let last = &mut matrix[n + 1];
    match fixed {
        Fixed::Temperature(t_k) => {
            last[n + 1] = unit;
            right[n + 1] = (t_k / point.t_k).logarithm();
        }
        Fixed::Pressure(p_pa) => {
            // Of the two pressures that of the vapour is the more accurate one.
            let given_is_thin = one.rho_mol_m3 < other.rho_mol_m3;
            let vapour = if given_is_thin { one } else { other };
            if vapour.pi <= zero {
                return None;
            }
            if given_is_thin {
                last[0] = pi_one_all / vapour.pi;
            } else {
                for j in 0..n {
                    last[1 + j] = pi_other[j] / vapour.pi;
                }
            }
            last[n + 1] = vapour.pi_by_ln_t / vapour.pi + unit;
            let p = vapour.pi * R::from_f64(GAS_J_MOL_K) * point.t_k;
            right[n + 1] = (p_pa / p).logarithm();
        }
    }
    solve(&mut matrix, &mut right, n + 2, 0.0).then_some(right)
}

/// The share of a step that is taken: no amount changes more than by a factor of e, no dense phase by more than a
/// fifth, the temperature by no more than a tenth, and the phases come no nearer than half way.
fn held<R: Real>(n: usize, point: &Incipient<R>, step: &[R; MOST]) -> f64 {
    let size = |k: usize| libm::fabs(step[k].to_f64());
    let most = (0..=n).map(size).fold(0.0, f64::max);
    let total = point.new[..n].iter().map(|rho| rho.to_f64()).sum::<f64>();
    let swelling = (0..n)
        .map(|i| point.new[i].to_f64() * step[1 + i].to_f64())
        .sum::<f64>()
        / total;
    let given = point.rho_mol_m3.to_f64();
    let dense = if given > total { size(0) } else { libm::fabs(swelling) };
    let gap = libm::log(given / total);
    let closing = swelling - step[0].to_f64();
    let mut held = 1.0f64;
    for (size, most) in [(most, 1.0), (dense, 0.2), (size(n + 1), 0.1)] {
        if size * held > most {
            held = most / size;
        }
    }
    if held * closing / gap > 0.5 {
        held = 0.5 * gap / closing;
    }
    held
}
