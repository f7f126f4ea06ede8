//! Names that the trade uses lead to the designations of the vocabulary.

#![cfg(feature = "report")]
#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::{ErrorKind, Refrigerant, intake};

/// Common practice, no source; the prefixes are those of ANSI/ASHRAE Standard 34, from memory.
const COMMON: [(&str, Refrigerant); 13] = [
    ("CO2", Refrigerant::R744),
    ("co₂", Refrigerant::R744),
    ("Carbon Dioxide", Refrigerant::R744),
    ("R 744", Refrigerant::R744),
    ("HFO-1234yf", Refrigerant::R1234yf),
    ("yf", Refrigerant::R1234yf),
    ("HFC 134a", Refrigerant::R134a),
    ("R_134_A", Refrigerant::R134a),
    ("freon 12", Refrigerant::R12),
    ("CFC-12", Refrigerant::R12),
    ("Refrigerant 22", Refrigerant::R22),
    ("propane", Refrigerant::R290),
    ("R-1234ze", Refrigerant::R1234zeE),
];

fn refused(name: &str) -> String {
    let text = format!(
        "[system]\nrefrigerant = '{name}'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n\
         [conditions]\nambient = '20 °C'\naltitude = '1600 m'\n"
    );
    let refusal = intake::case_from_toml(&text).unwrap_err();
    assert_eq!(refusal.error().kind, ErrorKind::UnknownName, "{name}");
    assert_eq!(refusal.first.key, "system.refrigerant");
    refusal.to_string()
}

#[test]
fn a_common_name_is_refused_and_leads_to_the_designation() {
    for (name, meant) in COMMON {
        assert_eq!(Refrigerant::from_id(name), None, "{name}");
        assert_eq!(Refrigerant::meant_by(name), Some(meant), "{name}");
        let text = refused(name);
        assert!(text.ends_with(&format!("; write {}", meant.id())), "{text}");
    }
}

#[test]
fn so_does_a_wrong_refrigerant_that_is_a_part_of_the_charge() {
    let trial = |wrong: &str| {
        let text = format!(
            "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n[conditions]\n\
             ambient = '20 °C'\naltitude = '1600 m'\n[faults]\nwrong-refrigerant = '{wrong}'\n"
        );
        intake::trial_from_text(&text).unwrap_err().to_string()
    };
    assert!(trial("propane").ends_with("; write R-290"));
    assert!(trial("30 % HCFC-22").ends_with("; write R-22"));
}

/// A hydrocarbon sold in the place of R-12 must not be taken for it.
#[test]
fn a_name_that_may_mean_something_else_leads_nowhere() {
    for name in ["", "R", "R-9999", "HC-12", "HC-12a", "freon", "colour", "1234"] {
        assert_eq!(Refrigerant::meant_by(name), None, "{name}");
        assert!(refused(name).contains("write one of: R-134a, R-1234yf"), "{name}");
    }
}

#[test]
fn every_spelling_means_its_own_refrigerant() {
    for refrigerant in Refrigerant::ALL {
        assert_eq!(Refrigerant::meant_by(refrigerant.id()), Some(refrigerant));
    }
}

#[test]
fn what_is_no_text_is_told_so() {
    let json = |vent: &str| {
        let text = format!(
            r#"{{"system": {{"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"}},
                "conditions": {{"ambient": "20 °C", "altitude": "1600 m"}}, "readings": {{"vent": {vent}}}}}"#
        );
        intake::visit_from_text(&text).unwrap_err().to_string()
    };
    assert!(json("null").contains("leave the entry out"));
    assert!(json("true").contains("yes-or-no questions"));
}
