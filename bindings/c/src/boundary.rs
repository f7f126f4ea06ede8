//! The one panic boundary, and the only reading and writing of raw pointers.

use crate::error::ColdloopError;
use crate::names::ColdloopStatus;
use coldloop::saturation::Unanswered;
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

/// A struct of the header: its first field is its size, as the caller set it.
pub(crate) trait Record: Copy {
    /// All figures NaN and all codes 0.
    const BLANK: Self;

    /// The same with this size.
    fn sized(self, size: usize) -> Self;
}

/// Declares that a struct starts with its size, and what it looks like without an answer.
macro_rules! sized {
    ($name:ident, $blank:expr) => {
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
pub(crate) fn number(out: Out<'_, f64>, details: Details<'_>, body: impl FnOnce() -> Result<f64, Failure>) -> u32 {
    value(out, f64::NAN, details, body)
}

/// Runs `body`, writes its code to `out` (0 on failure) and returns the status.
pub(crate) fn code(out: Out<'_, u32>, details: Details<'_>, body: impl FnOnce() -> Result<u32, Failure>) -> u32 {
    value(out, 0, details, body)
}

/// Runs `body`, writes its value to `out` (`blank` on failure) and returns the status.
pub(crate) fn value<T>(
    out: Out<'_, T>,
    blank: T,
    details: Details<'_>,
    body: impl FnOnce() -> Result<T, Failure>,
) -> u32 {
    let Some(out) = out else {
        return answer(details, || Err(Failure::Door(ColdloopStatus::NullPointer)));
    };
    out.write(blank);
    answer(details, || {
        out.write(body()?);
        Ok(())
    })
}

/// Runs `body`, writes its struct to `out` (blank on failure) and returns the status.
pub(crate) fn record<T: Record>(
    out: Out<'_, T>,
    details: Details<'_>,
    body: impl FnOnce() -> Result<T, Failure>,
) -> u32 {
    let Some(out) = out else {
        return answer(details, || Err(Failure::Door(ColdloopStatus::NullPointer)));
    };
    // SAFETY: `out` has room for a T, whose first field is its size, which the header asks to be set.
    let size = unsafe { out.as_ptr().cast::<usize>().read() };
    if size < size_of::<T>() {
        return answer(details, || Err(Failure::Door(ColdloopStatus::StructSize)));
    }
    out.write(T::BLANK.sized(size));
    answer(details, || {
        out.write(body()?.sized(size));
        Ok(())
    })
}

/// A struct that the caller filled in, or why it is not looked at.
pub(crate) fn given<T: Copy>(record: Option<&T>, size: impl Fn(&T) -> usize) -> Result<T, Failure> {
    let record = record.ok_or(Failure::Door(ColdloopStatus::NullPointer))?;
    if size(record) < size_of::<T>() {
        return Err(Failure::Door(ColdloopStatus::StructSize));
    }
    Ok(*record)
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

/// Where a text goes: buffer, capacity, and a place for the length of all of it.
pub(crate) struct Page<'a> {
    buffer: *mut c_char,
    capacity: usize,
    length: Out<'a, usize>,
}

impl<'a> Page<'a> {
    pub(crate) const fn new(buffer: *mut c_char, capacity: usize, length: Out<'a, usize>) -> Self {
        Self {
            buffer,
            capacity,
            length,
        }
    }
}

/// Runs `body`, writes the text that it gives, a refusal included, and returns the status.
pub(crate) fn page(
    page: Page<'_>,
    details: Details<'_>,
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
    if let Some(length) = page.length {
        length.write(whole);
    }
    status
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

/// Writes as many codes as fit; a null buffer takes none.
pub(crate) fn write_codes(all: impl Iterator<Item = u32>, buffer: *mut u32, capacity: usize) {
    let capacity = if buffer.is_null() { 0 } else { capacity };
    for (index, code) in all.enumerate().take(capacity) {
        // SAFETY: the header asks for `capacity` numbers at `buffer`; index < capacity.
        unsafe { buffer.add(index).write_unaligned(code) };
    }
}

/// The size that the first of `count` structs says it has; that of T where there is none.
pub(crate) fn first_size<T: Record>(records: Answers<T>, count: usize) -> usize {
    if count == 0 || records.at.is_null() {
        return size_of::<T>();
    }
    // SAFETY: the header asks for `count` structs there, the size of the first set; it is their first field.
    unsafe { records.at.cast::<usize>().read_unaligned() }
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

/// What a code or an id that is none is answered with.
pub(crate) fn named<T>(found: Option<T>) -> Result<T, Failure> {
    found.ok_or(Failure::Library(Error::of(ErrorKind::UnknownName, Quantity::Name)))
}

/// The rows of an array without an answer: how many, and why the first.
#[derive(Default)]
pub(crate) struct Tally {
    count: usize,
    first: Option<Error>,
}

impl Tally {
    fn add(&mut self, count: usize, error: Error) {
        self.count += count;
        self.first = self.first.or(Some(error));
    }
}

/// Numbers of an array that the caller keeps, a stride apart.
#[derive(Clone, Copy)]
pub(crate) struct Column {
    at: *const f64,
    stride: usize,
}

impl Column {
    pub(crate) const fn new(at: *const f64, stride: usize) -> Self {
        Self { at, stride }
    }
}

/// Answers of an array that the caller keeps, a stride apart.
#[derive(Clone, Copy)]
pub(crate) struct Answers<T> {
    at: *mut T,
    stride: usize,
}

impl<T> Answers<T> {
    pub(crate) const fn new(at: *mut T, stride: usize) -> Self {
        Self { at, stride }
    }
}

/// Calls `each` on the numbers of every row and writes its answer, or `blank`; then `failed` and the status, which is
/// that of the first row without an answer.
pub(crate) fn rows<const N: usize, T: Copy>(
    count: usize,
    inputs: [Column; N],
    output: Answers<T>,
    failure: (Out<'_, usize>, Details<'_>),
    blank: T,
    each: impl Fn([f64; N]) -> Result<T, Error>,
) -> u32 {
    let null = output.at.is_null() || inputs.iter().any(|input| input.at.is_null());
    tallied(count, null, failure, |tally| {
        for index in 0..count {
            // SAFETY: the header asks for `count` numbers at this stride in every array; any alignment is allowed,
            // and an output may be an input, since a row is read before its answer is written.
            let row = inputs.map(|input| unsafe { input.at.byte_add(index * input.stride).read_unaligned() });
            let result = each(row).unwrap_or_else(|error| {
                tally.add(1, error);
                blank
            });
            // SAFETY: as above.
            unsafe { output.at.byte_add(index * output.stride).write_unaligned(result) };
        }
    })
}

/// A function of the library from an array to an array of the same length.
pub(crate) type Kernel = fn(Refrigerant, &[f64], &mut [f64]) -> Result<(), Unanswered>;

/// As `rows`, for one column and a function that takes arrays: the numbers go through it in blocks.
pub(crate) fn blocks(
    kernel: Kernel,
    refrigerant: u32,
    count: usize,
    (input, output): (Column, Answers<f64>),
    failure: (Out<'_, usize>, Details<'_>),
) -> u32 {
    const BLOCK: usize = 256;
    let null = output.at.is_null() || input.at.is_null();
    tallied(count, null, failure, |tally| {
        let (mut from, mut to) = ([f64::NAN; BLOCK], [f64::NAN; BLOCK]);
        let refrigerant = known(refrigerant);
        for start in (0..count).step_by(BLOCK) {
            let length = BLOCK.min(count - start);
            let (from, to) = (&mut from[..length], &mut to[..length]);
            for (index, x) in from.iter_mut().enumerate() {
                // SAFETY: as in `rows`.
                *x = unsafe { input.at.byte_add((start + index) * input.stride).read_unaligned() };
            }
            match refrigerant {
                Ok(refrigerant) => {
                    if let Err(unanswered) = kernel(refrigerant, from, to) {
                        tally.add(unanswered.count, unanswered.error);
                    }
                }
                Err(error) => tally.add(length, error),
            }
            for (index, y) in to.iter().enumerate() {
                // SAFETY: as in `rows`.
                unsafe { output.at.byte_add((start + index) * output.stride).write_unaligned(*y) };
            }
        }
    })
}

fn tallied(
    count: usize,
    null: bool,
    (failed, details): (Out<'_, usize>, Details<'_>),
    body: impl FnOnce(&mut Tally),
) -> u32 {
    let mut tally = Tally::default();
    let status = answer(details, || {
        if count > 0 && null {
            return Err(Failure::Door(ColdloopStatus::NullPointer));
        }
        body(&mut tally);
        tally.first.map_or(Ok(()), |error| Err(Failure::Library(error)))
    });
    if let Some(failed) = failed {
        failed.write(tally.count);
    }
    status
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
