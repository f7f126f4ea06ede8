//! The largest equation of state that the sums have room for.
//!
//! The sums run over arrays of fixed size; what would not fit is refused where the tables are compiled, and where the
//! library itself is.

use super::helmholtz::{MAX_BENT, MAX_D, MAX_L, MAX_TERMS};
use super::{ideal, non_analytic};
use crate::fluid::{self, Equation};
use crate::names::Refrigerant;

/// Whether every term of `equation` has its place, as [`Isotherm`](super::Isotherm) assumes; if not, what is too large.
///
/// Errors: the text names the terms and how many of them there may be, or how high their powers.
///
/// ```
/// use coldloop::Refrigerant;
/// use coldloop::inner::{eos, fluid};
/// let known = fluid::fluid_of(Refrigerant::R744).unwrap().equation;
/// assert_eq!(eos::fits(&known), Ok(()));
/// let crowded = fluid::Equation { power: &[fluid::Power { n: 1.0, t: 1.0, d: 1, l: 0 }; 60], ..known };
/// assert!(eos::fits(&crowded).is_err());
/// ```
pub const fn fits(equation: &Equation) -> Result<(), &'static str> {
    if equation.separable_terms() > MAX_TERMS {
        return Err("more than 48 terms, non-analytic ones aside");
    }
    if equation.gaussian.len() + equation.double_exponential.len() > MAX_BENT {
        return Err("more than 8 terms that are Gaussian or have a second exponential");
    }
    if equation.non_analytic.len() > non_analytic::MAX_TERMS {
        return Err("more than 4 non-analytic terms");
    }
    if equation.ideal.planck_einstein.len() > ideal::MAX_PLANCK_EINSTEIN {
        return Err("more than 12 Planck-Einstein terms");
    }
    if !equation.is_in_order() {
        return Err("terms that do not stand in rising order of the power of delta within their exponentials");
    }
    if equation.deepest_damping() > MAX_L {
        return Err("a power of delta above 7 within an exponential");
    }
    if !is_shallow(equation) {
        return Err("a power of delta above 15");
    }
    Ok(())
}

const fn is_shallow(equation: &Equation) -> bool {
    let mut k = 0;
    while k < equation.power.len() {
        if equation.power[k].d as usize > MAX_D {
            return false;
        }
        k += 1;
    }
    let mut k = 0;
    while k < equation.gaussian.len() {
        if equation.gaussian[k].d as usize > MAX_D {
            return false;
        }
        k += 1;
    }
    let mut k = 0;
    while k < equation.double_exponential.len() {
        if equation.double_exponential[k].d as usize > MAX_D {
            return false;
        }
        k += 1;
    }
    true
}

const _: () = {
    assert!(MAX_TERMS == 48 && MAX_BENT == 8 && non_analytic::MAX_TERMS == 4); // as the texts above have them
    assert!(ideal::MAX_PLANCK_EINSTEIN == 12 && MAX_L == 7 && MAX_D == 15);
    let mut k = 0;
    while k < Refrigerant::ALL.len() {
        if let Ok(fluid) = fluid::fluid_of(Refrigerant::ALL[k]) {
            assert!(fits(&fluid.equation).is_ok());
        }
        k += 1;
    }
    let gases = fluid::gases_of_air();
    let mut k = 0;
    while k < gases.len() {
        assert!(fits(&gases[k].equation).is_ok());
        k += 1;
    }
};
