//! What can hurt, and what the law asks, in checking and in repairing.
//!
//! Sources: common practice, no source. Of R-744: concentrations as in the NIOSH Pocket Guide to Chemical Hazards (3 % for 15 minutes
//! at most, 4 % immediately dangerous), from memory; release instead of recovery: common practice, no source.

use super::answer::Action;
use super::check_table::{CHECKS, REPAIRS};
use super::faults::index;
use super::limits::Stop;
use super::list::List;
use crate::names::{Caution, Check, Compressor, Fault, Refrigerant, SafetyGroup, StopReason};
use crate::vehicle::System;

/// Cautions, the gravest first.
pub type Cautions = List<Caution, { Caution::ALL.len() }>;

/// All of them, the gravest first. Source: engineering judgement.
const ORDER: [Caution; Caution::ALL.len()] = [
    Caution::DoNotRun,
    Caution::HighSideNearLimit,
    Caution::TestTooHigh,
    Caution::HighVoltage,
    Caution::HighVoltageCables,
    Caution::CarbonDioxide,
    Caution::Flammable,
    Caution::ForeignRefrigerant,
    Caution::TestPressure,
    Caution::HandAndIce,
    Caution::HotCoolant,
    Caution::ParkAndChock,
    Caution::ConnectStopped,
    Caution::Pressure,
    Caution::Frostbite,
    Caution::MovingParts,
    Caution::Exhaust,
    Caution::HotParts,
    Caution::Ventilation,
    Caution::ReleaseSlowly,
    Caution::NoVenting,
    Caution::InsulatingOil,
    Caution::RightOil,
    Caution::Certification,
    Caution::LocalRules,
];

/// Cautions of recovering, evacuating and charging.
const RECOVERY: [Caution; 10] = [
    Caution::HighVoltage,
    Caution::CarbonDioxide,
    Caution::Flammable,
    Caution::Pressure,
    Caution::Frostbite,
    Caution::Ventilation,
    Caution::ReleaseSlowly,
    Caution::NoVenting,
    Caution::Certification,
    Caution::LocalRules,
];

/// Further cautions, beside [`RECOVERY`], of every repair that empties the circuit.
const OPENING: [Caution; 3] = [Caution::TestPressure, Caution::InsulatingOil, Caution::RightOil];

/// Cautions of reading the pressures of a running system.
const RUN_AND_READ: [Caution; 8] = [
    Caution::HighVoltageCables,
    Caution::CarbonDioxide,
    Caution::Flammable,
    Caution::ConnectStopped,
    Caution::Pressure,
    Caution::Frostbite,
    Caution::MovingParts,
    Caution::Exhaust,
];

/// Further caution, beside [`RECOVERY`], of a leak search with dry nitrogen: the rest of the charge is recovered first.
const NITROGEN: [Caution; 1] = [Caution::TestPressure];

/// Cautions of any work on this system, and those that its pressures call for.
pub(super) fn general(system: &System, stop: Option<&Stop>, near_limit: bool) -> Cautions {
    let mut wanted = List::<Caution, 14>::new(Caution::Pressure);
    if stop.is_some_and(|stop| stop.reason != StopReason::HighPressure) {
        wanted.push(Caution::DoNotRun);
    }
    if near_limit {
        wanted.push(Caution::HighSideNearLimit);
    }
    wanted.push(Caution::MovingParts);
    for caution in &RECOVERY {
        wanted.push(*caution);
    }
    of(system, &[&wanted])
}

/// Cautions of a check on this system.
///
/// Source: common practice, no source, in `tables/checks`; the refrigerant's safety group as published
/// ([`crate::saturation::Facts`]). Local codes and the data of the vehicle's maker come first.
///
/// ```
/// use coldloop::diagnosis::check_cautions;
/// use coldloop::vehicle::System;
/// use coldloop::{Caution, Check, Compressor, Expansion, Refrigerant};
/// let van = System::new(Refrigerant::R1234yf, Expansion::Txv, Compressor::Electric);
/// let cautions = check_cautions(Check::RecoverAndWeigh, &van);
/// assert!(cautions.contains(&Caution::Flammable) && cautions.contains(&Caution::HighVoltage));
/// ```
pub fn check_cautions(check: Check, system: &System) -> Cautions {
    if check == Check::RunAndRead {
        return of(system, &[&RUN_AND_READ]);
    }
    if check == Check::SearchWithNitrogen {
        return of(system, &[&RECOVERY, &NITROGEN]);
    }
    let rows = CHECKS.iter().filter(|row| row.check == check);
    rows.map(|row| {
        let recovery: &[Caution] = if row.recovery { &RECOVERY } else { &[] };
        of(system, &[recovery, row.cautions])
    })
    .next()
    .unwrap_or(Cautions::new(Caution::Pressure))
}

/// Cautions of the repair of a fault on this system.
///
/// Source: as [`check_cautions`].
///
/// ```
/// use coldloop::diagnosis::repair_cautions;
/// use coldloop::vehicle::System;
/// use coldloop::{Caution, Compressor, Expansion, Fault, Refrigerant};
/// let car = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// assert!(repair_cautions(Fault::Undercharge, &car).contains(&Caution::TestPressure));
/// assert!(!repair_cautions(Fault::Undercharge, &car).contains(&Caution::Flammable));
/// ```
pub fn repair_cautions(fault: Fault, system: &System) -> Cautions {
    let row = &REPAIRS[index(fault)];
    let opening: [&[Caution]; 2] = if row.recovery {
        [&RECOVERY, &OPENING]
    } else {
        [&[], &[]]
    };
    of(system, &[opening[0], opening[1], row.cautions])
}

/// Cautions of a step on this system; for handing over, the local rules.
pub fn step_cautions(action: Action, system: &System) -> Cautions {
    match action {
        Action::Check(check) => check_cautions(check, system),
        Action::Repair(fault) => repair_cautions(fault, system),
        Action::HandOver => Cautions::new(Caution::LocalRules),
    }
}

/// Those of the wanted ones that apply to the system, the gravest first.
fn of(system: &System, wanted: &[&[Caution]]) -> Cautions {
    let mut cautions = Cautions::new(Caution::Pressure);
    for caution in ORDER {
        if applies(caution, system) && wanted.iter().any(|wanted| wanted.contains(&caution)) {
            cautions.push(caution);
        }
    }
    cautions
}

fn applies(caution: Caution, system: &System) -> bool {
    let electric = system.compressor == Compressor::Electric;
    let carbon_dioxide = system.refrigerant == Refrigerant::R744;
    match caution {
        Caution::HighVoltage | Caution::HighVoltageCables | Caution::InsulatingOil => electric,
        Caution::Exhaust | Caution::ParkAndChock | Caution::RightOil => !electric,
        Caution::Flammable => burns(system.refrigerant),
        Caution::CarbonDioxide | Caution::ReleaseSlowly => carbon_dioxide,
        // R-744 does not decompose and is released, not recovered; its own caution covers the air in the room.
        Caution::Ventilation | Caution::NoVenting => !carbon_dioxide,
        Caution::Pressure
        | Caution::Frostbite
        | Caution::MovingParts
        | Caution::LocalRules
        | Caution::Certification
        | Caution::TestPressure
        | Caution::ForeignRefrigerant
        | Caution::HotParts
        | Caution::DoNotRun
        | Caution::TestTooHigh
        | Caution::HotCoolant
        | Caution::ConnectStopped
        | Caution::HandAndIce
        | Caution::HighSideNearLimit => true,
    }
}

fn burns(refrigerant: Refrigerant) -> bool {
    match refrigerant.facts().safety_group.map(|group| group.value) {
        Some(SafetyGroup::A1) => false,
        Some(SafetyGroup::A2L | SafetyGroup::A2 | SafetyGroup::A3) => true,
        None => true, // an unknown safety group is handled as flammable
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::Expansion;

    #[test]
    fn whatever_opens_the_circuit_says_so() {
        let car = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        for fault in Fault::ALL {
            let cautions = repair_cautions(fault, &car);
            for needed in [
                Caution::Pressure,
                Caution::NoVenting,
                Caution::Certification,
                Caution::Ventilation,
                Caution::TestPressure,
                Caution::RightOil,
            ] {
                assert!(
                    !REPAIRS[index(fault)].recovery || cautions.contains(&needed),
                    "{fault} {needed}"
                );
            }
            assert!(!cautions.contains(&Caution::HighVoltage), "{fault}");
        }
    }

    #[test]
    fn carbon_dioxide_has_its_own_cautions() {
        let bus = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
        let general = general(&bus, None, false);
        assert!(general.contains(&Caution::CarbonDioxide) && general.contains(&Caution::ReleaseSlowly));
        for foreign in [Caution::Flammable, Caution::Ventilation, Caution::NoVenting] {
            assert!(!general.contains(&foreign), "{foreign}");
        }
    }

    #[test]
    fn every_caution_has_its_place_in_the_order() {
        for caution in Caution::ALL {
            assert_eq!(ORDER.iter().filter(|known| **known == caution).count(), 1, "{caution}");
        }
    }

    #[test]
    fn rows_of_one_check_ask_for_the_same() {
        for row in &CHECKS {
            for other in CHECKS.iter().filter(|other| other.check == row.check) {
                assert!(
                    row.cautions == other.cautions && row.recovery == other.recovery,
                    "{}",
                    row.check
                );
            }
        }
    }
}
