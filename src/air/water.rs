//! Saturation pressure of ice and water, without and with air above them.

use super::root::root;
use super::tables::{ENHANCEMENT_ICE, ENHANCEMENT_WATER, SATURATION_ICE, SATURATION_WATER};
use crate::error::Error;
use crate::names::Quantity;
use crate::range::{BAROMETER, Range, WATER_TEMPERATURE};

/// Triple point of water, K, where the two saturation formulas meet. Exact until 2019, and within 0.1 mK since.
const TRIPLE_POINT_K: f64 = 273.16;

/// Coefficients of a saturation pressure.
pub(super) struct Saturation {
    pub(super) a: [f64; 6],
    pub(super) b: f64,
}

/// Coefficients of an enhancement factor.
pub(super) struct Enhancement {
    pub(super) alpha: [f64; 4],
    pub(super) beta: [f64; 4],
}

fn polynomial(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

/// ln of the saturation pressure in Pa; no check.
pub(super) fn ln_saturation(t_k: f64) -> f64 {
    let row = if t_k <= TRIPLE_POINT_K {
        &SATURATION_ICE
    } else {
        &SATURATION_WATER
    };
    let [inverse, rest @ ..] = &row.a;
    inverse / t_k + polynomial(rest, t_k) + row.b * libm::log(t_k)
}

/// The factor by which air at `p_pa` raises the saturation pressure `pure_pa`; no check.
pub(super) fn enhancement(t_k: f64, p_pa: f64, pure_pa: f64) -> f64 {
    let row = if t_k <= TRIPLE_POINT_K {
        &ENHANCEMENT_ICE
    } else {
        &ENHANCEMENT_WATER
    };
    let alpha = polynomial(&row.alpha, t_k);
    let beta = libm::exp(polynomial(&row.beta, t_k));
    libm::exp(alpha * (1.0 - pure_pa / p_pa) + beta * (p_pa / pure_pa - 1.0))
}

/// Vapour pressure of water over ice (below 273.16 K) or over liquid water, Pa.
///
/// Source: Hyland & Wexler (1983), ASHRAE Transactions 89(2A), 500; ASHRAE Fundamentals (2017), ch. 1, eq. 5 and 6.
///
/// Errors: `NotFinite` and `OutOfRange` outside [`WATER_TEMPERATURE`].
///
/// ```
/// use coldloop::air::water_saturation_pressure_pa;
/// // ASHRAE Fundamentals (2017), ch. 1, table 3: 3169.7 Pa at 25 °C
/// assert!((water_saturation_pressure_pa(298.15)? - 3_169.7).abs() < 0.5);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn water_saturation_pressure_pa(t_k: f64) -> Result<f64, Error> {
    Ok(libm::exp(ln_saturation(WATER_TEMPERATURE.check(t_k)?)))
}

/// Temperature at which water boils, or below 611.7 Pa ice sublimes, under `p_pa`, K.
///
/// The inverse of [`water_saturation_pressure_pa`]. During evacuation, water leaves a circuit that is warmer than this.
///
/// Errors: `NotFinite`; `OutOfRange` outside the pressures of [`WATER_TEMPERATURE`].
///
/// ```
/// use coldloop::air::water_boiling_point_k;
/// use coldloop::units::{AbsolutePressure, celsius, in_celsius, kelvins};
/// // at 29.1 inches of vacuum, 24 mbar, water boils at room temperature; at 500 microns even ice leaves
/// let boiling = |pressure: AbsolutePressure| water_boiling_point_k(pressure.pa()).map(|t_k| in_celsius(kelvins(t_k)));
/// assert!((boiling(AbsolutePressure::from_kpa(2.4))? - 20.4).abs() < 0.1);
/// assert!((boiling(AbsolutePressure::from_microns(500.0))? + 24.3).abs() < 0.2);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn water_boiling_point_k(p_pa: f64) -> Result<f64, Error> {
    let (low_k, high_k) = (WATER_TEMPERATURE.low, WATER_TEMPERATURE.high);
    let ends = (libm::exp(ln_saturation(low_k)), libm::exp(ln_saturation(high_k)));
    let ln_p = libm::log(Range::new(Quantity::AbsolutePressure, ends.0, ends.1).check(p_pa)?);
    root(|t_k| ln_saturation(t_k) - ln_p, low_k, high_k, 1e-10)
}

/// How much more water vapour saturated air at `p_pa` holds than the same space without air, as a factor.
///
/// Source: Greenspan (1976), doi:10.6028/jres.080A.007, with the coefficients of Hardy (1998) on ITS-90. About 1.004 in
/// ordinary weather.
///
/// Errors: `NotFinite` and `OutOfRange` outside [`crate::range::AIR_TEMPERATURE`] and [`BAROMETER`].
///
/// ```
/// use coldloop::air::enhancement_factor;
/// assert!((enhancement_factor(293.15, 101_325.0)? - 1.004).abs() < 1e-4);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn enhancement_factor(t_k: f64, p_pa: f64) -> Result<f64, Error> {
    let t_k = crate::range::AIR_TEMPERATURE.check(t_k)?;
    let p_pa = BAROMETER.check(p_pa)?;
    Ok(enhancement(t_k, p_pa, libm::exp(ln_saturation(t_k))))
}
