//! Readings over time: what a log of one vehicle says, as readings with what they are worth, and observations.
//!
//! A [`Recorder`] takes samples in constant memory. It cleans them (spikes, sensors that stick, changed units, dropouts), finds
//! the cycles of a clutch from the saw-tooth of the low side, and keeps apart the states of the vehicle: stretches at one speed and
//! load. In each state it keeps running means over whole cycles, in which the start fades while more and more is taken in, so
//! that a settled state tells the same from minute to minute. A [`Summary`] turns them into readings whose uncertainty is that of
//! the instrument, the sampling and the drift that is left.
//!
//! Below 0.5 samples a second only means are told; cycles are unknown.
//!
//! Sources: steady state by the ratio of variances of Cao & Rhinehart 1995 (`steady`); bins, states and their limits are engineering
//! judgement, and each constant says so.

mod bins;
mod clean;
mod curve;
mod instruments;
mod notes;
mod recorder;
mod sample;
mod state;
mod steady;
mod summary;
mod swing;
mod track;

pub use curve::Fall;
pub use instruments::{Datum, Instruments};
pub use notes::Counts;
pub use recorder::Recorder;
pub use sample::{CHANNELS, Sample};
pub use summary::{LogState, LowSwing, Summary};
