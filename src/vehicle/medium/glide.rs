//! Between bubble and dew: temperature goes evenly with enthalpy.

use super::Saturation;

/// A glide less than this, per temperature, is none.
const NO_GLIDE: f64 = 1e-9;

impl Saturation {
    /// Temperature where it boils or condenses at an enthalpy, K: evenly from bubble to dew, and the nearer end beyond.
    pub(in super::super) fn boiling_k(&self, h_j_kg: f64) -> f64 {
        let share = ((h_j_kg - self.liquid_j_kg) / self.latent_j_kg()).clamp(0.0, 1.0);
        self.dew_k - (1.0 - share) * (self.dew_k - self.bubble_k)
    }

    /// Whether temperature rises from bubble to dew.
    pub(in super::super) fn has_glide(&self) -> bool {
        self.dew_k - self.bubble_k > NO_GLIDE * self.dew_k
    }

    /// What glide adds to the resistance of the film inside a tube, relative to it, where the vapour alone has the part
    /// `gas_ratio` of the film's conductance: half of `cp glide / (latent heat)` over that part, the share of vapour being
    /// one half in the mean.
    ///
    /// Source: Bell & Ghaly 1973, AIChE Symp. Ser. 69, 72.
    pub(in super::super) fn glide_resistance(&self, gas_cp_j_kg_k: f64, gas_ratio: f64) -> f64 {
        if self.has_glide() {
            0.5 * gas_cp_j_kg_k * (self.dew_k - self.bubble_k) / (self.latent_j_kg() * gas_ratio)
        } else {
            0.0
        }
    }

    /// Entropy at a share of the enthalpy of evaporation: `ds = dh / T` with the temperature going evenly from bubble to
    /// dew, scaled to meet both lines.
    pub(super) fn entropy_at_share(&self, share: f64) -> f64 {
        let part = if self.has_glide() {
            // In this form the rounding of a small glide takes itself out.
            let glide = (self.dew_k - self.bubble_k) / self.bubble_k;
            libm::log1p(share * glide) / libm::log1p(glide)
        } else {
            share
        };
        self.liquid_j_kg_k + part * (self.vapour_j_kg_k - self.liquid_j_kg_k)
    }

    /// The share of the enthalpy of evaporation at an entropy, the reverse of [`Saturation::entropy_at_share`].
    pub(super) fn share_at_entropy(&self, s_j_kg_k: f64) -> f64 {
        let part = (s_j_kg_k - self.liquid_j_kg_k) / (self.vapour_j_kg_k - self.liquid_j_kg_k);
        if self.has_glide() {
            let glide = (self.dew_k - self.bubble_k) / self.bubble_k;
            libm::expm1(part * libm::log1p(glide)) / glide
        } else {
            part
        }
    }
}
