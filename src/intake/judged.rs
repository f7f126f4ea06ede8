//! A visit judged: the diagnosis, the plan, and what was done since.

use super::refusal::{Mistake, Refusal};
use super::visit::Visit;
use crate::circuit::Observations;
use crate::diagnosis::{Action, Case, Diagnosis, Judgement, Plan, RankedCheck, diagnose, judge, needs_running};
use crate::error::Error;
use crate::names::{
    Caution, Check, ClosingFinding, ErrorKind, Fault, HoldFinding, LeakFinding, Observation, Quantity, RepairFinding,
    VerdictKind,
};
use crate::proof::{Balance, Change, Closing, HoldJudgement, Leak, Proof, Proofs, PullDown, Vacuum};
use crate::proof::{changed, compared, judged_with, pull_down};
use crate::units::{in_celsius, in_kelvins, text};
use alloc::boxed::Box;
use alloc::vec::Vec;

/// What was done, judged.
///
/// ```
/// use coldloop::{intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let judgements = visit.prove()?;
/// assert!(judgements.charge.is_some() && judgements.closing.is_some() && judgements.refused.is_empty());
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Judgements {
    /// The test pressure.
    pub pressure_test: Option<Leak>,
    /// The evacuation.
    pub evacuation: Option<Vacuum>,
    /// The held vacuum.
    pub hold: Option<HoldJudgement>,
    /// The masses.
    pub charge: Option<Balance>,
    /// The vent after the start.
    pub pull_down: Option<PullDown>,
    /// Before against after.
    pub repair: Option<Box<Proof>>,
    /// Whether dye, a detector or trace gas showed a leak after the repair; `None` where none of them was tried.
    pub leak_found: Option<bool>,
    /// All of them together; `None` where nothing was done.
    pub closing: Option<Closing>,
    /// What was done and cannot be judged: mistakes found in its tables, and errors of the judgement, with the table as the
    /// key.
    pub refused: Vec<Mistake>,
}

impl Judgements {
    /// The refusal, where something was refused and nothing was judged.
    fn silent(&self) -> Option<Refusal> {
        let tested = self.pressure_test.is_some() || self.evacuation.is_some() || self.hold.is_some();
        let judged = tested || self.charge.is_some() || self.pull_down.is_some() || self.repair.is_some();
        Refusal::of(self.refused.clone()).filter(|_| !judged)
    }

    /// Whether the pressure test or the held vacuum shows a leak.
    fn show_a_leak(&self) -> bool {
        let pressed = self.pressure_test.as_ref().map(|test| test.finding);
        let held = self.hold.as_ref().map(|hold| hold.finding);
        pressed == Some(LeakFinding::Leaks) || held == Some(HoldFinding::Leak)
    }
}

impl Visit {
    /// The diagnosis of the vehicle as it came in.
    ///
    /// Errors: a [`Refusal`] with the key of the cause for conditions or a system that no source covers.
    ///
    /// ```
    /// use coldloop::intake;
    /// let visit = intake::visit_from_json(r#"{
    ///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
    ///     "conditions": { "ambient": "-20 °C", "altitude": "0 m" }
    /// }"#)?;
    /// let refusal = visit.diagnose().unwrap_err();
    /// let says = "conditions.ambient = -20 °C: temperature -20 °C is outside 5 °C to 50 °C; normal readings";
    /// assert!(refusal.to_string().starts_with(says), "{refusal}");
    /// # Ok::<(), intake::Refusal>(())
    /// ```
    #[inline(never)]
    pub fn diagnose(&self) -> Result<Diagnosis, Refusal> {
        let judged = judge(&self.case, &self.settings).and_then(|judgement| judgement.diagnosis(&self.settings));
        judged.map_err(|error| self.blamed(error))
    }

    /// The judgement behind the diagnosis, which also gives reasons and a plan.
    ///
    /// Errors: as [`Self::diagnose`].
    #[inline(never)] // so that no second one is on the caller's stack
    pub fn judge(&self) -> Result<Box<Judgement>, Refusal> {
        let judgement = judge(&self.case, &self.settings).map(Box::new);
        judgement.map_err(|error| self.blamed(error))
    }

    /// The diagnosis of a judgement.
    #[inline(never)] // as above
    pub(crate) fn told(&self, judgement: &Judgement) -> Result<Box<Diagnosis>, Refusal> {
        let diagnosis = judgement.diagnosis(&self.settings).map(Box::new);
        diagnosis.map_err(|error| self.blamed(error))
    }

    #[cold]
    #[inline(never)]
    pub(crate) fn blamed(&self, error: Error) -> Refusal {
        let ambient = self.case.conditions.ambient;
        let of_ambient = error.quantity == Quantity::Temperature && error.value == in_kelvins(ambient);
        if error.kind == ErrorKind::OutOfRange && of_ambient {
            // A program may have changed the case since; then the text is not that of its ambient.
            let as_written = text::temperature(&self.ambient) == Ok(ambient);
            let written = match as_written {
                true => self.ambient.clone(),
                false => alloc::format!("{:.1} °C", in_celsius(ambient)),
            };
            let advice = "normal readings are known only within these bounds";
            let mistake = Mistake::new("conditions.ambient", &written, error, advice);
            return mistake.in_unit_of(&written).into();
        }
        if error.kind == ErrorKind::NotAvailable {
            let advice = "without normal readings of this kind of system there is no diagnosis; properties, superheat and subcooling are available";
            return Mistake::new("system.refrigerant", self.case.system.refrigerant.id(), error, advice).into();
        }
        error.into()
    }

    /// All that was done, judged; see [`crate::proof`].
    ///
    /// What cannot be judged is listed in [`Judgements::refused`]; the rest is judged without it.
    ///
    /// Errors: a [`Refusal`] with the same mistakes where nothing at all can be judged.
    ///
    /// ```
    /// use coldloop::{EvacuationFinding, intake};
    /// let visit = intake::visit_from_toml(r#"
    ///     [system]
    ///     refrigerant = "R-134a"
    ///     expansion = "txv"
    ///     compressor = "fixed-clutch"
    ///     [conditions]
    ///     ambient = "20 °C"
    ///     altitude = "1600 m"
    ///     [evacuation]
    ///     reached = "420 micron"
    /// "#)?;
    /// assert_eq!(visit.prove()?.evacuation.map(|vacuum| vacuum.finding), Some(EvacuationFinding::Deep));
    /// # Ok::<(), coldloop::intake::Refusal>(())
    /// ```
    pub fn prove(&self) -> Result<Judgements, Refusal> {
        let all = self.judgements(|after| self.proof(&*self.before()?, after));
        match all.silent() {
            Some(refusal) => Err(refusal),
            None => Ok(all),
        }
    }

    /// The plan after the diagnosis of the vehicle as it came in.
    ///
    /// It is empty where the readings after the repair prove that it helped, and where a step needs the charge of a circuit that
    /// has none.
    ///
    /// Errors: a [`Refusal`] for what cannot be diagnosed or judged.
    ///
    /// ```
    /// use coldloop::intake;
    /// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
    /// assert!(visit.plan()?.steps.is_empty());
    /// # Ok::<(), intake::Refusal>(())
    /// ```
    pub fn plan(&self) -> Result<Box<Plan>, Refusal> {
        let judgement = self.judge()?;
        if self.has_proof() && self.is_proven(&judgement)? {
            return Ok(Box::new(Plan::EMPTY));
        }
        Ok(self.planned(&judgement))
    }

    #[inline(never)] // as above
    fn is_proven(&self, judgement: &Judgement) -> Result<bool, Refusal> {
        Ok(proves(&self.prove_after(&*self.told(judgement)?)))
    }

    /// The plan; empty where a step needs the charge of a circuit that has none.
    #[inline(never)] // as above
    pub(crate) fn planned(&self, judgement: &Judgement) -> Box<Plan> {
        let mut plan = Box::new(judgement.plan(&self.settings));
        let asks = plan.steps.iter().any(|step| asks_for_charge(step.action));
        if asks && self.is_uncharged() {
            plan.clear();
        }
        plan
    }

    /// The same where the diagnosis of the vehicle as it came in is known.
    pub(crate) fn prove_after(&self, before: &Diagnosis) -> Judgements {
        self.judgements(|after| self.proof(before, after))
    }

    #[inline(never)] // as above
    fn before(&self) -> Result<Box<Diagnosis>, Error> {
        diagnose(&self.case, &self.settings).map(Box::new)
    }

    #[inline(never)] // as above
    fn proof(&self, before: &Diagnosis, after: &Case) -> Result<Box<Proof>, Error> {
        let change = self.changed(after)?;
        let then = self.judged_with(&change, after)?;
        Ok(self.compared(before, (after, &then), &change))
    }

    #[inline(never)] // as above
    fn changed(&self, after: &Case) -> Result<Box<Change>, Error> {
        changed(&self.case, after, &self.settings).map(Box::new)
    }

    #[inline(never)] // as above
    fn judged_with(&self, change: &Change, after: &Case) -> Result<Box<Diagnosis>, Error> {
        judged_with(change, after, &self.settings).map(Box::new)
    }

    #[inline(never)] // as above
    fn compared(&self, before: &Diagnosis, (after, then): (&Case, &Diagnosis), change: &Change) -> Box<Proof> {
        Box::new(compared((&self.case, before), (after, then), change, &self.settings))
    }

    fn judgements(&self, repair: impl Fn(&Case) -> Result<Box<Proof>, Error>) -> Judgements {
        let last = self.after.as_ref().unwrap_or(&self.case);
        let vents = Some(&self.pull_down[..]).filter(|all| !all.is_empty());
        let mut refused = self.refused.clone();
        let all = &mut refused;
        let mut judged = Judgements {
            pressure_test: judged(all, "pressure_test", self.pressure_test, |test| test.judge()),
            evacuation: judged(all, "evacuation", self.evacuation, |evacuation| evacuation.judge()),
            hold: judged(all, "hold", self.hold(), |hold| hold.judge()),
            charge: judged(all, "charge", self.charge, |book| book.balance()),
            pull_down: judged(all, "pull_down", vents, |vents| {
                pull_down(&last.system, &last.conditions, vents)
            }),
            repair: judged(all, "after", self.after.as_ref(), repair),
            leak_found: self.after.and_then(|after| leak_found(&after.observations)),
            closing: None,
            refused,
        };
        judged.closing = judged.proofs().closing();
        judged.leave_unproven();
        judged
    }

    /// Takes what asks for refrigerant or for running the compressor out of an answer for an empty circuit, and says before all else
    /// that it must stand still. A leak that the tests show is searched with nitrogen first, unless the repair of a leak comes next by
    /// itself. Where too little was read to judge the vehicle, no check of it is told.
    pub(crate) fn leave_uncharged(&self, diagnosis: &mut Diagnosis, done: &Judgements) {
        if !self.is_uncharged() {
            return;
        }
        let checks = diagnosis.next_checks;
        diagnosis.next_checks.clear();
        let repairs = diagnosis.next_step == Some(Action::Repair(Fault::Undercharge));
        let leaks = done.show_a_leak() && !repairs;
        if leaks {
            let search = RankedCheck::search_with_nitrogen(&self.settings.prices);
            diagnosis.next_checks.push(search);
        }
        let judged = diagnosis.verdict.kind != VerdictKind::NotEnoughEvidence;
        for check in checks.iter().filter(|check| judged && !needs_charge(check.check)) {
            diagnosis.next_checks.push(*check);
        }
        if leaks || !judged || diagnosis.next_step.is_some_and(asks_for_charge) {
            diagnosis.next_step = diagnosis.next_checks.first().map(|check| Action::Check(check.check));
        }
        let cautions = diagnosis.cautions;
        diagnosis.cautions.clear();
        diagnosis.cautions.push(Caution::DoNotRun);
        for caution in cautions.iter().filter(|caution| **caution != Caution::DoNotRun) {
            diagnosis.cautions.push(*caution);
        }
    }
}

impl Judgements {
    fn proofs(&self) -> Proofs<'_> {
        Proofs {
            pressure_test: self.pressure_test.as_ref(),
            evacuation: self.evacuation.as_ref(),
            hold: self.hold.as_ref(),
            charge: self.charge.as_ref(),
            pull_down: self.pull_down.as_ref(),
            leak_found: self.leak_found,
            repair: self.repair.as_deref(),
        }
    }

    /// A repair that fails a test is not proven: its finding becomes "better".
    fn leave_unproven(&mut self) {
        let fails = self
            .closing
            .is_some_and(|closing| closing.finding == ClosingFinding::Fails);
        if let Some(repair) = self
            .repair
            .as_mut()
            .filter(|repair| fails && repair.finding == RepairFinding::Proven)
        {
            repair.finding = RepairFinding::Better;
        }
    }
}

/// Whether one of the ways to find a leak has found one.
fn leak_found(observations: &Observations) -> Option<bool> {
    let ways = [
        Observation::DyeGlows,
        Observation::DetectorAlarms,
        Observation::TraceGasEscapes,
    ];
    let answers = ways.into_iter().filter_map(|way| observations.answer(way));
    answers.reduce(|found, also| found || also)
}

/// Whether the repair is proven, so that nothing is left to do.
pub(crate) fn proves(judgements: &Judgements) -> bool {
    let repaired = judgements.repair.as_ref();
    repaired.is_some_and(|repair| repair.finding == RepairFinding::Proven)
}

/// The judgement of what was done; an error is added to the mistakes.
fn judged<T, U>(
    refused: &mut Vec<Mistake>,
    key: &str,
    given: Option<T>,
    judge: impl Fn(T) -> Result<U, Error>,
) -> Option<U> {
    let told = judge(given?);
    told.map_err(|error| refused.push(Mistake::new(key, "", error, "")))
        .ok()
}

/// Checks that need a charge, beside those that need a running compressor.
const WITH_CHARGE: [Check; 3] = [
    Check::RecoverAndWeigh,
    Check::IdentifyRefrigerant,
    Check::ReadRestPressure,
];

fn needs_charge(check: Check) -> bool {
    WITH_CHARGE.contains(&check) || needs_running(check)
}

fn asks_for_charge(step: Action) -> bool {
    matches!(step, Action::Check(check) if needs_charge(check))
}
