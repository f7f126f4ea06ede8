//! The reduced Helmholtz energy along an isotherm.
//!
//! Every term but the non-analytic ones is a factor of tau times a factor of delta. The first is computed once per
//! temperature and kept, so that a search for a density pays for the second alone.

use super::non_analytic;
use crate::fluid::Equation;
use crate::numerics::Real;

/// The most terms, non-analytic ones aside, that an equation may have.
pub const MAX_TERMS: usize = 48;
/// The highest power of delta in an equation.
const MAX_D: usize = 15;
/// The highest power of delta within an exponential.
const MAX_L: usize = 7;
/// The most terms with an exponential of their own.
const MAX_GAUSSIAN: usize = 16;

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

/// The factor of one term that depends on tau, and tau and tau^2 times its derivatives.
#[derive(Clone, Copy, Debug)]
struct Thermal<R> {
    a: R,
    t: R,
    tt: R,
}

/// An equation of state at one temperature.
#[derive(Clone, Copy, Debug)]
pub struct Isotherm<R> {
    equation: &'static Equation,
    tau: R,
    thermal: [Thermal<R>; MAX_TERMS],
}

impl<R: Real> Isotherm<R> {
    /// The equation at the temperature `t_k`, K.
    #[inline]
    pub fn new(equation: &'static Equation, t_k: R) -> Self {
        Self::at_tau(equation, R::from_f64(equation.reducing_t_k) / t_k)
    }

    /// The equation at tau = T_r / T.
    #[inline]
    pub fn at_tau(equation: &'static Equation, tau: R) -> Self {
        let number = R::from_f64;
        let ln_tau = tau.logarithm();
        let zero = number(0.0);
        // First the logarithm of each factor, and tau and tau^2 times the derivatives of that logarithm's power.
        let mut factors = [zero; MAX_TERMS];
        let mut thermal = [Thermal {
            a: zero,
            t: zero,
            tt: zero,
        }; MAX_TERMS];
        let mut slots = factors.iter_mut().zip(&mut thermal);
        for (term, (factor, thermal)) in equation.power.iter().zip(&mut slots) {
            *factor = number(term.t) * ln_tau;
            *thermal = Thermal {
                a: number(term.n),
                t: number(term.t),
                tt: number(term.t * (term.t - 1.0)),
            };
        }
        for (term, (factor, thermal)) in equation.gaussian.iter().zip(&mut slots) {
            let off = tau - number(term.gamma);
            let slope = number(2.0 * term.beta) * tau;
            *factor = number(term.t) * ln_tau - number(term.beta) * off * off;
            let first = number(term.t) - slope * off;
            *thermal = Thermal {
                a: number(term.n),
                t: first,
                tt: first * first - number(term.t) - slope * tau,
            };
        }
        for (term, (factor, thermal)) in equation.double_exponential.iter().zip(&mut slots) {
            let inner = (number(term.m) * ln_tau).exponential();
            *factor = number(term.t) * ln_tau - inner;
            let first = number(term.t) - number(term.m) * inner;
            *thermal = Thermal {
                a: number(term.n),
                t: first,
                tt: first * first - number(term.t) - number(term.m * (term.m - 1.0)) * inner,
            };
        }
        let count = equation.separable_terms().min(MAX_TERMS);
        R::exponential_all(&mut factors[..count]);
        for (thermal, factor) in thermal.iter_mut().zip(factors).take(count) {
            thermal.a = thermal.a * factor;
            thermal.t = thermal.t * thermal.a;
            thermal.tt = thermal.tt * thermal.a;
        }
        Self { equation, tau, thermal }
    }

    /// The equation.
    pub fn equation(&self) -> &'static Equation {
        self.equation
    }

    /// T_r / T.
    pub fn tau(&self) -> R {
        self.tau
    }

    /// ln(rho / rho_r).
    pub fn ln_delta(&self, rho_mol_m3: R) -> R {
        (rho_mol_m3 / R::from_f64(self.equation.reducing_rho_mol_m3)).logarithm()
    }

    /// Temperature, K.
    pub fn t_k(&self) -> R {
        R::from_f64(self.equation.reducing_t_k) / self.tau
    }

    /// The residual part at the molar density `rho_mol_m3`, mol/m3, with all first and second derivatives.
    #[inline]
    pub fn residual(&self, rho_mol_m3: R) -> Alpha<R> {
        let zero = R::from_f64(0.0);
        let delta = rho_mol_m3 / R::from_f64(self.equation.reducing_rho_mol_m3);
        let mut sum = Alpha {
            a: zero,
            d: zero,
            dd: zero,
            t: zero,
            tt: zero,
            dt: zero,
        };
        self.for_each_term(delta, |thermal, w, first, second| {
            sum.a = sum.a + thermal.a * w;
            sum.t = sum.t + thermal.t * w;
            sum.tt = sum.tt + thermal.tt * w;
            let slope = w * first;
            sum.d = sum.d + thermal.a * slope;
            sum.dt = sum.dt + thermal.t * slope;
            sum.dd = sum.dd + thermal.a * (w * second);
        });
        non_analytic::for_each_term(self.equation.non_analytic, self.tau, delta, |more| {
            sum.a = sum.a + more.a;
            sum.d = sum.d + more.d;
            sum.dd = sum.dd + more.dd;
            sum.t = sum.t + more.t;
            sum.tt = sum.tt + more.tt;
            sum.dt = sum.dt + more.dt;
        });
        sum
    }

    /// delta alpha_delta and delta^2 alpha_delta_delta of the residual part: what a search for a density needs.
    #[inline]
    pub fn density_slopes(&self, rho_mol_m3: R) -> (R, R) {
        let zero = R::from_f64(0.0);
        let delta = rho_mol_m3 / R::from_f64(self.equation.reducing_rho_mol_m3);
        let (mut d, mut dd) = (zero, zero);
        self.for_each_term(delta, |thermal, w, first, second| {
            let a = thermal.a * w;
            d = d + a * first;
            dd = dd + a * second;
        });
        non_analytic::for_each_term(self.equation.non_analytic, self.tau, delta, |more| {
            d = d + more.d;
            dd = dd + more.dd;
        });
        (d, dd)
    }

    /// Pressure in Pa and its derivative by molar density in J/mol.
    #[inline]
    pub fn pressure_pa(&self, rho_mol_m3: R) -> (R, R) {
        let one = R::from_f64(1.0);
        let (d, dd) = self.density_slopes(rho_mol_m3);
        let rt = R::from_f64(self.equation.gas_constant) * self.t_k();
        (rho_mol_m3 * rt * (one + d), rt * (one + (d + d) + dd))
    }

    /// Calls `each` for every separable term with its thermal factor, its factor w of delta, delta w'/w and
    /// delta^2 w''/w.
    #[inline(always)]
    fn for_each_term(&self, delta: R, mut each: impl FnMut(&Thermal<R>, R, R, R)) {
        let number = R::from_f64;
        let density = DensityPowers::new(self.equation, delta);
        let mut thermal = self.thermal.iter();
        for (term, thermal) in self.equation.power.iter().zip(&mut thermal) {
            density.damped(term.d, term.l, |w, first, second| each(thermal, w, first, second));
        }
        let gaussian = self.equation.gaussian;
        let mut bells = [delta; MAX_GAUSSIAN];
        let bells = &mut bells[..gaussian.len().min(MAX_GAUSSIAN)];
        for (bell, term) in bells.iter_mut().zip(gaussian) {
            let off = delta - number(term.epsilon);
            *bell = -(number(term.eta) * off * off);
        }
        R::exponential_all(bells);
        for ((term, bell), thermal) in gaussian.iter().zip(bells).zip(&mut thermal) {
            let d = number(f64::from(term.d));
            let slope = number(2.0 * term.eta) * delta;
            let first = d - slope * (delta - number(term.epsilon));
            let second = first * first - d - slope * delta;
            each(
                thermal,
                density.powers[usize::from(term.d) & MAX_D] * *bell,
                first,
                second,
            );
        }
        for (term, thermal) in self.equation.double_exponential.iter().zip(&mut thermal) {
            density.damped(term.d, term.l, |w, first, second| each(thermal, w, first, second));
        }
    }
}

/// delta^d and exp(-delta^l) for the exponents that an equation needs.
struct DensityPowers<R> {
    powers: [R; MAX_D + 1],
    damping: [R; MAX_L + 1],
}

impl<R: Real> DensityPowers<R> {
    #[inline(always)]
    fn new(equation: &Equation, delta: R) -> Self {
        let one = R::from_f64(1.0);
        let mut powers = [one; MAX_D + 1];
        powers[1] = delta;
        for d in 2..=MAX_D {
            powers[d] = powers[d / 2] * powers[d - d / 2];
        }
        let mut damping = [one; MAX_L + 1];
        let deepest = equation.deepest_damping().min(MAX_L);
        for l in 1..=deepest {
            damping[l] = -powers[l];
        }
        R::exponential_all(&mut damping[1..=deepest]);
        Self { powers, damping }
    }

    /// delta^d exp(-delta^l) and delta and delta^2 times its logarithmic derivatives.
    #[inline(always)]
    fn damped(&self, d: u8, l: u8, each: impl FnOnce(R, R, R)) {
        let power = self.powers[usize::from(d) & MAX_D];
        let d = R::from_f64(f64::from(d));
        if l == 0 {
            return each(power, d, d * d - d);
        }
        let inner = self.powers[usize::from(l) & MAX_D];
        let w = power * self.damping[usize::from(l) & MAX_L];
        let l = f64::from(l);
        let first = d - R::from_f64(l) * inner;
        each(w, first, first * first - d - R::from_f64(l * (l - 1.0)) * inner);
    }
}
