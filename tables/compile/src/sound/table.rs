//! `tables/atlas/vehicle-model-sound.csv`, written and read.

use super::TABLE;
use super::fit::{DEVIATION_TERMS, Kind};
use crate::features::{FEATURES, NAMES};
use coldloop::expected::Weather;
use coldloop::vehicle::System;
use coldloop::{Compressor, Expansion, Refrigerant};
use std::fmt::Write;
use std::fs;
use std::path::Path;

const HEADER: &str = "# Sound vehicles of the vehicle model, by `tables-compile -- --fit-sound`; README.md of this folder says what stands here.\n\
    # refrigerant, expansion, compressor, feature, part, then the coefficients of the weather's terms (mean, ln deviation) or\n\
    # the lower triangle's row of the correlations (lasting, passing), or the mean of the first vehicles drawn.\n";

/// The kind as the table names it.
pub(crate) fn id(system: &System) -> String {
    [system.refrigerant.id(), system.expansion.id(), system.compressor.id()].join(",")
}

pub(super) fn text(kinds: &[(System, Kind)]) -> String {
    let mut text = HEADER.to_string();
    for (system, kind) in kinds {
        let system = id(system);
        let mut row = |feature: usize, part: &str, values: &[f64]| {
            let _ = write!(text, "{system},{},{part}", NAMES[feature]);
            for value in values {
                let _ = write!(text, ",{:?}", rounded(*value));
            }
            text.push('\n');
        };
        for i in 0..FEATURES {
            row(i, "mean", &kind.mean[i]);
            row(i, "ln-deviation", &kind.ln_deviation[i]);
        }
        for i in 0..FEATURES {
            row(i, "lasting", &kind.lasting[i][..=i]);
        }
        for i in 0..FEATURES {
            row(i, "passing", &kind.passing[i][..=i]);
        }
        for i in 0..FEATURES {
            row(i, "drawn", &kind.drawn[i..=i]);
        }
    }
    text
}

/// Four decimals: a tenth of a millikelvin.
fn rounded(value: f64) -> f32 {
    let rounded = (1e4 * value).round() / 1e4;
    if rounded == 0.0 { 0.0 } else { rounded as f32 }
}

/// The kinds of the table, as far as its digits go; both triangles of the correlations are filled.
pub(crate) fn read(root: &Path) -> Result<Vec<(System, Kind)>, String> {
    let text = fs::read_to_string(root.join(TABLE)).map_err(|e| format!("{TABLE}: {e}"))?;
    let mut kinds: Vec<(System, Kind)> = Vec::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        row(line, &mut kinds).map_err(|e| format!("{TABLE}: {e}: {}", line.chars().take(70).collect::<String>()))?;
    }
    Ok(kinds)
}

fn row(line: &str, kinds: &mut Vec<(System, Kind)>) -> Result<(), String> {
    let fields: Vec<&str> = line.split(',').collect();
    let [refrigerant, expansion, compressor, feature, part, values @ ..] = fields.as_slice() else {
        return Err("no row".to_string());
    };
    let system = System::new(
        Refrigerant::from_id(refrigerant).ok_or("no refrigerant")?,
        Expansion::from_id(expansion).ok_or("no expansion device")?,
        Compressor::from_id(compressor).ok_or("no compressor")?,
    );
    let feature = NAMES.iter().position(|name| name == feature).ok_or("no feature")?;
    let values = values
        .iter()
        .map(|digits| digits.parse::<f64>().map_err(|_| format!("{digits} is no number")))
        .collect::<Result<Vec<f64>, String>>()?;
    if kinds.last().is_none_or(|(of, _)| *of != system) {
        let kind = Kind {
            mean: [[0.0; Weather::TERMS]; FEATURES],
            ln_deviation: [[0.0; DEVIATION_TERMS]; FEATURES],
            lasting: [[0.0; FEATURES]; FEATURES],
            passing: [[0.0; FEATURES]; FEATURES],
            drawn: [0.0; FEATURES],
        };
        kinds.push((system, kind));
    }
    let Some((_, kind)) = kinds.last_mut() else {
        return Err("no kind".to_string());
    };
    let count = |wanted: usize| {
        if values.len() == wanted {
            Ok(())
        } else {
            Err(format!("{} values, not {wanted}", values.len()))
        }
    };
    match *part {
        "mean" => {
            count(Weather::TERMS)?;
            kind.mean[feature].copy_from_slice(&values);
        }
        "ln-deviation" => {
            count(DEVIATION_TERMS)?;
            kind.ln_deviation[feature].copy_from_slice(&values);
        }
        "lasting" | "passing" => {
            count(feature + 1)?;
            let matrix = if *part == "lasting" {
                &mut kind.lasting
            } else {
                &mut kind.passing
            };
            for (j, value) in values.iter().enumerate() {
                matrix[feature][j] = *value;
                matrix[j][feature] = *value;
            }
        }
        "drawn" => {
            count(1)?;
            kind.drawn[feature] = values[0];
        }
        _ => return Err(format!("{part} is no part")),
    }
    Ok(())
}
