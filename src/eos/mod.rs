//! Evaluation of the equations of state: the reduced Helmholtz energy with all its first and second derivatives, the properties
//! that follow, and the density that gives a pressure.
//!
//! Phases are not determined here; that is the task of `saturation`, the room above.

mod alpha;
mod density;
mod helmholtz;
mod ideal;
mod non_analytic;
mod properties;
mod room;
pub(crate) mod tally;
mod virial;

pub use alpha::Alpha;
pub use density::density_mol_m3;
pub use helmholtz::Isotherm;
pub use ideal::Alpha0;
pub use properties::{Properties, pressure_enthalpy_entropy};
pub use room::fits;
