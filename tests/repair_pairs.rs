//! How often a repair is told for what it was outside the vehicle model: pairs of visits from an independent simulator, of six makes
//! that nothing was fitted to or chosen by (tests/data/README.md says what stands in the file).

#![allow(clippy::unwrap_used, clippy::print_stdout)] // a test ends that way; the figures are what it is for

use coldloop::RepairFinding::{self, AnotherFault, Better, Proven, StillFaulty, Worse};
use coldloop::intake;
use flate2::read::GzDecoder;
use serde_json::{Value, json};
use std::io::Read;

/// What a shop reads at both visits, and what it has on file.
#[derive(Clone, Copy, PartialEq)]
enum Read3 {
    VentAndGauges,
    LinesToo,
    EarlierVisitToo,
}

/// What was found, by what had been done.
struct Found(Vec<(String, bool, RepairFinding)>);

impl Found {
    fn of(level: Read3) -> Self {
        let mut lines = String::new();
        let packed: &[u8] = include_bytes!("data/independent_pairs.jsonl.gz");
        GzDecoder::new(packed).read_to_string(&mut lines).unwrap();
        Self(lines.lines().map(|line| judged(line, level)).collect())
    }

    /// The share of a group with one of these findings.
    fn share(&self, group: &str, findings: &[RepairFinding]) -> f64 {
        let of_group = |outcome: &str, significant: bool| match group {
            "not repaired" => outcome == "same" || (outcome == "half" && significant),
            "half" => outcome == "half" && significant,
            outcome_wanted => outcome == outcome_wanted,
        };
        let (mut all, mut some) = (0.0, 0.0);
        for (outcome, significant, finding) in &self.0 {
            if of_group(outcome, *significant) {
                all += 1.0;
                some += f64::from(findings.contains(finding));
            }
        }
        println!("  {group} {findings:?}: {:.3} of {all}", some / all);
        some / all
    }
}

fn judged(line: &str, level: Read3) -> (String, bool, RepairFinding) {
    let pair: Value = serde_json::from_str(line).unwrap();
    let mut visit = pair["visit"].clone();
    if level == Read3::VentAndGauges {
        for place in ["suction_line", "liquid_line"] {
            visit["readings"].as_object_mut().unwrap().remove(place);
            visit["after"]["readings"].as_object_mut().unwrap().remove(place);
        }
    }
    if level == Read3::EarlierVisitToo {
        visit["baseline"] = json!([pair["earlier"]]);
    }
    let repair = intake::visit_from_json(&visit.to_string()).unwrap().prove().unwrap();
    let outcome = pair["outcome"].as_str().unwrap().to_owned();
    let significant = pair["after"]["significant"].as_bool().unwrap();
    (outcome, significant, repair.repair.unwrap().finding)
}

#[test]
fn repairs_are_told_from_none_by_the_vent_and_both_gauges() {
    let found = Found::of(Read3::VentAndGauges);
    assert!(found.share("repaired", &[Proven]) >= 0.15);
    assert!(found.share("repaired", &[Proven, Better]) >= 0.45);
    nothing_is_proven_that_is_not_repaired(&found);
}

#[test]
fn with_both_lines_at_both_visits_more_are() {
    let found = Found::of(Read3::LinesToo);
    assert!(found.share("repaired", &[Proven]) >= 0.30);
    assert!(found.share("repaired", &[Proven, Better]) >= 0.60);
    nothing_is_proven_that_is_not_repaired(&found);
}

#[test]
fn with_an_earlier_sound_visit_on_file_most_are() {
    let found = Found::of(Read3::EarlierVisitToo);
    assert!(found.share("repaired", &[Proven]) >= 0.50);
    assert!(found.share("repaired", &[Proven, Better]) >= 0.70);
    nothing_is_proven_that_is_not_repaired(&found);
}

fn nothing_is_proven_that_is_not_repaired(found: &Found) {
    assert!(found.share("not repaired", &[Proven]) <= 0.03);
    assert!(found.share("half", &[Proven]) <= 0.10);
    assert!(found.share("same", &[Better]) <= 0.03);
    found.share("same", &[StillFaulty]);
    found.share("another", &[AnotherFault]);
    found.share("another", &[Proven]);
    found.share("half", &[Better]);
    found.share("half", &[Worse]);
}
