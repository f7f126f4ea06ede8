//! Why a readings file was refused: every mistake with its key, its value, the reason and what to write instead.

use super::shown::shown;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use crate::units::text::Restated;
use alloc::boxed::Box;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

/// How many mistakes a refusal tells.
pub(super) const TOLD: usize = 12;

/// A refused readings file: its mistakes in the order of the file, the first dozen of them.
///
/// ```
/// let text = "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n\
///     [conditions]\nambient = '900 °C'\naltitude = '1600 m'\n[readings]\nlow_side = '35 psi'\n";
/// let refusal = coldloop::intake::case_from_toml(text).unwrap_err();
/// let told: Vec<String> = refusal.mistakes().map(|mistake| mistake.to_string()).collect();
/// assert_eq!(
///     told[0],
///     "line 6, column 11: conditions.ambient = '900 °C': temperature 900 °C is outside -40 °C to 60 °C"
/// );
/// assert!(told[1].starts_with("line 9, column 12: readings.low_side = '35 psi': a pressure needs its datum"));
/// assert_eq!(refusal.error().kind, coldloop::ErrorKind::OutOfRange);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Refusal {
    /// The first mistake, whose error stands for all.
    pub first: Box<Mistake>,
    /// The further ones.
    pub others: Vec<Mistake>,
    /// How many more there are, which are not told.
    pub untold: usize,
}

/// One mistake of a readings file.
///
/// ```
/// use coldloop::{ErrorKind, intake};
/// let text = include_str!("../../examples/readings/low-charge.toml").replace("105 kPa gauge", "105 kPa");
/// let mistake = intake::case_from_toml(&text).unwrap_err().first;
/// assert_eq!((mistake.error.kind, mistake.value.as_str()), (ErrorKind::MissingDatum, "\"105 kPa\""));
/// assert_eq!(mistake.position.map(|place| place.line), Some(21));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Mistake {
    /// The dotted key, shortened to 80 characters; an empty text when the file as a whole is refused.
    pub key: String,
    /// The value as it was written, shortened to 80 characters; an empty text when there is none, or when it is a table.
    pub value: String,
    /// Where it stands; none for what is missing from the whole file, and in JSON of one line, which a program wrote.
    pub position: Option<Position>,
    /// What is wrong, as the rest of the library says it, in SI.
    pub error: Error,
    /// What is wrong, in the unit that was written.
    pub reason: String,
    /// What to write instead; empty when the reason already says it.
    pub advice: String,
}

/// A place in a text.
///
/// ```
/// use coldloop::intake;
/// let refusal = intake::case_from_toml("[system]\nrefrigerant = \"R-999\"\n").unwrap_err();
/// let position = refusal.mistakes().find_map(|mistake| mistake.position).expect("it stands somewhere");
/// assert_eq!(position.line, 2);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Position {
    /// The line, counted from one.
    pub line: usize,
    /// The character in its line, counted from one.
    pub column: usize,
}

impl Position {
    /// The position of the byte at this offset.
    pub(super) fn of(text: &str, offset: usize) -> Self {
        let before = text.get(..offset).unwrap_or(text);
        let line = before.rsplit('\n').next().unwrap_or(before);
        Self {
            line: 1 + before.matches('\n').count(),
            column: 1 + line.chars().count(),
        }
    }
}

impl Refusal {
    /// These mistakes; `None` without any.
    pub(super) fn of(mistakes: Vec<Mistake>) -> Option<Self> {
        let mut mistakes = mistakes.into_iter();
        Some(Self {
            first: Box::new(mistakes.next()?),
            others: mistakes.collect(),
            untold: 0,
        })
    }

    /// The error of the first mistake.
    pub fn error(&self) -> Error {
        self.first.error
    }

    /// The mistakes that are told, in the order of the file.
    pub fn mistakes(&self) -> impl Iterator<Item = &Mistake> {
        core::iter::once(&*self.first).chain(&self.others)
    }
}

impl Mistake {
    #[inline(never)]
    pub(super) fn new(key: &str, value: &str, error: Error, advice: &str) -> Self {
        Self {
            key: shown(key),
            value: shown(value),
            position: None,
            error,
            reason: error.to_string(),
            advice: advice.into(),
        }
    }

    /// The same, the reason told in the unit of this text.
    pub(super) fn in_unit_of(mut self, text: &str) -> Self {
        let error = self.error;
        self.reason = Restated { error, text }.to_string();
        self
    }

    /// The same at a place of the text.
    pub(super) fn at(mut self, text: &str, offset: usize) -> Self {
        self.position = Some(Position::of(text, offset));
        self
    }

    pub(super) fn syntax(message: &str) -> Self {
        let error = Error::of(ErrorKind::Syntax, Quantity::Name);
        Self::new("", "", error, &shown(message))
    }
}

impl From<Mistake> for Refusal {
    fn from(first: Mistake) -> Self {
        Self {
            first: Box::new(first),
            others: Vec::new(),
            untold: 0,
        }
    }
}

/// What the library refuses once everything was read; no key alone is to blame.
impl From<Error> for Refusal {
    fn from(error: Error) -> Self {
        Mistake::new("", "", error, "").into()
    }
}

impl core::error::Error for Refusal {}

/// A line for each mistake.
impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.first.fmt(f)?;
        for mistake in &self.others {
            write!(f, "\n{mistake}")?;
        }
        match self.untold {
            0 => Ok(()),
            untold => write!(f, "\nand {untold} more"),
        }
    }
}

impl fmt::Display for Mistake {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(Position { line, column }) = self.position {
            write!(f, "line {line}, column {column}: ")?;
        }
        if !self.key.is_empty() {
            f.write_str(&self.key)?;
            if !self.value.is_empty() {
                write!(f, " = {}", self.value)?;
            }
            f.write_str(": ")?;
        }
        f.write_str(&self.reason)?;
        if !self.advice.is_empty() {
            write!(f, "; {}", self.advice)?;
        }
        Ok(())
    }
}
