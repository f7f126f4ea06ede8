//! From the compressor inlet over the high side to the expansion device, and the suction line.

use super::plant::Plant;
use super::unknowns::Point;
use crate::error::Error;
use crate::numerics::GAS_J_MOL_K;
use crate::vehicle::parts::compressor::Compression;
use crate::vehicle::parts::condenser::{Film, Inflow, condense};
use crate::vehicle::parts::gas_cooler::cool;
use crate::vehicle::parts::smooth::{ramp, remainder};
use crate::vehicle::working_fluid::equilibrium::{Saturation, State};

/// Parts of condenser and receiver that hold vapour, where non-condensable gas gathers. Judgement.
const GAS_SPACE_CONDENSER: f64 = 0.75;
const GAS_SPACE_RECEIVER: f64 = 0.5;
/// Enthalpies over which the receiver goes from empty to full, per the heat of evaporation: from entering bubbles to the
/// subcooling that a filled receiver shows because it is not in equilibrium. Judgement.
const RECEIVER_EMPTY: f64 = -0.004;
const RECEIVER_FULL: f64 = 0.020;
/// The mean specific heat of the vapour replaces the local one from this superheat on, over as much again, K.
const MEAN_FROM_K: f64 = 5.0;
/// Rounding of the ends of the range over which a receiver or an accumulator fills.
pub(in crate::vehicle) const VESSEL_SOFTNESS: f64 = 0.08;

/// From the compressor inlet to the liquid line: all that does not depend on the evaporator's air.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Upper {
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
    pub vessel: f64,
    /// Equilibrium at the inlet of the expansion device.
    pub liquid: Saturation,
    pub liquid_j_kg: f64,
    pub liquid_k: f64,
    pub liquid_kg_m3: f64,
    /// Equilibrium and enthalpy at the evaporator outlet.
    pub outlet: Saturation,
    pub evaporated_j_kg: f64,
    /// Specific heat of the vapour, mean from dew to the compressor inlet, J/(kg K).
    pub vapour_cp_j_kg_k: f64,
    pub mass_kg: f64,
}

/// Specific heat of vapour, mean from dew to `state`; that of the state itself where the superheat is too small to divide by.
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
    pub(in crate::vehicle) fn upper(&self, point: &Point) -> Result<Upper, Error> {
        let (fluid, hardware) = (&self.fluid, &self.hardware);
        let suction_pa = libm::exp(point.ln_suction_pa);
        let discharge_pa = libm::exp(point.ln_discharge_pa);
        let low = fluid.saturation(suction_pa)?;
        let suction = fluid.at_coordinate(&low, point.suction)?;
        let high = fluid.saturation(discharge_pa)?;
        let compression = self.drive.compress(fluid, hardware, &suction, &high, point.demand)?;
        let flow = compression.flow_kg_s;
        let flow_ratio = flow / hardware.reference_flow_kg_s;
        let dynamic = flow_ratio * flow_ratio;
        let restrictions = &self.restrictions;

        let lost = (hardware.discharge_drop_pa + restrictions.discharge_pa) * dynamic * 60.0 / compression.rho_kg_m3
            + hardware.condenser_drop_pa * dynamic;
        let condenser_pa = discharge_pa * remainder(lost / discharge_pa);
        let space_m3 = GAS_SPACE_CONDENSER * hardware.condenser_volume_m3
            + if self.receiver {
                GAS_SPACE_RECEIVER * hardware.receiver_volume_m3
            } else {
                0.0
            };
        let gas_pa = self.gas_mol * GAS_J_MOL_K * high.dew_k / space_m3;
        let condensing = fluid.saturation((condenser_pa * remainder(gas_pa / condenser_pa)).max(fluid.lowest_pa()))?;
        let inflow = Inflow {
            flow_kg_s: flow,
            h_j_kg: compression.h_j_kg,
            gas_cp_j_kg_k: compression.gas_cp_j_kg_k,
        };
        let gas = gas_pa / (gas_pa + condensing.p_pa);
        let face = self.draught.at(condenser_pa);
        let after = if self.receiver { hardware.subcooler_share } else { 0.0 };
        let condenser = if fluid.is_transcritical() {
            let film = Film::of(fluid, hardware, &inflow, &face, 1.0, gas);
            cool(fluid, &film, &inflow, &condensing, &face)?
        } else {
            condense(fluid, hardware, &inflow, &condensing, &face, 1.0 - after, gas)?
        };
        let mut mass_kg = hardware.condenser_volume_m3 * (1.0 - after) * condenser.rho_kg_m3
            + hardware.discharge_volume_m3 * compression.rho_kg_m3;
        let mut outlet_j_kg = condenser.h_j_kg;
        let mut heat_w = condenser.heat_w;
        let mut receiver_fill = 0.0;
        let mut vessel = 0.0;
        if self.receiver {
            let liquid = (condensing.liquid_j_kg - condenser.h_j_kg) / condensing.latent_j_kg();
            vessel = (liquid - RECEIVER_EMPTY) / (RECEIVER_FULL - RECEIVER_EMPTY);
            receiver_fill = ramp(vessel, VESSEL_SOFTNESS);
            mass_kg += hardware.receiver_volume_m3 * condensing.mean_kg_m3(1.0 - receiver_fill);
        }
        if after > 0.0 {
            let inflow = Inflow {
                h_j_kg: outlet_j_kg,
                ..inflow
            };
            let subcooler = condense(fluid, hardware, &inflow, &condensing, &face, after, gas)?;
            mass_kg += hardware.condenser_volume_m3 * after * subcooler.rho_kg_m3;
            outlet_j_kg = subcooler.h_j_kg;
            heat_w += subcooler.heat_w;
        }

        let (cooled_k, line_kg_m3) = if fluid.is_transcritical() {
            let state = fluid.at_enthalpy(&condensing, outlet_j_kg)?;
            (state.t_k, state.rho_kg_m3)
        } else {
            (condensing.bubble_k, condensing.mixture_kg_m3(outlet_j_kg))
        };
        let lost = (hardware.liquid_drop_pa + restrictions.liquid_pa) * dynamic * 1100.0 / line_kg_m3;
        let liquid_pa = (condenser_pa * remainder(lost / condenser_pa)).max(fluid.lowest_pa());
        let liquid = fluid.saturation(liquid_pa)?;

        let lost = (hardware.suction_drop_pa + restrictions.suction_pa) * dynamic * 13.0 / suction.rho_kg_m3;
        let outlet = fluid.saturation((suction_pa + lost).min(fluid.highest_pa()))?;
        let gain_w = hardware.suction_gain_w_k * (self.cabin.outside_k + hardware.bay_rise_k - suction.t_k);
        // Vapour is not warmed above the temperature of the engine bay.
        let most = 0.8 * suction.cp_j_kg_k * (self.cabin.outside_k + hardware.bay_rise_k - suction.t_k);
        let warmed_j_kg = suction.h_j_kg - gain_w * most / (gain_w + most * flow);
        let exchanged_j_kg = self.exchange(&outlet, &suction, warmed_j_kg, &liquid, outlet_j_kg)?;
        let liquid_j_kg = outlet_j_kg - exchanged_j_kg;
        let (liquid_k, liquid_kg_m3) = if fluid.is_transcritical() {
            let state = fluid.at_enthalpy(&liquid, liquid_j_kg)?;
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

    /// Temperature in the liquid line, K; where there are bubbles, the temperature of boiling.
    fn line_k(&self, liquid: &Saturation, h_j_kg: f64) -> Result<f64, Error> {
        if h_j_kg < liquid.liquid_j_kg {
            self.fluid.liquid_k(liquid, h_j_kg)
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
        let (liquid_k, hot_j_kg) = if self.fluid.is_transcritical() {
            (self.fluid.at_enthalpy(liquid, outlet_j_kg)?.t_k, outlet_j_kg)
        } else {
            (self.line_k(liquid, outlet_j_kg)?, outlet_j_kg.min(liquid.liquid_j_kg))
        };
        let hottest_j_kg = outlet.vapour_j_kg + suction.cp_j_kg_k * (liquid_k - outlet.dew_k);
        let vapour_side = effectiveness * (hottest_j_kg - warmed_j_kg) / (1.0 - effectiveness);
        let liquid_side = 0.8 * (hot_j_kg - outlet.liquid_j_kg);
        Ok(vapour_side.min(liquid_side).max(0.0))
    }
}
