//! Replays the inputs from which the fuzzer of the C functions starts and those that it once found: `tests/fuzz`.

use std::fs;

#[path = "../../../tests/fuzz/src/boundary.rs"]
#[allow(unreachable_pub)] // what the fuzzer has as a library
mod boundary;

/// The functions that it calls.
mod door {
    pub(super) use crate::diagnosis::*;
    pub(super) use crate::units::*;
}

#[test]
#[cfg_attr(miri, ignore = "reads files")]
fn any_text_at_the_door_keeps_its_promise() -> std::io::Result<()> {
    let mut count = 0;
    for file in fs::read_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/fuzz/corpus/boundary"))? {
        let file = file?.path();
        // Printed first, so that a panic is preceded by the name of the file that caused it.
        println!("{}", file.display());
        boundary::holds(&fs::read(file)?);
        count += 1;
    }
    assert!(count >= 10, "{count} files");
    Ok(())
}
