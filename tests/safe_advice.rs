//! Safety of the advice: a system that must not run is not run, and every step names its dangers.
#![cfg(feature = "report")]
#![allow(clippy::unwrap_used, clippy::panic)] // tests fail by panicking

use coldloop::diagnosis::{
    Action, Diagnosis, Plan, can_check, check_cautions, diagnose, judge, needs_running, repair, repair_cautions,
};
use coldloop::vehicle::System;
use coldloop::{Caution, Check, Compressor, Expansion, Fault, Refrigerant, RestFinding, StopReason, intake, report};

/// A van of the fleet garage at 1,600 m, warm afternoon, running; further lines of the system; pressures, bar gauge.
fn van(refrigerant: &str, compressor: &str, more: &str, [low, high]: [f64; 2]) -> String {
    format!(
        "[system]\nrefrigerant = \"{refrigerant}\"\nexpansion = \"txv\"\ncompressor = \"{compressor}\"\n{more}\n[conditions]\n\
         ambient = \"32 °C\"\nhumidity = \"30 %\"\naltitude = \"1600 m\"\nair_source = \"recirculated\"\nengine_speed = \"1500 rpm\"\n\
         running = \"10 min\"\n[readings]\nlow_side = \"{low} bar gauge\"\nhigh_side = \"{high} bar gauge\"\nvent = \"14 °C\"\n"
    )
}

fn r134a(pressures: [f64; 2]) -> String {
    van("R-134a", "variable-external", "", pressures)
}

/// A street sweeper at rest.
fn sweeper(psig: f64) -> String {
    format!(
        "[system]\nrefrigerant = \"R-134a\"\nexpansion = \"txv\"\ncompressor = \"fixed-clutch\"\n[conditions]\nambient = \"70 °F\"\n\
         altitude = \"1600 m\"\ncompressor_running = false\n[readings]\nlow_side = \"{psig} psig\"\nhigh_side = \"{psig} psig\"\n"
    )
}

fn answered(text: &str) -> (Diagnosis, Plan, String) {
    let visit = intake::visit_from_toml(text).unwrap();
    let judgement = judge(&visit.case, &visit.settings).unwrap();
    let page = flat(&report::visit_text(&visit, report::Units::Metric).unwrap());
    (
        judgement.diagnosis(&visit.settings).unwrap(),
        judgement.plan(&visit.settings),
        page,
    )
}

/// The page with all its details, on one line.
fn detailed(text: &str) -> String {
    let mut visit = intake::visit_from_toml(text).unwrap();
    visit.settings.details = true;
    flat(&report::visit_text(&visit, report::Units::Metric).unwrap())
}

fn flat(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// No check of an answer needs the system running.
fn assert_is_not_run((answer, plan, page): &(Diagnosis, Plan, String)) {
    let checks = answer.next_checks.iter().map(|ranked| ranked.check);
    let actions = plan.steps.iter().map(|step| step.action).chain(answer.next_step);
    let asked = actions.filter_map(|action| match action {
        Action::Check(check) => Some(check),
        Action::Repair(_) | Action::HandOver => None,
        _ => unreachable!("a new member of the vocabulary"),
    });
    for check in checks.chain(asked) {
        assert!(!needs_running(check), "{check}:\n{page}");
    }
}

/// Source of the limit: the lowest cut-out that makers print for R-134a, `tables/evidence/limits.csv`.
#[test]
fn a_high_side_at_its_limit_is_the_first_line() {
    for (high, stops, near) in [
        (23.9, false, false),
        (24.1, false, true),
        (26.9, false, true),
        (27.0, true, false),
        (30.0, true, false),
    ] {
        let found = answered(&r134a([3.0, high]));
        let (answer, _, page) = &found;
        let reason = answer.stop.map(|stop| stop.reason);
        assert_eq!(reason, stops.then_some(StopReason::HighPressure), "{high}");
        assert_eq!(answer.cautions.contains(&Caution::HighSideNearLimit), near, "{high}");
        let first = StopReason::HighPressure.description();
        assert_eq!(page.starts_with(first), stops, "{high}: {page}");
        assert!(first.starts_with("Stop: switch the A/C off"));
        if stops {
            assert_is_not_run(&found);
            assert!(answer.next_step.is_some(), "{page}");
        } else if near {
            assert_eq!(answer.cautions[0], Caution::HighSideNearLimit);
        }
    }
}

#[test]
fn the_limit_of_the_vehicle_comes_before_that_of_its_refrigerant() {
    let with = |high| {
        answered(&van(
            "R-134a",
            "variable-external",
            "high_cut_out = \"32 bar gauge\"",
            [3.0, high],
        ))
        .0
    };
    // 95 % of 32 bar are 30.4 bar.
    assert_eq!(with(30.3).stop, None);
    let stop = with(30.5).stop.unwrap().high_side.unwrap();
    assert!(stop.of_vehicle && (stop.stop.pa() - 30.4e5).abs() < 1.0 && (stop.read.pa() - 30.5e5).abs() < 1.0);
}

#[test]
fn each_refrigerant_has_its_own_limit() {
    let stop_pa = |refrigerant, compressor, pressures| {
        let stop = answered(&van(refrigerant, compressor, "", pressures)).0.stop;
        stop.and_then(|stop| stop.high_side).map(|high| high.stop.pa())
    };
    assert_eq!(stop_pa("R-1234yf", "variable-external", [3.0, 27.5]), Some(2.7e6));
    // An ordinary high side of R-744, and one beyond what its control asks for.
    assert_eq!(stop_pa("R-744", "electric", [35.0, 100.0]), None);
    assert_eq!(stop_pa("R-744", "electric", [45.0, 134.0]), Some(1.33e7));
}

#[test]
fn an_empty_circuit_is_searched_with_nitrogen_and_never_started() {
    for psig in [0.0, 5.0, 20.0, 40.0] {
        let found = answered(&sweeper(psig));
        let (answer, plan, page) = &found;
        assert_eq!(answer.rest, Some(RestFinding::NearlyEmpty));
        let search = Action::Check(Check::SearchWithNitrogen);
        assert_eq!(
            (answer.next_step, plan.steps[0].action),
            (Some(search), search),
            "{psig}"
        );
        assert_eq!(answer.next_checks[0].check, Check::SearchWithNitrogen);
        assert_eq!(answer.cautions[0], Caution::DoNotRun);
        assert!(page.starts_with(StopReason::NearlyEmpty.description()), "{page}");
        assert_is_not_run(&found);
    }
    let sweeper = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    assert!(check_cautions(Check::SearchWithNitrogen, &sweeper).contains(&Caution::TestPressure));
}

/// Where the two sides still differ and both lie far below saturation, no liquid is left on either of them. R-134a at 70 °F saturates at
/// 73.7 psig at 1,600 m (Tillner-Roth & Baehr 1994).
#[test]
fn an_empty_circuit_that_has_not_equalised_is_never_started() {
    let read = |low: f64, high: f64| {
        let file = sweeper(low).replace(
            &format!("high_side = \"{low} psig\""),
            &format!("high_side = \"{high} psig\""),
        );
        answered(&file)
    };
    for (low, high) in [(2.0, 20.0), (20.0, 2.0), (5.0, 30.0)] {
        let found = read(low, high);
        assert_eq!(found.0.rest, Some(RestFinding::NotEqualised), "{}", found.2);
        assert_eq!(found.0.stop.unwrap().reason, StopReason::NearlyEmpty);
        assert!(found.2.starts_with("Do not run the A/C"), "{}", found.2);
        assert_is_not_run(&found);
    }
    // One side may hold liquid.
    assert_eq!(read(20.0, 90.0).0.stop, None);
}

/// Heat does not flow from cold to warm: a running system whose high side condenses far below the ambient has no liquid left. At
/// 32 °C saturation of R-134a is 8.15 bar absolute (Tillner-Roth & Baehr 1994), 7.3 bar gauge at 1,600 m.
#[test]
fn a_running_system_without_liquid_is_switched_off() {
    let found = answered(&r134a([0.1, 3.0]));
    assert_eq!(found.0.stop.unwrap().reason, StopReason::NearlyEmpty);
    assert_is_not_run(&found);
    assert_eq!(answered(&r134a([1.0, 8.5])).0.stop, None);
}

#[test]
fn air_in_a_circuit_keeps_it_from_being_started() {
    let found = answered(&sweeper(110.0));
    assert_eq!(found.0.stop.unwrap().reason, StopReason::AirPresent);
    assert!(found.2.starts_with(StopReason::AirPresent.description()));
    assert_is_not_run(&found);
}

#[test]
fn at_rest_only_the_first_step_asks_to_run() {
    let (answer, plan, page) = answered(&sweeper(73.7));
    assert_eq!((answer.rest, answer.stop), (Some(RestFinding::Consistent), None));
    assert_eq!(plan.steps[0].action, Action::Check(Check::RunAndRead));
    assert_eq!(answer.expected, None);
    for running in [
        "evaporating",
        "condensing",
        "pressure ratio",
        "superheat",
        "0 min of work",
    ] {
        assert!(!page.contains(running), "{running}: {page}");
    }
    assert!(page.contains("saturation temperature of this pressure"), "{page}");
    for ranked in answer.next_checks.iter().skip(1) {
        assert!(!needs_running(ranked.check), "{}", ranked.check);
    }
    let page = detailed(&sweeper(73.7));
    assert!(
        page.contains("Only readings of the running system can prove the repair"),
        "{page}"
    );
}

#[test]
fn carbon_dioxide_has_its_own_procedures() {
    for compressor in Compressor::ALL {
        let system = System::new(Refrigerant::R744, Expansion::Txv, compressor);
        for check in [
            Check::LookAtSightGlass,
            Check::IdentifyRefrigerant,
            Check::RecoverAndWeigh,
        ] {
            assert!(!can_check(check, &system), "{check}");
        }
        let foreign = [Caution::Ventilation, Caution::NoVenting, Caution::Flammable];
        for fault in Fault::ALL {
            let cautions = repair_cautions(fault, &system);
            assert!(!foreign.iter().any(|caution| cautions.contains(caution)), "{fault}");
            let says = repair(fault).says_for(&system);
            assert!(!says.contains("ecover"), "{fault}: {says}");
            for own in [Caution::CarbonDioxide, Caution::ReleaseSlowly] {
                assert_eq!(cautions.contains(&own), repair(fault).recovery, "{fault} {own}");
            }
        }
    }
    let file = include_str!("../examples/readings/carbon-dioxide-van.toml");
    let (answer, plan, _) = answered(file);
    let page = detailed(file);
    let none = [
        Check::LookAtSightGlass,
        Check::IdentifyRefrigerant,
        Check::RecoverAndWeigh,
    ];
    assert!(answer.next_checks.iter().all(|ranked| !none.contains(&ranked.check)));
    assert!(
        plan.steps
            .iter()
            .all(|step| !none.map(Action::Check).contains(&step.action))
    );
    for says in ["per cent", "Recover", "decompos", "toxic gas"] {
        assert_eq!(page.contains(says), says == "per cent", "{says}: {page}");
    }
}

/// The cautions of a step are shown with it, and no others.
#[test]
fn cautions_belong_to_their_steps() {
    let car = |refrigerant, compressor| System::new(refrigerant, Expansion::Txv, compressor);
    let belt = car(Refrigerant::R134a, Compressor::FixedClutch);
    let flammable = car(Refrigerant::R1234yf, Compressor::VariableExternal);
    let electric = car(Refrigerant::R1234yf, Compressor::Electric);
    for check in [
        Check::ReadLowSide,
        Check::ReadHighSide,
        Check::IdentifyRefrigerant,
        Check::CompareGauges,
        Check::RunAndRead,
    ] {
        let of = |system| check_cautions(check, system);
        assert!(
            of(&flammable).contains(&Caution::Flammable) && !of(&belt).contains(&Caution::Flammable),
            "{check}"
        );
        assert!(of(&belt).contains(&Caution::ConnectStopped), "{check}");
    }
    for check in [
        Check::ReadSuctionLine,
        Check::ReadDischargeLine,
        Check::ReadLiquidLine,
        Check::DriveControl,
        Check::SprayCondenser,
    ] {
        let cables = Caution::HighVoltageCables;
        assert!(
            check_cautions(check, &electric).contains(&cables) && !check_cautions(check, &flammable).contains(&cables)
        );
    }
    for (check, caution) in [
        (Check::RaiseEngineSpeed, Caution::ParkAndChock),
        (Check::CloseHeater, Caution::HotCoolant),
        (Check::WarmAndChillBulb, Caution::HandAndIce),
    ] {
        for other in Check::ALL {
            assert_eq!(
                check_cautions(other, &belt).contains(&caution),
                other == check,
                "{other} {caution}"
            );
        }
    }
    // A stopped engine makes no exhaust, and a road test is outdoors.
    for check in Check::ALL {
        let indoors = needs_running(check) && check != Check::RoadTest;
        let exhaust = |system| check_cautions(check, system).contains(&Caution::Exhaust);
        assert_eq!(exhaust(&belt), indoors, "{check}");
        assert!(!exhaust(&electric), "{check}");
    }
    assert!(Check::DriveControl.description().contains("scan tool"));
    assert!(Caution::HandAndIce.description().contains("Never use a flame"));
}

#[test]
fn every_repair_that_opens_the_circuit_ends_with_vacuum_weight_and_oil() {
    for compressor in Compressor::ALL {
        for refrigerant in [Refrigerant::R134a, Refrigerant::R1234yf, Refrigerant::R744] {
            let system = System::new(refrigerant, Expansion::Txv, compressor);
            for fault in Fault::ALL.into_iter().filter(|fault| repair(*fault).recovery) {
                let says = repair(fault).says_for(&system);
                for part in ["vacuat", "by weight"] {
                    assert!(says.contains(part), "{fault}: {says}");
                }
                let cautions = repair_cautions(fault, &system);
                let electric = compressor == Compressor::Electric;
                assert!(cautions.contains(&Caution::TestPressure), "{fault}");
                assert_eq!(cautions.contains(&Caution::InsulatingOil), electric, "{fault}");
                assert_eq!(cautions.contains(&Caution::RightOil), !electric, "{fault}");
            }
        }
    }
}

#[test]
fn a_proven_repair_is_not_planned_again() {
    let visit = intake::visit_from_toml(include_str!("../examples/readings/repaired-van.toml")).unwrap();
    let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
    assert_eq!(answer["proof"]["repair"]["finding"], "proven");
    assert!(answer["next_step"].is_null() && answer["next_checks"].as_array().unwrap().is_empty());
    let page = report::visit_text(&visit, report::Units::Metric).unwrap();
    assert!(!page.contains("TO PROVE THE REPAIR"), "{page}");
}

#[test]
fn before_a_repair_the_page_says_what_makes_its_proof_strong() {
    let page = detailed(&r134a([0.6, 9.5]));
    for says in [
        "Also read before the repair, with the A/C running: suction line, liquid line, discharge line.",
        "with the same instruments, at 1500 rpm, recirculated air",
    ] {
        assert!(page.contains(says), "{says}: {page}");
    }
    let page = detailed(include_str!("../examples/readings/carbon-dioxide-van.toml"));
    assert!(page.contains("same A/C setting, fresh air"), "{page}");
    // Readings that need a running system are not asked for where it must not run.
    let (answer, _, _) = answered(&r134a([3.0, 28.0]));
    let page = detailed(&r134a([3.0, 28.0]));
    assert!(answer.stop.is_some() && !page.contains("Also read before"), "{page}");
}

/// After a pressure test or an evacuation nothing runs, and a leak that they show is searched with nitrogen before all else.
#[test]
fn a_circuit_without_a_charge_says_so_first() {
    for (name, leaks, judged) in [
        ("evacuation-with-water", false, false),
        ("evacuation-with-leak", true, false),
        ("pressure-test", false, false),
        ("bus-slow-leak", true, true),
    ] {
        let file = std::fs::read_to_string(format!("examples/readings/{name}.toml")).unwrap();
        let visit = intake::visit_from_toml(&file).unwrap();
        let json: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
        assert_eq!(json["cautions"][0]["caution"], "do-not-run", "{name}");
        let page = flat(&report::visit_text(&visit, report::Units::Metric).unwrap());
        assert!(page.starts_with("! Do not run"), "{page}");
        assert!(!page.contains("with the A/C running"), "{page}");
        let search = Check::SearchWithNitrogen.description().split(':').next().unwrap();
        assert_eq!(page.contains(search), leaks && !judged, "{page}");
        assert_eq!(
            page.contains("When all tests are passed, evacuate"),
            !leaks && !judged,
            "{page}"
        );
        assert!(!page.contains("second set of gauges"), "{page}");
    }
}

/// No reading of a running system is judged where the file has a system at its limit, whatever else it holds.
#[test]
fn no_example_asks_a_stopped_system_to_run() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/readings");
    let mut stopped = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        let text = std::fs::read_to_string(entry.unwrap().path()).unwrap();
        let Ok(case) = intake::case_from_toml(&text) else {
            continue;
        };
        if diagnose(&case, &coldloop::diagnosis::Settings::default())
            .unwrap()
            .stop
            .is_some()
        {
            assert_is_not_run(&answered(&text));
            stopped += 1;
        }
    }
    assert!(stopped > 0);
}
