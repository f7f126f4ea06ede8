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
enum Level {
    VentAndGauges,
    LinesToo,
    EarlierVisitToo,
}

/// What was found, by what had been done.
struct Found(Vec<(String, bool, RepairFinding)>);

impl Found {
    fn of(level: Level) -> Self {
        let mut lines = String::new();
        let packed: &[u8] = include_bytes!("data/independent_pairs.jsonl.gz");
        GzDecoder::new(packed).read_to_string(&mut lines).unwrap();
        let pairs: Vec<Value> = lines.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
        let halves = pairs.iter().filter(|pair| pair["outcome"] == "half").map(turned);
        Self(
            pairs
                .iter()
                .cloned()
                .chain(halves)
                .map(|pair| judged(&pair, level))
                .collect(),
        )
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

/// Half a repair from its end: the fault has doubled.
fn turned(pair: &Value) -> Value {
    let mut turned = pair.clone();
    turned["outcome"] = json!("grown");
    for part in ["conditions", "readings"] {
        turned["visit"][part] = pair["visit"]["after"][part].clone();
        turned["visit"]["after"][part] = pair["visit"][part].clone();
    }
    turned
}

fn judged(pair: &Value, level: Level) -> (String, bool, RepairFinding) {
    let mut visit = pair["visit"].clone();
    if level == Level::VentAndGauges {
        for place in ["suction_line", "liquid_line"] {
            visit["readings"].as_object_mut().unwrap().remove(place);
            visit["after"]["readings"].as_object_mut().unwrap().remove(place);
        }
    }
    if level == Level::EarlierVisitToo {
        visit["baseline"] = json!([pair["earlier"]]);
    }
    let repair = intake::visit_from_json(&visit.to_string()).unwrap().prove().unwrap();
    let outcome = pair["outcome"].as_str().unwrap().to_owned();
    let significant = pair["after"]["significant"].as_bool().unwrap();
    (outcome, significant, repair.repair.unwrap().finding)
}

/// What no level may do more often: at most 3 % of the unrepaired and the half repaired together proven, 10 % of the halves alone. At
/// most 3 % of the unrepaired should be told as better too; 5, 6 and 1 of 156 are.
fn holds(found: &Found) {
    assert!(found.share("not repaired", &[Proven]) <= 0.03);
    assert!(found.share("half", &[Proven]) <= 0.10);
    assert!(found.share("same", &[Better]) < 0.039);
    assert!(found.share("repaired", &[StillFaulty, Worse, AnotherFault]) < 0.065);
    for group in ["half", "another", "sound", "grown"] {
        for finding in RepairFinding::ALL {
            found.share(group, &[finding]);
        }
    }
}

/// Found on 2026-11-30, with the limits a little beside: proven 28 %, proven or better 50 % of the repaired; of the unrepaired and half
/// repaired 2.0 % are proven; 58 % of the unrepaired are told as unchanged or worse.
#[test]
fn repairs_are_told_from_none_by_the_vent_and_both_gauges() {
    let found = Found::of(Level::VentAndGauges);
    assert!(found.share("repaired", &[Proven]) > 0.26);
    assert!(found.share("repaired", &[Proven, Better]) > 0.49);
    assert!(found.share("same", &[StillFaulty, Worse]) > 0.56);
    assert!(found.share("another", &[AnotherFault]) > 0.22);
    assert!(found.share("another", &[Proven]) < 0.10);
    holds(&found);
}

/// Proven 33 %, proven or better 56 %; 2.4 % of the unrepaired and half repaired.
#[test]
fn with_both_lines_at_both_visits_more_are() {
    let found = Found::of(Level::LinesToo);
    assert!(found.share("repaired", &[Proven]) > 0.31);
    assert!(found.share("repaired", &[Proven, Better]) > 0.55);
    assert!(found.share("same", &[StillFaulty, Worse]) > 0.62);
    assert!(found.share("another", &[AnotherFault]) > 0.32);
    assert!(found.share("another", &[Proven]) < 0.13);
    holds(&found);
}

/// Proven 45 %, proven or better 62 %; 2.8 % of the unrepaired and half repaired.
#[test]
fn with_an_earlier_sound_visit_on_file_most_are() {
    let found = Found::of(Level::EarlierVisitToo);
    assert!(found.share("repaired", &[Proven]) > 0.43);
    assert!(found.share("repaired", &[Proven, Better]) > 0.61);
    assert!(found.share("same", &[StillFaulty, Worse]) > 0.64);
    assert!(found.share("another", &[AnotherFault]) > 0.41);
    assert!(found.share("another", &[Proven]) < 0.07);
    holds(&found);
}

#[test]
#[ignore = "not met: 0.56"]
fn both_lines_tell_six_of_ten_repairs() {
    assert!(Found::of(Level::LinesToo).share("repaired", &[Proven, Better]) >= 0.6);
}

#[test]
#[ignore = "not met: 0.45 and 0.62"]
fn an_earlier_visit_proves_half_of_the_repairs_and_tells_seven_of_ten() {
    let found = Found::of(Level::EarlierVisitToo);
    assert!(found.share("repaired", &[Proven]) >= 0.5);
    assert!(found.share("repaired", &[Proven, Better]) >= 0.7);
}
