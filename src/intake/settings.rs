//! How an answer is to be judged: the `[settings]` of a readings file.

use super::counts::{counts, named};
use super::instruments::given;
use super::mistakes::Refused;
use super::refusal::Refusal;
use super::tree::{Entry, Table};
use crate::diagnosis::{Action, Cost, Counts, Prices, Settings, Stakes};
use crate::error::Error;
use crate::names::{Check, ErrorKind, Fault, Language, Observation, Quantity};
use alloc::boxed::Box;

const SHARES: &str = "write the number alone, without quotes";

/// Replaces the defaults by the settings of the table; confirmed cases are applied last. A refused entry changes nothing.
pub(super) fn settings(table: &Table<'_>, settings: &mut Settings) {
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
        "held",
        "language",
        "details",
    ]);
    table.told("stakes", |table| {
        stakes(settings, table);
        Ok(())
    });
    for entry in table.entries() {
        match entry.name() {
            "none_of_these" => set(settings, &entry, |settings| &mut settings.none_of_these),
            "two_faults" => set(settings, &entry, |settings| &mut settings.two_faults),
            "healthy" => set(settings, &entry, |settings| &mut settings.healthy),
            "named" => set(settings, &entry, |settings| &mut settings.named),
            "nothing_fits" => set(settings, &entry, |settings| &mut settings.nothing_fits),
            "short_list" => set(settings, &entry, |settings| &mut settings.short_list),
            "least_information" => set(settings, &entry, |settings| &mut settings.least_information),
            "recovered" => settings.recovered = entry.yes_or_no().unwrap_or(settings.recovered),
            "language" => {
                let member = entry.member(&Language::ALL, Language::id, Language::from_id);
                settings.language = member.unwrap_or(settings.language);
            }
            "details" => settings.details = entry.yes_or_no().unwrap_or(settings.details),
            "next_checks" => settings.next_checks = entry.yes_or_no().unwrap_or(settings.next_checks),
            _ => {}
        }
    }
    table.told("priors", |table| {
        priors(settings, table);
        Ok(())
    });
    table.told("prices", |table| {
        prices(&mut settings.prices, table);
        Ok(())
    });
    table.told("looks", |table| {
        looks(settings, table);
        Ok(())
    });
    if let Some(entry) = table.get("counts") {
        learned(settings, &entry);
    }
    if let Some(held) = given(table, "held", held) {
        settings.held = Some(held);
    }
}

/// `{ check = "read-vent" }`, `{ repair = "undercharge" }` or `{ hand_over = true }`.
pub(super) fn held(entry: &Entry<'_>) -> Result<Action, Refused> {
    let table = entry.table()?;
    table.only(&["check", "repair", "hand_over"]);
    let check = table
        .get("check")
        .map(|entry| entry.member(&Check::ALL, Check::id, Check::from_id));
    let repair = table
        .get("repair")
        .map(|entry| entry.member(&Fault::ALL, Fault::id, Fault::from_id));
    let hand_over = table.get("hand_over").map(|entry| entry.yes_or_no());
    match (
        check.transpose()?,
        repair.transpose()?,
        hand_over.transpose()?.unwrap_or(false),
    ) {
        (Some(check), None, false) => Ok(Action::Check(check)),
        (None, Some(fault), false) => Ok(Action::Repair(fault)),
        (None, None, true) => Ok(Action::HandOver),
        _ => {
            let error = Error::of(ErrorKind::Inconsistent, Quantity::Name);
            Err(entry.refuse(error, "write one of check, repair and hand_over = true"))
        }
    }
}

/// Sets a setting to a bare number, unless the settings become invalid.
#[inline(never)]
fn set(settings: &mut Settings, entry: &Entry<'_>, place: fn(&mut Settings) -> &mut f64) {
    let before = core::mem::replace(place(settings), entry.number());
    if let Err(error) = settings.check() {
        *place(settings) = before;
        entry.refuse(error, SHARES);
    }
}

/// `{ look = 45, sound_part = 150 }` sets the thresholds that follow; a threshold that is given itself replaces them.
fn stakes(settings: &mut Settings, table: &Table<'_>) {
    table.only(&["look", "sound_part", "missed_fault", "wrong_list", "needless_repeat"]);
    let mut stakes = Stakes::default();
    for (key, cost) in [
        ("look", &mut stakes.look),
        ("sound_part", &mut stakes.sound_part),
        ("missed_fault", &mut stakes.missed_fault),
        ("wrong_list", &mut stakes.wrong_list),
        ("needless_repeat", &mut stakes.needless_repeat),
    ] {
        if let Some(entry) = table.get(key) {
            let alone = Stakes {
                look: entry.number(),
                ..Stakes::default()
            };
            match with_stakes(settings, &alone) {
                Ok(_) => *cost = entry.number(),
                Err(error) => {
                    entry.refuse(error, SHARES);
                }
            }
        }
    }
    // Each cost was tried alone, so that all of them together cannot be refused.
    if let Ok(with) = with_stakes(settings, &stakes) {
        *settings = *with;
    }
}

// Settings are large; functions that copy them are not inlined, so that the copies are not on the caller's stack.

#[inline(never)]
fn with_stakes(settings: &Settings, stakes: &Stakes) -> Result<Box<Settings>, Error> {
    settings.with_stakes(stakes).map(Box::new)
}

#[inline(never)]
fn put_prior(settings: &mut Settings, fault: Fault, prior: f64) {
    *settings = settings.with_prior(fault, prior);
}

/// Sets a probability of "yes", unless it is invalid.
#[inline(never)]
fn put_look(settings: &mut Settings, observation: Observation, fault: Fault, chance: f64) -> Result<(), Error> {
    let looks = settings.looks.with(observation, fault, chance);
    looks.check().map(|()| settings.looks = looks)
}

#[inline(never)]
fn applied(counts: &Counts, settings: &Settings) -> Result<Box<Settings>, Error> {
    counts.applied(settings).map(Box::new)
}

/// `undercharge = 0.3`, relative to the others.
fn priors(settings: &mut Settings, table: &Table<'_>) {
    for entry in table.entries() {
        let Ok(fault) = named(&entry, &Fault::ALL, Fault::id) else {
            continue;
        };
        let before = settings.prior(fault);
        put_prior(settings, fault, entry.number());
        if let Err(error) = settings.check() {
            put_prior(settings, fault, before);
            entry.refuse(error, SHARES);
        }
    }
}

/// `[settings.looks.undercharge]`, with the probability of "yes" for each question.
fn looks(settings: &mut Settings, table: &Table<'_>) {
    for entry in table.entries() {
        let (Ok(fault), Ok(questions)) = (named(&entry, &Fault::ALL, Fault::id), entry.table()) else {
            continue;
        };
        for question in questions.entries() {
            let Ok(observation) = named(&question, &Observation::ALL, Observation::id) else {
                continue;
            };
            if let Err(error) = put_look(settings, observation, fault, question.number()) {
                question.refuse(error, SHARES);
            }
        }
    }
}

fn prices(prices: &mut Prices, table: &Table<'_>) {
    table.only(&["per_minute", "recovery", "verify", "unknown", "checks", "repairs"]);
    if let Some(entry) = table.get("per_minute") {
        match prices.with_per_minute(entry.number()) {
            Ok(with) => *prices = with,
            Err(error) => {
                entry.refuse(error, SHARES);
            }
        }
    }
    let usual = *prices;
    put_cost(prices, table.get("recovery"), usual.recovery(), Prices::with_recovery);
    put_cost(prices, table.get("verify"), usual.verify(), Prices::with_verify);
    put_cost(prices, table.get("unknown"), usual.unknown(), Prices::with_unknown);
    table.told("checks", |checks| {
        for entry in checks.entries() {
            if let Ok(check) = named(&entry, &Check::ALL, Check::id) {
                let with = |prices: Prices, cost| prices.with_check(check, cost);
                put_cost(prices, Some(entry), usual.check(check), with);
            }
        }
        Ok(())
    });
    table.told("repairs", |repairs| {
        for entry in repairs.entries() {
            if let Ok(fault) = named(&entry, &Fault::ALL, Fault::id) {
                let with = |prices: Prices, cost| prices.with_repair(fault, cost);
                put_cost(prices, Some(entry), usual.repair(fault), with);
            }
        }
        Ok(())
    });
}

/// Sets a cost from `{ minutes = 150, money = 420 }`; what is left out or refused is unchanged.
fn put_cost(
    prices: &mut Prices,
    entry: Option<Entry<'_>>,
    usual: Cost,
    with: impl Fn(Prices, Cost) -> Result<Prices, Error>,
) {
    let Some(Ok(table)) = entry.as_ref().map(Entry::table) else {
        return;
    };
    table.only(&["minutes", "money"]);
    let mut cost = usual;
    for key in ["minutes", "money"] {
        let Some(entry) = table.get(key) else { continue };
        let told = if key == "minutes" {
            Cost {
                minutes: entry.number(),
                ..cost
            }
        } else {
            Cost {
                money: entry.number(),
                ..cost
            }
        };
        match with(*prices, told) {
            Ok(with) => (*prices, cost) = (with, told),
            Err(error) => {
                entry.refuse(error, SHARES);
            }
        }
    }
}

/// Confirmed cases: a table in the shape of the file of counts, or the text of such a file.
fn learned(settings: &mut Settings, entry: &Entry<'_>) {
    let counts = match entry.as_text() {
        Some(text) => inner(text).map_err(|refusal| entry.refuse_all(&refusal)),
        None if entry.is_table() => entry.table().map(|table| counts(&table)),
        None => {
            let error = Error::of(ErrorKind::Syntax, Quantity::Name);
            Err(entry.refuse(error, "this has to be a table, or the text of a file of counts"))
        }
    };
    let learned: Result<Box<Settings>, Refused> =
        counts.and_then(|counts| applied(&counts, settings).map_err(|error| entry.refuse(error, "")));
    if let Ok(learned) = learned {
        *settings = *learned;
    }
}

#[inline(never)]
fn inner(text: &str) -> Result<Box<Counts>, Refusal> {
    super::counts_from_toml(text).map(Box::new)
}
