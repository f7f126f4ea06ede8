//! Words for numbers: how far off, how strongly.

use super::page::Scale;
use super::rows::deviation;
use super::units::Units;
use crate::diagnosis::{Contribution, Diagnosis, Evidence, Resting};
use crate::names::{Fault, Feature, Observation, ResultKind, Standing, Strength};
use alloc::format;
use alloc::string::String;

/// How a figure lies to its band, by standard deviations from the median. The limits are the 80 % and the 95 % band,
/// and three standard deviations.
pub(super) fn standing(deviation: f64) -> Option<Standing> {
    match deviation {
        z if z.is_nan() => None,
        z if z < -3.0 => Some(Standing::FarTooLow),
        z if z < -1.96 => Some(Standing::TooLow),
        z if z < -1.28 => Some(Standing::RatherLow),
        z if z <= 1.28 => Some(Standing::Normal),
        z if z <= 1.96 => Some(Standing::RatherHigh),
        z if z <= 3.0 => Some(Standing::TooHigh),
        _ => Some(Standing::FarTooHigh),
    }
}

/// The same where the side matters that a figure takes within its band: beyond half a standard deviation.
fn leaning(deviation: f64) -> &'static str {
    match deviation {
        z if (-1.28..-0.5).contains(&z) => "low in its band",
        z if z > 0.5 && z <= 1.28 => "high in its band",
        z => standing(z).map_or("", Standing::id),
    }
}

/// How strongly a factor in the odds speaks. The limits are factors of 1.2, 3 and 10 (Kass & Raftery 1995, table in
/// section 3.2, names 3 and 20 the limits of positive and strong evidence; 10 is Jeffreys' limit of strong).
pub(super) fn strength(log_odds: f64) -> Strength {
    match libm::fabs(log_odds) {
        x if x < 0.18 => Strength::Hardly,
        x if x < 1.1 => Strength::Slightly,
        x if x < 2.3 => Strength::Clearly,
        _ => Strength::Strongly,
    }
}

/// What a piece of evidence says, in one line.
pub(super) fn says(contribution: &Contribution, diagnosis: &Diagnosis, case: &crate::diagnosis::Case) -> String {
    match contribution.evidence {
        Evidence::Prior => "how common it is".into(),
        Evidence::Feature(feature) => {
            let standing = deviation(diagnosis, feature).map_or("", leaning);
            format!("{} {standing}", feature_name(feature))
        }
        Evidence::Observation(observation) => {
            let answer = if case.observations.answer(observation) == Some(true) {
                "yes"
            } else {
                "no"
            };
            format!("{}: {answer}", sentence(observation))
        }
    }
}

fn sentence(observation: Observation) -> &'static str {
    observation.description().trim_end_matches('.')
}

/// A figure as a technician calls it.
pub(super) fn feature_name(feature: Feature) -> &'static str {
    match feature {
        Feature::LowSide => "low side",
        Feature::HighSide => "high side",
        Feature::Vent => "vent air",
        Feature::Superheat => "superheat",
        Feature::Subcooling => "subcooling",
        Feature::DischargeSuperheat => "discharge line above condensing",
        Feature::ClutchCycles => "clutch cycles",
        Feature::RestPressure => "pressure at rest",
    }
}

/// What a pressure at rest comes to, in figures.
pub(super) fn resting(resting: &Resting, units: Units) -> String {
    let pressure = |pa: f64| units.with_unit(Scale::PaDifference, libm::fabs(pa));
    let Resting { excess_pa, missing, .. } = resting;
    let off = pressure(excess_pa.value);
    if let Some((low, high)) = missing {
        let [low, high] = [low, high].map(|share| format!("{:.0}", 100.0 * share));
        let range = if low == high { low } else { format!("{low} to {high}") };
        return format!("{off} below saturation: {range} % of the charge is missing");
    }
    if resting.gas_share > 0.0 {
        let warmer = units.with_unit(Scale::Difference, resting.warmer_k);
        let share = 100.0 * resting.gas_share;
        return format!(
            "{off} above saturation: about {share:.0} % gas, or parts {warmer} warmer than the ambient: wait an hour, read again"
        );
    }
    let side = if excess_pa.value < 0.0 { "below" } else { "above" };
    format!(
        "{off} {side} saturation, ± {}",
        pressure(2.0 * excess_pa.standard_uncertainty)
    )
}

/// A result in a word or two; a look that answers several questions names the one that is answered with yes.
pub(super) fn result(kind: ResultKind, observation: Option<Observation>, of: usize) -> String {
    match (kind, observation) {
        (ResultKind::Yes, Some(observation)) if of > 2 => spoken(observation.id()),
        (ResultKind::No, None) => "neither".into(),
        (ResultKind::Below, _) => "below its band".into(),
        (ResultKind::Within, _) => "in its band".into(),
        (ResultKind::Above, _) => "above its band".into(),
        (ResultKind::Yes | ResultKind::No, _) => kind.id().into(),
    }
}

/// What keeps its hyphen before the rest of an id.
const COMPOUNDS: [&str; 4] = ["non-", "high-side", "liquid-line", "suction-line"];

/// An id as words.
pub(super) fn spoken(id: &str) -> String {
    let kept = COMPOUNDS
        .into_iter()
        .find(|compound| id.starts_with(compound))
        .map_or(0, str::len);
    let (compound, rest) = id.split_at(kept);
    format!("{compound}{}", rest.replace(['-', '_'], " "))
}

/// A probability in per cent, with no false certainty at its ends.
pub(super) fn per_cent(probability: f64) -> String {
    match probability {
        p if p > 0.99 => "over 99 %".into(),
        p if p < 0.01 => "under 1 %".into(),
        p => format!("{:.0} %", 100.0 * p),
    }
}

/// The severity of a fault in its own measure, or an empty text.
pub(super) fn severity(fault: Fault, range: Option<(f64, f64)>) -> String {
    let measure = crate::diagnosis::measure(fault);
    match range {
        None => String::new(),
        Some((low, high)) if measure.starts_with("share") => {
            format!("{measure}: {:.0} to {:.0} %", 100.0 * low, 100.0 * high)
        }
        Some((low, high)) => format!("{measure}: {low:.1} to {high:.1}"),
    }
}
