//! What a diagnosis says.

use super::limits::Stop;
use super::list::List;
use super::rest::Resting;
use crate::circuit::Derived;
use crate::expected::{Band, Bands};
use crate::names::{
    Caution, Check, EntryError, ExpectedBasis, Fault, Feature, Observation, QualityNote, RestFinding, ResultKind,
    VerdictKind,
};

/// The answer: what the readings allow one to say.
///
/// Reasons and plan belong to the [`Judgement`](super::Judgement) that it is taken from.
///
/// ```
/// use coldloop::diagnosis::{Settings, diagnose};
/// use coldloop::{Fault, intake};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let answer = diagnose(&case, &Settings::default())?;
/// assert_eq!(answer.faults[0].fault, Fault::Undercharge);
/// let leak_or_overcharge = answer.probability_of(&[Fault::Undercharge, Fault::Overcharge]);
/// assert!(leak_or_overcharge > 0.9 && leak_or_overcharge <= 1.0);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Diagnosis {
    /// What the readings allow one to say.
    pub verdict: Verdict,
    /// Every fault that exists in the system, the likeliest first.
    pub faults: List<RankedFault, { Fault::ALL.len() }>,
    /// Probability that the cause is none of the list.
    pub none_of_these: f64,
    /// What a sound system shows here; `None` for a system at rest.
    pub expected: Option<Bands>,
    /// What these bands are based on.
    pub basis: Option<ExpectedBasis>,
    /// Superheat, subcooling, pressure ratio and the other derived figures, each with its uncertainty.
    pub derived: Derived,
    /// The measured figures, each compared with sound systems.
    pub deviations: List<Deviation, { Feature::ALL.len() }>,
    /// The reading that fits the leading explanation badly.
    pub out_of_line: Option<Feature>,
    /// The finding from the pressure at rest; `None` for a running system.
    pub rest: Option<RestFinding>,
    /// The numbers behind that finding; `None` for a running system, and where the two sides differ.
    pub resting: Option<Resting>,
    /// The likeliest way in which the gauges mislead, with its probability; `None` below 1 %.
    pub entry_error: Option<(EntryError, f64)>,
    /// Two faults at once, considered when no single fault explains the readings well; their probability is not part of those
    /// in `faults`.
    pub two_faults: Option<TwoFaults>,
    /// Why the compressor must stand still, the first thing to tell; `None` where it may run.
    pub stop: Option<Stop>,
    /// What to do next: the first step of [`Judgement::plan`](super::Judgement::plan) for the same settings. `None` where nothing is left to do, and where it
    /// was not asked for ([`Settings::next_checks`](super::Settings::next_checks)).
    pub next_step: Option<Action>,
    /// Further checks, the most useful first; where the next step is a check, it is the first of them.
    pub next_checks: List<RankedCheck, 6>,
    /// What can hurt, and what the law asks.
    pub cautions: List<Caution, { Caution::ALL.len() }>,
    /// What made the answer less certain.
    pub quality: List<QualityNote, { QualityNote::ALL.len() }>,
}

/// What the readings allow one to say.
///
/// ```
/// use coldloop::diagnosis::{Settings, diagnose};
/// use coldloop::{Fault, VerdictKind, intake};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let verdict = diagnose(&case, &Settings::default())?.verdict;
/// assert_eq!(verdict.kind, VerdictKind::NamedFault);
/// assert_eq!(verdict.faults[..], [Fault::Undercharge]);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Verdict {
    /// Its kind.
    pub kind: VerdictKind,
    /// The fault that is named, the short list, or the two faults that are there at once; empty when the system is sound, nothing fits or little was read.
    pub faults: List<Fault, 4>,
    /// The likeliest fault after the leading one, where it is likely enough to matter; it may also be in `faults`.
    pub rival: Option<Fault>,
}

/// One fault with its probability and severity.
///
/// ```
/// use coldloop::diagnosis::{Settings, diagnose};
/// use coldloop::{intake};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let answer = diagnose(&case, &Settings::default())?;
/// let first = &answer.faults[0];
/// let (least, most) = first.severity.expect("a leading fault has a severity");
/// assert!(first.probability > answer.faults[1].probability && least < most);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct RankedFault {
    /// The fault.
    pub fault: Fault,
    /// Its probability after all readings and observations.
    pub probability: f64,
    /// The severities that explain the readings, in the fault's own measure ([`super::measure`]); `None` where it has none.
    pub severity: Option<(f64, f64)>,
    /// The likeliest other explanation, against which [`Reasons::because`](super::Reasons::because) argues.
    pub rival: Fault,
}

/// Two faults at once, weighed against all single explanations.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TwoFaults {
    /// The likeliest pair.
    pub faults: [Fault; 2],
    /// Its probability, when pairs and single explanations are weighed together.
    pub probability: f64,
    /// Probability of any pair.
    pub any_pair: f64,
}

/// One measured figure, compared with sound systems.
///
/// ```
/// use coldloop::diagnosis::{Settings, diagnose};
/// use coldloop::{Feature, intake};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let answer = diagnose(&case, &Settings::default())?;
/// let low_side = answer.deviations.iter().find(|d| d.feature == Feature::LowSide).expect("it was read");
/// assert!(low_side.measured < low_side.expected.median && low_side.deviation < 0.0);
/// # Ok::<(), intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Deviation {
    /// The figure.
    pub feature: Feature,
    /// Its measured value: K (points as temperatures, differences as such), or ln(1 + engagements per minute).
    pub measured: f64,
    /// Standard uncertainty from the instruments.
    pub standard_uncertainty: f64,
    /// The band of sound systems, in the same unit.
    pub expected: Band<f64>,
    /// Distance from the median in standard deviations, those of vehicle and instrument together: the normal quantile with the
    /// same probability below it.
    pub deviation: f64,
}

/// A piece of evidence.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Evidence {
    /// How common the faults are before anything is read.
    Prior,
    /// A figure from the readings.
    Feature(Feature),
    /// Something seen.
    Observation(Observation),
}

/// By how much one piece of evidence changes the odds between two faults.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Contribution {
    /// The evidence.
    pub evidence: Evidence,
    /// Natural logarithm of the factor by which it changes the odds; positive argues for, negative against.
    pub log_odds: f64,
}

/// A further check: what it costs, what it saves and how it can come out.
///
/// ```
/// use coldloop::diagnosis::{Settings, diagnose};
/// use coldloop::{intake};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let answer = diagnose(&case, &Settings::default())?;
/// let total = |check: &coldloop::diagnosis::RankedCheck| check.outcomes.iter().map(|outcome| outcome.probability).sum::<f64>();
/// assert!(answer.next_checks.iter().all(|check| (total(check) - 1.0).abs() < 1e-9));
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct RankedCheck {
    /// The check.
    pub check: Check,
    /// Its labour time, min.
    pub minutes: f64,
    /// Its materials, as minutes of work.
    pub parts_in_minutes: f64,
    /// By how much the check lowers the expected cost until the vehicle is repaired, in minutes of work, compared with going on
    /// without a check now; its own cost is included. `None` for a check that has to come first in any case.
    pub saving: Option<f64>,
    /// How it can come out.
    pub outcomes: List<Outcome, 3>,
}

/// How a check can come out, and what that would mean.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Outcome {
    /// The result.
    pub result: ResultKind,
    /// The question that is answered; `None` for a figure that is read, and where all of several questions are answered with
    /// no.
    pub observation: Option<Observation>,
    /// Its probability.
    pub probability: f64,
    /// The fault that would then lead.
    pub leading: Fault,
    /// Its probability then.
    pub leading_probability: f64,
}

impl Outcome {
    pub(super) const BLANK: Self = Self {
        result: ResultKind::No,
        observation: None,
        probability: 0.0,
        leading: Fault::NoFault,
        leading_probability: 0.0,
    };
}

impl Verdict {
    /// A verdict that names no fault.
    pub(super) const fn of(kind: VerdictKind) -> Self {
        Self {
            kind,
            faults: List::new(Fault::NoFault),
            rival: None,
        }
    }
}

impl RankedFault {
    pub(super) const BLANK: Self = Self {
        fault: Fault::NoFault,
        probability: 0.0,
        severity: None,
        rival: Fault::NoFault,
    };
}

/// The most steps that a plan can have: one, three after it, and three after each of those.
pub const STEPS: usize = 13;

/// What to do next, and what then.
///
/// ```
/// use coldloop::diagnosis::{Action, Settings, judge};
/// use coldloop::{Fault, intake};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let settings = Settings::default();
/// let plan = judge(&case, &settings)?.plan(&settings);
/// assert_eq!(plan.steps[0].action, Action::Repair(Fault::Undercharge));
/// assert!(plan.expected_minutes < plan.without_checks_minutes);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Plan {
    /// The steps, starting with the first; each branch of a step gives the index of the next one.
    pub steps: List<Step, STEPS>,
    /// Expected cost until the vehicle is repaired when the plan is followed, in minutes of work.
    pub expected_minutes: f64,
    /// The same without any further check: repairs in the best order, and handing over when none of them helped.
    pub without_checks_minutes: f64,
}

/// A step of a plan.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Step {
    /// What to do.
    pub action: Action,
    /// Probability of getting here.
    pub probability: f64,
    /// Its labour time, min; a recovery of the charge that is not yet paid is part of it.
    pub minutes: f64,
    /// Its parts and materials, as minutes of work.
    pub parts_in_minutes: f64,
    /// Whether the charge has to be recovered for it now.
    pub recovers: bool,
    /// How it can come out.
    pub branches: List<Branch, 3>,
}

/// What a step of a plan does.
///
/// ```
/// use coldloop::diagnosis::{Action, Settings, diagnose, repair};
/// use coldloop::intake;
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let says = match diagnose(&case, &Settings::default())?.next_step {
///     Some(Action::Check(check)) => check.description(),
///     Some(Action::Repair(fault)) => repair(fault).says,
///     _ => "Hand over.",
/// };
/// assert!(says.starts_with("Recover"));
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[non_exhaustive]
pub enum Action {
    /// A look or a reading.
    Check(Check),
    /// Setting right a fault ([`super::repair`]) and looking whether it helped.
    Repair(Fault),
    /// Handing over to somebody who knows more, before parts are changed one after the other
    /// ([`super::Prices::unknown`]); what is found is then set right.
    HandOver,
}

/// How a step can come out, and what then.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Branch {
    /// The result; of a repair, whether it helped.
    pub result: ResultKind,
    /// The question that is answered, as in [`Outcome::observation`].
    pub observation: Option<Observation>,
    /// Its probability once the step is taken.
    pub probability: f64,
    /// The fault that then leads; of a repair that helped, the one that it was.
    pub leading: Fault,
    /// Its probability then.
    pub leading_probability: f64,
    /// Index of the next step in [`Plan::steps`]; `None` at the end of the plan.
    pub next: Option<usize>,
}

impl Plan {
    pub(crate) const EMPTY: Self = Self {
        steps: List::new(Step::BLANK),
        expected_minutes: 0.0,
        without_checks_minutes: 0.0,
    };

    /// Empties the plan in place, so that no second plan takes up stack.
    pub(crate) const fn clear(&mut self) {
        self.steps.clear();
        (self.expected_minutes, self.without_checks_minutes) = (0.0, 0.0);
    }
}

impl Step {
    pub(super) const BLANK: Self = Self {
        action: Action::Check(Check::RunAndRead),
        probability: 0.0,
        minutes: 0.0,
        parts_in_minutes: 0.0,
        recovers: false,
        branches: List::new(Branch::BLANK),
    };
}

impl Branch {
    pub(super) const BLANK: Self = Self {
        result: ResultKind::No,
        observation: None,
        probability: 0.0,
        leading: Fault::NoFault,
        leading_probability: 0.0,
        next: None,
    };
}

/// The largest number of contributions in a comparison of two faults.
pub const EVIDENCE: usize = 1 + Feature::ALL.len() + Observation::ALL.len();

impl Diagnosis {
    /// A fault with its probability and severity; `None` where it does not exist in the system.
    pub fn ranked(&self, fault: Fault) -> Option<&RankedFault> {
        self.faults.iter().find(|ranked| ranked.fault == fault)
    }

    /// The probability that one of these faults is the cause.
    pub fn probability_of(&self, faults: &[Fault]) -> f64 {
        faults
            .iter()
            .filter_map(|fault| self.ranked(*fault))
            .map(|ranked| ranked.probability)
            .sum()
    }
}
