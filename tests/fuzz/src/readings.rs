//! Any text as a readings file, settings, counts or confirmed cases: an answer that is whole, or a refusal that says why.

use coldloop::diagnosis::{Diagnosis, judge};
use coldloop::intake::{self, Refusal, Visit};
use coldloop::report::{self, Units};
use coldloop::units::{Mass, PressureDifference, TimeSpan, Volume, text};

/// Panics where the text gets no proper answer at one of the doors that read text.
pub fn holds(input: &[u8]) {
    let Ok(written) = core::str::from_utf8(input) else {
        return;
    };
    let by_itself = intake::visit_from_text(written);
    let (toml, json) = (intake::visit_from_toml(written), intake::visit_from_json(written));
    assert!(by_itself == toml || by_itself == json, "a text is TOML or JSON");
    for visit in [toml, json] {
        match visit {
            Ok(visit) => answered(&visit, written),
            Err(refusal) => refused(&refusal, written),
        }
    }
    let others = [
        intake::counts_from_toml(written).map(drop),
        intake::settings_from_json(written).map(drop),
        intake::confirmed_from_json(written).map(drop),
        intake::trial_from_text(written).map(drop),
        intake::system_from_text(written).map(drop),
    ];
    for refusal in others.into_iter().filter_map(Result::err) {
        refused(&refusal, written);
    }
    quantities(written);
}

fn answered(visit: &Visit, written: &str) {
    let whole = |answer: &str| {
        assert!(
            serde_json::from_str::<serde_json::Value>(answer).is_ok(),
            "not JSON: {answer}"
        );
        assert!(!answer.contains("NaN"), "{answer}");
    };
    match report::visit_json(visit) {
        Ok(answer) => whole(&answer),
        Err(refusal) => refused(&refusal, written),
    }
    for units in [Units::Metric, Units::as_written(written)] {
        match report::visit_text(visit, units) {
            Ok(answer) => assert!(!answer.is_empty() && !answer.contains("NaN"), "{answer}"),
            Err(refusal) => refused(&refusal, written),
        }
    }
    match visit.prove() {
        Ok(judged) => whole(&report::proof_json(&judged, visit.settings.language)),
        Err(refusal) => refused(&refusal, written),
    }
    if let Ok(plan) = visit.plan() {
        assert!(plan.expected_minutes.is_finite());
        whole(&report::plan_json(&plan, &visit.case.system));
    }
    if let Ok(judgement) = judge(&visit.case, &visit.settings)
        && let Ok(diagnosis) = judgement.diagnosis(&visit.settings)
    {
        shares(&diagnosis);
    }
}

/// The probabilities of all faults and of none of them sum to 1, or nothing was judged.
fn shares(diagnosis: &Diagnosis) {
    let all = diagnosis.faults.iter().map(|ranked| ranked.probability);
    let sum = all.clone().sum::<f64>() + diagnosis.none_of_these;
    let each = all.clone().all(|share| (0.0..=1.0 + 1e-9).contains(&share));
    assert!(
        each && (diagnosis.faults.is_empty() || (sum - 1.0).abs() < 1e-6),
        "{sum}"
    );
}

/// A refusal names what is wrong, and a place in the text where it names one.
fn refused(refusal: &Refusal, written: &str) {
    let told = refusal.to_string();
    assert!(!told.is_empty() && refusal.mistakes().count() <= 13, "{told}");
    for mistake in refusal.mistakes() {
        assert!(!mistake.reason.is_empty(), "{mistake:?}");
        let lines = written.split('\n').count();
        assert!(
            mistake
                .position
                .is_none_or(|at| at.line >= 1 && at.line <= lines && at.column >= 1),
            "{mistake:?}"
        );
    }
    assert!(
        serde_json::from_str::<serde_json::Value>(&report::refusal_json(refusal)).is_ok(),
        "{told}"
    );
}

/// From text to SI.
type Reader = fn(&str) -> Result<f64, coldloop::Error>;

/// A quantity that is read is finite.
fn quantities(written: &str) {
    let readers: [Reader; 5] = [
        |text| text::mass(text).map(Mass::kg),
        |text| text::volume(text).map(Volume::m3),
        |text| text::duration(text).map(TimeSpan::seconds),
        |text| text::pressure_difference(text).map(PressureDifference::pa),
        text::altitude_m,
    ];
    for read in readers {
        assert!(
            read(written).is_ok_and(f64::is_finite) || read(written).is_err(),
            "{written}"
        );
    }
}
