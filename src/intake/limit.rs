//! Reads texts: the limit of their size, their kind, and what is made of them.

use super::confirmed::{Confirmed, confirmed};
use super::counts::counts;
use super::mistakes::{Mistakes, Refused};
use super::node::Node;
use super::refusal::{Mistake, Refusal};
use super::session::{SessionFile, session};
use super::settings::settings;
use super::tree::{File, Table};
use super::trial::{Trial, trial};
use super::visit::{Visit, visit};
use super::{case, read_json, read_toml};
use crate::diagnosis::{Counts, Settings};
use crate::names::Quantity;
use crate::range::Range;
use crate::vehicle::System;
use alloc::boxed::Box;
use alloc::vec::Vec;

/// The largest text that is read; the functions of this module read up to 4 MB, those of a limit as much as it says.
///
/// While a text is read, it takes many times its size in memory, and one made to do harm takes the most.
///
/// ```
/// use coldloop::{ErrorKind, intake::Limit};
/// let file = include_str!("../../examples/readings/low-charge.toml");
/// assert!(Limit { bytes: 10_000 }.visit_from_text(file).is_ok());
/// let refusal = Limit { bytes: 100 }.visit_from_text(file).unwrap_err();
/// assert_eq!((refusal.error().kind, refusal.error().high), (ErrorKind::OutOfRange, 100.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limit {
    /// The largest size, in bytes.
    pub bytes: usize,
}

impl Default for Limit {
    fn default() -> Self {
        Self { bytes: 4_000_000 }
    }
}

/// A reader of one kind of text.
pub(super) type Reader = for<'t> fn(&'t str, &Mistakes) -> Result<Node<'t>, Refused>;

impl Limit {
    /// As [`visit_from_toml`](super::visit_from_toml).
    pub fn visit_from_toml(self, text: &str) -> Result<Box<Visit>, Refusal> {
        self.read_visit(text, read_toml::node)
    }

    /// As [`visit_from_json`](super::visit_from_json).
    pub fn visit_from_json(self, text: &str) -> Result<Box<Visit>, Refusal> {
        self.read_visit(text, read_json::node)
    }

    /// As [`visit_from_text`](super::visit_from_text).
    pub fn visit_from_text(self, text: &str) -> Result<Box<Visit>, Refusal> {
        self.read_visit(text, either(text))
    }

    /// As [`session_from_toml`](super::session_from_toml).
    pub fn session_from_toml(self, text: &str) -> Result<Box<SessionFile>, Refusal> {
        self.read(text, read_toml::node, session)
    }

    /// As [`session_from_json`](super::session_from_json).
    pub fn session_from_json(self, text: &str) -> Result<Box<SessionFile>, Refusal> {
        self.read(text, read_json::node, session)
    }

    /// As [`session_from_text`](super::session_from_text).
    pub fn session_from_text(self, text: &str) -> Result<Box<SessionFile>, Refusal> {
        self.read(text, either(text), session)
    }

    /// As [`system_from_text`](super::system_from_text).
    pub fn system_from_text(self, text: &str) -> Result<System, Refusal> {
        self.read(text, either(text), |root| {
            let advice = "a [system] table names refrigerant, expansion and compressor";
            root.section("system", advice, case::system)
        })
    }

    /// As [`settings_from_json`](super::settings_from_json).
    pub fn settings_from_json(self, text: &str) -> Result<Settings, Refusal> {
        let told = self.read(text, read_json::node, |root| {
            let mut told = Box::<Settings>::default();
            settings(root, &mut told);
            Ok(told)
        });
        told.map(|settings| *settings)
    }

    /// As [`counts_from_toml`](super::counts_from_toml).
    pub fn counts_from_toml(self, text: &str) -> Result<Counts, Refusal> {
        self.read(text, read_toml::node, |root| Ok(counts(root)))
            .map(|counts| *counts)
    }

    /// As [`confirmed_from_json`](super::confirmed_from_json).
    pub fn confirmed_from_json(self, line: &str) -> Result<Confirmed, Refusal> {
        self.confirmed(line).map(|confirmed| *confirmed)
    }

    /// The same, boxed because it is large.
    pub(crate) fn confirmed(self, line: &str) -> Result<Box<Confirmed>, Refusal> {
        self.read(line, read_json::node, confirmed)
    }

    /// As [`trial_from_json`](super::trial_from_json).
    pub fn trial_from_json(self, text: &str) -> Result<Trial, Refusal> {
        self.read(text, read_json::node, trial)
    }

    /// As [`trial_from_text`](super::trial_from_text).
    pub fn trial_from_text(self, text: &str) -> Result<Trial, Refusal> {
        self.read(text, either(text), trial)
    }

    /// Reads the text and applies `told` to its table.
    pub(super) fn read<T>(
        self,
        text: &str,
        reader: Reader,
        told: fn(&Table<'_>) -> Result<T, Refused>,
    ) -> Result<T, Refusal> {
        let (told, _) = self.read_beside(text, reader, told, |_| false)?;
        Ok(told)
    }

    /// A visit, without the tables of what was done that have mistakes.
    fn read_visit(self, text: &str, reader: Reader) -> Result<Box<Visit>, Refusal> {
        let (mut visit, refused) = self.read_beside(text, reader, visit, Visit::is_done)?;
        visit.refuse(refused);
        Ok(visit)
    }

    /// The same, and the mistakes, where all of them are `bearable`.
    fn read_beside<T>(
        self,
        text: &str,
        reader: Reader,
        told: fn(&Table<'_>) -> Result<T, Refused>,
        bearable: fn(&Mistake) -> bool,
    ) -> Result<(T, Vec<Mistake>), Refusal> {
        let text = text.strip_prefix(MARK).unwrap_or(text);
        self.check(text)?;
        let mistakes = Mistakes::default();
        let node = reader(text, &mistakes);
        let node = match node {
            Ok(node) => node,
            Err(refused) => return mistakes.beside(Err(refused), bearable),
        };
        let file = File {
            text,
            mistakes: &mistakes,
            placed: text.trim_end().contains('\n'),
        };
        let told = Table::root(file, &node).and_then(|root| told(&root));
        mistakes.beside(told, bearable)
    }

    /// Refuses a text that is too large, and a second byte order mark, which one of the parsers would ignore.
    #[inline(never)]
    fn check(self, text: &str) -> Result<(), Refusal> {
        let size = Range::new(Quantity::Size, 0.0, self.bytes as f64);
        size.check(text.len() as f64)?;
        match text.starts_with(MARK) {
            true => Err(Mistake::syntax("it starts with two byte order marks").into()),
            false => Ok(()),
        }
    }
}

/// The byte order mark that some editors write before a text.
const MARK: char = '\u{feff}';

/// The reader of a text of either kind: JSON starts with a brace, which no TOML does.
fn either(text: &str) -> Reader {
    match text.trim_start_matches(MARK).trim_start().starts_with('{') {
        true => read_json::node,
        false => read_toml::node,
    }
}
