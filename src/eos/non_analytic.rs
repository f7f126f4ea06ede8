//! The terms of Span and Wagner (1996) that lead R-744 into its critical point.
//!
//! Source: J. Phys. Chem. Ref. Data 25 (1996) 1509-1596, doi 10.1063/1.555991, equation 6.1 and table 32.

use super::helmholtz::Alpha;
use crate::fluid::NonAnalytic;
use crate::numerics::Real;

/// One term with its derivatives, times the powers of tau and delta that make them pure numbers.
///
/// In the critical point itself, where Delta is zero and the second derivatives are infinite, the term is left out.
pub(super) fn term<R: Real>(term: &NonAnalytic, tau: R, delta: R) -> Alpha<R> {
    let number = R::from_f64;
    let (zero, one, two) = (number(0.0), number(1.0), number(2.0));
    let off = delta - one;
    let warm = tau - one;
    let square = off * off;
    let (exponent, spread) = (1.0 / (2.0 * term.beta), number(term.a));

    // A ((delta - 1)^2)^(1/(2 beta)) and B ((delta - 1)^2)^a, each with its derivatives by delta
    let (bent, raised) = if square > number(1e-200) {
        let log = square.logarithm();
        let bent = number(term.theta_factor) * (number(exponent) * log).exponential();
        let raised = number(term.delta_factor) * (spread * log).exponential();
        (
            slopes(bent, number(2.0 * exponent), off),
            slopes(raised, number(2.0 * term.a), off),
        )
    } else {
        ([zero; 3], [zero; 3])
    };
    let theta = bent[0] - warm;
    let big = theta * theta + raised[0];
    if big < number(1e-280) {
        return Alpha {
            a: zero,
            d: zero,
            dd: zero,
            t: zero,
            tt: zero,
            dt: zero,
        };
    }
    let big_d = two * theta * bent[1] + raised[1];
    let big_dd = two * (bent[1] * bent[1] + theta * bent[2]) + raised[2];
    let (big_t, big_tt, big_dt) = (-(two * theta), two, -(two * bent[1]));

    let b = number(term.b);
    let less = number(term.b - 1.0);
    let f = (b * big.logarithm()).exponential();
    let over = b * f / big;
    let f_d = over * big_d;
    let f_t = over * big_t;
    let f_dd = over * (big_dd + less * big_d * big_d / big);
    let f_tt = over * (big_tt + less * big_t * big_t / big);
    let f_dt = over * (big_dt + less * big_d * big_t / big);

    let (c, d) = (number(2.0 * term.density_width), number(2.0 * term.temperature_width));
    let half = number(0.5);
    let psi = (-(half * (c * square + d * warm * warm))).exponential();
    let psi_d = -(c * off * psi);
    let psi_dd = (c * square - one) * c * psi;
    let psi_t = -(d * warm * psi);
    let psi_tt = (d * warm * warm - one) * d * psi;
    let psi_dt = c * d * off * warm * psi;

    let n = number(term.n);
    let moved = psi + delta * psi_d;
    Alpha {
        a: n * f * delta * psi,
        d: n * delta * (f * moved + f_d * delta * psi),
        dd: n * delta * delta * (f * (two * psi_d + delta * psi_dd) + two * f_d * moved + f_dd * delta * psi),
        t: n * tau * delta * (f_t * psi + f * psi_t),
        tt: n * tau * tau * delta * (f_tt * psi + two * f_t * psi_t + f * psi_tt),
        dt: n * delta * tau * (f_dt * delta * psi + f_t * moved + f_d * delta * psi_t + f * (psi_t + delta * psi_dt)),
    }
}

/// A power of |off| with its first and second derivative.
fn slopes<R: Real>(power: R, exponent: R, off: R) -> [R; 3] {
    let first = exponent * power / off;
    [power, first, (exponent - R::from_f64(1.0)) * first / off]
}
