//! The void fraction, from which the mass of refrigerant in a part follows.

use crate::vehicle::working_fluid::equilibrium::Saturation;

/// Mean void fraction of a pipe along which the quality changes linearly from `low` to `high` (0 to 1).
///
/// Zivi's slip ratio `(rho_l / rho_v)^(1/3)` makes the void fraction `x / (x + (1 - x) K)` with
/// `K = (rho_v / rho_l)^(2/3)`, of which the mean over x has a closed form.
///
/// Source: Zivi 1964, J. Heat Transfer 86, 247; evaluated for charge by Rice 1987, ASHRAE Trans. 93(1).
pub(in crate::vehicle) fn mean_void(saturation: &Saturation, low: f64, high: f64) -> f64 {
    let ratio = libm::cbrt(saturation.vapour_kg_m3 / saturation.liquid_kg_m3);
    let k = ratio * ratio;
    if high - low < 1e-4 {
        let x = 0.5 * (low + high);
        return x / (x + (1.0 - x) * k);
    }
    let slope = 1.0 - k;
    let logarithm = libm::log((k + slope * high) / (k + slope * low));
    (1.0 - k * logarithm / (slope * (high - low))) / slope
}

#[cfg(test)]
mod tests {
    use super::*;

    fn void(saturation: &Saturation, quality: f64) -> f64 {
        mean_void(saturation, quality, quality)
    }

    fn saturation() -> Saturation {
        Saturation {
            liquid_kg_m3: 1200.0,
            vapour_kg_m3: 30.0,
            ..Saturation::default()
        }
    }

    #[test]
    fn the_closed_form_is_the_integral() {
        let sat = saturation();
        let n = 20_000;
        let (low, high) = (0.1, 0.95);
        let sum: f64 = (0..n)
            .map(|i| void(&sat, low + (high - low) * (i as f64 + 0.5) / n as f64))
            .sum();
        assert!((sum / n as f64 - mean_void(&sat, low, high)).abs() < 1e-7);
    }

    #[test]
    fn a_full_evaporation_is_mostly_void() {
        // Rice 1987, figure 1: at a density ratio of 40 the mean void fraction with Zivi's slip lies near 0.85.
        let mean = mean_void(&saturation(), 0.0, 1.0);
        assert!((0.78..0.92).contains(&mean), "{mean}");
    }

    #[test]
    fn its_ends_are_liquid_and_vapour() {
        assert_eq!(void(&saturation(), 0.0), 0.0);
        assert!((void(&saturation(), 1.0) - 1.0).abs() < 1e-15);
    }
}
