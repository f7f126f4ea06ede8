//! What checks and repairs cost, as the user sees it.

use super::answer::Action;
use super::check_table::{CHECKS, NONE_OF_THESE_MINUTES, RECOVERY_MINUTES, REPAIRS, VERIFY_MINUTES};
use super::faults::index;
use crate::error::Error;
use crate::names::{Check, Fault, Quantity};
use crate::range::Range;

/// Times and prices; a rate of zero would make time worth nothing.
const PRICE: Range = Range::new(Quantity::Cost, 0.0, 1e6);
const RATE: Range = Range::new(Quantity::Cost, 1e-3, 1e6);

/// What one piece of work costs.
///
/// ```
/// use coldloop::diagnosis::{Cost, Prices};
/// use coldloop::Check;
/// let prices = Prices::default().with_check(Check::LookAtSightGlass, Cost { minutes: 8.0, money: 0.0 })?;
/// assert_eq!(prices.check(Check::LookAtSightGlass).minutes, 8.0);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cost {
    /// Its time, min.
    pub minutes: f64,
    /// Its parts and materials, in the user's own money.
    pub money: f64,
}

/// The times and prices of a shop.
///
/// The defaults are those of `tables/checks`: engineering judgement, with money counted in minutes of work, so that
/// `per_minute` is 1. A shop sets its own rate and prices together.
///
/// ```
/// use coldloop::diagnosis::{Cost, Prices};
/// use coldloop::{Check, Fault};
/// // 1.50 a minute; a compressor for 420, fitted in two and a half hours.
/// let shop = Prices::default()
///     .with_per_minute(1.5)?
///     .with_repair(Fault::WornCompressor, Cost { minutes: 150.0, money: 420.0 })?;
/// assert_eq!(shop.in_minutes(shop.repair(Fault::WornCompressor)), 150.0 + 280.0);
/// // What cannot be a price is refused.
/// assert!(shop.with_recovery(Cost { minutes: f64::NAN, money: 0.0 }).is_err());
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prices {
    checks: [Cost; Check::ALL.len()],
    repairs: [Cost; Fault::ALL.len()],
    recovery: Cost,
    verify: Cost,
    unknown: Cost,
    per_minute: f64,
}

/// Minutes of starting, settling and reading. Source: engineering judgement.
const RUN_MINUTES: f64 = 10.0;
/// Minutes of filling with nitrogen, searching and letting it out. Source: engineering judgement.
const NITROGEN_MINUTES: f64 = 40.0;

impl Prices {
    /// What a check costs, the recovery aside.
    pub const fn check(&self, check: Check) -> Cost {
        self.checks[place(check)]
    }

    /// What setting right a fault costs, the recovery and the look whether it helped aside.
    pub const fn repair(&self, fault: Fault) -> Cost {
        self.repairs[index(fault)]
    }

    /// Recovering the charge, evacuating and charging again; paid once by all checks and repairs that need it.
    pub const fn recovery(&self) -> Cost {
        self.recovery
    }

    /// Running the system after a repair to see whether it helped.
    pub const fn verify(&self) -> Cost {
        self.verify
    }

    /// Somebody who knows more finds the cause, whatever it is; the repair is paid beside it.
    pub const fn unknown(&self) -> Cost {
        self.unknown
    }

    /// The price of a minute of work, in the user's own money.
    pub const fn per_minute(&self) -> f64 {
        self.per_minute
    }

    /// The parts and materials of a step, as minutes of work.
    pub(super) const fn parts_in_minutes(&self, action: Action) -> f64 {
        let cost = match action {
            Action::Check(check) => self.check(check),
            Action::Repair(fault) => self.repair(fault),
            Action::HandOver => self.unknown,
        };
        cost.money / self.per_minute
    }

    /// The same with another cost of a check.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for minutes or money below 0 or above 1e6, as every `with_`.
    pub fn with_check(mut self, check: Check, cost: Cost) -> Result<Self, Error> {
        self.checks[place(check)] = cost.checked()?;
        Ok(self)
    }

    /// The same with another cost of a repair.
    ///
    /// Errors: as [`Self::with_check`].
    pub fn with_repair(mut self, fault: Fault, cost: Cost) -> Result<Self, Error> {
        self.repairs[index(fault)] = cost.checked()?;
        Ok(self)
    }

    /// The same with another cost of recovering the charge, evacuating and charging again.
    ///
    /// Errors: as [`Self::with_check`].
    pub fn with_recovery(mut self, cost: Cost) -> Result<Self, Error> {
        self.recovery = cost.checked()?;
        Ok(self)
    }

    /// The same with another cost of the look whether a repair helped.
    ///
    /// Errors: as [`Self::with_check`].
    pub fn with_verify(mut self, cost: Cost) -> Result<Self, Error> {
        self.verify = cost.checked()?;
        Ok(self)
    }

    /// The same with another cost of handing over.
    ///
    /// Errors: as [`Self::with_check`].
    pub fn with_unknown(mut self, cost: Cost) -> Result<Self, Error> {
        self.unknown = cost.checked()?;
        Ok(self)
    }

    /// The same with another price of a minute of work, in the user's own money.
    ///
    /// Errors: `NotFinite` and `OutOfRange` below 0.001 or above 1e6.
    pub fn with_per_minute(mut self, money: f64) -> Result<Self, Error> {
        self.per_minute = RATE.check(money)?;
        Ok(self)
    }

    /// A cost in minutes of work.
    pub const fn in_minutes(&self, cost: Cost) -> f64 {
        cost.minutes + cost.money / self.per_minute
    }
}

impl Cost {
    /// The same, when it can be a cost.
    fn checked(self) -> Result<Self, Error> {
        PRICE.check(self.minutes)?;
        PRICE.check(self.money)?;
        Ok(self)
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
        prices.checks[place(Check::SearchWithNitrogen)] = minutes(NITROGEN_MINUTES);
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

    /// No setter accepts an impossible price, so that no plan meets one.
    #[test]
    fn every_setter_refuses_what_cannot_be_a_price() {
        let shop = Prices::default();
        for wrong in [f64::NAN, f64::INFINITY, -1.0, 2e6] {
            for cost in [
                Cost {
                    minutes: wrong,
                    money: 0.0,
                },
                Cost {
                    minutes: 0.0,
                    money: wrong,
                },
            ] {
                assert!(shop.with_check(Check::TurnHub, cost).is_err(), "{cost:?}");
                assert!(shop.with_repair(Fault::Undercharge, cost).is_err(), "{cost:?}");
                assert!(shop.with_recovery(cost).is_err(), "{cost:?}");
                assert!(shop.with_verify(cost).is_err(), "{cost:?}");
                assert!(shop.with_unknown(cost).is_err(), "{cost:?}");
            }
            assert!(shop.with_per_minute(wrong).is_err(), "{wrong}");
        }
        // A rate of zero would make time worth nothing.
        assert!(shop.with_per_minute(0.0).is_err());
    }

    #[test]
    fn answers_of_one_look_cost_it_once() {
        for row in &CHECKS {
            let cost = Prices::default().check(row.check);
            assert_eq!((cost.minutes, cost.money), (row.minutes, row.money), "{}", row.check);
        }
    }
}
