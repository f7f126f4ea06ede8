//! The tables of a readings file, written: quantities in SI, with as many digits as their bits need.

use super::kept::Kept;
use crate::circuit::Observations;
use crate::circuit::{Measured, Reading, Readings};
use crate::diagnosis::{Action, Cost, Prices, Settings};
use crate::names::{AirSource, Refrigerant};
use crate::names::{Check, Compressor, Expansion, Fault, HighPort, LowPort, Observation, ReadingKind};
use crate::session::{Done, Faults, Moment, Session, Standing};
use crate::units::{
    GaugePressure, InSi, Mass, Measurable, Pressure, RotationalSpeed, Speed, Surroundings, TimeSpan, in_kelvins,
};
use crate::vehicle::{Conditions, System};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

type Entries = Vec<(String, Kept)>;

fn text(text: impl ToString) -> Kept {
    Kept::Text(text.to_string())
}

fn put(entries: &mut Entries, key: &str, value: Option<Kept>) {
    if let Some(value) = value {
        entries.push((key.to_string(), value));
    }
}

/// A table that has anything in it.
fn table(entries: Entries) -> Option<Kept> {
    (!entries.is_empty()).then_some(Kept::Table(entries))
}

/// A number with its unit, as shortest digits that read as the same bits.
fn quantity(unit: &'static str) -> impl Fn(f64) -> Kept {
    move |value| Kept::Text(format!("{value:?} {unit}"))
}

/// Readings as the `[readings]` of a readings file, in JSON, each with its standard uncertainty.
///
/// ```
/// use coldloop::circuit::{Reading, Readings};
/// use coldloop::{ReadingKind, Thermometer, intake, units::celsius};
/// let vent = Reading::temperature(celsius(7.0), Thermometer::PocketDigital);
/// let readings = Readings::default().with(ReadingKind::Vent, vent)?;
/// assert!(intake::readings_to_json(&readings).starts_with(r#"{"vent": {"value": "280.15 K", "uncertainty": "#));
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn readings_to_json(readings: &Readings) -> String {
    Kept::Table(self::readings(readings)).json()
}

/// What is known now.
pub(super) fn session(session: &Session) -> Entries {
    let (settings, now, _) = session.stored();
    let mut entries = Entries::new();
    let came_in = session.came_in();
    put(&mut entries, "system", Some(Kept::Table(system(&came_in.system))));
    entries.extend(moment(&Moment::of(came_in)));
    put(
        &mut entries,
        "settings",
        table(self::settings(settings, (now.recovered, now.held))),
    );
    put(&mut entries, "repairs", table(repairs(now)));
    if now.after {
        put(&mut entries, "after", Some(Kept::Table(moment(&now.moment))));
    }
    entries
}

/// What can be undone.
pub(super) fn undo(session: &Session) -> Entries {
    let (_, _, past) = session.stored();
    let mut entries = Entries::new();
    let rows: Vec<Kept> = past
        .steps()
        .map(|(done, before)| Kept::Table(row(*done, before)))
        .collect();
    put(&mut entries, "forgot", past.forgot.then_some(Kept::YesOrNo(true)));
    put(&mut entries, "undo", (!rows.is_empty()).then_some(Kept::List(rows)));
    entries
}

fn row(done: Done, before: &Standing) -> Entries {
    let mut entries = Entries::new();
    let named = |key: &str, id: &str| Kept::Table(alloc::vec![(key.to_string(), text(id))]);
    let step = match done {
        Done::Log => text("log"),
        Done::Conditions => text("conditions"),
        Done::Reading(reading) => named("reading", reading.id()),
        Done::Observation(observation) => named("observation", observation.id()),
        Done::Outcome(check) => named("check", check.id()),
        Done::Repaired(fault) => named("repair", fault.id()),
        Done::RepairedInVain(fault) => named("in_vain", fault.id()),
    };
    put(&mut entries, "step", Some(step));
    put(&mut entries, "after", before.after.then_some(Kept::YesOrNo(true)));
    put(
        &mut entries,
        "recovered",
        before.recovered.then_some(Kept::YesOrNo(true)),
    );
    put(&mut entries, "held", before.held.map(held));
    put(&mut entries, "repairs", table(repairs(before)));
    entries.extend(moment(&before.moment));
    entries
}

fn held(action: Action) -> Kept {
    let (key, value) = match action {
        Action::Check(check) => ("check", text(check.id())),
        Action::Repair(fault) => ("repair", text(fault.id())),
        Action::HandOver => ("hand_over", Kept::YesOrNo(true)),
    };
    Kept::Table(alloc::vec![(key.to_string(), value)])
}

fn repairs(standing: &Standing) -> Entries {
    let mut entries = Entries::new();
    let ids = |faults: Faults| -> Vec<Kept> { faults.iter().map(|fault| text(fault.id())).collect() };
    for (key, faults) in [("done", standing.repaired), ("in_vain", standing.ruled_out)] {
        let ids = ids(faults);
        put(&mut entries, key, (!ids.is_empty()).then_some(Kept::List(ids)));
    }
    entries
}

/// Conditions, readings and observations of one time.
pub(super) fn moment(moment: &Moment) -> Entries {
    let mut entries = Entries::new();
    put(
        &mut entries,
        "conditions",
        Some(Kept::Table(conditions(&moment.conditions))),
    );
    put(&mut entries, "readings", table(readings(&moment.readings)));
    put(&mut entries, "observations", table(observations(&moment.observations)));
    entries
}

pub(super) fn system(system: &System) -> Entries {
    let mut entries = Entries::new();
    put(
        &mut entries,
        "refrigerant",
        Some(text(Refrigerant::id(system.refrigerant))),
    );
    put(&mut entries, "expansion", Some(text(Expansion::id(system.expansion))));
    put(
        &mut entries,
        "compressor",
        Some(text(Compressor::id(system.compressor))),
    );
    put(
        &mut entries,
        "nominal_charge",
        system.nominal_charge.map(Mass::kg).map(quantity("kg")),
    );
    put(&mut entries, "low_port", system.low_port.map(LowPort::id).map(text));
    put(&mut entries, "high_port", system.high_port.map(HighPort::id).map(text));
    put(&mut entries, "sight_glass", system.sight_glass.map(Kept::YesOrNo));
    put(
        &mut entries,
        "high_cut_out",
        system.high_cut_out.map(GaugePressure::pa).map(quantity("Pa gauge")),
    );
    put(
        &mut entries,
        "evaporators",
        system.evaporators.map(|number| Kept::Count(u64::from(number))),
    );
    entries
}

/// The air of a place, by its pressure and how well that is known.
fn air(air: Surroundings) -> Kept {
    let pa = |pa: f64, datum: &str| text(format!("{pa:?} Pa{datum}"));
    Kept::Table(alloc::vec![
        ("value".to_string(), pa(air.pressure().pa(), " abs")),
        ("uncertainty".to_string(), pa(air.standard_uncertainty().pa(), "")),
    ])
}

pub(super) fn conditions(conditions: &Conditions) -> Entries {
    let mut entries = Entries::new();
    // A share without a unit is one of one.
    let share = |share: f64| text(format!("{share:?}"));
    put(
        &mut entries,
        "ambient",
        Some(quantity("K")(in_kelvins(conditions.ambient))),
    );
    put(&mut entries, "barometer", Some(air(conditions.surroundings)));
    put(
        &mut entries,
        "humidity",
        conditions.relative_humidity.map(|humidity| share(humidity.fraction())),
    );
    put(
        &mut entries,
        "engine_speed",
        conditions.engine_speed.map(RotationalSpeed::hz).map(quantity("Hz")),
    );
    put(
        &mut entries,
        "compressor_running",
        conditions.compressor_running.map(Kept::YesOrNo),
    );
    put(
        &mut entries,
        "compressor_speed",
        conditions.compressor_speed.map(RotationalSpeed::hz).map(quantity("Hz")),
    );
    put(&mut entries, "fan_command", conditions.fan_command.map(share));
    put(
        &mut entries,
        "air_source",
        conditions.air_source.map(AirSource::id).map(text),
    );
    put(&mut entries, "blower", conditions.blower.map(share));
    put(
        &mut entries,
        "vehicle_speed",
        conditions.vehicle_speed.map(Speed::m_s).map(quantity("m/s")),
    );
    put(
        &mut entries,
        "running",
        conditions.running_for.map(TimeSpan::seconds).map(quantity("s")),
    );
    put(
        &mut entries,
        "commanded_displacement",
        conditions.commanded_displacement.map(share),
    );
    entries
}

pub(super) fn readings(readings: &Readings) -> Entries {
    let mut entries = Entries::new();
    for kind in ReadingKind::ALL {
        let value = readings.get(kind).map(|measured| match measured {
            Measured::Pressure(reading) => match reading.value {
                Pressure::Absolute(pressure) => known(&reading, pressure.pa(), "Pa abs", "Pa"),
                Pressure::Gauge(pressure) => known(&reading, pressure.pa(), "Pa gauge", "Pa"),
            },
            Measured::Temperature(reading) => known(&reading, in_kelvins(reading.value), "K", "K"),
            Measured::Frequency(reading) => known(&reading, reading.value.hz(), "Hz", "Hz"),
        });
        put(&mut entries, kind.id(), value);
    }
    put(&mut entries, "gauge_zero_barometer", readings.gauge_zero.map(air));
    entries
}

fn known<Q: Measurable>(reading: &Reading<Q>, value: f64, unit: &'static str, of_uncertainty: &'static str) -> Kept {
    Kept::Table(alloc::vec![
        ("value".to_string(), quantity(unit)(value)),
        (
            "uncertainty".to_string(),
            quantity(of_uncertainty)(reading.standard_uncertainty.si())
        ),
    ])
}

fn observations(observations: &Observations) -> Entries {
    let answers = observations.answered();
    answers
        .map(|(observation, answer)| (observation.id().to_string(), Kept::YesOrNo(answer)))
        .collect()
}

/// The settings that are not the usual ones, and what the visit has changed of them.
pub(super) fn settings(settings: &Settings, (recovered, held): (bool, Option<Action>)) -> Entries {
    let usual = Settings::default();
    let mut entries = Entries::new();
    let other = |here: f64, usual: f64| (here.to_bits() != usual.to_bits()).then_some(Kept::Number(here));
    for (key, of) in [
        ("none_of_these", (|s| s.none_of_these) as fn(&Settings) -> f64),
        ("two_faults", |s| s.two_faults),
        ("healthy", |s| s.healthy),
        ("named", |s| s.named),
        ("nothing_fits", |s| s.nothing_fits),
        ("short_list", |s| s.short_list),
        ("least_information", |s| s.least_information),
    ] {
        put(&mut entries, key, other(of(settings), of(&usual)));
    }
    put(&mut entries, "recovered", recovered.then_some(Kept::YesOrNo(true)));
    put(
        &mut entries,
        "next_checks",
        (!settings.next_checks).then_some(Kept::YesOrNo(false)),
    );
    put(&mut entries, "held", held.map(self::held));
    let mut priors = Entries::new();
    let mut looks = Entries::new();
    for fault in Fault::ALL {
        put(
            &mut priors,
            fault.id(),
            other(settings.prior(fault), usual.prior(fault)),
        );
        let mut of_fault = Entries::new();
        for observation in Observation::ALL {
            let (here, usual) = (
                settings.looks.yes(observation, fault),
                usual.looks.yes(observation, fault),
            );
            put(&mut of_fault, observation.id(), other(here, usual));
        }
        put(&mut looks, fault.id(), table(of_fault));
    }
    put(&mut entries, "priors", table(priors));
    put(&mut entries, "prices", table(prices(&settings.prices, &usual.prices)));
    put(&mut entries, "looks", table(looks));
    entries
}

fn prices(prices: &Prices, usual: &Prices) -> Entries {
    let mut entries = Entries::new();
    let other = |here: Cost, usual: Cost| {
        let cost = || {
            Kept::Table(alloc::vec![
                ("minutes".to_string(), Kept::Number(here.minutes)),
                ("money".to_string(), Kept::Number(here.money)),
            ])
        };
        (here != usual).then(cost)
    };
    let per_minute = prices.per_minute();
    let changed = per_minute.to_bits() != usual.per_minute().to_bits();
    put(&mut entries, "per_minute", changed.then_some(Kept::Number(per_minute)));
    put(&mut entries, "recovery", other(prices.recovery(), usual.recovery()));
    put(&mut entries, "verify", other(prices.verify(), usual.verify()));
    put(&mut entries, "unknown", other(prices.unknown(), usual.unknown()));
    let (mut checks, mut repairs) = (Entries::new(), Entries::new());
    for check in Check::ALL {
        put(&mut checks, check.id(), other(prices.check(check), usual.check(check)));
    }
    for fault in Fault::ALL {
        put(
            &mut repairs,
            fault.id(),
            other(prices.repair(fault), usual.repair(fault)),
        );
    }
    put(&mut entries, "checks", table(checks));
    put(&mut entries, "repairs", table(repairs));
    entries
}
