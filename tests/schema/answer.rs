//! The schema of answers.

use super::{list, one_of, yes_or_no};
use coldloop::{
    Caution, Check, EntryError, ExpectedBasis, Fault, Feature, Observation, QualityNote, RestFinding, ResultKind,
    Standing, StopReason, Strength, VerdictKind, intake,
};
use serde_json::{Map, Value, json};

/// An object that has all of these keys and no others.
fn object(entries: &[(&str, Value)]) -> Value {
    let properties: Map<String, Value> = entries
        .iter()
        .map(|(key, value)| ((*key).to_string(), value.clone()))
        .collect();
    let required: Vec<&str> = entries.iter().map(|(key, _)| *key).collect();
    json!({ "type": "object", "properties": properties, "required": required, "additionalProperties": false })
}

fn or_null(schema: Value) -> Value {
    json!({ "anyOf": [schema, { "type": "null" }] })
}

pub(crate) fn answer_schema() -> Value {
    let (number, text, boolean) = (json!({ "type": "number" }), json!({ "type": "string" }), yes_or_no());
    let maybe = json!({ "type": ["number", "null"] });
    let share = json!({ "type": "number", "minimum": 0, "maximum": 1.000_000_1 });
    let fault = || one_of(&Fault::ALL, Fault::id);
    let question = || or_null(one_of(&Observation::ALL, Observation::id));
    let cautions = || list(one_of(&Caution::ALL, Caution::id));
    let evidence = {
        let features = Feature::ALL.iter().map(|feature| feature.id());
        let all = features.chain(Observation::ALL.iter().map(|observation| observation.id()));
        json!({ "enum": all.chain(["prior"]).collect::<Vec<_>>() })
    };
    let fills = {
        let keys = Check::ALL.iter().flat_map(|check| check.keys().to_vec());
        let mut keys: Vec<String> = keys.map(|key| key.to_string()).collect();
        keys.sort();
        keys.dedup();
        list(json!({ "enum": keys }))
    };
    let figures = json!({ "type": "object", "additionalProperties": maybe });
    let standing = || or_null(one_of(&Standing::ALL, Standing::id));
    let bands = ["low", "median", "high", "measured"];
    let units = ["pa_gauge", "pa", "k", "hz", "1"];
    let mut band = json!({ "type": "object", "additionalProperties": false });
    for (name, unit) in bands.iter().flat_map(|name| units.iter().map(move |unit| (name, unit))) {
        band["properties"][format!("{name}_{unit}")] = maybe.clone();
    }
    band["properties"]["deviation"] = maybe.clone();
    band["properties"]["standing"] = standing();
    let stop = object(&[
        ("reason", one_of(&StopReason::ALL, StopReason::id)),
        ("says", text.clone()),
        ("high_side_pa_gauge", maybe.clone()),
        ("limit_pa_gauge", maybe.clone()),
        ("limit_of_vehicle", json!({ "type": ["boolean", "null"] })),
    ]);
    let severity = object(&[
        ("measure", text.clone()),
        ("low", number.clone()),
        ("high", number.clone()),
    ]);
    let repair = object(&[
        ("says", text.clone()),
        ("minutes", number.clone()),
        ("parts_in_minutes", number.clone()),
        ("recovers_charge", boolean),
        ("cautions", cautions()),
    ]);
    let because = object(&[
        ("evidence", evidence),
        ("log_odds", number.clone()),
        ("strength", one_of(&Strength::ALL, Strength::id)),
        ("standing", standing()),
        ("seen", json!({ "type": ["string", "null"] })),
        ("says", text.clone()),
    ]);
    let ranked = object(&[
        ("fault", fault()),
        ("probability", share.clone()),
        ("severity", or_null(severity)),
        ("repair", repair),
        ("against", fault()),
        ("because", list(because)),
    ]);
    let entry_error = object(&[
        ("kind", one_of(&EntryError::ALL, EntryError::id)),
        ("probability", share.clone()),
        ("says", text.clone()),
    ]);
    let two = object(&[
        ("faults", list(fault())),
        ("probability", share.clone()),
        ("any_pair_probability", share.clone()),
    ]);
    let resting = json!({ "type": "object" });
    let step = object(&[
        ("check", or_null(one_of(&Check::ALL, Check::id))),
        ("repair", or_null(fault())),
        ("says", text.clone()),
        ("fills", fills.clone()),
    ]);
    let outcome = object(&[
        ("outcome", text.clone()),
        ("seen", text.clone()),
        ("result", one_of(&ResultKind::ALL, ResultKind::id)),
        ("of", question()),
        ("probability", share.clone()),
        ("then", fault()),
        ("then_probability", share.clone()),
    ]);
    let check = object(&[
        ("check", one_of(&Check::ALL, Check::id)),
        ("says", text.clone()),
        ("fills", fills),
        ("minutes", number.clone()),
        ("parts_in_minutes", number),
        ("saving_minutes", maybe.clone()),
        ("cautions", cautions()),
        ("outcomes", list(outcome)),
    ]);
    let caution = object(&[("caution", one_of(&Caution::ALL, Caution::id)), ("says", text.clone())]);
    let note = object(&[
        ("note", one_of(&QualityNote::ALL, QualityNote::id)),
        ("says", text.clone()),
    ]);
    let mut schema = object(&[
        ("verdict", one_of(&VerdictKind::ALL, VerdictKind::id)),
        ("named", list(fault())),
        ("rival", or_null(fault())),
        ("faults", list(ranked)),
        ("none_of_these", share),
        ("entry_error", or_null(entry_error)),
        ("two_faults", or_null(two)),
        ("out_of_line", or_null(one_of(&Feature::ALL, Feature::id))),
        ("expected", json!({ "type": "object", "additionalProperties": band })),
        (
            "expected_basis",
            or_null(one_of(&ExpectedBasis::ALL, ExpectedBasis::id)),
        ),
        (
            "derived",
            json!({ "type": "object", "additionalProperties": or_null(figures) }),
        ),
        ("rest", or_null(one_of(&RestFinding::ALL, RestFinding::id))),
        ("resting", or_null(resting)),
        ("stop", or_null(stop)),
        ("next_step", or_null(step)),
        ("next_checks", list(check)),
        ("cautions", list(caution)),
        ("quality", list(note)),
        ("coldloop", text),
        ("format", json!({ "const": intake::FORMAT })),
    ]);
    schema["properties"]["proof"] = json!({ "type": "object" });
    schema["$schema"] = json!("https://json-schema.org/draft/2020-12/schema");
    schema["title"] = json!("An answer of coldloop");
    schema
}
