//! What holds the low side.

use super::constants::LOW_SIDE;
use crate::error::Error;
use crate::names::{Compressor, ErrorKind, Expansion, Quantity};
use crate::vehicle::System;

/// Evaporating temperature of sound systems with one compressor control and one expansion device.
pub(super) struct LowSide {
    pub(super) compressor: Compressor,
    pub(super) expansion: Expansion,
    /// At the reference ambient, K.
    pub(super) at_reference_k: f64,
    /// Change per kelvin of ambient, K/K.
    pub(super) per_ambient: f64,
    /// Spread downwards, K.
    pub(super) down_k: f64,
    /// Spread upwards, K.
    pub(super) up_k: f64,
    /// Whether the compressor holds the low side against speed and humidity.
    pub(super) held: bool,
}

/// The row of this system.
pub(super) fn of(system: &System) -> Result<&'static LowSide, Error> {
    LOW_SIDE
        .iter()
        .find(|row| row.compressor == system.compressor && row.expansion == system.expansion)
        .ok_or(Error::of(ErrorKind::NotAvailable, Quantity::GaugePressure))
}
