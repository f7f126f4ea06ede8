//! A readings file that tells a whole visit: how to judge, what was done, what was read afterwards.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::diagnosis::{Action, Cost, Settings, judge};
use coldloop::{ChargeFinding, ErrorKind, EvacuationFinding, Fault, HoldFinding, LeakFinding, Observation};
use coldloop::{Check, ClosingFinding, ProofKind, PullDownFinding, RepairFinding, intake, report};
use std::fs;

fn van() -> String {
    fs::read_to_string(format!(
        "{}/examples/readings/repaired-van.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap()
}

fn low_charge() -> String {
    fs::read_to_string(format!(
        "{}/examples/readings/low-charge.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap()
}

#[test]
fn everything_done_to_the_van_is_judged() {
    let all = intake::visit_from_toml(&van()).unwrap().prove().unwrap();
    assert_eq!(all.pressure_test.unwrap().finding, LeakFinding::NoLossSeen);
    assert_eq!(all.evacuation.unwrap().finding, EvacuationFinding::Deep);
    assert_eq!(all.hold.unwrap().finding, HoldFinding::Tight);
    let charge = all.charge.unwrap();
    assert_eq!(
        (charge.found, charge.now),
        (Some(ChargeFinding::Under), Some(ChargeFinding::Within))
    );
    assert_eq!(all.pull_down.unwrap().finding, PullDownFinding::Reached);
    let repair = all.repair.unwrap();
    assert_eq!(
        (repair.finding, repair.fault),
        (RepairFinding::Proven, Fault::Undercharge)
    );
}

/// A leak of 2 bar in an hour, water in the circuit, a vacuum that rises, a charge that is short, a vent that stays warm.
#[test]
fn what_went_wrong_is_called_so() {
    let text = van()
        .replace("9.85 bar gauge", "8 bar gauge")
        .replace("reached = \"420 micron\"", "reached = \"40000 micron\"")
        .replace("pressure = \"424 micron\"", "pressure = \"1300 micron\"")
        .replace("pressure = \"427 micron\"", "pressure = \"2200 micron\"")
        .replace("pressure = \"429 micron\"", "pressure = \"4000 micron\"")
        .replace("charged = \"900 g\"", "charged = \"700 g\"")
        .replace("vent = \"8 °C\"", "vent = \"19 °C\"")
        .replace("vent = \"13 °C\"", "vent = \"20 °C\"")
        .replace("vent = \"6 °C\"", "vent = \"19 °C\"");
    let all = intake::visit_from_toml(&text).unwrap().prove().unwrap();
    assert_eq!(all.pressure_test.unwrap().finding, LeakFinding::Leaks);
    assert_eq!(all.evacuation.unwrap().finding, EvacuationFinding::WaterStays);
    assert_eq!(all.hold.unwrap().finding, HoldFinding::Leak);
    assert_eq!(all.charge.unwrap().now, Some(ChargeFinding::Under));
    assert_eq!(all.pull_down.unwrap().finding, PullDownFinding::Stalled);
}

#[test]
fn the_report_tells_the_proof_and_json_the_same_findings() {
    let visit = intake::visit_from_toml(&van()).unwrap();
    let text = report::visit_text(&visit, report::Units::Metric).unwrap();
    for says in [
        "WHAT WAS DONE SINCE",
        "852 ± 18 g",
        "THE REPAIR IS PROVEN",
        "Test pressure: No loss was seen",
    ] {
        assert!(text.contains(says), "{says}:\n{text}");
    }
    // Nothing is left to do.
    assert!(!text.contains("DO FIRST"), "{text}");
    let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
    assert_eq!(answer["proof"]["repair"]["finding"], "proven");
    let finding = answer["proof"]["charge"]["found"]["finding"].as_str();
    assert_eq!(finding, Some("under"));
    let judgement = judge(&visit.case, &visit.settings).unwrap();
    let diagnosis: serde_json::Value = serde_json::from_str(&report::json(
        &visit.case,
        &judgement.diagnosis(&visit.settings).unwrap(),
        &judgement.reasons(&visit.settings),
        visit.settings.language,
    ))
    .unwrap();
    let (mut told, mut alone) = (answer.clone(), diagnosis);
    told.as_object_mut().unwrap().remove("proof");
    for next in ["next_step", "next_checks"] {
        alone.as_object_mut().unwrap().remove(next);
        let left = told.as_object_mut().unwrap().remove(next).unwrap();
        assert!(left.is_null() || left == serde_json::json!([]), "{next}");
    }
    assert_eq!(told, alone);
    assert!(
        !report::visit_json(&intake::visit_from_toml(&low_charge()).unwrap())
            .unwrap()
            .contains("\"proof\"")
    );
}

#[test]
fn json_and_toml_tell_the_same_visit() {
    let value: serde_json::Value = toml::from_str(&(van() + SETTINGS)).unwrap();
    let (json, toml) = (value.to_string(), van() + SETTINGS);
    assert_eq!(intake::visit_from_text(&json), intake::visit_from_text(&toml));
    assert_eq!(intake::visit_from_json(&json), intake::visit_from_toml(&toml));
}

const SETTINGS: &str = "
[settings]
named = 0.8
recovered = true
priors = { undercharge = 0.12345678901234 }
looks.undercharge = { oil_traces = 0.61 }
stakes = { sound_part = 450, wrong_list = 100 }
prices = { per_minute = 1.5, repairs.worn-compressor = { minutes = 150, money = 420 }, checks.watch-clutch.minutes = 7 }
";

#[test]
fn the_settings_of_a_file_are_those_of_the_library() {
    let settings = intake::visit_from_toml(&(low_charge() + SETTINGS)).unwrap().settings;
    let mut wanted = Settings::default().with_prior(Fault::Undercharge, 0.123_456_789_012_34);
    // The list follows from the stakes, 1 - 45 / 100; the share that is given by itself is kept.
    (wanted.named, wanted.short_list, wanted.recovered) = (0.8, 0.55, true);
    wanted.looks = wanted.looks.with(Observation::OilTraces, Fault::Undercharge, 0.61);
    let by_hand = Check::WatchClutch;
    let compressor = Cost {
        minutes: 150.0,
        money: 420.0,
    };
    let watch = Cost {
        minutes: 7.0,
        ..wanted.prices.check(by_hand)
    };
    wanted.prices = wanted
        .prices
        .with_per_minute(1.5)
        .and_then(|prices| prices.with_repair(Fault::WornCompressor, compressor))
        .and_then(|prices| prices.with_check(by_hand, watch))
        .unwrap();
    assert_eq!(settings, wanted);
}

#[test]
fn confirmed_cases_move_the_settings_as_a_table_and_as_the_text_of_their_file() {
    let counts = intake::counts_from_toml("[cases]\nundercharge = 40\n").unwrap();
    let wanted = counts.applied(&Settings::default()).unwrap();
    assert_ne!(wanted, Settings::default());
    for text in [
        r#"{"counts": {"cases": {"undercharge": 40}}}"#,
        r#"{"counts": "[cases]\nundercharge = 40\n"}"#,
    ] {
        assert_eq!(intake::settings_from_json(text).unwrap(), wanted);
    }
}

#[test]
fn prices_change_the_plan() {
    let dear = |minutes: f64| format!("\n[settings]\nprices.checks = {{ {} }}\n", all_checks(minutes));
    let first = |text: &str| {
        let visit = intake::visit_from_toml(&(worn() + text)).unwrap();
        let plan = judge(&visit.case, &visit.settings).unwrap().plan(&visit.settings);
        plan.steps.first().unwrap().action
    };
    assert!(matches!(first(""), Action::Check(_)));
    assert!(!matches!(first(&dear(5_000.0)), Action::Check(_)));
}

fn worn() -> String {
    fs::read_to_string(format!(
        "{}/examples/readings/worn-compressor.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap()
}

fn all_checks(minutes: f64) -> String {
    let checks = Check::ALL.map(|check| format!("{}.minutes = {minutes:?}", check.id()));
    checks.join(", ")
}

/// What is added to the file of the van or changed in it, the key that the refusal names, and its kind.
const REFUSED: [(&str, &str, &str, ErrorKind); 16] = [
    (
        "\"10 bar gauge\"",
        "\"10 bar\"",
        "pressure_test.start",
        ErrorKind::MissingDatum,
    ),
    (
        "repeatability = \"1 kPa\"",
        "repeatability = \"1 kPa gauge\"",
        "pressure_test.repeatability",
        ErrorKind::UnknownUnit,
    ),
    ("held = \"60 min\"\n", "", "pressure_test.held", ErrorKind::Missing),
    (
        "gas = \"nitrogen\"",
        "gas = \"air\"",
        "pressure_test.gas",
        ErrorKind::UnknownName,
    ),
    (
        "gas = \"nitrogen\"",
        "gas = \"nitrogen\"\nallowed = \"5 g\"",
        "pressure_test.allowed",
        ErrorKind::MissingUnit,
    ),
    (
        "reached = \"420 micron\"",
        "reach = \"420 micron\"",
        "evacuation.reach",
        ErrorKind::UnknownName,
    ),
    (
        "reached = \"420 micron\"",
        "reached = 420",
        "evacuation.reached",
        ErrorKind::MissingUnit,
    ),
    (
        "after = \"5 min\", pressure",
        "after = \"5\", pressure",
        "hold.samples[2].after",
        ErrorKind::MissingUnit,
    ),
    (
        "recovered = \"430 g\"",
        "recovered = 430",
        "charge.recovered",
        ErrorKind::MissingUnit,
    ),
    (
        "recovered = \"430 g\"",
        "recovered = { value = \"430 g\", within = \"x\" }",
        "charge.recovered.within",
        ErrorKind::NotANumber,
    ),
    (
        "[after.conditions]\nambient = \"26 °C\"",
        "[after.conditions]",
        "after.conditions.ambient",
        ErrorKind::Missing,
    ),
    (
        "[after.conditions]",
        "[settings]\nnamed = 70\n[after.conditions]",
        "settings.named",
        ErrorKind::OutOfRange,
    ),
    (
        "[after.conditions]",
        "[settings]\npriors.gremlins = 1\n[after.conditions]",
        "settings.priors.gremlins",
        ErrorKind::UnknownName,
    ),
    (
        "[after.conditions]",
        "[settings]\nstakes.look = -1\n[after.conditions]",
        "settings.stakes.look",
        ErrorKind::OutOfRange,
    ),
    (
        "[after.conditions]",
        "[settings]\nstakes.bet = 1\n[after.conditions]",
        "settings.stakes.bet",
        ErrorKind::UnknownName,
    ),
    (
        "[after.conditions]",
        "[settings]\nprices.recovery.minutes = \"x\"\n[after.conditions]",
        "settings.prices.recovery.minutes",
        ErrorKind::NotFinite,
    ),
];

#[test]
fn a_refusal_names_the_entry() {
    for (from, to, key, kind) in REFUSED {
        let text = van();
        assert!(text.contains(from), "{from}");
        let changed = text.replacen(from, to, 1);
        let refusal = intake::case_from_toml(&changed).unwrap_err();
        assert_eq!(
            (refusal.first.key.as_str(), refusal.error().kind),
            (key, kind),
            "{refusal}"
        );
        // In the case and its settings a mistake refuses the file; in what was done, its table.
        match intake::visit_from_toml(&changed) {
            Err(whole) => assert!(key.starts_with("settings") && whole == refusal, "{whole}"),
            Ok(visit) => assert!(
                !key.starts_with("settings") && visit.refused[0] == *refusal.first,
                "{key}"
            ),
        }
    }
}

#[test]
fn what_cannot_be_judged_names_its_table() {
    let swapped = van().replacen("after = \"20 min\"", "after = \"7 min\"", 1);
    let all = intake::visit_from_toml(&swapped).unwrap().prove().unwrap();
    assert_eq!(
        (all.refused[0].key.as_str(), all.refused[0].error.kind),
        ("hold", ErrorKind::Inconsistent)
    );
    assert!(all.hold.is_none() && all.charge.is_some());
    // Where it is all that was done, nothing is proved.
    let alone = format!(
        "{}[hold]\nsamples = [{{ after = '0 min', pressure = '420 micron' }}]\n",
        low_charge()
    );
    let refusal = intake::visit_from_toml(&alone).unwrap().prove().unwrap_err();
    assert_eq!(
        (refusal.first.key.as_str(), refusal.error().kind),
        ("hold", ErrorKind::Missing)
    );
}

/// A proof that fails or is open is named, whatever the readings are.
#[test]
fn all_proofs_together_are_no_better_than_the_weakest() {
    let closing = |text: &str| intake::visit_from_toml(text).unwrap().prove().unwrap().closing.unwrap();
    let all = closing(&van());
    // A loss of nitrogen that matters would not have shown: that is named, and leaves the repair proven.
    assert_eq!(
        (all.finding, all.weakest),
        (ClosingFinding::Proven, Some(ProofKind::PressureTest))
    );
    for (from, to, weakest) in [
        ("9.85 bar gauge", "8 bar gauge", ProofKind::PressureTest),
        (
            "reached = \"420 micron\"",
            "reached = \"40000 micron\"",
            ProofKind::Evacuation,
        ),
        ("charged = \"900 g\"", "charged = \"700 g\"", ProofKind::Charge),
        ("vent = \"6 °C\"", "vent = \"19 °C\"", ProofKind::PullDown),
    ] {
        let failed = closing(&van().replace(from, to));
        assert_eq!(
            (failed.finding, failed.weakest),
            (ClosingFinding::Fails, Some(weakest)),
            "{to}"
        );
    }
    // A vacuum that rises evenly has a leak; one that leaps at the end fits no known cause, and proves nothing.
    let leaps = van().replace("429 micron", "9000 micron");
    let rises = leaps
        .replace("424 micron", "2600 micron")
        .replace("427 micron", "4750 micron");
    for (text, finding) in [(rises, ClosingFinding::Fails), (leaps, ClosingFinding::Open)] {
        let held = closing(&text);
        assert_eq!((held.finding, held.weakest), (finding, Some(ProofKind::Hold)));
    }
}

/// What was weighed is an answer to whether the charge lay below the label.
#[test]
fn masses_count_in_the_diagnosis_and_in_the_proof() {
    let odds = |text: &str| {
        let visit = intake::visit_from_toml(text).unwrap();
        let before = visit.diagnose().unwrap().probability_of(&[Fault::Undercharge]);
        (before, visit.prove().unwrap().repair.unwrap().set_right)
    };
    let unweighed = van()
        .replace("recovered = \"430 g\"\n", "")
        .replace("charged = \"900 g\"\n", "");
    let (weighed, without) = (odds(&van()), odds(&unweighed));
    assert!(
        weighed.0 > without.0 && weighed.1 > without.1,
        "{weighed:?} {without:?}"
    );
}

#[test]
fn a_cooler_morning_is_no_repair() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/examples/readings/cooler-morning.toml");
    let visit = intake::visit_from_toml(&std::fs::read_to_string(path).unwrap()).unwrap();
    let all = visit.prove().unwrap();
    assert_eq!(all.repair.unwrap().finding, RepairFinding::StillFaulty);
    assert!(
        !visit.plan().unwrap().steps.is_empty(),
        "what is still there is still looked for"
    );
    let text = report::visit_text(&visit, report::Units::Metric).unwrap();
    assert!(
        text.contains("THE EARLIER FAULT IS STILL THERE") && text.contains("DO FIRST"),
        "{text}"
    );
}

/// A mistake in one table is refused only where nothing else can be judged: each kind of work speaks for itself.
#[test]
fn one_judged_table_is_enough_for_a_proof() {
    let start = "[system]\nrefrigerant = \"R-134a\"\nexpansion = \"txv\"\ncompressor = \"fixed-clutch\"\n[conditions]\n\
                 ambient = \"24 °C\"\naltitude = \"1600 m\"\n[charge]\ncharged = \"900\"\n";
    let pressed = "[pressure_test]\ngas = \"nitrogen\"\nstart = \"10 bar gauge\"\nstart_temperature = \"24 °C\"\n\
                   end = \"10 bar gauge\"\nend_temperature = \"24 °C\"\nheld = \"60 min\"\nvolume = \"2.4 L\"\n";
    let evacuated = "[evacuation]\nreached = \"420 micron\"\ncoldest = \"20 °C\"\n";
    let held = "[hold]\nsamples = [{ after = \"0 min\", pressure = \"420 micron\" }, { after = \"10 min\", pressure = \"424 micron\" },\n\
                { after = \"20 min\", pressure = \"427 micron\" }]\nwarmest = \"24 °C\"\n";
    for table in [pressed, evacuated, held] {
        let visit = intake::visit_from_toml(&format!("{start}{table}")).unwrap();
        let all = visit.prove().unwrap();
        assert_eq!(all.refused[0].key, "charge.charged", "{table}");
        let judged = [
            all.pressure_test.is_some(),
            all.evacuation.is_some(),
            all.hold.is_some(),
        ];
        assert_eq!(judged.iter().filter(|judged| **judged).count(), 1, "{table}");
    }
    let nothing = intake::visit_from_toml(start).unwrap().prove().unwrap_err();
    assert_eq!(nothing.first.key, "charge.charged");
}
