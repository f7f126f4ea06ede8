//! Once round the circuit: all states that follow from the unknowns, and the residuals of the balances.

use super::plant::{Branch, Closure, Control, Demand, Intake, Plant, Protection, Warmth};
use super::unknowns::{Point, UNKNOWNS, Vector};
use super::upper::{Upper, VESSEL_SOFTNESS};
use crate::error::Error;
use crate::vehicle::parts::evaporator::{Evaporation, Feed};
use crate::vehicle::parts::smooth::ramp;
use crate::vehicle::working_fluid::equilibrium::Saturation;

/// Logarithm of the part of the flow that a second evaporator takes, at the least (next to nothing) and at the most (nine tenths).
pub(in crate::vehicle) const LEAST_LN_REAR: f64 = -11.512_925_464_970_23;
pub(in crate::vehicle) const MOST_LN_REAR: f64 = -0.105_360_515_657_826;

/// Liquid in the flow that leaves the evaporator, per the heat of evaporation, at which the accumulator begins to fill; a full one
/// passes what its bleed hole lets through. Judgement.
const ACCUMULATOR_EMPTY: f64 = -0.005;
/// The least that a bleed hole lets through, mass fraction. Engineering judgement: finer holes clog with the first dirt.
const LEAST_BLEED: f64 = 0.015;

/// Scales of the balances of the intake air: temperature (K) and humidity ratio.
pub(in crate::vehicle) const INTAKE_SCALE_K: f64 = 10.0;
pub(in crate::vehicle) const INTAKE_SCALE_HUMIDITY: f64 = 0.005;

/// One pass round the circuit.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Cycle {
    pub upper: Upper,
    pub evaporating: Saturation,
    pub front: Evaporation,
    pub rear: Option<Evaporation>,
    pub opening: f64,
    pub accumulator_fill: f64,
    pub mass_kg: f64,
    /// The residuals of the balances, each relative.
    pub residual: Vector,
}

impl Plant<'_> {
    /// All states round the circuit, for the intake air of `point`.
    ///
    /// Errors: those of the properties.
    pub(in crate::vehicle) fn round(&self, point: &Point, upper: &Upper) -> Result<Cycle, Error> {
        let hardware = &self.hardware;
        let total = upper.compression.flow_kg_s;
        let flow_ratio = total / hardware.reference_flow_kg_s;
        let wet_kg_m3 = 0.5 * (upper.outlet.mixture_kg_m3(upper.liquid_j_kg) + upper.outlet.vapour_kg_m3);
        let lost = hardware.evaporator_drop_pa * flow_ratio * flow_ratio * 20.0 / wet_kg_m3;
        let highest = self.fluid.highest_pa();
        let evaporating = self.fluid.saturation((upper.outlet.p_pa + 0.5 * lost).min(highest))?;
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
            let unmetered = self.passes(branch, upper, below_pa, outlet_k, feed.flow_kg_s)?.residual;
            // A valve that passes too much or too little at either end of the range is left there.
            rear_unmetered = unmetered
                .min(MOST_LN_REAR - point.ln_rear)
                .max(LEAST_LN_REAR - point.ln_rear);
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
        let metered = self.passes(&self.front, upper, below_pa, outlet_k, flow)?;

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
            opening: metered.opening,
            accumulator_fill,
            mass_kg,
            residual: [0.0; UNKNOWNS],
        };
        let closure = match self.closure {
            Closure::Charge(charge_kg) => (mass_kg - charge_kg) / charge_kg,
            Closure::Fill(fill) => 0.1 * (vessel - fill),
        };
        let intake = self.intake(&cycle);
        cycle.residual = [
            (front.h_j_kg - evaporated_j_kg) / upper.outlet.latent_j_kg(),
            metered.residual,
            closure,
            self.control_residual(point, &cycle),
            (intake.t_k - point.intake_k) / INTAKE_SCALE_K,
            (intake.humidity - point.intake_humidity) / INTAKE_SCALE_HUMIDITY,
            rear_unmetered,
        ];
        Ok(cycle)
    }

    /// The state of the air that the evaporators would draw.
    fn intake(&self, cycle: &Cycle) -> Intake {
        let cabin = &self.cabin;
        if cabin.fresh >= 1.0 {
            return Intake {
                t_k: cabin.outside_k,
                humidity: cabin.outside_humidity,
            };
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

    /// The residual of the control: zero where its aim is met, or where it is at its limit.
    fn control_residual(&self, point: &Point, cycle: &Cycle) -> f64 {
        let demand = point.demand;
        let Demand { least, most } = self.demand;
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
