//! The shape of the tables of checks and repairs.

use super::check_table::{CHECKS, REPAIRS};
use super::faults::{bit, index};
use crate::names::{Caution, Check, Fault, Feature, Observation};
use crate::vehicle::System;

/// What a check reveals.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Reveals {
    /// A figure.
    Feature(Feature),
    /// A yes or a no.
    Observation(Observation),
}

/// One further check.
pub(super) struct CheckRow {
    pub(super) check: Check,
    pub(super) reveals: Reveals,
    pub(super) minutes: f64,
    pub(super) money: f64,
    /// Whether the charge must be recovered first.
    pub(super) recovery: bool,
    /// Whether it can be done with the engine off.
    pub(super) at_rest: bool,
    /// The systems in which the check exists, one bit each.
    pub(super) systems: u8,
    /// What can hurt in doing it, where the system calls for it; recovering the charge aside.
    pub(super) cautions: &'static [Caution],
    /// When it may come at all; `None` for any time.
    pub(super) once: Option<Once>,
}

/// When a check may come: where one of these faults is the likeliest, or where one of these checks is still to be made.
pub(super) struct Once {
    pub(super) leads: &'static [Fault],
    pub(super) or_open: &'static [Check],
}

/// What sets a fault right, and what that costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Repair {
    /// The fault.
    pub fault: Fault,
    /// Its time, min.
    pub minutes: f64,
    /// Its parts, in units of what a minute of work costs.
    pub money: f64,
    /// Whether the charge must be recovered first.
    pub recovery: bool,
    /// What can hurt, recovering the charge aside; [`super::repair_cautions`] tells all that a system calls for.
    pub cautions: &'static [Caution],
    /// What to do, in a line.
    pub says: &'static str,
}

/// What sets a fault right, and what that costs.
///
/// Source: common practice, no source; the costs are engineering judgement, in relative units.
///
/// ```
/// use coldloop::{Fault, diagnosis::repair};
/// assert!(repair(Fault::CondenserAirflowLoss).minutes < repair(Fault::WornCompressor).minutes);
/// ```
pub const fn repair(fault: Fault) -> &'static Repair {
    &REPAIRS[index(fault)]
}

impl CheckRow {
    fn can_be_made(&self, system: &System) -> bool {
        let sight_glass = self.reveals == Reveals::Observation(Observation::SightGlassBubbles);
        self.systems & bit(system) != 0 && (!sight_glass || system.may_have_sight_glass())
    }
}

/// Whether a check exists in a system: clutch checks need a clutch, and a look at a sight glass needs one.
///
/// ```
/// use coldloop::diagnosis::can_check;
/// use coldloop::vehicle::System;
/// use coldloop::{Check, Compressor, Expansion, Refrigerant};
/// let system = |compressor| System::new(Refrigerant::R134a, Expansion::Txv, compressor);
/// assert!(can_check(Check::TurnHub, &system(Compressor::FixedClutch)));
/// assert!(!can_check(Check::TurnHub, &system(Compressor::Electric)));
/// ```
pub fn can_check(check: Check, system: &System) -> bool {
    // Every system can be run and read; what it answers stands in no table.
    check == Check::RunAndRead || CHECKS.iter().any(|row| row.check == check && row.can_be_made(system))
}

/// The questions that a check answers in this system; none for one that only reads a figure.
///
/// ```
/// use coldloop::diagnosis::questions;
/// use coldloop::vehicle::System;
/// use coldloop::{Check, Compressor, Expansion, Observation, Refrigerant};
/// let car = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// assert!(questions(Check::TurnHub, &car).any(|question| question == Observation::HubLocked));
/// ```
pub fn questions(check: Check, system: &System) -> impl Iterator<Item = Observation> {
    CHECKS
        .iter()
        .filter(move |row| row.check == check && row.can_be_made(system))
        .filter_map(|row| match row.reveals {
            Reveals::Observation(observation) => Some(observation),
            Reveals::Feature(_) => None,
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_stand_in_the_order_of_their_codes() {
        for (at, row) in REPAIRS.iter().enumerate() {
            assert_eq!(index(row.fault), at);
        }
    }

    #[test]
    fn every_check_but_the_first_run_is_in_the_catalogue() {
        for check in Check::ALL {
            let known = CHECKS.iter().any(|row| row.check == check);
            assert_eq!(known, check != Check::RunAndRead, "{check}");
        }
    }

    #[test]
    fn every_observation_is_revealed_by_a_check() {
        for observation in Observation::ALL {
            assert!(
                CHECKS
                    .iter()
                    .any(|row| row.reveals == Reveals::Observation(observation)),
                "{observation}"
            );
        }
    }
}
