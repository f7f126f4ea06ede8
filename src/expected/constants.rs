//! What of a sound system no source of the atlas states.
//!
//! Generated from tables/bands/healthy.toml by tables/compile; edit the table, not this file.

/// Ambient above which a variable compressor at low speed may run out of stroke, K. Source: from memory, a single case, one maker's service text: hot, low engine speed, blower on maximum; the figure is engineering judgement.
pub(super) const STROKE_LIMIT_AMBIENT_K: f64 = 305.15;

/// Engine speed below which a variable compressor may run out of stroke, 1/s. Source: from memory, a single case, one maker's service text: hot, low engine speed, blower on maximum; the figure is engineering judgement.
pub(super) const STROKE_LIMIT_ENGINE_SPEED_HZ: f64 = 20.0;

/// Time after which a system counts as settled, s. Source: common practice, no source: vent judged after 10 to 15 minutes.
pub(super) const SETTLED_S: f64 = 600.0;

/// Time in which the pressures come to 1/e of their distance from the settled ones, s. Source: engineering judgement.
pub(super) const SETTLE_PRESSURES_S: f64 = 90.0;

/// Time in which the vent comes to 1/e of its distance from the settled one, s. Source: engineering judgement: 5 % left after ten minutes.
pub(super) const SETTLE_VENT_S: f64 = 200.0;

/// Additional spread of the pressures at the moment of switching on, K. Source: engineering judgement.
pub(super) const UNSETTLED_PRESSURES_K: f64 = 5.0;

/// Median of the saturation temperature of a sound system at rest above the ambient, K. Source: physics: saturation at the temperature of the coldest part; engineering judgement for the warmth of the vehicle.
pub(super) const REST_K: f64 = 1.0;

/// Spread of that temperature downwards, K. Source: engineering judgement.
pub(super) const REST_DOWN_K: f64 = 1.5;

/// Spread of that temperature upwards, K. Source: engineering judgement: parts still warm.
pub(super) const REST_UP_K: f64 = 3.0;
