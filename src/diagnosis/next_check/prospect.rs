//! The looks that can still be taken, and what they would show.

use super::super::case::Settings;
use super::super::check_table::CHECKS;
use super::super::checks::{CheckRow, Reveals};
use super::super::list::List;
use super::super::looks;
use super::super::posterior::{HYPOTHESES, Posterior};
use super::super::scene::Scene;
use crate::names::{Check, Feature, Observation, ResultKind};

/// Standard uncertainty of a figure that is still to be read, K (or its own unit). Source: engineering judgement.
const FUTURE_UNCERTAINTY: f64 = 1.2;

/// Normal quantile of the limits between "below", "within" and "above": the 80 % band.
const LIMIT: f64 = 1.281_551_565_544_600_4;

/// A result, and its chance under each of some hypotheses: all of them, where nothing else is said.
#[derive(Clone, Copy)]
pub(super) struct Result<const N: usize = HYPOTHESES> {
    pub(super) kind: ResultKind,
    /// The question that is answered with yes, where a check has several.
    pub(super) observation: Option<Observation>,
    pub(super) chance: [f64; N],
}

/// One look that can be taken, with all that it can show.
#[derive(Clone, Copy)]
pub(super) struct Prospect<const N: usize = HYPOTHESES> {
    pub(super) check: Check,
    /// Minutes of work, the recovery aside.
    pub(super) minutes: f64,
    pub(super) recovery: bool,
    pub(super) results: List<Result<N>, 3>,
    /// The first question that it answers.
    pub(super) asks: Option<Observation>,
    /// The other looks that tell little after this one, one bit each; known to plans only.
    pub(super) related: u64,
}

pub(super) type Prospects<const N: usize = HYPOTHESES> = List<Prospect<N>, { Check::ALL.len() }>;

/// Takes in the looks that can be taken in this system and tell something that is not known yet, with what they show under
/// the hypotheses `of`.
pub(super) fn look_ahead<const N: usize>(
    prospects: &mut Prospects<N>,
    posterior: &Posterior,
    scene: &Scene,
    (settings, at_rest): (&Settings, bool),
    of: &[usize; N],
) {
    let known = |row: &CheckRow| match row.reveals {
        Reveals::Feature(feature) => posterior.knows(feature) || scene.cannot_judge(feature),
        Reveals::Observation(Observation::SightGlassBubbles) if !scene.sight_glass => true,
        Reveals::Observation(observation) => {
            posterior.answers(observation) || looks::implied(posterior.observations(), observation)
        }
    };
    let open = CHECKS
        .iter()
        .filter(|row| row.systems & scene.bit != 0 && !known(row) && (row.at_rest || !at_rest));
    for row in open {
        if let Some(first) = prospects.items_mut().iter_mut().find(|known| known.check == row.check) {
            let mut second = List::new(Result::BLANK);
            foresee(&mut second, (posterior, scene, settings), (row, of));
            first.results = refined(&first.results, &second);
        } else if let Some(prospect) = prospects.grow() {
            prospect.check = row.check;
            prospect.minutes = settings.prices.in_minutes(settings.prices.check(row.check));
            prospect.recovery = row.recovery;
            prospect.asks = match row.reveals {
                Reveals::Feature(_) => None,
                Reveals::Observation(observation) => Some(observation),
            };
            foresee(&mut prospect.results, (posterior, scene, settings), (row, of));
        }
    }
}

/// The same, each knowing which others tell little after it.
pub(super) fn with_relations(mut prospects: Prospects) -> Prospects {
    let asked: [Option<Observation>; Check::ALL.len()] =
        core::array::from_fn(|at| prospects.get(at).and_then(|prospect| prospect.asks));
    for prospect in prospects.items_mut() {
        for (at, other) in asked.iter().enumerate() {
            let tells_little = prospect
                .asks
                .zip(*other)
                .is_some_and(|(a, b)| a != b && looks::related(a, b));
            prospect.related |= u64::from(tells_little) << at;
        }
    }
    prospects
}

/// Takes in how a look can come out.
fn foresee<const N: usize>(
    results: &mut List<Result<N>, 3>,
    (posterior, scene, settings): (&Posterior, &Scene, &Settings),
    (row, of): (&CheckRow, &[usize; N]),
) {
    let mut can_be = |kind, observation, chance| {
        if let Some(result) = results.grow() {
            *result = Result {
                kind,
                observation,
                chance,
            };
        }
    };
    match row.reveals {
        Reveals::Observation(observation) => {
            let yes = looks::expected(&settings.looks, posterior.observations(), observation, of);
            can_be(ResultKind::Yes, Some(observation), yes);
            can_be(ResultKind::No, Some(observation), yes.map(|p| 1.0 - p));
        }
        Reveals::Feature(feature) => {
            // Below, within and above the 80 % band of a sound system.
            let uncertainty = if feature == Feature::ClutchCycles {
                0.1
            } else {
                FUTURE_UNCERTAINTY
            };
            let (low, high) = scene.limits(feature, LIMIT);
            let limits = posterior.below(scene, feature, ([low, high], uncertainty), of);
            can_be(ResultKind::Below, None, limits.map(|[low, _]| low));
            can_be(ResultKind::Within, None, limits.map(|[low, high]| high - low));
            can_be(ResultKind::Above, None, limits.map(|[_, high]| 1.0 - high));
        }
    }
}

/// Two questions that one look answers: the first is answered with yes, or else the second, or neither.
fn refined<const N: usize>(first: &List<Result<N>, 3>, second: &List<Result<N>, 3>) -> List<Result<N>, 3> {
    let mut results = List::new(Result::BLANK);
    let [yes, no, ..] = **first else { return *first };
    results.push(yes);
    for result in second {
        results.push(Result {
            chance: core::array::from_fn(|h| no.chance[h] * result.chance[h]),
            observation: result.observation.filter(|_| result.kind == ResultKind::Yes),
            ..*result
        });
    }
    results
}

impl<const N: usize> Result<N> {
    pub(super) const BLANK: Self = Self {
        kind: ResultKind::No,
        observation: None,
        chance: [0.0; N],
    };
}

impl<const N: usize> Prospect<N> {
    pub(super) const BLANK: Self = Self {
        check: Check::RunAndRead,
        minutes: 0.0,
        recovery: false,
        results: List::new(Result::BLANK),
        asks: None,
        related: 0,
    };
}
