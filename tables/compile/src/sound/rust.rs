//! The sound models of the vehicle model and of the independent simulator, as `src/expected/sound_table.rs`.

use super::table;
use crate::features::{CYCLES, FEATURES, NAMES};
use crate::linear::Matrix;
use crate::moments::{self, conditions};
use coldloop::inner::expected::AtlasWeather;
use coldloop::vehicle::System;
use coldloop::{Compressor, Expansion, Refrigerant};
use std::fmt::Write;
use std::path::Path;
use tables_names::Output;

const HEADER: &str = "//! What sound vehicles read, by the vehicle model and by the independent simulator.\n//!\n\
    //! Generated from tables/atlas/vehicle-model-sound.csv and tables/atlas/independent-simulator.csv by tables/compile; fit\n\
    //! anew with `tables-compile -- --fit-sound` and `-- --moments`.\n\n\
    #![allow(clippy::approx_constant)] // a coefficient may look like one\n\n\
    use super::sources::{IndependentKind, VehicleModelKind};\nuse crate::names::{Compressor, Expansion, Refrigerant};\n\n";

/// Reads both tables and writes the file.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let mut source = format!(
        "{HEADER}/// Every kind of the vehicle model.\npub(super) static VEHICLE_MODEL: &[VehicleModelKind] = &[\n"
    );
    for (system, kind) in table::read(root)? {
        let _ = writeln!(
            source,
            "VehicleModelKind {{ {}, mean: {}, ln_deviation: {}, lasting: {}, passing: {} }},",
            named(&system),
            rows(&kind.mean),
            rows(&kind.ln_deviation),
            triangle(&kind.lasting),
            triangle(&kind.passing),
        );
    }
    source +=
        "];\n\n/// Every kind of the independent simulator.\npub(super) static INDEPENDENT: &[IndependentKind] = &[\n";
    let table = moments::Table::read(root)?;
    for expansion in Expansion::ALL {
        let (makes, vehicles) = (
            table.covariance(expansion, "makes")?,
            table.covariance(expansion, "vehicles")?,
        );
        for refrigerant in [Refrigerant::R134a, Refrigerant::R1234yf] {
            for compressor in Compressor::ALL {
                let system = System::new(refrigerant, expansion, compressor);
                let _ = writeln!(
                    source,
                    "IndependentKind {{ {}, mean: {}, makes: {}, vehicles: {} }},",
                    named(&system),
                    rows(&independent(&table, &system)?),
                    triangle(&makes),
                    triangle(&vehicles),
                );
            }
        }
    }
    out.rust("src/expected/sound_table.rs", &(source + "];\n"))
}

/// The mean of the independent simulator's sound systems in the plain terms, above the ambient: those of the kind of system
/// are added to the plain ones.
fn independent(table: &moments::Table, system: &System) -> Result<[[f64; AtlasWeather::TERMS]; FEATURES], String> {
    let mut mean = [[0.0; AtlasWeather::TERMS]; FEATURES];
    for (name, row) in table.sound(system.expansion) {
        let (of, term) = name.split_once(' ').map_or(("", name.as_str()), |(of, term)| {
            if conditions::names()
                .iter()
                .any(|(plain, of_kind)| !of_kind && *plain == *name)
            {
                ("", name.as_str())
            } else {
                (of, term)
            }
        });
        if !of.is_empty() && of != system.compressor.id() && of != system.refrigerant.id() {
            continue;
        }
        let place = conditions::names().iter().position(|(plain, _)| plain == term);
        let place = place
            .filter(|place| *place < AtlasWeather::TERMS)
            .ok_or(format!("{term} is no term"))?;
        for (feature, value) in row.iter().enumerate() {
            mean[feature][place] += value;
        }
    }
    // The table gives lines and air as temperatures, in K; here they count from the ambient, 303.15 K + 10 K a.
    for (feature, name) in NAMES.iter().enumerate() {
        if !matches!(*name, "low_side" | "high_side") && feature != CYCLES {
            mean[feature][0] -= 303.15;
            mean[feature][1] -= 10.0;
        }
    }
    Ok(mean)
}

fn named(system: &System) -> String {
    format!(
        "refrigerant: Refrigerant::{:?}, expansion: Expansion::{:?}, compressor: Compressor::{:?}",
        system.refrigerant, system.expansion, system.compressor
    )
}

/// Numbers of 32 bits, as Rust has them.
pub(crate) fn numbers(values: &[f64]) -> String {
    let values: Vec<String> = values.iter().map(|value| format!("{:?}", *value as f32)).collect();
    format!("[{}]", values.join(", "))
}

pub(crate) fn rows<const N: usize>(rows: &[[f64; N]]) -> String {
    let rows: Vec<String> = rows.iter().map(|row| numbers(row)).collect();
    format!("[{}]", rows.join(", "))
}

/// The lower triangle, row by row.
pub(crate) fn triangle(matrix: &Matrix<FEATURES>) -> String {
    let lower: Vec<f64> = (0..FEATURES).flat_map(|i| matrix[i][..=i].to_vec()).collect();
    numbers(&lower)
}
