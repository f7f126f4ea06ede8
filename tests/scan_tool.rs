//! Entries from labels and scan tools beside the readings: whether the compressor runs, the transducer of the high side, the sensor
//! of the evaporator, commands, ports, sight glass and cut-out.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)]

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Action, Case, Diagnosis, Settings, can_check, diagnose, judge};
use coldloop::units::{GaugePressure, PressureDifference, Surroundings, celsius, kelvins_difference};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    Check, Compressor, EntryError, ErrorKind, Expansion, ExpectedBasis, Observation, QualityNote, Quantity,
    Refrigerant, intake,
};

/// A file of the garage with parts of it replaced.
fn file(name: &str, changes: &[(&str, &str)]) -> String {
    let path = format!("{}/examples/readings/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(path).unwrap();
    changes.iter().fold(text, |text, (old, new)| {
        assert_eq!(text.matches(old).count(), 1, "{old}");
        text.replace(old, new)
    })
}

fn case(text: &str) -> Case {
    intake::case_from_toml(text).unwrap()
}

fn judged(text: &str) -> Diagnosis {
    diagnose(&case(text), &Settings::default()).unwrap()
}

fn refused(text: &str) -> (ErrorKind, String) {
    let refusal = intake::case_from_toml(text).unwrap_err();
    (refusal.error().kind, refusal.first.key)
}

fn has(diagnosis: &Diagnosis, note: QualityNote) -> bool {
    diagnosis.quality.contains(&note)
}

#[test]
fn an_electric_compressor_runs_while_the_engine_rests() {
    let parked = file("electric-van", &[("\"3500 rpm\"", "\"0 rpm\"")]);
    let answer = judged(&parked);
    assert!(!has(&answer, QualityNote::AtRest));
    // Its own speed is then unknown, and the bands are those of a usual one.
    let unknown = judged(&parked.replace("engine_speed = \"0 rpm\"", ""));
    let basis = |answer: &Diagnosis| answer.basis;
    assert_eq!(basis(&answer), Some(ExpectedBasis::Sources));
    assert_eq!(answer.expected, unknown.expected);
    // The compressor speed of a scan tool has the effect of the `engine_speed` that it replaces.
    let told = judged(&parked.replace("engine_speed = \"0 rpm\"", "compressor_speed = \"3500 rpm\""));
    assert_eq!(told.expected, judged(&file("electric-van", &[])).expected);
    assert_ne!(told.expected, unknown.expected);
    // It rests where its own speed is 0 or it is seen not to run.
    for rest in ["compressor_running = false", "compressor_speed = \"0 rpm\""] {
        let answer = judged(&parked.replace("engine_speed = \"0 rpm\"", rest));
        assert!(has(&answer, QualityNote::AtRest) && answer.expected.is_none(), "{rest}");
    }
    // From JSON it is the same.
    let json = r#"{ "system": { "refrigerant": "R-1234yf", "expansion": "txv", "compressor": "electric" },
        "conditions": { "ambient": "30 °C", "altitude": "1600 m", "engine_speed": "0 rpm" },
        "readings": { "low_side": "235 kPa gauge", "high_side": "1330 kPa gauge" } }"#;
    let of = |json: &str| diagnose(&intake::case_from_json(json).unwrap(), &Settings::default()).unwrap();
    assert!(!has(&of(json), QualityNote::AtRest));
    let off = json.replace("\"engine_speed\"", "\"compressor_running\": false, \"engine_speed\"");
    assert!(has(&of(&off), QualityNote::AtRest));
}

#[test]
fn a_compressor_that_is_seen_to_run_or_to_rest_goes_before_the_engine() {
    let told = |line: &str| {
        let line = format!("engine_speed = {line}");
        judged(&file("low-charge", &[("engine_speed = \"1500 rpm\"", &line)]))
    };
    let at_rest = |line: &str| has(&told(line), QualityNote::AtRest);
    assert!(at_rest("\"0 rpm\"") && !at_rest("\"1500 rpm\""));
    assert!(at_rest("\"1500 rpm\"\ncompressor_running = false"));
    assert!(!at_rest("\"0 rpm\"\ncompressor_running = true"));
}

#[test]
fn what_is_told_of_the_compressor_may_not_contradict_itself() {
    let van = |line: &str| file("electric-van", &[("engine_speed = \"3500 rpm\"", line)]);
    let speed = (ErrorKind::Inconsistent, "conditions.compressor_speed".to_string());
    for line in [
        "engine_speed = \"3500 rpm\"\ncompressor_speed = \"2000 rpm\"",
        "compressor_running = false\ncompressor_speed = \"2000 rpm\"",
        "compressor_running = true\ncompressor_speed = \"0 rpm\"",
    ] {
        assert_eq!(refused(&van(line)), speed, "{line}");
    }
    // The engine of a belt turns at a speed of its own, and so does that of a vehicle whose engine rests.
    assert!(intake::case_from_toml(&van("engine_speed = \"0 rpm\"\ncompressor_speed = \"2000 rpm\"")).is_ok());
    let belt = "engine_speed = \"1500 rpm\"\ncompressor_speed = \"1900 rpm\"";
    assert!(intake::case_from_toml(&file("low-charge", &[("engine_speed = \"1500 rpm\"", belt)])).is_ok());
    // Only an electric valve is commanded.
    let commanded = "engine_speed = \"1500 rpm\"\ncommanded_displacement = \"60 %\"";
    let commanded = file("low-charge", &[("engine_speed = \"1500 rpm\"", commanded)]);
    let key = "conditions.commanded_displacement".to_string();
    assert_eq!(refused(&commanded), (ErrorKind::Inconsistent, key));
    assert!(intake::case_from_toml(&commanded.replace("fixed-clutch", "variable-external")).is_ok());
    let over = commanded
        .replace("fixed-clutch", "variable-external")
        .replace("60 %", "130 %");
    assert_eq!(refused(&over).0, ErrorKind::OutOfRange);
    let says = intake::case_from_toml(&over).unwrap_err().to_string();
    assert!(
        says.contains("commanded displacement 130 % is outside 0 % to 100 %"),
        "{says}"
    );
}

#[test]
fn a_transducer_stands_in_for_a_gauge() {
    let gauge = case(&file("low-charge", &[]));
    let text = file("low-charge", &[("high_side = ", "high_side_transducer = ")]);
    let answer = judged(&text);
    assert!(has(&answer, QualityNote::TransducerStandsIn));
    assert!(!has(&answer, QualityNote::FewReadings));
    let (stood_in, read) = (answer.derived.high_side.unwrap(), gauge.readings.high_side.unwrap());
    assert!((stood_in.value.pa() - (1_010e3 + gauge.conditions.surroundings.pressure().pa())).abs() < 1.0);
    assert!(stood_in.standard_uncertainty > read.standard_uncertainty);
    // Its own stated limit decides how sure it is.
    let within = text.replace(
        "\"1010 kPa gauge\"",
        "{ value = \"1010 kPa gauge\", within = \"1 kPa\" }",
    );
    let by_gauge = within.replace("high_side_transducer", "high_side");
    let high_side = |text: &str| judged(text).derived.high_side.unwrap();
    assert_eq!(high_side(&within), high_side(&by_gauge));
    assert!(high_side(&within).standard_uncertainty.pa() < 0.1 * stood_in.standard_uncertainty.pa());
    // Below vacuum nothing reads.
    let below = text.replace("1010 kPa gauge", "-95 kPa gauge");
    assert_eq!(
        refused(&below),
        (ErrorKind::OutOfRange, "readings.high_side_transducer".into())
    );
}

/// Two readings with the standard uncertainties s and t have a mean of variance 1/(1/s² + 1/t²) (JCGM 100:2008, 5.1.2).
#[test]
fn a_gauge_and_a_transducer_that_agree_are_pooled() {
    let both = Readings {
        high_side: Some(Reading::within(
            GaugePressure::from_pa(1_000e3).into(),
            PressureDifference::from_pa(30e3),
        )),
        high_side_transducer: Some(Reading::within(
            GaugePressure::from_pa(1_050e3).into(),
            PressureDifference::from_pa(40e3),
        )),
        ..Readings::default()
    };
    let pooled = both.high_side_known(Surroundings::SEA_LEVEL).unwrap();
    let air_pa = 101_325.0;
    let mean = (1_000e3 / 900.0 + 1_050e3 / 1_600.0) / (1.0 / 900.0 + 1.0 / 1_600.0);
    let value_pa = pooled.value.absolute(Surroundings::SEA_LEVEL).pa() - air_pa;
    assert!((value_pa - mean).abs() < 1e-3, "{value_pa} {mean}");
    let sd = (1.0 / (1.0 / 900.0f64 + 1.0 / 1_600.0)).sqrt() * 1e3 / 3f64.sqrt();
    assert!((pooled.standard_uncertainty.pa() - sd).abs() < 1e-6);
    // The datum of a gauge that was zeroed elsewhere is not that of the transducer.
    let here = Surroundings::at_altitude(1_600.0).unwrap();
    let zeroed = Readings {
        gauge_zero: Some(Surroundings::SEA_LEVEL),
        ..both
    };
    let pooled = zeroed.high_side_known(here).unwrap();
    let shift = here.pressure().pa() - air_pa;
    let mean = (1_000e3 / 900.0 + (1_050e3 + shift) / 1_600.0) / (1.0 / 900.0 + 1.0 / 1_600.0);
    assert!((pooled.value.absolute(Surroundings::SEA_LEVEL).pa() - air_pa - mean).abs() < 1e-3);
}

#[test]
fn a_transducer_that_agrees_clears_the_gauge_and_one_that_does_not_has_both_compared() {
    let with = |transducer: &str| {
        let line = format!("high_side = \"1010 kPa gauge\"\nhigh_side_transducer = \"{transducer}\"");
        file("low-charge", &[("high_side = \"1010 kPa gauge\"", &line)])
    };
    let alone = judged(&file("low-charge", &[]));
    let agrees = judged(&with("1020 kPa gauge"));
    assert!(!has(&agrees, QualityNote::TransducerContradicts) && !has(&agrees, QualityNote::TransducerStandsIn));
    let sure = |answer: &Diagnosis| answer.derived.high_side.unwrap().standard_uncertainty;
    assert!(sure(&agrees) < sure(&alone));
    let suspects = |answer: &Diagnosis| {
        let off = [
            EntryError::HighGaugeOff,
            EntryError::BothGaugesOff,
            EntryError::SwappedHoses,
        ];
        answer
            .entry_error
            .is_some_and(|(entry_error, _)| off.contains(&entry_error))
    };
    assert!(!suspects(&agrees));
    let contradicts = judged(&with("1500 kPa gauge"));
    assert!(has(&contradicts, QualityNote::TransducerContradicts));
    assert_eq!(contradicts.derived.high_side, alone.derived.high_side);
    assert!(
        alone
            .next_checks
            .iter()
            .all(|check| check.check != Check::CompareGauges)
    );
    assert_eq!(contradicts.next_checks[0].check, Check::CompareGauges);
    let settings = Settings::default();
    let plan = judge(&case(&with("1500 kPa gauge")), &settings)
        .unwrap()
        .plan(&settings);
    let first = plan.steps[0].action;
    assert_eq!(first, Action::Check(Check::CompareGauges));
}

#[test]
fn no_check_asks_for_a_sight_glass_that_is_not_there() {
    let none = |text: &str| text.replace("[conditions]", "sight_glass = false\n\n[conditions]");
    let unseen = file("low-charge", &[("sight_glass_bubbles = true", "")]);
    let mut settings = Settings::default();
    let nearly_free = coldloop::diagnosis::Cost {
        minutes: 0.01,
        money: 0.0,
    };
    settings.prices = settings
        .prices
        .with_check(Check::LookAtSightGlass, nearly_free)
        .unwrap();
    let proposed = |text: &str| {
        let judgement = judge(&case(text), &settings).unwrap();
        let answer = judgement.diagnosis(&settings).unwrap();
        let planned = judgement.plan(&settings);
        let looks = |action: Action| action == Action::Check(Check::LookAtSightGlass);
        let listed = answer
            .next_checks
            .iter()
            .any(|check| check.check == Check::LookAtSightGlass);
        listed || planned.steps.iter().any(|step| looks(step.action))
    };
    let vague = unseen
        .replace("subcooling", "")
        .replace("liquid_line = \"41.5 °C\"", "")
        .replace("clutch_cycles = \"9 /min\"", "");
    assert!(proposed(&vague) && !proposed(&none(&vague)));
    // An answer about it contradicts the system, at either door.
    let seen = file("low-charge", &[]);
    let key = "observations.sight_glass_bubbles".to_string();
    assert_eq!(refused(&none(&seen)), (ErrorKind::Inconsistent, key));
    let mut seen = case(&seen);
    seen.system.sight_glass = Some(false);
    assert_eq!(
        diagnose(&seen, &Settings::default()).unwrap_err().kind,
        ErrorKind::Inconsistent
    );
    // R-744 has none unless it is said to have one.
    let mut cold = System::new(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
    assert!(!can_check(Check::LookAtSightGlass, &cold));
    cold.sight_glass = Some(true);
    assert!(can_check(Check::LookAtSightGlass, &cold));
}

#[test]
fn the_band_of_the_high_side_ends_at_the_cut_out() {
    let with = |limit: &str, text: &str| {
        let lines = format!("high_cut_out = \"{limit}\"\n\n[conditions]");
        text.replace("[conditions]", &lines)
    };
    let hot = file("low-charge", &[("ambient = \"29 °C\"", "ambient = \"43 °C\"")]);
    let top = |text: &str| judged(text).expected.unwrap().high_side.high_95.pa();
    let (free, low, high) = (
        top(&hot),
        top(&with("23 bar gauge", &hot)),
        top(&with("38 bar gauge", &hot)),
    );
    assert!(low < free && (low - 23e5).abs() < 1e3, "{low} {free}");
    assert!(high >= free);
    // Near it the reading is noted.
    for (shown, near) in [("2150 kPa gauge", false), ("2190 kPa gauge", true)] {
        let answer = judged(&with("23 bar gauge", &hot).replace("1010 kPa gauge", shown));
        assert_eq!(has(&answer, QualityNote::NearHighCutOut), near, "{shown}");
    }
    for limit in ["9 bar gauge", "60 bar gauge"] {
        let key = "system.high_cut_out".to_string();
        assert_eq!(refused(&with(limit, &hot)), (ErrorKind::OutOfRange, key));
    }
    assert_eq!(refused(&with("28 bar abs", &hot)).0, ErrorKind::Inconsistent);
}

#[test]
fn sensor_commands_ports_and_evaporators_are_noted() {
    let answer = judged(&file("scan-tool", &[]));
    for note in [
        QualityNote::TransducerStandsIn,
        QualityNote::PortsNoted,
        QualityNote::CompressorSpeedNoted,
        QualityNote::FanCommandNoted,
    ] {
        assert!(has(&answer, note), "{note}");
    }
    for note in [
        QualityNote::AtRest,
        QualityNote::SecondEvaporator,
        QualityNote::GaugeZeroUnknown, // no gauge was read
        QualityNote::EvaporatorFreezing,
        QualityNote::VentBelowEvaporator,
        QualityNote::NearHighCutOut,
    ] {
        assert!(!has(&answer, note), "{note}");
    }
    let cold = judged(&file("scan-tool", &[("\"5 °C\"", "\"-1 °C\"")]));
    assert!(has(&cold, QualityNote::EvaporatorFreezing) && !has(&cold, QualityNote::VentBelowEvaporator));
    let warm = judged(&file("scan-tool", &[("\"5 °C\"", "\"12 °C\"")]));
    assert!(has(&warm, QualityNote::VentBelowEvaporator));
    let two = judged(&file("scan-tool", &[("evaporators = 1", "evaporators = 2")]));
    assert!(has(&two, QualityNote::SecondEvaporator));
    assert_eq!(
        refused(&file("scan-tool", &[("evaporators = 1", "evaporators = 3")])).0,
        ErrorKind::OutOfRange
    );
    let refusal = intake::case_from_toml(&file("scan-tool", &[("\"liquid-line\"", "\"roof\"")])).unwrap_err();
    assert_eq!(
        (refusal.error().kind, refusal.first.key.as_str()),
        (ErrorKind::UnknownName, "system.high_port")
    );
}

#[test]
fn a_displacement_that_is_commanded_low_in_hot_air_is_noted_as_such() {
    let of = |part: &str, ambient: &str| {
        let line = format!("engine_speed = \"1500 rpm\"\ncommanded_displacement = \"{part}\"");
        let text = file(
            "low-charge",
            &[("engine_speed = \"1500 rpm\"", &line), ("\"29 °C\"", ambient)],
        );
        judged(
            &text
                .replace("fixed-clutch", "variable-external")
                .replace("clutch_cycles = \"9 /min\"", ""),
        )
    };
    let (low, full, mild) = (
        of("30 %", "\"29 °C\""),
        of("90 %", "\"29 °C\""),
        of("30 %", "\"18 °C\""),
    );
    assert!(has(&low, QualityNote::DisplacementLow) && !has(&low, QualityNote::DisplacementNoted));
    for answer in [full, mild] {
        assert!(!has(&answer, QualityNote::DisplacementLow) && has(&answer, QualityNote::DisplacementNoted));
    }
}

#[test]
fn figures_that_cannot_be_are_refused_at_the_inner_door_too() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableExternal);
    let day = Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL);
    let of = |conditions: Conditions, readings: Readings| {
        let error = diagnose(&Case::new(system, conditions, readings), &Settings::default()).unwrap_err();
        (error.kind, error.quantity)
    };
    let fan = Conditions {
        fan_command: Some(1.5),
        ..day
    };
    assert_eq!(
        of(fan, Readings::default()),
        (ErrorKind::OutOfRange, Quantity::FanCommand)
    );
    let displacement = Conditions {
        commanded_displacement: Some(f64::NAN),
        ..day
    };
    assert_eq!(
        of(displacement, Readings::default()),
        (ErrorKind::NotFinite, Quantity::Displacement)
    );
    let transducer = Readings {
        high_side_transducer: Some(Reading::pressure(GaugePressure::from_pa(f64::NAN), Gauge::TRANSDUCER)),
        ..Readings::default()
    };
    assert_eq!(of(day, transducer).0, ErrorKind::NotFinite);
    let sensor = Readings {
        evaporator_sensor: Some(Reading::within(celsius(500.0), kelvins_difference(1.0))),
        ..Readings::default()
    };
    assert_eq!(of(day, sensor), (ErrorKind::OutOfRange, Quantity::Temperature));
    let seen = Observation::SightGlassBubbles;
    let mut blind = Case::new(system, day, Readings::default());
    blind.observations = blind.observations.with(seen, false);
    assert!(diagnose(&blind, &Settings::default()).is_ok());
    blind.system.sight_glass = Some(false);
    assert!(diagnose(&blind, &Settings::default()).is_err());
}
