//! The air around and inside the vehicle: the standard atmosphere, moist air, and water under vacuum.

mod moist;
mod relations;
mod root;
mod standard;
mod tables;
mod water;

pub use moist::MoistAir;
pub(crate) use relations::enthalpy_j_kg;
pub use standard::{standard_density_kg_m3, standard_temperature_k};
pub use water::{enhancement_factor, water_boiling_point_k, water_saturation_pressure_pa};
