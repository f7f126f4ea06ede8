//! The proof of a repair as JSON.

use super::json::{estimate, mistake, object};
use super::record::{Json, record};
use super::texts::Sentence;
use crate::circuit::Estimate;
use crate::intake::Judgements;
use crate::names::{Caution, ChargeFinding, Fault, Language, ProofKind};
use crate::proof::{Balance, Closing, HoldJudgement, Leak, Proof, PullDown, Vacuum};
use crate::units::in_kelvins;
use alloc::string::String;
use alloc::vec::Vec;

/// What was done to a vehicle, judged, as one JSON object, on one line.
///
/// Keys: `pressure_test`, `evacuation`, `hold`, `charge`, `pull_down`, `repair`, each `null` where it was not done or cannot be
/// judged; `leak_found`, whether a leak was found; `closing`, the finding of all of them together, with the `weakest` of them;
/// and `refused`, the mistakes of what cannot be judged, as in [`refusal_json`](super::refusal_json).
///
/// Each has its `finding` (an id) and what that `says`, and the figures of its struct in [`crate::proof`] in plain SI, with
/// unit and datum in the key, and a measured figure with its standard uncertainty. The charge has a finding for what was
/// `found` and for what is in it `now`.
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let proof = report::proof_json(&visit.prove()?, visit.settings.language);
/// assert!(proof.contains(r#""repair":{"finding":"proven""#));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn proof_json(judgements: &Judgements, language: Language) -> String {
    self::judgements(judgements, language).answer()
}

pub(super) fn judgements(all: &Judgements, language: Language) -> Json {
    record!({
        "pressure_test": all.pressure_test.as_ref().map(|done| leak(done, language)),
        "evacuation": all.evacuation.as_ref().map(|done| vacuum(done, language)),
        "hold": all.hold.as_ref().map(|done| hold(done, language)),
        "charge": all.charge.as_ref().map(|done| balance(done, language)),
        "pull_down": all.pull_down.as_ref().map(|done| pull_down(done, language)),
        "leak_found": all.leak_found,
        "repair": all.repair.as_deref().map(|done| repair(done, language)),
        "closing": all.closing.as_ref().map(|done| closing(done, language)),
        "refused": all.refused.iter().map(mistake).collect::<Vec<_>>(),
    })
}

fn leak(leak: &Leak, language: Language) -> Json {
    record!({
        "finding": leak.finding.id(),
        "says": leak.finding.sentence(language),
        "tight_end_pa_abs": leak.tight_end_pa,
        "lost": estimate("", leak.lost),
        "rate": estimate("kg_s", leak.rate_kg_s),
        "least_seen_kg_s": leak.least_seen_kg_s,
        "needed_s": leak.needed_s,
        "needed_for_a_year_s": leak.needed_for_a_year_s,
        "refrigerant": leak.refrigerant_kg_s.map(loss),
        "least_seen_refrigerant": leak.least_seen_refrigerant_kg_s.map(loss),
        "empty": leak.empty_s.map(|(low, high)| record!({ "low_s": low, "high_s": high })),
        "above_pa_gauge": leak.above_pa_gauge,
        "cautions": test_cautions(leak).map(Caution::id).collect::<Json>(),
    })
}

fn loss((low, high): (f64, f64)) -> Json {
    record!({ "low_kg_s": low, "high_kg_s": high })
}

/// The cautions of a pressure test, with one more where it was too high.
pub(super) fn test_cautions(leak: &Leak) -> impl Iterator<Item = Caution> {
    let too_high = leak.above_pa_gauge.map(|_| Caution::TestTooHigh);
    core::iter::once(Caution::TestPressure).chain(too_high)
}

fn vacuum(vacuum: &Vacuum, language: Language) -> Json {
    record!({
        "finding": vacuum.finding.id(),
        "says": vacuum.finding.sentence(language),
        "reached": estimate("pa_abs", Some(vacuum.reached_pa)),
        "water": estimate("pa_abs", Some(vacuum.water_pa)),
        "boiling_point": estimate("k", vacuum.boiling_point_k),
        "deepest_pa_gauge": vacuum.deepest_pa_gauge,
        "zero_off_pa": vacuum.zero_off_pa,
        "water_freezes": vacuum.water_freezes,
    })
}

fn hold(hold: &HoldJudgement, language: Language) -> Json {
    record!({
        "finding": hold.finding.id(),
        "says": hold.finding.sentence(language),
        "held_s": hold.held_s,
        "rise": estimate("pa", Some(hold.rise_pa)),
        "early": estimate("pa_s", hold.early_pa_s),
        "late": estimate("pa_s", hold.late_pa_s),
        "levels": hold.levels_pa.map(|(low, high)| record!({ "low_pa_abs": low, "high_pa_abs": high })),
        "water": estimate("pa_abs", Some(hold.water_pa)),
        "air": estimate("kg_s", hold.air_kg_s),
    })
}

fn balance(balance: &Balance, language: Language) -> Json {
    let side = |mass: Option<Estimate>, finding: Option<ChargeFinding>| {
        record!({
            "finding": finding.map(ChargeFinding::id),
            "says": finding.map(|finding| finding.sentence(language)),
            "mass": estimate("kg", mass),
        })
    };
    record!({
        "found": side(balance.found_kg, balance.found),
        "now": side(balance.now_kg, balance.now),
        "hose": estimate("kg", balance.hose_kg),
        "oil_change": estimate("kg", balance.oil_change_kg),
    })
}

fn pull_down(fall: &PullDown, language: Language) -> Json {
    record!({
        "finding": fall.finding.id(),
        "says": fall.finding.sentence(language),
        "expected": record!({
            "low_k": in_kelvins(fall.expected.low_95),
            "median_k": in_kelvins(fall.expected.median),
            "high_k": in_kelvins(fall.expected.high_95),
        }),
        "reached_s": fall.reached_s,
        "levels_off": estimate("k", fall.levels_off_k),
    })
}

fn repair(proof: &Proof, language: Language) -> Json {
    let seen = proof.seen.iter().map(|seen| {
        let id = seen.feature.id().into();
        (id, record!({"before": seen.before, "after": seen.after}))
    });
    record!({
        "finding": proof.finding.id(),
        "says": proof.finding.sentence(language),
        "sound": proof.sound,
        "set_right": proof.set_right,
        "unchanged": proof.unchanged,
        "gone": proof.gone,
        "fault": proof.fault.id(),
        "same_fault": proof.same_fault,
        "other_fault": proof.other_fault.map(|(fault, probability)| record!({
            "fault": fault.id(),
            "probability": probability,
        })),
        "vent_gained_k": proof.vent_gained_k,
        "seen": object(seen),
        "after": record!({
            "verdict": proof.after.verdict.kind.id(),
            "named": proof.after.verdict.faults.iter().copied().map(Fault::id).collect::<Vec<_>>(),
        }),
    })
}

fn closing(closing: &Closing, language: Language) -> Json {
    record!({
        "finding": closing.finding.id(),
        "says": closing.finding.sentence(language),
        "weakest": closing.weakest.map(ProofKind::id),
    })
}
