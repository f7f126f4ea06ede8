//! How good the answers are: judges confirmed cases and counts how often the answer was right.
//!
//! A file of confirmed cases has one on each line, as [`confirmed_from_json`](crate::intake::confirmed_from_json) describes.
//! [`evaluate()`] judges all of them and returns a [`Summary`]; [`Evaluation`] takes them one by one, so that a file of any
//! size needs little memory.
//!
//! A case is judged as if its cause were unknown. The possible causes are the faults and "none of these"; the *leader* is
//! the likeliest of them. Where several causes were found, the leader is right when it is one of them, and the probability
//! given to the truth is that of all of them together.
//!
//! Each figure has a 95 % interval from a bootstrap over groups: vehicles of one make, or of one shop, are alike, so what a
//! thousand cases of five makes say about a sixth make is limited by the number of makes. Sources: Efron & Tibshirani, An
//! Introduction to the Bootstrap, 1993, chapter 13 (percentiles); Field & Welsh 2007 (groups), doi
//! 10.1111/j.1467-9868.2007.00593.x; both from memory.

mod bootstrap;
mod score;
mod summary;
mod sums;

pub use score::Answer;
pub use summary::{RefusedCase, ReliabilityBin, Score, Summary};

use crate::diagnosis::{Judge, Settings, exists};
use crate::error::Error;
use crate::intake::{Cause, Confirmed, Limit, Refusal, cases_of};
use crate::names::{ErrorKind, Fault, Quantity};
use crate::vehicle::System;
use alloc::boxed::Box;
use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;
use sums::Sums;

/// How many refused cases are listed.
const TOLD: usize = 12;

/// Number of groups over which cases without a group are spread by hash, so that memory does not grow with the file.
///
/// Source: engineering judgement: the bootstrap needs many groups, and far fewer cases than this nearly all get one each.
const PLACES: u64 = 1024;

/// The priors of the causes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Priors {
    /// Those of the settings.
    Given,
    /// The frequencies in the cases themselves, which shows what the likelihood alone is worth.
    Told,
}

/// Judges confirmed cases, a JSON object on each line, and summarises how good the answers are.
///
/// The settings replace those in the cases. Settings that were learned from the same cases
/// ([`crate::intake::counts_from_cases`]) make the answers look better than they are: learn from one year, evaluate the next.
///
/// Errors: those of [`Settings::check`]; with [`Priors::Told`] `Missing` where no case can be read. A line that cannot be read
/// or judged is not an error: it is counted in [`Summary::refused`].
///
/// ```
/// use coldloop::diagnosis::Settings;
/// use coldloop::evaluate::{Priors, evaluate};
/// let summary = evaluate(include_str!("../../examples/cases/garage.jsonl"), &Settings::default(), Priors::Given)?;
/// assert_eq!((summary.cases, summary.refused), (12, 0));
/// assert!(summary.first_right.value.is_some_and(|share| share > 0.25));
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn evaluate(lines: &str, settings: &Settings, priors: Priors) -> Result<Summary, Error> {
    let settings = settings_for(lines, settings, priors)?;
    let mut evaluation = Evaluation::new(&settings)?;
    for (number, line) in cases_of(lines) {
        evaluation.add_line(number, line);
    }
    Ok(evaluation.summary())
}

/// The settings by which the cases of these lines are judged; boxed because they are large.
#[inline(never)]
fn settings_for(lines: &str, settings: &Settings, priors: Priors) -> Result<Box<Settings>, Error> {
    let mut settings = match priors {
        Priors::Given => Box::new(*settings),
        Priors::Told => {
            let mut mix = Mix::default();
            // A line that is refused here is refused, and reported, again when it is judged.
            for case in cases_of(lines).filter_map(|(_, line)| Limit::default().confirmed(line).ok()) {
                mix.add(&case.visit.case.system, &case.truth);
            }
            Box::new(mix.applied(settings)?)
        }
    };
    // Ranking further checks takes most of the time of an answer, and is not evaluated.
    settings.next_checks = false;
    Ok(settings)
}

/// How common each cause is among confirmed cases.
///
/// A fault is counted among the systems that can have it: a clogged orifice tube among those with an orifice tube.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mix {
    faults: [f64; Fault::ALL.len()],
    /// The cases whose system can have the fault.
    able: [f64; Fault::ALL.len()],
    none_of_these: f64,
    cases: f64,
}

impl Mix {
    /// Counts a case; one with several causes counts as a part of a case for each.
    pub fn add(&mut self, system: &System, truth: &[Cause]) {
        if truth.is_empty() {
            return;
        }
        self.cases += 1.0;
        for ((found, able), fault) in self.faults.iter_mut().zip(&mut self.able).zip(Fault::ALL) {
            let own = truth.iter().filter(|cause| cause.fault == Some(fault)).count();
            *found += own as f64 / truth.len() as f64;
            *able += f64::from(u8::from(own > 0 || exists(fault, system)));
        }
        let none = truth.iter().filter(|cause| cause.fault.is_none()).count();
        self.none_of_these += none as f64 / truth.len() as f64;
    }

    /// The settings with these shares as the priors; a cause that is not among the cases is excluded.
    ///
    /// Errors: `Missing` where no case was counted; those of [`Settings::check`].
    ///
    /// ```
    /// use coldloop::vehicle::System;
    /// use coldloop::{Compressor, Expansion, Fault, Refrigerant};
    /// use coldloop::{diagnosis::Settings, evaluate::Mix, intake::Cause};
    /// let system = |expansion| System::new(Refrigerant::R134a, expansion, Compressor::FixedClutch);
    /// let (valve, orifice) = (system(Expansion::Txv), system(Expansion::OrificeTube));
    /// let cause = |fault| [Cause { fault: Some(fault), severity: None }];
    /// let mut mix = Mix::default();
    /// mix.add(&valve, &cause(Fault::NoFault));
    /// mix.add(&valve, &cause(Fault::Undercharge));
    /// mix.add(&orifice, &cause(Fault::Undercharge));
    /// mix.add(&orifice, &cause(Fault::OrificeRestricted));
    /// let told = mix.applied(&Settings::default())?;
    /// assert_eq!((told.prior(Fault::Undercharge), told.prior(Fault::OrificeRestricted)), (0.5, 0.5));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn applied(&self, settings: &Settings) -> Result<Settings, Error> {
        if self.cases <= 0.0 {
            return Err(Error::of(ErrorKind::Missing, Quantity::Rows));
        }
        let mut told = *settings;
        for (fault, (found, able)) in Fault::ALL.into_iter().zip(self.faults.iter().zip(&self.able)) {
            told = told.with_prior(fault, if *able > 0.0 { found / able } else { 0.0 });
        }
        told.none_of_these = self.none_of_these / self.cases;
        told.check()?;
        Ok(told)
    }
}

/// Cases that are resampled together.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Group {
    /// A make, a shop, a mechanic.
    Named(String),
    /// Cases without a group, by a hash of answer and truth.
    Place(u64),
}

/// Confirmed cases, judged one after the other; what is kept of them are sums for each group.
///
/// ```
/// use coldloop::diagnosis::Settings;
/// use coldloop::{evaluate::Evaluation, intake};
/// let mut settings = Settings::default();
/// settings.next_checks = false;
/// let mut evaluation = Evaluation::new(&settings)?;
/// for (number, line) in intake::cases_of(include_str!("../../examples/cases/garage.jsonl")) {
///     evaluation.add_line(number, line);
/// }
/// assert_eq!(evaluation.summary().cases, 12);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub struct Evaluation<'a> {
    judge: Judge<'a>,
    groups: BTreeMap<Group, Sums>,
    refusals: Vec<RefusedCase>,
    refused: u64,
}

impl<'a> Evaluation<'a> {
    /// An evaluation of the answers by these settings; without `next_checks` it takes a fraction of the time.
    ///
    /// Errors: those of [`Settings::check`].
    pub fn new(settings: &'a Settings) -> Result<Self, Error> {
        Ok(Self {
            judge: Judge::new(settings)?,
            groups: BTreeMap::new(),
            refusals: Vec::new(),
            refused: 0,
        })
    }

    /// Reads, judges and counts the case of a line; one that cannot be read or judged is counted as refused.
    pub fn add_line(&mut self, number: usize, line: &str) {
        match Limit::default().confirmed(line) {
            Ok(case) => self.add(number, &case),
            Err(refusal) => self.refuse(number, "", refusal),
        }
    }

    /// Judges and counts a case; one that cannot be judged is counted as refused, by this number.
    pub fn add(&mut self, number: usize, case: &Confirmed) {
        match self.judge.diagnose(&case.visit.case) {
            Ok(diagnosis) => {
                let answer = Answer::of(&diagnosis);
                self.count(&answer, &case.truth, case.significant, case.group.as_deref());
            }
            Err(error) => self.refuse(number, &case.id, case.visit.blamed(error)),
        }
    }

    /// Counts an answer that was given already, against what was found.
    pub fn count(&mut self, answer: &Answer, truth: &[Cause], significant: bool, group: Option<&str>) {
        let sums = score::score(answer, truth, significant);
        let group = group.map_or_else(
            || Group::Place(score::hash(answer, truth) % PLACES),
            |name| Group::Named(name.into()),
        );
        self.groups.entry(group).or_default().add(&sums);
    }

    fn refuse(&mut self, number: usize, id: &str, refusal: Refusal) {
        self.refused += 1;
        let refused = RefusedCase {
            line: number,
            id: id.into(),
            refusal: refusal.in_line(number),
        };
        self.keep(refused);
    }

    /// Keeps a refused case if its line is among the first.
    fn keep(&mut self, refused: RefusedCase) {
        let place = self.refusals.partition_point(|other| other.line <= refused.line);
        self.refusals.insert(place, refused);
        self.refusals.truncate(TOLD);
    }

    /// This evaluation with the cases of another one added, as for two files, or two halves of one, that are judged apart.
    pub fn merged(mut self, other: Self) -> Self {
        for (group, sums) in other.groups {
            self.groups.entry(group).or_default().add(&sums);
        }
        self.refused += other.refused;
        for refused in other.refusals {
            self.keep(refused);
        }
        self
    }

    /// How good the answers were.
    pub fn summary(&self) -> Summary {
        let named = self
            .groups
            .keys()
            .filter(|group| matches!(group, Group::Named(_)))
            .count();
        let sums: Vec<&Sums> = self.groups.values().collect();
        Summary::of(&sums, named, self.refused, self.refusals.clone())
    }
}
