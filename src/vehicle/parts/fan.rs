//! The air before the condenser: what its fan moves at this pressure of the high side, and what driving adds.
//!
//! Electric fans of condensers follow the high side: they idle, or turn slowly in series, while its pressure is low, and
//! come up in steps or steplessly as it rises, with a hysteresis of several bar. The steady mean of that is a flow that
//! rises from the slow to the fast one between two pressures.

use super::condenser::FaceAir;
use super::smooth::ramp;
use crate::numerics::sqrt;
use crate::vehicle::description::hardware::Hardware;

/// Rounding of the two ends of a fan's rise, per the rise.
const SOFTNESS: f64 = 0.15;
/// Face velocity of natural convection, per that of the fast fan. Engineering judgement.
const CALM: f64 = 0.06;
/// The air flow is proportional to the open part of the face to this power: the fan drives the rest a little faster.
/// Engineering judgement.
const THROUGH_THE_REST: f64 = 0.8;

/// The air before the condenser at any pressure of the high side.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Draught {
    /// The air when the fan turns fast and no vehicle moves.
    pub standing: FaceAir,
    /// Face velocity that the vehicle's speed alone gives per that of the fast fan.
    pub ram: f64,
    /// Speed of the slow fan per that of the fast one.
    pub slow: f64,
    /// Speed of the fast fan per that in [`Draught::standing`].
    pub fast: f64,
    /// Pressure from which on the fan comes up, and at which it is at full speed, Pa absolute.
    pub rises_pa: f64,
    pub full_pa: f64,
}

impl Draught {
    /// The air before the condenser of `hardware` at a standstill or at a speed that moves `ram_m_s` through its face, in
    /// surroundings of `air_pa`; `air` without its flow.
    pub(in crate::vehicle) fn of(
        hardware: &Hardware,
        air: FaceAir,
        density_kg_m3: f64,
        ram_m_s: f64,
        air_pa: f64,
    ) -> Self {
        let fan_m_s = hardware.fan_velocity_m_s;
        let from_pa = hardware.fan_rises_pa + air_pa;
        Self {
            standing: FaceAir {
                flow_kg_s: density_kg_m3 * hardware.condenser_face_m2 * fan_m_s,
                ..air
            },
            ram: ram_m_s / fan_m_s,
            slow: hardware.fan_slow.min(1.0),
            fast: 1.0,
            rises_pa: from_pa,
            full_pa: from_pa + hardware.fan_rise_pa,
        }
    }

    /// Drives the fan from the engine, which turns at `ratio` of the speed that gives the full flow: a viscous
    /// coupling slips beyond.
    pub(in crate::vehicle) fn driven(&mut self, ratio: f64) {
        (self.slow, self.fast) = (ratio.min(1.0), ratio.min(1.0));
    }

    /// Leaves the part `left` of the fan's speed; what driving moves stays.
    pub(in crate::vehicle) fn slow_down(&mut self, left: f64) {
        self.slow *= left;
        self.fast *= left;
    }

    /// Leaves the part `left` of the face open, fins and air.
    pub(in crate::vehicle) fn block(&mut self, left: f64) {
        self.standing.open *= left;
        self.standing.flow_kg_s *= libm::pow(left, THROUGH_THE_REST);
    }

    /// The air while the high side is at `p_pa`: velocities of fan and driving add as the pressures that drive them.
    pub(in crate::vehicle) fn at(&self, p_pa: f64) -> FaceAir {
        let (from, to) = (self.rises_pa, self.full_pa);
        let fan = self.slow + (self.fast - self.slow) * ramp((p_pa - from) / (to - from), SOFTNESS);
        FaceAir {
            flow_kg_s: self.standing.flow_kg_s * sqrt(fan * fan + self.ram * self.ram + CALM * CALM),
            ..self.standing
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::VehicleClass;

    fn draught(ram_m_s: f64) -> Draught {
        let air = FaceAir {
            t_k: 300.0,
            flow_kg_s: 0.0,
            cp_j_kg_k: 1_006.0,
            open: 1.0,
            returned: 0.2,
        };
        Draught::of(&Hardware::typical(VehicleClass::Car), air, 1.2, ram_m_s, 101_325.0)
    }

    #[test]
    fn a_fan_comes_up_with_the_pressure_and_never_falls() {
        let car = Hardware::typical(VehicleClass::Car);
        let at = |speed: f64| 1.2 * car.condenser_face_m2 * car.fan_velocity_m_s * sqrt(speed * speed + CALM * CALM);
        let full = at(1.0);
        let mut last = 0.0;
        for step in 0..80 {
            let flow = draught(0.0).at(50e3 * f64::from(step)).flow_kg_s;
            assert!(flow > last && flow < full);
            last = flow;
        }
        let share = |p_pa: f64| draught(0.0).at(p_pa).flow_kg_s / full;
        assert!((share(0.5e6) * full / at(car.fan_slow) - 1.0).abs() < 0.05 && share(3.0e6) > 0.99);
    }

    #[test]
    fn driving_leaves_the_fan_little_to_do() {
        let gained = |ram_m_s: f64| draught(ram_m_s).at(3.0e6).flow_kg_s / draught(ram_m_s).at(0.5e6).flow_kg_s;
        assert!(gained(0.0) > 1.8 && gained(6.0) < 1.1);
    }
}
