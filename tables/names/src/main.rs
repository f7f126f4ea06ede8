//! `cargo run -p tables-names` writes the vocabularies and the C header; with `-- --check` it writes nothing and fails when one of
//! them is stale.

use std::path::Path;
use std::process::ExitCode;
use tables_names::{Output, write};

fn main() -> ExitCode {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let check = std::env::args().any(|argument| argument == "--check");
    let mut out = Output::new(&root, check);
    match write(&root, &mut out).and_then(|_| out.finish()) {
        Ok(_) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("tables-names: {message}");
            ExitCode::FAILURE
        }
    }
}
