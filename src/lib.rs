#![doc = include_str!("../README.md")]
#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]

#[cfg(feature = "serde")]
extern crate alloc;

pub mod air;
pub mod circuit;
pub mod diagnosis;
pub mod eos;
pub mod error;
pub mod expected;
pub mod fluid;
mod names;
pub mod numerics;
pub mod range;
pub mod saturation;
pub mod units;
pub mod vehicle;

pub use error::Error;
pub use names::*;
