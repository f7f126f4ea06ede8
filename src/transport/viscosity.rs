//! The viscosity of a homogeneous phase.

use super::conformal::{self, State};
use super::correlation::{DiluteViscosity, LennardJones, ResidualViscosity, Term, Viscosity, ViscosityForm};
use crate::error::Error;
use crate::numerics::{exp, ln, sqrt};
use crate::saturation::Pure;

/// Avogadro constant, 1/mol: exact by the definition of the mole.
pub(super) const AVOGADRO: f64 = 6.022_140_76e23;

/// The factor of sqrt(M T) / sigma^2 in the viscosity of a dilute gas of hard spheres, in Pa s (g/mol K)^-1/2 m^2.
///
/// Source: Chapman & Enskog's first approximation, 5/16 sqrt(k m T / pi) / sigma^2; 26.692e-9 with sigma in nm, as in Huber,
/// Laesecke & Perkins 2003, doi 10.1021/ie0300880.
pub(super) const HARD_SPHERES: f64 = 26.692e-27;

/// (b, t) of the reduced second viscosity virial coefficient, sum b (T*)^t.
///
/// Source: Vogel, Küchenmeister, Bich & Laesecke 1998, J. Phys. Chem. Ref. Data 27, 947, doi 10.1063/1.556025: the theory of
/// Rainwater & Friend.
const SECOND_VIRIAL: [(f64, f64); 9] = [
    (-19.572881, 0.0),
    (219.73999, -0.25),
    (-1015.3226, -0.5),
    (2471.01251, -0.75),
    (-3375.1717, -1.0),
    (2491.6597, -1.25),
    (-787.26086, -1.5),
    (14.085455, -2.5),
    (-0.34664158, -5.5),
];

/// (A, t) and (A, B) of the collision integral: A T*^t + sum A exp(-B T*).
///
/// Source: Neufeld, Janzen & Aziz 1972, J. Chem. Phys. 57, 1100, doi 10.1063/1.1678363.
const NEUFELD: [(f64, f64); 3] = [(1.16145, -0.14874), (0.52487, 0.77320), (2.16178, 2.43787)];

impl Viscosity {
    /// The viscosity (Pa s) at `t_k` (K) and `rho_mol_m3`, mol/m3.
    pub(super) fn at(&self, pure: &'static Pure, t_k: f64, rho_mol_m3: f64) -> Result<f64, Error> {
        match &self.form {
            ViscosityForm::Sum {
                dilute,
                initial,
                residual,
            } => {
                let thin = dilute.at(t_k);
                Ok(thin + dense(thin, *initial, residual, t_k, rho_mol_m3))
            }
            ViscosityForm::Conformal(conformal) => {
                let molar_mass = pure.fluid.equation.molar_mass;
                let thin = conformal::dilute_viscosity_pa_s(conformal.potential, molar_mass, t_k);
                let state = State::of(conformal, pure, t_k, rho_mol_m3)?;
                Ok(thin + state.viscosity_pa_s()?)
            }
        }
    }

    /// What the density adds to the viscosity (Pa s) of the dilute gas; `None` for a fluid that is no reference fluid.
    pub(super) fn added_by_density(&self, t_k: f64, rho_mol_m3: f64) -> Option<f64> {
        match &self.form {
            ViscosityForm::Sum {
                dilute,
                initial,
                residual,
            } => Some(dense(dilute.at(t_k), *initial, residual, t_k, rho_mol_m3)),
            ViscosityForm::Conformal(_) => None,
        }
    }
}

fn dense(thin: f64, initial: Option<LennardJones>, residual: &ResidualViscosity, t_k: f64, rho_mol_m3: f64) -> f64 {
    let first = initial.map_or(0.0, |potential| thin * potential.second_virial_m3_mol(t_k) * rho_mol_m3);
    first + residual.at(t_k, rho_mol_m3)
}

impl LennardJones {
    /// The second viscosity virial coefficient, m3/mol.
    fn second_virial_m3_mol(self, t_k: f64) -> f64 {
        let ln_t = ln(t_k / self.energy_k);
        let reduced: f64 = SECOND_VIRIAL.iter().map(|(b, t)| b * exp(t * ln_t)).sum();
        AVOGADRO * self.sigma_m * self.sigma_m * self.sigma_m * reduced
    }
}

/// The sine term of the same source, which some correlations leave out: a T*^b sin(c T*^d - e).
fn neufeld_sine(reduced_t: f64) -> f64 {
    let ln_t = ln(reduced_t);
    -6.435e-4 * exp(0.14874 * ln_t) * libm::sin(18.0323 * exp(-0.7683 * ln_t) - 7.27371)
}

/// The collision integral of Neufeld, Janzen & Aziz at a reduced temperature, without its sine term.
pub(super) fn neufeld(reduced_t: f64) -> f64 {
    let [(a, t), rest @ ..] = NEUFELD;
    let falling: f64 = rest.iter().map(|(a, b)| a * exp(-b * reduced_t)).sum();
    a * exp(t * ln(reduced_t)) + falling
}

impl DiluteViscosity {
    fn at(&self, t_k: f64) -> f64 {
        match self {
            Self::Collision {
                factor,
                energy_k,
                terms,
            } => {
                let ln_t = ln(t_k / energy_k);
                let ln_integral: f64 = terms.iter().map(|(a, t)| a * powi(ln_t, *t)).sum();
                factor * sqrt(t_k) * exp(-ln_integral)
            }
            Self::Neufeld { factor, energy_k } => {
                let reduced_t = t_k / energy_k;
                factor * sqrt(t_k) / (neufeld(reduced_t) + neufeld_sine(reduced_t))
            }
            Self::Ratio { numerator, denominator } => polynomial(numerator, t_k) / polynomial(denominator, t_k),
            Self::CarbonDioxide { factor, a } => {
                let cube_root = libm::cbrt(t_k);
                let below = a[0]
                    + a[1] * sqrt(cube_root)
                    + a[2] * exp(a[3] * cube_root)
                    + (a[4] + a[5] * cube_root) * exp(-cube_root)
                    + a[6] * sqrt(t_k);
                factor * sqrt(t_k) / below
            }
        }
    }
}

impl ResidualViscosity {
    fn at(&self, t_k: f64, rho_mol_m3: f64) -> f64 {
        match self {
            Self::FreeVolume {
                reducing_t_k,
                reducing_rho_mol_m3,
                terms,
                factor,
                power,
                packed,
                packed_by,
            } => {
                let (delta, t) = (rho_mol_m3 / reducing_rho_mol_m3, t_k / reducing_t_k);
                let sum = |rows: &[(f64, f64)]| -> f64 { rows.iter().map(|(n, e)| n * libm::pow(t, *e)).sum() };
                let packed = sum(packed) / sum(packed_by);
                // 1 / (delta_0 - delta) - 1 / delta_0, without the difference.
                let free = delta / (packed * (packed - delta));
                total(terms, delta, t) + factor * powi(delta, *power) * free
            }
            Self::Scaled {
                reducing_t_k,
                reducing_rho_mol_m3,
                terms,
                numerator,
                denominator,
            } => {
                let (delta, t) = (rho_mol_m3 / reducing_rho_mol_m3, t_k / reducing_t_k);
                let ratio = total(numerator, delta, t) / total(denominator, delta, t);
                let cube_root = libm::cbrt(delta);
                cube_root * cube_root * sqrt(t) * (total(terms, delta, t) + ratio)
            }
            Self::CarbonDioxide {
                triple_t_k,
                triple_rho_mol_m3,
                factor,
                gamma,
                c: [c1, c2],
            } => {
                let (delta, t) = (rho_mol_m3 / triple_rho_mol_m3, t_k / triple_t_k);
                let square = delta * delta;
                factor * (c1 * t * square * delta + (square + libm::pow(delta, *gamma)) / (t - c2))
            }
        }
    }
}

/// The sum of terms at a reduced density and temperature.
pub(super) fn total(terms: &[Term], delta: f64, t: f64) -> f64 {
    terms
        .iter()
        .map(|term| term.n * libm::pow(delta, term.d) * libm::pow(t, term.t))
        .sum()
}

/// A polynomial, lowest power first.
pub(super) fn polynomial(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

fn powi(x: f64, power: i32) -> f64 {
    libm::pow(x, f64::from(power))
}
