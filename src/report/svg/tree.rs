//! The plan as a small tree: steps, outcomes, and the steps that follow.

use super::draw::{Anchor, Drawing, LINE, Mark, Stroke};
use crate::diagnosis::Action;
use crate::report::finding::Finding;
use crate::report::language::step_says;
use crate::report::lines::whole;
use crate::report::page::{Page, PageOutcome, PageStep};
use crate::report::texts::{Named, Text};
use crate::report::words::Wording;
use alloc::format;
use alloc::string::String;

/// How many steps deep the plan is drawn; later steps are planned again with what was found.
const DRAWN: usize = 2;
/// Indentation of each depth, px.
const INDENT: f64 = 22.0;

/// The drawing; `None` where there is nothing to do, or nothing that the first step decides.
pub(super) fn plan(page: &Page, wording: Wording) -> Option<String> {
    let first = page.steps.first().filter(|first| !first.outcomes.is_empty())?;
    let mut to = Drawing::new();
    let y = step(&mut to, wording, page, first, 0, 4.0);
    to.mark([8.0, y + 6.0], Mark::Ring);
    to.text([20.0, y + 10.0], Anchor::Start, wording.text(Text::MarkCheck));
    to.mark([116.0, y + 6.0], Mark::Square);
    to.text([128.0, y + 10.0], Anchor::Start, wording.text(Text::MarkRepair));
    to.mark([216.0, y + 6.0], Mark::Blank);
    to.text([228.0, y + 10.0], Anchor::Start, wording.text(Text::MarkHandOver));
    Some(to.finish(wording.text(Text::PicturePlan), y + 18.0))
}

/// A step with its outcomes below it; returns the position below all of them.
fn step(to: &mut Drawing, wording: Wording, page: &Page, step: &PageStep, depth: usize, top: f64) -> f64 {
    let x = 8.0 + INDENT * 2.0 * depth as f64;
    let mark = match step.action {
        Action::Check(_) => Mark::Ring,
        Action::Repair(_) => Mark::Square,
        Action::HandOver => Mark::Blank,
    };
    to.mark([x, top + 7.0], mark);
    let says = step_says(step.action, &page.system, wording.language).trim_end_matches('.');
    let says = format!("{says} ({})", whole(&wording.cost(step)));
    let mut y = to.lines([x + 12.0, top + 11.0], &says);
    let mut last = None;
    for outcome in step.outcomes.iter().filter(|outcome| outcome.is_followed()) {
        let branch = y - 4.0;
        to.line([x, branch], [x + INDENT - 6.0, branch], Stroke::Thin);
        last = Some(branch);
        y = to.lines([x + INDENT - 2.0, y], &found(outcome, wording));
        let next = outcome
            .next
            .and_then(|at| page.steps.get(at))
            .filter(|_| depth + 1 < DRAWN);
        if let Some(next) = next {
            let [from, below] = [[x + INDENT * 2.0, y - LINE + 4.0], [x + INDENT * 2.0, y - LINE + 8.0]];
            to.line(from, below, Stroke::Thin);
            y = self::step(to, wording, page, next, depth + 1, y - LINE + 6.0) + LINE - 2.0;
        }
    }
    if let Some(last) = last {
        to.line([x, top + 11.0], [x, last], Stroke::Thin);
    }
    y - LINE + 8.0
}

/// What is found, how likely that is, and which fault then leads.
fn found(outcome: &PageOutcome, wording: Wording) -> String {
    let found = wording.finding(outcome.finding);
    let chance = wording.per_cent(outcome.probability);
    if outcome.finding == Finding::Fixed {
        return format!("{found} ({chance})");
    }
    let leading = outcome.leading.name(wording.language);
    format!(
        "{found} ({chance}): {leading} ({})",
        wording.per_cent(outcome.leading_probability)
    )
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)] // a test ends that way

    use super::*;
    use crate::intake;
    use crate::names::Fault;
    use crate::report::Units;
    use alloc::vec::Vec;

    /// Text and drawing follow a branch from one per cent on.
    #[test]
    fn a_branch_is_followed_from_one_per_cent_on() {
        let file = include_str!("../../../examples/readings/low-charge.toml");
        let mut page = Page::of_visit(&intake::visit_from_toml(file).unwrap()).unwrap();
        let wording = Wording::new(Units::Metric);
        let follow = |page: &Page| {
            let then = page.steps[page.steps[0].outcomes[1].next.unwrap()].action;
            let says = step_says(then, &page.system, wording.language);
            // The first words are on one line in the text and in the drawing.
            let first: Vec<&str> = says.split(' ').take(3).collect();
            let first = first.join(" ");
            let leads = Fault::ExpansionValveStuckClosed.name(wording.language);
            let text = page.text(wording);
            let branch = text.lines().find(|line| line.contains("not fixed")).unwrap();
            [
                branch.contains(leads),
                text.contains(&first),
                plan(page, wording).unwrap().contains(&first),
            ]
        };
        for (probability, is_followed) in [(0.0095, false), (0.0105, true)] {
            page.steps[0].outcomes[1].probability = probability;
            assert_eq!(follow(&page), [is_followed; 3], "{probability}");
        }
    }
}
