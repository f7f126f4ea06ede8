//! What of a sound system no source of the atlas states.
//!
//! Generated from tables/bands/healthy.toml by tables/compile; edit the table, not this file.

/// Ambient above which a variable compressor at low speed may run out of stroke, K. Source: from memory, a single case, one maker's service text: hot, low engine speed, blower on maximum; the figure is engineering judgement.
pub(super) const STROKE_LIMIT_AMBIENT_K: f64 = 305.15;

/// Engine speed below which it may, 1/s. Source: from memory, a single case, one maker's service text: hot, low engine speed, blower on maximum; the figure is engineering judgement.
pub(super) const STROKE_LIMIT_ENGINE_SPEED_HZ: f64 = 20.0;

/// Time after which a system counts as settled, s. Source: common practice, no source: vent judged after 10 to 15 minutes.
pub(super) const SETTLED_S: f64 = 600.0;

/// Time over which the pressures settle by 1/e, s. Source: engineering judgement.
pub(super) const SETTLE_PRESSURES_S: f64 = 90.0;

/// Time over which the vent settles by 1/e, s. Source: engineering judgement: 5 % left after ten minutes.
pub(super) const SETTLE_VENT_S: f64 = 200.0;

/// Spread that the pressures have more at the moment of switching on, K. Source: engineering judgement.
pub(super) const UNSETTLED_PRESSURES_K: f64 = 5.0;

/// Median of a system at rest, K. Source: physics: saturation at the temperature of the coldest part; engineering judgement for the warmth of the vehicle.
pub(super) const REST_K: f64 = 1.0;

/// Its spread downwards, K. Source: engineering judgement.
pub(super) const REST_DOWN_K: f64 = 1.5;

/// Its spread upwards, K. Source: engineering judgement: parts still warm.
pub(super) const REST_UP_K: f64 = 3.0;
