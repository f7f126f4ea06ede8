//! The proof of a repair as JSON and as text.

use super::json::{estimate, mistake, object};
use super::page::Scale;
use super::record::{Json, record};
use super::units::Units;
use super::words::{per_cent, spoken};
use crate::circuit::Estimate;
use crate::diagnosis::Case;
use crate::intake::Judgements;
use crate::names::{Caution, ChargeFinding, Fault, ProofKind, RepairFinding};
use crate::proof::{Balance, Closing, HoldJudgement, Leak, Proof, PullDown, Vacuum};
use crate::units::{AbsolutePressure, GaugePressure, in_kelvins};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt::{self, Write};

/// What was done to a vehicle, judged, as one JSON object, on one line.
///
/// Keys: `pressure_test`, `evacuation`, `hold`, `charge`, `pull_down`, `repair`; `null` for what was not done or cannot be judged,
/// of which `refused` tells the mistakes as [`refusal_json`](super::refusal_json) does; and `closing`, what all of them tell
/// together, with the `weakest` of them. Each has its
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
        "closing": all.closing.as_ref().map(closing),
        "refused": all.refused.iter().map(mistake).collect::<Vec<_>>(),
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

/// What a pressure test asks for, and more where it was too high.
pub(super) fn test_cautions(leak: &Leak) -> impl Iterator<Item = Caution> {
    let too_high = leak.above_pa_gauge.map(|_| Caution::TestTooHigh);
    core::iter::once(Caution::TestPressure).chain(too_high)
}

fn vacuum(vacuum: &Vacuum) -> Json {
    record!({
        "finding": vacuum.finding.id(),
        "says": vacuum.finding.description(),
        "reached": estimate("pa_abs", Some(vacuum.reached_pa)),
        "water": estimate("pa_abs", Some(vacuum.water_pa)),
        "boiling_point": estimate("k", vacuum.boiling_point_k),
        "deepest_pa_gauge": vacuum.deepest_pa_gauge,
        "zero_off_pa": vacuum.zero_off_pa,
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
        "levels": hold.levels_pa.map(|(low, high)| record!({ "low_pa_abs": low, "high_pa_abs": high })),
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

fn closing(closing: &Closing) -> Json {
    record!({
        "finding": closing.finding.id(),
        "says": closing.finding.description(),
        "weakest": closing.weakest.map(ProofKind::id),
    })
}

/// What was done and what it shows, a line each, with the figures below.
pub(super) fn write(out: &mut String, all: &Judgements, case: &Case, units: Units) -> fmt::Result {
    writeln!(out, "\nPROOF")?;
    let air_pa = case.conditions.surroundings.pressure().pa();
    if let Some(test) = &all.pressure_test {
        writeln!(out, "  Test pressure: {}", test.finding.description())?;
        let tight = units.with_unit(Scale::PaGauge, test.tight_end_pa - air_pa);
        writeln!(out, "    a tight circuit would end at {tight}")?;
        write_loss(out, test)?;
    }
    if let Some(vacuum) = &all.evacuation {
        writeln!(out, "  Evacuation: {}", vacuum.finding.description())?;
        writeln!(
            out,
            "    {:.0} micron reached; water in the coldest part boils below {:.0} micron",
            microns(vacuum.reached_pa.value),
            microns(vacuum.water_pa.value)
        )?;
        if let Some(off_pa) = vacuum.zero_off_pa {
            writeln!(
                out,
                "    the air here lets a gauge show {:.1} inHg of vacuum, and no more: this one is off by {:.1} inHg or more; \
                 taken as all it can show",
                GaugePressure::from_pa(vacuum.deepest_pa_gauge).inhg_vacuum(),
                GaugePressure::from_pa(-off_pa).inhg_vacuum()
            )?;
        }
    }
    if let Some(hold) = &all.hold {
        writeln!(out, "  Held vacuum: {}", hold.finding.description())?;
        write!(
            out,
            "    {:+.0} ± {:.0} micron in {:.0} min",
            microns(hold.rise_pa.value),
            2.0 * microns(hold.rise_pa.standard_uncertainty),
            hold.held_s / 60.0
        )?;
        match hold.late_pa_s {
            Some(late) => writeln!(
                out,
                ", at the end {:+.1} ± {:.1} micron a minute",
                60.0 * microns(late.value),
                120.0 * microns(late.standard_uncertainty)
            )?,
            None => writeln!(out)?,
        }
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
    if let Some(proof) = &all.repair {
        write_repair(out, proof, units)?;
    }
    for mistake in &all.refused {
        writeln!(out, "  Not judged: {mistake}")?;
    }
    match &all.closing {
        Some(closing) => write_closing(out, closing),
        None => Ok(()),
    }
}

fn microns(pa: f64) -> f64 {
    AbsolutePressure::from_pa(pa).microns()
}

/// The loss in the refrigerant of the vehicle, and what would not have shown.
fn write_loss(out: &mut String, test: &Leak) -> fmt::Result {
    const YEAR_S: f64 = 365.25 * 86_400.0;
    let grams_a_year = |(low, high): (f64, f64)| {
        let [low, high] = [low, high].map(|kg_s| 1e3 * YEAR_S * kg_s);
        format!("{} to {} g of refrigerant a year", two_digits(low), two_digits(high))
    };
    if let Some(loss) = test.refrigerant_kg_s {
        write!(
            out,
            "    it loses {}, as the leak is a hole or a crack",
            grams_a_year(loss)
        )?;
        match test.empty_s {
            Some((low, high)) => writeln!(
                out,
                "; empty in {} to {} months",
                two_digits(12.0 * low / YEAR_S),
                two_digits(12.0 * high / YEAR_S)
            )?,
            None => writeln!(out)?,
        }
    }
    match (test.least_seen_refrigerant_kg_s, test.least_seen_kg_s) {
        (Some(least), _) => write!(out, "    a loss below {} would not show", grams_a_year(least))?,
        (None, Some(least)) => write!(out, "    a loss below {:.2} g/h would not show", 3.6e6 * least)?,
        (None, None) => return Ok(()),
    }
    for (needed_s, which) in [
        (test.needed_s, "the allowed one"),
        (test.needed_for_a_year_s, "one that empties it within a year"),
    ] {
        if let Some(needed_s) = needed_s {
            write!(out, "; hold {} h to see {which}", two_digits(needed_s / 3_600.0))?;
        }
    }
    writeln!(out)
}

/// A number to two digits.
fn two_digits(x: f64) -> String {
    match x {
        x if x < 1.0 => format!("{x:.2}"),
        x if x < 10.0 => format!("{x:.1}"),
        x if x < 100.0 => format!("{x:.0}"),
        x => {
            let step = libm::pow(10.0, libm::floor(libm::log10(x)) - 1.0);
            format!("{:.0}", step * libm::round(x / step))
        }
    }
}

/// What makes a proof strong. Source: pairs of visits of an independent simulator, of which each of these proves more.
pub(super) const STRONG: [&str; 2] = [
    "Read again with the same instruments, at the same engine speed and air source. Both lines and the",
    "discharge line at both visits, and an earlier sound visit on file, make the proof strong.",
];

fn write_closing(out: &mut String, closing: &Closing) -> fmt::Result {
    write!(out, "  All together: {}", closing.finding.description())?;
    match closing.weakest {
        Some(weakest) => writeln!(out, " The weakest proof: {}", weakest.description()),
        None => writeln!(out),
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
    match proof.finding {
        RepairFinding::Better | RepairFinding::CannotTell => {
            for line in STRONG {
                writeln!(out, "    {line}")?;
            }
        }
        RepairFinding::Proven
        | RepairFinding::StillFaulty
        | RepairFinding::AnotherFault
        | RepairFinding::SoundBefore
        | RepairFinding::Worse => {}
    }
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
