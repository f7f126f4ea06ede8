//! What to simulate: a vehicle, its conditions, and what ails it.

use super::case::{conditions, conditions_fit, system};
use super::mistakes::Refused;
use super::tree::{Entry, Table};
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Quantity, Refrigerant, VehicleClass};
use crate::units::text;
use crate::vehicle::{Conditions, FaultSeverity, Vehicle};
use alloc::vec::Vec;

/// A vehicle to simulate, in its conditions, with its faults.
///
/// ```
/// use coldloop::intake;
/// let trial = intake::trial_from_json(r#"{
///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
///     "conditions": { "ambient": "30 °C", "altitude": "1600 m" },
///     "faults": { "overcharge": "20 %" }
/// }"#)?;
/// assert_eq!(trial.faults[0].severity, 0.2);
/// # Ok::<(), intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Trial {
    /// The vehicle, with the typical hardware of its class.
    pub vehicle: Vehicle,
    /// The conditions.
    pub conditions: Conditions,
    /// The faults; none for a sound vehicle.
    pub faults: Vec<FaultSeverity>,
}

pub(super) fn trial(root: &Table<'_>) -> Result<Trial, Refused> {
    root.only(&["vehicle", "system", "conditions", "faults"]);
    let advice = "a [system] table names refrigerant, expansion and compressor";
    let system = root.section("system", advice, system);
    let advice = "a [conditions] table gives ambient and altitude";
    let conditions = root.section("conditions", advice, conditions);
    let class = root.told("vehicle", |table| {
        table.only(&["class"]);
        table
            .require("class", Quantity::Name, "the class sets the size of the parts")?
            .member(&VehicleClass::ALL, VehicleClass::id, VehicleClass::from_id)
    });
    let faults = root.told("faults", |table| {
        Ok(table.entries().filter_map(|entry| fault(&entry).ok()).collect())
    });
    let class = class.unwrap_or(VehicleClass::Car);
    let (system, conditions) = (system?, conditions?);
    conditions_fit(root, &conditions, &system)?;
    let vehicle = Vehicle::typical(system, class).map_err(|error| match root.get("system") {
        Some(entry) => entry.refuse(error, ""),
        None => root.missing("system", error.quantity, ""),
    })?;
    Ok(Trial {
        vehicle,
        conditions,
        faults: faults.unwrap_or_default(),
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
        let share = alloc::format!("{share}%");
        let share = text::severity(&share).map_err(|error| entry.refuse_part(&share, error, advice))?;
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
