//! parts and settings of its own.
//!
//! An accumulator stores the charge, and an internal heat exchanger cools what the gas cooler leaves warm.

use super::hardware::Hardware;
use crate::names::{Refrigerant, VehicleClass};

/// Sizes of the parts of an R-744 system per those of an R-134a system of the same vehicle. Judgement: machines of 25 to 33 cm3
/// replace those of 150 to 175 cm3, and inner volumes shrink to a third.
const SWEPT: f64 = 0.17;
const VOLUME: f64 = 0.36;
/// Inner volume of a gas cooler per that of an R-134a condenser. Judgement.
const GAS_COOLER: f64 = 0.432;
const VALVE: f64 = 1.0 / 3.0;
/// Bore of an orifice per that of an R-134a system's, so that the high side is near its optimum on a mild day. Bores of 0.6 to
/// 1 mm are common, from memory.
const BORE: f64 = 0.473;
/// Inner volume of an accumulator per that of an R-134a system's. Judgement.
const ACCUMULATOR: f64 = 0.6;
/// Effectiveness of the internal heat exchanger. Source: judgement, from memory of prototypes: 0.5 to 0.8.
const EXCHANGER: f64 = 0.6;
/// Suction pressure that the controls hold: saturation at 0.4 °C as in R-134a systems, Pa absolute.
const SUCTION_PA: f64 = 3.52e6;
/// Evaporator pressure above which the valve of a second evaporator no longer opens: saturation near 15 °C, Pa absolute.
const VALVE_LIMIT_PA: f64 = 5.1e6;
/// High-side pressure at which protection reduces the demand, Pa gauge. Source: from memory of SAE J639: relief
/// not below 16 MPa; switches near 13.3 MPa.
const HIGH_LIMIT_PA: f64 = 13.3e6;

impl Hardware {
    /// The parts of a typical vehicle of this class that is made for this refrigerant.
    pub const fn typical_for(refrigerant: Refrigerant, class: VehicleClass) -> Self {
        let typical = Self::typical(class);
        if matches!(refrigerant, Refrigerant::R744) {
            typical.for_carbon_dioxide()
        } else if matches!(refrigerant, Refrigerant::R407C) {
            typical.for_r407c()
        } else {
            typical
        }
    }

    /// These parts for an R-744 system in the same vehicle: exchangers and air flows stay, all that holds or moves
    /// refrigerant is as much smaller as its vapour is denser.
    const fn for_carbon_dioxide(self) -> Self {
        Self {
            displacement_m3: self.displacement_m3 * SWEPT,
            electric_displacement_m3: self.electric_displacement_m3 * SWEPT,
            internal_set_pa: SUCTION_PA,
            internal_slope: 0.0,
            external_set_pa: SUCTION_PA,
            high_limit_pa: HIGH_LIMIT_PA,
            condenser_volume_m3: self.condenser_volume_m3 * GAS_COOLER,
            discharge_volume_m3: self.discharge_volume_m3 * VOLUME,
            liquid_volume_m3: self.liquid_volume_m3 * VOLUME,
            suction_volume_m3: self.suction_volume_m3 * VOLUME,
            evaporator_volume_m3: self.evaporator_volume_m3 * VOLUME,
            accumulator_volume_m3: self.accumulator_volume_m3 * ACCUMULATOR,
            exchanger: EXCHANGER,
            valve_limit_pa: VALVE_LIMIT_PA,
            valve_area_m2: self.valve_area_m2 * VALVE,
            orifice_diameter_m: self.orifice_diameter_m * BORE,
            ..self
        }
    }
}
