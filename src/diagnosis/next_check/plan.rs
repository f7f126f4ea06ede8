//! A plan: which check or repair next, and what then, three steps deep.

use super::super::answer::{Branch, Plan, Step};
use super::search::{DEPTH, Move, Search, State, Weighing};
use crate::names::{Observation, ResultKind};

impl Search<'_> {
    /// Puts the tree from a state into an empty plan, `step` first.
    #[inline(never)] // so that all looks ahead are worked out on less stack
    pub(crate) fn grow_into(&self, plan: &mut Plan, state: &State, step: Move, weighing: &Weighing) {
        let (best, likely) = weighing.best();
        plan.expected_minutes = match step {
            Move::Check(at) if step != likely => self.value(state, at, &self.prospects.all()[at], DEPTH - 1),
            _ if step != likely => self.minutes_of(state, step, weighing).unwrap_or(best),
            Move::Check(_) | Move::Repair(_) | Move::HandOver | Move::Nothing => best,
        };
        plan.without_checks_minutes = weighing.all_minutes;
        let narrowed = Search {
            within: weighing.within,
            ..*self
        };
        narrowed.grow(plan, state, step, DEPTH - 1);
    }

    /// Adds a step and all that follow it, and gives its place in the plan; `None` where nothing is left to do.
    fn grow(&self, plan: &mut Plan, state: &State, step: Move, depth: usize) -> Option<usize> {
        let at = plan.steps.len();
        let blank = Step {
            action: self.action(step)?,
            probability: state.total(),
            ..Step::BLANK
        };
        match step {
            Move::Nothing => {}
            Move::HandOver => plan.steps.push(Step {
                minutes: self.jobs.hand_over_minutes,
                ..blank
            }),
            Move::Check(check) => {
                let prospect = &self.prospects.all()[check];
                plan.steps.push(Step {
                    minutes: self.check_minutes(state, prospect),
                    recovers: prospect.recovery && !state.recovered,
                    ..blank
                });
                for result in prospect.results() {
                    let next = state.after(self.prospects, check, &result);
                    self.branch(plan, (at, state), &next, (result.kind, result.observation), depth);
                }
            }
            Move::Repair(repair) => {
                let job = &self.jobs.jobs[repair];
                plan.steps.push(Step {
                    minutes: self.repair_minutes(state, repair),
                    recovers: job.recovery && !state.recovered,
                    ..blank
                });
                let helped = Branch {
                    result: ResultKind::Yes,
                    probability: state.belief[repair] / state.total(),
                    leading: job.fault,
                    leading_probability: 1.0,
                    ..Branch::BLANK
                };
                self.hang(plan, at, helped);
                let next = state.without(self.jobs, repair);
                self.branch(plan, (at, state), &next, (ResultKind::No, None), depth);
            }
        }
        Some(at)
    }

    /// Adds a branch to the step at `from`, and what comes then.
    fn branch(
        &self,
        plan: &mut Plan,
        (at, from): (usize, &State),
        next: &State,
        (result, observation): (ResultKind, Option<Observation>),
        depth: usize,
    ) {
        let total = next.total();
        let (leading, p) = self.jobs.leading_fault(&next.belief);
        let deeper = depth > 0 && total > 0.0;
        let branch = Branch {
            result,
            observation,
            probability: total / from.total(),
            leading,
            leading_probability: if total > 0.0 { p / total } else { 0.0 },
            next: deeper
                .then(|| self.grow(plan, next, self.best(next, depth).1, depth - 1))
                .flatten(),
        };
        self.hang(plan, at, branch);
    }

    fn hang(&self, plan: &mut Plan, at: usize, branch: Branch) {
        if let Some(step) = plan.steps.items_mut().get_mut(at) {
            step.branches.push(branch);
        }
    }
}
