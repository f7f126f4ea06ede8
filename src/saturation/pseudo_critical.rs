//! The saturation line of R-744 continued above its critical pressure, along which a gas cooler is treated like a condenser.
//!
//! It follows the pseudo-critical temperature, at which the specific heat has its peak at each pressure: there heat is given
//! off over the narrowest range of temperature. `T = Tc (p / pc)^0.14878` meets the saturation line at the critical point and
//! follows the peak of the equation of state within 0.35 K up to 14.5 MPa (a unit test checks that).

use super::{dew_pressure_pa, dew_temperature_k, pure};
use crate::error::Error;
use crate::names::Refrigerant;

/// Fitted to the peaks of the specific heat, by least squares of the logarithms from 7.45 to 14.5 MPa.
const EXPONENT: f64 = 0.148_78;
/// Half the width of the band in which the peak lies about the line, K.
pub(crate) const LINE_LIMIT_K: f64 = 0.35;
/// The highest pressure of the line, Pa: the relief of R-744 systems, SAE J639 from memory.
const HIGHEST_PA: f64 = 16.0e6;

/// The critical point (K, Pa) beyond which the line of this refrigerant is continued.
fn end(refrigerant: Refrigerant) -> Option<(f64, f64)> {
    let pure = pure(Refrigerant::R744).ok()?;
    (refrigerant == Refrigerant::R744).then_some((pure.critical_t_k, pure.critical_p_pa))
}

/// Dew temperature at a pressure, K; of R-744 above its critical pressure the pseudo-critical temperature.
///
/// Errors: as [`dew_temperature_k`]; of R-744 above 16 MPa.
pub(crate) fn along_k(refrigerant: Refrigerant, p_pa: f64) -> Result<f64, Error> {
    match end(refrigerant) {
        Some((t_k, critical_pa)) if p_pa > critical_pa && p_pa <= HIGHEST_PA => {
            Ok(t_k * libm::pow(p_pa / critical_pa, EXPONENT))
        }
        Some(_) | None => dew_temperature_k(refrigerant, p_pa),
    }
}

/// Dew pressure at a temperature, Pa; of R-744 above its critical temperature the pressure whose pseudo-critical temperature it
/// is.
///
/// Errors: as [`dew_pressure_pa`]; of R-744 where that pressure is above 16 MPa.
pub(crate) fn along_pa(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    if let Some((critical_k, critical_pa)) = end(refrigerant).filter(|(critical_k, _)| t_k > *critical_k) {
        let p_pa = critical_pa * libm::pow(t_k / critical_k, 1.0 / EXPONENT);
        if p_pa <= HIGHEST_PA {
            return Ok(p_pa);
        }
    }
    dew_pressure_pa(refrigerant, t_k)
}

/// Slope dT/dp of the continued line, K/Pa; `None` where the saturation line itself applies.
pub(crate) fn slope_k_pa(refrigerant: Refrigerant, p_pa: f64) -> Option<f64> {
    let (t_k, critical_pa) = end(refrigerant)?;
    (p_pa > critical_pa && p_pa <= HIGHEST_PA).then(|| EXPONENT * t_k * libm::pow(p_pa / critical_pa, EXPONENT) / p_pa)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::Reference;

    /// Where the specific heat of the equation of state has its peak, by scanning.
    #[test]
    fn the_line_follows_the_peak_of_the_specific_heat() {
        let co2 = pure(Refrigerant::R744).unwrap();
        let cp = |t_k: f64, p_pa: f64| {
            let state = co2.state_tp(t_k, p_pa, Reference::Iir).unwrap();
            state.response.unwrap().cp.j_kg_k()
        };
        for p_pa in [7.6e6, 8.5e6, 9.5e6, 10.5e6, 11.5e6, 12.5e6, 13.5e6, 14.5e6] {
            let line_k = along_k(Refrigerant::R744, p_pa).unwrap();
            let tried = (0..80).map(|i| line_k - 2.0 + 0.05 * f64::from(i));
            let peak_k = tried.max_by(|a, b| cp(*a, p_pa).total_cmp(&cp(*b, p_pa))).unwrap();
            assert!(
                (peak_k - line_k).abs() <= LINE_LIMIT_K + 0.03,
                "{p_pa}: {peak_k} {line_k}"
            );
        }
    }

    #[test]
    fn it_joins_the_saturation_line_and_goes_both_ways() {
        let r744 = Refrigerant::R744;
        let (critical_k, critical_pa) = end(r744).unwrap();
        assert!((along_k(r744, critical_pa * (1.0 + 1e-9)).unwrap() - critical_k).abs() < 1e-6);
        for p_pa in [1e6, 5e6, 7.3e6, 8e6, 12e6, 15.9e6] {
            let t_k = along_k(r744, p_pa).unwrap();
            assert!((along_pa(r744, t_k).unwrap() / p_pa - 1.0).abs() < 1e-12);
        }
        assert!(along_k(r744, 16.1e6).is_err() && along_pa(r744, 345.0).is_err());
        assert!(along_k(Refrigerant::R134a, 5e6).is_err());
        let slope = slope_k_pa(r744, 10e6).unwrap();
        let steep = (along_k(r744, 10.001e6).unwrap() - along_k(r744, 9.999e6).unwrap()) / 2e3;
        assert!((slope / steep - 1.0).abs() < 1e-6 && slope_k_pa(r744, 7e6).is_none());
    }
}
