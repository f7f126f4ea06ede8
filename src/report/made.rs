//! Makes the page of a visit.

use super::finding::Finding;
use super::page::{
    FigureKind, Page, PageArgument, PageExpected, PageFigure, PageLimit, PageOdds, PageOutcome, PageProof, PageResult,
    PageStep, PageWhy, Scale, TOLD_FROM,
};
use super::rows::rows;
use super::words;
use crate::circuit::Estimate;
use crate::diagnosis::{Action, Branch, Diagnosis, Plan, RankedCheck, Reasons};
use crate::diagnosis::{Case, step_cautions};
use crate::diagnosis::{Contribution, Evidence, Prices};
use crate::intake::{Judgements, Refusal, Visit, proves};
use crate::names::{Caution, Fault, QualityNote, RepairFinding, Strength, VerdictKind};
use crate::numerics::put_in_order;
use crate::proof::Again;
use crate::saturation::pseudo_critical;
use crate::vehicle::System;
use alloc::boxed::Box;
use alloc::vec::Vec;

/// Above this probability, two faults at once are the result.
const LIKELIER_THAN_NOT: f64 = 0.5;
/// Largest number of explanations, and of arguments, on a page.
const TOLD: usize = 5;

/// Cautions that come before everything else.
const WARNINGS: [Caution; 3] = [Caution::HighSideNearLimit, Caution::DoNotRun, Caution::TestTooHigh];

/// The input of a page.
struct Parts<'a> {
    case: &'a Case,
    diagnosis: &'a Diagnosis,
    reasons: &'a Reasons<'a>,
    prices: &'a Prices,
    /// Replaces the next checks.
    plan: Option<&'a Plan>,
    proof: Option<Box<Judgements>>,
}

impl Page {
    /// The page of a visit, with a plan instead of the next checks; a healthy vehicle has no plan.
    ///
    /// Errors: a [`Refusal`] for what cannot be diagnosed or judged.
    pub fn of_visit(visit: &Visit) -> Result<Self, Refusal> {
        let judgement = visit.judge()?;
        let mut diagnosis = visit.told(&judgement)?;
        let proof = proof(visit, &mut diagnosis)?;
        let healthy = diagnosis.verdict.kind == VerdictKind::Healthy;
        // Tests of an empty circuit alone do not judge the vehicle.
        let empty = visit.is_uncharged() && diagnosis.verdict.kind == VerdictKind::NotEnoughEvidence;
        let plan = (!healthy && !empty && diagnosis.next_step.is_some()).then(|| visit.planned(&judgement));
        Ok(Self::of(Parts {
            case: &visit.case,
            diagnosis: &diagnosis,
            reasons: &judgement.reasons(&visit.settings),
            prices: &visit.settings.prices,
            plan: plan.as_deref().filter(|plan| !plan.steps.is_empty()),
            proof,
        }))
    }

    /// The page of a diagnosis, with the next checks instead of a plan, and without what was done since.
    pub fn of_diagnosis(case: &Case, diagnosis: &Diagnosis, reasons: &Reasons<'_>) -> Self {
        Self::of(Parts {
            case,
            diagnosis,
            reasons,
            prices: &Prices::default(),
            plan: None,
            proof: None,
        })
    }

    fn of(parts: Parts<'_>) -> Self {
        let Parts { case, diagnosis, .. } = parts;
        let system = &case.system;
        let (steps, further_checks) = match parts.plan {
            Some(plan) => (
                plan.steps.iter().map(|step| planned(step, system)).collect(),
                Vec::new(),
            ),
            None => unplanned(diagnosis, system, parts.prices),
        };
        let repair = parts.proof.as_ref().and_then(|proof| proof.repair.as_ref());
        let to_prove = match repair.map(|repair| repair.finding) {
            None => {
                let must_stand = diagnosis.stop.is_some() || diagnosis.cautions.contains(&Caution::DoNotRun);
                parts.plan.map(|_| Again::of(case, must_stand))
            }
            // What was not read before the repair cannot be read any more.
            Some(RepairFinding::Better | RepairFinding::CannotTell) => Some(Again::of(case, true)),
            Some(
                RepairFinding::Proven
                | RepairFinding::StillFaulty
                | RepairFinding::AnotherFault
                | RepairFinding::SoundBefore
                | RepairFinding::Worse,
            ) => None,
        };
        let cautions = remaining(diagnosis, steps.first(), parts.proof.as_deref());
        let (warnings, cautions) = cautions.into_iter().partition(|caution| WARNINGS.contains(caution));
        Self {
            system: *system,
            conditions: case.conditions,
            stop: diagnosis.stop,
            result: result(diagnosis, parts.reasons),
            expected: parts.plan.map(|plan| PageExpected {
                minutes: plan.expected_minutes,
                without_checks_minutes: plan.without_checks_minutes,
            }),
            readings: rows(case, diagnosis),
            basis: diagnosis.basis,
            figures: figures(case, diagnosis),
            why: why(parts.reasons, diagnosis, case),
            limits: limits(diagnosis),
            warnings,
            cautions,
            steps,
            further_checks,
            to_prove: to_prove.map(|again| PageProof {
                before: again.before.to_vec(),
                at_rest: again.at_rest,
                engine_speed: again.engine_speed,
                air_source: again.air_source,
            }),
            proof: parts.proof,
        }
    }

    /// What to do first.
    pub fn first(&self) -> Option<&PageStep> {
        self.steps.first()
    }
}

/// What was done since, judged; where the repair is proven, the next step is removed from the diagnosis.
#[inline(never)] // so that its answer is not on the caller's stack
pub(super) fn proof(visit: &Visit, diagnosis: &mut Diagnosis) -> Result<Option<Box<Judgements>>, Refusal> {
    if !visit.has_proof() {
        return Ok(None);
    }
    let proof = Box::new(visit.prove_after(diagnosis));
    visit.leave_uncharged(diagnosis, &proof);
    if proves(&proof) {
        diagnosis.next_step = None;
        diagnosis.next_checks.clear();
    }
    if let Some(repair) = &proof.repair {
        // The last readings describe the present vehicle.
        diagnosis.stop = repair.after.stop;
    }
    Ok(Some(proof))
}

fn result(diagnosis: &Diagnosis, reasons: &Reasons<'_>) -> PageResult {
    let verdict = &diagnosis.verdict;
    let pair = diagnosis
        .two_faults
        .filter(|two| two.probability > LIKELIER_THAN_NOT && verdict.faults[..] == two.faults);
    let odds = diagnosis.faults.iter().filter(|ranked| ranked.probability >= TOLD_FROM);
    // Priors alone are not a result.
    let told = if is_informed(diagnosis, reasons) { TOLD } else { 0 };
    PageResult {
        kind: verdict.kind,
        faults: verdict.faults.to_vec(),
        probability: match (pair, verdict.kind) {
            (Some(two), _) => two.probability,
            (None, VerdictKind::Healthy) => diagnosis.probability_of(&[Fault::NoFault]),
            (
                None,
                VerdictKind::NamedFault
                | VerdictKind::CannotTell
                | VerdictKind::NothingFits
                | VerdictKind::NotEnoughEvidence,
            ) => diagnosis.probability_of(&verdict.faults),
        },
        both: pair.is_some(),
        bands_only: diagnosis.quality.contains(&QualityNote::BandsOnly),
        odds: odds
            .take(told)
            .map(|ranked| PageOdds {
                fault: ranked.fault,
                probability: ranked.probability,
                severity: ranked.severity,
            })
            .collect(),
        two_faults: diagnosis.two_faults,
        none_of_these: if told > 0 { diagnosis.none_of_these } else { 0.0 },
        entry_error: diagnosis.entry_error,
        rest: diagnosis.rest,
        resting: diagnosis.resting,
    }
}

/// Whether anything but the priors is evidence for or against the leading explanation.
fn is_informed(diagnosis: &Diagnosis, reasons: &Reasons<'_>) -> bool {
    let told = |contribution: &Contribution| contribution.evidence != Evidence::Prior;
    let mut faults = diagnosis.faults.iter().take(1);
    let spoken = faults.any(|first| reasons.because(first.fault, first.rival).iter().any(told));
    spoken || diagnosis.rest.is_some()
}

fn planned(step: &crate::diagnosis::Step, system: &System) -> PageStep {
    let outcome = |branch: &Branch| PageOutcome {
        finding: Finding::of(step.action, branch.result, branch.observation),
        probability: branch.probability,
        leading: branch.leading,
        leading_probability: branch.leading_probability,
        next: branch.next,
    };
    PageStep {
        action: step.action,
        cautions: step_cautions(step.action, system).to_vec(),
        minutes: step.minutes,
        parts_in_minutes: step.parts_in_minutes,
        recovers: step.recovers,
        outcomes: step.branches.iter().map(outcome).collect(),
    }
}

/// The next step and the further checks, where there is no plan.
fn unplanned(diagnosis: &Diagnosis, system: &System, prices: &Prices) -> (Vec<PageStep>, Vec<PageStep>) {
    let checks = diagnosis.next_checks.iter().map(|ranked| ranked_step(ranked, system));
    match diagnosis.next_step {
        // Where the next step is a check, it is the first of them.
        None | Some(Action::Check(_)) => {
            let mut first: Vec<PageStep> = checks.collect();
            let further = if first.is_empty() {
                Vec::new()
            } else {
                first.split_off(1)
            };
            (first, further)
        }
        Some(action) => {
            let cost = match action {
                Action::Repair(fault) => prices.repair(fault),
                Action::Check(_) | Action::HandOver => prices.unknown(),
            };
            let step = PageStep {
                action,
                cautions: step_cautions(action, system).to_vec(),
                minutes: cost.minutes,
                parts_in_minutes: cost.money / prices.per_minute(),
                recovers: false,
                outcomes: Vec::new(),
            };
            (alloc::vec![step], checks.collect())
        }
    }
}

fn ranked_step(ranked: &RankedCheck, system: &System) -> PageStep {
    let action = Action::Check(ranked.check);
    let outcome = |outcome: &crate::diagnosis::Outcome| PageOutcome {
        finding: Finding::of(action, outcome.result, outcome.observation),
        probability: outcome.probability,
        leading: outcome.leading,
        leading_probability: outcome.leading_probability,
        next: None,
    };
    PageStep {
        action,
        cautions: step_cautions(action, system).to_vec(),
        minutes: ranked.minutes,
        parts_in_minutes: ranked.parts_in_minutes,
        recovers: false,
        outcomes: ranked.outcomes.iter().map(outcome).collect(),
    }
}

fn figures(case: &Case, diagnosis: &Diagnosis) -> Vec<PageFigure> {
    let derived = &diagnosis.derived;
    let high_pa = derived.high_side.map_or(0.0, |estimate| estimate.value.pa());
    let beyond = pseudo_critical::slope_k_pa(case.system.refrigerant, high_pa).is_some();
    let (high, above) = if beyond {
        (FigureKind::PseudoCritical, FigureKind::PseudoCriticalAboveAmbient)
    } else {
        (FigureKind::Condensing, FigureKind::CondensingAboveAmbient)
    };
    let at_rest = case.conditions.at_rest(case.system.compressor);
    // Nothing evaporates or condenses at rest.
    let resting = [(
        FigureKind::SaturationAtRest,
        Scale::Kelvin,
        derived.low_dew.map(Estimate::si),
    )];
    let running = [
        (
            FigureKind::Evaporating,
            Scale::Kelvin,
            derived.low_dew.map(Estimate::si),
        ),
        (high, Scale::Kelvin, derived.high_dew.map(Estimate::si)),
        (
            above,
            Scale::Difference,
            derived.condensing_above_ambient.map(Estimate::si),
        ),
        (
            FigureKind::Superheat,
            Scale::Difference,
            derived.superheat.map(Estimate::si),
        ),
        (
            FigureKind::Subcooling,
            Scale::Difference,
            derived.subcooling.map(Estimate::si),
        ),
        (FigureKind::PressureRatio, Scale::Ratio, derived.pressure_ratio),
    ];
    let all = if at_rest { &resting[..] } else { &running[..] };
    all.iter()
        .filter_map(|&(kind, scale, estimate)| {
            Some(PageFigure {
                kind,
                scale,
                estimate: estimate?,
            })
        })
        .collect()
}

/// One piece of evidence as an argument.
pub(super) fn argument(contribution: &Contribution, diagnosis: &Diagnosis, case: &Case) -> PageArgument {
    let (deviation, seen) = match contribution.evidence {
        Evidence::Feature(feature) => (super::rows::deviation(diagnosis, feature), None),
        Evidence::Observation(question) => {
            let yes = case.observations.answer(question) == Some(true);
            (None, Some((question, yes)))
        }
        Evidence::Prior => (None, None),
    };
    PageArgument {
        evidence: contribution.evidence,
        log_odds: contribution.log_odds,
        strength: words::strength(contribution.log_odds),
        standing: deviation.and_then(words::standing),
        deviation,
        seen,
    }
}

fn why(reasons: &Reasons<'_>, diagnosis: &Diagnosis, case: &Case) -> Option<PageWhy> {
    let first = diagnosis.faults.first()?;
    let because = reasons.because(first.fault, first.rival);
    let all = because
        .iter()
        .map(|contribution| argument(contribution, diagnosis, case));
    let mut arguments: Vec<PageArgument> = all.filter(|told| told.strength != Strength::Hardly).collect();
    put_in_order(&mut arguments, |a, b| libm::fabs(a.log_odds) > libm::fabs(b.log_odds));
    arguments.truncate(TOLD);
    (!arguments.is_empty()).then_some(PageWhy {
        fault: first.fault,
        rival: first.rival,
        arguments,
    })
}

fn limits(diagnosis: &Diagnosis) -> Vec<PageLimit> {
    let limit = |note: &QualityNote| PageLimit {
        note: *note,
        feature: diagnosis.out_of_line.filter(|_| *note == QualityNote::ReadingOutOfLine),
    };
    diagnosis.quality.iter().map(limit).collect()
}

/// The cautions of the diagnosis and of what was done that are not shown above the first step.
fn remaining(diagnosis: &Diagnosis, first: Option<&PageStep>, proof: Option<&Judgements>) -> Vec<Caution> {
    let told = first.map_or(&[][..], |step| &step.cautions);
    let pressed = proof.and_then(|proof| proof.pressure_test.as_ref());
    let pressed = pressed.map(super::proof::test_cautions);
    let all = diagnosis.cautions.iter().copied().chain(pressed.into_iter().flatten());
    let mut left: Vec<Caution> = Vec::new();
    for caution in all {
        if !told.contains(&caution) && !left.contains(&caution) {
            left.push(caution);
        }
    }
    // The local rules come last.
    put_in_order(&mut left, |a, b| *a != Caution::LocalRules && *b == Caution::LocalRules);
    left
}
