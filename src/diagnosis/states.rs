//! Several states of one vehicle in one run: the same fault at several speeds and loads.

use super::case::Case;
use super::faults::HYPOTHESES;
use super::judgement::Judgement;
use super::settings::Settings;
use super::stacked::WHOLE;
use super::visits::Visits;
use crate::circuit::Observations;
use crate::error::Error;
use crate::log::{Instruments, Summary};
use crate::names::{ErrorKind, Quantity};

/// Exponent of the density of another state, below 1 because the sources make similar errors in both states. Log loss on 300
/// building logs of the independent simulator: 0.3 to 1 do equally well, and the lower the exponent, the fewer verdicts change.
const WORTH: f64 = 0.5;

/// Judges one vehicle whose readings were taken in several states of one run, for instance at idle and at speed.
///
/// The first state is judged with a prior that the other ones have updated: the prior times the square root of the density of
/// each other state given the first, under the same fault at the same severity. The joint density is that of two visits: by log
/// loss on logs of an independent simulator, two states of one run share as much as two visits do. Further states are taken as
/// independent of each other given the first. The reasons list all of this as the prior. With one state it is
/// [`judge`](super::judge()).
///
/// Errors: `Missing` without a state; as [`judge`](super::judge()).
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::diagnosis::{Case, Settings, judge, judge_states};
/// use coldloop::units::{GaugePressure, RotationalSpeed, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Fault, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let state = |hz: f64, low: f64, high: f64| {
///     let conditions = Conditions {
///         engine_speed: Some(RotationalSpeed::from_hz(hz)),
///         ..Conditions::new(celsius(29.0), Surroundings::SEA_LEVEL)
///     };
///     let readings = Readings {
///         low_side: Some(Reading::pressure(GaugePressure::from_pa(low), Gauge::DIGITAL)),
///         high_side: Some(Reading::pressure(GaugePressure::from_pa(high), Gauge::DIGITAL)),
///         ..Readings::default()
///     };
///     Case::new(system, conditions, readings)
/// };
/// // Little pressure difference at idle, and only a little more at speed.
/// let (idle, speed) = (state(13.0, 390e3, 850e3), state(35.0, 330e3, 1_000e3));
/// let settings = Settings::default();
/// let both = judge_states(&[idle, speed], &settings)?;
/// assert_eq!(both.faults()[0].fault, Fault::WornCompressor);
/// assert!(both.faults()[0].probability > judge(&idle, &settings)?.faults()[0].probability);
/// assert!(judge_states(&[], &settings).is_err());
/// # Ok::<(), coldloop::Error>(())
/// ```
#[inline(never)]
pub fn judge_states(states: &[Case], settings: &Settings) -> Result<Judgement, Error> {
    let Some((first, others)) = states.split_first() else {
        return Err(Error::of(ErrorKind::Missing, Quantity::Rows));
    };
    settings.check()?;
    let mut priors = settings.priors();
    for other in others {
        let both = Visits::of(first, other, settings)?;
        let mut factors = [1.0; HYPOTHESES];
        for (h, factor) in factors.iter_mut().enumerate() {
            if both.alone[0][h] > 0.0 {
                *factor = libm::pow(both.joint[h][WHOLE] / both.alone[0][h], WORTH) * both.seen[1][h];
            }
        }
        let largest = factors
            .iter()
            .fold(f64::MIN_POSITIVE, |one, other| f64::max(one, *other));
        for (prior, factor) in priors.iter_mut().zip(factors) {
            *prior *= factor / largest;
        }
    }
    Judgement::of(first, settings, &priors)
}

/// The states of a log that can be judged, as [`judge_states`] takes them; none where no state has lasted long enough.
///
/// Each has the system of `known`, its own readings, and the conditions of `known` with the speeds that were logged. The first one is the
/// answer's: it also has what was read and seen besides, where the log does not tell that itself.
///
/// ```
/// use coldloop::diagnosis::{Case, Settings, judge_states, log_cases};
/// use coldloop::log::{Datum, Instruments, Recorder, Sample};
/// use coldloop::{Channel, intake};
/// let known = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let mut recorder = Recorder::new(Datum::Gauge);
/// for second in 0..200 {
///     let sample = Sample::at(f64::from(second)).with(Channel::LowSide, 180e3).with(Channel::HighSide, 900e3);
///     recorder.push(&sample);
/// }
/// let cases: Vec<Case> = log_cases(&known, &recorder.summary(), &Instruments::default()).collect();
/// assert_eq!(cases.len(), 1);
/// assert_eq!(cases[0].readings.vent, known.readings.vent);
/// assert!(judge_states(&cases, &Settings::default()).is_ok());
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn log_cases<'a>(
    known: &'a Case,
    summary: &'a Summary,
    instruments: &'a Instruments,
) -> impl Iterator<Item = Case> + 'a {
    summary.judged().enumerate().map(move |(at, state)| {
        let mut case = *known;
        case.conditions = state.conditions(&known.conditions);
        let read = state.readings(instruments);
        if at > 0 {
            (case.readings, case.observations) = (read, Observations::NONE);
            return case;
        }
        case.readings = known.readings.updated(&read);
        for (observation, answer) in summary.observations().answered() {
            case.observations = case.observations.with(observation, answer);
        }
        case
    })
}
