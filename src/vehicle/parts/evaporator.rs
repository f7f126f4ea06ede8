//! The evaporator as a wet coil, and a coolant chiller as a dry one.
//!
//! As in the condenser the refrigerant passes a row of strips, each of which meets fresh air: some of the face boils
//! refrigerant, the rest superheats vapour. Where the surface lies below the dew point of the air, heat and water move
//! together and the enthalpy of the air is what drives them; each part is taken dry or wet, whichever moves more heat.
//!
//! Source: Threlkeld, Thermal Environmental Engineering, 2nd edition, chapter 12; Braun, Klein & Mitchell 1989, ASHRAE
//! Trans. 95(2), 164 (effectiveness of wet coils; dry or wet, whichever is more).

use super::void_fraction::mean_void;
use crate::air::{MoistAir, enthalpy_j_kg};
use crate::error::Error;
use crate::numerics::sqrt;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::working_fluid::equilibrium::Saturation;
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// Conductance of louvred fins grows with air flow to this power. Source: Chang & Wang 1997, j ~ Re^-0.49.
const AIR_EXPONENT: f64 = 0.51;
/// Boiling conductance grows with refrigerant flow to this power. Source: between nucleate (0) and convective (0.8)
/// boiling of Shah 1982; judgement.
const BOILING_EXPONENT: f64 = 0.6;
/// Heat in excess of that of a dry coil, relative, from which on a coil is wet all over. Judgement.
const PARTLY_WET: f64 = 0.3;
/// Substitutions for the mean temperature along a glide, each of which reduces the error to about an eighth.
const MEANS: usize = 3;
/// Water that meets a surface below this freezes to it, K.
const FREEZING_K: f64 = 273.15;

/// What the coil cools: air with its water, or a liquid coolant.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Stream {
    /// Temperature at the inlet, K.
    pub t_k: f64,
    /// Humidity ratio at the inlet; zero for a coolant.
    pub humidity: f64,
    /// Flow of dry air, or of coolant, kg/s.
    pub flow_kg_s: f64,
    /// Flow over that at which the air-side conductance is stated.
    pub flow_ratio: f64,
    /// Specific heat per kilogram of dry air, or of coolant, J/(kg K).
    pub cp_j_kg_k: f64,
    /// Whether water can condense from it.
    pub humid: bool,
    /// Pressure of the air, Pa.
    pub p_pa: f64,
}

/// The refrigerant that enters.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Feed {
    /// Flow, kg/s.
    pub flow_kg_s: f64,
    /// Enthalpy, J/kg.
    pub h_j_kg: f64,
}

/// What leaves the evaporator.
#[derive(Clone, Copy, Debug, Default)]
pub(in crate::vehicle) struct Evaporation {
    /// Enthalpy of the refrigerant at the outlet, J/kg.
    pub h_j_kg: f64,
    /// Heat from the stream, W.
    pub heat_w: f64,
    /// Part of it that condensed water, W.
    pub latent_w: f64,
    /// Temperature of the mixed stream at the outlet, K.
    pub stream_k: f64,
    /// Humidity ratio there.
    pub humidity: f64,
    /// Share of the face that boils.
    pub boiling: f64,
    /// Mean density of the refrigerant inside, kg/m3.
    pub rho_kg_m3: f64,
    /// Temperature of the fins where the refrigerant boils, K.
    pub fin_k: f64,
}

/// One part of the face at one refrigerant temperature, per unit of the whole face.
struct Patch {
    heat_w: f64,
    out_k: f64,
    out_humidity: f64,
    fin_k: f64,
}

/// The coil of one evaporator.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Coil {
    /// Air-side conductance at a flow ratio of one, W/K.
    pub air_w_k: f64,
    /// Boiling conductance at the reference flow, W/K.
    pub boiling_w_k: f64,
    /// Conductance of superheated vapour per that of boiling refrigerant.
    pub gas_ratio: f64,
    /// Reference flow of refrigerant, kg/s.
    pub reference_flow_kg_s: f64,
}

impl Coil {
    /// The evaporator of the hardware.
    pub(in crate::vehicle) fn of(hardware: &Hardware) -> Self {
        Self {
            air_w_k: hardware.evaporator_air_w_k,
            boiling_w_k: hardware.evaporator_refrigerant_w_k,
            gas_ratio: hardware.evaporator_gas_ratio,
            reference_flow_kg_s: hardware.reference_flow_kg_s,
        }
    }

    /// The refrigerant `feed` boiling at `saturation` against `stream`; `gas_cp_j_kg_k` is the vapour's specific heat.
    ///
    /// Errors: those of moist air.
    pub(in crate::vehicle) fn evaporate(
        &self,
        fluid: &WorkingFluid,
        feed: &Feed,
        saturation: &Saturation,
        gas_cp_j_kg_k: f64,
        stream: &Stream,
    ) -> Result<Evaporation, Error> {
        let sat = saturation;
        let air_w_k = self.air_w_k * libm::pow(stream.flow_ratio, AIR_EXPONENT);
        let flow_ratio = feed.flow_kg_s / self.reference_flow_kg_s;
        let boiling_w_k = self.boiling_w_k * fluid.boiling_ratio() * libm::pow(flow_ratio, BOILING_EXPONENT)
            / (1.0 + sat.glide_resistance(gas_cp_j_kg_k, self.gas_ratio));
        let latent = sat.vapour_j_kg - sat.liquid_j_kg;
        let x_in = (feed.h_j_kg - sat.liquid_j_kg) / latent;
        let boil_k = sat.dew_k + (sat.bubble_k - sat.dew_k) * 0.5 * (1.0 - x_in).clamp(0.0, 1.0);
        let mut wet = stream.patch(boil_k, air_w_k, boiling_w_k)?;
        let need_w = feed.flow_kg_s * (sat.vapour_j_kg - feed.h_j_kg);

        if x_in < 1.0 && wet.heat_w <= need_w {
            // Refrigerant that leaves below dew has not reached the end of the glide: its mean temperature by substitution.
            for _ in 0..if sat.dew_k == sat.bubble_k { 0 } else { MEANS } {
                let h_j_kg = feed.h_j_kg + wet.heat_w / feed.flow_kg_s;
                let mean_k = 0.5 * (sat.boiling_k(feed.h_j_kg) + sat.boiling_k(h_j_kg));
                wet = stream.patch(mean_k, air_w_k, boiling_w_k)?;
            }
            let h_j_kg = feed.h_j_kg + wet.heat_w / feed.flow_kg_s;
            let x_out = ((h_j_kg - sat.liquid_j_kg) / latent).clamp(0.0, 1.0);
            let low = x_in.clamp(0.0, 1.0).min(x_out);
            let rho_kg_m3 = sat.mean_kg_m3(mean_void(sat, low, x_out.max(low)));
            return Ok(stream.leaving(
                h_j_kg,
                wet.heat_w,
                wet.out_k,
                wet.out_humidity,
                1.0,
                rho_kg_m3,
                wet.fin_k,
            ));
        }
        let boiling = if x_in < 1.0 { need_w / wet.heat_w } else { 0.0 };
        let rest = 1.0 - boiling;
        let h_start = if x_in < 1.0 { sat.vapour_j_kg } else { feed.h_j_kg };
        let start_k = sat.dew_k + (h_start - sat.vapour_j_kg) / gas_cp_j_kg_k;
        // Dry in the superheating part: its tubes soon come near the temperature of the air.
        let capacity = stream.flow_kg_s * stream.cp_j_kg_k;
        let overall = 1.0 / (1.0 / air_w_k + 1.0 / (boiling_w_k * self.gas_ratio));
        let strip_w_k = capacity * (1.0 - libm::exp(-overall / capacity));
        let gas_w_k = feed.flow_kg_s * gas_cp_j_kg_k;
        let end_k = stream.t_k + (start_k - stream.t_k) * libm::exp(-rest * strip_w_k / gas_w_k);
        let dry_w = gas_w_k * (end_k - start_k);
        let h_j_kg = h_start + gas_cp_j_kg_k * (end_k - start_k);
        let heat_w = boiling * wet.heat_w + dry_w;
        let out_k = boiling * wet.out_k + rest * stream.t_k - dry_w / capacity;
        let out_humidity = boiling * wet.out_humidity + rest * stream.humidity;
        let vapour = sat.vapour_kg_m3 * 2.0 * sat.dew_k / (start_k + end_k);
        let boiled = if boiling > 0.0 {
            sat.mean_kg_m3(mean_void(sat, x_in.clamp(0.0, 1.0), 1.0))
        } else {
            0.0
        };
        let rho_kg_m3 = boiling * boiled + rest * vapour;
        Ok(stream.leaving(h_j_kg, heat_w, out_k, out_humidity, boiling, rho_kg_m3, wet.fin_k))
    }
}

impl Stream {
    /// The whole face against refrigerant at one temperature.
    fn patch(&self, boil_k: f64, air_w_k: f64, inside_w_k: f64) -> Result<Patch, Error> {
        let capacity = self.flow_kg_s * self.cp_j_kg_k;
        let overall = 1.0 / (1.0 / air_w_k + 1.0 / inside_w_k);
        let dry_w = capacity * (1.0 - libm::exp(-overall / capacity)) * (self.t_k - boil_k);
        let dry_fin_k = boil_k + (self.t_k - boil_k) * overall / inside_w_k;
        let dry = Patch {
            heat_w: dry_w,
            out_k: self.t_k - dry_w / capacity,
            out_humidity: self.humidity,
            fin_k: dry_fin_k,
        };
        if !self.humid || self.t_k <= boil_k {
            return Ok(dry);
        }
        let h_in = enthalpy_j_kg(self.t_k, self.humidity);
        let saturated = |t_k: f64| MoistAir::saturated(t_k, self.p_pa).map(MoistAir::enthalpy_j_kg);
        let h_boil = saturated(boil_k)?;
        if h_boil >= h_in {
            return Ok(dry);
        }
        // The slope of the saturated air's enthalpy between refrigerant and surface, by one correction of the surface.
        let air_units = air_w_k / capacity;
        let reach = 1.0 - libm::exp(-air_units);
        let mut fin_k = dry_fin_k.min(self.t_k);
        let mut heat_w = 0.0;
        for _ in 0..3 {
            let h_surface = saturated(fin_k.max(boil_k + 1e-3))?;
            let slope = (h_surface - h_boil) / (fin_k.max(boil_k + 1e-3) - boil_k);
            let resistance = self.cp_j_kg_k / air_w_k + slope / inside_w_k;
            heat_w = self.flow_kg_s * (1.0 - libm::exp(-1.0 / (self.flow_kg_s * resistance))) * (h_in - h_boil);
            let h_fin = h_in - heat_w / (self.flow_kg_s * reach);
            fin_k = boil_k + (h_fin - h_boil) / slope;
        }
        if heat_w <= dry_w {
            return Ok(dry);
        }
        // A coil just wet is wet in part only: the outlet goes over from the dry to the wet state as the wet coil moves
        // up to a third more heat.
        let wetness = ((heat_w / dry_w - 1.0) / PARTLY_WET).min(1.0);
        let fin_k = dry.fin_k + wetness * (fin_k - dry.fin_k);
        let wet_k = fin_k + (self.t_k - fin_k) * (1.0 - reach);
        let out_k = dry.out_k + wetness * (wet_k - dry.out_k);
        let h_out = h_in - heat_w / self.flow_kg_s;
        // Enthalpy is a straight line over the humidity ratio.
        let dry_air = enthalpy_j_kg(out_k, 0.0);
        let out_humidity = ((h_out - dry_air) / (enthalpy_j_kg(out_k, 1.0) - dry_air)).clamp(0.0, self.humidity);
        Ok(Patch {
            heat_w,
            out_k,
            out_humidity,
            fin_k,
        })
    }

    #[allow(clippy::too_many_arguments)]
    fn leaving(
        &self,
        h_j_kg: f64,
        heat_w: f64,
        out_k: f64,
        out_humidity: f64,
        boiling: f64,
        rho_kg_m3: f64,
        fin_k: f64,
    ) -> Evaporation {
        let sensible = self.flow_kg_s * self.cp_j_kg_k * (self.t_k - out_k);
        Evaporation {
            h_j_kg,
            heat_w,
            latent_w: (heat_w - sensible).max(0.0),
            stream_k: out_k,
            humidity: out_humidity,
            boiling,
            rho_kg_m3,
            fin_k,
        }
    }
}

/// Part of the difference between dry fins and boiling ones that a thermostat feels where nothing boils. Judgement: its
/// probe sits where a sound evaporator is coldest, and that place dries last.
const DRY_PROBE: f64 = 0.6;

impl Evaporation {
    /// Temperature that a thermostat between the fins feels in air that enters at `intake_k`, K: that of the boiling part,
    /// and of dry fins the more the less of the face boils.
    pub(in crate::vehicle) fn felt_k(&self, intake_k: f64) -> f64 {
        let dry = (1.0 - self.boiling).max(0.0);
        self.fin_k + DRY_PROBE * dry * sqrt(dry) * (intake_k - self.fin_k)
    }

    /// Whether water on the fins freezes.
    pub(in crate::vehicle) fn freezes(&self) -> bool {
        self.fin_k < FREEZING_K && self.latent_w > 0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::Refrigerant;

    fn air(t_k: f64, humidity: f64, flow_kg_s: f64) -> Stream {
        Stream {
            t_k,
            humidity,
            flow_kg_s,
            flow_ratio: 1.0,
            cp_j_kg_k: 1_020.0,
            humid: true,
            p_pa: 101_325.0,
        }
    }

    /// Cengel & Boles, example 14-6: 10 m3/min of air at 30 C and 80 % leave saturated at 14 C; 511 kJ/min are removed
    /// and 0.131 kg/min of water at 14 C drains. A coil without resistance, boiling at 14 C, does just that.
    #[test]
    fn a_perfect_coil_saturates_the_air_at_its_own_temperature() {
        let inlet = MoistAir::from_relative_humidity(303.15, 101_325.0, 0.8).unwrap();
        let flow_kg_s = 10.0 / 60.0 / inlet.volume_m3_kg();
        let stream = air(303.15, inlet.humidity_ratio(), flow_kg_s);
        let patch = stream.patch(287.15, 1e6, 1e7).unwrap();
        let water_kg_min = flow_kg_s * (stream.humidity - patch.out_humidity) * 60.0;
        let removed_kj_min = patch.heat_w * 60.0 / 1e3 - water_kg_min * 58.8;
        assert!((patch.out_k - 287.15).abs() < 0.05);
        assert!((water_kg_min - 0.131).abs() < 0.003, "{water_kg_min}");
        assert!((removed_kj_min - 511.0).abs() < 8.0, "{removed_kj_min}");
    }

    /// A coil cut into many strips along the air, each with its own balance of heat and water at the surface, is what the
    /// closed form approximates.
    #[test]
    fn the_closed_form_is_near_a_march_through_the_coil() {
        let inlet = MoistAir::from_relative_humidity(303.15, 101_325.0, 0.6).unwrap();
        let (boil_k, air_w_k, inside_w_k, flow) = (275.15, 330.0, 1_000.0, 0.13);
        let stream = air(303.15, inlet.humidity_ratio(), flow);
        let patch = stream.patch(boil_k, air_w_k, inside_w_k).unwrap();
        let n = 2_000;
        let saturated = |t_k: f64| MoistAir::saturated(t_k, 101_325.0).unwrap();
        let (mut t_k, mut w) = (303.15, inlet.humidity_ratio());
        let mut total_w = 0.0;
        for _ in 0..n {
            // Surface temperature: what comes from the air (Lewis number one) goes into the refrigerant.
            let (mut low, mut high) = (boil_k, t_k);
            for _ in 0..50 {
                let fin = 0.5 * (low + high);
                let excess = (w - saturated(fin).humidity_ratio()).max(0.0);
                let from_air = air_w_k * ((t_k - fin) + 2.5e6 * excess / 1_020.0);
                if from_air > inside_w_k * (fin - boil_k) {
                    low = fin;
                } else {
                    high = fin;
                }
            }
            let fin = 0.5 * (low + high);
            let excess = (w - saturated(fin).humidity_ratio()).max(0.0);
            let part = air_w_k / n as f64 / (flow * 1_020.0);
            total_w += inside_w_k / n as f64 * (fin - boil_k);
            t_k -= part * (t_k - fin);
            w -= part * excess;
        }
        assert!(
            (patch.heat_w / total_w - 1.0).abs() < 0.03,
            "{} {total_w}",
            patch.heat_w
        );
        assert!((patch.out_k - t_k).abs() < 1.0, "{} {t_k}", patch.out_k);
    }

    #[test]
    fn energy_and_water_close_in_every_regime() {
        let fluid = WorkingFluid::of(Refrigerant::R134a).unwrap();
        let coil = Coil {
            air_w_k: 330.0,
            boiling_w_k: 1_000.0,
            gas_ratio: 0.15,
            reference_flow_kg_s: 0.04,
        };
        let sat = fluid.saturation(3e5).unwrap();
        for flow_kg_s in [0.002, 0.01, 0.03, 0.06] {
            for humidity in [0.0, 0.004, 0.015] {
                let stream = air(303.15, humidity, 0.13);
                let feed = Feed {
                    flow_kg_s,
                    h_j_kg: sat.liquid_j_kg + 0.3 * sat.latent_j_kg(),
                };
                let out = coil.evaporate(&fluid, &feed, &sat, 900.0, &stream).unwrap();
                let taken = flow_kg_s * (out.h_j_kg - feed.h_j_kg);
                assert!((taken - out.heat_w).abs() < 1e-9 * out.heat_w);
                assert!(out.humidity <= humidity && out.stream_k > sat.dew_k && out.stream_k < 303.15);
            }
        }
    }
}
