//! The one panic boundary: an answer is worked out first, then the caller's memory is written.

use crate::error::ColdloopError;
use crate::memory::{size_of_record, write, write_text};
use crate::names::ColdloopStatus;
use coldloop::{Error, ErrorKind, Quantity, Refrigerant};
use core::ffi::c_char;
use core::mem::size_of;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Why a function has no answer.
pub(crate) enum Failure {
    /// The library refused.
    Library(Error),
    /// The C door refused.
    Door(ColdloopStatus),
}

impl From<Error> for Failure {
    fn from(error: Error) -> Self {
        Failure::Library(error)
    }
}

/// A struct of the header that can grow: its first field is its size, as the caller set it.
pub(crate) trait Growing: Copy {}

/// A struct of the header that holds an answer.
pub(crate) trait Record: Growing {
    /// All figures NaN and all codes 0.
    const BLANK: Self;

    /// The same with this size.
    fn sized(self, size: usize) -> Self;
}

/// Declares that a struct starts with its size, and what it looks like without an answer.
macro_rules! sized {
    ($name:ident, $blank:expr) => {
        impl $crate::boundary::Growing for $name {}

        impl $crate::boundary::Record for $name {
            const BLANK: Self = $blank;

            fn sized(self, size: usize) -> Self {
                Self { size, ..self }
            }
        }
    };
}
pub(crate) use sized;

/// Runs `body`, writes its number to `out` (NaN on failure) and returns the status.
pub(crate) fn number(out: *mut f64, details: *mut ColdloopError, body: impl FnOnce() -> Result<f64, Failure>) -> u32 {
    value(out, f64::NAN, details, body)
}

/// Runs `body`, writes its code to `out` (0 on failure) and returns the status.
pub(crate) fn code(out: *mut u32, details: *mut ColdloopError, body: impl FnOnce() -> Result<u32, Failure>) -> u32 {
    value(out, 0, details, body)
}

/// Runs `body`, writes its value to `out` (`blank` on failure) and returns the status.
pub(crate) fn value<T: Copy>(
    out: *mut T,
    blank: T,
    details: *mut ColdloopError,
    body: impl FnOnce() -> Result<T, Failure>,
) -> u32 {
    let outcome = outcome(details, || match out.is_null() {
        true => Err(Failure::Door(ColdloopStatus::NullPointer)),
        false => body(),
    });
    let (value, report) = match outcome {
        Ok(value) => (value, Ok(())),
        Err(failure) => (blank, Err(failure)),
    };
    write(out, value);
    report_to(details, report)
}

/// Runs `body`, writes its struct to `out` (blank on failure) and returns the status.
pub(crate) fn record<T: Record>(
    out: *mut T,
    details: *mut ColdloopError,
    body: impl FnOnce() -> Result<T, Failure>,
) -> u32 {
    match size_of_record(out) {
        Some(size) if size < size_of::<T>() => answer(details, || Err(Failure::Door(ColdloopStatus::StructSize))),
        Some(size) => value(out, T::BLANK.sized(size), details, || Ok(body()?.sized(size))),
        None => answer(details, || Err(Failure::Door(ColdloopStatus::NullPointer))),
    }
}

/// Runs `body`, fills in `details` and returns the status.
pub(crate) fn answer(details: *mut ColdloopError, body: impl FnOnce() -> Result<(), Failure>) -> u32 {
    let outcome = outcome(details, body);
    report_to(details, outcome)
}

/// Runs `body` unless the struct for the details is too small; a panic becomes `Internal`.
fn outcome<T>(details: *mut ColdloopError, body: impl FnOnce() -> Result<T, Failure>) -> Result<T, Failure> {
    if size_of_record(details).is_some_and(|size| size < size_of::<ColdloopError>()) {
        return Err(Failure::Door(ColdloopStatus::StructSize));
    }
    catch_unwind(AssertUnwindSafe(body)).unwrap_or(Err(Failure::Door(ColdloopStatus::Internal)))
}

/// Fills in the details if their struct is large enough, and returns the status.
fn report_to(details: *mut ColdloopError, outcome: Result<(), Failure>) -> u32 {
    let report = match outcome {
        Ok(()) => ColdloopError::BLANK,
        Err(Failure::Library(error)) => ColdloopError::from_library(error),
        Err(Failure::Door(status)) => ColdloopError::from_door(status),
    };
    if let Some(size) = size_of_record(details).filter(|size| *size >= size_of::<ColdloopError>()) {
        write(details, report.sized(size));
    }
    report.status
}

/// Where a text goes: buffer, capacity, and a place for the length of all of it.
pub(crate) struct Page {
    buffer: *mut c_char,
    capacity: usize,
    length: *mut usize,
}

impl Page {
    pub(crate) const fn new(buffer: *mut c_char, capacity: usize, length: *mut usize) -> Self {
        Self {
            buffer,
            capacity,
            length,
        }
    }
}

/// Runs `body`, writes the text that it gives, a refusal included, and returns the status.
pub(crate) fn page(
    page: Page,
    details: *mut ColdloopError,
    body: impl FnOnce() -> Result<Result<String, (Error, String)>, Failure>,
) -> u32 {
    let mut written = String::new();
    let status = answer(details, || {
        let outcome = body()?;
        let refused = outcome.as_ref().err().map(|(error, _)| *error);
        written = outcome.unwrap_or_else(|(_, refusal)| refusal);
        refused.map_or(Ok(()), |error| Err(Failure::Library(error)))
    });
    let whole = write_text(&written, page.buffer, page.capacity);
    write(page.length, whole);
    status
}

/// The member of a vocabulary that a code stands for.
pub(crate) fn member<T>(code: u32, from_code: impl Fn(u32) -> Option<T>) -> Result<T, Error> {
    from_code(code).ok_or(Error {
        value: f64::from(code),
        ..Error::of(ErrorKind::UnknownName, Quantity::Name)
    })
}

/// The refrigerant of a code.
pub(crate) fn known(refrigerant: u32) -> Result<Refrigerant, Error> {
    member(refrigerant, Refrigerant::from_code)
}

/// The member that was found, or the failure for an unknown code or id.
pub(crate) fn named<T>(found: Option<T>) -> Result<T, Failure> {
    found.ok_or(Failure::Library(Error::of(ErrorKind::UnknownName, Quantity::Name)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_becomes_a_status_and_leaves_nan() {
        let mut out = 1.0;
        let mut details = ColdloopError::BLANK.sized(size_of::<ColdloopError>());
        let status = number(&raw mut out, &raw mut details, || panic!("a defect"));
        assert_eq!(status, ColdloopStatus::Internal.code());
        assert_eq!(details.status, status);
        assert!(out.is_nan());
    }
}
