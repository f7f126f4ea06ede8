//! Liquid and vapour in equilibrium at one pressure, and a state of the circuit.
//!
//! Between bubble and dew, temperature is linear in enthalpy.

/// A glide less than this, per temperature, is none.
const NO_GLIDE: f64 = 1e-9;

/// Liquid and vapour in equilibrium at one pressure.
#[derive(Clone, Copy, Debug, Default)]
pub(in crate::vehicle) struct Saturation {
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

/// The critical point, or an estimate of it.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Critical {
    pub t_k: f64,
    pub p_pa: f64,
}

/// A homogeneous or two-phase state.
#[derive(Clone, Copy, Debug, Default)]
pub(in crate::vehicle) struct State {
    pub t_k: f64,
    pub h_j_kg: f64,
    pub s_j_kg_k: f64,
    pub rho_kg_m3: f64,
    /// Specific heat of the vapour at constant pressure.
    pub cp_j_kg_k: f64,
    /// Mass fraction of vapour; one where superheated.
    pub quality: f64,
}

impl Saturation {
    /// Heat of evaporation, J/kg.
    pub(in crate::vehicle) fn latent_j_kg(&self) -> f64 {
        self.vapour_j_kg - self.liquid_j_kg
    }

    /// Mean density at a mean void fraction, kg/m3.
    pub(in crate::vehicle) fn mean_kg_m3(&self, void: f64) -> f64 {
        self.liquid_kg_m3 + void * (self.vapour_kg_m3 - self.liquid_kg_m3)
    }

    /// Density of the homogeneous mixture at an enthalpy, liquid and vapour as at saturation beyond it, kg/m3.
    pub(in crate::vehicle) fn mixture_kg_m3(&self, h_j_kg: f64) -> f64 {
        let x = ((h_j_kg - self.liquid_j_kg) / self.latent_j_kg()).clamp(0.0, 1.0);
        1.0 / ((1.0 - x) / self.liquid_kg_m3 + x / self.vapour_kg_m3)
    }

    /// Temperature where it boils or condenses at an enthalpy, K: evenly from bubble to dew, and the nearer end beyond.
    pub(in crate::vehicle) fn boiling_k(&self, h_j_kg: f64) -> f64 {
        let share = ((h_j_kg - self.liquid_j_kg) / self.latent_j_kg()).clamp(0.0, 1.0);
        self.dew_k - (1.0 - share) * (self.dew_k - self.bubble_k)
    }

    /// Whether temperature rises from bubble to dew.
    pub(in crate::vehicle) fn has_glide(&self) -> bool {
        self.dew_k - self.bubble_k > NO_GLIDE * self.dew_k
    }

    /// What glide adds to the resistance of the film inside a tube, relative to it, where the vapour alone has the part
    /// `gas_ratio` of the film's conductance: half of `cp glide / (latent heat)` over that part, the share of vapour being
    /// one half in the mean.
    ///
    /// Source: Bell & Ghaly 1973, AIChE Symp. Ser. 69, 72.
    pub(in crate::vehicle) fn glide_resistance(&self, gas_cp_j_kg_k: f64, gas_ratio: f64) -> f64 {
        if self.has_glide() {
            0.5 * gas_cp_j_kg_k * (self.dew_k - self.bubble_k) / (self.latent_j_kg() * gas_ratio)
        } else {
            0.0
        }
    }

    /// Entropy at a share of the enthalpy of evaporation: `ds = dh / T` with the temperature changing linearly from bubble to
    /// dew, scaled to meet both lines.
    pub(in crate::vehicle) fn entropy_at_share(&self, share: f64) -> f64 {
        let part = if self.has_glide() {
            // In this form the rounding of a small glide cancels.
            let glide = (self.dew_k - self.bubble_k) / self.bubble_k;
            libm::log1p(share * glide) / libm::log1p(glide)
        } else {
            share
        };
        self.liquid_j_kg_k + part * (self.vapour_j_kg_k - self.liquid_j_kg_k)
    }

    /// The share of the enthalpy of evaporation at an entropy, the reverse of [`Saturation::entropy_at_share`].
    pub(in crate::vehicle) fn share_at_entropy(&self, s_j_kg_k: f64) -> f64 {
        let part = (s_j_kg_k - self.liquid_j_kg_k) / (self.vapour_j_kg_k - self.liquid_j_kg_k);
        if self.has_glide() {
            let glide = (self.dew_k - self.bubble_k) / self.bubble_k;
            libm::expm1(part * libm::log1p(glide)) / glide
        } else {
            part
        }
    }
}

impl State {
    /// Density after heating at constant pressure to a larger enthalpy, to first order, kg/m3.
    pub(in crate::vehicle) fn warmed_kg_m3(&self, saturation: &Saturation, h_j_kg: f64) -> f64 {
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
