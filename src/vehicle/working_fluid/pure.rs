//! A pure refrigerant in the circuit: its equilibria and limits.

use super::equilibrium::{Critical, Saturation, State};
use super::film;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Reference, Refrigerant};
use crate::numerics::sqrt;
use crate::saturation::{self, Pure};

/// A pure refrigerant in the circuit.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Single {
    pub(super) refrigerant: Refrigerant,
    pub(super) pure: &'static Pure,
    /// Molar mass, kg/mol.
    pub(super) molar_kg: f64,
    lowest_pa: f64,
    /// By how much enthalpy and entropy lie higher when counted as [`Reference::Iir`] has them, where the fluid works
    /// above its critical point; `None` where it condenses in all weathers.
    pub(super) transcritical: Option<(f64, f64)>,
    /// Equilibria between which states next to the critical pressure are interpolated.
    pub(super) bridge: Option<[Saturation; 2]>,
    /// Enthalpy at the critical point, J/kg.
    pub(super) critical_j_kg: f64,
}

/// The lowest evaporating temperature that is modelled, K: the properties of moist air end a little below.
const LOWEST_K: f64 = 207.0;
/// The highest pressure of a gas cooler, Pa. Judgement: above the pressures at which protection takes over.
const GAS_COOLER_PA: f64 = 14.5e6;
/// Above this part of the critical pressure a state is searched by the general method.
const NEAR_CRITICAL: f64 = 0.95;
/// Half the width of the slice about the pseudo-critical temperature that replaces the change of phase above the critical
/// pressure, K.
pub(super) const SLICE_K: f64 = 0.5;
/// The range of pressures about the critical one that is bridged by interpolation, per the critical pressure.
const ACROSS: [f64; 2] = [0.985, 1.015];
/// The lowest critical temperature of a refrigerant that condenses in hot weather, K.
pub(super) const LEAST_CRITICAL_K: f64 = 340.0;

impl Single {
    /// The fluid of a refrigerant.
    ///
    /// Errors: `NotAvailable` for a refrigerant that does not condense at the temperatures of a vehicle's condenser.
    pub(in crate::vehicle) fn of(refrigerant: Refrigerant) -> Result<Self, Error> {
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
        let mut fluid = Self {
            refrigerant,
            pure,
            molar_kg,
            lowest_pa: pure.pressure_pa(lowest_k)?,
            transcritical,
            bridge: None,
            critical_j_kg: pure.liquid(pure.critical_t_k)?.h_j_kg,
        };
        if transcritical.is_some() {
            let [low, high] = ACROSS.map(|part| fluid.saturation(part * pure.critical_p_pa));
            fluid.bridge = Some([low?, high?]);
        }
        Ok(fluid)
    }

    /// The lowest pressure at which the circuit is modelled, Pa: saturation at -66 C, a deep vacuum.
    pub(in crate::vehicle) fn lowest_pa(&self) -> f64 {
        self.lowest_pa
    }

    /// The highest pressure of a condenser, Pa: 97 % of the critical pressure; of a gas cooler, 14.5 MPa.
    pub(in crate::vehicle) fn highest_pa(&self) -> f64 {
        if self.is_transcritical() {
            GAS_COOLER_PA
        } else {
            0.97 * self.pure.critical_p_pa
        }
    }

    /// Whether the high side works above the critical pressure in warm weather.
    pub(in crate::vehicle) fn is_transcritical(&self) -> bool {
        self.transcritical.is_some()
    }

    /// Condensing conductance per that of R-134a.
    pub(in crate::vehicle) fn condensing_ratio(&self) -> f64 {
        film::condensing_ratio(self.refrigerant)
    }

    /// Boiling conductance per that of R-134a.
    pub(in crate::vehicle) fn boiling_ratio(&self) -> f64 {
        film::boiling_ratio(self.refrigerant)
    }

    /// Equilibrium at a pressure.
    pub(in crate::vehicle) fn saturation(&self, p_pa: f64) -> Result<Saturation, Error> {
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

    /// What replaces liquid and vapour above the critical pressure: both edges of a thin slice about the pseudo-critical
    /// temperature.
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

    /// A state of the general search as a state of the circuit.
    pub(super) fn general(&self, found: &saturation::State) -> State {
        let (shift_h, shift_s) = self.transcritical.unwrap_or_default();
        let cp_j_kg_k = found.response.map_or(f64::NAN, |r| r.cp.j_kg_k());
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
    pub(in crate::vehicle) fn filling(&self, t_k: f64, rho_kg_m3: f64) -> Result<(f64, State), Error> {
        let found = self.pure.state_t_rho(t_k, rho_kg_m3 / self.molar_kg, Reference::Iir)?;
        Ok((found.p_pa, self.general(&found)))
    }

    /// The enthalpy and entropy shifts where a state at this pressure needs the general search.
    pub(super) fn general_at(&self, p_pa: f64) -> Option<(f64, f64)> {
        self.transcritical
            .filter(|_| p_pa > NEAR_CRITICAL * self.pure.critical_p_pa)
    }

    /// Dew temperature at a pressure, K.
    pub(in crate::vehicle) fn dew_k(&self, p_pa: f64) -> Result<f64, Error> {
        if self.is_transcritical() && p_pa > self.pure.critical_p_pa {
            return Ok(self.pseudo_k(p_pa));
        }
        self.pure.temperature_k(p_pa)
    }

    /// Dew pressure at a temperature, Pa; that of the end of the curve beyond its ends.
    pub(in crate::vehicle) fn dew_pa(&self, t_k: f64) -> Result<f64, Error> {
        let range = self.pure.temperatures();
        self.pure.pressure_pa(t_k.clamp(range.low, range.high))
    }

    /// Bubble pressure at a temperature, Pa; that of the end of the curve beyond its ends.
    pub(in crate::vehicle) fn bubble_pa(&self, t_k: f64) -> Result<f64, Error> {
        self.dew_pa(t_k)
    }

    /// Critical temperature (K) and pressure (Pa).
    pub(in crate::vehicle) fn critical(&self) -> Critical {
        Critical {
            t_k: self.pure.critical_t_k,
            p_pa: self.pure.critical_p_pa,
        }
    }
}
