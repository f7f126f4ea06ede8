//! The page: short, in its order, in plain words, and whole in every language.

#![cfg(feature = "report")]
#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

mod pages;

use coldloop::diagnosis::Action;
use coldloop::intake;
use coldloop::report::{self, Page, Units, Wording};
use coldloop::{Check, Feature, Language, Observation, Standing, VerdictKind};
use pages::{files, flat, wordings};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

#[test]
fn the_usual_case_fits_thirty_lines_of_eighty_columns() {
    for (name, file, visit) in files() {
        let page = Page::of_visit(&visit).unwrap();
        for wording in wordings(&file) {
            let text = page.text(wording);
            for line in text.lines() {
                assert!(line.chars().count() <= 80, "{name}: {line}");
                assert_eq!(line.trim_end(), line, "{name}");
            }
            let short = !wording.details && wording.language == Language::English;
            // What was done since, a short list or a repair in three branches takes some more.
            let most = if name == "low-charge" { 30 } else { 33 };
            assert!(
                !short || text.lines().count() <= most,
                "{name}: {}",
                text.lines().count()
            );
        }
    }
}

/// What is it, what comes first, what could hurt.
#[test]
fn the_first_twelve_lines_answer_what_matters() {
    for (name, file, visit) in files() {
        let page = Page::of_visit(&visit).unwrap();
        let text = page.text(Wording::new(Units::as_written(&file)));
        let first: Vec<&str> = text.lines().take(12).collect();
        let headline = |line: &&str| line.len() > 12 && line.chars().take(12).all(|c| !c.is_lowercase());
        let what = first.iter().position(headline);
        let hurts = first.iter().position(|line| line.starts_with("  ! "));
        assert!(what.is_some() && what < hurts, "{name}:\n{}", first.join("\n"));
        let Some(step) = page.first() else { continue };
        let does = first.iter().position(|line| line.starts_with("DO FIRST"));
        // The cautions are directly above the step, which begins within the twelve lines.
        let begins = first
            .iter()
            .skip(hurts.unwrap() + 1)
            .position(|line| !line.starts_with("    "));
        assert!(does < hurts && begins.is_some(), "{name}:\n{}", first.join("\n"));
        if let Action::Check(check) = step.action {
            let says = check.description().trim_end_matches('.');
            assert!(flat(&text).contains(says), "{name}");
        }
    }
}

#[test]
fn whatever_must_not_be_run_says_so_first() {
    for (name, file, visit) in files() {
        let page = Page::of_visit(&visit).unwrap();
        let text = page.text(Wording::new(Units::as_written(&file)));
        let warned = page.stop.is_some() || !page.warnings.is_empty();
        let first = text.lines().next().unwrap();
        let says = first.starts_with("! ") || first.starts_with("Stop") || first.starts_with("Do not");
        assert_eq!(warned, says, "{name}: {first}");
    }
}

/// Phrases that are hard to understand and must not be printed.
const OLD: [&str; 36] = [
    "sound system",
    "sound (",
    "cannot tell",
    "how common it is",
    "parts counted as work",
    "without looking first",
    "it helped",
    "it did not",
    "neither",
    "clutch opens",
    "clutch closes",
    "less certain because",
    "fits the leading explanation",
    "mend",
    "renew",
    "set right",
    "sets right",
    "stifles",
    "weather of each time",
    "no published data give",
    "as it should be",
    "the plan",
    "verdict",
    "speaks against it",
    "changed for the better",
    "lets go",
    "lets by",
    "hold on",
    "counts from nothing",
    "by hand and watch",
    "go over the joints",
    "was learnt",
    "were learnt",
    "sharpen",
    "but for r-744",
    "is told to",
];

#[test]
fn no_old_phrase_is_printed() {
    for (name, file, visit) in files() {
        let page = Page::of_visit(&visit).unwrap();
        for wording in wordings(&file) {
            let text = flat(&page.text(wording)).to_lowercase();
            for phrase in OLD {
                assert!(!has_words(&text, phrase), "{name}: {phrase}:\n{text}");
            }
            // A difference of temperature is no point on the scale.
            let superheat = text
                .find("superheat, ")
                .map(|at| text[at + 11..].chars().take(2).collect::<String>());
            assert!(
                superheat.is_none_or(|unit| unit.starts_with('k') || unit == "f°"),
                "{name}"
            );
        }
        // What JSON says in words; ids and keys are no words.
        let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
        for says in sentences(&answer) {
            for phrase in OLD {
                assert!(!has_words(&says.to_lowercase(), phrase), "{name}: {phrase}: {says}");
            }
        }
    }
}

/// Whether a text contains a phrase as whole words.
fn has_words(text: &str, phrase: &str) -> bool {
    text.match_indices(phrase).any(|(at, _)| {
        let before = text[..at].chars().next_back().is_none_or(|c| !c.is_alphanumeric());
        let after = text[at + phrase.len()..]
            .chars()
            .next()
            .is_none_or(|c| !c.is_alphanumeric());
        before && (after || phrase.ends_with('('))
    })
}

/// Every text under a key of words.
fn sentences(value: &serde_json::Value) -> Vec<String> {
    match value {
        serde_json::Value::Object(entries) => {
            let own = entries
                .iter()
                .filter(|(key, _)| ["says", "seen", "message"].contains(&key.as_str()));
            let own = own.filter_map(|(_, says)| says.as_str().map(String::from));
            own.chain(entries.values().flat_map(sentences)).collect()
        }
        serde_json::Value::Array(items) => items.iter().flat_map(sentences).collect(),
        serde_json::Value::Null
        | serde_json::Value::Bool(_)
        | serde_json::Value::Number(_)
        | serde_json::Value::String(_) => Vec::new(),
    }
}

#[derive(Deserialize)]
struct Text {
    en: String,
    es: String,
}

#[derive(Deserialize)]
struct Texts {
    page: BTreeMap<String, Text>,
    names: BTreeMap<String, BTreeMap<String, Text>>,
    short: BTreeMap<String, BTreeMap<String, Text>>,
    seen: BTreeMap<String, BTreeMap<String, Text>>,
    none_of: BTreeMap<String, Text>,
    severity: BTreeMap<String, Text>,
    sentences: BTreeMap<String, BTreeMap<String, String>>,
    repairs: BTreeMap<String, String>,
}

fn texts() -> Texts {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tables/texts.toml");
    toml::from_str(&fs::read_to_string(path).unwrap()).unwrap()
}

impl Texts {
    fn pairs(&self) -> impl Iterator<Item = &Text> {
        let nested = self.names.values().chain(self.short.values()).chain(self.seen.values());
        let flat = [&self.page, &self.none_of, &self.severity];
        flat.into_iter().chain(nested).flat_map(|texts| texts.values())
    }
}

fn placeholders(text: &str) -> BTreeSet<&str> {
    let opened = text.split('{').skip(1);
    opened.map(|rest| rest.split_once('}').unwrap().0).collect()
}

#[test]
fn every_text_is_there_in_both_languages_with_the_same_placeholders() {
    let texts = texts();
    for text in texts.pairs() {
        assert!(!text.en.trim().is_empty() && !text.es.trim().is_empty(), "{}", text.en);
        assert_eq!(placeholders(&text.en), placeholders(&text.es), "{}", text.en);
    }
    let ids = |section: &BTreeMap<String, String>| section.keys().cloned().collect::<BTreeSet<_>>();
    let all = |ids: Vec<&str>| ids.into_iter().map(String::from).collect::<BTreeSet<_>>();
    assert_eq!(ids(&texts.sentences["Check"]), all(Check::ALL.map(Check::id).to_vec()));
    assert_eq!(
        ids(&texts.sentences["Caution"]),
        all(coldloop::Caution::ALL.map(coldloop::Caution::id).to_vec())
    );
    assert_eq!(
        ids(&texts.sentences["QualityNote"]),
        all(coldloop::QualityNote::ALL.map(coldloop::QualityNote::id).to_vec())
    );
    assert_eq!(
        ids(&texts.repairs),
        all(coldloop::Fault::ALL.map(coldloop::Fault::id).to_vec())
    );
    let seen: BTreeSet<String> = texts.seen.keys().cloned().collect();
    assert_eq!(seen, all(Observation::ALL.map(Observation::id).to_vec()));
    for (question, answers) in &texts.seen {
        let both: Vec<&String> = answers.keys().collect();
        assert_eq!(both, ["no", "yes"], "{question}");
        assert_ne!(answers["no"].en, answers["yes"].en, "{question}");
    }
}

/// No English is left on a Spanish page.
#[test]
fn a_spanish_page_is_spanish() {
    let texts = texts();
    let english: Vec<&str> = texts
        .pairs()
        .filter(|text| text.en.len() >= 8 && text.en != text.es && !text.en.contains('{'))
        .map(|text| text.en.as_str())
        .collect();
    assert!(english.len() > 150);
    let sentences = Check::ALL.map(Check::description).into_iter();
    let sentences: Vec<&str> = sentences
        .chain(coldloop::Caution::ALL.map(coldloop::Caution::description))
        .chain(coldloop::QualityNote::ALL.map(coldloop::QualityNote::description))
        .collect();
    for (name, file, visit) in files() {
        for details in [false, true] {
            let wording = Wording {
                units: Units::as_written(&file),
                language: Language::Spanish,
                details,
            };
            let page = flat(&Page::of_visit(&visit).unwrap().text(wording)).to_lowercase();
            for words in english.iter().chain(&sentences) {
                let words = words.to_lowercase();
                assert!(
                    !has_words(&page, words.trim_end_matches('.')),
                    "{name}: {words}:\n{page}"
                );
            }
        }
    }
}

#[test]
fn every_outcome_says_what_was_seen() {
    let mut told = 0;
    for (name, _, visit) in files() {
        let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
        let plan = report::plan_json(&visit.plan().unwrap(), &visit.case.system);
        let plan: serde_json::Value = serde_json::from_str(&plan).unwrap();
        let checks = answer["next_checks"]
            .as_array()
            .unwrap()
            .iter()
            .map(|check| &check["outcomes"]);
        let steps = plan["steps"].as_array().unwrap().iter().map(|step| &step["branches"]);
        for outcomes in checks.chain(steps) {
            let mut ids = BTreeSet::new();
            for outcome in outcomes.as_array().unwrap() {
                let seen = outcome["seen"].as_str().unwrap();
                assert!(seen.len() > 4 && !["yes", "no"].contains(&seen), "{name}: {outcome}");
                assert!(ids.insert(outcome["outcome"].as_str().unwrap()), "{name}: {outcomes}");
                told += 1;
            }
        }
    }
    assert!(told > 100, "{told}");
}

#[test]
fn costs_have_one_shape() {
    let visit = intake::visit_from_toml(include_str!("../examples/readings/worn-compressor.toml")).unwrap();
    let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
    let plan = report::plan_json(&visit.plan().unwrap(), &visit.case.system);
    let plan: serde_json::Value = serde_json::from_str(&plan).unwrap();
    let catalogue: serde_json::Value = serde_json::from_str(&report::catalogue_json(&visit.case.system)).unwrap();
    for cost in [
        &answer["next_checks"][0],
        &answer["faults"][0]["repair"],
        &plan["steps"][0],
        &catalogue["checks"][0],
        &catalogue["faults"][1]["repair"],
    ] {
        assert!(cost["minutes"].is_f64() && cost["parts_in_minutes"].is_f64(), "{cost}");
        assert!(cost.get("money").is_none() && cost.get("cost").is_none(), "{cost}");
    }
    // 120 minutes of labour, 10 of trying it and 40 of recovering the charge; parts worth 500 (tables/checks).
    let repair = plan["steps"]
        .as_array()
        .unwrap()
        .iter()
        .find(|step| step["repair"] == "worn-compressor")
        .unwrap();
    assert_eq!(
        (repair["minutes"].as_f64(), repair["parts_in_minutes"].as_f64()),
        (Some(170.0), Some(500.0))
    );
}

/// The page is data: readings have one standing each, and the same answer as JSON.
#[test]
fn the_page_is_the_answer() {
    let file = include_str!("../examples/readings/low-charge.toml");
    let visit = intake::visit_from_toml(file).unwrap();
    let page = Page::of_visit(&visit).unwrap();
    assert_eq!(page.result.kind, VerdictKind::NamedFault);
    let vent = page.readings.iter().find(|row| row.feature == Feature::Vent).unwrap();
    assert_eq!(vent.standing, Some(Standing::TooHigh));
    assert!((vent.measured.unwrap() - 290.15).abs() < 1e-9);
    let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
    assert_eq!(answer["expected"]["vent"]["standing"], "too-high");
    for row in &page.readings {
        assert!(row.band_95.0 <= row.band_80.0 && row.band_80.1 <= row.band_95.1);
        let told = &answer["expected"][row.feature.id()];
        assert_eq!(told["standing"].as_str(), row.standing.map(Standing::id));
    }
}

/// What an answer says in words, taken out of it. What an outcome was `seen` by is words, what an argument has `seen` is an id.
fn taken_sentences(value: &mut serde_json::Value) -> Vec<String> {
    if let Some(entries) = value.as_object_mut() {
        let is_outcome = entries.contains_key("outcome");
        let keys = ["says", "seen"].into_iter().filter(|key| is_outcome || *key != "seen");
        let own: Vec<_> = keys.filter_map(|key| entries.remove(key)).collect();
        let own = own.iter().filter_map(|says| says.as_str().map(String::from));
        own.chain(entries.values_mut().flat_map(taken_sentences)).collect()
    } else if let Some(items) = value.as_array_mut() {
        items.iter_mut().flat_map(taken_sentences).collect()
    } else {
        Vec::new()
    }
}

/// As JSON, too, what an answer says is in the language of the settings; ids and figures are the same in every language.
#[test]
fn json_speaks_the_language_of_the_settings() {
    for file in [
        include_str!("../examples/readings/low-charge.toml"),
        include_str!("../examples/readings/repaired-van.toml"),
    ] {
        let told = |language: &str| -> serde_json::Value {
            let visit = intake::visit_from_toml(&format!("{file}\n[settings]\nlanguage = \"{language}\"\n")).unwrap();
            serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap()
        };
        let (mut english, mut spanish) = (told("en"), told("es"));
        let (said, dicho) = (taken_sentences(&mut english), taken_sentences(&mut spanish));
        assert!(said.len() > 20 && said.len() == dicho.len());
        let same: Vec<_> = said.iter().zip(&dicho).filter(|(one, other)| one == other).collect();
        assert!(same.is_empty(), "not translated: {same:#?}");
        assert_eq!(english, spanish);
    }
}

/// The settings of a file choose language and details, for every door that reads a file.
#[test]
fn the_settings_choose_the_language() {
    let file = include_str!("../examples/readings/low-charge.toml");
    let with = |settings: &str| {
        let visit = intake::visit_from_toml(&format!("{file}\n[settings]\n{settings}\n")).unwrap();
        report::visit_text(&visit, Units::as_written(file)).unwrap()
    };
    assert!(with("language = \"es\"").contains("CARGA INSUFICIENTE"));
    assert!(with("details = true").lines().count() > with("details = false").lines().count());
    let refused = intake::visit_from_toml(&format!("{file}\n[settings]\nlanguage = \"xx\"\n")).unwrap_err();
    assert_eq!(refused.first.key, "settings.language");
}
