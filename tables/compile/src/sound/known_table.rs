//! `tables/atlas/vehicle-model-known.csv`, written, read and compiled into `src/expected/known_table.rs`.

use super::known::{AIRS, AMBIENTS_C, Cell, Cells, GROUPS, INPUTS, Place, SPEEDS, places};
use super::rust::numbers;
use crate::features::{FEATURES, NAMES};
use coldloop::Expansion;
use std::fmt::Write;
use std::fs;
use std::path::Path;
use tables_names::Output;

const TABLE: &str = "tables/atlas/vehicle-model-known.csv";
const HEADER: &str = "# What else is known of a sound system, by `tables-compile -- --fit-known`; README.md of this folder says what stands here.\n";
const RUST: &str = "//! By how much what is known of a system and its fan moves its features, by the vehicle model.\n//!\n\
    //! Generated from tables/atlas/vehicle-model-known.csv by tables/compile; fit anew with `tables-compile -- --fit-known`.\n\n\
    #![allow(clippy::approx_constant)] // a number may look like one\n\n\
    use super::known::{Cell, Table};\n\n";

/// A place as the table names it.
pub(crate) fn id(place: &Place) -> String {
    let (compressors, _) = GROUPS[place.group];
    let (ambient_c, rpm) = (AMBIENTS_C[place.ambient], 1_500.0 * SPEEDS[place.speed]);
    format!(
        "{},{compressors},{ambient_c},{rpm:.0},{}",
        place.expansion.id(),
        place.air.id()
    )
}

pub(super) fn write(root: &Path, fitted: &[(Place, Cells)]) -> Result<(), String> {
    let mut text = HEADER.to_string();
    let _ = writeln!(
        text,
        "expansion,compressors,ambient_c,rpm,air_source,known,vehicles,figure,{}",
        NAMES.join(",")
    );
    for (place, cells) in fitted {
        for ((name, _), cell) in INPUTS.iter().zip(cells) {
            for (figure, values) in [("shift", cell.shift), ("factor", cell.factor)] {
                let _ = write!(text, "{},{name},{},{figure}", id(place), cell.vehicles);
                for value in values {
                    // Two decimals: a hundredth of a kelvin. Adding nought makes no -0 of it.
                    let _ = write!(text, ",{:.2}", (100.0 * value).round() / 100.0 + 0.0);
                }
                text.push('\n');
            }
        }
    }
    fs::write(root.join(TABLE), text).map_err(|e| format!("{TABLE}: {e}"))
}

/// The cells of all places, in their order.
pub(crate) fn read(root: &Path) -> Result<Vec<Cells>, String> {
    let text = fs::read_to_string(root.join(TABLE)).map_err(|e| format!("{TABLE}: {e}"))?;
    let mut lines = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    let mut next = |start: &str, figure: &str| -> Result<(usize, [f64; FEATURES]), String> {
        let line = lines.next().ok_or(format!("{TABLE} ends before {start}"))?;
        let wrong = || format!("{TABLE}: {line}: not {start},..,{figure} and {FEATURES} numbers");
        let mut fields = line.strip_prefix(start).ok_or_else(wrong)?.split(',').skip(1);
        let vehicles = fields.next().and_then(|digits| digits.parse().ok()).ok_or_else(wrong)?;
        if fields.next() != Some(figure) {
            return Err(wrong());
        }
        let values: Option<Vec<f64>> = fields.map(|digits| digits.parse().ok()).collect();
        let values = values.and_then(|values| values.try_into().ok()).ok_or_else(wrong)?;
        Ok((vehicles, values))
    };
    let mut all = Vec::new();
    for place in places() {
        let mut cells = Vec::new();
        for (name, _) in INPUTS {
            let start = format!("{},{name}", id(&place));
            let (vehicles, shift) = next(&start, "shift")?;
            let (_, factor) = next(&start, "factor")?;
            cells.push(Cell {
                vehicles,
                shift,
                factor,
            });
        }
        all.push(cells);
    }
    Ok(all)
}

/// Reads the table and writes the Rust file.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let all = read(root)?;
    let mut source = format!("{RUST}/// All inputs.\npub(super) static KNOWN: Table = Table {{\n");
    let mut inputs = 0..INPUTS.len();
    for (field, count) in [("fan", 3), ("evaporators", 2), ("low_port", 2), ("high_port", 2)] {
        let own: Vec<String> = inputs.by_ref().take(count).map(|input| cells(&all, input)).collect();
        let _ = writeln!(source, "{field}: [{}],", own.join(","));
    }
    out.rust("src/expected/known_table.rs", &(source + "};\n"))
}

/// One input by expansion device, compressors, ambient, speed and air source.
fn cells(all: &[Cells], input: usize) -> String {
    let cells = all.iter().map(|cells| {
        let Cell { shift, factor, .. } = &cells[input];
        format!("Cell {{ shift: {}, factor: {} }}", numbers(shift), numbers(factor))
    });
    [
        AIRS.len(),
        SPEEDS.len(),
        AMBIENTS_C.len(),
        GROUPS.len(),
        Expansion::ALL.len(),
    ]
    .into_iter()
    .fold(cells.collect::<Vec<String>>(), |inner, count| {
        let outer = inner.chunks(count).map(|inner| format!("[{}]", inner.join(",")));
        outer.collect()
    })
    .concat()
}
