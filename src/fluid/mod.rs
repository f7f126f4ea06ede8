//! What is known of each fluid: its equation of state as published, its limits, and the facts on its label.

mod equation;
mod facts;
pub(crate) mod tables;

pub use equation::{DoubleExponential, Equation, Gaussian, Ideal, NonAnalytic, Power};
pub use facts::{Facts, Flammability, Fluid, Sourced, Warming};
pub use tables::of;
