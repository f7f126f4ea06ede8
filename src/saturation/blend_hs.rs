//! The state of a blend from enthalpy and entropy.
//!
//! One phase is searched in temperature and density at once, as a gas and as a liquid. Every other state has two phases or
//! lies near the critical point: at one enthalpy the entropy falls as the pressure rises, ds/dp = -v/T, so that there is one
//! pressure. It is searched in its logarithm, each trial a state from pressure and enthalpy, from which Newton's method in
//! pressure and share of vapour, or in temperature and density, goes on.

use super::blend::Blend;
use super::blend_given::Given;
use super::blend_model::Model;
use super::state::State;
use crate::error::Error;
use crate::mixture::{Fixed, Side};
use crate::names::{ErrorKind, Quantity, Reference};
use crate::numerics::GAS_J_MOL_K;

/// Trials at most: one or two are usual, before the other searches find the state from there.
const MOST_STEPS: usize = 30;
/// The longest step in ln p.
const LONGEST: f64 = 2.0;
/// Shares of the critical pressure to begin at, until there is a state of the enthalpy.
const STARTS: [f64; 5] = [0.3, 0.03, 1.5, 1e-3, 10.0];
/// An energy beyond its bounds by less than this, relative to that of evaporation, is not refused.
const SLACK: f64 = 1e-5;
/// Near the end of the dew line, per its pressure.
const LAST: f64 = 0.99;
/// The density of a gas to begin at, per the critical one.
const THIN: f64 = 0.02;
/// A residual of entropy that counts as rounding, in units of R/M.
const ENOUGH: f64 = 1e-13;
/// A residual that counts as rounding where the pressure is known to its last digit.
const CLOSE: f64 = 1e-9;
/// A pressure is known to its last digit when the bracket of its logarithm is this narrow, relatively.
const NARROW: f64 = 1e-14;
/// The search ends this close, in ln p, to where no state of this enthalpy exists.
const WALL: f64 = 1e-9;

impl Blend {
    /// The state at a specific enthalpy (J/kg) and specific entropy (J/(kg K)), both counted from `reference`.
    ///
    /// Method: see the head of this module. For a liquid the two determine the pressure poorly, since entropy hardly changes
    /// with it.
    ///
    /// Errors: `NotFinite`; `OutOfRange` as [`Blend::state_ph`], of the last pressure at which the enthalpy has a state, where
    /// the entropy has none; `NoConvergence` with the residual.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, saturation};
    /// let blend = saturation::blend(Refrigerant::R407C).unwrap();
    /// let wet = blend.state_pq(500e3, 0.3, Reference::Iir)?;
    /// let found = blend.state_hs(wet.enthalpy().j_kg(), wet.entropy().j_kg_k(), Reference::Iir)?;
    /// assert!((found.pressure().pa() / 500e3 - 1.0).abs() < 1e-9);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn state_hs(&'static self, h_j_kg: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        for (quantity, value) in [(Quantity::Enthalpy, h_j_kg), (Quantity::Entropy, s_j_kg_k)] {
            if !value.is_finite() {
                return Err(Error::not_finite(quantity, value));
            }
        }
        let model = Model::new(self, reference)?;
        // A gas, then a liquid.
        let t_k = 0.5 * (self.lowest_t_k + self.critical_t_k);
        let gas = (self.critical_t_k, THIN * self.critical_rho_mol_m3);
        let liquid = model.one_phase(t_k, self.critical_p_pa, Side::Bubble)?;
        for start in [gas, (t_k, liquid.rho_mol_m3)] {
            if let Some(state) = model.one_with_both(h_j_kg, s_j_kg_k, start) {
                return Ok(state);
            }
        }
        model.refuse(h_j_kg, s_j_kg_k)?;
        Model::new(self, reference)?.along_isenthalp(h_j_kg, s_j_kg_k)
    }
}

impl Model {
    /// Refuses what lies outside the valid temperatures and pressures: at one enthalpy the entropy is greatest at the lowest
    /// pressure, or at the lowest temperature, and least at the highest pressure.
    ///
    /// Errors: `OutOfRange` with the bounds of the enthalpy, or of the entropy at this enthalpy.
    fn refuse(&self, h_j_kg: f64, s_j_kg_k: f64) -> Result<(), Error> {
        let (t, p) = (self.blend.valid_temperatures(), self.blend.valid_pressures());
        let ends = self.ends(Fixed::Temperature(t.low))?;
        let (liquid, vapour) = (self.side(&ends.0, Side::Bubble), self.side(&ends.1, Side::Dew));
        let latent = vapour.h_j_kg - liquid.h_j_kg;
        let warm = self.one_phase(t.high, p.low, Side::Dew)?.h_j_kg;
        let (least, most) = (liquid.h_j_kg - SLACK * latent, warm + SLACK * latent);
        if h_j_kg < least || h_j_kg > most {
            return Err(Error::out_of_range(Quantity::Enthalpy, h_j_kg, liquid.h_j_kg, warm));
        }
        let evaporation = vapour.s_j_kg_k - liquid.s_j_kg_k;
        let highest = if h_j_kg < vapour.h_j_kg {
            // dh = T ds + v dp, of which the last part is negative along the isotherm and greatest in size at its end.
            let glide = f64::max(evaporation - latent / t.low, 0.0);
            liquid.s_j_kg_k + (h_j_kg - liquid.h_j_kg) / t.low + glide
        } else {
            match self.with_energy(p.low, Given::Enthalpy, h_j_kg) {
                Ok(thin) => thin.state.s_j_kg_k,
                Err(_) => f64::INFINITY,
            }
        };
        let lowest = match self.with_energy(p.high, Given::Enthalpy, h_j_kg) {
            Ok(dense) => dense.state.s_j_kg_k,
            Err(_) => f64::NEG_INFINITY,
        };
        if s_j_kg_k > highest + SLACK * evaporation || s_j_kg_k < lowest - SLACK * evaporation {
            return Err(Error::out_of_range(Quantity::Entropy, s_j_kg_k, lowest, highest));
        }
        Ok(())
    }

    /// The state at an enthalpy and entropy by Newton's method in ln p within a bracket, until one of the two searches from
    /// the state there finds it.
    fn along_isenthalp(&self, h_j_kg: f64, s_j_kg_k: f64) -> Result<State, Error> {
        let critical_p_pa = self.blend.critical_p_pa;
        let at = |ln_p: f64| self.with_energy(libm::exp(ln_p), Given::Enthalpy, h_j_kg);
        let mut first = at(libm::log(STARTS[0] * critical_p_pa));
        for start in &STARTS[1..] {
            if first.is_ok() {
                break;
            }
            first = at(libm::log(start * critical_p_pa));
        }
        let mut found = first?;
        let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
        let mut miss = f64::INFINITY;
        for step in 0..MOST_STEPS {
            let state = found.state;
            let near = match state.quality {
                Some(_) => self.two_with_both(&found, h_j_kg, s_j_kg_k),
                None => self.one_with_both(h_j_kg, s_j_kg_k, (state.t_k, state.rho_mol_m3)),
            };
            if let Some(state) = near {
                return Ok(state);
            }
            // Two phases next to the critical point are reached from the end of the lines.
            if step == 0
                && let Ok(end) = at(libm::log(LAST * self.blend.dew.highest_p_pa))
                && let Some(state) = self.two_with_both(&end, h_j_kg, s_j_kg_k)
            {
                return Ok(state);
            }
            let here = libm::log(state.p_pa);
            // In units of R/M, the size of an entropy.
            miss = (state.s_j_kg_k - s_j_kg_k) * self.blend.molar_mass / GAS_J_MOL_K;
            if libm::fabs(miss) <= ENOUGH || (high - low <= NARROW * libm::fabs(here) && libm::fabs(miss) <= CLOSE) {
                return Ok(state);
            }
            if high - low <= NARROW * libm::fabs(here) {
                break;
            }
            if miss > 0.0 {
                low = here
            } else {
                high = here
            }
            let steepness = state.p_pa * self.blend.molar_mass / (state.rho_kg_m3 * state.t_k * GAS_J_MOL_K);
            let newton = here + (miss / steepness).clamp(-LONGEST, LONGEST);
            let mut next = if newton > low && newton < high {
                newton
            } else {
                0.5 * (low + high)
            };
            // Where the step leads out of the states of this enthalpy, half of it.
            found = loop {
                match at(next) {
                    Ok(found) => break found,
                    Err(failure) if libm::fabs(next - here) < WALL || failure.kind == ErrorKind::NoConvergence => {
                        return Err(failure);
                    }
                    Err(_) => {
                        if next > here {
                            high = next
                        } else {
                            low = next
                        }
                        next = 0.5 * (here + next);
                    }
                }
            };
        }
        Err(Error::no_convergence(libm::fabs(miss), ENOUGH))
    }
}
