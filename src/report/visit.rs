//! The whole answer of a visit: the diagnosis, what to do, and whether it helped.

use super::json::answer;
use super::made::proof;
use super::page::Page;
use super::proof::judgements;
use super::record::Json;
use super::units::Units;
use super::words::Wording;
use crate::intake::{Refusal, Visit};
use alloc::string::{String, ToString};

/// The diagnosis of a visit as [`json`](super::json()) gives it, with the `proof` of [`proof_json`](super::proof_json)
/// where something was done since.
///
/// Errors: a [`Refusal`] for what cannot be diagnosed or judged.
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// assert!(report::visit_json(&visit)?.contains(r#""proof":{"pressure_test":{"finding":"#));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn visit_json(visit: &Visit) -> Result<String, Refusal> {
    Ok(visit_tree(visit)?.to_string())
}

/// The same as a tree of values.
#[doc(hidden)]
pub fn visit_tree(visit: &Visit) -> Result<Json, Refusal> {
    let judgement = visit.judge()?;
    let mut diagnosis = visit.told(&judgement)?;
    let proof = proof(visit, &mut diagnosis)?;
    let mut told = answer(
        &visit.case,
        &diagnosis,
        &judgement.reasons(&visit.settings),
        visit.settings.language,
    );
    if let (Json::Object(entries), Some(proof)) = (&mut told, &proof) {
        entries.push(("proof".into(), judgements(proof, visit.settings.language)));
    }
    Ok(told.signed())
}

/// The page of the visit as text, in the language of its settings, and with details where the settings ask for them.
///
/// Errors: as [`visit_json`].
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/overcharge.toml"))?;
/// assert!(report::visit_text(&visit, report::Units::Metric)?.contains("DO FIRST"));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn visit_text(visit: &Visit, units: Units) -> Result<String, Refusal> {
    let wording = Wording {
        units,
        language: visit.settings.language,
        details: visit.settings.details,
    };
    Ok(Page::of_visit(visit)?.text(wording))
}
