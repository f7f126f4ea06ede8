//! The facts of a fluid: the part of its file that enters no calculation.

use crate::fluid_file::digits;
use serde::Deserialize;

/// The `facts` of a file.
#[derive(Deserialize)]
pub(crate) struct Facts {
    safety_group: Option<Sourced>,
    flammability_limit: Option<Flammability>,
    odp: Option<Sourced>,
    #[serde(default)]
    gwp: Vec<Warming>,
}

#[derive(Deserialize)]
struct Sourced {
    value: String,
    source: String,
}

#[derive(Deserialize)]
struct Flammability {
    volume_percent: Option<String>,
    kg_m3: Option<String>,
    source: String,
}

#[derive(Deserialize)]
struct Warming {
    report: String,
    value: Option<String>,
    below: Option<String>,
    source: String,
}

impl Facts {
    /// The fields of a Rust expression.
    pub(crate) fn rust(&self) -> Result<String, String> {
        let group = match &self.safety_group {
            Some(Sourced { value, source }) => {
                format!("Some(Sourced {{ value: SafetyGroup::{value}, source: {source:?} }})")
            }
            None => "None".to_string(),
        };
        let odp = match &self.odp {
            Some(Sourced { value, source }) => {
                format!("Some(Sourced {{ value: {:?}, source: {source:?} }})", digits(value)?)
            }
            None => "None".to_string(),
        };
        let flammability = match &self.flammability_limit {
            Some(Flammability {
                volume_percent,
                kg_m3,
                source,
            }) => format!(
                "Some(Sourced {{ value: Flammability {{ volume_fraction: {:?}, kg_m3: {:?} }}, source: {source:?} }})",
                volume_percent
                    .as_deref()
                    .map(|text| digits(text).map(|percent| percent / 100.0))
                    .transpose()?,
                kg_m3.as_deref().map(digits).transpose()?
            ),
            None => "None".to_string(),
        };
        let mut warming = String::new();
        for Warming {
            report,
            value,
            below,
            source,
        } in &self.gwp
        {
            let (bound, text) = match (value, below) {
                (Some(value), None) => (false, value),
                (None, Some(below)) => (true, below),
                _ => return Err(format!("gwp {report}: one of value and below")),
            };
            let number = digits(text)?;
            warming += &format!(
                "Sourced {{ value: Warming {{ report: {report:?}, value: {number:?}, is_upper_bound: {bound} }}, source: {source:?} }},"
            );
        }
        Ok(format!(
            "safety_group: {group}, flammability_limit: {flammability}, ozone_depletion: {odp}, warming: &[{warming}]"
        ))
    }
}
