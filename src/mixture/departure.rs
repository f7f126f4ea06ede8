//! Departure functions: what a pair adds beyond the reducing functions.

use crate::eos::Alpha;
use crate::fluid::Power;
use crate::numerics::Real;

/// The sum of n delta^d tau^t exp(-delta^l), with all first and second derivatives, times `factor`.
pub(super) fn departure<R: Real>(terms: &[Power], factor: f64, tau: R, delta: R) -> Alpha<R> {
    let number = R::from_f64;
    let zero = number(0.0);
    let (ln_tau, ln_delta) = (tau.logarithm(), delta.logarithm());
    let mut sum = Alpha::nothing();
    for term in terms {
        let (d, l) = (f64::from(term.d), f64::from(term.l));
        let damping = if term.l == 0 {
            zero
        } else {
            delta.whole_power(u32::from(term.l))
        };
        let power = (number(term.t) * ln_tau + number(d) * ln_delta - damping).exponential();
        let a = number(factor * term.n) * power;
        // delta and tau times the logarithmic derivatives
        let by_delta = number(d) - number(l) * damping;
        let by_tau = number(term.t);
        sum.a = sum.a + a;
        sum.d = sum.d + a * by_delta;
        sum.dd = sum.dd + a * (by_delta * by_delta - number(d) - number(l * (l - 1.0)) * damping);
        sum.t = sum.t + a * by_tau;
        sum.tt = sum.tt + a * number(term.t * (term.t - 1.0));
        sum.dt = sum.dt + a * by_tau * by_delta;
    }
    sum
}
