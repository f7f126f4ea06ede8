//! Faults as changes of the parameters of a sound vehicle.

use crate::error::Error;
use crate::names::HighPort;
use crate::names::{Compressor, ErrorKind, Expansion, Fault, Quantity, Refrigerant};
use crate::numerics::GAS_J_MOL_K;
use crate::range::SEVERITY;
use crate::units::STANDARD_PRESSURE_PA;
use crate::vehicle::circuit::plant::{Control, Demand, Metering, Plant, Restrictions};
use crate::vehicle::description::severity::{FaultCause, FaultSeverity};
use crate::vehicle::description::system::System;
use crate::vehicle::description::vehicle::Vehicle;
use crate::vehicle::working_fluid::made::Composition;

/// The most of a flow or an area that a fault takes away: with none left the model has no solution.
const MOST_LOST: f64 = 0.985;
/// The most of what the compressor pumps, or of the condenser's face, that a fault takes away. Engineering judgement: from
/// there on nothing pumps, or nothing is cooled, whatever is left.
const MOST_WORN: f64 = 0.97;
/// Mass of gas at severity 1 per mass of air that the empty circuit holds at one atmosphere. Engineering judgement: trouble
/// begins above 2 % of air by weight (a trade association's article on contaminated refrigerant), which is about three times
/// this mass.
const MOST_GAS: f64 = 2.0;
/// The state of the air that an open circuit holds, with [`STANDARD_PRESSURE_PA`]. Source: ISO 2533:1975.
const STANDARD_K: f64 = 288.15;
/// The part of the evaporator's air that a block of ice still lets pass.
const THROUGH_ICE: f64 = 0.06;
/// Pressure drops at the reference flow of half-severe restrictions of high side, liquid and suction line, Pa.
/// Engineering judgement: a drier that is 11 K colder behind than before, which the trade takes for restricted, has lost
/// 3 bar from saturation; suction lines lose a third of a bar before the cooling suffers.
const HALF_SEVERE: Restrictions = Restrictions {
    discharge_pa: 1.6e5,
    liquid_pa: 2.5e5,
    suction_pa: 0.3e5,
};
/// How much hotter than the weather the air is that enters the condenser at worst, K. Source: Song, Fortier & Sarnia 2015
/// (SAE Int. J. Passeng. Cars - Mech. Syst. 8(1), 338): up to 18 K at idle.
const HOT_AIR_K: f64 = 18.0;
/// Part of a valve's area that crystals of ice leave open on average. Engineering judgement: they come and go.
const PAST_ICE: f64 = 0.01;
/// Part of the bleed that a tight seat stops.
const TIGHT_SEAT: f64 = 0.6;
/// Part of the air that passes the heater core when its door is stuck wide open. Engineering judgement: a door that should be
/// at cold, and a core that takes half of the air.
const MOST_HEATED: f64 = 0.45;
/// How far a low limit shifts at worst: a switch (Pa) and a thermostat (K). Engineering judgement.
const EARLY_PA: f64 = 117e3;
const EARLY_K: f64 = 13.0;

/// Whether a fault can happen to a system: a TXV does not clog as an orifice tube does, and only belt-driven
/// compressors have a clutch, which externally controlled ones may go without.
pub(in crate::vehicle) const fn exists(fault: Fault, system: &System) -> bool {
    let valve = matches!(system.expansion, Expansion::Txv);
    match fault {
        Fault::ExpansionValveStuckOpen | Fault::ExpansionValveStuckClosed => valve,
        Fault::OrificeRestricted => !valve,
        Fault::ClutchNotEngaged | Fault::ClutchSlipping => !matches!(system.compressor, Compressor::Electric),
        Fault::NoFault
        | Fault::WornCompressor
        | Fault::Undercharge
        | Fault::Overcharge
        | Fault::CondenserAirflowLoss
        | Fault::NonCondensables
        | Fault::LiquidLineRestriction
        | Fault::EvaporatorAirflowLoss
        | Fault::EvaporatorIcing
        | Fault::CompressorControlFault
        | Fault::MoistureIcing
        | Fault::HeaterAirMixing
        | Fault::HighSideRestriction
        | Fault::SuctionLineRestriction
        | Fault::WrongRefrigerant
        | Fault::GaugeError => true,
    }
}

/// What is in the circuit.
///
/// Errors: `NotFinite` and `OutOfRange` for a severity outside 0 to 1; `NotAvailable` for more components than a mixture
/// may have.
pub(in crate::vehicle) fn charged_with(system: &System, faults: &[FaultSeverity]) -> Result<Composition, Error> {
    let own = system.refrigerant;
    let usual = if own == Refrigerant::R134a {
        Refrigerant::R1234yf
    } else {
        Refrigerant::R134a
    };
    let wrong = faults.iter().find(|f| f.fault == Fault::WrongRefrigerant);
    match wrong {
        None => Composition::of(own, None),
        Some(wrong) => {
            let share = SEVERITY.check(wrong.severity)?;
            Composition::of(own, Some((wrong.other.unwrap_or(usual), share)))
        }
    }
}

/// Whether the faults keep the compressor from being driven.
pub(in crate::vehicle) fn stands_still(faults: &[FaultSeverity]) -> bool {
    faults
        .iter()
        .any(|f| f.fault == Fault::ClutchNotEngaged && f.severity > 0.0)
}

/// What the faults do to the mass in the circuit, kg.
pub(in crate::vehicle) fn charge_kg(vehicle: &Vehicle, faults: &[FaultSeverity]) -> f64 {
    let mut charge_kg = vehicle.charge.kg();
    for f in faults {
        if f.fault == Fault::Undercharge {
            charge_kg *= 1.0 - f.severity;
        } else if f.fault == Fault::Overcharge {
            charge_kg *= 1.0 + f.severity;
        }
    }
    charge_kg
}

/// What the faults do to a plant.
///
/// Errors: `NotFinite` and `OutOfRange` for a severity outside 0 to 1; `NotAvailable` for a fault that the system
/// cannot have.
pub(in crate::vehicle) fn impose(plant: &mut Plant, vehicle: &Vehicle, faults: &[FaultSeverity]) -> Result<(), Error> {
    for f in faults {
        let severity = SEVERITY.check(f.severity)?;
        if !exists(f.fault, &vehicle.system) {
            return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
        }
        if f.cause.is_some_and(|cause| cause.fault() != f.fault) {
            return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
        }
        let left = 1.0 - severity * MOST_LOST;
        let pumped = 1.0 - severity * MOST_WORN;
        let tight = severity / (1.03 - severity);
        let tight = tight * tight;
        match f.fault {
            Fault::NoFault
            | Fault::GaugeError
            | Fault::WrongRefrigerant
            | Fault::ClutchNotEngaged
            | Fault::Overcharge => {}
            Fault::Undercharge => plant.leaked = severity > 0.0,
            Fault::WornCompressor => match f.cause {
                Some(FaultCause::LostDisplacement) => plant.drive.lost = 1.0 - (1.0 - plant.drive.lost) * pumped,
                _ => plant.drive.leakage = 1.0 - (1.0 - plant.drive.leakage) * pumped,
            },
            Fault::CondenserAirflowLoss => match f.cause {
                Some(FaultCause::FanDead) if severity > 0.0 => plant.draught.slow_down(0.0),
                Some(FaultCause::FaceBlocked) => plant.draught.block(pumped),
                Some(FaultCause::HotAirTakenIn) => plant.draught.standing.t_k += severity * HOT_AIR_K,
                _ => plant.draught.slow_down(left),
            },
            Fault::NonCondensables => {
                let h = &vehicle.hardware;
                let volume_m3 = h.condenser_volume_m3
                    + h.discharge_volume_m3
                    + h.liquid_volume_m3
                    + h.suction_volume_m3
                    + h.evaporator_volume_m3
                    + if plant.receiver {
                        h.receiver_volume_m3
                    } else {
                        h.accumulator_volume_m3
                    };
                plant.gas_mol += severity * MOST_GAS * STANDARD_PRESSURE_PA * volume_m3 / (GAS_J_MOL_K * STANDARD_K);
            }
            Fault::LiquidLineRestriction => {
                plant.restrictions.liquid_pa += HALF_SEVERE.liquid_pa * tight;
                plant.clamp_before = f.cause == Some(FaultCause::BehindClamp);
            }
            Fault::HighSideRestriction => {
                plant.restrictions.discharge_pa += HALF_SEVERE.discharge_pa * tight;
                match f.cause {
                    Some(FaultCause::BehindHighPort) => plant.high_port = HighPort::Discharge,
                    Some(FaultCause::BeforeHighPort) => plant.high_port = HighPort::Liquid,
                    _ => {}
                }
            }
            Fault::SuctionLineRestriction => plant.restrictions.suction_pa += HALF_SEVERE.suction_pa * tight,
            Fault::ExpansionValveStuckOpen => match &mut plant.front.metering {
                Metering::Valve(valve) => valve.least = valve.least.max(severity),
                Metering::Electronic(valve) => valve.least = valve.least.max(severity),
                Metering::Orifice(_) => {}
            },
            Fault::ExpansionValveStuckClosed => match &mut plant.front.metering {
                Metering::Valve(valve) => {
                    valve.most = valve.most.min((1.0 - severity) * (1.0 - severity));
                    if f.cause == Some(FaultCause::ShutWithoutBleed) {
                        valve.bleed *= 1.0 - severity * TIGHT_SEAT;
                    }
                }
                Metering::Electronic(valve) => valve.most = valve.most.min(1.0 - severity),
                Metering::Orifice(_) => {}
            },
            Fault::OrificeRestricted | Fault::MoistureIcing => match &mut plant.front.metering {
                Metering::Valve(valve) => valve.area_m2 *= PAST_ICE + (1.0 - PAST_ICE) * left * left,
                Metering::Electronic(valve) => valve.area_m2 *= left,
                Metering::Orifice(orifice) => orifice.free *= left,
            },
            Fault::EvaporatorAirflowLoss => plant.front.lose_air(left),
            Fault::EvaporatorIcing => {
                plant.front.lose_air(1.0 - severity * (1.0 - THROUGH_ICE));
                plant.control = Control::None;
                plant.icing = true;
            }
            Fault::CompressorControlFault => control(plant, vehicle, f.cause, severity),
            Fault::ClutchSlipping => plant.drive.speed_hz *= pumped,
            Fault::HeaterAirMixing => plant.cabin.heated = plant.cabin.heated.max(severity * MOST_HEATED),
        }
    }
    Ok(())
}

/// A control that does not do what it should.
fn control(plant: &mut Plant, vehicle: &Vehicle, cause: Option<FaultCause>, severity: f64) {
    let Demand { least, most } = plant.demand;
    match cause {
        Some(FaultCause::ControlStuckHigh) => {
            plant.demand.least = least + severity * (most - least);
            // A clutch that no longer disengages.
            plant.icing |= vehicle.cycles() && severity > 0.0;
        }
        Some(FaultCause::SwitchOpensEarly) => {
            let h = &mut plant.hardware;
            h.switch_opens_pa += severity * EARLY_PA;
            h.switch_band_pa *= 1.0 - 0.5 * severity;
            h.thermostat_opens_k += severity * EARLY_K;
            match &mut plant.control {
                Control::None => {}
                Control::LowSide { set_pa } | Control::Internal { set_pa, .. } => *set_pa += severity * EARLY_PA,
                Control::Fin { set_k } | Control::Air { set_k } => *set_k += severity * EARLY_K,
            }
        }
        _ => plant.demand.most = most - severity * MOST_WORN * (most - least),
    }
}
