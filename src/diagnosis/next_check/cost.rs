//! Expected cost until the vehicle is repaired, when repairs are tried one after the other.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57:
//! with one fault at a time and independent costs the best order is that of probability over cost. A set-up that several
//! repairs share makes a block of those that repay it: the block is the start of their own order with the largest
//! probability over cost, set-up included (Sidney 1975, Operations Research 23(2):283-298, for jobs behind a common one).
//! Their service call, which ends the search at a fixed cost, is handing over; here the repair that it finds is paid too. It
//! comes after the repairs of the start of the order that makes the whole cheapest.

use super::super::faults::HYPOTHESES;
#[cfg(test)]
use super::super::tally::{self, Work};
use crate::names::Fault;

/// What is less likely than this share is not repaired on its own: it is handed over with what is on no list.
pub(crate) const NEGLIGIBLE: f64 = 3e-4;

/// Repairs that can be tried.
pub(crate) const REPAIRS: usize = Fault::ALL.len();

/// Probabilities of the hypotheses that are followed: the repairs of [`Jobs`] in their order, and behind them all that no
/// repair of theirs sets right. Places from [`Jobs::followed`] on are not used.
pub(crate) type Belief = [f64; HYPOTHESES];

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
    /// Those that repay their cost best first, as far as that is known: the order is then soon found.
    pub(crate) jobs: [Job; REPAIRS],
    /// How many of them there are.
    pub(crate) count: usize,
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
    /// The place of the repair that comes first.
    pub(crate) first: Option<usize>,
    /// The same, a sound vehicle aside.
    pub(crate) first_fault: Option<usize>,
    /// The first of those for which the circuit stays closed, a sound vehicle aside.
    pub(crate) first_closed: Option<usize>,
    /// Whether none is worth trying before it is handed over.
    pub(crate) hand_over: bool,
    /// Expected minutes for who knows the fault, the recovery aside: no looks can do with less.
    pub(crate) least: f64,
}

/// Places of jobs in the order of probability over cost.
struct Queue {
    places: [u8; REPAIRS],
    len: usize,
}

impl Queue {
    const EMPTY: Self = Self {
        places: [0; REPAIRS],
        len: 0,
    };

    /// Keeps the order of probability over cost; the queues are short.
    #[inline]
    fn insert(&mut self, jobs: &Jobs, belief: &Belief, new: usize) {
        let Some(places) = self.places.get_mut(..=self.len) else {
            return;
        };
        let of = |at: usize| (belief[at], jobs.jobs[at].minutes);
        let mut at = places.len() - 1;
        places[at] = new as u8;
        while at > 0 && better(of(new), of(usize::from(places[at - 1]))) {
            places.swap(at - 1, at);
            at -= 1;
        }
        self.len += 1;
    }

    fn all(&self) -> &[u8] {
        self.places.get(..self.len).unwrap_or(&self.places)
    }
}

/// Whether `a` repays its cost better than `b`.
fn better(a: (f64, f64), b: (f64, f64)) -> bool {
    a.0 * b.1 > b.0 * a.1
}

impl Jobs {
    /// How many hypotheses are followed: the repairs, and what none of them sets right.
    pub(crate) fn followed(&self) -> usize {
        self.count + 1
    }

    /// The repairs.
    pub(crate) fn all(&self) -> &[Job] {
        &self.jobs[..self.count]
    }

    /// The place of the likeliest repair and its probability; none where nothing has any.
    pub(crate) fn leading(&self, belief: &Belief) -> (Option<usize>, f64) {
        let mut best = (None, 0.0);
        for (at, p) in belief.iter().enumerate().take(self.count) {
            // Of equals the first in the vocabulary leads.
            let before = |other: usize| self.jobs[at].fault < self.jobs[other].fault;
            if *p > best.1 || (*p == best.1 && best.0.is_some_and(before)) {
                best = (Some(at), *p);
            }
        }
        best
    }

    /// The fault of the likeliest repair and its probability.
    pub(crate) fn leading_fault(&self, belief: &Belief) -> (Fault, f64) {
        let (at, p) = self.leading(belief);
        (at.map_or(Fault::NoFault, |at| self.jobs[at].fault), p)
    }

    /// What trying repairs in the best order costs on average, and the first of them.
    ///
    /// `belief` need not sum to one: the cost grows with its sum, so that the branches of a check add up.
    pub(crate) fn order(&self, belief: &Belief, recovered: bool) -> Order {
        #[cfg(test)]
        tally::one_more(Work::Order);
        let total: f64 = belief[..self.followed()].iter().sum();
        let (mut open, mut closed) = (Queue::EMPTY, Queue::EMPTY);
        let (mut alone, mut least, mut closed_p) = (0.0, 0.0, 0.0);
        for (at, (job, p)) in self.all().iter().zip(belief).enumerate() {
            if *p <= NEGLIGIBLE * total {
                continue;
            }
            least += p * job.minutes;
            if job.recovery && !recovered {
                alone += p * (job.minutes + self.recovery_minutes);
                closed_p += p;
                closed.insert(self, belief, at);
            } else {
                alone += p * job.minutes;
                open.insert(self, belief, at);
            }
        }
        let (open, closed) = (open.all(), closed.all());
        let of = |at: &u8| (belief[usize::from(*at)], self.jobs[usize::from(*at)].minutes);
        let (block, setup) = self.block(closed.iter().map(of));
        let mut run = Run {
            minutes: 0.0,
            left: total,
            first: None,
            first_fault: None,
            rest: alone,
            least: f64::INFINITY,
            hand_over_minutes: self.hand_over_minutes,
        };
        run.may_end();
        let at_once = run.least;
        let (mut next_open, mut next_closed) = (0, 0);
        loop {
            let candidate = open.get(next_open).map(of);
            let behind = if next_closed == 0 {
                block
            } else {
                closed.get(next_closed).map(of)
            };
            match (candidate, behind) {
                (None, None) => break,
                (Some(a), b) if b.is_none_or(|b| !better(b, a)) => {
                    run.take(self, belief, open[next_open]);
                    next_open += 1;
                }
                (None, Some(_)) | (Some(_), _) if next_closed == 0 => {
                    run.minutes += run.left * self.recovery_minutes;
                    run.rest -= self.recovery_minutes * closed_p;
                    for at in &closed[..setup] {
                        run.take(self, belief, *at);
                    }
                    next_closed = setup;
                }
                (None, Some(_)) | (Some(_), _) => {
                    run.take(self, belief, closed[next_closed]);
                    next_closed += 1;
                }
            }
        }
        let stays_closed = |job: &Job| job.fault != Fault::NoFault && !job.recovery;
        Order {
            all_minutes: run.ended(),
            minutes: run.least,
            first: run.first,
            first_fault: run.first_fault,
            first_closed: open
                .iter()
                .map(|at| usize::from(*at))
                .find(|at| stays_closed(&self.jobs[*at])),
            hand_over: at_once <= run.least,
            least,
        }
    }

    /// The start of the closed jobs that repays the set-up best: its probability and cost, and how many jobs it has.
    fn block(&self, closed: impl Iterator<Item = (f64, f64)>) -> (Option<(f64, f64)>, usize) {
        let (mut sum, mut best) = ((0.0, self.recovery_minutes), (None, 0));
        for (at, (p, minutes)) in closed.enumerate() {
            sum = (sum.0 + p, sum.1 + minutes);
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
    first: Option<usize>,
    /// The same, a sound vehicle aside.
    first_fault: Option<usize>,
    /// What setting right the other faults costs on average, for who knows which it is.
    rest: f64,
    /// The least cost when the work is handed over after one of the repairs, before all, or after all.
    least: f64,
    hand_over_minutes: f64,
}

impl Run {
    fn take(&mut self, jobs: &Jobs, belief: &Belief, at: u8) {
        let at = usize::from(at);
        let (p, job) = (belief[at], &jobs.jobs[at]);
        self.first = self.first.or(Some(at));
        if job.fault != Fault::NoFault {
            self.first_fault = self.first_fault.or(Some(at));
        }
        self.minutes += self.left * job.minutes;
        self.left -= p;
        self.rest -= p * job.minutes;
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
