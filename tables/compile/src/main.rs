//! Turns `tables/*.toml` into the committed constants of coldloop.
//!
//! `cargo run -p tables-compile` writes every generated file; `cargo run -p tables-compile -- --check`
//! writes none and fails, naming the file, when one of them is stale.
//!
//! `-- --names` writes only the names and the texts: what a new word of `tables/names.toml` needs before anything can use it;
//! `-- --checks` only what `tables/checks` becomes.
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
mod c;
mod cases;
mod charge_cases;
mod checks;
mod curves;
mod dense;
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
mod names;
mod output;
mod pairs;
mod python;
mod refrigerants;
mod sound;
mod systems;
mod texts;
mod work;

use std::path::Path;
use std::process::ExitCode;

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
    } else if asked("--names") {
        names_only(&root, asked("--check"))
    } else if asked("--checks") {
        checks_only(&root, asked("--check"))
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

fn names_only(root: &Path, check: bool) -> Result<(), String> {
    let mut out = output::Output::new(root, check);
    vocabularies(root, &mut out)?;
    out.finish()
}

fn checks_only(root: &Path, check: bool) -> Result<(), String> {
    let mut out = output::Output::new(root, check);
    checks::compile(root, &mut out)?;
    out.finish()
}

/// The vocabularies, written for Rust, C and Python, and the texts that speak of their members.
fn vocabularies(root: &Path, out: &mut output::Output) -> Result<Vec<names::Vocabulary>, String> {
    let vocabularies = names::read(root)?;
    names::compile(&vocabularies, out)?;
    c::compile(root, &vocabularies, out)?;
    python::compile(&vocabularies, out)?;
    texts::compile(root, &vocabularies, out)?;
    Ok(vocabularies)
}

fn run(root: &Path, check: bool) -> Result<(), String> {
    let mut out = output::Output::new(root, check);
    let vocabularies = vocabularies(root, &mut out)?;
    cases::compile(&mut out)?;
    charge_cases::compile(&mut out)?;
    hardware::compile(root, &mut out)?;
    bands::compile(root, &mut out)?;
    dense::compile(&mut out)?;
    mixed::compile(&mut out)?;
    faults::compile(root, &mut out)?;
    checks::compile(root, &mut out)?;
    let blends = blends::read_all(root)?;
    refrigerants::compile(root, &vocabularies, &blends, &mut out)?;
    pairs::compile(root, &vocabularies, &blends, &mut out)?;
    blends::compile(&blends, &mut out)?;
    air::compile(root, &mut out)?;
    sound::rust::compile(root, &mut out)?;
    sound::known_table::compile(root, &mut out)?;
    atlas::compile(root, &mut out)?;
    out.finish()
}
