//! Any text, length and code at the functions of the C door that take text: no panic is caught there, and what is written ends
//! within its buffer.

use super::door::*;
use core::ffi::{CStr, c_char};
use core::ptr::{null, null_mut};

/// The statuses of a caught panic, and of a null pointer.
const INTERNAL: u32 = 1004;
const NULL_POINTER: u32 = 1001;

/// Between two texts of one input.
const APART: u8 = 0x1f;

/// Panics where the door breaks its promise. The first five bytes are the function, what is null, the capacity of the buffer (two)
/// and a code; the others are its one or two texts.
pub fn holds(input: &[u8]) {
    let [function, nulls, low, high, code, texts @ ..] = input else {
        return;
    };
    let mut texts = texts.split(|byte| *byte == APART).map(ended);
    let mut next = || texts.next().unwrap_or_else(|| ended(&[]));
    let (one, other) = (next(), next());
    let given = |text: &[u8], bit: u8| {
        if nulls & bit == 0 {
            text.as_ptr().cast::<c_char>()
        } else {
            null()
        }
    };
    let (one, other) = (given(&one, 1), given(&other, 2));
    let code = u32::from(*code);
    let capacity = usize::from(u16::from_le_bytes([*low, *high]));
    let mut page = Page::new(capacity, nulls & 4 != 0);
    let (buffer, length, none) = (page.buffer(), &raw mut page.length, null_mut());
    let status = match function % 11 {
        0 => coldloop_diagnose(one, buffer, capacity, length, none),
        1 => coldloop_report(one, buffer, capacity, length, none),
        2 => coldloop_plan(one, buffer, capacity, length, none),
        3 => coldloop_prove(one, buffer, capacity, length, none),
        4 => coldloop_simulate(one, buffer, capacity, length, none),
        5 => coldloop_catalogue(one, buffer, capacity, length, none),
        6 => coldloop_record(one, other, code, buffer, capacity, length, none),
        7 => coldloop_learn(one, other, buffer, capacity, length, none),
        8 => coldloop_evaluate(one, other, code, buffer, capacity, length, none),
        9 => return pressure(one),
        _ => return quantity(one, code),
    };
    assert_ne!(status, INTERNAL);
    assert!(!one.is_null() || status == NULL_POINTER, "{status}");
    page.ends();
}

/// Ended by a zero byte, as C gives a text.
fn ended(text: &[u8]) -> Vec<u8> {
    let mut text: Vec<u8> = text.iter().copied().take_while(|byte| *byte != 0).collect();
    text.push(0);
    text
}

/// A buffer of exactly its capacity, or none.
struct Page {
    bytes: Option<Vec<u8>>,
    length: usize,
}

impl Page {
    fn new(capacity: usize, none: bool) -> Self {
        Self {
            bytes: (!none).then(|| vec![0xa5; capacity]),
            length: usize::MAX,
        }
    }

    fn buffer(&mut self) -> *mut c_char {
        self.bytes
            .as_mut()
            .map_or(null_mut(), |bytes| bytes.as_mut_ptr().cast())
    }

    /// What was written ends with a zero byte, is UTF-8, and is the whole text where that fits.
    fn ends(&self) {
        assert_ne!(self.length, usize::MAX, "the length is told");
        let Some(bytes) = self.bytes.as_deref().filter(|bytes| !bytes.is_empty()) else {
            return;
        };
        let written = CStr::from_bytes_until_nul(bytes).map(CStr::to_bytes);
        let written = written.unwrap_or_else(|_| panic!("no zero byte in {} bytes", bytes.len()));
        assert!(core::str::from_utf8(written).is_ok());
        // Cut after a whole character, of four bytes at most.
        let fits = self.length < bytes.len();
        assert!(if fits {
            written.len() == self.length
        } else {
            written.len() + 4 >= bytes.len()
        });
    }
}

/// A pressure has a datum and is finite, or neither.
fn pressure(text: *const c_char) {
    let (mut datum, mut pa) = (9, 0.0);
    let status = coldloop_read_pressure(text, &raw mut datum, &raw mut pa, null_mut());
    assert_ne!(status, INTERNAL);
    let told = datum == COLDLOOP_DATUM_ABSOLUTE || datum == COLDLOOP_DATUM_GAUGE;
    assert!(
        told == (status == 0) && pa.is_finite() == (status == 0),
        "{status} {datum} {pa}"
    );
}

fn quantity(text: *const c_char, code: u32) {
    let mut value = 0.0;
    let status = coldloop_read_quantity(text, code, &raw mut value, null_mut());
    assert_ne!(status, INTERNAL);
    assert_eq!(value.is_finite(), status == 0, "{status} {value}");
}
