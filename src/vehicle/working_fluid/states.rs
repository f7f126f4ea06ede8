//! States of a pure refrigerant in the circuit: by superheat, entropy or enthalpy, liquid, two-phase and vapour.

use super::co2_charts::Side;
use super::equilibrium::{Saturation, State};
use super::pure::Single;
use crate::eos::{Isotherm, Properties};
use crate::error::Error;
use crate::names::Reference;

/// Steps that Newton's method may take; four are usual.
const MOST_STEPS: usize = 40;
/// Relative step at which it has converged: the value after that step is good to rounding.
const STEP: f64 = 1e-9;

impl Single {
    /// Enthalpy and density of liquid at `t_k` under the pressure of `saturation`, from the saturated liquid of that
    /// temperature.
    ///
    /// The compression from its own saturation pressure changes the enthalpy by `(1 - beta T) v dp`, at most 0.2 kJ/kg
    /// in a condenser, which is left out.
    pub(in crate::vehicle) fn subcooled(&self, saturation: &Saturation, t_k: f64) -> Result<(f64, f64), Error> {
        let t_k = t_k.clamp(self.pure.temperatures().low, saturation.bubble_k);
        let liquid = self.pure.liquid(t_k)?;
        Ok((liquid.h_j_kg, liquid.rho_mol_m3 * self.molar_kg))
    }

    /// The temperature at which saturated liquid has the enthalpy `h_j_kg`, below that of `saturation`, K.
    pub(in crate::vehicle) fn liquid_k(&self, saturation: &Saturation, h_j_kg: f64) -> Result<f64, Error> {
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
    pub(in crate::vehicle) fn liquid_cp_j_kg_k(&self, saturation: &Saturation) -> Result<f64, Error> {
        let below = self.pure.liquid(saturation.bubble_k - 4.0)?;
        Ok((saturation.liquid_j_kg - below.h_j_kg) / 4.0)
    }

    /// The state at the suction coordinate `x`: quality `1 + x` below zero, superheat `200 K x` above.
    ///
    /// 200 K of superheat have about the enthalpy of evaporation, so that the enthalpy has nearly the same slope on
    /// both sides.
    pub(in crate::vehicle) fn at_coordinate(&self, saturation: &Saturation, x: f64) -> Result<State, Error> {
        if x < 0.0 {
            return self.mixed(saturation, 1.0 + x);
        }
        let t_k = saturation.dew_k + 200.0 * x;
        if saturation.p_pa < self.pure.critical_p_pa
            && let Some(isobar) = self.isobar(saturation, Side::Vapour)
        {
            let guess_j_kg = saturation.vapour_j_kg + 1.3e3 * 200.0 * x;
            if let Some((h_j_kg, charted)) = isobar.find(guess_j_kg, t_k, |charted| (charted.t_k, charted.t_per_h)) {
                return Ok(State {
                    quality: 1.0,
                    ..self.charted(&charted, h_j_kg)
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
    pub(in crate::vehicle) fn at_entropy(&self, saturation: &Saturation, s_j_kg_k: f64) -> Result<State, Error> {
        if let Some(state) = self.across(saturation, |fluid, edge| fluid.at_entropy(edge, s_j_kg_k)) {
            return state;
        }
        let above = saturation.p_pa >= self.pure.critical_p_pa;
        if (above || s_j_kg_k >= saturation.vapour_j_kg_k)
            && let Some(isobar) = self.isobar(saturation, Side::Vapour)
        {
            let guess_j_kg = saturation.vapour_j_kg + (s_j_kg_k - saturation.vapour_j_kg_k) * 1.1 * saturation.dew_k;
            if let Some((h_j_kg, charted)) = isobar.find(guess_j_kg, s_j_kg_k, |d| (d.s_j_kg_k, d.s_per_h)) {
                let state = self.charted(&charted, h_j_kg);
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
    pub(in crate::vehicle) fn at_enthalpy(&self, saturation: &Saturation, h_j_kg: f64) -> Result<State, Error> {
        if let Some(state) = self.across(saturation, |fluid, edge| fluid.at_enthalpy(edge, h_j_kg)) {
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
    pub(in crate::vehicle) fn dew_cp_j_kg_k(&self, saturation: &Saturation) -> f64 {
        if let Some(charted) = self
            .isobar(saturation, Side::Vapour)
            .and_then(|isobar| isobar.at(saturation.vapour_j_kg))
        {
            return 1.0 / charted.t_per_h;
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
