//! The saturation line of a pure fluid as curves.

use crate::eos::Isotherm;
use crate::error::Error;
use crate::fluid::Fluid;
use crate::names::{ErrorKind, Quantity, Reference};
use crate::numerics::{Curve, ln, sqrt};
use crate::range::Range;

/// A pure fluid with its saturation line.
///
/// The pieces of each curve are fitted to equilibria of the equation in extended precision (see tables/compile):
/// pressure over temperature, temperature over ln p, all else over s = sqrt(1 - T / T_c), in which the branches are
/// analytic through the critical point.
///
/// ```
/// use coldloop::{Refrigerant, saturation};
/// let r744 = saturation::pure(Refrigerant::R744)?;
/// assert!((r744.critical_t_k - 304.13).abs() < 0.01);
/// assert!(r744.pressure_pa(310.0).is_err()); // no saturation above the critical point
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Pure {
    /// Equation, limits and facts; not part of the interface, see [`Line::facts`](super::Line::facts) for what a label says.
    #[doc(hidden)]
    pub fluid: &'static Fluid,
    /// Critical temperature of the equation itself, K; the published one may differ in its last digits.
    pub critical_t_k: f64,
    /// Critical pressure of the equation itself, Pa.
    pub critical_p_pa: f64,
    /// Critical density of the equation itself, mol/m3.
    pub critical_rho_mol_m3: f64,
    /// The ends of [`Pure::pressures`], as the curve gives them, so that each of its pressures is accepted again.
    pub(crate) lowest_p_pa: f64,
    pub(crate) highest_p_pa: f64,
    pub(crate) iir: Option<Offset>,
    pub(crate) ashrae: Option<Offset>,
    pub(crate) normal_boiling_point: Option<Offset>,
    pub(crate) pressure_pa: Curve,
    pub(crate) temperature_k: Curve,
    pub(crate) liquid_rho_mol_m3: Curve,
    pub(crate) vapour_rho_mol_m3: Curve,
    pub(crate) liquid_h_j_kg: Curve,
    pub(crate) vapour_h_j_kg: Curve,
    pub(crate) liquid_s_j_kg_k: Curve,
}

/// What a reference state adds to enthalpy and entropy with the constants of the paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Offset {
    pub(crate) h_j_kg: f64,
    pub(crate) s_j_kg_k: f64,
}

/// One side of the saturation line at one temperature; energies with the constants of the paper.
///
/// ```
/// use coldloop::{Refrigerant, saturation};
/// let r134a = saturation::pure(Refrigerant::R134a)?;
/// let (liquid, vapour) = (r134a.liquid(273.15)?, r134a.vapour(273.15)?);
/// assert!((vapour.h_j_kg - liquid.h_j_kg - r134a.latent_heat_j_kg(273.15)?).abs() < 1e-6);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SaturatedPhase {
    /// Density, mol/m3.
    pub rho_mol_m3: f64,
    /// Specific enthalpy, J/kg.
    pub h_j_kg: f64,
    /// Specific entropy, J/(kg K).
    pub s_j_kg_k: f64,
}

impl Pure {
    /// The temperatures with a saturation line.
    #[inline]
    pub const fn temperatures(&self) -> Range {
        Range::new(Quantity::Temperature, self.fluid.lowest_t_k, self.critical_t_k)
    }

    /// The pressures with a saturation line.
    #[inline]
    pub const fn pressures(&self) -> Range {
        Range::new(Quantity::AbsolutePressure, self.lowest_p_pa, self.highest_p_pa)
    }

    /// Saturation pressure (Pa) at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn pressure_pa(&self, t_k: f64) -> Result<f64, Error> {
        Ok(self.pressure_pa.at(self.temperatures().check(t_k)?))
    }

    /// Saturation temperature (K) at `p_pa`, Pa.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn temperature_k(&self, p_pa: f64) -> Result<f64, Error> {
        Ok(self.temperature_at(self.pressures().check(p_pa)?))
    }

    /// The same of a pressure within the range.
    #[inline]
    pub(crate) fn temperature_at(&self, p_pa: f64) -> f64 {
        let t_k = self.temperature_k.at(ln(p_pa));
        t_k.clamp(self.fluid.lowest_t_k, self.critical_t_k)
    }

    /// dp/dT (Pa/K) at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn slope_pa_k(&self, t_k: f64) -> Result<f64, Error> {
        Ok(self.pressure_pa.with_slope(self.temperatures().check(t_k)?).1)
    }

    /// The heat (J/kg) that boils liquid into vapour at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn latent_heat_j_kg(&self, t_k: f64) -> Result<f64, Error> {
        let s = self.distance(self.temperatures().check(t_k)?);
        Ok(self.vapour_h_j_kg.at(s) - self.liquid_h_j_kg.at(s))
    }

    /// The second virial coefficient B (m3/mol) at `t_k`, K.
    ///
    /// Source: the limit of the equation of state at zero density. Range: [`Pure::valid_temperatures`].
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    ///
    /// ```
    /// use coldloop::{Refrigerant, saturation};
    /// let b_m3_mol = saturation::pure(Refrigerant::R134a)?.second_virial_m3_mol(300.0)?;
    /// assert!((-600e-6..-400e-6).contains(&b_m3_mol));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn second_virial_m3_mol(&self, t_k: f64) -> Result<f64, Error> {
        Ok(self.isotherm(t_k)?.second_virial_m3_mol())
    }

    /// The third virial coefficient C (m6/mol2) at `t_k`, K, to about 1e-7 of its terms.
    ///
    /// Source, range, errors: as [`Pure::second_virial_m3_mol`].
    pub fn third_virial_m6_mol2(&self, t_k: f64) -> Result<f64, Error> {
        Ok(self.isotherm(t_k)?.third_virial_m6_mol2())
    }

    fn isotherm(&self, t_k: f64) -> Result<Isotherm<f64>, Error> {
        let t_k = self.valid_temperatures().check(t_k)?;
        Ok(Isotherm::new(&self.fluid.equation, t_k))
    }

    /// Saturated liquid at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn liquid(&self, t_k: f64) -> Result<SaturatedPhase, Error> {
        let s = self.distance(self.temperatures().check(t_k)?);
        Ok(SaturatedPhase {
            rho_mol_m3: self.liquid_rho_mol_m3.at(s),
            h_j_kg: self.liquid_h_j_kg.at(s),
            s_j_kg_k: self.liquid_s_j_kg_k.at(s),
        })
    }

    /// Saturated vapour at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn vapour(&self, t_k: f64) -> Result<SaturatedPhase, Error> {
        let s = self.distance(self.temperatures().check(t_k)?);
        Ok(SaturatedPhase {
            rho_mol_m3: self.vapour_rho_mol_m3.at(s),
            h_j_kg: self.vapour_h_j_kg.at(s),
            s_j_kg_k: self.vapour_s_j_kg_k(t_k, s),
        })
    }

    /// Entropy (J/(kg K)) of the vapour at `t_k`, K, where the distance is `s`: that of the liquid, and what boiling at this
    /// temperature adds, since the Gibbs energies are the same.
    #[inline]
    pub(crate) fn vapour_s_j_kg_k(&self, t_k: f64, s: f64) -> f64 {
        self.liquid_s_j_kg_k.at(s) + (self.vapour_h_j_kg.at(s) - self.liquid_h_j_kg.at(s)) / t_k
    }

    /// What `reference` adds to enthalpy and entropy.
    ///
    /// Errors: `NotAvailable` where the fluid is no liquid in that state.
    pub(crate) fn offset(&self, reference: Reference) -> Result<Offset, Error> {
        let offset = match reference {
            Reference::Iir => self.iir,
            Reference::Ashrae => self.ashrae,
            Reference::NormalBoilingPoint => self.normal_boiling_point,
        };
        offset.ok_or(Error::of(ErrorKind::NotAvailable, Quantity::Enthalpy))
    }

    /// s = sqrt(1 - T / T_c); the difference is exact close to the critical point.
    #[inline]
    pub(crate) fn distance(&self, t_k: f64) -> f64 {
        sqrt((self.critical_t_k - t_k) / self.critical_t_k)
    }
}
