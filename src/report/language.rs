//! Texts in a language, with their placeholders filled in.

use super::texts::{Sentence, Text, repair_in_spanish};
use crate::diagnosis::{Action, repair};
use crate::names::{Language, Refrigerant};
use crate::vehicle::System;
use alloc::string::String;

/// The place of a language in the rows of the table.
pub(super) const fn column(language: Language) -> usize {
    match language {
        Language::English => 0,
        Language::Spanish => 1,
    }
}

/// A text with its placeholders replaced by words.
pub(super) fn fill(text: &str, words: &[(&str, &str)]) -> String {
    let mut rest = text;
    let mut filled = String::new();
    while let Some((before, opened)) = rest.split_once('{') {
        filled.push_str(before);
        let Some((name, after)) = opened.split_once('}') else {
            break;
        };
        let word = words
            .iter()
            .find(|(known, _)| *known == name)
            .map_or("", |(_, word)| word);
        filled.push_str(word);
        rest = after;
    }
    filled.push_str(rest);
    filled
}

/// What a step asks for in this system, in a sentence.
///
/// ```
/// use coldloop::diagnosis::Action;
/// use coldloop::vehicle::System;
/// use coldloop::{Check, Compressor, Expansion, Language, Refrigerant, report::step_says};
/// let van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let says = step_says(Action::Check(Check::WatchClutch), &van, Language::English);
/// assert_eq!(says, "Check whether hub and pulley turn together.");
/// ```
pub fn step_says(action: Action, system: &System, language: Language) -> &'static str {
    match (action, language) {
        (Action::Check(check), _) => check.sentence(language),
        (Action::Repair(fault), Language::English) => repair(fault).says_for(system),
        (Action::Repair(fault), Language::Spanish) => repair_in_spanish(fault, system.refrigerant == Refrigerant::R744),
        (Action::HandOver, _) => Text::HandOver.of(language),
    }
}
