//! The file in which a shop keeps its confirmed cases.

use super::limit::Limit;
use super::mistakes::Refused;
use super::refusal::Refusal;
use super::tree::{Entry, Table};
use crate::diagnosis::Counts;
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Observation, Quantity};
use crate::range::Range;
use alloc::boxed::Box;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The key of a cause that is not in the list.
const NONE_OF_THESE: &str = "none-of-these";

/// The confirmed cases that a file in TOML holds; an empty file holds none.
///
/// ```toml
/// [weight]                     # optional: the weight of the tables, in cases and in answers
/// cases = 100
/// answers = 20
///
/// [cases]                      # how often each cause was confirmed
/// undercharge = 14
/// no-fault = 9
/// none-of-these = 1
///
/// [unable]                     # optional: how many of these vehicles had a system that cannot have the fault
/// orifice-restricted = 20
///
/// [answers.undercharge]        # how often each question was answered [yes, no] when that was the cause
/// oil_traces = [11, 2]
/// ```
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
///
/// ```
/// use coldloop::{Fault, diagnosis::Settings, intake};
/// let counts = intake::counts_from_toml("[cases]\nundercharge = 14\n")?;
/// assert_eq!(counts.cases(Some(Fault::Undercharge)), 14);
/// assert_eq!(intake::counts_from_toml(&intake::counts_to_toml(&counts))?, counts);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn counts_from_toml(text: &str) -> Result<Counts, Refusal> {
    Limit::default().counts_from_toml(text)
}

/// The counts that a table of this shape holds; a refused entry keeps its default.
pub(super) fn counts(root: &Table<'_>) -> Box<Counts> {
    root.only(&["weight", "cases", "unable", "answers"]);
    let mut counts = Box::<Counts>::default();
    root.told("weight", |table| {
        table.only(&["cases", "answers"]);
        if let Some(entry) = table.get("cases") {
            weight(&mut counts, &entry, |counts| &mut counts.cases_weight);
        }
        if let Some(entry) = table.get("answers") {
            weight(&mut counts, &entry, |counts| &mut counts.answers_weight);
        }
        Ok(())
    });
    let cases = root.told("cases", |table| Ok(cases(&mut counts, table)));
    // Where the cases are refused, it cannot be checked that there are no more answers than cases.
    let known = cases.unwrap_or(root.get("cases").is_none());
    root.told("unable", |table| {
        unable(&mut counts, known, table);
        Ok(())
    });
    root.told("answers", |table| {
        answers(&mut counts, known, table);
        Ok(())
    });
    counts
}

/// Reads the cases; whether all of them could be read.
fn cases(counts: &mut Counts, table: &Table<'_>) -> bool {
    let mut all = true;
    for entry in table.entries() {
        let cause = match entry.name() {
            NONE_OF_THESE => Ok(None),
            _ => named(&entry, &Fault::ALL, Fault::id).map(Some),
        };
        match (cause, count(&entry)) {
            (Ok(cause), Ok(count)) => put_cases(counts, cause, count),
            (Ok(_), Err(_)) | (Err(_), Ok(_) | Err(_)) => all = false,
        }
    }
    all
}

fn unable(counts: &mut Counts, cases_known: bool, table: &Table<'_>) {
    for entry in table.entries() {
        let (Ok(fault), Ok(cases)) = (named(&entry, &Fault::ALL, Fault::id), count(&entry)) else {
            continue;
        };
        if cases_known {
            put_unable(counts, fault, cases);
            if let Err(error) = counts.check() {
                put_unable(counts, fault, 0);
                entry.refuse(error, "more systems without this fault than cases of other causes");
            }
        }
    }
}

fn answers(counts: &mut Counts, cases_known: bool, table: &Table<'_>) {
    for entry in table.entries() {
        let (Ok(fault), Ok(questions)) = (named(&entry, &Fault::ALL, Fault::id), entry.table()) else {
            continue;
        };
        for question in questions.entries() {
            let observation = named(&question, &Observation::ALL, Observation::id);
            let (Ok(observation), Ok(answers)) = (observation, yes_and_no(&question)) else {
                continue;
            };
            if cases_known {
                let before = counts.answers(observation, fault);
                put_answers(counts, observation, fault, answers);
                if let Err(error) = counts.check() {
                    put_answers(counts, observation, fault, before);
                    question.refuse(error, "more answers than cases of that cause");
                }
            }
        }
    }
}

/// Sets a weight to a bare number, unless the counts become invalid.
fn weight(counts: &mut Counts, entry: &Entry<'_>, place: fn(&mut Counts) -> &mut f64) {
    let before = core::mem::replace(place(counts), entry.number());
    if let Err(error) = counts.check() {
        *place(counts) = before;
        entry.refuse(error, "write a number of cases, 1 to 1000000, without quotes");
    }
}

// Counts are large; functions that copy them are not inlined, so that the copies are not on the caller's stack.

#[inline(never)]
fn put_cases(counts: &mut Counts, cause: Option<Fault>, cases: u32) {
    *counts = counts.with_cases(cause, cases);
}

#[inline(never)]
fn put_unable(counts: &mut Counts, fault: Fault, cases: u32) {
    *counts = counts.with_unable(fault, cases);
}

#[inline(never)]
fn put_answers(counts: &mut Counts, observation: Observation, fault: Fault, answers: [u32; 2]) {
    *counts = counts.with_answers(observation, fault, answers);
}

/// Writes the counts as such a file; what was never counted is left out.
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
    let unable = Fault::ALL.into_iter().filter(|fault| counts.unable(*fault) > 0);
    let unable: String = unable
        .map(|fault| format!("{} = {}\n", fault.id(), counts.unable(fault)))
        .collect();
    if !unable.is_empty() {
        text += &format!("\n[unable]\n{unable}");
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

/// The member of a vocabulary whose id is the key, in exactly that spelling, so that no two keys mean the same.
pub(super) fn named<T: Copy>(entry: &Entry<'_>, all: &[T], id: fn(T) -> &'static str) -> Result<T, Refused> {
    all.iter()
        .copied()
        .find(|member| id(*member) == entry.name())
        .ok_or_else(|| {
            let ids: Vec<&str> = all.iter().map(|member| id(*member)).collect();
            entry.unknown("known here", &ids)
        })
}

fn count(entry: &Entry<'_>) -> Result<u32, Refused> {
    entry
        .count()
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
    let counts: Vec<Result<u32, Refused>> = entry.items()?.map(|item| count(&item)).collect();
    let counts = counts.into_iter().collect::<Result<Vec<u32>, Refused>>()?;
    match counts[..] {
        [yes, no] => Ok([yes, no]),
        [..] => Err(entry.refuse(Error::of(ErrorKind::Missing, Quantity::Name), "write [yes, no]")),
    }
}
