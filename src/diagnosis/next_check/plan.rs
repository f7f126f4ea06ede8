//! A plan: which check or repair next, and what then, three steps deep.
//!
//! Every step is weighed by what it costs on average until the vehicle is repaired: to repair in the best order from here
//! on, to look first, or to repair first and think again. Source: Heckerman, Breese & Rommelse 1995, whose value of
//! information looks one step ahead; here it looks as deep as the plan is.

use super::super::answer::{Action, Branch, Plan, Step};
use super::super::faults::index;
use super::super::posterior::HYPOTHESES;
use super::cost::Jobs;
use super::{Prospect, leading};
use crate::names::{Fault, ResultKind};
use crate::numerics::put_in_order;

/// Steps that a plan looks ahead.
pub(crate) const DEPTH: usize = 3;

/// How many checks are followed further at each depth, the most promising ones by a single step; the last step weighs
/// all of them. Source: engineering judgement: what a plan may take in time.
pub(crate) const BEAM: [usize; DEPTH] = [4, 2, 0];

/// Beliefs and what was done.
#[derive(Clone, Copy)]
pub(crate) struct State {
    /// Probability of each hypothesis and of getting here; its sum is that of getting here.
    pub(crate) belief: [f64; HYPOTHESES],
    pub(crate) recovered: bool,
    /// The checks that tell nothing new, one bit each.
    pub(crate) used: u64,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Move {
    Check(usize),
    Repair(Fault),
    HandOver,
}

pub(crate) struct Search<'a> {
    pub(crate) jobs: &'a Jobs,
    pub(crate) prospects: &'a [Prospect],
    /// Checks followed further at each depth.
    pub(crate) beam: [usize; DEPTH],
    /// Whether any repair may come first, not only that of the best order.
    pub(crate) any_repair: bool,
}

impl State {
    fn total(&self) -> f64 {
        self.belief.iter().sum()
    }

    /// After a result of a check.
    fn after(&self, prospect: &Prospect, at: usize, result: usize) -> Self {
        let mut belief = self.belief;
        for (p, chance) in belief.iter_mut().zip(prospect.results[result].chance) {
            *p *= chance;
        }
        Self {
            belief,
            recovered: self.recovered || prospect.recovery,
            used: self.used | prospect.related | 1 << at,
        }
    }

    /// After a repair that did not help.
    fn without(&self, jobs: &Jobs, fault: Fault) -> Self {
        let mut next = *self;
        next.belief[index(fault)] = 0.0;
        next.recovered |= jobs.job(fault).recovery;
        next
    }
}

impl Search<'_> {
    /// Minutes of a check, the recovery included where it is not yet paid.
    fn check_minutes(&self, state: &State, prospect: &Prospect) -> f64 {
        prospect.minutes + self.recovery_minutes(state, prospect.recovery)
    }

    fn recovery_minutes(&self, state: &State, needed: bool) -> f64 {
        if needed && !state.recovered {
            self.jobs.recovery_minutes
        } else {
            0.0
        }
    }

    /// Expected minutes, times the probability of getting here, when `depth` steps are planned and the rest is repaired in
    /// the best order; and the first step.
    pub(crate) fn best(&self, state: &State, depth: usize) -> (f64, Move) {
        let total = state.total();
        let order = self.jobs.order(&state.belief, state.recovered);
        let first = order.first;
        let step = first.filter(|_| !order.hand_over).map_or(Move::HandOver, Move::Repair);
        let mut best = (order.minutes, step);
        if depth == 0 || total <= 0.0 {
            return best;
        }
        let mut consider = |value: f64, step: Move| {
            if value < best.0 {
                best = (value, step);
            }
        };
        if depth == 1 {
            for (at, prospect) in self.open(state) {
                consider(self.value(state, at, prospect, 0), Move::Check(at));
            }
            return best;
        }
        let mut ranked = [(f64::INFINITY, usize::MAX); u64::BITS as usize];
        let mut count = 0;
        for (at, prospect) in self.open(state) {
            ranked[count] = (self.value(state, at, prospect, 0), at);
            count += 1;
        }
        put_in_order(&mut ranked[..count], |a, b| a.0.total_cmp(&b.0).is_lt());
        let beam = self.beam[DEPTH - depth].min(count);
        for (_, at) in &ranked[..beam] {
            let value = self.value(state, *at, &self.prospects[*at], depth - 1);
            consider(value, Move::Check(*at));
        }
        for fault in Fault::ALL {
            if state.belief[index(fault)] > 0.0 && (self.any_repair || Some(fault) == first) {
                let job = self.jobs.job(fault);
                let minutes = job.minutes + self.recovery_minutes(state, job.recovery);
                let (after, _) = self.best(&state.without(self.jobs, fault), depth - 1);
                consider(total * minutes + after, Move::Repair(fault));
            }
        }
        best
    }

    /// Expected minutes when this check comes first and `depth` further steps are planned.
    fn value(&self, state: &State, at: usize, prospect: &Prospect, depth: usize) -> f64 {
        let mut value = state.total() * self.check_minutes(state, prospect);
        for result in 0..prospect.results.len() {
            value += self.best(&state.after(prospect, at, result), depth).0;
        }
        value
    }

    fn open(&self, state: &State) -> impl Iterator<Item = (usize, &Prospect)> {
        let used = state.used;
        self.prospects
            .iter()
            .enumerate()
            .take(u64::BITS as usize)
            .filter(move |(at, _)| used & 1 << at == 0)
    }

    /// The tree from a state; `forced` is a check that has to come first.
    pub(crate) fn plan(&self, state: &State, forced: Option<usize>) -> Plan {
        let (expected, step) = match forced {
            Some(at) => (self.value(state, at, &self.prospects[at], DEPTH - 1), Move::Check(at)),
            None => self.best(state, DEPTH),
        };
        let mut plan = Plan {
            expected_minutes: expected,
            without_checks_minutes: self.jobs.order(&state.belief, state.recovered).all_minutes,
            ..Plan::EMPTY
        };
        self.grow(&mut plan, state, step, DEPTH - 1);
        plan
    }

    /// Adds a step and those below it; where it stands in the plan.
    fn grow(&self, plan: &mut Plan, state: &State, step: Move, depth: usize) -> Option<usize> {
        let at = plan.steps.len();
        let blank = Step {
            probability: state.total(),
            ..Step::BLANK
        };
        match step {
            Move::HandOver => plan.steps.push(Step {
                action: Action::HandOver,
                minutes: self.jobs.hand_over_minutes,
                ..blank
            }),
            Move::Check(check) => {
                let prospect = &self.prospects[check];
                plan.steps.push(Step {
                    action: Action::Check(prospect.check),
                    minutes: self.check_minutes(state, prospect),
                    recovers: prospect.recovery && !state.recovered,
                    ..blank
                });
                for (result, outcome) in prospect.results.iter().enumerate() {
                    let next = state.after(prospect, check, result);
                    let branch = self.branch(plan, state, &next, outcome.kind, depth);
                    self.hang(
                        plan,
                        at,
                        Branch {
                            observation: outcome.observation,
                            ..branch
                        },
                    );
                }
            }
            Move::Repair(fault) => {
                let job = self.jobs.job(fault);
                plan.steps.push(Step {
                    action: Action::Repair(fault),
                    minutes: job.minutes + self.recovery_minutes(state, job.recovery),
                    recovers: job.recovery && !state.recovered,
                    ..blank
                });
                let helped = state.belief[index(fault)];
                self.hang(
                    plan,
                    at,
                    Branch {
                        result: ResultKind::Yes,
                        probability: helped / state.total(),
                        leading: fault,
                        leading_probability: 1.0,
                        ..Branch::BLANK
                    },
                );
                let next = state.without(self.jobs, fault);
                let branch = self.branch(plan, state, &next, ResultKind::No, depth);
                self.hang(plan, at, branch);
            }
        }
        Some(at)
    }

    fn branch(&self, plan: &mut Plan, from: &State, next: &State, result: ResultKind, depth: usize) -> Branch {
        let total = next.total();
        let (leading, p) = leading(&next.belief);
        let deeper = depth > 0 && total > 0.0;
        Branch {
            result,
            observation: None,
            probability: total / from.total(),
            leading,
            leading_probability: if total > 0.0 { p / total } else { 0.0 },
            next: deeper
                .then(|| self.grow(plan, next, self.best(next, depth).1, depth - 1))
                .flatten(),
        }
    }

    fn hang(&self, plan: &mut Plan, at: usize, branch: Branch) {
        if let Some(step) = plan.steps.items_mut().get_mut(at) {
            step.branches.push(branch);
        }
    }
}
