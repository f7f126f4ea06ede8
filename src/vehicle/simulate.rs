//! What would it read?

use super::clutch::cycling;
use super::compressor::Drive;
use super::condenser::FaceAir;
use super::evaporator::Coil;
use super::expansion::{Orifice, Valve};
use super::fan::Draught;
use super::faults::{charge_kg, charged_with, impose, stands_still};
use super::follow::followed;
use super::hardware::Hardware;
use super::medium::{Composition, Filling, Medium};
use super::plant::{Branch, Cabin, Closure, Control, Metering, Plant, Protection, Warmth};
use super::rest::at_rest;
use super::simulation::Simulation;
use super::solve::{Budget, steady};
use super::transcritical::{Electronic, PROTECTION, high_limit_pa};
use super::{ClutchSense, Conditions, FanDrive, FaultSeverity, Rear, RearLoad, System, Vehicle};
use crate::air::MoistAir;
use crate::error::Error;
use crate::names::{AirSource, Compressor, ErrorKind, Expansion, Quantity};
use crate::units::in_kelvins;

/// Speed at which an engine is held for a test, revolutions per second. Common practice, no source: 1,500 rpm.
const TEST_SPEED_HZ: f64 = 25.0;
/// Relative humidity where none is given.
const USUAL_HUMIDITY: f64 = 0.5;
/// Vehicle speed at which the return of hot air has halved, m/s. Judgement.
const RETURN_HALF_M_S: f64 = 4.0;
/// How fast a cabin comes to its steady state, s. Judgement: 5 minutes.
const CABIN_S: f64 = 300.0;
/// Air in a cabin left in the sun above the outside air, K. Judgement.
const SOAK_K: f64 = 15.0;
/// Gauge pressure at rest, per that of the air, of a circuit that has nothing left to pump. Judgement.
const NOTHING_LEFT: f64 = 0.05;
/// The deepest vacuum that a compressor pulls, per the lowest pressure that is modelled.
const DEEPEST: f64 = 1.05;
/// The demand that stands for a compressor that a switch has stopped.
const STOPPED: f64 = 0.01;

/// The steady state of a vehicle in its conditions, with its faults.
///
/// What is not given in the conditions is taken as in a workshop: 50 % relative humidity, 1,500 rpm (a motor-driven
/// compressor is free up to its own limit), fresh air, highest blower, standstill, and long enough running.
///
/// A commanded displacement is the most that the control asks for; a command of the fan is its speed per that of the full one,
/// whatever drives it.
///
/// A blend or a charge of two refrigerants boils and condenses along its glide; its superheat counts from dew, its
/// subcooling from bubble. R-407C and R-513A stand in the tables; the polynomials of any other mixture are made first, which
/// takes half a millisecond.
///
/// An R-744 system has an electronic valve (the expansion device `txv`) or a fixed orifice with a bypass (`orifice-tube`), an
/// accumulator, an internal heat exchanger, and a compressor that is variable or electric; its subcooling counts from the
/// critical temperature where the high side lies above the critical pressure.
///
/// Errors: `NotFinite` and `OutOfRange` for conditions and severities; `NotAvailable` for a fault that the system cannot
/// have, for R-744 with a clutch that cycles (none is built: each start would take the high side from rest to above 10 MPa),
/// for R-744 in a system made for another refrigerant or the reverse, and for what does not condense in hot weather; those of
/// the mixture model; `NoConvergence` with the residual where no steady state is found within 2,400 evaluations of the circuit.
///
/// ```
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System {
///     nominal_charge_kg: Some(0.65),
///     ..System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal)
/// };
/// let sweeper = Vehicle::typical(system, VehicleClass::Car)?;
/// let day = Conditions {
///     relative_humidity: Some(0.4),
///     engine_speed_hz: Some(25.0),
///     ..Conditions::new(celsius(30.0), Surroundings::at_altitude(1_600.0)?)
/// };
/// let reading = simulate(&sweeper, &day, &[])?;
/// assert!(reading.vent_k < 293.15);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn simulate(vehicle: &Vehicle, conditions: &Conditions, faults: &[FaultSeverity]) -> Result<Simulation, Error> {
    simulate_within(vehicle, conditions, faults, &mut Budget::new())
}

/// The same within what is left of a budget.
pub(super) fn simulate_within(
    vehicle: &Vehicle,
    conditions: &Conditions,
    faults: &[FaultSeverity],
    budget: &mut Budget,
) -> Result<Simulation, Error> {
    let fluids = Fluids::of(&vehicle.system, faults)?;
    let plant = plant_of(vehicle, conditions, faults, &fluids)?;
    let rest = at_rest(&plant, vehicle)?;
    if stands_still(faults) || plant.drive.speed_hz == 0.0 || !starts(&plant, &rest) {
        return Ok(rest);
    }
    let from = |first, budget: &mut Budget| {
        if vehicle.cycles() {
            cycling(&plant, vehicle, first, budget)
        } else {
            Ok((steady(&plant, first, budget)?, None))
        }
    };
    let missed = |error: &Error, budget: &Budget| error.kind == ErrorKind::NoConvergence && !budget.is_spent();
    let mut outcome = from(None, budget);
    if outcome.as_ref().is_err_and(|error| missed(error, budget)) {
        outcome = followed(vehicle, conditions, faults, &fluids, budget).and_then(|near| from(Some(near), budget));
    }
    if outcome.as_ref().is_err_and(|error| missed(error, budget)) {
        budget.embolden();
        outcome = from(None, budget);
    }
    if outcome.as_ref().is_err_and(|error| missed(error, budget)) {
        outcome = followed(vehicle, conditions, faults, &fluids, budget).and_then(|near| from(Some(near), budget));
    }
    let (found, swing) = outcome?;
    let mut simulation = plant.seen(vehicle, &found.point, &found.cycle)?;
    simulation.rounds = budget.spent;
    if let Some(swing) = swing {
        simulation.clutch_cycles_hz = swing.cycles_hz;
        simulation.swing = Some(swing);
    }
    Ok(simulation)
}

/// Whether the compressor starts, and has something to pump: not below the pressure of the switch that guards against an
/// empty circuit, and not where the circuit has come to the pressure of the air.
fn starts(plant: &Plant, rest: &Simulation) -> bool {
    rest.high_side_pa - plant.air_pa > plant.hardware.start_pa.max(NOTHING_LEFT * plant.air_pa)
}

/// What is in the circuit, and what its valves were made for.
pub(super) struct Fluids {
    charged: Filling,
    made_for: Filling,
}

impl Fluids {
    /// The fluids of a system with its faults.
    ///
    /// Errors: those of the media.
    pub(super) fn of(system: &System, faults: &[FaultSeverity]) -> Result<Self, Error> {
        Ok(Self {
            charged: Filling::of(&charged_with(system, faults)?)?,
            made_for: Filling::of(&Composition::of(system.refrigerant, None)?)?,
        })
    }
}

/// The plant of a vehicle in its conditions, with its faults.
pub(super) fn plant_of<'a>(
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
    let humidity = conditions.relative_humidity.unwrap_or(USUAL_HUMIDITY);
    let air_pa = conditions.surroundings.pressure().pa();
    let outside = MoistAir::from_relative_humidity(outside_k, air_pa, humidity)?;
    let speed_m_s = conditions.vehicle_speed_m_s.unwrap_or(0.0);
    let blower = conditions.blower.unwrap_or(1.0);
    let running_s = conditions.running_s;

    let (medium, made_for) = (fluids.charged.medium(), fluids.made_for.medium());
    let transcritical = made_for.is_transcritical();
    let clutch = kind == Compressor::FixedClutch;
    if transcritical != medium.is_transcritical() || (transcritical && clutch) {
        return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
    }
    // A motor-driven compressor runs at a speed of its own, with the engine at rest too; one that is said to run does not stand.
    let given_hz = conditions.driving_hz(kind);
    let own_hz = conditions.compressor_speed_hz;
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
        // Its pressures are others, and what its fans do at them is not known: they run.
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

    // A blower at rest still lets some air past: a hundredth of its highest flow, by buoyancy and leaks.
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
        medium,
        hardware,
        drive: Drive {
            kind,
            speed_hz,
            leakage: 0.0,
            lost: 0.0,
        },
        control,
        demand: (least, most),
        high_limit_pa: high_limit_pa(&medium, hardware.high_limit_pa + air_pa),
        protection: if transcritical {
            PROTECTION
        } else {
            cutouts(&medium, &hardware, air_pa)
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
        restriction_pa: (0.0, 0.0, 0.0),
        high_port: vehicle.high_port,
        clamp_before: false,
    };
    impose(&mut plant, vehicle, faults)?;
    Ok(plant)
}

/// The switches that stop any compressor when the high side rises, or the low side falls, too far. Without a low switch the low
/// side falls to a deep vacuum, 5 % above the lowest pressure that is modelled: from there on the compressor moves no more than
/// comes in. Engineering judgement: the clearance volume ends every real suction.
fn cutouts(medium: &Medium, hardware: &Hardware, air_pa: f64) -> Protection {
    Protection {
        low_pa: (hardware.low_cutout_pa + air_pa).max(DEEPEST * medium.lowest_pa()),
        least: STOPPED,
    }
}

/// Density of the air at which the conductance of the evaporator's air side is stated, kg/m3.
const AIR_KG_M3: f64 = 1.18;

fn rear_branch<'a>(rear: &Rear, vehicle: &Vehicle, front: &Branch<'a>, made_for: Medium<'a>) -> Branch<'a> {
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
        (RearLoad::Coolant { t_k, capacity_w_k }, _) => Warmth::Coolant {
            t_k,
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

/// What opens a clutch that cycles, for the room of the clutch.
pub(super) fn clutch_control(plant: &Plant, sense: ClutchSense, above: f64) -> Control {
    let h = &plant.hardware;
    match sense {
        ClutchSense::LowSide => Control::LowSide {
            set_pa: plant.air_pa + h.switch_opens_pa + above * h.switch_band_pa,
        },
        ClutchSense::Fins => Control::Fin {
            set_k: h.thermostat_opens_k + above * h.thermostat_band_k,
        },
        ClutchSense::Neither => Control::None,
    }
}
