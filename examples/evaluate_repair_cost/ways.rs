//! Ways to come to the right repair.

use crate::visit::{Visit, missing};
use crate::work::{Minutes, Work};
use coldloop::diagnosis::{Action, Settings, diagnose, exists, judge};
use coldloop::{Check, Error, Fault, VerdictKind};
use std::time::Instant;

/// After this many steps the vehicle is handed over.
const MOST_STEPS: usize = 60;

/// Always the first step of the plan, made anew with what was found.
pub(crate) fn plan(visit: &Visit, times_us: &mut Vec<f64>) -> Result<Minutes, Error> {
    let (mut case, mut work) = (visit.case, Work::new(visit));
    for _ in 0..MOST_STEPS {
        let began = Instant::now();
        let plan = judge(&case, &work.settings)?.plan(&work.settings);
        times_us.push(began.elapsed().as_secs_f64() * 1e6);
        let Some(step) = plan.steps.first() else {
            // Returned as sound; the customer comes back.
            work.mend(Fault::NoFault);
            continue;
        };
        match step.action {
            Action::Check(check) => {
                work.check(check, step.recovers);
                visit.look(&mut case, check);
            }
            Action::Repair(fault) => {
                if work.mend(fault) {
                    break;
                }
            }
            Action::HandOver => break,
            _ => unreachable!("a new member of the vocabulary"),
        }
    }
    Ok(work.close())
}

/// Reads what is missing and takes every look, the shortest first, until a fault is named; then repairs the likeliest, and
/// judges again.
pub(crate) fn informed_list(visit: &Visit) -> Result<Minutes, Error> {
    let (mut case, mut work) = (visit.case, Work::new(visit));
    let mut checks: Vec<Check> = Check::ALL
        .into_iter()
        .filter(|check| *check != Check::RecoverAndWeigh && missing(&case, *check))
        .collect();
    let prices = Settings::default().prices;
    let minutes = |check: &Check| prices.in_minutes(prices.check(*check));
    checks.sort_by(|a, b| minutes(a).total_cmp(&minutes(b)));
    for check in checks {
        if diagnose(&case, &work.settings)?.verdict.kind == VerdictKind::NamedFault {
            break;
        }
        work.check(check, false);
        visit.look(&mut case, check);
    }
    for _ in 0..Fault::ALL.len() {
        let answer = diagnose(&case, &work.settings)?;
        let likeliest = answer.faults.iter().find(|ranked| ranked.probability > 0.0);
        if likeliest.is_none_or(|likeliest| work.mend(likeliest.fault)) {
            break;
        }
    }
    Ok(work.close())
}

/// Repairs in the order of price, without looking.
pub(crate) fn dearest_first(visit: &Visit) -> Minutes {
    let mut work = Work::new(visit);
    for fault in by_price(visit).into_iter().rev() {
        if work.mend(fault) {
            break;
        }
    }
    work.close()
}

/// The faults that the vehicle can have, the cheapest repair first.
pub(crate) fn by_price(visit: &Visit) -> Vec<Fault> {
    let prices = Settings::default().prices;
    let price = |fault: &Fault| prices.in_minutes(prices.repair(*fault));
    let mut faults: Vec<Fault> = Fault::ALL
        .into_iter()
        .filter(|fault| !matches!(fault, Fault::NoFault | Fault::GaugeError))
        .filter(|fault| exists(*fault, &visit.case.system))
        .collect();
    faults.sort_by(|a, b| price(a).total_cmp(&price(b)));
    faults
}
