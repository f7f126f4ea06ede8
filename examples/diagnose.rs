//! Readings in; verdict, plan, and the proof of a repair where the file tells one, out.
//!
//! ```text
//! cargo run --release --example diagnose -- [--json] [--us | --metric] examples/readings/low-charge.toml
//! ```
//!
//! A file that ends in `.json` is read as JSON. Input that cannot be read ends with status 2 and one message on
//! standard error; nothing is printed half.

use coldloop::{intake, report};
use std::process::ExitCode;

const USAGE: &str = "usage: diagnose [--json] [--us | --metric] READINGS.toml";

fn main() -> ExitCode {
    match answer(std::env::args().skip(1)) {
        Ok(text) => {
            println!("{}", text.trim_end());
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("{message}");
            ExitCode::from(2)
        }
    }
}

fn answer(arguments: impl Iterator<Item = String>) -> Result<String, String> {
    let (mut json, mut units, mut file) = (false, None, None);
    for argument in arguments {
        match argument.as_str() {
            "--json" => json = true,
            "--us" => units = Some(report::Units::Us),
            "--metric" => units = Some(report::Units::Metric),
            option if option.starts_with('-') => return Err(format!("{option}: unknown option; {USAGE}")),
            _ if file.is_some() => return Err(format!("one file at a time; {USAGE}")),
            _ => file = Some(argument),
        }
    }
    let file = file.ok_or(USAGE)?;
    let text = std::fs::read_to_string(&file).map_err(|error| format!("{file}: {error}"))?;
    let read = if file.ends_with(".json") {
        intake::visit_from_json
    } else {
        intake::visit_from_toml
    };
    let refused = |refusal: intake::Refusal| {
        let mistakes: Vec<String> = refusal.mistakes().map(|mistake| format!("{file}: {mistake}")).collect();
        match refusal.untold {
            0 => mistakes.join("\n"),
            untold => mistakes.join("\n") + &format!("\n{file}: and {untold} more"),
        }
    };
    let visit = read(&text).map_err(refused)?;
    let units = units.unwrap_or(report::Units::as_written(&text));
    let answer = if json {
        report::visit_json(&visit)
    } else {
        report::visit_text(&visit, units)
    };
    answer.map_err(refused)
}
