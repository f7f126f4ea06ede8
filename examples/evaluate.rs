//! How good are the answers in my shop? Judges confirmed cases and counts how often the answer was right.
//!
//! ```text
//! cargo run --release --example evaluate                     the twelve cases of an invented garage at 1,600 m
//! cargo run --release --example evaluate -- CASES.jsonl      a file of your own
//! ```
//!
//! A file has one confirmed case on each line, as `intake::confirmed_from_json` describes it. Two tables are printed:
//! with the usual priors, and with the causes as common as they are in the file.

use coldloop::diagnosis::{Counts, Settings};
use coldloop::evaluate::{Priors, evaluate};
use coldloop::{Fault, intake, report};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let lines = match std::env::args().nth(1) {
        Some(path) => std::fs::read_to_string(path)?,
        None => include_str!("cases/garage.jsonl").to_string(),
    };
    for (priors, says) in [
        (Priors::Given, "the usual priors"),
        (Priors::Told, "the priors of the file"),
    ] {
        let summary = evaluate(&lines, &Settings::default(), priors)?;
        println!("With {says}: {}", report::evaluation_text(&summary));
    }
    // The same file teaches how common each cause is here, for the cases of next year.
    let counts = intake::counts_from_cases(&Counts::default(), &lines)?;
    let (usual, learned) = (Settings::default(), counts.applied(&Settings::default())?);
    let low = Fault::Undercharge;
    println!(
        "Prior of low charge: {:.3}, learned {:.3}",
        usual.prior(low),
        learned.prior(low)
    );
    Ok(())
}
