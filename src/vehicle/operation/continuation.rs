//! Continuation: a steady state that no start finds is approached in steps from one that is easily found.

use super::build::{Fluids, plant_of};
use super::design::design_conditions;
use crate::error::Error;
use crate::names::{Compressor, ErrorKind, Fault};
use crate::units::{AbsolutePressure, RelativeHumidity, RotationalSpeed, Speed, Surroundings, in_kelvins, kelvins};
use crate::vehicle::circuit::plant::Plant;
use crate::vehicle::circuit::solve::{Budget, steady, steady_near};
use crate::vehicle::circuit::unknowns::Point;
use crate::vehicle::description::conditions::Conditions;
use crate::vehicle::description::severity::FaultSeverity;
use crate::vehicle::description::vehicle::Vehicle;

/// The most faults that are scaled; with more, all are given in full at once.
const MOST_FAULTS: usize = 8;
/// The first step, and the least one before the search gives up, per the whole way.
const FIRST: f64 = 0.25;
const LEAST: f64 = 1.0 / 256.0;

/// The steady state of a vehicle by continuation: conditions and severities change together, in steps, from the design weather
/// without faults to the given ones.
///
/// Each step starts from the state before it only: where that fails, a shorter step costs less than other starts.
///
/// Errors: `NoConvergence` where the way or the budget ends, and those of the conditions and faults.
pub(in crate::vehicle) fn followed(
    vehicle: &Vehicle,
    conditions: &Conditions,
    faults: &[FaultSeverity],
    fluids: &Fluids,
    budget: &mut Budget,
) -> Result<Point, Error> {
    let mut point = steady(&part_way(vehicle, conditions, faults, fluids, 0.0)?, None, budget)?.point;
    let (mut at, mut step) = (0.0, FIRST);
    while at < 1.0 {
        let next = f64::min(at + step, 1.0);
        let plant = part_way(vehicle, conditions, faults, fluids, next)?;
        match steady_near(&plant, point, budget) {
            Ok(found) => {
                (point, at) = (found.point, next);
                step *= 1.5;
            }
            Err(error) if error.kind == ErrorKind::NoConvergence && step > LEAST && !budget.is_spent() => step *= 0.4,
            Err(error) => return Err(error),
        }
    }
    Ok(point)
}

/// The plant at a part of the way from the design weather without faults to the given conditions and faults.
fn part_way<'a>(
    vehicle: &Vehicle,
    conditions: &Conditions,
    faults: &[FaultSeverity],
    fluids: &'a Fluids,
    part: f64,
) -> Result<Plant<'a>, Error> {
    let design = design_conditions();
    let between = |from: f64, to: f64| from + part * (to - from);
    let ambient_k = between(in_kelvins(design.ambient), in_kelvins(conditions.ambient));
    let air_pa = between(
        design.surroundings.pressure().pa(),
        conditions.surroundings.pressure().pa(),
    );
    let belted = vehicle.system.compressor != Compressor::Electric;
    let on_the_way = Conditions {
        ambient: kelvins(ambient_k),
        relative_humidity: conditions
            .relative_humidity
            .map(|relative| RelativeHumidity::from_fraction(between(0.5, relative.fraction()))),
        surroundings: Surroundings::measured(AbsolutePressure::from_pa(air_pa))?,
        engine_speed: conditions.engine_speed.map(|speed| match belted {
            true => RotationalSpeed::from_hz(between(25.0, speed.hz())),
            false => speed,
        }),
        blower: conditions.blower.map(|blower| between(1.0, blower)),
        vehicle_speed: conditions
            .vehicle_speed
            .map(|speed| Speed::from_m_s(between(0.0, speed.m_s()))),
        ..*conditions
    };
    let mut scaled = [FaultSeverity::new(Fault::NoFault, 0.0); MOST_FAULTS];
    let Some(scaled) = scaled.get_mut(..faults.len()) else {
        return plant_of(vehicle, &on_the_way, faults, fluids);
    };
    for (scaled, fault) in scaled.iter_mut().zip(faults) {
        *scaled = *fault;
        // The share of another refrigerant is not scaled.
        if fault.fault != Fault::WrongRefrigerant {
            scaled.severity = part * fault.severity;
        }
    }
    plant_of(vehicle, &on_the_way, scaled, fluids)
}
