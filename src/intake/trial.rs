//! What to simulate: a vehicle, its conditions, and what ails it.

use super::case::{conditions, system};
use super::refusal::{Refusal, Refused};
use super::tree::{Entry, Table};
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Quantity, Refrigerant, VehicleClass};
use crate::units::text;
use crate::vehicle::{Conditions, FaultSeverity, Vehicle};
use alloc::vec::Vec;

/// A vehicle to simulate, in its conditions, with its faults.
#[derive(Clone, Debug, PartialEq)]
pub struct Trial {
    /// The vehicle, with the typical hardware of its class.
    pub vehicle: Vehicle,
    /// The conditions.
    pub conditions: Conditions,
    /// The faults; none for a sound vehicle.
    pub faults: Vec<FaultSeverity>,
}

pub(super) fn trial(root: &Table<'_>) -> Result<Trial, Refused> {
    root.only(&["vehicle", "system", "conditions", "faults"])?;
    let section = |name: &str, advice: &str| root.require(name, Quantity::Name, advice)?.table();
    let system = system(&section(
        "system",
        "a [system] table names refrigerant, expansion and compressor",
    )?)?;
    let conditions = conditions(&section(
        "conditions",
        "a [conditions] table gives ambient and altitude",
    )?)?;
    let class = match root.table("vehicle")? {
        None => VehicleClass::Car,
        Some(table) => {
            table.only(&["class"])?;
            table
                .require("class", Quantity::Name, "the class sets the size of the parts")?
                .member(&VehicleClass::ALL, VehicleClass::id, VehicleClass::from_id)?
        }
    };
    let faults = match root.table("faults")? {
        None => Vec::new(),
        Some(table) => table.entries().map(|entry| fault(&entry)).collect::<Result<_, _>>()?,
    };
    Ok(Trial {
        vehicle: Vehicle::typical(system, class).map_err(|error| Refusal::new("system", "", error, ""))?,
        conditions,
        faults,
    })
}

/// `undercharge = "40 %"`; `wrong-refrigerant = "R-1234yf"`, or `"30 % R-22"` for a charge of which that is a part.
fn fault(entry: &Entry<'_>) -> Result<FaultSeverity, Refused> {
    let fault = Fault::from_id(entry.name()).ok_or_else(|| entry.unknown("known here", &Fault::ALL.map(Fault::id)))?;
    if fault == Fault::WrongRefrigerant {
        let text = entry.text(Quantity::Name)?;
        let Some((share, name)) = text.split_once('%') else {
            let other = entry.refrigerant()?;
            return Ok(FaultSeverity::wrong_refrigerant(other));
        };
        let advice = "a refrigerant, or how much of the charge it is: \"30 % R-22\"";
        let share = text::severity(&alloc::format!("{share}%")).map_err(|error| entry.refuse(error, advice))?;
        let unknown = Error::of(ErrorKind::UnknownName, Quantity::Name);
        let other = Refrigerant::from_id(name.trim()).ok_or_else(|| match Refrigerant::meant_by(name) {
            Some(meant) => entry.meant(meant),
            None => entry.refuse(unknown, advice),
        })?;
        return Ok(FaultSeverity::contaminated(other, share));
    }
    Ok(FaultSeverity::new(
        fault,
        entry.quantity(Quantity::Severity, text::severity)?,
    ))
}
