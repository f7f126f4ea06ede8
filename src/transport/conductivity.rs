//! The thermal conductivity of a homogeneous phase.

use super::conformal::{self, State};
use super::correlation::{Conductivity, ConductivityForm, CriticalEnhancement, DiluteConductivity};
use super::viscosity::{polynomial, total};
use crate::eos::{Alpha0, Isotherm};
use crate::error::Error;
use crate::numerics::{exp, sqrt};
use crate::saturation::{Pure, Response};
use core::f64::consts::PI;

/// Boltzmann constant, J/K: exact by the definition of the kelvin.
const BOLTZMANN: f64 = 1.380_649e-23;

impl Conductivity {
    /// The thermal conductivity (W/(m K)) at `t_k` (K) and `rho_mol_m3` (mol/m3), with the response of the phase and its
    /// viscosity, Pa s.
    pub(super) fn at(
        &self,
        pure: &'static Pure,
        (t_k, rho_mol_m3): (f64, f64),
        response: &Response,
        viscosity_pa_s: f64,
    ) -> Result<f64, Error> {
        let background = match &self.form {
            ConductivityForm::Sum { dilute, .. } => {
                dilute.at(t_k) + self.added_by_density(t_k, rho_mol_m3).unwrap_or(0.0)
            }
            ConductivityForm::Conformal { conformal, internal } => {
                let equation = &pure.fluid.equation;
                let thin = conformal::dilute_viscosity_pa_s(conformal.potential, equation.molar_mass, t_k);
                let isotherm = Isotherm::new(equation, t_k);
                let ideal = Alpha0::new(&equation.ideal, isotherm.tau(), isotherm.ln_tau());
                // cp0 / R - 5/2, the internal part of the heat capacity.
                let inside = -ideal.tt - 1.5;
                // Eucken: 15/4 R for translation, f_int for the rest.
                let carried = 3.75 + polynomial(internal, t_k) * inside;
                let state = State::of(conformal, pure, t_k, rho_mol_m3)?;
                equation.gas_constant / equation.molar_mass * thin * carried + state.conductivity_w_m_k()?
            }
        };
        let enhancement = self.critical.at(pure, (t_k, rho_mol_m3), response, viscosity_pa_s);
        Ok(background + enhancement)
    }

    /// What the density adds to the conductivity (W/(m K)) of the dilute gas; `None` for a fluid that is no reference fluid.
    pub(super) fn added_by_density(&self, t_k: f64, rho_mol_m3: f64) -> Option<f64> {
        match &self.form {
            ConductivityForm::Sum {
                reducing_t_k,
                reducing_rho_mol_m3,
                terms,
                ..
            } => Some(total(terms, rho_mol_m3 / reducing_rho_mol_m3, t_k / reducing_t_k)),
            ConductivityForm::Conformal { .. } => None,
        }
    }
}

impl DiluteConductivity {
    fn at(&self, t_k: f64) -> f64 {
        match self {
            Self::Polynomial { reducing_t_k, a } => polynomial(a, t_k / reducing_t_k),
            Self::Inverse { reducing_t_k, l } => sqrt(t_k / reducing_t_k) / polynomial(l, reducing_t_k / t_k),
        }
    }
}

impl CriticalEnhancement {
    /// The enhancement, W/(m K): rho cp R_0 k T / (6 pi eta xi) (Omega - Omega_0).
    ///
    /// Source: Olchowy & Sengers 1989, Int. J. Thermophys. 10, 417, doi 10.1007/BF01133538; the form is that of Perkins & Huber 2011,
    /// doi 10.1021/je200811n.
    fn at(&self, pure: &Pure, (t_k, rho): (f64, f64), response: &Response, viscosity_pa_s: f64) -> f64 {
        let equation = &pure.fluid.equation;
        let critical_rho = equation.reducing_rho_mol_m3;
        let (_, unenhanced) = Isotherm::new(equation, self.reference_t_k).pressure_pa(rho);
        let above = 1.0 / response.dp_drho_j_mol - self.reference_t_k / t_k / unenhanced;
        let susceptibility = pure.critical_p_pa * rho / (critical_rho * critical_rho) * above;
        if susceptibility <= 0.0 {
            return 0.0;
        }
        let length_m = self.length_m * libm::pow(susceptibility / self.susceptibility, self.nu / self.gamma);
        let reach = self.cut_off_1_m * length_m;
        let heats = response.cv.j_kg_k() / response.cp.j_kg_k();
        let closeness = critical_rho / rho;
        let background = 1.0 / (1.0 / reach + reach * reach * closeness * closeness / 3.0);
        let crossover = (1.0 - heats) * libm::atan(reach) + heats * reach - (1.0 - exp(-background));
        let heat = rho * equation.molar_mass * response.cp.j_kg_k();
        let diffusion = self.amplitude * BOLTZMANN * t_k / (6.0 * PI * viscosity_pa_s * length_m);
        heat * diffusion * (2.0 / PI) * crossover
    }
}
