//! The search for the next step, some steps ahead.
//!
//! Every step is weighed by what it costs on average until the vehicle is repaired: to repair in the best order from here
//! on, to look first, or to repair first and think again. Source: Heckerman, Breese & Rommelse 1995, whose value of
//! information looks one step ahead; here it looks as deep as the plan is.

use super::super::answer::Action;
use super::cost::{Belief, Jobs, Order};
use super::prospect::{Prospect, Prospects, Result};
use crate::names::{Check, Fault};
use crate::numerics::put_in_order;

/// Steps that a plan looks ahead.
pub(crate) const DEPTH: usize = 3;

/// How many checks are followed further at each depth, the most promising ones by a single step; the last step weighs all that
/// are considered.
///
/// Chosen with `examples/evaluate_repair_cost`, 3,000 vehicles, by what it saves against its informed list, and by the
/// instructions of a diagnosis with its plan. Four, and [`FOLLOWED`] of 8 and 4: 18.3 %. Three, and 6 and 4: 17.9 %, with an
/// eighth fewer instructions. Four, and 10 and 6: 18.6 %, with an eighth more. The standard error of each is 0.7 %, that of a
/// difference less, as the vehicles are the same.
pub(crate) const BEAM: [usize; DEPTH] = [4, 1, 0];

/// How many checks are considered after each depth, the most promising ones by a single step, beside those that have to come
/// first. Source: as [`BEAM`].
pub(crate) const FOLLOWED: [usize; DEPTH] = [8, 4, 0];

/// Expected minutes that differ by less than this part of them are equal: rounding does not choose a check.
const EQUAL: f64 = 1e-12;

/// Beliefs and what was done.
#[derive(Clone, Copy)]
pub(crate) struct State {
    /// Probability of each hypothesis and of getting here; its sum is that of getting here.
    pub(crate) belief: Belief,
    pub(crate) recovered: bool,
    /// The checks that tell nothing new, one bit each.
    pub(crate) used: u64,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Move {
    /// The look at this place.
    Check(usize),
    /// The repair at this place.
    Repair(usize),
    HandOver,
    /// The vehicle is given back as sound.
    Nothing,
}

impl Move {
    /// The place of the check that it is.
    pub(crate) const fn check(self) -> Option<usize> {
        match self {
            Self::Check(at) => Some(at),
            Self::Repair(_) | Self::HandOver | Self::Nothing => None,
        }
    }
}

pub(crate) struct Search<'a> {
    pub(crate) jobs: &'a Jobs,
    pub(crate) prospects: &'a Prospects,
    /// Checks followed further at each depth.
    pub(crate) beam: [usize; DEPTH],
    /// How many checks are considered after each depth, the most promising ones by a single step.
    pub(crate) followed: [usize; DEPTH],
    /// The looks that are considered, one bit each.
    pub(crate) within: u64,
    /// Whether any repair may come first, not only that of the best order.
    pub(crate) any_repair: bool,
}

/// All that can come next, weighed.
pub(crate) struct Weighing {
    /// Expected minutes of each look that may come, and its place; the best first.
    checks: [(f64, usize); Check::ALL.len()],
    count: usize,
    /// Expected minutes without a look now, and the step; infinite where a look has to come first.
    pub(crate) without: (f64, Move),
    /// Expected minutes of all repairs in the best order, whether they may come or not.
    order_minutes: f64,
    /// The same, never handed over before the last.
    pub(crate) all_minutes: f64,
    /// The looks that are considered after the next step, one bit each.
    pub(crate) within: u64,
}

impl Weighing {
    /// Expected minutes of each look that may come, and its place; the best first.
    pub(crate) fn checks(&self) -> &[(f64, usize)] {
        &self.checks[..self.count]
    }

    /// Expected minutes of the best step, and the step.
    pub(crate) fn best(&self) -> (f64, Move) {
        match self.checks().first() {
            Some((value, at)) if *value < self.without.0 => (*value, Move::Check(*at)),
            Some(_) | None => self.without,
        }
    }

    /// Expected minutes without a look now; where one has to come first, those of the repairs in their best order.
    pub(crate) fn without_minutes(&self) -> f64 {
        if self.without.0.is_finite() {
            self.without.0
        } else {
            self.order_minutes
        }
    }
}

impl State {
    pub(crate) fn total(&self) -> f64 {
        self.belief.iter().sum()
    }

    /// After a result of a check.
    pub(crate) fn after(&self, prospects: &Prospects, at: usize, result: &Result) -> Self {
        let prospect = &prospects.all()[at];
        let mut next = *self;
        prospects.learn(&mut next.belief, prospect, result);
        next.recovered |= prospect.recovery;
        next.used |= prospect.related | 1 << at;
        next
    }

    /// After a repair that did not help.
    pub(crate) fn without(&self, jobs: &Jobs, at: usize) -> Self {
        let mut next = *self;
        next.belief[at] = 0.0;
        next.recovered |= jobs.jobs[at].recovery;
        next
    }
}

impl Search<'_> {
    /// Minutes of a check, the recovery included where it is not yet paid.
    pub(crate) fn check_minutes(&self, state: &State, prospect: &Prospect) -> f64 {
        prospect.minutes + self.recovery_minutes(state, prospect.recovery)
    }

    /// Minutes of a repair, the recovery included where it is not yet paid.
    pub(crate) fn repair_minutes(&self, state: &State, at: usize) -> f64 {
        let job = &self.jobs.jobs[at];
        job.minutes + self.recovery_minutes(state, job.recovery)
    }

    fn recovery_minutes(&self, state: &State, needed: bool) -> f64 {
        if needed && !state.recovered {
            self.jobs.recovery_minutes
        } else {
            0.0
        }
    }

    /// Minutes of the looks without which nothing is opened, times the probability of getting here.
    fn owed_minutes(&self, state: &State) -> f64 {
        if self.may_open(state) {
            return 0.0;
        }
        let readings = self.prospects.before_opening & !state.used;
        let before_them = self.looks(readings).fold(0, |bits, prospect| bits | prospect.after);
        let owed = self.looks((readings | before_them) & !state.used);
        state.total() * owed.map(|prospect| prospect.minutes).sum::<f64>()
    }

    /// The looks of these bits.
    fn looks(&self, bits: u64) -> impl Iterator<Item = &Prospect> {
        let all = self.prospects.all().iter().enumerate();
        all.filter(move |(at, _)| bits & 1 << at != 0)
            .map(|(_, prospect)| prospect)
    }

    /// Whether everything is read that has to be read before the circuit is opened.
    fn may_open(&self, state: &State) -> bool {
        state.recovered || self.prospects.before_opening & !state.used == 0
    }

    /// The step of this name; `None` where it cannot be taken any more.
    pub(crate) fn step(&self, action: Action) -> Option<Move> {
        match action {
            Action::Check(check) => self.prospects.place(check).map(Move::Check),
            Action::Repair(fault) => {
                let place = self.jobs.all().iter().position(|job| job.fault == fault);
                place.map(Move::Repair)
            }
            Action::HandOver => Some(Move::HandOver),
        }
    }

    /// Expected minutes when this step comes first, weighed as deep as a plan is; `None` where it may not come.
    pub(crate) fn minutes_of(&self, state: &State, step: Move, weighing: &Weighing) -> Option<f64> {
        let narrowed = Search {
            within: weighing.within,
            ..*self
        };
        match step {
            Move::Check(at) => {
                let prospect = &self.prospects.all()[at];
                let may_come = self.open(state).any(|(open, _)| open == at);
                may_come.then(|| narrowed.value(state, at, prospect, DEPTH - 1))
            }
            Move::Repair(at) => {
                let may_come = self.may_open(state) || !self.jobs.jobs[at].recovery;
                may_come.then(|| {
                    let (after, _) = narrowed.best(&state.without(self.jobs, at), DEPTH - 1);
                    state.total() * self.repair_minutes(state, at) + after
                })
            }
            Move::HandOver => {
                let order = self.jobs.order(&state.belief, state.recovered);
                self.may_open(state).then_some(order.at_once)
            }
            Move::Nothing => None,
        }
    }

    /// The action of a step; `None` where nothing is left to do.
    pub(crate) fn action(&self, step: Move) -> Option<Action> {
        match step {
            Move::Check(at) => Some(Action::Check(self.prospects.all()[at].check)),
            Move::Repair(at) => Some(Action::Repair(self.jobs.jobs[at].fault)),
            Move::HandOver => Some(Action::HandOver),
            Move::Nothing => None,
        }
    }

    /// All that can come next, weighed as deep as a plan is.
    pub(crate) fn weigh(&self, state: &State) -> Weighing {
        self.weigh_ahead(state, DEPTH)
    }

    /// Expected minutes, times the probability of getting here, when `depth` steps are planned and the rest is repaired in
    /// the best order; and the first step.
    pub(crate) fn best(&self, state: &State, depth: usize) -> (f64, Move) {
        if depth == 0 {
            let minutes = self.jobs.minutes(&state.belief, state.recovered);
            return (minutes + self.owed_minutes(state), Move::HandOver);
        }
        if depth > 1 {
            return self.weigh_ahead(state, depth).best();
        }
        let order = self.jobs.order(&state.belief, state.recovered);
        let mut best = self.without_look(state, &order, depth);
        for (at, prospect) in self.open(state) {
            if let Some(value) = self.last_look(state, at, prospect, best.0) {
                best = (value, Move::Check(at));
            }
        }
        best
    }

    /// Expected minutes when this check is the last step that is planned; `None` where they are no less than `most`: the sum
    /// stops as soon as the results so far and the lower bounds of the others reach it.
    fn last_look(&self, state: &State, at: usize, prospect: &Prospect, most: f64) -> Option<f64> {
        let mut value = state.total() * self.check_minutes(state, prospect);
        let mut floor = self.jobs.floor(&state.belief, state.recovered || prospect.recovery);
        for result in prospect.results() {
            if value + floor >= most + EQUAL * most {
                return None;
            }
            let next = state.after(self.prospects, at, &result);
            value += self.jobs.minutes(&next.belief, next.recovered) + self.owed_minutes(&next);
            floor -= self.jobs.floor(&next.belief, next.recovered);
        }
        (value < most).then_some(value)
    }

    /// Lower bound of the expected minutes when this check comes first.
    fn at_least(&self, state: &State, order: &Order, prospect: &Prospect) -> f64 {
        state.total() * self.check_minutes(state, prospect) + order.least
    }

    fn weigh_ahead(&self, state: &State, depth: usize) -> Weighing {
        let order = self.jobs.order(&state.belief, state.recovered);
        let mut weighing = Weighing {
            checks: [(f64::INFINITY, usize::MAX); Check::ALL.len()],
            count: 0,
            without: self.without_look(state, &order, depth),
            order_minutes: order.minutes + self.owed_minutes(state),
            all_minutes: order.all_minutes,
            within: self.within,
        };
        for (at, prospect) in self.open(state) {
            if self.at_least(state, &order, prospect) < weighing.without.0 {
                weighing.checks[weighing.count] = (self.value(state, at, prospect, 0), at);
                weighing.count += 1;
            }
        }
        let checks = &mut weighing.checks[..weighing.count];
        // Of equals the first in the catalogue: two checks, one after the other, save the same in either order.
        let cheaper = |a: &(f64, usize), b: &(f64, usize)| a.0 < b.0 - EQUAL * order.all_minutes;
        put_in_order(checks, cheaper);
        let passed_over = checks.iter().skip(self.followed[DEPTH - depth.min(DEPTH)]);
        weighing.within &= !passed_over.fold(0, |bits, (_, at)| bits | 1 << at);
        weighing.within |= self.prospects.before_opening;
        let narrowed = Search {
            within: weighing.within,
            ..*self
        };
        let beam = self.beam[DEPTH - depth.min(DEPTH)].min(checks.len());
        for (value, at) in &mut checks[..beam] {
            *value = narrowed.value(state, *at, &self.prospects.all()[*at], depth.saturating_sub(1));
        }
        put_in_order(checks, cheaper);
        weighing
    }

    /// Expected minutes without a look now, and the step; infinite where a look has to come first.
    fn without_look(&self, state: &State, order: &Order, depth: usize) -> (f64, Move) {
        let total = state.total();
        if total <= 0.0 {
            return (order.minutes, Move::HandOver);
        }
        let may_open = self.may_open(state);
        let leading = self.jobs.leading_fault(&state.belief).0;
        let may_come = |at: &usize| {
            let job = &self.jobs.jobs[*at];
            if job.fault == Fault::NoFault {
                may_open && leading == Fault::NoFault
            } else {
                may_open || !job.recovery
            }
        };
        let firsts = [order.first, order.first_fault, order.first_closed];
        let first = firsts.into_iter().flatten().find(may_come);
        let mut best = (f64::INFINITY, Move::HandOver);
        if may_open {
            let named = first.filter(|_| !order.hand_over);
            best = (order.minutes, named.map_or(Move::HandOver, |at| self.mend(at)));
        }
        if depth > 1 {
            for (at, job) in self.jobs.all().iter().enumerate() {
                let wanted = state.belief[at] > 0.0 && (self.any_repair || Some(at) == first);
                if wanted && job.fault != Fault::NoFault && may_come(&at) {
                    let (after, _) = self.best(&state.without(self.jobs, at), depth - 1);
                    let value = total * self.repair_minutes(state, at) + after;
                    if value < best.0 {
                        best = (value, Move::Repair(at));
                    }
                }
            }
        }
        best
    }

    /// Setting right a fault; a sound vehicle is given back.
    fn mend(&self, at: usize) -> Move {
        if self.jobs.jobs[at].fault == Fault::NoFault {
            Move::Nothing
        } else {
            Move::Repair(at)
        }
    }

    /// Expected minutes when this check comes first and `depth` further steps are planned.
    pub(crate) fn value(&self, state: &State, at: usize, prospect: &Prospect, depth: usize) -> f64 {
        let mut value = state.total() * self.check_minutes(state, prospect);
        for result in prospect.results() {
            value += self.best(&state.after(self.prospects, at, &result), depth).0;
        }
        value
    }

    /// The looks that may come.
    fn open(&self, state: &State) -> impl Iterator<Item = (usize, &Prospect)> {
        let all = self.prospects.all().iter().enumerate();
        all.filter(move |(at, prospect)| {
            self.within & !state.used & 1 << at != 0 && prospect.may_come(state.used, self.jobs, &state.belief)
        })
    }
}
