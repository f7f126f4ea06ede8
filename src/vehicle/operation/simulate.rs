//! What a vehicle reads in given conditions with given faults.

use super::build::{Fluids, plant_of};
use super::clutch::cycling;
use super::continuation::followed;
use super::faults::stands_still;
use super::rest::at_rest;
use super::simulation::Simulation;
use crate::error::Error;
use crate::names::ErrorKind;
use crate::vehicle::circuit::plant::Plant;
use crate::vehicle::circuit::solve::{Budget, steady};
use crate::vehicle::description::conditions::Conditions;
use crate::vehicle::description::severity::FaultSeverity;
use crate::vehicle::description::vehicle::Vehicle;

/// Gauge pressure at rest, per that of the air, of a circuit that has nothing left to pump. Judgement.
const NOTHING_LEFT: f64 = 0.05;

/// The steady state of a vehicle in its conditions, with its faults.
///
/// What is not given in the conditions is taken as in a workshop: 50 % relative humidity, 1,500 rpm (a motor-driven
/// compressor is free up to its own limit), fresh air, highest blower, standstill, and long enough running.
///
/// A commanded displacement is the most that the control asks for; a command of the fan is its speed per that of the full one,
/// whatever drives it.
///
/// A blend or a charge of two refrigerants boils and condenses along its glide; its superheat counts from dew, its subcooling
/// from bubble. The polynomials of R-407C and R-513A are in the tables; those of any other mixture are calculated first, which
/// takes half a millisecond.
///
/// An R-744 system has an electronic valve (the expansion device `txv`) or a fixed orifice with a bypass (`orifice-tube`), an
/// accumulator, an internal heat exchanger, and a compressor that is variable or electric; its subcooling counts from the
/// critical temperature where the high side lies above the critical pressure.
///
/// Errors: `NotFinite` and `OutOfRange` for conditions and severities; `NotAvailable` for a fault that the system cannot have,
/// for R-744 with a clutch that cycles (none is built: each start would take the high side from rest to above 10 MPa), for
/// R-744 in a system made for another refrigerant or the reverse, and for a refrigerant that does not condense in hot weather;
/// those of the mixture model; `NoConvergence` with the residual where no steady state is found within 2,400 evaluations of the
/// circuit.
///
/// ```
/// use coldloop::units::{Mass, RelativeHumidity, RotationalSpeed, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System {
///     nominal_charge: Some(Mass::from_g(650.0)),
///     ..System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal)
/// };
/// let sweeper = Vehicle::typical(system, VehicleClass::Car)?;
/// let day = Conditions {
///     relative_humidity: Some(RelativeHumidity::from_percent(40.0)),
///     engine_speed: Some(RotationalSpeed::from_rpm(1_500.0)),
///     ..Conditions::new(celsius(30.0), Surroundings::at_altitude(1_600.0)?)
/// };
/// let reading = simulate(&sweeper, &day, &[])?;
/// assert!(reading.vent < celsius(20.0));
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn simulate(vehicle: &Vehicle, conditions: &Conditions, faults: &[FaultSeverity]) -> Result<Simulation, Error> {
    simulate_within(vehicle, conditions, faults, &mut Budget::new())
}

/// The same within what is left of a budget.
pub(in crate::vehicle) fn simulate_within(
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
        simulation.clutch_cycles = swing.cycles;
        simulation.swing = Some(swing);
    }
    Ok(simulation)
}

/// Whether the compressor starts, and has something to pump: not below the pressure of the switch that guards against an
/// empty circuit, and not where the circuit has come to the pressure of the air.
fn starts(plant: &Plant, rest: &Simulation) -> bool {
    rest.high_side.pa() - plant.air_pa > plant.hardware.start_pa.max(NOTHING_LEFT * plant.air_pa)
}
