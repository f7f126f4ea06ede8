//! The work of diagnosis and plan is bounded, whatever the settings.

#![cfg(test)]

use super::tally::counted;
use super::{Case, Cost, Settings, judge};
use crate::circuit::{Gauge, Reading, Readings};
use crate::names::{Check, Compressor, Expansion, Fault, Observation, Refrigerant};
use crate::numerics::random::Random;
use crate::units::{GaugePressure, Surroundings, celsius};
use crate::vehicle::{Conditions, System};

impl Random {
    /// One of `of`, or a number between its first two, all equally often.
    fn odd<const N: usize>(&mut self, of: [f64; N]) -> f64 {
        match (self.bits() % (N as u64 + 1)) as usize {
            at if at < N => of[at],
            _ => of[0] + (of[1] - of[0]) * self.share(),
        }
    }

    fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[(self.bits() % all.len() as u64) as usize]
    }

    /// Extreme settings: priors and prices of 0 and 1e6, chances of answers at their limits and at one half.
    fn settings(&mut self) -> Settings {
        let mut settings = Settings::default();
        let (flat, free) = (self.share() < 0.3, self.share() < 0.3);
        for fault in Fault::ALL {
            let prior = if flat { 1.0 } else { self.odd([0.0, 1e6, 1e-9, 1.0]) };
            settings = settings.with_prior(fault, prior);
            for observation in Observation::ALL {
                settings.looks = settings.looks.with(observation, fault, self.odd([0.001, 0.999, 0.5]));
            }
        }
        settings = settings.with_prior(Fault::WornCompressor, 1.0);
        settings.none_of_these = self.odd([0.0, 1.0, 1e6, 1e-9]);
        settings.two_faults = self.odd([0.0, 1.0, 1e6]);
        settings.healthy = self.odd([0.0, 1.0]);
        settings.named = self.odd([0.0, 1.0]);
        settings.nothing_fits = self.odd([0.0, 1.0]);
        settings.short_list = self.odd([0.0, 1.0]);
        settings.least_information = self.odd([0.0, 1.0, 1e6]);
        settings.recovered = self.share() < 0.5;
        let mut prices = settings.prices.with_per_minute(self.odd([1e-3, 1e6, 1.0])).unwrap();
        let mut cost = || Cost {
            minutes: if free { 0.0 } else { self.odd([0.0, 200.0, 1e6, 1e-9]) },
            money: if free { 0.0 } else { self.odd([0.0, 0.0, 1e6]) },
        };
        prices = prices.with_recovery(cost()).unwrap();
        prices = prices.with_verify(cost()).unwrap().with_unknown(cost()).unwrap();
        for check in Check::ALL {
            prices = prices.with_check(check, cost()).unwrap();
        }
        for fault in Fault::ALL {
            prices = prices.with_repair(fault, cost()).unwrap();
        }
        settings.prices = prices;
        settings
    }

    fn case(&mut self) -> Case {
        let refrigerant = self.one_of(&[Refrigerant::R134a, Refrigerant::R1234yf, Refrigerant::R152a]);
        let system = System::new(refrigerant, self.one_of(&Expansion::ALL), self.one_of(&Compressor::ALL));
        let conditions = Conditions::new(celsius(14.0 + 28.0 * self.share()), Surroundings::SEA_LEVEL);
        let mut gauge = |most: f64, gauge: Gauge| {
            let shown = GaugePressure::from_psig(most * self.share());
            (self.share() < 0.8).then(|| Reading::pressure(shown, gauge))
        };
        let readings = Readings {
            low_side: gauge(120.0, Gauge::LOW_SIDE),
            high_side: gauge(400.0, Gauge::HIGH_SIDE),
            ..Readings::default()
        };
        Case::new(system, conditions, readings)
    }
}

/// The most pairs of faults: all but the sound one and misleading gauges.
const PAIRS: u64 = (Fault::ALL.len() as u64 - 2) * (Fault::ALL.len() as u64 - 3) / 2;

/// Orders that a plan may search: one and a half times the largest number found here (3,758).
const PLAN: u64 = 5_700;

#[test]
fn no_settings_make_an_answer_long() {
    let (mut random, mut most) = (Random(0x2545_f491_4f6c_dd1d), [0; 2]);
    for _ in 0..400 {
        let (case, settings) = (random.case(), random.settings());
        let (judgement, [pairs, _]) = counted(|| judge(&case, &settings).unwrap());
        let (_, [_, orders]) = counted(|| judgement.diagnosis(&settings).unwrap());
        assert!(pairs <= PAIRS && orders <= PLAN, "{pairs} {orders}: {case:?}");
        let (_, planned) = counted(|| judgement.plan(&settings));
        assert!(
            planned[0] == 0 && planned[1] <= PLAN,
            "{planned:?}: {case:?} {settings:?}"
        );
        most = [most[0].max(pairs), most[1].max(planned[1])];
    }
    std::println!("most pairs of a diagnosis and orders of a plan: {most:?}");
    assert!(most[0] > 1 && most[1] > PLAN / 3, "{most:?}");
}
