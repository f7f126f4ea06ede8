//! A charge as one phase or two: at a temperature and pressure, or in a vessel.
//!
//! The tangent plane test decides whether there are two, and gives the first guess of them; successive substitution
//! brings that near, Newton's method in the logarithms of all amounts finishes it.

use super::MOST_COMPONENTS;
use super::density::{Homogeneous, Root};
use super::incipient::pi_by_ln_rho;
use super::phase::{Mixture, PhaseProperties, Vector};
use crate::error::Error;
use crate::numerics::{GAS_J_MOL_K, solve};

/// Unknowns at most: both phases' amounts per volume and both volumes.
const MOST: usize = 2 * MOST_COMPONENTS + 2;
const MOST_STEPS: usize = 30;
const STEP: f64 = 3e-8;
/// Rounds of successive substitution before each attempt of Newton's method.
const ROUNDS: [usize; 4] = [3, 8, 20, 60];

/// What closes the equations of two phases.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Closing {
    /// The pressure, Pa.
    Pressure(f64),
    /// The volume that one mole has, m3/mol.
    Volume(f64),
}

/// A charge at rest.
#[derive(Clone, Copy, Debug)]
pub enum Split {
    /// One phase, of the composition of the charge.
    One {
        /// Pressure, Pa.
        p_pa: f64,
        /// Molar density, mol/m3.
        rho_mol_m3: f64,
    },
    /// Two phases.
    Two(Two),
}

/// Liquid and vapour in equilibrium.
#[derive(Clone, Copy, Debug)]
pub struct Two {
    /// Pressure, Pa.
    pub p_pa: f64,
    /// Amounts per volume in the denser phase, mol/m3.
    pub liquid: Vector<f64>,
    /// Amounts per volume in the other, mol/m3.
    pub vapour: Vector<f64>,
    /// Volume of the denser phase per mole of charge, m3/mol.
    pub liquid_m3_mol: f64,
    /// Volume of the other per mole of charge, m3/mol.
    pub vapour_m3_mol: f64,
}

impl Two {
    /// The share of the moles that are vapour.
    pub fn vapour_share(&self, mixture: &Mixture<f64>) -> f64 {
        let n = mixture.components().len();
        self.vapour_m3_mol * self.vapour[..n].iter().sum::<f64>()
    }
}

impl Mixture<f64> {
    /// The charge of the mole fractions `z` (above zero, of sum one) at a temperature (K) and pressure (Pa).
    ///
    /// Method: see the head of this module. Two liquid phases, with or without a vapour, are not looked for.
    ///
    /// Errors: `NoConvergence` with the residual.
    pub fn split(&self, z: &[f64], t_k: f64, p_pa: f64) -> Result<Split, Error> {
        let none = Error::no_convergence(f64::INFINITY, STEP);
        let feed = self.stabler(z, t_k, p_pa).ok_or(none)?;
        let one = Split::One {
            p_pa,
            rho_mol_m3: feed.rho_mol_m3,
        };
        let Some((trial, root)) = self.unstable_towards(z, &feed, t_k, p_pa) else {
            return Ok(one);
        };
        let mut ln_k = [0.0; MOST_COMPONENTS];
        for (i, ln_k) in ln_k.iter_mut().enumerate().take(z.len()) {
            let ratio = libm::log(trial[i] / z[i]);
            *ln_k = if root == Root::Thin { ratio } else { -ratio };
        }
        let mut error = none;
        for rounds in ROUNDS {
            let Some(guess) = self.substituted(z, t_k, p_pa, &mut ln_k, rounds) else {
                return Ok(one); // the phases became equal: the test had found rounding
            };
            match self.two(z, t_k, Closing::Pressure(p_pa), &guess) {
                Ok(two) => return Ok(Split::Two(two)),
                Err(failure) => error = failure,
            }
        }
        Err(error)
    }

    /// Successive substitution: equal fugacities and the balance of amounts in turn.
    #[inline(never)]
    fn substituted(&self, z: &[f64], t_k: f64, p_pa: f64, ln_k: &mut Vector<f64>, rounds: usize) -> Option<Two> {
        let n = z.len();
        let mut guess = None;
        for _ in 0..rounds {
            let most = ln_k[..n].iter().map(|k| libm::fabs(*k)).fold(0.0, f64::max);
            if most < 1e-5 {
                return None;
            }
            let share = vapour_share(z, ln_k);
            let (mut x, mut y) = ([0.0; MOST_COMPONENTS], [0.0; MOST_COMPONENTS]);
            let (mut x_sum, mut y_sum) = (0.0, 0.0);
            for i in 0..n {
                let k = libm::exp(ln_k[i]);
                x[i] = z[i] / (1.0 + share * (k - 1.0));
                y[i] = k * x[i];
                x_sum += x[i];
                y_sum += y[i];
            }
            let (x, y) = (x.map(|x| x / x_sum), y.map(|y| y / y_sum));
            let phase = |x: &Vector<f64>, root: Root| -> Option<Homogeneous> {
                self.homogeneous(&x[..n], t_k, p_pa, root)
                    .or_else(|| self.stabler(&x[..n], t_k, p_pa))
            };
            let (liquid, vapour) = (phase(&x, Root::Dense)?, phase(&y, Root::Thin)?);
            for (i, ln_k) in ln_k.iter_mut().enumerate().take(n) {
                *ln_k = liquid.ln_fugacity_coefficient(i) - vapour.ln_fugacity_coefficient(i);
            }
            guess = Some(Two {
                p_pa,
                liquid: super::incipient::filled(&x[..n], liquid.rho_mol_m3),
                vapour: super::incipient::filled(&y[..n], vapour.rho_mol_m3),
                liquid_m3_mol: (1.0 - share) / liquid.rho_mol_m3,
                vapour_m3_mol: share / vapour.rho_mol_m3,
            });
        }
        guess
    }

    /// Two phases from a guess, by Newton's method.
    ///
    /// Errors: `NoConvergence` with the last step.
    #[inline(never)]
    pub(super) fn two(&self, z: &[f64], t_k: f64, closing: Closing, guess: &Two) -> Result<Two, Error> {
        let n = z.len();
        let mut at = *guess;
        let mut last = f64::INFINITY;
        for _ in 0..MOST_STEPS {
            let Some(step) = self.step(z, t_k, closing, &at) else {
                break;
            };
            let size = |k: usize| libm::fabs(step[k]);
            let change = (0..2 * n).map(size).fold(0.0, f64::max);
            let volumes = libm::fabs(step[2 * n] * at.liquid.iter().take(n).sum::<f64>())
                + libm::fabs(step[2 * n + 1] * at.vapour.iter().take(n).sum::<f64>());
            let change = f64::max(change, volumes);
            if !change.is_finite() {
                break;
            }
            last = change;
            let held = if change > 0.5 { 0.5 / change } else { 1.0 };
            for i in 0..n {
                at.liquid[i] *= libm::exp(held * step[i]);
                at.vapour[i] *= libm::exp(held * step[n + i]);
            }
            at.liquid_m3_mol += held * step[2 * n];
            at.vapour_m3_mol += held * step[2 * n + 1];
            if change <= STEP {
                return self.finished(n, t_k, closing, at);
            }
        }
        Err(Error::no_convergence(last, STEP))
    }

    /// The two phases in their order, unless they are one or one has no volume.
    fn finished(&self, n: usize, t_k: f64, closing: Closing, mut at: Two) -> Result<Two, Error> {
        let total = |rho: &Vector<f64>| rho[..n].iter().sum::<f64>();
        let apart = (0..n)
            .map(|i| libm::fabs(libm::log(at.liquid[i] / at.vapour[i])))
            .fold(0.0, f64::max);
        if apart < 1e-5 || at.liquid_m3_mol < 0.0 || at.vapour_m3_mol < 0.0 {
            return Err(Error::no_convergence(1.0, STEP));
        }
        if total(&at.liquid) < total(&at.vapour) {
            core::mem::swap(&mut at.liquid, &mut at.vapour);
            core::mem::swap(&mut at.liquid_m3_mol, &mut at.vapour_m3_mol);
        }
        at.p_pa = match closing {
            Closing::Pressure(p_pa) => p_pa,
            Closing::Volume(_) => self.phase(t_k, &at.vapour).pi * GAS_J_MOL_K * t_k,
        };
        Ok(at)
    }

    /// Newton's step: ln of the liquid's amounts, ln of the vapour's, both volumes.
    #[inline(never)]
    fn step(&self, z: &[f64], t_k: f64, closing: Closing, at: &Two) -> Option<[f64; MOST]> {
        let n = z.len();
        let (liquid, vapour) = (self.phase(t_k, &at.liquid), self.phase(t_k, &at.vapour));
        let mut matrix = [[0.0; MOST]; MOST];
        let mut right = [0.0; MOST];
        let (first, second) = (2 * n, 2 * n + 1);
        two_phase_rows(z, at, (&liquid, &vapour), &mut matrix, &mut right);
        let (pi_liquid, pi_vapour) = (
            pi_by_ln_rho(n, &at.liquid, &liquid),
            pi_by_ln_rho(n, &at.vapour, &vapour),
        );
        // Rows of pressures are brought to the size of the others.
        let scale = |by: &Vector<f64>| by[..n].iter().map(|by| libm::fabs(*by)).fold(0.0, f64::max);
        let (scale_liquid, scale_vapour) = (scale(&pi_liquid), scale(&pi_vapour));
        match closing {
            Closing::Pressure(p_pa) => {
                let aim = p_pa / (GAS_J_MOL_K * t_k);
                for j in 0..n {
                    matrix[first][j] = pi_liquid[j] / scale_liquid;
                    matrix[second][n + j] = pi_vapour[j] / scale_vapour;
                }
                right[first] = (aim - liquid.pi) / scale_liquid;
                right[second] = (aim - vapour.pi) / scale_vapour;
            }
            Closing::Volume(m3_mol) => {
                for j in 0..n {
                    matrix[first][j] = pi_liquid[j] / scale_liquid;
                    matrix[first][n + j] = -pi_vapour[j] / scale_liquid;
                }
                right[first] = (vapour.pi - liquid.pi) / scale_liquid;
                matrix[second][first] = 1.0 / m3_mol;
                matrix[second][second] = 1.0 / m3_mol;
                right[second] = 1.0 - (at.liquid_m3_mol + at.vapour_m3_mol) / m3_mol;
            }
        }
        solve(&mut matrix, &mut right, 2 * n + 2, 0.0).then_some(right)
    }
}

/// The first 2 n rows of Newton's system for two phases of n components: equal chemical potentials, then the balance of each
/// amount.
///
/// The unknowns, in the order of the columns: ln of the liquid's amounts per volume (n), ln of the vapour's (n), the liquid's
/// volume, the vapour's volume; columns beyond these are the caller's.
pub(super) fn two_phase_rows<const N: usize>(
    z: &[f64],
    at: &Two,
    (liquid, vapour): (&PhaseProperties<f64>, &PhaseProperties<f64>),
    matrix: &mut [[f64; N]; N],
    right: &mut [f64; N],
) {
    let n = z.len();
    let (liquid_volume, vapour_volume) = (2 * n, 2 * n + 1);
    for i in 0..n {
        let row = &mut matrix[i];
        for j in 0..n {
            row[j] = at.liquid[j] * liquid.mu_by_rho[i][j];
            row[n + j] = -at.vapour[j] * vapour.mu_by_rho[i][j];
        }
        row[i] += 1.0;
        row[n + i] -= 1.0;
        right[i] = libm::log(at.vapour[i] / at.liquid[i]) + vapour.mu[i] - liquid.mu[i];
        let row = &mut matrix[n + i];
        row[i] = at.liquid_m3_mol * at.liquid[i] / z[i];
        row[n + i] = at.vapour_m3_mol * at.vapour[i] / z[i];
        row[liquid_volume] = at.liquid[i] / z[i];
        row[vapour_volume] = at.vapour[i] / z[i];
        right[n + i] = 1.0 - row[i] - row[n + i];
    }
}

/// The share of vapour at which the amounts balance, for given ln K; outside 0 to 1 where one phase would do.
///
/// Source: Rachford and Rice, J. Pet. Technol. 4 (1952) 19, doi 10.2118/952327-G.
fn vapour_share(z: &[f64], ln_k: &Vector<f64>) -> f64 {
    let balance = |share: f64| -> f64 {
        let parts = z.iter().zip(ln_k);
        let part = |(z, ln_k): (&f64, &f64)| {
            let more = libm::exp(*ln_k) - 1.0;
            z * more / (1.0 + share * more)
        };
        parts.map(part).sum()
    };
    // The balance falls from one pole to the other.
    let most = z.iter().zip(ln_k).map(|(_, k)| *k).fold(f64::NEG_INFINITY, f64::max);
    let least = z.iter().zip(ln_k).map(|(_, k)| *k).fold(f64::INFINITY, f64::min);
    if most <= 0.0 {
        return 0.0;
    }
    if least >= 0.0 {
        return 1.0;
    }
    let (mut low, mut high) = (1.0 / (1.0 - libm::exp(most)), 1.0 / (1.0 - libm::exp(least)));
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        if balance(middle) > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
