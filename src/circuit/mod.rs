//! From readings to state points: what was measured, how well, and what follows from it.

mod instrument;
mod readings;

pub use instrument::Gauge;
pub use readings::{Reading, Readings};
