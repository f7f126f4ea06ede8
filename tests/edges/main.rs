//! Constants that decide a verdict, a proof or a refusal, each just below and just above its edge.
//!
//! The edges are written as numbers, never as the name of the constant, so that a constant that is changed by a tenth fails its test.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // tests fail by panicking

mod circuit;
mod clock;
mod derived;
mod diagnosis;
mod done;
mod expected;
mod log;
mod open;
mod page;
mod proof;
mod recorder;
mod spread;
mod stop;
mod units;

use coldloop::circuit::Reading;
use coldloop::units::{InSi, Measurable, Surroundings};

/// The air at the garage, 1,600 m.
fn place() -> Surroundings {
    Surroundings::at_altitude(1_600.0).unwrap()
}

/// A reading with this standard uncertainty, in SI.
fn read<Q: Measurable>(value: Q, standard_uncertainty: f64) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(standard_uncertainty),
    }
}
