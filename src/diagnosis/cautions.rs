//! What can hurt, and what the law asks, in looking and in mending.

use super::check_table::{CHECKS, REPAIRS};
use super::faults::index;
use super::list::List;
use crate::names::{Caution, Check, Compressor, Fault, Refrigerant, RestFinding, SafetyGroup};
use crate::vehicle::System;

/// Cautions, the gravest first as in the vocabulary's order of work.
pub type Cautions = List<Caution, { Caution::ALL.len() }>;

/// What recovering, evacuating and charging brings with it.
const RECOVERY: [Caution; 9] = [
    Caution::HighVoltage,
    Caution::CarbonDioxide,
    Caution::Flammable,
    Caution::Pressure,
    Caution::Frostbite,
    Caution::Ventilation,
    Caution::NoVenting,
    Caution::Certification,
    Caution::LocalRules,
];

/// What work on this system asks for in general.
pub(super) fn general(system: &System) -> Cautions {
    let mut cautions = of(system, &RECOVERY[..5]);
    if system.compressor != Compressor::Electric {
        cautions.push(Caution::MovingParts);
    }
    for caution in &RECOVERY[5..] {
        cautions.push(*caution);
    }
    cautions
}

/// The same for one that stands at rest, with what its pressure asks for before all else.
pub(super) fn at_rest(system: &System, finding: Option<RestFinding>) -> Cautions {
    let mut cautions = Cautions::new(Caution::Pressure);
    if finding.is_some_and(RestFinding::forbids_running) {
        cautions.push(Caution::DoNotRun);
    }
    for caution in &general(system) {
        cautions.push(*caution);
    }
    cautions
}

impl RestFinding {
    /// Whether the compressor must stand still: no refrigerant carries its oil, or it would compress air.
    pub(super) const fn forbids_running(self) -> bool {
        match self {
            RestFinding::NearlyEmpty | RestFinding::AirPresent => true,
            RestFinding::Consistent | RestFinding::NotEqualised => false,
        }
    }
}

/// What a check asks for on this system.
///
/// Source: common practice, no source, in `tables/checks`; the refrigerant's safety group as published
/// ([`crate::fluid::Facts`]). Local codes and the data of the vehicle's maker come first.
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
    let rows = CHECKS.iter().filter(|row| row.check == check);
    let mut cautions = Cautions::new(Caution::Pressure);
    for row in rows {
        add(&mut cautions, system, row.cautions);
        if row.recovery {
            add(&mut cautions, system, &RECOVERY);
        }
    }
    cautions
}

/// What setting right a fault asks for on this system.
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
    let mut cautions = Cautions::new(Caution::Pressure);
    if row.recovery {
        add(&mut cautions, system, &RECOVERY);
    }
    add(&mut cautions, system, row.cautions);
    cautions
}

fn of(system: &System, wanted: &[Caution]) -> Cautions {
    let mut cautions = Cautions::new(Caution::Pressure);
    add(&mut cautions, system, wanted);
    cautions
}

/// Adds what applies to the system and is not there yet.
fn add(cautions: &mut Cautions, system: &System, wanted: &[Caution]) {
    for caution in wanted {
        if applies(*caution, system) && !cautions.contains(caution) {
            cautions.push(*caution);
        }
    }
}

fn applies(caution: Caution, system: &System) -> bool {
    match caution {
        Caution::HighVoltage => system.compressor == Compressor::Electric,
        Caution::Flammable => burns(system.refrigerant),
        Caution::CarbonDioxide => system.refrigerant == Refrigerant::R744,
        Caution::Pressure
        | Caution::Frostbite
        | Caution::MovingParts
        | Caution::NoVenting
        | Caution::LocalRules
        | Caution::Ventilation
        | Caution::Certification
        | Caution::TestPressure
        | Caution::ForeignRefrigerant
        | Caution::HotParts
        | Caution::DoNotRun
        | Caution::TestTooHigh => true,
    }
}

fn burns(refrigerant: Refrigerant) -> bool {
    match refrigerant.facts().safety_group.map(|group| group.value) {
        Some(SafetyGroup::A1) => false,
        Some(SafetyGroup::A2L | SafetyGroup::A2 | SafetyGroup::A3) => true,
        None => true, // what is not known to be safe is handled as if it were not
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
    fn carbon_dioxide_has_its_own() {
        let bus = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
        assert!(general(&bus).contains(&Caution::CarbonDioxide));
        assert!(!general(&bus).contains(&Caution::Flammable));
    }
}
