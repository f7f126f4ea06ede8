//! One phase of a mixture: the residual Helmholtz energy with what equilibria need of it.
//!
//! Everything is a function of temperature and of the amounts of the components per volume, rho_i. The residual energy per
//! volume over RT is Psi = rho alpha(tau, delta, x), with
//!
//! alpha = sum x_i alpha_i(tau, delta) + sum_{i<j} x_i x_j F_ij alpha_ij(tau, delta).
//!
//! Source: Kunz and Wagner, J. Chem. Eng. Data 57 (2012) 3032, doi 10.1021/je300655b, equations 9 to 17; the
//! formulation in rho_i after Bell and Deiters, AIChE J. 64 (2018) 2745, doi 10.1002/aic.16074.

use super::component::{Component, Pair};
use super::departure::departure;
use super::reducing::Reducing;
use super::{MOST_COMPONENTS, tables};
use crate::eos::{Alpha, Alpha0, Isotherm};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use crate::numerics::{GAS_J_MOL_K, Real};
use crate::range::Range;

/// A list with a place for every component; those beyond the number of components are not used.
pub type Vector<R> = [R; MOST_COMPONENTS];

/// The multi-fluid model of a mixture of given components, at any composition.
#[derive(Clone, Copy, Debug)]
pub struct Mixture<R> {
    count: usize,
    components: [&'static Component; MOST_COMPONENTS],
    temperature: Reducing<R>,
    volume: Reducing<R>,
}

/// A phase at one temperature and set of amounts per volume.
#[derive(Clone, Copy, Debug)]
pub struct PhaseProperties<R> {
    /// Molar density, mol/m3.
    pub rho_mol_m3: R,
    /// p / (R T), mol/m3.
    pub pi: R,
    /// dPsi/drho_i: the residual chemical potential over R T, at constant volume.
    pub mu: Vector<R>,
    /// d2Psi/drho_i drho_j, m3/mol.
    pub mu_by_rho: [Vector<R>; MOST_COMPONENTS],
    /// T dmu_i/dT at constant rho_i.
    pub mu_by_ln_t: Vector<R>,
    /// T dpi/dT at constant rho_i, mol/m3.
    pub pi_by_ln_t: R,
    /// tau alpha_tau: the residual internal energy over R T.
    pub warmth: R,
    /// tau^2 alpha_tautau: the residual isochoric heat capacity over R, with the other sign.
    pub warmth_slope: R,
    /// alpha.
    pub alpha: R,
}

impl<R: Real> Mixture<R> {
    /// The model of a mixture of these components.
    ///
    /// Errors: `OutOfRange` for no component or more than [`MOST_COMPONENTS`]; `Inconsistent` where one is given twice.
    pub fn new(components: &[&'static Component]) -> Result<Self, Error> {
        let number = R::from_f64;
        let zero = number(0.0);
        let count = components.len();
        Range::new(Quantity::Rows, 1.0, MOST_COMPONENTS as f64).check(count as f64)?;
        for (i, one) in components.iter().enumerate() {
            if components[..i].iter().any(|other| other.number == one.number) {
                return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
            }
        }
        let empty = Reducing {
            own: [zero; MOST_COMPONENTS],
            cross: [[zero; MOST_COMPONENTS]; MOST_COMPONENTS],
            skew: [[zero; MOST_COMPONENTS]; MOST_COMPONENTS],
        };
        let mut mixture = Self {
            count,
            components: [&tables::COMPONENTS[0]; MOST_COMPONENTS],
            temperature: empty,
            volume: empty,
        };
        mixture.components[..count].copy_from_slice(&components[..count]);
        let mut edge = [zero; MOST_COMPONENTS];
        for (i, component) in components[..count].iter().enumerate() {
            let equation = &component.fluid.equation;
            let volume = number(1.0) / number(equation.reducing_rho_mol_m3);
            mixture.temperature.own[i] = number(equation.reducing_t_k);
            mixture.volume.own[i] = volume;
            edge[i] = (volume.logarithm() / number(3.0)).exponential();
        }
        for i in 0..count {
            for j in i + 1..count {
                let (pair, is_turned) = Pair::of(components[i], components[j]);
                let turn = |beta: f64| {
                    if is_turned {
                        number(1.0) / number(beta)
                    } else {
                        number(beta)
                    }
                };
                let (beta_t, gamma_t) = (turn(pair.beta_t), number(pair.gamma_t));
                let (beta_v, gamma_v) = (turn(pair.beta_v), number(pair.gamma_v));
                let own = &mixture.temperature.own;
                mixture.temperature.cross[i][j] = number(2.0) * beta_t * gamma_t * (own[i] * own[j]).square_root();
                mixture.temperature.skew[i][j] = beta_t * beta_t;
                let edges = edge[i] + edge[j];
                mixture.volume.cross[i][j] = number(0.25) * beta_v * gamma_v * edges * edges * edges;
                mixture.volume.skew[i][j] = beta_v * beta_v;
            }
        }
        Ok(mixture)
    }

    /// The same model with gamma_T of one pair, by the places of its two components, times `factor`: it shows the effect of the
    /// uncertainty of that parameter.
    pub fn with_gamma_t_times(mut self, one: usize, other: usize, factor: R) -> Self {
        let cross = &mut self.temperature.cross[one.min(other)][one.max(other)];
        *cross = *cross * factor;
        self
    }

    /// The parameters of the components at two places.
    pub fn pair(&self, one: usize, other: usize) -> &'static Pair {
        Pair::of(self.components[one], self.components[other]).0
    }

    /// The components.
    pub fn components(&self) -> &[&'static Component] {
        &self.components[..self.count]
    }

    /// The reducing temperature, K, at mole fractions above zero.
    pub fn reducing_t_k(&self, x: &[R]) -> R {
        self.temperature.at(x).value
    }

    /// The reducing density, mol/m3, at mole fractions above zero.
    pub fn reducing_rho_mol_m3(&self, x: &[R]) -> R {
        R::from_f64(1.0) / self.volume.at(x).value
    }

    /// The residual reduced Helmholtz energy alpha at a temperature (K), molar density (mol/m3) and composition.
    pub fn residual(&self, t_k: R, rho_mol_m3: R, x: &[R]) -> R {
        let mut rho = [R::from_f64(0.0); MOST_COMPONENTS];
        for (rho, x) in rho.iter_mut().zip(x) {
            *rho = rho_mol_m3 * *x;
        }
        self.phase(t_k, &rho).alpha
    }

    /// The phase at a temperature (K) and amounts per volume (mol/m3), all above zero.
    pub fn phase(&self, t_k: R, rho: &Vector<R>) -> PhaseProperties<R> {
        let (zero, one) = (R::from_f64(0.0), R::from_f64(1.0));
        let n = self.count;
        let total = rho[..n].iter().fold(zero, |sum, &rho| sum + rho);
        let x = rho.map(|rho| rho / total);
        let reduced_t = self.temperature.at(&x[..n]);
        let reduced_v = self.volume.at(&x[..n]);
        let tau = reduced_t.value / t_k;
        let delta = total * reduced_v.value;

        // a, d, t: the components' own parts, to which the pairs add what they share; c: the same without the factor of
        // the component itself.
        let (mut a, mut d, mut t) = (
            [zero; MOST_COMPONENTS],
            [zero; MOST_COMPONENTS],
            [zero; MOST_COMPONENTS],
        );
        let mut c = [zero; MOST_COMPONENTS];
        let mut cross = [[zero; MOST_COMPONENTS]; MOST_COMPONENTS];
        let (mut alpha, mut by_d, mut by_t) = (zero, zero, zero);
        let (mut by_dd, mut by_tt, mut by_dt) = (zero, zero, zero);
        let mut add = |share: R, part: &Alpha<R>| {
            alpha = alpha + share * part.a;
            by_d = by_d + share * part.d;
            by_t = by_t + share * part.t;
            by_dd = by_dd + share * part.dd;
            by_tt = by_tt + share * part.tt;
            by_dt = by_dt + share * part.dt;
        };
        for i in 0..n {
            let equation = &self.components[i].fluid.equation;
            let own = Isotherm::at_tau(equation, tau).residual(delta * R::from_f64(equation.reducing_rho_mol_m3));
            add(x[i], &own);
            (a[i], d[i], t[i]) = (a[i] + own.a, d[i] + own.d, t[i] + own.t);
            for j in i + 1..n {
                let (pair, _) = Pair::of(self.components[i], self.components[j]);
                if pair.departure.is_empty() {
                    continue;
                }
                let shared = departure(pair.departure, pair.factor, tau, delta);
                add(x[i] * x[j], &shared);
                for (i, j) in [(i, j), (j, i)] {
                    a[i] = a[i] + x[j] * shared.a;
                    c[i] = c[i] + x[j] * shared.a;
                    d[i] = d[i] + x[j] * shared.d;
                    t[i] = t[i] + x[j] * shared.t;
                    cross[i][j] = shared.a;
                }
            }
        }
        // D_i at constant tau and delta of f(x) with the partial derivatives f_i: f_i - sum x_k f_k.
        let mean = |f: &Vector<R>| (0..n).fold(zero, |sum, k| sum + x[k] * f[k]);
        let less_mean = |f: &Vector<R>| {
            let mean = mean(f);
            f.map(|f| f - mean)
        };
        let (own_a, own_d, own_t) = (less_mean(&a), less_mean(&d), less_mean(&t));
        let q = mean(&c);
        // D_i ln tau and D_i ln delta
        let lean_t = reduced_t.first;
        let lean_d = reduced_v.first.map(|first| one + first);

        let (d_and_dd, t_and_tt) = (by_d + by_dd, by_t + by_tt);
        let mut phase = PhaseProperties {
            rho_mol_m3: total,
            pi: total * (one + by_d),
            mu: [zero; MOST_COMPONENTS],
            mu_by_rho: [[zero; MOST_COMPONENTS]; MOST_COMPONENTS],
            mu_by_ln_t: [zero; MOST_COMPONENTS],
            pi_by_ln_t: -(total * by_dt),
            warmth: by_t,
            warmth_slope: by_tt,
            alpha,
        };
        for i in 0..n {
            phase.mu[i] = alpha + by_t * lean_t[i] + by_d * lean_d[i] + own_a[i];
            phase.mu_by_ln_t[i] = -(by_t + t_and_tt * lean_t[i] + by_dt * lean_d[i] + own_t[i]);
            for j in 0..=i {
                let bent = by_t * reduced_t.second[i][j] + by_d * (one + reduced_v.second[i][j]);
                let lean = t_and_tt * lean_t[i] * lean_t[j]
                    + d_and_dd * lean_d[i] * lean_d[j]
                    + by_dt * (lean_t[i] * lean_d[j] + lean_t[j] * lean_d[i]);
                let both = own_t[i] * lean_t[j] + own_t[j] * lean_t[i] + own_d[i] * lean_d[j] + own_d[j] * lean_d[i];
                let shared = cross[i][j] - c[i] - c[j] + q;
                let value = (bent + lean + both + shared) / total;
                phase.mu_by_rho[i][j] = value;
                phase.mu_by_rho[j][i] = value;
            }
        }
        phase
    }

    /// Molar enthalpy (J/mol) and entropy (J/(mol K)) of a phase, with the constants of the components' papers.
    ///
    /// The caloric part of each ideal gas keeps the gas constant of its paper (values up to 3e-6 apart); all else has the one of [`GAS_J_MOL_K`].
    pub fn enthalpy_entropy(&self, t_k: R, rho: &Vector<R>, phase: &PhaseProperties<R>) -> (R, R) {
        let number = R::from_f64;
        let gas = number(GAS_J_MOL_K);
        let total = phase.rho_mol_m3;
        let mut h = gas * t_k * (phase.pi / total + phase.warmth);
        let mut s = gas * (phase.warmth - phase.alpha);
        for (component, &rho) in self.components().iter().zip(rho) {
            let equation = &component.fluid.equation;
            let tau = number(equation.reducing_t_k) / t_k;
            let ideal = Alpha0::new(&equation.ideal, tau, tau.logarithm());
            let own_gas = number(equation.gas_constant);
            let x = rho / total;
            h = h + x * own_gas * t_k * ideal.t;
            let thinned = (rho / number(equation.reducing_rho_mol_m3)).logarithm();
            s = s + x * (own_gas * (ideal.t - ideal.a) - gas * thinned);
        }
        (h, s)
    }
}
