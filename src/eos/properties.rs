//! The properties of one homogeneous phase.

use super::helmholtz::{Alpha, Isotherm};
use super::ideal::Alpha0;
use crate::numerics::Real;

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
        let ideal = Alpha0::new(&equation.ideal, isotherm.tau());
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
}

/// Pressure (Pa), enthalpy (J/mol) and entropy (J/(mol K)), in any precision.
pub fn pressure_enthalpy_entropy<R: Real>(isotherm: &Isotherm<R>, rho_mol_m3: R) -> (R, R, R) {
    let equation = isotherm.equation();
    let residual = isotherm.residual(rho_mol_m3);
    let ideal = Alpha0::new(&equation.ideal, isotherm.tau());
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
