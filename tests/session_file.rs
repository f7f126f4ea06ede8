//! A session as a file: what it keeps without judging it, and what is refused.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // a test ends that way

use coldloop::diagnosis::{Case, Settings};
use coldloop::session::Session;
use coldloop::{ErrorKind, intake};

/// A file that a session starts from, with all that it keeps.
#[test]
fn a_file_keeps_what_is_not_judged() {
    let text = std::fs::read_to_string("examples/readings/repaired-van.toml").unwrap();
    let text = format!(
        "format = 1\nmeta = {{ order = 17, \"the van\" = ['a\\b', {{ day = 2026-05-02 }}], sure = true, share = -0.25 }}\n{text}"
    );
    let mut file = intake::session_from_toml(&text).unwrap();
    file.set_meta("note", "\"quoted\"\n\u{7f}");
    for again in [
        intake::session_from_toml(&intake::session_to_toml(&file).unwrap()).unwrap(),
        intake::session_from_json(&intake::session_to_json(&file).unwrap()).unwrap(),
    ] {
        assert_eq!(again, file);
        assert_eq!(again.meta("note"), Some("\"quoted\"\n\u{7f}"));
    }
    // With its tables of what was done it proves what the file did.
    let closing = |visit: &intake::Visit| visit.prove().unwrap().closing;
    assert_eq!(
        closing(&file.visit().unwrap()),
        closing(&intake::visit_from_toml(&text).unwrap())
    );
}

#[test]
fn files_that_cannot_be_meant_are_refused_with_their_key() {
    let start = "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n\
                 [conditions]\nambient = '24 °C'\naltitude = '1600 m'\n";
    let row = "[[undo]]\nconditions = { ambient = '24 °C', altitude = '1600 m' }\n";
    for (text, key, says) in [
        (
            format!("format = 2\n{start}"),
            "format",
            "this file is of a later format; coldloop",
        ),
        (format!("format = 0\n{start}"), "format", "is outside 1 to 1"),
        (
            format!("format = '1'\n{start}"),
            "format",
            "a whole number without quotes",
        ),
        (format!("{start}[meta]\nx = nan\n"), "meta", "leave such an entry out"),
        (
            format!("{start}[repairs]\ndone = ['rust']\n"),
            "repairs.done[1]",
            "write one of",
        ),
        (
            format!("{start}[settings]\nheld = {{ check = 'look' }}\n"),
            "settings.held.check",
            "write one of",
        ),
        (
            format!("{start}[settings]\nheld = {{}}\n"),
            "settings.held",
            "write one of check, repair and hand_over = true",
        ),
        (format!("{start}{row}"), "undo[1].step", "says what it did"),
        (format!("{start}{row}step = 'dance'\n"), "undo[1].step", "write \"log\""),
        (
            format!("{start}{row}step = 'log'\nvent = 3\n"),
            "undo[1].vent",
            "known here",
        ),
        (
            start.to_owned() + &format!("{row}step = 'log'\n").repeat(Session::UNDOABLE + 1),
            "undo",
            "is outside 0 to 16",
        ),
    ] {
        let refusal = intake::session_from_toml(&text).unwrap_err();
        assert_eq!(refusal.first.key, key, "{text}: {refusal}");
        assert!(refusal.to_string().contains(says), "{refusal}");
    }
    // What a program gave without a file has no text.
    let text = std::fs::read_to_string("examples/readings/bus-slow-leak.toml").unwrap();
    let case: Case = intake::case_from_toml(&text).unwrap();
    assert!(case.own_readings.is_some() || case.own_table.is_some());
    let file = intake::SessionFile::new(Session::of(case, Settings::default()).unwrap());
    let refusal = intake::session_to_toml(&file).unwrap_err();
    assert_eq!(refusal.error().kind, ErrorKind::NotAvailable);
    let file = intake::session_from_toml(&text).unwrap();
    let again = intake::session_from_toml(&intake::session_to_toml(&file).unwrap()).unwrap();
    assert_eq!(again, file);
}
