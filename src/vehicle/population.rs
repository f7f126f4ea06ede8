//! Vehicles as they come: a make first, then a vehicle of it, by uniform numbers that the caller supplies.

use super::hardware::{Hardware, Options};
use super::make::{Make, between};
use super::{FanDrive, LowPort, Rear, RearLoad, System, Vehicle};
use crate::error::Error;
use crate::names::{Compressor, Expansion, Quantity, Refrigerant, VehicleClass};
use crate::numerics::sqrt;
use crate::range::Range;

/// Farthest deviation that is drawn, in standard deviations: no vehicle is built as far off as a normal distribution
/// would have one in a hundred.
const FARTHEST: f64 = 2.4;

/// Effectiveness of the internal heat exchanger of R-744 systems. Engineering judgement.
const EXCHANGER_CARBON_DIOXIDE: [f64; 2] = [0.45, 0.7];

/// Limit of a valve that keeps opening at any evaporator pressure, per that of one that does not: out of reach.
const UNLIMITED: f64 = 4.0;

/// Clearance volume and volumetric efficiency of a rotary machine per those of a piston machine. Engineering judgement:
/// no clearance volume to speak of, and leaks past vanes and flanks instead.
const ROTARY: [f64; 2] = [0.25, 0.97];

/// Range of pressures over which a stepless fan comes up per that of one with steps. Engineering judgement.
const STEPLESS: f64 = 2.2;

/// The most of the condenser's air that comes back at a standstill. Engineering judgement: with more than half the air
/// before the condenser would be more than twice as far above ambient as it is measured to be (18 K at the most).
const MOST_RETURNED: f64 = 0.55;

/// What stands for a switch that is not there: a pressure below any vacuum, Pa gauge.
const NO_SWITCH_PA: f64 = -200e3;

/// What a uniform number may be.
pub(super) const UNIFORM: Range = Range::new(Quantity::Probability, 0.0, 1.0);

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
    /// The make that all of them are of; `None` where each is of a make of its own.
    pub make: Option<Make>,
}

impl Population {
    /// How many uniform numbers one vehicle takes: those of its make, which are left aside where the make is given, then
    /// size, parameters, and whether and how large a second evaporator is.
    pub const UNIFORMS: usize = Make::UNIFORMS + Self::OF_VEHICLE;

    const OF_VEHICLE: usize = Hardware::COUNT + 3;

    /// The vehicles of this system and class as they come, of any make.
    pub const fn usual(system: System, class: VehicleClass) -> Self {
        Self {
            system,
            class,
            typical: Hardware::typical_for(system.refrigerant, class),
            spread: 1.0,
            options: Options::USUAL,
            make: None,
        }
    }

    /// The vehicles of this system and class that one make builds.
    ///
    /// ```
    /// use coldloop::vehicle::{Make, Population, System};
    /// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let make = Make::numbered(12);
    /// let sweepers = Population::of_make(make, system, VehicleClass::Van);
    /// let sweeper = sweepers.vehicle(&[0.3; Population::UNIFORMS])?;
    /// assert_eq!(sweeper.high_port, make.high_port);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub const fn of_make(make: Make, system: System, class: VehicleClass) -> Self {
        Self {
            make: Some(make),
            ..Self::usual(system, class)
        }
    }

    /// The make of the vehicle that the uniform numbers (0 to 1) draw.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for numbers outside 0 to 1.
    pub fn make(&self, uniforms: &[f64; Self::UNIFORMS]) -> Result<Make, Error> {
        match self.make {
            Some(make) => Ok(make),
            None => Make::drawn(&self.options, &core::array::from_fn(|index| uniforms[index])),
        }
    }

    /// The hardware that the uniform numbers (0 to 1) draw, before what a make has and others have not.
    ///
    /// Each parameter is normal (or log-normal) about its typical value between makes and about that of the make
    /// between its vehicles, both cut at 2.4 standard deviations; the extensive ones share one factor of size.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for numbers outside 0 to 1.
    pub fn hardware(&self, uniforms: &[f64; Self::UNIFORMS]) -> Result<Hardware, Error> {
        self.hardware_of(&self.make(uniforms)?, uniforms)
    }

    fn hardware_of(&self, make: &Make, uniforms: &[f64; Self::UNIFORMS]) -> Result<Hardware, Error> {
        let mut own = [0.0; Hardware::COUNT + 1];
        for (deviation, uniform) in own.iter_mut().zip(&uniforms[Make::UNIFORMS..]) {
            *deviation = deviate(UNIFORM.check(*uniform)?);
        }
        let [own_size, own @ ..] = &own;
        let size = Hardware::SIZE.make * make.size + Hardware::SIZE.vehicle * own_size;
        let size = libm::exp(self.spread * size);
        let mut values = self.typical.values();
        let deviations = make.deviations.iter().zip(own);
        for ((value, spread), (of_make, own)) in values.iter_mut().zip(&Hardware::SPREAD).zip(deviations) {
            let deviation = self.spread * (spread.make * of_make + spread.vehicle * own);
            if spread.additive {
                *value += deviation;
            } else {
                *value *= libm::exp(deviation);
            }
            if spread.extensive {
                *value *= size;
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
    /// let system = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    /// let vans = Population::usual(system, VehicleClass::Van);
    /// let middling = vans.vehicle(&[0.5; Population::UNIFORMS])?;
    /// assert!(middling.charge_kg > 0.5);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn vehicle(&self, uniforms: &[f64; Self::UNIFORMS]) -> Result<Vehicle, Error> {
        let make = self.make(uniforms)?;
        let hardware = self.fitted(&make, self.hardware_of(&make, uniforms)?);
        let [rear, rear_size] = [1, 2].map(|place| uniforms[Make::UNIFORMS + Hardware::COUNT + place]);
        let with_rear = self.options.rear[self.class.code() as usize - 1];
        let rear_size = between(self.options.rear_size, UNIFORM.check(rear_size)?);
        let rear = (UNIFORM.check(rear)? < with_rear).then_some(Rear {
            load: RearLoad::Air,
            size: rear_size,
            open: true,
        });
        let mut vehicle = Vehicle::built(self.system, hardware, rear)?;
        vehicle.high_port = make.high_port;
        vehicle.low_port = self.low_port(&make);
        vehicle.fan = self.fan(&make);
        if self.has_valve() {
            vehicle.clutch_sense = make.valve_sense;
        }
        Ok(vehicle)
    }

    const fn has_valve(&self) -> bool {
        matches!(self.system.expansion, Expansion::Txv)
    }

    const fn low_port(&self, make: &Make) -> LowPort {
        match self.system.expansion {
            Expansion::Txv => make.low_port_valve,
            Expansion::OrificeTube => make.low_port_orifice,
        }
    }

    const fn fan(&self, make: &Make) -> FanDrive {
        match (make.fan, self.system.compressor) {
            (FanDrive::Engine, Compressor::Electric) => FanDrive::Pressure,
            (fan, _) => fan,
        }
    }

    /// The hardware with what the make has and others have not.
    fn fitted(&self, make: &Make, mut hardware: Hardware) -> Hardware {
        let valve = self.has_valve();
        let refrigerant = self.system.refrigerant;
        hardware.hot_air_return = hardware.hot_air_return.min(MOST_RETURNED);
        if make.fan_stepless {
            hardware.fan_rise_pa *= STEPLESS;
        }
        if refrigerant == Refrigerant::R744 {
            // An internal heat exchanger comes with it; its valve is electronic.
            hardware.exchanger = between(EXCHANGER_CARBON_DIOXIDE, make.exchanger_r744);
            return hardware;
        }
        if self.system.compressor == Compressor::FixedClutch && make.rotary {
            hardware.clearance *= ROTARY[0];
            hardware.volumetric_factor *= ROTARY[1];
        }
        hardware.start_pa = make.start_pa.unwrap_or(NO_SWITCH_PA);
        if !valve {
            return hardware;
        }
        if let Some(share) = make.subcooler_share {
            hardware.subcooler_share = share;
        }
        let exchanger = if refrigerant == Refrigerant::R1234yf {
            make.exchanger_new
        } else {
            make.exchanger_old
        };
        if let Some(effectiveness) = exchanger {
            hardware.exchanger = effectiveness;
        }
        if !make.valve_limited {
            hardware.valve_limit_pa *= UNLIMITED;
        }
        if let Some(low_pa) = make.low_cut_out_pa {
            hardware.low_cutout_pa = low_pa;
        }
        hardware
    }
}

/// The standard normal deviate of a uniform number in 0 to 1, cut at [`FARTHEST`].
pub(super) fn deviate(uniform: f64) -> f64 {
    normal_quantile(uniform.clamp(1e-9, 1.0 - 1e-9)).clamp(-FARTHEST, FARTHEST)
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
