//! What a shop's confirmed repairs teach: how common each fault is there, and what is seen with it.
//!
//! The counts are a value that the shop keeps, and the only memory: nothing is learned without the caller. The shares of the
//! faults are a Dirichlet distribution and the chance of each answer a Beta distribution; the tables are the priors of both,
//! with the weight of a number of cases. Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, 2.4 and 3.4 (from
//! memory).

use super::faults::{exists, index};
use super::looks::{CHANCE, implied};
use super::settings::Settings;
use crate::circuit::{Observations, place};
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Observation, Quantity};
use crate::range::Range;
use crate::vehicle::System;

/// Range of the weight of the tables, in cases.
const WEIGHT: Range = Range::new(Quantity::Probability, 1.0, 1e6);

/// Largest factor by which [`FEW`] cases may raise the odds of one cause against another: from even odds to a probability of
/// 0.7, at which a fault is named. Source: engineering judgement: three repairs that seemed to help are weak evidence.
const FEW_RAISE: f64 = 0.7 / 0.3;

/// What counts as a few cases. Source: engineering judgement.
const FEW: f64 = 3.0;

/// One more than the faults: the cause that is none of the list.
const CAUSES: usize = Fault::ALL.len() + 1;

/// Confirmed cases of a shop, counted.
///
/// Count every vehicle whose cause was confirmed, the sound ones too, or sound ones come to look rare. The share of a fault is
/// that among the vehicles that can have it, where the systems are told ([`Counts::record_in`]), and otherwise that among all
/// vehicles of the shop; a shop with two very different fleets keeps two counts.
///
/// ```
/// use coldloop::circuit::Observations;
/// use coldloop::diagnosis::{Counts, Settings};
/// use coldloop::{Fault, Observation};
/// let mut counts = Counts::default();
/// let seen = Observations::NONE.with(Observation::OilTraces, true);
/// for _ in 0..30 {
///     counts.record(Some(Fault::Undercharge), &seen);
/// }
/// let (tables, shop) = (Settings::default(), counts.applied(&Settings::default())?);
/// assert!(shop.prior(Fault::Undercharge) > tables.prior(Fault::Undercharge));
/// let oil = |settings: &Settings| settings.looks.yes(Observation::OilTraces, Fault::Undercharge);
/// assert!(oil(&shop) > oil(&tables));
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Counts {
    cases: [u32; CAUSES],
    /// Cases whose system cannot have the fault.
    unable: [u32; Fault::ALL.len()],
    /// Answers "yes" and "no".
    answers: [[[u32; 2]; Fault::ALL.len()]; Observation::ALL.len()],
    /// Weight of the shares in the tables, as a number of cases, 1 to 1e6. Default 100. Source: engineering judgement: a season
    /// of a small shop.
    pub cases_weight: f64,
    /// Weight of each chance in the tables, as a number of answers, 1 to 1e6. Default 20. Source: engineering judgement: most
    /// of these chances were judged, not counted.
    pub answers_weight: f64,
}

impl Default for Counts {
    fn default() -> Self {
        Self {
            cases: [0; CAUSES],
            unable: [0; Fault::ALL.len()],
            answers: [[[0; 2]; Fault::ALL.len()]; Observation::ALL.len()],
            cases_weight: 100.0,
            answers_weight: 20.0,
        }
    }
}

impl Counts {
    /// Counts one case whose cause was confirmed by its repair; `None` for a cause that is none of the list.
    ///
    /// Only what was looked at before the repair belongs here. A "no" that another answer implies is counted as one.
    /// What was seen with a cause outside the list is not kept, for it may be anything.
    pub fn record(&mut self, cause: Option<Fault>, seen: &Observations) {
        let cases = &mut self.cases[row(cause)];
        *cases = cases.saturating_add(1);
        let Some(fault) = cause else { return };
        for observation in Observation::ALL {
            let implied_no = implied(seen, observation).then_some(false);
            if let Some(answer) = seen.answer(observation).or(implied_no) {
                let count = &mut self.answers[place(observation)][index(fault)][usize::from(!answer)];
                *count = count.saturating_add(1);
            }
        }
    }

    /// The same of a vehicle whose system is known: the case says nothing of faults that this system cannot have, unless one of
    /// them was the cause.
    ///
    /// ```
    /// use coldloop::circuit::Observations;
    /// use coldloop::diagnosis::{Counts, Settings};
    /// use coldloop::vehicle::System;
    /// use coldloop::{Compressor, Expansion, Fault, Refrigerant};
    /// let valve = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let mut counts = Counts::default();
    /// counts.record_in(&valve, Some(Fault::NoFault), &Observations::NONE);
    /// let (tables, shop) = (Settings::default(), counts.applied(&Settings::default())?);
    /// let less_common = |fault| shop.prior(fault) < tables.prior(fault);
    /// assert!(less_common(Fault::ExpansionValveStuckOpen) && !less_common(Fault::OrificeRestricted));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn record_in(&mut self, system: &System, cause: Option<Fault>, seen: &Observations) {
        self.record(cause, seen);
        for fault in Fault::ALL {
            if Some(fault) != cause && !exists(fault, system) {
                let unable = &mut self.unable[index(fault)];
                *unable = unable.saturating_add(1);
            }
        }
    }

    /// Cases of a cause; `None` for a cause that is none of the list.
    pub const fn cases(&self, cause: Option<Fault>) -> u32 {
        self.cases[row(cause)]
    }

    /// Cases whose system cannot have this fault, as far as the systems were told.
    pub const fn unable(&self, fault: Fault) -> u32 {
        self.unable[index(fault)]
    }

    /// How often a question was answered with yes and with no when this fault was the cause.
    pub const fn answers(&self, observation: Observation, fault: Fault) -> [u32; 2] {
        self.answers[place(observation)][index(fault)]
    }

    /// The same with another count of a cause, for counts that are read back.
    pub const fn with_cases(mut self, cause: Option<Fault>, cases: u32) -> Self {
        self.cases[row(cause)] = cases;
        self
    }

    /// The same with another count of cases whose system cannot have this fault.
    pub const fn with_unable(mut self, fault: Fault, cases: u32) -> Self {
        self.unable[index(fault)] = cases;
        self
    }

    /// The same with other counts of "yes" and "no".
    pub const fn with_answers(mut self, observation: Observation, fault: Fault, yes_and_no: [u32; 2]) -> Self {
        self.answers[place(observation)][index(fault)] = yes_and_no;
        self
    }

    /// Checks that the counts can be used.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for the weights; `Inconsistent` when a question has more answers than there
    /// were cases, and when more systems cannot have a fault than there were cases of other causes.
    pub fn check(&self) -> Result<(), Error> {
        WEIGHT.check(self.cases_weight)?;
        WEIGHT.check(self.answers_weight)?;
        let all: u64 = self.cases.iter().copied().map(u64::from).sum();
        for fault in Fault::ALL {
            if u64::from(self.unable(fault)) > all - u64::from(self.cases(Some(fault))) {
                return Err(Error::of(ErrorKind::Inconsistent, Quantity::Rows));
            }
            for observation in Observation::ALL {
                let [yes, no] = self.answers(observation, fault).map(u64::from);
                if yes + no > u64::from(self.cases(Some(fault))) {
                    return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
                }
            }
        }
        Ok(())
    }

    /// The settings updated with these cases; what was never counted stays exactly the same.
    ///
    /// Of N cases n had a cause whose prior is p, and S is the sum of all priors and of `none_of_these`. With the weight w the
    /// new prior is the mean of the Dirichlet distribution, (w p + n S) / (w + N), so that S stays as it was. Of a fault that
    /// some of the systems cannot have, N leaves these out, so that its share counts among the others alone. Where the table's
    /// share weighs less than 2.25 cases, w p / S, the first cases count for less, n^2 / (n + c) with
    /// c = 3 (2.25 S / (w p) - 1): three confirmed cases raise the odds of no cause by more than a factor of 0.7 / 0.3, so that
    /// they cannot take the lead from a fault that is named, and many cases count in full. A prior of 0 stays 0. A chance q
    /// becomes the mean of the Beta distribution, (w q + yes) / (w + yes + no), held within 0.001 to 0.999, so that one wrong
    /// answer cannot decide.
    ///
    /// Start from the settings without the shop's cases, or they count twice.
    ///
    /// Errors: those of [`Counts::check`] and [`Settings::check`].
    pub fn applied(&self, settings: &Settings) -> Result<Settings, Error> {
        self.check()?;
        settings.check()?;
        let mut learned = *settings;
        if self.cases.iter().any(|cases| *cases > 0) {
            let weight = self.cases_weight;
            let causes = || Fault::ALL.into_iter().map(Some).chain([None]);
            let prior = |cause: Option<Fault>| cause.map_or(settings.none_of_these, |fault| settings.prior(fault));
            let sum: f64 = Fault::ALL.iter().map(|fault| settings.prior(*fault)).sum::<f64>() + settings.none_of_these;
            let counted = |cause| counting(f64::from(self.cases(cause)), weight * prior(cause) / sum);
            let all: f64 = causes().map(counted).sum();
            let total: f64 = self.cases.iter().copied().map(f64::from).sum();
            // Of the cases of other causes, as they count, the share of systems that can have this one.
            let able = |cause: Option<Fault>| {
                let unable = cause.map_or(0.0, |fault| f64::from(self.unable(fault)));
                let others = total - f64::from(self.cases(cause));
                if unable > 0.0 { 1.0 - unable / others } else { 1.0 }
            };
            let mean = |prior: f64, cause| {
                let (own, able) = (counted(cause), able(cause));
                let among = if able < 1.0 { own + (all - own) * able } else { all };
                (weight * prior + own * sum) / (weight + among)
            };
            for fault in Fault::ALL {
                learned = learned.with_prior(fault, mean(settings.prior(fault), Some(fault)));
            }
            learned.none_of_these = mean(settings.none_of_these, None);
        }
        for observation in Observation::ALL {
            for fault in Fault::ALL {
                let [yes, no] = self.answers(observation, fault).map(f64::from);
                if yes + no > 0.0 {
                    let weight = self.answers_weight;
                    let mean = (weight * settings.looks.yes(observation, fault) + yes) / (weight + yes + no);
                    let held = mean.clamp(CHANCE.low, CHANCE.high);
                    learned.looks = learned.looks.with(observation, fault, held);
                }
            }
        }
        Ok(learned)
    }
}

/// How many cases of a cause count when `cases` were confirmed and its share in the tables weighs `share` cases.
fn counting(cases: f64, share: f64) -> f64 {
    let enough = FEW / (FEW_RAISE - 1.0);
    if cases <= 0.0 || share >= enough {
        return cases;
    }
    // Chosen so that FEW cases count as FEW^2 / (FEW + held) = share (FEW_RAISE - 1).
    let held = FEW * (enough / share - 1.0);
    if held.is_finite() {
        cases * (cases / (cases + held))
    } else {
        0.0
    }
}

/// The place of a cause among the counted ones.
const fn row(cause: Option<Fault>) -> usize {
    match cause {
        Some(fault) => index(fault),
        None => Fault::ALL.len(),
    }
}
