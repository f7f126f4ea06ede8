//! A vehicle's own pressure table.

use super::refusal::Refused;
use super::tree::{Entry, Table};
use crate::error::Error;
use crate::expected::{PressureTable, TableRow};
use crate::names::{ErrorKind, Quantity};
use crate::units::{GaugePressure, Surroundings, text};
use alloc::vec::Vec;

pub(super) fn own_table(table: &Table<'_>) -> Result<PressureTable, Refused> {
    table.only(&["altitude", "rows"])?;
    let altitude = table.require(
        "altitude",
        Quantity::Altitude,
        "say where the table was read, \"0 m\" if at sea level",
    )?;
    let metres = altitude.quantity(Quantity::Altitude, text::altitude_m)?;
    let air = Surroundings::at_altitude(metres).map_err(|error| altitude.refuse(error, ""))?;
    let list = table.require("rows", Quantity::Rows, "a pressure table has at least two rows")?;
    let entries: Vec<Entry<'_>> = list.items()?.collect();
    let rows = entries.iter().map(row).collect::<Result<Vec<TableRow>, Refused>>()?;
    PressureTable::new(&rows, air).map_err(|refused| {
        entries
            .get(refused.row)
            .unwrap_or(&list)
            .refuse(refused.error, "rows rise in ambient")
    })
}

fn row(entry: &Entry<'_>) -> Result<TableRow, Refused> {
    let table = entry.table()?;
    table.only(&["ambient", "low_side", "high_side"])?;
    let advice = "a row has ambient, low_side and high_side";
    Ok(TableRow {
        ambient: table
            .require("ambient", Quantity::Temperature, advice)?
            .quantity(Quantity::Temperature, text::temperature)?,
        low_side: band(&table.require("low_side", Quantity::GaugePressure, advice)?)?,
        high_side: band(&table.require("high_side", Quantity::GaugePressure, advice)?)?,
    })
}

/// `["30 psig", "40 psig"]`.
fn band(entry: &Entry<'_>) -> Result<(GaugePressure, GaugePressure), Refused> {
    let ends = entry
        .items()?
        .map(|end| end.quantity(Quantity::GaugePressure, text::gauge_pressure))
        .collect::<Result<Vec<GaugePressure>, Refused>>()?;
    match ends[..] {
        [low, high] => Ok((low, high)),
        [..] => Err(entry.refuse(
            Error::of(ErrorKind::Missing, Quantity::GaugePressure),
            "write [lowest, highest]",
        )),
    }
}
