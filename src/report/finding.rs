//! The outcomes of a step, each with an id and a text.

use super::words::finding_says;
use crate::diagnosis::{Action, figure_of};
use crate::names::{Check, Feature, Language, Observation, ResultKind};
use alloc::format;
use alloc::string::String;

/// What a step finds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Finding {
    /// The answer to a question.
    Seen(Observation, bool),
    /// A figure below, within or above its normal range.
    Read(Feature, ResultKind),
    /// A check that answers several questions found none of them true.
    NoneOf(Check),
    /// A repair helped.
    Fixed,
    /// A repair did not help.
    NotFixed,
}

impl Finding {
    /// The finding of a branch of a plan or an outcome of a check.
    pub fn of(action: Action, result: ResultKind, observation: Option<Observation>) -> Self {
        let yes = result == ResultKind::Yes;
        match (action, observation) {
            (Action::Check(_), Some(question)) => Self::Seen(question, yes),
            (Action::Check(check), None) => match figure_of(check) {
                Some(feature) => Self::Read(feature, result),
                None => Self::NoneOf(check),
            },
            (Action::Repair(_) | Action::HandOver, _) if yes => Self::Fixed,
            (Action::Repair(_) | Action::HandOver, _) => Self::NotFixed,
        }
    }

    /// What was seen, in a few words.
    ///
    /// ```
    /// use coldloop::{Language, Observation, report::Finding};
    /// let clear = Finding::Seen(Observation::SightGlassBubbles, false);
    /// assert_eq!(clear.says(Language::English), "sight glass clear");
    /// ```
    pub fn says(self, language: Language) -> String {
        finding_says(self, language)
    }

    /// Its id: the question, the figure or the check, and how it came out, as in `sight_glass_bubbles.yes`, `vent.above`,
    /// `turn-hub.none`, `repair.fixed`.
    ///
    /// ```
    /// use coldloop::{Observation, report::Finding};
    /// assert_eq!(Finding::Seen(Observation::SightGlassBubbles, true).id(), "sight_glass_bubbles.yes");
    /// ```
    pub fn id(self) -> String {
        match self {
            Self::Seen(question, yes) => format!("{}.{}", question.id(), if yes { "yes" } else { "no" }),
            Self::Read(feature, result) => format!("{}.{}", feature.id(), result.id()),
            Self::NoneOf(check) => format!("{}.none", check.id()),
            Self::Fixed => "repair.fixed".into(),
            Self::NotFixed => "repair.not-fixed".into(),
        }
    }
}
