//! What a step of a session can change.

use crate::circuit::Observations;
use crate::circuit::Readings;
use crate::diagnosis::{Action, Case, Settings};
use crate::names::Fault;
use crate::vehicle::Conditions;

/// A set of faults.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Faults {
    /// One bit each, by its place in the vocabulary.
    bits: u32,
}

impl Faults {
    /// The set with one more.
    pub(crate) fn with(self, fault: Fault) -> Self {
        let place = Fault::ALL.iter().position(|other| *other == fault);
        Self {
            bits: self.bits | place.map_or(0, |place| 1 << place),
        }
    }

    /// Its faults, in the order of the vocabulary.
    pub(crate) fn iter(self) -> impl Iterator<Item = Fault> {
        let faults = Fault::ALL.into_iter().enumerate();
        faults.filter_map(move |(place, fault)| (self.bits & 1 << place != 0).then_some(fault))
    }
}

/// Conditions, readings and observations of one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Moment {
    pub(crate) conditions: Conditions,
    pub(crate) readings: Readings,
    pub(crate) observations: Observations,
}

impl Moment {
    /// The moment of a case.
    pub(crate) const fn of(case: &Case) -> Self {
        Self {
            conditions: case.conditions,
            readings: case.readings,
            observations: case.observations,
        }
    }

    /// The same vehicle at this time.
    pub(crate) const fn case(&self, vehicle: &Case) -> Case {
        let mut case = *vehicle;
        self.put_into(&mut case);
        case
    }

    /// Writes them into a case of the vehicle.
    pub(crate) const fn put_into(&self, case: &mut Case) {
        case.conditions = self.conditions;
        case.readings = self.readings;
        case.observations = self.observations;
    }
}

/// The state of a visit: all that its steps can change.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Standing {
    /// What is known of the vehicle now.
    pub(crate) moment: Moment,
    /// Whether that is after a repair.
    pub(crate) after: bool,
    /// What was repaired.
    pub(crate) repaired: Faults,
    /// What was repaired in vain, so that it was not the cause.
    pub(crate) ruled_out: Faults,
    /// Whether the charge is recovered.
    pub(crate) recovered: bool,
    /// The next step that was given last.
    pub(crate) held: Option<Action>,
}

impl Standing {
    /// Before any step.
    pub(crate) fn of(case: &Case, settings: &Settings) -> Self {
        Self {
            moment: Moment::of(case),
            after: false,
            repaired: Faults::default(),
            ruled_out: Faults::default(),
            recovered: settings.recovered,
            held: settings.held,
        }
    }
}
