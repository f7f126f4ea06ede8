//! `tables/atlas/vehicle-model.csv`, written and read.

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::group::Group;
use super::{FaultRows, Row, TABLE};
use crate::features::{FEATURES, NAMES};
use coldloop::{Expansion, Fault};
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// Names of the terms of a shift.
pub(super) const TERMS: [&str; 4] = ["1", "a", "w", "s"];
/// Names of the scale matrices: of mild and middling severities, and of severe ones.
const SCALES: [&str; 2] = ["scale", "scale_severe"];
/// The two families of refrigerants.
const FAMILIES: [&str; 2] = ["other", "R-744"];

pub(super) fn text(faults: &[FaultRows]) -> String {
    let mut text = format!(
        "# Faults of the vehicle model, by `tables-compile -- --fit-atlas`. Columns: README.md of this folder. K, and K2.\n\
         source,refrigerant,expansion,compressor,fault,cause,severity_low,severity_high,severity,weight,part,term,cases,{}\n",
        NAMES.join(",")
    );
    for of in faults {
        let family = FAMILIES[usize::from(of.carbon_dioxide)];
        let (source, expansion, fault) = (of.source, of.expansion.id(), of.fault.id());
        for row in &of.rows {
            let [low, mean, high] = row.severity;
            for (term, name) in TERMS.iter().enumerate() {
                let _ = write!(
                    text,
                    "{source},{family},{expansion},{},{fault},\"{}\",{low:.3},{high:.3},{mean:.3},{:.4},shift,{name},{}",
                    row.group.id(),
                    row.cause,
                    row.weight,
                    row.cases
                );
                for shift in &row.shift {
                    let _ = write!(text, ",{}", number(shift[term]));
                }
                text.push('\n');
            }
        }
        let cases: usize = of.rows.iter().map(|row| row.cases).sum();
        for (part, scale) in SCALES.iter().zip(&of.scales) {
            for (i, name) in NAMES.iter().enumerate() {
                let _ = write!(
                    text,
                    "{source},{family},{expansion},all,{fault},,,,,,{part},{name},{cases}"
                );
                for j in 0..FEATURES {
                    text.push(',');
                    if j <= i {
                        text += &number(scale[i][j]);
                    }
                }
                text.push('\n');
            }
        }
        let _ = write!(text, "{source},{family},{expansion},all,{fault},,,,,,drawn,,");
        for drawn in &of.drawn {
            let _ = write!(text, ",{}", number(*drawn));
        }
        text.push('\n');
    }
    text
}

/// Three decimals: a thousandth of a kelvin, coarse enough to be the same on every machine.
fn number(value: f64) -> String {
    let text = format!("{value:.3}");
    if text == "-0.000" { "0.000".to_string() } else { text }
}

/// The faults of the table.
pub(super) fn read(root: &Path) -> Result<Vec<FaultRows>, String> {
    let text = fs::read_to_string(root.join(TABLE)).map_err(|e| format!("{TABLE}: {e}"))?;
    let mut faults: Vec<FaultRows> = Vec::new();
    for line in text.lines().filter(|line| !line.starts_with('#')).skip(1) {
        row(line, &mut faults).map_err(|e| format!("{TABLE}: {e}: {line}"))?;
    }
    Ok(faults)
}

fn row(line: &str, faults: &mut Vec<FaultRows>) -> Result<(), String> {
    // The only quoted field is the form, which may have commas.
    let (start, cause, rest) = match line.split_once('"') {
        Some((start, rest)) => {
            let (cause, rest) = rest.split_once("\",").ok_or("an open quotation")?;
            (start.trim_end_matches(','), cause, rest)
        }
        None => {
            let at = line.match_indices(',').nth(4).ok_or("too few columns")?.0;
            (&line[..at], "", &line[at + 2..])
        }
    };
    let start: Vec<&str> = start.split(',').collect();
    let [_, family, expansion, group, fault] = start.as_slice() else {
        return Err("too few columns".to_string());
    };
    let rest: Vec<&str> = rest.split(',').collect();
    let [low, high, mean, weight, part, term, cases, values @ ..] = rest.as_slice() else {
        return Err("too few columns".to_string());
    };
    let carbon_dioxide = FAMILIES.iter().position(|name| name == family).ok_or("no family")? == 1;
    let expansion = Expansion::from_id(expansion).ok_or("no expansion device")?;
    let fault = Fault::from_id(fault).ok_or("no fault")?;
    let key = |of: &FaultRows| (of.carbon_dioxide, of.expansion, of.fault);
    if faults
        .last()
        .is_none_or(|of| key(of) != (carbon_dioxide, expansion, fault))
    {
        faults.push(FaultRows {
            source: "vehicle-model",
            carbon_dioxide,
            expansion,
            fault,
            scales: [[[0.0; FEATURES]; FEATURES]; 2],
            rows: Vec::new(),
            drawn: [0.0; FEATURES],
        });
    }
    let of = faults.last_mut().ok_or("no fault")?;
    if *part == "drawn" {
        for (drawn, value) in of.drawn.iter_mut().zip(values) {
            *drawn = float(value)?;
        }
        return Ok(());
    }
    if let Some(severe) = SCALES.iter().position(|name| name == part) {
        let i = NAMES.iter().position(|name| name == term).ok_or("no feature")?;
        for (j, value) in values.iter().enumerate().take(i + 1) {
            of.scales[severe][i][j] = float(value)?;
            of.scales[severe][j][i] = of.scales[severe][i][j];
        }
        return Ok(());
    }
    let place = TERMS.iter().position(|name| name == term).ok_or("no term")?;
    if place == 0 {
        of.rows.push(Row {
            group: Group::from_id(group).ok_or("no group")?,
            cause: cause.to_string(),
            weight: float(weight)?,
            severity: [float(low)?, float(mean)?, float(high)?],
            cases: cases.parse().map_err(|_| format!("{cases} is no count"))?,
            shift: [[0.0; 4]; FEATURES],
        });
    }
    let own = of.rows.last_mut().ok_or("no row")?;
    for (shift, value) in own.shift.iter_mut().zip(values) {
        shift[place] = float(value)?;
    }
    Ok(())
}

fn float(digits: &str) -> Result<f64, String> {
    digits.parse().map_err(|_| format!("{digits} is no number"))
}
