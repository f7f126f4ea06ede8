//! `tables/faults/*.toml` into `src/diagnosis/fault_table.rs`.

use crate::systems::systems;
use coldloop::{Fault, Feature};
use serde::Deserialize;
use std::fs;
use std::path::Path;
use tables_names::Output;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    severity_source: String,
    no_change_source: String,
    rest_source: String,
    fault: Vec<Row>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Row {
    pub(crate) id: String,
    measure: String,
    pub(crate) severity: [f64; 4],
    pub(crate) weight: [f64; 4],
    #[serde(default)]
    pub(crate) expansion: Vec<String>,
    #[serde(default)]
    pub(crate) compressor: Vec<String>,
    prior: f64,
    prior_source: String,
    #[serde(default)]
    pub(crate) rest_spread_k: f64,
    #[serde(default)]
    pub(crate) effect: Vec<Effect>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Effect {
    pub(crate) feature: String,
    #[serde(default)]
    pub(crate) expansion: Vec<String>,
    #[serde(default)]
    pub(crate) compressor: Vec<String>,
    pub(crate) shift: Option<[f64; 4]>,
    pub(crate) rest: Option<[f64; 4]>,
    pub(crate) inlet: Option<[f64; 4]>,
    pub(crate) rest_k: Option<f64>,
    no_change: f64,
    source: String,
}

/// The rows of every file of `tables/faults`.
pub(crate) fn read(root: &Path) -> Result<Vec<Row>, String> {
    let folder = root.join("tables/faults");
    let mut rows = Vec::new();
    for entry in fs::read_dir(&folder).map_err(|e| format!("tables/faults: {e}"))? {
        let path = entry.map_err(|e| format!("tables/faults: {e}"))?.path();
        if path.extension().is_none_or(|extension| extension != "toml") {
            continue;
        }
        let text = fs::read_to_string(&path).map_err(|e| format!("{}: {e}", path.display()))?;
        let file: File = toml::from_str(&text).map_err(|e| format!("{}: {e}", path.display()))?;
        let sources = [&file.severity_source, &file.no_change_source, &file.rest_source];
        if sources.iter().any(|source| source.is_empty()) {
            return Err(format!("{}: an empty source", path.display()));
        }
        rows.extend(file.fault);
    }
    Ok(rows)
}

/// Reads every file of `tables/faults` and writes `src/diagnosis/fault_table.rs`, one row per fault in the order of
/// its code.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let rows = read(root)?;
    let mut source = format!(
        "{HEADER}pub(super) const FAULTS: [FaultRow; {}] = [\n",
        Fault::ALL.len()
    );
    for fault in Fault::ALL {
        let mut of_fault = rows.iter().filter(|row| row.id == fault.id());
        let (Some(row), None) = (of_fault.next(), of_fault.next()) else {
            return Err(format!("tables/faults: {fault} must have one row"));
        };
        source += &row.rust(fault).map_err(|e| format!("tables/faults: {fault}: {e}"))?;
    }
    if let Some(row) = rows
        .iter()
        .find(|row| Fault::ALL.iter().all(|fault| fault.id() != row.id))
    {
        return Err(format!("tables/faults: {} is no fault", row.id));
    }
    source += "];\n";
    out.rust("src/diagnosis/fault_table.rs", &source)
}

const HEADER: &str = "//! How common each fault is, where it can be, and what it does to the pressure at rest.\n//!\n\
    //! Generated from tables/faults by tables/compile; edit the tables, not this file.\n\n\
    use super::rows::{AtRest, FaultRow};\nuse crate::names::Fault;\n\n\
    /// One row per fault, in the order of its code.\n";

impl Row {
    fn rust(&self, fault: Fault) -> Result<String, String> {
        let sum: f64 = self.weight.iter().sum();
        if (sum - 1.0).abs() > 1e-12 || self.weight.iter().any(|weight| *weight < 0.0) {
            return Err(format!("the weights sum to {sum}"));
        }
        let rests = self.effect.iter().any(|effect| effect.rest.is_some());
        if rests != (self.rest_spread_k > 0.0) {
            return Err("effects towards rest and their spread come together".to_string());
        }
        let mut rest = Vec::new();
        for effect in &self.effect {
            effect.check()?;
            if effect.feature == Feature::RestPressure.id() {
                rest.push(effect.at_rest()?);
            }
        }
        let rest = match rest.as_slice() {
            [] => "None".to_string(),
            [one] => format!("Some({one})"),
            _ => return Err("moves the pressure at rest twice".to_string()),
        };
        Ok(format!(
            "FaultRow {{\nfault: Fault::{fault:?},\nsystems: {:#010b},\n// {}\nprior: {:?},\nmeasure: {:?},\n\
             weight: {:?},\nat_rest: {rest},\n}},\n",
            systems(&self.expansion, &self.compressor)?,
            self.prior_source,
            self.prior,
            self.measure,
            self.weight,
        ))
    }
}

impl Effect {
    /// Nothing, when it can be.
    fn check(&self) -> Result<(), String> {
        let feature = Feature::from_id(&self.feature).ok_or(format!("{} is no feature", self.feature))?;
        let ways = [
            self.shift.is_some(),
            self.rest.is_some() && self.rest_k.is_some(),
            self.inlet.is_some(),
        ];
        if ways.iter().filter(|given| **given).count() != 1 || self.rest.is_some() != self.rest_k.is_some() {
            return Err(format!("{feature}: give one of shift, rest with rest_k, and inlet"));
        }
        if !(0.0..1.0).contains(&self.no_change) {
            return Err(format!("{feature}: no_change {} is no chance", self.no_change));
        }
        Ok(())
    }

    /// What it does to the pressure at rest.
    fn at_rest(&self) -> Result<String, String> {
        let size = self.shift.ok_or("the pressure at rest has a shift")?;
        Ok(format!(
            "AtRest {{\n// {}\nsize: {size:?}, no_change: {:?} }}",
            self.source, self.no_change
        ))
    }
}
