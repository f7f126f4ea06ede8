//! What the circuit asks of its refrigerant, and a pure refrigerant's answers; a mixture's stand in `mixed`.

mod charted;
mod either;
mod film;
mod glide;
mod made;
mod mixed;
mod states;

pub(super) use either::{Filling, Medium};
pub(super) use made::Composition;
pub(super) use mixed::Mixed;

use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Reference, Refrigerant};
use crate::numerics::sqrt;
use crate::saturation::{self, Pure};

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
        let t_c = -122.6 + p * (6.124 + p * (-0.1657 + 0.017_73 * sqrt(p) - 0.000_560_8 * p));
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
