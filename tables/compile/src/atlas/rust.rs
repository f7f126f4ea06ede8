//! The atlas of all sources, as `src/diagnosis/atlas_table.rs`.

use super::group::Group;
use super::not_driven::NotDriven;
use super::{FaultRows, Row, independent, published, table};
use crate::features::FEATURES;
use crate::linear::Matrix;
use crate::moments::Table;
use crate::sound;
use crate::sound::rust::numbers;
use coldloop::{Expansion, Fault};
use std::fmt::Write;
use std::path::Path;
use tables_names::Output;

const HEADER: &str = "//! What faults do, by the vehicle model, by the independent simulator and by the tables of the trade.\n//!\n\
    //! Generated from tables/atlas and tables/faults by tables/compile; fit anew with `tables-compile -- --fit-atlas` and\n\
    //! `-- --moments`. Shifts and scales are bits of f32 (`rows::number`).\n\n\
    #![allow(clippy::approx_constant)] // a severity may look like one\n\n\
    use super::rows::{CountedFrom, FaultRows, Page, ShiftRow};\nuse crate::expected::Source;\nuse crate::names::{Expansion, Fault};\n\n\
    /// A page for every source, family of refrigerants and expansion device.\npub(super) static ATLAS: &[Page] = &[\n";

/// Reads the tables of all sources and writes the file; rows that a source does not have are those of the vehicle model.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let ours = table::read(root)?;
    let independent = independent::rows(&Table::read(root)?, &ours)?;
    let published = published::rows(root, &sound::table::read(root)?)?;
    let not_driven = NotDriven::read(root)?;
    let mut source = HEADER.to_string();
    for (name, faults) in [
        ("VehicleModel", &ours),
        ("IndependentSimulator", &independent),
        ("Published", &published),
    ] {
        for carbon_dioxide in [false, true] {
            // No sound component of the charts speaks of R-744, so that its page would never be read.
            if name == "Published" && carbon_dioxide {
                continue;
            }
            for expansion in Expansion::ALL {
                let on_page = |of: &&FaultRows| of.carbon_dioxide == carbon_dioxide && of.expansion == expansion;
                if !faults.iter().any(|of| on_page(&of)) {
                    continue;
                }
                let _ = writeln!(
                    source,
                    "Page {{ source: Source::{name}, carbon_dioxide: {carbon_dioxide}, expansion: Expansion::{expansion:?}, \
                     faults: &["
                );
                for own in ours.iter().filter(on_page) {
                    let said = faults.iter().filter(on_page).find(|of| of.fault == own.fault);
                    let mut whole = filled(said.unwrap_or(own), own);
                    if own.fault == Fault::WornCompressor {
                        let of_clutch = |of: &&&FaultRows| of.fault == Fault::ClutchNotEngaged;
                        let still = faults.iter().filter(on_page).collect::<Vec<_>>();
                        let still = still.iter().find(of_clutch).copied();
                        wear_out(
                            &mut whole,
                            still.or_else(|| {
                                ours.iter()
                                    .filter(on_page)
                                    .find(|of| of.fault == Fault::ClutchNotEngaged)
                            }),
                        );
                    }
                    if NotDriven::speaks_of(&whole) {
                        whole = not_driven.in_place_of(&whole);
                    }
                    source += &fault(&whole).map_err(|e| format!("{} {}: {e}", own.source, own.fault))?;
                }
                source += "] },\n";
            }
        }
    }
    out.rust("src/diagnosis/atlas_table.rs", &(source + "];\n"))
}

/// Part of the vehicles with a worn compressor whose compressor is worn half way beyond the drawn severities, and part whose
/// compressor pumps nothing. Engineering judgement, in between log loss on building makes and the facts of the trade
/// (tables/atlas/README.md): many that come to a shop are worn that far (tables/faults has 0.40 there).
const HALF_WAY: f64 = 0.20;
const NOTHING_PUMPS: f64 = 0.08;

/// Adds severities of a worn compressor between the last that was drawn and one that pumps nothing. The latter reads as with the
/// clutch open: both sides at saturation near the ambient.
fn wear_out(worn: &mut FaultRows, still: Option<&FaultRows>) {
    let Some(still) = still else { return };
    for group in Group::ALL {
        let of_group = still.rows.iter().find(|row| row.group == group).or(still.rows.first());
        let last = worn
            .rows
            .iter()
            .filter(|row| row.group == group)
            .max_by(|a, b| a.severity[0].total_cmp(&b.severity[0]));
        let (Some(still), Some(last)) = (of_group.cloned(), last.cloned()) else {
            continue;
        };
        for row in worn.rows.iter_mut().filter(|row| row.group == group) {
            row.weight *= 1.0 - HALF_WAY - NOTHING_PUMPS;
        }
        for (way, weight, severity) in [
            (0.5, HALF_WAY, [0.93, 0.96, 0.98]),
            (1.0, NOTHING_PUMPS, [0.98, 0.99, 1.0]),
        ] {
            let shift = std::array::from_fn(|i| {
                std::array::from_fn(|j| (1.0 - way) * last.shift[i][j] + way * still.shift[i][j])
            });
            worn.rows.push(Row {
                cause: "worn out".to_string(),
                weight,
                severity,
                cases: 0,
                shift,
                ..last.clone()
            });
        }
    }
}

/// The rows of a fault; those of a group of compressors that it does not have are taken from `ours`.
fn filled(of: &FaultRows, ours: &FaultRows) -> FaultRows {
    let mut filled = of.clone();
    for group in Group::ALL {
        if !of.rows.iter().any(|row| row.group == group) {
            filled
                .rows
                .extend(ours.rows.iter().filter(|row| row.group == group).cloned());
        }
    }
    filled
}

fn fault(of: &FaultRows) -> Result<String, String> {
    let mut source = format!(
        "FaultRows {{ fault: Fault::{:?}, counted_from: CountedFrom::{}, scales: [{}, {}], rows: [\n",
        of.fault,
        counted_from(of),
        triangle_bits(&of.scales[0]),
        triangle_bits(&of.scales[1])
    );
    for group in Group::ALL {
        let own = || of.rows.iter().filter(|row| row.group == group);
        let total: f64 = own().map(|row| row.weight).sum();
        if own().next().is_some() && (total - 1.0).abs() > 2e-3 {
            return Err(format!("{}: weights of {total}", group.id()));
        }
        source += "&[";
        for row in own() {
            let [low, mean, high] = row.severity;
            let _ = writeln!(
                source,
                "ShiftRow {{ severe: {}, weight: {:?}, severity: {}, shift: {} }},",
                of.severe(row),
                (row.weight / total) as f32,
                numbers(&[low, mean, high]),
                shift_bits(&row.shift)
            );
        }
        source += "],\n";
    }
    Ok(source + "] },\n")
}

/// The bits of the numbers: the compiler takes 0.1 ms for each minus sign, and there are 20,000.
fn bits(values: impl Iterator<Item = f64>) -> String {
    let values: Vec<String> = values.map(|value| format!("{:#x}", (value as f32).to_bits())).collect();
    format!("[{}]", values.join(", "))
}

/// The lower triangle, row by row.
fn triangle_bits(matrix: &Matrix<FEATURES>) -> String {
    bits((0..FEATURES).flat_map(|i| matrix[i][..=i].to_vec()))
}

fn shift_bits(shift: &[[f64; 4]; FEATURES]) -> String {
    let rows: Vec<String> = shift.iter().map(|row| bits(row.iter().copied())).collect();
    format!("[{}]", rows.join(", "))
}

/// From where the rows of a fault are counted: where nothing pumps, the features do not depend on the vehicle's own place.
fn counted_from(of: &FaultRows) -> &'static str {
    if NotDriven::speaks_of(of) {
        "Ambient"
    } else if of.fault == Fault::ClutchNotEngaged {
        "Kind"
    } else {
        "Vehicle"
    }
}
