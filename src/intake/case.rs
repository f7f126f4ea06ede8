//! The tables of a readings file, one function each.

use super::instruments::{self, given};
use super::refusal::Refused;
use super::tree::Table;
use crate::circuit::{Gauge, Reading, Readings};
use crate::diagnosis::{Case, Observations};
use crate::error::Error;
use crate::names::Thermometer;
use crate::names::{AirSource, Compressor, ErrorKind, Expansion, Observation, Quantity, ReadingKind};
use crate::range::ABSOLUTE_PRESSURE;
use crate::units::{GaugePressure, Surroundings, text};
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
    let section = |name: &str, advice: &str| root.require(name, Quantity::Name, advice)?.table();
    let system = system(&section(
        "system",
        "a [system] table names refrigerant, expansion and compressor",
    )?)?;
    let mut case = moment(system, root)?;
    if let Some(table) = root.table("pressure_table")? {
        case.own_table = Some(super::own_table::own_table(&table)?);
    }
    if let Some(list) = root.get("baseline") {
        case.own_readings = Some(super::own_readings::own_readings(&list, &case.system)?);
    }
    Ok(case)
}

/// Conditions, readings and observations of one time.
pub(super) fn moment(system: System, table: &Table<'_>) -> Result<Case, Refused> {
    let advice = "a [conditions] table gives ambient and altitude";
    let conditions = conditions(&table.require("conditions", Quantity::Name, advice)?.table()?)?;
    let readings = table
        .table("readings")?
        .map(|table| readings(&table))
        .transpose()?
        .unwrap_or_default();
    if let Some(table) = table.table("readings")? {
        not_below_vacuum(&table, &readings, conditions.surroundings)?;
    }
    let mut case = Case::new(system, conditions, readings);
    if let Some(table) = table.table("observations")? {
        case.observations = observations(&table)?;
    }
    Ok(case)
}

pub(super) fn system(table: &Table<'_>) -> Result<System, Refused> {
    table.only(&["refrigerant", "expansion", "compressor", "nominal_charge"])?;
    let name = |key: &str| table.require(key, Quantity::Name, "the system cannot be judged without it");
    let mut system = System::new(
        name("refrigerant")?.refrigerant()?,
        name("expansion")?.member(&Expansion::ALL, Expansion::id, Expansion::from_id)?,
        name("compressor")?.member(&Compressor::ALL, Compressor::id, Compressor::from_id)?,
    );
    system.nominal_charge_kg = optional(table, "nominal_charge", Quantity::Mass, text::mass_kg)?;
    Ok(system)
}

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
    ])?;
    let ambient = table
        .require(
            "ambient",
            Quantity::Temperature,
            "write the air temperature in the shade, as in \"74 °F\"",
        )?
        .quantity(Quantity::Temperature, text::temperature)?;
    let air = surroundings(table, "altitude", "barometer")?.ok_or_else(|| {
        table.missing(
            "altitude",
            Quantity::Altitude,
            "a gauge reads against the air around it: write altitude = \"1600 m\" or barometer = \"83.5 kPa abs\"",
        )
    })?;
    let mut conditions = Conditions::new(ambient, air);
    conditions.relative_humidity = optional(table, "humidity", Quantity::RelativeHumidity, text::relative_humidity)?;
    conditions.engine_speed_hz = optional(
        table,
        "engine_speed",
        Quantity::RotationalSpeed,
        text::rotational_speed_hz,
    )?;
    conditions.blower = optional(table, "blower", Quantity::BlowerSetting, text::blower_setting)?;
    conditions.vehicle_speed_m_s = optional(table, "vehicle_speed", Quantity::Speed, text::speed_m_s)?;
    conditions.running_s = optional(table, "running", Quantity::Duration, text::duration_s)?;
    conditions.air_source = table
        .get("air_source")
        .map(|entry| entry.member(&AirSource::ALL, AirSource::id, AirSource::from_id))
        .transpose()?;
    Ok(conditions)
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
        (None, Some(entry)) => {
            let pressure = entry.quantity(Quantity::AbsolutePressure, text::absolute_pressure)?;
            Surroundings::measured(pressure)
                .map(Some)
                .map_err(|error| entry.refuse(error, ""))
        }
        (None, None) => Ok(None),
    }
}

pub(super) fn readings(table: &Table<'_>) -> Result<Readings, Refused> {
    let mut known = ReadingKind::ALL.map(ReadingKind::id).to_vec();
    known.extend(["gauge_zero_altitude", "gauge_zero_barometer"]);
    table.only(&known)?;
    let pressure = |kind: ReadingKind, dial: Gauge| given(table, kind.id(), |entry| instruments::pressure(entry, dial));
    let temperature = |kind: ReadingKind, thermometer: Thermometer| {
        given(table, kind.id(), |entry| instruments::temperature(entry, thermometer))
    };
    let (air, line) = (Thermometer::PocketDigital, Thermometer::ClampThermocouple);
    Ok(Readings {
        low_side: pressure(ReadingKind::LowSide, Gauge::LOW_SIDE)?,
        high_side: pressure(ReadingKind::HighSide, Gauge::HIGH_SIDE)?,
        vent: temperature(ReadingKind::Vent, air)?,
        cabin: temperature(ReadingKind::Cabin, air)?,
        suction_line: temperature(ReadingKind::SuctionLine, line)?,
        discharge_line: temperature(ReadingKind::DischargeLine, line)?,
        liquid_line: temperature(ReadingKind::LiquidLine, line)?,
        condenser_outlet: temperature(ReadingKind::CondenserOutlet, line)?,
        clutch_cycles_hz: optional(
            table,
            ReadingKind::ClutchCycles.id(),
            Quantity::Frequency,
            text::frequency_hz,
        )?
        .map(Reading::counted),
        gauge_zero: surroundings(table, "gauge_zero_altitude", "gauge_zero_barometer")?,
    })
}

/// Refuses a gauge that shows less than nothing: one that was read at sea level and written down up here.
fn not_below_vacuum(table: &Table<'_>, readings: &Readings, here: Surroundings) -> Result<(), Refused> {
    let air = readings.gauge_zero.unwrap_or(here);
    for (kind, reading) in [
        (ReadingKind::LowSide, readings.low_side),
        (ReadingKind::HighSide, readings.high_side),
    ] {
        let (Some(reading), Some(entry)) = (reading, table.get(kind.id())) else {
            continue;
        };
        if let Err(error) = ABSOLUTE_PRESSURE.check(reading.value.absolute(air).pa()) {
            let least = GaugePressure::from_pa(-air.pressure().pa());
            let advice = alloc::format!(
                "where this gauge was zeroed a full vacuum reads {:.1} inHg vacuum, {:.1} kPa gauge",
                least.inhg_vacuum(),
                least.kpa()
            );
            return Err(entry.refuse(error, &advice));
        }
    }
    Ok(())
}

fn observations(table: &Table<'_>) -> Result<Observations, Refused> {
    let mut observations = Observations::NONE;
    for entry in table.entries() {
        let observation = Observation::from_id(entry.name())
            .ok_or_else(|| entry.unknown("known here", &Observation::ALL.map(Observation::id)))?;
        observations = observations.with(observation, entry.yes_or_no()?);
    }
    Ok(observations)
}

pub(super) fn optional<T>(
    table: &Table<'_>,
    key: &str,
    quantity: Quantity,
    parse: fn(&str) -> Result<T, Error>,
) -> Result<Option<T>, Refused> {
    table.get(key).map(|entry| entry.quantity(quantity, parse)).transpose()
}
