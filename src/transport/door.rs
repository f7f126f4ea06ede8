//! The typed methods of `Refrigerant`.

use crate::error::Error;
use crate::names::Refrigerant;
use crate::saturation::State;
use crate::units::{DynamicViscosity, SurfaceTension, Temperature, ThermalConductivity, in_kelvins};

impl Refrigerant {
    /// The dynamic viscosity in a state of one phase of this refrigerant, or of its saturated liquid or vapour.
    ///
    /// Source: a published correlation, named by [`transport::published`](crate::transport::published).
    ///
    /// Errors: `NotAvailable` where none is published, for a blend, and for liquid and vapour together; `OutOfRange` outside the
    /// temperatures and pressures of the correlation.
    ///
    /// ```
    /// use coldloop::{ErrorKind, Reference, Refrigerant, units::{AbsolutePressure, celsius}};
    /// let r134a = Refrigerant::R134a;
    /// let suction = r134a.state(celsius(10.0), AbsolutePressure::from_pa(300e3), Reference::Iir)?;
    /// let liquid = r134a.state_tq(celsius(45.0), 0.0, Reference::Iir)?;
    /// assert!((r134a.viscosity(&suction)?.pa_s() - 11.1e-6).abs() < 0.2e-6);
    /// assert!(r134a.viscosity(&liquid)?.pa_s() > 12.0 * r134a.viscosity(&suction)?.pa_s());
    ///
    /// let boiling = r134a.state_tq(celsius(0.0), 0.3, Reference::Iir)?;
    /// assert_eq!(r134a.viscosity(&boiling).unwrap_err().kind, ErrorKind::NotAvailable);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn viscosity(self, state: &State) -> Result<DynamicViscosity, Error> {
        Ok(DynamicViscosity::from_pa_s(super::viscosity_pa_s(self, state)?))
    }

    /// The thermal conductivity in a state of one phase of this refrigerant, or of its saturated liquid or vapour.
    ///
    /// Source: a published correlation, named by [`transport::published`](crate::transport::published); with the enhancement about the critical point.
    ///
    /// Errors: as [`Refrigerant::viscosity`]; `NotAvailable` also in the critical point itself.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, units::celsius};
    /// let liquid = Refrigerant::R1234yf.state_tq(celsius(25.0), 0.0, Reference::Iir)?;
    /// assert!((Refrigerant::R1234yf.conductivity(&liquid)?.w_m_k() - 64e-3).abs() < 2e-3);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn conductivity(self, state: &State) -> Result<ThermalConductivity, Error> {
        Ok(ThermalConductivity::from_w_m_k(super::conductivity_w_m_k(self, state)?))
    }

    /// The surface tension between saturated liquid and vapour.
    ///
    /// Source: a published correlation, named by [`transport::published`](crate::transport::published).
    ///
    /// Errors: `NotFinite`; `OutOfRange` below the lowest temperature of the equation of state and above the critical one;
    /// `NotAvailable` where none is published and for a blend.
    ///
    /// ```
    /// use coldloop::{ErrorKind, Refrigerant, units::celsius};
    /// assert!((Refrigerant::R744.surface_tension(celsius(0.0))?.n_m() - 4.5e-3).abs() < 0.1e-3);
    /// let of_a_blend = Refrigerant::R407C.surface_tension(celsius(0.0)).unwrap_err();
    /// assert_eq!(of_a_blend.kind, ErrorKind::NotAvailable);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn surface_tension(self, temperature: Temperature) -> Result<SurfaceTension, Error> {
        Ok(SurfaceTension::from_n_m(super::surface_tension_n_m(
            self,
            in_kelvins(temperature),
        )?))
    }
}
