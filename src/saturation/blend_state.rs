//! States of a blend with their phase, which the saturation curves give.

use super::accuracy::BLUR;
use super::blend::Blend;
use super::blend_given::Given;
use super::blend_model::{EDGE, Model};
use super::state::{QUALITY, State};
use crate::error::Error;
use crate::mixture::{Fixed, Side};
use crate::names::{Quantity, Reference};
use crate::range::Range;

/// No density is accepted beyond this multiple of the critical one.
const DENSEST: f64 = 4.0;

impl Blend {
    /// The state at a temperature (K) and pressure (Pa).
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside [`Blend::valid_temperatures`] and [`Blend::valid_pressures`]; `TwoPhase`
    /// between the lines of a blend without glide, where the quality is needed; `NoConvergence` with the residual.
    pub fn state_tp(&'static self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        let t_k = self.valid_temperatures().check(t_k)?;
        let p_pa = self.valid_pressures().check(p_pa)?;
        Ok(Model::new(self, reference)?.at(t_k, p_pa)?.state)
    }

    /// The state at a temperature (K) and molar density (mol/m3).
    ///
    /// Errors: as [`Blend::state_tp`].
    pub fn state_t_rho(&'static self, t_k: f64, rho_mol_m3: f64, reference: Reference) -> Result<State, Error> {
        let t_k = self.valid_temperatures().check(t_k)?;
        let densest = DENSEST * self.critical_rho_mol_m3;
        let rho_mol_m3 = Range::new(Quantity::Density, f64::MIN_POSITIVE, densest).check(rho_mol_m3)?;
        let model = Model::new(self, reference)?;
        if t_k <= self.highest_t_k {
            let ends = model.ends(Fixed::Temperature(t_k))?;
            let (liquid, vapour) = (ends.0.rho_mol_m3, ends.1.rho_mol_m3);
            if rho_mol_m3 >= vapour * (1.0 - EDGE) && rho_mol_m3 <= liquid * (1.0 + EDGE) {
                let volume = |state: &State| 1.0 / state.rho_mol_m3;
                let found = model.between(&ends, Fixed::Temperature(t_k), volume, 1.0 / rho_mol_m3)?;
                return Ok(found.state);
            }
        }
        let properties = model.mixture.properties(t_k, &model.amounts(rho_mol_m3));
        if t_k > self.highest_t_k && !model.is_stable(&properties)? {
            return model.parted(t_k, rho_mol_m3);
        }
        // The pressure of a liquid amplifies rounding, so that an end of the range counts as met within rounding.
        let range = self.valid_pressures();
        let p_pa = properties.p_pa.clamp(range.low, range.high);
        if libm::fabs(properties.p_pa - p_pa) > BLUR * p_pa {
            range.check(properties.p_pa)?;
        }
        Ok(model.as_one(&properties).with_pressure(p_pa))
    }

    /// The state of liquid and vapour at a temperature (K) and quality (0 boiling liquid, 1 condensing vapour).
    ///
    /// Errors: `NotFinite`, `OutOfRange`, `NoConvergence`.
    pub fn state_tq(&'static self, t_k: f64, quality: f64, reference: Reference) -> Result<State, Error> {
        let quality = QUALITY.check(quality)?;
        let t_k = self.temperatures().check(t_k)?;
        let model = Model::new(self, reference)?;
        model.boiling_at(Fixed::Temperature(t_k), quality)
    }

    /// The state of liquid and vapour at a pressure (Pa) and quality (0 boiling liquid, 1 condensing vapour).
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the pressures that both lines have; `NoConvergence`.
    pub fn state_pq(&'static self, p_pa: f64, quality: f64, reference: Reference) -> Result<State, Error> {
        let quality = QUALITY.check(quality)?;
        let p_pa = self.shared_pressures().check(p_pa)?;
        let model = Model::new(self, reference)?;
        model.boiling_at(Fixed::Pressure(p_pa), quality)
    }

    /// The state at a pressure (Pa) and specific enthalpy (J/kg).
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the temperatures and pressures of [`Blend::state_tp`]; `NoConvergence`.
    pub fn state_ph(&'static self, p_pa: f64, h_j_kg: f64, reference: Reference) -> Result<State, Error> {
        Model::new(self, reference)?
            .with_energy(p_pa, Given::Enthalpy, h_j_kg)
            .map(|found| found.state)
    }

    /// The state at a pressure (Pa) and specific entropy (J/(kg K)).
    ///
    /// Errors: as [`Blend::state_ph`].
    pub fn state_ps(&'static self, p_pa: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        Model::new(self, reference)?
            .with_energy(p_pa, Given::Entropy, s_j_kg_k)
            .map(|found| found.state)
    }

    /// The heat (J/kg) that boils liquid of `t_k` (K) into vapour at its bubble pressure, over the glide.
    ///
    /// Errors: as [`Blend::state_pq`].
    pub fn latent_heat_j_kg(&'static self, t_k: f64) -> Result<f64, Error> {
        let p_pa = self.pressure_pa(Side::Bubble, t_k)?;
        let model = Model::new(self, Reference::Iir)?;
        let (liquid, vapour) = model.ends(Fixed::Pressure(self.shared_pressures().check(p_pa)?))?;
        Ok(model.side(&vapour, Side::Dew).h_j_kg - model.side(&liquid, Side::Bubble).h_j_kg)
    }

    /// The pressures at which there are both a bubble and a dew point.
    pub const fn shared_pressures(&self) -> Range {
        Range::new(
            Quantity::AbsolutePressure,
            self.bubble.lowest_p_pa,
            self.dew.highest_p_pa,
        )
    }
}
