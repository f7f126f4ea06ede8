//! The file in which a shop keeps its confirmed cases.

use super::refusal::{Refusal, Refused};
use super::tree::{Entry, Table};
use crate::diagnosis::Counts;
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Observation, Quantity};
use crate::range::Range;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The key of a cause that is none of the list.
const NONE_OF_THESE: &str = "none-of-these";

/// The confirmed cases that a file in TOML holds; an empty file holds none.
///
/// ```toml
/// [weight]                     # optional: how many cases and answers the tables weigh as much as
/// cases = 100
/// answers = 20
///
/// [cases]                      # how often each cause was confirmed
/// undercharge = 14
/// no-fault = 9
/// none-of-these = 1
///
/// [answers.undercharge]        # how often each question was answered [yes, no] when that was the cause
/// oil_traces = [11, 2]
/// ```
///
/// Errors: a [`Refusal`] that names the key, the value and what to write instead.
///
/// ```
/// use coldloop::{Fault, diagnosis::Settings, intake};
/// let counts = intake::counts_from_toml("[cases]\nundercharge = 14\n")?;
/// assert_eq!(counts.cases(Some(Fault::Undercharge)), 14);
/// assert_eq!(intake::counts_from_toml(&intake::counts_to_toml(&counts))?, counts);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn counts_from_toml(text: &str) -> Result<Counts, Refusal> {
    super::read(super::toml_value(text), counts)
}

/// The counts that a table of this shape holds.
pub(super) fn counts(root: &Table<'_>) -> Result<Counts, Refused> {
    root.only(&["weight", "cases", "answers"])?;
    let mut counts = Counts::default();
    if let Some(table) = root.table("weight")? {
        table.only(&["cases", "answers"])?;
        let advice = "write a number of cases, 1 to 1000000, without quotes";
        if let Some(entry) = table.get("cases") {
            counts.cases_weight = entry.number();
            checked(&counts, &entry, advice)?;
        }
        if let Some(entry) = table.get("answers") {
            counts.answers_weight = entry.number();
            checked(&counts, &entry, advice)?;
        }
    }
    if let Some(table) = root.table("cases")? {
        cases(&mut counts, &table)?;
    }
    if let Some(table) = root.table("answers")? {
        answers(&mut counts, &table)?;
    }
    Ok(counts)
}

fn cases(counts: &mut Counts, table: &Table<'_>) -> Result<(), Refused> {
    for entry in table.entries() {
        let cause = match entry.name() {
            NONE_OF_THESE => None,
            _ => Some(named(&entry, &Fault::ALL, Fault::id)?),
        };
        *counts = counts.with_cases(cause, count(&entry)?);
    }
    Ok(())
}

fn answers(counts: &mut Counts, table: &Table<'_>) -> Result<(), Refused> {
    for entry in table.entries() {
        let fault = named(&entry, &Fault::ALL, Fault::id)?;
        for question in entry.table()?.entries() {
            let observation = named(&question, &Observation::ALL, Observation::id)?;
            *counts = counts.with_answers(observation, fault, yes_and_no(&question)?);
            checked(counts, &question, "more answers than cases of that cause")?;
        }
    }
    Ok(())
}

/// The same file, written: what was never counted is left out.
///
/// ```
/// use coldloop::{diagnosis::Counts, intake};
/// assert!(intake::counts_to_toml(&Counts::default()).starts_with("# Confirmed cases"));
/// ```
pub fn counts_to_toml(counts: &Counts) -> String {
    let mut text = format!(
        "# Confirmed cases of a shop.\n\n[weight]\ncases = {:?}\nanswers = {:?}\n\n[cases]\n",
        counts.cases_weight, counts.answers_weight
    );
    let causes = Fault::ALL.map(|fault| (fault.id(), counts.cases(Some(fault))));
    for (id, cases) in causes.into_iter().chain([(NONE_OF_THESE, counts.cases(None))]) {
        if cases > 0 {
            text += &format!("{id} = {cases}\n");
        }
    }
    for fault in Fault::ALL {
        let mut lines = String::new();
        for observation in Observation::ALL {
            let [yes, no] = counts.answers(observation, fault);
            if yes > 0 || no > 0 {
                lines += &format!("{} = [{yes}, {no}]\n", observation.id());
            }
        }
        if !lines.is_empty() {
            text += &format!("\n[answers.{}]\n{lines}", fault.id());
        }
    }
    text
}

/// The member of a vocabulary that the key names by its id, spelled as it is, so that no two keys mean the same.
pub(super) fn named<T: Copy>(entry: &Entry<'_>, all: &[T], id: fn(T) -> &'static str) -> Result<T, Refused> {
    all.iter()
        .copied()
        .find(|member| id(*member) == entry.name())
        .ok_or_else(|| {
            let ids: Vec<&str> = all.iter().map(|member| id(*member)).collect();
            entry.unknown("known here", &ids)
        })
}

#[inline(never)]
fn checked(counts: &Counts, entry: &Entry<'_>, advice: &str) -> Result<(), Refused> {
    counts.check().map_err(|error| entry.refuse(error, advice))
}

fn count(entry: &Entry<'_>) -> Result<u32, Refused> {
    entry
        .value
        .as_u64()
        .and_then(|count| u32::try_from(count).ok())
        .ok_or_else(|| {
            let counts = Range::new(Quantity::Rows, 0.0, f64::from(u32::MAX));
            let fraction = Error::of(ErrorKind::Syntax, Quantity::Rows);
            let error = counts.check(entry.number()).err().unwrap_or(fraction);
            entry.refuse(error, "write how often, a whole number from 0, without quotes")
        })
}

/// `[11, 2]`.
fn yes_and_no(entry: &Entry<'_>) -> Result<[u32; 2], Refused> {
    let counts = entry
        .items()?
        .map(|item| count(&item))
        .collect::<Result<Vec<u32>, Refused>>()?;
    match counts[..] {
        [yes, no] => Ok([yes, no]),
        [..] => Err(entry.refuse(Error::of(ErrorKind::Missing, Quantity::Name), "write [yes, no]")),
    }
}
