//! From readings to state points: what was measured, how well, and what follows from it.

mod readings;

pub use readings::{Reading, Readings};
