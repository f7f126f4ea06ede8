//! The gas cooler of an R-744 system, in place of the condenser.
//!
//! It is marched in strips of face, each of which meets fresh air, with the temperature that the refrigerant has at its pressure and
//! enthalpy. The peak of its specific heat near the pseudo-critical temperature needs no treatment of its own, nor does
//! the plateau of condensation below the critical pressure.

use super::condenser::{Condensation, FaceAir, Film, Inflow};
use crate::error::Error;
use crate::vehicle::working_fluid::equilibrium::Saturation;
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// Strips of face. With twice as many the heat changes by less than half a per cent.
const STRIPS: usize = 12;
/// Slope of temperature over enthalpy with which the first strip looks for its second point: that of hot gas, K kg/J.
const GAS_SLOPE: f64 = 8e-4;
/// Where in a strip the second point of its straight line lies.
const ON: f64 = 2.0 / 3.0;
/// The heat that the refrigerant gives off in the gas cooler at the pressure of `saturation`, and its state at the outlet.
///
/// In each strip the temperature is taken as a straight line over enthalpy, through the states at its start and two thirds
/// on, along which the difference to the air fades exponentially. This is of third order where the temperature is smooth,
/// is continuous where a phase begins or ends, and never cools below the temperature of the air.
///
/// Errors: those of the properties of the fluid.
pub(in crate::vehicle) fn cool(
    fluid: &WorkingFluid,
    film: &Film,
    inflow: &Inflow,
    saturation: &Saturation,
    air: &FaceAir,
) -> Result<Condensation, Error> {
    let step = film.conductance_w_k() / (inflow.flow_kg_s * STRIPS as f64);
    let mut h = inflow.h_j_kg;
    let mut rho_kg_m3 = 0.0;
    let mut slope = GAS_SLOPE;
    for _ in 0..STRIPS {
        let here = fluid.at_enthalpy(saturation, h)?;
        let off_k = here.t_k - air.t_k;
        let on_j_kg = h - ON * step * off_k * faded(ON * step * slope);
        let on = fluid.at_enthalpy(saturation, on_j_kg)?;
        if libm::fabs(h - on_j_kg) > 1e-3 {
            slope = ((here.t_k - on.t_k) / (h - on_j_kg)).max(0.0);
        }
        h -= step * off_k * faded(step * slope);
        // Radau's points and weights.
        rho_kg_m3 += (0.25 * here.rho_kg_m3 + 0.75 * on.rho_kg_m3) / STRIPS as f64;
    }
    Ok(Condensation {
        h_j_kg: h,
        heat_w: inflow.flow_kg_s * (inflow.h_j_kg - h),
        rho_kg_m3,
    })
}

/// `(1 - exp(-x)) / x`: the mean of a driving difference that fades exponentially, per its value at the start.
fn faded(x: f64) -> f64 {
    if x < 1e-6 { 1.0 - 0.5 * x } else { -libm::expm1(-x) / x }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::{Compressor, Expansion, Refrigerant, VehicleClass};
    use crate::units::{Surroundings, celsius};
    use crate::vehicle::description::conditions::Conditions;
    use crate::vehicle::description::system::System;
    use crate::vehicle::description::vehicle::Vehicle;
    use crate::vehicle::operation::build::{Fluids, plant_of};

    fn cooled(flow_kg_s: f64, p_pa: f64) -> (f64, f64, f64) {
        let system = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
        let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
        let day = Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL);
        let fluids = Fluids::of(&car.system, &[]).unwrap();
        let plant = plant_of(&car, &day, &[], &fluids).unwrap();
        let saturation = plant.fluid.saturation(p_pa).unwrap();
        let warm = plant.fluid.saturation(5e6).unwrap();
        let hot = plant.fluid.at_entropy(&saturation, warm.vapour_j_kg_k + 120.0).unwrap();
        let inflow = Inflow {
            flow_kg_s,
            h_j_kg: hot.h_j_kg,
            gas_cp_j_kg_k: hot.cp_j_kg_k,
        };
        let face = plant.draught.at(p_pa);
        let film = Film::of(&plant.fluid, &plant.hardware, &inflow, &face, 1.0, 0.0);
        let out = cool(&plant.fluid, &film, &inflow, &saturation, &face).unwrap();
        let end = plant.fluid.at_enthalpy(&saturation, out.h_j_kg).unwrap();
        (end.t_k, out.h_j_kg, out.rho_kg_m3)
    }

    /// However little flows, it leaves as warm as the air and no colder: at pressures without liquid, below and above the
    /// critical one.
    #[test]
    fn a_small_flow_leaves_at_the_temperature_of_the_air() {
        for p_pa in [3e6, 6e6, 9e6, 12e6] {
            for flow_kg_s in [1e-5, 1e-4, 1e-3, 3e-3] {
                let (t_k, ..) = cooled(flow_kg_s, p_pa);
                assert!((t_k - 303.15).abs() < 0.05, "{t_k} K at {p_pa} Pa, {flow_kg_s} kg/s");
            }
        }
    }

    /// A thousandth more of pressure moves what leaves by little, also through the critical pressure: no step that would stop a
    /// search.
    #[test]
    fn nothing_jumps_at_the_critical_pressure() {
        for flow_kg_s in [0.01, 0.02, 0.04] {
            let at = |step: u32| cooled(flow_kg_s, 7.2e6 + 1e3 * f64::from(step));
            let (mut last, mut change) = (at(0), 0.0);
            for step in 1..=400 {
                let here = at(step);
                let moved = here.1 - last.1;
                if step > 1 {
                    assert!(
                        (moved - change).abs() < 40.0,
                        "{moved} J/kg after {change} at step {step}"
                    );
                }
                (last, change) = (here, moved);
            }
        }
    }
}
