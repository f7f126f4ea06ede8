//! What is known of a vehicle, and how the answer is to be judged.

use super::fault_table::FAULTS;
use super::faults::index;
use super::features;
use super::looks::{Looks, place};
use super::prices::Prices;
use super::stakes::Stakes;
use crate::circuit::Readings;
use crate::error::Error;
use crate::expected::{OwnVehicle, PressureTable};
use crate::names::{ErrorKind, Fault, Observation, Quantity};
use crate::range::Range;
use crate::vehicle::{Conditions, System};

/// One vehicle at one moment: what it has, where it stands, what was read and what was seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Case {
    /// The vehicle.
    pub system: System,
    /// Weather, place and how it is run.
    pub conditions: Conditions,
    /// What the instruments show.
    pub readings: Readings,
    /// What eyes, ears and hands found.
    pub observations: Observations,
    /// The vehicle's own pressure table, which replaces the bands of vehicles in general.
    pub own_table: Option<PressureTable>,
    /// Healthy readings of the same vehicle, which sharpen what is expected of it and what each reading says.
    pub own_readings: Option<OwnVehicle>,
}

impl Case {
    /// A vehicle of which nothing was read yet.
    pub const fn new(system: System, conditions: Conditions, readings: Readings) -> Self {
        Self {
            system,
            conditions,
            readings,
            observations: Observations::NONE,
            own_table: None,
            own_readings: None,
        }
    }
}

impl Case {
    /// Nothing, when system, conditions and readings can be, and nothing that was seen contradicts them.
    ///
    /// Errors: those of [`System::check`] and [`Conditions::check_for`]; `NotFinite` and `OutOfRange` for readings;
    /// `Inconsistent` for bubbles in a sight glass that is not there.
    pub(super) fn check(&self) -> Result<(), Error> {
        self.system.check()?;
        self.conditions.check_for(self.system.compressor)?;
        features::check(&self.readings)?;
        let seen = self.observations.answer(Observation::SightGlassBubbles);
        if self.system.sight_glass == Some(false) && seen.is_some() {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
        }
        Ok(())
    }
}

/// Answers to yes-or-no questions; what was not looked at has none.
///
/// ```
/// use coldloop::{Observation, diagnosis::Observations};
/// let seen = Observations::NONE.with(Observation::ClutchEngaged, true);
/// assert_eq!(seen.answer(Observation::ClutchEngaged), Some(true));
/// assert_eq!(seen.answer(Observation::OilTraces), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Observations {
    answers: [Option<bool>; Observation::ALL.len()],
}

impl Observations {
    /// Nothing was looked at.
    pub const NONE: Self = Self {
        answers: [None; Observation::ALL.len()],
    };

    /// The same with one answer more, or changed.
    pub const fn with(mut self, observation: Observation, answer: bool) -> Self {
        self.answers[place(observation)] = Some(answer);
        self
    }

    /// The answer, where there is one.
    pub const fn answer(&self, observation: Observation) -> Option<bool> {
        self.answers[place(observation)]
    }

    /// The observations that have an answer, in the order of the vocabulary.
    pub fn answered(&self) -> impl Iterator<Item = (Observation, bool)> + '_ {
        Observation::ALL
            .into_iter()
            .zip(self.answers)
            .filter_map(|(observation, answer)| Some((observation, answer?)))
    }
}

impl Default for Observations {
    fn default() -> Self {
        Self::NONE
    }
}

/// How the answer is to be judged: chances before any reading, thresholds, prices.
///
/// ```
/// use coldloop::{Fault, diagnosis::Settings};
/// let shop = Settings::default().with_prior(Fault::Undercharge, 0.6);
/// assert_eq!(shop.prior(Fault::Undercharge), 0.6);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Settings {
    priors: [f64; Fault::ALL.len()],
    /// Chance, on the same scale as the priors, that the cause is none of the list. Default 0.03.
    pub none_of_these: f64,
    /// How common two faults at once are, beside all else at one. Default 0.15: of 667 vehicles in a New Zealand survey of
    /// 2014-15, 156 had a fault of the circuit and one outside it.
    pub two_faults: f64,
    /// A system whose readings all lie in their bands counts as sound from this probability, unless a fault leads. Default
    /// 0.25, as the usual [`super::Stakes`] have it: slight faults read like a sound system and keep the rest.
    pub healthy: f64,
    /// A single fault is named from this probability. Default 0.7, as the usual [`super::Stakes`] have it.
    pub named: f64,
    /// "Nothing fits" from this probability of none of these, or when that is twice as likely as any fault. Default
    /// 0.5, as the usual [`super::Stakes`] have it.
    pub nothing_fits: f64,
    /// A short list ends when it holds this probability together; four that hold four fifths of it are told too. Default
    /// 0.75, as the usual [`super::Stakes`] have it.
    pub short_list: f64,
    /// Readings and observations must tell at least this much, in nats of information gained. Default 0.25.
    pub least_information: f64,
    /// What checks and repairs cost.
    pub prices: Prices,
    /// How likely each answer is under each fault.
    pub looks: Looks,
    /// The charge is already recovered, so that no check or repair pays for it again. Default false.
    pub recovered: bool,
    /// Whether further checks are ranked, which is most of the work of an answer. Default true.
    pub next_checks: bool,
}

/// Chances and thresholds.
const SHARE: Range = Range::new(Quantity::Probability, 0.0, 1.0);
/// Weights relative to each other.
const WEIGHT: Range = Range::new(Quantity::Probability, 0.0, 1e6);
/// Nats of information.
const INFORMATION: Range = Range::new(Quantity::Cost, 0.0, 1e6);

impl Settings {
    /// The prior of a fault, relative to the others.
    pub const fn prior(&self, fault: Fault) -> f64 {
        self.priors[index(fault)]
    }

    /// The same with another prior for one fault, relative to the others; zero excludes it.
    pub const fn with_prior(mut self, fault: Fault, prior: f64) -> Self {
        self.priors[index(fault)] = prior;
        self
    }

    /// Nothing, when every setting can be used.
    ///
    /// Errors: `NotFinite` and `OutOfRange`.
    pub fn check(&self) -> Result<(), Error> {
        let mut sum = 0.0;
        for prior in self.priors {
            sum += WEIGHT.check(prior)?;
        }
        WEIGHT.check(self.none_of_these)?;
        WEIGHT.check(self.two_faults)?;
        if sum <= 0.0 {
            return Err(Error::out_of_range(
                Quantity::Probability,
                sum,
                f64::MIN_POSITIVE,
                WEIGHT.high,
            ));
        }
        for share in [self.healthy, self.named, self.nothing_fits, self.short_list] {
            SHARE.check(share)?;
        }
        INFORMATION.check(self.least_information)?;
        self.looks.check()
    }
}

impl Default for Settings {
    fn default() -> Self {
        let mut priors = [0.0; Fault::ALL.len()];
        for (prior, row) in priors.iter_mut().zip(&FAULTS) {
            *prior = row.prior;
        }
        let mut settings = Self {
            priors,
            none_of_these: 0.03,
            two_faults: 0.15,
            healthy: 0.0,
            named: 0.0,
            nothing_fits: 0.0,
            short_list: 0.0,
            least_information: 0.25,
            prices: Prices::default(),
            looks: Looks::default(),
            recovered: false,
            next_checks: true,
        };
        Stakes::default().set(&mut settings);
        settings
    }
}
