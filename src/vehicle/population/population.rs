//! Vehicles drawn by uniform numbers that the caller supplies: a make first, then a vehicle of it.

use super::draws::{UNIFORM, between, deviate};
use super::make::Make;
use crate::error::Error;
use crate::names::LowPort;
use crate::names::{Compressor, Expansion, Refrigerant, VehicleClass};
use crate::vehicle::description::hardware::{Hardware, Options};
use crate::vehicle::description::system::System;
use crate::vehicle::description::vehicle::{FanDrive, Rear, RearLoad, Vehicle};

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

/// Setting of a switch that does not exist: a pressure below any vacuum, Pa gauge.
const NO_SWITCH_PA: f64 = -200e3;

/// How vehicles of one kind differ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Population {
    /// The system that all of them have.
    pub system: System,
    /// The class of vehicle.
    pub class: VehicleClass,
    /// What is typical of them.
    pub typical: Hardware,
    /// Factor on every spread: 0 for identical vehicles, 1 for the usual spread.
    pub spread: f64,
    /// What some have and others have not.
    pub options: Options,
    /// The make that all of them are of; `None` where each is of a make of its own.
    pub make: Option<Make>,
}

impl Population {
    /// How many uniform numbers one vehicle takes: those of its make, which are not used where the make is given, then size,
    /// parameters, and whether and how large a second evaporator is.
    pub const UNIFORMS: usize = Make::UNIFORMS + Self::OF_VEHICLE;

    const OF_VEHICLE: usize = Hardware::COUNT + 3;

    /// The vehicles of this system and class with the usual spread, of any make.
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
    /// assert!(middling.charge.kg() > 0.5);
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
