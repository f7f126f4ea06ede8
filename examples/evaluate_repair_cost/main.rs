//! The cost of reaching the right repair: the plan compared with three other ways, on newly drawn vehicles.
//!
//! ```text
//! cargo run --release --example evaluate_repair_cost -- [VEHICLES]
//! ```
//!
//! Every vehicle has one significant fault (5 % of capacity, 10 % of COP or 1.5 K at the vent), as common as the default
//! priors say. It is read as in a shop, standing, the blower on high, some temperatures not taken (`visit`). The answers
//! to looks are drawn from `tables/checks`, with the chances that the plan assumes, for all ways alike. Costs are
//! the defaults, in minutes of work, parts counted as work.
//!
//! - the plan: its first step, then a new plan;
//! - the informed list: a fixed order of checks, but the inference of this library says when a fault is named and which is
//!   the likeliest to repair (`ways`). It is the plan without its choice of the next step;
//! - the manual: a printed flow, without any inference (`flow`, with its sources);
//! - dearest first: repairs in the order of price, without looking.
//!
//! Even somebody who knows the fault pays for the right repair. That least cost is part of every figure, and where it is most of
//! the cost, no plan can save much; so the savings are also given relative to the avoidable cost. Their standard errors are
//! those of a ratio of two means over the same vehicles.

#![allow(clippy::cast_precision_loss)] // counts are small

mod flow;
#[allow(dead_code)] // practice uses the rest of it
mod visit;
mod ways;
#[allow(dead_code)] // as above
mod work;

use coldloop::Fault;
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use std::error::Error as AnyError;
use work::Minutes;

/// The ways, the plan first.
const WAYS: [&str; 4] = ["plan", "informed list", "manual", "dearest first"];

/// What each way cost for a vehicle with this fault.
struct Bill {
    fault: Fault,
    ways: [Minutes; WAYS.len()],
}

fn main() -> Result<(), Box<dyn AnyError>> {
    let vehicles = std::env::args()
        .nth(1)
        .map_or(Ok(1_000), |count| count.parse::<usize>())?;
    let mut rng = ChaCha8Rng::seed_from_u64(20_261_125);
    let (mut bills, mut times_us) = (Vec::new(), Vec::new());
    while bills.len() < vehicles {
        let visit = visit::drawn(&mut rng, visit::From::Anywhere);
        bills.push(Bill {
            fault: visit.fault,
            ways: [
                ways::plan(&visit, &mut times_us)?,
                ways::informed_list(&visit)?,
                flow::manual(&visit),
                ways::dearest_first(&visit),
            ],
        });
    }
    println!("{vehicles} vehicles with one significant fault, minutes of work until the right repair, mean");
    println!(
        "{:16}{:>8}{:>8}{:>8}{:>8}{:>8}",
        "", "all", "right", "checks", "wrong", "handed"
    );
    for (at, name) in WAYS.iter().enumerate() {
        let mean = |part: &dyn Fn(&Minutes) -> f64| mean(bills.iter().map(|bill| part(&bill.ways[at])));
        println!(
            "{name:16}{:8.0}{:8.0}{:8.0}{:8.0}{:8.0}",
            mean(&Minutes::total),
            mean(&|minutes| minutes.right),
            mean(&|minutes| minutes.checks),
            mean(&|minutes| minutes.wrong),
            mean(&|minutes| minutes.handed)
        );
    }
    println!("\nthe plan saves, in %, ± one standard error");
    for (at, name) in WAYS.iter().enumerate().skip(1) {
        let saving = |part: fn(&Minutes) -> f64| {
            let (saved, error) = saving(bills.iter().map(|bill| (part(&bill.ways[0]), part(&bill.ways[at]))));
            format!("{:.1} ± {:.1}", 100.0 * saved, 100.0 * error)
        };
        let most = 1.0
            - mean(bills.iter().map(|bill| bill.ways[0].right)) / mean(bills.iter().map(|bill| bill.ways[at].total()));
        println!(
            "{name:16}{:>14} of all, at most {:.0}; {:>14} of what is avoidable",
            saving(Minutes::total),
            100.0 * most,
            saving(Minutes::avoidable)
        );
    }
    by_fault(&bills);
    times_us.sort_by(f64::total_cmp);
    let middle_us = times_us[times_us.len() / 2];
    let slow_us = times_us[times_us.len() * 99 / 100];
    println!("\none diagnosis with plan: median {middle_us:.0} us, 99 % within {slow_us:.0} us");
    Ok(())
}

/// The avoidable cost, by fault.
fn by_fault(bills: &[Bill]) {
    println!(
        "\n{:30}{:>8}{:>8}   avoidable: {}",
        "",
        "cases",
        "right",
        WAYS.join(", ")
    );
    for fault in Fault::ALL {
        let of = || bills.iter().filter(|bill| bill.fault == fault);
        if of().next().is_none() {
            continue;
        }
        let means: [f64; WAYS.len()] = std::array::from_fn(|at| mean(of().map(|bill| bill.ways[at].avoidable())));
        let means: String = means.iter().map(|mean| format!("{mean:8.0}")).collect();
        println!(
            "{:30}{:8}{:8.0}   {means}",
            fault.id(),
            of().count(),
            Minutes::least(fault)
        );
    }
}

fn mean(figures: impl Iterator<Item = f64>) -> f64 {
    let (sum, count) = figures.fold((0.0, 0.0), |(sum, count), figure| (sum + figure, count + 1.0));
    sum / count
}

/// The relative difference of the sum of the first figures below that of the second, and its standard error.
fn saving(pairs: impl Iterator<Item = (f64, f64)> + Clone) -> (f64, f64) {
    let (ours, theirs) = pairs.clone().fold((0.0, 0.0), |(a, b), (x, y)| (a + x, b + y));
    let ratio = ours / theirs;
    let squares: f64 = pairs.map(|(x, y)| (x - ratio * y).powi(2)).sum();
    (1.0 - ratio, squares.sqrt() / theirs)
}
