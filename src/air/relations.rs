//! The perfect-gas relations of moist air, given what saturated air holds.
//!
//! Source: ASHRAE Handbook - Fundamentals (2017), chapter 1. Nothing is checked here.

use super::root::root;
use crate::error::Error;
use crate::names::Quantity;
use crate::range::WATER_TEMPERATURE;

/// Molar mass of water over that of dry air: 18.015268/28.966. Source: eq. 20.
pub(super) const EPSILON: f64 = 0.621_945;
/// Gas constant of dry air, J/(kg K): 8314.472/28.966. Source: eq. 1.
const DRY_AIR_J_KG_K: f64 = 287.042;
const FREEZING_K: f64 = 273.15;
const TOLERANCE_K: f64 = 1e-9;

/// Eq. 20; infinite when the vapour pressure reaches the total pressure.
pub(super) fn humidity_ratio(e_pa: f64, p_pa: f64) -> f64 {
    if e_pa < p_pa {
        EPSILON * e_pa / (p_pa - e_pa)
    } else {
        f64::INFINITY
    }
}

/// Eq. 30.
pub(crate) fn enthalpy_j_kg(t_k: f64, humidity_ratio: f64) -> f64 {
    let t_c = t_k - FREEZING_K;
    1_006.0 * t_c + humidity_ratio * (2_501_000.0 + 1_860.0 * t_c)
}

/// Eq. 30, solved for the temperature.
pub(super) fn temperature_k(enthalpy_j_kg: f64, humidity_ratio: f64) -> f64 {
    FREEZING_K + (enthalpy_j_kg - 2_501_000.0 * humidity_ratio) / (1_006.0 + 1_860.0 * humidity_ratio)
}

/// Eq. 26; 1.607858 = 1/0.621945.
pub(super) fn volume_m3_kg(t_k: f64, p_pa: f64, humidity_ratio: f64) -> f64 {
    DRY_AIR_J_KG_K * t_k * (1.0 + 1.607_858 * humidity_ratio) / p_pa
}

/// Eq. 33, water on the bulb.
fn over_water(t_k: f64, wet_bulb_k: f64, saturated: f64) -> f64 {
    let (t, t_wet) = (t_k - FREEZING_K, wet_bulb_k - FREEZING_K);
    ((2_501.0 - 2.326 * t_wet) * saturated - 1.006 * (t - t_wet)) / (2_501.0 + 1.86 * t - 4.186 * t_wet)
}

/// Eq. 35, ice on the bulb.
fn over_ice(t_k: f64, wet_bulb_k: f64, saturated: f64) -> f64 {
    let (t, t_wet) = (t_k - FREEZING_K, wet_bulb_k - FREEZING_K);
    ((2_830.0 - 0.24 * t_wet) * saturated - 1.006 * (t - t_wet)) / (2_830.0 + 1.86 * t - 2.1 * t_wet)
}

/// Humidity ratio of air with this wet bulb, given that of air saturated at the wet bulb; negative when no air has it.
pub(super) fn humidity_ratio_of_wet_bulb(t_k: f64, wet_bulb_k: f64, saturated: f64) -> f64 {
    if wet_bulb_k >= FREEZING_K {
        over_water(t_k, wet_bulb_k, saturated)
    } else {
        over_ice(t_k, wet_bulb_k, saturated)
    }
}

/// Wet bulb of air with this humidity ratio, given the humidity ratio of saturated air at any temperature.
///
/// The humidity ratio rises with the wet bulb over water and over ice, and jumps down from ice to water; so each branch has
/// at most one root, and the branch of water is tried first. Even the driest and coldest air has a wet bulb above -100 °C.
pub(super) fn wet_bulb_k(t_k: f64, humidity_ratio: f64, saturated: impl Fn(f64) -> f64) -> Result<f64, Error> {
    let water = |wet_k: f64| over_water(t_k, wet_k, saturated(wet_k)) - humidity_ratio;
    let ice = |wet_k: f64| over_ice(t_k, wet_k, saturated(wet_k)) - humidity_ratio;
    if t_k >= FREEZING_K && water(FREEZING_K) <= 0.0 {
        return below(t_k, water, FREEZING_K);
    }
    let top_k = f64::min(t_k, FREEZING_K);
    below(top_k, ice, WATER_TEMPERATURE.low)
}

/// Dew point of air with this humidity ratio, given the humidity ratio of saturated air at any temperature.
pub(super) fn dew_point_k(t_k: f64, humidity_ratio: f64, saturated: impl Fn(f64) -> f64) -> Result<f64, Error> {
    let least = saturated(WATER_TEMPERATURE.low);
    if humidity_ratio < least {
        return Err(Error::out_of_range(
            Quantity::HumidityRatio,
            humidity_ratio,
            least,
            saturated(t_k),
        ));
    }
    // The logarithm of the humidity ratio is nearly linear in the dew point.
    let ln_ratio = libm::log(humidity_ratio);
    below(
        t_k,
        |dew_k| libm::log(saturated(dew_k)) - ln_ratio,
        WATER_TEMPERATURE.low,
    )
}

/// The root of a rising function between `low_k` and `top_k`; `top_k` itself when rounding puts the root beyond it.
fn below(top_k: f64, f: impl Fn(f64) -> f64, low_k: f64) -> Result<f64, Error> {
    if f(top_k) <= 0.0 {
        return Ok(top_k);
    }
    root(f, low_k, top_k, TOLERANCE_K)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::water::ln_saturation;
    use approx::assert_relative_eq;

    /// psychrolib 2.5.0, an independent implementation of the same equations without enhancement factor, on a grid from
    /// -40 to 60 °C, 2 to 100 % relative humidity and three pressures.
    const PSYCHROLIB: &str = include_str!("../../tests/data/moist_air.csv");

    #[test]
    fn relations_are_those_of_psychrolib() {
        let mut rows = 0;
        for line in PSYCHROLIB
            .lines()
            .filter(|line| line.starts_with(|c: char| c == '-' || c.is_ascii_digit()))
        {
            let mut columns = line.split(',').map(|number| number.parse::<f64>().unwrap());
            let mut next = || columns.next().unwrap();
            let (t_k, p_pa, humidity, saturation_pa) = (next() + 273.15, next(), next(), next());
            let (ratio, dew_k, wet_k) = (next(), next() + 273.15, next() + 273.15);
            let (h_j_kg, v_m3_kg) = (next(), next());

            let pure = |t_k: f64| libm::exp(ln_saturation(t_k));
            let saturated = |t_k: f64| humidity_ratio(pure(t_k), p_pa);
            // exp magnifies the rounding of its argument, up to 12 here, to 1e-14
            assert_relative_eq!(pure(t_k), saturation_pa, max_relative = 2e-14);
            assert_relative_eq!(humidity_ratio(humidity * pure(t_k), p_pa), ratio, max_relative = 4e-14);
            assert_relative_eq!(enthalpy_j_kg(t_k, ratio), h_j_kg, epsilon = 1e-8, max_relative = 1e-13);
            assert_relative_eq!(temperature_k(h_j_kg, ratio), t_k, max_relative = 1e-14);
            assert_relative_eq!(volume_m3_kg(t_k, p_pa, ratio), v_m3_kg, max_relative = 1e-15);
            // ours solves to 1e-9 K
            assert_relative_eq!(dew_point_k(t_k, ratio, saturated).unwrap(), dew_k, epsilon = 1e-9);
            let ours_k = wet_bulb_k(t_k, ratio, saturated).unwrap();
            if ours_k >= FREEZING_K && wet_k < FREEZING_K {
                // Water and ice both give a solution; ours is that of water, theirs the one at which their bisection ends.
                assert_relative_eq!(over_water(t_k, ours_k, saturated(ours_k)), ratio, epsilon = 1e-11);
            } else {
                assert_relative_eq!(ours_k, wet_k, epsilon = 1e-9);
            }
            rows += 1;
        }
        assert_eq!(rows, 27 * 3 * 8);
    }
}
