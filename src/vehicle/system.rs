//! What the vehicle has.

use crate::names::{Compressor, Expansion, Refrigerant};

/// The air-conditioning system of a vehicle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct System {
    /// The refrigerant that the label names.
    pub refrigerant: Refrigerant,
    /// The expansion device.
    pub expansion: Expansion,
    /// The compressor and its control.
    pub compressor: Compressor,
    /// The charge that the label names, kg.
    pub nominal_charge_kg: Option<f64>,
}

impl System {
    /// A system whose label does not tell the charge.
    pub const fn new(refrigerant: Refrigerant, expansion: Expansion, compressor: Compressor) -> Self {
        Self {
            refrigerant,
            expansion,
            compressor,
            nominal_charge_kg: None,
        }
    }
}
