//! A diagnosis as text for a technician and as JSON for a program; a simulation as JSON.

mod json;
mod plan;
mod rows;
mod simulation;
mod text;
mod words;

pub use json::json;
pub use plan::plan_json;
pub use simulation::simulation_json;
pub use text::{Units, text};
