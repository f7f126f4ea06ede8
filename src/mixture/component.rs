//! The components of mixtures, and the parameters of a pair of them.

use crate::fluid::{Fluid, Power};

/// A fluid that mixtures may hold.
#[derive(Clone, Copy, Debug)]
pub struct Component {
    /// Its place among the components, which finds its pairs.
    pub number: u8,
    /// Its equation, limits and facts.
    pub fluid: &'static Fluid,
    /// Critical temperature of the equation, K.
    pub critical_t_k: f64,
    /// Critical pressure of the equation, Pa.
    pub critical_p_pa: f64,
    /// ln(p_c / p) at T = 0.7 T_c, divided by 1 / 0.7 - 1: a straight saturation line to start a search from.
    pub steepness: f64,
}

impl Component {
    /// About the saturation pressure (Pa) at `t_k`, K; above the critical temperature the line is continued.
    pub(super) fn about_saturation_pa(&self, t_k: f64) -> f64 {
        self.critical_p_pa * crate::numerics::exp(self.steepness * (1.0 - self.critical_t_k / t_k))
    }
}

/// How two components interact: parameters of the reducing functions, and a departure function where there is one.
///
/// Source of the form: Kunz and Wagner, J. Chem. Eng. Data 57 (2012) 3032, doi 10.1021/je300655b, equations 16 and 17
/// and 10; of the values: `source`.
#[derive(Clone, Copy, Debug)]
pub struct Pair {
    /// beta_T, seen from the component with the lower number.
    pub beta_t: f64,
    /// gamma_T.
    pub gamma_t: f64,
    /// beta_v, seen from the component with the lower number.
    pub beta_v: f64,
    /// gamma_v.
    pub gamma_v: f64,
    /// The factor of the departure function; 0 for none.
    pub factor: f64,
    /// The departure function: n delta^d tau^t exp(-delta^l).
    pub departure: &'static [Power],
    /// The uncertainty of gamma_T.
    pub gamma_t_uncertainty: f64,
    /// Whether the parameters are an estimate.
    pub is_estimated: bool,
    /// The publication, or how the estimate was made.
    pub source: &'static str,
}
