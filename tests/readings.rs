//! The garage's readings files: the verdict of each, and what is refused in readings.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)]

use coldloop::diagnosis::{Action, Case, Diagnosis, Settings, diagnose, judge};
use coldloop::units::{difference_in_kelvins, in_kelvins};
use coldloop::vehicle::simulate;
use coldloop::{Check, ExpectedBasis, Fault, Language, QualityNote, VerdictKind, intake, report};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::fs;

fn text_of(name: &str) -> String {
    fs::read_to_string(format!("{}/examples/readings/{name}.toml", env!("CARGO_MANIFEST_DIR"))).unwrap()
}

fn diagnosed(name: &str) -> (Case, Diagnosis) {
    let case = intake::case_from_toml(&text_of(name)).unwrap();
    let diagnosis = diagnose(&case, &Settings::default()).unwrap();
    (case, diagnosis)
}

/// The files were written by hand for the demonstration (invented data); the name says what the writer had in mind.
const NAMED: [(&str, Fault); 11] = [
    ("worn-compressor-extreme", Fault::WornCompressor),
    ("low-charge", Fault::Undercharge),
    ("overcharge", Fault::Overcharge),
    ("blocked-condenser", Fault::CondenserAirflowLoss),
    ("air-in-system", Fault::NonCondensables),
    ("restricted-liquid-line", Fault::LiquidLineRestriction),
    ("valve-stuck-open", Fault::ExpansionValveStuckOpen),
    ("valve-stuck-closed", Fault::ExpansionValveStuckClosed),
    ("clutch-not-engaged", Fault::ClutchNotEngaged),
    ("worn-compressor", Fault::WornCompressor),
    ("gauges-in-kpa", Fault::GaugeError),
];

const SOUND: [&str; 6] = [
    "healthy-mild",
    "healthy-hot-humid",
    "after-repair",
    "orifice-tube",
    "altitude-trap",
    "electric-van",
];

/// Whether no fault is named, and nothing fits or an error of the instruments is likeliest.
fn doubts_the_instruments(diagnosis: &Diagnosis) -> bool {
    match diagnosis.verdict.kind {
        VerdictKind::NothingFits => true,
        VerdictKind::CannotTell => diagnosis.faults[0].fault == Fault::GaugeError,
        VerdictKind::Healthy | VerdictKind::NamedFault | VerdictKind::NotEnoughEvidence => false,
        _ => unreachable!("a new member of the vocabulary"),
    }
}

#[test]
fn where_nothing_fits_the_instruments_come_first_and_no_part_is_changed_on_suspicion() {
    let (case, diagnosis) = diagnosed("fits-nothing");
    assert!(doubts_the_instruments(&diagnosis), "{:?}", diagnosis.verdict);
    assert_eq!(diagnosis.next_checks[0].check, Check::CompareGauges);
    let settings = Settings::default();
    let plan = judge(&case, &settings).unwrap().plan(&settings);
    assert_eq!(plan.steps[0].action, Action::Check(Check::CompareGauges));
}

/// A figure is called the same in the list of readings and among the reasons, which tell the side within its band too.
#[test]
fn the_reasons_call_a_figure_as_the_list_does() {
    let mut compared = 0;
    for (name, _) in NAMED {
        let (case, diagnosis) = diagnosed(name);
        let judgement = judge(&case, &Settings::default()).unwrap();
        let page = report::Page::of_diagnosis(&case, &diagnosis, &judgement.reasons(&Settings::default()));
        let text = page.text(report::Wording {
            details: true,
            ..report::Wording::new(report::Units::Metric)
        });
        let (list, reasons) = text.split_once("\nWHY ").unwrap();
        for figure in ["low side", "high side", "superheat", "subcooling"] {
            let reason = reasons
                .lines()
                .find_map(|line| line.strip_prefix(&format!("  {figure} ")));
            let row = list.lines().find(|line| line.starts_with(&format!("  {figure}, ")));
            if let (Some(reason), Some(row)) = (reason, row) {
                let standing = reason.split(" (").next().unwrap();
                let within = standing.ends_with("part of normal") && row.ends_with("normal");
                assert!(within || row.ends_with(standing), "{name}: {row}: {standing}");
                compared += 1;
            }
        }
    }
    assert!(compared >= 5, "{compared}");
}

#[test]
fn every_fault_of_the_garage_leads_or_is_on_the_short_list() {
    for (name, fault) in NAMED {
        let (_, diagnosis) = diagnosed(name);
        let verdict = diagnosis.verdict;
        let short = matches!(verdict.kind, VerdictKind::NamedFault | VerdictKind::CannotTell);
        assert!(short && verdict.faults.contains(&fault), "{name}: {verdict:?}");
    }
}

#[test]
fn sound_vehicles_of_the_garage_are_called_sound() {
    for name in SOUND {
        let (_, diagnosis) = diagnosed(name);
        assert_eq!(
            diagnosis.verdict.kind,
            VerdictKind::Healthy,
            "{name}: {:?}",
            diagnosis.verdict
        );
    }
}

#[test]
fn readings_that_fit_nothing_are_called_so() {
    assert!(doubts_the_instruments(&diagnosed("fits-nothing").1));
}

#[test]
fn the_zero_of_the_gauge_is_put_right() {
    let (trap, mild) = (diagnosed("altitude-trap").0, diagnosed("healthy-mild").0);
    let absolute = |case: &Case| {
        let air = case.readings.gauge_zero.unwrap_or(case.conditions.surroundings);
        case.readings.low_side.unwrap().value.absolute(air).pa()
    };
    assert!((absolute(&trap) - absolute(&mild)).abs() < 500.0);
}

#[test]
fn text_and_json_come_for_every_file() {
    for entry in fs::read_dir(format!("{}/examples/readings", env!("CARGO_MANIFEST_DIR"))).unwrap() {
        let name = entry.unwrap().file_name().into_string().unwrap();
        let Some(name) = name.strip_suffix(".toml").filter(|name| !name.starts_with("bad")) else {
            continue;
        };
        let (case, diagnosis) = diagnosed(name);
        let settings = Settings::default();
        let judgement = judge(&case, &settings).unwrap();
        let (reasons, units) = (judgement.reasons(&settings), report::Units::as_written(&text_of(name)));
        let text = report::text(&case, &diagnosis, &reasons, units);
        assert!(
            (text.contains("DO FIRST") || text.contains("TAKE CARE")) && text.contains("\n  ! "),
            "{name}:\n{text}"
        );
        let answer: serde_json::Value =
            serde_json::from_str(&report::json(&case, &diagnosis, &reasons, Language::English)).unwrap();
        for key in [
            "verdict",
            "faults",
            "expected",
            "derived",
            "next_checks",
            "cautions",
            "quality",
        ] {
            assert!(answer.get(key).is_some(), "{name}: no {key}");
        }
        let total: f64 = answer["faults"]
            .as_array()
            .unwrap()
            .iter()
            .map(|f| f["probability"].as_f64().unwrap())
            .sum();
        // Where there are bands and no likelihoods there are no odds either, and the answer says so.
        let bands_only = answer["quality"]
            .as_array()
            .unwrap()
            .iter()
            .any(|note| note["note"] == "bands-only");
        let whole = if bands_only { 0.0 } else { 1.0 };
        assert!(
            (total + answer["none_of_these"].as_f64().unwrap() - whole).abs() < 1e-9,
            "{name}: {total}"
        );
    }
}

#[test]
fn json_of_the_same_shape_is_the_same_case() {
    for name in SOUND {
        let value: serde_json::Value = toml::from_str(&text_of(name)).unwrap();
        assert_eq!(
            intake::case_from_json(&value.to_string()).unwrap(),
            diagnosed(name).0,
            "{name}"
        );
    }
}

/// What is replaced in the mild file, what replaces it, the key that the refusal has to name, and what it has to say.
const REFUSED: [(&str, &str, &str, &str); 20] = [
    ("\"37 psig\"", "\"37 psi\"", "readings.low_side", "psig or psia"),
    ("\"37 psig\"", "37", "readings.low_side", "needs its unit"),
    ("\"37 psig\"", "\"37\"", "readings.low_side", "needs its unit"),
    ("\"37 psig\"", "\"NaN psig\"", "readings.low_side", "number"),
    ("\"37 psig\"", "\"37 furlongs\"", "readings.low_side", "not a unit"),
    ("\"37 psig\"", "\"-40 psig\"", "readings.low_side", "outside"),
    ("\"37 psig\"", "true", "readings.low_side", "yes-or-no questions"),
    (
        "\"37 psig\"",
        "{ value = \"37 psig\", gauge = \"best\" }",
        "readings.low_side.gauge",
        "class-1.6",
    ),
    ("\"40 °F\"", "\"40,5 °F\"", "readings.vent", "comma"),
    ("\"40 °F\"", "\"40\"", "readings.vent", "needs its unit"),
    ("vent =", "ventt =", "readings.ventt", "known here"),
    ("\"R-134a\"", "\"R-13\"", "system.refrigerant", "R-134a"),
    ("\"txv\"", "\"tube\"", "system.expansion", "orifice-tube"),
    ("expansion = \"txv\"\n", "", "system.expansion", "missing"),
    ("altitude = \"1600 m\"\n", "", "conditions.altitude", "barometer"),
    (
        "altitude = \"1600 m\"",
        "altitude = \"1600 m\"\nbarometer = \"83 kPa abs\"",
        "conditions.barometer",
        "one of the two",
    ),
    ("\"1600 m\"", "\"16000 m\"", "conditions.altitude", "outside"),
    ("\"30 %\"", "\"130 %\"", "conditions.humidity", "outside"),
    (
        "clutch_engaged = true",
        "clutch_engaged = \"yes\"",
        "observations.clutch_engaged",
        "true or false",
    ),
    ("[system]", "[system", "", ""),
];

#[test]
fn a_refusal_names_key_value_and_what_to_write() {
    for (from, to, key, says) in REFUSED {
        let text = text_of("healthy-mild");
        assert!(text.contains(from), "{from}");
        let case = intake::case_from_toml(&text.replacen(from, to, 1));
        let message = match case {
            Err(refusal) => {
                assert_eq!(refusal.first.key, key, "{to}: {refusal}");
                refusal.to_string()
            }
            Ok(case) => diagnose(&case, &Settings::default()).unwrap_err().to_string(),
        };
        assert!(message.contains(says), "{to}: {message}");
    }
}

const OWN_TABLE: &str = "
[pressure_table]
altitude = \"1600 m\"
rows = [
  { ambient = \"60 °F\", low_side = [\"20 psig\", \"26 psig\"], high_side = [\"120 psig\", \"150 psig\"] },
  { ambient = \"90 °F\", low_side = [\"22 psig\", \"30 psig\"], high_side = [\"180 psig\", \"220 psig\"] },
]
";

#[test]
fn the_vehicles_own_table_replaces_the_general_bands() {
    let text = text_of("healthy-mild") + OWN_TABLE;
    let case = intake::case_from_toml(&text).unwrap();
    let expected = diagnose(&case, &Settings::default()).unwrap().expected.unwrap();
    let share = (74.0 - 60.0) / 30.0;
    assert!((expected.low_side.low_95.psig() - (20.0 + share * 2.0)).abs() < 0.2);
    assert!((expected.low_side.high_95.psig() - (26.0 + share * 4.0)).abs() < 0.2);
    assert!((expected.high_side.high_95.psig() - (150.0 + share * 70.0)).abs() < 0.5);
}

const VISITS: &str = r#"
[system]
refrigerant = "R-134a"
expansion = "txv"
compressor = "variable-external"
[conditions]
ambient = "34 °C"
altitude = "1600 m"
humidity = "30 %"
engine_speed = "1500 rpm"
air_source = "fresh"
[readings]
low_side = "200 kPa gauge"
high_side = "1600 kPa gauge"
[[baseline]]
conditions = { ambient = "21 °C", altitude = "1600 m", humidity = "40 %", engine_speed = "1500 rpm", air_source = "fresh" }
readings = { low_side = "195 kPa gauge", high_side = "900 kPa gauge", vent = "7.5 °C" }
[[baseline]]
conditions = { ambient = "27 °C", altitude = "1600 m", humidity = "35 %", engine_speed = "1500 rpm", air_source = "fresh" }
readings = { low_side = "198 kPa gauge", high_side = "1150 kPa gauge", liquid_line = "35 °C" }
"#;

#[test]
fn earlier_healthy_visits_sharpen_what_is_expected() {
    let case = intake::case_from_toml(VISITS).unwrap();
    assert_eq!(case.own_readings.unwrap().readings(), 6);
    let without = Case {
        own_readings: None,
        ..case
    };
    let answer = |case| diagnose(case, &Settings::default()).unwrap();
    let (own, any) = (answer(&case), answer(&without));
    assert_eq!(own.basis, Some(ExpectedBasis::OwnReadings));
    assert_eq!(any.basis, Some(ExpectedBasis::Sources));
    let width = |d: &Diagnosis| {
        let band = d.expected.as_ref().unwrap().high_side;
        band.high_95.kpa() - band.low_95.kpa()
    };
    assert!(width(&own) < 0.85 * width(&any), "{} {}", width(&own), width(&any));
    assert!(any.quality.contains(&QualityNote::GenericBand) && !own.quality.contains(&QualityNote::GenericBand));
    let json = report::json(
        &case,
        &own,
        &judge(&case, &Settings::default())
            .unwrap()
            .reasons(&Settings::default()),
        Language::English,
    );
    assert!(json.contains(r#""expected_basis":"own-readings""#));
}

#[test]
fn a_wrong_visit_is_named() {
    let wrong = |from: &str, to: &str| {
        assert!(VISITS.contains(from));
        intake::case_from_toml(&VISITS.replacen(from, to, 1))
            .unwrap_err()
            .first
            .key
    };
    assert_eq!(wrong("\"27 °C\"", "\"2 °C\""), "baseline[2]");
    assert_eq!(wrong("\"7.5 °C\"", "\"7.5\""), "baseline[1].readings.vent");
    assert_eq!(
        wrong("vent = \"7.5 °C\"", "nose = \"7.5 °C\""),
        "baseline[1].readings.nose"
    );
    assert_eq!(wrong("\"R-134a\"", "\"R-12\""), "baseline");
}

#[test]
fn a_wrong_row_of_the_own_table_is_named() {
    let wrong = |from: &str, to: &str| {
        let text = text_of("healthy-mild") + &OWN_TABLE.replacen(from, to, 1);
        intake::case_from_toml(&text).unwrap_err().first.key
    };
    assert_eq!(wrong("\"90 °F\"", "\"50 °F\""), "pressure_table.rows[2]");
    assert_eq!(
        wrong("\"22 psig\", \"30 psig\"", "\"32 psig\", \"30 psig\""),
        "pressure_table.rows[2]"
    );
    assert_eq!(wrong("\"20 psig\"", "\"20 psi\""), "pressure_table.rows[1].low_side[1]");
    assert_eq!(
        wrong("high_side = [\"180 psig\", \"220 psig\"]", "high = 3"),
        "pressure_table.rows[2].high"
    );
    assert_eq!(wrong("altitude = \"1600 m\"\n", ""), "pressure_table.altitude");
}

#[cfg(feature = "serde")]
#[test]
fn ids_are_what_serde_writes() {
    for fault in Fault::ALL {
        let text = serde_json::to_string(&fault).unwrap();
        assert_eq!(text, format!("{:?}", fault.id()));
        assert_eq!(serde_json::from_str::<Fault>(&text).unwrap(), fault);
    }
}

fn to_simulate(faults: &str) -> String {
    format!(
        r#"{{"vehicle": {{"class": "van"}},
            "system": {{"refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal"}},
            "conditions": {{"ambient": "30 °C", "altitude": "1600 m"}},
            "faults": {faults}}}"#
    )
}

#[test]
fn a_simulation_takes_the_shape_of_a_readings_file_and_tells_its_readings() {
    let trial = intake::trial_from_json(&to_simulate(r#"{"undercharge": "40 %", "worn-compressor": "0.1"}"#)).unwrap();
    let faults: Vec<(Fault, f64)> = trial.faults.iter().map(|f| (f.fault, f.severity)).collect();
    assert_eq!(faults, [(Fault::Undercharge, 0.4), (Fault::WornCompressor, 0.1)]);
    let read = simulate(&trial.vehicle, &trial.conditions, &trial.faults).unwrap();
    let answer = report::simulation_json(&read, trial.conditions.surroundings);
    let answer: serde_json::Value = serde_json::from_str(&answer).unwrap();
    let gauge_pa = answer["readings"]["low_side_pa_gauge"].as_f64().unwrap();
    let air_pa = trial.conditions.surroundings.pressure().pa();
    assert!((gauge_pa + air_pa - read.low_side.pa()).abs() < 1e-6);
    assert_eq!(
        answer["figures"]["subcooling_k"].as_f64(),
        Some(difference_in_kelvins(read.subcooling))
    );
    assert_eq!(
        answer["states"]["suction"]["temperature_k"].as_f64(),
        Some(in_kelvins(read.states.suction.temperature))
    );
}

#[test]
fn what_cannot_be_simulated_is_refused_with_its_key() {
    for (faults, key) in [
        (r#"{"undercharge": "40"}"#, "faults.undercharge"),
        (r#"{"undercharge": "140 %"}"#, "faults.undercharge"),
        (r#"{"rust": "40 %"}"#, "faults.rust"),
        (r#"{"wrong-refrigerant": "40 %"}"#, "faults.wrong-refrigerant"),
        (r#"{"wrong-refrigerant": "140 % R-22"}"#, "faults.wrong-refrigerant"),
        (r#"{"wrong-refrigerant": "R-21"}"#, "faults.wrong-refrigerant"),
        ("[]", "faults"),
    ] {
        assert_eq!(
            intake::trial_from_json(&to_simulate(faults)).unwrap_err().first.key,
            key
        );
    }
    let other = intake::trial_from_json(&to_simulate(r#"{"wrong-refrigerant": "R-1234yf"}"#)).unwrap();
    assert_eq!(
        other.faults.first().and_then(|f| f.other),
        Some(coldloop::Refrigerant::R1234yf)
    );
    let mixed = intake::trial_from_json(&to_simulate(r#"{"wrong-refrigerant": "30 % R-22"}"#)).unwrap();
    let fault = mixed.faults[0];
    assert_eq!((fault.other, fault.severity), (Some(coldloop::Refrigerant::R22), 0.3));
}

/// A bare number of JSON comes out as the nearest double, like one of TOML, whatever its digits.
#[test]
fn a_bare_number_keeps_its_last_bit() {
    let mut numbers = ChaCha8Rng::seed_from_u64(1);
    for round in 0..20_000 {
        let number: f64 = numbers.random_range(0.5..1.0);
        // The digits that name it, and seventeen to twenty-five of them, of which the last ones may tip it over.
        let digits = if round % 2 == 0 {
            format!("{number:?}")
        } else {
            format!("{number:.*}", 17 + round % 9)
        };
        let nearest: f64 = digits.parse().unwrap();
        let json = intake::settings_from_json(&format!("{{\"named\": {digits}}}"))
            .unwrap()
            .named;
        assert_eq!(json.to_bits(), nearest.to_bits(), "{digits}");
    }
    assert!(intake::settings_from_json("{\"named\": 1e999}").is_err());
}

/// 30 inHg vacuum is a vacuum at sea level and less than one at 1,600 m: the entry is named, and what it can be at most.
#[test]
fn a_gauge_below_vacuum_is_refused_by_its_key() {
    let at = |altitude: &str| {
        let text = text_of("low-charge").replace("altitude = \"1600 m\"", &format!("altitude = \"{altitude}\""));
        let start = text.find("low_side = ").unwrap();
        let end = start + text[start..].find('\n').unwrap();
        intake::case_from_toml(&format!(
            "{}low_side = \"29.9 inHg vacuum\"{}",
            &text[..start],
            &text[end..]
        ))
    };
    assert!(at("0 m").is_ok());
    let refusal = at("1600 m").unwrap_err();
    assert_eq!(refusal.first.key, "readings.low_side");
    assert!(refusal.to_string().contains("24.7 inHg vacuum"), "{refusal}");
}
