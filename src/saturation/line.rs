//! The saturation of a refrigerant: one line of a pure fluid, two of a blend.

use super::blend::Blend;
use super::pure::Pure;
use super::state::State;
use crate::error::Error;
use crate::fluid::Facts;
use crate::mixture::Side;
use crate::names::{ErrorKind, Quantity, Reference};
use crate::range::Range;

/// The saturation of a refrigerant: one line of a pure fluid, or the two of a blend.
///
/// ```
/// use coldloop::saturation::{Line, Side, line_of};
/// use coldloop::Refrigerant;
/// assert!(matches!(line_of(Refrigerant::R134a), Line::Pure(_)));
/// let blend = line_of(Refrigerant::R407C);
/// let glide_k = blend.temperature_k(Side::Dew, 500_000.0)? - blend.temperature_k(Side::Bubble, 500_000.0)?;
/// assert!((5.0..8.0).contains(&glide_k));
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug)]
pub enum Line {
    /// A pure fluid.
    Pure(&'static Pure),
    /// A blend of listed composition.
    Blend(&'static Blend),
}

impl Line {
    /// The pure fluid.
    ///
    /// Errors: `NotAvailable` for a blend.
    pub const fn pure(self) -> Result<&'static Pure, Error> {
        match self {
            Line::Pure(pure) => Ok(pure),
            Line::Blend(_) => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),
        }
    }

    /// The temperatures with bubble and dew pressures.
    #[inline]
    pub const fn temperatures(self) -> Range {
        match self {
            Line::Pure(pure) => pure.temperatures(),
            Line::Blend(blend) => blend.temperatures(),
        }
    }

    /// The temperatures at which states are answered.
    pub const fn valid_temperatures(self) -> Range {
        match self {
            Line::Pure(pure) => pure.valid_temperatures(),
            Line::Blend(blend) => blend.valid_temperatures(),
        }
    }

    /// The pressures at which states are answered, without regard to melting.
    pub const fn valid_pressures(self) -> Range {
        match self {
            Line::Pure(pure) => pure.valid_pressures(),
            Line::Blend(blend) => blend.valid_pressures(),
        }
    }

    /// The pressures of one side.
    #[inline]
    pub const fn pressures(self, side: Side) -> Range {
        match self {
            Line::Pure(pure) => pure.pressures(),
            Line::Blend(blend) => blend.boundary(side).pressures(),
        }
    }

    /// The pressure (Pa) of one side at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn pressure_pa(self, side: Side, t_k: f64) -> Result<f64, Error> {
        match self {
            Line::Pure(pure) => pure.pressure_pa(t_k),
            Line::Blend(blend) => blend.pressure_pa(side, t_k),
        }
    }

    /// The temperature (K) of one side at `p_pa`, Pa.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn temperature_k(self, side: Side, p_pa: f64) -> Result<f64, Error> {
        match self {
            Line::Pure(pure) => pure.temperature_k(p_pa),
            Line::Blend(blend) => blend.temperature_k(side, p_pa),
        }
    }

    /// The slope dp/dT (Pa/K) of one side at `t_k`, K.
    ///
    /// Errors: `NotFinite`, `OutOfRange`.
    #[inline]
    pub fn slope_pa_k(self, side: Side, t_k: f64) -> Result<f64, Error> {
        match self {
            Line::Pure(pure) => pure.slope_pa_k(t_k),
            Line::Blend(blend) => blend.slope_pa_k(side, t_k),
        }
    }

    /// The density (kg/m3) on one side at `t_k`, K: of the boiling liquid or of the condensing vapour.
    ///
    /// Errors: as [`Line::state_tq`].
    pub fn density_kg_m3(self, side: Side, t_k: f64) -> Result<f64, Error> {
        match self {
            Line::Pure(pure) => {
                let branch = match side {
                    Side::Bubble => pure.liquid(t_k)?,
                    Side::Dew => pure.vapour(t_k)?,
                };
                Ok(branch.rho_mol_m3 * pure.fluid.equation.molar_mass)
            }
            Line::Blend(_) => {
                let quality = match side {
                    Side::Bubble => 0.0,
                    Side::Dew => 1.0,
                };
                Ok(self.state_tq(t_k, quality, Reference::Iir)?.rho_kg_m3)
            }
        }
    }

    /// Critical temperature of the equation or the mixture model, K.
    pub const fn critical_t_k(self) -> f64 {
        match self {
            Line::Pure(pure) => pure.critical_t_k,
            Line::Blend(blend) => blend.critical_t_k,
        }
    }

    /// Critical pressure of the equation or the mixture model, Pa.
    pub const fn critical_p_pa(self) -> f64 {
        match self {
            Line::Pure(pure) => pure.critical_p_pa,
            Line::Blend(blend) => blend.critical_p_pa,
        }
    }

    /// Critical density of the equation or the mixture model, mol/m3.
    pub const fn critical_rho_mol_m3(self) -> f64 {
        match self {
            Line::Pure(pure) => pure.critical_rho_mol_m3,
            Line::Blend(blend) => blend.critical_rho_mol_m3,
        }
    }

    /// Molar mass, kg/mol.
    pub const fn molar_mass(self) -> f64 {
        match self {
            Line::Pure(pure) => pure.fluid.equation.molar_mass,
            Line::Blend(blend) => blend.molar_mass,
        }
    }

    /// The published facts.
    pub const fn facts(self) -> &'static Facts {
        match self {
            Line::Pure(pure) => &pure.fluid.facts,
            Line::Blend(blend) => &blend.facts,
        }
    }

    /// The state at a temperature (K) and pressure (Pa).
    ///
    /// Errors: as [`Pure::state_tp`] and [`Blend::state_tp`].
    pub fn state_tp(self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_tp(t_k, p_pa, reference),
            Line::Blend(blend) => blend.state_tp(t_k, p_pa, reference),
        }
    }

    /// The state at a temperature (K) and molar density (mol/m3).
    ///
    /// Errors: as [`Pure::state_t_rho`] and [`Blend::state_t_rho`].
    pub fn state_t_rho(self, t_k: f64, rho_mol_m3: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_t_rho(t_k, rho_mol_m3, reference),
            Line::Blend(blend) => blend.state_t_rho(t_k, rho_mol_m3, reference),
        }
    }

    /// The state at a temperature (K) and quality (0 liquid, 1 vapour).
    ///
    /// Errors: as [`Pure::state_tq`] and [`Blend::state_tq`].
    pub fn state_tq(self, t_k: f64, quality: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_tq(t_k, quality, reference),
            Line::Blend(blend) => blend.state_tq(t_k, quality, reference),
        }
    }

    /// The state at a pressure (Pa) and quality (0 liquid, 1 vapour).
    ///
    /// Errors: as [`Pure::state_pq`] and [`Blend::state_pq`].
    pub fn state_pq(self, p_pa: f64, quality: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_pq(p_pa, quality, reference),
            Line::Blend(blend) => blend.state_pq(p_pa, quality, reference),
        }
    }

    /// The state at a pressure (Pa) and specific enthalpy (J/kg).
    ///
    /// Errors: as [`Pure::state_ph`] and [`Blend::state_ph`].
    pub fn state_ph(self, p_pa: f64, h_j_kg: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_ph(p_pa, h_j_kg, reference),
            Line::Blend(blend) => blend.state_ph(p_pa, h_j_kg, reference),
        }
    }

    /// The state at a pressure (Pa) and specific entropy (J/(kg K)).
    ///
    /// Errors: as [`Pure::state_ps`] and [`Blend::state_ps`].
    pub fn state_ps(self, p_pa: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_ps(p_pa, s_j_kg_k, reference),
            Line::Blend(blend) => blend.state_ps(p_pa, s_j_kg_k, reference),
        }
    }

    /// The state at a specific enthalpy (J/kg) and entropy (J/(kg K)).
    ///
    /// Errors: as [`Pure::state_hs`] and [`Blend::state_hs`].
    pub fn state_hs(self, h_j_kg: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        match self {
            Line::Pure(pure) => pure.state_hs(h_j_kg, s_j_kg_k, reference),
            Line::Blend(blend) => blend.state_hs(h_j_kg, s_j_kg_k, reference),
        }
    }

    /// The heat (J/kg) that boils liquid of `t_k` (K) into vapour at its bubble pressure.
    ///
    /// Errors: as [`Pure::latent_heat_j_kg`] and [`Blend::latent_heat_j_kg`].
    pub fn latent_heat_j_kg(self, t_k: f64) -> Result<f64, Error> {
        match self {
            Line::Pure(pure) => pure.latent_heat_j_kg(t_k),
            Line::Blend(blend) => blend.latent_heat_j_kg(t_k),
        }
    }

    /// The liquid below its saturation pressure, at a temperature (K) and pressure (Pa).
    ///
    /// Errors: as [`Pure::superheated_liquid`]; `NotAvailable` for a blend.
    pub fn superheated_liquid(self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        self.pure()?.superheated_liquid(t_k, p_pa, reference)
    }

    /// The vapour above its saturation pressure, at a temperature (K) and pressure (Pa).
    ///
    /// Errors: as [`Pure::subcooled_vapour`]; `NotAvailable` for a blend.
    pub fn subcooled_vapour(self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        self.pure()?.subcooled_vapour(t_k, p_pa, reference)
    }
}
