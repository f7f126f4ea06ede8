//! `tables/bands/healthy.toml` into `src/expected/constants.rs`.

use serde::Deserialize;
use std::fs;
use std::path::Path;
use tables_names::Output;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    constant: Vec<Constant>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Constant {
    name: String,
    value: String,
    doc: String,
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

const HEADER: &str = "//! What of a sound system no source of the atlas states.\n//!\n\
    //! Generated from tables/bands/healthy.toml by tables/compile; edit the table, not this file.\n\n";

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
        Ok(source)
    }
}

/// The printed digits as a Rust literal.
pub(crate) fn number(text: &str) -> Result<String, String> {
    let value: f64 = text.parse().map_err(|_| format!("{text:?} is no number"))?;
    Ok(format!("{value:?}"))
}
