//! States of a blend from pressure and an energy.
//!
//! Enthalpy and entropy rise with temperature in one phase and with the share of vapour in two. In one phase Newton's method
//! finds temperature and density at once; where that fails, and in two phases, the state is searched in a bracket.

use super::blend_given::Given;
use super::blend_model::{EDGE, Found, Model, enclosed};
use super::blend_newton::Aim;
use super::state::State;
use crate::error::Error;
use crate::mixture::{Boiling, Fixed, Side};
use crate::range::Range;

/// A search above the end of the lines begins at this multiple of the critical temperature.
const WARMER: f64 = 1.05;

impl Model {
    /// The state at a pressure at which an energy has a value.
    pub(super) fn with_energy(&self, p_pa: f64, given: Given, value: f64) -> Result<Found, Error> {
        let blend = self.blend;
        let p_pa = blend.valid_pressures().check(p_pa)?;
        if !value.is_finite() {
            return Err(Error::not_finite(given.quantity(), value));
        }
        let Range { low, high, .. } = blend.valid_temperatures();
        let has = |side: Side| blend.boundary(side).pressures().check(p_pa).is_ok();
        let fixed = Fixed::Pressure(p_pa);
        let found = match (has(Side::Bubble), has(Side::Dew)) {
            (true, true) => {
                let ends = self.ends(fixed)?;
                let (liquid, vapour) = (self.side(&ends.0, Side::Bubble), self.side(&ends.1, Side::Dew));
                let slack = EDGE * (given.of(&vapour) - given.of(&liquid));
                if value < given.of(&liquid) - slack {
                    self.beside(p_pa, given, value, (low, liquid.t_k), Side::Bubble, &liquid)
                } else if value > given.of(&vapour) + slack {
                    self.beside(p_pa, given, value, (vapour.t_k, high), Side::Dew, &vapour)
                } else {
                    self.between(&ends, fixed, |state| given.of(state), value)
                }
            }
            // Liquid that boils at this pressure is colder than the lines: vapour, or two phases above the lowest temperature.
            (false, true) => {
                let dew_k = blend.temperature_k(Side::Dew, p_pa)?;
                let dew = self.mixture.point(self.z(), Side::Dew, Fixed::Temperature(dew_k))?;
                let vapour = self.side(&dew, Side::Dew);
                let start = Boiling::between(self.z(), 1.0, &dew, &dew);
                if value >= given.of(&vapour) - EDGE * given.size(blend) {
                    self.beside(p_pa, given, value, (dew_k, high), Side::Dew, &vapour)
                } else if let Some(found) = self.two_with_energy(p_pa, given, value, (&vapour, start)) {
                    Ok(found)
                } else {
                    self.warmed(p_pa, given, value, (low, dew_k), |t_k| self.at(t_k, p_pa))
                }
            }
            (_, false) if p_pa < blend.dew.lowest_p_pa => {
                let vapour = self.one_phase(low, p_pa, Side::Dew)?;
                self.beside(p_pa, given, value, (low, high), Side::Dew, &vapour)
            }
            (_, false) => self.above(p_pa, given, value),
        }?;
        Ok(found.with_pressure(p_pa))
    }

    /// The state at a pressure above the end of the dew line.
    fn above(&self, p_pa: f64, given: Given, value: f64) -> Result<Found, Error> {
        let blend = self.blend;
        let Range { low, high, .. } = blend.valid_temperatures();
        let boils = blend.bubble.pressures().check(p_pa).is_ok();
        let end_k = if boils {
            blend.temperature_k(Side::Bubble, p_pa)?
        } else {
            blend.highest_t_k
        };
        let liquid = self.one_phase(end_k, p_pa, Side::Bubble)?;
        if value <= given.of(&liquid) {
            return self.beside(p_pa, given, value, (low, end_k), Side::Bubble, &liquid);
        }
        if boils {
            let bubble = self.mixture.point(self.z(), Side::Bubble, Fixed::Temperature(end_k))?;
            let start = Boiling::between(self.z(), 0.0, &bubble, &bubble);
            let liquid = self.side(&bubble, Side::Bubble);
            if let Some(found) = self.two_with_energy(p_pa, given, value, (&liquid, start)) {
                return Ok(found);
            }
        }
        let warm = self
            .mixture
            .one_phase(self.z(), WARMER * blend.critical_t_k, p_pa, Side::Dew)?;
        let aim = Aim::Isobar(p_pa, given, value);
        if let Some(found) = self.newton(aim, (warm.t_k, warm.rho_mol_m3), (end_k, high))
            && self.is_stable(&found)?
        {
            return Ok(self.as_one(&found).into());
        }
        let high = if value < given.of(&self.as_one(&warm)) {
            warm.t_k
        } else {
            high
        };
        self.warmed(p_pa, given, value, (end_k, high), |t_k| self.at(t_k, p_pa))
    }

    /// The state of one phase at a pressure between two temperatures, on one side of the line from `start` on.
    fn beside(
        &self,
        p_pa: f64,
        given: Given,
        value: f64,
        ends_k: (f64, f64),
        side: Side,
        start: &State,
    ) -> Result<Found, Error> {
        let aim = Aim::Isobar(p_pa, given, value);
        if let Some(found) = self.newton(aim, (start.t_k, start.rho_mol_m3), ends_k) {
            let denser = found.rho_mol_m3 / start.rho_mol_m3 - 1.0;
            let is_beside = match side {
                Side::Bubble => denser >= -EDGE,
                Side::Dew => denser <= EDGE,
            };
            if is_beside {
                return Ok(self.one(&found, self.phase_at(found.t_k, side)).into());
            }
        }
        self.warmed(p_pa, given, value, ends_k, |t_k| {
            Ok(self.one_phase(t_k, p_pa, side)?.into())
        })
    }

    /// The state between two temperatures at which an energy has a value.
    fn warmed(
        &self,
        p_pa: f64,
        given: Given,
        value: f64,
        (low_k, high_k): (f64, f64),
        at: impl Fn(f64) -> Result<Found, Error>,
    ) -> Result<Found, Error> {
        let (first, last) = (at(low_k)?, at(high_k)?);
        let (low, high) = (given.of(&first.state), given.of(&last.state));
        // An end counts as met within rounding.
        let slack = EDGE * f64::max(high - low, given.size(self.blend));
        for (end, miss) in [(first, low - value), (last, value - high)] {
            if miss > -slack && miss < slack {
                return Ok(end);
            }
        }
        let value = Range::new(given.quantity(), low, high).check(value)?;
        let found = enclosed((low_k, low - value), (high_k, high - value), high - low, |t_k| {
            let found = at(t_k)?;
            Ok((given.of(&found.state) - value, found))
        })?;
        Ok(found.with_pressure(p_pa))
    }
}
