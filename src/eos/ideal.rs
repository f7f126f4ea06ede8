//! The ideal-gas part of the reduced Helmholtz energy.

use crate::fluid::Ideal;
use crate::numerics::Real;

/// The most Planck-Einstein terms (vibrations of the molecule) that an equation may have.
pub(super) const MAX_PLANCK_EINSTEIN: usize = 12;

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
    /// The ideal part at tau = T_r / T, given with its logarithm.
    #[inline]
    pub fn new(ideal: &Ideal, tau: R, ln_tau: R) -> Self {
        let number = R::from_f64;
        let one = number(1.0);
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
        let mut fading = [tau; MAX_PLANCK_EINSTEIN];
        let fading = &mut fading[..ideal.planck_einstein.len().min(MAX_PLANCK_EINSTEIN)];
        for (fading, &(_, theta)) in fading.iter_mut().zip(ideal.planck_einstein) {
            *fading = -(number(theta) * tau);
        }
        R::exponential_all(fading);
        for (fading, &(n, theta)) in fading.iter_mut().zip(ideal.planck_einstein) {
            let x = number(theta) * tau;
            let rest = one - *fading;
            let first = x * *fading / rest;
            sum.t = sum.t + number(n) * first;
            sum.tt = sum.tt - number(n) * x * first / rest;
            *fading = rest;
        }
        R::logarithm_all(fading);
        for (log, &(n, _)) in fading.iter().zip(ideal.planck_einstein) {
            sum.a = sum.a + number(n) * *log;
        }
        sum
    }
}
