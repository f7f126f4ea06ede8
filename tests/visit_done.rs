//! The tables of what was done since in a readings file: each is judged by itself, and written in the words of the trade.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::diagnosis::Action;
use coldloop::{Caution, Check, EvacuationFinding, HoldFinding, LeakFinding, PullDownFinding, intake, report};
use std::fs;

/// The page with the details, on one line.
fn page_of(visit: &intake::Visit) -> String {
    let wording = report::Wording {
        details: true,
        ..report::Wording::new(report::Units::Metric)
    };
    let page = report::Page::of_visit(visit).unwrap().text(wording);
    page.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn van() -> String {
    fs::read_to_string(format!(
        "{}/examples/readings/repaired-van.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap()
}

/// The tables whose judgements answer a question.
const ANSWERS: [&str; 4] = ["pressure_test", "evacuation", "hold", "charge"];

/// A bad entry in one table leaves that table out, and no other; the page and the JSON tell it in the words of the error.
#[test]
fn a_bad_entry_silences_its_own_table_only() {
    let whole = intake::visit_from_toml(&van()).unwrap().prove().unwrap();
    let tables = [
        ("end = \"9.85 bar gauge\"", "end = \"9.85 bar\"", "pressure_test.end"),
        ("\"420 micron\"\ncoldest", "\"420\"\ncoldest", "evacuation.reached"),
        (
            "pressure = \"424 micron\"",
            "pressure = \"424\"",
            "hold.samples[2].pressure",
        ),
        ("charged = \"900 g\"", "charged = \"900\"", "charge.charged"),
        ("vent = \"13 °C\"", "vent = \"13\"", "pull_down.samples[2].vent"),
        ("vent = \"5.5 °C\"", "vent = \"5,5 °C\"", "after.readings.vent"),
    ];
    for (from, to, key) in tables {
        assert!(van().contains(from), "{from}");
        let visit = intake::visit_from_toml(&van().replacen(from, to, 1)).unwrap();
        let keys: Vec<&str> = visit.refused.iter().map(|mistake| mistake.key.as_str()).collect();
        assert_eq!(keys, [key]);
        let all = visit.prove().unwrap();
        let table = key.split('.').next().unwrap();
        let told = [
            all.pressure_test == whole.pressure_test,
            all.evacuation == whole.evacuation,
            all.hold == whole.hold,
            all.charge == whole.charge,
            // The vent is judged in the conditions of [after], which are left out with it.
            all.pull_down.is_some() == whole.pull_down.is_some(),
            // What was weighed and tested is an answer of the proof too.
            ANSWERS.contains(&table) || all.repair == whole.repair,
        ];
        assert_eq!(told.iter().filter(|same| !**same).count(), 1, "{key}");
        let page = page_of(&visit);
        assert!(page.contains(&format!("Not judged: {}", visit.refused[0])), "{page}");
        let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
        assert_eq!(answer["proof"]["refused"][0]["key"], key);
        assert_eq!(answer["proof"]["refused"][0]["message"], visit.refused[0].to_string());
    }
    // Two tables at once, and a mistake in the case refuses the file with all three.
    let two = van()
        .replacen(tables[0].0, tables[0].1, 1)
        .replacen(tables[3].0, tables[3].1, 1);
    assert_eq!(intake::visit_from_toml(&two).unwrap().refused.len(), 2);
    let three = two.replacen("ambient = \"29 °C\"", "ambient = \"29\"", 1);
    assert_eq!(intake::visit_from_toml(&three).unwrap_err().mistakes().count(), 3);
}

/// The words of the trade in the tables of a proof.
#[test]
fn a_proof_is_written_as_the_trade_writes() {
    let text = van()
        .replace(
            "held = \"60 min\"",
            "held = \"1 h 30 min\"\nallowed = \"0.5 oz/yr\"\nlabel = \"9 bar gauge\"",
        )
        .replace("reached = \"420 micron\"", "reached = \"0.5 torr abs\"")
        .replace(
            "tolerance = \"50 g\"",
            "tolerance = \"5 %\"\noil_recovered = \"20 ml\"\noil_added = \"1 fl oz\"",
        )
        .replace("recovered = \"430 g\"", "recovered = \"1 lb 4 oz\"")
        .replace(
            "charged = \"900 g\"",
            "charged = { value = \"2 lb\", within = \"1 %\" }",
        )
        .replace(
            "warmest = \"24 °C\"",
            "warmest = \"24 °C\"\nallowed = { rise = \"100 micron\", over = \"15 min\" }",
        );
    let visit = intake::visit_from_toml(&text).unwrap();
    assert_eq!(visit.refused, []);
    let test = visit.pressure_test.unwrap();
    assert_eq!(test.held.seconds(), 5_400.0);
    let ounce_kg = 0.453_592_37 / 16.0;
    assert!((test.allowed.unwrap().kg_s() * 365.25 * 86_400.0 / (0.5 * ounce_kg) - 1.0).abs() < 1e-12);
    assert_eq!(
        test.judge().unwrap().above.map(|most| most.pa().round()),
        Some(900_000.0)
    );
    assert!(
        (visit
            .evacuation
            .unwrap()
            .reached
            .value
            .absolute(coldloop::units::Surroundings::SEA_LEVEL)
            .pa()
            - 66.66)
            .abs()
            < 0.01
    );
    let hold = visit.hold().unwrap().allowed;
    assert!((hold.rise.pa() - 13.332).abs() < 1e-3 && hold.over.seconds() == 900.0);
    let charge = visit.charge.unwrap();
    assert!((charge.tolerance.unwrap().kg() - 0.0425).abs() < 1e-12);
    assert!((charge.recovered.unwrap().value.kg() - 20.0 * ounce_kg).abs() < 1e-12);
    // Oil is poured: 20 ml of 0.99 kg/L, and a US fluid ounce of 29.57 ml.
    assert!((charge.oil_recovered.unwrap().value.kg() - 0.0198).abs() < 1e-9);
    assert!((charge.oil_added.unwrap().value.kg() - 0.99 * 0.029_573_5).abs() < 1e-6);
    let within = charge.charged.unwrap().standard_uncertainty.kg();
    assert!((within - 0.01 * 0.907_184_74 / 3f64.sqrt()).abs() < 1e-9);
}

/// A dial that shows 30 inches of vacuum at 1,600 m, where there are 24.7: the page says how it is taken.
#[test]
fn a_dial_that_shows_more_vacuum_than_there_is_air_is_taken_for_all_it_can_show() {
    let text = van().replace("reached = \"420 micron\"", "reached = \"30 inHg vacuum\"");
    let visit = intake::visit_from_toml(&text).unwrap();
    let vacuum = visit.prove().unwrap().evacuation.unwrap();
    assert_eq!(vacuum.finding, EvacuationFinding::GaugeCannotTell);
    let page = page_of(&visit);
    let says = "lets a gauge show at most 24.7 inHg of vacuum: this gauge is off by 5.3 inHg or more";
    assert!(page.contains(says), "{page}");
}

/// One reading is no pull-down; and below the freezing point of water it is no success, whatever a sound system comes to.
#[test]
fn a_pull_down_takes_more_than_one_reading_and_stays_above_freezing() {
    let finding = |samples: &str| {
        let from = van().find("[pull_down]").unwrap();
        let to = van().find("[after.conditions]").unwrap();
        let text = format!("{}[pull_down]\nsamples = [{samples}]\n{}", &van()[..from], &van()[to..]);
        let all = intake::visit_from_toml(&text).unwrap().prove().unwrap();
        let fall = all.pull_down.unwrap();
        (fall.finding, fall.reached.is_some())
    };
    let one = "{ after = '12 min', vent = '6 °C' }";
    assert_eq!(finding(one), (PullDownFinding::CannotTell, false));
    assert_eq!(
        finding(&format!("{{ after = '3 min', vent = '13 °C' }}, {one}")),
        (PullDownFinding::Reached, true)
    );
    let last = |c: f64| format!("{{ after = '3 min', vent = '13 °C' }}, {{ after = '12 min', vent = '{c} °C' }}");
    assert_eq!(finding(&last(0.1)).0, PullDownFinding::Reached);
    assert_eq!(finding(&last(-0.1)).0, PullDownFinding::Freezing);
}

/// The file of this name among the examples.
fn example(name: &str) -> Box<intake::Visit> {
    let path = format!("{}/examples/readings/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    intake::visit_from_toml(&fs::read_to_string(path).unwrap()).unwrap()
}

#[test]
fn the_examples_of_the_garage_show_what_they_say() {
    let bus = example("bus-slow-leak").prove().unwrap().pressure_test.unwrap();
    assert_eq!(bus.finding, LeakFinding::Leaks);
    let months = bus.empty.map(|(low, high)| [low, high].map(|time| 12.0 * time.years()));
    assert!(months.is_some_and(|[low, high]| low > 6.0 && high < 36.0), "{months:?}");
    let wet = example("evacuation-with-water").prove().unwrap();
    assert_eq!(wet.hold.unwrap().finding, HoldFinding::Moisture);
    assert!(wet.evacuation.unwrap().zero_off.is_some());
    assert_eq!(
        example("evacuation-with-leak").prove().unwrap().hold.unwrap().finding,
        HoldFinding::Leak
    );
    let test = example("pressure-test").prove().unwrap().pressure_test.unwrap();
    assert_eq!((test.finding, test.above), (LeakFinding::NoLossSeen, None));
}

/// After an evacuation or a pressure test, until it is charged, nothing on the page asks for running the compressor.
#[test]
fn a_circuit_without_a_charge_is_not_run() {
    for name in [
        "evacuation-with-water",
        "evacuation-with-leak",
        "pressure-test",
        "bus-slow-leak",
    ] {
        let visit = example(name);
        assert!(visit.is_uncharged());
        let page = page_of(&visit);
        assert!(page.contains(Caution::DoNotRun.description()), "{page}");
        let run = Check::RunAndRead;
        assert!(!page.contains(run.description().trim_end_matches('.')), "{page}");
        assert!(!report::visit_json(&visit).unwrap().contains(run.id()), "{name}");
        let plan = visit.plan().unwrap();
        assert!(
            plan.steps.iter().all(|step| step.action != Action::Check(run)),
            "{name}"
        );
        // It does not ask for what only a charge can show either.
        let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
        let next = [&answer["next_checks"], &answer["next_step"]]
            .map(ToString::to_string)
            .concat();
        for check in [
            Check::RecoverAndWeigh,
            Check::IdentifyRefrigerant,
            Check::ReadRestPressure,
        ] {
            assert!(!next.contains(check.id()), "{name}: {next}");
        }
    }
    let charged = intake::visit_from_toml(&van()).unwrap();
    assert!(!charged.is_uncharged());
}

/// 31 bar where no label was given, or 21 on a label of 20: the page says what that can do.
#[test]
fn a_test_pressure_that_is_too_high_is_warned_of() {
    let page = |start: &str, label: &str| {
        let text = van().replace("start = \"10 bar gauge\"", &format!("start = \"{start}\"{label}"));
        page_of(&intake::visit_from_toml(&text).unwrap())
    };
    let warned = |page: String| page.contains(Caution::TestTooHigh.description());
    assert!(warned(page("31 bar gauge", "")) && !warned(page("29 bar gauge", "")));
    let label = "\nlabel = \"20 bar gauge\"";
    assert!(warned(page("21 bar gauge", label)) && !warned(page("19 bar gauge", label)));
}
