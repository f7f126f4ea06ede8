//! A vehicle in its conditions, with its faults: everything that the balance of the circuit needs, in plain numbers.

use crate::names::Compressor;
use crate::names::HighPort;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::parts::co2_metering::Electronic;
use crate::vehicle::parts::compressor::Drive;
use crate::vehicle::parts::evaporator::Coil;
use crate::vehicle::parts::expansion::{Orifice, Valve};
use crate::vehicle::parts::fan::Draught;
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// What meters the refrigerant into an evaporator.
#[derive(Clone, Copy, Debug)]
#[allow(clippy::large_enum_variant)] // without alloc the larger one cannot be boxed
pub(in crate::vehicle) enum Metering<'a> {
    Valve(Valve<'a>),
    Orifice(Orifice),
    Electronic(Electronic),
}

/// What an evaporator takes its heat from.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) enum Warmth {
    /// Cabin air at this flow of dry air, kg/s, and this flow over the highest.
    Air { flow_kg_s: f64, flow_ratio: f64 },
    /// A coolant at its inlet temperature (K) with its flow (kg/s) and specific heat (J/(kg K)).
    Coolant { t_k: f64, flow_kg_s: f64, cp_j_kg_k: f64 },
}

/// One evaporator with its expansion device.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Branch<'a> {
    pub metering: Metering<'a>,
    pub coil: Coil,
    pub warmth: Warmth,
    pub volume_m3: f64,
}

/// What the compressor is controlled by.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) enum Control {
    /// Holds nothing: runs at its limit.
    None,
    /// Holds the low side at this pressure, Pa absolute.
    LowSide { set_pa: f64 },
    /// Holds the low side at a pressure that falls as the high side rises, as the valve inside a compressor does.
    Internal { set_pa: f64, slope: f64 },
    /// Holds the fins of the evaporator at this temperature, K.
    Fin { set_k: f64 },
    /// Holds the air behind the evaporator at this temperature, K.
    Air { set_k: f64 },
}

/// Protection that stops the compressor where the least demand of its control is still too much.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Protection {
    /// Low-side pressure below which it reduces the demand, Pa absolute. [`Plant::high_limit_pa`] is the limit of the high side.
    pub low_pa: f64,
    /// The least demand that it leaves, which represents a stopped compressor.
    pub least: f64,
}

/// The air of the cabin, as it comes back to the blower.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Cabin {
    /// Temperature of the outside air, K.
    pub outside_k: f64,
    /// Its humidity ratio.
    pub outside_humidity: f64,
    /// Part of the air that is drawn from the outside.
    pub fresh: f64,
    /// Part of the cabin's air that the air conditioning has not yet cooled, 0 in the steady state.
    pub soaked: f64,
    /// Temperature of such air, K.
    pub soak_k: f64,
    /// Conductance to the outside, W/K.
    pub wall_w_k: f64,
    /// Heat of sun and people, W.
    pub load_w: f64,
    /// Water of people, kg/s.
    pub moisture_kg_s: f64,
    /// Part of the air that passes the heater core.
    pub heated: f64,
    /// Temperature behind the heater core, K.
    pub heater_k: f64,
    /// Part of the difference to the dashboard that the ducts take up.
    pub duct_gain: f64,
}

/// What closes the balance: a charge, or (to find the charge of a design) a fill of the receiver or accumulator.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) enum Closure {
    /// Mass of refrigerant, kg.
    Charge(f64),
    /// Part of the vessel that liquid fills.
    Fill(f64),
}

/// The range of the demand: part of stroke, running time or speed.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Demand {
    pub least: f64,
    pub most: f64,
}

/// Pressure drops at the reference flow that restrictions add, Pa.
#[derive(Clone, Copy, Debug, Default)]
pub(in crate::vehicle) struct Restrictions {
    pub discharge_pa: f64,
    pub liquid_pa: f64,
    pub suction_pa: f64,
}

/// The air before the evaporators.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Intake {
    /// Temperature, K.
    pub t_k: f64,
    /// Humidity ratio.
    pub humidity: f64,
}

/// A vehicle in its conditions, with its faults.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Plant<'a> {
    pub fluid: WorkingFluid<'a>,
    pub hardware: Hardware,
    pub drive: Drive,
    pub control: Control,
    /// Demand that the control can ask for.
    pub demand: Demand,
    /// High-side pressure at which protection takes over, Pa absolute.
    pub high_limit_pa: f64,
    /// Protection that goes further than the control does.
    pub protection: Protection,
    pub draught: Draught,
    pub front: Branch<'a>,
    pub rear: Option<Branch<'a>>,
    /// Whether a receiver stores liquid behind the condenser; otherwise an accumulator before the compressor does.
    pub receiver: bool,
    pub cabin: Cabin,
    /// Pressure of the surrounding air, Pa.
    pub air_pa: f64,
    /// Specific heat of the cabin's air per kilogram of dry air, J/(kg K).
    pub air_cp_j_kg_k: f64,
    pub closure: Closure,
    /// Whether charge has leaked out.
    pub leaked: bool,
    /// Non-condensable gas in the condenser, mol.
    pub gas_mol: f64,
    /// Whether the low limit that should keep the evaporator from freezing has failed.
    pub icing: bool,
    /// What restrictions add to the pressure drops.
    pub restrictions: Restrictions,
    /// Whether the high-side port reads before or behind the condenser and its restrictions.
    pub high_port: HighPort,
    /// Whether the thermometer of the liquid line sits before a restriction of it.
    pub clamp_before: bool,
}

impl Plant<'_> {
    /// The smallest demand of a kind of compressor; 0.01 represents a clutch that stays open.
    pub(in crate::vehicle) fn least_demand(kind: Compressor, hardware: &Hardware) -> f64 {
        match kind {
            Compressor::FixedClutch => 0.01,
            Compressor::VariableInternal | Compressor::VariableExternal => hardware.least_stroke,
            Compressor::Electric => hardware.least_speed,
        }
    }
}

impl Branch<'_> {
    /// Leaves the part `left` of the air flow.
    pub(in crate::vehicle) fn lose_air(&mut self, left: f64) {
        if let Warmth::Air { flow_kg_s, flow_ratio } = &mut self.warmth {
            *flow_kg_s *= left;
            *flow_ratio *= left;
        }
    }
}

impl Cabin {
    /// Temperature at the vents for air that leaves the evaporator at `air_k`, K.
    ///
    /// The dashboard is taken 8 K above the outside air.
    pub(in crate::vehicle) fn vent_k(&self, air_k: f64) -> f64 {
        let mixed_k = air_k + self.heated * (self.heater_k - air_k);
        mixed_k + self.duct_gain * (self.outside_k + 8.0 - mixed_k)
    }

    /// Temperature of the cabin's air when `capacity_w_k` of air come in at `vent_k`, K.
    pub(in crate::vehicle) fn air_k(&self, vent_k: f64, capacity_w_k: f64) -> f64 {
        let settled_k =
            (capacity_w_k * vent_k + self.wall_w_k * self.outside_k + self.load_w) / (capacity_w_k + self.wall_w_k);
        settled_k + self.soaked * (self.soak_k - settled_k)
    }

    /// The air before the evaporator when the air behind it is as given.
    pub(in crate::vehicle) fn intake(&self, air_k: f64, humidity: f64, flow_kg_s: f64, cp_j_kg_k: f64) -> Intake {
        let cabin_k = self.air_k(self.vent_k(air_k), flow_kg_s * cp_j_kg_k);
        let cabin_humidity = humidity + self.moisture_kg_s / flow_kg_s;
        Intake {
            t_k: cabin_k + self.fresh * (self.outside_k - cabin_k),
            humidity: cabin_humidity + self.fresh * (self.outside_humidity - cabin_humidity),
        }
    }
}
