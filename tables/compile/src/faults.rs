//! `tables/faults/*.toml` into `src/diagnosis/fault_table.rs`.

use crate::output::Output;
use crate::systems::systems;
use coldloop::{Fault, Feature};
use serde::Deserialize;
use std::fs;
use std::path::Path;

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
struct Row {
    id: String,
    measure: String,
    severity: [f64; 4],
    weight: [f64; 4],
    #[serde(default)]
    expansion: Vec<String>,
    #[serde(default)]
    compressor: Vec<String>,
    prior: f64,
    prior_source: String,
    #[serde(default)]
    rest_spread_k: f64,
    #[serde(default)]
    effect: Vec<Effect>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Effect {
    feature: String,
    #[serde(default)]
    expansion: Vec<String>,
    #[serde(default)]
    compressor: Vec<String>,
    shift: Option<[f64; 4]>,
    rest: Option<[f64; 4]>,
    inlet: Option<[f64; 4]>,
    rest_k: Option<f64>,
    no_change: f64,
    source: String,
}

/// Reads every file of `tables/faults` and writes `src/diagnosis/fault_table.rs`, one row per fault in the order of
/// its code.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
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

const HEADER: &str = "//! What each fault does to each reading.\n//!\n\
    //! Generated from tables/faults by tables/compile; edit the tables, not this file.\n\n\
    use super::faults::{Effect, FaultRow, Toward};\nuse crate::names::{Fault, Feature};\n\n\
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
        let effects: Result<Vec<String>, String> = self.effect.iter().map(Effect::rust).collect();
        Ok(format!(
            "FaultRow {{\nfault: Fault::{fault:?},\nsystems: {:#010b},\n// {}\nprior: {:?},\nmeasure: {:?},\n\
             severity: {:?},\nweight: {:?},\nrest_spread_k: {:?},\neffects: &[\n{}],\n}},\n",
            systems(&self.expansion, &self.compressor)?,
            self.prior_source,
            self.prior,
            self.measure,
            self.severity,
            self.weight,
            self.rest_spread_k,
            effects?.concat()
        ))
    }
}

impl Effect {
    fn rust(&self) -> Result<String, String> {
        let feature = Feature::from_id(&self.feature).ok_or(format!("{} is no feature", self.feature))?;
        let (toward, size) = match (self.shift, self.rest.zip(self.rest_k), self.inlet) {
            (Some(size), None, None) => ("Nothing".to_string(), size),
            (None, Some((size, rest_k)), None) => (format!("Rest({rest_k:?})"), size),
            (None, None, Some(size)) => ("Inlet".to_string(), size),
            _ => return Err(format!("{feature}: give one of shift, rest with rest_k, and inlet")),
        };
        if !(0.0..1.0).contains(&self.no_change) {
            return Err(format!("{feature}: no_change {} is no chance", self.no_change));
        }
        Ok(format!(
            "// {}\nEffect {{ feature: Feature::{feature:?}, systems: {:#010b}, toward: Toward::{toward}, size: {size:?}, \
             no_change: {:?} }},\n",
            self.source,
            systems(&self.expansion, &self.compressor)?,
            self.no_change
        ))
    }
}
