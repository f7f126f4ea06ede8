//! Builds the plant of a vehicle in its conditions with its faults: parts, controls, cabin.

use super::faults::{charge_kg, charged_with, impose};
use crate::air::MoistAir;
use crate::error::Error;
use crate::names::{AirSource, Compressor, ErrorKind, Expansion, Quantity};
use crate::units::{RelativeHumidity, RotationalSpeed, Speed, TimeSpan, in_kelvins};
use crate::vehicle::circuit::plant::{
    Branch, Cabin, Closure, Control, Demand, Metering, Plant, Protection, Restrictions, Warmth,
};
use crate::vehicle::description::conditions::Conditions;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::description::severity::FaultSeverity;
use crate::vehicle::description::system::System;
use crate::vehicle::description::vehicle::{FanDrive, Rear, RearLoad, Vehicle};
use crate::vehicle::parts::co2_metering::Electronic;
use crate::vehicle::parts::compressor::Drive;
use crate::vehicle::parts::condenser::FaceAir;
use crate::vehicle::parts::evaporator::Coil;
use crate::vehicle::parts::expansion::{Orifice, Valve};
use crate::vehicle::parts::fan::Draught;
use crate::vehicle::working_fluid::made::Composition;
use crate::vehicle::working_fluid::pure_or_mixed::{Filling, WorkingFluid};

/// Speed at which an engine is held for a test, revolutions per second. Common practice, no source: 1,500 rpm.
const TEST_SPEED_HZ: f64 = 25.0;
/// Relative humidity where none is given.
const USUAL_HUMIDITY: f64 = 0.5;
/// Vehicle speed at which the return of hot air has halved, m/s. Judgement.
const RETURN_HALF_M_S: f64 = 4.0;
/// Time constant of a cabin, s. Judgement: 5 minutes.
const CABIN_S: f64 = 300.0;
/// Air in a cabin left in the sun above the outside air, K. Judgement.
const SOAK_K: f64 = 15.0;
/// The deepest vacuum that a compressor pulls, per the lowest pressure that is modelled.
const DEEPEST: f64 = 1.05;
/// The demand that represents a compressor stopped by a switch.
const STOPPED: f64 = 0.01;

/// What is in the circuit, and what its valves were made for.
pub(in crate::vehicle) struct Fluids {
    charged: Filling,
    made_for: Filling,
}

impl Fluids {
    /// The fluids of a system with its faults.
    ///
    /// Errors: those of the fluids.
    pub(in crate::vehicle) fn of(system: &System, faults: &[FaultSeverity]) -> Result<Self, Error> {
        Ok(Self {
            charged: Filling::of(&charged_with(system, faults)?)?,
            made_for: Filling::of(&Composition::of(system.refrigerant, None)?)?,
        })
    }
}

/// The plant of a vehicle in its conditions, with its faults.
pub(in crate::vehicle) fn plant_of<'a>(
    vehicle: &Vehicle,
    conditions: &Conditions,
    faults: &[FaultSeverity],
    fluids: &'a Fluids,
) -> Result<Plant<'a>, Error> {
    let hardware = vehicle.hardware;
    let system = vehicle.system;
    let kind = system.compressor;
    conditions.check_for(kind)?;
    let outside_k = in_kelvins(conditions.ambient);
    let humidity = conditions
        .relative_humidity
        .map_or(USUAL_HUMIDITY, RelativeHumidity::fraction);
    let air_pa = conditions.surroundings.pressure().pa();
    let outside = MoistAir::from_relative_humidity(outside_k, air_pa, humidity)?;
    let speed_m_s = conditions.vehicle_speed.map_or(0.0, Speed::m_s);
    let blower = conditions.blower.unwrap_or(1.0);
    let running_s = conditions.running_for.map(TimeSpan::seconds);

    let (fluid, made_for) = (fluids.charged.fluid(), fluids.made_for.fluid());
    let transcritical = made_for.is_transcritical();
    let clutch = kind == Compressor::FixedClutch;
    if transcritical != fluid.is_transcritical() || (transcritical && clutch) {
        return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
    }
    // A motor-driven compressor has a speed of its own and runs with the engine off too.
    let given_hz = conditions.driving_hz(kind);
    let own_hz = conditions.compressor_speed.map(RotationalSpeed::hz);
    let (speed_hz, engine_hz) = match kind {
        Compressor::Electric => (given_hz.unwrap_or(hardware.electric_speed_hz), TEST_SPEED_HZ),
        Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
            let driven = own_hz.map(|hz| hz / hardware.pulley_ratio);
            let engine_hz = given_hz.or(driven).unwrap_or(TEST_SPEED_HZ);
            (own_hz.unwrap_or(engine_hz * hardware.pulley_ratio), engine_hz)
        }
    };
    let speed_hz = if conditions.at_rest(kind) { 0.0 } else { speed_hz };
    let control = match kind {
        Compressor::FixedClutch => Control::None,
        Compressor::VariableInternal => Control::Internal {
            set_pa: hardware.internal_set_pa,
            slope: hardware.internal_slope,
        },
        Compressor::VariableExternal => Control::LowSide {
            set_pa: hardware.external_set_pa,
        },
        Compressor::Electric => Control::Air {
            set_k: hardware.electric_set_k,
        },
    };

    let density = outside.density_kg_m3();
    let slow = speed_m_s / RETURN_HALF_M_S;
    let air_cp_j_kg_k = 1_006.0 + 1_860.0 * outside.humidity_ratio();
    let air = FaceAir {
        t_k: outside_k,
        flow_kg_s: 0.0,
        cp_j_kg_k: air_cp_j_kg_k,
        open: 1.0,
        returned: hardware.hot_air_return / (1.0 + slow * slow),
    };
    let mut draught = Draught::of(&hardware, air, density, hardware.ram_velocity_ratio * speed_m_s, air_pa);
    if transcritical {
        // How fans follow the pressures of R-744 is unknown: they are taken to run at full speed.
        draught.slow = 1.0;
    }
    match vehicle.fan {
        FanDrive::Pressure => {}
        FanDrive::Always => draught.slow = 1.0,
        FanDrive::Engine => draught.driven(engine_hz / hardware.fan_engine_hz),
    }
    if let Some(command) = conditions.fan_command {
        draught.driven(command);
    }
    let least = Plant::least_demand(kind, &hardware);
    let most = conditions
        .commanded_displacement
        .map_or(1.0, |commanded| f64::max(commanded, least));

    // With the blower off a hundredth of its highest flow passes, by buoyancy and leaks.
    let ratio = blower.max(0.01);
    let flow_kg_s = hardware.blower_m3_s * ratio * density / (1.0 + outside.humidity_ratio());
    let metering = match system.expansion {
        Expansion::Txv if transcritical => Metering::Electronic(Electronic {
            area_m2: hardware.valve_area_m2,
            least: 0.0,
            most: 1.0,
        }),
        Expansion::Txv => Metering::Valve(Valve::of(made_for, &hardware)),
        Expansion::OrificeTube => Metering::Orifice(Orifice::of(&hardware)),
    };
    let front = Branch {
        metering,
        coil: Coil::of(&hardware),
        warmth: Warmth::Air {
            flow_kg_s,
            flow_ratio: ratio * density / AIR_KG_M3,
        },
        volume_m3: hardware.evaporator_volume_m3,
    };
    let rear = vehicle
        .rear
        .filter(|rear| rear.open)
        .map(|rear| rear_branch(&rear, vehicle, &front, made_for));

    let recirculated = match conditions.air_source {
        Some(AirSource::Recirculated) => true,
        Some(AirSource::Fresh) | None => false,
    };
    let cabin = Cabin {
        outside_k,
        outside_humidity: outside.humidity_ratio(),
        fresh: if recirculated { hardware.fresh_share } else { 1.0 },
        soaked: running_s.map_or(0.0, |s| libm::exp(-s / CABIN_S)),
        soak_k: outside_k + SOAK_K,
        wall_w_k: hardware.cabin_w_k,
        load_w: hardware.cabin_load_w,
        moisture_kg_s: hardware.cabin_moisture_kg_s,
        heated: hardware.heater_leak,
        heater_k: hardware.heater_k.max(outside_k),
        duct_gain: hardware.duct_gain,
    };
    let mut plant = Plant {
        fluid,
        hardware,
        drive: Drive {
            kind,
            speed_hz,
            leakage: 0.0,
            lost: 0.0,
        },
        control,
        demand: Demand { least, most },
        high_limit_pa: high_limit_pa(&fluid, hardware.high_limit_pa + air_pa),
        protection: if transcritical {
            PROTECTION
        } else {
            cutouts(&fluid, &hardware, air_pa)
        },
        draught,
        front,
        rear,
        receiver: system.expansion == Expansion::Txv && !transcritical,
        cabin,
        air_pa,
        air_cp_j_kg_k,
        closure: Closure::Charge(charge_kg(vehicle, faults)),
        leaked: false,
        gas_mol: 0.0,
        icing: false,
        restrictions: Restrictions::default(),
        high_port: vehicle.high_port,
        clamp_before: false,
    };
    impose(&mut plant, vehicle, faults)?;
    Ok(plant)
}

/// The switches that stop any compressor at too high a high side, or too low a low side. Without a low switch the low side falls to a
/// deep vacuum, 5 % above the lowest pressure that is modelled. Engineering judgement: there the clearance volume ends the
/// suction of a real compressor.
fn cutouts(fluid: &WorkingFluid, hardware: &Hardware, air_pa: f64) -> Protection {
    Protection {
        low_pa: (hardware.low_cutout_pa + air_pa).max(DEEPEST * fluid.lowest_pa()),
        least: STOPPED,
    }
}

/// Density of the air at which the conductance of the evaporator's air side is stated, kg/m3.
const AIR_KG_M3: f64 = 1.18;

fn rear_branch<'a>(rear: &Rear, vehicle: &Vehicle, front: &Branch<'a>, made_for: WorkingFluid<'a>) -> Branch<'a> {
    let mut valve = Valve::of(made_for, &vehicle.hardware);
    valve.area_m2 *= rear.size;
    let mut coil = front.coil;
    coil.air_w_k *= rear.size;
    coil.boiling_w_k *= rear.size;
    coil.reference_flow_kg_s *= rear.size;
    let warmth = match (rear.load, front.warmth) {
        (RearLoad::Air, Warmth::Air { flow_kg_s, flow_ratio }) => Warmth::Air {
            flow_kg_s: flow_kg_s * rear.size,
            flow_ratio,
        },
        (RearLoad::Air, coolant @ Warmth::Coolant { .. }) => coolant,
        (RearLoad::Coolant { inlet, capacity_w_k }, _) => Warmth::Coolant {
            t_k: in_kelvins(inlet),
            // Half water, half glycol.
            flow_kg_s: capacity_w_k / 3_500.0,
            cp_j_kg_k: 3_500.0,
        },
    };
    Branch {
        metering: Metering::Valve(valve),
        coil,
        warmth,
        volume_m3: front.volume_m3 * rear.size,
    }
}

/// The highest setting of that protection, per the highest pressure that is modelled: a switch that would open next to the critical
/// pressure or above it never opens (R-1234yf: 3.4 MPa). Judgement.
const HIGHEST_LIMIT: f64 = 0.965;
/// The protection of R-744 systems: a low side at saturation near -40 °C, far from dry ice, or a high side at its limit. Judgement.
pub(in crate::vehicle) const PROTECTION: Protection = Protection {
    low_pa: 1.0e6,
    least: 0.01,
};

/// The pressure at which protection reduces the demand, Pa absolute, for a switch that is set to `set_pa`.
pub(in crate::vehicle) fn high_limit_pa(fluid: &WorkingFluid, set_pa: f64) -> f64 {
    set_pa.min(HIGHEST_LIMIT * fluid.highest_pa())
}
