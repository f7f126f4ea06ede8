//! Expected cost until the vehicle is repaired, when repairs are tried one after the other.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57:
//! with one fault at a time and independent costs the best order is that of probability over cost. A set-up that several
//! repairs share makes a block of those that repay it: the block is the start of their own order with the largest
//! probability over cost, set-up included (Sidney 1975, Operations Research 23(2):283-298, for jobs behind a common one).
//! Their service call, which ends the search at a fixed cost, is handing over; here the repair that it finds is paid too. It
//! comes after the repairs of the start of the order that makes the whole cheapest.

use super::super::checks::Repair;
use super::super::faults::index;
use super::super::list::List;
use super::super::posterior::HYPOTHESES;
use super::super::prices::Prices;
#[cfg(test)]
use super::super::tally::{self, Work};
use crate::names::Fault;
use crate::numerics::put_in_order;

/// What is less likely than this share is not repaired on its own: it is handed over with what is on no list.
pub(crate) const NEGLIGIBLE: f64 = 3e-4;

/// Repairs that can be tried.
pub(crate) const REPAIRS: usize = Fault::ALL.len();

/// One repair with the look whether it helped.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Job {
    pub(crate) fault: Fault,
    pub(crate) minutes: f64,
    pub(crate) recovery: bool,
}

/// The repairs and their costs in minutes of work.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Jobs {
    pub(crate) jobs: [Job; REPAIRS],
    /// Their places, those that repay their cost best first as far as that is known: an order that is nearly the right one
    /// is soon found.
    pub(crate) nearly: [usize; REPAIRS],
    /// The shared set-up: recovering the charge, evacuating, charging.
    pub(crate) recovery_minutes: f64,
    /// Somebody who knows more finds the cause, whatever it is; what he finds is then set right.
    pub(crate) hand_over_minutes: f64,
}

/// The repairs in their best order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Order {
    /// Expected minutes of all of them, one after the other, handed over when none helped.
    pub(crate) all_minutes: f64,
    /// The same when the rest is handed over where that is best.
    pub(crate) minutes: f64,
    /// The repair that comes first.
    pub(crate) first: Option<Fault>,
    /// Whether none is worth trying before it is handed over.
    pub(crate) hand_over: bool,
}

/// A job and its weight.
#[derive(Clone, Copy)]
struct Weighed {
    p: f64,
    minutes: f64,
    fault: Fault,
}

impl Weighed {
    const BLANK: Self = Self {
        p: 0.0,
        minutes: 1.0,
        fault: Fault::NoFault,
    };
}

type Queue = List<Weighed, REPAIRS>;

/// Whether `a` repays its cost better than `b`.
fn better(a: (f64, f64), b: (f64, f64)) -> bool {
    a.0 * b.1 > b.0 * a.1
}

impl Jobs {
    pub(crate) fn of(prices: &Prices, repairs: &'static [Repair; REPAIRS]) -> Self {
        let verify = prices.in_minutes(prices.verify);
        let mut jobs = [Job {
            fault: Fault::NoFault,
            minutes: 0.0,
            recovery: false,
        }; REPAIRS];
        for (job, row) in jobs.iter_mut().zip(repairs) {
            *job = Job {
                fault: row.fault,
                minutes: prices.in_minutes(prices.repair(row.fault)) + verify,
                recovery: row.recovery,
            };
        }
        Self {
            jobs,
            nearly: core::array::from_fn(|at| at),
            recovery_minutes: prices.in_minutes(prices.recovery),
            hand_over_minutes: prices.in_minutes(prices.unknown),
        }
    }

    /// The same for beliefs like this one, about which orders are asked for.
    pub(crate) fn about(mut self, belief: &[f64; HYPOTHESES]) -> Self {
        let worth = |at: &usize| (belief[index(self.jobs[*at].fault)], self.jobs[*at].minutes);
        put_in_order(&mut self.nearly, |a, b| better(worth(a), worth(b)));
        self
    }

    pub(crate) fn job(&self, fault: Fault) -> &Job {
        &self.jobs[index(fault)]
    }

    /// What trying repairs in the best order costs on average, and the first of them.
    ///
    /// `belief` need not sum to one: the cost grows with its sum, so that the branches of a check add up.
    pub(crate) fn order(&self, belief: &[f64; HYPOTHESES], recovered: bool) -> Order {
        #[cfg(test)]
        tally::one_more(Work::Order);
        let total: f64 = belief.iter().sum();
        let (mut open, mut closed) = (Queue::new(Weighed::BLANK), Queue::new(Weighed::BLANK));
        for at in self.nearly {
            let job = &self.jobs[at % REPAIRS];
            let p = belief[index(job.fault)];
            if p <= NEGLIGIBLE * total {
                continue;
            }
            let weighed = Weighed {
                p,
                minutes: job.minutes,
                fault: job.fault,
            };
            insert(
                if job.recovery && !recovered {
                    &mut closed
                } else {
                    &mut open
                },
                weighed,
            );
        }
        let (block, setup) = self.block(&closed);
        let alone =
            |queue: &Queue, recovery: f64| queue.iter().map(|job| job.p * (job.minutes + recovery)).sum::<f64>();
        let mut run = Run {
            minutes: 0.0,
            left: total,
            first: None,
            rest: alone(&open, 0.0) + alone(&closed, self.recovery_minutes),
            least: f64::INFINITY,
            hand_over_minutes: self.hand_over_minutes,
        };
        run.may_end();
        let at_once = run.least;
        let (mut next_open, mut next_closed) = (0, 0);
        loop {
            let candidate = open.get(next_open).map(|job| (job.p, job.minutes));
            let behind = if next_closed == 0 {
                block
            } else {
                closed.get(next_closed).map(|job| (job.p, job.minutes))
            };
            match (candidate, behind) {
                (None, None) => break,
                (Some(a), b) if b.is_none_or(|b| !better(b, a)) => {
                    run.take(&open[next_open]);
                    next_open += 1;
                }
                (None, Some(_)) | (Some(_), _) if next_closed == 0 => {
                    run.minutes += run.left * self.recovery_minutes;
                    run.rest -= self.recovery_minutes * closed.iter().map(|job| job.p).sum::<f64>();
                    for job in &closed[..setup] {
                        run.take(job);
                    }
                    next_closed = setup;
                }
                (None, Some(_)) | (Some(_), _) => {
                    run.take(&closed[next_closed]);
                    next_closed += 1;
                }
            }
        }
        Order {
            all_minutes: run.ended(),
            minutes: run.least,
            first: run.first,
            hand_over: at_once <= run.least,
        }
    }

    /// The start of the closed jobs that repays the set-up best: its probability and cost, and how many jobs it has.
    fn block(&self, closed: &Queue) -> (Option<(f64, f64)>, usize) {
        let (mut sum, mut best) = ((0.0, self.recovery_minutes), (None, 0));
        for (at, job) in closed.iter().enumerate() {
            sum = (sum.0 + job.p, sum.1 + job.minutes);
            if best.0.is_none_or(|known| better(sum, known)) {
                best = (Some(sum), at + 1);
            }
        }
        best
    }
}

/// The repairs done so far.
struct Run {
    minutes: f64,
    /// Probability that none of them helped.
    left: f64,
    first: Option<Fault>,
    /// What setting right the other faults costs on average, for who knows which it is.
    rest: f64,
    /// The least cost when the work is handed over after one of the repairs, before all, or after all.
    least: f64,
    hand_over_minutes: f64,
}

impl Run {
    fn take(&mut self, job: &Weighed) {
        self.first = self.first.or(Some(job.fault));
        self.minutes += self.left * job.minutes;
        self.left -= job.p;
        self.rest -= job.p * job.minutes;
        self.may_end();
    }

    /// The cost when the work is handed over now.
    fn ended(&self) -> f64 {
        self.minutes + self.left * self.hand_over_minutes + self.rest
    }

    fn may_end(&mut self) {
        self.least = f64::min(self.least, self.ended());
    }
}

/// Keeps the order of probability over cost; the lists are short.
fn insert(order: &mut Queue, job: Weighed) {
    let mut at = order.len();
    while at > 0 && better((job.p, job.minutes), (order[at - 1].p, order[at - 1].minutes)) {
        at -= 1;
    }
    order.push(job);
    let behind = &mut order.items_mut()[at..];
    if behind.len() > 1 {
        behind.rotate_right(1);
    }
}
