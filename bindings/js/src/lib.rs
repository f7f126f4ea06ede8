//! The library as a WebAssembly module: text in, text out.
//!
//! WebAssembly passes numbers only. The caller asks for room by [`reserve`], writes two texts there as UTF-8, one behind the
//! other, and calls [`call`] with the number of a function and the lengths of both; the answer is then at
//! [`answer`], [`answer_length`] bytes long. `package/coldloop.js` does this for every program in JavaScript. A module has one
//! thread, so that its two buffers belong to one call at a time.

mod functions;
mod session;

use functions::FUNCTIONS;
use std::cell::RefCell;

thread_local! {
    static GIVEN: RefCell<Vec<u8>> = const { RefCell::new(Vec::new()) };
    static ANSWER: RefCell<String> = const { RefCell::new(String::new()) };
}

/// The answer is what was asked for.
const ANSWERED: u32 = 0;
/// The answer is a refusal, as JSON.
const REFUSED: u32 = 1;
/// The call was wrong, and the answer is a sentence: an unknown function, lengths beyond what was reserved, text that is not UTF-8.
const WRONG_CALL: u32 = 2;

/// Room for the texts of a call, `bytes` long; it stays where it is until the next call of this function.
#[unsafe(no_mangle)]
pub extern "C" fn reserve(bytes: usize) -> *mut u8 {
    GIVEN.with_borrow_mut(|given| {
        given.clear();
        given.resize(bytes, 0);
        given.as_mut_ptr()
    })
}

/// Calls a function by its number, with two texts in the reserved room, and returns the kind of the answer.
#[unsafe(no_mangle)]
pub extern "C" fn call(function: usize, first: usize, second: usize) -> u32 {
    let (status, answer) = GIVEN.with_borrow(|given| answered(given, function, first, second));
    ANSWER.set(answer);
    status
}

/// Address of the answer of the last call.
#[unsafe(no_mangle)]
pub extern "C" fn answer() -> *const u8 {
    ANSWER.with_borrow(|answer| answer.as_ptr())
}

/// How many bytes the answer of the last call has.
#[unsafe(no_mangle)]
pub extern "C" fn answer_length() -> usize {
    ANSWER.with_borrow(String::len)
}

fn answered(given: &[u8], function: usize, first: usize, second: usize) -> (u32, String) {
    let Some((_, function)) = FUNCTIONS.get(function) else {
        return (WRONG_CALL, format!("there is no function {function}"));
    };
    let texts = first
        .checked_add(second)
        .and_then(|end| given.get(..end))
        .and_then(|bytes| std::str::from_utf8(bytes).ok())
        .and_then(|text| text.split_at_checked(first));
    let Some((first, second)) = texts else {
        return (
            WRONG_CALL,
            "the texts are not UTF-8, or longer than what was reserved".into(),
        );
    };
    match function(first, second) {
        Ok(answer) => (ANSWERED, answer),
        Err(refusal) => (REFUSED, refusal),
    }
}
