//! Counts evaluations of an equation, with which tests bound the cost of a search.

#![cfg(test)]

extern crate std;

use core::cell::Cell;

std::thread_local! {
    static EVALUATIONS: Cell<u64> = const { Cell::new(0) };
}

/// Counts one evaluation on this thread.
pub(super) fn one_more() {
    EVALUATIONS.with(|count| count.set(count.get() + 1));
}

/// The evaluations that `work` asks for.
pub(crate) fn evaluations<T>(work: impl FnOnce() -> T) -> u64 {
    let before = EVALUATIONS.with(Cell::get);
    work();
    EVALUATIONS.with(Cell::get) - before
}
