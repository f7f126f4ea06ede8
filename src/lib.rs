#![doc = include_str!("../README.md")]
#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]

#[cfg(feature = "report")]
extern crate alloc;
// What tests share with examples speaks of the crate by its name.
#[cfg(test)]
extern crate self as coldloop;

pub mod air;
pub mod circuit;
pub mod diagnosis;
pub mod eos;
pub mod error;
#[cfg(feature = "report")]
pub mod evaluate;
pub mod expected;
pub mod fluid;
#[cfg(feature = "report")]
pub mod intake;
pub mod mixture;
mod names;
pub mod numerics;
pub mod proof;
pub mod range;
#[cfg(feature = "report")]
pub mod report;
pub mod saturation;
pub mod transport;
pub mod units;
pub mod vehicle;

pub use error::Error;
pub use names::*;

/// The snippets of the contributors' guide, compiled and run.
#[cfg(all(doctest, feature = "std"))]
#[doc = include_str!("../DEVELOPERS.md")]
mod developers_guide {}
