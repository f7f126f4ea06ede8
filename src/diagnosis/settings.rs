//! How an answer is to be judged: chances, thresholds and what wrong answers cost, from which the thresholds follow.

use super::answer::Action;
use super::fault_table::FAULTS;
use super::faults::{Priors, index, priors};
use super::looks::Looks;
use super::prices::Prices;
use crate::error::Error;
use crate::names::{Fault, Language, Quantity};
use crate::range::Range;

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
    /// Weight of two faults at once, where all single explanations together weigh one. Default 0.15: of 667 vehicles in a New
    /// Zealand survey of 2014-15, 156 had a fault of the circuit and one outside it.
    pub two_faults: f64,
    /// A system whose readings all lie in their bands counts as sound from this probability, unless a fault leads. Default
    /// 0.25, from the default [`super::Stakes`]: slight faults read like a sound system and keep part of the probability.
    pub healthy: f64,
    /// A single fault is named from this probability. Default 0.7, from the default [`super::Stakes`].
    pub named: f64,
    /// "Nothing fits" from this probability that the cause is none of the list or shows itself in an unknown way. Default 0.5,
    /// from the default [`super::Stakes`].
    pub nothing_fits: f64,
    /// A short list ends when its faults together reach this probability; four faults that reach one half are listed too.
    /// Default 0.75, from the default [`super::Stakes`].
    pub short_list: f64,
    /// Least information that readings and observations must bring, in nats. Default 0.25.
    pub least_information: f64,
    /// What checks and repairs cost.
    pub prices: Prices,
    /// How likely each answer is under each fault.
    pub looks: Looks,
    /// The charge is already recovered, so that no check or repair pays for it again. Default false.
    pub recovered: bool,
    /// Whether further checks are ranked, which is most of the work of an answer. Default true.
    pub next_checks: bool,
    /// The step that somebody was sent to do: it stays the next one until another one saves clearly more, so that a reading within its
    /// noise does not send him elsewhere. Default none.
    pub held: Option<Action>,
    /// The language of the page as text. Default English.
    pub language: Language,
    /// Whether the page as text lists all figures, limits and cautions in full. Default false.
    pub details: bool,
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

    /// How common each hypothesis is, relative to the others.
    pub(super) fn priors(&self) -> Priors {
        priors(|fault| fault.map_or(self.none_of_these, |fault| self.prior(fault)))
    }

    /// Checks that every setting can be used.
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
            held: None,
            language: Language::English,
            details: false,
        };
        Stakes::default().set(&mut settings);
        settings
    }
}

const MINUTES: Range = Range::new(Quantity::Cost, 0.0, 1e6);

/// What wrong answers and another look cost, in minutes of work.
///
/// An answer that is right with the probability p and costs C when it is wrong costs (1 - p) C on average; it is given
/// when that is no more than another look, so from p = 1 - look / C on. Only the ratios matter. Source of the defaults:
/// engineering judgement; the usual repairs, weighed by how common they are, cost 160 minutes.
///
/// ```
/// use coldloop::diagnosis::{Settings, Stakes};
/// // Where a part fitted in vain costs five hours, it is named from 85 % on.
/// let dear = Stakes { sound_part: 300.0, ..Stakes::default() };
/// assert!((Settings::default().with_stakes(&dear)?.named - 0.85).abs() < 1e-12);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stakes {
    /// Another look before anything is said: a check, the way to the vehicle, its longer stay. Default 45.
    pub look: f64,
    /// A sound part replaced because it was named; sets `Settings::named`. Default 150.
    pub sound_part: f64,
    /// A fault missed because every figure lies in its band, as with a slight one; sets `Settings::healthy`. Default 60.
    pub missed_fault: f64,
    /// A search along a short list that does not hold the cause; sets `Settings::short_list`. Default 320, two of the usual repairs.
    pub wrong_list: f64,
    /// Everything read again although a fault of the list explains what was read; sets `Settings::nothing_fits`.
    /// Default 90.
    pub needless_repeat: f64,
}

impl Default for Stakes {
    fn default() -> Self {
        Self {
            look: 45.0,
            sound_part: 150.0,
            missed_fault: 60.0,
            wrong_list: 320.0,
            needless_repeat: 90.0,
        }
    }
}

impl Stakes {
    /// The probability from which an answer is given that costs this much when it is wrong.
    fn threshold(&self, wrong: f64) -> f64 {
        if wrong > self.look {
            1.0 - self.look / wrong
        } else {
            0.0
        }
    }

    pub(super) fn set(&self, settings: &mut Settings) {
        settings.named = self.threshold(self.sound_part);
        settings.healthy = self.threshold(self.missed_fault);
        settings.short_list = self.threshold(self.wrong_list);
        settings.nothing_fits = self.threshold(self.needless_repeat);
    }
}

impl Settings {
    /// The same with the thresholds that follow from these costs: `named`, `healthy`, `short_list` and `nothing_fits`.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for costs below 0 or above 1e6 minutes.
    ///
    /// ```
    /// use coldloop::diagnosis::{Settings, Stakes};
    /// assert_eq!(Settings::default().with_stakes(&Stakes::default())?, Settings::default());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn with_stakes(mut self, stakes: &Stakes) -> Result<Self, Error> {
        for cost in [
            stakes.look,
            stakes.sound_part,
            stakes.missed_fault,
            stakes.wrong_list,
            stakes.needless_repeat,
        ] {
            MINUTES.check(cost)?;
        }
        stakes.set(&mut self);
        Ok(self)
    }
}
