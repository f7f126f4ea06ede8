//! The density of a gas in a closed volume.

use crate::eos::{Isotherm, density_mol_m3};
use crate::error::Error;
use crate::fluid::{Equation, gases_of_air};
use crate::names::Refrigerant;
use crate::saturation;

/// Gas constant, J/(mol K); a start for the search alone.
const GAS_J_MOL_K: f64 = 8.314_462_618_153_24;

/// What the circuit is filled with while its pressure is watched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DecayGas {
    /// Dry nitrogen.
    Nitrogen,
    /// Vapour of a pure refrigerant, without liquid.
    Vapour(Refrigerant),
}

impl DecayGas {
    pub(super) fn equation(self) -> Result<&'static Equation, Error> {
        match self {
            DecayGas::Nitrogen => Ok(&gases_of_air()[0].equation),
            DecayGas::Vapour(refrigerant) => Ok(&saturation::pure(refrigerant)?.fluid.equation),
        }
    }

    /// Saturation pressure at a temperature with its slope; `None` where there is no liquid at any pressure.
    pub(super) fn saturation_pa(self, t_k: f64) -> Result<Option<(f64, f64)>, Error> {
        let DecayGas::Vapour(refrigerant) = self else {
            return Ok(None);
        };
        let pure = saturation::pure(refrigerant)?;
        if t_k >= pure.critical_t_k {
            return Ok(None);
        }
        Ok(Some((pure.pressure_pa(t_k)?, pure.slope_pa_k(t_k)?)))
    }

    /// Density of the gas, kg/m3.
    pub(super) fn density_kg_m3(self, t_k: f64, p_pa: f64) -> Result<f64, Error> {
        let equation = self.equation()?;
        let ideal = p_pa / (GAS_J_MOL_K * t_k);
        let highest = match self {
            DecayGas::Nitrogen => 2.0 * ideal,
            DecayGas::Vapour(refrigerant) => {
                let pure = saturation::pure(refrigerant)?;
                if t_k < pure.critical_t_k {
                    // A hair beyond the line, so that a step of the derivative across it has an answer.
                    1.01 * pure.vapour(t_k)?.rho_mol_m3
                } else {
                    10.0 * ideal
                }
            }
        };
        let rho = density_mol_m3(&Isotherm::new(equation, t_k), p_pa, ideal.min(highest), 0.0, highest)?;
        Ok(rho * equation.molar_mass)
    }
}
