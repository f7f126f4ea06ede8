//! R-407C, as it cools buses: parts and settings of its own.
//!
//! At the same temperature its vapour gives 1.5 times the cooling per volume of R-134a, and its pressures are higher in the
//! same proportion. So compressors are smaller, and settings are those of R-134a systems at the same dew temperatures.

use super::hardware::Hardware;

/// Sizes of the parts of an R-407C system per those of an R-134a system of the same vehicle. Judgement: swept volume by the
/// cooling per volume of vapour of 0 °C; the valve by the flow at the larger difference of pressures.
const SWEPT: f64 = 0.65;
const VALVE: f64 = 0.82;
/// Suction pressure that the controls hold: dew at 0.4 °C as in R-134a systems, Pa absolute.
const SUCTION_PA: f64 = 469e3;
/// Low-side switch: dew at the temperatures of that of R-134a systems, -2 °C and 10 °C, Pa gauge.
const SWITCH_OPENS_PA: f64 = 330e3;
const SWITCH_BAND_PA: f64 = 210e3;
/// Evaporator pressure above which the valve no longer opens: dew near 16 °C as of R-134a systems, Pa absolute.
const VALVE_LIMIT_PA: f64 = 772e3;
/// High-side pressures between which the condenser fans come up: dew at the temperatures of those of R-134a systems, 46 °C and
/// 58 °C, Pa gauge.
const FAN_RISES_PA: f64 = 1.68e6;
const FAN_RISE_PA: f64 = 0.58e6;
/// High-side pressure at which protection reduces the demand, Pa gauge. Judgement, from memory: switches of R-407C
/// roof units open at 27 to 31 bar.
const HIGH_LIMIT_PA: f64 = 2.95e6;

impl Hardware {
    /// These parts for an R-407C system in the same vehicle.
    pub(in crate::vehicle) const fn for_r407c(self) -> Self {
        Self {
            displacement_m3: self.displacement_m3 * SWEPT,
            electric_displacement_m3: self.electric_displacement_m3 * SWEPT,
            internal_set_pa: SUCTION_PA,
            external_set_pa: SUCTION_PA,
            switch_opens_pa: SWITCH_OPENS_PA,
            switch_band_pa: SWITCH_BAND_PA,
            fan_rises_pa: FAN_RISES_PA,
            fan_rise_pa: FAN_RISE_PA,
            high_limit_pa: HIGH_LIMIT_PA,
            valve_limit_pa: VALVE_LIMIT_PA,
            valve_area_m2: self.valve_area_m2 * VALVE,
            ..self
        }
    }
}
