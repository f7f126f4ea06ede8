//! The tables of a readings file, one function each.

use super::instruments::{self, given};
use super::mistakes::Refused;
use super::own_readings::own_readings;
use super::own_table::own_table;
use super::tree::{Entry, Table};
use crate::circuit::{Gauge, Observations, Readings};
use crate::diagnosis::Case;
use crate::error::Error;
use crate::names::Thermometer;
use crate::names::{
    AirSource, Compressor, ErrorKind, Expansion, HighPort, LowPort, Observation, Quantity, ReadingKind,
};
use crate::range::{AMBIENT, EVAPORATORS, GAUGE_PRESSURE, Range};
use crate::units::{GaugePressure, Pressure, Surroundings, Temperature, in_kelvins, text};
use crate::vehicle::{Conditions, System};

/// The tables of a case; a file may hold others beside them.
pub(super) const TABLES: [&str; 6] = [
    "system",
    "conditions",
    "readings",
    "observations",
    "pressure_table",
    "baseline",
];

/// The first readings of a file.
pub(super) fn case(root: &Table<'_>) -> Result<Case, Refused> {
    let advice = "a [system] table names refrigerant, expansion and compressor";
    let system = root.section("system", advice, system);
    let moment = moment(root);
    let own_table = root.told("pressure_table", own_table);
    let own_readings = given(root, "baseline", |list| own_readings(list, system.as_ref().ok())).flatten();
    let (system, moment) = (system?, moment?);
    moment.fits(root, &system)?;
    Ok(Case {
        own_table,
        own_readings,
        ..moment.of(system)
    })
}

/// Refuses bubbles in a sight glass that is not there.
#[inline(never)]
fn no_glass(table: &Table<'_>) -> Result<(), Refused> {
    let seen = Observation::SightGlassBubbles;
    let error = Error::of(ErrorKind::Inconsistent, Quantity::Name);
    let advice = "[system] says that there is no sight glass: leave one of the two out";
    Err(match table.get("observations").map(|entry| entry.table()) {
        Some(Ok(observations)) => observations.get(seen.id()).map_or_else(
            || observations.missing(seen.id(), error.quantity, advice),
            |entry| entry.refuse(error, advice),
        ),
        Some(Err(refused)) => refused,
        None => table.missing("observations", error.quantity, advice),
    })
}

/// Conditions, readings and observations of one time.
pub(super) struct Moment {
    conditions: Conditions,
    readings: Readings,
    observations: Observations,
}

impl Moment {
    /// Nothing, when conditions and observations, as they stand in `table`, can be those of the system.
    #[inline(never)]
    pub(super) fn fits(&self, table: &Table<'_>, system: &System) -> Result<(), Refused> {
        conditions_fit(table, &self.conditions, system)?;
        let bubbles = self.observations.answer(Observation::SightGlassBubbles);
        if system.sight_glass == Some(false) && bubbles.is_some() {
            return no_glass(table);
        }
        Ok(())
    }

    /// The case of a system at this time.
    pub(super) fn of(self, system: System) -> Case {
        let mut case = Case::new(system, self.conditions, self.readings);
        case.observations = self.observations;
        case
    }
}

#[inline(never)]
pub(super) fn moment(table: &Table<'_>) -> Result<Moment, Refused> {
    let advice = "a [conditions] table gives ambient and altitude";
    let conditions = table.section("conditions", advice, conditions);
    let here = conditions.as_ref().ok().map(|conditions| conditions.surroundings);
    let readings = table.told("readings", |table| Ok(readings(table, here)));
    let observations = table.told("observations", |table| Ok(observations(table)));
    Ok(Moment {
        conditions: conditions?,
        readings: readings.unwrap_or_default(),
        observations: observations.unwrap_or(Observations::NONE),
    })
}

#[inline(never)]
pub(super) fn system(table: &Table<'_>) -> Result<System, Refused> {
    table.only(&[
        "refrigerant",
        "expansion",
        "compressor",
        "nominal_charge",
        "low_port",
        "high_port",
        "sight_glass",
        "high_cut_out",
        "evaporators",
    ]);
    let name = |key: &str| table.require(key, Quantity::Name, "the system cannot be judged without it");
    let refrigerant = name("refrigerant").and_then(|name| name.refrigerant());
    let expansion = name("expansion").and_then(|name| name.member(&Expansion::ALL, Expansion::id, Expansion::from_id));
    let compressor =
        name("compressor").and_then(|name| name.member(&Compressor::ALL, Compressor::id, Compressor::from_id));
    let nominal_charge = optional(table, "nominal_charge", Quantity::Mass, text::mass);
    let low_port = given(table, "low_port", |entry| {
        entry.member(&LowPort::ALL, LowPort::id, LowPort::from_id)
    });
    let high_port = given(table, "high_port", |entry| {
        entry.member(&HighPort::ALL, HighPort::id, HighPort::from_id)
    });
    let sight_glass = given(table, "sight_glass", |entry| entry.yes_or_no());
    let high_cut_out = given(table, "high_cut_out", |entry| {
        let pressure = entry.quantity(Quantity::GaugePressure, text::pressure)?;
        match pressure {
            Pressure::Gauge(pressure) => Ok(pressure),
            Pressure::Absolute(_) => Err(entry.refuse(
                Error::of(ErrorKind::Inconsistent, Quantity::GaugePressure),
                "a switch counts from the air round it: \"27 bar gauge\"",
            )),
        }
    });
    let evaporators = given(table, "evaporators", evaporators);
    let mut system = System::new(refrigerant?, expansion?, compressor?);
    system.nominal_charge = nominal_charge;
    system.low_port = low_port;
    system.high_port = high_port;
    system.sight_glass = sight_glass;
    system.evaporators = evaporators;
    system.high_cut_out = high_cut_out;
    if let Err(error) = system.check() {
        let entry = table.get("high_cut_out");
        return Err(entry.map_or_else(
            || table.missing("high_cut_out", error.quantity, ""),
            |entry| {
                entry.refuse(
                    error,
                    "the pressure at which the switch opens, as its label or the service data have it",
                )
            },
        ));
    }
    Ok(system)
}

fn evaporators(entry: &Entry<'_>) -> Result<u8, Refused> {
    match entry.count() {
        Some(1) => Ok(1),
        Some(2) => Ok(2),
        Some(_) | None => {
            let (value, low, high) = (entry.number(), EVAPORATORS.low, EVAPORATORS.high);
            let error = Error::out_of_range(EVAPORATORS.quantity, value, low, high);
            Err(entry.refuse(error, "a number without quotes: 1 or 2"))
        }
    }
}

#[inline(never)]
pub(super) fn conditions(table: &Table<'_>) -> Result<Conditions, Refused> {
    table.only(&[
        "ambient",
        "humidity",
        "altitude",
        "barometer",
        "engine_speed",
        "air_source",
        "blower",
        "vehicle_speed",
        "running",
        "compressor_running",
        "compressor_speed",
        "commanded_displacement",
        "fan_command",
    ]);
    let advice = "write the air temperature in the shade, as in \"74 °F\"";
    let ambient = table
        .require("ambient", Quantity::Temperature, advice)
        .and_then(|entry| within(&entry, AMBIENT));
    let air = surroundings(table, "altitude", "barometer").and_then(|air| {
        air.ok_or_else(|| {
            table.missing(
                "altitude",
                Quantity::Altitude,
                "a gauge reads against the air around it: write altitude = \"1600 m\" or barometer = \"83.5 kPa abs\"",
            )
        })
    });
    let relative_humidity = optional(table, "humidity", Quantity::RelativeHumidity, text::relative_humidity);
    let speed = text::rotational_speed;
    let engine_speed = optional(table, "engine_speed", Quantity::RotationalSpeed, speed);
    let blower = optional(table, "blower", Quantity::BlowerSetting, text::blower_setting);
    let vehicle_speed = optional(table, "vehicle_speed", Quantity::Speed, text::speed);
    let running_for = optional(table, "running", Quantity::Duration, text::duration);
    let air_source = given(table, "air_source", |entry| {
        entry.member(&AirSource::ALL, AirSource::id, AirSource::from_id)
    });
    let compressor_speed = optional(table, "compressor_speed", Quantity::RotationalSpeed, speed);
    let displacement = text::commanded_displacement;
    let commanded_displacement = optional(table, "commanded_displacement", Quantity::Displacement, displacement);
    let fan_command = optional(table, "fan_command", Quantity::FanCommand, text::fan_command);
    let compressor_running = given(table, "compressor_running", |entry| entry.yes_or_no());
    let mut conditions = Conditions::new(ambient?, air?);
    conditions.compressor_running = compressor_running;
    conditions.compressor_speed = compressor_speed;
    conditions.commanded_displacement = commanded_displacement;
    conditions.fan_command = fan_command;
    conditions.relative_humidity = relative_humidity;
    conditions.engine_speed = engine_speed;
    conditions.blower = blower;
    conditions.vehicle_speed = vehicle_speed;
    conditions.running_for = running_for;
    conditions.air_source = air_source;
    match conditions.check() {
        Ok(()) => Ok(conditions),
        Err(error) => Err(refused_command(table, error)),
    }
}

/// Conditions that contradict each other, or that no compressor of this kind has.
fn refused_command(table: &Table<'_>, error: Error) -> Refused {
    let (key, advice) = if error.quantity == Quantity::Displacement {
        (
            "commanded_displacement",
            "only a compressor that an electric valve controls (variable-external) is commanded so",
        )
    } else {
        (
            "compressor_speed",
            "it contradicts compressor_running, or the engine_speed of an electric compressor: give the true one alone",
        )
    };
    table.get(key).map_or_else(
        || table.missing(key, error.quantity, advice),
        |entry| entry.refuse(error, advice),
    )
}

/// Nothing, when the conditions in `table` can be those of this system.
pub(super) fn conditions_fit(table: &Table<'_>, conditions: &Conditions, system: &System) -> Result<(), Refused> {
    let fitting = conditions.check_for(system.compressor);
    fitting.map_err(|error| match table.get("conditions").map(|entry| entry.table()) {
        Some(Ok(conditions)) => refused_command(&conditions, error),
        Some(Err(refused)) => refused,
        None => table.missing("conditions", error.quantity, ""),
    })
}

/// A temperature of this range.
pub(super) fn within(entry: &Entry<'_>, range: Range) -> Result<Temperature, Refused> {
    let temperature = entry.quantity(Quantity::Temperature, text::temperature)?;
    match range.check(in_kelvins(temperature)) {
        Ok(_) => Ok(temperature),
        Err(error) => Err(entry.refuse(error, "")),
    }
}

/// The air of a place by its altitude or its barometer; both at once contradict each other.
fn surroundings(table: &Table<'_>, altitude: &str, barometer: &str) -> Result<Option<Surroundings>, Refused> {
    match (table.get(altitude), table.get(barometer)) {
        (Some(_), Some(entry)) => Err(entry.refuse(
            Error::of(ErrorKind::Inconsistent, Quantity::Altitude),
            "give one of the two",
        )),
        (Some(entry), None) => {
            let metres = entry.quantity(Quantity::Altitude, text::altitude_m)?;
            Surroundings::at_altitude(metres)
                .map(Some)
                .map_err(|error| entry.refuse(error, ""))
        }
        (None, Some(entry)) => instruments::barometer(&entry).map(Some),
        (None, None) => Ok(None),
    }
}

/// The readings, taken in the air `here`, where that could be read.
#[inline(never)]
pub(super) fn readings(table: &Table<'_>, here: Option<Surroundings>) -> Readings {
    let mut known = ReadingKind::ALL.map(ReadingKind::id).to_vec();
    known.extend(["gauge_zero_altitude", "gauge_zero_barometer"]);
    table.only(&known);
    let pressure = |kind: ReadingKind, dial: Gauge| given(table, kind.id(), |entry| instruments::pressure(entry, dial));
    let temperature = |kind: ReadingKind, thermometer: Thermometer| {
        given(table, kind.id(), |entry| instruments::temperature(entry, thermometer))
    };
    let (air, line) = (Thermometer::PocketDigital, Thermometer::ClampThermocouple);
    let gauge_zero = surroundings(table, "gauge_zero_altitude", "gauge_zero_barometer");
    let readings = Readings {
        low_side: pressure(ReadingKind::LowSide, Gauge::LOW_SIDE),
        high_side: pressure(ReadingKind::HighSide, Gauge::HIGH_SIDE),
        vent: temperature(ReadingKind::Vent, air),
        cabin: temperature(ReadingKind::Cabin, air),
        suction_line: temperature(ReadingKind::SuctionLine, line),
        discharge_line: temperature(ReadingKind::DischargeLine, line),
        liquid_line: temperature(ReadingKind::LiquidLine, line),
        condenser_outlet: temperature(ReadingKind::CondenserOutlet, line),
        high_side_transducer: pressure(ReadingKind::HighSideTransducer, Gauge::TRANSDUCER),
        evaporator_sensor: temperature(ReadingKind::EvaporatorSensor, Thermometer::ClampThermistor),
        clutch_cycles: given(table, ReadingKind::ClutchCycles.id(), instruments::frequency),
        gauge_zero: gauge_zero.as_ref().ok().copied().flatten(),
    };
    if let (Ok(zero), Some(here)) = (gauge_zero, here) {
        not_below_vacuum(table, &readings, zero.unwrap_or(here));
    }
    readings
}

/// Refuses a gauge that shows less than nothing: one that was read at sea level and written down up here.
#[inline(never)]
fn not_below_vacuum(table: &Table<'_>, readings: &Readings, air: Surroundings) {
    for (kind, reading) in [
        (ReadingKind::LowSide, readings.low_side),
        (ReadingKind::HighSide, readings.high_side),
        (ReadingKind::HighSideTransducer, readings.high_side_transducer),
    ] {
        let (Some(reading), Some(entry)) = (reading, table.get(kind.id())) else {
            continue;
        };
        let Pressure::Gauge(shown) = reading.value else {
            continue;
        };
        let least = GaugePressure::from_pa(-air.pressure().pa());
        let gauges = Range::new(Quantity::GaugePressure, least.pa(), GAUGE_PRESSURE.high);
        if let Err(error) = gauges.check(shown.pa()) {
            let advice = alloc::format!(
                "where this gauge was zeroed a full vacuum reads {:.1} inHg vacuum, {:.1} kPa gauge",
                least.inhg_vacuum(),
                least.kpa()
            );
            let text = entry
                .instrument(["gauge", "within", "uncertainty"])
                .ok()
                .and_then(|(value, _)| value.as_text());
            entry.refuse_part(text.unwrap_or(""), error, &advice);
        }
    }
}

#[inline(never)]
fn observations(table: &Table<'_>) -> Observations {
    let mut observations = Observations::NONE;
    for entry in table.entries() {
        match Observation::from_id(entry.name()) {
            None => {
                entry.unknown("known here", &Observation::ALL.map(Observation::id));
            }
            Some(observation) => {
                if let Ok(answer) = entry.yes_or_no() {
                    observations = observations.with(observation, answer);
                }
            }
        }
    }
    observations
}

/// What an optional entry of a table reads as; nothing where it is refused, too.
pub(super) fn optional<T>(
    table: &Table<'_>,
    key: &str,
    quantity: Quantity,
    parse: fn(&str) -> Result<T, Error>,
) -> Option<T> {
    given(table, key, |entry| entry.quantity(quantity, parse))
}
