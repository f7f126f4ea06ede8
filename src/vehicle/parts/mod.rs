//! The parts of the circuit, each by itself.

pub(super) mod co2_metering;
pub(super) mod compressor;
pub(super) mod condenser;
pub(super) mod evaporator;
pub(super) mod expansion;
pub(super) mod fan;
pub(super) mod gas_cooler;
pub(super) mod smooth;
pub(super) mod void_fraction;
