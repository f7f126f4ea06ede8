//! The vehicle: what it has, the conditions it stands in, and the steady model of its whole air conditioning.

mod branch;
mod clutch;
mod compressor;
mod condenser;
mod conditions;
mod cut_out;
mod cycle;
mod dense;
mod dense_table;
mod effort;
mod evaporator;
mod expansion;
mod fan;
mod faults;
mod follow;
mod hardware;
mod inventory;
mod make;
mod measure;
mod medium;
mod mixed_table;
mod plant;
mod population;
mod rest;
mod roof_unit;
mod simulate;
mod simulation;
mod smooth;
mod solve;
mod system;
mod transcritical;
#[allow(clippy::module_inception)] // the room is named after its chief inhabitant
mod vehicle;

pub use crate::names::{HighPort, LowPort};
pub use clutch::Swing;
pub use conditions::Conditions;
pub use faults::{FaultCause, FaultSeverity};
pub use hardware::{Hardware, Options, Spread};
pub use make::Make;
pub use measure::{Habits, Instruments, Needle};
pub use population::Population;
pub use simulate::simulate;
pub use simulation::{Looks, Simulation, StatePoint, StatePoints};
pub use system::System;
pub use vehicle::{ClutchSense, FanDrive, Rear, RearLoad, Vehicle};

use crate::error::Error;
use crate::names::Refrigerant;

/// The polynomials of a blend in the circuit, written as Rust: for `tables/compile`, which puts them into the tables.
///
/// Errors: those of the mixture model.
#[doc(hidden)]
pub fn blend_in_the_circuit(refrigerant: Refrigerant) -> Result<impl core::fmt::Debug, Error> {
    medium::Mixed::of(&medium::Composition::of(refrigerant, None)?)
}
