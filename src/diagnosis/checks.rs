//! The checks and repairs of the tables.

use super::check_table::{CHECKS, REPAIRS};
use super::faults::{bit, index};
use super::list::List;
use super::rows::{CheckRow, Repair, Reveals};
use crate::names::{Check, Fault, Feature, Observation, ReadingKind, Refrigerant};
use crate::vehicle::System;
use core::fmt;

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

fn can_be_made(row: &CheckRow, system: &System) -> bool {
    let sight_glass = row.reveals == Reveals::Observation(Observation::SightGlassBubbles);
    let has_such = !(row.not_r744 && system.refrigerant == Refrigerant::R744);
    has_such && row.systems & bit(system) != 0 && (!sight_glass || system.may_have_sight_glass())
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
    // Every system can be run and read, and an empty one searched with nitrogen; neither check has a row in the table.
    matches!(check, Check::RunAndRead | Check::SearchWithNitrogen)
        || CHECKS.iter().any(|row| row.check == check && can_be_made(row, system))
}

/// Whether a check needs the compressor running.
///
/// ```
/// use coldloop::{Check, diagnosis::needs_running};
/// assert!(needs_running(Check::LookAtSightGlass) && !needs_running(Check::TurnHub));
/// ```
pub fn needs_running(check: Check) -> bool {
    check == Check::RunAndRead || CHECKS.iter().any(|row| row.check == check && !row.at_rest)
}

/// Whether the charge has to be recovered for a check.
pub(crate) fn recovers(check: Check) -> bool {
    CHECKS.iter().any(|row| row.check == check && row.recovery)
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
        .filter(move |row| row.check == check && can_be_made(row, system))
        .filter_map(|row| match row.reveals {
            Reveals::Observation(observation) => Some(observation),
            Reveals::Feature(_) => None,
        })
}

/// An entry of a readings file that a check fills; it is written as `readings.vent` or `observations.clutch_engaged`.
///
/// ```
/// use coldloop::{Check, ReadingKind, diagnosis::Key};
/// let key = Key::Reading(ReadingKind::Vent);
/// assert_eq!(key.to_string(), "readings.vent");
/// assert!(Check::ALL.iter().any(|check| check.key() == key));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Key {
    /// A reading, in `[readings]`.
    Reading(ReadingKind),
    /// The answer to a question, in `[observations]`.
    Observation(Observation),
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Reading(reading) => write!(f, "readings.{}", reading.id()),
            Self::Observation(observation) => write!(f, "observations.{}", observation.id()),
        }
    }
}

impl Check {
    /// The entry of a readings file that the check fills; the first, where it fills two.
    ///
    /// ```
    /// use coldloop::Check;
    /// assert_eq!(Check::ReadVent.key().to_string(), "readings.vent");
    /// assert_eq!(Check::WatchClutch.key().to_string(), "observations.clutch_engaged");
    /// ```
    pub fn key(self) -> Key {
        let keys = self.keys();
        keys.first().copied().unwrap_or(Key::Reading(ReadingKind::LowSide))
    }

    /// All entries of a readings file that the check fills, one or two.
    ///
    /// ```
    /// use coldloop::diagnosis::Key;
    /// use coldloop::{Check, Observation};
    /// let keys = [Observation::HubTurnsFreely, Observation::HubLocked].map(Key::Observation);
    /// assert_eq!(Check::TurnHub.keys()[..], keys);
    /// ```
    pub fn keys(self) -> List<Key, 2> {
        let mut keys = List::new(Key::Reading(ReadingKind::LowSide));
        if self == Check::RunAndRead {
            keys.push(Key::Reading(ReadingKind::LowSide));
            keys.push(Key::Reading(ReadingKind::HighSide));
        }
        for row in CHECKS.iter().filter(|row| row.check == self) {
            keys.push(match row.reveals {
                Reveals::Feature(feature) => Key::Reading(read_for(feature)),
                Reveals::Observation(observation) => Key::Observation(observation),
            });
        }
        keys
    }
}

/// The reading that gives a figure, the pressures being known.
const fn read_for(feature: Feature) -> ReadingKind {
    match feature {
        Feature::LowSide | Feature::RestPressure => ReadingKind::LowSide,
        Feature::HighSide => ReadingKind::HighSide,
        Feature::Vent => ReadingKind::Vent,
        Feature::Superheat => ReadingKind::SuctionLine,
        Feature::Subcooling => ReadingKind::LiquidLine,
        Feature::DischargeSuperheat => ReadingKind::DischargeLine,
        Feature::ClutchCycles => ReadingKind::ClutchCycles,
    }
}

/// The figure that a check reads; `None` for one that answers questions.
///
/// ```
/// use coldloop::{Check, Feature, diagnosis::figure_of};
/// assert_eq!(figure_of(Check::ReadVent), Some(Feature::Vent));
/// assert_eq!(figure_of(Check::TurnHub), None);
/// ```
pub fn figure_of(check: Check) -> Option<Feature> {
    let mut rows = CHECKS.iter().filter(|row| row.check == check);
    rows.find_map(|row| match row.reveals {
        Reveals::Feature(feature) => Some(feature),
        Reveals::Observation(_) => None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_check_fills_one_key_or_two_and_no_other_check_the_same() {
        let all = || Check::ALL.into_iter().filter(|check| *check != Check::RunAndRead);
        for check in all() {
            let rows = CHECKS.iter().filter(|row| row.check == check).count();
            assert_eq!(check.keys().len(), rows, "{check}");
            for other in all().filter(|other| *other != check) {
                assert!(
                    check.keys().iter().all(|key| !other.keys().contains(key)),
                    "{check}, {other}"
                );
            }
        }
    }

    #[test]
    fn rows_stand_in_the_order_of_their_codes() {
        for (at, row) in REPAIRS.iter().enumerate() {
            assert_eq!(index(row.fault), at);
        }
    }

    #[test]
    fn every_check_that_answers_a_question_is_in_the_catalogue() {
        for check in Check::ALL {
            let known = CHECKS.iter().any(|row| row.check == check);
            let without = [Check::RunAndRead, Check::SearchWithNitrogen];
            assert_eq!(known, !without.contains(&check), "{check}");
        }
    }

    #[test]
    fn every_observation_is_revealed_by_a_check_or_comes_of_the_work() {
        // What a search for leaks, a test and an evacuation show; the plan does not weigh them as checks.
        let of_work = [
            Observation::DyeGlows,
            Observation::DetectorAlarms,
            Observation::TraceGasEscapes,
            Observation::TestPressureHolds,
            Observation::VacuumHolds,
            Observation::EvacuatedBeforeFilling,
        ];
        for observation in Observation::ALL {
            let revealed = CHECKS
                .iter()
                .any(|row| row.reveals == Reveals::Observation(observation));
            assert_eq!(revealed, !of_work.contains(&observation), "{observation}");
        }
    }
}
