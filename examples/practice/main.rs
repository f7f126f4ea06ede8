//! Practice: a vehicle of the garage with a hidden fault. The learner asks for readings, looks and checks, each at its
//! price, and tries to find the fault with as little work as the plan of the library.
//!
//! ```text
//! cargo run --release --example practice -- [--seed N] [--answers FILE]
//! ```
//!
//! The garage is invented: municipal vans, buses and a street sweeper at 1,600 m. The vehicle model hides a fault in one of
//! them, as common as the default priors say; the answers to looks are drawn from `tables/checks`
//! (`examples/evaluate_repair_cost`). A seed repeats a case. A file of answers, a line each as they would be typed, plays a case
//! without a terminal; a line that is not understood then ends it with status 2.

#![allow(clippy::print_stdout)] // the program prints its dialogue

mod game;
#[allow(dead_code)] // the evaluation uses the rest of it
#[path = "../evaluate_repair_cost/visit.rs"]
mod visit;
#[allow(dead_code)] // as above
#[path = "../evaluate_repair_cost/work.rs"]
mod work;

use std::fs::File;
use std::io::{BufRead, BufReader, stdin, stdout};
use std::process::ExitCode;
use std::time::{SystemTime, UNIX_EPOCH};

const USAGE: &str = "usage: practice [--seed N] [--answers FILE]";

fn main() -> ExitCode {
    match practise(std::env::args().skip(1)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::from(2)
        }
    }
}

fn practise(mut arguments: impl Iterator<Item = String>) -> Result<(), String> {
    // Without a seed the case is a new one each time.
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
    let (mut seed, mut answers) = (u64::from(since.subsec_nanos() % 1_000_000), None);
    while let Some(option) = arguments.next() {
        let value = arguments.next().ok_or(USAGE)?;
        match option.as_str() {
            "--seed" => {
                seed = value
                    .parse()
                    .map_err(|error| format!("--seed {value}: {error}; {USAGE}"))?
            }
            "--answers" => answers = Some(value),
            _ => return Err(format!("{option}: unknown option; {USAGE}")),
        }
    }
    let input: Box<dyn BufRead> = match &answers {
        Some(file) => Box::new(BufReader::new(
            File::open(file).map_err(|error| format!("{file}: {error}"))?,
        )),
        None => Box::new(stdin().lock()),
    };
    let played = game::play(seed, input, &mut stdout().lock(), answers.is_some());
    played.map(|_| ()).map_err(|error| error.to_string())
}
