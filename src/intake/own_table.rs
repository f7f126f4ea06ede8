//! A vehicle's own pressure table.

use super::case::within;
use super::mistakes::Refused;
use super::tree::{Entry, Table};
use crate::error::Error;
use crate::expected::{PressureTable, TableRow};
use crate::names::{ErrorKind, Quantity};
use crate::range::AMBIENT;
use crate::units::{GaugePressure, Surroundings, text};
use alloc::vec::Vec;

pub(super) fn own_table(table: &Table<'_>) -> Result<PressureTable, Refused> {
    table.only(&["altitude", "rows"]);
    let air = air(table);
    let list = table.require("rows", Quantity::Rows, "a pressure table has at least two rows")?;
    let entries: Vec<Entry<'_>> = list.items()?.collect();
    // All rows are read before the first mistake ends the table, so that all mistakes are in the list.
    let rows: Vec<Result<TableRow, Refused>> = entries.iter().map(row).collect();
    let rows = rows.into_iter().collect::<Result<Vec<TableRow>, Refused>>()?;
    PressureTable::new(&rows, air?).map_err(|refused| {
        entries
            .get(refused.row)
            .unwrap_or(&list)
            .refuse(refused.error, "sort the rows by rising ambient")
    })
}

/// The air of the place where the table was read.
fn air(table: &Table<'_>) -> Result<Surroundings, Refused> {
    let advice = "say where the table was read, \"0 m\" if at sea level";
    let altitude = table.require("altitude", Quantity::Altitude, advice)?;
    let metres = altitude.quantity(Quantity::Altitude, text::altitude_m)?;
    Surroundings::at_altitude(metres).map_err(|error| altitude.refuse(error, ""))
}

fn row(entry: &Entry<'_>) -> Result<TableRow, Refused> {
    let table = entry.table()?;
    table.only(&["ambient", "low_side", "high_side"]);
    let advice = "a row has ambient, low_side and high_side";
    let ambient = table
        .require("ambient", Quantity::Temperature, advice)
        .and_then(|entry| within(&entry, AMBIENT));
    let side = |key: &str| {
        table
            .require(key, Quantity::GaugePressure, advice)
            .and_then(|entry| band(&entry))
    };
    let (low_side, high_side) = (side("low_side"), side("high_side"));
    Ok(TableRow {
        ambient: ambient?,
        low_side: low_side?,
        high_side: high_side?,
    })
}

/// `["30 psig", "40 psig"]`.
fn band(entry: &Entry<'_>) -> Result<(GaugePressure, GaugePressure), Refused> {
    let ends: Vec<Result<GaugePressure, Refused>> = entry
        .items()?
        .map(|end| end.quantity(Quantity::GaugePressure, text::gauge_pressure))
        .collect();
    let ends = ends.into_iter().collect::<Result<Vec<GaugePressure>, Refused>>()?;
    match ends[..] {
        [low, high] => Ok((low, high)),
        [..] => Err(entry.refuse(
            Error::of(ErrorKind::Missing, Quantity::GaugePressure),
            "write [lowest, highest]",
        )),
    }
}
