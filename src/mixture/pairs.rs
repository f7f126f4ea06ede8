//! The parameters of the pair that two components form.

use super::component::{Component, Pair};
use super::tables::{COMPONENTS, PAIRS, PLACES};

impl Pair {
    /// The parameters of two different components, and whether they are seen from the second one.
    pub(super) fn of(one: &Component, other: &Component) -> (&'static Self, bool) {
        let low = usize::from(one.number.min(other.number));
        let high = usize::from(one.number.max(other.number));
        let before = low * (2 * COMPONENTS.len() - low - 1) / 2;
        (
            &PAIRS[usize::from(PLACES[before + high - low - 1])],
            one.number > other.number,
        )
    }
}
