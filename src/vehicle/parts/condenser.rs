//! The condenser by moving boundaries: vapour cools, condenses, and the liquid cools below saturation.
//!
//! The face is one row of tubes along which the refrigerant goes and across which the air goes, each strip of face
//! meeting fresh air. The effectiveness of a cross-flow with the refrigerant mixed and the air unmixed then holds
//! exactly, and each zone takes the share of face that its heat needs.
//!
//! Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th edition, table 11.3 (cross-flow, one fluid
//! mixed); moving boundaries as in Rossi 1995 (Purdue, ACMODEL) and Bell 2012 (ACHP documentation).

use super::void_fraction::mean_void;
use crate::error::Error;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::working_fluid::equilibrium::Saturation;
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// Mass flow of air per face area to which the air-side conductance refers, kg/(s m2).
const REFERENCE_AIR_KG_S_M2: f64 = 2.5 * 1.15;
/// Conductance of louvred fins grows with air flow to this power. Source: Chang & Wang 1997 (Int. J. Heat Mass
/// Transfer 40), j ~ Re^-0.49.
const AIR_EXPONENT: f64 = 0.51;
/// Conductance inside the tubes grows with refrigerant flow to this power. Source: Shah 1979; Dittus & Boelter 1930.
const REFRIGERANT_EXPONENT: f64 = 0.8;
/// Conductance of liquid inside the tubes per that of vapour at the same flow. Source: Incropera & DeWitt, table 8.1 (laminar, `Nu`
/// 2.98), over Dittus & Boelter 1930 at `Re` 18,000; a tenth more by engineering judgement (`tables/vehicle/README.md`).
const LIQUID_RATIO: f64 = 0.28;
/// Resistance that a share of non-condensable gas adds to condensation, per unit of its mole fraction and relative
/// to the clean condensing resistance. Judgement after the film theory of Colburn & Hougen 1934.
const GAS_FILM: f64 = 8.0;

/// The air before the condenser.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct FaceAir {
    /// Temperature of the surrounding air, K.
    pub t_k: f64,
    /// Flow through the whole face, kg/s.
    pub flow_kg_s: f64,
    /// Its specific heat, J/(kg K).
    pub cp_j_kg_k: f64,
    /// Part of the face that is open to it.
    pub open: f64,
    /// Part of the air that comes back from behind the condenser.
    pub returned: f64,
}

/// What leaves a part of the condenser.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Condensation {
    /// Enthalpy at the outlet, J/kg.
    pub h_j_kg: f64,
    /// Heat to the air, W.
    pub heat_w: f64,
    /// Mean density of the refrigerant inside, kg/m3.
    pub rho_kg_m3: f64,
}

/// The refrigerant that enters.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Inflow {
    /// Flow, kg/s.
    pub flow_kg_s: f64,
    /// Enthalpy, J/kg.
    pub h_j_kg: f64,
    /// Specific heat if superheated, J/(kg K).
    pub gas_cp_j_kg_k: f64,
}

/// Conductances of one part of the face.
pub(in crate::vehicle) struct Film {
    air: FaceAir,
    air_w_k: f64,
    condensing_w_k: f64,
    single_w_k: f64,
}

impl Film {
    /// The part `share` of the face at this flow, condensing vapour that holds the mole fraction `gas` of
    /// non-condensable gas.
    pub(in crate::vehicle) fn of(
        fluid: &WorkingFluid,
        hardware: &Hardware,
        inflow: &Inflow,
        air: &FaceAir,
        share: f64,
        gas: f64,
    ) -> Self {
        let face_m2 = hardware.condenser_face_m2 * air.open;
        let air_ratio = air.flow_kg_s / (face_m2 * REFERENCE_AIR_KG_S_M2);
        let flow_ratio = inflow.flow_kg_s / hardware.reference_flow_kg_s;
        let condensing_w_k = share
            * face_m2
            * hardware.condenser_refrigerant_w_m2_k
            * fluid.condensing_ratio()
            * libm::pow(flow_ratio, REFRIGERANT_EXPONENT);
        Self {
            air: FaceAir {
                flow_kg_s: air.flow_kg_s * share,
                ..*air
            },
            air_w_k: share * face_m2 * hardware.condenser_air_w_m2_k * libm::pow(air_ratio, AIR_EXPONENT),
            condensing_w_k: condensing_w_k / (1.0 + GAS_FILM * gas),
            single_w_k: condensing_w_k * hardware.condenser_gas_ratio,
        }
    }

    /// Heat per kelvin between condensing (or dense supercritical) refrigerant and the surrounding air.
    pub(in crate::vehicle) fn conductance_w_k(&self) -> f64 {
        self.strip_w_k(self.condensing_w_k)
    }

    /// Heat per kelvin between refrigerant and surrounding air when a conductance `inside_w_k` is in series.
    ///
    /// A share r of returned air warms the inlet of each strip; with the strip's own effectiveness e the effectiveness
    /// towards the surrounding air becomes `e (1 - r) / (1 - r (1 - e))`.
    fn strip_w_k(&self, inside_w_k: f64) -> f64 {
        let capacity = self.air.flow_kg_s * self.air.cp_j_kg_k;
        let overall = 1.0 / (1.0 / self.air_w_k + 1.0 / inside_w_k);
        let own = 1.0 - libm::exp(-overall / capacity);
        let returned = self.air.returned;
        capacity * own * (1.0 - returned) / (1.0 - returned * (1.0 - own))
    }
}

/// The refrigerant's way through the part `share` of the condenser's face, condensing at `saturation`.
///
/// `gas` is the mole fraction of non-condensable gas in the vapour.
///
/// Errors: those of the properties of the fluid.
pub(in crate::vehicle) fn condense(
    fluid: &WorkingFluid,
    hardware: &Hardware,
    inflow: &Inflow,
    saturation: &Saturation,
    air: &FaceAir,
    share: f64,
    gas: f64,
) -> Result<Condensation, Error> {
    let mut film = Film::of(fluid, hardware, inflow, air, share, gas);
    film.condensing_w_k /= 1.0 + saturation.glide_resistance(inflow.gas_cp_j_kg_k, hardware.condenser_gas_ratio);
    let single_w_k = film.strip_w_k(film.single_w_k);
    let liquid_w_k = film.strip_w_k(film.single_w_k * LIQUID_RATIO);
    let zones = Zones {
        inflow,
        saturation,
        air,
        single_w_k,
        liquid_w_k,
        condensing_w_k: film.conductance_w_k(),
    };
    zones.walk(fluid)
}

struct Zones<'a> {
    inflow: &'a Inflow,
    saturation: &'a Saturation,
    air: &'a FaceAir,
    single_w_k: f64,
    liquid_w_k: f64,
    condensing_w_k: f64,
}

impl Zones<'_> {
    fn walk(&self, fluid: &WorkingFluid) -> Result<Condensation, Error> {
        let sat = self.saturation;
        let inflow = self.inflow;
        let mut face = 1.0;
        let mut mass = 0.0;
        let mut h = inflow.h_j_kg;

        if h > sat.vapour_j_kg {
            let cp = inflow.gas_cp_j_kg_k;
            let hottest_k = sat.dew_k + (h - sat.vapour_j_kg) / cp;
            let per_face = self.single_w_k / (inflow.flow_kg_s * cp);
            let end_k = self.air.t_k + (hottest_k - self.air.t_k) * libm::exp(-per_face);
            let gas_kg_m3 = |end_k: f64| sat.vapour_kg_m3 * 2.0 * sat.dew_k / (hottest_k + end_k);
            if end_k >= sat.dew_k {
                let h_out = sat.vapour_j_kg + cp * (end_k - sat.dew_k);
                return Ok(self.done(h_out, gas_kg_m3(end_k)));
            }
            let part = libm::log((hottest_k - self.air.t_k) / (sat.dew_k - self.air.t_k)) / per_face;
            mass += part * gas_kg_m3(sat.dew_k);
            face -= part;
            h = sat.vapour_j_kg;
        }

        if sat.has_glide() {
            if h > sat.liquid_j_kg {
                let (h_out, rest) = self.glide(h, face, &mut mass);
                let Some(rest) = rest else {
                    return Ok(self.done(h_out, mass));
                };
                (h, face) = (h_out, rest);
            }
            return self.subcool(fluid, h, face, mass);
        }
        let latent = sat.vapour_j_kg - sat.liquid_j_kg;
        let mean_k = 0.5 * (sat.dew_k + sat.bubble_k);
        let drive_w = self.condensing_w_k * (mean_k - self.air.t_k);
        if h > sat.liquid_j_kg {
            let x_in = (h - sat.liquid_j_kg) / latent;
            let need = inflow.flow_kg_s * (h - sat.liquid_j_kg);
            // With the air as warm as the refrigerant nothing condenses.
            if drive_w * face <= need {
                let h_out = h - drive_w * face / inflow.flow_kg_s;
                let x_out = (h_out - sat.liquid_j_kg) / latent;
                mass += face * sat.mean_kg_m3(mean_void(sat, x_out.clamp(0.0, 1.0), x_in.min(1.0)));
                return Ok(self.done(h_out, mass));
            }
            let condensing = need / drive_w;
            mass += condensing * sat.mean_kg_m3(mean_void(sat, 0.0, x_in));
            face -= condensing;
            h = sat.liquid_j_kg;
        }

        self.subcool(fluid, h, face, mass)
    }

    /// Condensation from the enthalpy `h` over the part `face` while the temperature falls from dew to bubble: as a stream
    /// of the specific heat `latent / glide`. Gives the enthalpy at its end and the part of the face that is left, `None` where the face ends first.
    fn glide(&self, h: f64, face: f64, mass: &mut f64) -> (f64, Option<f64>) {
        let (sat, inflow, air_k) = (self.saturation, self.inflow, self.air.t_k);
        let latent = sat.latent_j_kg();
        let glide_k = sat.dew_k - sat.bubble_k;
        let cp = latent / glide_k;
        let x_in = (h - sat.liquid_j_kg) / latent;
        // Above bubble, a form in which the rounding of a small glide cancels.
        let above_k = x_in * glide_k;
        let per_face = self.condensing_w_k / (inflow.flow_kg_s * cp);
        let h_out = h + cp * (sat.bubble_k - air_k + above_k) * libm::expm1(-face * per_face);
        // With the air at bubble temperature or warmer all of the face condenses, whatever rounding gives.
        if h_out >= sat.liquid_j_kg || sat.bubble_k <= air_k {
            let x_out = (h_out - sat.liquid_j_kg) / latent;
            let (x_out, x_in) = (x_out.clamp(0.0, 1.0), x_in.min(1.0));
            *mass += face * sat.mean_kg_m3(mean_void(sat, x_out.min(x_in), x_in.max(x_out)));
            return (h_out, None);
        }
        let part = libm::log1p(above_k / (sat.bubble_k - air_k)) / per_face;
        *mass += part * sat.mean_kg_m3(mean_void(sat, 0.0, x_in.min(1.0)));
        (sat.liquid_j_kg, Some(face - part))
    }

    /// The liquid from the enthalpy `h` on, over the part `face`.
    fn subcool(&self, fluid: &WorkingFluid, h: f64, face: f64, mut mass: f64) -> Result<Condensation, Error> {
        let (sat, inflow) = (self.saturation, self.inflow);
        let liquid_cp = fluid.liquid_cp_j_kg_k(sat)?;
        let start_k = sat.bubble_k - (sat.liquid_j_kg - h) / liquid_cp;
        let per_face = self.liquid_w_k / (inflow.flow_kg_s * liquid_cp);
        let end_k = self.air.t_k + (start_k - self.air.t_k) * libm::exp(-face * per_face);
        let (h_out, rho_out) = fluid.subcooled(sat, end_k)?;
        mass += face * 0.5 * (sat.liquid_kg_m3 + rho_out);
        Ok(self.done(h_out, mass))
    }

    fn done(&self, h_j_kg: f64, rho_kg_m3: f64) -> Condensation {
        let heat_w = self.inflow.flow_kg_s * (self.inflow.h_j_kg - h_j_kg);
        Condensation {
            h_j_kg,
            heat_w,
            rho_kg_m3,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::{Refrigerant, VehicleClass};

    /// Incropera & DeWitt, table 11.3, equation 11.34: cross-flow, the stream of least capacity mixed.
    #[test]
    fn vapour_cools_as_the_effectiveness_of_cross_flow_says() {
        let fluid = WorkingFluid::of(Refrigerant::R134a).unwrap();
        let hardware = Hardware::typical(VehicleClass::Car);
        let sat = fluid.saturation(8e5).unwrap();
        let inflow = Inflow {
            flow_kg_s: 0.02,
            h_j_kg: sat.vapour_j_kg + 60e3,
            gas_cp_j_kg_k: 1_000.0,
        };
        // Air so warm that nothing condenses.
        let air = FaceAir {
            t_k: sat.dew_k + 5.0,
            flow_kg_s: 0.5,
            cp_j_kg_k: 1_006.0,
            returned: 0.0,
            open: 1.0,
        };
        let out = condense(&fluid, &hardware, &inflow, &sat, &air, 1.0, 0.0).unwrap();

        let inside = hardware.condenser_face_m2
            * hardware.condenser_refrigerant_w_m2_k
            * hardware.condenser_gas_ratio
            * libm::pow(0.02 / hardware.reference_flow_kg_s, 0.8);
        let air_ratio = 0.5 / (hardware.condenser_face_m2 * REFERENCE_AIR_KG_S_M2);
        let outside = hardware.condenser_face_m2 * hardware.condenser_air_w_m2_k * libm::pow(air_ratio, 0.51);
        let overall = 1.0 / (1.0 / inside + 1.0 / outside);
        let (least, most) = (0.02 * 1_000.0, 0.5 * 1_006.0);
        let (units, ratio): (f64, f64) = (overall / least, least / most);
        let effectiveness = 1.0 - libm::exp(-(1.0 / ratio) * (1.0 - libm::exp(-ratio * units)));
        let most_heat_w = least * (sat.dew_k + 60.0 - air.t_k);
        assert!((out.heat_w / (effectiveness * most_heat_w) - 1.0).abs() < 1e-12);
    }

    /// Air that returns: the inlet of each strip lies above the outside by r / (1 - r) of the rise across it.
    #[test]
    fn returned_air_is_a_fixed_point() {
        let air = FaceAir {
            t_k: 300.0,
            flow_kg_s: 0.4,
            cp_j_kg_k: 1_006.0,
            returned: 0.25,
            open: 1.0,
        };
        let film = Film {
            air,
            air_w_k: 900.0,
            condensing_w_k: 4_000.0,
            single_w_k: 900.0,
        };
        let heat_w = film.strip_w_k(4_000.0) * 20.0;
        let capacity = 0.4 * 1_006.0;
        let own = 1.0 - libm::exp(-1.0 / (1.0 / 900.0 + 1.0 / 4_000.0) / capacity);
        let inlet_rise_k = 0.25 / 0.75 * heat_w / capacity;
        assert!((heat_w - capacity * own * (20.0 - inlet_rise_k)).abs() < 1e-9 * heat_w);
    }

    #[test]
    fn more_flow_leaves_less_subcooled() {
        let fluid = WorkingFluid::of(Refrigerant::R134a).unwrap();
        let hardware = Hardware::typical(VehicleClass::Car);
        let sat = fluid.saturation(15e5).unwrap();
        let air = FaceAir {
            t_k: 303.15,
            flow_kg_s: 0.55,
            cp_j_kg_k: 1_006.0,
            returned: 0.1,
            open: 1.0,
        };
        let mut last = 0.0;
        for step in 1..40 {
            let flow_kg_s = 0.004 * f64::from(step);
            let inflow = Inflow {
                flow_kg_s,
                h_j_kg: sat.vapour_j_kg + 30e3,
                gas_cp_j_kg_k: 1_100.0,
            };
            let out = condense(&fluid, &hardware, &inflow, &sat, &air, 1.0, 0.0).unwrap();
            assert!(out.h_j_kg > last && out.rho_kg_m3 > sat.vapour_kg_m3 * 0.8);
            last = out.h_j_kg;
        }
    }
}
