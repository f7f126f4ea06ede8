//! The properties of one homogeneous phase of a mixture.

use super::density::Root;
use super::incipient::{filled, pi_by_ln_rho};
use super::phase::{Mixture, PhaseProperties, Vector};
use super::search::Side;
use crate::eos::{Alpha0, Properties};
use crate::error::Error;
use crate::numerics::GAS_J_MOL_K;

impl Mixture<f64> {
    /// Molar mass (kg/mol) of amounts per volume or of mole fractions.
    pub fn molar_mass(&self, rho: &Vector<f64>) -> f64 {
        let (mut mass, mut moles) = (0.0, 0.0);
        for (component, rho) in self.components().iter().zip(rho) {
            mass += component.fluid.equation.molar_mass * rho;
            moles += rho;
        }
        mass / moles
    }

    /// The properties of a phase of these amounts per volume (mol/m3) at `t_k`, K; energies with the constants of the
    /// components' papers.
    ///
    /// Source of the relations: Span, Multiparameter Equations of State (Springer 2000), table 3.9.
    pub fn properties(&self, t_k: f64, rho: &Vector<f64>) -> Properties {
        let phase = self.phase(t_k, rho);
        self.properties_of(t_k, rho, &phase)
    }

    fn properties_of(&self, t_k: f64, rho: &Vector<f64>, phase: &PhaseProperties<f64>) -> Properties {
        let n = self.components().len();
        let total = phase.rho_mol_m3;
        let molar_mass = self.molar_mass(rho);
        let (h, s) = self.enthalpy_entropy(t_k, rho, phase);
        let mut cv = -GAS_J_MOL_K * phase.warmth_slope;
        for (component, rho) in self.components().iter().zip(rho) {
            let equation = &component.fluid.equation;
            let tau = equation.reducing_t_k / t_k;
            let ideal = Alpha0::new(&equation.ideal, tau, crate::numerics::ln(tau));
            cv -= rho / total * equation.gas_constant * ideal.tt;
        }
        let stiffness = pi_by_ln_rho(n, rho, phase)[..n].iter().sum::<f64>() / total;
        let dp_drho = GAS_J_MOL_K * t_k * stiffness;
        let dp_dt = GAS_J_MOL_K * (phase.pi + phase.pi_by_ln_t);
        let warming = t_k * (dp_dt / total) * (dp_dt / total);
        Properties {
            t_k,
            p_pa: phase.pi * GAS_J_MOL_K * t_k,
            rho_mol_m3: total,
            h_j_kg: h / molar_mass,
            s_j_kg_k: s / molar_mass,
            cv_j_kg_k: cv / molar_mass,
            cp_j_kg_k: (cv + warming / dp_drho) / molar_mass,
            w2_m2_s2: (dp_drho + warming / cv) / molar_mass,
            dp_dt_pa_k: dp_dt,
            dp_drho_j_mol: dp_drho,
        }
    }

    /// The properties of one phase of the mole fractions `z` at a temperature (K) and pressure (Pa): as liquid for
    /// [`Side::Bubble`], as vapour for [`Side::Dew`], whether or not it is stable there.
    ///
    /// Errors: `NoConvergence` where there is no such phase.
    pub fn one_phase(&self, z: &[f64], t_k: f64, p_pa: f64, side: Side) -> Result<Properties, Error> {
        let root = match side {
            Side::Bubble => Root::Dense,
            Side::Dew => Root::Thin,
        };
        let found = self.homogeneous(z, t_k, p_pa, root);
        let found = found.ok_or(Error::no_convergence(f64::INFINITY, 0.0))?;
        let rho = filled(z, found.rho_mol_m3);
        Ok(self.properties_of(t_k, &rho, &found.phase))
    }
}
