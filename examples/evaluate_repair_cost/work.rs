//! What was done to a vehicle, and what it cost.

use crate::visit::Visit;
use coldloop::diagnosis::{Settings, repair};
use coldloop::{Check, Fault};

/// Where the minutes went.
#[derive(Clone, Copy, Default)]
pub(crate) struct Minutes {
    /// The right repair with the check whether it helped, and the recovery that it needs: the least possible.
    pub(crate) right: f64,
    pub(crate) checks: f64,
    /// Repairs that did not help, and a recovery that the right one did not need.
    pub(crate) wrong: f64,
    /// Handing over to a specialist, who finds the fault.
    pub(crate) handed: f64,
}

impl Minutes {
    pub(crate) fn total(&self) -> f64 {
        self.right + self.avoidable()
    }

    /// What somebody who knows the fault would not spend.
    pub(crate) fn avoidable(&self) -> f64 {
        self.checks + self.wrong + self.handed
    }

    /// The cost for somebody who knows the fault.
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

    /// What was spent so far; somebody who knows the fault would have spent nothing.
    pub(crate) fn spent(&self) -> f64 {
        self.minutes.avoidable()
    }

    /// Adds the cost of a check; its result comes from the visit.
    pub(crate) fn check(&mut self, check: Check, recovers: bool) {
        let prices = &self.settings.prices;
        self.minutes.checks += prices.in_minutes(prices.check(check));
        self.settings.recovered |= recovers;
    }

    /// Tries a repair; returns whether it helped.
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

    /// The bill; a vehicle that is not repaired yet is handed over and repaired there.
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
