//! A vehicle in operation: what it reads in its conditions with its faults.

pub(super) mod build;
pub(super) mod clutch;
pub(super) mod continuation;
pub(super) mod cut_out;
pub(super) mod design;
#[cfg(test)]
mod effort;
pub(super) mod faults;
pub(super) mod rest;
pub(super) mod simulate;
pub(super) mod simulation;
