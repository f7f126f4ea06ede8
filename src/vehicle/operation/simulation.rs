//! The result of a simulation: readings, states, heat flows.

use crate::error::Error;
use crate::names::{HighPort, LowPort};
use crate::units::{
    AbsolutePressure, Frequency, Mass, MassFlow, Power, SpecificEnergy, SpecificEntropy, Temperature,
    TemperatureDifference, in_kelvins, kelvins, kelvins_difference,
};
use crate::vehicle::circuit::cycle::Cycle;
use crate::vehicle::circuit::plant::{Plant, Warmth};
use crate::vehicle::circuit::unknowns::Point;
use crate::vehicle::circuit::upper::Upper;
use crate::vehicle::description::vehicle::Vehicle;

/// A named state of the refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StatePoint {
    /// Absolute pressure; of the refrigerant alone where gas is mixed in.
    pub pressure: AbsolutePressure,
    /// Temperature.
    pub temperature: Temperature,
    /// Specific enthalpy.
    pub enthalpy: SpecificEnergy,
    /// Specific entropy.
    pub entropy: SpecificEntropy,
    /// Mass fraction of vapour; 1 where superheated, 0 where subcooled.
    pub quality: f64,
}

/// The states around the circuit.
///
/// ```
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R1234yf, Expansion::Txv, Compressor::VariableInternal);
/// let day = Conditions::new(celsius(32.0), Surroundings::at_altitude(1_600.0)?);
/// let states = simulate(&Vehicle::typical(system, VehicleClass::Van)?, &day, &[])?.states;
/// assert!(states.discharge.pressure > states.suction.pressure);
/// // Throttling keeps the enthalpy.
/// let lost = states.liquid.enthalpy.j_kg() - states.evaporator_inlet.enthalpy.j_kg();
/// assert!(lost.abs() < 1.0 && states.evaporator_inlet.quality > 0.0);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StatePoints {
    /// At the compressor inlet.
    pub suction: StatePoint,
    /// At the compressor outlet.
    pub discharge: StatePoint,
    /// Behind the condenser and its receiver.
    pub condenser_outlet: StatePoint,
    /// Before the expansion device.
    pub liquid: StatePoint,
    /// Before the evaporator.
    pub evaporator_inlet: StatePoint,
    /// Behind the evaporators.
    pub evaporator_outlet: StatePoint,
}

/// The limits between which the pressures swing as the clutch cycles.
///
/// ```
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
/// let mild = Conditions::new(celsius(20.0), Surroundings::at_altitude(1_600.0)?);
/// let read = simulate(&Vehicle::typical(system, VehicleClass::Car)?, &mild, &[])?;
/// let swing = read.swing.expect("the clutch cycles in mild weather");
/// assert!(swing.low_side.0 < read.low_side && read.low_side < swing.low_side.1);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Swing {
    /// Low side: lowest, when the clutch opens, and highest, when it closes.
    pub low_side: (AbsolutePressure, AbsolutePressure),
    /// High side: lowest, when the clutch closes, and highest, when it opens.
    pub high_side: (AbsolutePressure, AbsolutePressure),
    /// How often the clutch engages.
    pub cycles: Frequency,
    /// Part of the time that the clutch is engaged.
    pub engaged: f64,
}

/// What eyes would see.
///
/// ```
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, FaultSeverity, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Fault, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let van = Vehicle::typical(system, VehicleClass::Van)?;
/// let day = Conditions::new(celsius(32.0), Surroundings::at_altitude(1_600.0)?);
/// let short = simulate(&van, &day, &[FaultSeverity::new(Fault::Undercharge, 0.5)])?;
/// assert!(short.looks.bubbles && !simulate(&van, &day, &[])?.looks.bubbles);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct VisibleSigns {
    /// Whether the compressor is driven, at least part of the time.
    pub clutch_engaged: bool,
    /// Whether bubbles pass a sight glass in the liquid line.
    pub bubbles: bool,
    /// Whether the evaporator frosts.
    pub evaporator_frosts: bool,
    /// Whether the suction line is below freezing.
    pub suction_frosts: bool,
    /// Whether the liquid line is below freezing before the expansion device.
    pub liquid_frosts: bool,
}

/// What the system reads, with the states behind it.
///
/// ```
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, FaultSeverity, System, Vehicle, simulate};
/// use coldloop::{Compressor, Expansion, Fault, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal);
/// let van = Vehicle::typical(system, VehicleClass::Van)?;
/// let day = Conditions::new(celsius(29.0), Surroundings::at_altitude(1_600.0)?);
/// let (sound, short) = (simulate(&van, &day, &[])?, simulate(&van, &day, &[FaultSeverity::new(Fault::Undercharge, 0.6)])?);
/// assert!(short.vent > sound.vent && short.capacity < sound.capacity);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Simulation {
    /// Low-side pressure at its port, mean.
    pub low_side: AbsolutePressure,
    /// High-side pressure at its port, mean.
    pub high_side: AbsolutePressure,
    /// Air at the vents.
    pub vent: Temperature,
    /// Cabin air.
    pub cabin: Temperature,
    /// Suction line at the compressor as a clamp on it reads; the refrigerant's own is that of its state.
    pub suction_line: Temperature,
    /// Discharge line at the compressor as a clamp on it reads.
    pub discharge_line: Temperature,
    /// Liquid line before the expansion device as a clamp on it reads.
    pub liquid_line: Temperature,
    /// Line behind the condenser.
    pub condenser_outlet: Temperature,
    /// How often the clutch engages; zero where it stays engaged.
    pub clutch_cycles: Frequency,
    /// The limits between which the pressures swing, where the clutch cycles.
    pub swing: Option<Swing>,
    /// What eyes would see.
    pub looks: VisibleSigns,
    /// States around the circuit; those at rest where the compressor does not turn.
    pub states: StatePoints,
    /// Heat that the evaporators take up.
    pub capacity: Power,
    /// Heat that the condenser gives off.
    pub rejected: Power,
    /// Shaft or motor power.
    pub power: Power,
    /// Capacity over power; zero at rest.
    pub cop: f64,
    /// Refrigerant flow.
    pub flow: MassFlow,
    /// Superheat at the evaporator outlet, from dew.
    pub superheat: TemperatureDifference,
    /// Subcooling before the expansion device, from bubble at the high-side reading.
    pub subcooling: TemperatureDifference,
    /// Temperature behind the evaporator.
    pub evaporator_air: Temperature,
    /// Part of stroke, running time or speed in use.
    pub demand: f64,
    /// Flow of the compressor over what its displacement sweeps; zero at rest.
    pub volumetric_efficiency: f64,
    /// Work of isentropic compression over the work done; zero at rest.
    pub isentropic_efficiency: f64,
    /// Part of receiver or accumulator that liquid fills.
    pub fill: f64,
    /// Opening of the valve, or free part of the orifice.
    pub opening: f64,
    /// Refrigerant in the circuit.
    pub charge: Mass,
    /// Largest relative imbalance of the solved balances.
    pub residual: f64,
    /// Evaluations of the circuit that all its searches took; at most 2,400.
    pub rounds: usize,
}

/// The pressure at the low-side port, Pa absolute.
pub(in crate::vehicle) const fn low_side_pa(vehicle: &Vehicle, upper: &Upper) -> f64 {
    match vehicle.low_port {
        LowPort::Evaporator => upper.outlet.p_pa,
        LowPort::Compressor => upper.suction_pa,
    }
}

impl Plant<'_> {
    /// The pressure at the high-side port, Pa absolute.
    pub(in crate::vehicle) const fn high_side_pa(&self, upper: &Upper) -> f64 {
        match self.high_port {
            HighPort::Discharge => upper.discharge_pa,
            HighPort::Liquid => upper.condenser_pa,
        }
    }

    /// The readings and observations of a steady state.
    pub(in crate::vehicle) fn seen(
        &self,
        vehicle: &Vehicle,
        point: &Point,
        cycle: &Cycle,
    ) -> Result<Simulation, Error> {
        let upper = &cycle.upper;
        let states = self.states(cycle)?;
        let capacity_w = cycle.front.heat_w + cycle.rear.map_or(0.0, |rear| rear.heat_w);
        let power_w = upper.compression.power_w;
        let high_side_pa = self.high_side_pa(upper);
        let bay_k = self.cabin.outside_k + self.hardware.bay_rise_k;
        let clamped = |pipe_k: f64| pipe_k + self.hardware.clamp_pull * (bay_k - pipe_k);
        let bubbling = (upper.outlet_j_kg - upper.liquid.liquid_j_kg) / upper.liquid.latent_j_kg();
        let vent_k = self.cabin.vent_k(cycle.front.stream_k);
        let capacity_w_k = match self.front.warmth {
            Warmth::Air { flow_kg_s, .. } => flow_kg_s * self.air_cp_j_kg_k,
            Warmth::Coolant {
                flow_kg_s, cp_j_kg_k, ..
            } => flow_kg_s * cp_j_kg_k,
        };
        let critical = self.fluid.critical();
        let bubble_k = if high_side_pa < critical.p_pa {
            self.fluid.bubble_k(high_side_pa)?
        } else {
            critical.t_k
        };
        let liquid_line_k = if self.clamp_before {
            in_kelvins(states.condenser_outlet.temperature)
        } else {
            in_kelvins(states.liquid.temperature)
        };
        Ok(Simulation {
            low_side: AbsolutePressure::from_pa(low_side_pa(vehicle, upper)),
            high_side: AbsolutePressure::from_pa(high_side_pa),
            vent: kelvins(vent_k),
            cabin: kelvins(self.cabin.air_k(vent_k, capacity_w_k)),
            suction_line: kelvins(clamped(in_kelvins(states.suction.temperature))),
            discharge_line: kelvins(clamped(in_kelvins(states.discharge.temperature))),
            liquid_line: kelvins(clamped(liquid_line_k)),
            condenser_outlet: kelvins(in_kelvins(states.condenser_outlet.temperature)),
            clutch_cycles: Frequency::from_hz(0.0),
            swing: None,
            looks: VisibleSigns {
                clutch_engaged: true,
                bubbles: bubbling > 0.005 && upper.liquid.p_pa < critical.p_pa,
                evaporator_frosts: cycle.front.freezes(),
                suction_frosts: in_kelvins(states.suction.temperature) < 272.15,
                liquid_frosts: in_kelvins(states.liquid.temperature) < 272.15,
            },
            states,
            capacity: Power::from_w(capacity_w),
            rejected: Power::from_w(upper.heat_w),
            power: Power::from_w(power_w),
            cop: capacity_w / power_w,
            flow: MassFlow::from_kg_s(upper.compression.flow_kg_s),
            superheat: kelvins_difference(in_kelvins(states.evaporator_outlet.temperature) - upper.outlet.dew_k),
            subcooling: kelvins_difference(bubble_k - liquid_line_k),
            evaporator_air: kelvins(cycle.front.stream_k),
            demand: point.demand,
            volumetric_efficiency: upper.compression.volumetric,
            isentropic_efficiency: upper.compression.isentropic,
            fill: if self.receiver {
                upper.receiver_fill
            } else {
                cycle.accumulator_fill
            },
            opening: cycle.opening,
            charge: Mass::from_kg(cycle.mass_kg),
            residual: cycle.residual.iter().map(|r| libm::fabs(*r)).fold(0.0, f64::max),
            rounds: 0,
        })
    }

    fn states(&self, cycle: &Cycle) -> Result<StatePoints, Error> {
        let fluid = &self.fluid;
        let upper = &cycle.upper;
        let at = |p_pa: f64, h_j_kg: f64| -> Result<StatePoint, Error> {
            let state = fluid.at_enthalpy(&fluid.saturation(p_pa)?, h_j_kg)?;
            Ok(StatePoint {
                pressure: AbsolutePressure::from_pa(p_pa),
                temperature: kelvins(state.t_k),
                enthalpy: SpecificEnergy::from_j_kg(h_j_kg),
                entropy: SpecificEntropy::from_j_kg_k(state.s_j_kg_k),
                quality: state.quality,
            })
        };
        Ok(StatePoints {
            suction: at(upper.suction_pa, upper.suction.h_j_kg)?,
            discharge: at(upper.discharge_pa, upper.compression.h_j_kg)?,
            condenser_outlet: at(upper.condensing.p_pa, upper.outlet_j_kg)?,
            liquid: at(upper.liquid.p_pa, upper.liquid_j_kg)?,
            evaporator_inlet: at(cycle.evaporating.p_pa, upper.liquid_j_kg)?,
            evaporator_outlet: at(upper.outlet.p_pa, upper.evaporated_j_kg)?,
        })
    }
}
