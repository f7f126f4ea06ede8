//! a gas cooler in place of the condenser, a valve that looks after the high side, and parts of its own size.
//!
//! The gas cooler is marched in strips of face, each of which meets fresh air, with the temperature that the refrigerant
//! has at its pressure and enthalpy: the peak of its specific heat near the pseudo-critical temperature, and below the
//! critical pressure the plateau of condensation, come in of themselves. The expansion valve is electronic and holds the
//! high side at the pressure of the best coefficient of performance. An accumulator stores the charge, an internal heat
//! exchanger cools what the gas cooler leaves warm.

use super::condenser::{Condensation, FaceAir, Film, Inflow};
use super::expansion::{SEAT, Upstream, root};
use super::hardware::Hardware;
use super::medium::{Medium, Saturation};
use super::smooth::positive;
use crate::error::Error;
use crate::names::{Refrigerant, VehicleClass};

/// Strips of face. With twice as many the heat changes by less than half a per cent.
const STRIPS: usize = 12;
/// Subcooling that the valve leaves before it in mild weather, below the critical pressure, K. Judgement.
const SUBCOOLING_K: f64 = 4.0;
/// How near to the critical temperature condensation is still aimed at, K. Judgement.
const SHORT_OF_CRITICAL_K: f64 = 0.5;

/// Sizes of the parts of an R-744 system per those of an R-134a system of the same vehicle. Judgement: machines of 25 to
/// 33 cm3 stand where 150 to 175 stood, and inner volumes shrink to a third.
const SWEPT: f64 = 0.17;
const VOLUME: f64 = 0.36;
const VALVE: f64 = 0.5;
/// Inner volume of an accumulator per that of an R-134a system's. Judgement.
const ACCUMULATOR: f64 = 0.6;
/// Effectiveness of the internal heat exchanger. Source: judgement, from memory of prototypes: 0.5 to 0.8.
const EXCHANGER: f64 = 0.6;
/// Suction pressure that the controls hold: saturation at 0.4 °C as in R-134a systems, Pa absolute.
const SUCTION_PA: f64 = 3.52e6;
/// Evaporator pressure above which the valve of a second evaporator no longer opens: saturation near 15 °C, Pa absolute.
const VALVE_LIMIT_PA: f64 = 5.1e6;
/// High-side pressure at which protection takes the compressor back, Pa gauge. Source: from memory of SAE J639: relief
/// not below 16 MPa; switches near 13.3 MPa.
const HIGH_LIMIT_PA: f64 = 13.3e6;

impl Hardware {
    /// The parts of a typical vehicle of this class that is made for this refrigerant.
    pub const fn typical_for(refrigerant: Refrigerant, class: VehicleClass) -> Self {
        let typical = Self::typical(class);
        if matches!(refrigerant, Refrigerant::R744) {
            typical.for_carbon_dioxide()
        } else {
            typical
        }
    }

    /// These parts for an R-744 system in the same vehicle: exchangers and air flows stay, all that holds or moves
    /// refrigerant is as much smaller as its vapour is denser.
    const fn for_carbon_dioxide(self) -> Self {
        Self {
            displacement_m3: self.displacement_m3 * SWEPT,
            electric_displacement_m3: self.electric_displacement_m3 * SWEPT,
            internal_set_pa: SUCTION_PA,
            internal_slope: 0.0,
            external_set_pa: SUCTION_PA,
            high_limit_pa: HIGH_LIMIT_PA,
            condenser_volume_m3: self.condenser_volume_m3 * VOLUME,
            discharge_volume_m3: self.discharge_volume_m3 * VOLUME,
            liquid_volume_m3: self.liquid_volume_m3 * VOLUME,
            suction_volume_m3: self.suction_volume_m3 * VOLUME,
            evaporator_volume_m3: self.evaporator_volume_m3 * VOLUME,
            accumulator_volume_m3: self.accumulator_volume_m3 * ACCUMULATOR,
            exchanger: EXCHANGER,
            valve_limit_pa: VALVE_LIMIT_PA,
            valve_area_m2: self.valve_area_m2 * VALVE,
            ..self
        }
    }
}

/// An electronic expansion valve that holds the high side.
#[derive(Clone, Copy, Debug)]
pub(super) struct Electronic {
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
    pub(super) fn full_kg_s(&self, upstream: &Upstream<'_>, p_pa: f64) -> f64 {
        SEAT * self.area_m2 * root(2.0 * upstream.rho_kg_m3, p_pa - upstream.downstream_pa)
    }

    /// By how much the valve misses its aim, and its opening: the high side held at `set_pa`, or the valve at the end
    /// of its reach that is nearer to that.
    pub(super) fn residual(&self, high_pa: f64, set_pa: f64, flow_kg_s: f64, full_kg_s: f64) -> (f64, f64) {
        let most = self.most.max(BLEED);
        let least = self.least.clamp(BLEED, most);
        let opening = (flow_kg_s / full_kg_s).clamp(least, most);
        let wish = libm::log(high_pa / set_pa);
        let most_open = libm::log(full_kg_s * most / flow_kg_s);
        let least_open = libm::log(full_kg_s * least / flow_kg_s);
        (wish.min(most_open).max(least_open), opening)
    }
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
pub(super) fn best_pa(medium: &Medium, outlet_k: f64, evaporating_k: f64) -> Result<f64, Error> {
    let (t, te) = (outlet_k - 273.15, evaporating_k - 273.15);
    let best_pa = 1e5 * ((2.778 - 0.0157 * te) * t + (0.381 * te - 9.34));
    let highest_k = medium.critical().0 - SHORT_OF_CRITICAL_K;
    let condensing_pa = medium.dew_pa((outlet_k + SUBCOOLING_K).min(highest_k))?;
    Ok(best_pa.max(condensing_pa).min(0.95 * medium.highest_pa()))
}

/// What is left of the aim when the evaporator runs dry: the valve would starve it further to hold the high side, so
/// its control gives way from 10 K of superheat on. Judgement.
pub(super) fn given_up(superheat_k: f64) -> f64 {
    libm::exp(-positive(superheat_k - 10.0, 1.0) / 25.0)
}

/// The refrigerant's way through the gas cooler at the pressure of `saturation`, and its state behind it.
///
/// Errors: those of the properties of the medium.
pub(super) fn cool(
    medium: &Medium,
    film: &Film,
    inflow: &Inflow,
    saturation: &Saturation,
    air: &FaceAir,
) -> Result<Condensation, Error> {
    let step = film.conductance_w_k() / (inflow.flow_kg_s * STRIPS as f64);
    let mut h = inflow.h_j_kg;
    let mut rho_kg_m3 = 0.0;
    for _ in 0..STRIPS {
        // The midpoint rule in enthalpy.
        let here = medium.at_enthalpy(saturation, h)?;
        let middle = medium.at_enthalpy(saturation, h - 0.5 * step * (here.t_k - air.t_k))?;
        h -= step * (middle.t_k - air.t_k);
        rho_kg_m3 += middle.rho_kg_m3 / STRIPS as f64;
    }
    Ok(Condensation {
        h_j_kg: h,
        heat_w: inflow.flow_kg_s * (inflow.h_j_kg - h),
        rho_kg_m3,
    })
}
