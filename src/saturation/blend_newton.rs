//! States of a blend by Newton's method: one phase in temperature and density at once, two phases in pressure and share of vapour.

use super::accuracy::NEAR;
use super::blend_given::Given;
use super::blend_model::{EDGE, Found, Model};
use super::newton_step::{Balance, Step, newton_step};
use super::state::State;
use crate::eos::Properties;
use crate::mixture::{Boiling, Fixed, Side};
use crate::range::Range;

/// Steps in temperature and density; most states take four to eight.
const MOST_STEPS: usize = 25;
/// The search fails after this many steps in a row that would leave the temperatures.
const MOST_CUT: usize = 12;
/// The relative step below which steps that no longer shrink are rounding.
const STEP: f64 = 1e-8;
/// No step changes the logarithm of the density by more.
const LONGEST: f64 = 2.0;
/// No density is tried beyond this multiple of the critical one.
const DENSEST: f64 = 4.5;
/// Steps in pressure and share of vapour; most states take four.
const MOST_BOILING: usize = 25;
/// No such step changes ln p and the share of vapour by more.
const FARTHEST: (f64, f64) = (0.5, 0.3);
/// Differences of ln p and of the share of vapour for the first slopes of the entropy.
const DIFFERENCE: (f64, f64) = (1e-4, 1e-3);
/// Parts of such a step that are tried in turn.
const SHORTER: [f64; 4] = [1.0, 0.4, 0.15, 0.05];
/// How far beyond 0 and 1 a share of vapour may go on the way.
const BEYOND: f64 = 0.1;
/// Residuals of entropy that count as met, and as rounding, relative to the entropy of evaporation.
const ENOUGH: f64 = 1e-13;
const CLOSE: f64 = 1e-9;
/// Steps in ln p and share of vapour below this change nothing.
const NARROW: f64 = 1e-14;

/// The properties by which a state of one phase is searched; energies from the model's reference.
#[derive(Clone, Copy, Debug)]
pub(super) enum Aim {
    /// A pressure (Pa) and an energy.
    Isobar(f64, Given, f64),
    /// An enthalpy (J/kg) and an entropy (J/(kg K)).
    Both(f64, f64),
}

impl Model {
    /// One phase by Newton's method from a temperature and molar density; `None` unless it ends between two temperatures where
    /// the pressure rises with density. Stability is not checked.
    pub(super) fn newton(&self, aim: Aim, start: (f64, f64), (low_k, high_k): (f64, f64)) -> Option<Properties> {
        let blend = self.blend;
        let offset = blend.offset(self.reference());
        let molar_mass = blend.molar_mass;
        let (mut t_k, mut rho) = start;
        let (mut before, mut cut) = (f64::INFINITY, 0);
        for _ in 0..MOST_STEPS {
            let here = self.mixture.properties(t_k, &self.amounts(rho));
            if here.dp_drho_j_mol <= 0.0 || here.cv_j_kg_k <= 0.0 {
                return None;
            }
            let enthalpy = |h_j_kg: f64| {
                let (by_t, by_rho) = here.enthalpy_slopes(molar_mass);
                Balance {
                    missing: h_j_kg - offset.h_j_kg - here.h_j_kg,
                    by_t,
                    by_rho,
                }
            };
            let entropy = |s_j_kg_k: f64| {
                let (by_t, by_rho) = here.entropy_slopes(molar_mass);
                Balance {
                    missing: s_j_kg_k - offset.s_j_kg_k - here.s_j_kg_k,
                    by_t,
                    by_rho,
                }
            };
            let (one, other) = match aim {
                Aim::Both(h_j_kg, s_j_kg_k) => (enthalpy(h_j_kg), entropy(s_j_kg_k)),
                Aim::Isobar(p_pa, given, value) => {
                    let pressure = Balance {
                        missing: p_pa - here.p_pa,
                        by_t: here.dp_dt_pa_k,
                        by_rho: here.dp_drho_j_mol,
                    };
                    match given {
                        Given::Enthalpy => (pressure, enthalpy(value)),
                        Given::Entropy => (pressure, entropy(value)),
                    }
                }
            };
            let Step { warmer, denser, .. } = newton_step(&one, &other);
            if !(warmer + denser).is_finite() {
                return None;
            }
            let next = (t_k + warmer).clamp(low_k * (1.0 - EDGE), high_k * (1.0 + EDGE));
            let change = f64::max(libm::fabs(warmer) / t_k, libm::fabs(denser) / rho);
            let response = here.cp_j_kg_k / here.cv_j_kg_k;
            let is_within = next == t_k + warmer;
            cut = if is_within { 0 } else { cut + 1 };
            if cut == MOST_CUT {
                return None;
            }
            if is_within && (change * response <= NEAR || change <= STEP && change > 0.5 * before) {
                return Some(here.moved(warmer, denser, molar_mass));
            }
            let longer = libm::exp((denser / rho).clamp(-LONGEST, LONGEST));
            rho = f64::min(rho * longer, DENSEST * blend.critical_rho_mol_m3);
            t_k = next;
            before = change;
        }
        None
    }

    /// The state of one phase, liquid or vapour by its density.
    pub(super) fn as_one(&self, found: &Properties) -> State {
        let side = if found.rho_mol_m3 > self.blend.critical_rho_mol_m3 {
            Side::Bubble
        } else {
            Side::Dew
        };
        self.one(found, self.phase_at(found.t_k, side))
    }

    /// The stable state of one phase with an enthalpy and entropy within the valid temperatures and pressures, from a start.
    pub(super) fn one_with_both(&self, h_j_kg: f64, s_j_kg_k: f64, start: (f64, f64)) -> Option<State> {
        let Range { low, high, .. } = self.blend.valid_temperatures();
        let mut found = self.newton(Aim::Both(h_j_kg, s_j_kg_k), start, (low, high))?;
        // The pressure of a liquid amplifies rounding, so that an end of the range counts as met within rounding.
        let pressures = self.blend.valid_pressures();
        let p_pa = found.p_pa.clamp(pressures.low, pressures.high);
        if libm::fabs(found.p_pa - p_pa) > CLOSE * p_pa {
            return None;
        }
        found.p_pa = p_pa;
        found.t_k = found.t_k.clamp(low, high);
        self.is_stable(&found).ok()?.then(|| self.as_one(&found))
    }

    /// The state of two phases at a pressure with an energy, by the secant rule in the share of vapour from one end; `None`
    /// where that leads out of 0 to 1 or below the lowest temperature.
    pub(super) fn two_with_energy(
        &self,
        p_pa: f64,
        given: Given,
        value: f64,
        (end, start): (&State, Boiling),
    ) -> Option<Found> {
        let first = end.quality?;
        let mut step = if first > 0.5 { -FARTHEST.1 } else { FARTHEST.1 };
        let (mut quality, mut energy, mut near) = (first, given.of(end), start);
        for _ in 0..MOST_BOILING {
            let next = quality + step;
            if !(0.0..=1.0).contains(&next) {
                return None;
            }
            let found = self.boiling(Fixed::Pressure(p_pa), next, &near).ok()?;
            let here = given.of(&found.state);
            let slope = (here - energy) / step;
            let more = (value - here) / slope;
            if !more.is_finite() {
                return None;
            }
            if libm::fabs(more) <= ENOUGH {
                let low = self.blend.valid_temperatures().low;
                return (found.state.t_k >= low * (1.0 - EDGE)).then_some(found);
            }
            near = found.boiling?;
            (quality, energy) = (next, here);
            step = (quality + more.clamp(-FARTHEST.1, FARTHEST.1)).clamp(0.0, 1.0) - quality;
            if step == 0.0 {
                return None;
            }
        }
        None
    }

    /// The state of two phases with an enthalpy and entropy, by Newton's method from one that is near.
    ///
    /// In equilibrium dh = T ds + v dp, so that the residuals of both give the step in pressure directly; the slopes of the
    /// entropy over ln p and the share of vapour come from differences, and Broyden's update corrects them.
    pub(super) fn two_with_both(&self, near: &Found, h_j_kg: f64, s_j_kg_k: f64) -> Option<State> {
        let at = |p_pa: f64, quality: f64, near: &Found| -> Option<Found> {
            self.boiling(Fixed::Pressure(p_pa), quality, &near.boiling?).ok()
        };
        let (mut found, mut quality) = (*near, near.state.quality?);
        let aside = if quality > 0.5 { -DIFFERENCE.1 } else { DIFFERENCE.1 };
        let slope = |other: Found, by: f64| (other.state.s_j_kg_k - near.state.s_j_kg_k) / by;
        let mut by_quality = slope(at(near.state.p_pa, quality + aside, near)?, aside);
        let mut by_ln_p = slope(at(near.state.p_pa * (1.0 + DIFFERENCE.0), quality, near)?, DIFFERENCE.0);
        for _ in 0..MOST_BOILING {
            let State { t_k, p_pa, .. } = found.state;
            let missing_h = h_j_kg - found.state.h_j_kg;
            let missing_s = s_j_kg_k - found.state.s_j_kg_k;
            let scale = libm::fabs(by_quality);
            let miss = f64::max(libm::fabs(missing_s), libm::fabs(missing_h) / t_k) / scale;
            let up = (missing_h - t_k * missing_s) * found.state.rho_kg_m3 / p_pa;
            let up = up.clamp(-FARTHEST.0, FARTHEST.0);
            let more = (missing_s - by_ln_p * up) / by_quality;
            let more = more.clamp(-FARTHEST.1, FARTHEST.1);
            let size = libm::fabs(up) + libm::fabs(more);
            if miss <= ENOUGH || (size <= NARROW && miss <= CLOSE) {
                let t = self.blend.valid_temperatures();
                let is_valid = t_k >= t.low * (1.0 - EDGE) && p_pa <= self.blend.valid_pressures().high;
                let is_two = (-EDGE..=1.0 + EDGE).contains(&quality);
                found.state.quality = Some(quality.clamp(0.0, 1.0));
                return (is_valid && is_two).then_some(found.state);
            }
            let next = (quality + more).clamp(-BEYOND, 1.0 + BEYOND);
            let last_s = found.state.s_j_kg_k;
            // Next to the critical point a long step leads to two equal phases.
            let whole = (up, next - quality);
            let trial = SHORTER.into_iter().find_map(|part| {
                let (up, more) = (part * whole.0, part * whole.1);
                Some((at(p_pa * libm::exp(up), quality + more, &found)?, up, more))
            });
            let (next, up, more) = trial?;
            found = next;
            quality += more;
            let square = up * up + more * more;
            if square > 0.0 {
                let off = found.state.s_j_kg_k - last_s - by_ln_p * up - by_quality * more;
                by_ln_p += off * up / square;
                by_quality += off * more / square;
            }
        }
        None
    }
}
