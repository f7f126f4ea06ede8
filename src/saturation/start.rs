//! The start of the search for a state of given pressure and energy, from the saturation curves alone.

use super::pure::Pure;
use super::state_ph::{Energy, Target};
use crate::numerics::{ln, sqrt};

/// The least p / (rho R T) of a saturated vapour from which the virial equation, cut after B, extrapolates well enough.
const THIN: f64 = 0.7;
/// Above this share of the critical temperature the slopes of the curves are not used.
const NEAR_CRITICAL: f64 = 0.999;

/// A saturated vapour and how it changes; energies with the constants of the paper.
#[derive(Clone, Copy)]
struct Vapour {
    rho_mol_m3: f64,
    h_j_kg: f64,
    s_j_kg_k: f64,
    cp_j_kg_k: f64,
    /// The derivatives by density at constant temperature, of s without that of an ideal gas.
    h_by_rho: f64,
    s_by_rho: f64,
    /// R/M, J/(kg K).
    gas: f64,
}

impl Vapour {
    /// The energy at the same temperature and a lower density: with B alone h is linear in density, and so is s except for R ln
    /// rho.
    fn at(&self, rho_mol_m3: f64, energy: Energy) -> f64 {
        let thinner = rho_mol_m3 - self.rho_mol_m3;
        match energy {
            Energy::Enthalpy => self.h_j_kg + self.h_by_rho * thinner,
            Energy::Entropy => self.s_j_kg_k - self.gas * ln(rho_mol_m3 / self.rho_mol_m3) + self.s_by_rho * thinner,
        }
    }
}

impl Pure {
    /// Temperature (K) and molar density (mol/m3) near a vapour at `target`, which boils at `boiling_k`.
    ///
    /// The first temperature comes from cp on the saturation line, the second from the secant to the energy that the
    /// vapour has at the first. Where the vapour is dense, the search begins on the saturation line.
    pub(super) fn near_vapour(&self, target: &Target, boiling_k: f64, on_the_line: f64) -> (f64, f64) {
        let Some(dew) = self.thin_vapour(boiling_k) else {
            return (boiling_k, on_the_line);
        };
        let missing = target.value - target.energy.of_vapour(dew.h_j_kg, dew.s_j_kg_k);
        let first = match target.energy {
            Energy::Enthalpy => boiling_k + missing / dew.cp_j_kg_k,
            Energy::Entropy => boiling_k * (1.0 + missing / dew.cp_j_kg_k),
        };
        let first = first.clamp(target.low_t_k, target.high_t_k);
        let t_k = match self.thin_vapour(first) {
            Some(vapour) if first > boiling_k => {
                let rho = self.thin_mol_m3(first, target.p_pa);
                let risen = vapour.at(rho, target.energy) - (target.value - missing);
                boiling_k + (first - boiling_k) * missing / risen
            }
            Some(_) | None => first,
        };
        let t_k = if t_k.is_finite() { t_k } else { first };
        let t_k = t_k.clamp(target.low_t_k, target.high_t_k);
        (t_k, self.thin_mol_m3(t_k, target.p_pa))
    }

    /// The same for a liquid, whose energies hardly depend on the pressure.
    pub(super) fn near_liquid(&self, target: &Target, boiling_k: f64, on_the_line: f64) -> (f64, f64) {
        if boiling_k > NEAR_CRITICAL * self.critical_t_k {
            return (boiling_k, on_the_line);
        }
        let mut t_k = boiling_k;
        for _ in 0..2 {
            let curve = match target.energy {
                Energy::Enthalpy => &self.liquid_h_j_kg,
                Energy::Entropy => &self.liquid_s_j_kg_k,
            };
            let s = self.distance(t_k);
            let (energy, slope) = curve.with_slope(s);
            t_k += (target.value - energy) / (slope * self.distance_by_t(s));
            t_k = t_k.clamp(target.low_t_k, target.high_t_k);
        }
        (t_k, self.liquid_rho_mol_m3.at(self.distance(t_k)))
    }

    /// The saturated vapour at `t_k`, unless it is too dense.
    ///
    /// The curves give the derivatives along the line; B, taken from the pressure, gives the one by density, and both
    /// together those at constant pressure.
    fn thin_vapour(&self, t_k: f64) -> Option<Vapour> {
        if t_k > NEAR_CRITICAL * self.critical_t_k {
            return None;
        }
        let equation = &self.fluid.equation;
        let s = self.distance(t_k);
        let by_t = self.distance_by_t(s);
        let (p_pa, p_along) = self.pressure_pa.with_slope(t_k);
        let (rho, rho_by_s) = self.vapour_rho_mol_m3.with_slope(s);
        let (h_j_kg, h_by_s) = self.vapour_h_j_kg.with_slope(s);
        let rt = equation.gas_constant * t_k;
        let z = p_pa / (rho * rt);
        if z < THIN {
            return None;
        }
        let rho_along = rho_by_s * by_t;
        let p_by_rho = rt * (2.0 * z - 1.0);
        let p_by_t = p_along - p_by_rho * rho_along;
        let (volume, mass) = (1.0 / rho, 1.0 / equation.molar_mass);
        let gas = equation.gas_constant * mass;
        let h_by_rho = (p_by_rho - t_k * p_by_t * volume) * volume * mass;
        let cv = h_by_s * by_t - h_by_rho * rho_along - p_by_t * volume * mass;
        Some(Vapour {
            rho_mol_m3: rho,
            h_j_kg,
            s_j_kg_k: self.vapour_s_j_kg_k(t_k, s),
            cp_j_kg_k: cv + t_k * p_by_t * p_by_t * volume * volume / p_by_rho * mass,
            h_by_rho,
            s_by_rho: gas * volume - p_by_t * volume * volume * mass,
            gas,
        })
    }

    /// The molar density (mol/m3) of a gas by p = rho R T (1 + B rho), with the B of the vapour that is saturated at this
    /// temperature; that of an ideal gas where there is none.
    pub(super) fn thin_mol_m3(&self, t_k: f64, p_pa: f64) -> f64 {
        let ideal = p_pa / (self.fluid.equation.gas_constant * t_k);
        if t_k >= self.critical_t_k {
            return ideal;
        }
        let last = self.vapour_rho_mol_m3.at(self.distance(t_k));
        let saturated = self.pressure_pa.at(t_k) * ideal / p_pa;
        let b = (saturated / last - 1.0) / last;
        2.0 * ideal / (1.0 + sqrt(f64::max(1.0 + 4.0 * b * ideal, 0.0)))
    }

    /// ds/dT at s = sqrt(1 - T / T_c).
    pub(super) fn distance_by_t(&self, s: f64) -> f64 {
        -0.5 / (self.critical_t_k * s)
    }
}
