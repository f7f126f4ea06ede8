//! Confirmed cases: what was read, and what was found; one JSON object on each line of a file.

use super::limit::Limit;
use super::mistakes::Refused;
use super::refusal::{Position, Refusal};
use super::tree::{Entry, Table};
use super::visit::{Visit, visit};
use crate::diagnosis::Counts;
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Quantity};
use crate::range::SEVERITY;
use crate::units::text;
use alloc::boxed::Box;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// The id of a cause that is not in the list.
const NONE_OF_THESE: &str = "none-of-these";

/// A vehicle whose cause was confirmed: one line of a file of confirmed cases.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Confirmed {
    /// The readings file of the vehicle as it came in.
    pub visit: Visit,
    /// What was found: one cause or several; [`Fault::NoFault`] alone for a sound vehicle.
    pub truth: Vec<Cause>,
    /// A name for the case, for refusals; empty where none is given.
    pub id: String,
    /// Whether people in the vehicle would notice the fault; true where the line does not say.
    pub significant: bool,
    /// The group of cases that are alike: the make, the shop, the mechanic.
    pub group: Option<String>,
}

/// One cause that was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cause {
    /// The fault; `None` for a cause that is not in the list.
    pub fault: Option<Fault>,
    /// Its severity, 0 to 1, in the fault's own measure ([`crate::diagnosis::measure`]), where it was measured.
    pub severity: Option<f64>,
}

impl Confirmed {
    /// Adds the case to the counts of a shop and returns whether it did: only a case with one cause is counted.
    ///
    /// ```
    /// use coldloop::{Fault, diagnosis::Counts, intake};
    /// let case = intake::confirmed_from_json(r#"{"case": {
    ///     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ///     "conditions": {"ambient": "24 °C", "altitude": "1600 m"},
    ///     "observations": {"oil_traces": true}
    /// }, "truth": [{"fault": "undercharge"}]}"#)?;
    /// let mut counts = Counts::default();
    /// assert!(case.record(&mut counts));
    /// assert_eq!(counts.cases(Some(Fault::Undercharge)), 1);
    /// # Ok::<(), intake::Refusal>(())
    /// ```
    pub fn record(&self, counts: &mut Counts) -> bool {
        let [cause] = self.truth[..] else { return false };
        let case = &self.visit.case;
        counts.record_in(&case.system, cause.fault, &case.observations);
        true
    }
}

/// The confirmed case of one line of a file of such cases.
///
/// ```json
/// {"case": {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
///           "conditions": {"ambient": "24 °C", "altitude": "1600 m"},
///           "readings": {"low_side": "38 psig", "high_side": "165 psig"}},
///  "truth": [{"fault": "undercharge", "severity": 0.3}],
///  "id": "17", "significant": true, "group": "van"}
/// ```
///
/// `case` is a readings file as JSON. `truth` has the causes that were found, each with the id of a [`Fault`], or
/// `none-of-these`, and with its severity (0 to 1, or text: `"30 %"`) where that is known; a sound vehicle has
/// `no-fault` alone. The rest may be left out. `significant` is false for a fault that nobody would have noticed. `group`
/// is text or a whole number. A line of a simulator may have a table `world`, of which only `make` is read: it is the
/// group where no other is given. In a file each case is one line.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
pub fn confirmed_from_json(line: &str) -> Result<Confirmed, Refusal> {
    Limit::default().confirmed_from_json(line)
}

/// The counts with every case of the lines that has one cause added.
///
/// A case with several causes is not counted, since it is unknown which cause explains which observation.
///
/// Errors: the [`Refusal`] of the first line that cannot be read, with its number; nothing is counted then.
///
/// ```
/// use coldloop::{Fault, diagnosis::Counts, intake};
/// let cases = include_str!("../../examples/cases/garage.jsonl");
/// let counts = intake::counts_from_cases(&Counts::default(), cases)?;
/// assert_eq!(counts.cases(Some(Fault::NoFault)), 4);
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn counts_from_cases(counts: &Counts, lines: &str) -> Result<Box<Counts>, Refusal> {
    let mut counts = Box::new(*counts);
    for (number, line) in cases_of(lines) {
        let case = Limit::default()
            .confirmed(line)
            .map_err(|refusal| refusal.in_line(number))?;
        case.record(&mut counts);
    }
    Ok(counts)
}

/// The lines of a text that are not empty, with their numbers from one.
pub fn cases_of(lines: &str) -> impl Iterator<Item = (usize, &str)> {
    let text = lines.strip_prefix('\u{feff}').unwrap_or(lines);
    let numbered = (1..).zip(text.lines());
    numbered.filter(|(_, line)| !line.trim().is_empty())
}

impl Refusal {
    /// This refusal with its mistakes placed in this line of a file whose lines are read one by one.
    pub fn in_line(mut self, line: usize) -> Self {
        for mistake in core::iter::once(&mut *self.first).chain(&mut self.others) {
            let column = mistake.position.map_or(1, |position| position.column);
            mistake.position = Some(Position { line, column });
        }
        self
    }
}

pub(super) fn confirmed(root: &Table<'_>) -> Result<Box<Confirmed>, Refused> {
    root.only(&["case", "truth", "id", "significant", "group", "world"]);
    let visit = root.section("case", "the readings file of the vehicle, as JSON", visit);
    let advice = "write what was found: [{\"fault\": \"undercharge\"}]";
    let truth = root
        .require("truth", Quantity::Name, advice)
        .and_then(|entry| truth(&entry));
    let named = |key: &str| root.get(key).and_then(|entry| label(&entry).ok());
    let id = named("id");
    let group = named("group").or_else(|| make(root));
    let significant = root.get("significant").map(|entry| entry.yes_or_no());
    let significant = significant.transpose()?.unwrap_or(true);
    Ok(with_truth(visit?, (truth?, significant), id.unwrap_or_default(), group))
}

#[inline(never)] // a visit is large: this keeps it off the stack while a line is read
fn with_truth(
    visit: Box<Visit>,
    (truth, significant): (Vec<Cause>, bool),
    id: String,
    group: Option<String>,
) -> Box<Confirmed> {
    Box::new(Confirmed {
        visit: *visit,
        truth,
        id,
        significant,
        group,
    })
}

/// The make of a simulated vehicle.
fn make(root: &Table<'_>) -> Option<String> {
    root.told("world", |table| {
        table.get("make").map(|entry| label(&entry)).transpose()
    })
    .flatten()
}

/// Text, or a whole number as text.
fn label(entry: &Entry<'_>) -> Result<String, Refused> {
    let number = entry.count().map(|count| count.to_string());
    number.or_else(|| entry.as_text().map(String::from)).ok_or_else(|| {
        let error = Error::of(ErrorKind::Syntax, Quantity::Name);
        entry.refuse(error, "write text or a whole number")
    })
}

fn truth(entry: &Entry<'_>) -> Result<Vec<Cause>, Refused> {
    let mut causes: Vec<Cause> = Vec::new();
    let refused = |error, advice| Err(entry.refuse(Error::of(error, Quantity::Name), advice));
    for item in entry.items()? {
        causes.push(cause(&item.table()?)?);
    }
    if causes.is_empty() {
        return refused(
            ErrorKind::Missing,
            "a sound vehicle has no-fault; leave a case out whose cause was not found",
        );
    }
    let sound = causes.iter().any(|cause| cause.fault == Some(Fault::NoFault));
    if sound && causes.len() > 1 {
        return refused(ErrorKind::Inconsistent, "a sound vehicle has no-fault alone");
    }
    let again = |at: usize| causes[..at].iter().any(|other| other.fault == causes[at].fault);
    if (0..causes.len()).any(again) {
        return refused(
            ErrorKind::Inconsistent,
            "the same cause is given twice: keep one of the two",
        );
    }
    Ok(causes)
}

fn cause(table: &Table<'_>) -> Result<Cause, Refused> {
    table.only(&["fault", "severity"]);
    let entry = table.require("fault", Quantity::Name, "write the id of the fault that was found")?;
    let fault = match entry.as_text() {
        Some(NONE_OF_THESE) => None,
        Some(_) | None => Some(entry.member(&Fault::ALL, Fault::id, Fault::from_id)?),
    };
    let severity = table.get("severity").map(|entry| severity(&entry)).transpose()?;
    Ok(Cause { fault, severity })
}

/// A bare number from 0 to 1, or text.
fn severity(entry: &Entry<'_>) -> Result<f64, Refused> {
    match entry.as_text() {
        Some(_) => entry.quantity(Quantity::Severity, text::severity),
        None => SEVERITY
            .check(entry.number())
            .map_err(|error| entry.refuse(error, "write a number from 0 to 1, or \"30 %\"")),
    }
}
