//! What was done to a vehicle, as a readings file tells it: a pressure test, an evacuation, a held vacuum, a charge.

use super::instruments::{given, limit, mass, pressure, pressure_by, share_of, temperature, volume};
use super::mistakes::Refused;
use super::tree::{Entry, Table};
use crate::circuit::{Gauge, Reading};
use crate::diagnosis::Case;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, TestGas, Thermometer};
use crate::proof::{
    ChargeBook, Decay, DecayGas, Evacuation, Hold, Kept, MACHINE_SCALE, RECOVERY_SCALE, Rise, Sample, Served,
    VentSample,
};
use crate::units::{Mass, MassFlow, Pressure, PressureDifference, Temperature, TimeSpan, text};
use alloc::vec::Vec;

/// Share of its limit of error by which the same gauge is read differently from one time to the next. Source:
/// engineering judgement.
const REPEATABLE: f64 = 0.2;

/// A vacuum gauge that counts from nothing is within this share of what it shows. Source: common practice, no source.
const VACUUM_GAUGE: f64 = 0.1;

/// The same vacuum gauge, read again, is within this share, and within this many Pa. Source: engineering judgement.
const VACUUM_AGAIN: (f64, f64) = (0.02, 0.7);

/// Density of compressor oil, kg/m3, within 5 %. Source: from memory of makers' data sheets: PAG 46 990 to 1,000, polyol ester
/// 980.
const OIL_KG_M3: f64 = 990.0;

/// How far oil poured from a measured bottle may be off. Source: common practice, no source.
const OIL: Mass = Mass::from_kg(0.005);

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
        "label",
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
    let held = need("held", Quantity::Duration).and_then(|held| held.quantity(Quantity::Duration, text::duration));
    let repeatability = given(table, "repeatability", limit);
    let volume = given(table, "volume", volume);
    let allowed = given(table, "allowed", mass_rate);
    let label = given(table, "label", |entry| pressure(entry, Gauge::DIGITAL));
    let air = case.conditions.surroundings;
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
        repeatability: repeatability
            .unwrap_or_else(|| PressureDifference::from_pa(REPEATABLE * start.standard_uncertainty.pa())),
        held: held?,
        surroundings: air,
        volume,
        allowed,
        label_pressure: label.map(|label| label.value.absolute(air).gauge(air)),
        served: Some(Served {
            refrigerant: case.system.refrigerant,
            temperature: case.conditions.ambient,
            charge: case.system.nominal_charge,
        }),
    })
}

/// `"5 g/year"`, `"0.5 oz/yr"`.
fn mass_rate(entry: &Entry<'_>) -> Result<MassFlow, Refused> {
    let advice = "write a mass per h, day, month or year: \"5 g/year\"";
    let text = entry.text(Quantity::Mass)?;
    let (mass, time) = text
        .split_once('/')
        .or_else(|| text.split_once(" per "))
        .ok_or_else(|| entry.refuse(Error::of(ErrorKind::MissingUnit, Quantity::Mass), advice))?;
    let seconds = match time.trim() {
        "h" | "hr" | "hour" => 3_600.0,
        "d" | "day" => 86_400.0,
        "month" => 365.25 / 12.0 * 86_400.0,
        "a" | "y" | "yr" | "year" => 365.25 * 86_400.0,
        _ => return Err(entry.refuse(Error::of(ErrorKind::UnknownUnit, Quantity::Mass), advice)),
    };
    let mass = text::mass(mass).map_err(|error| entry.refuse_part(mass, error, advice))?;
    Ok(MassFlow::from_kg_s(mass.kg() / seconds))
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
        Pressure::Absolute(pressure) => {
            Reading::within(value, PressureDifference::from_pa(VACUUM_GAUGE * pressure.pa()))
        }
        Pressure::Gauge(_) => Reading::pressure(value, dial),
    };
    Ok(Evacuation {
        reached: pressure_by(&reached, shown, Gauge::LOW_SIDE)?,
        coldest,
        surroundings: case.conditions.surroundings,
    })
}

pub(super) fn hold(table: &Table<'_>, case: &Case) -> Hold<'static> {
    table.only(&["samples", "warmest", "volume", "allowed"]);
    Hold {
        allowed: given(table, "allowed", rise).unwrap_or(Rise::USUAL),
        samples: &[],
        warmest: part(table, "warmest", case),
        surroundings: case.conditions.surroundings,
        volume: given(table, "volume", volume),
    }
}

/// `{ rise = "50 micron", over = "10 min" }`.
fn rise(entry: &Entry<'_>) -> Result<Rise, Refused> {
    let table = entry.table()?;
    table.only(&["rise", "over"]);
    let advice = "a rise that is allowed has rise and over: { rise = \"50 micron\", over = \"10 min\" }";
    let rise = table
        .require("rise", Quantity::AbsolutePressure, advice)
        .and_then(|rise| limit(&rise));
    let over = table.require("over", Quantity::Duration, advice)?;
    Ok(Rise {
        over: over.quantity(Quantity::Duration, text::duration)?,
        rise: rise?,
    })
}

pub(super) fn held(table: &Table<'_>) -> Result<Vec<Sample>, Refused> {
    let again = |value: Pressure, dial: Gauge| match value {
        Pressure::Absolute(pressure) => {
            let limit_pa = f64::max(VACUUM_AGAIN.0 * pressure.pa(), VACUUM_AGAIN.1);
            Reading::within(value, PressureDifference::from_pa(limit_pa))
        }
        Pressure::Gauge(_) => Reading::pressure(value, dial),
    };
    samples(table, "pressure", |after, entry| {
        let pressure = pressure_by(entry, again, Gauge::LOW_SIDE)?;
        Ok(Sample { after, pressure })
    })
}

pub(super) fn vents(table: &Table<'_>) -> Result<Vec<VentSample>, Refused> {
    table.only(&["samples"]);
    samples(table, "vent", |after, entry| {
        let vent = air(entry)?;
        Ok(VentSample { after, vent })
    })
}

/// `samples = [{ after = "5 min", ... }, ...]`.
fn samples<T>(
    table: &Table<'_>,
    key: &str,
    read: impl Fn(TimeSpan, &Entry<'_>) -> Result<T, Refused>,
) -> Result<Vec<T>, Refused> {
    let advice = alloc::format!("write samples = [{{ after = \"5 min\", {key} = ... }}, ...]");
    let list = table.require("samples", Quantity::Rows, &advice)?;
    let samples: Vec<Result<T, Refused>> = list
        .items()?
        .map(|item| {
            let row = item.table()?;
            row.only(&["after", key]);
            let after = row
                .require("after", Quantity::Duration, &advice)
                .and_then(|after| after.quantity(Quantity::Duration, text::duration));
            let shown = row.require(key, Quantity::Name, &advice)?;
            // Read beside a stand-in where the time is refused, for the mistakes in it.
            let sample = read(after.as_ref().copied().unwrap_or(TimeSpan::from_seconds(0.0)), &shown)?;
            after.map(|_| sample)
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
    let yes_or_no = |key: &str| given(table, key, |entry| entry.yes_or_no());
    let new = ChargeBook::new(case.system.refrigerant, case.conditions.surroundings);
    ChargeBook {
        nominal: case.system.nominal_charge,
        tolerance: given(table, "tolerance", |entry| tolerance(entry, case.system.nominal_charge)),
        recovered: given(table, "recovered", |entry| mass(entry, RECOVERY_SCALE)),
        oil_recovered: given(table, "oil_recovered", oil),
        oil_weighed_in: yes_or_no("oil_weighed_in").unwrap_or(new.oil_weighed_in),
        left: given(table, "left", |entry| kept(entry, case)),
        evacuated: yes_or_no("evacuated").unwrap_or(new.evacuated),
        charged: given(table, "charged", |entry| mass(entry, MACHINE_SCALE)),
        hose: given(table, "hose", |entry| kept(entry, case)),
        oil_added: given(table, "oil_added", oil),
        ..new
    }
}

/// `"15 g"`, or `"5 %"` of what the label names.
fn tolerance(entry: &Entry<'_>, nominal: Option<Mass>) -> Result<Mass, Refused> {
    match nominal.and_then(|nominal| share_of(entry, nominal.kg())) {
        Some(kg) => Ok(Mass::from_kg(kg)),
        None => entry.quantity(Quantity::Mass, text::mass),
    }
}

/// `"20 g"`, or as it is poured, `"20 ml"`, `"1 fl oz"`; or `{ value = "20 g", within = "2 g" }`.
fn oil(entry: &Entry<'_>) -> Result<Reading<Mass>, Refused> {
    match entry.as_text() {
        Some(written) => {
            let poured = text::volume(written).map(|volume| Mass::from_kg(OIL_KG_M3 * volume.m3()));
            let mass = poured.or_else(|_| entry.quantity(Quantity::Mass, text::mass))?;
            Ok(Reading::within(mass, OIL))
        }
        None => mass(entry, OIL),
    }
}

/// `{ volume = "60 cm3", temperature = "25 °C" }` full of liquid, or with a `pressure` of vapour.
fn kept(entry: &Entry<'_>, case: &Case) -> Result<Kept, Refused> {
    let table = entry.table()?;
    table.only(&["volume", "temperature", "pressure"]);
    let filled = table
        .require("volume", Quantity::Volume, "the refrigerant fills a volume")
        .and_then(|entry| volume(&entry));
    let temperature = part(&table, "temperature", case);
    let vapour = given(&table, "pressure", |entry| pressure(entry, Gauge::HIGH_SIDE));
    Ok(Kept {
        volume: filled?,
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
