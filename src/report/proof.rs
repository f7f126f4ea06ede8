//! The proof of a repair as JSON.

use super::json::{estimate, mistake, object};
use super::record::{Json, record};
use super::texts::Sentence;
use crate::circuit::Estimate;
use crate::intake::Judgements;
use crate::names::{Caution, ChargeFinding, Fault, Language, ProofKind};
use crate::proof::{Balance, Closing, HoldJudgement, Leak, Proof, PullDown, Vacuum};
use crate::units::{GaugePressure, Mass, MassFlow, PressureDifference, TimeSpan, difference_in_kelvins, in_kelvins};
use alloc::string::String;
use alloc::vec::Vec;

/// What was done to a vehicle, judged, as one JSON object, on one line.
///
/// Keys: `pressure_test`, `evacuation`, `hold`, `charge`, `pull_down`, `leak_found` (whether), `repair`; `null` for what was not done or cannot be judged,
/// of which `refused` tells the mistakes as [`refusal_json`](super::refusal_json) does; and `closing`, what all of them tell
/// together, with the `weakest` of them. Each has its
/// `finding` (an id) and what that `says`, and the figures of its struct in [`crate::proof`] in plain SI, with unit and
/// datum in the key and each measured one with its standard uncertainty; the charge has a finding for what was `found` and
/// for what is in it `now`.
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
        "tight_end_pa_abs": leak.tight_end.pa(),
        "lost": estimate("", leak.lost),
        "rate": estimate("kg_s", leak.rate.map(Estimate::si)),
        "least_seen_kg_s": leak.least_seen.map(MassFlow::kg_s),
        "needed_s": leak.needed.map(TimeSpan::seconds),
        "needed_for_a_year_s": leak.needed_for_a_year.map(TimeSpan::seconds),
        "refrigerant": leak.refrigerant.map(loss),
        "least_seen_refrigerant": leak.least_seen_refrigerant.map(loss),
        "empty": leak.empty.map(|(low, high)| record!({ "low_s": low.seconds(), "high_s": high.seconds() })),
        "above_pa_gauge": leak.above.map(GaugePressure::pa),
        "cautions": test_cautions(leak).map(Caution::id).collect::<Json>(),
    })
}

fn loss((low, high): (MassFlow, MassFlow)) -> Json {
    record!({ "low_kg_s": low.kg_s(), "high_kg_s": high.kg_s() })
}

/// What a pressure test asks for, and more where it was too high.
pub(super) fn test_cautions(leak: &Leak) -> impl Iterator<Item = Caution> {
    let too_high = leak.above.map(|_| Caution::TestTooHigh);
    core::iter::once(Caution::TestPressure).chain(too_high)
}

fn vacuum(vacuum: &Vacuum, language: Language) -> Json {
    record!({
        "finding": vacuum.finding.id(),
        "says": vacuum.finding.sentence(language),
        "reached": estimate("pa_abs", Some(vacuum.reached.si())),
        "water": estimate("pa_abs", Some(vacuum.water.si())),
        "boiling_point": estimate("k", vacuum.boiling_point.map(Estimate::si)),
        "deepest_pa_gauge": vacuum.deepest.pa(),
        "zero_off_pa": vacuum.zero_off.map(PressureDifference::pa),
        "water_freezes": vacuum.water_freezes,
    })
}

fn hold(hold: &HoldJudgement, language: Language) -> Json {
    record!({
        "finding": hold.finding.id(),
        "says": hold.finding.sentence(language),
        "held_s": hold.held.seconds(),
        "rise": estimate("pa", Some(hold.rise.si())),
        "early": estimate("pa_s", hold.early.map(Estimate::si)),
        "late": estimate("pa_s", hold.late.map(Estimate::si)),
        "levels": hold.levels.map(|(low, high)| record!({ "low_pa_abs": low.pa(), "high_pa_abs": high.pa() })),
        "water": estimate("pa_abs", Some(hold.water.si())),
        "air": estimate("kg_s", hold.air.map(Estimate::si)),
    })
}

fn balance(balance: &Balance, language: Language) -> Json {
    let side = |mass: Option<Estimate<Mass>>, finding: Option<ChargeFinding>| {
        record!({
            "finding": finding.map(ChargeFinding::id),
            "says": finding.map(|finding| finding.sentence(language)),
            "mass": estimate("kg", mass.map(Estimate::si)),
        })
    };
    record!({
        "found": side(balance.charge_found, balance.found),
        "now": side(balance.charge_now, balance.now),
        "hose": estimate("kg", balance.hose.map(Estimate::si)),
        "oil_change": estimate("kg", balance.oil_change.map(Estimate::si)),
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
        "reached_s": fall.reached.map(TimeSpan::seconds),
        "levels_off": estimate("k", fall.levels_off.map(Estimate::si)),
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
        "vent_gained_k": proof.vent_gained.map(difference_in_kelvins),
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
