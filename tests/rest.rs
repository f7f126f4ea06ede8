//! The page and `at_rest` judge a pressure at rest alike, and the page shows the arithmetic.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::circuit::{Gauge, PressureMatch, Reading, at_rest};
use coldloop::diagnosis::{Action, Diagnosis, Resting, diagnose, judge};
use coldloop::units::{
    GaugePressure, PressureDifference, Surroundings, difference_in_kelvins, fahrenheit, kelvins_difference,
};
use coldloop::{Caution, Check, Fault, Refrigerant, RestFinding, intake, report};

/// The sweeper of an invented municipal garage, its compressor standing, both gauges read.
fn sweeper(psig: f64, fahrenheit: f64, altitude: &str) -> String {
    format!(
        "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\nnominal_charge = '850 g'\n\
         [conditions]\nambient = '{fahrenheit} °F'\naltitude = '{altitude}'\nengine_speed = '0 rpm'\n\
         [readings]\nlow_side = '{psig} psig'\nhigh_side = '{psig} psig'\n"
    )
}

fn answered(text: &str) -> (Diagnosis, String) {
    let visit = intake::visit_from_toml(text).unwrap();
    let answer = diagnose(&visit.case, &visit.settings).unwrap();
    let page = report::visit_text(&visit, report::Units::Us).unwrap();
    (answer, page.split_whitespace().collect::<Vec<_>>().join(" "))
}

fn resting(text: &str) -> Resting {
    answered(text).0.resting.unwrap()
}

/// Saturated R-134a at 70 °F has 85.8 psia, 71.1 psig at sea level: 85 psig are 14 psi more. Of 99.7 psia that is 14 %; and 85 psig are
/// saturation at 79.0 °F, 9.0 °F or 4.98 K above the ambient. Source: Tillner-Roth & Baehr 1994 through CoolProp.
#[test]
fn fourteen_psi_above_saturation_are_told_with_their_arithmetic() {
    let (answer, page) = answered(&sweeper(85.0, 70.0, "0 m"));
    assert_eq!(answer.rest, Some(RestFinding::AirPresent));
    let resting = answer.resting.unwrap();
    assert!((resting.excess.value.psi() - 13.89).abs() < 0.02);
    assert!((resting.gas_share - 13.89 / 99.7).abs() < 0.002);
    let warmer_k = difference_in_kelvins(resting.warmer);
    assert!((warmer_k - 4.98).abs() < 0.02, "{warmer_k}");
    let says =
        "14 psi above saturation: about 14 % gas, or parts 9 F° warmer than the ambient: wait an hour, read again";
    assert!(page.contains(says), "{page}");
    assert_eq!(answer.next_step, Some(Action::Check(Check::ReadRestPressure)));
}

/// From an empty circuit to one full of air: the page says what `at_rest` says of the same pressure.
#[test]
fn the_page_judges_as_at_rest_does() {
    for psig in (0..140).map(f64::from) {
        let (answer, _) = answered(&sweeper(psig, 70.0, "0 m"));
        let gauges =
            [Gauge::LOW_SIDE, Gauge::HIGH_SIDE].map(|gauge| Reading::pressure(GaugePressure::from_psig(psig), gauge));
        let own = gauges.map(|gauge| gauge.standard_uncertainty.pa());
        let both = Reading {
            value: gauges[0].value,
            standard_uncertainty: PressureDifference::from_pa(0.5 * own[0].hypot(own[1])),
        };
        let ambient = Reading::within(fahrenheit(70.0), kelvins_difference(1.5));
        let found = at_rest(Refrigerant::R134a, both, ambient, Surroundings::SEA_LEVEL).unwrap();
        let finding = match found.pressure_match {
            PressureMatch::Agrees => RestFinding::Consistent,
            PressureMatch::TooHigh => RestFinding::AirPresent,
            PressureMatch::TooLow => RestFinding::NearlyEmpty,
            _ => unreachable!("a new member of the vocabulary"),
        };
        // Within a psi of the limit the two may differ, for they propagate the uncertainty of the air's pressure differently.
        let edge = |estimate: coldloop::circuit::Estimate| {
            (estimate.value.abs() - 2.0 * estimate.standard_uncertainty).abs() < 7_000.0
        };
        assert!(
            answer.rest == Some(finding) || edge(found.excess.si()),
            "{psig}: {:?} and {finding:?}",
            answer.rest
        );
    }
}

/// Vapour of R-134a at one atmosphere and 70 °F weighs 4.3 g/L; a charge that fills 15 to 37 % of the circuit as liquid weighs 183
/// to 452 g/L, so that 97.7 to 99.1 % are missing, or all of it where that is air. Under liquid there is no such answer.
#[test]
fn an_empty_circuit_is_called_empty_and_not_half_full() {
    for altitude in ["0 m", "1600 m"] {
        let (answer, page) = answered(&sweeper(0.0, 70.0, altitude));
        assert_eq!(answer.rest, Some(RestFinding::NearlyEmpty));
        let (least, most) = answer.resting.unwrap().missing.unwrap();
        assert!((0.975..0.985).contains(&least) && most == 1.0, "{least} {most}");
        assert_eq!(answer.faults[0].fault, Fault::Undercharge);
        assert_eq!(answer.faults[0].severity, Some((least, most)));
        assert!(page.contains("98 to 100 % of the charge is missing"), "{page}");
    }
    // At 30 psig it is refrigerant for the most part, and its least and most follow from its density.
    let (least, most) = resting(&sweeper(30.0, 70.0, "0 m")).missing.unwrap();
    assert!(
        (0.92..0.94).contains(&least) && (0.96..0.98).contains(&most),
        "{least} {most}"
    );
    assert_eq!(resting(&sweeper(71.0, 70.0, "0 m")).missing, None);
}

/// Whatever else is asked for: a circuit that is empty or has air in it is not run.
#[test]
fn an_empty_or_air_filled_circuit_is_never_run() {
    for psig in (0..200).step_by(5).map(f64::from) {
        let text = sweeper(psig, 70.0, "1600 m");
        let (answer, page) = answered(&text);
        let forbidden = matches!(answer.rest, Some(RestFinding::NearlyEmpty | RestFinding::AirPresent));
        assert_eq!(answer.cautions.contains(&Caution::DoNotRun), forbidden, "{psig}");
        let told = page.contains("Do not run the A/C") || page.contains("Do not start the A/C");
        assert_eq!(told, forbidden, "{psig}");
        let visit = intake::visit_from_toml(&text).unwrap();
        let plan = judge(&visit.case, &visit.settings).unwrap().plan(&visit.settings);
        let run = Action::Check(Check::RunAndRead);
        let asks = plan.steps.iter().any(|step| step.action == run)
            || answer.next_step == Some(run)
            || answer.next_checks.iter().any(|check| check.check == Check::RunAndRead);
        assert_eq!(asks, !forbidden, "{psig}");
    }
}

#[test]
fn json_has_the_same_figures() {
    let visit = intake::visit_from_toml(&sweeper(0.0, 70.0, "0 m")).unwrap();
    let answer: serde_json::Value = serde_json::from_str(&report::visit_json(&visit).unwrap()).unwrap();
    let resting = resting(&sweeper(0.0, 70.0, "0 m"));
    let told = |figure: &serde_json::Value, value: f64| assert!((figure.as_f64().unwrap() / value - 1.0).abs() < 1e-12);
    told(&answer["resting"]["missing"]["low"], resting.missing.unwrap().0);
    told(&answer["resting"]["warmer_k"], difference_in_kelvins(resting.warmer));
    told(&answer["resting"]["excess"]["value_pa"], resting.excess.value.pa());
}
