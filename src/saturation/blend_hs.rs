//! The state of a blend from enthalpy and entropy.
//!
//! At one enthalpy the entropy falls as the pressure rises, ds/dp = -v/T, in one phase and in two: there is one pressure,
//! and it is searched in its logarithm by Newton's method within a bracket, each trial a state from pressure and enthalpy.

use super::blend::Blend;
use super::state::State;
use crate::error::Error;
use crate::names::{Quantity, Reference};

/// Trials at most: ten are usual.
const MOST_STEPS: usize = 100;
/// The longest step in ln p.
const LONGEST: f64 = 2.0;
/// Shares of the critical pressure to begin at, until there is a state of the enthalpy.
const STARTS: [f64; 8] = [0.3, 0.1, 1.0, 0.03, 3.0, 0.01, 1e-3, 10.0];
/// A miss of entropy that is rounding, in units of what evaporation at a tenth of the critical pressure adds.
const ENOUGH: f64 = 1e-13;
/// A miss that is rounding where the pressure is known to its last digit, as of a liquid.
const CLOSE: f64 = 1e-9;
/// A pressure known as well as this, in the logarithm, is known.
const NARROW: f64 = 1e-14;
/// This near to where there are no more states of this enthalpy the search ends.
const WALL: f64 = 1e-9;

impl Blend {
    /// The state at a specific enthalpy (J/kg) and specific entropy (J/(kg K)), both counted from `reference`.
    ///
    /// Method: see the head of this module. Of a liquid the two tell the pressure badly, since entropy hardly changes with
    /// it.
    ///
    /// Errors: `NotFinite`; `OutOfRange` as [`Blend::state_ph`], of the last pressure at which the enthalpy has a state,
    /// where the entropy has none; `NoConvergence` with the miss.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, saturation};
    /// let blend = saturation::blend(Refrigerant::R407C).unwrap();
    /// let wet = blend.state_pq(500e3, 0.3, Reference::Iir)?;
    /// let found = blend.state_hs(wet.h_j_kg, wet.s_j_kg_k, Reference::Iir)?;
    /// assert!((found.p_pa / 500e3 - 1.0).abs() < 1e-9);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn state_hs(&'static self, h_j_kg: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        for (quantity, value) in [(Quantity::Enthalpy, h_j_kg), (Quantity::Entropy, s_j_kg_k)] {
            if !value.is_finite() {
                return Err(Error::not_finite(quantity, value));
            }
        }
        let at = |ln_p: f64| self.state_ph(libm::exp(ln_p), h_j_kg, reference);
        let mut first = at(libm::log(STARTS[0] * self.critical_p_pa));
        for start in STARTS {
            if first.is_ok() {
                break;
            }
            first = at(libm::log(start * self.critical_p_pa));
        }
        let mut state = first?;
        let scale = {
            let p_pa = 0.1 * self.critical_p_pa;
            let [liquid, vapour] = [0.0, 1.0].map(|quality| self.state_pq(p_pa, quality, reference));
            vapour?.s_j_kg_k - liquid?.s_j_kg_k
        };
        let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
        let mut wall = None;
        let mut miss = f64::INFINITY;
        let mut steps = 0;
        while steps < MOST_STEPS {
            let here = libm::log(state.p_pa);
            miss = state.s_j_kg_k - s_j_kg_k;
            if libm::fabs(miss) <= ENOUGH * scale {
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
            let steepness = state.p_pa / (state.rho_kg_m3 * state.t_k);
            let newton = here + (miss / steepness).clamp(-LONGEST, LONGEST);
            let mut next = if newton > low && newton < high {
                newton
            } else {
                0.5 * (low + high)
            };
            // Where the step leads out of the states of this enthalpy, half of it.
            state = loop {
                steps += 1;
                match at(next) {
                    Ok(found) => break found,
                    Err(failure) if libm::fabs(next - here) < WALL || steps >= MOST_STEPS => return Err(failure),
                    Err(failure) => {
                        wall = Some(failure);
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
        if libm::fabs(miss) <= CLOSE * scale {
            return Ok(state);
        }
        Err(wall.unwrap_or(Error::no_convergence(libm::fabs(miss) / scale, ENOUGH)))
    }
}
