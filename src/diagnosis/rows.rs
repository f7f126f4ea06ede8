//! The shape of the tables: faults, what they do at rest, the atlas, checks and repairs, and what is seen.

use crate::expected::Source;
use crate::names::{Caution, Check, Expansion, Fault, Feature, Observation, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, TRIANGLE};
use crate::vehicle::System;

/// Severities per fault.
pub(super) const SEVERITIES: usize = 4;

/// One fault.
pub(super) struct FaultRow {
    pub(super) fault: Fault,
    /// The systems in which it exists, one bit each.
    pub(super) systems: u8,
    /// Chance before any reading, relative to the other faults.
    pub(super) prior: f64,
    /// What its severity is a measure of.
    pub(super) measure: &'static str,
    /// Chance of each severity, mild to severe.
    pub(super) weight: [f64; SEVERITIES],
    pub(super) at_rest: Option<AtRest>,
}

/// What a fault does to the pressure at rest, as a saturation temperature.
pub(super) struct AtRest {
    /// Shift at each severity, K.
    pub(super) size: [f64; SEVERITIES],
    /// Chance that it does not move although the fault is there.
    pub(super) no_change: f64,
}

impl FaultRow {
    /// Whether the fault exists in the system of this bit.
    pub(super) const fn exists(&self, bit: u8) -> bool {
        self.systems & bit != 0
    }
}

/// A number of the atlas, as the bits of an `f32`.
pub(super) type Bits = u32;

/// The number of these bits.
#[inline]
pub(super) const fn number(bits: Bits) -> f64 {
    f32::from_bits(bits) as f64
}

/// What one source says of the faults of one family of refrigerants with one expansion device.
pub(super) struct Page {
    pub(super) source: Source,
    /// Whether it covers R-744; otherwise it covers all other refrigerants.
    pub(super) carbon_dioxide: bool,
    pub(super) expansion: Expansion,
    pub(super) faults: &'static [FaultRows],
}

/// Where the shifts of a fault begin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum CountedFrom {
    /// The sound mean of the vehicle, as far as it is known.
    Vehicle,
    /// The sound mean of its kind: the compressor does not pump, so that what is known of this one vehicle no longer matters.
    Kind,
    /// The ambient: the compressor does not pump, so that neither mean nor scatter of a sound system matters.
    Ambient,
}

/// What it says of one fault.
pub(super) struct FaultRows {
    pub(super) fault: Fault,
    pub(super) counted_from: CountedFrom,
    /// Scale matrices about that mean and shift, in the squares of the features' units: of mild and middling severities, and of
    /// severe ones; the lower triangles, row by row.
    pub(super) scales: [[Bits; TRIANGLE]; 2],
    /// By group of compressors, fixed with a clutch, variable and electric; empty where the fault cannot exist.
    pub(super) rows: [&'static [ShiftRow]; 3],
}

impl FaultRows {
    /// Whether it hides every other fault, and what is known of the vehicle.
    pub(super) const fn nothing_pumps(&self) -> bool {
        !matches!(self.counted_from, CountedFrom::Vehicle)
    }
}

/// The shift of one severity.
pub(super) struct ShiftRow {
    pub(super) severe: bool,
    /// Chance of this severity.
    pub(super) weight: f32,
    /// Severity: least, mean and most.
    pub(super) severity: [f32; 3],
    /// Coefficients of 1, ambient, water and speed ([`crate::expected::SoundModel`]) for each feature.
    pub(super) shift: [[Bits; 4]; DIMENSIONS],
}

impl ShiftRow {
    /// How far it moves a feature at these conditions.
    #[inline]
    pub(super) fn shift_of(&self, feature: usize, few: &[f64; 4]) -> f64 {
        let [of_one, of_a, of_w, of_s] = self.shift[feature].map(number);
        let [one, a, w, s] = few;
        (of_one * one + of_w * w) + (of_a * a + of_s * s)
    }
}

/// What a check reveals.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Reveals {
    /// A figure.
    Feature(Feature),
    /// A yes or a no.
    Observation(Observation),
}

/// One further check.
pub(super) struct CheckRow {
    pub(super) check: Check,
    pub(super) reveals: Reveals,
    pub(super) minutes: f64,
    pub(super) money: f64,
    /// Whether the charge must be recovered first.
    pub(super) recovery: bool,
    /// Whether it can be done with the engine off.
    pub(super) at_rest: bool,
    /// Whether R-744 has no such check.
    pub(super) not_r744: bool,
    /// The systems in which the check exists, one bit each.
    pub(super) systems: u8,
    /// What can hurt in doing it, where the system calls for it; recovering the charge aside.
    pub(super) cautions: &'static [Caution],
    /// When it may come at all; `None` for any time.
    pub(super) once: Option<Once>,
}

/// When a check may come: where one of these faults is the likeliest, or where one of these checks is still to be made.
pub(super) struct Once {
    pub(super) leads: &'static [Fault],
    pub(super) or_open: &'static [Check],
}

/// What sets a fault right, and what that costs.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Repair {
    /// The fault.
    pub fault: Fault,
    /// Its time, min.
    pub minutes: f64,
    /// Its parts, in units of what a minute of work costs.
    pub money: f64,
    /// Whether the charge must be recovered first.
    pub recovery: bool,
    /// What can hurt, recovering the charge aside; [`super::repair_cautions`] lists all that a system calls for.
    pub cautions: &'static [Caution],
    /// What to do, in a line; [`Self::says_for`] gives it for any system.
    pub says: &'static str,
    /// The same for R-744, which is released and not recovered.
    pub says_r744: &'static str,
}

impl Repair {
    /// What to do in this system, in a line.
    ///
    /// ```
    /// use coldloop::diagnosis::repair;
    /// use coldloop::vehicle::System;
    /// use coldloop::{Compressor, Expansion, Fault, Refrigerant};
    /// let van = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
    /// assert!(repair(Fault::Overcharge).says_for(&van).starts_with("Release"));
    /// ```
    pub fn says_for(&self, system: &System) -> &'static str {
        if system.refrigerant == Refrigerant::R744 {
            self.says_r744
        } else {
            self.says
        }
    }
}

/// How likely the answer "yes" is; the table has one row per observation, in the order of its code.
pub(super) struct ObservationRow {
    /// How often either answer is noted wrongly.
    pub(super) mistaken: f64,
    /// Under a fault without a row.
    pub(super) otherwise: f64,
    /// Under each fault, in the order of its code.
    pub(super) yes: [f64; Fault::ALL.len()],
}

/// Answers that share a cause beyond the fault, and how strongly.
pub(super) struct Shared {
    pub(super) members: &'static [Observation],
    pub(super) correlation: f64,
}
