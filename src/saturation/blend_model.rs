//! A blend with its mixture model: one phase at a temperature and pressure, or liquid and vapour at a share of vapour.
//!
//! What is given beside the pressure, an enthalpy or entropy, rises with temperature in one phase and with the share of
//! vapour in two: it is searched within ends that enclose it.

use super::blend::Blend;
use super::state::{ON_THE_LINE, State};
use crate::eos::Properties;
use crate::error::Error;
use crate::mixture::{Boiling, Fixed, Incipient, MOST_COMPONENTS, Mixture, Side, Split, Two};
use crate::names::{ErrorKind, Phase, Quantity, Reference};
use crate::range::Range;

/// Steps of a search within a bracket; five are usual, and as many halvings leave nothing.
const MOST_STEPS: usize = 100;
/// The relative difference of bubble and dew pressure below which temperature and pressure do not tell the share of vapour.
const NO_GLIDE: f64 = 1e-9;

/// A density or an energy closer to the line than this, relatively, is on it.
pub(super) const EDGE: f64 = 1e-10;

/// What is given beside the pressure.
#[derive(Clone, Copy, Debug)]
pub(super) enum Given {
    Enthalpy,
    Entropy,
}

impl Given {
    const fn of(self, state: &State) -> f64 {
        match self {
            Given::Enthalpy => state.h_j_kg,
            Given::Entropy => state.s_j_kg_k,
        }
    }

    const fn quantity(self) -> Quantity {
        match self {
            Given::Enthalpy => Quantity::Enthalpy,
            Given::Entropy => Quantity::Entropy,
        }
    }
}

/// A blend with its model at hand and the reference that its energies count from.
pub(super) struct Model {
    blend: &'static Blend,
    pub(super) mixture: Mixture<f64>,
    z: [f64; MOST_COMPONENTS],
    reference: Reference,
}

impl Model {
    pub(super) fn new(blend: &'static Blend, reference: Reference) -> Result<Self, Error> {
        let (mixture, z) = blend.mixture()?;
        Ok(Self {
            blend,
            mixture,
            z,
            reference,
        })
    }

    pub(super) fn z(&self) -> &[f64] {
        &self.z[..self.blend.parts.len()]
    }

    pub(super) fn one(&self, properties: &Properties, phase: Phase) -> State {
        State::of(
            properties,
            self.blend.molar_mass,
            phase,
            self.blend.offset(self.reference),
        )
    }

    /// One phase as liquid or vapour.
    fn one_phase(&self, t_k: f64, p_pa: f64, side: Side) -> Result<State, Error> {
        let phase = match side {
            Side::Bubble => Phase::Liquid,
            Side::Dew => Phase::Vapour,
        };
        let properties = self.mixture.one_phase(self.z(), t_k, p_pa, side)?;
        Ok(self.one(&properties, phase).with_pressure(p_pa))
    }

    /// The state at a temperature and pressure within the valid ones.
    pub(super) fn at(&self, t_k: f64, p_pa: f64) -> Result<State, Error> {
        let blend = self.blend;
        if t_k <= blend.highest_t_k {
            let bubble_pa = blend.pressure_pa(Side::Bubble, t_k)?;
            let dew_pa = blend.pressure_pa(Side::Dew, t_k)?;
            if p_pa > bubble_pa * (1.0 + ON_THE_LINE) {
                return self.one_phase(t_k, p_pa, Side::Bubble);
            }
            if p_pa < dew_pa * (1.0 - ON_THE_LINE) {
                return self.one_phase(t_k, p_pa, Side::Dew);
            }
            if bubble_pa - dew_pa < NO_GLIDE * bubble_pa {
                return Err(Error::of(ErrorKind::TwoPhase, Quantity::AbsolutePressure));
            }
            let fixed = Fixed::Temperature(t_k);
            let ends = self.ends(fixed)?;
            let state = self.between(&ends, fixed, |state| -state.p_pa, -p_pa)?;
            return Ok(state.with_pressure(p_pa));
        }
        match self.mixture.split(self.z(), t_k, p_pa)? {
            Split::One { rho_mol_m3, .. } => {
                let mut rho = [1.0; MOST_COMPONENTS];
                for (rho, z) in rho.iter_mut().zip(self.z()) {
                    *rho = z * rho_mol_m3;
                }
                let phase = if t_k >= blend.critical_t_k {
                    Phase::Supercritical
                } else if rho_mol_m3 > blend.critical_rho_mol_m3 {
                    Phase::Liquid
                } else {
                    Phase::Vapour
                };
                Ok(self.one(&self.mixture.properties(t_k, &rho), phase).with_pressure(p_pa))
            }
            Split::Two(two) => Ok(self.two(t_k, &two)),
        }
    }

    /// The bubble and the dew point at a temperature or a pressure, with all that the model says of them.
    pub(super) fn ends(&self, fixed: Fixed<f64>) -> Result<(Incipient<f64>, Incipient<f64>), Error> {
        let end = |side| {
            // The curve knows the temperature; to search at a temperature is surer.
            let t_k = match fixed {
                Fixed::Temperature(t_k) => t_k,
                Fixed::Pressure(p_pa) => self.blend.temperature_k(side, p_pa)?,
            };
            let mut point = self.mixture.point(self.z(), side, Fixed::Temperature(t_k))?;
            if let Fixed::Pressure(p_pa) = fixed {
                point.p_pa = p_pa;
            }
            Ok(point)
        };
        Ok((end(Side::Bubble)?, end(Side::Dew)?))
    }

    /// The state on one side.
    pub(super) fn side(&self, point: &Incipient<f64>, side: Side) -> State {
        let mut rho = [1.0; MOST_COMPONENTS];
        for (rho, z) in rho.iter_mut().zip(self.z()) {
            *rho = z * point.rho_mol_m3;
        }
        let quality = match side {
            Side::Bubble => 0.0,
            Side::Dew => 1.0,
        };
        let one = self.one(&self.mixture.properties(point.t_k, &rho), Phase::TwoPhase);
        State {
            quality: Some(quality),
            response: None,
            ..one
        }
        .with_pressure(point.p_pa)
    }

    /// The state with a share of vapour.
    pub(super) fn boiling_at(&self, fixed: Fixed<f64>, quality: f64) -> Result<State, Error> {
        let ends = self.ends(fixed)?;
        let state = self.at_quality(&ends, fixed, quality)?.0;
        Ok(match fixed {
            Fixed::Temperature(_) => state,
            Fixed::Pressure(p_pa) => state.with_pressure(p_pa),
        })
    }

    fn at_quality(
        &self,
        (bubble, dew): &(Incipient<f64>, Incipient<f64>),
        fixed: Fixed<f64>,
        quality: f64,
    ) -> Result<(State, f64), Error> {
        if quality <= 0.0 {
            return Ok((self.side(bubble, Side::Bubble), 0.0));
        }
        if quality >= 1.0 {
            return Ok((self.side(dew, Side::Dew), 1.0));
        }
        let start = Boiling::between(self.z(), quality, bubble, dew);
        let boiling = self.mixture.boiling(self.z(), fixed, quality, &start)?;
        let mut state = self.two(boiling.t_k, &boiling.two);
        state.quality = Some(quality);
        Ok((state, quality))
    }

    /// Both phases together.
    fn two(&self, t_k: f64, two: &Two) -> State {
        let liquid = self.mixture.properties(t_k, &two.liquid);
        let vapour = self.mixture.properties(t_k, &two.vapour);
        // Per mole of charge
        let mass =
            |volume: f64, rho: &[f64; MOST_COMPONENTS], total: f64| volume * total * self.mixture.molar_mass(rho);
        let liquid_kg = mass(two.liquid_m3_mol, &two.liquid, liquid.rho_mol_m3);
        let vapour_kg = mass(two.vapour_m3_mol, &two.vapour, vapour.rho_mol_m3);
        let quality = vapour_kg / (liquid_kg + vapour_kg);
        let offset = self.blend.offset(self.reference);
        let mixed = |liquid: f64, vapour: f64| liquid + quality * (vapour - liquid);
        let rho_mol_m3 = 1.0 / (two.liquid_m3_mol + two.vapour_m3_mol);
        State {
            phase: Phase::TwoPhase,
            quality: Some(quality),
            t_k,
            p_pa: two.p_pa,
            rho_mol_m3,
            rho_kg_m3: rho_mol_m3 * self.blend.molar_mass,
            h_j_kg: mixed(liquid.h_j_kg, vapour.h_j_kg) + offset.h_j_kg,
            s_j_kg_k: mixed(liquid.s_j_kg_k, vapour.s_j_kg_k) + offset.s_j_kg_k,
            response: None,
        }
    }

    /// The state of liquid and vapour at which `figure`, which rises with the share of vapour, has a value.
    pub(super) fn between(
        &self,
        ends: &(Incipient<f64>, Incipient<f64>),
        fixed: Fixed<f64>,
        figure: impl Fn(&State) -> f64,
        value: f64,
    ) -> Result<State, Error> {
        let (low, high) = (self.side(&ends.0, Side::Bubble), self.side(&ends.1, Side::Dew));
        let miss = |state: &State| figure(state) - value;
        if miss(&low) >= 0.0 {
            return Ok(low);
        }
        if miss(&high) <= 0.0 {
            return Ok(high);
        }
        let scale = figure(&high) - figure(&low);
        enclosed((0.0, miss(&low)), (1.0, miss(&high)), scale, |quality| {
            let (state, _) = self.at_quality(ends, fixed, quality)?;
            Ok((miss(&state), state))
        })
    }

    /// The state at a pressure at which an energy has a value.
    pub(super) fn with_energy(&self, p_pa: f64, given: Given, value: f64) -> Result<State, Error> {
        let blend = self.blend;
        let p_pa = blend.valid_pressures().check(p_pa)?;
        if !value.is_finite() {
            return Err(Error::not_finite(given.quantity(), value));
        }
        let Range { low, high, .. } = blend.valid_temperatures();
        let has = |side: Side| p_pa >= blend.boundary(side).lowest_p_pa && p_pa <= blend.boundary(side).highest_p_pa;
        let fixed = Fixed::Pressure(p_pa);
        if has(Side::Bubble) && has(Side::Dew) {
            let ends = self.ends(fixed)?;
            let (liquid, vapour) = (self.side(&ends.0, Side::Bubble), self.side(&ends.1, Side::Dew));
            let slack = EDGE * (given.of(&vapour) - given.of(&liquid));
            if value < given.of(&liquid) - slack {
                return self.warmed(p_pa, given, value, (low, liquid.t_k), |t_k| {
                    self.one_phase(t_k, p_pa, Side::Bubble)
                });
            }
            if value > given.of(&vapour) + slack {
                return self.warmed(p_pa, given, value, (vapour.t_k, high), |t_k| {
                    self.one_phase(t_k, p_pa, Side::Dew)
                });
            }
            let state = self.between(&ends, fixed, |state| given.of(state), value)?;
            return Ok(state.with_pressure(p_pa));
        }
        if p_pa < blend.bubble.lowest_p_pa {
            // Vapour alone: what condenses here is colder than the lines.
            let from = if has(Side::Dew) {
                blend.temperature_k(Side::Dew, p_pa)?
            } else {
                low
            };
            return self.warmed(p_pa, given, value, (from, high), |t_k| {
                self.one_phase(t_k, p_pa, Side::Dew)
            });
        }
        self.warmed(p_pa, given, value, (low, high), |t_k| self.at(t_k, p_pa))
    }

    /// The state between two temperatures at which an energy has a value.
    fn warmed(
        &self,
        p_pa: f64,
        given: Given,
        value: f64,
        (low_k, high_k): (f64, f64),
        state: impl Fn(f64) -> Result<State, Error>,
    ) -> Result<State, Error> {
        let (low, high) = (given.of(&state(low_k)?), given.of(&state(high_k)?));
        let value = Range::new(given.quantity(), low, high).check(value)?;
        let found = enclosed((low_k, low - value), (high_k, high - value), high - low, |t_k| {
            let state = state(t_k)?;
            Ok((given.of(&state) - value, state))
        })?;
        Ok(found.with_pressure(p_pa))
    }
}

/// The state at which a rising miss is zero, by the secant rule within a bracket that keeps both ends moving.
///
/// Source of the rule: the Illinois method, Dowell and Jarratt, BIT 11 (1971) 168, doi 10.1007/BF01934364; halving where it is slow.
///
/// Errors: those of `at`.
fn enclosed(
    (mut low, mut low_miss): (f64, f64),
    (mut high, mut high_miss): (f64, f64),
    scale: f64,
    at: impl Fn(f64) -> Result<(f64, State), Error>,
) -> Result<State, Error> {
    let mut kept = 0;
    let mut last = None;
    for step in 0..MOST_STEPS {
        let secant = low - low_miss * (high - low) / (high_miss - low_miss);
        let is_slow = step % 8 == 7 || !(secant > low && secant < high);
        let x = if is_slow { 0.5 * (low + high) } else { secant };
        let (miss, state) = at(x)?;
        last = Some(state);
        if libm::fabs(miss) <= 1e-14 * libm::fabs(scale) || high - low <= 1e-15 * libm::fabs(high) {
            break;
        }
        if miss < 0.0 {
            (low, low_miss) = (x, miss);
            if kept < 0 {
                high_miss *= 0.5;
            }
            kept = -1;
        } else {
            (high, high_miss) = (x, miss);
            if kept > 0 {
                low_miss *= 0.5;
            }
            kept = 1;
        }
    }
    last.ok_or(Error::no_convergence(f64::INFINITY, 0.0))
}
