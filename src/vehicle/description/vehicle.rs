//! A vehicle's air conditioning as built.

use super::hardware::Hardware;
use super::system::System;
use crate::names::{Compressor, HighPort, LowPort};
use crate::units::{Mass, Temperature};

/// What opens the clutch of a fixed compressor in mild weather.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum ClutchSense {
    /// A pressure switch on the low side.
    LowSide,
    /// A thermostat between the fins of the evaporator.
    Fins,
    /// Nothing: no low limit ever opens it.
    Neither,
}

/// What drives the fan of the condenser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum FanDrive {
    /// An electric motor that follows the high-side pressure, in steps or steplessly, between
    /// [`Hardware::fan_rises_pa`] and [`Hardware::fan_rise_pa`] above it.
    Pressure,
    /// An electric motor that runs at full speed whenever the air conditioning is on.
    Always,
    /// The engine: the flow goes with its speed, up to that at [`Hardware::fan_engine_hz`].
    Engine,
}

/// What a second evaporator cools.
///
/// ```
/// use coldloop::units::celsius;
/// use coldloop::vehicle::{Rear, RearLoad};
/// let battery = RearLoad::Coolant { inlet: celsius(30.0), capacity_w_k: 900.0 };
/// let chiller = Rear { load: battery, size: 0.6, open: true };
/// assert_ne!(chiller.load, RearLoad::Air);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum RearLoad {
    /// Cabin air, with its own blower.
    Air,
    /// The coolant of a battery, at this inlet temperature and this heat capacity of its flow.
    Coolant {
        /// Temperature at the inlet of the chiller.
        inlet: Temperature,
        /// Flow times specific heat, W/K.
        capacity_w_k: f64,
    },
}

/// A second evaporator in parallel, with an expansion valve and a shut-off of its own.
///
/// ```
/// use coldloop::vehicle::{Rear, RearLoad};
/// let shut = Rear { load: RearLoad::Air, size: 0.5, open: false };
/// assert!(Rear { open: true, ..shut } != shut);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rear {
    /// What it cools.
    pub load: RearLoad,
    /// Its size per that of the front one, 0.05 to 2.
    pub size: f64,
    /// Whether the shut-off is open.
    pub open: bool,
}

/// A vehicle's air conditioning as built, sound.
///
/// ```
/// use coldloop::vehicle::{System, Vehicle};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let [car, bus] = [VehicleClass::Car, VehicleClass::Bus].map(|class| Vehicle::typical(system, class));
/// assert!(bus?.charge > car?.charge);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vehicle {
    /// What the label says.
    pub system: System,
    /// The parameters of its parts.
    pub hardware: Hardware,
    /// What opens the clutch, where there is one that cycles.
    pub clutch_sense: ClutchSense,
    /// Where the high-side port is.
    pub high_port: HighPort,
    /// Where the low-side port is.
    pub low_port: LowPort,
    /// What drives the fan of the condenser.
    pub fan: FanDrive,
    /// A second evaporator.
    pub rear: Option<Rear>,
    /// Its right charge.
    pub charge: Mass,
}

impl Vehicle {
    /// Whether the compressor is belt-driven through a clutch that can cycle.
    pub(in crate::vehicle) fn cycles(&self) -> bool {
        self.system.compressor == Compressor::FixedClutch
    }
}
