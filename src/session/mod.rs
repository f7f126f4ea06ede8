//! A visit as it grows: readings, looks, repairs are added one by one, each can be undone, and the next step is held.
//!
//! A [`Session`] is a value of fixed size. It holds the vehicle as it is now, and for each of the last [`Session::UNDOABLE`]
//! steps what was there before, so that undoing leads back to the same bits. What is added later takes the place of what was
//! added before; independent additions give the same answer in any order.
//!
//! Somebody who was told the next step is on his way to do it. So the step that was told is held
//! ([`Settings::held`]): it changes only when another one saves clearly more.

mod past;
mod standing;

pub use past::{Done, Undone};

use crate::circuit::{Derived, Measured, Observations, Readings};
use crate::diagnosis::{
    Action, Case, Diagnosis, Judgement, Key, Plan, Settings, exists, judge, questions, recovers, repair,
};
use crate::error::Error;
use crate::names::{Check, ErrorKind, Fault, Observation, Quantity, ReadingKind, RepairFinding, ResultKind};
use crate::proof::{PROVING, Proof, judge_after, left_to_read, prove};
#[cfg(feature = "report")]
use crate::range::Range;
use crate::vehicle::{Conditions, System};
#[cfg(feature = "report")]
use alloc::boxed::Box;
use past::Past;
pub(crate) use standing::Standing;
#[cfg(feature = "report")]
pub(crate) use standing::{Faults, Moment};

/// A visit as it grows.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::diagnosis::{Action, Settings};
/// use coldloop::session::Session;
/// use coldloop::units::{GaugePressure, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, ReadingKind, Refrigerant};
/// let van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let yard = Conditions::new(celsius(24.0), Surroundings::at_altitude(1_600.0)?);
/// let mut session = Session::new(van, yard, Settings::default())?;
/// session.add_reading(ReadingKind::LowSide, Reading::pressure(GaugePressure::from_psig(62.0), Gauge::LOW_SIDE))?;
/// session.add_reading(ReadingKind::HighSide, Reading::pressure(GaugePressure::from_psig(118.0), Gauge::HIGH_SIDE))?;
/// let next = session.next_step()?.ok_or("something is left to do")?;
/// assert!(matches!(next.action, Action::Check(check) if next.key == Some(check.key())));
/// // Answer and plan are led by the same step.
/// assert_eq!(session.answer()?.next_step, Some(next.action));
/// assert_eq!(session.plan()?.steps[0].action, next.action);
/// session.undo();
/// assert!(session.case().readings.high_side.is_none());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Session {
    /// The vehicle as it came in.
    came_in: Case,
    /// How it is judged; what the visit itself changes of it stands in `now`.
    settings: Settings,
    now: Standing,
    past: Past,
}

/// The next step, and which entry of a readings file it fills.
///
/// ```
/// use coldloop::diagnosis::Settings;
/// use coldloop::session::Session;
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let yard = Conditions::new(celsius(24.0), Surroundings::at_altitude(1_600.0)?);
/// let first = Session::new(van, yard, Settings::default())?.next_step()?.expect("nothing was read yet");
/// assert!(first.key.is_some());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct NextStep {
    /// What to do.
    pub action: Action,
    /// The entry that it fills; `None` for a repair and for handing over.
    pub key: Option<Key>,
}

impl Session {
    /// How many steps can be undone; older ones have become part of what the session started from.
    pub const UNDOABLE: usize = Past::CAPACITY;

    /// A vehicle of which nothing was read yet.
    ///
    /// Errors: `NotFinite`, `OutOfRange` and `Inconsistent` for a system, conditions or settings that cannot be.
    pub fn new(system: System, conditions: Conditions, settings: Settings) -> Result<Self, Error> {
        Self::of(Case::new(system, conditions, Readings::default()), settings)
    }

    /// A vehicle of which something is known already.
    ///
    /// Errors: as [`Self::new`], and for readings that cannot be.
    pub fn of(case: Case, settings: Settings) -> Result<Self, Error> {
        settings.check()?;
        check(&case)?;
        let now = Standing::of(&case, &settings);
        let mut settings = settings;
        (settings.recovered, settings.held) = (false, None);
        Ok(Self {
            came_in: case,
            settings,
            now,
            past: Past::NOTHING,
        })
    }

    /// Adds a reading, in the place of one of the same kind.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for a reading that cannot be, `Inconsistent` for a temperature where a pressure is
    /// read, and the like; the session is then as before.
    pub fn add_reading(&mut self, kind: ReadingKind, measured: impl Into<Measured>) -> Result<(), Error> {
        let mut next = self.now;
        next.moment.readings = next.moment.readings.with(kind, measured)?;
        self.step(Done::Reading(kind), next)
    }

    /// Adds what a log of readings in time tells: its readings with the uncertainty of what was seen, and what it shows of the
    /// system's behaviour. Where it says nothing, what is known stays.
    ///
    /// Errors: as [`Self::add_reading`].
    pub fn add_log(&mut self, readings: &Readings, observations: &Observations) -> Result<(), Error> {
        let mut next = self.now;
        next.moment.readings = next.moment.readings.updated(readings);
        for (observation, answer) in observations.answered() {
            next.moment.observations = next.moment.observations.with(observation, answer);
        }
        self.step(Done::Log, next)
    }

    /// Adds the answer to a question, in the place of an earlier one.
    ///
    /// Errors: `Inconsistent` for bubbles in a sight glass that is not there.
    pub fn add_observation(&mut self, observation: Observation, answer: bool) -> Result<(), Error> {
        let mut next = self.now;
        next.moment.observations = next.moment.observations.with(observation, answer);
        self.step(Done::Observation(observation), next)
    }

    /// Adds how a check came out: the result of a branch of the plan, with the question that it answers.
    ///
    /// "Yes" to the second question of a check says "no" to the first; "no" is "no" to all its questions. A figure is added by
    /// [`Self::add_reading`].
    ///
    /// Errors: `Missing` for a figure of which only the side is told; `Inconsistent` for a check that this system does not have,
    /// a question that the check does not answer, and a "yes" that does not say to which of two questions.
    pub fn add_outcome(
        &mut self,
        check: Check,
        result: ResultKind,
        question: Option<Observation>,
    ) -> Result<(), Error> {
        let system = self.came_in.system;
        let mut next = self.now;
        let asked = || questions(check, &system);
        if matches!(result, ResultKind::Below | ResultKind::Within | ResultKind::Above) {
            return Err(Error::of(ErrorKind::Missing, Quantity::Name));
        }
        let yes = match result {
            ResultKind::Yes => Some(question.or_else(|| asked().next().filter(|_| asked().count() == 1))),
            ResultKind::No | ResultKind::Below | ResultKind::Within | ResultKind::Above => None,
        };
        let known = |wanted: Observation| asked().any(|question| question == wanted);
        let says_yes_to = yes.flatten();
        let meant = question.is_none_or(known) && asked().next().is_some() && yes.is_none_or(|yes| yes.is_some());
        if !meant {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
        }
        for question in asked() {
            next.moment.observations = next.moment.observations.with(question, says_yes_to == Some(question));
            if says_yes_to == Some(question) {
                break;
            }
        }
        next.recovered |= recovers(check);
        self.step(Done::Outcome(check), next)
    }

    /// Puts other conditions in the place of those that were given.
    ///
    /// Errors: `NotFinite`, `OutOfRange` and `Inconsistent` for conditions that cannot be.
    pub fn set_conditions(&mut self, conditions: Conditions) -> Result<(), Error> {
        let mut next = self.now;
        next.moment.conditions = conditions;
        self.step(Done::Conditions, next)
    }

    /// Notes a repair that is done: what is added from now on is of the vehicle after it, and nothing is known of that yet.
    ///
    /// The conditions stay until others are set. [`Self::proof`] tells what the readings before and after say together, before the
    /// first repair against after the last.
    ///
    /// Errors: `Inconsistent` for a fault that the system cannot have.
    pub fn add_repair(&mut self, fault: Fault) -> Result<(), Error> {
        self.may_be_repaired(fault)?;
        let mut next = self.now;
        next.repaired = next.repaired.with(fault);
        next.after = true;
        next.recovered = false;
        next.moment.readings = Readings::default();
        next.moment.observations = Observations::NONE;
        self.step(Done::Repaired(fault), next)
    }

    /// Notes a repair that was tried and did not help: its fault is ruled out, and all that was read still holds.
    ///
    /// Errors: as [`Self::add_repair`].
    pub fn add_vain_repair(&mut self, fault: Fault) -> Result<(), Error> {
        self.may_be_repaired(fault)?;
        let mut next = self.now;
        next.ruled_out = next.ruled_out.with(fault);
        next.recovered |= repair(fault).recovery;
        self.step(Done::RepairedInVain(fault), next)
    }

    fn may_be_repaired(&self, fault: Fault) -> Result<(), Error> {
        if fault == Fault::NoFault || !exists(fault, &self.came_in.system) {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
        }
        Ok(())
    }

    /// Takes the last step back: everything is as before it, the step that was held then included.
    pub fn undo(&mut self) -> Undone {
        let Some((done, before)) = self.past.take_back() else {
            return match self.past.forgot {
                true => Undone::TooOld,
                false => Undone::Nothing,
            };
        };
        if !before.after {
            before.moment.put_into(&mut self.came_in);
        }
        self.now = before;
        Undone::Step(done)
    }

    /// How many steps can be undone now.
    pub fn undoable(&self) -> usize {
        self.past.len()
    }

    /// The steps that can be undone, the oldest first.
    pub fn done(&self) -> impl Iterator<Item = Done> + '_ {
        self.past.steps().map(|(done, _)| *done)
    }

    /// A session as it was stored: the vehicle as it came in, how the visit stands, and the steps before with how it stood.
    ///
    /// Errors: as [`Self::of`]; `OutOfRange` for more steps than can be undone.
    #[cfg(feature = "report")]
    #[inline(never)] // so that the stack has room for one session at a time
    pub(crate) fn resumed(
        came_in: &Case,
        settings: &Settings,
        now: Standing,
        (steps, forgot): (&[(Done, Standing)], bool),
    ) -> Result<Box<Self>, Error> {
        let mut session = Self::started(came_in, settings)?;
        check(&now.moment.case(came_in))?;
        ROWS.check(steps.len() as f64)?;
        for (done, before) in steps {
            check(&before.moment.case(came_in))?;
            session.past.remember(*done, *before);
        }
        (session.now, session.past.forgot) = (now, forgot);
        Ok(session)
    }

    #[cfg(feature = "report")]
    #[inline(never)] // as above
    fn started(came_in: &Case, settings: &Settings) -> Result<Box<Self>, Error> {
        Self::of(*came_in, *settings).map(Box::new)
    }

    /// All that a file has to hold: the settings of the start, how the visit stands, the steps before, and whether older ones were
    /// forgotten.
    #[cfg(feature = "report")]
    pub(crate) const fn stored(&self) -> (&Settings, &Standing, &Past) {
        (&self.settings, &self.now, &self.past)
    }

    fn step(&mut self, done: Done, next: Standing) -> Result<(), Error> {
        check(&next.moment.case(&self.came_in))?;
        self.past.remember(done, self.now);
        if !next.after {
            next.moment.put_into(&mut self.came_in);
        }
        self.now = next;
        Ok(())
    }

    /// The vehicle as it is now.
    pub fn case(&self) -> Case {
        self.now.moment.case(&self.came_in)
    }

    /// The vehicle as it came in, before any repair.
    pub const fn came_in(&self) -> &Case {
        &self.came_in
    }

    /// Whether a repair was done, so that [`Self::case`] is the vehicle after it.
    pub const fn is_after_repair(&self) -> bool {
        self.now.after
    }

    /// The settings by which it is judged now: those of the start, what was ruled out, whether the charge is recovered, and the
    /// step that is held.
    pub fn settings(&self) -> Settings {
        let mut settings = self.settings;
        settings.recovered = self.now.recovered;
        settings.held = self.now.held;
        for fault in self.now.ruled_out.iter() {
            settings = settings.with_prior(fault, 0.0);
        }
        settings
    }

    /// What is believed now; it gives reasons, too, by [`Self::settings`].
    ///
    /// After a repair what was found before is taken into account.
    ///
    /// Errors: those of [`judge`].
    #[inline(never)] // so that a judgement stands on the stack once
    pub fn judge(&self) -> Result<Judgement, Error> {
        let (case, settings) = (self.case(), self.settings());
        match self.now.after {
            true => judge_after(&self.came_in, &case, &settings),
            false => judge(&case, &settings),
        }
    }

    /// What is known now; its next step is held from here on.
    ///
    /// Where the readings prove that the repair helped, no step is left. Where they leave it open and nothing else is to be done, the
    /// next step reads what the proof still lacks, until all is read that it compares.
    ///
    /// Errors: those of [`judge`].
    #[inline(never)]
    pub fn answer(&mut self) -> Result<Diagnosis, Error> {
        let finding = self.finding()?;
        let settings = self.settings();
        let mut diagnosis = match &mut self.judge() {
            Ok(judgement) => {
                let mut told = judgement.diagnosis(&settings)?;
                for check in self.left_to_read(finding).filter(|_| settings.next_checks) {
                    if told.next_step.is_some() {
                        break;
                    }
                    judgement.ask_for(check);
                    told = judgement.diagnosis(&settings)?;
                }
                told
            }
            Err(error) => return Err(*error),
        };
        if finding == Some(RepairFinding::Proven) {
            diagnosis.next_step = None;
            diagnosis.next_checks.clear();
        }
        self.now.held = diagnosis.next_step;
        Ok(diagnosis)
    }

    /// What to do next, with the entry that it fills; it is held from here on. `None` where nothing is left to do.
    ///
    /// Errors: those of [`judge`].
    pub fn next_step(&mut self) -> Result<Option<NextStep>, Error> {
        let next = self.answer()?.next_step;
        Ok(next.map(|action| NextStep {
            action,
            key: match action {
                Action::Check(check) => Some(check.key()),
                Action::Repair(_) | Action::HandOver => None,
            },
        }))
    }

    /// The steps ahead, the same first.
    ///
    /// Errors: those of [`judge`].
    #[inline(never)]
    pub fn plan(&self) -> Result<Plan, Error> {
        let finding = self.finding()?;
        let settings = self.settings();
        let mut plan = match &mut self.judge() {
            Ok(judgement) => {
                let mut plan = judgement.plan(&settings);
                for check in self.left_to_read(finding) {
                    if !plan.steps.is_empty() {
                        break;
                    }
                    judgement.ask_for(check);
                    plan = judgement.plan(&settings);
                }
                plan
            }
            Err(error) => return Err(*error),
        };
        if finding == Some(RepairFinding::Proven) {
            plan.clear();
        }
        Ok(plan)
    }

    /// What the readings before and after the repair tell together; `None` before any repair.
    ///
    /// Errors: those of [`prove`].
    pub fn proof(&self) -> Result<Option<Proof>, Error> {
        if !self.now.after {
            return Ok(None);
        }
        prove(&self.came_in, &self.case(), &self.settings()).map(Some)
    }

    #[inline(never)] // so that the proof stands on no caller's stack
    fn finding(&self) -> Result<Option<RepairFinding>, Error> {
        Ok(self.proof()?.map(|proof| proof.finding))
    }

    /// What a proof that the readings leave open still lacks, the most wanted first.
    fn left_to_read(&self, finding: Option<RepairFinding>) -> impl Iterator<Item = Check> + use<> {
        let left = match finding {
            Some(RepairFinding::Better | RepairFinding::CannotTell) => {
                left_to_read(&self.came_in.readings, &self.now.moment.readings)
            }
            Some(
                RepairFinding::Proven
                | RepairFinding::StillFaulty
                | RepairFinding::AnotherFault
                | RepairFinding::SoundBefore
                | RepairFinding::Worse,
            )
            | None => [None; PROVING],
        };
        left.into_iter().flatten()
    }
}

/// How many steps can be stored.
#[cfg(feature = "report")]
const ROWS: Range = Range::new(Quantity::Rows, 0.0, Past::CAPACITY as f64);

/// Nothing, when the case can be.
fn check(case: &Case) -> Result<(), Error> {
    case.check()?;
    Derived::new(
        case.system.refrigerant,
        &case.readings,
        case.conditions.surroundings,
        None,
    )
    .map(|_| ())
}
