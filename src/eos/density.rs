//! The density at which an isotherm has a given pressure.

use super::helmholtz::Isotherm;
use crate::error::Error;

/// Relative step of density after which the search ends: a further step is exact to first order.
const NEAR: f64 = 1e-12;
/// The estimated error of a density that needs no further step: near the critical point cp magnifies it a hundredfold.
const LEFT: f64 = 1e-14;
/// A usual rho p'' / (2 p') of a liquid.
const CURVED: f64 = 5.0;
/// What counts as rounding in the pressure, relatively, where the density does not settle.
const ROUNDING: f64 = 1e-9;
const MOST_STEPS: usize = 60;
/// No step raises the density by more: far beyond the densities that they were made for, some equations fall back to
/// the pressure asked for, and a long step would land there.
const STEEPEST: f64 = 1.3;

/// An isotherm at one density.
#[derive(Clone, Copy)]
struct Place {
    rho: f64,
    p: f64,
    slope: f64,
}

impl Place {
    /// The step to the pressure that is still off by `residual`: along the cubic of density over pressure that has the
    /// values and slopes of this place and the last one, where Newton's `straight` step takes the tangent.
    fn bent_step(&self, last: &Place, residual: f64, straight: f64) -> f64 {
        let apart = last.p - self.p;
        let share = -residual / apart;
        let [mean, here, there] = [(last.rho - self.rho) / apart, 1.0 / self.slope, 1.0 / last.slope];
        let (square, cube) = (3.0 * mean - 2.0 * here - there, here + there - 2.0 * mean);
        let bend = apart * share * share * (square + share * cube);
        if bend.is_finite() { straight + bend } else { straight }
    }

    /// Whether the error that the bent step leaves is small enough.
    ///
    /// The error of Newton's step is k e^2, which the bend estimates; where the bend is small, k is taken as that of a liquid.
    /// The error of the bent step is the product of the squares of both distances and a fourth derivative, which is taken as
    /// k^3.
    fn is_last(&self, last: &Place, straight: f64, bent: f64) -> bool {
        let (e, before) = (straight / self.rho, (last.rho - self.rho) / self.rho);
        let k = f64::max(libm::fabs(bent - straight) / self.rho / (e * e), CURVED);
        k * k * k * e * e * before * before <= LEFT
    }
}

/// The molar density (mol/m3) at which the pressure is `p_pa`, between `low` and `high`, starting at `start`; good to
/// about 1e-12, after which [`Properties::at_pressure`](super::Properties::at_pressure) takes the last step.
///
/// Assumes that the pressure rises with density from `start` (or from `low`) to the answer and meets `p_pa` inside; both
/// hold on the stable side of the saturation line. Newton's method, bent by the step before, inside a shrinking bracket.
///
/// Errors: `NoConvergence` with the relative residual of the pressure.
pub fn density_mol_m3(isotherm: &Isotherm<f64>, p_pa: f64, start: f64, low: f64, high: f64) -> Result<f64, Error> {
    let (mut low, mut high) = (low, high);
    let mut rho = start.clamp(low, high);
    if low > 0.0 {
        rho = f64::min(rho, STEEPEST * low);
    }
    let mut residual = f64::INFINITY;
    let mut last: Option<Place> = None;
    for _ in 0..MOST_STEPS {
        let (p, slope) = isotherm.pressure_pa(rho);
        residual = p - p_pa;
        if residual > 0.0 {
            high = rho;
        } else {
            low = rho;
        }
        let here = Place { rho, p, slope };
        let straight = -residual / slope;
        let bent = last.map_or(straight, |last| here.bent_step(&last, residual, straight));
        let next = f64::min(rho + bent, STEEPEST * rho);
        let inside = slope > 0.0 && next >= low && next <= high;
        let next = if inside { next } else { 0.5 * (low + high) };
        let change = libm::fabs(next - rho) / next;
        if inside {
            if change <= NEAR || last.is_some_and(|last| here.is_last(&last, straight, bent)) {
                return Ok(next);
            }
            last = Some(here);
        } else {
            last = None;
        }
        rho = next;
        if high - low <= f64::EPSILON * high {
            // The bracket has closed: on the answer, to the last digit of the density, or on an end without one.
            let last_digit = 4.0 * f64::EPSILON * libm::fabs(slope) * rho;
            let met = libm::fabs(residual) <= ROUNDING * p_pa + last_digit;
            return if met {
                Ok(rho)
            } else {
                Err(Error::no_convergence(libm::fabs(residual) / p_pa, ROUNDING))
            };
        }
    }
    // Near the critical point the pressure is met to rounding while the density still wavers.
    let residual = libm::fabs(residual) / p_pa;
    if residual <= ROUNDING {
        return Ok(rho);
    }
    Err(Error::no_convergence(residual, ROUNDING))
}
