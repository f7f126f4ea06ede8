//! Makes: what all vehicles of one maker share, from the places of the ports to which value of a swinging needle is noted.

use super::draws::{UNIFORM, between, deviate};
use super::measure::{Habits, Needle};
use crate::error::Error;
use crate::names::{Compressor, Fault};
use crate::names::{HighPort, LowPort};
use crate::vehicle::description::hardware::{Hardware, Options};
use crate::vehicle::description::severity::{FaultCause, FaultSeverity};
use crate::vehicle::description::system::System;
use crate::vehicle::description::vehicle::{ClutchSense, FanDrive};
use core::ops::Range;

/// What all vehicles of one maker share.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Make {
    /// Where the high-side port is.
    pub high_port: HighPort,
    /// Where the low-side port is with a valve.
    pub low_port_valve: LowPort,
    /// Where it is with an orifice tube.
    pub low_port_orifice: LowPort,
    /// What opens the clutch of its valve systems in mild weather.
    pub valve_sense: ClutchSense,
    /// Part of the condenser's face behind an integrated receiver; `None` where the receiver stands alone.
    pub subcooler_share: Option<f64>,
    /// Effectiveness of the internal heat exchanger of its R-1234yf systems.
    pub exchanger_new: Option<f64>,
    /// The same of its systems with older refrigerants.
    pub exchanger_old: Option<f64>,
    /// Where between the least and the most the effectiveness of its exchangers for R-744 lies, 0 to 1.
    pub exchanger_r744: f64,
    /// Whether its valves stop opening at a limit of the evaporator pressure.
    pub valve_limited: bool,
    /// Whether its clutch compressors are of a rotary kind, without clearance volume but with leaks.
    pub rotary: bool,
    /// What drives the condenser fan of its belt-driven systems; electric ones have no fan on an engine.
    pub fan: FanDrive,
    /// Whether a fan that follows the pressure does so steplessly and over a wide range.
    pub fan_stepless: bool,
    /// High-side pressure below which a switch or sensor does not let its compressors run, Pa gauge; `None` where there is
    /// neither.
    pub start_pa: Option<f64>,
    /// Low-side pressure at which protection stops the compressor of its valve systems, Pa gauge.
    pub low_cut_out_pa: Option<f64>,
    /// How its compressors wear.
    pub wear: FaultCause,
    /// How its valves are stuck closed.
    pub shut: FaultCause,
    /// How its vehicles are measured.
    pub habits: Habits,
    /// Standard normal deviate of the size of its systems.
    pub size: f64,
    /// Those of the parameters, in the order of [`Hardware::values`].
    pub deviations: [f64; Hardware::COUNT],
}

/// The choices of a make: how many uniform numbers they take.
const CHOICES: usize = 22;

impl Make {
    /// How many uniform numbers one make takes.
    pub const UNIFORMS: usize = CHOICES + 1 + Hardware::COUNT;

    /// The numbered makes to fit with.
    pub const TO_FIT: Range<u32> = 0..48;

    /// The numbered makes to judge with: nothing is fitted to them.
    pub const TO_JUDGE: Range<u32> = 48..60;

    /// The make of this number: always the same one, out of the usual choices.
    ///
    /// A hash of the number and of a counter takes the place of the uniform numbers. Numbers from 0 to 47
    /// ([`Make::TO_FIT`]) are for fits, 48 to 59 ([`Make::TO_JUDGE`]) for what judges them; others are free.
    ///
    /// ```
    /// use coldloop::vehicle::Make;
    /// assert_eq!(Make::numbered(7), Make::numbered(7));
    /// assert_ne!(Make::numbered(7), Make::numbered(8));
    /// ```
    pub fn numbered(number: u32) -> Self {
        Self::of(
            &Options::USUAL,
            &core::array::from_fn(|index| hashed(number, index as u64)),
        )
    }

    /// The make that the uniform numbers (0 to 1) draw from these choices.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for numbers outside 0 to 1.
    ///
    /// ```
    /// use coldloop::vehicle::{HighPort, Make, Options};
    /// let middling = Make::drawn(&Options::USUAL, &[0.5; Make::UNIFORMS])?;
    /// assert_eq!(middling.high_port, HighPort::Liquid);
    /// assert!(middling.deviations.iter().all(|deviation| deviation.abs() < 1e-9));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn drawn(options: &Options, uniforms: &[f64; Self::UNIFORMS]) -> Result<Self, Error> {
        for uniform in uniforms {
            UNIFORM.check(*uniform)?;
        }
        Ok(Self::of(options, uniforms))
    }

    fn of(options: &Options, uniforms: &[f64; Self::UNIFORMS]) -> Self {
        let mut drawn = uniforms.iter().copied();
        let mut next = || drawn.next().unwrap_or(0.5);
        let high_port = if next() < options.liquid_port {
            HighPort::Liquid
        } else {
            HighPort::Discharge
        };
        let ports = next();
        let [low_port_valve, low_port_orifice] = options.evaporator_port.map(|part| {
            if ports < part {
                LowPort::Evaporator
            } else {
                LowPort::Compressor
            }
        });
        let sense = next();
        let valve_sense = if sense < options.valve_low_side_switch {
            ClutchSense::LowSide
        } else if sense > 1.0 - options.valve_no_low_limit {
            ClutchSense::Neither
        } else {
            ClutchSense::Fins
        };
        let subcooler_share = (next() < options.integrated_receiver).then_some(next());
        let [new, old] = [options.exchanger_new, options.exchanger_old];
        let [exchanger_new, exchanger_old] = [new, old].map(|part| (next() < part).then_some(next()));
        let exchanger_r744 = next();
        let valve_limited = next() >= options.valve_unlimited;
        let rotary = next() < options.rotary;
        let fan = next();
        let fan = if fan < options.fan_always {
            FanDrive::Always
        } else if fan > 1.0 - options.fan_engine {
            FanDrive::Engine
        } else {
            FanDrive::Pressure
        };
        let fan_stepless = next() < options.fan_stepless;
        let start_pa = (next() < options.start_switch).then_some(next());
        let low_cut_out_pa = (next() < options.low_cut_out).then_some(next());
        let wear = if next() < options.worn_by_displacement {
            FaultCause::LostDisplacement
        } else {
            FaultCause::Leakage
        };
        let shut = if next() < options.shut_without_bleed {
            FaultCause::ShutWithoutBleed
        } else {
            FaultCause::ShutWithBleed
        };
        let needle = next();
        let needle = if needle < options.needle_ends {
            Needle::Ends
        } else if needle > 1.0 - options.needle_engaged {
            Needle::Engaged
        } else {
            Needle::Mean
        };
        let habits = Habits {
            needle,
            vent_on_road: next() < options.vent_on_road,
        };
        let mut deviations = [0.0; Hardware::COUNT];
        for (deviation, uniform) in deviations.iter_mut().zip(&uniforms[CHOICES + 1..]) {
            *deviation = deviate(*uniform);
        }
        Self {
            high_port,
            low_port_valve,
            low_port_orifice,
            valve_sense,
            subcooler_share: subcooler_share.map(|u| between(options.subcooler_share, u)),
            exchanger_new: exchanger_new.map(|u| between(options.exchanger, u)),
            exchanger_old: exchanger_old.map(|u| between(options.exchanger, u)),
            exchanger_r744,
            valve_limited,
            rotary,
            fan,
            fan_stepless,
            start_pa: start_pa.map(|u| between(options.start_pa, u)),
            low_cut_out_pa: low_cut_out_pa.map(|u| between(options.low_cut_out_pa, u)),
            wear,
            shut,
            habits,
            size: deviate(uniforms[CHOICES]),
            deviations,
        }
    }

    /// A fault in the form in which a vehicle of this make has it: how its compressors wear and its valves are stuck
    /// shut is the make's, what takes the air from a condenser, where a liquid line is restricted and at which end a
    /// control is stuck is drawn by the uniform number (0 to 1).
    ///
    /// Errors: `NotFinite` and `OutOfRange` for a number outside 0 to 1.
    ///
    /// ```
    /// use coldloop::vehicle::{Make, System};
    /// use coldloop::{Compressor, Expansion, Fault, Refrigerant};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let make = Make::numbered(3);
    /// let worn = make.fault(&system, Fault::WornCompressor, 0.4, 0.5)?;
    /// assert_eq!(worn.cause, Some(make.wear));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn fault(&self, system: &System, fault: Fault, severity: f64, uniform: f64) -> Result<FaultSeverity, Error> {
        let options = &Options::USUAL;
        let u = UNIFORM.check(uniform)?;
        let caused = |cause| Ok(FaultSeverity::caused(cause, severity));
        if fault == Fault::WornCompressor {
            caused(self.wear)
        } else if fault == Fault::ExpansionValveStuckClosed {
            caused(self.shut)
        } else if fault == Fault::CondenserAirflowLoss {
            let [dead, slow, blocked] = options.condenser_causes;
            caused(if u < dead {
                FaultCause::FanDead
            } else if u < dead + slow {
                FaultCause::FanSlow
            } else if u < dead + slow + blocked {
                FaultCause::FaceBlocked
            } else {
                FaultCause::HotAirTakenIn
            })
        } else if fault == Fault::LiquidLineRestriction {
            caused(if u < options.restricted_before_clamp {
                FaultCause::BeforeClamp
            } else {
                FaultCause::BehindClamp
            })
        } else if fault == Fault::CompressorControlFault {
            caused(if system.compressor == Compressor::FixedClutch {
                FaultCause::SwitchOpensEarly
            } else if u < options.control_stuck_low {
                FaultCause::ControlStuckLow
            } else {
                FaultCause::ControlStuckHigh
            })
        } else {
            Ok(FaultSeverity::new(fault, severity))
        }
    }
}

/// A uniform number between 0 and 1, both excluded, for a number and a counter.
///
/// Source: the finalizer of SplitMix64, Steele, Lea & Flood 2014 (doi 10.1145/2660193.2660195), applied twice.
fn hashed(number: u32, counter: u64) -> f64 {
    const GOLDEN: u64 = 0x9e37_79b9_7f4a_7c15;
    let mixed =
        mixed(mixed(u64::from(number).wrapping_add(1).wrapping_mul(GOLDEN)).wrapping_add(counter.wrapping_mul(GOLDEN)));
    ((mixed >> 11) as f64 + 0.5) / (1u64 << 53) as f64
}

const fn mixed(mut z: u64) -> u64 {
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}
