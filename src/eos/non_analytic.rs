//! The terms of Span and Wagner (1996) that lead R-744 into its critical point.
//!
//! Source: J. Phys. Chem. Ref. Data 25 (1996) 1509-1596, doi 10.1063/1.555991, equation 6.1 and table 32.

use super::helmholtz::Alpha;
use crate::fluid::NonAnalytic;
use crate::numerics::Real;

/// The most non-analytic terms that an equation may have.
const MAX_TERMS: usize = 4;

/// Calls `each` for every term with its derivatives, times the powers of tau and delta that make them pure numbers.
///
/// In the critical point itself, where Delta is zero and the second derivatives are infinite, a term is left out.
#[inline]
pub(super) fn for_each_term<R: Real>(terms: &[NonAnalytic], tau: R, delta: R, mut each: impl FnMut(Alpha<R>)) {
    if terms.is_empty() {
        return;
    }
    let number = R::from_f64;
    let (zero, one) = (number(0.0), number(1.0));
    let off = delta - one;
    let warm = tau - one;
    let square = off * off;
    let log = if square > number(1e-200) {
        Some(square.logarithm())
    } else {
        None
    };
    // All powers of (delta - 1)^2 and all psi at once, then all powers of Delta: many exponentials in a row are vector
    // code.
    let mut powers = [zero; 3 * MAX_TERMS];
    for (three, term) in powers.chunks_exact_mut(3).zip(terms) {
        if let Some(log) = log {
            three[0] = number(1.0 / (2.0 * term.beta)) * log;
            three[1] = number(term.a) * log;
        }
        let (c, d) = (number(2.0 * term.density_width), number(2.0 * term.temperature_width));
        three[2] = -(number(0.5) * (c * square + d * warm * warm));
    }
    let count = terms.len().min(MAX_TERMS);
    R::exponential_all(&mut powers[..3 * count]);
    for (three, term) in powers.chunks_exact(3).zip(terms) {
        // A ((delta - 1)^2)^(1/(2 beta)) and B ((delta - 1)^2)^a, each with its derivatives by delta
        let (bent, raised) = if log.is_some() {
            let exponent = 1.0 / (2.0 * term.beta);
            (
                slopes(number(term.theta_factor) * three[0], number(2.0 * exponent), off),
                slopes(number(term.delta_factor) * three[1], number(2.0 * term.a), off),
            )
        } else {
            ([zero; 3], [zero; 3])
        };
        each(one_term(term, tau, delta, bent, raised, three[2]));
    }
}

/// One term from its powers of (delta - 1)^2 and its psi.
#[inline]
fn one_term<R: Real>(term: &NonAnalytic, tau: R, delta: R, bent: [R; 3], raised: [R; 3], psi: R) -> Alpha<R> {
    let number = R::from_f64;
    let (zero, one, two) = (number(0.0), number(1.0), number(2.0));
    let off = delta - one;
    let warm = tau - one;
    let square = off * off;
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
