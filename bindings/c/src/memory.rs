//! The only code that reads and writes the caller's memory.
//!
//! Every argument is copied before anything is written, and no reference to the caller's memory lives beyond the copy, so
//! that an answer may overwrite what it was asked for. Nothing has to be aligned.

use crate::boundary::{Failure, Growing};
use crate::names::ColdloopStatus;
use core::ffi::{CStr, c_char, c_void};
use core::mem::{needs_drop, offset_of, size_of};

/// A copy of the value behind the pointer; `None` for null.
pub(crate) fn read<T: Copy>(at: *const T) -> Option<T> {
    // SAFETY: not null, and the header asks for an initialised T there.
    (!at.is_null()).then(|| unsafe { at.read_unaligned() })
}

/// Writes a value, unless the pointer is null.
pub(crate) fn write<T: Copy>(at: *mut T, value: T) {
    if !at.is_null() {
        // SAFETY: not null, and the header asks for room for a T there.
        unsafe { at.write_unaligned(value) };
    }
}

/// The size that a struct says it has, which is its first field.
pub(crate) fn size_of_record<T: Growing>(record: *const T) -> Option<usize> {
    read(record.cast::<usize>())
}

/// A copy of a struct that the caller filled in, or why it is refused.
pub(crate) fn given<T: Growing>(record: *const T) -> Result<T, Failure> {
    match size_of_record(record) {
        None => Err(Failure::Door(ColdloopStatus::NullPointer)),
        Some(size) if size < size_of::<T>() => Err(Failure::Door(ColdloopStatus::StructSize)),
        Some(_) => read(record).ok_or(Failure::Door(ColdloopStatus::NullPointer)),
    }
}

/// A copy of a text from C: not null, ended by a zero byte, UTF-8.
pub(crate) fn text(text: *const c_char) -> Result<String, Failure> {
    if text.is_null() {
        return Err(Failure::Door(ColdloopStatus::NullPointer));
    }
    // SAFETY: not null, and the header asks for a text that ends with a zero byte.
    let text = unsafe { CStr::from_ptr(text) }.to_bytes().to_vec();
    String::from_utf8(text).map_err(|_| Failure::Door(ColdloopStatus::NotUtf8))
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

/// A value that lives in memory of the caller from call to call.
pub(crate) trait Kept: Sized {
    /// Distinguishes memory that holds such a value from other memory.
    const MARK: u64;
}

/// The value in the memory of the caller: the mark of its type, then its bytes.
#[repr(C)]
struct Marked<T> {
    mark: u64,
    value: T,
}

/// Bytes that such a value takes.
pub(crate) const fn room<T: Kept>() -> usize {
    size_of::<Marked<T>>()
}

/// Refuses memory that is null or too small for such a value.
pub(crate) fn has_room<T: Kept>(memory: *const c_void, size: usize) -> Result<(), Failure> {
    if memory.is_null() {
        return Err(Failure::Door(ColdloopStatus::NullPointer));
    }
    if size < room::<T>() {
        return Err(Failure::Door(ColdloopStatus::StructSize));
    }
    Ok(())
}

/// Writes a value with its mark.
pub(crate) fn keep<T: Kept>(memory: *mut c_void, value: &T) {
    const { assert!(!needs_drop::<T>(), "copied as bits, and never dropped") };
    write(memory.cast(), T::MARK);
    // SAFETY: the header asks for enough room, which `has_room` or the mark has confirmed; a value that needs no drop may
    // be there twice.
    unsafe {
        let to = memory.byte_add(offset_of!(Marked<T>, value)).cast::<u8>();
        core::ptr::copy_nonoverlapping(core::ptr::from_ref(value).cast::<u8>(), to, size_of::<T>());
    }
}

/// A copy of the value that is kept there.
pub(crate) fn kept<T: Kept>(memory: *const c_void) -> Result<Box<T>, Failure> {
    let mark = read(memory.cast::<u64>()).ok_or(Failure::Door(ColdloopStatus::NullPointer))?;
    if mark != T::MARK {
        return Err(Failure::Door(ColdloopStatus::NotInitialised));
    }
    let mut copy = Box::<T>::new_uninit();
    // SAFETY: the mark says that `keep` has written a value there, and the header asks to leave it alone.
    unsafe {
        let from = memory.byte_add(offset_of!(Marked<T>, value)).cast::<u8>();
        core::ptr::copy_nonoverlapping(from, copy.as_mut_ptr().cast::<u8>(), size_of::<T>());
        Ok(copy.assume_init())
    }
}

/// Writes as many codes as fit; none into a null buffer.
pub(crate) fn write_codes(all: impl Iterator<Item = u32>, buffer: *mut u32, capacity: usize) {
    let mut place = Answers::new(buffer, size_of::<u32>().cast_signed());
    for code in all.take(if buffer.is_null() { 0 } else { capacity }) {
        place.put(code);
    }
}

/// The rows of an array that the caller keeps, a stride apart: where the next one is read.
#[derive(Clone, Copy)]
pub(crate) struct Column {
    at: *const f64,
    stride: isize,
}

impl Column {
    pub(crate) const fn new(at: *const f64, stride: isize) -> Self {
        Self { at, stride }
    }

    pub(crate) const fn is_null(&self) -> bool {
        self.at.is_null()
    }

    /// The number of this row; moves on to the next row.
    pub(crate) fn take(&mut self) -> f64 {
        // SAFETY: the caller has asked for no more rows than the header asks to be there.
        let number = unsafe { self.at.read_unaligned() };
        self.at = self.at.wrapping_byte_offset(self.stride);
        number
    }
}

/// Codes one after the other: where the next one is read.
pub(crate) struct Codes(*const u32);

impl Codes {
    pub(crate) const fn new(at: *const u32) -> Self {
        Self(at)
    }

    pub(crate) const fn is_null(&self) -> bool {
        self.0.is_null()
    }

    pub(crate) fn take(&mut self) -> u32 {
        // SAFETY: as for a column.
        let code = unsafe { self.0.read_unaligned() };
        self.0 = self.0.wrapping_add(1);
        code
    }
}

/// The same for answers: where the next one is written.
#[derive(Clone, Copy)]
pub(crate) struct Answers<T> {
    at: *mut T,
    stride: isize,
}

impl<T: Copy> Answers<T> {
    pub(crate) const fn new(at: *mut T, stride: isize) -> Self {
        Self { at, stride }
    }

    pub(crate) const fn is_null(&self) -> bool {
        self.at.is_null()
    }

    /// Writes the answer of this row; moves on to the next row.
    pub(crate) fn put(&mut self, answer: T) {
        // SAFETY: as for a column.
        unsafe { self.at.write_unaligned(answer) };
        self.at = self.at.wrapping_byte_offset(self.stride);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::mem::MaybeUninit;
    use core::ptr::null;

    #[derive(Debug, PartialEq)]
    struct Held(u8, Option<f64>);

    impl Kept for Held {
        const MARK: u64 = 7;
    }

    fn status<T>(outcome: Result<T, Failure>) -> u32 {
        match outcome {
            Ok(_) => 0,
            Err(Failure::Library(error)) => error.kind.code(),
            Err(Failure::Door(status)) => status.code(),
        }
    }

    #[test]
    fn what_is_kept_needs_no_alignment_and_may_be_moved() {
        let (mut one, mut other) = ([MaybeUninit::<u8>::uninit(); 64], [MaybeUninit::<u8>::uninit(); 64]);
        let memory: *mut c_void = one.as_mut_ptr().wrapping_add(3).cast();
        assert!(room::<Held>() < 60);
        keep(memory, &Held(5, Some(2.5)));
        let moved: *mut c_void = other.as_mut_ptr().wrapping_add(1).cast();
        // SAFETY: within both.
        unsafe { core::ptr::copy_nonoverlapping(memory.cast::<MaybeUninit<u8>>(), moved.cast(), room::<Held>()) };
        keep(memory, &Held(6, None));
        assert!(matches!(kept::<Held>(moved), Ok(held) if *held == Held(5, Some(2.5))));
        assert!(matches!(kept::<Held>(memory), Ok(held) if *held == Held(6, None)));
    }

    #[test]
    fn memory_without_a_value_is_refused() {
        let memory = [0_u64; 8];
        let at: *const c_void = memory.as_ptr().cast();
        assert_eq!(status(kept::<Held>(at)), ColdloopStatus::NotInitialised.code());
        assert_eq!(status(kept::<Held>(null())), ColdloopStatus::NullPointer.code());
        assert_eq!(status(has_room::<Held>(null(), 64)), ColdloopStatus::NullPointer.code());
        assert_eq!(
            status(has_room::<Held>(at, room::<Held>() - 1)),
            ColdloopStatus::StructSize.code()
        );
        assert_eq!(status(has_room::<Held>(at, room::<Held>())), 0);
    }

    #[test]
    fn text_is_cut_after_a_whole_character() {
        let mut buffer = [1_u8; 8];
        assert_eq!(write_text("74 °F", buffer.as_mut_ptr().cast(), 5), 6);
        assert_eq!(&buffer[..5], b"74 \0\x01");
    }
}
