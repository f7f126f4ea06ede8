//! The reduced Helmholtz energy along an isotherm.
//!
//! Every term but the non-analytic ones is a factor of tau times a factor of delta. The first is computed once per temperature
//! and kept, so that a search for a density evaluates only the second.

use super::alpha::Alpha;
use super::non_analytic;
use crate::fluid::Equation;
use crate::numerics::Real;

/// The most terms, non-analytic ones aside, that an equation may have.
pub(super) const MAX_TERMS: usize = 48;
/// The highest power of delta in an equation.
pub(super) const MAX_D: usize = 15;
/// The highest power of delta within an exponential.
pub(super) const MAX_L: usize = 7;
/// The most terms that are Gaussian or have a second exponential.
pub(super) const MAX_BENT: usize = 8;

/// An equation of state at one temperature.
#[derive(Clone, Copy, Debug)]
pub struct Isotherm<R> {
    equation: &'static Equation,
    tau: R,
    ln_tau: R,
    /// The factor of each term that depends on tau, with its coefficient.
    factors: [R; MAX_TERMS],
    /// Of each term whose factor is no mere power: tau and tau^2 times its derivatives, over itself.
    bent: [(R, R); MAX_BENT],
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
        let zero = number(0.0);
        let ln_tau = tau.logarithm();
        let mut isotherm = Self {
            equation,
            tau,
            ln_tau,
            factors: [zero; MAX_TERMS],
            bent: [(zero, zero); MAX_BENT],
        };
        let Equation {
            power,
            gaussian,
            double_exponential,
            ..
        } = equation;
        // First the logarithm of each factor.
        let (of_power, rest) = isotherm.factors.split_at_mut(power.len().min(MAX_TERMS));
        for (term, factor) in power.iter().zip(of_power) {
            *factor = number(term.t) * ln_tau;
        }
        let (of_bell, of_double) = rest.split_at_mut(gaussian.len().min(rest.len()));
        let (bent_bell, bent_double) = isotherm.bent.split_at_mut(gaussian.len().min(MAX_BENT));
        for ((term, factor), bent) in gaussian.iter().zip(of_bell).zip(bent_bell) {
            let off = tau - number(term.gamma);
            let slope = number(2.0 * term.beta) * tau;
            *factor = number(term.t) * ln_tau - number(term.beta) * off * off;
            let first = number(term.t) - slope * off;
            *bent = (first, first * first - number(term.t) - slope * tau);
        }
        for ((term, factor), bent) in double_exponential.iter().zip(of_double).zip(bent_double) {
            let inner = (number(term.m) * ln_tau).exponential();
            *factor = number(term.t) * ln_tau - inner;
            let first = number(term.t) - number(term.m) * inner;
            let second = first * first - number(term.t) - number(term.m * (term.m - 1.0)) * inner;
            *bent = (first, second);
        }
        let count = equation.separable_terms().min(MAX_TERMS);
        R::exponential_all(&mut isotherm.factors[..in_pairs(count).min(MAX_TERMS)]);
        let coefficients = (power.iter().map(|term| term.n))
            .chain(gaussian.iter().map(|term| term.n))
            .chain(double_exponential.iter().map(|term| term.n));
        for (factor, n) in isotherm.factors.iter_mut().zip(coefficients) {
            *factor = number(n) * *factor;
        }
        isotherm
    }

    /// The equation.
    pub fn equation(&self) -> &'static Equation {
        self.equation
    }

    /// T_r / T.
    pub fn tau(&self) -> R {
        self.tau
    }

    /// ln(T_r / T).
    pub fn ln_tau(&self) -> R {
        self.ln_tau
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
        self.sum(rho_mol_m3)
    }

    /// delta alpha_delta and delta^2 alpha_delta_delta of the residual part: what a search for a density needs.
    ///
    /// The compiler drops from the sum what is not returned here.
    #[inline]
    pub fn density_slopes(&self, rho_mol_m3: R) -> (R, R) {
        let Alpha { d, dd, .. } = self.sum(rho_mol_m3);
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

    /// All terms at a molar density.
    #[inline(always)]
    fn sum(&self, rho_mol_m3: R) -> Alpha<R> {
        #[cfg(test)]
        super::tally::one_more();
        let delta = rho_mol_m3 / R::from_f64(self.equation.reducing_rho_mol_m3);
        let mut sum = self.separable(delta);
        sum.add(non_analytic::sum(self.equation.non_analytic, self.tau, delta));
        sum
    }

    /// All terms but the non-analytic ones.
    ///
    /// Terms with the same exponential of delta, which are adjacent, are summed as a polynomial first.
    #[inline(always)]
    fn separable(&self, delta: R) -> Alpha<R> {
        let number = R::from_f64;
        let (zero, one) = (number(0.0), number(1.0));
        let Equation {
            power,
            gaussian,
            double_exponential,
            ..
        } = *self.equation;
        // delta^d for d up to MAX_D.
        let p2 = delta * delta;
        let (p3, p4) = (p2 * delta, p2 * p2);
        let (p5, p6, p7, p8) = (p4 * delta, p4 * p2, p4 * p3, p4 * p4);
        let powers: [R; MAX_D + 1] = [
            one,
            delta,
            p2,
            p3,
            p4,
            p5,
            p6,
            p7,
            p8,
            p8 * delta,
            p8 * p2,
            p8 * p3,
            p8 * p4,
            p8 * p5,
            p8 * p6,
            p8 * p7,
        ];
        let power_of_delta = |d: u8| powers[usize::from(d) & MAX_D];
        // The logarithms of exp(-delta^l), as deep as they are needed, and of the bells: their exponentials go in one run.
        let mut exponentials = [zero; MAX_L + MAX_BENT];
        let deepest = self.equation.deepest_damping().min(MAX_L);
        for (l, damping) in (1..=deepest).zip(&mut exponentials) {
            *damping = -powers[l];
        }
        for (bell, term) in exponentials[deepest..].iter_mut().zip(gaussian) {
            let off = delta - number(term.epsilon);
            *bell = -(number(term.eta) * off * off);
        }
        let count = in_pairs(deepest + gaussian.len()).min(exponentials.len());
        let (first, more) = exponentials[..count.max(4)].split_at_mut(4); // a fixed count is faster where it will do
        R::exponential_all(first);
        R::exponential_all(more);
        let (damping, bells) = exponentials.split_at(deepest);
        let damped = |sum: Alpha<R>, l: u8| match damping.get(usize::from(l).wrapping_sub(1)) {
            Some(&damping) => sum.damped(l, power_of_delta(l), damping),
            None => sum,
        };

        let (mut of_power, rest) = self.factors.split_at(power.len().min(MAX_TERMS));
        let (of_bell, of_double) = rest.split_at(gaussian.len().min(rest.len()));
        let (bent_bell, bent_double) = self.bent.split_at(gaussian.len().min(MAX_BENT));
        let mut total = Alpha::nothing();
        for alike in power.chunk_by(|one, other| one.l == other.l) {
            let (factors, more) = of_power.split_at(alike.len().min(of_power.len()));
            of_power = more;
            let mut sum = Alpha::nothing();
            for (term, &factor) in alike.iter().zip(factors) {
                // Of a power, delta d/d delta applied twice gives d^2; delta^2 times the second derivative follows below.
                let (d, t) = (number(f64::from(term.d)), number(term.t));
                let a = factor * power_of_delta(term.d);
                let (by_d, by_t) = (a * d, a * t);
                sum.a = sum.a + a;
                sum.d = sum.d + by_d;
                sum.t = sum.t + by_t;
                sum.dd = sum.dd + by_d * d;
                sum.tt = sum.tt + by_t * t;
                sum.dt = sum.dt + by_d * t;
            }
            sum.dd = sum.dd - sum.d;
            sum.tt = sum.tt - sum.t;
            total.add(damped(sum, alike.first().map_or(0, |term| term.l)));
        }
        for (((term, &bell), &factor), &thermal) in gaussian.iter().zip(bells).zip(of_bell).zip(bent_bell) {
            let d = number(f64::from(term.d));
            let slope = number(2.0 * term.eta) * delta;
            let first = d - slope * (delta - number(term.epsilon));
            let second = first * first - d - slope * delta;
            total.add_term(factor * power_of_delta(term.d) * bell, thermal, (first, second));
        }
        for ((term, &factor), &thermal) in double_exponential.iter().zip(of_double).zip(bent_double) {
            let d = f64::from(term.d);
            let mut sum = Alpha::nothing();
            sum.add_term(
                factor * power_of_delta(term.d),
                thermal,
                (number(d), number(d * (d - 1.0))),
            );
            total.add(damped(sum, term.l));
        }
        total
    }
}

/// Exponentials are calculated in fours and in pairs, and a pair is faster than a single one.
const fn in_pairs(count: usize) -> usize {
    count.next_multiple_of(2)
}
