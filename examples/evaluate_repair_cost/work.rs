//! What was done to a vehicle, and what it cost.

use crate::visit::Visit;
use coldloop::diagnosis::{Settings, repair};
use coldloop::{Check, Fault};

/// Where the minutes went.
#[derive(Clone, Copy, Default)]
pub(crate) struct Minutes {
    /// The right repair with the look whether it helped, and the recovery that it needs: nobody can do with less.
    pub(crate) right: f64,
    pub(crate) checks: f64,
    /// Repairs that did not help, and a recovery that the right one did not need.
    pub(crate) wrong: f64,
    /// Handed over to somebody who knows more, who finds what is wrong.
    pub(crate) handed: f64,
}

impl Minutes {
    pub(crate) fn total(&self) -> f64 {
        self.right + self.avoidable()
    }

    /// What who knows the fault would not spend.
    pub(crate) fn avoidable(&self) -> f64 {
        self.checks + self.wrong + self.handed
    }

    /// For who knows the fault.
    pub(crate) fn least(fault: Fault) -> f64 {
        let prices = Settings::default().prices;
        let recovery = if repair(fault).recovery {
            prices.in_minutes(prices.recovery())
        } else {
            0.0
        };
        prices.in_minutes(prices.repair(fault)) + prices.in_minutes(prices.verify()) + recovery
    }
}

/// The work on one vehicle: what it has cost, and what is ruled out.
pub(crate) struct Work<'a> {
    pub(crate) visit: &'a Visit,
    pub(crate) settings: Settings,
    minutes: Minutes,
    helped: bool,
}

impl<'a> Work<'a> {
    pub(crate) fn new(visit: &'a Visit) -> Self {
        Self {
            visit,
            settings: Settings::default(),
            minutes: Minutes::default(),
            helped: false,
        }
    }

    /// What was spent so far, who knows the fault would not have.
    pub(crate) fn spent(&self) -> f64 {
        self.minutes.avoidable()
    }

    /// Pays for a check; what it shows is the visit's.
    pub(crate) fn check(&mut self, check: Check, recovers: bool) {
        let prices = &self.settings.prices;
        self.minutes.checks += prices.in_minutes(prices.check(check));
        self.settings.recovered |= recovers;
    }

    /// Tries a repair; whether it helped.
    pub(crate) fn mend(&mut self, fault: Fault) -> bool {
        self.settings.recovered |= repair(fault).recovery;
        self.helped = fault == self.visit.fault;
        if !self.helped {
            let prices = &self.settings.prices;
            self.minutes.wrong += prices.in_minutes(prices.repair(fault)) + prices.in_minutes(prices.verify());
            self.settings = self.settings.with_prior(fault, 0.0);
        }
        self.helped
    }

    /// The bill; what is not repaired yet is handed over, and repaired then.
    pub(crate) fn close(self) -> Minutes {
        let (prices, mut minutes) = (&self.settings.prices, self.minutes);
        minutes.right = Minutes::least(self.visit.fault);
        if !self.helped {
            minutes.handed = prices.in_minutes(prices.unknown());
        }
        if self.settings.recovered && !repair(self.visit.fault).recovery {
            minutes.wrong += prices.in_minutes(prices.recovery());
        }
        minutes
    }
}
