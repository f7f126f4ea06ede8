//! `tables/checks/*.toml` into `src/diagnosis/check_table.rs`.

use crate::systems::systems;
use coldloop::{Caution, Check, Fault, Feature, Observation};
use serde::Deserialize;
use serde::de::DeserializeOwned;
use std::fs;
use std::path::Path;
use tables_names::Output;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Observations {
    mistaken: Mistaken,
    observation: Vec<ObservationRow>,
    exclusive: Vec<Exclusive>,
    shared: Vec<Shared>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Exclusive {
    members: Vec<String>,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Shared {
    members: Vec<String>,
    correlation: f64,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ObservationRow {
    id: String,
    mistaken: Option<Mistaken>,
    otherwise: f64,
    source: String,
    yes: Vec<Chance>,
}

/// How often an answer is noted wrongly.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Mistaken {
    chance: f64,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Chance {
    fault: String,
    chance: f64,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Checks {
    source: String,
    cautions_source: String,
    looks_first: Before,
    before_opening: Before,
    check: Vec<CheckRow>,
}

/// Checks that come before others.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Before {
    checks: Vec<String>,
    source: String,
}

/// When a check may come at all.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Once {
    leads: Vec<String>,
    #[serde(default)]
    or_open: Vec<String>,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CheckRow {
    id: String,
    feature: Option<String>,
    observation: Option<String>,
    minutes: f64,
    money: f64,
    #[serde(default)]
    recovery: bool,
    #[serde(default)]
    at_rest: bool,
    #[serde(default)]
    not_r744: bool,
    #[serde(default)]
    expansion: Vec<String>,
    #[serde(default)]
    compressor: Vec<String>,
    #[serde(default)]
    cautions: Vec<String>,
    once: Option<Once>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Repairs {
    source: String,
    cautions_source: String,
    recovery_minutes: f64,
    verify_minutes: f64,
    none_of_these_minutes: f64,
    repair: Vec<Repair>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Repair {
    fault: String,
    minutes: f64,
    money: f64,
    recovery: bool,
    #[serde(default)]
    cautions: Vec<String>,
    says: String,
    says_r744: Option<String>,
}

/// Reads `tables/checks` and writes `src/diagnosis/check_table.rs`.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let observations: Observations = read(root, "tables/checks/observations.toml")?;
    let checks: Checks = read(root, "tables/checks/checks.toml")?;
    let repairs: Repairs = read(root, "tables/checks/repairs.toml")?;
    let source = [
        HEADER.to_string(),
        observations.rust()?,
        checks.rust()?,
        repairs.rust()?,
    ]
    .concat();
    out.rust("src/diagnosis/check_table.rs", &source)
}

fn read<T: DeserializeOwned>(root: &Path, path: &str) -> Result<T, String> {
    let text = fs::read_to_string(root.join(path)).map_err(|e| format!("{path}: {e}"))?;
    toml::from_str(&text).map_err(|e| format!("{path}: {e}"))
}

const HEADER: &str = "//! Observations, further checks and repairs.\n//!\n\
    //! Generated from tables/checks by tables/compile; edit the tables, not this file.\n\n\
    use super::rows::{CheckRow, ObservationRow, Once, Repair, Reveals, Shared};\n\
    use crate::names::{Caution, Check, Fault, Feature, Observation};\n\n";

impl Observations {
    /// One row per observation, in the order of its code; one chance per fault, in the order of its code.
    fn rust(&self) -> Result<String, String> {
        let mut source = format!(
            "/// One row per observation, in the order of its code.\n\
             pub(super) const OBSERVATIONS: [ObservationRow; {}] = [\n",
            Observation::ALL.len()
        );
        for observation in Observation::ALL {
            let mut rows = self.observation.iter().filter(|row| row.id == observation.id());
            let (Some(row), None) = (rows.next(), rows.next()) else {
                return Err(format!("observations.toml: {observation} must have one row"));
            };
            for chance in &row.yes {
                Fault::from_id(&chance.fault).ok_or(format!("{observation}: {} is no fault", chance.fault))?;
            }
            let chances = Fault::ALL.map(|fault| {
                let named = row.yes.iter().find(|chance| chance.fault == fault.id());
                named.map_or(row.otherwise, |chance| chance.chance)
            });
            if chances
                .iter()
                .chain([&row.otherwise])
                .any(|chance| !(0.001..=0.999).contains(chance))
            {
                return Err(format!(
                    "observations.toml: {observation}: a chance of 0 or 1 is never known"
                ));
            }
            let mistaken = row.mistaken.as_ref().unwrap_or(&self.mistaken);
            if !(0.001..=0.2).contains(&mistaken.chance) {
                return Err(format!("observations.toml: {observation}: mistaken is out of range"));
            }
            source += &format!("// {}\n", row.source);
            if row.mistaken.is_some() {
                source += &format!("// noted wrongly: {}\n", mistaken.source);
            }
            for chance in &row.yes {
                source += &format!("// {}: {}\n", chance.fault, chance.source);
            }
            source += &format!(
                "ObservationRow {{ mistaken: {:?}, otherwise: {:?}, yes: {chances:?} }},\n",
                mistaken.chance, row.otherwise
            );
        }
        source += "];\n\n";
        source += &self.groups()?;
        if let Some(row) = self
            .observation
            .iter()
            .find(|row| Observation::from_id(&row.id).is_none())
        {
            return Err(format!("observations.toml: {} is no observation", row.id));
        }
        Ok(source)
    }

    /// Which answers share a cause, and which exclude each other.
    fn groups(&self) -> Result<String, String> {
        let mut source = "/// Answers of which at most one is yes.\n\
             pub(super) const EXCLUSIVE: &[&[Observation]] = &[\n"
            .to_string();
        for group in &self.exclusive {
            source += &format!("// {}\n{},\n", group.source, members(&group.members)?);
        }
        source += "];\n\n/// Answers that share a cause beyond the fault.\npub(super) const SHARED: &[Shared] = &[\n";
        for group in &self.shared {
            if !(0.0..1.0).contains(&group.correlation) {
                return Err(format!("observations.toml: {} is no correlation", group.correlation));
            }
            source += &format!(
                "// {}\nShared {{ members: {}, correlation: {:?} }},\n",
                group.source,
                members(&group.members)?,
                group.correlation
            );
        }
        Ok(source + "];\n\n")
    }
}

fn members(ids: &[String]) -> Result<String, String> {
    let known = |id: &String| Observation::from_id(id).ok_or(format!("observations.toml: {id} is no observation"));
    let members = ids.iter().map(|id| Ok(format!("Observation::{:?}", known(id)?)));
    Ok(format!(
        "&[{}]",
        members.collect::<Result<Vec<_>, String>>()?.join(", ")
    ))
}

fn cautions(ids: &[String]) -> Result<String, String> {
    let known = |id: &String| Caution::from_id(id).ok_or(format!("tables/checks: {id} is no caution"));
    let members = ids.iter().map(|id| Ok(format!("Caution::{:?}", known(id)?)));
    Ok(format!(
        "&[{}]",
        members.collect::<Result<Vec<_>, String>>()?.join(", ")
    ))
}

fn checks(ids: &[String]) -> Result<String, String> {
    let known = |id: &String| Check::from_id(id).ok_or(format!("checks.toml: {id} is no check"));
    let members = ids.iter().map(|id| Ok(format!("Check::{:?}", known(id)?)));
    Ok(members.collect::<Result<Vec<_>, String>>()?.join(", "))
}

impl Before {
    fn rust(&self, name: &str, doc: &str) -> Result<String, String> {
        let (checks, count) = (checks(&self.checks)?, self.checks.len());
        Ok(format!(
            "/// {doc} Source: {}.\npub(super) const {name}: [Check; {count}] = [{checks}];\n\n",
            self.source
        ))
    }
}

impl Once {
    fn rust(&self) -> Result<String, String> {
        let known = |id: &String| Fault::from_id(id).ok_or(format!("checks.toml: {id} is no fault"));
        let leads = self.leads.iter().map(|id| Ok(format!("Fault::{:?}", known(id)?)));
        let leads = leads.collect::<Result<Vec<_>, String>>()?.join(", ");
        Ok(format!(
            "// {}\nSome(Once {{ leads: &[{leads}], or_open: &[{}] }})",
            self.source,
            checks(&self.or_open)?
        ))
    }
}

impl Checks {
    fn rust(&self) -> Result<String, String> {
        let mut source = self.looks_first.rust(
            "LOOKS_FIRST",
            "What comes before the gauges where no pressure is known.",
        )? + &self.before_opening.rust(
            "BEFORE_OPENING",
            "What comes before the circuit is opened, and before the vehicle is handed over or given back.",
        )?;
        source += &format!(
            "/// What each check reveals and costs; source: {}. Cautions: {}.\n\
             pub(super) const CHECKS: [CheckRow; {}] = [\n",
            self.source,
            self.cautions_source,
            self.check.len()
        );
        for row in &self.check {
            let check = Check::from_id(&row.id).ok_or(format!("checks.toml: {} is no check", row.id))?;
            let reveals = match (&row.feature, &row.observation) {
                (Some(id), None) => {
                    let feature = Feature::from_id(id).ok_or(format!("checks.toml: {id} is no feature"))?;
                    format!("Feature(Feature::{feature:?})")
                }
                (None, Some(id)) => {
                    let observation = Observation::from_id(id).ok_or(format!("checks.toml: {id} is no observation"))?;
                    format!("Observation(Observation::{observation:?})")
                }
                _ => return Err(format!("checks.toml: {check} reveals a feature or an observation")),
            };
            source += &format!(
                "CheckRow {{ check: Check::{check:?}, reveals: Reveals::{reveals}, minutes: {:?}, money: {:?}, \
                 recovery: {}, at_rest: {}, not_r744: {}, systems: {:#010b}, cautions: {}, once: {} }},\n",
                row.minutes,
                row.money,
                row.recovery,
                row.at_rest,
                row.not_r744,
                systems(&row.expansion, &row.compressor)?,
                cautions(&row.cautions)?,
                row.once.as_ref().map_or(Ok("None".into()), Once::rust)?
            );
        }
        Ok(source + "];\n\n")
    }
}

impl Repairs {
    fn rust(&self) -> Result<String, String> {
        let mut source = format!(
            "/// What setting right each fault costs, in the order of its code; source: {}. What is said and the\n\
             /// cautions: {}.\n\
             pub(super) static REPAIRS: [Repair; {}] = [\n",
            self.source,
            self.cautions_source,
            Fault::ALL.len()
        );
        for fault in Fault::ALL {
            let mut rows = self.repair.iter().filter(|row| row.fault == fault.id());
            let (Some(row), None) = (rows.next(), rows.next()) else {
                return Err(format!("repairs.toml: {fault} must have one row"));
            };
            source += &format!(
                "Repair {{ fault: Fault::{fault:?}, minutes: {:?}, money: {:?}, recovery: {}, cautions: {}, says: {:?}, says_r744: {:?} }},\n",
                row.minutes,
                row.money,
                row.recovery,
                cautions(&row.cautions)?,
                row.says,
                row.says_r744.as_ref().unwrap_or(&row.says)
            );
        }
        source += "];\n\n";
        for (name, doc, value) in [
            (
                "RECOVERY_MINUTES",
                "Recovering, evacuating and charging again, paid once, min.",
                self.recovery_minutes,
            ),
            (
                "VERIFY_MINUTES",
                "Running the system after a repair to see whether it helped, min.",
                self.verify_minutes,
            ),
            (
                "NONE_OF_THESE_MINUTES",
                "Until somebody who knows more has found the cause, min.",
                self.none_of_these_minutes,
            ),
        ] {
            source += &format!(
                "/// {doc} Source: {}.\npub(super) const {name}: f64 = {value:?};\n\n",
                self.source
            );
        }
        Ok(source)
    }
}
