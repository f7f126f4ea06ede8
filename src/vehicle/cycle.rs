//! Once round the circuit: from guesses to everything that follows, and by how much the balances miss.

use super::compressor::Compression;
use super::condenser::{Film, Inflow, condense};
use super::evaporator::{Evaporation, Feed};
use super::medium::{Saturation, State};
use super::plant::{Branch, Closure, Control, Plant, Protection, Warmth};
use super::smooth::{ramp, remainder};
use super::transcritical::cool;
use crate::error::Error;

/// How many unknowns the balance has.
pub(super) const UNKNOWNS: usize = 7;
/// Least and largest logarithm of the part of the flow that a second evaporator takes: nothing, and nine tenths.
pub(super) const LN_REAR: (f64, f64) = (-11.512_925_464_970_23, -0.105_360_515_657_826);

/// Universal gas constant, J/(mol K). Source: SI, exact.
const GAS_J_MOL_K: f64 = 8.314_462_618_153_24;
/// Parts of condenser and receiver that hold vapour, where non-condensable gas gathers. Judgement.
const GAS_SPACE: (f64, f64) = (0.75, 0.5);
/// Enthalpies over which the receiver goes from empty to full, per the heat of evaporation: from entering bubbles to
/// the subcooling that a filled receiver shows for want of equilibrium. Judgement.
const RECEIVER: (f64, f64) = (-0.004, 0.020);
/// Likewise the least liquid in the flow that leaves the evaporator while the accumulator fills; full it passes what
/// its bleed hole lets through. Judgement.
const ACCUMULATOR_EMPTY: f64 = -0.005;
/// The least that a bleed hole lets through, mass fraction. Engineering judgement: finer holes clog with the first dirt.
const LEAST_BLEED: f64 = 0.015;
/// Superheat from which on, and over which, the mean specific heat of the vapour takes over, K.
const MEAN_FROM_K: f64 = 5.0;
/// Rounding of the ends of those ranges.
const VESSEL_SOFTNESS: f64 = 0.08;

/// The unknowns of the balance.
#[derive(Clone, Copy, Debug)]
pub(super) struct Point {
    /// Logarithm of the pressure at the compressor inlet, Pa.
    pub ln_suction_pa: f64,
    /// Logarithm of the pressure at the compressor outlet, Pa.
    pub ln_discharge_pa: f64,
    /// State at the compressor inlet, see `Medium::at_coordinate`.
    pub suction: f64,
    /// Part of stroke, running time or speed that is in use.
    pub demand: f64,
    /// Air before the evaporator: temperature, K.
    pub intake_k: f64,
    /// Air before the evaporator: humidity ratio.
    pub intake_humidity: f64,
    /// Logarithm of the part of the flow that a second evaporator takes.
    pub ln_rear: f64,
}

/// From the compressor inlet to the liquid line: all that does not ask for the evaporator's air.
#[derive(Clone, Copy, Debug)]
pub(super) struct Upper {
    pub suction_pa: f64,
    pub discharge_pa: f64,
    pub suction: State,
    pub compression: Compression,
    /// Equilibrium at the condenser outlet, at the partial pressure of the refrigerant.
    pub condensing: Saturation,
    /// Total pressure there, gas included, Pa.
    pub condenser_pa: f64,
    pub gas_pa: f64,
    /// Enthalpy behind the receiver and its subcooler, J/kg.
    pub outlet_j_kg: f64,
    /// Temperature there in a gas cooler, K; saturation where it condenses in all weathers.
    pub cooled_k: f64,
    pub heat_w: f64,
    pub receiver_fill: f64,
    /// Fill of the receiver before its ends are rounded.
    vessel: f64,
    /// Equilibrium at the inlet of the expansion device.
    pub liquid: Saturation,
    pub liquid_j_kg: f64,
    pub liquid_k: f64,
    pub liquid_kg_m3: f64,
    /// Equilibrium and enthalpy at the evaporator outlet.
    pub outlet: Saturation,
    pub evaporated_j_kg: f64,
    /// Specific heat of the vapour, mean from dew to the compressor inlet, J/(kg K).
    vapour_cp_j_kg_k: f64,
    mass_kg: f64,
}

/// One way round the circuit.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cycle {
    pub upper: Upper,
    pub evaporating: Saturation,
    pub front: Evaporation,
    pub rear: Option<Evaporation>,
    pub opening: f64,
    pub accumulator_fill: f64,
    pub mass_kg: f64,
    /// By how much the balances miss, each relative.
    pub residual: [f64; UNKNOWNS],
}

impl Point {
    pub(super) const fn values(&self) -> [f64; UNKNOWNS] {
        [
            self.ln_suction_pa,
            self.ln_discharge_pa,
            self.suction,
            self.demand,
            self.intake_k,
            self.intake_humidity,
            self.ln_rear,
        ]
    }

    pub(super) const fn of(v: [f64; UNKNOWNS]) -> Self {
        Self {
            ln_suction_pa: v[0],
            ln_discharge_pa: v[1],
            suction: v[2],
            demand: v[3],
            intake_k: v[4],
            intake_humidity: v[5],
            ln_rear: v[6],
        }
    }
}

/// Specific heat of vapour, mean from dew to `state`; that of the state itself where there is hardly any superheat to divide by.
fn mean_cp(saturation: &Saturation, state: &State) -> f64 {
    let superheat_k = state.t_k - saturation.dew_k;
    let weight = ((superheat_k - MEAN_FROM_K) / MEAN_FROM_K).clamp(0.0, 1.0);
    if weight == 0.0 {
        return state.cp_j_kg_k;
    }
    let mean = (state.h_j_kg - saturation.vapour_j_kg) / superheat_k;
    state.cp_j_kg_k + weight * (mean - state.cp_j_kg_k)
}

impl Plant<'_> {
    /// The compressor, the high side and the suction line.
    ///
    /// Errors: those of the properties.
    pub(super) fn upper(&self, point: &Point) -> Result<Upper, Error> {
        let (medium, hardware) = (&self.medium, &self.hardware);
        let suction_pa = libm::exp(point.ln_suction_pa);
        let discharge_pa = libm::exp(point.ln_discharge_pa);
        let low = medium.saturation(suction_pa)?;
        let suction = medium.at_coordinate(&low, point.suction)?;
        let high = medium.saturation(discharge_pa)?;
        let compression = self.drive.compress(medium, hardware, &suction, &high, point.demand)?;
        let flow = compression.flow_kg_s;
        let flow_ratio = flow / hardware.reference_flow_kg_s;
        let dynamic = flow_ratio * flow_ratio;
        let (at_discharge, at_liquid, at_suction) = self.restriction_pa;

        let lost = (hardware.discharge_drop_pa + at_discharge) * dynamic * 60.0 / compression.rho_kg_m3
            + hardware.condenser_drop_pa * dynamic;
        let condenser_pa = discharge_pa * remainder(lost / discharge_pa);
        let space_m3 = GAS_SPACE.0 * hardware.condenser_volume_m3
            + if self.receiver {
                GAS_SPACE.1 * hardware.receiver_volume_m3
            } else {
                0.0
            };
        let gas_pa = self.gas_mol * GAS_J_MOL_K * high.dew_k / space_m3;
        let condensing =
            medium.saturation((condenser_pa * remainder(gas_pa / condenser_pa)).max(medium.lowest_pa()))?;
        let inflow = Inflow {
            flow_kg_s: flow,
            h_j_kg: compression.h_j_kg,
            gas_cp_j_kg_k: compression.gas_cp_j_kg_k,
        };
        let gas = gas_pa / (gas_pa + condensing.p_pa);
        let face = self.draught.at(condenser_pa);
        let after = if self.receiver { hardware.subcooler_share } else { 0.0 };
        let condenser = if medium.is_transcritical() {
            let film = Film::of(medium, hardware, &inflow, &face, 1.0, gas);
            cool(medium, &film, &inflow, &condensing, &face)?
        } else {
            condense(medium, hardware, &inflow, &condensing, &face, 1.0 - after, gas)?
        };
        let mut mass_kg = hardware.condenser_volume_m3 * (1.0 - after) * condenser.rho_kg_m3
            + hardware.discharge_volume_m3 * compression.rho_kg_m3;
        let mut outlet_j_kg = condenser.h_j_kg;
        let mut heat_w = condenser.heat_w;
        let mut receiver_fill = 0.0;
        let mut vessel = 0.0;
        if self.receiver {
            let liquid = (condensing.liquid_j_kg - condenser.h_j_kg) / condensing.latent_j_kg();
            vessel = (liquid - RECEIVER.0) / (RECEIVER.1 - RECEIVER.0);
            receiver_fill = ramp(vessel, VESSEL_SOFTNESS);
            mass_kg += hardware.receiver_volume_m3 * condensing.mean_kg_m3(1.0 - receiver_fill);
        }
        if after > 0.0 {
            let inflow = Inflow {
                h_j_kg: outlet_j_kg,
                ..inflow
            };
            let subcooler = condense(medium, hardware, &inflow, &condensing, &face, after, gas)?;
            mass_kg += hardware.condenser_volume_m3 * after * subcooler.rho_kg_m3;
            outlet_j_kg = subcooler.h_j_kg;
            heat_w += subcooler.heat_w;
        }

        let (cooled_k, line_kg_m3) = if medium.is_transcritical() {
            let state = medium.at_enthalpy(&condensing, outlet_j_kg)?;
            (state.t_k, state.rho_kg_m3)
        } else {
            (condensing.bubble_k, condensing.mixture_kg_m3(outlet_j_kg))
        };
        let lost = (hardware.liquid_drop_pa + at_liquid) * dynamic * 1100.0 / line_kg_m3;
        let liquid_pa = (condenser_pa * remainder(lost / condenser_pa)).max(medium.lowest_pa());
        let liquid = medium.saturation(liquid_pa)?;

        let lost = (hardware.suction_drop_pa + at_suction) * dynamic * 13.0 / suction.rho_kg_m3;
        let outlet = medium.saturation((suction_pa + lost).min(medium.highest_pa()))?;
        let gain_w = hardware.suction_gain_w_k * (self.cabin.outside_k + hardware.bay_rise_k - suction.t_k);
        // A trickle of vapour cannot take up more than the bay's temperature allows.
        let most = 0.8 * suction.cp_j_kg_k * (self.cabin.outside_k + hardware.bay_rise_k - suction.t_k);
        let warmed_j_kg = suction.h_j_kg - gain_w * most / (gain_w + most * flow);
        let exchanged_j_kg = self.exchange(&outlet, &suction, warmed_j_kg, &liquid, outlet_j_kg)?;
        let liquid_j_kg = outlet_j_kg - exchanged_j_kg;
        let (liquid_k, liquid_kg_m3) = if medium.is_transcritical() {
            let state = medium.at_enthalpy(&liquid, liquid_j_kg)?;
            (state.t_k, state.rho_kg_m3)
        } else {
            (self.line_k(&liquid, liquid_j_kg)?, liquid.mixture_kg_m3(liquid_j_kg))
        };
        mass_kg += hardware.liquid_volume_m3 * line_kg_m3 + hardware.suction_volume_m3 * suction.rho_kg_m3;
        Ok(Upper {
            suction_pa,
            discharge_pa,
            suction,
            compression,
            condensing,
            condenser_pa,
            gas_pa,
            outlet_j_kg,
            cooled_k,
            heat_w,
            receiver_fill,
            vessel,
            liquid,
            liquid_j_kg,
            liquid_k,
            liquid_kg_m3,
            outlet,
            evaporated_j_kg: warmed_j_kg - exchanged_j_kg,
            vapour_cp_j_kg_k: mean_cp(&low, &suction),
            mass_kg,
        })
    }

    /// Temperature in the liquid line, K: bubbles keep it where it boils.
    fn line_k(&self, liquid: &Saturation, h_j_kg: f64) -> Result<f64, Error> {
        if h_j_kg < liquid.liquid_j_kg {
            self.medium.liquid_k(liquid, h_j_kg)
        } else {
            Ok(liquid.boiling_k(h_j_kg))
        }
    }

    /// Heat per kilogram that the internal exchanger moves from liquid to vapour: effectiveness on the vapour side,
    /// and never more than would cool the liquid to the evaporating temperature.
    fn exchange(
        &self,
        outlet: &Saturation,
        suction: &State,
        warmed_j_kg: f64,
        liquid: &Saturation,
        outlet_j_kg: f64,
    ) -> Result<f64, Error> {
        let effectiveness = self.hardware.exchanger;
        if effectiveness == 0.0 {
            return Ok(0.0);
        }
        let (liquid_k, hot_j_kg) = if self.medium.is_transcritical() {
            (self.medium.at_enthalpy(liquid, outlet_j_kg)?.t_k, outlet_j_kg)
        } else {
            (self.line_k(liquid, outlet_j_kg)?, outlet_j_kg.min(liquid.liquid_j_kg))
        };
        let hottest_j_kg = outlet.vapour_j_kg + suction.cp_j_kg_k * (liquid_k - outlet.dew_k);
        let vapour_side = effectiveness * (hottest_j_kg - warmed_j_kg) / (1.0 - effectiveness);
        let liquid_side = 0.8 * (hot_j_kg - outlet.liquid_j_kg);
        Ok(vapour_side.min(liquid_side).max(0.0))
    }

    /// The whole way round, with what the air before the evaporator is taken to be.
    ///
    /// Errors: those of the properties.
    pub(super) fn round(&self, point: &Point, upper: &Upper) -> Result<Cycle, Error> {
        let hardware = &self.hardware;
        let total = upper.compression.flow_kg_s;
        let flow_ratio = total / hardware.reference_flow_kg_s;
        let wet_kg_m3 = 0.5 * (upper.outlet.mixture_kg_m3(upper.liquid_j_kg) + upper.outlet.vapour_kg_m3);
        let lost = hardware.evaporator_drop_pa * flow_ratio * flow_ratio * 20.0 / wet_kg_m3;
        let highest = self.medium.highest_pa();
        let evaporating = self.medium.saturation((upper.outlet.p_pa + 0.5 * lost).min(highest))?;
        let cp = upper.vapour_cp_j_kg_k;
        let below_pa = upper.outlet.p_pa + lost;

        let mut flow = total;
        let mut evaporated_j_kg = upper.evaporated_j_kg;
        let mut rear = None;
        let mut rear_unmetered = 0.0;
        let mut mass_kg = upper.mass_kg;
        if let Some(branch) = &self.rear {
            let feed = Feed {
                flow_kg_s: total * libm::exp(point.ln_rear),
                h_j_kg: upper.liquid_j_kg,
            };
            let evaporation = self.evaporate(branch, point, &feed, &evaporating, cp)?;
            let outlet_k = self.outlet_k(&upper.outlet, evaporation.h_j_kg, cp);
            let (unmetered, _) = self.passes(branch, upper, below_pa, outlet_k, feed.flow_kg_s)?;
            // A valve that passes too much or too little at either end of the range is left there.
            rear_unmetered = unmetered.min(LN_REAR.1 - point.ln_rear).max(LN_REAR.0 - point.ln_rear);
            flow = total - feed.flow_kg_s;
            evaporated_j_kg = (total * upper.evaporated_j_kg - feed.flow_kg_s * evaporation.h_j_kg) / flow;
            mass_kg += branch.volume_m3 * evaporation.rho_kg_m3;
            rear = Some(evaporation);
        }
        let feed = Feed {
            flow_kg_s: flow,
            h_j_kg: upper.liquid_j_kg,
        };
        let front = self.evaporate(&self.front, point, &feed, &evaporating, cp)?;
        mass_kg += self.front.volume_m3 * front.rho_kg_m3;
        let outlet_k = self.outlet_k(&upper.outlet, evaporated_j_kg, cp);
        let (unmetered, opening) = self.passes(&self.front, upper, below_pa, outlet_k, flow)?;

        let mut accumulator_fill = 0.0;
        let mut vessel = upper.vessel;
        if !self.receiver {
            let liquid = (upper.outlet.vapour_j_kg - upper.evaporated_j_kg) / upper.outlet.latent_j_kg();
            vessel = (liquid - ACCUMULATOR_EMPTY) / (hardware.accumulator_bleed.max(LEAST_BLEED) - ACCUMULATOR_EMPTY);
            accumulator_fill = ramp(vessel, VESSEL_SOFTNESS);
            mass_kg += hardware.accumulator_volume_m3 * upper.outlet.mean_kg_m3(1.0 - accumulator_fill);
        }
        let mut cycle = Cycle {
            upper: *upper,
            evaporating,
            front,
            rear,
            opening,
            accumulator_fill,
            mass_kg,
            residual: [0.0; UNKNOWNS],
        };
        let closure = match self.closure {
            Closure::Charge(charge_kg) => (mass_kg - charge_kg) / charge_kg,
            Closure::Fill(fill) => 0.1 * (vessel - fill),
        };
        let (intake_k, intake_humidity) = self.intake(&cycle);
        cycle.residual = [
            (front.h_j_kg - evaporated_j_kg) / upper.outlet.latent_j_kg(),
            unmetered,
            closure,
            self.control_residual(point, &cycle),
            (intake_k - point.intake_k) / 10.0,
            (intake_humidity - point.intake_humidity) / 0.005,
            rear_unmetered,
        ];
        Ok(cycle)
    }

    /// The state of the air that the evaporators would draw.
    fn intake(&self, cycle: &Cycle) -> (f64, f64) {
        let cabin = &self.cabin;
        if cabin.fresh >= 1.0 {
            return (cabin.outside_k, cabin.outside_humidity);
        }
        let (mut flow, mut warm, mut humid) = (0.0, 0.0, 0.0);
        let mut add = |branch: &Branch, evaporation: &Evaporation| {
            if let Warmth::Air { flow_kg_s, .. } = branch.warmth {
                flow += flow_kg_s;
                warm += flow_kg_s * evaporation.stream_k;
                humid += flow_kg_s * evaporation.humidity;
            }
        };
        add(&self.front, &cycle.front);
        if let (Some(branch), Some(evaporation)) = (&self.rear, &cycle.rear) {
            add(branch, evaporation);
        }
        cabin.intake(warm / flow, humid / flow, flow, self.air_cp_j_kg_k)
    }

    /// Demand against what the control asks for: zero where the control is satisfied, or where it is at its limit.
    fn control_residual(&self, point: &Point, cycle: &Cycle) -> f64 {
        let demand = point.demand;
        let (least, most) = self.demand;
        let upper = &cycle.upper;
        let wish = match self.control {
            Control::None => 1.0,
            Control::LowSide { set_pa } => upper.suction_pa / set_pa - 1.0,
            Control::Internal { set_pa, slope } => {
                upper.suction_pa / (set_pa - slope * (upper.discharge_pa - 1.0e6)) - 1.0
            }
            Control::Fin { set_k } => (cycle.front.felt_k(point.intake_k) - set_k) / 30.0,
            Control::Air { set_k } => (cycle.front.stream_k - set_k) / 30.0,
        };
        let guard = 2.0 * (1.0 - upper.discharge_pa / self.high_limit_pa);
        let Protection { low_pa, least: stopped } = self.protection;
        let guard = guard.min(upper.suction_pa / low_pa - 1.0);
        let control = wish.min(most - demand).max(least - demand);
        control.min(guard.max(stopped - demand))
    }
}
