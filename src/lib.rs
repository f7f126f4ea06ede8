#![doc = include_str!("../README.md")]
#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]

#[cfg(feature = "serde")]
extern crate alloc;

pub mod air;
pub mod circuit;
pub mod error;
mod names;
pub mod range;
pub mod units;
pub mod vehicle;

pub use error::Error;
pub use names::*;
