//! The density of a gas in a closed volume.

use crate::eos::{Isotherm, density_mol_m3};
use crate::error::Error;
use crate::fluid::{Equation, gases_of_air};
use crate::mixture::{MOST_COMPONENTS, Side};
use crate::names::Refrigerant;
use crate::numerics::GAS_J_MOL_K;
use crate::saturation::{self, Blend, Line, Pure};

/// What the circuit is filled with while its pressure is watched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum DecayGas {
    /// Dry nitrogen.
    Nitrogen,
    /// Vapour of a refrigerant, pure or a blend, without liquid.
    Vapour(Refrigerant),
}

impl DecayGas {
    /// Saturation pressure at a temperature with its slope, of a blend at dew; `None` where there is no liquid at any
    /// pressure.
    pub(super) fn saturation_pa(self, t_k: f64) -> Result<Option<(f64, f64)>, Error> {
        let DecayGas::Vapour(refrigerant) = self else {
            return Ok(None);
        };
        let line = saturation::line_of(refrigerant);
        if t_k >= line.critical_t_k() {
            return Ok(None);
        }
        Ok(Some((
            line.pressure_pa(Side::Dew, t_k)?,
            line.slope_pa_k(Side::Dew, t_k)?,
        )))
    }

    /// Density of the gas, kg/m3.
    pub(super) fn density_kg_m3(self, t_k: f64, p_pa: f64) -> Result<f64, Error> {
        let ideal = p_pa / (GAS_J_MOL_K * t_k);
        match self {
            DecayGas::Nitrogen => density_kg_m3(nitrogen(), t_k, p_pa, 2.0 * ideal),
            DecayGas::Vapour(refrigerant) => match saturation::line_of(refrigerant) {
                Line::Pure(pure) => {
                    let highest = if t_k < pure.critical_t_k {
                        // Slightly beyond the line, so that a step of the derivative across it has a result.
                        1.01 * pure.vapour(t_k)?.rho_mol_m3
                    } else {
                        10.0 * ideal
                    };
                    density_kg_m3(&pure.fluid.equation, t_k, p_pa, highest)
                }
                Line::Blend(blend) => {
                    let (mixture, z) = blend.mixture()?;
                    let found = mixture.one_phase(&z[..blend.parts.len()], t_k, p_pa, Side::Dew)?;
                    Ok(found.rho_mol_m3 * blend.molar_mass)
                }
            },
        }
    }

    /// Pressure at a density, Pa; dew or saturation pressure where it condenses.
    pub(super) fn pressure_pa(self, t_k: f64, rho_kg_m3: f64) -> Result<f64, Error> {
        let saturation_pa = self.saturation_pa(t_k)?.map(|(p_pa, _)| p_pa);
        match self {
            DecayGas::Nitrogen => Ok(pressure_pa(nitrogen(), t_k, rho_kg_m3)),
            DecayGas::Vapour(refrigerant) => match saturation::line_of(refrigerant) {
                Line::Pure(pure) => {
                    let condenses = t_k < pure.critical_t_k && rho_kg_m3 > dew_kg_m3(pure, t_k)?;
                    let p_pa = pressure_pa(&pure.fluid.equation, t_k, rho_kg_m3);
                    Ok(saturation_pa.filter(|_| condenses).unwrap_or(p_pa))
                }
                Line::Blend(blend) => {
                    let p_pa = blend_pa(blend, t_k, rho_kg_m3)?;
                    // The pressure of vapour rises with density up to dew and a little beyond; above that it condenses at dew
                    // pressure.
                    match saturation_pa {
                        Some(dew_pa) => {
                            let dew_kg_m3 = self.density_kg_m3(t_k, dew_pa)?;
                            Ok(if rho_kg_m3 > dew_kg_m3 { dew_pa } else { p_pa })
                        }
                        None => Ok(p_pa),
                    }
                }
            },
        }
    }
}

fn nitrogen() -> &'static Equation {
    &gases_of_air()[0].equation
}

fn density_kg_m3(equation: &'static Equation, t_k: f64, p_pa: f64, highest: f64) -> Result<f64, Error> {
    let ideal = p_pa / (GAS_J_MOL_K * t_k);
    let rho = density_mol_m3(&Isotherm::new(equation, t_k), p_pa, ideal.min(highest), 0.0, highest)?;
    Ok(rho * equation.molar_mass)
}

fn pressure_pa(equation: &'static Equation, t_k: f64, rho_kg_m3: f64) -> f64 {
    Isotherm::new(equation, t_k)
        .pressure_pa(rho_kg_m3 / equation.molar_mass)
        .0
}

fn dew_kg_m3(pure: &Pure, t_k: f64) -> Result<f64, Error> {
    Ok(pure.vapour(t_k)?.rho_mol_m3 * pure.fluid.equation.molar_mass)
}

fn blend_pa(blend: &'static Blend, t_k: f64, rho_kg_m3: f64) -> Result<f64, Error> {
    let (mixture, z) = blend.mixture()?;
    let mut rho = [1.0; MOST_COMPONENTS];
    for (rho, z) in rho.iter_mut().zip(&z[..blend.parts.len()]) {
        *rho = z * rho_kg_m3 / blend.molar_mass;
    }
    Ok(mixture.properties(t_k, &rho).p_pa)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What is more than vapour can hold condenses: the pressure stays that of dew, and below it is lower.
    #[test]
    fn a_blend_condenses_at_its_dew_pressure() {
        let gas = DecayGas::Vapour(Refrigerant::R407C);
        let (dew_pa, _) = gas.saturation_pa(300.0).unwrap().unwrap();
        let dew = gas.density_kg_m3(300.0, dew_pa).unwrap();
        assert_eq!(gas.pressure_pa(300.0, 1.02 * dew).unwrap(), dew_pa);
        assert!(gas.pressure_pa(300.0, 0.98 * dew).unwrap() < dew_pa);
    }
    /// A gas above its critical temperature has a density at any pressure: carbon dioxide at 40 °C and 1 MPa has 17.669 kg/m3.
    /// Source: Span & Wagner 1996 through CoolProp.
    #[test]
    fn a_gas_beyond_its_critical_point_has_a_density() {
        let gas = DecayGas::Vapour(Refrigerant::R744);
        let rho = gas.density_kg_m3(313.15, 1e6).unwrap();
        assert!(libm::fabs(rho / 17.669_21 - 1.0) < 1e-5, "{rho}");
    }
}
