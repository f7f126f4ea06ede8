//! Readings over time: turns the log of one vehicle into readings with their uncertainty, and observations.
//!
//! A [`Recorder`] takes samples in constant memory. It cleans them (spikes, sensors that stick, changed units, dropouts), finds
//! the cycles of a clutch from the saw-tooth of the low side, and separates the states of the vehicle: stretches at one speed
//! and load. In each state it keeps running means over whole cycles. The weight of the start of a state fades as the state
//! lasts, so that a settled state gives the same readings from minute to minute. A [`Summary`] turns the means into readings
//! whose uncertainty is that of the instrument, the sampling and the remaining drift.
//!
//! Below 0.5 samples a second there are only means; cycles are unknown.
//!
//! Sources: steady state by the ratio of variances of Cao & Rhinehart 1995 (`steady`); bins, states and their limits are
//! engineering judgement, as each constant says.

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
