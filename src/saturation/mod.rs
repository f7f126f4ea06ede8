//! Where liquid and vapour meet: bubble and dew curves in both directions, and the phase of a state.
//!
//! Bubble (boiling begins, liquid side) and dew (condensing begins, vapour side) exist for every refrigerant. For a
//! pure one they are one line; for a blend they are two. Superheat is measured from dew, subcooling from bubble.

mod accuracy;
mod arrays;
mod blend;
mod blend_energy;
mod blend_given;
mod blend_hs;
mod blend_model;
mod blend_newton;
mod blend_state;
mod by_name;
mod charge;
mod effort;
mod evaporating;
mod line;
mod metastable;
mod newton_step;
pub(crate) mod pseudo_critical;
mod pure;
mod refrigerant;
mod start;
mod state;
mod state_hs;
mod state_ph;
pub(crate) mod tables;

pub use arrays::{Unanswered, bubble_pressures_pa, bubble_temperatures_k, dew_pressures_pa, dew_temperatures_k};
pub use blend::{Blend, Boundary, Part};
pub use by_name::{blend, pure};
pub use charge::{Charge, PhaseSplit, Remainder, Shares};
pub use line::Line;
pub(crate) use pure::Offset;
pub use pure::{Pure, SaturatedPhase};
pub use state::{Response, State};
pub use tables::line_of;

pub use crate::fluid::{Facts, Flammability, Sourced, Warming};
pub use crate::mixture::{MOST_COMPONENTS, Side};

use crate::error::Error;
use crate::names::Refrigerant;

/// The pressure (Pa) at which the last liquid boils away at `t_k`, K.
///
/// Errors: `NotFinite`; `OutOfRange` below the lowest temperature of the equation and above the critical point.
pub fn dew_pressure_pa(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    line_of(refrigerant).pressure_pa(Side::Dew, t_k)
}

/// The pressure (Pa) at which the liquid begins to boil at `t_k`, K.
///
/// Errors: as [`dew_pressure_pa`].
pub fn bubble_pressure_pa(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    line_of(refrigerant).pressure_pa(Side::Bubble, t_k)
}

/// The temperature (K) at which the vapour begins to condense at `p_pa`, Pa.
///
/// Errors: `NotFinite`; `OutOfRange` below the saturation pressure of the lowest temperature and above the critical
/// pressure.
pub fn dew_temperature_k(refrigerant: Refrigerant, p_pa: f64) -> Result<f64, Error> {
    line_of(refrigerant).temperature_k(Side::Dew, p_pa)
}

/// The temperature (K) at which the liquid begins to boil at `p_pa`, Pa.
///
/// Errors: as [`dew_temperature_k`].
pub fn bubble_temperature_k(refrigerant: Refrigerant, p_pa: f64) -> Result<f64, Error> {
    line_of(refrigerant).temperature_k(Side::Bubble, p_pa)
}

/// The slope dp/dT (Pa/K) of the dew line at `t_k`, K.
///
/// Errors: as [`dew_pressure_pa`].
pub fn slope_pa_k(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    line_of(refrigerant).slope_pa_k(Side::Dew, t_k)
}

/// The slope dp/dT (Pa/K) of the bubble line at `t_k`, K.
///
/// Errors: as [`dew_pressure_pa`].
pub fn bubble_slope_pa_k(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    line_of(refrigerant).slope_pa_k(Side::Bubble, t_k)
}

/// The glide (K): how much warmer the dew point is than the bubble point at `p_pa`, Pa; 0 for a pure fluid.
///
/// Errors: as [`dew_temperature_k`].
pub fn glide_k(refrigerant: Refrigerant, p_pa: f64) -> Result<f64, Error> {
    Ok(dew_temperature_k(refrigerant, p_pa)? - bubble_temperature_k(refrigerant, p_pa)?)
}

/// The heat (J/kg) that boils liquid into vapour at `t_k`, K.
///
/// Errors: as [`dew_pressure_pa`].
pub fn latent_heat_j_kg(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    line_of(refrigerant).latent_heat_j_kg(t_k)
}
