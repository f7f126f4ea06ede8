//! How good the answers were, as JSON and as text.

use super::record::{Json, record};
use crate::evaluate::{RefusedCase, ReliabilityBin, Score, Summary};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// The summary of an evaluation as one JSON object, on one line.
///
/// Keys: `cases`, `refused`, `groups`; the figures of [`Summary`] by their names, each with its `value`, the ends of its
/// interval `low` and `high`, and the `cases` over which it is taken; `reliability`, a list of bins with `low`, `high`,
/// `cases`, `probability` and `right`; `refusals`, each with `line`, `id`, `key`, `value` and `message`. What is not known is
/// `null`.
///
/// ```
/// use coldloop::{diagnosis::Settings, evaluate::{Priors, evaluate}, report};
/// let summary = evaluate(include_str!("../../examples/cases/garage.jsonl"), &Settings::default(), Priors::Told)?;
/// assert!(report::evaluation_json(&summary).starts_with(r#"{"cases":12,"refused":0,"groups":"#));
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn evaluation_json(summary: &Summary) -> String {
    let mut entries = super::record::none();
    super::record::tell(&mut entries, "cases", Json::Count(summary.cases));
    super::record::tell(&mut entries, "refused", Json::Count(summary.refused));
    super::record::tell(&mut entries, "groups", summary.groups);
    for (name, figure) in summary.scores() {
        super::record::tell(&mut entries, name, score(&figure));
    }
    let bins: Vec<Json> = summary.reliability.iter().map(bin).collect();
    super::record::tell(&mut entries, "reliability", bins);
    let refusals: Vec<Json> = summary.refusals.iter().map(refused).collect();
    super::record::tell(&mut entries, "refusals", refusals);
    Json::Object(entries).answer()
}

fn score(score: &Score) -> Json {
    record!({
        "value": score.value,
        "low": score.interval.map(|(low, _)| low),
        "high": score.interval.map(|(_, high)| high),
        "cases": Json::Count(score.cases),
    })
}

fn bin(bin: &ReliabilityBin) -> Json {
    record!({
        "low": bin.low,
        "high": bin.high,
        "cases": Json::Count(bin.cases),
        "probability": bin.probability,
        "right": bin.right,
    })
}

fn refused(case: &RefusedCase) -> Json {
    let first = &case.refusal.first;
    record!({
        "line": case.line,
        "id": case.id.chars().take(80).collect::<String>(),
        "key": first.key.clone(),
        "value": first.value.clone(),
        "message": first.to_string(),
    })
}

/// The same as a table of text.
///
/// ```
/// use coldloop::{diagnosis::Settings, evaluate::{Priors, evaluate}, report};
/// let summary = evaluate(include_str!("../../examples/cases/garage.jsonl"), &Settings::default(), Priors::Given)?;
/// assert!(report::evaluation_text(&summary).starts_with("12 cases judged"));
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn evaluation_text(summary: &Summary) -> String {
    let over = match summary.groups {
        0 => "over cases".to_string(),
        groups => format!("over {groups} groups"),
    };
    let mut text = format!(
        "{} cases judged, {} lines refused; 95 % intervals {over}\n\n",
        summary.cases, summary.refused
    );
    for ((name, score), says) in summary.scores().into_iter().zip(SAYS) {
        let percent = !matches!(name, "log_loss" | "calibration_error");
        text += &format!("  {says:<64}{:>8}", shown(score.value, percent));
        if let Some((low, high)) = score.interval {
            text += &format!("  {} to {}", shown(Some(low), percent), shown(Some(high), percent));
        }
        text += &format!("  of {}\n", score.cases);
    }
    text += "\n  probability of the first name: said, right, cases\n";
    for bin in summary.reliability.iter().filter(|bin| bin.cases > 0) {
        let limits = format!("{:.1} to {:.1}", bin.low, bin.high);
        let (said, right) = (shown(bin.probability, true), shown(bin.right, true));
        text += &format!("  {limits:<12}{said:>8}{right:>8}{:>8}\n", bin.cases);
    }
    for refused in &summary.refusals {
        text += &format!("\n  refused: {}", refused.refusal.first);
    }
    text
}

/// What the figures say, in the order of [`Summary::scores`].
const SAYS: [&str; 12] = [
    "first name right",
    "what was found is among the first three",
    "sound vehicles led by a fault",
    "sound vehicles with a fault named",
    "significant faults: named rightly",
    "significant faults: another one named",
    "significant faults: called sound",
    "significant faults: nothing named",
    "  and the list holds what was found",
    "right where the first name has 0.8 or more",
    "log loss, nats",
    "calibration error",
];

fn shown(value: Option<f64>, percent: bool) -> String {
    match value {
        None => "-".into(),
        Some(value) if percent => format!("{:.1} %", 100.0 * value),
        Some(value) => format!("{value:.3}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A share of no vehicles at all is none, not zero.
    #[test]
    fn a_share_of_nothing_is_a_dash() {
        assert_eq!([shown(None, true), shown(None, false)], ["-", "-"]);
        assert_eq!([shown(Some(0.5), true), shown(Some(0.5), false)], ["50.0 %", "0.500"]);
    }
}
