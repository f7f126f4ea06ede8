//! Why a readings file was refused: the key, the value, the reason and what to write instead.

use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use alloc::boxed::Box;
use alloc::string::String;
use core::fmt;

/// A refused entry of a readings file.
///
/// ```
/// let text = "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n\
///     [conditions]\nambient = '74 °F'\naltitude = '1600 m'\n[readings]\nlow_side = '35 psi'\n";
/// let refusal = coldloop::intake::case_from_toml(text).unwrap_err();
/// assert_eq!(refusal.key, "readings.low_side");
/// assert_eq!(refusal.error.kind, coldloop::ErrorKind::MissingDatum);
/// assert!(refusal.to_string().contains("psig or psia"));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The dotted key, or an empty text when the file as a whole is refused.
    pub key: String,
    /// The value as it was written, or an empty text when there is none.
    pub value: String,
    /// What is wrong, as the rest of the library says it.
    pub error: Error,
    /// What to write instead; empty when the error already says it.
    pub advice: String,
}

/// A refusal on its way out: one pointer, which a hundred places hand on.
pub(super) type Refused = Box<Refusal>;

impl Refusal {
    #[inline(never)]
    pub(super) fn new(key: &str, value: &str, error: Error, advice: &str) -> Refused {
        Box::new(Self {
            key: key.into(),
            value: value.into(),
            error,
            advice: advice.into(),
        })
    }

    pub(super) fn syntax(message: &str) -> Refused {
        Self::new("", "", Error::of(ErrorKind::Syntax, Quantity::Name), message)
    }
}

/// What the library refuses once everything was read; no key alone is to blame.
impl From<Error> for Refusal {
    fn from(error: Error) -> Self {
        Self {
            key: String::new(),
            value: String::new(),
            error,
            advice: String::new(),
        }
    }
}

impl core::error::Error for Refusal {}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.key.is_empty() {
            f.write_str(&self.key)?;
            if !self.value.is_empty() {
                write!(f, " = {}", self.value)?;
            }
            f.write_str(": ")?;
        }
        write!(f, "{}", self.error)?;
        if !self.advice.is_empty() {
            write!(f, "; {}", self.advice)?;
        }
        Ok(())
    }
}
