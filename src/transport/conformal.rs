//! Extended corresponding states: a fluid has the properties of its reference fluid in the conformal state.
//!
//! Source: Huber, Laesecke & Perkins 2003, Ind. Eng. Chem. Res. 42, 3163, doi 10.1021/ie0300880; the shape factors are exact, from
//! the two equations of state.

use super::correlation::{Conformal, LennardJones};
use super::viscosity::{HARD_SPHERES, neufeld};
use crate::eos::{Alpha, Isotherm};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::numerics::{exp, sqrt};
use crate::saturation::{Pure, pure};

/// Below this part of the critical density the virials of two fluids may have no common state. What density adds to the viscosity is
/// then less than 2 % (`tests/transport.rs`), and the state of equal reduced temperature and density serves.
const THIN: f64 = 0.015;
/// No step of the search changes temperature or density by more, as a difference of logarithms.
const LONGEST_STEP: f64 = 0.1;
/// A step this short ends the search.
const SETTLED: f64 = 1e-10;
const MOST_STEPS: usize = 100;

/// The viscosity (Pa s) of the dilute gas of a molar mass, kg/mol.
pub(super) fn dilute_viscosity_pa_s(potential: LennardJones, molar_mass: f64, t_k: f64) -> f64 {
    let LennardJones { sigma_m, energy_k } = potential;
    HARD_SPHERES * sqrt(1e3 * molar_mass * t_k) / (sigma_m * sigma_m * neufeld(t_k / energy_k))
}

/// The state of the reference fluid that is conformal to one of the fluid.
pub(super) struct State {
    reference: Refrigerant,
    t_k: f64,
    rho_mol_m3: f64,
    /// f^(1/2) h^(-2/3), and the ratio of the molar mass to that of the reference fluid.
    scale: f64,
    heavier: f64,
}

impl State {
    /// The state conformal to `t_k` (K) and `rho_mol_m3` (mol/m3), at which the reference fluid has the same residual Helmholtz energy
    /// over RT and the same compressibility factor; its density times the fluid's shape factor.
    ///
    /// Newton's method in the logarithms of temperature and density, from the state of equal reduced temperature and density.
    ///
    /// Errors: `NoConvergence` with the last step.
    pub(super) fn of(conformal: &Conformal, fluid: &'static Pure, t_k: f64, rho_mol_m3: f64) -> Result<Self, Error> {
        let reference = pure(conformal.reference)?;
        let (equation, other) = (&fluid.fluid.equation, &reference.fluid.equation);
        let goal = Isotherm::new(equation, t_k).residual(rho_mol_m3);
        let start = [
            t_k * reference.critical_t_k / fluid.critical_t_k,
            rho_mol_m3 * reference.critical_rho_mol_m3 / fluid.critical_rho_mol_m3,
        ];
        let [mut t0, mut rho0] = start;
        let (mut step, mut settled) = (f64::INFINITY, false);
        for _ in 0..MOST_STEPS {
            let Alpha { a, d, dd, t, dt, .. } = Isotherm::new(other, t0).residual(rho0);
            let (off_a, off_d) = (goal.a - a, goal.d - d);
            let determinant = d * dt - t * (d + dd);
            // By ln delta, and by ln tau, which falls as the temperature rises.
            let denser = ((off_a * dt - t * off_d) / determinant).clamp(-LONGEST_STEP, LONGEST_STEP);
            let colder = ((d * off_d - (d + dd) * off_a) / determinant).clamp(-LONGEST_STEP, LONGEST_STEP);
            rho0 *= exp(denser);
            t0 *= exp(-colder);
            step = libm::fabs(denser) + libm::fabs(colder);
            settled = step <= SETTLED;
            if settled {
                break;
            }
        }
        if !settled && rho_mol_m3 <= THIN * fluid.critical_rho_mol_m3 {
            [t0, rho0] = start;
        } else if !settled {
            return Err(Error::no_convergence(step, SETTLED));
        }
        let shape = super::viscosity::polynomial(conformal.shape, rho_mol_m3 / conformal.reducing_rho_mol_m3);
        let (f, h) = (t_k / t0, rho0 / rho_mol_m3);
        Ok(Self {
            reference: conformal.reference,
            t_k: t0,
            rho_mol_m3: rho0 * shape,
            scale: sqrt(f) / libm::cbrt(h * h),
            heavier: equation.molar_mass / other.molar_mass,
        })
    }

    /// What the density adds to the viscosity of the fluid, Pa s.
    pub(super) fn viscosity_pa_s(&self) -> Result<f64, Error> {
        let reference = super::of(self.reference)?;
        let added = reference
            .viscosity
            .as_ref()
            .and_then(|viscosity| viscosity.added_by_density(self.t_k, self.rho_mol_m3));
        let added = added.ok_or(Error::of(ErrorKind::NotAvailable, Quantity::Viscosity))?;
        Ok(added * self.scale * sqrt(self.heavier))
    }

    /// What the density adds to the conductivity of the fluid, W/(m K), the enhancement about the critical point apart.
    pub(super) fn conductivity_w_m_k(&self) -> Result<f64, Error> {
        let reference = super::of(self.reference)?;
        let added = reference
            .conductivity
            .as_ref()
            .and_then(|conductivity| conductivity.added_by_density(self.t_k, self.rho_mol_m3));
        let added = added.ok_or(Error::of(ErrorKind::NotAvailable, Quantity::Conductivity))?;
        Ok(added * self.scale / sqrt(self.heavier))
    }
}
