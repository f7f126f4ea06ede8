//! The properties of one homogeneous phase.

use super::alpha::Alpha;
use super::helmholtz::Isotherm;
use super::ideal::Alpha0;
use crate::numerics::Real;

/// Relative step of density below which a first-order correction is exact, and cp and w need no new evaluation.
const SMALL: f64 = 1e-12;
/// Relative step of density above which the density does not count as nearly right.
const LARGE: f64 = 1e-3;

/// Everything the equation says of a homogeneous phase at one temperature and density.
///
/// Energies are those of the constants in the paper; the room above shifts them to a reference state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Properties {
    /// Temperature, K.
    pub t_k: f64,
    /// Pressure, Pa.
    pub p_pa: f64,
    /// Molar density, mol/m3.
    pub rho_mol_m3: f64,
    /// Specific enthalpy, J/kg.
    pub h_j_kg: f64,
    /// Specific entropy, J/(kg K).
    pub s_j_kg_k: f64,
    /// Specific heat at constant volume, J/(kg K).
    pub cv_j_kg_k: f64,
    /// Specific heat at constant pressure, J/(kg K).
    pub cp_j_kg_k: f64,
    /// Square of the speed of sound, m2/s2; negative where the phase is mechanically unstable.
    pub w2_m2_s2: f64,
    /// (dp/dT) at constant density, Pa/K.
    pub dp_dt_pa_k: f64,
    /// (dp/drho) at constant temperature, J/mol.
    pub dp_drho_j_mol: f64,
}

impl Properties {
    /// The properties at the molar density `rho_mol_m3` on an isotherm.
    ///
    /// Source of the relations: Span, Multiparameter Equations of State (Springer 2000), table 3.9.
    pub fn new(isotherm: &Isotherm<f64>, rho_mol_m3: f64) -> Self {
        let equation = isotherm.equation();
        let t_k = isotherm.t_k();
        let residual = isotherm.residual(rho_mol_m3);
        let ideal = Alpha0::new(&equation.ideal, isotherm.tau(), isotherm.ln_tau());
        let gas = equation.gas_constant;
        let specific_gas = gas / equation.molar_mass;
        let Alpha { d, dd, dt, .. } = residual;
        let compressibility = 1.0 + d;
        let stiffness = 1.0 + 2.0 * d + dd;
        let warming = 1.0 + d - dt;
        let cv = -(ideal.tt + residual.tt);
        let cp = cv + warming * warming / stiffness;
        Self {
            t_k,
            p_pa: rho_mol_m3 * gas * t_k * compressibility,
            rho_mol_m3,
            h_j_kg: specific_gas * t_k * (compressibility + ideal.t + residual.t),
            s_j_kg_k: specific_gas * (ideal.t + residual.t - ideal.a - residual.a - isotherm.ln_delta(rho_mol_m3)),
            cv_j_kg_k: specific_gas * cv,
            cp_j_kg_k: specific_gas * cp,
            w2_m2_s2: specific_gas * t_k * (stiffness + warming * warming / cv),
            dp_dt_pa_k: rho_mol_m3 * gas * warming,
            dp_drho_j_mol: gas * t_k * stiffness,
        }
    }

    /// The properties at a pressure on an isotherm, from a density that is nearly the right one.
    ///
    /// Newton's method with all properties at every step; the last step is taken to first order, which is exact by then.
    /// Close to the critical point, where the pressure is met to rounding before the density settles, it stops there.
    pub fn at_pressure(isotherm: &Isotherm<f64>, p_pa: f64, near_mol_m3: f64) -> Self {
        let mut properties = Self::new(isotherm, near_mol_m3);
        for _ in 0..2 {
            let denser = (p_pa - properties.p_pa) / properties.dp_drho_j_mol;
            let share = libm::fabs(denser) / properties.rho_mol_m3;
            if share <= SMALL {
                return properties.moved(0.0, denser, isotherm.equation().molar_mass);
            }
            if !(share <= LARGE && properties.dp_drho_j_mol > 0.0) {
                break;
            }
            properties = Self::new(isotherm, properties.rho_mol_m3 + denser);
        }
        properties
    }

    /// Temperature, pressure, density, enthalpy and entropy a small step away, to first order in it; how the phase
    /// responds to change is left as it is.
    pub fn moved(self, warmer_k: f64, denser_mol_m3: f64, molar_mass: f64) -> Self {
        let by = |(by_t, by_rho): (f64, f64)| by_t * warmer_k + by_rho * denser_mol_m3;
        Self {
            t_k: self.t_k + warmer_k,
            rho_mol_m3: self.rho_mol_m3 + denser_mol_m3,
            p_pa: self.p_pa + by((self.dp_dt_pa_k, self.dp_drho_j_mol)),
            h_j_kg: self.h_j_kg + by(self.enthalpy_slopes(molar_mass)),
            s_j_kg_k: self.s_j_kg_k + by(self.entropy_slopes(molar_mass)),
            ..self
        }
    }

    /// The derivatives of the enthalpy by temperature at constant density, and by molar density at constant temperature.
    pub fn enthalpy_slopes(&self, molar_mass: f64) -> (f64, f64) {
        let rho = self.rho_mol_m3;
        (
            self.cv_j_kg_k + self.dp_dt_pa_k / (rho * molar_mass),
            (self.dp_drho_j_mol - self.t_k * self.dp_dt_pa_k / rho) / (rho * molar_mass),
        )
    }

    /// The same of the entropy.
    pub fn entropy_slopes(&self, molar_mass: f64) -> (f64, f64) {
        let rho = self.rho_mol_m3;
        (self.cv_j_kg_k / self.t_k, -self.dp_dt_pa_k / (rho * rho * molar_mass))
    }
}

/// Pressure (Pa), enthalpy (J/mol) and entropy (J/(mol K)), in any precision.
pub fn pressure_enthalpy_entropy<R: Real>(isotherm: &Isotherm<R>, rho_mol_m3: R) -> (R, R, R) {
    let equation = isotherm.equation();
    let residual = isotherm.residual(rho_mol_m3);
    let ideal = Alpha0::new(&equation.ideal, isotherm.tau(), isotherm.ln_tau());
    let gas = R::from_f64(equation.gas_constant);
    let rt = gas * isotherm.t_k();
    let compressibility = R::from_f64(1.0) + residual.d;
    let warmth = ideal.t + residual.t;
    (
        rho_mol_m3 * rt * compressibility,
        rt * (compressibility + warmth),
        gas * (warmth - ideal.a - residual.a - isotherm.ln_delta(rho_mol_m3)),
    )
}
