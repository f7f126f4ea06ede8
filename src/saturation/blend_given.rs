//! The energy that is given together with the pressure of a blend.

use super::blend::Blend;
use super::state::State;
use crate::names::Quantity;
use crate::numerics::GAS_J_MOL_K;

/// What is given together with the pressure.
#[derive(Clone, Copy, Debug)]
pub(super) enum Given {
    Enthalpy,
    Entropy,
}

impl Given {
    pub(super) const fn of(self, state: &State) -> f64 {
        match self {
            Given::Enthalpy => state.h_j_kg,
            Given::Entropy => state.s_j_kg_k,
        }
    }

    /// The size of such an energy: R T / M, R / M.
    pub(super) fn size(self, blend: &Blend) -> f64 {
        match self {
            Given::Enthalpy => GAS_J_MOL_K * blend.critical_t_k / blend.molar_mass,
            Given::Entropy => GAS_J_MOL_K / blend.molar_mass,
        }
    }

    pub(super) const fn quantity(self) -> Quantity {
        match self {
            Given::Enthalpy => Quantity::Enthalpy,
            Given::Entropy => Quantity::Entropy,
        }
    }
}
