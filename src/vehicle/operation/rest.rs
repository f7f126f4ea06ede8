//! A system at rest: both sides equal, everything at the temperature of the air.

use super::simulation::{Simulation, StatePoint, StatePoints, VisibleSigns};
use crate::error::Error;
use crate::numerics::GAS_J_MOL_K;
use crate::units::{
    AbsolutePressure, Frequency, Mass, MassFlow, Power, SpecificEnergy, SpecificEntropy, kelvins, kelvins_difference,
};
use crate::vehicle::circuit::plant::{Closure, Plant, Warmth};
use crate::vehicle::description::vehicle::Vehicle;
use crate::vehicle::working_fluid::equilibrium::{Saturation, State};
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

const MOST_STEPS: usize = 100;
/// Density that represents an empty circuit, kg/m3.
const NO_CHARGE_KG_M3: f64 = 0.05;

/// The readings of a system whose compressor is not driven: saturation at the temperature of the air while any liquid is left,
/// the pressure of the vapour that fills it otherwise, and the partial pressure of gas on top.
///
/// Errors: those of the properties; `NoConvergence` where no pressure holds the charge.
pub(in crate::vehicle) fn at_rest(plant: &Plant, vehicle: &Vehicle) -> Result<Simulation, Error> {
    let fluid = &plant.fluid;
    let h = &vehicle.hardware;
    let t_k = plant.cabin.outside_k;
    let volume_m3 = h.condenser_volume_m3
        + h.discharge_volume_m3
        + h.liquid_volume_m3
        + h.suction_volume_m3
        + if plant.receiver {
            h.receiver_volume_m3
        } else {
            h.accumulator_volume_m3
        }
        + plant.front.volume_m3
        + plant.rear.map_or(0.0, |rear| rear.volume_m3);
    let charge_kg = match plant.closure {
        Closure::Charge(charge_kg) => charge_kg,
        Closure::Fill(_) => vehicle.charge.kg(),
    };
    let rho = (charge_kg / volume_m3).max(NO_CHARGE_KG_M3);
    let full = fluid.saturation(fluid.dew_pa(t_k)?)?;
    let (p_pa, state) = if t_k >= fluid.critical().t_k {
        fluid.filling(t_k, rho)?
    } else if rho > full.vapour_kg_m3 {
        let full = boiling(fluid, full, t_k, rho)?;
        let quality = (1.0 / rho - 1.0 / full.liquid_kg_m3) / (1.0 / full.vapour_kg_m3 - 1.0 / full.liquid_kg_m3);
        (full.p_pa, fluid.at_coordinate(&full, quality.clamp(0.0, 1.0) - 1.0)?)
    } else {
        thin(plant, &full, t_k, rho)?
    };
    let gas_pa =
        plant.gas_mol * GAS_J_MOL_K * t_k / (volume_m3 * (1.0 - charge_kg / volume_m3 / full.liquid_kg_m3).max(0.1));
    // A leaking circuit does not fall below the pressure of the surrounding air.
    let shown_pa = if plant.leaked {
        (p_pa + gas_pa).max(plant.air_pa)
    } else {
        p_pa + gas_pa
    };
    let point = StatePoint {
        pressure: AbsolutePressure::from_pa(p_pa),
        temperature: kelvins(t_k),
        enthalpy: SpecificEnergy::from_j_kg(state.h_j_kg),
        entropy: SpecificEntropy::from_j_kg_k(state.s_j_kg_k),
        quality: state.quality,
    };
    let vent_k = plant.cabin.vent_k(t_k);
    let capacity_w_k = match plant.front.warmth {
        Warmth::Air { flow_kg_s, .. } => flow_kg_s * plant.air_cp_j_kg_k,
        Warmth::Coolant {
            flow_kg_s, cp_j_kg_k, ..
        } => flow_kg_s * cp_j_kg_k,
    };
    Ok(Simulation {
        low_side: AbsolutePressure::from_pa(shown_pa),
        high_side: AbsolutePressure::from_pa(shown_pa),
        vent: kelvins(vent_k),
        cabin: kelvins(plant.cabin.air_k(vent_k, capacity_w_k)),
        suction_line: kelvins(t_k),
        discharge_line: kelvins(t_k),
        liquid_line: kelvins(t_k),
        condenser_outlet: kelvins(t_k),
        clutch_cycles: Frequency::from_hz(0.0),
        swing: None,
        looks: VisibleSigns {
            clutch_engaged: false,
            bubbles: state.quality >= 1.0,
            evaporator_frosts: false,
            suction_frosts: false,
            liquid_frosts: false,
        },
        states: StatePoints {
            suction: point,
            discharge: point,
            condenser_outlet: point,
            liquid: point,
            evaporator_inlet: point,
            evaporator_outlet: point,
        },
        capacity: Power::from_w(0.0),
        rejected: Power::from_w(0.0),
        power: Power::from_w(0.0),
        cop: 0.0,
        flow: MassFlow::from_kg_s(0.0),
        superheat: kelvins_difference(t_k - fluid.dew_k(p_pa.min(fluid.highest_pa()))?),
        subcooling: kelvins_difference(fluid.bubble_k(shown_pa.min(fluid.highest_pa()))? - t_k),
        evaporator_air: kelvins(t_k),
        demand: 0.0,
        volumetric_efficiency: 0.0,
        isentropic_efficiency: 0.0,
        fill: 0.0,
        opening: 0.0,
        charge: Mass::from_kg(charge_kg),
        residual: 0.0,
        rounds: 0,
    })
}

/// The equilibrium at which liquid and vapour of the temperature `t_k` have the density `rho` together; `dew` where there
/// is no glide. By bisection between dew and bubble pressure: more of it is liquid at a higher pressure.
fn boiling(fluid: &WorkingFluid<'_>, dew: Saturation, t_k: f64, rho: f64) -> Result<Saturation, Error> {
    if !dew.has_glide() {
        return Ok(dew);
    }
    let (mut low, mut high) = (dew.p_pa, fluid.bubble_pa(t_k)?);
    let mut middle = dew;
    while high - low > 1e-10 * high {
        middle = fluid.saturation(0.5 * (low + high))?;
        let vapour = ((t_k - middle.bubble_k) / (middle.dew_k - middle.bubble_k)).clamp(0.0, 1.0);
        let h_j_kg = middle.liquid_j_kg + vapour * middle.latent_j_kg();
        if middle.mixture_kg_m3(h_j_kg) > rho {
            high = middle.p_pa;
        } else {
            low = middle.p_pa;
        }
    }
    Ok(middle)
}

/// Vapour alone at the temperature `t_k`: the pressure at which its density is `rho`, by bisection of the logarithm.
fn thin(plant: &Plant, full: &Saturation, t_k: f64, rho: f64) -> Result<(f64, State), Error> {
    let fluid = &plant.fluid;
    let (mut low, mut high) = (libm::log(fluid.lowest_pa()), libm::log(full.p_pa));
    for _ in 0..MOST_STEPS {
        let middle = 0.5 * (low + high);
        let saturation = fluid.saturation(libm::exp(middle))?;
        let state = fluid.at_coordinate(&saturation, (t_k - saturation.dew_k) / 200.0)?;
        if high - low < 1e-12 {
            return Ok((saturation.p_pa, state));
        }
        if state.rho_kg_m3 > rho {
            high = middle;
        } else {
            low = middle;
        }
    }
    Err(Error::no_convergence(high - low, 1e-12))
}
