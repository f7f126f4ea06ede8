//! What flows through the same leak of two gases at two pressures.
//!
//! The shape of a leak is unknown. In a long fine crack viscosity limits the flow (Poiseuille: the mass flow is proportional to
//! rho/p (p^2 - p_air^2) / mu), in a short hole inertia does (Saint-Venant & Wantzel: sqrt(p rho) times a function of the
//! isentropic exponent, choked below the critical pressure ratio). True leaks lie between the two; both are given.

use super::gas::DecayGas;
use crate::error::Error;
use crate::names::{ErrorKind, Reference, Refrigerant};
use crate::numerics::sqrt;
use crate::saturation;
use crate::transport;

/// Viscosity of a gas, Pa s.
///
/// Source: the correlations of `transport`; nitrogen near 25 °C, Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21; a refrigerant without a
/// correlation, or outside its limits, near 25 °C, from memory of tables, within 15 %.
fn viscosity_pa_s(gas: DecayGas, t_k: f64, p_pa: f64) -> Result<f64, Error> {
    if let DecayGas::Vapour(refrigerant) = gas
        && transport::of(refrigerant).is_ok()
    {
        let state = saturation::line_of(refrigerant).state_tp(t_k, p_pa, Reference::Iir)?;
        match transport::viscosity_pa_s(refrigerant, &state) {
            Err(error) if error.kind == ErrorKind::OutOfRange => {}
            found => return found,
        }
    }
    Ok(match gas {
        DecayGas::Nitrogen => 17.8e-6,
        DecayGas::Vapour(Refrigerant::R744) => 14.9e-6,
        DecayGas::Vapour(Refrigerant::R290 | Refrigerant::R600 | Refrigerant::R600a) => 8.0e-6,
        DecayGas::Vapour(_) => 12.0e-6,
    })
}

/// Isentropic exponent of a gas near 25 °C. Source: from memory of tables.
const fn exponent(gas: DecayGas) -> f64 {
    match gas {
        DecayGas::Nitrogen => 1.40,
        DecayGas::Vapour(Refrigerant::R744) => 1.30,
        DecayGas::Vapour(Refrigerant::R290 | Refrigerant::R600 | Refrigerant::R600a) => 1.12,
        DecayGas::Vapour(_) => 1.11,
    }
}

/// A gas before a leak into the air.
#[derive(Clone, Copy)]
pub(super) struct Before {
    gas: DecayGas,
    p_pa: f64,
    rho_kg_m3: f64,
    mu_pa_s: f64,
}

impl Before {
    pub(super) fn of(gas: DecayGas, t_k: f64, p_pa: f64) -> Result<Self, Error> {
        let rho_kg_m3 = gas.density_kg_m3(t_k, p_pa)?;
        let mu_pa_s = viscosity_pa_s(gas, t_k, p_pa)?;
        Ok(Self {
            gas,
            p_pa,
            rho_kg_m3,
            mu_pa_s,
        })
    }

    /// The refrigerant of a vehicle at rest, vapour over liquid; `None` where it does not condense.
    pub(super) fn at_rest(refrigerant: Refrigerant, t_k: f64) -> Result<Option<Self>, Error> {
        let gas = DecayGas::Vapour(refrigerant);
        let Some((p_pa, _)) = gas.saturation_pa(t_k)? else {
            return Ok(None);
        };
        Self::of(gas, t_k, DRY * p_pa).map(Some)
    }

    /// Mass flows through one crack and through one hole, each in a unit of its own.
    fn flows(&self, air_pa: f64) -> [f64; 2] {
        let exponent = exponent(self.gas);
        let crack = self.rho_kg_m3 / self.p_pa * (self.p_pa * self.p_pa - air_pa * air_pa) / self.mu_pa_s;
        let critical = libm::pow(2.0 / (exponent + 1.0), exponent / (exponent - 1.0));
        let ratio = f64::max(air_pa / self.p_pa, critical);
        let swing = libm::pow(ratio, 2.0 / exponent) - libm::pow(ratio, (exponent + 1.0) / exponent);
        let hole = sqrt(self.p_pa * self.rho_kg_m3 * 2.0 * exponent / (exponent - 1.0) * swing);
        [crack, hole]
    }

    /// What flows of the other gas for each kilogram of this one: the smaller and the larger of crack and hole. `None` where
    /// one of the two pressures is not above that of the air.
    pub(super) fn other_for_this(&self, other: &Self, air_pa: f64) -> Option<(f64, f64)> {
        if self.p_pa <= air_pa || other.p_pa <= air_pa {
            return None;
        }
        let ([crack, hole], [other_crack, other_hole]) = (self.flows(air_pa), other.flows(air_pa));
        let (crack, hole) = (other_crack / crack, other_hole / hole);
        Some((f64::min(crack, hole), f64::max(crack, hole)))
    }
}

/// Vapour at rest is taken at this share of its saturation pressure, where only vapour exists.
const DRY: f64 = 1.0 - 1e-6;
