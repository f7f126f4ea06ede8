//! Which check to do next: the one that lowers the expected cost until the vehicle is repaired.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57.
//! One fault at a time is assumed, each repair ends with a look whether it helped, and a check is worth what it saves on
//! average, its own cost taken off. One search gives the next step, the ranked checks and the plan.

mod cost;
#[cfg(test)]
mod exhaustive;
mod followed;
mod plan;
mod prospect;
mod search;

use super::answer::{Action, Outcome, Plan, RankedCheck, Step};
use super::case::Case;
use super::checks::repair;
use super::faults::index;
use super::list::List;
use super::notes;
use super::posterior::Posterior;
#[cfg(feature = "report")]
use super::prices::Prices;
use super::scene::Scene;
use super::settings::Settings;
use crate::names::{Check, Fault, StopReason};
use cost::Jobs;
use followed::Followed;
use prospect::{Prospect, Prospects};
use search::{BEAM, FOLLOWED, Move, Search, State, Weighing};

/// From this probability of misleading gauges on, they are checked before anything else.
const SUSPICION: f64 = 0.3;

/// A step that is held gives way to another one that saves more than this, min, and more than this share of the expected cost.
///
/// Chosen on 319 readings, each moved up and down by one standard uncertainty seven times (the examples and cases of an
/// independent simulator that judge): without holding, the step changed more than once in 67 of them, with half as much in 3,
/// with this in none. Two minutes are what a look costs at least; on average the held step costs nothing more than the best one.
const CLEARLY_MINUTES: f64 = 2.0;
const CLEARLY_SHARE: f64 = 0.02;

/// The largest number of checks that are listed.
const TOLD: usize = 6;

/// What the planner has to know of a case besides the probabilities.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Standing {
    /// Whether the compressor stands still, or must.
    at_rest: bool,
    /// What comes before everything else: at rest, run it and read, or read again once all parts have the same temperature, where
    /// air seems to be in it; of an empty circuit, which is never run, a leak search with nitrogen. `None` for a running one.
    first: Option<Check>,
    /// Whether a pressure is one that no sound gauge shows of this refrigerant, or contradicts the vehicle's own transducer.
    doubtful: bool,
    /// Whether the high side was read once, by a gauge or by the vehicle's own transducer, and can be read by the other.
    one_high_side: bool,
    /// A reading that a proof of the repair still lacks; `None` where no repair is to be proven.
    to_prove: Option<Check>,
}

impl Standing {
    /// The same visit, in which the repair is to be proven by this reading.
    pub(super) const fn proving(self, wanted: Check) -> Self {
        Self {
            to_prove: Some(wanted),
            ..self
        }
    }

    pub(super) fn of(case: &Case, posterior: &Posterior, stop: Option<StopReason>) -> Self {
        let at_rest = case.conditions.at_rest(case.system.compressor);
        let doubtful = posterior.off_scale() || notes::contradicts(case);
        let first = match stop {
            Some(StopReason::NearlyEmpty) => {
                let believed = !doubtful && posterior.probability[index(Fault::GaugeError)] < SUSPICION;
                believed.then_some(Check::SearchWithNitrogen)
            }
            Some(StopReason::AirPresent) => Some(Check::ReadRestPressure),
            Some(StopReason::HighPressure) => None,
            None => at_rest.then_some(Check::RunAndRead),
        };
        Self {
            at_rest: at_rest || stop.is_some(),
            first,
            doubtful,
            one_high_side: case.readings.high_side.is_some() != case.readings.high_side_transducer.is_some(),
            to_prove: None,
        }
    }
}

/// What to do next.
pub(super) struct Next {
    pub(super) step: Option<Action>,
    /// The checks that save more than they cost, the most useful first.
    pub(super) checks: List<RankedCheck, TOLD>,
}

/// No checks, where none were asked for.
pub(super) const fn unranked() -> List<RankedCheck, TOLD> {
    List::new(blank(Check::RunAndRead))
}

/// What to do next, and which checks are worth their cost.
#[inline(never)]
pub(super) fn next(posterior: &Posterior, scene: &Scene, settings: &Settings, standing: Standing) -> Next {
    searched(posterior, scene, settings, standing, |bench, search, weighing| Next {
        step: match standing.first {
            Some(check) => Some(Action::Check(check)),
            None => search.action(bench.first(search, weighing)),
        },
        checks: bench.ranked(search, weighing),
    })
}

/// Fills an empty plan in place, so that only one plan is on the stack.
#[inline(never)]
pub(super) fn plan(plan: &mut Plan, posterior: &Posterior, scene: &Scene, settings: &Settings, standing: Standing) {
    if let Some(check) = standing.first {
        plan.steps.push(Step {
            action: Action::Check(check),
            minutes: first_minutes(check, settings),
            probability: 1.0,
            recovers: empties(check, settings),
            ..Step::BLANK
        });
        return;
    }
    searched(posterior, scene, settings, standing, |bench, search, weighing| {
        search.grow_into(plan, &bench.state, bench.first(search, weighing), weighing);
    });
    // The minutes of the search include the parts; a plan lists them apart.
    for step in plan.steps.items_mut() {
        step.parts_in_minutes = settings.prices.parts_in_minutes(step.action);
        step.minutes -= step.parts_in_minutes;
    }
}

/// Whether the rest of a charge has to come out first.
fn empties(check: Check, settings: &Settings) -> bool {
    check == Check::SearchWithNitrogen && !settings.recovered
}

/// Minutes of the check that comes before everything else.
fn first_minutes(check: Check, settings: &Settings) -> f64 {
    let prices = &settings.prices;
    let recovery = if empties(check, settings) {
        prices.recovery().minutes
    } else {
        0.0
    };
    prices.check(check).minutes + recovery
}

/// Searches over all looks that can still be taken, weighs every first step, and returns what `take` makes of it.
fn searched<R>(
    posterior: &Posterior,
    scene: &Scene,
    settings: &Settings,
    standing: Standing,
    take: impl FnOnce(&Bench<'_>, &Search<'_>, &Weighing) -> R,
) -> R {
    // The hypotheses that are followed, and their repairs.
    let (followed, jobs) = Followed::of(&posterior.probability, &settings.prices, &|fault| {
        repair(fault).recovery
    });
    let mut prospects = Prospects::NONE;
    prospects.look_ahead(posterior, scene, settings, standing, &followed);
    let bench = Bench::of(posterior, settings, standing, (&followed, &jobs, &prospects));
    let search = bench.search();
    let weighing = search.weigh(&bench.state);
    take(&bench, &search, &weighing)
}

/// Beliefs, prices, and all looks that can still be taken.
struct Bench<'a> {
    posterior: &'a Posterior,
    settings: &'a Settings,
    standing: Standing,
    prospects: &'a Prospects,
    jobs: &'a Jobs,
    state: State,
}

impl<'a> Bench<'a> {
    fn of(
        posterior: &'a Posterior,
        settings: &'a Settings,
        standing: Standing,
        (followed, jobs, prospects): (&Followed, &'a Jobs, &'a Prospects),
    ) -> Self {
        Self {
            posterior,
            settings,
            standing,
            prospects,
            jobs,
            state: State {
                belief: followed.belief(&posterior.probability),
                recovered: settings.recovered,
                used: 0,
            },
        }
    }

    fn search(&self) -> Search<'_> {
        Search {
            jobs: self.jobs,
            prospects: self.prospects,
            beam: BEAM,
            followed: FOLLOWED,
            within: u64::MAX,
            any_repair: false,
        }
    }

    /// The first step.
    #[inline(never)] // so that all looks ahead are worked out on less stack
    fn first(&self, search: &Search<'_>, weighing: &Weighing) -> Move {
        if let Some(at) = self.before_all() {
            return Move::Check(at);
        }
        self.held(search, weighing)
            .map_or_else(|| weighing.best().1, |(_, held)| held)
    }

    /// The step that is held, with its expected minutes, where no other one saves clearly more.
    fn held(&self, search: &Search<'_>, weighing: &Weighing) -> Option<(f64, Move)> {
        let held = search.step(self.settings.held?)?;
        let (least, best) = weighing.best();
        if held == best {
            return Some((least, held));
        }
        let minutes = search.minutes_of(&self.state, held, weighing)?;
        (minutes <= least + f64::max(CLEARLY_MINUTES, CLEARLY_SHARE * least)).then_some((minutes, held))
    }

    /// The checks that save more than they cost; the most useful first.
    #[inline(never)] // so that all looks ahead are worked out on less stack
    fn ranked(&self, search: &Search<'_>, weighing: &Weighing) -> List<RankedCheck, TOLD> {
        let mut ranked = unranked();
        if let Some(check) = self.standing.first {
            // Without a running system, or one that may be run, nothing else can be said.
            ranked.push(RankedCheck {
                minutes: first_minutes(check, self.settings),
                ..blank(check)
            });
        }
        let before_all = self.before_all();
        if let Some(at) = before_all {
            // With misleading gauges nothing else can be said either.
            ranked.push(self.told(&self.prospects.all()[at], None));
        }
        let held = self.held(search, weighing).filter(|_| ranked.is_empty());
        let held = held.and_then(|(value, step)| Some((value, step.check()?)));
        if let Some((value, at)) = held {
            let saving = weighing.without_minutes() - value;
            ranked.push(self.told(&self.prospects.all()[at], Some(saving)));
        }
        for (value, at) in weighing.checks() {
            let first = before_all == Some(*at) || held.is_some_and(|(_, held)| held == *at);
            let told = first || self.standing.first == Some(self.prospects.all()[*at].check);
            if *value < weighing.without.0 && !told {
                let saving = weighing.without_minutes() - value;
                ranked.push(self.told(&self.prospects.all()[*at], Some(saving)));
            }
        }
        ranked
    }

    /// The place of a check that comes before whatever the search finds.
    fn before_all(&self) -> Option<usize> {
        self.suspected()
            .or_else(|| self.prospects.place(self.standing.to_prove?))
    }

    /// The place of the cheapest comparison of the gauges, when they are suspected, nothing fits what they show, or a pressure
    /// has no saturation temperature.
    fn suspected(&self) -> Option<usize> {
        let probability = &self.posterior.probability;
        let suspected = self.standing.doubtful
            || probability[index(Fault::GaugeError)] >= SUSPICION
            || self.posterior.unexplained >= self.settings.nothing_fits;
        if !suspected {
            return None;
        }
        let compared = [Check::CompareTransducer, Check::CompareGauges];
        let places = compared.iter().filter_map(|check| self.prospects.place(*check));
        places.min_by(|a, b| {
            let minutes = |at: &usize| self.prospects.all()[*at].minutes;
            minutes(a).total_cmp(&minutes(b))
        })
    }

    /// A check with its cost and how it can come out.
    fn told(&self, prospect: &Prospect, saving: Option<f64>) -> RankedCheck {
        let cost = self.settings.prices.check(prospect.check);
        let recovery = if prospect.recovery && !self.settings.recovered {
            self.jobs.recovery_minutes
        } else {
            0.0
        };
        let mut check = RankedCheck {
            minutes: cost.minutes + recovery,
            parts_in_minutes: cost.money / self.settings.prices.per_minute(),
            saving,
            ..blank(prospect.check)
        };
        for result in prospect.results() {
            let mut belief = self.state.belief;
            self.prospects.learn(&mut belief, prospect, &result);
            let total: f64 = belief.iter().sum();
            if total <= 0.0 {
                continue;
            }
            let (leading, p) = self.jobs.leading_fault(&belief);
            check.outcomes.push(Outcome {
                result: result.kind,
                observation: result.observation,
                probability: total,
                leading,
                leading_probability: p / total,
            });
        }
        check
    }
}

impl RankedCheck {
    /// A leak search with dry nitrogen, of a circuit that is already empty.
    #[cfg(feature = "report")]
    pub(crate) fn search_with_nitrogen(prices: &Prices) -> Self {
        let check = Check::SearchWithNitrogen;
        Self {
            minutes: prices.check(check).minutes,
            parts_in_minutes: prices.parts_in_minutes(Action::Check(check)),
            ..blank(check)
        }
    }
}

const fn blank(check: Check) -> RankedCheck {
    RankedCheck {
        check,
        minutes: 0.0,
        parts_in_minutes: 0.0,
        saving: None,
        outcomes: List::new(Outcome::BLANK),
    }
}
