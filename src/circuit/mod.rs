//! From readings to state points: what was measured, how well, and what follows from it.

mod derived;
mod estimate;
mod features;
mod figures;
mod instrument;
mod observations;
mod purity;
mod readings;

pub use crate::names::PressureMatch;
pub use derived::{Derived, dew_temperature, subcooling, superheat};
pub use estimate::Estimate;
pub use features::FeatureVector;
pub use instrument::Gauge;
pub use observations::Observations;
pub(crate) use observations::place;
pub use purity::{AtRest, at_rest};
pub use readings::{Measured, Reading, Readings};
