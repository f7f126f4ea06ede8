//! How much work an answer was, counted by tests.

#![cfg(test)]

extern crate std;

use core::cell::Cell;

/// What is counted.
#[derive(Clone, Copy, Debug)]
pub(super) enum Work {
    /// A pair of faults weighed.
    Pair,
    /// An order of repairs searched.
    Order,
}

std::thread_local! {
    static DONE: Cell<[u64; 2]> = const { Cell::new([0; 2]) };
}

/// Counts one more on this thread.
pub(super) fn one_more(work: Work) {
    let mut done = DONE.get();
    let at = match work {
        Work::Pair => 0,
        Work::Order => 1,
    };
    done[at] += 1;
    DONE.set(done);
}

/// What `work` gives, and how many pairs and orders it took.
pub(super) fn counted<T>(work: impl FnOnce() -> T) -> (T, [u64; 2]) {
    let before = DONE.get();
    let given = work();
    (given, core::array::from_fn(|at| DONE.get()[at] - before[at]))
}
