//! The expansion devices: a thermostatic valve, which controls the superheat, and an orifice tube, which controls nothing.

use super::smooth::{positive, ramp};
use crate::error::Error;
use crate::numerics::sqrt;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::working_fluid::equilibrium::{Critical, Saturation};
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// Discharge coefficient of a valve seat. Source: textbook value for a sharp-edged orifice.
pub(in crate::vehicle) const SEAT: f64 = 0.75;
/// The temperature at which superheat setting and stroke of a valve are stated, K.
const STATED_AT_K: f64 = 273.15;
/// Rounding of the corners of a valve's stroke, per the stroke.
const SOFTNESS: f64 = 0.06;

/// The refrigerant before an expansion device, and the pressure behind it.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Upstream<'a> {
    /// Equilibrium at the inlet pressure.
    pub saturation: &'a Saturation,
    /// Temperature at the inlet, K.
    pub t_k: f64,
    /// Density at the inlet (homogeneous where two-phase), kg/m3.
    pub rho_kg_m3: f64,
    /// Pressure behind the device, Pa.
    pub downstream_pa: f64,
}

/// The balance of a device at the flow of the circuit.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Metered {
    /// By how much (as a logarithm) it would pass more than the flow.
    pub residual: f64,
    /// How far it is open, 0 to 1.
    pub opening: f64,
}

/// What the bulb of a valve feels.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Bulb {
    /// Pressure at the evaporator outlet, Pa.
    pub p_pa: f64,
    /// Temperature at the evaporator outlet, K.
    pub t_k: f64,
}

/// A thermostatic expansion valve as installed.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Valve<'a> {
    /// The refrigerant for which its charge and spring were made.
    pub made_for: WorkingFluid<'a>,
    /// Flow area when fully open, m2.
    pub area_m2: f64,
    /// Superheat at which it begins to open, at 0 C, K.
    pub superheat_k: f64,
    /// Further superheat for full stroke, at 0 C, K.
    pub stroke_k: f64,
    /// Evaporator pressure above which the charge no longer opens it, Pa.
    pub limit_pa: f64,
    /// What it passes when closed, per its full flow.
    pub bleed: f64,
    /// Smallest opening (a valve stuck open), 0 to 1.
    pub least: f64,
    /// Largest opening (a valve stuck closed), 0 to 1.
    pub most: f64,
}

impl<'a> Valve<'a> {
    /// The valve of the hardware.
    pub(in crate::vehicle) fn of(made_for: WorkingFluid<'a>, hardware: &Hardware) -> Self {
        Self {
            made_for,
            area_m2: hardware.valve_area_m2,
            superheat_k: hardware.valve_superheat_k,
            stroke_k: hardware.valve_stroke_k,
            limit_pa: hardware.valve_limit_pa,
            bleed: hardware.valve_bleed,
            least: 0.0,
            most: 1.0,
        }
    }

    /// The opening, 0 to 1, for what the bulb feels.
    ///
    /// Bulb pressure opens, evaporator pressure and spring close: the spring represents the superheat setting at 0 C, so that
    /// superheat shrinks as the evaporator warms, and the setting is wrong for another refrigerant. Above the limit the bulb's
    /// charge has evaporated and its pressure hardly rises.
    pub(in crate::vehicle) fn opening(&self, bulb: &Bulb) -> Result<f64, Error> {
        let base_pa = self.made_for.dew_pa(STATED_AT_K)?;
        let spring_pa = self.made_for.dew_pa(STATED_AT_K + self.superheat_k)? - base_pa;
        let stroke_pa = self.made_for.dew_pa(STATED_AT_K + self.superheat_k + self.stroke_k)? - base_pa - spring_pa;
        let open_pa = self.made_for.dew_pa(bulb.t_k)?;
        let charge_pa = self.limit_pa + spring_pa + stroke_pa;
        let bulb_pa = open_pa - positive(open_pa - charge_pa, 0.05 * charge_pa);
        let stroke = ramp((bulb_pa - bulb.p_pa - spring_pa) / stroke_pa, SOFTNESS);
        Ok(self.least + (self.most - self.least) * stroke)
    }

    /// Flow at an opening, kg/s: `C A sqrt(2 rho (p1 - p2))` with the homogeneous density before the seat.
    pub(in crate::vehicle) fn flow_kg_s(&self, upstream: &Upstream<'_>, opening: f64) -> f64 {
        let drop_pa = upstream.saturation.p_pa - upstream.downstream_pa;
        let area_m2 = self.area_m2 * (self.bleed + (1.0 - self.bleed) * opening);
        SEAT * area_m2 * root(2.0 * upstream.rho_kg_m3, drop_pa)
    }
}

/// An orifice tube as installed.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Orifice {
    /// Bore, m; of a bundle, that of one tube as wide as all.
    pub diameter_m: f64,
    /// Length per bore, of each tube.
    pub slenderness: f64,
    /// Part of the flow area that is free, 0 to 1.
    pub free: f64,
}

/// Coefficients of the orifice correlation for R-134a, tubes of 9.5 to 25.4 mm length and 1.1 to 1.7 mm bore.
/// Source: Kim, O'Neal & Yuan 1994, ASHRAE Trans. 100(2), 582; read through a public simulation code.
const B1: f64 = 1.0156;
const B2: f64 = 10.0612;
const B3: f64 = -0.3296;
const B4: f64 = -0.1758;
const B5: f64 = 1.0831;
const B8: f64 = -0.1802;
const B9: f64 = -0.002_14;
const B10: f64 = 2.9596;
const B11: f64 = -0.0745;
const REFERENCE_BORE_M: f64 = 1.35e-3;

impl Orifice {
    /// The orifice tube of the hardware.
    pub(in crate::vehicle) fn of(hardware: &Hardware) -> Self {
        Self {
            diameter_m: hardware.orifice_diameter_m,
            slenderness: hardware.orifice_slenderness,
            free: 1.0,
        }
    }

    /// Flow, kg/s: `A sqrt(2 rho (p1 - pf))`, choked at a pressure `pf` that the correlation puts near the saturation
    /// pressure of the entering liquid; below that the flow does not depend on the pressure behind the tube.
    ///
    /// Written in reduced pressure and reduced subcooling, which is how it carries over to other refrigerants. Where bubbles
    /// enter, the homogeneous density replaces the two-phase correction.
    pub(in crate::vehicle) fn flow_kg_s(&self, fluid: &WorkingFluid, upstream: &Upstream<'_>) -> Result<f64, Error> {
        let Critical {
            t_k: critical_k,
            p_pa: critical_pa,
        } = fluid.critical();
        let p_pa = upstream.saturation.p_pa;
        let subcooling_k = positive(upstream.saturation.bubble_k - upstream.t_k, 0.02);
        let vapour_pa = fluid.bubble_pa(upstream.t_k)?.min(p_pa);
        let fall = (critical_pa - upstream.downstream_pa) / critical_pa;
        let choked_pa = vapour_pa
            * (B1
                + B2 * libm::pow(p_pa / critical_pa, B3)
                    * libm::pow(self.slenderness, B4)
                    * libm::pow(subcooling_k / critical_k, B5)
                + B8 * libm::exp(B9 * self.diameter_m / REFERENCE_BORE_M * libm::pow(self.slenderness, B10))
                + B11 * fall);
        // Whichever is higher chokes; rounded over a hundredth of the inlet pressure.
        let back_pa = upstream.downstream_pa + positive(choked_pa - upstream.downstream_pa, 0.01 * p_pa);
        let area_m2 = 0.25 * core::f64::consts::PI * self.diameter_m * self.diameter_m * self.free;
        Ok(area_m2 * root(2.0 * upstream.rho_kg_m3, p_pa - back_pa))
    }
}

/// `sqrt(factor * drop)`, going to nothing smoothly where the drop vanishes or reverses.
pub(in crate::vehicle) fn root(factor: f64, drop_pa: f64) -> f64 {
    sqrt(factor * positive(drop_pa, 500.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::{Refrigerant, VehicleClass};

    fn flow_kg_s(orifice: &Orifice, subcooling_k: f64, rho_share: f64, downstream_pa: f64) -> f64 {
        let fluid = WorkingFluid::of(Refrigerant::R134a).unwrap();
        let saturation = fluid.saturation(1.5e6).unwrap();
        let upstream = Upstream {
            saturation: &saturation,
            t_k: saturation.bubble_k - subcooling_k,
            rho_kg_m3: saturation.liquid_kg_m3 * rho_share,
            downstream_pa,
        };
        orifice.flow_kg_s(&fluid, &upstream).unwrap()
    }

    /// Tubes of 9.5 to 25.4 mm length and 1.1 to 1.7 mm bore.
    #[test]
    fn every_orifice_tube_is_as_slender_as_those_of_the_correlation() {
        for class in VehicleClass::ALL {
            let slenderness = Orifice::of(&Hardware::typical(class)).slenderness;
            assert!(
                (9.5 / 1.7..=25.4 / 1.1).contains(&slenderness),
                "{class:?} {slenderness}"
            );
        }
    }

    /// What short tubes do (Kim, O'Neal & Yuan 1994): the pressure behind a choked one hardly matters, subcooling adds flow,
    /// bubbles reduce it much, and it is proportional to the area.
    #[test]
    fn a_short_tube_chokes() {
        let car = Orifice::of(&Hardware::typical(VehicleClass::Car));
        let usual = flow_kg_s(&car, 8.0, 1.0, 3e5);
        assert!((flow_kg_s(&car, 8.0, 1.0, 4e5) / usual - 1.0).abs() < 0.01);
        assert!((flow_kg_s(&car, 8.0, 1.0, 2e5) / usual - 1.0).abs() < 0.01);
        assert!(flow_kg_s(&car, 14.0, 1.0, 3e5) > 1.1 * usual && flow_kg_s(&car, 2.0, 1.0, 3e5) < 0.9 * usual);
        assert!(flow_kg_s(&car, 0.0, 0.3, 3e5) < 0.6 * usual);
        let half = Orifice { free: 0.5, ..car };
        assert!((flow_kg_s(&half, 8.0, 1.0, 3e5) / usual - 0.5).abs() < 1e-12);
        // A valve seat of the same bore passes more: the textbook orifice does not choke on liquid.
        let valve = Valve {
            area_m2: 0.25 * core::f64::consts::PI * car.diameter_m * car.diameter_m,
            ..Valve::of(
                WorkingFluid::of(Refrigerant::R134a).unwrap(),
                &Hardware::typical(VehicleClass::Car),
            )
        };
        let fluid = WorkingFluid::of(Refrigerant::R134a).unwrap();
        let saturation = fluid.saturation(1.5e6).unwrap();
        let upstream = Upstream {
            saturation: &saturation,
            t_k: saturation.bubble_k - 8.0,
            rho_kg_m3: saturation.liquid_kg_m3,
            downstream_pa: 3e5,
        };
        assert!(valve.flow_kg_s(&upstream, 1.0) > usual);
    }
}
