//! The densities at which one composition has a given pressure.

use super::MOST_COMPONENTS;
use super::component::Pair;
use super::departure::departure;
use super::incipient::filled;
use super::phase::{Mixture, PhaseProperties};
use crate::eos::Isotherm;
use crate::numerics::GAS_J_MOL_K;

const MOST_STEPS: usize = 60;
/// The relative step after which the next would be below rounding.
const STEP: f64 = 1e-7;
/// Liquids are looked for below this multiple of the reducing density.
const DENSEST: f64 = 4.5;

/// Which of two roots is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Root {
    /// From the dense end down.
    Dense,
    /// From the ideal gas up.
    Thin,
}

/// A homogeneous phase at a temperature and pressure.
#[derive(Clone, Copy, Debug)]
pub(super) struct Homogeneous {
    pub(super) rho_mol_m3: f64,
    pub(super) phase: PhaseProperties<f64>,
}

impl Homogeneous {
    /// ln phi_i.
    pub(super) fn ln_fugacity_coefficient(&self, i: usize) -> f64 {
        self.phase.mu[i] - libm::log(self.phase.pi / self.rho_mol_m3)
    }
}

impl Mixture<f64> {
    /// The phase of the mole fractions `x` at a temperature (K) and pressure (Pa); `None` where there is no such root.
    ///
    /// Newton's method from outside, which is monotone on the stable part of an isotherm; it ends without a result where the
    /// isotherm has an extremum.
    pub(super) fn homogeneous(&self, x: &[f64], t_k: f64, p_pa: f64, root: Root) -> Option<Homogeneous> {
        let aim = p_pa / (GAS_J_MOL_K * t_k);
        let reducing_rho = self.reducing_rho_mol_m3(x);
        let isotherms = self.isotherms(x, t_k);
        let pressure = |rho: f64| self.pressure(&isotherms, x, rho / reducing_rho, rho);
        let densest = DENSEST * reducing_rho;
        let mut rho = match root {
            Root::Thin => f64::min(aim, 0.5 * reducing_rho),
            Root::Dense => {
                let off = f64::max(1.0 - t_k / self.reducing_t_k(x), 0.0);
                let mut rho = reducing_rho * (1.6 + 0.75 * off + 1.75 * libm::cbrt(off));
                // Up to a density at which the pressure is above the one asked for.
                while pressure(rho).0 < aim {
                    rho *= 1.1;
                    if rho > densest {
                        return None;
                    }
                }
                rho
            }
        };
        for _ in 0..MOST_STEPS {
            let (pi, slope) = pressure(rho);
            if slope <= 0.0 {
                return None;
            }
            let step = (aim - pi) / (slope * rho);
            if step.is_nan() {
                return None;
            }
            rho *= 1.0 + step.clamp(-0.3, 0.3);
            if libm::fabs(step) < STEP {
                let phase = self.phase(t_k, &filled(x, rho));
                return (phase.pi > 0.0).then_some(Homogeneous { rho_mol_m3: rho, phase });
            }
        }
        None
    }

    /// The root of the lower Gibbs energy.
    pub(super) fn stabler(&self, x: &[f64], t_k: f64, p_pa: f64) -> Option<Homogeneous> {
        let gibbs = |found: &Homogeneous| -> f64 {
            let parts = x.iter().enumerate();
            parts.map(|(i, x)| x * found.ln_fugacity_coefficient(i)).sum()
        };
        let dense = self.homogeneous(x, t_k, p_pa, Root::Dense);
        let thin = self.homogeneous(x, t_k, p_pa, Root::Thin);
        match (dense, thin) {
            (Some(dense), Some(thin)) if gibbs(&thin) < gibbs(&dense) => Some(thin),
            (Some(dense), _) => Some(dense),
            (None, thin) => thin,
        }
    }

    fn isotherms(&self, x: &[f64], t_k: f64) -> [Option<Isotherm<f64>>; MOST_COMPONENTS] {
        let tau = self.reducing_t_k(x) / t_k;
        let mut isotherms = [None; MOST_COMPONENTS];
        for (isotherm, component) in isotherms.iter_mut().zip(self.components()) {
            *isotherm = Some(Isotherm::at_tau(&component.fluid.equation, tau));
        }
        isotherms
    }

    /// p / (R T) and its derivative by density.
    fn pressure(
        &self,
        isotherms: &[Option<Isotherm<f64>>; MOST_COMPONENTS],
        x: &[f64],
        delta: f64,
        rho: f64,
    ) -> (f64, f64) {
        let (mut d, mut dd) = (0.0, 0.0);
        let mut tau = 1.0;
        for (isotherm, &x) in isotherms.iter().flatten().zip(x) {
            tau = isotherm.tau();
            let own = isotherm.density_slopes(delta * isotherm.equation().reducing_rho_mol_m3);
            d += x * own.0;
            dd += x * own.1;
        }
        let components = self.components();
        for i in 0..x.len() {
            for j in i + 1..x.len() {
                let (pair, _) = Pair::of(components[i], components[j]);
                if !pair.departure.is_empty() {
                    let shared = departure(pair.departure, pair.factor, tau, delta);
                    d += x[i] * x[j] * shared.d;
                    dd += x[i] * x[j] * shared.dd;
                }
            }
        }
        (rho * (1.0 + d), 1.0 + 2.0 * d + dd)
    }
}
