//! Turns `tables/*.toml` into the committed constants of coldloop.
//!
//! `cargo run -p tables-compile` writes every generated file. Where that changes a part of coldloop that this program itself
//! uses (a new refrigerant does), it is built and run again until nothing changes. `cargo run -p tables-compile -- --check`
//! writes none and fails, naming the file, when one of them is stale.
//!
//! `-- --only STAGE` writes what one stage makes: `checks`, what `tables/checks` becomes; `transport`, the transport properties and
//! the cases of the doors. The names come from a program of their own, `tables-names`, which a new word needs first.
//!
//! `-- --fit-sound` fits the sound vehicles of the vehicle model anew, `-- --fit-atlas` its faults, both with `--vehicles N` for
//! another number of vehicles, `-- --fit-known` what more may be known of a sound vehicle; `-- --cover-sound` measures on other
//! makes how well the first of them holds.
//!
//! `-- --moments CASES.jsonl.gz` takes the moments of an independent simulator's cases into `tables/atlas`.

mod air;
mod atlas;
mod bands;
mod blend_line;
mod blends;
mod cases;
mod charge_cases;
mod checks;
mod co2_charts;
mod curves;
mod double;
mod dual;
mod equilibrium;
mod even;
mod faults;
mod features;
mod fluid_facts;
mod fluid_file;
mod hardware;
mod line;
mod linear;
mod mixed;
mod moments;
mod pairs;
mod refrigerants;
mod root;
mod sound;
mod systems;
mod transport;
mod transport_file;
mod work;

use std::path::Path;
use std::process::{Command, ExitCode};
use tables_names::Output;

/// Rooms of coldloop with generated tables that the stages below use.
const USED: [&str; 7] = [
    "src/air/",
    "src/fluid/",
    "src/mixture/",
    "src/names/",
    "src/saturation/",
    "src/transport/",
    "src/vehicle/",
];
/// The argument that tells which round this is, and how many there may be: names, equations and curves come in the first, the cases
/// of the doors in the second, and the third finds nothing new.
const ROUND: &str = "--round";
const MOST_ROUNDS: usize = 4;

fn main() -> ExitCode {
    let asked = |name: &str| std::env::args().any(|argument| argument == name);
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let outcome = if asked("--fit-sound") {
        number("--vehicles", 3_000).and_then(|count| sound::fit(&root, &named(), count))
    } else if asked("--fit-known") {
        number("--vehicles", 720).and_then(|count| sound::known::fit(&root, count))
    } else if asked("--cover-sound") {
        number("--vehicles", 1_000).and_then(|count| sound::cover(&root, count, asked("--makes-of-fit")))
    } else if asked("--fit-atlas") {
        number("--vehicles", 1_000).and_then(|count| atlas::fit(&root, count))
    } else if asked("--moments") {
        moments(&root, asked("--check"), asked("--without-makes"))
    } else if asked("--only") {
        following("--only").and_then(|stage| only(&root, &stage, asked("--check")))
    } else {
        run(&root, asked("--check"))
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("tables-compile: {message}");
            ExitCode::FAILURE
        }
    }
}

/// The moments, of all makes or without some of them.
fn moments(root: &Path, check: bool, without: bool) -> Result<(), String> {
    let makes = if without {
        let range = following("--without-makes")?;
        let ends = range
            .split_once('-')
            .and_then(|(first, last)| Some((first.parse().ok()?, last.parse().ok()?)));
        Some(ends.ok_or(format!("{range} are no makes: give the first and the last, as in 0-5"))?)
    } else {
        None
    };
    moments::run(root, &following("--moments")?, check, makes)
}

/// The number after this argument, or the usual one.
fn number(name: &str, usual: usize) -> Result<usize, String> {
    if std::env::args().all(|argument| argument != name) {
        return Ok(usual);
    }
    let digits = following(name)?;
    digits.parse().map_err(|_| format!("{digits} is no number"))
}

/// The argument after this one.
fn following(name: &str) -> Result<String, String> {
    std::env::args()
        .skip_while(|argument| argument != name)
        .nth(1)
        .ok_or(format!("{name} needs something behind it"))
}

/// The refrigerants named among the arguments.
fn named() -> Vec<coldloop::Refrigerant> {
    std::env::args()
        .filter_map(|argument| coldloop::Refrigerant::from_id(&argument))
        .collect()
}

/// What one stage makes.
fn only(root: &Path, stage: &str, check: bool) -> Result<(), String> {
    let mut out = Output::new(root, check);
    match stage {
        "checks" => checks::compile(root, &mut out)?,
        "hardware" => hardware::compile(root, &mut out)?,
        "transport" => {
            transport::compile(root, &mut out)?;
            cases::compile(&mut out)?;
        }
        _ => return Err(format!("there is no stage {stage}: checks, hardware or transport")),
    }
    out.finish().map(drop)
}

fn run(root: &Path, check: bool) -> Result<(), String> {
    let mut out = Output::new(root, check);
    let vocabularies = tables_names::write(root, &mut out)?;
    cases::compile(&mut out)?;
    charge_cases::compile(&mut out)?;
    hardware::compile(root, &mut out)?;
    bands::compile(root, &mut out)?;
    co2_charts::compile(&mut out)?;
    mixed::compile(&mut out)?;
    faults::compile(root, &mut out)?;
    checks::compile(root, &mut out)?;
    let blends = blends::read_all(root)?;
    refrigerants::compile(root, &vocabularies, &blends, &mut out)?;
    pairs::compile(root, &vocabularies, &blends, &mut out)?;
    blends::compile(&blends, &mut out)?;
    air::compile(root, &mut out)?;
    transport::compile(root, &mut out)?;
    sound::rust::compile(root, &mut out)?;
    sound::known_table::compile(root, &mut out)?;
    atlas::compile(root, &mut out)?;
    let written = out.finish()?;
    let used = |path: &String| USED.iter().any(|room| path.starts_with(room));
    if written.iter().any(used) { again(root) } else { Ok(()) }
}

/// Builds this program with the tables just written, and runs it with the number of its round.
///
/// Errors: tables that still change in the last round, and a build or a run that fails.
fn again(root: &Path) -> Result<(), String> {
    let round = number(ROUND, 1)? + 1;
    if round > MOST_ROUNDS {
        return Err(format!("the tables still change after {MOST_ROUNDS} rounds"));
    }
    println!("building with the new tables for round {round}");
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or("cargo".into()));
    cargo
        .current_dir(root)
        .args(["run", "--package", env!("CARGO_PKG_NAME")]);
    if !cfg!(debug_assertions) {
        cargo.arg("--release");
    }
    let status = cargo.args(["--", ROUND, &round.to_string()]).status();
    match status.map_err(|e| format!("cargo: {e}"))? {
        status if status.success() => Ok(()),
        status => Err(format!("round {round}: {status}")),
    }
}
