//! What is known of each fluid: its equation of state as published, its limits, and the facts on its label.

mod equation;
mod facts;
#[allow(clippy::approx_constant)] // an exponent printed as 3.14 is one
pub(crate) mod tables;

pub use equation::{DoubleExponential, Equation, Gaussian, Ideal, NonAnalytic, Power};
pub use facts::{Facts, Flammability, Fluid, Melting, Sourced, Warming};
pub use tables::fluid_of;

/// Nitrogen, oxygen and argon: the gases of the air, which a circuit holds when it was not evacuated.
///
/// They are fluids, not refrigerants of a vehicle, and have no saturation curves here.
///
/// ```
/// let [nitrogen, oxygen, argon] = coldloop::inner::fluid::gases_of_air();
/// assert!(nitrogen.equation.molar_mass < oxygen.equation.molar_mass);
/// assert_eq!(argon.facts.cas, Some("7440-37-1"));
/// ```
pub const fn gases_of_air() -> [&'static Fluid; 3] {
    [&tables::r728::R728, &tables::r732::R732, &tables::r740::R740]
}
