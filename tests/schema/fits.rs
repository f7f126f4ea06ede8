//! Checks whether a value conforms to a schema.

use serde_json::Value;

/// Collects where a value violates a schema; supports the part of JSON Schema that these files use.
pub(crate) fn unfit(schema: &Value, root: &Value, value: &Value, place: &str, wrong: &mut Vec<String>) {
    if let Some(path) = schema["$ref"].as_str() {
        return unfit(root.pointer(&path[1..]).unwrap(), root, value, place, wrong);
    }
    let mut complain = |what: &str| wrong.push(format!("{place}: {value} {what}"));
    if let Some(any) = schema["anyOf"].as_array() {
        let fits = |schema: &Value| {
            let mut wrong = Vec::new();
            unfit(schema, root, value, place, &mut wrong);
            wrong.is_empty()
        };
        if !any.iter().any(fits) {
            complain("fits none");
        }
        return;
    }
    let is = |kind: &Value| match kind.as_str().unwrap() {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "number" => value.is_number(),
        "integer" => value.is_u64(),
        "boolean" => value.is_boolean(),
        "null" => value.is_null(),
        other => panic!("{other}"),
    };
    let kinds = &schema["type"];
    if !(kinds.is_null() || kinds.is_string() && is(kinds) || kinds.as_array().is_some_and(|all| all.iter().any(is))) {
        complain(&format!("is no {kinds}"));
    }
    if schema["enum"].as_array().is_some_and(|all| !all.contains(value)) {
        complain("is not in the list");
    }
    if schema.get("const").is_some_and(|only| only != value) {
        complain("is another constant");
    }
    for key in schema["required"].as_array().into_iter().flatten() {
        if value.get(key.as_str().unwrap()).is_none() {
            complain(&format!("lacks {key}"));
        }
    }
    for (key, inner) in value.as_object().into_iter().flatten() {
        let place = format!("{place}.{key}");
        match (schema["properties"].get(key), &schema["additionalProperties"]) {
            (Some(known), _) => unfit(known, root, inner, &place, wrong),
            (None, Value::Bool(false)) => wrong.push(format!("{place} is not known")),
            (None, Value::Object(_)) => unfit(&schema["additionalProperties"], root, inner, &place, wrong),
            (None, _) => {}
        }
    }
    for inner in value.as_array().into_iter().flatten() {
        unfit(&schema["items"], root, inner, &format!("{place}[]"), wrong);
    }
}

/// Fails where a text does not conform to a schema.
pub(crate) fn assert_fits(schema: &Value, text: &str, name: &str) {
    let mut wrong = Vec::new();
    unfit(schema, schema, &serde_json::from_str(text).unwrap(), name, &mut wrong);
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
