//! The reduced Helmholtz energy with its derivatives, as a sum of terms.

use crate::numerics::Real;

/// alpha and its derivatives, each times the powers of tau and delta that make it a pure number.
#[derive(Clone, Copy, Debug)]
pub struct Alpha<R> {
    /// alpha.
    pub a: R,
    /// delta alpha_delta.
    pub d: R,
    /// delta^2 alpha_delta_delta.
    pub dd: R,
    /// tau alpha_tau.
    pub t: R,
    /// tau^2 alpha_tau_tau.
    pub tt: R,
    /// delta tau alpha_delta_tau.
    pub dt: R,
}

impl<R: Real> Alpha<R> {
    pub(crate) fn nothing() -> Self {
        let zero = R::from_f64(0.0);
        Self {
            a: zero,
            d: zero,
            dd: zero,
            t: zero,
            tt: zero,
            dt: zero,
        }
    }

    #[inline(always)]
    pub(super) fn add(&mut self, more: Self) {
        self.a = self.a + more.a;
        self.d = self.d + more.d;
        self.dd = self.dd + more.dd;
        self.t = self.t + more.t;
        self.tt = self.tt + more.tt;
        self.dt = self.dt + more.dt;
    }

    /// Adds the term `a` = f(tau) g(delta), given (tau f'/f, tau^2 f''/f) and (delta g'/g, delta^2 g''/g).
    #[inline(always)]
    pub(super) fn add_term(&mut self, a: R, (t, tt): (R, R), (d, dd): (R, R)) {
        let (by_d, by_t) = (a * d, a * t);
        self.a = self.a + a;
        self.d = self.d + by_d;
        self.dd = self.dd + a * dd;
        self.t = self.t + by_t;
        self.tt = self.tt + a * tt;
        self.dt = self.dt + t * by_d;
    }

    /// This sum times exp(-delta^l), which `damping` is.
    #[inline(always)]
    pub(super) fn damped(self, l: u8, delta_to_l: R, damping: R) -> Self {
        let l = f64::from(l);
        let x = R::from_f64(l) * delta_to_l;
        let twice = x + x;
        Self {
            a: damping * self.a,
            d: damping * (self.d - x * self.a),
            dd: damping * (self.dd - twice * self.d + x * (x - R::from_f64(l - 1.0)) * self.a),
            t: damping * self.t,
            tt: damping * self.tt,
            dt: damping * (self.dt - x * self.t),
        }
    }
}
