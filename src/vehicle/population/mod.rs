//! Vehicles drawn by uniform numbers, and how they are measured.

mod draws;
pub(super) mod make;
pub(super) mod measure;
#[allow(clippy::module_inception)] // the module has the name of its main type
pub(super) mod population;
