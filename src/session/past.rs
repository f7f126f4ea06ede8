//! The steps of a session that can be undone.

use super::standing::Standing;
use crate::names::{Check, Fault, Observation, ReadingKind};

/// What a step did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Done {
    /// A reading was added or changed.
    Reading(ReadingKind),
    /// A log was added.
    Log,
    /// A question was answered.
    Observation(Observation),
    /// A check came out.
    Outcome(Check),
    /// The conditions were corrected.
    Conditions,
    /// A fault was set right.
    Repaired(Fault),
    /// A repair was tried that did not help.
    RepairedInVain(Fault),
}

/// What became of undoing.
///
/// ```
/// use coldloop::diagnosis::Settings;
/// use coldloop::session::{Done, Session, Undone};
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Observation, Refrigerant};
/// let van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let yard = Conditions::new(celsius(24.0), Surroundings::at_altitude(1_600.0)?);
/// let mut session = Session::new(van, yard, Settings::default())?;
/// session.add_observation(Observation::ClutchEngaged, true)?;
/// assert_eq!(session.undo(), Undone::Step(Done::Observation(Observation::ClutchEngaged)));
/// assert_eq!(session.undo(), Undone::Nothing);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Undone {
    /// This step was taken back.
    Step(Done),
    /// Nothing was added yet.
    Nothing,
    /// Only steps are left that are too old to be undone.
    TooOld,
}

/// The last steps, each with how the visit stood before it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Past {
    /// The oldest first; places behind the last step are empty.
    steps: [Option<(Done, Standing)>; Self::CAPACITY],
    /// Whether older steps were forgotten.
    pub(crate) forgot: bool,
}

impl Past {
    /// Steps that are kept, of half a kilobyte each. Source: engineering judgement: a wrong entry is noticed within a few steps.
    pub(crate) const CAPACITY: usize = 16;

    pub(crate) const NOTHING: Self = Self {
        steps: [None; Self::CAPACITY],
        forgot: false,
    };

    pub(crate) fn len(&self) -> usize {
        self.steps.iter().flatten().count()
    }

    /// The steps and what was before each, the oldest first.
    pub(crate) fn steps(&self) -> impl Iterator<Item = &(Done, Standing)> {
        self.steps.iter().flatten()
    }

    /// Keeps a step; the oldest one is forgotten where there are too many.
    pub(crate) fn remember(&mut self, done: Done, before: Standing) {
        if self.steps.iter().all(Option::is_some) {
            self.forgot = true;
            self.steps.rotate_left(1);
            self.steps[Self::CAPACITY - 1] = None;
        }
        if let Some(place) = self.steps.iter_mut().find(|place| place.is_none()) {
            *place = Some((done, before));
        }
    }

    /// The last step, which is forgotten.
    pub(crate) fn take_back(&mut self) -> Option<(Done, Standing)> {
        self.steps.iter_mut().rev().find_map(Option::take)
    }
}
