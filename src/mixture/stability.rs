//! Whether a phase would split: the tangent plane test.
//!
//! Source: Michelsen, Fluid Phase Equilib. 9 (1982) 1, doi 10.1016/0378-3812(82)85001-2.

use super::MOST_COMPONENTS;
use super::density::{Homogeneous, Root};
use super::phase::{Mixture, Vector};

const MOST_STEPS: usize = 60;
/// The change of the logarithm of an amount at which a trial phase has settled.
const SETTLED: f64 = 1e-9;
/// A trial phase this near to the phase itself is the phase itself.
const SAME: f64 = 1e-4;
/// How far below the tangent plane a trial has to lie.
const BELOW: f64 = 1e-10;

impl Mixture<f64> {
    /// A composition that lies below the tangent plane of the phase `feed` of the mole fractions `z`, and the root that
    /// it lies on; `None` where neither a vapour-like nor a liquid-like trial finds one.
    pub(super) fn unstable_towards(
        &self,
        z: &[f64],
        feed: &Homogeneous,
        t_k: f64,
        p_pa: f64,
    ) -> Option<(Vector<f64>, Root)> {
        let mut lowest = (-BELOW, None);
        for root in [Root::Thin, Root::Dense] {
            if let Some((depth, trial)) = self.trial(z, feed, t_k, p_pa, root)
                && depth < lowest.0
            {
                lowest = (depth, Some((trial, root)));
            }
        }
        lowest.1
    }

    /// Follows one trial phase by successive substitution, sped up by the dominant eigenvalue, to its distance from the
    /// tangent plane.
    #[inline(never)]
    fn trial(&self, z: &[f64], feed: &Homogeneous, t_k: f64, p_pa: f64, root: Root) -> Option<(f64, Vector<f64>)> {
        let n = z.len();
        let mut plane = [0.0; MOST_COMPONENTS];
        let mut amounts = [0.0; MOST_COMPONENTS];
        for (i, component) in self.components().iter().enumerate() {
            plane[i] = libm::log(z[i]) + feed.ln_fugacity_coefficient(i);
            let ratio = component.about_saturation_pa(t_k) / p_pa;
            amounts[i] = match root {
                Root::Thin => z[i] * ratio,
                Root::Dense => z[i] / ratio,
            };
        }
        let mut last = ([0.0; MOST_COMPONENTS], 0.0);
        for round in 0..MOST_STEPS {
            let total = amounts[..n].iter().sum::<f64>();
            let x = amounts.map(|amount| amount / total);
            let phase = match self.homogeneous(&x[..n], t_k, p_pa, root) {
                Some(phase) => phase,
                None => self.stabler(&x[..n], t_k, p_pa)?,
            };
            let mut step = [0.0; MOST_COMPONENTS];
            let (mut square, mut overlap, mut from_feed) = (0.0, 0.0, 0.0f64);
            for i in 0..n {
                let next = plane[i] - phase.ln_fugacity_coefficient(i);
                step[i] = next - libm::log(amounts[i]);
                square += step[i] * step[i];
                overlap += step[i] * last.0[i];
                from_feed = f64::max(from_feed, libm::fabs(libm::log(x[i] / z[i])));
            }
            if !square.is_finite() {
                return None;
            }
            let near = libm::fabs(phase.rho_mol_m3 / feed.rho_mol_m3 - 1.0) < SAME;
            if from_feed < SAME && near {
                return None;
            }
            // Every third round the rest of the geometric series is added at once.
            let share = overlap / last.1;
            let speed = if round % 3 == 2 && share > 0.0 && share < 0.95 {
                1.0 / (1.0 - share)
            } else {
                1.0
            };
            for i in 0..n {
                amounts[i] *= libm::exp((speed * step[i]).clamp(-5.0, 5.0));
            }
            last = (step, square);
            let total = amounts[..n].iter().sum::<f64>();
            if square < SETTLED * SETTLED || (round > 3 && square < 1e-6 && total > 1.01) {
                // In a stationary point the distance is 1 - the sum of the amounts.
                let x = amounts.map(|amount| amount / total);
                return Some((1.0 - total, x));
            }
        }
        let total = amounts[..n].iter().sum::<f64>();
        Some((1.0 - total, amounts.map(|amount| amount / total)))
    }
}
