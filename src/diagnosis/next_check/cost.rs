//! Expected cost until the vehicle is repaired, when repairs are tried one after the other.
//!
//! Source: Heckerman, D., Breese, J.S. & Rommelse, K., 1995, Decision-theoretic troubleshooting, Comm. ACM 38(3):49-57: with
//! one fault at a time and independent costs the best order is that of probability over cost. Repairs that share a set-up are
//! done as a block: the first repairs of their own order, as many as give the largest probability over cost with the set-up
//! included (Sidney 1975, Operations Research 23(2):283-298, for jobs behind a common one). The service call of Heckerman et
//! al., which ends the search at a fixed cost, is handing over here, and the repair that it finds is paid too. It comes at the
//! place in the order where the total is cheapest.

use super::super::faults::HYPOTHESES;
#[cfg(test)]
use super::super::tally::{self, Work};
use crate::names::Fault;

/// What is less likely than this share is not repaired on its own: it is handed over with what is on no list.
pub(crate) const NEGLIGIBLE: f64 = 3e-4;

/// Number of repairs.
pub(crate) const REPAIRS: usize = Fault::ALL.len();

/// Probabilities of the hypotheses that are followed: the repairs of [`Jobs`] in their order, and last all that none of these
/// repairs sets right. Places from [`Jobs::followed`] on are not used.
pub(crate) type Belief = [f64; HYPOTHESES];

/// One repair with the look whether it helped.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Job {
    pub(crate) fault: Fault,
    pub(crate) minutes: f64,
    /// 1 / `minutes`.
    pub(crate) per_minute: f64,
    pub(crate) recovery: bool,
}

/// The repairs and their costs in minutes of work.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Jobs {
    /// In about the order of probability over cost, so that the exact order is found quickly.
    pub(crate) jobs: [Job; REPAIRS],
    /// How many of them there are.
    pub(crate) count: usize,
    /// The shared set-up: recovering the charge, evacuating, charging.
    pub(crate) recovery_minutes: f64,
    /// Handing over: somebody who knows more finds the cause, whatever it is; its repair is paid beside this.
    pub(crate) hand_over_minutes: f64,
    /// Lower bounds of the cost under each hypothesis that is followed: charge not yet recovered, and recovered.
    floors: [[f64; HYPOTHESES]; 2],
}

/// The repairs in their best order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Order {
    /// Expected minutes of all of them, one after the other, handed over when none helped.
    pub(crate) all_minutes: f64,
    /// The same, handed over at the best place in the order.
    pub(crate) minutes: f64,
    /// The place of the repair that comes first.
    pub(crate) first: Option<usize>,
    /// The same, except giving back a sound vehicle.
    pub(crate) first_fault: Option<usize>,
    /// The first repair for which the circuit stays closed, except giving back a sound vehicle.
    pub(crate) first_closed: Option<usize>,
    /// Whether none is worth trying before it is handed over.
    pub(crate) hand_over: bool,
    /// Expected minutes when it is handed over at once.
    pub(crate) at_once: f64,
    /// Expected minutes with the fault known, without the recovery: a lower bound whatever is looked at first.
    pub(crate) least: f64,
}

/// Places of jobs in the order of probability over cost.
struct Queue {
    places: [u8; REPAIRS],
    /// Probability over cost.
    worth: [f64; REPAIRS],
    len: usize,
}

impl Queue {
    const EMPTY: Self = Self {
        places: [0; REPAIRS],
        worth: [0.0; REPAIRS],
        len: 0,
    };

    /// Inserts in order, by linear search, as the queues are short.
    #[inline]
    fn insert(&mut self, new: usize, worth: f64) {
        let mut at = self.len.min(REPAIRS - 1);
        self.len = at + 1;
        while at > 0 && worth > self.worth[at - 1] {
            self.worth[at] = self.worth[at - 1];
            self.places[at] = self.places[at - 1];
            at -= 1;
        }
        self.worth[at] = worth;
        self.places[at] = new as u8;
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
        let (mut first, mut first_fault, mut first_closed) = (None, None, None);
        let run = self.tried(belief, recovered, |at| {
            let job = &self.jobs[at];
            first = first.or(Some(at));
            if job.fault != Fault::NoFault {
                first_fault = first_fault.or(Some(at));
                if !job.recovery {
                    first_closed = first_closed.or(Some(at));
                }
            }
        });
        Order {
            all_minutes: run.ended(),
            minutes: run.least,
            first,
            first_fault,
            first_closed,
            hand_over: run.at_once <= run.least,
            at_once: run.at_once,
            least: run.at_least,
        }
    }

    /// What trying repairs in the best order costs on average.
    pub(crate) fn minutes(&self, belief: &Belief, recovered: bool) -> f64 {
        self.tried(belief, recovered, |_| ()).least
    }

    /// Lower bound of the expected cost, whatever is found out: each fault costs its own repair, and what no repair sets right
    /// costs handing over.
    pub(crate) fn floor(&self, belief: &Belief, recovered: bool) -> f64 {
        let floors = &self.floors[usize::from(recovered)][..self.followed()];
        belief.iter().zip(floors).map(|(p, floor)| p * floor).sum()
    }

    /// The repairs, and as lower bounds what each costs when it is known to be the right one; `recovery` and `hand_over` in
    /// minutes.
    ///
    /// A fault that is too unlikely to be repaired on its own is handed over too, which costs less where its repair is
    /// expensive.
    pub(crate) fn of(jobs: [Job; REPAIRS], count: usize, recovery_minutes: f64, hand_over_minutes: f64) -> Self {
        let floors = [recovery_minutes, 0.0].map(|recovery_minutes| {
            let mut floors = [hand_over_minutes; HYPOTHESES];
            let mut dear = 0.0;
            for (floor, job) in floors.iter_mut().zip(&jobs[..count]) {
                *floor = job.minutes + if job.recovery { recovery_minutes } else { 0.0 };
                dear += f64::max(*floor - hand_over_minutes, 0.0);
            }
            floors.map(|floor| floor - NEGLIGIBLE * dear)
        });
        Self {
            jobs,
            count,
            recovery_minutes,
            hand_over_minutes,
            floors,
        }
    }

    /// Tries the repairs in the best order.
    #[inline]
    fn tried(&self, belief: &Belief, recovered: bool, mut try_next: impl FnMut(usize)) -> Run<'_> {
        #[cfg(test)]
        tally::one_more(Work::Order);
        let total: f64 = belief[..self.followed()].iter().sum();
        let (mut open, mut closed) = (Queue::EMPTY, Queue::EMPTY);
        let (mut at_least, mut closed_p) = (0.0, 0.0);
        for (at, (job, p)) in self.all().iter().zip(belief).enumerate() {
            if *p <= NEGLIGIBLE * total {
                continue;
            }
            at_least += p * job.minutes;
            if job.recovery && !recovered {
                closed_p += p;
                closed.insert(at, p * job.per_minute);
            } else {
                open.insert(at, p * job.per_minute);
            }
        }
        let (open, closed) = (open.all(), closed.all());
        let (block, setup) = self.block(closed.iter().map(|at| self.odds(belief, *at)));
        let rest = at_least + closed_p * self.recovery_minutes;
        let at_once = total * self.hand_over_minutes + rest;
        let mut run = Run {
            jobs: self,
            minutes: 0.0,
            left: total,
            rest,
            least: at_once,
            at_once,
            at_least,
        };
        let mut take = |run: &mut Run<'_>, at: u8| {
            try_next(usize::from(at));
            run.take(belief, at);
        };
        let before_block = |at: &u8| block.is_none_or(|block| !better(block, self.odds(belief, *at)));
        let mut open = open.iter().copied();
        let mut next = open.next();
        while let Some(at) = next.filter(before_block) {
            take(&mut run, at);
            next = open.next();
        }
        if block.is_some() {
            run.minutes += run.left * self.recovery_minutes;
            run.rest -= self.recovery_minutes * closed_p;
        }
        let (block, behind) = closed.split_at(setup);
        for at in block {
            take(&mut run, *at);
        }
        for closed in behind {
            while let Some(at) = next.filter(|at| !better(self.odds(belief, *closed), self.odds(belief, *at))) {
                take(&mut run, at);
                next = open.next();
            }
            take(&mut run, *closed);
        }
        while let Some(at) = next {
            take(&mut run, at);
            next = open.next();
        }
        run
    }

    /// Probability and cost of a repair.
    fn odds(&self, belief: &Belief, at: u8) -> (f64, f64) {
        (belief[usize::from(at)], self.jobs[usize::from(at)].minutes)
    }

    /// The block of jobs that is done right after the set-up: its probability and cost, and its number of jobs.
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
struct Run<'a> {
    jobs: &'a Jobs,
    minutes: f64,
    /// Probability that none of them helped.
    left: f64,
    /// Expected cost of repairing the faults not tried yet, each when it is known to be the right one.
    rest: f64,
    /// The least cost over all places at which the work can be handed over.
    least: f64,
    /// The cost when it is handed over at once.
    at_once: f64,
    /// Expected minutes with the fault known, without the recovery.
    at_least: f64,
}

impl Run<'_> {
    #[inline]
    fn take(&mut self, belief: &Belief, at: u8) {
        let (p, minutes) = self.jobs.odds(belief, at);
        self.minutes += self.left * minutes;
        self.left -= p;
        self.rest -= p * minutes;
        self.least = f64::min(self.least, self.ended());
    }

    /// The cost when the work is handed over now.
    fn ended(&self) -> f64 {
        self.minutes + self.left * self.jobs.hand_over_minutes + self.rest
    }
}
