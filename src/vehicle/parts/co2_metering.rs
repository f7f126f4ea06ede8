//! The expansion devices of an R-744 system.
//!
//! An electronic valve holds the high side at the pressure of the best coefficient of performance. A fixed orifice lets the
//! high side find its own pressure, with a bypass that opens before the protection stops the compressor.

use super::expansion::{Metered, Orifice, SEAT, Upstream, root};
use super::smooth::{positive, ramp};
use crate::error::Error;
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// Rounding of the corners of the valve's control, per its opening; and of those of its aim, Pa and K. Judgement.
const SOFTNESS: f64 = 0.02;
const AIM_SOFTNESS_PA: f64 = 1e5;
const AIM_SOFTNESS_K: f64 = 0.5;
/// Subcooling that the valve leaves before it in mild weather, below the critical pressure, K. Judgement.
const SUBCOOLING_K: f64 = 4.0;
/// How near to the critical temperature condensation is still aimed at, K. Judgement.
const SHORT_OF_CRITICAL_K: f64 = 0.5;

/// An electronic expansion valve that holds the high side.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Electronic {
    /// Flow area when fully open, m2.
    pub area_m2: f64,
    /// Smallest opening (stuck open), 0 to 1.
    pub least: f64,
    /// Largest opening (stuck closed), 0 to 1.
    pub most: f64,
}

/// The opening below which the valve's control does not go. Judgement.
const BLEED: f64 = 0.12;

impl Electronic {
    /// Flow fully open, kg/s.
    pub(in crate::vehicle) fn full_kg_s(&self, upstream: &Upstream<'_>, p_pa: f64) -> f64 {
        SEAT * self.area_m2 * root(2.0 * upstream.rho_kg_m3, p_pa - upstream.downstream_pa)
    }

    /// Residual of the valve's control, and its opening: the high side is held at `set_pa`, or the valve is at the nearer end
    /// of its range.
    pub(in crate::vehicle) fn residual(&self, high_pa: f64, set_pa: f64, flow_kg_s: f64, full_kg_s: f64) -> Metered {
        let most = self.most.max(BLEED);
        let least = self.least.clamp(BLEED, most);
        let opening = (flow_kg_s / full_kg_s).clamp(least, most);
        let wish = libm::log(high_pa / set_pa);
        let most_open = libm::log(full_kg_s * most / flow_kg_s);
        let least_open = libm::log(full_kg_s * least / flow_kg_s);
        let held = most_open - positive(most_open - wish, SOFTNESS);
        Metered {
            residual: least_open + positive(held - least_open, SOFTNESS),
            opening,
        }
    }
}

/// Slope of the pseudo-critical line, which continues the saturation line above the critical temperature, Pa/K. Source: Liao &
/// Zhao 2002 as in `working_fluid`, between 74 and 100 bar.
const PSEUDO_PA_K: f64 = 0.187e6;
/// Highest pressure in the throat of an orifice per that before it: of liquid that enters at saturation, and of gas. Source:
/// as for R-134a (Kim, O'Neal & Yuan 1994 without subcooling); judgement for gas.
const THROAT: f64 = 0.84;
/// Rounding of that corner, per the pressure before the orifice.
const THROAT_SOFTNESS: f64 = 0.02;
/// High-side pressures over which a bypass about the orifice opens, Pa absolute, and its area per that of the orifice.
/// Judgement: from memory of valves with a spring beside the bore, which open near 11 to 12 MPa.
const BYPASS_OPENS_PA: f64 = 11.3e6;
const BYPASS_OPEN_PA: f64 = 12.8e6;
const BYPASS: f64 = 1.0;
const BYPASS_SOFTNESS: f64 = 0.08;

/// Flow through a fixed orifice with a bypass, kg/s: `A sqrt(2 rho (p1 - pt))`, choked at a pressure `pt` in the throat at
/// which the dense fluid begins to boil, taken as that of saturation (above the critical temperature, of the pseudo-critical
/// line) at the temperature before it.
///
/// Errors: those of the properties.
pub(in crate::vehicle) fn orifice_kg_s(
    orifice: &Orifice,
    fluid: &WorkingFluid,
    upstream: &Upstream<'_>,
) -> Result<f64, Error> {
    let p_pa = upstream.saturation.p_pa;
    let critical_k = fluid.critical().t_k;
    let boils_pa = fluid.bubble_pa(upstream.t_k)? + PSEUDO_PA_K * (upstream.t_k - critical_k).max(0.0);
    let most_pa = THROAT * p_pa;
    let throat_pa = most_pa - positive(most_pa - boils_pa, THROAT_SOFTNESS * p_pa);
    let back_pa = upstream.downstream_pa + positive(throat_pa - upstream.downstream_pa, THROAT_SOFTNESS * p_pa);
    let bypass = BYPASS
        * ramp(
            (p_pa - BYPASS_OPENS_PA) / (BYPASS_OPEN_PA - BYPASS_OPENS_PA),
            BYPASS_SOFTNESS,
        );
    let bore_m2 = 0.25 * core::f64::consts::PI * orifice.diameter_m * orifice.diameter_m;
    Ok(bore_m2 * (orifice.free + bypass) * root(2.0 * upstream.rho_kg_m3, p_pa - back_pa))
}

/// The high-side pressure that a valve aims at, Pa.
///
/// `p = (2.778 - 0.0157 te) t + (0.381 te - 9.34)` bar with t at the gas cooler's outlet and te of evaporation in °C;
/// below the critical point the pressure that leaves a little subcooling, where that is higher.
///
/// Source: Liao, Zhao & Jakobsen 2000, Applied Thermal Engineering 20, 831 (30 to 60 °C, evaporation -10 to 20 °C), from
/// memory.
///
/// Errors: those of the properties.
pub(in crate::vehicle) fn best_pa(fluid: &WorkingFluid, outlet_k: f64, evaporating_k: f64) -> Result<f64, Error> {
    let (t, te) = (outlet_k - 273.15, evaporating_k - 273.15);
    let best_pa = 1e5 * ((2.778 - 0.0157 * te) * t + (0.381 * te - 9.34));
    let highest_k = fluid.critical().t_k - SHORT_OF_CRITICAL_K;
    let condensing_k = highest_k - positive(highest_k - outlet_k - SUBCOOLING_K, AIM_SOFTNESS_K);
    let condensing_pa = fluid.dew_pa(condensing_k)?;
    let aim_pa = condensing_pa + positive(best_pa - condensing_pa, AIM_SOFTNESS_PA);
    let most_pa = 0.95 * fluid.highest_pa();
    Ok(most_pa - positive(most_pa - aim_pa, AIM_SOFTNESS_PA))
}

/// Factor of the set pressure when the evaporator runs dry: the valve would starve it further to hold the high side, so that
/// its control lowers the set pressure from 10 K of superheat on. Judgement.
pub(in crate::vehicle) fn given_up(superheat_k: f64) -> f64 {
    libm::exp(-positive(superheat_k - 10.0, 1.0) / 25.0)
}
