//! The JSON Schemas of `docs/schema`, made from the vocabulary and from what the reader itself says it knows;
//! `COLDLOOP_WRITE=1 cargo test --test schema` writes them. Every answer of the examples is checked against the schema of answers.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used, clippy::panic)] // tests fail by panicking

mod answer;
mod fits;

use answer::answer_schema;
use coldloop::diagnosis::{Settings, judge};
use coldloop::session::Session;
use coldloop::{
    AirSource, Check, Compressor, Expansion, Fault, GaugeClass, HighPort, Language, LowPort, Observation, ReadingKind,
    Refrigerant, TestGas, Thermometer, intake, report,
};
use fits::{assert_fits, unfit};
use serde_json::{Map, Value, json};
use std::fs;

/// The keys that the reader knows in a table, from its own refusal of one that it does not know.
fn keys(path: &str) -> Vec<String> {
    let mut file = json!({
        "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
        "conditions": { "ambient": "24 °C", "altitude": "1600 m" },
    });
    let mut table = &mut file;
    let mut place = String::new();
    for key in path.split('.').filter(|key| !key.is_empty()) {
        let (name, row) = key.strip_suffix("[1]").map_or((key, false), |name| (name, true));
        let inner = table
            .as_object_mut()
            .unwrap()
            .entry(name)
            .or_insert(if row { json!([{}]) } else { json!({}) });
        table = if row { &mut inner[0] } else { inner };
        place = format!("{place}{key}.");
    }
    table["no such key"] = json!(true);
    let refusal = intake::session_from_json(&file.to_string()).unwrap_err();
    let wanted = format!("{place}no such key");
    let told: Vec<&intake::Mistake> = refusal.mistakes().filter(|mistake| mistake.key == wanted).collect();
    let advice = told
        .first()
        .unwrap_or_else(|| panic!("{path}: {refusal}"))
        .advice
        .clone();
    advice
        .strip_prefix("known here: ")
        .unwrap()
        .split(", ")
        .map(String::from)
        .collect()
}

/// A table of these keys, each with its schema.
fn table(path: &str, required: &[&str], of: impl Fn(&str) -> Value) -> Value {
    let properties: Map<String, Value> = keys(path).into_iter().map(|key| (key.clone(), of(&key))).collect();
    assert!(
        required.iter().all(|key| properties.contains_key(*key)),
        "{path}: {required:?}"
    );
    json!({ "type": "object", "properties": properties, "required": required, "additionalProperties": false })
}

fn one_of<T: Copy>(all: &[T], id: fn(T) -> &'static str) -> Value {
    json!({ "enum": all.iter().map(|member| id(*member)).collect::<Vec<_>>() })
}

fn defined(name: &str) -> Value {
    json!({ "$ref": format!("#/$defs/{name}") })
}

fn list(of: Value) -> Value {
    json!({ "type": "array", "items": of })
}

fn yes_or_no() -> Value {
    json!({ "type": "boolean" })
}

/// A reading: its text, or a table with how well it was read.
fn reading(by: &str, names: Value) -> Value {
    let mut properties =
        json!({ "value": defined("quantity"), "within": defined("quantity"), "uncertainty": defined("quantity") });
    if !by.is_empty() {
        properties[by] = names;
    }
    let told =
        json!({ "type": "object", "properties": properties, "required": ["value"], "additionalProperties": false });
    json!({ "anyOf": [defined("quantity"), told] })
}

fn system(key: &str) -> Value {
    match key {
        "refrigerant" => one_of(&Refrigerant::ALL, Refrigerant::id),
        "expansion" => one_of(&Expansion::ALL, Expansion::id),
        "compressor" => one_of(&Compressor::ALL, Compressor::id),
        "low_port" => one_of(&LowPort::ALL, LowPort::id),
        "high_port" => one_of(&HighPort::ALL, HighPort::id),
        "sight_glass" => yes_or_no(),
        "evaporators" => json!({ "enum": [1, 2] }),
        "nominal_charge" | "high_cut_out" => defined("quantity"),
        _ => panic!("system.{key} has no schema"),
    }
}

fn conditions(key: &str) -> Value {
    match key {
        "air_source" => one_of(&AirSource::ALL, AirSource::id),
        "compressor_running" => yes_or_no(),
        "barometer" => defined("air"),
        "ambient"
        | "humidity"
        | "altitude"
        | "engine_speed"
        | "blower"
        | "vehicle_speed"
        | "running"
        | "compressor_speed"
        | "commanded_displacement"
        | "fan_command" => defined("quantity"),
        _ => panic!("conditions.{key} has no schema"),
    }
}

fn readings(key: &str) -> Value {
    match ReadingKind::from_id(key) {
        Some(ReadingKind::LowSide | ReadingKind::HighSide | ReadingKind::HighSideTransducer) => defined("pressure"),
        Some(ReadingKind::ClutchCycles) => defined("air"),
        Some(_) => defined("temperature"),
        None if key == "gauge_zero_altitude" => defined("quantity"),
        None if key == "gauge_zero_barometer" => defined("air"),
        None => panic!("readings.{key} has no schema"),
    }
}

fn settings(key: &str) -> Value {
    match key {
        "recovered" | "next_checks" | "details" => yes_or_no(),
        "language" => one_of(&Language::ALL, Language::id),
        "priors" | "looks" | "prices" | "stakes" => json!({ "type": "object" }),
        "counts" => json!({ "type": ["object", "string"] }),
        "held" => defined("held"),
        "none_of_these" | "two_faults" | "healthy" | "named" | "nothing_fits" | "short_list" | "least_information" => {
            json!({ "type": "number" })
        }
        _ => panic!("settings.{key} has no schema"),
    }
}

fn held(key: &str) -> Value {
    match key {
        "check" => one_of(&Check::ALL, Check::id),
        "repair" => one_of(&Fault::ALL, Fault::id),
        "hand_over" => yes_or_no(),
        _ => panic!("settings.held.{key} has no schema"),
    }
}

/// What was done: quantities, readings and lists of them.
fn work(key: &str) -> Value {
    match key {
        "gas" => one_of(&TestGas::ALL, TestGas::id),
        "oil_weighed_in" | "evacuated" => yes_or_no(),
        "samples" => list(json!({ "type": "object" })),
        "hose" | "left" => json!({ "type": "object" }),
        _ => json!({ "type": ["string", "object"] }),
    }
}

fn undo(key: &str) -> Value {
    match key {
        "step" => json!({ "type": ["string", "object"] }),
        "after" | "recovered" => yes_or_no(),
        "held" => defined("held"),
        _ => defined(key),
    }
}

fn file(key: &str) -> Value {
    match key {
        "format" => json!({ "type": "integer", "minimum": 1, "maximum": intake::FORMAT }),
        "meta" => json!({ "type": "object" }),
        "system" | "conditions" | "readings" | "observations" | "repairs" => defined(key),
        "settings" => table(key, &[], settings),
        "pressure_table" => table(key, &["altitude", "rows"], |key| match key {
            "rows" => list(json!({ "type": "object" })),
            _ => defined("quantity"),
        }),
        "baseline" => list(table("baseline[1]", &["conditions", "readings"], defined)),
        "after" => table(key, &["conditions"], defined),
        "undo" => {
            let rows = list(table("undo[1]", &["step", "conditions"], undo));
            let mut rows = rows.as_object().unwrap().clone();
            rows.insert("maxItems".into(), json!(Session::UNDOABLE));
            rows.into()
        }
        "forgot" => yes_or_no(),
        "pressure_test" | "evacuation" | "hold" | "charge" | "pull_down" => table(key, &[], work),
        _ => panic!("{key} has no schema"),
    }
}

fn file_schema(title: &str, required: &[&str]) -> Value {
    let mut schema = table("", required, file);
    schema["$schema"] = json!("https://json-schema.org/draft/2020-12/schema");
    schema["title"] = json!(title);
    schema["$defs"] = json!({
        "quantity": { "type": "string", "description": "A number with its unit, a pressure with its datum, too: 37 psig, 74 °F" },
        "pressure": reading("gauge", one_of(&GaugeClass::ALL, GaugeClass::id)),
        "temperature": reading("thermometer", one_of(&Thermometer::ALL, Thermometer::id)),
        "air": reading("", Value::Null),
        "system": table("system", &["refrigerant", "expansion", "compressor"], system),
        "conditions": table("conditions", &["ambient"], conditions),
        "readings": table("readings", &[], readings),
        "observations": table("observations", &[], |_| yes_or_no()),
        "repairs": table("repairs", &[], |_| list(one_of(&Fault::ALL, Fault::id))),
        "held": table("settings.held", &[], held),
    });
    schema
}

fn fresh(name: &str, schema: &Value) {
    let path = format!("{}/docs/schema/{name}.json", env!("CARGO_MANIFEST_DIR"));
    let wanted = serde_json::to_string_pretty(schema).unwrap() + "\n";
    if fs::read_to_string(&path).ok().as_ref() == Some(&wanted) {
        return;
    }
    let write = std::env::var_os("COLDLOOP_WRITE").is_some();
    assert!(
        write,
        "docs/schema/{name}.json is stale: COLDLOOP_WRITE=1 cargo test --test schema writes it"
    );
    fs::write(path, wanted).unwrap();
}

#[test]
fn the_schemas_are_those_of_this_library() {
    fresh(
        "readings",
        &file_schema("A readings file of coldloop", &["system", "conditions"]),
    );
    fresh(
        "session",
        &file_schema("A stored session of coldloop", &["system", "conditions", "format"]),
    );
    fresh("answer", &answer_schema());
}

#[test]
fn answers_and_stored_sessions_of_all_examples_fit_their_schemas() {
    let (answers, sessions) = (answer_schema(), file_schema("", &["system", "conditions", "format"]));
    let mut cases = 0;
    for entry in fs::read_dir("examples/readings").unwrap() {
        let path = entry.unwrap().path();
        let (name, text) = (path.display().to_string(), fs::read_to_string(&path).unwrap());
        let Ok(mut file) = intake::session_from_toml(&text) else {
            continue;
        };
        assert_fits(&answers, &report::visit_json(&file.visit().unwrap()).unwrap(), &name);
        file.session.add_observation(Observation::OilTraces, true).unwrap();
        file.session.next_step().unwrap();
        file.session.add_vain_repair(Fault::Undercharge).unwrap();
        file.session.add_repair(Fault::Overcharge).unwrap();
        assert_fits(&sessions, &intake::session_to_json(&file).unwrap(), &name);
        cases += 1;
    }
    assert!(cases > 20, "{cases}");
    // The schema of answers refuses what is no answer.
    let mut wrong = Vec::new();
    unfit(
        &answers,
        &answers,
        &json!({ "verdict": "fine", "extra": 1 }),
        "",
        &mut wrong,
    );
    assert!(wrong.len() > 10, "{wrong:?}");
}

/// An answer with nothing read, and one at rest.
#[test]
fn answers_with_little_in_them_fit_too() {
    let text = r#"{ "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
        "conditions": { "ambient": "24 °C", "altitude": "1600 m", "engine_speed": "0 rpm" },
        "readings": { "low_side": "60 psig", "high_side": "60 psig" } }"#;
    for text in [
        text.to_string(),
        text.replace("\"0 rpm\"", "\"900 rpm\""),
        text.replace("60 psig", "0 psig"),
    ] {
        let case = intake::case_from_json(&text).unwrap();
        let settings = Settings::default();
        let judgement = judge(&case, &settings).unwrap();
        let answer = report::json(
            &case,
            &judgement.diagnosis(&settings).unwrap(),
            &judgement.reasons(&settings),
            settings.language,
        );
        assert_fits(&answer_schema(), &answer, "little");
    }
}
