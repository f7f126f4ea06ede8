//! `tables/bands/healthy.toml` into `src/expected/constants.rs`.

use crate::output::Output;
use coldloop::{Compressor, Expansion, Refrigerant};
use serde::Deserialize;
use std::fs;
use std::path::Path;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    constant: Vec<Constant>,
    low_side: Vec<LowSide>,
    refrigerant: Vec<RefrigerantRow>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Constant {
    name: String,
    value: String,
    doc: String,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LowSide {
    compressor: Vec<String>,
    expansion: Vec<String>,
    at_reference_k: String,
    per_ambient: String,
    down_k: String,
    up_k: String,
    held: bool,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RefrigerantRow {
    name: String,
    discharge_superheat_k: String,
    source: String,
}

/// Reads `tables/bands/healthy.toml` and writes `src/expected/constants.rs`.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let path = "tables/bands/healthy.toml";
    let text = fs::read_to_string(root.join(path)).map_err(|e| format!("{path}: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("{path}: {e}"))?;
    let source = file.rust().map_err(|e| format!("{path}: {e}"))?;
    out.rust("src/expected/constants.rs", &source)
}

const HEADER: &str = "//! What a sound system reads, as published or judged.\n//!\n\
    //! Generated from tables/bands/healthy.toml by tables/compile; edit the table, not this file.\n\n\
    use super::low_side::LowSide;\nuse crate::names::{Compressor, Expansion, Refrigerant};\n\n";

impl File {
    fn rust(&self) -> Result<String, String> {
        let mut source = String::from(HEADER);
        for row in &self.constant {
            let Constant {
                name,
                doc,
                source: origin,
                ..
            } = row;
            let value = number(&row.value)?;
            source += &format!("/// {doc} Source: {origin}.\npub(super) const {name}: f64 = {value};\n\n");
        }
        source += "/// Evaporating temperature by what holds it.\npub(super) const LOW_SIDE: &[LowSide] = &[\n";
        for row in &self.low_side {
            source += &row.rust()?;
        }
        source += "];\n\n/// Discharge superheat, K, of the refrigerants that have bands.\n\
            pub(super) const DISCHARGE_SUPERHEAT_K: &[(Refrigerant, f64)] = &[\n";
        for row in &self.refrigerant {
            let refrigerant = Refrigerant::from_id(&row.name).ok_or(format!("{} is no refrigerant", row.name))?;
            let value = number(&row.discharge_superheat_k)?;
            source += &format!("(Refrigerant::{refrigerant:?}, {value}), // {}\n", row.source);
        }
        Ok(source + "];\n")
    }
}

impl LowSide {
    fn rust(&self) -> Result<String, String> {
        let mut rows = String::new();
        let [at_reference_k, per_ambient, down_k, up_k] =
            [&self.at_reference_k, &self.per_ambient, &self.down_k, &self.up_k].map(|text| number(text));
        let (at_reference_k, per_ambient, down_k, up_k) = (at_reference_k?, per_ambient?, down_k?, up_k?);
        for compressor in &self.compressor {
            let compressor = Compressor::from_id(compressor).ok_or(format!("{compressor} is no compressor"))?;
            for expansion in &self.expansion {
                let expansion = Expansion::from_id(expansion).ok_or(format!("{expansion} is no expansion device"))?;
                rows += &format!(
                    "// {}\nLowSide {{ compressor: Compressor::{compressor:?}, expansion: Expansion::{expansion:?}, \
                     at_reference_k: {at_reference_k}, per_ambient: {per_ambient}, down_k: {down_k}, up_k: {up_k}, \
                     held: {} }},\n",
                    self.source, self.held
                );
            }
        }
        Ok(rows)
    }
}

/// The printed digits as a Rust literal.
pub(crate) fn number(text: &str) -> Result<String, String> {
    let value: f64 = text.parse().map_err(|_| format!("{text:?} is no number"))?;
    Ok(format!("{value:?}"))
}
