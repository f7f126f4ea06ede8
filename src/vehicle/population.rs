//! Vehicles as they come: every parameter drawn from its distribution, by uniform numbers that the caller supplies.

use super::hardware::{Hardware, Options};
use super::{ClutchSense, HighPort, Rear, RearLoad, System, Vehicle};
use crate::error::Error;
use crate::names::{Expansion, Quantity, Refrigerant, VehicleClass};
use crate::numerics::sqrt;
use crate::range::Range;

/// Farthest deviation that is drawn, in standard deviations: no vehicle is built as far off as a normal distribution
/// would have one in a hundred.
const FARTHEST: f64 = 2.4;

/// Effectiveness of the internal heat exchanger of R-744 systems. Judgement.
const EXCHANGER_CARBON_DIOXIDE: [f64; 2] = [0.45, 0.7];

/// What a uniform number may be.
const UNIFORM: Range = Range::new(Quantity::Probability, 0.0, 1.0);

/// How vehicles of one kind differ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Population {
    /// The system that all of them have.
    pub system: System,
    /// The class of vehicle.
    pub class: VehicleClass,
    /// What is typical of them.
    pub typical: Hardware,
    /// Factor on every spread: 0 for vehicles all alike, 1 for those as they come.
    pub spread: f64,
    /// What some have and others have not.
    pub options: Options,
}

impl Population {
    /// How many uniform numbers one vehicle takes.
    pub const UNIFORMS: usize = Hardware::COUNT + 9;

    /// The vehicles of this system and class as they come.
    pub const fn usual(system: System, class: VehicleClass) -> Self {
        Self {
            system,
            class,
            typical: Hardware::typical_for(system.refrigerant, class),
            spread: 1.0,
            options: Options::USUAL,
        }
    }

    /// The hardware that the first `Hardware::COUNT + 1` uniform numbers (0 to 1) draw.
    ///
    /// Each parameter is normal (or log-normal) about its typical value, cut at 2.4 standard deviations; the extensive
    /// ones share one factor of size.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for numbers outside 0 to 1.
    pub fn hardware(&self, uniforms: &[f64; Self::UNIFORMS]) -> Result<Hardware, Error> {
        let size = libm::exp(self.spread * Hardware::SIZE_DEVIATION * deviate(uniforms[0])?);
        let mut values = self.typical.values();
        for (index, spread) in Hardware::SPREAD.iter().enumerate() {
            let deviation = self.spread * spread.deviation * deviate(uniforms[index + 1])?;
            if spread.additive {
                values[index] += deviation;
            } else {
                values[index] *= libm::exp(deviation);
            }
            if spread.extensive {
                values[index] *= size;
            }
        }
        Ok(Hardware::from_values(values))
    }

    /// The vehicle that the uniform numbers (0 to 1) draw.
    ///
    /// Errors: as [`Population::hardware`], and those of [`Vehicle::built`].
    ///
    /// ```
    /// use coldloop::vehicle::{Population, System};
    /// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
    /// let system = System {
    ///     refrigerant: Refrigerant::R134a,
    ///     expansion: Expansion::OrificeTube,
    ///     compressor: Compressor::FixedClutch,
    ///     nominal_charge_kg: None,
    /// };
    /// let vans = Population::usual(system, VehicleClass::Van);
    /// let middling = vans.vehicle(&[0.5; Population::UNIFORMS])?;
    /// assert!(middling.charge_kg > 0.5);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn vehicle(&self, uniforms: &[f64; Self::UNIFORMS]) -> Result<Vehicle, Error> {
        let mut hardware = self.hardware(uniforms)?;
        let options = &self.options;
        let mut choices = [0.0; 8];
        for (choice, uniform) in choices.iter_mut().zip(&uniforms[Hardware::COUNT + 1..]) {
            *choice = UNIFORM.check(*uniform)?;
        }
        let [receiver, share, exchanger, port, sense, rear, rear_size, fan] = choices;
        let between = |range: [f64; 2], u: f64| range[0] + (range[1] - range[0]) * u;
        let valve = self.system.expansion == Expansion::Txv;
        if valve && receiver < options.integrated_receiver {
            hardware.subcooler_share = between(options.subcooler_share, share);
        }
        let new = self.system.refrigerant == Refrigerant::R1234yf;
        let exchangers = if new {
            options.exchanger_new
        } else {
            options.exchanger_old
        };
        if self.system.refrigerant == Refrigerant::R744 {
            // An internal heat exchanger comes with it.
            hardware.subcooler_share = 0.0;
            hardware.exchanger = between(EXCHANGER_CARBON_DIOXIDE, exchanger);
        // One number for whether and how much: what is left of it below the limit is again uniform.
        } else if valve && exchanger < exchangers {
            hardware.exchanger = between(options.exchanger, exchanger / exchangers);
        }
        if fan >= options.fan_by_pressure {
            hardware.fan_slow = 1.0;
        }
        let with_rear = options.rear[self.class.code() as usize - 1];
        let rear = (rear < with_rear).then_some(Rear {
            load: RearLoad::Air,
            size: between(options.rear_size, rear_size),
            open: true,
        });
        let mut vehicle = Vehicle::built(self.system, hardware, rear)?;
        if port >= options.liquid_port {
            vehicle.high_port = HighPort::Discharge;
        }
        if valve && sense < options.valve_low_side_switch {
            vehicle.clutch_sense = ClutchSense::LowSide;
        }
        Ok(vehicle)
    }
}

/// The standard normal deviate of a uniform number, cut at [`FARTHEST`].
fn deviate(uniform: f64) -> Result<f64, Error> {
    Ok(normal_quantile(UNIFORM.check(uniform)?.clamp(1e-9, 1.0 - 1e-9)).clamp(-FARTHEST, FARTHEST))
}

/// The standard normal quantile, to about 1e-9.
///
/// Source: Acklam's rational approximation (relative error 1.15e-9), public, 2003.
fn normal_quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 5] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
    ];
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 4] = [
        7.784_695_709_041_462e-3,
        3.224_671_290_700_398e-1,
        2.445_134_137_142_996,
        3.754_408_661_907_416,
    ];
    let along = |c: &[f64], x: f64| c.iter().fold(0.0, |sum, c| sum * x + c);
    let tail = |p: f64| {
        let q = sqrt(-2.0 * libm::log(p));
        along(&C, q) / (along(&D, q) * q + 1.0)
    };
    const LOW: f64 = 0.024_25;
    if p < LOW {
        tail(p)
    } else if p > 1.0 - LOW {
        -tail(1.0 - p)
    } else {
        let q = p - 0.5;
        let r = q * q;
        along(&A, r) * q / (along(&B, r) * r + 1.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_are_those_of_the_tables() {
        // Abramowitz & Stegun, table 26.5.
        for (p, z) in [
            (0.5, 0.0),
            (0.975, 1.959_963_985),
            (0.01, -2.326_347_874),
            (0.999, 3.090_232_306),
        ] {
            assert!((normal_quantile(p) - z).abs() < 5e-9, "{p}");
        }
    }
}
