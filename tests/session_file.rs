//! A session as a file: what it keeps without judging it, and what is refused.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::diagnosis::{Case, Settings};
use coldloop::session::Session;
use coldloop::{ErrorKind, Fault, Language, intake};

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

/// A shop's own settings go with its session, to the last bit; the usual ones are not written, so that a later version's own usual
/// ones hold for an old file.
#[test]
fn a_session_keeps_the_settings_that_are_not_the_usual_ones() {
    let text = std::fs::read_to_string("examples/readings/overcharge.toml").unwrap();
    let usual = intake::session_to_toml(&intake::session_from_toml(&text).unwrap()).unwrap();
    assert!(!usual.contains("[settings"), "{usual}");
    let visit = intake::visit_from_toml(&text).unwrap();
    let mut settings = Settings::default().with_prior(Fault::Overcharge, 0.111_111_111_111_111_1);
    settings.named = 0.823_456_789_012_345_6;
    let file = intake::SessionFile::new(Session::of(visit.case, settings).unwrap());
    let written = intake::session_to_toml(&file).unwrap();
    assert!(
        written.contains("named") && !written.contains("short_list"),
        "{written}"
    );
    assert_eq!(*intake::session_from_toml(&written).unwrap(), file);
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
    // What a program set, and no file holds, cannot be written.
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

/// The page of a session that is resumed from its file keeps its language and length.
#[test]
fn a_file_keeps_language_and_details() {
    let text = std::fs::read_to_string("examples/readings/overcharge.toml").unwrap();
    let case: Case = intake::case_from_toml(&text).unwrap();
    let mut settings = Settings::default();
    (settings.language, settings.details) = (Language::Spanish, true);
    let file = intake::SessionFile::new(Session::of(case, settings).unwrap());
    let resumed = intake::session_from_toml(&intake::session_to_toml(&file).unwrap()).unwrap();
    let settings = resumed.session.settings();
    assert_eq!((settings.language, settings.details), (Language::Spanish, true));
    let settings = file.visit().unwrap().settings;
    assert_eq!((settings.language, settings.details), (Language::Spanish, true));
}

/// Serde has the shape of a readings file, both ways and to the bit.
#[cfg(feature = "serde")]
#[test]
fn serde_has_the_shape_of_a_readings_file() {
    use coldloop::circuit::Readings;
    use coldloop::vehicle::{Conditions, System};
    fn through<T: serde::Serialize + serde::de::DeserializeOwned>(value: &T) -> T {
        serde_json::from_value(serde_json::to_value(value).unwrap()).unwrap()
    }
    let text = std::fs::read_to_string("examples/readings/overcharge.toml").unwrap();
    let visit = intake::visit_from_toml(&text).unwrap();
    let case = visit.case;
    let mut settings = Settings::default();
    (settings.named, settings.recovered) = (0.123_456_789_012_345_67, true);
    assert_eq!(through::<System>(&case.system), case.system);
    assert_eq!(through::<Conditions>(&case.conditions), case.conditions);
    assert_eq!(through::<Readings>(&case.readings), case.readings);
    assert_eq!(through::<Case>(&case), case);
    assert_eq!(through::<Settings>(&settings), settings);
    let session = Session::of(case, settings).unwrap();
    assert_eq!(through::<Session>(&session), session);
    // What a file would be refused for is refused here, too, with its key.
    let wrong = serde_json::json!({ "vent": "900 °C" });
    let error = serde_json::from_value::<Readings>(wrong).unwrap_err().to_string();
    assert!(
        error.starts_with("vent = \"900 °C\": temperature 900 °C is outside"),
        "{error}"
    );
    let answer = serde_json::to_value(visit.diagnose().unwrap()).unwrap();
    assert_eq!(
        answer["faults"][0]["fault"],
        visit.diagnose().unwrap().faults[0].fault.id()
    );
    let plan = serde_json::to_value(*visit.plan().unwrap()).unwrap();
    assert!(
        plan["steps"][0]["minutes"].is_number() && plan["steps"][0]["action"].is_object(),
        "{plan}"
    );
}
