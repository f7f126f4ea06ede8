//! What can be checked and repaired on a system, as JSON.

use super::json::ids;
use super::record::{Json, record};
use crate::diagnosis::{
    Prices, Settings, can_check, check_cautions, exists, measure, needs_running, questions, repair, repair_cautions,
};
use crate::names::{Check, Fault, Observation};
use crate::vehicle::System;
use alloc::string::String;
use alloc::vec::Vec;

/// What a program has to know to ask the right questions about a system, as one JSON object, on one line.
///
/// Keys:
///
/// - `faults` that the system can have: each `fault`, `says`, `measure` of its severity, `prior`, and `repair` with `says`,
///   `minutes`, `parts_in_minutes`, `recovers_charge`, `cautions`;
/// - `checks` that exist for it: each `check`, `says`, `minutes`, `parts_in_minutes`, whether it `needs_running`, `cautions`
///   and `questions`, the observations that it answers;
/// - `observations`: each `observation` and what it `says`.
///
/// Costs and priors are the defaults of the library; a readings file may have others.
///
/// Source: common practice, no source, in `tables/faults` and `tables/checks`.
///
/// ```
/// use coldloop::{Compressor, Expansion, Refrigerant, report, vehicle::System};
/// let van = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
/// let catalogue = report::catalogue_json(&van);
/// assert!(catalogue.contains("orifice-restricted") && !catalogue.contains("expansion-valve-stuck-open"));
/// ```
pub fn catalogue_json(system: &System) -> String {
    let settings = Settings::default();
    let faults = Fault::ALL.into_iter().filter(|fault| exists(*fault, system));
    let checks = Check::ALL.into_iter().filter(|check| can_check(*check, system));
    let observations = Observation::ALL.into_iter();
    record!({
        "faults": faults.map(|each| fault(each, system, &settings)).collect::<Vec<_>>(),
        "checks": checks.map(|each| check(each, system)).collect::<Vec<_>>(),
        "observations": observations.map(|observation| {
            record!({ "observation": observation.id(), "says": observation.description() })
        }).collect::<Vec<_>>(),
    })
    .answer()
}

fn fault(fault: Fault, system: &System, settings: &Settings) -> Json {
    let repair = repair(fault);
    record!({
        "fault": fault.id(),
        "says": fault.description(),
        "measure": measure(fault),
        "prior": settings.prior(fault),
        "repair": record!({
            "says": repair.says_for(system),
            "minutes": repair.minutes,
            "parts_in_minutes": repair.money,
            "recovers_charge": repair.recovery,
            "cautions": ids(&repair_cautions(fault, system)),
        }),
    })
}

fn check(check: Check, system: &System) -> Json {
    let asked: Vec<&str> = questions(check, system).map(Observation::id).collect();
    let cost = Prices::default().check(check);
    record!({
        "check": check.id(),
        "says": check.description(),
        "minutes": cost.minutes,
        "parts_in_minutes": cost.money,
        "needs_running": needs_running(check),
        "cautions": ids(&check_cautions(check, system)),
        "questions": asked,
    })
}
