//! The one panic boundary, and the only reading and writing of raw pointers.

use crate::error::ColdloopError;
use crate::names::ColdloopStatus;
use coldloop::{Error, ErrorKind, Quantity, Refrigerant};
use core::ffi::{CStr, c_char};
use core::mem::{MaybeUninit, size_of};
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

/// A place for one number; null is refused.
pub(crate) type Out<'a, T> = Option<&'a mut MaybeUninit<T>>;

/// A place for the details of a failure; null means that nobody asks.
pub(crate) type Details<'a> = Option<&'a mut ColdloopError>;

/// Runs `body`, writes its number to `out` (NaN on failure) and returns the status.
pub(crate) fn number(out: Out<'_, f64>, details: Details<'_>, body: impl FnOnce() -> Result<f64, Failure>) -> u32 {
    let Some(out) = out else {
        return answer(details, || Err(Failure::Door(ColdloopStatus::NullPointer)));
    };
    out.write(f64::NAN);
    answer(details, || {
        out.write(body()?);
        Ok(())
    })
}

/// Runs `body`, fills in `details` and returns the status; a panic becomes `Internal`.
pub(crate) fn answer(details: Details<'_>, body: impl FnOnce() -> Result<(), Failure>) -> u32 {
    if details
        .as_ref()
        .is_some_and(|details| details.size < size_of::<ColdloopError>())
    {
        return ColdloopStatus::StructSize.code();
    }
    let outcome = catch_unwind(AssertUnwindSafe(body)).unwrap_or(Err(Failure::Door(ColdloopStatus::Internal)));
    let report = match outcome {
        Ok(()) => ColdloopError::none(),
        Err(Failure::Library(error)) => ColdloopError::from_library(error),
        Err(Failure::Door(status)) => ColdloopError::from_door(status),
    };
    if let Some(details) = details {
        *details = ColdloopError {
            size: details.size,
            ..report
        };
    }
    report.status
}

/// Text from C: not null, ended by a zero byte, UTF-8.
pub(crate) fn text<'a>(text: *const c_char) -> Result<&'a str, Failure> {
    if text.is_null() {
        return Err(Failure::Door(ColdloopStatus::NullPointer));
    }
    // SAFETY: not null, and the header asks for a text that ends with a zero byte and lives through the call.
    let text = unsafe { CStr::from_ptr(text) };
    text.to_str().map_err(|_| Failure::Door(ColdloopStatus::NotUtf8))
}

/// Writes as much of `text` as fits with its zero byte, whole characters only, and returns the length of all of it.
pub(crate) fn write_text(text: &str, buffer: *mut c_char, capacity: usize) -> usize {
    if buffer.is_null() || capacity == 0 {
        return text.len();
    }
    let mut end = text.len().min(capacity - 1);
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    // SAFETY: the header asks for `capacity` writable bytes at `buffer`; end + 1 <= capacity.
    unsafe {
        core::ptr::copy_nonoverlapping(text.as_ptr(), buffer.cast::<u8>(), end);
        buffer.add(end).write(0);
    }
    text.len()
}

/// The refrigerant of a code.
pub(crate) fn known(refrigerant: u32) -> Result<Refrigerant, Error> {
    Refrigerant::from_code(refrigerant).ok_or(Error {
        value: f64::from(refrigerant),
        ..Error::of(ErrorKind::UnknownName, Quantity::Name)
    })
}

/// Calls `each` on `count` numbers that stand `stride` bytes apart at `input`, and writes the results likewise;
/// returns how many failed, and the first failure. A number that fails leaves NaN.
pub(crate) fn map(
    input: (*const f64, usize),
    output: (*mut f64, usize),
    count: usize,
    each: impl Fn(f64) -> Result<f64, Error>,
) -> Result<(usize, Option<Error>), Failure> {
    if count > 0 && (input.0.is_null() || output.0.is_null()) {
        return Err(Failure::Door(ColdloopStatus::NullPointer));
    }
    let (mut failed, mut first) = (0, None);
    for index in 0..count {
        // SAFETY: the header asks for `count` numbers at this stride in both arrays; any alignment is allowed, and
        // the arrays may be one and the same, since each number is read before its result is written.
        let value = unsafe { input.0.byte_add(index * input.1).read_unaligned() };
        let result = each(value).unwrap_or_else(|error| {
            failed += 1;
            first = first.or(Some(error));
            f64::NAN
        });
        // SAFETY: as above.
        unsafe { output.0.byte_add(index * output.1).write_unaligned(result) };
    }
    Ok((failed, first))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_becomes_a_status_and_leaves_nan() {
        let mut out = MaybeUninit::new(1.0);
        let mut details = ColdloopError::none();
        let status = number(Some(&mut out), Some(&mut details), || panic!("a defect"));
        assert_eq!(status, ColdloopStatus::Internal.code());
        assert_eq!(details.status, status);
        // SAFETY: initialised above.
        assert!(unsafe { out.assume_init() }.is_nan());
    }

    #[test]
    fn text_is_cut_after_a_whole_character() {
        let mut buffer = [1_u8; 8];
        assert_eq!(write_text("74 °F", buffer.as_mut_ptr().cast(), 5), 6);
        assert_eq!(&buffer[..5], b"74 \0\x01");
    }
}
