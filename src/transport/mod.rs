//! Viscosity, thermal conductivity and surface tension by published correlations.
//!
//! Each correlation keeps the limits of its paper; a refrigerant without one gives `NotAvailable`, and so does every blend. The
//! correlations and their sources are in `tables/transport`.

mod conductivity;
mod conformal;
pub(crate) mod correlation;
mod door;
pub(crate) mod tables;
mod viscosity;

pub use correlation::Published;
pub(crate) use correlation::{
    Conductivity, ConductivityForm, Conformal, CriticalEnhancement, DiluteConductivity, DiluteViscosity, LennardJones,
    ResidualViscosity, SurfaceTension, Term, Transport, Viscosity, ViscosityForm,
};
pub(crate) use tables::of;

use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::range::Range;
use crate::saturation::{State, pure};

/// The dynamic viscosity (Pa s) of `refrigerant` in a state of one phase, or of its saturated liquid or vapour (a quality of 0 or 1).
///
/// Source: [`published`] names it. Range: that of the correlation, within that of the equation of state.
///
/// Errors: `NotAvailable` where no correlation is published, for a blend, and for liquid and vapour together; `OutOfRange` outside
/// the temperatures and pressures of the correlation.
///
/// ```
/// use coldloop::{Reference, Refrigerant, saturation, transport};
/// let liquid = saturation::line_of(Refrigerant::R134a).state_tq(298.15, 0.0, Reference::Iir)?;
/// let viscosity_pa_s = transport::viscosity_pa_s(Refrigerant::R134a, &liquid)?;
/// assert!((viscosity_pa_s - 195e-6).abs() < 5e-6);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn viscosity_pa_s(refrigerant: Refrigerant, state: &State) -> Result<f64, Error> {
    let missing = Error::of(ErrorKind::NotAvailable, Quantity::Viscosity);
    let viscosity = correlations(refrigerant, missing)?.viscosity.as_ref().ok_or(missing)?;
    one_phase(state, missing)?;
    viscosity.published.check(viscosity.highest_p_pa, state)?;
    viscosity.at(pure(refrigerant)?, state.t_k, state.rho_mol_m3)
}

/// The thermal conductivity (W/(m K)) of `refrigerant` in a state of one phase, or of its saturated liquid or vapour.
///
/// Source: [`published`] names it; with the enhancement about the critical point, where it grows without bound. Range: that of the
/// correlation, within that of the equation of state.
///
/// Errors: as [`viscosity_pa_s`]; `NotAvailable` also in the critical point itself.
///
/// ```
/// use coldloop::{Reference, Refrigerant, saturation, transport};
/// let vapour = saturation::line_of(Refrigerant::R134a).state_tq(273.15, 1.0, Reference::Iir)?;
/// let conductivity_w_m_k = transport::conductivity_w_m_k(Refrigerant::R134a, &vapour)?;
/// assert!((conductivity_w_m_k - 11.5e-3).abs() < 0.2e-3);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn conductivity_w_m_k(refrigerant: Refrigerant, state: &State) -> Result<f64, Error> {
    let missing = Error::of(ErrorKind::NotAvailable, Quantity::Conductivity);
    let found = correlations(refrigerant, missing)?;
    let conductivity = found.conductivity.as_ref().ok_or(missing)?;
    let viscosity = found.viscosity.as_ref().ok_or(missing)?;
    one_phase(state, missing)?;
    conductivity.published.check(conductivity.highest_p_pa, state)?;
    let response = state.response.ok_or(missing)?;
    let place = (state.t_k, state.rho_mol_m3);
    let pure = pure(refrigerant)?;
    // Only the enhancement needs the viscosity, whose limits are not those of the conductivity.
    conductivity.at(pure, place, &response, viscosity.at(pure, place.0, place.1)?)
}

/// The surface tension (N/m) of `refrigerant` between its saturated liquid and vapour at `t_k`, K.
///
/// Source: [`published`] names it. Range: from the lowest temperature of the equation of state to the critical one.
///
/// Errors: `NotFinite`, `OutOfRange`; `NotAvailable` where no correlation is published and for a blend.
///
/// ```
/// use coldloop::{ErrorKind, Refrigerant, transport};
/// let tension_n_m = transport::surface_tension_n_m(Refrigerant::R134a, 298.15)?;
/// assert!((tension_n_m - 8.0e-3).abs() < 0.2e-3);
/// let refused = transport::surface_tension_n_m(Refrigerant::R134a, 400.0).unwrap_err();
/// assert_eq!(refused.kind, ErrorKind::OutOfRange);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn surface_tension_n_m(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    let missing = Error::of(ErrorKind::NotAvailable, Quantity::SurfaceTension);
    let SurfaceTension { published, terms } = correlations(refrigerant, missing)?
        .surface_tension
        .as_ref()
        .ok_or(missing)?;
    let below = 1.0 - published.temperatures().check(t_k)? / published.highest_t_k;
    Ok(terms.iter().map(|(sigma, n)| sigma * libm::pow(below, *n)).sum())
}

impl Published {
    /// The temperatures for which the correlation was made.
    pub const fn temperatures(&self) -> Range {
        Range::new(Quantity::Temperature, self.lowest_t_k, self.highest_t_k)
    }

    fn check(&self, highest_p_pa: f64, state: &State) -> Result<(), Error> {
        met(self.temperatures(), state.t_k)?;
        met(Range::new(Quantity::AbsolutePressure, 0.0, highest_p_pa), state.p_pa)
    }
}

/// What counts as rounding at an end of a range, relatively: a state gives its temperature back with the last digit moved.
const ROUNDING: f64 = 1e-12;

fn met(range: Range, value: f64) -> Result<(), Error> {
    if libm::fabs(value - value.clamp(range.low, range.high)) > ROUNDING * value {
        range.check(value)?;
    }
    Ok(())
}

/// Where the correlation of this property was published: [`Quantity::Viscosity`], [`Quantity::Conductivity`] or
/// [`Quantity::SurfaceTension`].
///
/// Errors: `NotAvailable` where no correlation is published, for a blend, and for every other quantity.
///
/// ```
/// use coldloop::{Quantity, Refrigerant, transport};
/// let source = transport::published(Refrigerant::R134a, Quantity::Viscosity)?;
/// assert_eq!(source.doi, Some("10.1021/ie0300880"));
/// assert!(transport::published(Refrigerant::R404A, Quantity::Viscosity).is_err());
/// # Ok::<(), coldloop::Error>(())
/// ```
#[allow(clippy::wildcard_enum_match_arm)] // the other quantities are no transport properties
pub fn published(refrigerant: Refrigerant, property: Quantity) -> Result<&'static Published, Error> {
    let missing = Error::of(ErrorKind::NotAvailable, property);
    let found = correlations(refrigerant, missing)?;
    let published = match property {
        Quantity::Viscosity => found.viscosity.as_ref().map(|known| &known.published),
        Quantity::Conductivity => found.conductivity.as_ref().map(|known| &known.published),
        Quantity::SurfaceTension => found.surface_tension.as_ref().map(|known| &known.published),
        _ => None,
    };
    published.ok_or(missing)
}

/// The correlations of a refrigerant; `missing`, which names the property, where there are none.
fn correlations(refrigerant: Refrigerant, missing: Error) -> Result<&'static Transport, Error> {
    of(refrigerant).map_err(|_| missing)
}

/// Refuses liquid and vapour together, which do not have the property of one phase.
fn one_phase(state: &State, missing: Error) -> Result<(), Error> {
    let parted = state.quality.is_some_and(|quality| quality > 0.0 && quality < 1.0);
    if parted { Err(missing) } else { Ok(()) }
}
