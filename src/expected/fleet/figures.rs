//! The figures of a sound vehicle that have bands.

use crate::error::Error;
use crate::names::Refrigerant;
use crate::saturation::pseudo_critical;
use crate::vehicle::Simulation;

/// How many figures have bands; the last [`CLUTCH_FIGURES`] of them only where a clutch cycles.
pub(super) const FIGURES: usize = 10;
/// How many of them are of a cycling clutch.
const CLUTCH_FIGURES: usize = 4;
/// How many figures a system has whose clutch does not cycle.
pub(super) const STEADY_FIGURES: usize = FIGURES - CLUTCH_FIGURES;

pub(super) const LOW_SIDE: usize = 0;
pub(super) const HIGH_SIDE: usize = 1;
pub(super) const VENT: usize = 2;
pub(super) const SUPERHEAT: usize = 3;
pub(super) const SUBCOOLING: usize = 4;
pub(super) const DISCHARGE_SUPERHEAT: usize = 5;
pub(super) const CYCLES: usize = 6;
pub(super) const OPENS: usize = 7;
pub(super) const CLOSES: usize = 8;
pub(super) const ENGAGED: usize = 9;

/// What a simulated vehicle shows, each figure in the space in which the bands of the fleet are stated.
///
/// In this order: saturation temperatures of the low side and of the high side (mean over the cycles of a clutch), K;
/// vent, K; superheat at the compressor, subcooling in the liquid line and discharge superheat, K; ln(1 + clutch
/// engagements per minute); saturation temperatures of the low side when the clutch opens and when it closes, and of the
/// high side when it opens, K. Where the clutch stays engaged the last three repeat the means.
///
/// Above the critical pressure of R-744 the pseudo-critical temperature stands for that of saturation.
///
/// Errors: `OutOfRange` for a pressure off the saturation line.
///
/// ```
/// use coldloop::expected::simulated_figures;
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let car = Vehicle::typical(system, VehicleClass::Car)?;
/// let mild = simulate(&car, &Conditions::new(celsius(20.0), Surroundings::SEA_LEVEL), &[])?;
/// let figures = simulated_figures(Refrigerant::R134a, &mild)?;
/// assert!(figures[7] < figures[0] && figures[0] < figures[8]); // the low side swings about its mean
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn simulated_figures(refrigerant: Refrigerant, simulation: &Simulation) -> Result<[f64; FIGURES], Error> {
    let dew_k = |p_pa: f64| pseudo_critical::along_k(refrigerant, p_pa);
    let (low_k, high_k) = (dew_k(simulation.low_side_pa)?, dew_k(simulation.high_side_pa)?);
    let (opens_k, closes_k, engaged_k) = match simulation.swing {
        Some(swing) => (
            dew_k(swing.low_side_pa.0)?,
            dew_k(swing.low_side_pa.1)?,
            dew_k(swing.high_side_pa.1)?,
        ),
        None => (low_k, low_k, high_k),
    };
    let beyond = pseudo_critical::slope_k_pa(refrigerant, simulation.high_side_pa).is_some();
    Ok([
        low_k,
        high_k,
        simulation.vent_k,
        simulation.suction_line_k - low_k,
        if beyond {
            high_k - simulation.liquid_line_k
        } else {
            simulation.subcooling_k
        },
        simulation.discharge_line_k - high_k,
        libm::log1p(60.0 * simulation.clutch_cycles_hz),
        opens_k,
        closes_k,
        engaged_k,
    ])
}
