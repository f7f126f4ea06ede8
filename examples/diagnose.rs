//! Reads a file of readings and prints the page: what it is, what to do first, and, where the file has a repair, whether it is proven.
//!
//! ```text
//! cargo run --release --example diagnose -- [--json] [--details] [--language es] [--us | --metric] [--html PAGE.html] examples/readings/low-charge.toml
//! ```
//!
//! `--html` writes the page with its drawings to that file too. A file that ends in `.json` is read as JSON. Input that cannot be read ends with status 2 and one message on
//! standard error; no part of the page is printed then.

use coldloop::{Language, intake, report};
use std::process::ExitCode;

const USAGE: &str = "usage: diagnose [--json] [--details] [--language en|es] [--us | --metric | --bar] [--html PAGE.html] READINGS.toml";

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
    let (mut json, mut details, mut language, mut units) = (false, false, None, None);
    let (mut html, mut file) = (None, None);
    let mut arguments = arguments;
    while let Some(argument) = arguments.next() {
        match argument.as_str() {
            "--json" => json = true,
            "--details" => details = true,
            "--language" => {
                let id = arguments.next().ok_or(USAGE)?;
                language = Some(Language::from_id(&id).ok_or(format!("{id}: unknown language; {USAGE}"))?);
            }
            "--html" => html = Some(arguments.next().ok_or(USAGE)?),
            "--bar" => units = Some(report::Units::Bar),
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
    let mut visit = read(&text).map_err(refused)?;
    visit.settings.details |= details;
    visit.settings.language = language.unwrap_or(visit.settings.language);
    let units = units.unwrap_or(report::Units::as_written(&text));
    if let Some(to) = html {
        let page = report::html(&visit, units).map_err(refused)?;
        std::fs::write(&to, page).map_err(|error| format!("{to}: {error}"))?;
    }
    let answer = if json {
        report::visit_json(&visit)
    } else {
        report::visit_text(&visit, units)
    };
    answer.map_err(refused)
}
