//! The moments as two tables of comma-separated values.

use super::conditions::{Usual, names};
use super::lasting::Lasting;
use super::shifts::Shifts;
use super::sound::Sound;
use super::truth::Case;
use super::{Covariance, FEATURES, NAMES};
use std::fmt::Write;

const SOURCE: &str = "independent-simulator";

/// What begins a row: expansion, compressor, fault, severity (least, most, mean).
struct Key<'a> {
    expansion: &'a str,
    group: &'a str,
    fault: &'a str,
    severity: Option<[f64; 3]>,
    cases: usize,
    makes: usize,
}

/// `independent-simulator.csv`.
pub(crate) fn moments(cases: &[Case], sound: &Sound, shifts: &[Shifts]) -> String {
    let mut text = format!(
        "# Moments of an independent simulator ({} cases without gauge errors), by `tables-compile -- --moments CASES.jsonl.gz`.\n\
         # Columns: README.md of this folder. Readings in K, covariances in K2.\n\
         source,expansion,compressor,fault,severity_low,severity_high,severity,part,term,cases,makes,{}\n",
        cases.len(),
        NAMES.join(",")
    );
    let key = |expansion, cases, makes| Key {
        expansion,
        group: "all",
        fault: "no-fault",
        severity: None,
        cases,
        makes,
    };
    for kind in &sound.kinds {
        let key = key(kind.expansion.id(), kind.cases, kind.makes);
        for ((name, _), values) in names().iter().zip(&kind.fit.coefficients) {
            values_row(&mut text, &key, "sound", name, &values.map(Some));
        }
        lasting(&mut text, &key, &kind.lasting);
    }
    let single: usize = sound.kinds.iter().map(|kind| kind.cases).sum();
    lasting(&mut text, &key("all", single, sound.makes), &sound.lasting);
    for of in shifts {
        let whole = Key {
            expansion: of.expansion.id(),
            group: "all",
            fault: of.fault.id(),
            severity: None,
            cases: of.cases,
            makes: of.makes,
        };
        covariance(&mut text, &whole, "covariance", &of.covariance);
        if let Some(severe) = &of.severe {
            covariance(&mut text, &whole, "covariance_severe", severe);
        }
        for shift in &of.rows {
            let key = Key {
                group: shift.group,
                severity: Some(shift.severity),
                cases: shift.cases,
                makes: shift.makes,
                ..whole
            };
            start(&mut text, &key, "read", "");
            for count in shift.read {
                let _ = write!(text, ",{count}");
            }
            text.push('\n');
            for ((term, _), values) in names().iter().zip(&shift.shift) {
                values_row(&mut text, &key, "shift", term, &values.map(Some));
            }
        }
    }
    text
}

fn lasting(text: &mut String, key: &Key<'_>, lasting: &Lasting) {
    covariance(text, key, "makes", &lasting.makes);
    covariance(text, key, "vehicles", &lasting.vehicles);
}

/// The lower triangle, a row for each reading.
fn covariance(text: &mut String, key: &Key<'_>, part: &str, matrix: &Covariance) {
    for (i, name) in NAMES.iter().enumerate() {
        let lower = std::array::from_fn(|j| (j <= i).then_some(matrix[(i, j)]));
        values_row(text, key, part, name, &lower);
    }
}

fn values_row(text: &mut String, key: &Key<'_>, part: &str, term: &str, values: &[Option<f64>; FEATURES]) {
    start(text, key, part, term);
    for value in values {
        text.push(',');
        if let Some(value) = value {
            text.push_str(&number(*value));
        }
    }
    text.push('\n');
}

fn start(text: &mut String, key: &Key<'_>, part: &str, term: &str) {
    let severity = key.severity.map_or(",,".to_string(), |s| s.map(number).join(","));
    let _ = write!(
        text,
        "{SOURCE},{},{},{},{severity},{part},{term},{},{}",
        key.expansion, key.group, key.fault, key.cases, key.makes
    );
}

/// Three decimals: a thousandth of a kelvin, and no trace of the machine's last bits.
fn number(value: f64) -> String {
    let text = format!("{value:.3}");
    if text == "-0.000" { "0.000".to_string() } else { text }
}

/// `independent-simulator-conditions.csv`.
pub(crate) fn conditions(usual: &Usual) -> String {
    let mut text = "# Conditions that not every case notes: what the cases have that note them.\n\
                    source,condition,unit,cases,mean,deviation\n"
        .to_string();
    for spread in &usual.0 {
        let (mean, deviation) = (number(spread.mean), number(spread.deviation));
        let _ = writeln!(
            text,
            "{SOURCE},{},\"{}\",{},{mean},{deviation}",
            spread.name, spread.unit, spread.cases
        );
    }
    text
}
