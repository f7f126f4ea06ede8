//! What is published of a refrigerant, as JSON.

use super::record::record;
use crate::fluid::{Facts, Sourced};
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde_json::Value;

/// What is published of a refrigerant, with the source of each fact, as one JSON object, on one line.
///
/// Keys: `name`, `cas`, `safety_group`, `flammability_limit`, `ozone_depletion`, `warming` by report, `equation` with its
/// DOI and stated uncertainty; `null` for what is not known.
///
/// ```
/// let facts = coldloop::report::facts_json(coldloop::Refrigerant::R1234yf.facts());
/// assert!(facts.contains(r#""safety_group":{"value":"A2L""#));
/// ```
pub fn facts_json(facts: &Facts) -> String {
    let warming: Vec<Value> = facts
        .warming
        .iter()
        .map(|warming| {
            record!({
                "report": warming.value.report,
                "value": warming.value.value,
                "is_upper_bound": warming.value.is_upper_bound,
                "source": warming.source,
            })
        })
        .collect();
    record!({
        "name": facts.name,
        "cas": facts.cas,
        "safety_group": sourced(facts.safety_group, |group| group.id().into()),
        "flammability_limit": sourced(facts.flammability_limit, |limit| {
            record!({ "volume_fraction": limit.volume_fraction, "kg_m3": limit.kg_m3 })
        }),
        "ozone_depletion": sourced(facts.ozone_depletion, Value::from),
        "warming": warming,
        "equation": record!({
            "publication": facts.equation,
            "doi": facts.equation_doi,
            "uncertainty": facts.equation_uncertainty,
        }),
    })
    .to_string()
}

fn sourced<T>(fact: Option<Sourced<T>>, value: impl Fn(T) -> Value) -> Value {
    fact.map_or(
        Value::Null,
        |fact| record!({ "value": value(fact.value), "source": fact.source }),
    )
}
