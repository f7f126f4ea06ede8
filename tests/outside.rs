//! How often the diagnosis is right outside its own model: cases of an independent simulator, of six makes that nothing was fitted
//! to or chosen by (tests/data/independent_judging.jsonl.gz; tables/atlas/README.md says how it was made).

#![allow(clippy::unwrap_used, clippy::print_stdout)] // tests fail by panicking, and these print their figures

use coldloop::diagnosis::Settings;
use coldloop::evaluate::{Priors, Score, Summary, evaluate};
use flate2::read::GzDecoder;
use std::io::Read;

fn judged(priors: Priors) -> Summary {
    let mut lines = String::new();
    let packed: &[u8] = include_bytes!("data/independent_judging.jsonl.gz");
    GzDecoder::new(packed).read_to_string(&mut lines).unwrap();
    evaluate(&lines, &Settings::default(), priors).unwrap()
}

fn told(name: &str, score: Score) -> f64 {
    let (value, (low, high)) = (score.value.unwrap(), score.interval.unwrap());
    println!(
        "{name}: {value:.3} ({low:.3} to {high:.3}, over makes), of {}",
        score.cases
    );
    value
}

/// With the mix of the file as priors, on 2026-11-30: first name right 49.3 %, sound vehicles led by a fault 16.2 % and named 0.8 %,
/// log loss 1.731, calibration error 0.026, right at odds of 0.8 and more 96 %; of the significant faults that are not named the list
/// holds the true one in 73 %. The limits leave a small margin.
#[test]
fn makes_of_another_simulator_are_judged_as_often_rightly_as_is_said() {
    let summary = judged(Priors::Told);
    assert_eq!((summary.cases, summary.refused, summary.groups), (1_996, 0, 6));
    assert!(told("first name right", summary.first_right) > 0.47);
    assert!(told("truth among the first three", summary.in_first_three) > 0.69);
    assert!(told("sound vehicles led by a fault", summary.sound_led) < 0.18);
    assert!(told("sound vehicles named as faulty", summary.sound_named) < 0.025);
    assert!(told("right at odds of 0.8 and more", summary.sure_right) > 0.92);
    assert!(told("calibration error", summary.calibration_error) < 0.04);
    assert!(told("log loss", summary.log_loss) < 1.80);
    told("significant faults without a name", summary.not_told);
    told("whose list holds the truth", summary.list_holds);
}

/// The same with the library's own priors, which are not those of the file.
#[test]
fn sure_names_are_right_by_the_usual_priors_too() {
    let summary = judged(Priors::Given);
    assert!(told("right at odds of 0.8 and more", summary.sure_right) > 0.85);
    told("first name right", summary.first_right);
    told("sound vehicles led by a fault", summary.sound_led);
    told("calibration error", summary.calibration_error);
}
