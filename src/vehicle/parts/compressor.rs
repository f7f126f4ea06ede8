//! The compressor: flow, power and discharge temperature.

use super::smooth::positive;
use crate::error::Error;
use crate::names::Compressor;
use crate::numerics::sqrt;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::working_fluid::equilibrium::{Saturation, State};
use crate::vehicle::working_fluid::pure_or_mixed::WorkingFluid;

/// How the efficiencies of a kind of machine depend on speed.
struct Machine {
    volumetric: f64,
    volumetric_per_hz: f64,
    isentropic: f64,
    isentropic_per_hz: f64,
    /// Suction density at which the isentropic efficiency has fallen by half its value, kg/m3.
    thin_gas_kg_m3: f64,
}

/// Open piston machine. Source: Darr & Crawford 1992 (ACRC TR-14, University of Illinois), R-134a, 169 cm3, pressure
/// ratios 3 to 10: volumetric 0.8889 - 1.0025e-4 N before clearance, isentropic 0.8405 - 4.8711e-5 N - 0.1105 / rho,
/// N in rpm, rho in lb/ft3. The last term is taken as the first order of a form that stays positive in thin gas.
const PISTON: Machine = Machine {
    volumetric: 0.8889,
    volumetric_per_hz: 60.0 * 1.0025e-4,
    isentropic: 0.8405,
    isentropic_per_hz: 60.0 * 4.8711e-5,
    thin_gas_kg_m3: 0.1105 * 16.018_463 / 0.8405,
};

/// Motor-driven scroll machine. Judgement: 0.92 volumetric and 0.70 isentropic at moderate speed, falling slowly with speed.
const SCROLL: Machine = Machine {
    volumetric: 0.95,
    volumetric_per_hz: 4.0e-4,
    isentropic: 0.80,
    isentropic_per_hz: 8.0e-4,
    thin_gas_kg_m3: 2.0,
};

/// The leakage of a scroll past its flanks, as an equivalent clearance volume per swept volume.
const SCROLL_LEAKAGE: f64 = 0.012;

/// Part of the isentropic efficiency that a variable machine loses in the limit of zero stroke. Judgement.
const SHORT_STROKE_LOSS: f64 = 0.35;

/// The drive of the compressor and its wear.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Drive {
    /// Kind of machine and control.
    pub kind: Compressor,
    /// Revolutions per second at full drive.
    pub speed_hz: f64,
    /// Part of the compressed vapour that leaks back to the suction side, 0 to below 1.
    pub leakage: f64,
    /// Part of the displacement that is lost: worn rings and valves that draw less in, 0 to below 1.
    pub lost: f64,
}

/// The result of a compression.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Compression {
    /// Flow that leaves for the condenser, kg/s.
    pub flow_kg_s: f64,
    /// Enthalpy at the discharge port, J/kg.
    pub h_j_kg: f64,
    /// Density at the discharge port, kg/m3.
    pub rho_kg_m3: f64,
    /// Specific heat of the vapour there, J/(kg K).
    pub gas_cp_j_kg_k: f64,
    /// Shaft (or motor) power, W.
    pub power_w: f64,
    /// Flow over swept flow of suction vapour.
    pub volumetric: f64,
    /// Isentropic work over specific work.
    pub isentropic: f64,
}

impl Drive {
    /// Compresses from `suction` to the pressure of `discharge` with the part `demand` (0 to 1) of full stroke,
    /// running time or speed.
    ///
    /// Flow: `rho V N (a - b N) f u (1 - c (rho_2s / rho_1 - 1))`, the textbook clearance form with the density ratio
    /// of isentropic compression in place of a polytropic exponent. What leaks back past
    /// valves and rings is compressed again, but much of it leaves before it has come to full pressure: the work per
    /// delivered kilogram is taken to grow by `1 / sqrt(1 - leakage)`, and the discharge temperature with it. Judgement:
    /// sources disagree even on the sign of that rise (Rossi & Braun 1997 down, later tests up).
    pub(in crate::vehicle) fn compress(
        &self,
        fluid: &WorkingFluid,
        hardware: &Hardware,
        suction: &State,
        discharge: &Saturation,
        demand: f64,
    ) -> Result<Compression, Error> {
        let ideal = fluid.at_entropy(discharge, suction.s_j_kg_k)?;
        let (machine, swept_m3, speed_hz, duty, clearance, stroke_loss) = match self.kind {
            Compressor::FixedClutch => (
                PISTON,
                hardware.displacement_m3,
                self.speed_hz,
                demand,
                hardware.clearance,
                0.0,
            ),
            // The swash plate keeps the dead volume as the stroke shortens; unloading valves soften that.
            Compressor::VariableInternal | Compressor::VariableExternal => {
                let clearance = hardware.clearance / sqrt(demand);
                let loss = SHORT_STROKE_LOSS * (1.0 - demand) * (1.0 - demand);
                (PISTON, hardware.displacement_m3, self.speed_hz, demand, clearance, loss)
            }
            Compressor::Electric => (
                SCROLL,
                hardware.electric_displacement_m3,
                self.speed_hz * demand,
                1.0,
                SCROLL_LEAKAGE,
                0.0,
            ),
        };
        let filling = positive(
            machine.volumetric - machine.volumetric_per_hz * hardware.speed_loss * speed_hz,
            0.05,
        ) * hardware.volumetric_factor;
        let expansion = 1.0 - clearance * (ideal.rho_kg_m3 / suction.rho_kg_m3 - 1.0);
        let kept = 1.0 - self.leakage;
        let volumetric = filling * positive(expansion, 0.02) * kept * (1.0 - self.lost);
        let flow_kg_s = suction.rho_kg_m3 * swept_m3 * speed_hz * duty * volumetric;

        let speed_part = positive(
            machine.isentropic - machine.isentropic_per_hz * hardware.speed_loss * speed_hz,
            0.05,
        );
        let density_part = suction.rho_kg_m3 / (suction.rho_kg_m3 + machine.thin_gas_kg_m3);
        let isentropic = speed_part * density_part * hardware.isentropic_factor * (1.0 - stroke_loss) * sqrt(kept);
        let work_j_kg = (ideal.h_j_kg - suction.h_j_kg) / isentropic;
        let h_j_kg = suction.h_j_kg + work_j_kg * (1.0 - hardware.shell_loss);
        let rho_kg_m3 = ideal.warmed_kg_m3(discharge, h_j_kg);
        Ok(Compression {
            flow_kg_s,
            h_j_kg,
            rho_kg_m3,
            gas_cp_j_kg_k: ideal.cp_j_kg_k,
            power_w: flow_kg_s * work_j_kg,
            volumetric,
            isentropic,
        })
    }
}
