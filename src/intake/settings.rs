//! How an answer is to be judged: the `[settings]` of a readings file.

use super::counts::{counts, named};
use super::refusal::Refused;
use super::tree::{Entry, Table};
use crate::diagnosis::{Cost, Prices, Settings, Stakes};
use crate::error::Error;
use crate::names::{Check, ErrorKind, Fault, Observation, Quantity};
use serde_json::Value;

const SHARES: &str = "write the number alone, without quotes";

/// The usual settings with those of the table in their place; confirmed cases are applied last.
pub(super) fn settings(table: &Table<'_>) -> Result<Settings, Refused> {
    table.only(&[
        "priors",
        "none_of_these",
        "two_faults",
        "healthy",
        "named",
        "nothing_fits",
        "short_list",
        "least_information",
        "stakes",
        "recovered",
        "next_checks",
        "prices",
        "looks",
        "counts",
    ])?;
    let mut settings = Settings::default();
    if let Some(entry) = table.get("stakes") {
        settings = stakes(&settings, &entry)?;
    }
    for entry in table.entries() {
        match entry.name() {
            "none_of_these" => set(&mut settings.none_of_these, &entry),
            "two_faults" => set(&mut settings.two_faults, &entry),
            "healthy" => set(&mut settings.healthy, &entry),
            "named" => set(&mut settings.named, &entry),
            "nothing_fits" => set(&mut settings.nothing_fits, &entry),
            "short_list" => set(&mut settings.short_list, &entry),
            "least_information" => set(&mut settings.least_information, &entry),
            "recovered" => settings.recovered = entry.yes_or_no()?,
            "next_checks" => settings.next_checks = entry.yes_or_no()?,
            "priors" => priors(&mut settings, &entry.table()?)?,
            "prices" => prices(&mut settings.prices, &entry.table()?)?,
            "looks" => looks(&mut settings, &entry.table()?)?,
            _ => continue,
        }
        checked(&settings, &entry)?;
    }
    match table.get("counts") {
        None => Ok(settings),
        Some(entry) => learned(&settings, &entry),
    }
}

fn set(place: &mut f64, entry: &Entry<'_>) {
    *place = entry.number();
}

#[inline(never)]
fn checked(settings: &Settings, entry: &Entry<'_>) -> Result<(), Refused> {
    settings.check().map_err(|error| entry.refuse(error, SHARES))
}

/// `{ look = 45, sound_part = 150 }`: the thresholds that follow; one that is given by itself takes their place.
fn stakes(settings: &Settings, entry: &Entry<'_>) -> Result<Settings, Refused> {
    let table = entry.table()?;
    table.only(&["look", "sound_part", "missed_fault", "wrong_list", "needless_repeat"])?;
    let mut stakes = Stakes::default();
    for (key, cost) in [
        ("look", &mut stakes.look),
        ("sound_part", &mut stakes.sound_part),
        ("missed_fault", &mut stakes.missed_fault),
        ("wrong_list", &mut stakes.wrong_list),
        ("needless_repeat", &mut stakes.needless_repeat),
    ] {
        if let Some(entry) = table.get(key) {
            *cost = entry.number();
            let alone = Stakes {
                look: *cost,
                ..Stakes::default()
            };
            settings
                .with_stakes(&alone)
                .map_err(|error| entry.refuse(error, SHARES))?;
        }
    }
    settings
        .with_stakes(&stakes)
        .map_err(|error| entry.refuse(error, SHARES))
}

/// `undercharge = 0.3`, relative to the others.
fn priors(settings: &mut Settings, table: &Table<'_>) -> Result<(), Refused> {
    for entry in table.entries() {
        *settings = settings.with_prior(named(&entry, &Fault::ALL, Fault::id)?, entry.number());
        checked(settings, &entry)?;
    }
    Ok(())
}

/// `[settings.looks.undercharge]`, with the chance of "yes" by question.
fn looks(settings: &mut Settings, table: &Table<'_>) -> Result<(), Refused> {
    for entry in table.entries() {
        let fault = named(&entry, &Fault::ALL, Fault::id)?;
        for question in entry.table()?.entries() {
            let observation = named(&question, &Observation::ALL, Observation::id)?;
            settings.looks = settings.looks.with(observation, fault, question.number());
            checked(settings, &question)?;
        }
    }
    Ok(())
}

fn prices(prices: &mut Prices, table: &Table<'_>) -> Result<(), Refused> {
    table.only(&["per_minute", "recovery", "verify", "unknown", "checks", "repairs"])?;
    if let Some(entry) = table.get("per_minute") {
        let mut alone = Settings::default();
        alone.prices.per_minute = entry.number();
        checked(&alone, &entry)?;
        prices.per_minute = entry.number();
    }
    for (key, cost) in [
        ("recovery", &mut prices.recovery),
        ("verify", &mut prices.verify),
        ("unknown", &mut prices.unknown),
    ] {
        if let Some(entry) = table.get(key) {
            *cost = self::cost(&entry, *cost)?;
        }
    }
    if let Some(checks) = table.table("checks")? {
        for entry in checks.entries() {
            let check = named(&entry, &Check::ALL, Check::id)?;
            *prices = prices.with_check(check, cost(&entry, prices.check(check))?);
        }
    }
    if let Some(repairs) = table.table("repairs")? {
        for entry in repairs.entries() {
            let fault = named(&entry, &Fault::ALL, Fault::id)?;
            *prices = prices.with_repair(fault, cost(&entry, prices.repair(fault))?);
        }
    }
    Ok(())
}

/// `{ minutes = 150, money = 420 }`; what is left out stays as it is.
fn cost(entry: &Entry<'_>, usual: Cost) -> Result<Cost, Refused> {
    let table = entry.table()?;
    table.only(&["minutes", "money"])?;
    let figure = |key: &str, usual: f64| match table.get(key) {
        None => Ok(usual),
        Some(entry) => {
            let mut alone = Settings::default();
            alone.prices.recovery.minutes = entry.number();
            checked(&alone, &entry).map(|()| entry.number())
        }
    };
    Ok(Cost {
        minutes: figure("minutes", usual.minutes)?,
        money: figure("money", usual.money)?,
    })
}

/// Confirmed cases: a table in the shape of the file of counts, or the text of such a file.
fn learned(settings: &Settings, entry: &Entry<'_>) -> Result<Settings, Refused> {
    let counts = match entry.value {
        Value::String(text) => super::counts_from_toml(text)?,
        Value::Object(_) => counts(&entry.table()?)?,
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::Array(_) => {
            let error = Error::of(ErrorKind::Syntax, Quantity::Name);
            return Err(entry.refuse(error, "this has to be a table, or the text of a file of counts"));
        }
    };
    counts.applied(settings).map_err(|error| entry.refuse(error, ""))
}
