//! A vehicle's visit: what was read, how to judge it, and what was done since.

use super::case::{TABLES, case, moment, optional};
use super::instruments::{given, limit_pa, mass_kg, pressure, pressure_by, temperature, volume_m3};
use super::refusal::{Refusal, Refused};
use super::settings::settings;
use super::tree::{Entry, Table};
use crate::circuit::{Gauge, Reading};
use crate::diagnosis::{Case, Diagnosis, Settings, diagnose};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, TestGas, Thermometer};
use crate::proof::{
    Balance, ChargeBook, Decay, DecayGas, Evacuation, Hold, HoldJudgement, Kept, Leak, Proof, PullDown,
};
use crate::proof::{Sample, Vacuum, VentSample, prove, pull_down};
use crate::units::{Pressure, Temperature, in_celsius, in_kelvins, kelvins, text};
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

/// A readings file: a case, how to judge it, and whatever was done to the vehicle since.
#[derive(Clone, Debug, PartialEq)]
pub struct Visit {
    /// The vehicle as it came in.
    pub case: Case,
    /// How to judge it.
    pub settings: Settings,
    /// The same vehicle after the repair.
    pub after: Option<Case>,
    /// A test pressure that was watched.
    pub pressure_test: Option<Decay>,
    /// What the vacuum pump reached.
    pub evacuation: Option<Evacuation>,
    /// The vacuum that was held; its samples stand in `held`.
    hold: Option<Hold<'static>>,
    held: Vec<Sample>,
    /// The masses.
    pub charge: Option<ChargeBook>,
    /// The vent after the start, in the conditions of `after`, or of the case where there is none.
    pub pull_down: Vec<VentSample>,
}

/// What was done, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgements {
    /// The test pressure.
    pub pressure_test: Option<Leak>,
    /// The evacuation.
    pub evacuation: Option<Vacuum>,
    /// The held vacuum.
    pub hold: Option<HoldJudgement>,
    /// The masses.
    pub charge: Option<Balance>,
    /// The vent after the start.
    pub pull_down: Option<PullDown>,
    /// Before against after.
    pub repair: Option<Proof>,
}

impl Visit {
    /// The vacuum that was held.
    pub fn hold(&self) -> Option<Hold<'_>> {
        let hold = self.hold?;
        Some(Hold {
            samples: &self.held,
            ..hold
        })
    }

    /// Whether anything was done that can be judged.
    pub fn has_proof(&self) -> bool {
        let tested = self.pressure_test.is_some() || self.evacuation.is_some() || self.hold.is_some();
        tested || self.charge.is_some() || !self.pull_down.is_empty() || self.after.is_some()
    }

    /// The diagnosis of the vehicle as it came in.
    ///
    /// Errors: a [`Refusal`] with the key to blame for conditions or a system of which no source speaks.
    ///
    /// ```
    /// use coldloop::intake;
    /// let visit = intake::visit_from_json(r#"{
    ///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
    ///     "conditions": { "ambient": "-20 °C", "altitude": "0 m" }
    /// }"#)?;
    /// let refusal = visit.diagnose().unwrap_err();
    /// assert_eq!((refusal.key.as_str(), refusal.value.as_str()), ("conditions.ambient", "-20.0 °C"));
    /// # Ok::<(), intake::Refusal>(())
    /// ```
    #[inline(never)]
    pub fn diagnose(&self) -> Result<Diagnosis, Refusal> {
        diagnose(&self.case, &self.settings).map_err(|error| self.blamed(error))
    }

    #[cold]
    #[inline(never)]
    fn blamed(&self, error: Error) -> Refusal {
        let ambient = self.case.conditions.ambient;
        let of_ambient = error.quantity == Quantity::Temperature && error.value == in_kelvins(ambient);
        if error.kind == ErrorKind::OutOfRange && of_ambient {
            let celsius = |k: f64| alloc::format!("{:.1} °C", in_celsius(kelvins(k)));
            let advice = alloc::format!(
                "what sound systems show is known from {} to {}",
                celsius(error.low),
                celsius(error.high)
            );
            return *Refusal::new("conditions.ambient", &celsius(error.value), error, &advice);
        }
        if error.kind == ErrorKind::NotAvailable {
            let advice = "what sound systems of this kind show is not known; properties, superheat and subcooling are";
            return *Refusal::new("system.refrigerant", self.case.system.refrigerant.id(), error, advice);
        }
        error.into()
    }

    /// All that was done, judged; see [`crate::proof`].
    ///
    /// Errors: a [`Refusal`] whose key is the table that cannot be judged.
    ///
    /// ```
    /// use coldloop::{EvacuationFinding, intake};
    /// let visit = intake::visit_from_toml(r#"
    ///     [system]
    ///     refrigerant = "R-134a"
    ///     expansion = "txv"
    ///     compressor = "fixed-clutch"
    ///     [conditions]
    ///     ambient = "20 °C"
    ///     altitude = "1600 m"
    ///     [evacuation]
    ///     reached = "420 micron"
    /// "#)?;
    /// assert_eq!(visit.prove()?.evacuation.map(|vacuum| vacuum.finding), Some(EvacuationFinding::Deep));
    /// # Ok::<(), coldloop::intake::Refusal>(())
    /// ```
    pub fn prove(&self) -> Result<Judgements, Refusal> {
        let last = self.after.as_ref().unwrap_or(&self.case);
        Ok(Judgements {
            pressure_test: judged("pressure_test", self.pressure_test, |test| test.judge())?,
            evacuation: judged("evacuation", self.evacuation, |evacuation| evacuation.judge())?,
            hold: judged("hold", self.hold(), |hold| hold.judge())?,
            charge: judged("charge", self.charge, |book| book.balance())?,
            pull_down: judged(
                "pull_down",
                Some(&self.pull_down[..]).filter(|all| !all.is_empty()),
                |all| pull_down(&last.system, &last.conditions, all),
            )?,
            repair: judged("after", self.after.as_ref(), |after| {
                prove(&self.case, after, &self.settings)
            })?,
        })
    }
}

fn judged<T, U>(key: &str, given: Option<T>, judge: impl Fn(T) -> Result<U, Error>) -> Result<Option<U>, Refusal> {
    given
        .map(|given| judge(given).map_err(|error| *Refusal::new(key, "", error, "")))
        .transpose()
}

pub(super) fn visit(root: &Table<'_>) -> Result<Visit, Refused> {
    let others = [
        "settings",
        "after",
        "pressure_test",
        "evacuation",
        "hold",
        "charge",
        "pull_down",
    ];
    root.only(&[&TABLES[..], &others[..]].concat())?;
    let case = case(root)?;
    Ok(Visit {
        settings: section(root, "settings", settings)?.unwrap_or_default(),
        after: section(root, "after", |table| after(table, &case))?,
        pressure_test: section(root, "pressure_test", |table| pressure_test(table, &case))?,
        evacuation: section(root, "evacuation", |table| evacuation(table, &case))?,
        hold: section(root, "hold", |table| hold(table, &case))?,
        held: section(root, "hold", held)?.unwrap_or_default(),
        charge: section(root, "charge", |table| charge(table, &case))?,
        pull_down: section(root, "pull_down", vents)?.unwrap_or_default(),
        case,
    })
}

fn section<T>(
    root: &Table<'_>,
    key: &str,
    read: impl Fn(&Table<'_>) -> Result<T, Refused>,
) -> Result<Option<T>, Refused> {
    root.table(key)?.map(|table| read(&table)).transpose()
}

/// The same vehicle with the conditions of another time.
fn after(table: &Table<'_>, before: &Case) -> Result<Case, Refused> {
    table.only(&["conditions", "readings", "observations"])?;
    Ok(Case {
        own_table: before.own_table,
        own_readings: before.own_readings,
        ..moment(before.system, table)?
    })
}

fn pressure_test(table: &Table<'_>, case: &Case) -> Result<Decay, Refused> {
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
    ])?;
    let need = |key: &str, quantity: Quantity| {
        table.require(
            key,
            quantity,
            "a pressure test has gas, start, start_temperature, end, end_temperature, held",
        )
    };
    let gas = match need("gas", Quantity::Name)?.member(&TestGas::ALL, TestGas::id, TestGas::from_id)? {
        TestGas::Nitrogen => DecayGas::Nitrogen,
        TestGas::Refrigerant => DecayGas::Vapour(case.system.refrigerant),
    };
    let start = pressure(&need("start", Quantity::GaugePressure)?, Gauge::DIGITAL)?;
    let shown = |key: &str| air(&need(key, Quantity::Temperature)?);
    Ok(Decay {
        gas,
        start,
        start_temperature: shown("start_temperature")?,
        end: pressure(&need("end", Quantity::GaugePressure)?, Gauge::DIGITAL)?,
        end_temperature: shown("end_temperature")?,
        repeatability_pa: given(table, "repeatability", limit_pa)?.unwrap_or(REPEATABLE * start.standard_uncertainty),
        held_s: need("held", Quantity::Duration)?.quantity(Quantity::Duration, text::duration_s)?,
        surroundings: case.conditions.surroundings,
        volume_m3: given(table, "volume", volume_m3)?,
        allowed_kg_s: given(table, "allowed", mass_rate_kg_s)?,
    })
}

/// `"5 g/year"`.
fn mass_rate_kg_s(entry: &Entry<'_>) -> Result<f64, Refused> {
    let advice = "write a mass per h, day or year: \"5 g/year\"";
    let missing = entry.refuse(Error::of(ErrorKind::MissingUnit, Quantity::Mass), advice);
    let (mass, time) = entry.text(Quantity::Mass)?.split_once('/').ok_or(missing)?;
    let seconds = match time.trim() {
        "h" | "hour" => 3_600.0,
        "day" => 86_400.0,
        "year" => 365.25 * 86_400.0,
        _ => return Err(entry.refuse(Error::of(ErrorKind::UnknownUnit, Quantity::Mass), advice)),
    };
    let mass_kg = text::mass_kg(mass).map_err(|error| entry.refuse(error, advice))?;
    Ok(mass_kg / seconds)
}

fn evacuation(table: &Table<'_>, case: &Case) -> Result<Evacuation, Refused> {
    table.only(&["reached", "coldest"])?;
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
        coldest: part(table, "coldest", case)?,
        surroundings: case.conditions.surroundings,
    })
}

fn hold(table: &Table<'_>, case: &Case) -> Result<Hold<'static>, Refused> {
    table.only(&["samples", "warmest", "volume"])?;
    Ok(Hold {
        samples: &[],
        warmest: part(table, "warmest", case)?,
        surroundings: case.conditions.surroundings,
        volume_m3: given(table, "volume", volume_m3)?,
    })
}

fn held(table: &Table<'_>) -> Result<Vec<Sample>, Refused> {
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

fn vents(table: &Table<'_>) -> Result<Vec<VentSample>, Refused> {
    table.only(&["samples"])?;
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
    table
        .require("samples", Quantity::Rows, &advice)?
        .items()?
        .map(|item| {
            let row = item.table()?;
            row.only(&["after", key])?;
            let after = row.require("after", Quantity::Duration, &advice)?;
            let after_s = after.quantity(Quantity::Duration, text::duration_s)?;
            read(after_s, &row.require(key, Quantity::Name, &advice)?)
        })
        .collect()
}

fn charge(table: &Table<'_>, case: &Case) -> Result<ChargeBook, Refused> {
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
    ])?;
    let oil = |entry: &Entry<'_>| match entry.value.is_string() {
        true => Ok(Reading::within(entry.quantity(Quantity::Mass, text::mass_kg)?, OIL_KG)),
        false => mass_kg(entry),
    };
    let yes_or_no = |key: &str| given(table, key, |entry| entry.yes_or_no());
    let new = ChargeBook::new(case.system.refrigerant, case.conditions.surroundings);
    Ok(ChargeBook {
        nominal_kg: case.system.nominal_charge_kg,
        tolerance_kg: optional(table, "tolerance", Quantity::Mass, text::mass_kg)?.unwrap_or(new.tolerance_kg),
        recovered_kg: given(table, "recovered", mass_kg)?,
        oil_recovered_kg: given(table, "oil_recovered", oil)?,
        oil_weighed_in: yes_or_no("oil_weighed_in")?.unwrap_or(new.oil_weighed_in),
        left: given(table, "left", |entry| kept(entry, case))?,
        evacuated: yes_or_no("evacuated")?.unwrap_or(new.evacuated),
        charged_kg: given(table, "charged", mass_kg)?,
        hose: given(table, "hose", |entry| kept(entry, case))?,
        oil_added_kg: given(table, "oil_added", oil)?,
        ..new
    })
}

/// `{ volume = "60 cm3", temperature = "25 °C" }` full of liquid, or with a `pressure` of vapour.
fn kept(entry: &Entry<'_>, case: &Case) -> Result<Kept, Refused> {
    let table = entry.table()?;
    table.only(&["volume", "temperature", "pressure"])?;
    Ok(Kept {
        volume_m3: volume_m3(&table.require("volume", Quantity::Volume, "the refrigerant fills a volume")?)?,
        temperature: part(&table, "temperature", case)?,
        vapour: given(&table, "pressure", |entry| pressure(entry, Gauge::HIGH_SIDE))?,
    })
}

/// The temperature of a part; the ambient where it was not taken.
fn part(table: &Table<'_>, key: &str, case: &Case) -> Result<Reading<Temperature>, Refused> {
    let ambient = Reading::temperature(case.conditions.ambient, Thermometer::PocketDigital);
    Ok(given(table, key, air)?.unwrap_or(ambient))
}

fn air(entry: &Entry<'_>) -> Result<Reading<Temperature>, Refused> {
    temperature(entry, Thermometer::PocketDigital)
}
