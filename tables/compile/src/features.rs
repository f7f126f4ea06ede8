//! The readings that are fitted together, as a technician notes them.

use coldloop::air::MoistAir;
use coldloop::circuit::{FeatureVector, Readings};
use coldloop::expected::Weather;
use coldloop::inner::expected::AtlasWeather;
use coldloop::units::{PressureDifference, RelativeHumidity, in_kelvins, kelvins_difference};
use coldloop::vehicle::{Conditions, Instruments, Simulation, System};
use coldloop::{Compressor, Error, ErrorKind, Quantity};

/// How many features there are.
pub(crate) const FEATURES: usize = FeatureVector::COUNT;
/// Their names, in this order everywhere. All but the last are temperatures above the ambient, K: saturation (dew on the low
/// side, bubble on the high side), air and lines. The last is ln(1 + engagements of the clutch per minute).
pub(crate) const NAMES: [&str; FEATURES] = [
    "low_side",
    "high_side",
    "vent",
    "suction_line",
    "liquid_line",
    "condenser_outlet",
    "discharge_line",
    "clutch_cycles",
];
/// Place of the clutch's cycles.
pub(crate) const CYCLES: usize = FeatureVector::CLUTCH_CYCLES;
/// The features of every system; that behind them is of a cycling clutch.
pub(crate) const THERMAL: usize = 7;

/// What faultless instruments show of a simulated system.
pub(crate) fn readings(simulation: &Simulation, conditions: &Conditions) -> Result<Readings, Error> {
    let faultless = Instruments {
        missing: 0.0,
        pressure_step: PressureDifference::from_pa(0.0),
        temperature_step: kelvins_difference(0.0),
        ..Instruments::SHOP
    };
    faultless.measure(simulation, conditions.surroundings, &[0.5; Instruments::UNIFORMS])
}

/// The features of these readings, counted from the ambient as it was written down; nought for a clutch that does not cycle.
///
/// Errors: a reading that is not there, and a pressure beyond the critical one.
pub(crate) fn of(system: &System, conditions: &Conditions, readings: &Readings) -> Result<[f64; FEATURES], Error> {
    let missing = || Error::of(ErrorKind::NotAvailable, Quantity::Residual);
    let (ambient, air) = (conditions.ambient, conditions.surroundings);
    let vector = FeatureVector::of(system.refrigerant, readings, ambient, air)?;
    if vector.off_scale {
        return Err(missing());
    }
    let cycles = system.compressor == Compressor::FixedClutch;
    let mut features = [0.0; FEATURES];
    for (place, (feature, read)) in features.iter_mut().zip(vector.read).enumerate() {
        if place != CYCLES || cycles {
            *feature = read.ok_or_else(missing)?.value;
        }
    }
    Ok(features)
}

/// The terms of these conditions in a system that has settled, the humidity being at most the most of the fit.
///
/// Errors: those of [`Weather::of`].
pub(crate) fn weather(system: &System, conditions: &Conditions) -> Result<Weather, Error> {
    let mut conditions = Conditions {
        running_for: None,
        ..*conditions
    };
    let (t_k, air_pa) = (in_kelvins(conditions.ambient), conditions.surroundings.pressure().pa());
    if let Some(relative) = conditions.relative_humidity {
        let ratio = MoistAir::from_relative_humidity(t_k, air_pa, relative.fraction())?.humidity_ratio();
        let range = Weather::HUMIDITY_RATIO;
        let within = ratio.clamp(1.001 * range.low, 0.999 * range.high);
        if within != ratio {
            let air = MoistAir::from_humidity_ratio(t_k, air_pa, within)?;
            conditions.relative_humidity = Some(RelativeHumidity::from_fraction(air.relative_humidity()));
        }
    }
    Weather::of(system, &conditions)
}

/// The conditions that move the shift of a fault: 1, a, w and s of `tables/atlas/README.md`.
///
/// Errors: those of moist air; the humidity must be known, and the speed of an engine.
pub(crate) fn moves(system: &System, conditions: &Conditions) -> Result<[f64; AtlasWeather::MOVES], Error> {
    let missing = || Error::of(ErrorKind::NotAvailable, Quantity::RelativeHumidity);
    let (ambient_k, air_pa) = (in_kelvins(conditions.ambient), conditions.surroundings.pressure().pa());
    let relative = conditions.relative_humidity.ok_or_else(missing)?;
    let air = MoistAir::from_relative_humidity(ambient_k, air_pa, relative.fraction())?;
    let ln_speed = ln_engine_speed(system.compressor, conditions).ok_or_else(missing)?;
    Ok(AtlasWeather {
        ambient_k,
        air_pa,
        humidity_ratio: air.humidity_ratio(),
        ln_speed,
        recirculated: 0.0,
        blower: 1.0,
    }
    .moves())
}

/// ln(engine speed / 1,500 rpm), zero where a motor drives the compressor; `None` where an engine's speed is not known.
pub(crate) fn ln_engine_speed(compressor: Compressor, conditions: &Conditions) -> Option<f64> {
    match compressor {
        Compressor::Electric => Some(0.0),
        Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
            conditions.engine_speed.map(|speed| (speed.hz() / 25.0).ln())
        }
        _ => unreachable!("a new member of the vocabulary"),
    }
}

/// A matrix of noughts.
pub(crate) const NOTHING: [[f64; FEATURES]; FEATURES] = [[0.0; FEATURES]; FEATURES];
