//! Constants that decide a verdict, a proof or a refusal, each just below and just above its edge.
//!
//! The edges stand here as numbers, never by the name of the constant: a constant that is moved by a tenth fails its test.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // a test ends that way

mod circuit;
mod clock;
mod derived;
mod diagnosis;
mod done;
mod expected;
mod log;
mod proof;
mod spread;
mod stop;
mod units;
