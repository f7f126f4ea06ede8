//! What the fuzzer starts from and what it once found, replayed on any compiler: `tests/fuzz`.

#![cfg(feature = "report")]
#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use std::fs;

#[path = "fuzz/src/logs.rs"]
#[allow(unreachable_pub)] // what the fuzzer has as a library
mod logs;
#[path = "fuzz/src/readings.rs"]
#[allow(unreachable_pub)] // what the fuzzer has as a library
mod readings;
#[path = "fuzz/src/sessions.rs"]
#[allow(unreachable_pub)] // what the fuzzer has as a library
mod sessions;
#[path = "fuzz/src/states.rs"]
#[allow(unreachable_pub)] // what the fuzzer has as a library
mod states;

/// Gives every file of a folder of the corpus to what has to hold of it.
fn replay(folder: &str, holds: fn(&[u8])) {
    let folder = format!("{}/tests/fuzz/corpus/{folder}", env!("CARGO_MANIFEST_DIR"));
    let mut count = 0;
    for file in fs::read_dir(&folder).unwrap() {
        let file = file.unwrap().path();
        // The name of a file that fails is printed before its panic.
        println!("{}", file.display());
        holds(&fs::read(file).unwrap());
        count += 1;
    }
    assert!(count >= 10, "{folder} holds {count} files");
}

#[test]
fn any_text_is_answered_or_refused() {
    replay("readings", readings::holds);
    // The readings of the examples are part of the corpus.
    for file in fs::read_dir(format!("{}/examples/readings", env!("CARGO_MANIFEST_DIR"))).unwrap() {
        readings::holds(&fs::read(file.unwrap().path()).unwrap());
    }
}

#[test]
fn any_bits_are_a_state_or_an_error() {
    replay("states", states::holds);
}

#[test]
fn any_samples_are_recorded_or_refused() {
    replay("logs", logs::holds);
    // So are the logs of the examples.
    for file in fs::read_dir(format!("{}/examples/logs", env!("CARGO_MANIFEST_DIR"))).unwrap() {
        logs::holds(&fs::read(file.unwrap().path()).unwrap());
    }
}

#[test]
fn any_session_is_stored_to_the_same_bits_or_refused() {
    replay("sessions", sessions::holds);
    for file in fs::read_dir(format!("{}/examples/readings", env!("CARGO_MANIFEST_DIR"))).unwrap() {
        sessions::holds(&fs::read(file.unwrap().path()).unwrap());
    }
}
