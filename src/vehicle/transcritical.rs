//! a gas cooler in place of the condenser, a valve that looks after the high side, and parts of its own size.
//!
//! The gas cooler is marched in strips of face, each of which meets fresh air, with the temperature that the refrigerant
//! has at its pressure and enthalpy: the peak of its specific heat near the pseudo-critical temperature, and below the
//! critical pressure the plateau of condensation, come in of themselves. The expansion valve is electronic and holds the
//! high side at the pressure of the best coefficient of performance, or a fixed orifice lets the high side find its own, with
//! a bypass that opens before protection has to. An accumulator stores the charge, an internal heat
//! exchanger cools what the gas cooler leaves warm.

use super::condenser::{Condensation, FaceAir, Film, Inflow};
use super::expansion::{Orifice, SEAT, Upstream, root};
use super::hardware::Hardware;
use super::medium::{Medium, Saturation};
use super::plant::Protection;
use super::smooth::{positive, ramp};
use crate::error::Error;
use crate::names::{Refrigerant, VehicleClass};

/// Strips of face. With twice as many the heat changes by less than half a per cent.
const STRIPS: usize = 12;
/// Slope of temperature over enthalpy with which the first strip looks for its second point: that of hot gas, K kg/J.
const GAS_SLOPE: f64 = 8e-4;
/// The point of a strip that its straight line is drawn through.
const ON: f64 = 2.0 / 3.0;
/// Rounding of the corners of the valve's control, per its opening; and of those of its aim, Pa and K. Judgement.
const SOFTNESS: f64 = 0.02;
const AIM_SOFTNESS_PA: f64 = 1e5;
const AIM_SOFTNESS_K: f64 = 0.5;
/// Subcooling that the valve leaves before it in mild weather, below the critical pressure, K. Judgement.
const SUBCOOLING_K: f64 = 4.0;
/// How near to the critical temperature condensation is still aimed at, K. Judgement.
const SHORT_OF_CRITICAL_K: f64 = 0.5;

/// Sizes of the parts of an R-744 system per those of an R-134a system of the same vehicle. Judgement: machines of 25 to
/// 33 cm3 stand where 150 to 175 stood, and inner volumes shrink to a third.
const SWEPT: f64 = 0.17;
const VOLUME: f64 = 0.36;
/// Inner volume of a gas cooler per that of an R-134a condenser. Judgement.
const GAS_COOLER: f64 = 0.432;
const VALVE: f64 = 1.0 / 3.0;
/// Bore of an orifice per that of an R-134a system's, so that a mild day finds the high side near its best. Bores of 0.6 to 1 mm are
/// common, from memory.
const BORE: f64 = 0.473;
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

/// The highest setting of that protection, per the highest pressure that is modelled: a switch that would open next to the critical
/// pressure or above it never opens (R-1234yf: 3.4 MPa). Judgement.
const HIGHEST_LIMIT: f64 = 0.965;
/// What stops the compressor: a low side at saturation near -40 °C, far from dry ice, or a high side at its limit. Judgement.
pub(super) const PROTECTION: Protection = Protection {
    low_pa: 1.0e6,
    least: 0.01,
};

impl Hardware {
    /// The parts of a typical vehicle of this class that is made for this refrigerant.
    pub const fn typical_for(refrigerant: Refrigerant, class: VehicleClass) -> Self {
        let typical = Self::typical(class);
        if matches!(refrigerant, Refrigerant::R744) {
            typical.for_carbon_dioxide()
        } else if matches!(refrigerant, Refrigerant::R407C) {
            typical.for_r407c()
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
            condenser_volume_m3: self.condenser_volume_m3 * GAS_COOLER,
            discharge_volume_m3: self.discharge_volume_m3 * VOLUME,
            liquid_volume_m3: self.liquid_volume_m3 * VOLUME,
            suction_volume_m3: self.suction_volume_m3 * VOLUME,
            evaporator_volume_m3: self.evaporator_volume_m3 * VOLUME,
            accumulator_volume_m3: self.accumulator_volume_m3 * ACCUMULATOR,
            exchanger: EXCHANGER,
            valve_limit_pa: VALVE_LIMIT_PA,
            valve_area_m2: self.valve_area_m2 * VALVE,
            orifice_diameter_m: self.orifice_diameter_m * BORE,
            ..self
        }
    }
}

/// The pressure at which protection takes the compressor back, Pa absolute, for one that is set to `set_pa`.
pub(super) fn high_limit_pa(medium: &Medium, set_pa: f64) -> f64 {
    set_pa.min(HIGHEST_LIMIT * medium.highest_pa())
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
        let held = most_open - positive(most_open - wish, SOFTNESS);
        (least_open + positive(held - least_open, SOFTNESS), opening)
    }
}

/// Slope of the pseudo-critical line, which carries the saturation line on above the critical temperature, Pa/K. Source: Liao
/// & Zhao 2002 as in `medium`, between 74 and 100 bar.
const PSEUDO_PA_K: f64 = 0.187e6;
/// Highest pressure in the throat of an orifice per that before it: of liquid that enters at saturation, and of gas. Source:
/// as for R-134a (Kim, O'Neal & Yuan 1994 without subcooling); judgement for gas.
const THROAT: f64 = 0.84;
/// Rounding of that corner, per the pressure before the orifice.
const THROAT_SOFTNESS: f64 = 0.02;
/// High-side pressures over which a bypass about the orifice opens, Pa absolute, and its area per that of the orifice.
/// Judgement: from memory of valves with a spring beside the bore, which open near 11 to 12 MPa.
const BYPASS_PA: (f64, f64) = (11.3e6, 12.8e6);
const BYPASS: f64 = 1.0;
const BYPASS_SOFTNESS: f64 = 0.08;

/// Flow through a fixed orifice with a bypass, kg/s: `A sqrt(2 rho (p1 - pt))`, choked at a pressure `pt` in the throat at
/// which the dense fluid begins to boil, taken as that of saturation (above the critical temperature, of the pseudo-critical
/// line) at the temperature before it.
///
/// Errors: those of the properties.
pub(super) fn orifice_kg_s(orifice: &Orifice, medium: &Medium, upstream: &Upstream<'_>) -> Result<f64, Error> {
    let p_pa = upstream.saturation.p_pa;
    let (critical_k, _) = medium.critical();
    let boils_pa = medium.bubble_pa(upstream.t_k)? + PSEUDO_PA_K * (upstream.t_k - critical_k).max(0.0);
    let most_pa = THROAT * p_pa;
    let throat_pa = most_pa - positive(most_pa - boils_pa, THROAT_SOFTNESS * p_pa);
    let back_pa = upstream.downstream_pa + positive(throat_pa - upstream.downstream_pa, THROAT_SOFTNESS * p_pa);
    let bypass = BYPASS * ramp((p_pa - BYPASS_PA.0) / (BYPASS_PA.1 - BYPASS_PA.0), BYPASS_SOFTNESS);
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
pub(super) fn best_pa(medium: &Medium, outlet_k: f64, evaporating_k: f64) -> Result<f64, Error> {
    let (t, te) = (outlet_k - 273.15, evaporating_k - 273.15);
    let best_pa = 1e5 * ((2.778 - 0.0157 * te) * t + (0.381 * te - 9.34));
    let highest_k = medium.critical().0 - SHORT_OF_CRITICAL_K;
    let condensing_k = highest_k - positive(highest_k - outlet_k - SUBCOOLING_K, AIM_SOFTNESS_K);
    let condensing_pa = medium.dew_pa(condensing_k)?;
    let aim_pa = condensing_pa + positive(best_pa - condensing_pa, AIM_SOFTNESS_PA);
    let most_pa = 0.95 * medium.highest_pa();
    Ok(most_pa - positive(most_pa - aim_pa, AIM_SOFTNESS_PA))
}

/// What is left of the aim when the evaporator runs dry: the valve would starve it further to hold the high side, so
/// its control gives way from 10 K of superheat on. Judgement.
pub(super) fn given_up(superheat_k: f64) -> f64 {
    libm::exp(-positive(superheat_k - 10.0, 1.0) / 25.0)
}

/// The refrigerant's way through the gas cooler at the pressure of `saturation`, and its state behind it.
///
/// In each strip the temperature is taken as a straight line over enthalpy, through the states at its start and two thirds
/// on, along which the difference to the air fades exponentially. That is of third order where the temperature is smooth, has
/// no step where a phase begins or ends, and a trickle of gas comes to the temperature of the air and not beyond it.
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
    let mut slope = GAS_SLOPE;
    for _ in 0..STRIPS {
        let here = medium.at_enthalpy(saturation, h)?;
        let off_k = here.t_k - air.t_k;
        let on_j_kg = h - ON * step * off_k * faded(ON * step * slope);
        let on = medium.at_enthalpy(saturation, on_j_kg)?;
        if libm::fabs(h - on_j_kg) > 1e-3 {
            slope = ((here.t_k - on.t_k) / (h - on_j_kg)).max(0.0);
        }
        h -= step * off_k * faded(step * slope);
        // Radau's points and weights.
        rho_kg_m3 += (0.25 * here.rho_kg_m3 + 0.75 * on.rho_kg_m3) / STRIPS as f64;
    }
    Ok(Condensation {
        h_j_kg: h,
        heat_w: inflow.flow_kg_s * (inflow.h_j_kg - h),
        rho_kg_m3,
    })
}

/// `(1 - exp(-x)) / x`: what is left of a step when the difference that drives it fades on the way.
fn faded(x: f64) -> f64 {
    if x < 1e-6 { 1.0 - 0.5 * x } else { -libm::expm1(-x) / x }
}

#[cfg(test)]
mod tests {
    use super::super::Conditions;
    use super::super::simulate::{Fluids, plant_of};
    use super::super::{System, Vehicle};
    use super::*;
    use crate::names::{Compressor, Expansion};
    use crate::units::{Surroundings, celsius};

    fn cooled(flow_kg_s: f64, p_pa: f64) -> (f64, f64, f64) {
        let system = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
        let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
        let day = Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL);
        let fluids = Fluids::of(&car.system, &[]).unwrap();
        let plant = plant_of(&car, &day, &[], &fluids).unwrap();
        let saturation = plant.medium.saturation(p_pa).unwrap();
        let warm = plant.medium.saturation(5e6).unwrap();
        let hot = plant
            .medium
            .at_entropy(&saturation, warm.vapour_j_kg_k + 120.0)
            .unwrap();
        let inflow = Inflow {
            flow_kg_s,
            h_j_kg: hot.h_j_kg,
            gas_cp_j_kg_k: hot.cp_j_kg_k,
        };
        let face = plant.draught.at(p_pa);
        let film = Film::of(&plant.medium, &plant.hardware, &inflow, &face, 1.0, 0.0);
        let out = cool(&plant.medium, &film, &inflow, &saturation, &face).unwrap();
        let end = plant.medium.at_enthalpy(&saturation, out.h_j_kg).unwrap();
        (end.t_k, out.h_j_kg, out.rho_kg_m3)
    }

    /// However little flows, it leaves as warm as the air and no colder: at pressures without liquid, below and above the
    /// critical one.
    #[test]
    fn a_trickle_comes_to_the_temperature_of_the_air() {
        for p_pa in [3e6, 6e6, 9e6, 12e6] {
            for flow_kg_s in [1e-5, 1e-4, 1e-3, 3e-3] {
                let (t_k, ..) = cooled(flow_kg_s, p_pa);
                assert!((t_k - 303.15).abs() < 0.05, "{t_k} K at {p_pa} Pa, {flow_kg_s} kg/s");
            }
        }
    }

    /// A thousandth more of pressure moves what leaves by little, also through the critical pressure: no step for a search to
    /// fall over.
    #[test]
    fn nothing_jumps_at_the_critical_pressure() {
        for flow_kg_s in [0.01, 0.02, 0.04] {
            let at = |step: u32| cooled(flow_kg_s, 7.2e6 + 1e3 * f64::from(step));
            let (mut last, mut change) = (at(0), 0.0);
            for step in 1..=400 {
                let here = at(step);
                let moved = here.1 - last.1;
                if step > 1 {
                    assert!(
                        (moved - change).abs() < 40.0,
                        "{moved} J/kg after {change} at step {step}"
                    );
                }
                (last, change) = (here, moved);
            }
        }
    }
}
