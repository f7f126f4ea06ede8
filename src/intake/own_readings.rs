//! Healthy readings of the same vehicle from other days.

use super::case::{conditions, readings};
use super::mistakes::Refused;
use super::tree::Entry;
use crate::expected::{Baseline, Fleet};
use crate::vehicle::System;

/// The list of visits at which this vehicle was sound, each with its conditions and readings. Where the system itself is
/// refused, the visits are only looked through for their own mistakes, and nothing is made of them.
pub(super) fn own_readings(list: &Entry<'_>, system: Option<&System>) -> Result<Option<Baseline>, Refused> {
    let mut baseline = match system {
        None => None,
        Some(system) => Some(Baseline::new(Fleet::of(system).map_err(|error| {
            list.refuse(
                error,
                "no model of such vehicles speaks: use a [pressure_table] instead",
            )
        })?)),
    };
    // A visit that is refused stands among the mistakes; the next one may have others.
    let visits = list.items()?.map(|visit| own_visit(&visit, &mut baseline));
    visits.filter_map(Result::err).last().map_or(Ok(baseline), Err)
}

fn own_visit(visit: &Entry<'_>, baseline: &mut Option<Baseline>) -> Result<(), Refused> {
    let table = visit.table()?;
    table.only(&["conditions", "readings"]);
    let advice = "a visit has conditions and readings";
    let conditions = table.section("conditions", advice, conditions);
    let here = conditions.as_ref().ok().map(|conditions| conditions.surroundings);
    let readings = table.section("readings", advice, |table| Ok(readings(table, here)))?;
    let conditions = conditions?;
    match baseline {
        None => Ok(()),
        Some(baseline) => baseline
            .learn(&conditions, &readings)
            .map_err(|error| visit.refuse(error, "the model of such vehicles does not cover this visit")),
    }
}
