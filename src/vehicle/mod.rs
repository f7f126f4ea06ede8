//! The vehicle: its system, its conditions, and the steady model of its whole air conditioning.
//!
//! From the ground up: `description` (system, parts, conditions, faults), `working_fluid` (the refrigerant of the circuit),
//! `parts` (compressor, exchangers, expansion devices), `circuit` (all of them in balance), `operation` (what the vehicle
//! reads), `population` (vehicles drawn from makes). A room uses those before it; `tests/layers.rs` checks that.

mod circuit;
mod description;
mod operation;
mod parts;
mod population;
mod working_fluid;

pub use crate::names::{HighPort, LowPort};
pub use description::conditions::Conditions;
pub use description::hardware::{Hardware, Options, Spread};
pub use description::severity::{FaultCause, FaultSeverity};
pub use description::system::System;
pub use description::vehicle::{ClutchSense, FanDrive, Rear, RearLoad, Vehicle};
pub use operation::simulate::simulate;
pub use operation::simulation::{Simulation, StatePoint, StatePoints, Swing, VisibleSigns};
pub use population::make::Make;
pub use population::measure::{Habits, Instruments, Needle};
pub use population::population::Population;

use crate::error::Error;
use crate::names::Refrigerant;
use working_fluid::{made::Composition, mixed::Mixed};

/// The polynomials of a blend in the circuit, written as Rust: for `tables/compile`, which puts them into the tables.
///
/// Errors: those of the mixture model.
#[doc(hidden)]
pub fn blend_in_the_circuit(refrigerant: Refrigerant) -> Result<impl core::fmt::Debug, Error> {
    Mixed::of(&Composition::of(refrigerant, None)?)
}
