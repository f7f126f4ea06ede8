//! The density at which an isotherm has a given pressure.

use super::helmholtz::Isotherm;
use crate::error::Error;

/// The relative error of a density that is near enough: the step after it is exact to first order.
const NEAR: f64 = 1e-12;
/// What counts as rounding in the pressure, relatively, where the density does not settle.
const ROUNDING: f64 = 1e-9;
const MOST_STEPS: usize = 60;
/// No step raises the density by more: far beyond the densities that they were made for, some equations fall back to
/// the pressure asked for, and a long step would land there.
const STEEPEST: f64 = 1.3;

/// The molar density (mol/m3) at which the pressure is `p_pa`, between `low` and `high`, starting at `start`; good to
/// about 1e-12, after which [`Properties::at_pressure`](super::Properties::at_pressure) takes the last step.
///
/// Assumes that the pressure rises with density from `start` (or from `low`) to the answer and meets `p_pa` inside; both
/// hold on the stable side of the saturation line. Newton's method, kept inside a shrinking bracket by bisection.
///
/// Errors: `NoConvergence` with the relative residual of the pressure.
pub fn density_mol_m3(isotherm: &Isotherm<f64>, p_pa: f64, start: f64, low: f64, high: f64) -> Result<f64, Error> {
    let (mut low, mut high) = (low, high);
    let mut rho = start.clamp(low, high);
    if low > 0.0 {
        rho = f64::min(rho, STEEPEST * low);
    }
    let mut residual = f64::INFINITY;
    let mut before = 0.0;
    for _ in 0..MOST_STEPS {
        let (p, slope) = isotherm.pressure_pa(rho);
        residual = p - p_pa;
        if residual > 0.0 {
            high = rho;
        } else {
            low = rho;
        }
        let step = residual / slope;
        let next = f64::min(rho - step, STEEPEST * rho);
        let inside = slope > 0.0 && next >= low && next <= high;
        let next = if inside { next } else { 0.5 * (low + high) };
        let change = libm::fabs(next - rho) / next;
        rho = next;
        if inside {
            // Newton's steps go as the square of the one before: what is still to come, from the last two.
            let square = change / (before * before);
            if change <= NEAR || square * change * change <= NEAR {
                return Ok(rho);
            }
            before = change;
        } else {
            before = 0.0;
        }
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
