//! The terms of Span and Wagner (1996) for the critical region of R-744.
//!
//! Source: J. Phys. Chem. Ref. Data 25 (1996) 1509-1596, doi 10.1063/1.555991, equation 6.1 and table 32.

use super::alpha::Alpha;
use crate::fluid::NonAnalytic;
use crate::numerics::Real;

/// The most non-analytic terms that an equation may have.
pub(super) const MAX_TERMS: usize = 4;

/// The sum of all terms with their derivatives, times the powers of tau and delta that make them pure numbers.
///
/// Inlined, so that the compiler drops what a caller does not use. In the critical point itself, where Delta is zero and the
/// second derivatives are infinite, a term is left out.
#[inline(always)]
pub(super) fn sum<R: Real>(terms: &[NonAnalytic], tau: R, delta: R) -> Alpha<R> {
    let mut sum = Alpha::nothing();
    if terms.is_empty() {
        return sum;
    }
    let number = R::from_f64;
    let (zero, one) = (number(0.0), number(1.0));
    let (off, warm) = (delta - one, tau - one);
    let square = off * off;
    let level = square < number(1e-200);
    let log = if level { zero } else { square.logarithm() };
    // All powers of (delta - 1)^2 and all psi at once, then all logarithms and powers of Delta: runs of one function become
    // vector code.
    let count = terms.len().min(MAX_TERMS);
    let mut powers = [zero; 3 * MAX_TERMS];
    for (three, term) in powers.chunks_exact_mut(3).zip(terms) {
        three[0] = number(1.0 / (2.0 * term.beta)) * log;
        three[1] = number(term.a) * log;
        three[2] = -(number(term.density_width) * square + number(term.temperature_width) * warm * warm);
    }
    R::exponential_all(&mut powers[..3 * count]);
    let mut bigs = [Big::nothing(); MAX_TERMS];
    let mut raised = [one; MAX_TERMS];
    for (((big, raised), three), term) in bigs.iter_mut().zip(&mut raised).zip(powers.chunks_exact(3)).zip(terms) {
        if !level {
            *big = Big::new(term, warm, off, three[0], three[1]);
        } else {
            big.theta = -warm;
            big.value = warm * warm;
        }
        if big.value >= number(1e-280) {
            *raised = big.value;
        }
    }
    R::logarithm_all(&mut raised[..count]);
    for (raised, term) in raised.iter_mut().zip(terms) {
        *raised = number(term.b) * *raised;
    }
    R::exponential_all(&mut raised[..count]);
    for (((big, &raised), three), term) in bigs.iter().zip(&raised).zip(powers.chunks_exact(3)).zip(terms) {
        if big.value >= number(1e-280) {
            sum.add(one_term(term, (tau, warm), (delta, off), big, raised, three[2]));
        }
    }
    sum
}

/// Delta of a term, which is theta^2 + B ((delta - 1)^2)^a, with its derivatives by delta; those by tau follow from theta.
#[derive(Clone, Copy)]
struct Big<R> {
    value: R,
    d: R,
    dd: R,
    theta: R,
    theta_d: R,
}

impl<R: Real> Big<R> {
    fn nothing() -> Self {
        let zero = R::from_f64(0.0);
        Self {
            value: zero,
            d: zero,
            dd: zero,
            theta: zero,
            theta_d: zero,
        }
    }

    /// From ((delta - 1)^2)^(1 / (2 beta)) and ((delta - 1)^2)^a.
    #[inline]
    fn new(term: &NonAnalytic, warm: R, off: R, bent: R, raised: R) -> Self {
        let number = R::from_f64;
        let over = number(1.0) / off;
        // A power of |off| with its first and second derivative.
        let slopes = |factor: f64, power: R, exponent: f64| {
            let value = number(factor) * power;
            let first = number(exponent) * value * over;
            (value, first, number(exponent - 1.0) * first * over)
        };
        let (bent, bent_d, bent_dd) = slopes(term.theta_factor, bent, 1.0 / term.beta);
        let (raised, raised_d, raised_dd) = slopes(term.delta_factor, raised, 2.0 * term.a);
        let theta = bent - warm;
        let twice = theta + theta;
        Self {
            value: theta * theta + raised,
            d: twice * bent_d + raised_d,
            dd: number(2.0) * bent_d * bent_d + twice * bent_dd + raised_dd,
            theta,
            theta_d: bent_d,
        }
    }
}

/// One term from its Delta, Delta^b and psi; tau and delta come with their differences from 1.
#[inline(always)]
fn one_term<R: Real>(
    term: &NonAnalytic,
    (tau, warm): (R, R),
    (delta, off): (R, R),
    big: &Big<R>,
    f: R,
    psi: R,
) -> Alpha<R> {
    let number = R::from_f64;
    let (one, two) = (number(1.0), number(2.0));
    let (big_t, big_tt, big_dt) = (-(two * big.theta), two, -(two * big.theta_d));
    let less = number(term.b - 1.0) / big.value;
    let over = number(term.b) * f / big.value;
    let f_d = over * big.d;
    let f_t = over * big_t;
    let f_dd = over * (big.dd + less * big.d * big.d);
    let f_tt = over * (big_tt + less * big_t * big_t);
    let f_dt = over * (big_dt + less * big.d * big_t);

    let (c, d) = (number(2.0 * term.density_width), number(2.0 * term.temperature_width));
    let psi_d = -(c * off * psi);
    let psi_dd = (c * off * off - one) * c * psi;
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
