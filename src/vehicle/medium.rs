//! What the circuit asks of its refrigerant, and a pure refrigerant's answers; a mixture's stand in `mixed`.

mod charted;
mod either;
mod film;
mod glide;
mod made;
mod mixed;

pub(super) use either::{Filling, Medium};
pub(super) use made::Composition;
pub(super) use mixed::Mixed;

use super::dense::Side;
use crate::eos::{Isotherm, Properties};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Reference, Refrigerant};
use crate::saturation::{self, Pure};

/// Steps that Newton's method may take; four are usual.
const MOST_STEPS: usize = 40;
/// Relative step at which it has converged: the value after that step is good to rounding.
const STEP: f64 = 1e-9;

/// A pure refrigerant in the circuit.
#[derive(Clone, Copy, Debug)]
pub(super) struct Single {
    refrigerant: Refrigerant,
    pure: &'static Pure,
    /// Molar mass, kg/mol.
    molar_kg: f64,
    lowest_pa: f64,
    /// By how much enthalpy and entropy lie higher when counted as [`Reference::Iir`] has them, where the medium works
    /// above its critical point; `None` where it condenses in all weathers.
    transcritical: Option<(f64, f64)>,
    /// Equilibria between which states next to the critical pressure are interpolated.
    bridge: Option<[Saturation; 2]>,
    /// Enthalpy at the critical point, J/kg.
    critical_j_kg: f64,
}

/// The lowest evaporating temperature that is modelled, K: moist air ends a little below.
const LOWEST_K: f64 = 207.0;
/// The highest pressure of a gas cooler, Pa. Judgement: beyond the relief of any vehicle.
const GAS_COOLER_PA: f64 = 14.5e6;
/// Above this part of the critical pressure a state is searched by the general method.
const NEAR_CRITICAL: f64 = 0.95;
/// Half the width of the slice about the pseudo-critical temperature that stands for the change of phase above the
/// critical pressure, K.
const SLICE_K: f64 = 0.5;
/// The lowest critical temperature of a refrigerant that condenses in hot weather, K.
const LEAST_CRITICAL_K: f64 = 340.0;

/// Liquid and vapour in equilibrium at one pressure.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Saturation {
    pub p_pa: f64,
    pub bubble_k: f64,
    pub dew_k: f64,
    pub liquid_j_kg: f64,
    pub vapour_j_kg: f64,
    pub liquid_j_kg_k: f64,
    pub vapour_j_kg_k: f64,
    pub liquid_kg_m3: f64,
    pub vapour_kg_m3: f64,
}

/// A homogeneous or two-phase state.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct State {
    pub t_k: f64,
    pub h_j_kg: f64,
    pub s_j_kg_k: f64,
    pub rho_kg_m3: f64,
    /// Specific heat of the vapour at constant pressure.
    pub cp_j_kg_k: f64,
    /// Mass fraction of vapour; one where superheated.
    pub quality: f64,
}

impl Single {
    /// The medium of a refrigerant.
    ///
    /// Errors: `NotAvailable` for a refrigerant that does not condense at the temperatures of a vehicle's condenser.
    pub(super) fn of(refrigerant: Refrigerant) -> Result<Self, Error> {
        let pure = saturation::pure(refrigerant)?;
        let transcritical = if refrigerant == Refrigerant::R744 {
            let zero = pure.liquid(273.15)?;
            Some((200e3 - zero.h_j_kg, 1e3 - zero.s_j_kg_k))
        } else if pure.critical_t_k < LEAST_CRITICAL_K || pure.fluid.lowest_t_k > LOWEST_K {
            return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
        } else {
            None
        };
        let molar_kg = pure.fluid.equation.molar_mass;
        let lowest_k = LOWEST_K.max(pure.temperatures().low);
        let mut medium = Self {
            refrigerant,
            pure,
            molar_kg,
            lowest_pa: pure.pressure_pa(lowest_k)?,
            transcritical,
            bridge: None,
            critical_j_kg: pure.liquid(pure.critical_t_k)?.h_j_kg,
        };
        if transcritical.is_some() {
            let [low, high] = charted::ACROSS.map(|part| medium.saturation(part * pure.critical_p_pa));
            medium.bridge = Some([low?, high?]);
        }
        Ok(medium)
    }

    /// The lowest pressure at which the circuit is modelled, Pa: saturation at -66 C, a deep vacuum.
    pub(super) fn lowest_pa(&self) -> f64 {
        self.lowest_pa
    }

    /// The highest pressure of a condenser, Pa: 97 % of the critical pressure; of a gas cooler, 14.5 MPa.
    pub(super) fn highest_pa(&self) -> f64 {
        if self.is_transcritical() {
            GAS_COOLER_PA
        } else {
            0.97 * self.pure.critical_p_pa
        }
    }

    /// Whether the high side works above the critical pressure in warm weather.
    pub(super) fn is_transcritical(&self) -> bool {
        self.transcritical.is_some()
    }

    /// Condensing conductance per that of R-134a.
    pub(super) fn condensing_ratio(&self) -> f64 {
        film::condensing_ratio(self.refrigerant)
    }

    /// Boiling conductance per that of R-134a.
    pub(super) fn boiling_ratio(&self) -> f64 {
        film::boiling_ratio(self.refrigerant)
    }

    /// Equilibrium at a pressure.
    pub(super) fn saturation(&self, p_pa: f64) -> Result<Saturation, Error> {
        if self.is_transcritical() && p_pa > self.pure.critical_p_pa {
            return self.pseudo(p_pa);
        }
        let t_k = self.pure.temperature_k(p_pa)?;
        let liquid = self.pure.liquid(t_k)?;
        let vapour = self.pure.vapour(t_k)?;
        Ok(Saturation {
            p_pa,
            bubble_k: t_k,
            dew_k: t_k,
            liquid_j_kg: liquid.h_j_kg,
            vapour_j_kg: vapour.h_j_kg,
            liquid_j_kg_k: liquid.s_j_kg_k,
            vapour_j_kg_k: vapour.s_j_kg_k,
            liquid_kg_m3: liquid.rho_mol_m3 * self.molar_kg,
            vapour_kg_m3: vapour.rho_mol_m3 * self.molar_kg,
        })
    }

    /// The temperature at which the specific heat peaks at a pressure above the critical one, K.
    ///
    /// `-122.6 + 6.124 p - 0.1657 p^2 + 0.01773 p^2.5 - 0.0005608 p^3` in °C, p in bar. Source: Liao & Zhao 2002, J. Heat
    /// Transfer 124, 413 (75 to 140 bar); from memory.
    fn pseudo_k(&self, p_pa: f64) -> f64 {
        let p = p_pa / 1e5;
        let t_c = -122.6 + p * (6.124 + p * (-0.1657 + 0.017_73 * libm::sqrt(p) - 0.000_560_8 * p));
        (t_c + 273.15).max(self.pure.critical_t_k)
    }

    /// What stands for liquid and vapour above the critical pressure: both edges of a thin slice about the
    /// pseudo-critical temperature.
    fn pseudo(&self, p_pa: f64) -> Result<Saturation, Error> {
        let t_k = self.pseudo_k(p_pa);
        if let Some(saturation) = self.charted_slice(p_pa, t_k) {
            return Ok(saturation);
        }
        let (shift_h, shift_s) = self.transcritical.unwrap_or_default();
        let liquid = self.pure.state_tp(t_k - SLICE_K, p_pa, Reference::Iir)?;
        let vapour = self.pure.state_tp(t_k + SLICE_K, p_pa, Reference::Iir)?;
        Ok(Saturation {
            p_pa,
            bubble_k: t_k - SLICE_K,
            dew_k: t_k + SLICE_K,
            liquid_j_kg: liquid.h_j_kg - shift_h,
            vapour_j_kg: vapour.h_j_kg - shift_h,
            liquid_j_kg_k: liquid.s_j_kg_k - shift_s,
            vapour_j_kg_k: vapour.s_j_kg_k - shift_s,
            liquid_kg_m3: liquid.rho_kg_m3,
            vapour_kg_m3: vapour.rho_kg_m3,
        })
    }

    /// A state of the general search, as the circuit has it.
    fn general(&self, found: &saturation::State) -> State {
        let (shift_h, shift_s) = self.transcritical.unwrap_or_default();
        let cp_j_kg_k = found.response.map_or(f64::NAN, |r| r.cp_j_kg_k);
        let vapour = if found.t_k > self.pure.critical_t_k { 1.0 } else { 0.0 };
        State {
            t_k: found.t_k,
            h_j_kg: found.h_j_kg - shift_h,
            s_j_kg_k: found.s_j_kg_k - shift_s,
            rho_kg_m3: found.rho_kg_m3,
            cp_j_kg_k,
            quality: found.quality.unwrap_or(vapour),
        }
    }

    /// Pressure and state above the critical temperature at a density.
    pub(super) fn filling(&self, t_k: f64, rho_kg_m3: f64) -> Result<(f64, State), Error> {
        let found = self.pure.state_t_rho(t_k, rho_kg_m3 / self.molar_kg, Reference::Iir)?;
        Ok((found.p_pa, self.general(&found)))
    }

    /// The enthalpy and entropy shifts where a state at this pressure wants the general search.
    fn general_at(&self, p_pa: f64) -> Option<(f64, f64)> {
        self.transcritical
            .filter(|_| p_pa > NEAR_CRITICAL * self.pure.critical_p_pa)
    }

    /// Dew temperature at a pressure, K.
    pub(super) fn dew_k(&self, p_pa: f64) -> Result<f64, Error> {
        if self.is_transcritical() && p_pa > self.pure.critical_p_pa {
            return Ok(self.pseudo_k(p_pa));
        }
        self.pure.temperature_k(p_pa)
    }

    /// Dew pressure at a temperature, Pa; that of the end of the curve beyond its ends.
    pub(super) fn dew_pa(&self, t_k: f64) -> Result<f64, Error> {
        let range = self.pure.temperatures();
        self.pure.pressure_pa(t_k.clamp(range.low, range.high))
    }

    /// Bubble pressure at a temperature, Pa; that of the end of the curve beyond its ends.
    pub(super) fn bubble_pa(&self, t_k: f64) -> Result<f64, Error> {
        self.dew_pa(t_k)
    }

    /// Critical temperature (K) and pressure (Pa).
    pub(super) fn critical(&self) -> (f64, f64) {
        (self.pure.critical_t_k, self.pure.critical_p_pa)
    }

    /// Enthalpy and density of liquid at `t_k` under the pressure of `saturation`, from the saturated liquid of that
    /// temperature.
    ///
    /// The compression from its own saturation pressure changes the enthalpy by `(1 - beta T) v dp`, at most 0.2 kJ/kg
    /// in a condenser, which is left out.
    pub(super) fn subcooled(&self, saturation: &Saturation, t_k: f64) -> Result<(f64, f64), Error> {
        let t_k = t_k.clamp(self.pure.temperatures().low, saturation.bubble_k);
        let liquid = self.pure.liquid(t_k)?;
        Ok((liquid.h_j_kg, liquid.rho_mol_m3 * self.molar_kg))
    }

    /// The temperature at which saturated liquid has the enthalpy `h_j_kg`, below that of `saturation`, K.
    pub(super) fn liquid_k(&self, saturation: &Saturation, h_j_kg: f64) -> Result<f64, Error> {
        let mut t_k = saturation.bubble_k;
        let mut h = saturation.liquid_j_kg;
        let mut slope = 1400.0;
        for _ in 0..MOST_STEPS {
            let next = (t_k + (h_j_kg - h) / slope).clamp(self.pure.temperatures().low, saturation.bubble_k);
            let next_h = self.pure.liquid(next)?.h_j_kg;
            if libm::fabs(next - t_k) < 1e-9 * t_k {
                return Ok(next);
            }
            slope = (next_h - h) / (next - t_k);
            (t_k, h) = (next, next_h);
        }
        Err(Error::no_convergence(libm::fabs(h - h_j_kg) / libm::fabs(h), STEP))
    }

    /// Specific heat of liquid along the saturation line just below `saturation`, J/(kg K).
    pub(super) fn liquid_cp_j_kg_k(&self, saturation: &Saturation) -> Result<f64, Error> {
        let below = self.pure.liquid(saturation.bubble_k - 4.0)?;
        Ok((saturation.liquid_j_kg - below.h_j_kg) / 4.0)
    }

    /// The state at the suction coordinate `x`: quality `1 + x` below zero, superheat `200 K x` above.
    ///
    /// 200 K of superheat have about the enthalpy of evaporation, so that the enthalpy has nearly the same slope on
    /// both sides.
    pub(super) fn at_coordinate(&self, saturation: &Saturation, x: f64) -> Result<State, Error> {
        if x < 0.0 {
            return self.mixed(saturation, 1.0 + x);
        }
        let t_k = saturation.dew_k + 200.0 * x;
        if saturation.p_pa < self.pure.critical_p_pa
            && let Some(isobar) = self.isobar(saturation, Side::Vapour)
        {
            let guess_j_kg = saturation.vapour_j_kg + 1.3e3 * 200.0 * x;
            if let Some((h_j_kg, dense)) = isobar.find(guess_j_kg, t_k, |dense| (dense.t_k, dense.t_per_h)) {
                return Ok(State {
                    quality: 1.0,
                    ..self.charted(&dense, h_j_kg)
                });
            }
        }
        let isotherm = Isotherm::new(&self.pure.fluid.equation, t_k);
        let dew = saturation.vapour_kg_m3 / self.molar_kg;
        let mut rho = dew * saturation.dew_k / isotherm.t_k();
        for _ in 0..MOST_STEPS {
            let (p, slope) = isotherm.pressure_pa(rho);
            let step = (p - saturation.p_pa) / slope;
            rho = (rho - step).clamp(0.5 * rho, dew);
            if libm::fabs(step) <= STEP * rho {
                return Ok(self.superheated(&Properties::new(&isotherm, rho)));
            }
        }
        Err(Error::no_convergence(1.0, STEP))
    }

    /// The state at the pressure of `saturation` and an entropy.
    pub(super) fn at_entropy(&self, saturation: &Saturation, s_j_kg_k: f64) -> Result<State, Error> {
        if let Some(state) = self.across(saturation, |medium, edge| medium.at_entropy(edge, s_j_kg_k)) {
            return state;
        }
        let above = saturation.p_pa >= self.pure.critical_p_pa;
        if (above || s_j_kg_k >= saturation.vapour_j_kg_k)
            && let Some(isobar) = self.isobar(saturation, Side::Vapour)
        {
            let guess_j_kg = saturation.vapour_j_kg + (s_j_kg_k - saturation.vapour_j_kg_k) * 1.1 * saturation.dew_k;
            if let Some((h_j_kg, dense)) = isobar.find(guess_j_kg, s_j_kg_k, |d| (d.s_j_kg_k, d.s_per_h)) {
                let state = self.charted(&dense, h_j_kg);
                return Ok(if above { state } else { State { quality: 1.0, ..state } });
            }
        }
        if let Some((_, shift)) = self.general_at(saturation.p_pa) {
            let found = self.pure.state_ps(saturation.p_pa, s_j_kg_k + shift, Reference::Iir)?;
            return Ok(self.general(&found));
        }
        if s_j_kg_k < saturation.vapour_j_kg_k {
            let x = (s_j_kg_k - saturation.liquid_j_kg_k) / (saturation.vapour_j_kg_k - saturation.liquid_j_kg_k);
            return self.mixed(saturation, x);
        }
        self.newton(
            saturation,
            |state| {
                let slope_t = state.cv_j_kg_k / state.t_k;
                let slope_rho = -state.dp_dt_pa_k / (state.rho_mol_m3 * state.rho_mol_m3 * self.molar_kg);
                (state.s_j_kg_k - s_j_kg_k, slope_t, slope_rho)
            },
            (s_j_kg_k - saturation.vapour_j_kg_k) / 1000.0 * saturation.dew_k,
        )
    }

    /// The state at the pressure of `saturation` and an enthalpy.
    pub(super) fn at_enthalpy(&self, saturation: &Saturation, h_j_kg: f64) -> Result<State, Error> {
        if let Some(state) = self.across(saturation, |medium, edge| medium.at_enthalpy(edge, h_j_kg)) {
            return state;
        }
        let above = saturation.p_pa >= self.pure.critical_p_pa;
        let two_phases = !above && (saturation.liquid_j_kg..saturation.vapour_j_kg).contains(&h_j_kg);
        if self.is_transcritical() && two_phases {
            return self.mixed(saturation, (h_j_kg - saturation.liquid_j_kg) / saturation.latent_j_kg());
        }
        if let Some(state) = self.charted_at(saturation, h_j_kg) {
            return Ok(state);
        }
        let compressed = self.transcritical.filter(|_| h_j_kg < saturation.liquid_j_kg);
        if let Some((shift, _)) = self.general_at(saturation.p_pa).or(compressed) {
            let found = self.pure.state_ph(saturation.p_pa, h_j_kg + shift, Reference::Iir)?;
            return Ok(self.general(&found));
        }
        if h_j_kg < saturation.liquid_j_kg {
            let t_k = self.liquid_k(saturation, h_j_kg)?;
            let liquid = self.pure.liquid(t_k)?;
            return Ok(State {
                t_k,
                h_j_kg,
                s_j_kg_k: liquid.s_j_kg_k,
                rho_kg_m3: liquid.rho_mol_m3 * self.molar_kg,
                cp_j_kg_k: f64::NAN,
                quality: 0.0,
            });
        }
        if h_j_kg < saturation.vapour_j_kg {
            return self.mixed(saturation, (h_j_kg - saturation.liquid_j_kg) / saturation.latent_j_kg());
        }
        self.newton(
            saturation,
            |state| {
                let rho = state.rho_mol_m3;
                let slope_t = state.cv_j_kg_k + state.dp_dt_pa_k / (rho * self.molar_kg);
                let slope_rho = (state.dp_drho_j_mol - state.t_k * state.dp_dt_pa_k / rho) / (rho * self.molar_kg);
                (state.h_j_kg - h_j_kg, slope_t, slope_rho)
            },
            (h_j_kg - saturation.vapour_j_kg) / 1000.0,
        )
    }

    /// Two-phase at a quality.
    fn mixed(&self, saturation: &Saturation, quality: f64) -> Result<State, Error> {
        let between = |liquid: f64, vapour: f64| liquid + quality * (vapour - liquid);
        Ok(State {
            t_k: between(saturation.bubble_k, saturation.dew_k),
            h_j_kg: between(saturation.liquid_j_kg, saturation.vapour_j_kg),
            s_j_kg_k: between(saturation.liquid_j_kg_k, saturation.vapour_j_kg_k),
            rho_kg_m3: 1.0 / between(1.0 / saturation.liquid_kg_m3, 1.0 / saturation.vapour_kg_m3),
            cp_j_kg_k: self.dew_cp_j_kg_k(saturation),
            quality,
        })
    }

    /// Specific heat of saturated vapour, J/(kg K).
    pub(super) fn dew_cp_j_kg_k(&self, saturation: &Saturation) -> f64 {
        if let Some(dense) = self
            .isobar(saturation, Side::Vapour)
            .and_then(|isobar| isobar.at(saturation.vapour_j_kg))
        {
            return 1.0 / dense.t_per_h;
        }
        let isotherm = Isotherm::new(&self.pure.fluid.equation, saturation.dew_k);
        Properties::new(&isotherm, saturation.vapour_kg_m3 / self.molar_kg).cp_j_kg_k
    }

    fn superheated(&self, properties: &Properties) -> State {
        State {
            t_k: properties.t_k,
            h_j_kg: properties.h_j_kg,
            s_j_kg_k: properties.s_j_kg_k,
            rho_kg_m3: properties.rho_mol_m3 * self.molar_kg,
            cp_j_kg_k: properties.cp_j_kg_k,
            quality: 1.0,
        }
    }

    /// Superheated vapour at the pressure of `saturation` where `off` vanishes, from `superheat_k` on.
    ///
    /// `off` gives the deviation and its slopes over temperature (at constant density) and over molar density.
    /// Newton's method in both; the deviation and the pressure are monotone in superheated vapour.
    fn newton(
        &self,
        saturation: &Saturation,
        off: impl Fn(&Properties) -> (f64, f64, f64),
        superheat_k: f64,
    ) -> Result<State, Error> {
        let equation = &self.pure.fluid.equation;
        let dew = saturation.vapour_kg_m3 / self.molar_kg;
        let mut t_k = saturation.dew_k + superheat_k;
        let mut rho = dew * saturation.dew_k / t_k;
        let mut size = 1.0;
        for _ in 0..MOST_STEPS {
            let state = Properties::new(&Isotherm::new(equation, t_k), rho);
            let (off, off_t, off_rho) = off(&state);
            let p = state.p_pa - saturation.p_pa;
            let determinant = off_t * state.dp_drho_j_mol - off_rho * state.dp_dt_pa_k;
            let step_t = (off * state.dp_drho_j_mol - off_rho * p) / determinant;
            let step_rho = (off_t * p - off * state.dp_dt_pa_k) / determinant;
            size = (libm::fabs(step_t) / t_k).max(libm::fabs(step_rho) / rho);
            if size <= STEP {
                return Ok(self.superheated(&state));
            }
            if !size.is_finite() {
                break;
            }
            t_k = (t_k - step_t).clamp(saturation.dew_k, t_k + 150.0);
            rho = (rho - step_rho).clamp(0.5 * rho, dew);
        }
        Err(Error::no_convergence(size, STEP))
    }
}

impl Saturation {
    /// Heat of evaporation, J/kg.
    pub(super) fn latent_j_kg(&self) -> f64 {
        self.vapour_j_kg - self.liquid_j_kg
    }

    /// Mean density at a mean void fraction, kg/m3.
    pub(super) fn mean_kg_m3(&self, void: f64) -> f64 {
        self.liquid_kg_m3 + void * (self.vapour_kg_m3 - self.liquid_kg_m3)
    }

    /// Density of the homogeneous mixture at an enthalpy, liquid and vapour as at saturation beyond it, kg/m3.
    pub(super) fn mixture_kg_m3(&self, h_j_kg: f64) -> f64 {
        let x = ((h_j_kg - self.liquid_j_kg) / self.latent_j_kg()).clamp(0.0, 1.0);
        1.0 / ((1.0 - x) / self.liquid_kg_m3 + x / self.vapour_kg_m3)
    }
}

impl State {
    /// Density after heating at constant pressure to a larger enthalpy, to first order, kg/m3.
    pub(super) fn warmed_kg_m3(&self, saturation: &Saturation, h_j_kg: f64) -> f64 {
        if h_j_kg <= saturation.vapour_j_kg {
            return saturation.mixture_kg_m3(h_j_kg);
        }
        let (start_k, start_h, start_rho) = if self.quality < 1.0 {
            (saturation.dew_k, saturation.vapour_j_kg, saturation.vapour_kg_m3)
        } else {
            (self.t_k, self.h_j_kg, self.rho_kg_m3)
        };
        let t_k = start_k + (h_j_kg - start_h) / self.cp_j_kg_k;
        start_rho * start_k / t_k
    }
}
