//! What was done to a vehicle, as a readings file tells it: a pressure test, an evacuation, a held vacuum, a charge.

use super::case::optional;
use super::instruments::{given, limit_pa, mass_kg, pressure, pressure_by, temperature, volume_m3};
use super::mistakes::Refused;
use super::tree::{Entry, Table};
use crate::circuit::{Gauge, Reading};
use crate::diagnosis::Case;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, TestGas, Thermometer};
use crate::proof::{ChargeBook, Decay, DecayGas, Evacuation, Hold, Kept, Sample, VentSample};
use crate::units::{Pressure, Temperature, text};
use alloc::vec::Vec;

/// Share of its limit of error by which the same gauge is read differently from one time to the next. Source:
/// engineering judgement.
const REPEATABLE: f64 = 0.2;

/// A vacuum gauge that counts from nothing is within this share of what it shows. Source: common practice, no source.
const VACUUM_GAUGE: f64 = 0.1;

/// The same vacuum gauge, read again, is within this share, and within this many Pa. Source: engineering judgement.
const VACUUM_AGAIN: (f64, f64) = (0.02, 0.7);

/// How far oil poured from a measured bottle may be off, kg. Source: common practice, no source.
const OIL_KG: f64 = 0.005;

pub(super) fn pressure_test(table: &Table<'_>, case: &Case) -> Result<Decay, Refused> {
    table.only(&[
        "gas",
        "start",
        "start_temperature",
        "end",
        "end_temperature",
        "held",
        "repeatability",
        "volume",
        "allowed",
    ]);
    let need = |key: &str, quantity: Quantity| {
        table.require(
            key,
            quantity,
            "a pressure test has gas, start, start_temperature, end, end_temperature, held",
        )
    };
    let gas = need("gas", Quantity::Name).and_then(|gas| gas.member(&TestGas::ALL, TestGas::id, TestGas::from_id));
    let gauge = |key: &str| need(key, Quantity::GaugePressure).and_then(|shown| pressure(&shown, Gauge::DIGITAL));
    let thermometer = |key: &str| need(key, Quantity::Temperature).and_then(|shown| air(&shown));
    let (start, start_temperature) = (gauge("start"), thermometer("start_temperature"));
    let (end, end_temperature) = (gauge("end"), thermometer("end_temperature"));
    let held_s = need("held", Quantity::Duration).and_then(|held| held.quantity(Quantity::Duration, text::duration_s));
    let repeatability_pa = given(table, "repeatability", limit_pa);
    let volume_m3 = given(table, "volume", volume_m3);
    let allowed_kg_s = given(table, "allowed", mass_rate_kg_s);
    let start = start?;
    Ok(Decay {
        gas: match gas? {
            TestGas::Nitrogen => DecayGas::Nitrogen,
            TestGas::Refrigerant => DecayGas::Vapour(case.system.refrigerant),
        },
        start,
        start_temperature: start_temperature?,
        end: end?,
        end_temperature: end_temperature?,
        repeatability_pa: repeatability_pa.unwrap_or(REPEATABLE * start.standard_uncertainty),
        held_s: held_s?,
        surroundings: case.conditions.surroundings,
        volume_m3,
        allowed_kg_s,
    })
}

/// `"5 g/year"`.
fn mass_rate_kg_s(entry: &Entry<'_>) -> Result<f64, Refused> {
    let advice = "write a mass per h, day or year: \"5 g/year\"";
    let text = entry.text(Quantity::Mass)?;
    let (mass, time) = text
        .split_once('/')
        .ok_or_else(|| entry.refuse(Error::of(ErrorKind::MissingUnit, Quantity::Mass), advice))?;
    let seconds = match time.trim() {
        "h" | "hour" => 3_600.0,
        "day" => 86_400.0,
        "year" => 365.25 * 86_400.0,
        _ => return Err(entry.refuse(Error::of(ErrorKind::UnknownUnit, Quantity::Mass), advice)),
    };
    let mass_kg = text::mass_kg(mass).map_err(|error| entry.refuse_part(mass, error, advice))?;
    Ok(mass_kg / seconds)
}

pub(super) fn evacuation(table: &Table<'_>, case: &Case) -> Result<Evacuation, Refused> {
    table.only(&["reached", "coldest"]);
    let coldest = part(table, "coldest", case);
    let reached = table.require(
        "reached",
        Quantity::AbsolutePressure,
        "write what the gauge shows: \"420 micron\"",
    )?;
    let shown = |value: Pressure, dial: Gauge| match value {
        Pressure::Absolute(pressure) => Reading::within(value, VACUUM_GAUGE * pressure.pa()),
        Pressure::Gauge(_) => Reading::pressure(value, dial),
    };
    Ok(Evacuation {
        reached: pressure_by(&reached, shown, Gauge::LOW_SIDE)?,
        coldest,
        surroundings: case.conditions.surroundings,
    })
}

pub(super) fn hold(table: &Table<'_>, case: &Case) -> Hold<'static> {
    table.only(&["samples", "warmest", "volume"]);
    Hold {
        samples: &[],
        warmest: part(table, "warmest", case),
        surroundings: case.conditions.surroundings,
        volume_m3: given(table, "volume", volume_m3),
    }
}

pub(super) fn held(table: &Table<'_>) -> Result<Vec<Sample>, Refused> {
    let again = |value: Pressure, dial: Gauge| match value {
        Pressure::Absolute(pressure) => {
            Reading::within(value, f64::max(VACUUM_AGAIN.0 * pressure.pa(), VACUUM_AGAIN.1))
        }
        Pressure::Gauge(_) => Reading::pressure(value, dial),
    };
    samples(table, "pressure", |after_s, entry| {
        let pressure = pressure_by(entry, again, Gauge::LOW_SIDE)?;
        Ok(Sample { after_s, pressure })
    })
}

pub(super) fn vents(table: &Table<'_>) -> Result<Vec<VentSample>, Refused> {
    table.only(&["samples"]);
    samples(table, "vent", |after_s, entry| {
        let vent = air(entry)?;
        Ok(VentSample { after_s, vent })
    })
}

/// `samples = [{ after = "5 min", ... }, ...]`.
fn samples<T>(
    table: &Table<'_>,
    key: &str,
    read: impl Fn(f64, &Entry<'_>) -> Result<T, Refused>,
) -> Result<Vec<T>, Refused> {
    let advice = alloc::format!("write samples = [{{ after = \"5 min\", {key} = ... }}, ...]");
    let list = table.require("samples", Quantity::Rows, &advice)?;
    let samples: Vec<Result<T, Refused>> = list
        .items()?
        .map(|item| {
            let row = item.table()?;
            row.only(&["after", key]);
            let after_s = row
                .require("after", Quantity::Duration, &advice)
                .and_then(|after| after.quantity(Quantity::Duration, text::duration_s));
            let shown = row.require(key, Quantity::Name, &advice)?;
            // Read beside a stand-in where the time is refused, for the mistakes in it.
            let sample = read(after_s.as_ref().copied().unwrap_or(0.0), &shown)?;
            after_s.map(|_| sample)
        })
        .collect();
    samples.into_iter().collect()
}

pub(super) fn charge(table: &Table<'_>, case: &Case) -> ChargeBook {
    table.only(&[
        "tolerance",
        "recovered",
        "oil_recovered",
        "oil_weighed_in",
        "left",
        "evacuated",
        "charged",
        "hose",
        "oil_added",
    ]);
    let oil = |entry: &Entry<'_>| match entry.as_text() {
        Some(_) => Ok(Reading::within(entry.quantity(Quantity::Mass, text::mass_kg)?, OIL_KG)),
        None => mass_kg(entry),
    };
    let yes_or_no = |key: &str| given(table, key, |entry| entry.yes_or_no());
    let new = ChargeBook::new(case.system.refrigerant, case.conditions.surroundings);
    ChargeBook {
        nominal_kg: case.system.nominal_charge_kg,
        tolerance_kg: optional(table, "tolerance", Quantity::Mass, text::mass_kg).unwrap_or(new.tolerance_kg),
        recovered_kg: given(table, "recovered", mass_kg),
        oil_recovered_kg: given(table, "oil_recovered", oil),
        oil_weighed_in: yes_or_no("oil_weighed_in").unwrap_or(new.oil_weighed_in),
        left: given(table, "left", |entry| kept(entry, case)),
        evacuated: yes_or_no("evacuated").unwrap_or(new.evacuated),
        charged_kg: given(table, "charged", mass_kg),
        hose: given(table, "hose", |entry| kept(entry, case)),
        oil_added_kg: given(table, "oil_added", oil),
        ..new
    }
}

/// `{ volume = "60 cm3", temperature = "25 °C" }` full of liquid, or with a `pressure` of vapour.
fn kept(entry: &Entry<'_>, case: &Case) -> Result<Kept, Refused> {
    let table = entry.table()?;
    table.only(&["volume", "temperature", "pressure"]);
    let volume = table
        .require("volume", Quantity::Volume, "the refrigerant fills a volume")
        .and_then(|volume| volume_m3(&volume));
    let temperature = part(&table, "temperature", case);
    let vapour = given(&table, "pressure", |entry| pressure(entry, Gauge::HIGH_SIDE));
    Ok(Kept {
        volume_m3: volume?,
        temperature,
        vapour,
    })
}

/// The temperature of a part; the ambient where it was not taken.
fn part(table: &Table<'_>, key: &str, case: &Case) -> Reading<Temperature> {
    let ambient = Reading::temperature(case.conditions.ambient, Thermometer::PocketDigital);
    given(table, key, air).unwrap_or(ambient)
}

fn air(entry: &Entry<'_>) -> Result<Reading<Temperature>, Refused> {
    temperature(entry, Thermometer::PocketDigital)
}
