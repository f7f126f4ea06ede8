//! The readings that are fitted together, as a technician notes them.

use coldloop::air::MoistAir;
use coldloop::circuit::{Derived, Reading, Readings};
use coldloop::expected::Weather;
use coldloop::units::{Temperature, in_kelvins};
use coldloop::vehicle::{Conditions, Instruments, Simulation, System};
use coldloop::{Compressor, Error, ErrorKind, Quantity};

/// How many features there are.
pub(crate) const FEATURES: usize = 8;
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
pub(crate) const CYCLES: usize = 7;
/// The features of every system; that behind them is of a cycling clutch.
pub(crate) const THERMAL: usize = 7;

/// The low side counts no colder than this, K: a needle at vacuum tells that it is there, not how deep.
/// Source: engineering judgement; 39 kPa of R-134a.
pub(crate) const COLDEST_K: f64 = 228.15;

/// What faultless instruments show of a simulated system.
pub(crate) fn readings(simulation: &Simulation, conditions: &Conditions) -> Result<Readings, Error> {
    let faultless = Instruments {
        missing: 0.0,
        pressure_step_pa: 0.0,
        temperature_step_k: 0.0,
        ..Instruments::SHOP
    };
    faultless.measure(simulation, conditions.surroundings, &[0.5; Instruments::UNIFORMS])
}

/// The features of these readings, counted from the ambient as it was written down.
///
/// Errors: a reading that is not there, and those of the saturation line.
pub(crate) fn of(system: &System, conditions: &Conditions, readings: &Readings) -> Result<[f64; FEATURES], Error> {
    let missing = || Error::of(ErrorKind::NotAvailable, Quantity::Residual);
    let ambient_k = in_kelvins(conditions.ambient);
    let derived = Derived::new(system.refrigerant, readings, conditions.surroundings, None)?;
    let low_k = derived.low_dew_k.map_or(COLDEST_K, |dew| dew.value.max(COLDEST_K));
    let line = |reading: Option<Reading<Temperature>>| reading.map(|r| in_kelvins(r.value) - ambient_k);
    let cycles_hz = match system.compressor {
        Compressor::FixedClutch => readings.clutch_cycles_hz.ok_or_else(missing)?.value,
        Compressor::VariableInternal | Compressor::VariableExternal | Compressor::Electric => 0.0,
    };
    Ok([
        low_k - ambient_k,
        derived.high_bubble_k.ok_or_else(missing)?.value - ambient_k,
        line(readings.vent).ok_or_else(missing)?,
        line(readings.suction_line).ok_or_else(missing)?,
        line(readings.liquid_line).ok_or_else(missing)?,
        line(readings.condenser_outlet).ok_or_else(missing)?,
        line(readings.discharge_line).ok_or_else(missing)?,
        (60.0 * cycles_hz).ln_1p(),
    ])
}

/// The terms of these conditions in a system that has settled, the humidity being at most the most of the fit.
///
/// Errors: those of [`Weather::of`].
pub(crate) fn weather(system: &System, conditions: &Conditions) -> Result<Weather, Error> {
    let mut conditions = Conditions {
        running_s: None,
        ..*conditions
    };
    let (t_k, air_pa) = (in_kelvins(conditions.ambient), conditions.surroundings.pressure().pa());
    if let Some(relative) = conditions.relative_humidity {
        let ratio = MoistAir::from_relative_humidity(t_k, air_pa, relative)?.humidity_ratio();
        let range = Weather::HUMIDITY_RATIO;
        let within = ratio.clamp(1.001 * range.low, 0.999 * range.high);
        if within != ratio {
            let air = MoistAir::from_humidity_ratio(t_k, air_pa, within)?;
            conditions.relative_humidity = Some(air.relative_humidity());
        }
    }
    Weather::of(system, &conditions)
}

/// The conditions that move the shift of a fault: 1, a, w and s of `tables/atlas/README.md`.
///
/// Errors: those of moist air; the humidity must be known, and the speed of an engine.
pub(crate) fn moves(system: &System, conditions: &Conditions) -> Result<[f64; 4], Error> {
    let missing = || Error::of(ErrorKind::NotAvailable, Quantity::RelativeHumidity);
    let (t_k, air_pa) = (in_kelvins(conditions.ambient), conditions.surroundings.pressure().pa());
    let relative = conditions.relative_humidity.ok_or_else(missing)?;
    let air = MoistAir::from_relative_humidity(t_k, air_pa, relative)?;
    let speed = match system.compressor {
        Compressor::Electric => 0.0,
        Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
            (conditions.engine_speed_hz.ok_or_else(missing)? / 25.0).ln()
        }
    };
    Ok([
        1.0,
        (t_k - 303.15) / 10.0,
        (air.humidity_ratio() - 0.012) / 0.010,
        speed,
    ])
}

/// A matrix of noughts.
pub(crate) const NOTHING: [[f64; FEATURES]; FEATURES] = [[0.0; FEATURES]; FEATURES];
