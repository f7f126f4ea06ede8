//! The order of repairs and the value of looking ahead, compared with an enumeration of everything that could be done.

use super::super::answer::Action;
use super::super::faults::{HYPOTHESES, NONE};
use super::cost::{Job, Jobs, NEGLIGIBLE, Order, REPAIRS};
use super::prospect::Shows;
use super::search::DEPTH;
use super::*;
use crate::names::Observation;

/// Number of faults, the first of the vocabulary, that are possible in the small examples of these tests.
const FEW: usize = 5;

/// Numbers between 0 and 1 from a counter. Source: Steele, Lea & Flood 2014 (SplitMix64).
struct Random(u64);

impl Random {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }
}

fn jobs(random: &mut Random) -> Jobs {
    let jobs = core::array::from_fn(|at| {
        let minutes = 5.0 + 300.0 * random.next();
        Job {
            // The sound vehicle, which is not repaired, comes last and is not possible.
            fault: Fault::ALL[REPAIRS - 1 - at],
            minutes,
            per_minute: 1.0 / minutes,
            recovery: random.next() < 0.5,
        }
    });
    Jobs::of(jobs, REPAIRS, 80.0 * random.next(), 240.0)
}

fn belief(random: &mut Random, few: usize) -> [f64; HYPOTHESES] {
    let mut belief = [0.0; HYPOTHESES];
    for p in &mut belief[..few] {
        *p = random.next();
    }
    belief[NONE] = 0.3 * random.next();
    let total: f64 = belief.iter().sum();
    belief.map(|p| p / total)
}

fn prospects(random: &mut Random, many: usize) -> Prospects {
    let each = (0..many).map(|at| {
        let yes: [f64; HYPOTHESES] = core::array::from_fn(|_| 0.15 + 0.7 * random.next());
        let prospect = Prospect {
            check: Check::ALL[at],
            minutes: 25.0 * random.next(),
            recovery: at == 0,
            shows: Shows::Answer(Observation::ALL[at]),
            ..Prospect::BLANK
        };
        (prospect, yes)
    });
    Prospects::of(each)
}

/// A search over these repairs and looks; `any_repair` lets any repair come first, not only that of the best order.
fn search<'a>(jobs: &'a Jobs, looks: &'a Prospects, beam: [usize; DEPTH], any_repair: bool) -> Search<'a> {
    Search {
        jobs,
        prospects: looks,
        beam,
        followed: beam,
        within: u64::MAX,
        any_repair,
    }
}

/// The cost of one order of repairs, step by step.
fn cost_of(jobs: &Jobs, order: &[usize], belief: &[f64; HYPOTHESES], mut recovered: bool) -> f64 {
    let (mut minutes, mut left) = (0.0, 1.0);
    for at in order {
        let job = &jobs.jobs[*at];
        if job.recovery && !recovered {
            minutes += left * jobs.recovery_minutes;
            recovered = true;
        }
        minutes += left * job.minutes;
        left -= belief[*at];
    }
    minutes + left * jobs.hand_over_minutes
}

/// The least cost over all orders of the faults that are possible.
fn cheapest_order(jobs: &Jobs, belief: &[f64; HYPOTHESES], recovered: bool) -> f64 {
    fn extend(order: &mut Vec<usize>, left: &[usize], jobs: &Jobs, belief: &[f64; HYPOTHESES], recovered: bool) -> f64 {
        if left.is_empty() {
            return cost_of(jobs, order, belief, recovered);
        }
        let mut least = f64::INFINITY;
        for at in left {
            order.push(*at);
            let rest: Vec<usize> = left.iter().copied().filter(|other| other != at).collect();
            least = least.min(extend(order, &rest, jobs, belief, recovered));
            order.pop();
        }
        least
    }
    let possible: Vec<usize> = (0..REPAIRS).filter(|at| belief[*at] > 0.0).collect();
    extend(&mut Vec::new(), &possible, jobs, belief, recovered)
}

#[test]
fn no_order_of_repairs_is_cheaper() {
    let mut random = Random(1);
    for round in 0..300 {
        let jobs = jobs(&mut random);
        let belief = belief(&mut random, 1 + round % 6);
        for recovered in [false, true] {
            let ours = jobs.order(&belief, recovered).all_minutes;
            let least = cheapest_order(&jobs, &belief, recovered);
            assert!((ours - least).abs() < 1e-9 * least, "{round}: {ours} {least}");
        }
    }
}

#[test]
fn the_cost_grows_with_the_sum_of_the_belief() {
    let mut random = Random(2);
    let (jobs, belief) = (jobs(&mut random), belief(&mut random, 6));
    let (whole, part) = (jobs.order(&belief, false), jobs.order(&belief.map(|p| 0.25 * p), false));
    assert!((part.all_minutes - 0.25 * whole.all_minutes).abs() < 1e-9 && whole.first == part.first);
    assert!((part.minutes - 0.25 * whole.minutes).abs() < 1e-9 && whole.hand_over == part.hand_over);
}

/// The cost of an order that is handed over at its best place.
fn cheapest_end(jobs: &Jobs, order: &[usize], belief: &[f64; HYPOTHESES], recovered: bool) -> f64 {
    let ends = (0..=order.len()).map(|done| {
        let (first, rest) = order.split_at(done);
        let opened = recovered || first.iter().any(|at| jobs.jobs[*at].recovery);
        let then: f64 = rest.iter().map(|at| belief[*at] * alone(jobs, *at, opened)).sum();
        cost_of(jobs, first, belief, recovered) + then
    });
    ends.fold(f64::INFINITY, f64::min)
}

/// The cost of a repair when it is known to be the right one.
fn alone(jobs: &Jobs, at: usize, recovered: bool) -> f64 {
    let job = &jobs.jobs[at];
    let recovery = if job.recovery && !recovered {
        jobs.recovery_minutes
    } else {
        0.0
    };
    job.minutes + recovery
}

#[test]
fn work_is_handed_over_where_that_is_cheapest() {
    let mut random = Random(5);
    let (mut over, mut at_once) = (0, 0);
    for round in 0..300 {
        let jobs = jobs(&mut random);
        let belief = belief(&mut random, 1 + round % 8);
        let Order {
            all_minutes,
            minutes,
            hand_over,
            ..
        } = jobs.order(&belief, false);
        assert!(minutes <= all_minutes + 1e-9);
        let known: f64 = (0..REPAIRS)
            .filter(|at| belief[*at] > NEGLIGIBLE)
            .map(|at| belief[at] * alone(&jobs, at, false))
            .sum();
        let now = jobs.hand_over_minutes + known;
        assert!(minutes <= now + 1e-9 && hand_over == (now <= minutes + 1e-9), "{round}");
        // Not below the least over all orders and places to hand over; with more than five the enumeration takes long.
        let possible: Vec<usize> = (0..REPAIRS).filter(|at| belief[*at] > 0.0).collect();
        if possible.len() <= 5 {
            let least = cheapest_of_all(&jobs, &possible, &belief);
            assert!(minutes >= least - 1e-9, "{round}: {minutes} {least}");
            assert!(minutes <= 1.1 * least, "{round}: {minutes} {least}");
        }
        over += usize::from(minutes < all_minutes - 1e-9);
        at_once += usize::from(hand_over);
    }
    assert!(over > 100 && at_once > 10 && at_once < 200, "{over} {at_once}");
}

/// The least cost over all orders, each handed over at its best place.
fn cheapest_of_all(jobs: &Jobs, possible: &[usize], belief: &[f64; HYPOTHESES]) -> f64 {
    fn extend(order: &mut Vec<usize>, left: &[usize], jobs: &Jobs, belief: &[f64; HYPOTHESES]) -> f64 {
        if left.is_empty() {
            return cheapest_end(jobs, order, belief, false);
        }
        let mut least = f64::INFINITY;
        for at in left {
            order.push(*at);
            let rest: Vec<usize> = left.iter().copied().filter(|other| other != at).collect();
            least = least.min(extend(order, &rest, jobs, belief));
            order.pop();
        }
        least
    }
    extend(&mut Vec::new(), possible, jobs, belief)
}

/// The least cost over everything that can be done in `depth` steps; the probabilities sum to one.
fn least(jobs: &Jobs, looks: &Prospects, belief: &[f64; HYPOTHESES], recovered: bool, used: u32, depth: usize) -> f64 {
    // Which order of repairs ends the plan is tested above.
    let mut least = jobs.order(belief, recovered).minutes;
    if depth == 0 {
        return least;
    }
    for (at, look) in looks.all().iter().enumerate().filter(|(at, _)| used & 1 << at == 0) {
        let recovery = if look.recovery && !recovered {
            jobs.recovery_minutes
        } else {
            0.0
        };
        let mut value = look.minutes + recovery;
        for result in look.results() {
            let mut joint = *belief;
            looks.learn(&mut joint, look, &result);
            let p: f64 = joint.iter().sum();
            let after = joint.map(|joint| joint / p);
            value += p * self::least(
                jobs,
                looks,
                &after,
                recovered || look.recovery,
                used | 1 << at,
                depth - 1,
            );
        }
        least = least.min(value);
    }
    for at in (0..REPAIRS).filter(|at| belief[*at] > 0.0) {
        let job = &jobs.jobs[at];
        let recovery = if job.recovery && !recovered {
            jobs.recovery_minutes
        } else {
            0.0
        };
        let mut after = *belief;
        after[at] = 0.0;
        let p: f64 = after.iter().sum();
        let after = after.map(|left| left / p);
        let then = self::least(jobs, looks, &after, recovered || job.recovery, used, depth - 1);
        least = least.min(job.minutes + recovery + p * then);
    }
    least
}

#[test]
fn no_plan_of_three_steps_is_cheaper() {
    let mut random = Random(3);
    let mut looked = 0;
    for round in 0..12 {
        let jobs = jobs(&mut random);
        let belief = belief(&mut random, FEW - round % 2);
        let looks = prospects(&mut random, 3);
        for depth in 0..=DEPTH {
            let search = search(&jobs, &looks, [usize::MAX; DEPTH], true);
            let state = State {
                belief,
                recovered: false,
                used: 0,
            };
            let (ours, step) = search.best(&state, depth);
            let theirs = least(&jobs, &looks, &belief, false, 0, depth);
            assert!(
                (ours - theirs).abs() < 1e-9 * theirs,
                "{round} {depth}: {ours} {theirs}"
            );
            looked += usize::from(matches!(step, Move::Check(_)));
        }
    }
    assert!(looked > 12, "{looked}: too few plans begin with a look");
}

#[test]
fn a_plan_costs_what_its_steps_add_up_to() {
    let mut random = Random(4);
    for _ in 0..50 {
        let jobs = jobs(&mut random);
        let looks = prospects(&mut random, 6);
        let search = search(&jobs, &looks, BEAM, false);
        let state = State {
            belief: belief(&mut random, 8),
            recovered: false,
            used: 0,
        };
        let (mut plan, weighing) = (Plan::EMPTY, search.weigh(&state));
        search.grow_into(&mut plan, &state, weighing.best().1, &weighing);
        assert!(plan.expected_minutes <= plan.without_checks_minutes + 1e-9);
        for step in plan.steps.iter().filter(|step| step.action != Action::HandOver) {
            let total: f64 = step.branches.iter().map(|branch| branch.probability).sum();
            assert!((total - 1.0).abs() < 1e-9);
            for branch in step.branches.iter().filter(|branch| branch.next.is_some()) {
                let next = &plan.steps[branch.next.unwrap_or(0)];
                assert!((next.probability - step.probability * branch.probability).abs() < 1e-9);
            }
        }
    }
}
