//! Turns `tables/*.toml` into the committed constants of coldloop.
//!
//! `cargo run -p tables-compile` writes every generated file; `cargo run -p tables-compile -- --check`
//! writes none and fails, naming the file, when one of them is stale.
//!
//! `-- --fit-bands` first fits the bands of the fleet to the vehicle model anew, which takes minutes (with names of refrigerants
//! behind it, only theirs), and `-- --cover-bands` measures
//! on vehicles that the fit has not seen how well they hold.
//!
//! `-- --moments CASES.jsonl.gz` takes the moments of an independent simulator's cases into `tables/atlas`.

mod air;
mod bands;
mod blend_line;
mod blends;
mod c;
mod cases;
mod charge_cases;
mod checks;
mod clouds;
mod curves;
mod dense;
mod double;
mod dual;
mod equilibrium;
mod even;
mod faults;
mod fleet;
mod fluid_facts;
mod fluid_file;
mod hardware;
mod line;
mod mixed;
mod moments;
mod names;
mod output;
mod pairs;
mod python;
mod refrigerants;
mod systems;

use std::path::Path;
use std::process::ExitCode;

fn main() -> ExitCode {
    let asked = |name: &str| std::env::args().any(|argument| argument == name);
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let outcome = if asked("--fit-bands") {
        fleet::fit(&root, &named())
    } else if asked("--cover-bands") {
        fleet::cover()
    } else if asked("--fit-clouds") {
        clouds::fit(&root)
    } else if asked("--moments") {
        following("--moments").and_then(|cases| moments::run(&root, &cases, asked("--check")))
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

/// The argument after this one.
fn following(name: &str) -> Result<String, String> {
    std::env::args()
        .skip_while(|argument| argument != name)
        .nth(1)
        .ok_or(format!("{name} needs a file behind it"))
}

/// The refrigerants named among the arguments.
fn named() -> Vec<coldloop::Refrigerant> {
    std::env::args()
        .filter_map(|argument| coldloop::Refrigerant::from_id(&argument))
        .collect()
}

fn run(root: &Path, check: bool) -> Result<(), String> {
    let mut out = output::Output::new(root, check);
    let vocabularies = names::read(root)?;
    names::compile(&vocabularies, &mut out)?;
    c::compile(root, &vocabularies, &mut out)?;
    python::compile(&vocabularies, &mut out)?;
    cases::compile(&mut out)?;
    charge_cases::compile(&mut out)?;
    hardware::compile(root, &mut out)?;
    bands::compile(root, &mut out)?;
    dense::compile(&mut out)?;
    mixed::compile(&mut out)?;
    fleet::compile(root, &mut out)?;
    faults::compile(root, &mut out)?;
    checks::compile(root, &mut out)?;
    let blends = blends::read_all(root)?;
    refrigerants::compile(root, &vocabularies, &blends, &mut out)?;
    pairs::compile(root, &vocabularies, &blends, &mut out)?;
    blends::compile(&blends, &mut out)?;
    air::compile(root, &mut out)?;
    out.finish()
}
