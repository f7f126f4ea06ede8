//! What checks and repairs cost, as the user sees it.

use super::check_table::{CHECKS, NONE_OF_THESE_MINUTES, RECOVERY_MINUTES, REPAIRS, VERIFY_MINUTES};
use super::faults::index;
use crate::error::Error;
use crate::names::{Check, Fault, Quantity};
use crate::range::Range;

/// Times and prices; a rate of zero would make time worth nothing.
const PRICE: Range = Range::new(Quantity::Cost, 0.0, 1e6);
const RATE: Range = Range::new(Quantity::Cost, 1e-3, 1e6);

/// What one piece of work costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cost {
    /// Its time, min.
    pub minutes: f64,
    /// Its parts and materials, in the user's own money.
    pub money: f64,
}

/// The times and prices of a shop.
///
/// The defaults stand in `tables/checks`, are engineering judgement, and count money in minutes of work, so that
/// `per_minute` is 1. A shop sets its own rate and prices together.
///
/// ```
/// use coldloop::diagnosis::{Cost, Prices};
/// use coldloop::{Check, Fault};
/// // 1.50 a minute; a compressor for 420, fitted in two and a half hours.
/// let mut shop = Prices::default();
/// shop.per_minute = 1.5;
/// let shop = shop.with_repair(Fault::WornCompressor, Cost { minutes: 150.0, money: 420.0 });
/// assert_eq!(shop.in_minutes(shop.repair(Fault::WornCompressor)), 150.0 + 280.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prices {
    checks: [Cost; Check::ALL.len()],
    repairs: [Cost; Fault::ALL.len()],
    /// Recovering the charge, evacuating and charging again; paid once by all checks and repairs that need it.
    pub recovery: Cost,
    /// Running the system after a repair to see whether it helped.
    pub verify: Cost,
    /// Somebody who knows more finds the cause, whatever it is; the repair is paid beside it.
    pub unknown: Cost,
    /// The price of a minute of work, in the user's own money.
    pub per_minute: f64,
}

/// Minutes of starting, settling and reading. Source: engineering judgement.
const RUN_MINUTES: f64 = 10.0;

impl Prices {
    /// What a check costs, the recovery aside.
    pub const fn check(&self, check: Check) -> Cost {
        self.checks[place(check)]
    }

    /// What setting right a fault costs, the recovery and the look whether it helped aside.
    pub const fn repair(&self, fault: Fault) -> Cost {
        self.repairs[index(fault)]
    }

    /// The same with another cost of a check.
    pub const fn with_check(mut self, check: Check, cost: Cost) -> Self {
        self.checks[place(check)] = cost;
        self
    }

    /// The same with another cost of a repair.
    pub const fn with_repair(mut self, fault: Fault, cost: Cost) -> Self {
        self.repairs[index(fault)] = cost;
        self
    }

    /// A cost in minutes of work.
    pub const fn in_minutes(&self, cost: Cost) -> f64 {
        cost.minutes + cost.money / self.per_minute
    }

    /// Nothing, when every cost can be used.
    ///
    /// Errors: `NotFinite` and `OutOfRange`.
    pub fn check_all(&self) -> Result<(), Error> {
        RATE.check(self.per_minute)?;
        let others = [self.recovery, self.verify, self.unknown];
        for cost in self.checks.iter().chain(&self.repairs).chain(&others) {
            PRICE.check(cost.minutes)?;
            PRICE.check(cost.money)?;
        }
        Ok(())
    }
}

/// The place of a check in arrays over the vocabulary; codes count from one.
const fn place(check: Check) -> usize {
    check.code() as usize - 1
}

impl Default for Prices {
    fn default() -> Self {
        let minutes = |minutes: f64| Cost { minutes, money: 0.0 };
        let mut prices = Self {
            checks: [minutes(0.0); Check::ALL.len()],
            repairs: [minutes(0.0); Fault::ALL.len()],
            recovery: minutes(RECOVERY_MINUTES),
            verify: minutes(VERIFY_MINUTES),
            unknown: minutes(NONE_OF_THESE_MINUTES),
            per_minute: 1.0,
        };
        prices.checks[place(Check::RunAndRead)] = minutes(RUN_MINUTES);
        for row in &CHECKS {
            prices.checks[place(row.check)] = Cost {
                minutes: row.minutes,
                money: row.money,
            };
        }
        for row in &REPAIRS {
            prices.repairs[index(row.fault)] = Cost {
                minutes: row.minutes,
                money: row.money,
            };
        }
        prices
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn answers_of_one_look_cost_it_once() {
        for row in &CHECKS {
            let cost = Prices::default().check(row.check);
            assert_eq!((cost.minutes, cost.money), (row.minutes, row.money), "{}", row.check);
        }
    }
}
