//! The scale matrix of a hypothesis in this case.

use super::rows::{Bits, number};
use crate::numerics::multivariate_t::{Symmetric, TRIANGLE, Vector, entry_of};

/// A scale matrix in this case: the table's or a sound system's, and what comes on top of it.
#[derive(Clone, Copy)]
pub(super) struct Scale<'a> {
    pub(super) base: &'a Symmetric,
    pub(super) table: Option<&'static [Bits; TRIANGLE]>,
    pub(super) more: Option<&'a Symmetric>,
    /// What is left of each standard deviation where this vehicle is known; `None` where it is not.
    pub(super) left: Option<Vector>,
}

impl<'a> Scale<'a> {
    pub(super) const fn of(base: &'a Symmetric) -> Self {
        Self {
            base,
            table: None,
            more: None,
            left: None,
        }
    }

    pub(super) fn entry(&self, i: usize, j: usize) -> f64 {
        let table = self.table.map_or(0.0, |table| number(table[entry_of(i, j)]));
        let more = self.more.map_or(0.0, |more| more.at(i, j));
        let left = self.left.as_ref().map_or(1.0, |left| left[i] * left[j]);
        (self.base.at(i, j) + table + more) * left
    }
}

/// Share of what is known of a vehicle when sound that still holds when it has a fault. Source: engineering judgement.
pub(super) const KNOWN_OF_FAULTY: f64 = 0.7;
