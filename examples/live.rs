//! Plays a log and prints its progress, the state of the vehicle, the verdict as it settles, and the next step.
//!
//! ```text
//! cargo run --release --example live -- examples/logs/cycling-van.toml --speed 20
//! cargo run --release --example live -- examples/logs/cycling-van.toml --json
//! ```
//!
//! The file has `[system]`, `[conditions]` and `log = "<file>.csv"`, a CSV whose header names each channel with its unit. `--speed`
//! plays it so many times faster than it was logged; without it there is no waiting. `--json` prints a line for every change and a
//! last one with the whole answer. The logs are invented, of a municipal fleet garage at 1,600 m.

use coldloop::diagnosis::{Action, Case, Judgement, Settings, judge_states, log_cases};
use coldloop::intake::{LogColumns, case_from_json};
use coldloop::log::{Datum, Instruments, Recorder, Sample, Summary};
use coldloop::report::{self, Units};
use coldloop::{Fault, LogPhase, VerdictKind};
use std::error::Error;
use std::path::Path;
use std::time::Duration;

/// Seconds of the log between two verdicts.
const LOOK_S: f64 = 5.0;

/// What is printed when it differs from what was printed last.
#[derive(Clone, PartialEq)]
struct Told {
    phase: LogPhase,
    verdict: VerdictKind,
    named: Vec<Fault>,
}

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let (mut file, mut speed, mut json) = (None, None, false);
    while let Some(argument) = arguments.next() {
        match argument.as_str() {
            "--json" => json = true,
            "--speed" => speed = Some(arguments.next().ok_or("--speed needs a number")?.parse::<f64>()?),
            _ => file = Some(argument),
        }
    }
    let file = file.ok_or("which log? examples/logs/cycling-van.toml for one")?;
    let (case, samples, datum) = read(Path::new(&file))?;
    let (settings, instruments) = (Settings::default(), Instruments::default());
    let (mut recorder, mut before, mut next_s) = (Recorder::new(datum), None, LOOK_S);
    let length_s = samples.last().map_or(0.0, |sample| sample.time_s);
    for (at, sample) in samples.iter().enumerate() {
        recorder.push(sample);
        if sample.time_s < next_s && at + 1 < samples.len() {
            continue;
        }
        next_s = sample.time_s + LOOK_S;
        let summary = recorder.summary();
        let judgement = judged(&case, &summary, &instruments, &settings)?;
        let mut named = judgement
            .as_ref()
            .map_or(Vec::new(), |judgement| judgement.verdict().faults.to_vec());
        // The order of a short list is that of the odds, which are printed with it.
        named.sort_by_key(|fault| fault.code());
        let kind = judgement.as_ref().map(|judgement| judgement.verdict().kind);
        let told = Told {
            phase: summary.phase,
            verdict: kind.unwrap_or(VerdictKind::NotEnoughEvidence),
            named,
        };
        if before.as_ref() != Some(&told) {
            if json {
                println!("{}", line(&summary, &told, judgement.as_ref()));
            } else {
                show(&summary, &told, judgement.as_ref(), length_s, &settings)?;
            }
            before = Some(told);
        }
        if let Some(speed) = speed.filter(|speed| *speed > 0.0) {
            std::thread::sleep(Duration::from_secs_f64(LOOK_S / speed));
        }
    }
    end(&case, &recorder.summary(), &instruments, &settings, json)
}

/// The judgement from all states that lasted long enough.
fn judged(
    case: &Case,
    summary: &Summary,
    instruments: &Instruments,
    settings: &Settings,
) -> Result<Option<Judgement>, coldloop::Error> {
    let cases = cases(case, summary, instruments);
    if cases.is_empty() {
        return Ok(None);
    }
    judge_states(&cases, settings).map(Some)
}

fn cases(case: &Case, summary: &Summary, instruments: &Instruments) -> Vec<Case> {
    log_cases(case, summary, instruments).collect()
}

/// One change, for the terminal.
fn show(
    summary: &Summary,
    told: &Told,
    judgement: Option<&Judgement>,
    length_s: f64,
    settings: &Settings,
) -> Result<(), coldloop::Error> {
    let done = (20.0 * summary.elapsed.seconds() / length_s.max(1.0)) as usize;
    let bar: String = (0..20).map(|at| if at < done { '=' } else { '.' }).collect();
    println!(
        "\n{:4.0} s [{bar}] {}",
        summary.elapsed.seconds(),
        told.phase.description()
    );
    let Some(judgement) = judgement else {
        println!("       Nothing to judge yet: wait {:.0} s.", summary.wait.seconds());
        return Ok(());
    };
    println!("       {}", told.verdict.description());
    for ranked in judgement.faults().iter().take(3) {
        println!("       {:3.0} %  {}", 100.0 * ranked.probability, ranked.fault.id());
    }
    if summary.wait.seconds() > 0.0 {
        println!("       Hold this state for {:.0} s more.", summary.wait.seconds());
    } else if let Some(step) = judgement.diagnosis(settings)?.next_step {
        let says = match step {
            Action::Check(check) => check.description(),
            Action::Repair(fault) => coldloop::diagnosis::repair(fault).says,
            Action::HandOver => "Hand over to a specialist.",
            _ => "A step that is newer than this program.",
        };
        println!("       Next: {says}");
    }
    Ok(())
}

/// One change, as JSON.
fn line(summary: &Summary, told: &Told, judgement: Option<&Judgement>) -> serde_json::Value {
    let faults = judgement.map_or(&[][..], |judgement| judgement.faults()).iter().take(3);
    let faults: Vec<_> = faults
        .map(|ranked| serde_json::json!({"fault": ranked.fault.id(), "probability": ranked.probability}))
        .collect();
    serde_json::json!({
        "time_s": summary.elapsed.seconds(),
        "state": told.phase.id(),
        "verdict": told.verdict.id(),
        "named": told.named.iter().map(|fault| fault.id()).collect::<Vec<_>>(),
        "faults": faults,
    })
}

/// The whole answer, once the log is over.
fn end(
    case: &Case,
    summary: &Summary,
    instruments: &Instruments,
    settings: &Settings,
    json: bool,
) -> Result<(), Box<dyn Error>> {
    let cases = cases(case, summary, instruments);
    let Some(first) = cases.first() else {
        println!("{}", if json { "{}" } else { "\nThe log is too short to judge." });
        return Ok(());
    };
    let judgement = judge_states(&cases, settings)?;
    let diagnosis = judgement.diagnosis(settings)?;
    if json {
        println!(
            "{}",
            report::json(first, &diagnosis, &judgement.reasons(settings), settings.language)
        );
        return Ok(());
    }
    println!(
        "\n{}",
        report::text(first, &diagnosis, &judgement.reasons(settings), Units::Metric)
    );
    for (note, count) in summary.notes.iter() {
        println!("{count:5} x {}", note.description());
    }
    Ok(())
}

fn read(file: &Path) -> Result<(Case, Vec<Sample>, Datum), Box<dyn Error>> {
    let text = std::fs::read_to_string(file)?;
    let mut table: toml::Table = text.parse()?;
    let log = table
        .remove("log")
        .and_then(|log| log.as_str().map(String::from))
        .ok_or("log = \"<file>.csv\" is missing")?;
    let case = case_from_json(&serde_json::to_string(&table)?)?;
    let mut reader = csv::Reader::from_path(file.with_file_name(log))?;
    let columns = LogColumns::from_header(reader.headers()?.iter())?;
    let mut samples = Vec::new();
    for row in reader.records() {
        samples.push(columns.sample(row?.iter())?);
    }
    Ok((case, samples, columns.datum()))
}
