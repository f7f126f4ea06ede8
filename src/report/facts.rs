//! Published facts of a refrigerant, as JSON.

use super::record::{Json, Told, record};
use crate::fluid::Sourced;
use crate::names::Refrigerant;
use crate::saturation::{self, Blend, Boundary};
use alloc::string::String;
use alloc::vec::Vec;

/// Published facts of a refrigerant, each with its source, as one JSON object, on one line.
///
/// Keys: `name`, `cas`, `safety_group`, `flammability_limit`, `ozone_depletion`, `warming` by report, `equation` with its
/// DOI and stated uncertainty, `blend` with its components, the pairs without published parameters and the standard
/// uncertainty (K) of either line; `null` for what is not known.
///
/// ```
/// let facts = coldloop::report::facts_json(coldloop::Refrigerant::R1234yf);
/// assert!(facts.contains(r#""safety_group":{"value":"A2L""#));
/// ```
pub fn facts_json(refrigerant: Refrigerant) -> String {
    let facts = refrigerant.facts();
    let warming: Vec<Json> = facts
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
        "safety_group": sourced(facts.safety_group, |group| group.id().told()),
        "flammability_limit": sourced(facts.flammability_limit, |limit| {
            record!({ "volume_fraction": limit.volume_fraction, "kg_m3": limit.kg_m3 })
        }),
        "ozone_depletion": sourced(facts.ozone_depletion, Told::told),
        "warming": warming,
        "equation": record!({
            "publication": facts.equation,
            "doi": facts.equation_doi,
            "uncertainty": facts.equation_uncertainty,
        }),
        "blend": saturation::blend(refrigerant).map_or(Json::Null, blend),
    })
    .answer()
}

fn blend(blend: &Blend) -> Json {
    let component = |part: &saturation::Part| {
        record!({
            "refrigerant": part.refrigerant.id(),
            "mass_fraction": part.mass_fraction,
            "mole_fraction": part.mole_fraction,
        })
    };
    let pair = |[one, other]: &[Refrigerant; 2]| [one.id(), other.id()].told();
    let side = |side: &Boundary| record!({ "uncertainty_k": side.uncertainty_k, "is_reliable": side.is_reliable });
    record!({
        "components": blend.parts.iter().map(component).collect::<Vec<_>>(),
        "source": blend.composition_source,
        "estimated_pairs": blend.estimated_pairs.iter().map(pair).collect::<Vec<_>>(),
        "bubble": side(&blend.bubble),
        "dew": side(&blend.dew),
        "on_the_road": blend.on_the_road,
    })
}

fn sourced<T>(fact: Option<Sourced<T>>, value: impl Fn(T) -> Json) -> Json {
    fact.map_or(
        Json::Null,
        |fact| record!({ "value": value(fact.value), "source": fact.source }),
    )
}
