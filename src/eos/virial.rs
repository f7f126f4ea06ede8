//! The equation in a thin gas: p = rho R T (1 + B rho + C rho^2 + ...).

use super::helmholtz::Isotherm;

/// Reduced density that is taken as zero: the error of B is below rounding.
const THIN: f64 = 1e-16;
/// The same for C, whose terms cancel against 1: rounding and truncation are both about 1e-8.
const LESS_THIN: f64 = 1e-8;

impl Isotherm<f64> {
    /// The second virial coefficient B, m3/mol.
    ///
    /// B = alpha_delta / rho_r at zero density. Source: Span, Multiparameter Equations of State (Springer 2000), table 3.9.
    pub fn second_virial_m3_mol(&self) -> f64 {
        let rho = THIN * self.equation().reducing_rho_mol_m3;
        self.density_slopes(rho).0 / rho
    }

    /// The third virial coefficient C, m6/mol2, to about 1e-7 of its terms.
    ///
    /// C = alpha_delta_delta / rho_r^2 at zero density. Source: as [`Isotherm::second_virial_m3_mol`].
    pub fn third_virial_m6_mol2(&self) -> f64 {
        let rho = LESS_THIN * self.equation().reducing_rho_mol_m3;
        self.density_slopes(rho).1 / (rho * rho)
    }
}
