//! The design of a vehicle: the right charge of its receiver or accumulator.

use super::build::{Fluids, plant_of};
use crate::error::Error;
use crate::names::{ErrorKind, Expansion, HighPort, LowPort, VehicleClass};
use crate::units::{Mass, RelativeHumidity, RotationalSpeed, Surroundings, celsius};
use crate::vehicle::circuit::plant::{Closure, Control};
use crate::vehicle::circuit::solve::{Budget, steady};
use crate::vehicle::description::conditions::Conditions;
use crate::vehicle::description::hardware::Hardware;
use crate::vehicle::description::system::System;
use crate::vehicle::description::vehicle::{ClutchSense, FanDrive, Rear, RearLoad, Vehicle};

/// Size of a second evaporator per that of the first, where only its number is known: the middle of what a population draws.
const REAR_SIZE: f64 = 0.675;

impl Vehicle {
    /// A vehicle of this class with typical hardware and the charge that fills its receiver to three quarters, or its accumulator
    /// by half, on a day of 27 °C.
    ///
    /// An orifice tube comes with a low-side switch, a valve with a fin thermostat; a nominal charge in `system`
    /// scales the inner volumes so that it is the right one. What is known of the system replaces what is typical: the
    /// places of its ports, its high-pressure cut-out, and a second evaporator for cabin air with two thirds of
    /// the size of the first.
    ///
    /// Errors: `NoConvergence` where the design point has no steady state.
    ///
    /// ```
    /// use coldloop::vehicle::{System, Vehicle};
    /// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let van = Vehicle::typical(system, VehicleClass::Van)?;
    /// assert!((0.5..1.4).contains(&van.charge.kg()));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn typical(system: System, class: VehicleClass) -> Result<Self, Error> {
        system.check()?;
        let mut hardware = Hardware::typical_for(system.refrigerant, class);
        if let Some(pressure) = system.high_cut_out {
            hardware.high_limit_pa = pressure.pa();
        }
        let rear = system.evaporators.filter(|number| *number > 1).map(|_| Rear {
            load: RearLoad::Air,
            size: REAR_SIZE,
            open: true,
        });
        Self::built(system, hardware, rear)
    }

    /// A vehicle of given hardware, with the charge of its design point as for [`Vehicle::typical`].
    ///
    /// Errors: as [`Vehicle::typical`].
    pub fn built(system: System, hardware: Hardware, rear: Option<Rear>) -> Result<Self, Error> {
        let clutch_sense = match system.expansion {
            Expansion::Txv => ClutchSense::Fins,
            Expansion::OrificeTube => ClutchSense::LowSide,
        };
        let mut vehicle = Self {
            system,
            hardware,
            clutch_sense,
            high_port: system.high_port.unwrap_or(HighPort::Liquid),
            low_port: system.low_port.unwrap_or(LowPort::Compressor),
            fan: FanDrive::Pressure,
            rear,
            charge: Mass::from_kg(1.0),
        };
        let fluids = Fluids::of(&system, &[])?;
        let mut plant = plant_of(&vehicle, &design_conditions(), &[], &fluids)?;
        let design_fill = if plant.receiver {
            RECEIVER_FILL
        } else {
            ACCUMULATOR_FILL
        };
        plant.closure = Closure::Fill(design_fill);
        // The design charge is that at full demand.
        plant.control = Control::None;
        let mut budget = Budget::new();
        let mut design = steady(&plant, None, &mut budget);
        if design.as_ref().is_err_and(|e| e.kind == ErrorKind::NoConvergence) {
            budget.embolden();
            design = steady(&plant, None, &mut budget);
        }
        let design = match design {
            // Another fill may converge, and its state is then a start for the fill that is asked for.
            Err(error) if error.kind == ErrorKind::NoConvergence => {
                let mut budget = Budget::new();
                let fills = [0.1, 0.9, 0.3, 0.7, 0.4, 0.6, 0.5, 0.8];
                let filled = fills.iter().find_map(|fill| {
                    plant.closure = Closure::Fill(*fill);
                    let near = steady(&plant, None, &mut budget).ok()?;
                    plant.closure = Closure::Fill(design_fill);
                    steady(&plant, Some(near.point), &mut budget).ok()
                });
                filled.ok_or(error)?
            }
            other => other?,
        };
        vehicle.charge = Mass::from_kg(design.cycle.mass_kg);
        if let Some(charge) = system.nominal_charge {
            let scale = charge.kg() / vehicle.charge.kg();
            let h = &mut vehicle.hardware;
            for volume in [
                &mut h.condenser_volume_m3,
                &mut h.discharge_volume_m3,
                &mut h.liquid_volume_m3,
                &mut h.suction_volume_m3,
                &mut h.receiver_volume_m3,
                &mut h.accumulator_volume_m3,
                &mut h.evaporator_volume_m3,
            ] {
                *volume *= scale;
            }
            vehicle.charge = charge;
        }
        Ok(vehicle)
    }
}

/// Part of a receiver that the right charge fills. Source: a trade association's charge curve of a valve car, whose
/// high side is flat from 21 to 7 % short and 5 psi higher at the full charge: the label's charge lies near the end of the plateau.
const RECEIVER_FILL: f64 = 0.75;
/// The same of an accumulator, which takes up what the condenser releases in mild weather: filled to three quarters it would flood
/// the compressor below 25 °C. Engineering judgement.
const ACCUMULATOR_FILL: f64 = 0.5;

/// The weather for which a charge is chosen: 27 °C, half saturated, sea level, 1,500 rpm.
pub(in crate::vehicle) fn design_conditions() -> Conditions {
    Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.5)),
        engine_speed: Some(RotationalSpeed::from_hz(25.0)),
        ..Conditions::new(celsius(27.0), Surroundings::SEA_LEVEL)
    }
}
