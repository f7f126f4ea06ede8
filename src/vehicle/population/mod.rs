//! Vehicles as they come, and how they are measured.

mod draws;
pub(super) mod make;
pub(super) mod measure;
#[allow(clippy::module_inception)] // the room is named after its chief inhabitant
pub(super) mod population;
