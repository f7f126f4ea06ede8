//! A blend of listed composition: what it is made of, and its bubble and dew lines as curves.

use super::pure::Offset;
use crate::error::Error;
use crate::fluid::Facts;
use crate::mixture::{self, MOST_COMPONENTS, Mixture, Side};
use crate::names::{Quantity, Reference, Refrigerant};
use crate::numerics::{EvenCurve, sqrt};
use crate::range::Range;

/// A blend by its ANSI/ASHRAE Standard 34 composition.
///
/// Its lines are fitted to equilibria of the mixture model in extended precision (see tables/compile), from -65 °C, or
/// where the equation of a component begins, to 0.99 of its critical temperature: pressure over temperature, temperature
/// over the square root of pressure.
///
/// ```
/// use coldloop::{Refrigerant, saturation};
/// let blend = saturation::blend(Refrigerant::R407C).expect("it is a blend");
/// let sum: f64 = blend.parts.iter().map(|part| part.mass_fraction).sum();
/// assert!((sum - 1.0).abs() < 1e-12 && blend.parts.len() == 3);
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Blend {
    /// Its name.
    pub refrigerant: Refrigerant,
    /// What it is made of.
    pub parts: &'static [Part],
    /// Where the composition was found.
    pub composition_source: &'static str,
    /// The pairs of components without published parameters, which the mixture model estimates.
    pub estimated_pairs: &'static [[Refrigerant; 2]],
    /// Where it is used in vehicles: common practice, no source.
    pub on_the_road: &'static str,
    /// Safety group and potentials; those of warming and ozone depletion are means of the components by mass.
    pub facts: Facts,
    /// Molar mass, kg/mol.
    pub molar_mass: f64,
    /// Critical temperature of the mixture model, K.
    pub critical_t_k: f64,
    /// Critical pressure of the mixture model, Pa.
    pub critical_p_pa: f64,
    /// Critical density of the mixture model, mol/m3.
    pub critical_rho_mol_m3: f64,
    /// The liquid's line.
    pub bubble: Boundary,
    /// The vapour's line.
    pub dew: Boundary,
    pub(crate) lowest_t_k: f64,
    pub(crate) highest_t_k: f64,
    pub(crate) warmest_t_k: f64,
    pub(crate) highest_p_pa: f64,
    pub(crate) iir: Offset,
    pub(crate) ashrae: Offset,
    pub(crate) normal_boiling_point: Offset,
}

/// One component of a blend.
///
/// ```
/// use coldloop::{Refrigerant, saturation};
/// let parts = saturation::blend(Refrigerant::R410A).expect("it is a blend").parts;
/// assert!(parts.iter().any(|part| part.refrigerant == Refrigerant::R32 && part.mass_fraction == 0.5));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Part {
    /// The component.
    pub refrigerant: Refrigerant,
    /// Its share of the mass.
    pub mass_fraction: f64,
    /// Its share of the moles.
    pub mole_fraction: f64,
}

/// One side of the two phases.
///
/// ```
/// use coldloop::{Refrigerant, saturation};
/// let lines = |refrigerant| saturation::blend(refrigerant).expect("it is a blend");
/// assert!(lines(Refrigerant::R407C).dew.is_reliable);
/// assert!(!lines(Refrigerant::R445A).bubble.is_reliable && lines(Refrigerant::R445A).bubble.uncertainty_k > 5.0);
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Boundary {
    /// Standard uncertainty (K) of a temperature on it, propagated from the uncertainties of each pair and of the pure fluids'
    /// lines: the largest at -30, 0 and 40 °C.
    pub uncertainty_k: f64,
    /// Whether the model is accurate here; where not, [`Boundary::uncertainty_k`] is its error at the boiling point.
    pub is_reliable: bool,
    pub(crate) lowest_p_pa: f64,
    pub(crate) highest_p_pa: f64,
    pub(crate) pressure_pa: EvenCurve,
    pub(crate) temperature_k: EvenCurve,
}

impl Boundary {
    /// The pressures of the line.
    #[inline]
    pub const fn pressures(&self) -> Range {
        Range::new(Quantity::AbsolutePressure, self.lowest_p_pa, self.highest_p_pa)
    }
}

impl Blend {
    /// The temperatures at which there are both lines.
    #[inline]
    pub const fn temperatures(&self) -> Range {
        Range::new(Quantity::Temperature, self.lowest_t_k, self.highest_t_k)
    }

    /// The temperatures at which states are answered: from the lines' lowest to where the first component's equation ends.
    pub const fn valid_temperatures(&self) -> Range {
        Range::new(Quantity::Temperature, self.lowest_t_k, self.warmest_t_k)
    }

    /// The pressures for which the equations of all components were made; vacuum is not among them.
    pub const fn valid_pressures(&self) -> Range {
        Range::new(Quantity::AbsolutePressure, 1e-6, self.highest_p_pa)
    }

    /// The line of one side.
    #[inline]
    pub const fn boundary(&self, side: Side) -> &Boundary {
        match side {
            Side::Bubble => &self.bubble,
            Side::Dew => &self.dew,
        }
    }

    /// The pressure (Pa) of one side at `t_k`, K.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside [`Blend::temperatures`].
    #[inline]
    pub fn pressure_pa(&self, side: Side, t_k: f64) -> Result<f64, Error> {
        Ok(self.boundary(side).pressure_pa.at(self.temperatures().check(t_k)?))
    }

    /// The temperature (K) of one side at `p_pa`, Pa.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside [`Boundary::pressures`].
    #[inline]
    pub fn temperature_k(&self, side: Side, p_pa: f64) -> Result<f64, Error> {
        let boundary = self.boundary(side);
        Ok(self.temperature_at(boundary, boundary.pressures().check(p_pa)?))
    }

    /// The same of one of its boundaries and a pressure within its range.
    #[inline]
    pub(crate) fn temperature_at(&self, boundary: &Boundary, p_pa: f64) -> f64 {
        let t_k = boundary.temperature_k.at(sqrt(p_pa));
        t_k.clamp(self.lowest_t_k, self.highest_t_k)
    }

    /// The slope dp/dT (Pa/K) of one side at `t_k`, K.
    ///
    /// Errors: as [`Blend::pressure_pa`].
    #[inline]
    pub fn slope_pa_k(&self, side: Side, t_k: f64) -> Result<f64, Error> {
        let t_k = self.temperatures().check(t_k)?;
        Ok(self.boundary(side).pressure_pa.with_slope(t_k).1)
    }

    /// The mixture model of the components, in the order of [`Blend::parts`], and their mole fractions.
    ///
    /// Errors: none that a listed blend meets; those of [`Mixture::new`].
    #[doc(hidden)]
    pub fn mixture(&self) -> Result<(Mixture<f64>, [f64; MOST_COMPONENTS]), Error> {
        let mut components = [mixture::component_of(Refrigerant::R134a)?; MOST_COMPONENTS];
        let mut z = [1.0; MOST_COMPONENTS];
        for ((component, z), part) in components.iter_mut().zip(&mut z).zip(self.parts) {
            *component = mixture::component_of(part.refrigerant)?;
            *z = part.mole_fraction;
        }
        Ok((Mixture::new(&components[..self.parts.len()])?, z))
    }

    /// What `reference` adds to enthalpy and entropy.
    pub(crate) const fn offset(&self, reference: Reference) -> Offset {
        match reference {
            Reference::Iir => self.iir,
            Reference::Ashrae => self.ashrae,
            Reference::NormalBoilingPoint => self.normal_boiling_point,
        }
    }
}
