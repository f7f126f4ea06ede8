//! Healthy readings of the same vehicle from other days.

use super::case::{conditions, readings};
use super::refusal::Refused;
use super::tree::Entry;
use crate::expected::{Baseline, Fleet};
use crate::names::Quantity;
use crate::vehicle::System;

/// The list of visits at which this vehicle was sound, each with its conditions and readings.
pub(super) fn own_readings(list: &Entry<'_>, system: &System) -> Result<Baseline, Refused> {
    let fleet = Fleet::of(system).map_err(|error| {
        list.refuse(
            error,
            "no model of such vehicles speaks: use a [pressure_table] instead",
        )
    })?;
    let mut baseline = Baseline::new(fleet);
    for visit in list.items()? {
        let table = visit.table()?;
        table.only(&["conditions", "readings"])?;
        let section = |name: &str| {
            table
                .require(name, Quantity::Name, "a visit has conditions and readings")?
                .table()
        };
        let conditions = conditions(&section("conditions")?)?;
        let readings = readings(&section("readings")?)?;
        baseline
            .learn(&conditions, &readings)
            .map_err(|error| visit.refuse(error, "the model of such vehicles does not cover this visit"))?;
    }
    Ok(baseline)
}
