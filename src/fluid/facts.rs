//! A fluid: its equation and what else is published of it.

use super::equation::Equation;
use crate::names::SafetyGroup;

/// A pure fluid.
#[derive(Clone, Copy, Debug)]
pub struct Fluid {
    /// The equation of state.
    pub equation: Equation,
    /// The lowest temperature of the equation, K: the triple point or the lower limit of the fit.
    pub lowest_t_k: f64,
    /// The highest temperature of the equation, K.
    pub highest_t_k: f64,
    /// The highest pressure of the equation, Pa.
    pub highest_p_pa: f64,
    /// The melting line; `None` where none is published.
    pub melting: Option<Melting>,
    /// The published facts.
    pub facts: Facts,
}

/// The melting line p / p_t = 1 + a1 (T / T_t - 1) + a2 (T / T_t - 1)^2 from the triple point up.
///
/// Source: the form of Span & Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509, doi 10.1063/1.555991, equation 3.10.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Melting {
    /// Temperature of the triple point, K.
    pub triple_t_k: f64,
    /// Pressure of the triple point, Pa.
    pub triple_p_pa: f64,
    /// a1 and a2.
    pub a: [f64; 2],
}

impl Melting {
    /// The pressure (Pa) above which the fluid freezes at `t_k`, K.
    ///
    /// ```
    /// use coldloop::{Refrigerant, inner::fluid};
    /// let melting = fluid::fluid_of(Refrigerant::R744).unwrap().melting.unwrap();
    /// assert!((melting.pressure_pa(220.0) - 16.719e6).abs() < 1e3);
    /// ```
    pub fn pressure_pa(&self, t_k: f64) -> f64 {
        let above = t_k / self.triple_t_k - 1.0;
        self.triple_p_pa * (1.0 + above * (self.a[0] + above * self.a[1]))
    }
}

/// Facts that enter no calculation here; what is not known is `None`.
///
/// ```
/// use coldloop::{Refrigerant, SafetyGroup};
/// let facts = Refrigerant::R1234yf.facts();
/// assert!(facts.safety_group.is_some_and(|group| group.value == SafetyGroup::A2L && !group.source.is_empty()));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Facts {
    /// Chemical name.
    pub name: &'static str,
    /// Registry number of the Chemical Abstracts Service; `None` for a blend.
    pub cas: Option<&'static str>,
    /// Safety group.
    pub safety_group: Option<Sourced<SafetyGroup>>,
    /// Lower flammability limit; `None` for a fluid that does not burn, and for blends, for which the safety group is known.
    pub flammability_limit: Option<Sourced<Flammability>>,
    /// Ozone depletion potential, R-11 being 1.
    pub ozone_depletion: Option<Sourced<f64>>,
    /// Global warming potential over 100 years by report.
    pub warming: &'static [Sourced<Warming>],
    /// The publication of the equation of state.
    pub equation: &'static str,
    /// Its DOI.
    pub equation_doi: Option<&'static str>,
    /// The uncertainty that it states.
    pub equation_uncertainty: Option<&'static str>,
    /// What it states of the saturation pressure, relative; `None` where it states nothing.
    pub saturation_uncertainty: Option<f64>,
}

/// A value with where it was found.
///
/// ```
/// use coldloop::Refrigerant;
/// let group = Refrigerant::R290.facts().safety_group.expect("it has one");
/// assert!(!group.source.is_empty());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// Where it was found.
    pub source: &'static str,
}

/// The lowest concentration that burns in air.
///
/// ```
/// use coldloop::Refrigerant;
/// assert!(Refrigerant::R290.facts().flammability_limit.is_some());
/// assert!(Refrigerant::R134a.facts().flammability_limit.is_none()); // it does not burn
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Flammability {
    /// By volume, 0 to 1.
    pub volume_fraction: Option<f64>,
    /// By mass in air, kg/m3.
    pub kg_m3: Option<f64>,
}

/// Global warming potential over 100 years, carbon dioxide being 1.
///
/// ```
/// use coldloop::Refrigerant;
/// let warming = Refrigerant::R134a.facts().warming;
/// assert!(warming.iter().any(|found| found.value.report == "AR4" && found.value.value == 1_430.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Warming {
    /// Assessment report of the IPCC: `AR4`, `AR5`, `AR6`.
    pub report: &'static str,
    /// The potential.
    pub value: f64,
    /// Whether the report only says "less than".
    pub is_upper_bound: bool,
}
