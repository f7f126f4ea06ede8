//! Earlier visits at which the same vehicle was sound.

use super::case::{conditions, readings};
use super::mistakes::Refused;
use super::tree::Entry;
use crate::error::Error;
use crate::expected::{OwnVehicle, SoundModel};
use crate::names::{ErrorKind, Quantity};
use crate::vehicle::System;

/// What the visits at which this vehicle was sound tell of it; each has conditions and readings.
///
/// Where the system itself is refused, the visits are only searched for mistakes.
pub(super) fn own_readings(list: &Entry<'_>, system: Option<&System>) -> Result<Option<OwnVehicle>, Refused> {
    let mut own = match system {
        None => None,
        Some(system) if SoundModel::speaks_of(system) => Some(OwnVehicle::new(*system)),
        Some(_) => {
            let error = Error::of(ErrorKind::NotAvailable, Quantity::Name);
            return Err(list.refuse(error, "no source covers this kind of system"));
        }
    };
    // After a refused visit the others are read too, to find all mistakes.
    let visits = list.items()?.map(|visit| own_visit(&visit, &mut own));
    visits.filter_map(Result::err).last().map_or(Ok(own), Err)
}

fn own_visit(visit: &Entry<'_>, own: &mut Option<OwnVehicle>) -> Result<(), Refused> {
    let table = visit.table()?;
    table.only(&["conditions", "readings"]);
    let advice = "a visit has conditions and readings";
    let conditions = table.section("conditions", advice, conditions);
    let here = conditions.as_ref().ok().map(|conditions| conditions.surroundings);
    let readings = table.section("readings", advice, |table| Ok(readings(table, here)))?;
    let conditions = conditions?;
    match own {
        None => Ok(()),
        Some(own) => own
            .learn(&conditions, &readings)
            .map_err(|error| visit.refuse(error, "no source covers this visit")),
    }
}
