//! The description of a vehicle: its system, its parts, its conditions and its faults.

mod bus_parts;
mod co2_parts;
pub(super) mod conditions;
pub(super) mod hardware;
pub(super) mod severity;
pub(super) mod system;
pub(super) mod vehicle;
