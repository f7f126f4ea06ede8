//! The answer as JSON.

use super::finding::Finding;
use super::language::step_says;
use super::made::argument;
use super::page::{PageReading, Scale};
use super::plan::{checked, filled, repaired};
use super::record::{Json, Told, record};
use super::rows::rows;
use super::texts::Sentence;
use super::units::Units;
use super::words::{Wording, finding_says};
use crate::circuit::{Derived, Estimate};
use crate::diagnosis::{
    Action, Case, Diagnosis, Evidence, Key, RankedCheck, RankedFault, Reasons, Repair, Resting, Stop, TwoFaults,
    measure, repair,
};
use crate::diagnosis::{check_cautions, repair_cautions};
use crate::intake::{Mistake, Refusal};
use crate::names::{
    Caution, Check, EntryError, ExpectedBasis, Fault, Feature, Language, Observation, RestFinding, Standing,
};
use crate::units::difference_in_kelvins;
use crate::vehicle::System;
use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// The answer as one JSON object, on one line.
///
/// Numbers are plain SI with the unit and the datum in the key; ids are the same in every language, and what it `says` is in the
/// one that is asked for. Keys: `verdict` (an id of `VerdictKind`), `named` (the
/// fault or the short list), `rival`, `faults` (each `fault`, `probability`, `severity`, `because`, in which each piece of evidence has its `strength`, an id of `Strength`),
/// `none_of_these`, `entry_error`, `two_faults`, `out_of_line` (the figure that fits the leading explanation badly), `expected` (by reading: `low`, `median`, `high` of the 95 % band, `measured`,
/// `deviation` in standard deviations, `standing` as an id of `Standing`),
/// `expected_basis` (an id of `ExpectedBasis`), `derived` (each with its standard uncertainty), `rest`, `resting` (the arithmetic of the pressure at rest: `excess` above
/// saturation, the `gas_share` or the warmth `warmer_k` that it stands for, and the share of the charge that is `missing`), `stop` (why the compressor must stand still: `reason`, what it `says`, and where the high side
/// is at its limit `high_side_pa_gauge`, `limit_pa_gauge` and whether the limit is 95 % of the vehicle's own cut-out), `next_step` (`check` or `repair`, as a step of
/// [`plan_json`](super::plan_json()), and what it `says`; `null` where nothing is left to do), `next_checks` (each
/// with the entries of a readings file that it `fills`, its `minutes` of labour and `parts_in_minutes`, its cautions and what every
/// outcome would mean: `outcome` is the id of a [`Finding`](super::Finding), `seen` what was seen, `of` the question that is
/// answered), `cautions`, `quality`, and as in every answer the version of the library (`coldloop`) and of its formats
/// (`format`). What is not known is `null`.
///
/// ```
/// use coldloop::{diagnosis::{Settings, judge}, intake, report};
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let settings = Settings::default();
/// let judgement = judge(&case, &settings)?;
/// let answer = report::json(&case, &judgement.diagnosis(&settings)?, &judgement.reasons(&settings), settings.language);
/// assert!(answer.starts_with(r#"{"verdict":"#));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn json(case: &Case, diagnosis: &Diagnosis, reasons: &Reasons<'_>, language: Language) -> String {
    answer(case, diagnosis, reasons, language).answer()
}

/// A refused readings file as one JSON object: `refused`, with the `key` and the `value` of the first mistake, a `message`
/// with a line for each, and `mistakes`: each with its `key`, `value`, `line`, `column` and `message`.
///
/// ```
/// let refusal = coldloop::intake::case_from_json("{}").unwrap_err();
/// assert!(coldloop::report::refusal_json(&refusal).starts_with(r#"{"refused":{"key":"system","#));
/// ```
pub fn refusal_json(refusal: &Refusal) -> String {
    let refused = record!({
        "key": refusal.first.key.clone(),
        "value": refusal.first.value.clone(),
        "message": refusal.to_string(),
        "mistakes": refusal.mistakes().map(mistake).collect::<Vec<_>>(),
    });
    record!({ "refused": refused }).answer()
}

pub(super) fn mistake(mistake: &Mistake) -> Json {
    record!({
        "key": mistake.key.clone(),
        "value": mistake.value.clone(),
        "line": mistake.position.map(|position| position.line),
        "column": mistake.position.map(|position| position.column),
        "message": mistake.to_string(),
    })
}

pub(super) fn answer(case: &Case, diagnosis: &Diagnosis, reasons: &Reasons<'_>, language: Language) -> Json {
    let verdict = &diagnosis.verdict;
    record!({
        "verdict": verdict.kind.id(),
        "named": verdict.faults.iter().copied().map(Fault::id).collect::<Vec<_>>(),
        "rival": verdict.rival.map(Fault::id),
        "faults": diagnosis.faults.iter().map(|ranked| fault(case, diagnosis, reasons, ranked, language)).collect::<Vec<_>>(),
        "none_of_these": diagnosis.none_of_these,
        "entry_error": diagnosis.entry_error.map(|(kind, probability)| entry_error(kind, probability, language)),
        "two_faults": diagnosis.two_faults.map(|two| two_faults(&two)),
        "out_of_line": diagnosis.out_of_line.map(Feature::id),
        "expected": object(rows(case, diagnosis).iter().map(|row| (row.feature.id().into(), band(row)))),
        "expected_basis": diagnosis.basis.map(ExpectedBasis::id),
        "derived": figures(&diagnosis.derived),
        "rest": diagnosis.rest.map(RestFinding::id),
        "resting": diagnosis.resting.as_ref().map(resting),
        "stop": diagnosis.stop.as_ref().map(|why| stop(why, language)),
        "next_step": diagnosis.next_step.map(|step| next_step(step, &case.system, language)),
        "next_checks": diagnosis.next_checks.iter().map(|ranked| check(ranked, &case.system, language)).collect::<Vec<_>>(),
        "cautions": diagnosis.cautions.iter().map(|c| record!({"caution": c.id(), "says": c.sentence(language)})).collect::<Vec<_>>(),
        "quality": diagnosis.quality.iter().map(|n| record!({"note": n.id(), "says": n.sentence(language)})).collect::<Vec<_>>(),
    })
}

fn next_step(action: Action, system: &System, language: Language) -> Json {
    record!({
        "check": checked(action),
        "repair": repaired(action),
        "says": step_says(action, system, language),
        "fills": filled(action),
    })
}

fn stop(stop: &Stop, language: Language) -> Json {
    record!({
        "reason": stop.reason.id(),
        "says": stop.reason.sentence(language),
        "high_side_pa_gauge": stop.high_side.map(|high| high.read.pa()),
        "limit_pa_gauge": stop.high_side.map(|high| high.stop.pa()),
        "limit_of_vehicle": stop.high_side.map(|high| high.of_vehicle),
    })
}

fn resting(resting: &Resting) -> Json {
    record!({
        "excess": estimate("pa", Some(resting.excess.si())),
        "gas_share": resting.gas_share,
        "warmer_k": difference_in_kelvins(resting.warmer),
        "missing": resting.missing.map(|(low, high)| record!({ "low": low, "high": high })),
    })
}

pub(super) fn object(entries: impl Iterator<Item = (Cow<'static, str>, Json)>) -> Json {
    Json::Object(entries.collect())
}

fn fault(case: &Case, diagnosis: &Diagnosis, reasons: &Reasons<'_>, ranked: &RankedFault, language: Language) -> Json {
    let because = reasons.because(ranked.fault, ranked.rival);
    let wording = Wording {
        language,
        ..Wording::new(Units::Metric)
    };
    record!({
        "fault": ranked.fault.id(),
        "probability": ranked.probability,
        "severity": ranked.severity.map(|(low, high)| record!({"measure": measure(ranked.fault), "low": low, "high": high})),
        "repair": repair_of(ranked.fault, &case.system, language),
        "against": ranked.rival.id(),
        "because": because.iter().map(|contribution| {
            let argument = argument(contribution, diagnosis, case);
            record!({
                "evidence": match contribution.evidence {
                    Evidence::Prior => "prior",
                    Evidence::Feature(feature) => feature.id(),
                    Evidence::Observation(observation) => observation.id(),
                },
                "log_odds": contribution.log_odds,
                "strength": argument.strength.id(),
                "standing": argument.standing.map(Standing::id),
                "seen": argument.seen.map(|(question, yes)| Finding::Seen(question, yes).id()),
                "says": wording.argument(&argument),
            })
        }).collect::<Vec<_>>(),
    })
}

fn repair_of(fault: Fault, system: &System, language: Language) -> Json {
    let row = repair(fault);
    let &Repair {
        minutes,
        money,
        recovery,
        ..
    } = row;
    record!({
        "says": step_says(Action::Repair(fault), system, language),
        "minutes": minutes,
        "parts_in_minutes": money,
        "recovers_charge": recovery,
        "cautions": ids(&repair_cautions(fault, system)),
    })
}

/// The entries of a readings file that a check fills.
pub(super) fn fills(check: Check) -> Json {
    check.keys().iter().map(Key::to_string).collect()
}

pub(super) fn ids(cautions: &[Caution]) -> Json {
    cautions.iter().copied().map(Caution::id).collect()
}

fn entry_error(kind: EntryError, probability: f64, language: Language) -> Json {
    record!({"kind": kind.id(), "probability": probability, "says": kind.sentence(language)})
}

fn two_faults(two: &TwoFaults) -> Json {
    record!({"faults": two.faults.map(Fault::id), "probability": two.probability, "any_pair_probability": two.any_pair})
}

fn band(row: &PageReading) -> Json {
    let unit = match row.scale {
        Scale::PaGauge => "pa_gauge",
        Scale::PaDifference => "pa",
        Scale::Kelvin | Scale::Difference => "k",
        Scale::PerSecond => "hz",
        Scale::Ratio => "1",
    };
    let figures = [
        ("low", Some(row.band_95.0)),
        ("median", Some(row.median)),
        ("high", Some(row.band_95.1)),
        ("measured", row.measured),
    ];
    let figures = figures
        .into_iter()
        .map(|(name, value)| (format!("{name}_{unit}").into(), value.told()));
    let standing = row.standing.map(Standing::id);
    object(figures.chain([
        ("deviation".into(), row.deviation.told()),
        ("standing".into(), standing.told()),
    ]))
}

/// Every derived figure by its name; the unit stands in the key of the value.
fn figures(derived: &Derived) -> Json {
    let figures: [(&str, &str, Option<Estimate>); 12] = [
        ("low_side_dew", "k", derived.low_dew.map(Estimate::si)),
        ("low_side_bubble", "k", derived.low_bubble.map(Estimate::si)),
        ("high_side_dew", "k", derived.high_dew.map(Estimate::si)),
        ("high_side_bubble", "k", derived.high_bubble.map(Estimate::si)),
        ("superheat", "k", derived.superheat.map(Estimate::si)),
        ("subcooling", "k", derived.subcooling.map(Estimate::si)),
        (
            "discharge_superheat",
            "k",
            derived.discharge_superheat.map(Estimate::si),
        ),
        (
            "condensing_above_ambient",
            "k",
            derived.condensing_above_ambient.map(Estimate::si),
        ),
        (
            "vent_above_evaporating",
            "k",
            derived.vent_above_evaporating.map(Estimate::si),
        ),
        ("pressure_ratio", "", derived.pressure_ratio),
        ("cooling", "j_kg", derived.cooling.map(Estimate::si)),
        ("isentropic_efficiency", "", derived.isentropic_efficiency),
    ];
    object(
        figures
            .into_iter()
            .map(|(name, unit, estimate)| (name.into(), self::estimate(unit, estimate))),
    )
}

pub(super) fn estimate(unit: &str, estimate: Option<Estimate>) -> Json {
    let Some(estimate) = estimate else { return Json::Null };
    let key = |name: &'static str| {
        if unit.is_empty() {
            Cow::Borrowed(name)
        } else {
            format!("{name}_{unit}").into()
        }
    };
    object(
        [
            (key("value"), estimate.value.told()),
            (key("standard_uncertainty"), estimate.standard_uncertainty.told()),
        ]
        .into_iter(),
    )
}

fn check(ranked: &RankedCheck, system: &System, language: Language) -> Json {
    record!({
        "check": ranked.check.id(),
        "says": ranked.check.sentence(language),
        "fills": fills(ranked.check),
        "minutes": ranked.minutes,
        "parts_in_minutes": ranked.parts_in_minutes,
        "saving_minutes": ranked.saving,
        "cautions": ids(&check_cautions(ranked.check, system)),
        "outcomes": ranked.outcomes.iter().map(|outcome| (outcome, Finding::of(Action::Check(ranked.check), outcome.result, outcome.observation))).map(|(outcome, finding)| record!({
            "outcome": finding.id(),
            "seen": finding_says(finding, language),
            "result": outcome.result.id(),
            "of": outcome.observation.map(Observation::id),
            "probability": outcome.probability,
            "then": outcome.leading.id(),
            "then_probability": outcome.leading_probability,
        })).collect::<Vec<_>>(),
    })
}
