//! The rows of a page as text.

use crate::rows::{Page, Row, called, spoken, system, titled, weather};
use std::fmt::Write;

/// A line for each fault, source and severity: shift and spread of every figure.
pub(crate) fn text(page: &Page) -> String {
    let mut out = format!("{}\n{}\n", system(page), weather(page));
    let mut line = format!("{:28} {:21} {:>11} {:>6}", "fault", "source", "severity", "share");
    for (figure, _) in &page.figures {
        let _ = write!(line, " {:>19}", titled(*figure)[0]); // writing into a String does not fail
    }
    out += &line;
    out += "\n";
    for fault in &page.faults {
        for row in page.rows(*fault) {
            out += &self::line(row);
            out += "\n";
        }
    }
    out
}

fn line(row: &Row) -> String {
    let [low, _, high] = row.severity;
    let severity = if low == high {
        format!("{low:.2}")
    } else {
        format!("{low:.2} to {high:.2}")
    };
    let mut line = format!(
        "{:28} {:21} {severity:>12} {:4.0} %",
        spoken(row.fault.id()),
        called(row.source),
        100.0 * row.share
    );
    for one in &row.moves {
        let _ = write!(line, " {:>19}", format!("{:+.2} ± {:.2}", one.shift, one.spread));
    }
    line
}
