//! The moments of an independent simulator: what its sound systems read, and how far each fault moves that.
//!
//! `-- --moments CASES.jsonl.gz` reads cases with their truth (one JSON object a line, packed or not) and writes
//! `tables/atlas/independent-simulator.csv` and `independent-simulator-conditions.csv`; with `--check` it compares instead.
//! The columns are described in `tables/atlas/README.md`.

pub(crate) mod conditions;
mod fit;
mod lasting;
mod reading;
mod shifts;
mod sound;
mod table;
#[cfg(test)]
mod tests;
mod truth;

pub(crate) use reading::Table;

use flate2::read::GzDecoder;
use std::fs;
use std::io::Read;
use std::path::Path;
use tables_names::Output;

/// Readings that are fitted together.
pub(crate) const FEATURES: usize = 7;
/// Their names, in this order everywhere.
pub(crate) const NAMES: [&str; FEATURES] = [
    "low_side",
    "high_side",
    "suction_line",
    "discharge_line",
    "liquid_line",
    "condenser_outlet",
    "vent",
];
/// A covariance of the readings, K2; both triangles are filled.
pub(crate) type Covariance = nalgebra::SMatrix<f64, FEATURES, FEATURES>;

const FOLDER: &str = "tables/atlas";

/// Writes or compares the two tables of the atlas that come from the cases of `path`.
///
/// `without` are makes that are left out, by the number at the end of their names: then the tables go to the folder `target/atlas`,
/// to be judged on the cases of those makes.
pub(crate) fn run(root: &Path, path: &str, check: bool, without: Option<(usize, usize)>) -> Result<(), String> {
    let mut text = text(Path::new(path))?;
    let mut folder = FOLDER;
    if let Some((first, last)) = without {
        let left_out = (first..=last).map(|make| format!("\"make\": \"M{make:02}\""));
        let left_out: Vec<String> = left_out.collect();
        let kept = text
            .lines()
            .filter(|line| left_out.iter().all(|make| !line.contains(make)));
        text = kept.collect::<Vec<_>>().join("\n");
        folder = "target/atlas";
        fs::create_dir_all(root.join(folder)).map_err(|e| format!("{folder}: {e}"))?;
    }
    let [moments, conditions] = tables(&text).map_err(|e| format!("{path}: {e}"))?;
    let mut out = Output::new(root, check);
    out.text(&format!("{folder}/independent-simulator.csv"), &moments)?;
    out.text(&format!("{folder}/independent-simulator-conditions.csv"), &conditions)?;
    out.finish().map(drop)
}

/// The lines of a file, unpacked where its name ends in `gz`.
fn text(path: &Path) -> Result<String, String> {
    let name = path.display();
    let bytes = fs::read(path).map_err(|e| format!("{name}: {e}"))?;
    let mut text = String::new();
    if path.extension().is_some_and(|end| end == "gz") {
        GzDecoder::new(bytes.as_slice()).read_to_string(&mut text)
    } else {
        bytes.as_slice().read_to_string(&mut text)
    }
    .map_err(|e| format!("{name}: {e}"))?;
    Ok(text)
}

/// Both tables from the lines of a case file.
fn tables(lines: &str) -> Result<[String; 2], String> {
    let cases = truth::read(lines)?;
    let usual = conditions::Usual::of(&cases)?;
    let sound = sound::Sound::of(&cases, &usual)?;
    let shifts = shifts::all(&cases, &usual, &sound)?;
    Ok([table::moments(&cases, &sound, &shifts), table::conditions(&usual)])
}
