//! The readings that instruments show of a simulated system.

use super::draws::UNIFORM;
use crate::circuit::{Gauge, Reading, Readings};
use crate::error::Error;
use crate::names::{Compressor, Thermometer};
use crate::units::{
    AbsolutePressure, GaugePressure, PressureDifference, RotationalSpeed, Speed, Surroundings, Temperature,
    TemperatureDifference, difference_in_kelvins, in_kelvins, kelvins, kelvins_difference,
};
use crate::vehicle::description::conditions::Conditions;
use crate::vehicle::description::severity::FaultSeverity;
use crate::vehicle::description::vehicle::Vehicle;
use crate::vehicle::operation::simulate::simulate;
use crate::vehicle::operation::simulation::Simulation;

/// Engine speed and vehicle speed of a drive on which the vent is read, 1/s and m/s. Engineering judgement: 2,000 rpm and
/// 54 km/h.
const ROAD_HZ: f64 = 2_000.0 / 60.0;
const ROAD_M_S: f64 = 15.0;

/// Which value of a needle that swings with the clutch is noted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Needle {
    /// The mean of a cycle on both sides.
    Mean,
    /// The end of the swing where the clutch opens: the lowest of the low side, the highest of the high side.
    Ends,
    /// What it shows while the clutch is engaged: the middle of the low side's fall, three quarters of the way up the high
    /// side's climb (which is fast at first).
    Engaged,
}

/// How the vehicles of a make are measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Habits {
    /// Which value of a swinging needle is noted.
    pub needle: Needle,
    /// Whether the vent is read on the road, and the gauges at a standstill.
    pub vent_on_road: bool,
}

impl Habits {
    /// The mean of a swinging needle, and everything read at one time.
    pub const PLAIN: Self = Self {
        needle: Needle::Mean,
        vent_on_road: false,
    };

    /// The conditions in which the vent is read, where gauges are read in `conditions`: on the road at 2,000 rpm and
    /// 54 km/h (a motor-driven compressor keeps its own speed), or the same.
    pub fn vent_conditions(&self, vehicle: &Vehicle, conditions: &Conditions) -> Conditions {
        let stands = conditions.vehicle_speed.is_none_or(|speed| speed.m_s() < ROAD_M_S);
        if !self.vent_on_road || !stands || conditions.at_rest(vehicle.system.compressor) {
            return *conditions;
        }
        Conditions {
            engine_speed: match vehicle.system.compressor {
                Compressor::Electric => conditions.engine_speed,
                Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
                    Some(RotationalSpeed::from_hz(ROAD_HZ))
                }
            },
            vehicle_speed: Some(Speed::from_m_s(ROAD_M_S)),
            ..*conditions
        }
    }

    /// What there is to read of `simulation`, by these habits: needles as they are noted, and the vent where it is read.
    ///
    /// `simulation` is that of `vehicle` in `conditions` with `faults`. The cabin's air is that where the vent is read.
    ///
    /// Errors: those of [`simulate`] where the vent is read on the road.
    ///
    /// ```
    /// use coldloop::units::{RotationalSpeed, Surroundings, celsius};
    /// use coldloop::vehicle::{Conditions, Habits, System, Vehicle, simulate};
    /// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let van = Vehicle::typical(system, VehicleClass::Van)?;
    /// let yard = Conditions {
    ///     engine_speed: Some(RotationalSpeed::from_hz(12.0)),
    ///     ..Conditions::new(celsius(35.0), Surroundings::at_altitude(1_600.0)?)
    /// };
    /// let idle = simulate(&van, &yard, &[])?;
    /// let on_road = Habits { vent_on_road: true, ..Habits::PLAIN };
    /// let noted = on_road.noted(&idle, &van, &yard, &[])?;
    /// assert!(noted.vent < idle.vent && noted.low_side == idle.low_side);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn noted(
        &self,
        simulation: &Simulation,
        vehicle: &Vehicle,
        conditions: &Conditions,
        faults: &[FaultSeverity],
    ) -> Result<Simulation, Error> {
        let mut noted = *simulation;
        if let Some(swing) = simulation.swing {
            let along = |(low, high): (AbsolutePressure, AbsolutePressure), part: f64| {
                AbsolutePressure::from_pa(low.pa() + part * (high.pa() - low.pa()))
            };
            (noted.low_side, noted.high_side) = match self.needle {
                Needle::Mean => (simulation.low_side, simulation.high_side),
                Needle::Ends => (swing.low_side.0, swing.high_side.1),
                Needle::Engaged => (along(swing.low_side, 0.5), along(swing.high_side, 0.75)),
            };
        }
        let elsewhere = self.vent_conditions(vehicle, conditions);
        if elsewhere != *conditions {
            let road = simulate(vehicle, &elsewhere, faults)?;
            (noted.vent, noted.cabin) = (road.vent, road.cabin);
        }
        Ok(noted)
    }
}

/// The instruments on a vehicle, and how carefully they are read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Instruments {
    /// Gauge on the low side.
    pub low_side: Gauge,
    /// Gauge on the high side.
    pub high_side: Gauge,
    /// Thermometer in the air.
    pub air: Thermometer,
    /// Thermometer on the lines.
    pub lines: Thermometer,
    /// Probability that a reading other than the two pressures was not taken.
    pub missing: f64,
    /// Pressures are read to the nearest multiple of this.
    pub pressure_step: PressureDifference,
    /// Temperatures are read to the nearest multiple of this.
    pub temperature_step: TemperatureDifference,
    /// Where the gauges were zeroed, when that was elsewhere.
    pub gauge_zero: Option<Surroundings>,
}

impl Instruments {
    /// How many uniform numbers one measurement takes.
    pub const UNIFORMS: usize = 16;

    /// A dial manifold, a dial in the vent and a clamp on the lines, read to 1 psi and half a kelvin; two of five
    /// temperatures not taken. Judgement.
    pub const SHOP: Self = Self {
        low_side: Gauge::LOW_SIDE,
        high_side: Gauge::HIGH_SIDE,
        air: Thermometer::PocketDial,
        lines: Thermometer::ClampThermocouple,
        missing: 0.4,
        pressure_step: PressureDifference::from_pa(6_894.757_293_168),
        temperature_step: kelvins_difference(0.5),
        gauge_zero: None,
    };

    /// What they show of a simulated system in the air of `place`; each error is anywhere within the limit of the
    /// instrument.
    ///
    /// `uniforms` are numbers from 0 to 1: an error and a miss for each of the eight readings, in the order of
    /// [`Readings`].
    ///
    /// Errors: `NotFinite` and `OutOfRange` for numbers outside 0 to 1.
    pub fn measure(
        &self,
        simulation: &Simulation,
        place: Surroundings,
        uniforms: &[f64; Self::UNIFORMS],
    ) -> Result<Readings, Error> {
        for uniform in uniforms {
            UNIFORM.check(*uniform)?;
        }
        let zero_pa = self.gauge_zero.unwrap_or(place).pressure().pa();
        let pressure = |pressure: AbsolutePressure, gauge: Gauge, index: usize| {
            let shown_pa = pressure.pa() - zero_pa;
            let off_pa = gauge.limit_of_error(GaugePressure::from_pa(shown_pa)).pa() * (2.0 * uniforms[index] - 1.0);
            let read_pa = nearest(shown_pa + off_pa, self.pressure_step.pa());
            Reading::pressure(GaugePressure::from_pa(read_pa), gauge)
        };
        let temperature = |temperature: Temperature, thermometer: Thermometer, index: usize| {
            let t_k = in_kelvins(temperature);
            let off_k = difference_in_kelvins(thermometer.limit_of_error(temperature)) * (2.0 * uniforms[index] - 1.0);
            // A scale in kelvin and one in degrees Celsius differ by 273.15: steps are those of Celsius.
            let read = kelvins(273.15 + nearest(t_k + off_k - 273.15, difference_in_kelvins(self.temperature_step)));
            (uniforms[8 + index] >= self.missing).then(|| Reading::temperature(read, thermometer))
        };
        Ok(Readings {
            low_side: Some(pressure(simulation.low_side, self.low_side, 0)),
            high_side: Some(pressure(simulation.high_side, self.high_side, 1)),
            vent: temperature(simulation.vent, self.air, 2),
            cabin: temperature(simulation.cabin, self.air, 3),
            suction_line: temperature(simulation.suction_line, self.lines, 4),
            discharge_line: temperature(simulation.discharge_line, self.lines, 5),
            liquid_line: temperature(simulation.liquid_line, self.lines, 6),
            condenser_outlet: temperature(simulation.condenser_outlet, self.lines, 7),
            clutch_cycles: Some(Reading::counted(simulation.clutch_cycles)),
            gauge_zero: self.gauge_zero,
            ..Readings::default()
        })
    }
}

/// The multiple of `step` nearest to `value`.
fn nearest(value: f64, step: f64) -> f64 {
    if step > 0.0 {
        step * libm::round(value / step)
    } else {
        value
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::{Compressor, Expansion, Refrigerant, VehicleClass};
    use crate::units::{Pressure, celsius};
    use crate::vehicle::{Conditions, System, Vehicle, simulate};

    #[test]
    fn readings_lie_within_the_limits_of_the_instruments() {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
        let place = Surroundings::at_altitude(1_600.0).unwrap();
        let s = simulate(&car, &Conditions::new(celsius(32.0), place), &[]).unwrap();
        for error in [0.0, 0.5, 1.0] {
            let readings = Instruments::SHOP.measure(&s, place, &[error; 16]).unwrap();
            let low_pa = readings.low_side.unwrap().value.absolute(place).pa();
            assert!((low_pa - s.low_side.pa()).abs() <= 0.016 * 1.1e6 + 3_500.0);
            assert_eq!(readings.vent.is_some(), error >= 0.4);
            if let Some(vent) = readings.vent {
                assert!((in_kelvins(vent.value) - in_kelvins(s.vent)).abs() <= 1.2 + 0.25 + 1e-9);
            }
        }
        // Gauges zeroed at sea level read low by the difference of the air on the mountain.
        let trap = Instruments {
            gauge_zero: Some(Surroundings::SEA_LEVEL),
            ..Instruments::SHOP
        };
        let (true_low, seen_low) = (
            Instruments::SHOP
                .measure(&s, place, &[0.5; 16])
                .unwrap()
                .low_side
                .unwrap(),
            trap.measure(&s, place, &[0.5; 16]).unwrap().low_side.unwrap(),
        );
        let (Pressure::Gauge(right), Pressure::Gauge(wrong)) = (true_low.value, seen_low.value) else {
            unreachable!("gauges read gauge pressures")
        };
        assert!((right.pa() - wrong.pa() - 17_800.0).abs() < 7_500.0);
    }
}
