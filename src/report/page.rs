//! The page: the answer for a technician, as plain data in SI and ids.

use super::finding::Finding;
use crate::circuit::Estimate;
use crate::diagnosis::{Action, Evidence, Resting, Stop, TwoFaults};
use crate::intake::Judgements;
use crate::names::{
    AirSource, Caution, EntryError, ExpectedBasis, Fault, Feature, Observation, QualityNote, ReadingKind, RestFinding,
    Standing, Strength, VerdictKind,
};
use crate::units::RotationalSpeed;
use crate::vehicle::{Conditions, System};
use alloc::boxed::Box;
use alloc::vec::Vec;

/// Least probability of an explanation on the page.
pub(super) const TOLD_FROM: f64 = 0.02;
/// Least probability of an outcome whose meaning and next step are on the page; a lower one is printed as "under 1 %".
const FOLLOWED_FROM: f64 = 0.01;

/// The answer for a technician, in the order in which it is read.
///
/// Text, JSON and pictures are made from it. Quantities are plain SI with the unit in the name of the field, or in a [`Scale`]
/// beside them.
///
/// ```
/// use coldloop::{Fault, intake, report::Page};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let page = Page::of_visit(&visit)?;
/// assert_eq!(page.result.faults, [Fault::Undercharge]);
/// # Ok::<(), intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Page {
    /// The system.
    pub system: System,
    /// Its conditions.
    pub conditions: Conditions,
    /// Why the compressor must stand still; it is shown first.
    pub stop: Option<Stop>,
    /// Cautions that come before everything else: a high side near its limit, a circuit that must not be run, a test pressure that
    /// is too high.
    pub warnings: Vec<Caution>,
    /// The result.
    pub result: PageResult,
    /// What to do: the first step, then those to which its outcomes lead. Empty where nothing is left to do.
    pub steps: Vec<PageStep>,
    /// Cost until the vehicle is repaired; `None` where no plan was made.
    pub expected: Option<PageExpected>,
    /// Further checks, the most useful first, where there is no plan.
    pub further_checks: Vec<PageStep>,
    /// The readings with what is normal here today; empty for a system at rest, for which there are no bands.
    pub readings: Vec<PageReading>,
    /// The sources of these bands.
    pub basis: Option<ExpectedBasis>,
    /// The figures that follow from the readings.
    pub figures: Vec<PageFigure>,
    /// Why the likeliest explanation is preferred to the next.
    pub why: Option<PageWhy>,
    /// What limits the result.
    pub limits: Vec<PageLimit>,
    /// Cautions that belong to no step above.
    pub cautions: Vec<Caution>,
    /// What was done since, judged.
    pub proof: Option<Box<Judgements>>,
    /// What to read for the proof of a repair; `None` where nothing is left to prove.
    pub to_prove: Option<PageProof>,
}

/// The result of the readings.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageResult {
    /// Its kind.
    pub kind: VerdictKind,
    /// The fault that is named, the short list, or the two faults at once.
    pub faults: Vec<Fault>,
    /// The probability that one of these faults is the cause, or both where `both`; of "no fault" where none stands out.
    pub probability: f64,
    /// Whether `faults` are two faults at once.
    pub both: bool,
    /// Whether the pressure at rest of this refrigerant allows no fault to be named.
    pub bands_only: bool,
    /// The likeliest explanations, the likeliest first; empty where nothing was read or seen that is evidence for one of them.
    pub odds: Vec<PageOdds>,
    /// Two faults at once, where they were weighed.
    pub two_faults: Option<TwoFaults>,
    /// The probability of a cause that is not in the list.
    pub none_of_these: f64,
    /// The likeliest way in which the instruments mislead, with its probability.
    pub entry_error: Option<(EntryError, f64)>,
    /// What follows from the pressure at rest.
    pub rest: Option<RestFinding>,
    /// The arithmetic of that pressure.
    pub resting: Option<Resting>,
}

/// An explanation.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageOdds {
    /// The fault.
    pub fault: Fault,
    /// Its probability.
    pub probability: f64,
    /// Its severity in its own measure ([`crate::diagnosis::measure`]), low to high.
    pub severity: Option<(f64, f64)>,
}

/// Expected cost until the vehicle is repaired, in minutes of work, with parts counted as labour time.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageExpected {
    /// Following the plan.
    pub minutes: f64,
    /// Repairing in the best order without any check.
    pub without_checks_minutes: f64,
}

/// A step: something to check, a repair, or handing over.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageStep {
    /// What to do.
    pub action: Action,
    /// Its cautions, in the order in which they are shown directly above the step.
    pub cautions: Vec<Caution>,
    /// Its labour time, min; a recovery of the charge that is not yet paid is part of it.
    pub minutes: f64,
    /// Its parts, as minutes of work.
    pub parts_in_minutes: f64,
    /// Whether the charge has to be recovered for it now.
    pub recovers: bool,
    /// Its outcomes.
    pub outcomes: Vec<PageOutcome>,
}

/// An outcome of a step, and what follows from it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageOutcome {
    /// What is found.
    pub finding: Finding,
    /// Its probability.
    pub probability: f64,
    /// The fault that then leads.
    pub leading: Fault,
    /// Its probability then.
    pub leading_probability: f64,
    /// The place of the next step in [`Page::steps`]; `None` at the end.
    pub next: Option<usize>,
}

impl PageOutcome {
    /// Whether its meaning and the next step are shown.
    pub(super) fn is_followed(&self) -> bool {
        self.probability >= FOLLOWED_FROM
    }
}

/// A reading with what is normal here today.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageReading {
    /// The figure.
    pub feature: Feature,
    /// Unit and datum of the numbers.
    pub scale: Scale,
    /// What was measured.
    pub measured: Option<f64>,
    /// The middle of the normal range.
    pub median: f64,
    /// The ends of the 80 % band.
    pub band_80: (f64, f64),
    /// The ends of the 95 % band.
    pub band_95: (f64, f64),
    /// Standard deviations from the median, vehicle and instrument together.
    pub deviation: Option<f64>,
    /// The same as one of seven words.
    pub standing: Option<Standing>,
}

/// The unit and datum of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Scale {
    /// Pa above the air of the place.
    PaGauge,
    /// Pa as a difference.
    PaDifference,
    /// K as a point on the scale.
    Kelvin,
    /// K as a difference.
    Difference,
    /// Events per second.
    PerSecond,
    /// A ratio, without unit.
    Ratio,
}

/// A figure that follows from the readings.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageFigure {
    /// The kind of figure.
    pub kind: FigureKind,
    /// Unit and datum of the numbers.
    pub scale: Scale,
    /// Value and standard uncertainty.
    pub estimate: Estimate,
}

/// Which figure follows from the readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum FigureKind {
    /// Saturation temperature (dew) of the low side.
    Evaporating,
    /// Saturation temperature (dew) of the high side.
    Condensing,
    /// Pseudo-critical temperature at the high side, above the critical pressure.
    PseudoCritical,
    /// Condensing temperature above the ambient.
    CondensingAboveAmbient,
    /// Pseudo-critical temperature above the ambient.
    PseudoCriticalAboveAmbient,
    /// Superheat.
    Superheat,
    /// Subcooling.
    Subcooling,
    /// High side over low side, absolute.
    PressureRatio,
    /// Saturation temperature (dew) of the pressure at rest.
    SaturationAtRest,
}

/// Why one explanation is preferred to another.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageWhy {
    /// The explanation.
    pub fault: Fault,
    /// The likeliest other one.
    pub rival: Fault,
    /// The arguments, the weightiest first.
    pub arguments: Vec<PageArgument>,
}

/// One argument.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageArgument {
    /// The evidence.
    pub evidence: Evidence,
    /// Natural logarithm of the factor by which it changes the odds; positive argues for.
    pub log_odds: f64,
    /// The same as a word.
    pub strength: Strength,
    /// The standing of a figure, where the evidence is one.
    pub standing: Option<Standing>,
    /// Standard deviations of that figure.
    pub deviation: Option<f64>,
    /// The answer to a look, where the evidence is one.
    pub seen: Option<(Observation, bool)>,
}

/// What to read before a repair and again after it, and how.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageProof {
    /// Readings that were not taken yet; only what is read before and after is compared.
    pub before: Vec<ReadingKind>,
    /// Whether nothing was read with the system running.
    pub at_rest: bool,
    /// The engine speed to read at again.
    pub engine_speed: Option<RotationalSpeed>,
    /// The air source to read with again.
    pub air_source: Option<AirSource>,
}

/// What limits the result.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PageLimit {
    /// The note.
    pub note: QualityNote,
    /// The figure that it is about, where it is about one.
    pub feature: Option<Feature>,
}
