//! What is refused in readings, and how: every mistake with its place, in the unit and words of its writer.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::intake::{self, Limit, Refusal, Visit};
use coldloop::{ErrorKind, Quantity, report};
use std::thread;

const TOML: &str = "[system]
refrigerant = \"R-134a\"
expansion = \"txv\"
compressor = \"fixed-clutch\"
[conditions]
ambient = \"74 °F\"
altitude = \"1600 m\"
[readings]
low_side = \"37 psig\"
high_side = \"172 psig\"
vent = \"40 °F\"
[observations]
clutch_engaged = true
";

const JSON: &str = r#"{
    "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch" },
    "conditions": { "ambient": "74 °F", "altitude": "1600 m" },
    "readings": { "low_side": "37 psig", "high_side": "172 psig", "vent": "40 °F" },
    "observations": { "clutch_engaged": true }
}"#;

fn replaced(text: &str, from: &str, to: &str) -> Result<Box<Visit>, Refusal> {
    assert!(text.contains(from), "{from}");
    intake::visit_from_text(&text.replacen(from, to, 1))
}

fn keys(refusal: &Refusal) -> Vec<&str> {
    refusal.mistakes().map(|mistake| mistake.key.as_str()).collect()
}

#[test]
fn the_two_files_are_the_same_visit() {
    assert_eq!(
        intake::visit_from_text(TOML).unwrap(),
        intake::visit_from_text(JSON).unwrap()
    );
}

/// A second table of the same name must not replace the first one silently, or readings would be lost.
#[test]
fn a_key_that_stands_twice_is_refused_with_its_path() {
    for (from, to, key) in [
        (
            "\"observations\"",
            "\"readings\": { \"vent\": \"42 °F\" }, \"observations\"",
            "readings",
        ),
        ("\"vent\":", "\"low_side\": \"70 psig\", \"vent\":", "readings.low_side"),
        (
            "\"vent\":",
            "\"low\\u005fside\": \"70 psig\", \"vent\":",
            "readings.low_side",
        ),
        (
            "\"37 psig\"",
            "{ \"value\": \"37 psig\", \"value\": \"70 psig\" }",
            "readings.low_side.value",
        ),
        (
            "\"observations\"",
            "\"hold\": { \"samples\": [{ \"after\": \"0 min\", \"pressure\": \"9 micron\", \"after\": \"1 min\" }] }, \"observations\"",
            "hold.samples[1].after",
        ),
    ] {
        let refusal = replaced(JSON, from, to).unwrap_err();
        assert_eq!(
            (refusal.first.key.as_str(), refusal.error().kind),
            (key, ErrorKind::Syntax),
            "{refusal}"
        );
        assert!(refusal.to_string().contains("is in its table twice"), "{refusal}");
    }
    let refusal = replaced(TOML, "vent =", "low_side = \"70 psig\"\nvent =").unwrap_err();
    assert_eq!(refusal.error().kind, ErrorKind::Syntax);
    assert_eq!(
        refusal.to_string(),
        "line 11, column 1: this is not a readings file; duplicate key"
    );
    for text in [
        r#"{"named": 0.8, "named": 0.9}"#,
        r#"{"priors": {"undercharge": 1, "undercharge": 2}}"#,
    ] {
        assert!(
            intake::settings_from_json(text)
                .unwrap_err()
                .to_string()
                .contains("is in its table twice")
        );
    }
}

#[test]
fn a_byte_order_mark_is_treated_alike_in_both() {
    let plain = intake::visit_from_text(TOML).unwrap();
    for text in [TOML, JSON] {
        assert_eq!(intake::visit_from_text(&format!("\u{feff}{text}")).unwrap(), plain);
        let refusal = intake::visit_from_text(&format!("\u{feff}\u{feff}{text}")).unwrap_err();
        assert_eq!(refusal.error().kind, ErrorKind::Syntax);
    }
    assert_eq!(intake::visit_from_toml(&format!("\u{feff}{TOML}")).unwrap(), plain);
    assert_eq!(intake::visit_from_json(&format!("\u{feff}{JSON}")).unwrap(), plain);
    // The mark is no character of the first line.
    let refusal = intake::visit_from_toml("\u{feff}x = 1").unwrap_err();
    assert_eq!(refusal.first.key, "x");
}

#[test]
fn an_observation_is_yes_or_no() {
    for half in ["0.5", "1", "0", "\"true\"", "[true]"] {
        for text in [TOML, JSON] {
            let refusal = replaced(text, "true", half).unwrap_err();
            assert_eq!(refusal.first.key, "observations.clutch_engaged");
            assert_eq!(refusal.first.value, half);
        }
    }
}

#[test]
fn all_mistakes_come_at_once_in_the_order_of_the_file() {
    let text = TOML
        .replace("\"txv\"", "\"tube\"")
        .replace("\"74 °F\"", "\"900 °C\"")
        .replace("\"1600 m\"", "1600")
        .replace("\"37 psig\"", "\"37 psi\"")
        .replace("vent =", "ventt =")
        .replace("true", "0.5")
        + "[charge]\nrecovered = 430\nhose = { temperature = \"20\" }\n[settings]\nnamed = 70\npriors = { gremlins = 1, undercharge = -1 }\n";
    let refusal = intake::visit_from_toml(&text).unwrap_err();
    let wanted = [
        ("system.expansion", 3, 13),
        ("conditions.ambient", 6, 11),
        ("conditions.altitude", 7, 12),
        ("readings.low_side", 9, 12),
        ("readings.ventt", 11, 1),
        ("observations.clutch_engaged", 13, 18),
        ("charge.recovered", 15, 13),
        ("charge.hose.temperature", 16, 24),
        ("charge.hose.volume", 16, 1),
        ("settings.named", 18, 9),
        ("settings.priors.gremlins", 19, 12),
        ("settings.priors.undercharge", 19, 40),
    ];
    let told: Vec<(&str, usize, usize)> = refusal
        .mistakes()
        .map(|mistake| {
            let position = mistake.position.unwrap();
            (mistake.key.as_str(), position.line, position.column)
        })
        .collect();
    assert_eq!(told, wanted);
    assert_eq!(refusal.untold, 0);
    // The code is that of the first one, and the JSON answer has them all.
    assert_eq!(refusal.error().kind, ErrorKind::UnknownName);
    let answer: serde_json::Value = serde_json::from_str(&report::refusal_json(&refusal)).unwrap();
    let listed = answer["refused"]["mistakes"].as_array().unwrap();
    assert_eq!(listed.len(), 12);
    assert_eq!(
        (listed[3]["line"].as_u64(), listed[3]["key"].as_str()),
        (Some(9), Some("readings.low_side"))
    );
    let message = answer["refused"]["message"].as_str().unwrap();
    assert_eq!(message.lines().count(), 12);
    assert!(message.lines().all(|line| line.starts_with("line ")), "{message}");
}

#[test]
fn after_a_dozen_mistakes_the_others_are_counted() {
    let many: String = (0..1_000).map(|n| format!("x{n} = 1\n")).collect();
    let refusal = intake::visit_from_toml(&TOML.replace("[readings]\n", &format!("[readings]\n{many}"))).unwrap_err();
    assert_eq!((refusal.mistakes().count(), refusal.untold), (12, 988));
    assert_eq!(keys(&refusal)[..2], ["readings.x0", "readings.x1"]);
    assert!(refusal.to_string().ends_with("\nand 988 more"));
}

/// A mistake causes no further refusals: entries that depend on a refused one are not judged.
#[test]
fn a_mistake_causes_no_further_refusals() {
    for (from, to, key) in [
        ("\"1600 m\"", "\"16000 m\"", "conditions.altitude"),
        ("\"R-134a\"", "\"R-13\"", "system.refrigerant"),
        (
            "[readings]",
            "[readings]\ngauge_zero_altitude = 3",
            "readings.gauge_zero_altitude",
        ),
    ] {
        let text = TOML.replacen(from, to, 1).replace("\"37 psig\"", "\"24 inHg vacuum\"")
            + "[evacuation]\nreached = \"420 micron\"\n[pressure_test]\ngas = \"refrigerant\"\nstart = \"5 bar gauge\"\n\
               start_temperature = \"20 °C\"\nend = \"5 bar gauge\"\nend_temperature = \"20 °C\"\nheld = \"1 h\"\n\
               [[baseline]]\nconditions = { ambient = \"20 °C\", altitude = \"0 m\" }\nreadings = { vent = \"7 °C\" }\n";
        let refusal = intake::visit_from_toml(&text).unwrap_err();
        assert_eq!(keys(&refusal), [key], "{refusal}");
    }
    let kinds = intake::visit_from_toml("readings = 5\nsystem = 'x'\nconditions = true\nsettings = []\n").unwrap_err();
    assert_eq!(keys(&kinds), ["readings", "system", "conditions", "settings"]);
    let large = replaced(TOML, "\"37 psig\"", "99999999999999999999").unwrap_err();
    assert_eq!(
        (keys(&large), large.error().kind),
        (vec!["readings.low_side"], ErrorKind::MissingUnit)
    );
    let counts = "[cases]\nundercharge = -1\n[answers.undercharge]\noil_traces = [1, 0]\n";
    assert_eq!(
        keys(&intake::counts_from_toml(counts).unwrap_err()),
        ["cases.undercharge"]
    );
    let settings = r#"{"named": 7, "healthy": 0.9, "looks": {"undercharge": {"oil_traces": 2, "hissing": 0.5}}}"#;
    let refusal = intake::settings_from_json(settings).unwrap_err();
    assert_eq!(
        keys(&refusal)[..2],
        ["named", "looks.undercharge.oil_traces"],
        "{refusal}"
    );
}

#[test]
fn a_refusal_speaks_in_the_unit_that_was_written() {
    for (from, to, says) in [
        (
            "\"74 °F\"",
            "\"900 °C\"",
            "\"900 °C\": temperature 900 °C is outside -40 °C to 60 °C",
        ),
        (
            "\"74 °F\"",
            "\"900 °F\"",
            "\"900 °F\": temperature 900 °F is outside -40 °F to 140 °F",
        ),
        (
            "\"74 °F\"",
            "\"900 K\"",
            "\"900 K\": temperature 900 K is outside 233.15 K to 333.15 K",
        ),
        (
            "\"40 °F\"",
            "\"900F\"",
            "\"900F\": temperature 900 F is outside -112 F to 392 F",
        ),
        (
            "\"1600 m\"",
            "\"52500 ft\"",
            "altitude 52500 ft is outside -1640.42 ft to 29527.6 ft",
        ),
        (
            "\"37 psig\"",
            "\"-14 psig\"",
            "gauge pressure -14 psig is outside -12.1",
        ),
        (
            "\"37 psig\"",
            "\"28 inHg vacuum\"",
            "gauge pressure 28 inHg vacuum is outside 0 inHg vacuum to 24.6645 inHg vacuum",
        ),
        (
            "\"37 psig\"",
            "{ value = \"-1 bar gauge\", gauge = \"digital\" }",
            "gauge pressure -1 bar gauge is outside -0.83",
        ),
    ] {
        let refusal = replaced(TOML, from, to).unwrap_err();
        assert!(refusal.to_string().contains(says), "{refusal}");
        assert_eq!(refusal.mistakes().count(), 1);
    }
    // What only the diagnosis knows is said in the same unit.
    let cold = replaced(TOML, "\"74 °F\"", "\"-22 °F\"")
        .unwrap()
        .diagnose()
        .unwrap_err();
    assert!(
        cold.to_string()
            .contains("conditions.ambient = -22 °F: temperature -22 °F is outside 41 °F to 122 °F"),
        "{cold}"
    );
    let mut changed = replaced(TOML, "\"74 °F\"", "\"-22 °F\"").unwrap();
    changed.case.conditions.ambient = coldloop::units::celsius(-20.0);
    assert!(
        changed
            .diagnose()
            .unwrap_err()
            .to_string()
            .contains("temperature -20 °C is outside 5 °C to 50 °C")
    );
}

#[test]
fn at_most_eighty_characters_are_repeated() {
    for long in ["x", "é", "☃", "\\n", "𝄞"] {
        let long = long.repeat(5_000);
        for (from, to) in [
            ("\"37 psig\"", format!("\"{long}\"")),
            ("\"R-134a\"", format!("\"{long}\"")),
            ("vent", format!("\"{long}\"")),
            ("\"37 psig\"", format!("[{}]", "\"37 psig\", ".repeat(1_000))),
            ("\"37 psig\"", format!("\"37 psig{long}")),
        ] {
            let refusal = replaced(TOML, from, &to).unwrap_err();
            for mistake in refusal.mistakes() {
                assert!(
                    mistake.value.chars().count() <= 80 && mistake.key.chars().count() <= 80,
                    "{mistake}"
                );
                // The longest list of what is known here has some 500 characters.
                assert!(mistake.to_string().chars().count() < 900, "{mistake}");
            }
        }
    }
    let digits = format!("{{\"named\": {}}}", "9".repeat(100_000));
    assert!(intake::settings_from_json(&digits).unwrap_err().to_string().len() < 500);
}

#[test]
fn every_mistake_of_syntax_has_its_line_and_column() {
    let refusal = replaced(TOML, "\"74 °F\"", "74 °F").unwrap_err();
    let position = refusal.first.position.unwrap();
    assert_eq!(position.line, 6, "{refusal}");
    let text = TOML.replace("\"74 °F\"", "74 °F").replace("\"40 °F\"", "40 °F");
    let refusal = intake::visit_from_toml(&text).unwrap_err();
    let lines: Vec<usize> = refusal
        .mistakes()
        .map(|mistake| mistake.position.unwrap().line)
        .collect();
    assert!(lines.contains(&6) && lines.contains(&11), "{refusal}");
    let refusal = intake::visit_from_json(&JSON.replace("\"vent\":", "vent:")).unwrap_err();
    assert_eq!(
        refusal.first.position.map(|position| position.line),
        Some(4),
        "{refusal}"
    );
    let refusal = replaced(JSON, "\"40 °F\"", "\"\\ud800\"").unwrap_err();
    assert_eq!(
        refusal.first.position.map(|position| position.line),
        Some(4),
        "{refusal}"
    );
    // JSON of a program is on one line, and its keys give the place.
    let refusal = intake::settings_from_json(r#"{"named": 7}"#).unwrap_err();
    assert_eq!(refusal.first.position, None);
    let missing = intake::visit_from_toml("").unwrap_err();
    assert_eq!(keys(&missing), ["system", "conditions"]);
}

/// Ways to nest something as deep as one likes.
const NESTED: [fn(usize) -> String; 9] = [
    |n| format!("a = {}{}", "[".repeat(n), "]".repeat(n)),
    |n| format!("a = {}1{}", "{a = ".repeat(n), "}".repeat(n)),
    |n| format!("{}a = 1", "a.".repeat(n)),
    |n| format!("[{}a]\n", "a.".repeat(n)),
    |n| format!("a = {}1{}", "{a.b.c.d.e.f.g = [".repeat(n), "]}".repeat(n)),
    |n| format!("{{\"a\": {}{}}}", "[".repeat(n), "]".repeat(n)),
    |n| format!("{}1{}", "{\"a\": ".repeat(n), "}".repeat(n)),
    |n| format!("{}1{}", "{\"a\": [".repeat(n), "]}".repeat(n)),
    |n| format!("a = {}", "[".repeat(n)),
];

/// Runs in a thread of 64 kB of stack; a stack overflow ends the program.
fn in_64_kb<T: Send>(work: impl FnOnce() -> T + Send) -> T {
    thread::scope(|scope| {
        let builder = thread::Builder::new().stack_size(65_536);
        builder.spawn_scoped(scope, work).unwrap().join().unwrap()
    })
}

#[test]
fn a_deeply_nested_text_is_refused_in_64_kb_of_stack() {
    for nested in NESTED {
        for depth in [17, 60, 127, 1_000, 150_000] {
            let text = nested(depth);
            let refused = in_64_kb(|| intake::visit_from_text(&text).map(|_| ()).unwrap_err());
            let deep = refused.to_string();
            assert!(deep.contains("more than 16 deep"), "{depth}: {deep}");
        }
    }
}

/// As deep as is allowed, and refused for its keys: the walk down and up again.
#[test]
fn other_refusals_take_64_kb_of_stack_too() {
    let mut texts: Vec<String> = NESTED[..8].iter().map(|nested| nested(1)).collect();
    texts.extend(NESTED[..4].iter().map(|nested| nested(14)));
    texts.push(TOML.replace("\"37 psig\"", "\"37 psi\""));
    texts.push(JSON.replace("\"37 psig\"", "\"37 psi\""));
    texts.push(
        TOML.to_string()
            + "[settings]\nnamed = 7\npriors = { undercharge = -1 }\ncounts.cases = { undercharge = -1 }\n",
    );
    for text in texts {
        in_64_kb(|| intake::visit_from_text(&text).map(|_| ()).unwrap_err());
    }
}

#[test]
fn a_large_text_is_refused_unread() {
    let padded = |bytes: usize| format!("{TOML}#{}\n", "x".repeat(bytes - TOML.len() - 2));
    assert!(intake::visit_from_text(&padded(4_000_000)).is_ok());
    let refusal = intake::visit_from_text(&padded(4_000_001)).unwrap_err();
    assert_eq!(
        (refusal.error().kind, refusal.error().quantity),
        (ErrorKind::OutOfRange, Quantity::Size)
    );
    assert_eq!(
        refusal.to_string(),
        "size 4000001 bytes is outside 0 bytes to 4000000 bytes"
    );
    assert!(Limit { bytes: 5_000_000 }.visit_from_toml(&padded(4_000_001)).is_ok());
    assert!(intake::settings_from_json(&format!("{{{}}}", " ".repeat(4_000_000))).is_err());
    assert!(intake::counts_from_toml(&" ".repeat(4_000_001)).is_err());
}

/// Texts of up to four megabytes are refused quickly: no search is repeated for every entry.
#[test]
fn a_hostile_text_is_refused() {
    let entries = |entry: fn(usize) -> String| (0..200_000).map(entry).collect::<String>();
    let texts = [
        entries(|n| format!("x{n} = 1\n")),
        "{".to_string() + &entries(|n| format!("\"x{n}\": 1,")) + "\"y\": 1}",
        "{".to_string() + &entries(|_| "\"x\": 1,".into()) + "\"x\": 1}",
        "x = [".to_string() + &entries(|_| "1,".into()) + "]",
        "[".repeat(3_000_000),
        "\"".repeat(3_000_000),
        "{\"a\": \"".to_string() + &"\\\\".repeat(1_500_000),
    ];
    for text in texts {
        assert!(intake::visit_from_text(&text).is_err());
    }
}
