//! The proof of a repair as JSON and as text.

use super::json::{estimate, object};
use super::record::{Json, record};
use super::rows::Scale;
use super::units::Units;
use super::words::{per_cent, spoken};
use crate::circuit::Estimate;
use crate::diagnosis::Case;
use crate::intake::Judgements;
use crate::names::{Caution, ChargeFinding, Fault};
use crate::proof::{Balance, HoldJudgement, Leak, Proof, PullDown, Vacuum};
use crate::units::{AbsolutePressure, in_kelvins};
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt::{self, Write};

/// What was done to a vehicle, judged, as one JSON object, on one line.
///
/// Keys: `pressure_test`, `evacuation`, `hold`, `charge`, `pull_down`, `repair`; `null` for what was not done. Each has its
/// `finding` (an id) and what that `says`, and the figures of its struct in [`crate::proof`] in plain SI, with unit and
/// datum in the key and each measured one with its standard uncertainty; the charge has a finding for what was `found` and
/// for what is in it `now`.
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let proof = report::proof_json(&visit.prove()?);
/// assert!(proof.contains(r#""repair":{"finding":"proven""#));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn proof_json(judgements: &Judgements) -> String {
    self::judgements(judgements).to_string()
}

pub(super) fn judgements(all: &Judgements) -> Json {
    record!({
        "pressure_test": all.pressure_test.as_ref().map(leak),
        "evacuation": all.evacuation.as_ref().map(vacuum),
        "hold": all.hold.as_ref().map(hold),
        "charge": all.charge.as_ref().map(balance),
        "pull_down": all.pull_down.as_ref().map(pull_down),
        "repair": all.repair.as_deref().map(repair),
    })
}

fn leak(leak: &Leak) -> Json {
    record!({
        "finding": leak.finding.id(),
        "says": leak.finding.description(),
        "tight_end_pa_abs": leak.tight_end_pa,
        "lost": estimate("", leak.lost),
        "rate": estimate("kg_s", leak.rate_kg_s),
        "least_seen_kg_s": leak.least_seen_kg_s,
        "needed_s": leak.needed_s,
        "cautions": [Caution::TestPressure.id()],
    })
}

fn vacuum(vacuum: &Vacuum) -> Json {
    record!({
        "finding": vacuum.finding.id(),
        "says": vacuum.finding.description(),
        "reached": estimate("pa_abs", Some(vacuum.reached_pa)),
        "water": estimate("pa_abs", Some(vacuum.water_pa)),
        "boiling_point": estimate("k", vacuum.boiling_point_k),
        "deepest_pa_gauge": vacuum.deepest_pa_gauge,
        "water_freezes": vacuum.water_freezes,
    })
}

fn hold(hold: &HoldJudgement) -> Json {
    record!({
        "finding": hold.finding.id(),
        "says": hold.finding.description(),
        "held_s": hold.held_s,
        "rise": estimate("pa", Some(hold.rise_pa)),
        "early": estimate("pa_s", hold.early_pa_s),
        "late": estimate("pa_s", hold.late_pa_s),
        "water": estimate("pa_abs", Some(hold.water_pa)),
        "air": estimate("kg_s", hold.air_kg_s),
    })
}

fn balance(balance: &Balance) -> Json {
    let side = |mass: Option<Estimate>, finding: Option<ChargeFinding>| {
        record!({
            "finding": finding.map(ChargeFinding::id),
            "says": finding.map(ChargeFinding::description),
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

fn pull_down(fall: &PullDown) -> Json {
    record!({
        "finding": fall.finding.id(),
        "says": fall.finding.description(),
        "expected": record!({
            "low_k": in_kelvins(fall.expected.low_95),
            "median_k": in_kelvins(fall.expected.median),
            "high_k": in_kelvins(fall.expected.high_95),
        }),
        "reached_s": fall.reached_s,
        "levels_off": estimate("k", fall.levels_off_k),
    })
}

fn repair(proof: &Proof) -> Json {
    let seen = proof.seen.iter().map(|seen| {
        let id = seen.feature.id().into();
        (id, record!({"before": seen.before, "after": seen.after}))
    });
    record!({
        "finding": proof.finding.id(),
        "says": proof.finding.description(),
        "sound": proof.sound,
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

/// What was done and what it shows, a line each, with the figures below.
pub(super) fn write(out: &mut String, all: &Judgements, case: &Case, units: Units) -> fmt::Result {
    writeln!(out, "\nPROOF")?;
    let air_pa = case.conditions.surroundings.pressure().pa();
    if let Some(test) = &all.pressure_test {
        writeln!(out, "  Test pressure: {}", test.finding.description())?;
        let tight = units.with_unit(Scale::PaGauge, test.tight_end_pa - air_pa);
        write!(out, "    a tight circuit would end at {tight}")?;
        match test.least_seen_kg_s {
            Some(least) => writeln!(out, "; a loss below {:.2} g/h would not show", 3.6e6 * least)?,
            None => writeln!(out)?,
        }
    }
    if let Some(vacuum) = &all.evacuation {
        writeln!(out, "  Evacuation: {}", vacuum.finding.description())?;
        let microns = |pressure: Estimate| AbsolutePressure::from_pa(pressure.value).microns();
        let (reached, water) = (microns(vacuum.reached_pa), microns(vacuum.water_pa));
        writeln!(
            out,
            "    {reached:.0} micron reached; water in the coldest part boils below {water:.0} micron"
        )?;
    }
    if let Some(hold) = &all.hold {
        writeln!(out, "  Held vacuum: {}", hold.finding.description())?;
    }
    if let Some(balance) = &all.charge {
        for (name, mass, finding) in [
            ("Charge found", balance.found_kg, balance.found),
            ("Charge now", balance.now_kg, balance.now),
        ] {
            if let Some(mass) = mass {
                let says = finding.map_or("the label was not given", ChargeFinding::description);
                let (grams, spread) = (1e3 * mass.value, 2e3 * mass.standard_uncertainty);
                writeln!(out, "  {name}: {grams:.0} ± {spread:.0} g. {says}")?;
            }
        }
    }
    if let Some(fall) = &all.pull_down {
        writeln!(out, "  Pull-down: {}", fall.finding.description())?;
    }
    match &all.repair {
        Some(proof) => write_repair(out, proof, units),
        None => Ok(()),
    }
}

fn write_repair(out: &mut String, proof: &Proof, units: Units) -> fmt::Result {
    writeln!(out, "  After the repair: {}", proof.finding.description())?;
    writeln!(
        out,
        "    sound now: {}; {} still there: {}",
        per_cent(proof.sound),
        spoken(proof.fault.id()),
        per_cent(proof.same_fault)
    )?;
    match proof.vent_gained_k {
        Some(gained_k) => {
            let gained = units.with_unit(Scale::Difference, libm::fabs(gained_k));
            let colder = if gained_k >= 0.0 { "colder" } else { "warmer" };
            writeln!(
                out,
                "    the vent, the weather of each time taken out, is {gained} {colder}"
            )
        }
        None => Ok(()),
    }
}
