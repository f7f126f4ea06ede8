//! What the instruments show.

use crate::units::{Pressure, Surroundings, Temperature};

/// A measured value with the standard uncertainty of its instrument, in the SI unit of the quantity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading<Q> {
    /// What the instrument shows.
    pub value: Q,
    /// Standard uncertainty (one sigma), in SI.
    pub standard_uncertainty: f64,
}

/// The readings of one moment; each is optional.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Readings {
    /// Low-side pressure.
    pub low_side: Option<Reading<Pressure>>,
    /// High-side pressure.
    pub high_side: Option<Reading<Pressure>>,
    /// Air at the centre vent.
    pub vent: Option<Reading<Temperature>>,
    /// Cabin air.
    pub cabin: Option<Reading<Temperature>>,
    /// Suction line at the compressor.
    pub suction_line: Option<Reading<Temperature>>,
    /// Discharge line at the compressor.
    pub discharge_line: Option<Reading<Temperature>>,
    /// Liquid line before the expansion device.
    pub liquid_line: Option<Reading<Temperature>>,
    /// Line at the condenser outlet.
    pub condenser_outlet: Option<Reading<Temperature>>,
    /// Clutch engagements per second.
    pub clutch_cycles_hz: Option<Reading<f64>>,
    /// The air in which the gauges were zeroed, when that was elsewhere.
    pub gauge_zero: Option<Surroundings>,
}
