//! Which check to do next: the one that lowers the expected cost until the vehicle is repaired.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57.
//! One fault at a time is assumed; repairs are tried in the order of probability over cost, each with a look whether it
//! helped; a check is worth what it saves on average, its own cost taken off, and no check looks further ahead.

use super::answer::{Outcome, RankedCheck};
use super::case::Settings;
use super::check_table::{CHECKS, NONE_OF_THESE_MINUTES, RECOVERY_MINUTES, REPAIRS, VERIFY_MINUTES};
use super::checks::{CheckRow, Reveals, chances};
use super::faults::index;
use super::list::List;
use super::posterior::{HYPOTHESES, NEGLIGIBLE, Posterior};
use super::scene::Scene;
use crate::names::{Check, Fault, Feature, ResultKind};

/// From this probability of misleading gauges on, they are checked before anything else.
const SUSPICION: f64 = 0.3;

/// Standard uncertainty of a figure that is still to be read, K (or its own unit). Source: engineering judgement.
const FUTURE_UNCERTAINTY: f64 = 1.2;

/// Normal quantile of the limits between "below", "within" and "above": the 80 % band.
const LIMIT: f64 = 1.281_551_565_544_600_4;

/// A result, and its chance under each hypothesis.
#[derive(Clone, Copy)]
struct Result {
    kind: ResultKind,
    chance: [f64; HYPOTHESES],
}

/// Beliefs and prices.
pub(super) struct Bench<'a> {
    pub(super) posterior: &'a Posterior,
    pub(super) scene: &'a Scene,
    pub(super) settings: &'a Settings,
    /// Whether the engine is off.
    pub(super) at_rest: bool,
}

impl Bench<'_> {
    /// No checks, for who does not ask.
    pub(super) const fn unranked() -> List<RankedCheck, 6> {
        List::new(blank(Check::RunAndRead, None))
    }

    /// The checks that save more than they cost, and the best of the rest when none does; the most useful first.
    pub(super) fn ranked(&self) -> List<RankedCheck, 6> {
        let before = self.expected_cost(&self.posterior.probability, self.settings.recovered);
        let mut ranked: List<RankedCheck, { CHECKS.len() }> = List::new(blank(Check::RunAndRead, None));
        for row in self.open() {
            let (saving, outcomes) = self.judge(row, before);
            let better = RankedCheck {
                check: row.check,
                minutes: row.minutes + self.recovery_minutes(row),
                money: row.money,
                saving: Some(saving),
                outcomes,
            };
            match ranked.items_mut().iter_mut().find(|known| known.check == row.check) {
                Some(known) if known.saving.is_none_or(|known| known < saving) => *known = better,
                Some(_) => (),
                None => ranked.push(better),
            }
        }
        ranked
            .items_mut()
            .sort_unstable_by(|a, b| b.saving.unwrap_or(0.0).total_cmp(&a.saving.unwrap_or(0.0)));
        let mut best = List::new(blank(Check::RunAndRead, None));
        if self.at_rest {
            // Without a running system nothing else can be said.
            best.push(RankedCheck {
                minutes: RUN_MINUTES,
                ..blank(Check::RunAndRead, None)
            });
        }
        if self.posterior.probability[index(Fault::GaugeError)] >= SUSPICION
            && let Some(row) = self.open().find(|row| row.check == Check::CompareGauges)
        {
            // Nor with gauges that mislead.
            let (_, outcomes) = self.judge(row, before);
            best.push(RankedCheck {
                minutes: row.minutes,
                outcomes,
                ..blank(row.check, None)
            });
        }
        for check in ranked
            .iter()
            .take_while(|check| check.saving.is_some_and(|saving| saving > 0.0))
        {
            if best.iter().all(|known| known.check != check.check) {
                best.push(*check);
            }
        }
        best
    }

    /// The check that best tells two faults apart for its cost.
    pub(super) fn parting(&self, first: Fault, second: Fault) -> Option<Check> {
        let mut best = (0.0, None);
        for row in self.open() {
            // Expected weight of evidence, taken from both sides (Jeffreys' divergence), in nats per minute.
            let divergence: f64 = self
                .results(row)
                .iter()
                .map(|result| (result.chance[index(first)], result.chance[index(second)]))
                .filter(|(a, b)| *a > 0.0 && *b > 0.0)
                .map(|(a, b)| (a - b) * libm::log(a / b))
                .sum();
            let worth = divergence / libm::sqrt(self.cost(row));
            if worth > best.0 {
                best = (worth, Some(row.check));
            }
        }
        best.1
    }

    /// The checks of this system whose result is not known yet.
    fn open(&self) -> impl Iterator<Item = &'static CheckRow> + '_ {
        CHECKS.iter().filter(|row| {
            let known = match row.reveals {
                Reveals::Feature(feature) => self.posterior.knows(feature) || self.scene.cannot_judge(feature),
                Reveals::Observation(observation) => self.posterior.answers(observation),
            };
            row.systems & self.scene.bit != 0 && !known && (row.at_rest || !self.at_rest)
        })
    }

    fn recovery_minutes(&self, row: &CheckRow) -> f64 {
        if row.recovery && !self.settings.recovered {
            RECOVERY_MINUTES
        } else {
            0.0
        }
    }

    fn cost(&self, row: &CheckRow) -> f64 {
        row.minutes + self.recovery_minutes(row) + self.settings.money_weight * row.money
    }

    fn results(&self, row: &CheckRow) -> List<Result, 3> {
        match row.reveals {
            Reveals::Observation(observation) => two(chances(observation, true)),
            Reveals::Feature(feature) => self.three(feature),
        }
    }

    /// Below, within and above the 80 % band of a sound system.
    fn three(&self, feature: Feature) -> List<Result, 3> {
        let uncertainty = if feature == Feature::ClutchCycles {
            0.1
        } else {
            FUTURE_UNCERTAINTY
        };
        let (low, high) = self.scene.limits(feature, LIMIT);
        let below = self.posterior.below(self.scene, feature, low, uncertainty);
        let up_to = self.posterior.below(self.scene, feature, high, uncertainty);
        let mut results = List::new(Result::BLANK);
        results.push(Result {
            kind: ResultKind::Below,
            chance: below,
        });
        results.push(Result {
            kind: ResultKind::Within,
            chance: core::array::from_fn(|h| up_to[h] - below[h]),
        });
        results.push(Result {
            kind: ResultKind::Above,
            chance: up_to.map(|p| 1.0 - p),
        });
        results
    }

    /// What a check saves on average, its cost taken off, and how it can come out.
    fn judge(&self, row: &CheckRow, before: f64) -> (f64, List<Outcome, 3>) {
        let recovered = self.settings.recovered || row.recovery;
        let mut outcomes = List::new(Outcome {
            result: ResultKind::Yes,
            probability: 0.0,
            leading: Fault::NoFault,
            leading_probability: 0.0,
        });
        let mut after = self.cost(row);
        for result in &self.results(row) {
            let mut belief = self.posterior.probability;
            let mut total = 0.0;
            for (p, chance) in belief.iter_mut().zip(result.chance) {
                *p *= chance;
                total += *p;
            }
            if total <= 0.0 {
                continue;
            }
            for p in &mut belief {
                *p /= total;
            }
            after += total * self.expected_cost(&belief, recovered);
            let (leading, leading_probability) = leading(&belief);
            outcomes.push(Outcome {
                result: result.kind,
                probability: total,
                leading,
                leading_probability,
            });
        }
        (before - after, outcomes)
    }

    /// Expected cost until the vehicle is repaired, in minutes of work.
    ///
    /// ECR = sum over the order of (1 - probability of those before) * cost.
    fn expected_cost(&self, belief: &[f64; HYPOTHESES], recovered: bool) -> f64 {
        let mut order: List<(f64, f64, bool), HYPOTHESES> = List::new((0.0, 0.0, false));
        for repair in &REPAIRS {
            let p = belief[index(repair.fault)];
            if p >= NEGLIGIBLE {
                let cost = repair.minutes + self.settings.money_weight * repair.money + VERIFY_MINUTES;
                order.push((p, cost, repair.recovery));
            }
        }
        let full = |(_, cost, recovery): &(f64, f64, bool)| {
            cost + if *recovery && !recovered { RECOVERY_MINUTES } else { 0.0 }
        };
        order
            .items_mut()
            .sort_unstable_by(|a, b| (b.0 * full(a)).total_cmp(&(a.0 * full(b))));
        let (mut expected, mut left, mut recovered) = (0.0, 1.0, recovered);
        for (p, cost, recovery) in &order {
            let first_recovery = *recovery && !recovered;
            expected += left * (cost + if first_recovery { RECOVERY_MINUTES } else { 0.0 });
            recovered |= *recovery;
            left -= p;
        }
        expected + f64::max(left, 0.0) * NONE_OF_THESE_MINUTES
    }
}

impl Result {
    const BLANK: Self = Self {
        kind: ResultKind::No,
        chance: [0.0; HYPOTHESES],
    };
}

fn two(yes: [f64; HYPOTHESES]) -> List<Result, 3> {
    let mut results = List::new(Result::BLANK);
    results.push(Result {
        kind: ResultKind::Yes,
        chance: yes,
    });
    results.push(Result {
        kind: ResultKind::No,
        chance: yes.map(|p| 1.0 - p),
    });
    results
}

const fn blank(check: Check, saving: Option<f64>) -> RankedCheck {
    let outcome = Outcome {
        result: ResultKind::No,
        probability: 0.0,
        leading: Fault::NoFault,
        leading_probability: 0.0,
    };
    RankedCheck {
        check,
        minutes: 0.0,
        money: 0.0,
        saving,
        outcomes: List::new(outcome),
    }
}

/// Minutes of starting, settling and reading. Source: engineering judgement.
const RUN_MINUTES: f64 = 10.0;

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
