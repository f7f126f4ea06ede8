//! How well logs are judged while they run: how often the verdict changes, how often the truth is among the first three, how often a
//! sound vehicle is named faulty; compared with the same log typed in by hand as the medians of its last two minutes.
//!
//! `cargo run --release --example evaluate_logs -- FOLDER` takes a folder with `index.jsonl` and a CSV for each log. A line of the
//! index has `id`, `system`, `conditions`, and, for the score alone, `truth` and `speeds_rpm`.

mod medians;
mod score;

use coldloop::diagnosis::{Case, Judgement, Settings, judge, judge_states, log_cases};
use coldloop::intake::{LogColumns, case_from_json};
use coldloop::log::{Datum, Instruments, Recorder, Sample};
use score::{Score, Told};
use std::error::Error;
use std::path::Path;

/// Seconds between two verdicts.
const LOOK_S: f64 = 5.0;

fn main() -> Result<(), Box<dyn Error>> {
    let folder = std::env::args().nth(1).ok_or("which folder?")?;
    let verbose = std::env::args().any(|argument| argument == "--each");
    let index = std::fs::read_to_string(Path::new(&folder).join("index.jsonl"))?;
    let mut score = Score::default();
    for line in index.lines() {
        let entry = score::Entry::of(line)?;
        let case = case_from_json(&entry.case)?;
        let (samples, datum) = samples(&Path::new(&folder).join(format!("{}.csv", entry.id)))?;
        let told = follow(&case, &samples, datum)?;
        let by_hand = judge(&medians::case(&case, &samples, entry.changes), &Settings::default())?;
        let line = score.add(&entry, &told, &by_hand);
        if verbose {
            println!("{line}");
        }
    }
    println!("{score}");
    Ok(())
}

/// The verdicts while the log runs.
fn follow(case: &Case, samples: &[Sample], datum: Datum) -> Result<Vec<Told>, Box<dyn Error>> {
    let (mut recorder, mut told, mut next_s) = (Recorder::new(datum), Vec::new(), LOOK_S);
    for (at, sample) in samples.iter().enumerate() {
        recorder.push(sample);
        if sample.time_s >= next_s || at + 1 == samples.len() {
            next_s = sample.time_s + LOOK_S;
            if let Some(judgement) = now(case, &recorder)? {
                told.push(Told::of(sample.time_s, &judgement));
            }
        }
    }
    Ok(told)
}

/// What the log says so far.
fn now(case: &Case, recorder: &Recorder) -> Result<Option<Judgement>, Box<dyn Error>> {
    let cases: Vec<Case> = log_cases(case, &recorder.summary(), &Instruments::default()).collect();
    if cases.is_empty() {
        return Ok(None);
    }
    Ok(Some(judge_states(&cases, &Settings::default())?))
}

fn samples(path: &Path) -> Result<(Vec<Sample>, Datum), Box<dyn Error>> {
    let mut reader = csv::Reader::from_path(path)?;
    let columns = LogColumns::from_header(reader.headers()?.iter())?;
    let mut samples = Vec::new();
    for row in reader.records() {
        samples.push(columns.sample(row?.iter())?);
    }
    Ok((samples, columns.datum()))
}
