//! The public, typed methods of `Refrigerant`: facts, saturation and states.

use super::state::State;
use super::tables::line_of;
use crate::error::Error;
use crate::fluid::Facts;
use crate::names::{Reference, Refrigerant};
use crate::units::{
    AbsolutePressure, MolarDensity, SpecificEnergy, SpecificEntropy, Temperature, TemperatureDifference, in_kelvins,
    kelvins, kelvins_difference,
};

impl Refrigerant {
    /// The published facts: safety group, flammability limit, warming potential.
    pub fn facts(self) -> &'static Facts {
        line_of(self).facts()
    }

    /// Whether it is a blend, whose dew point is warmer than its bubble point.
    ///
    /// ```
    /// use coldloop::Refrigerant;
    /// assert!(Refrigerant::R407C.is_blend() && !Refrigerant::R134a.is_blend());
    /// ```
    pub const fn is_blend(self) -> bool {
        super::blend(self).is_some()
    }

    /// How much warmer the dew point is than the bubble point at a pressure; 0 for a pure refrigerant.
    ///
    /// Source: equilibria of the mixture model.
    ///
    /// Errors: as [`Refrigerant::bubble_temperature`].
    ///
    /// ```
    /// use coldloop::{Refrigerant, units::{AbsolutePressure, difference_in_kelvins, kelvins_difference}};
    /// let pressure = AbsolutePressure::from_pa(500e3);
    /// assert!((difference_in_kelvins(Refrigerant::R407C.glide(pressure)?) - 6.3).abs() < 0.2);
    /// assert_eq!(Refrigerant::R134a.glide(pressure), Ok(kelvins_difference(0.0)));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn glide(self, pressure: AbsolutePressure) -> Result<TemperatureDifference, Error> {
        Ok(kelvins_difference(super::glide_k(self, pressure.pa())?))
    }

    /// The pressure at which the liquid begins to boil. Subcooling is counted from this line.
    ///
    /// Source: equilibria of the equation of state, see [`Refrigerant::facts`].
    ///
    /// Errors: `NotFinite`; `OutOfRange` below the lowest temperature of the equation and above the critical point.
    ///
    /// ```
    /// use coldloop::{Refrigerant, units::celsius};
    /// let p = Refrigerant::R134a.bubble_pressure(celsius(0.0))?;
    /// assert!((p.pa() - 292.8e3).abs() < 50.0);
    /// assert!(Refrigerant::R134a.bubble_pressure(celsius(120.0)).is_err());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn bubble_pressure(self, temperature: Temperature) -> Result<AbsolutePressure, Error> {
        Ok(AbsolutePressure::from_pa(super::bubble_pressure_pa(
            self,
            in_kelvins(temperature),
        )?))
    }

    /// The pressure at which the vapour begins to condense. Superheat is counted from this line.
    ///
    /// Errors: as [`Refrigerant::bubble_pressure`].
    pub fn dew_pressure(self, temperature: Temperature) -> Result<AbsolutePressure, Error> {
        Ok(AbsolutePressure::from_pa(super::dew_pressure_pa(
            self,
            in_kelvins(temperature),
        )?))
    }

    /// The temperature at which the liquid begins to boil.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the pressures of the saturation line.
    pub fn bubble_temperature(self, pressure: AbsolutePressure) -> Result<Temperature, Error> {
        Ok(kelvins(super::bubble_temperature_k(self, pressure.pa())?))
    }

    /// The temperature at which the vapour begins to condense.
    ///
    /// Errors: as [`Refrigerant::bubble_temperature`].
    ///
    /// ```
    /// use coldloop::{Refrigerant, units::{AbsolutePressure, celsius, in_kelvins}};
    /// let dew = Refrigerant::R134a.dew_temperature(AbsolutePressure::from_pa(300e3))?;
    /// assert!((in_kelvins(dew) - 273.82).abs() < 0.01);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn dew_temperature(self, pressure: AbsolutePressure) -> Result<Temperature, Error> {
        Ok(kelvins(super::dew_temperature_k(self, pressure.pa())?))
    }

    /// The heat that boils liquid into vapour.
    ///
    /// Errors: as [`Refrigerant::bubble_pressure`].
    pub fn latent_heat(self, temperature: Temperature) -> Result<SpecificEnergy, Error> {
        Ok(SpecificEnergy::from_j_kg(super::latent_heat_j_kg(
            self,
            in_kelvins(temperature),
        )?))
    }

    /// The state at a temperature and pressure, with its phase.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the validity of the equation; `TwoPhase` on the saturation line;
    /// `NotAvailable` when the refrigerant has no such reference state.
    ///
    /// ```
    /// use coldloop::{Phase, Reference, Refrigerant, units::{AbsolutePressure, celsius}};
    /// let suction = Refrigerant::R134a.state(celsius(10.0), AbsolutePressure::from_pa(300e3), Reference::Iir)?;
    /// assert_eq!(suction.phase, Phase::Vapour);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn state(
        self,
        temperature: Temperature,
        pressure: AbsolutePressure,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).state_tp(in_kelvins(temperature), pressure.pa(), reference)
    }

    /// The state at a temperature and molar density, with its phase.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the validity of the equation; `NotAvailable` when the refrigerant has no
    /// such reference state.
    ///
    /// ```
    /// use coldloop::{Phase, Reference, Refrigerant, units::{MolarDensity, celsius}};
    /// let filled = |rho| Refrigerant::R134a.state_t_rho(celsius(10.0), MolarDensity::from_mol_m3(rho), Reference::Iir);
    /// assert_eq!(filled(100.0)?.phase, Phase::Vapour);
    /// assert!(filled(1e5).is_err());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn state_t_rho(
        self,
        temperature: Temperature,
        density: MolarDensity,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).state_t_rho(in_kelvins(temperature), density.mol_m3(), reference)
    }

    /// The state on the saturation line at a temperature and quality (0 liquid, 1 vapour).
    ///
    /// At a quality of exactly 0 or 1 it is the saturated liquid or vapour, which answers all that one phase has: specific
    /// heats, speed of sound and the like.
    ///
    /// Errors: as [`Refrigerant::bubble_pressure`]; `OutOfRange` for a quality outside 0 to 1; `NotAvailable` when the
    /// refrigerant has no such reference state.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, units::celsius};
    /// let boiling = Refrigerant::R134a.state_tq(celsius(0.0), 0.0, Reference::Iir)?;
    /// assert!((boiling.enthalpy().kj_kg() - 200.0).abs() < 1e-9); // where this reference state counts from
    /// assert!(boiling.response.is_some_and(|liquid| (liquid.cp.j_kg_k() - 1_341.0).abs() < 3.0));
    /// assert!(Refrigerant::R134a.state_tq(celsius(0.0), 0.5, Reference::Iir)?.response.is_none());
    /// assert!(Refrigerant::R134a.state_tq(celsius(0.0), 1.5, Reference::Iir).is_err());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn state_tq(self, temperature: Temperature, quality: f64, reference: Reference) -> Result<State, Error> {
        line_of(self).state_tq(in_kelvins(temperature), quality, reference)
    }

    /// The state on the saturation line at a pressure and quality (0 liquid, 1 vapour).
    ///
    /// Errors: as [`Refrigerant::state_tq`].
    pub fn state_pq(self, pressure: AbsolutePressure, quality: f64, reference: Reference) -> Result<State, Error> {
        line_of(self).state_pq(pressure.pa(), quality, reference)
    }

    /// The liquid below its boiling pressure that has not boiled yet: metastable, and given only by this name.
    ///
    /// The equation of state continued from the saturation line towards its spinodal, where no liquid can be.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the temperatures of the saturation line, and in pressure with the spinodal
    /// (or the lowest pressure of the equation) and the saturation line as bounds; `NotAvailable` when the refrigerant has
    /// no such reference state.
    ///
    /// ```
    /// use coldloop::{Phase, Reference, Refrigerant, units::{AbsolutePressure, celsius}};
    /// let warm = celsius(30.0);
    /// let below_boiling = AbsolutePressure::from_pa(0.9 * Refrigerant::R134a.bubble_pressure(warm)?.pa());
    /// let held = Refrigerant::R134a.superheated_liquid(warm, below_boiling, Reference::Iir)?;
    /// assert_eq!(held.phase, Phase::Liquid);
    /// assert_eq!(Refrigerant::R134a.state(warm, below_boiling, Reference::Iir)?.phase, Phase::Vapour);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn superheated_liquid(
        self,
        temperature: Temperature,
        pressure: AbsolutePressure,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).superheated_liquid(in_kelvins(temperature), pressure.pa(), reference)
    }

    /// The vapour above its condensing pressure that has not condensed yet: metastable, and given only by this name.
    ///
    /// Errors: as [`Refrigerant::superheated_liquid`], with the saturation line and the spinodal as bounds.
    pub fn subcooled_vapour(
        self,
        temperature: Temperature,
        pressure: AbsolutePressure,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).subcooled_vapour(in_kelvins(temperature), pressure.pa(), reference)
    }

    /// The state at a pressure and specific enthalpy (counted from `reference`), with its phase.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the validity of the equation; `NotAvailable` when the refrigerant has
    /// no such reference state; `NoConvergence` with the relative residual.
    ///
    /// ```
    /// use coldloop::{Phase, Reference, Refrigerant, units::{AbsolutePressure, SpecificEnergy}};
    /// let (p, h) = (AbsolutePressure::from_kpa(300.0), SpecificEnergy::from_kj_kg(250.0));
    /// let inlet = Refrigerant::R134a.state_ph(p, h, Reference::Iir)?; // after an expansion valve
    /// assert_eq!(inlet.phase, Phase::TwoPhase);
    /// assert!(inlet.quality.is_some_and(|x| (x - 0.248).abs() < 0.005));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn state_ph(
        self,
        pressure: AbsolutePressure,
        enthalpy: SpecificEnergy,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).state_ph(pressure.pa(), enthalpy.j_kg(), reference)
    }

    /// The state at a pressure and specific entropy (counted from `reference`), with its phase.
    ///
    /// Errors: as [`Refrigerant::state_ph`].
    pub fn state_ps(
        self,
        pressure: AbsolutePressure,
        entropy: SpecificEntropy,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).state_ps(pressure.pa(), entropy.j_kg_k(), reference)
    }

    /// The state at a specific enthalpy and entropy, with its phase.
    ///
    /// Errors: as [`Refrigerant::state_ph`].
    pub fn state_hs(
        self,
        enthalpy: SpecificEnergy,
        entropy: SpecificEntropy,
        reference: Reference,
    ) -> Result<State, Error> {
        line_of(self).state_hs(enthalpy.j_kg(), entropy.j_kg_k(), reference)
    }
}
