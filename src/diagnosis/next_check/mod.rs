//! Which check to do next: the one that lowers the expected cost until the vehicle is repaired.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57.
//! One fault at a time is assumed, each repair ends with a look whether it helped, and a check is worth what it saves on
//! average, its own cost taken off.

mod cost;
#[cfg(test)]
mod exhaustive;
mod plan;
mod prospect;

use super::answer::{Outcome, Plan, RankedCheck, Step};
use super::case::Settings;
use super::check_table::REPAIRS;
use super::faults::index;
use super::list::List;
use super::posterior::{HYPOTHESES, NONE, Posterior};
use super::scene::Scene;
use crate::names::{Check, Fault};
use crate::numerics::{put_in_order, sqrt};
use cost::Jobs;
use plan::{BEAM, Search, State};
use prospect::{Prospect, Prospects, look_ahead, with_relations};

/// From this probability of misleading gauges on, they are checked before anything else.
const SUSPICION: f64 = 0.3;

/// The checks that save more than they cost, the most useful first.
///
/// `at_rest` tells whether the compressor stands still, `off_scale` whether a pressure is one that no sound gauge shows of this
/// refrigerant, or contradicts the vehicle's own transducer.
pub(super) fn ranked(
    posterior: &Posterior,
    scene: &Scene,
    settings: &Settings,
    (at_rest, off_scale): (bool, bool),
) -> List<RankedCheck, 6> {
    let mut bench = Bench::bare(posterior, settings, (at_rest, off_scale));
    bench.look_ahead(scene);
    bench.ranked()
}

/// The steps ahead, with what [`ranked`] is told.
pub(super) fn plan(
    posterior: &Posterior,
    scene: &Scene,
    settings: &Settings,
    (at_rest, off_scale): (bool, bool),
) -> Plan {
    let mut bench = Bench::bare(posterior, settings, (at_rest, off_scale));
    bench.look_ahead(scene);
    bench.plan()
}

/// No checks, for who does not ask.
pub(super) const fn unranked() -> List<RankedCheck, 6> {
    List::new(blank(Check::RunAndRead))
}

/// Beliefs, prices, and all looks that can still be taken.
struct Bench<'a> {
    posterior: &'a Posterior,
    settings: &'a Settings,
    /// Whether the compressor stands still.
    at_rest: bool,
    /// Whether a pressure is one that no sound gauge shows of this refrigerant, or contradicts the vehicle's own transducer.
    off_scale: bool,
    prospects: Prospects,
    jobs: Jobs,
}

impl<'a> Bench<'a> {
    /// Before any look is taken into account.
    fn bare(posterior: &'a Posterior, settings: &'a Settings, (at_rest, off_scale): (bool, bool)) -> Self {
        Self {
            posterior,
            settings,
            at_rest,
            off_scale,
            prospects: List::new(Prospect::BLANK),
            jobs: Jobs::of(&settings.prices, &REPAIRS).about(&posterior.probability),
        }
    }

    /// Takes in all looks that can still be taken.
    fn look_ahead(&mut self, scene: &Scene) {
        let with = (self.settings, self.at_rest);
        look_ahead(&mut self.prospects, self.posterior, scene, with, &ALL);
    }

    /// The checks that save more than they cost; the most useful first.
    fn ranked(&self) -> List<RankedCheck, 6> {
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
    fn plan(&self) -> Plan {
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
