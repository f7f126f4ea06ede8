//! The ideal-gas part of the reduced Helmholtz energy.

use crate::fluid::Ideal;
use crate::numerics::Real;

/// The part of alpha0 that depends on tau, with tau and tau^2 times its derivatives; ln delta is left to the caller.
#[derive(Clone, Copy, Debug)]
pub struct Alpha0<R> {
    /// alpha0 - ln delta.
    pub a: R,
    /// tau alpha0_tau.
    pub t: R,
    /// tau^2 alpha0_tau_tau.
    pub tt: R,
}

impl<R: Real> Alpha0<R> {
    /// The ideal part at tau = T_r / T.
    pub fn new(ideal: &Ideal, tau: R) -> Self {
        let number = R::from_f64;
        let one = number(1.0);
        let ln_tau = tau.logarithm();
        let slope = number(ideal.slope) * tau;
        let mut sum = Self {
            a: number(ideal.constant) + slope + number(ideal.log_tau) * ln_tau,
            t: slope + number(ideal.log_tau),
            tt: -number(ideal.log_tau),
        };
        for &(n, t) in ideal.powers {
            let term = number(n) * (number(t) * ln_tau).exponential();
            sum.a = sum.a + term;
            sum.t = sum.t + number(t) * term;
            sum.tt = sum.tt + number(t * (t - 1.0)) * term;
        }
        for &(n, theta) in ideal.planck_einstein {
            let x = number(theta) * tau;
            let fading = (-x).exponential();
            let rest = one - fading;
            let first = x * fading / rest;
            sum.a = sum.a + number(n) * rest.logarithm();
            sum.t = sum.t + number(n) * first;
            sum.tt = sum.tt - number(n) * x * first / rest;
        }
        sum
    }
}
