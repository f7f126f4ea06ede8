//! The reports, as text and as JSON, contain what the fields of the answer contain.

use crate::figures::{counts, has_glide};
use crate::{Answered, no_answer};
use coldloop::diagnosis::{Action, Evidence};
use coldloop::report::{self, Units};
use coldloop::units::{GaugePressure, in_celsius, kelvins};
use coldloop::{Fault, Feature, VerdictKind};
use serde_json::Value;

fn json(one: &Answered) -> Value {
    serde_json::from_str(&report::json(
        &one.asked.case,
        &one.answer,
        &one.judgement.reasons(&one.asked.settings),
        one.asked.settings.language,
    ))
    .unwrap()
}

/// Whether the JSON value is this number, up to the rounding of the JSON reader.
fn is(told: &Value, number: f64) -> bool {
    told.as_f64()
        .is_some_and(|told| (told - number).abs() <= 4.0 * f64::EPSILON * number.abs())
}

#[test]
fn json_tells_the_fields() {
    no_answer(|one| {
        let (told, answer) = (json(one), &one.answer);
        let id = |value: &Value| value.as_str().map(str::to_string);
        let ids = |value: &Value| -> Vec<String> { value.as_array().unwrap().iter().filter_map(id).collect() };
        let named: Vec<String> = answer
            .verdict
            .faults
            .iter()
            .map(|fault| fault.id().to_string())
            .collect();
        let rival = answer.verdict.rival.map(|fault| fault.id().to_string());
        if id(&told["verdict"]).as_deref() != Some(answer.verdict.kind.id())
            || ids(&told["named"]) != named
            || id(&told["rival"]) != rival
        {
            return Some("verdict".into());
        }
        let faults = told["faults"].as_array().unwrap();
        for (told, ranked) in faults.iter().zip(&answer.faults) {
            let severity = match ranked.severity {
                Some((low, high)) => is(&told["severity"]["low"], low) && is(&told["severity"]["high"], high),
                None => told["severity"].is_null(),
            };
            let fault = id(&told["fault"]).as_deref() == Some(ranked.fault.id())
                && is(&told["probability"], ranked.probability);
            if !severity || !fault || id(&told["against"]).as_deref() != Some(ranked.rival.id()) {
                return Some(format!("fault {}", ranked.fault));
            }
        }
        let two = answer
            .two_faults
            .is_none_or(|two| is(&told["two_faults"]["probability"], two.probability));
        let entry_error = answer
            .entry_error
            .is_none_or(|(_, probability)| is(&told["entry_error"]["probability"], probability));
        let step = match answer.next_step {
            Some(Action::Check(check)) => id(&told["next_step"]["check"]).as_deref() == Some(check.id()),
            Some(Action::Repair(fault)) => id(&told["next_step"]["repair"]).as_deref() == Some(fault.id()),
            Some(Action::HandOver) => told["next_step"]["check"].is_null() && told["next_step"]["repair"].is_null(),
            None => told["next_step"].is_null(),
            Some(_) => unreachable!("a new member of the vocabulary"),
        };
        let checks: Vec<String> = told["next_checks"]
            .as_array()
            .unwrap()
            .iter()
            .filter_map(|check| id(&check["check"]))
            .collect();
        let ranked: Vec<String> = answer
            .next_checks
            .iter()
            .map(|ranked| ranked.check.id().to_string())
            .collect();
        let holds = faults.len() == answer.faults.len()
            && is(&told["none_of_these"], answer.none_of_these)
            && (two && entry_error && step && checks == ranked);
        (!holds).then(|| "faults, pair, entry error or next step".into())
    });
}

/// The measured figures of the JSON beside those that are judged, and the deviations beside both.
#[test]
fn json_measures_what_is_judged() {
    no_answer(|one| {
        let told = json(one);
        let refrigerant = one.asked.case.system.refrigerant;
        let air = one.asked.case.conditions.surroundings;
        one.answer.deviations.iter().find_map(|d| {
            let (id, unit) = match d.feature {
                Feature::LowSide => ("low_side", "pa_gauge"),
                Feature::HighSide => ("high_side", "pa_gauge"),
                Feature::ClutchCycles => ("clutch_cycles", "hz"),
                Feature::RestPressure => return None,
                Feature::Vent | Feature::Superheat | Feature::Subcooling | Feature::DischargeSuperheat => {
                    (d.feature.id(), "k")
                }
                _ => unreachable!("a new member of the vocabulary"),
            };
            let row = &told["expected"][id];
            let measured = row[format!("measured_{unit}")].as_f64();
            let Some(measured) = measured else {
                return Some(format!("{id}: judged, and not told"));
            };
            if !is(&row["deviation"], d.deviation) {
                return Some(format!("{id}: deviation {} and {}", row["deviation"], d.deviation));
            }
            let as_judged = match d.feature {
                Feature::LowSide => refrigerant.dew_temperature(GaugePressure::from_pa(measured).absolute(air)),
                Feature::HighSide => refrigerant.bubble_temperature(GaugePressure::from_pa(measured).absolute(air)),
                Feature::ClutchCycles => Ok(kelvins((60.0 * measured).ln_1p())),
                Feature::Vent
                | Feature::Superheat
                | Feature::Subcooling
                | Feature::DischargeSuperheat
                | Feature::RestPressure => Ok(kelvins(measured)),
                _ => unreachable!("a new member of the vocabulary"),
            };
            // Off the saturation line, and below -45 °C, the judgement counts otherwise.
            let as_judged = as_judged
                .map(coldloop::units::in_kelvins)
                .ok()
                .filter(|k| d.feature != Feature::LowSide || *k > 228.16)?;
            // The glide of a blend has a test of its own.
            let by_glide = d.feature == Feature::DischargeSuperheat && has_glide(one);
            let counts = counts(&one.answer) && !by_glide;
            (counts && (as_judged - d.measured).abs() > 1e-5)
                .then(|| format!("{id}: told {as_judged:.4}, judged {:.4}", d.measured))
        })
    });
}

/// The page of an answer as text, with the details.
fn in_full(one: &Answered) -> String {
    let reasons = one.judgement.reasons(&one.asked.settings);
    let page = report::Page::of_diagnosis(&one.asked.case, &one.answer, &reasons);
    page.text(report::Wording {
        details: true,
        ..report::Wording::new(Units::Metric)
    })
}

/// A text on one line.
fn flat(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Every line of odds and the verdict of the text has the probability of its field.
#[test]
fn the_text_tells_the_probabilities() {
    no_answer(|one| {
        let text = in_full(one);
        let answer = &one.answer;
        let per_cent = |p: f64| match p {
            p if p > 0.99 => "over 99 %".to_string(),
            p if p < 0.01 => "under 1 %".to_string(),
            p => format!("{:.0} %", 100.0 * p),
        };
        let odds = match answer.verdict.kind {
            VerdictKind::Healthy => Some(answer.probability_of(&[Fault::NoFault])),
            VerdictKind::NamedFault => Some(answer.probability_of(&answer.verdict.faults)),
            VerdictKind::CannotTell => match answer.two_faults.filter(|two| two.probability > 0.5) {
                Some(two) => Some(two.probability),
                None => Some(answer.probability_of(&answer.verdict.faults)),
            },
            VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence => None,
            _ => unreachable!("a new member of the vocabulary"),
        };
        let headline = odds.map(|odds| format!("({})", per_cent(odds).to_uppercase()));
        if headline.as_ref().is_some_and(|odds| !text.contains(odds)) {
            return Some(format!("{headline:?} is not in {text}"));
        }
        // Priors alone are no result.
        let reasons = one.judgement.reasons(&one.asked.settings);
        let spoken = answer.faults.first().is_some_and(|first| {
            let because = reasons.because(first.fault, first.rival);
            because.iter().any(|told| told.evidence != Evidence::Prior)
        });
        let told = if spoken || answer.rest.is_some() { 5 } else { 0 };
        let listed = answer
            .faults
            .iter()
            .filter(|ranked| ranked.probability >= 0.02)
            .take(told);
        for ranked in listed {
            let alone = answer.verdict.faults[..] == [ranked.fault] || ranked.fault == Fault::NoFault;
            let found = alone || text.contains(&format!(" {}", per_cent(ranked.probability)));
            if !found {
                return Some(format!(
                    "no line of {} with {}",
                    ranked.fault,
                    per_cent(ranked.probability)
                ));
            }
        }
        None
    });
}

/// Where the verdict is two faults at once, the text names both and not only one of them.
#[test]
fn the_text_says_both_where_two_faults_are_there() {
    no_answer(|one| {
        let two = one.answer.two_faults.filter(|two| two.probability > 0.5)?;
        if one.answer.verdict.kind != VerdictKind::CannotTell {
            return None;
        }
        let text = in_full(one);
        let both = text.contains("TWO FAULTS AT ONCE");
        (!both).then(|| format!("{text}, and {:?} ({:.2})", two.faults, two.probability))
    });
}

/// The figures of the text are those of the answer, rounded.
#[test]
fn the_text_tells_the_figures() {
    no_answer(|one| {
        let text = in_full(one);
        let told = json(one);
        let rows = [
            ("low side, kPa gauge", "low_side", "pa_gauge"),
            ("high side, kPa gauge", "high_side", "pa_gauge"),
            ("vent, °C", "vent", "k"),
            ("superheat, K", "superheat", "k"),
            ("subcooling, K", "subcooling", "k"),
            ("discharge superheat, K", "discharge_superheat", "k"),
            ("clutch cycles, /min", "clutch_cycles", "hz"),
        ];
        rows.into_iter().find_map(|(name, id, unit)| {
            let line = text
                .lines()
                .find_map(|line| line.strip_prefix("  ")?.strip_prefix(name))?;
            let numbers: Vec<f64> = line
                .split(|c: char| c.is_whitespace() || "(),".contains(c))
                .filter_map(|word| word.parse().ok())
                .collect();
            let row = &told["expected"][id];
            let shown = |si: f64| match unit {
                "pa_gauge" => (si / 1e3).round(),
                "hz" => (60.0 * si).round(),
                _ if id == "vent" => (10.0 * in_celsius(kelvins(si))).round() / 10.0,
                _ => (10.0 * si).round() / 10.0,
            };
            let fields = ["measured", "low", "high", "median"].map(|field| row[format!("{field}_{unit}")].as_f64());
            let fields: Vec<f64> = fields.into_iter().flatten().map(shown).collect();
            let same =
                fields.len() == numbers.len() && fields.iter().zip(&numbers).all(|(a, b)| (a - b).abs() < 0.1001);
            (!same).then(|| format!("{line}: {fields:?}"))
        })
    });
}

/// The text tells the step that the answer tells.
#[test]
fn the_text_tells_the_next_step() {
    no_answer(|one| {
        let text = in_full(one);
        let told = json(one);
        let says = told["next_step"]["says"].as_str()?.trim_end_matches('.').to_string();
        (!flat(&text).contains(&flat(&says)))
            .then(|| format!("next step {:?} is not in the text", one.answer.next_step))
    });
}

/// The report of a visit has the same next step as its JSON, with a plan in place of the checks and without one.
#[test]
fn a_visit_is_told_the_same_in_text_and_json() {
    let mut told = 0;
    for entry in std::fs::read_dir("examples/readings").unwrap() {
        let path = entry.unwrap().path();
        let Ok(visit) = coldloop::intake::visit_from_toml(&std::fs::read_to_string(&path).unwrap()) else {
            continue;
        };
        let json: Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
        let text = report::visit_text(&visit, Units::Metric).unwrap();
        if let Some(says) = json["next_step"]["says"].as_str() {
            assert!(
                flat(&text).contains(says.trim_end_matches('.')),
                "{}: {says}",
                path.display()
            );
            told += 1;
        }
    }
    assert!(told > 10, "{told}");
}
