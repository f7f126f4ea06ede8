//! The circuit as a whole: its balances, and the steady state in which they hold.

mod branch;
pub(super) mod cycle;
pub(super) mod plant;
pub(super) mod solve;
pub(super) mod unknowns;
pub(super) mod upper;
