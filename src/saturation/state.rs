//! States of a pure fluid with their phase.

use super::accuracy::BLUR;
use super::pure::{Offset, Pure, SaturatedPhase};
use crate::eos::{Isotherm, Properties};
use crate::error::Error;
use crate::names::{ErrorKind, Phase, Quantity, Reference};
use crate::numerics::sqrt;
use crate::range::Range;
use crate::units::{
    AbsolutePressure, Density, MolarDensity, SpecificEnergy, SpecificEntropy, SpecificHeat, Speed, Temperature, kelvins,
};

/// A pressure closer to saturation than this, relatively, is on the line: rounding and unit conversion move it by as much.
pub(super) const ON_THE_LINE: f64 = 1e-12;
/// Beyond this multiple of the critical density, a density is first compared with that at the highest pressure.
pub(super) const DENSE: f64 = 2.5;
/// No equation is evaluated beyond this multiple of its critical density.
const DENSEST: f64 = 5.0;

/// A state of a refrigerant in equilibrium; enthalpy and entropy count from the reference state asked for.
///
/// ```
/// use coldloop::units::{AbsolutePressure, celsius};
/// use coldloop::{Phase, Reference, Refrigerant};
/// let vapour = Refrigerant::R134a.state(celsius(27.0), AbsolutePressure::from_kpa(300.0), Reference::Iir)?;
/// assert_eq!((vapour.phase, vapour.quality), (Phase::Vapour, None));
/// assert!((vapour.density().kg_m3() - 13.07).abs() < 0.01 && (vapour.enthalpy().kj_kg() - 422.5).abs() < 0.1);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct State {
    /// The phase.
    pub phase: Phase,
    /// Mass fraction of vapour; `None` outside the two phases.
    pub quality: Option<f64>,
    /// Temperature, K.
    pub(crate) t_k: f64,
    /// Pressure, Pa.
    pub(crate) p_pa: f64,
    /// Molar density, mol/m3.
    pub(crate) rho_mol_m3: f64,
    /// Density, kg/m3.
    pub(crate) rho_kg_m3: f64,
    /// Specific enthalpy, J/kg.
    pub(crate) h_j_kg: f64,
    /// Specific entropy, J/(kg K).
    pub(crate) s_j_kg_k: f64,
    /// How the phase responds to change. At a quality of exactly 0 or 1 that of the saturated liquid or vapour alone; `None`
    /// for both together, which have no such properties, and in the critical point, where they are infinite.
    pub response: Option<Response>,
}

/// How a homogeneous phase responds to change: specific heats, the speed of sound, and derivatives in SI.
///
/// ```
/// use coldloop::units::{AbsolutePressure, celsius};
/// use coldloop::{Reference, Refrigerant};
/// let vapour = Refrigerant::R134a.state(celsius(27.0), AbsolutePressure::from_kpa(300.0), Reference::Iir)?;
/// let response = vapour.response.expect("one phase has one");
/// assert!(response.cp > response.cv && (100.0..200.0).contains(&response.speed_of_sound.m_s()));
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Response {
    /// Specific heat at constant volume.
    pub cv: SpecificHeat,
    /// Specific heat at constant pressure.
    pub cp: SpecificHeat,
    /// Speed of sound.
    pub speed_of_sound: Speed,
    /// (dT/dp) at constant enthalpy, K/Pa.
    pub joule_thomson_k_pa: f64,
    /// (dp/dT) at constant density, Pa/K.
    pub dp_dt_pa_k: f64,
    /// (dp/drho) at constant temperature, J/mol.
    pub dp_drho_j_mol: f64,
    /// Isothermal compressibility (drho/dp)/rho, 1/Pa.
    pub isothermal_compressibility_1_pa: f64,
    /// Isobaric expansion -(drho/dT)/rho, 1/K.
    pub isobaric_expansion_1_k: f64,
}

impl State {
    /// The temperature.
    pub const fn temperature(&self) -> Temperature {
        kelvins(self.t_k)
    }

    /// The pressure.
    pub const fn pressure(&self) -> AbsolutePressure {
        AbsolutePressure::from_pa(self.p_pa)
    }

    /// The density, by mass.
    pub const fn density(&self) -> Density {
        Density::from_kg_m3(self.rho_kg_m3)
    }

    /// The density, by amount of substance.
    pub const fn molar_density(&self) -> MolarDensity {
        MolarDensity::from_mol_m3(self.rho_mol_m3)
    }

    /// The specific enthalpy.
    pub const fn enthalpy(&self) -> SpecificEnergy {
        SpecificEnergy::from_j_kg(self.h_j_kg)
    }

    /// The specific entropy.
    pub const fn entropy(&self) -> SpecificEntropy {
        SpecificEntropy::from_j_kg_k(self.s_j_kg_k)
    }

    /// The specific internal energy: enthalpy less pressure over density.
    pub const fn internal_energy(&self) -> SpecificEnergy {
        SpecificEnergy::from_j_kg(self.u_j_kg())
    }

    /// The specific Helmholtz energy: internal energy less temperature times entropy.
    pub const fn helmholtz_energy(&self) -> SpecificEnergy {
        SpecificEnergy::from_j_kg(self.u_j_kg() - self.t_k * self.s_j_kg_k)
    }

    /// The specific Gibbs energy: enthalpy less temperature times entropy.
    pub const fn gibbs_energy(&self) -> SpecificEnergy {
        SpecificEnergy::from_j_kg(self.h_j_kg - self.t_k * self.s_j_kg_k)
    }

    const fn u_j_kg(&self) -> f64 {
        self.h_j_kg - self.p_pa / self.rho_kg_m3
    }
}

impl Pure {
    /// The temperatures for which the equation was made.
    pub const fn valid_temperatures(&self) -> Range {
        Range::new(Quantity::Temperature, self.fluid.lowest_t_k, self.fluid.highest_t_k)
    }

    /// The pressures for which the equation was made; vacuum is not among them.
    pub const fn valid_pressures(&self) -> Range {
        Range::new(Quantity::AbsolutePressure, 1e-6, self.fluid.highest_p_pa)
    }

    /// The pressures at which the fluid is fluid at `t_k`, K: those of the equation, up to the melting line where one is
    /// published.
    pub fn fluid_pressures(&self, t_k: f64) -> Range {
        let mut range = self.valid_pressures();
        if let Some(melting) = &self.fluid.melting {
            // At the triple point the line starts from the saturation line of the equation, a rounding away.
            let melting_pa = f64::max(melting.pressure_pa(t_k), self.lowest_p_pa);
            range.high = f64::min(range.high, melting_pa);
        }
        range
    }

    /// The state at a temperature (K) and pressure (Pa).
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the validity of the equation and in the solid; `TwoPhase` on the saturation line,
    /// where the quality is needed; `NotAvailable` when the fluid has no such reference state.
    pub fn state_tp(&self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        let t_k = self.valid_temperatures().check(t_k)?;
        let p_pa = self.fluid_pressures(t_k).check(p_pa)?;
        let offset = self.offset(reference)?;
        let isotherm = Isotherm::new(&self.fluid.equation, t_k);
        let (phase, rho_mol_m3) = self.density(&isotherm, t_k, p_pa)?;
        let properties = Properties::at_pressure(&isotherm, p_pa, rho_mol_m3);
        Ok(State::of(&properties, self.fluid.equation.molar_mass, phase, offset).with_pressure(p_pa))
    }

    /// The state at a temperature (K) and molar density (mol/m3).
    ///
    /// Errors: as [`Pure::state_tp`].
    pub fn state_t_rho(&self, t_k: f64, rho_mol_m3: f64, reference: Reference) -> Result<State, Error> {
        let t_k = self.valid_temperatures().check(t_k)?;
        let rho_mol_m3 = Range::new(Quantity::Density, f64::MIN_POSITIVE, self.densest_mol_m3()).check(rho_mol_m3)?;
        let offset = self.offset(reference)?;
        let mut phase = Phase::Supercritical;
        if t_k < self.critical_t_k {
            let (liquid, vapour) = (self.liquid(t_k)?, self.vapour(t_k)?);
            if rho_mol_m3 > vapour.rho_mol_m3 && rho_mol_m3 < liquid.rho_mol_m3 {
                // Volumes mix by mass.
                let volume = 1.0 / rho_mol_m3 - 1.0 / liquid.rho_mol_m3;
                let quality = volume / (1.0 / vapour.rho_mol_m3 - 1.0 / liquid.rho_mol_m3);
                return Ok(self.two_phase(t_k, self.pressure_pa(t_k)?, quality, offset, liquid, vapour));
            }
            phase = if rho_mol_m3 >= liquid.rho_mol_m3 {
                Phase::Liquid
            } else {
                Phase::Vapour
            };
        }
        let isotherm = Isotherm::new(&self.fluid.equation, t_k);
        if rho_mol_m3 > DENSE * self.critical_rho_mol_m3 {
            // Far beyond the densities that they were made for, some equations fall back to valid pressures.
            let last = self.density_on(&isotherm, t_k, self.fluid.highest_p_pa, phase)? * (1.0 + ON_THE_LINE);
            Range::new(Quantity::Density, f64::MIN_POSITIVE, last).check(rho_mol_m3)?;
        }
        let properties = Properties::new(&isotherm, rho_mol_m3);
        let state = State::of(&properties, self.fluid.equation.molar_mass, phase, offset);
        // The pressure of a liquid amplifies rounding, so that an end of the range counts as met within rounding.
        let range = self.fluid_pressures(t_k);
        let p_pa = state.p_pa.clamp(range.low, range.high);
        if libm::fabs(state.p_pa - p_pa) > BLUR * p_pa {
            range.check(state.p_pa)?;
        }
        Ok(state.with_pressure(p_pa))
    }

    /// The state on the saturation line at a temperature (K) and quality (0 liquid, 1 vapour).
    ///
    /// Errors: `NotFinite`, `OutOfRange`, `NotAvailable`.
    pub fn state_tq(&self, t_k: f64, quality: f64, reference: Reference) -> Result<State, Error> {
        let quality = QUALITY.check(quality)?;
        let offset = self.offset(reference)?;
        let p_pa = self.pressure_pa(t_k)?;
        let (liquid, vapour) = (self.liquid(t_k)?, self.vapour(t_k)?);
        Ok(self.two_phase(t_k, p_pa, quality, offset, liquid, vapour))
    }

    /// The state on the saturation line at a pressure (Pa) and quality (0 liquid, 1 vapour).
    ///
    /// Errors: `NotFinite`, `OutOfRange`, `NotAvailable`.
    pub fn state_pq(&self, p_pa: f64, quality: f64, reference: Reference) -> Result<State, Error> {
        let state = self.state_tq(self.temperature_k(p_pa)?, quality, reference)?;
        Ok(state.with_pressure(p_pa))
    }

    /// The phase and the density (mol/m3) at a temperature (K) and pressure (Pa).
    fn density(&self, isotherm: &Isotherm<f64>, t_k: f64, p_pa: f64) -> Result<(Phase, f64), Error> {
        let phase = if t_k >= self.critical_t_k {
            Phase::Supercritical
        } else {
            let saturation_pa = self.pressure_pa(t_k)?;
            if libm::fabs(p_pa - saturation_pa) <= ON_THE_LINE * saturation_pa {
                return Err(Error::of(ErrorKind::TwoPhase, Quantity::AbsolutePressure));
            }
            if p_pa < saturation_pa {
                Phase::Vapour
            } else {
                Phase::Liquid
            }
        };
        Ok((phase, self.density_on(isotherm, t_k, p_pa, phase)?))
    }

    /// The highest density at which the equation is evaluated, mol/m3.
    pub(super) fn densest_mol_m3(&self) -> f64 {
        DENSEST * self.critical_rho_mol_m3
    }

    pub(super) fn two_phase(
        &self,
        t_k: f64,
        p_pa: f64,
        quality: f64,
        offset: Offset,
        liquid: SaturatedPhase,
        vapour: SaturatedPhase,
    ) -> State {
        let mixed = |liquid: f64, vapour: f64| liquid + quality * (vapour - liquid);
        let rho_mol_m3 = 1.0 / mixed(1.0 / liquid.rho_mol_m3, 1.0 / vapour.rho_mol_m3);
        let side = match quality {
            0.0 => Some(liquid),
            1.0 => Some(vapour),
            _ => None,
        };
        State {
            phase: Phase::TwoPhase,
            quality: Some(quality),
            t_k,
            p_pa,
            rho_mol_m3,
            rho_kg_m3: rho_mol_m3 * self.fluid.equation.molar_mass,
            h_j_kg: mixed(liquid.h_j_kg, vapour.h_j_kg) + offset.h_j_kg,
            s_j_kg_k: mixed(liquid.s_j_kg_k, vapour.s_j_kg_k) + offset.s_j_kg_k,
            response: side.and_then(|side| self.side_response(t_k, side.rho_mol_m3)),
        }
    }

    /// How a saturated liquid or vapour responds to change; `None` in the critical point.
    fn side_response(&self, t_k: f64, rho_mol_m3: f64) -> Option<Response> {
        let equation = &self.fluid.equation;
        let properties = Properties::new(&Isotherm::new(equation, t_k), rho_mol_m3);
        let is_sound = t_k < self.critical_t_k && properties.dp_drho_j_mol > 0.0 && properties.cv_j_kg_k > 0.0;
        is_sound.then(|| Response::of(&properties, equation.molar_mass))
    }
}

pub(super) const QUALITY: Range = Range::new(Quantity::Quality, 0.0, 1.0);

impl State {
    /// The pressure that was given, in place of the one that comes back from the density with its rounding.
    pub(super) fn with_pressure(mut self, p_pa: f64) -> Self {
        self.p_pa = p_pa;
        self
    }

    /// The state of a homogeneous phase.
    pub(super) fn of(properties: &Properties, molar_mass: f64, phase: Phase, offset: Offset) -> Self {
        Self {
            phase,
            quality: None,
            t_k: properties.t_k,
            p_pa: properties.p_pa,
            rho_mol_m3: properties.rho_mol_m3,
            rho_kg_m3: properties.rho_mol_m3 * molar_mass,
            h_j_kg: properties.h_j_kg + offset.h_j_kg,
            s_j_kg_k: properties.s_j_kg_k + offset.s_j_kg_k,
            response: Some(Response::of(properties, molar_mass)),
        }
    }
}

impl Response {
    /// How a homogeneous phase responds.
    fn of(properties: &Properties, molar_mass: f64) -> Self {
        let Properties {
            dp_dt_pa_k,
            dp_drho_j_mol,
            cp_j_kg_k,
            t_k,
            rho_mol_m3,
            ..
        } = *properties;
        let expansion = dp_dt_pa_k / (dp_drho_j_mol * rho_mol_m3);
        Self {
            cv: SpecificHeat::from_j_kg_k(properties.cv_j_kg_k),
            cp: SpecificHeat::from_j_kg_k(cp_j_kg_k),
            speed_of_sound: Speed::from_m_s(sqrt(properties.w2_m2_s2)),
            joule_thomson_k_pa: (t_k * expansion - 1.0) / (rho_mol_m3 * molar_mass * cp_j_kg_k),
            dp_dt_pa_k,
            dp_drho_j_mol,
            isothermal_compressibility_1_pa: 1.0 / (rho_mol_m3 * dp_drho_j_mol),
            isobaric_expansion_1_k: expansion,
        }
    }
}
