//! Liquid and vapour of a charge, of which a given share of the mass is vapour.
//!
//! The unknowns are the logarithms of all amounts per volume, both volumes and the logarithm of the temperature; the start lies
//! between bubble and dew point. Newton's method; with the share of vapour given, the equations stay regular for blends without
//! glide, where temperature and pressure do not determine the share.

use super::MOST_COMPONENTS;
use super::incipient::{Fixed, Incipient, filled, pi_by_ln_rho};
use super::phase::{Mixture, Vector};
use super::split::{Two, two_phase_rows};
use crate::error::Error;
use crate::numerics::{GAS_J_MOL_K, solve};

/// Unknowns at most: both phases' amounts per volume, both volumes, the temperature.
const MOST: usize = 2 * MOST_COMPONENTS + 3;
const MOST_STEPS: usize = 30;
const STEP: f64 = 3e-8;

/// Liquid and vapour at a temperature.
#[derive(Clone, Copy, Debug)]
pub struct Boiling {
    /// Temperature, K.
    pub t_k: f64,
    /// The two phases.
    pub two: Two,
}

impl Boiling {
    /// A start between the bubble and the dew point of the mole fractions `z`, of which the mass fraction `quality` is
    /// vapour.
    pub fn between(z: &[f64], quality: f64, bubble: &Incipient<f64>, dew: &Incipient<f64>) -> Self {
        let mean =
            |liquid: f64, vapour: f64| libm::exp((1.0 - quality) * libm::log(liquid) + quality * libm::log(vapour));
        let (mut liquid, mut vapour) = (filled(z, bubble.rho_mol_m3), filled(z, dew.rho_mol_m3));
        for i in 0..z.len() {
            liquid[i] = mean(liquid[i], dew.new[i]);
            vapour[i] = mean(bubble.new[i], vapour[i]);
        }
        let total = |rho: &Vector<f64>| rho[..z.len()].iter().sum::<f64>();
        Self {
            t_k: mean(bubble.t_k, dew.t_k),
            two: Two {
                p_pa: mean(bubble.p_pa, dew.p_pa),
                liquid,
                vapour,
                liquid_m3_mol: (1.0 - quality) / total(&liquid),
                vapour_m3_mol: quality / total(&vapour),
            },
        }
    }
}

impl Mixture<f64> {
    /// Liquid and vapour of a charge of the mole fractions `z` of which the mass fraction `quality` is vapour, at a
    /// temperature or pressure, from a start nearby.
    ///
    /// Method: see the head of this module.
    ///
    /// Errors: `NoConvergence` with the last step.
    pub fn boiling(&self, z: &[f64], fixed: Fixed<f64>, quality: f64, start: &Boiling) -> Result<Boiling, Error> {
        let n = z.len();
        let mut at = *start;
        let mut last = f64::INFINITY;
        for _ in 0..MOST_STEPS {
            let Some(step) = self.boiling_step(z, fixed, quality, &at) else {
                break;
            };
            let amounts = (0..2 * n)
                .chain([2 * n + 2])
                .map(|k| libm::fabs(step[k]))
                .fold(0.0, f64::max);
            let total = |rho: &Vector<f64>| rho[..n].iter().sum::<f64>();
            let volumes =
                libm::fabs(step[2 * n] * total(&at.two.liquid)) + libm::fabs(step[2 * n + 1] * total(&at.two.vapour));
            let change = f64::max(amounts, volumes);
            if !change.is_finite() {
                break;
            }
            last = change;
            let held = if change > 0.5 { 0.5 / change } else { 1.0 };
            for i in 0..n {
                at.two.liquid[i] *= libm::exp(held * step[i]);
                at.two.vapour[i] *= libm::exp(held * step[n + i]);
            }
            at.two.liquid_m3_mol += held * step[2 * n];
            at.two.vapour_m3_mol += held * step[2 * n + 1];
            at.t_k *= libm::exp(held * step[2 * n + 2]);
            if change <= STEP {
                let apart = (0..n)
                    .map(|i| libm::fabs(libm::log(at.two.liquid[i] / at.two.vapour[i])))
                    .fold(0.0, f64::max);
                if apart < 1e-3 {
                    break; // two equal phases are not a solution
                }
                at.two.p_pa = match fixed {
                    Fixed::Pressure(p_pa) => p_pa,
                    Fixed::Temperature(t_k) => self.phase(t_k, &at.two.vapour).pi * GAS_J_MOL_K * t_k,
                };
                return Ok(at);
            }
        }
        Err(Error::no_convergence(last, STEP))
    }

    /// Newton's step: ln of the liquid's amounts, ln of the vapour's, both volumes, ln of the temperature.
    fn boiling_step(&self, z: &[f64], fixed: Fixed<f64>, quality: f64, at: &Boiling) -> Option<[f64; MOST]> {
        let n = z.len();
        let two = &at.two;
        let (liquid, vapour) = (self.phase(at.t_k, &two.liquid), self.phase(at.t_k, &two.vapour));
        let mut matrix = [[0.0; MOST]; MOST];
        let mut right = [0.0; MOST];
        let (first, second, last) = (2 * n, 2 * n + 1, 2 * n + 2);
        two_phase_rows(z, two, (&liquid, &vapour), &mut matrix, &mut right);
        let by_ln_t = liquid.mu_by_ln_t.iter().zip(&vapour.mu_by_ln_t);
        for (row, (of_liquid, of_vapour)) in matrix.iter_mut().zip(by_ln_t).take(n) {
            row[last] = of_liquid - of_vapour;
        }
        let by_liquid = pi_by_ln_rho(n, &two.liquid, &liquid);
        let by_vapour = pi_by_ln_rho(n, &two.vapour, &vapour);
        let scale = by_liquid[..n].iter().map(|by| libm::fabs(*by)).fold(0.0, f64::max);
        for j in 0..n {
            matrix[first][j] = by_liquid[j] / scale;
            matrix[first][n + j] = -by_vapour[j] / scale;
        }
        matrix[first][last] = (liquid.pi_by_ln_t - vapour.pi_by_ln_t) / scale;
        right[first] = (vapour.pi - liquid.pi) / scale;
        match fixed {
            Fixed::Temperature(t_k) => {
                matrix[second][last] = 1.0;
                right[second] = libm::log(t_k / at.t_k);
            }
            Fixed::Pressure(p_pa) => {
                if vapour.pi <= 0.0 {
                    return None;
                }
                for j in 0..n {
                    matrix[second][n + j] = by_vapour[j] / vapour.pi;
                }
                matrix[second][last] = vapour.pi_by_ln_t / vapour.pi + 1.0;
                right[second] = libm::log(p_pa / (vapour.pi * GAS_J_MOL_K * at.t_k));
            }
        }
        // The mass of the vapour over that of the charge.
        let (mut mass, mut charge) = (0.0, 0.0);
        for (i, component) in self.components().iter().enumerate() {
            let molar_mass = component.fluid.equation.molar_mass;
            mass += two.vapour[i] * molar_mass;
            charge += z[i] * molar_mass;
        }
        for (i, component) in self.components().iter().enumerate() {
            let molar_mass = component.fluid.equation.molar_mass;
            matrix[last][n + i] = two.vapour_m3_mol * two.vapour[i] * molar_mass / charge;
        }
        matrix[last][second] = mass / charge;
        right[last] = quality - two.vapour_m3_mol * mass / charge;
        solve(&mut matrix, &mut right, 2 * n + 3, 0.0).then_some(right)
    }
}
