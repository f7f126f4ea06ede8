//! What eyes, ears and hands find.

use crate::names::Observation;

/// Answers to yes-or-no questions; what was not looked at has none.
///
/// ```
/// use coldloop::{Observation, circuit::Observations};
/// let seen = Observations::NONE.with(Observation::ClutchEngaged, true);
/// assert_eq!(seen.answer(Observation::ClutchEngaged), Some(true));
/// assert_eq!(seen.answer(Observation::OilTraces), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Observations {
    answers: [Option<bool>; Observation::ALL.len()],
}

impl Observations {
    /// Nothing was looked at.
    pub const NONE: Self = Self {
        answers: [None; Observation::ALL.len()],
    };

    /// These observations with one answer added or changed.
    pub const fn with(mut self, observation: Observation, answer: bool) -> Self {
        self.answers[place(observation)] = Some(answer);
        self
    }

    /// The answer, where there is one.
    pub const fn answer(&self, observation: Observation) -> Option<bool> {
        self.answers[place(observation)]
    }

    /// The observations that have an answer, in the order of the vocabulary.
    pub fn answered(&self) -> impl Iterator<Item = (Observation, bool)> + '_ {
        Observation::ALL
            .into_iter()
            .zip(self.answers)
            .filter_map(|(observation, answer)| Some((observation, answer?)))
    }
}

impl Default for Observations {
    fn default() -> Self {
        Self::NONE
    }
}

/// The place of an observation in arrays over the vocabulary; codes count from one.
pub(crate) const fn place(observation: Observation) -> usize {
    observation.code() as usize - 1
}
