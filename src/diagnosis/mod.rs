//! From readings to a verdict with its reasons: which faults explain them, how likely each is, and what to check next.
//!
//! rows and tables -> feature vector -> sound model -> atlas -> likelihood -> posterior -> verdict and predictions -> planner.
//!
//! The readings become one [`FeatureVector`](crate::circuit::FeatureVector). What a sound system shows is one
//! [`SoundModel`](crate::expected::SoundModel): a mixture over sources of multivariate t distributions. The atlas
//! (`tables/atlas`) says by how much each fault moves every feature, at several severities, from each source. The likelihood of
//! a fault is the sum over sources and severities of a t density at sound mean plus shift; a feature that was not read drops
//! out of it, which is the same as integrating over its values. Answers to yes-or-no questions multiply the odds by their
//! likelihood ratio. Two more hypotheses are weighed with the faults: that the instruments mislead in a known way, and that the
//! cause is none of the list.
//!
//! Sources: Rossi & Braun 1997 and Li & Braun 2003, 2007 for faults as shifts of features; every row of the atlas and every chance
//! of an observation has its own.

mod answer;
mod atlas;
mod atlas_table;
mod batch;
mod case;
mod cautions;
mod check_table;
mod checks;
mod effects;
#[cfg(all(test, feature = "std"))]
mod effort;
mod fault_table;
mod faults;
mod features;
mod judgement;
mod learning;
mod likelihood;
mod limits;
mod list;
mod looks;
mod next_check;
mod notes;
mod pairs;
mod posterior;
mod prices;
mod rest;
mod rows;
mod scale;
mod scene;
mod settings;
mod stacked;
mod states;
mod strays;
#[cfg(test)]
mod tally;
mod verdict;
mod visits;

pub use answer::{
    Action, Branch, Contribution, Deviation, Diagnosis, EVIDENCE, Evidence, Outcome, Plan, RankedCheck, RankedFault,
    STEPS, Step, TwoFaults, Verdict,
};
pub use case::Case;
pub use cautions::{Cautions, check_cautions, repair_cautions, step_cautions};
pub(crate) use checks::recovers;
pub use checks::{Key, can_check, figure_of, needs_running, questions, repair};
pub use effects::{Effect, effects};
pub use faults::{exists, measure};
pub use judgement::{Judgement, Reasons};
pub use learning::Counts;
pub use limits::{HighSide, Stop};
pub use list::List;
pub use looks::Looks;
pub(crate) use looks::speak_against_sound;
pub(crate) use posterior::OfEach;
pub use prices::{Cost, Prices};
pub use rest::Resting;
pub use rows::Repair;
pub use settings::{Settings, Stakes};
pub(crate) use stacked::{GONE, LEFT, PARTS, WHOLE};
pub use states::{judge_states, log_cases};
pub(crate) use visits::{Visits, hypothesis};

use crate::error::Error;
use crate::names::Fault;

/// What explains these readings?
///
/// A running system is judged against what a sound one shows; one whose compressor is known to stand still
/// ([`Conditions::at_rest`](crate::vehicle::Conditions::at_rest)) only by its pressure at rest. A transducer of the high side
/// replaces a missing gauge, or is pooled with a gauge where they agree. At rest, where the pressure of a sound system is not
/// that of saturation, only observations are judged, and [`QualityNote::BandsOnly`](crate::QualityNote::BandsOnly) says so.
///
/// Errors: `NotFinite` and `OutOfRange` for impossible readings, conditions and settings, and for conditions that no source
/// covers ([`SoundModel::of`](crate::expected::SoundModel::of)); `NotAvailable` for a refrigerant that none covers.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::diagnosis::{Case, Settings, diagnose};
/// use coldloop::units::{GaugePressure, Pressure, Surroundings, Temperature, fahrenheit};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Fault, Refrigerant, Thermometer, VerdictKind};
///
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let conditions = Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL);
/// let readings = Readings {
///     low_side: Some(Reading::pressure(GaugePressure::from_psig(70.0), Gauge::LOW_SIDE)),
///     high_side: Some(Reading::pressure(GaugePressure::from_psig(125.0), Gauge::HIGH_SIDE)),
///     vent: Some(Reading::temperature(fahrenheit(63.0), Thermometer::PocketDigital)),
///     ..Readings::default()
/// };
/// let answer = diagnose(&Case::new(system, conditions, readings), &Settings::default())?;
/// assert_eq!(answer.faults[0].fault, Fault::WornCompressor);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[inline(never)]
pub fn diagnose(case: &Case, settings: &Settings) -> Result<Diagnosis, Error> {
    // By reference: a judgement is large, and is not moved.
    match &judge(case, settings) {
        Ok(judgement) => judgement.diagnosis(settings),
        Err(error) => Err(*error),
    }
}

/// Judges a case: the result gives the answer of [`diagnose`], and also reasons and plan.
///
/// Errors: as [`diagnose`].
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::diagnosis::{Case, Settings, judge};
/// use coldloop::units::{GaugePressure, Surroundings, fahrenheit};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let readings = Readings {
///     high_side: Some(Reading::pressure(GaugePressure::from_psig(125.0), Gauge::HIGH_SIDE)),
///     ..Readings::default()
/// };
/// let case = Case::new(system, Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL), readings);
/// let settings = Settings::default();
/// let judgement = judge(&case, &settings)?;
/// let leading = judgement.faults()[0];
/// let because = judgement.reasons(&settings).because(leading.fault, leading.rival);
/// let sum: f64 = because.iter().map(|reason| reason.log_odds).sum();
/// assert!(sum > 0.0);
/// assert_eq!(judgement.diagnosis(&settings)?.next_step, judgement.plan(&settings).steps.first().map(|step| step.action));
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn judge(case: &Case, settings: &Settings) -> Result<Judgement, Error> {
    settings.check()?;
    Judgement::of(case, settings, &settings.priors())
}

/// As [`judge`], with other priors of each fault, and of a cause that is none of them, relative to each other.
#[inline(never)]
pub(crate) fn judge_with(
    case: &Case,
    settings: &Settings,
    prior: impl Fn(Option<Fault>) -> f64,
) -> Result<Judgement, Error> {
    settings.check()?;
    Judgement::of(case, settings, &faults::priors(prior))
}

/// Diagnoses many cases by the same settings.
///
/// The settings are checked once; the answers are those of [`diagnose`] to the bit.
///
/// ```
/// use coldloop::circuit::Readings;
/// use coldloop::diagnosis::{Case, Judge, Settings, diagnose};
/// use coldloop::units::{Surroundings, fahrenheit};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let settings = Settings::default();
/// let judge = Judge::new(&settings)?;
/// for ambient in [70.0, 80.0, 90.0] {
///     let conditions = Conditions::new(fahrenheit(ambient), Surroundings::SEA_LEVEL);
///     let case = Case::new(system, conditions, Readings::default());
///     assert_eq!(judge.diagnose(&case)?, diagnose(&case, &settings)?);
/// }
/// # Ok::<(), coldloop::Error>(())
/// ```
pub struct Judge<'a> {
    settings: &'a Settings,
}

impl<'a> Judge<'a> {
    /// A judge by these settings.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for impossible settings.
    pub fn new(settings: &'a Settings) -> Result<Self, Error> {
        settings.check()?;
        Ok(Self { settings })
    }

    /// What explains the readings of this case?
    ///
    /// Errors: as [`diagnose`].
    pub fn diagnose(&self, case: &Case) -> Result<Diagnosis, Error> {
        match &self.judge(case) {
            Ok(judgement) => judgement.diagnosis(self.settings),
            Err(error) => Err(*error),
        }
    }

    /// The judgement of this case, as [`judge`] gives it.
    ///
    /// Errors: as [`diagnose`].
    pub fn judge(&self, case: &Case) -> Result<Judgement, Error> {
        Judgement::of(case, self.settings, &self.settings.priors())
    }
}
