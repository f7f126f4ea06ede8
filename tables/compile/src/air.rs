//! `tables/air.toml` into `src/air/tables.rs`.

use serde::Deserialize;
use std::fs;
use std::path::Path;
use tables_names::Output;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    saturation: Phases<Saturation>,
    enhancement: Phases<Enhancement>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Phases<T> {
    ice: T,
    water: T,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Saturation {
    a: [String; 6],
    b: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Enhancement {
    alpha: [String; 4],
    beta: [String; 4],
}

/// Reads `tables/air.toml` and writes `src/air/tables.rs`.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let text = fs::read_to_string(root.join("tables/air.toml")).map_err(|e| format!("air.toml: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("air.toml: {e}"))?;
    let mut source = String::from(
        "//! Coefficients of moist air.\n//!\n\
         //! Generated from tables/air.toml by tables/compile; edit the table, not this file.\n\n\
         use super::water::{Enhancement, Saturation};\n\n",
    );
    for (name, row) in [("ICE", &file.saturation.ice), ("WATER", &file.saturation.water)] {
        let (a, b) = (numbers(&row.a)?, number(&row.b)?);
        source += &format!("pub(super) const SATURATION_{name}: Saturation = Saturation {{ a: {a}, b: {b} }};\n");
    }
    for (name, row) in [("ICE", &file.enhancement.ice), ("WATER", &file.enhancement.water)] {
        let (alpha, beta) = (numbers(&row.alpha)?, numbers(&row.beta)?);
        source += &format!(
            "pub(super) const ENHANCEMENT_{name}: Enhancement = Enhancement {{ alpha: {alpha}, beta: {beta} }};\n"
        );
    }
    out.rust("src/air/tables.rs", &source)
}

fn numbers(printed: &[String]) -> Result<String, String> {
    let numbers: Result<Vec<String>, String> = printed.iter().map(|text| number(text)).collect();
    Ok(format!("[{}]", numbers?.join(", ")))
}

fn number(printed: &str) -> Result<String, String> {
    let value: f64 = printed
        .parse()
        .map_err(|_| format!("air.toml: {printed} is no number"))?;
    Ok(format!("{value:?}"))
}
