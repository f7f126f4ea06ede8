//! Which check to do next: the one that lowers the expected cost until the vehicle is repaired.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57.
//! One fault at a time is assumed, each repair ends with a look whether it helped, and a check is worth what it saves on
//! average, its own cost taken off.

mod cost;
#[cfg(test)]
mod exhaustive;
mod plan;

use super::answer::{Outcome, Plan, RankedCheck, Step};
use super::case::Settings;
use super::check_table::{CHECKS, REPAIRS};
use super::checks::{CheckRow, Reveals};
use super::faults::index;
use super::list::List;
use super::looks;
use super::posterior::{HYPOTHESES, NONE, Posterior};
use super::scene::Scene;
use crate::names::{Check, Fault, Feature, Observation, ResultKind};
use crate::numerics::{put_in_order, sqrt};
use cost::Jobs;
use plan::{BEAM, Search, State};

/// From this probability of misleading gauges on, they are checked before anything else.
const SUSPICION: f64 = 0.3;

/// Standard uncertainty of a figure that is still to be read, K (or its own unit). Source: engineering judgement.
const FUTURE_UNCERTAINTY: f64 = 1.2;

/// Normal quantile of the limits between "below", "within" and "above": the 80 % band.
const LIMIT: f64 = 1.281_551_565_544_600_4;

/// A result, and its chance under each of some hypotheses: all of them, where nothing else is said.
#[derive(Clone, Copy)]
struct Result<const N: usize = HYPOTHESES> {
    kind: ResultKind,
    /// The question that is answered with yes, where a check has several.
    observation: Option<Observation>,
    chance: [f64; N],
}

/// One look that can be taken, with all that it can show.
#[derive(Clone, Copy)]
struct Prospect<const N: usize = HYPOTHESES> {
    check: Check,
    /// Minutes of work, the recovery aside.
    minutes: f64,
    recovery: bool,
    results: List<Result<N>, 3>,
    /// The first question that it answers.
    asks: Option<Observation>,
    /// The other looks that tell little after this one, one bit each; known to plans only.
    related: u64,
}

type Prospects<const N: usize = HYPOTHESES> = List<Prospect<N>, { Check::ALL.len() }>;

/// Beliefs, prices, and all looks that can still be taken.
pub(super) struct Bench<'a> {
    posterior: &'a Posterior,
    settings: &'a Settings,
    /// Whether the engine is off.
    at_rest: bool,
    /// Whether a pressure is one that no sound gauge shows of this refrigerant.
    off_scale: bool,
    prospects: Prospects,
    jobs: Jobs,
}

impl<'a> Bench<'a> {
    pub(super) fn new(
        posterior: &'a Posterior,
        scene: &Scene,
        settings: &'a Settings,
        (at_rest, off_scale): (bool, bool),
    ) -> Self {
        let mut bench = Self {
            posterior,
            settings,
            at_rest,
            off_scale,
            prospects: List::new(Prospect::BLANK),
            jobs: Jobs::of(&settings.prices, &REPAIRS),
        };
        look_ahead(&mut bench.prospects, posterior, scene, (settings, at_rest), &ALL);
        bench
    }

    /// No checks, for who does not ask.
    pub(super) const fn unranked() -> List<RankedCheck, 6> {
        List::new(blank(Check::RunAndRead))
    }

    /// The checks that save more than they cost; the most useful first.
    pub(super) fn ranked(&self) -> List<RankedCheck, 6> {
        let before = self
            .jobs
            .order(&self.posterior.probability, self.settings.recovered)
            .minutes;
        let mut ranked: List<RankedCheck, { Check::ALL.len() }> = List::new(blank(Check::RunAndRead));
        for prospect in &self.prospects {
            let check = self.judge(prospect, before);
            if check.saving.is_some_and(|saving| saving > 0.0) {
                ranked.push(check);
            }
        }
        put_in_order(ranked.items_mut(), |a, b| {
            b.saving.unwrap_or(0.0).total_cmp(&a.saving.unwrap_or(0.0)).is_lt()
        });
        let mut best = List::new(blank(Check::RunAndRead));
        if self.at_rest {
            // Without a running system nothing else can be said.
            best.push(RankedCheck {
                minutes: self.settings.prices.check(Check::RunAndRead).minutes,
                ..blank(Check::RunAndRead)
            });
        }
        if let Some(at) = self.suspected() {
            // Nor with gauges that mislead.
            let prospect = &self.prospects[at];
            best.push(RankedCheck {
                saving: None,
                ..self.judge(prospect, before)
            });
        }
        for check in &ranked {
            if best.iter().all(|known| known.check != check.check) {
                best.push(*check);
            }
        }
        best
    }

    /// The steps ahead.
    pub(super) fn plan(&self) -> Plan {
        if self.at_rest {
            let mut plan = Plan::EMPTY;
            plan.steps.push(Step {
                minutes: self.settings.prices.check(Check::RunAndRead).minutes,
                probability: 1.0,
                ..Step::BLANK
            });
            return plan;
        }
        let prospects = with_relations(self.prospects);
        let search = Search {
            jobs: &self.jobs,
            prospects: &prospects,
            beam: BEAM,
            any_repair: false,
        };
        let state = State {
            belief: self.posterior.probability,
            recovered: self.settings.recovered,
            used: 0,
        };
        search.plan(&state, self.suspected())
    }

    /// Where the comparison of the gauges stands, when they are suspected, nothing fits what they show, or a pressure has
    /// no saturation temperature.
    fn suspected(&self) -> Option<usize> {
        let probability = &self.posterior.probability;
        let suspected = self.off_scale
            || probability[index(Fault::GaugeError)] >= SUSPICION
            || probability[NONE] >= self.settings.nothing_fits;
        let gauges = |prospect: &Prospect| prospect.check == Check::CompareGauges;
        suspected.then(|| self.prospects.iter().position(gauges)).flatten()
    }

    fn recovery_minutes(&self, prospect: &Prospect) -> f64 {
        if prospect.recovery && !self.settings.recovered {
            self.jobs.recovery_minutes
        } else {
            0.0
        }
    }

    /// What a check saves on average, its cost taken off, and how it can come out.
    fn judge(&self, prospect: &Prospect, before: f64) -> RankedCheck {
        let recovered = self.settings.recovered || prospect.recovery;
        let mut check = blank(prospect.check);
        let recovery = self.recovery_minutes(prospect);
        let mut after = prospect.minutes + recovery;
        for result in &prospect.results {
            let mut belief = self.posterior.probability;
            for (p, chance) in belief.iter_mut().zip(result.chance) {
                *p *= chance;
            }
            let total: f64 = belief.iter().sum();
            if total <= 0.0 {
                continue;
            }
            after += self.jobs.order(&belief, recovered).minutes;
            let (leading, p) = leading(&belief);
            check.outcomes.push(Outcome {
                result: result.kind,
                observation: result.observation,
                probability: total,
                leading,
                leading_probability: p / total,
            });
        }
        let cost = self.settings.prices.check(prospect.check);
        RankedCheck {
            minutes: cost.minutes + recovery,
            money: cost.money,
            saving: Some(before - after),
            ..check
        }
    }
}

/// The check that best tells two faults apart for its cost.
pub(super) fn parting(
    posterior: &Posterior,
    scene: &Scene,
    (settings, at_rest): (&Settings, bool),
    (first, second): (Fault, Fault),
) -> Option<Check> {
    let recovery_minutes = settings.prices.in_minutes(settings.prices.recovery);
    let mut prospects = List::new(Prospect::BLANK);
    let both = [index(first), index(second)];
    look_ahead(&mut prospects, posterior, scene, (settings, at_rest), &both);
    let mut best = (0.0, None);
    for prospect in &prospects {
        // Expected weight of evidence, taken from both sides (Jeffreys' divergence), in nats per minute.
        let divergence: f64 = prospect
            .results
            .iter()
            .map(|result| (result.chance[0], result.chance[1]))
            .filter(|(a, b)| *a > 0.0 && *b > 0.0)
            .map(|(a, b)| (a - b) * libm::log(a / b))
            .sum();
        let recovers = prospect.recovery && !settings.recovered;
        let minutes = prospect.minutes + if recovers { recovery_minutes } else { 0.0 };
        let worth = divergence / sqrt(minutes);
        if worth > best.0 {
            best = (worth, Some(prospect.check));
        }
    }
    best.1
}

/// Every hypothesis.
const ALL: [usize; HYPOTHESES] = {
    let mut all = [0; HYPOTHESES];
    let mut h = 0;
    while h < HYPOTHESES {
        all[h] = h;
        h += 1;
    }
    all
};

/// Takes in the looks that can be taken in this system and tell something that is not known yet, with what they show under
/// the hypotheses `of`.
fn look_ahead<const N: usize>(
    prospects: &mut Prospects<N>,
    posterior: &Posterior,
    scene: &Scene,
    (settings, at_rest): (&Settings, bool),
    of: &[usize; N],
) {
    let known = |row: &CheckRow| match row.reveals {
        Reveals::Feature(feature) => posterior.knows(feature) || scene.cannot_judge(feature),
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
fn with_relations(mut prospects: Prospects) -> Prospects {
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
    const BLANK: Self = Self {
        kind: ResultKind::No,
        observation: None,
        chance: [0.0; N],
    };
}

impl<const N: usize> Prospect<N> {
    const BLANK: Self = Self {
        check: Check::RunAndRead,
        minutes: 0.0,
        recovery: false,
        results: List::new(Result::BLANK),
        asks: None,
        related: 0,
    };
}

const fn blank(check: Check) -> RankedCheck {
    RankedCheck {
        check,
        minutes: 0.0,
        money: 0.0,
        saving: None,
        outcomes: List::new(Outcome::BLANK),
    }
}

fn leading(belief: &[f64; HYPOTHESES]) -> (Fault, f64) {
    let mut best = (Fault::NoFault, 0.0);
    for fault in Fault::ALL {
        let p = belief[index(fault)];
        if p > best.1 {
            best = (fault, p);
        }
    }
    best
}
