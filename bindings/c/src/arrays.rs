//! The array forms: rows of numbers, a stride apart.
//!
//! A row is read before its answer is written, so that an answer may overwrite its own row. A stride is the number of bytes
//! from each row to the next one; a negative stride goes backwards.

use crate::boundary::{Failure, answer, known};
use crate::error::ColdloopError;
use crate::memory::{Answers, Column, write};
use crate::names::ColdloopStatus;
use coldloop::saturation::Unanswered;
use coldloop::{Error, Refrigerant};

/// The rows of an array without an answer: how many, and why the first.
#[derive(Default)]
struct Tally {
    count: usize,
    first: Option<Error>,
}

impl Tally {
    fn add(&mut self, count: usize, error: Error) {
        self.count += count;
        self.first = self.first.or(Some(error));
    }
}

/// Calls `each` on the numbers of every row and writes its answer, or `blank`; then `failed` and the status, which is
/// that of the first row without an answer.
pub(crate) fn rows<const N: usize, T: Copy>(
    count: usize,
    mut inputs: [Column; N],
    mut output: Answers<T>,
    failure: (*mut usize, *mut ColdloopError),
    blank: T,
    each: impl Fn([f64; N]) -> Result<T, Error>,
) -> u32 {
    let null = output.is_null() || inputs.iter().any(Column::is_null);
    tallied(count, null, failure, |tally| {
        for _ in 0..count {
            let row = inputs.each_mut().map(Column::take);
            output.put(each(row).unwrap_or_else(|error| {
                tally.add(1, error);
                blank
            }));
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
    (mut input, mut output): (Column, Answers<f64>),
    failure: (*mut usize, *mut ColdloopError),
) -> u32 {
    const BLOCK: usize = 256;
    let null = output.is_null() || input.is_null();
    tallied(count, null, failure, |tally| {
        let (mut from, mut to) = ([f64::NAN; BLOCK], [f64::NAN; BLOCK]);
        let refrigerant = known(refrigerant);
        for start in (0..count).step_by(BLOCK) {
            let length = BLOCK.min(count - start);
            let (from, to) = (&mut from[..length], &mut to[..length]);
            from.fill_with(|| input.take());
            match refrigerant {
                Ok(refrigerant) => {
                    if let Err(unanswered) = kernel(refrigerant, from, to) {
                        tally.add(unanswered.count, unanswered.error);
                    }
                }
                Err(error) => tally.add(length, error),
            }
            for y in &*to {
                output.put(*y);
            }
        }
    })
}

fn tallied(
    count: usize,
    null: bool,
    (failed, details): (*mut usize, *mut ColdloopError),
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
    write(failed, tally.count);
    status
}
