//! What the page tells, and when it leaves it out.

use coldloop::intake;
use coldloop::report::{Page, Scale, Units, Wording};
use coldloop::{Fault, RestFinding, VerdictKind};

fn read(name: &str) -> String {
    let path = format!("{}/examples/readings/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).unwrap()
}

fn page_of(text: &str) -> Page {
    Page::of_visit(&intake::visit_from_toml(text).unwrap()).unwrap()
}

fn example(name: &str) -> Page {
    page_of(&read(name))
}

/// The page on one line, in small letters.
fn told(page: &Page, details: bool) -> String {
    let wording = Wording {
        details,
        ..Wording::new(Units::Metric)
    };
    let text = page.text(wording).to_lowercase();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Without evidence the odds are the priors, which say nothing of this vehicle; otherwise what else it may be is told.
#[test]
fn priors_are_not_told_as_a_result() {
    let unknown = example("scan-tool");
    assert_eq!(unknown.result.kind, VerdictKind::NotEnoughEvidence);
    let prior = "undercharge 25 %";
    assert!(!told(&unknown, false).contains(prior) && told(&unknown, true).contains(prior));
    let blocked = example("blocked-condenser");
    assert!(told(&blocked, false).contains("no fault 6 %"));
}

/// No certainty is told that the model cannot have.
#[test]
fn odds_are_never_certain() {
    let mut page = example("blocked-condenser");
    for (probability, says) in [
        (0.992, "(over 99 %)"),
        (0.988, "(99 %)"),
        (0.012, "(1 %)"),
        (0.008, "(under 1 %)"),
    ] {
        page.result.probability = probability;
        let text = told(&page, false);
        assert!(text.contains(says), "{says}: {text}");
    }
}

/// Two faults that cannot be told apart stand beside each other as one or the other; two that are there at once do not.
#[test]
fn two_faults_are_one_or_the_other_or_both() {
    let mut page = example("valve-stuck-closed");
    assert_eq!(
        page.result.faults,
        [Fault::MoistureIcing, Fault::ExpansionValveStuckClosed]
    );
    let joined =
        |page: &Page, word: &str| told(page, true).contains(&format!(" device {word} expansion valve stuck closed"));
    assert!(joined(&page, "or") && !joined(&page, "and"));
    page.result.both = true;
    assert!(joined(&page, "and") && !joined(&page, "or"));
}

/// A caution above the first step is not repeated below, and none is told twice.
#[test]
fn a_caution_is_told_once() {
    let mut seen = 0;
    for name in ["bus-slow-leak", "gauges-in-kpa", "orifice-tube", "repaired-van"] {
        let page = example(name);
        let above = page.first().map_or(&[][..], |step| &step.cautions);
        for (at, caution) in page.cautions.iter().enumerate() {
            assert!(!above.contains(caution), "{name}: {caution:?}");
            assert!(!page.cautions[..at].contains(caution), "{name}: {caution:?}");
        }
        seen += above.len() + page.cautions.len();
    }
    assert!(seen > 20);
}

/// A repair that is proven says so itself; where a test is still open or failed, the result says which, above the cautions.
#[test]
fn what_keeps_a_repair_from_being_proven_stands_in_the_result() {
    let in_result = |text: &str| {
        let page = told(&page_of(text), false);
        let (result, _) = page.split_once("take care").or(page.split_once("do first")).unwrap();
        result.contains("charge now:")
    };
    let proven = read("repaired-van");
    let short = proven.replace("charged = \"900 g\"", "charged = \"700 g\"");
    assert_ne!(proven, short);
    assert!(!in_result(&proven) && in_result(&short));
}

/// What the pressure at rest tells is told once: by the reason to stand still where there is one, in the result otherwise, and in the
/// details with the arithmetic.
#[test]
fn the_finding_at_rest_is_told_once() {
    let at_rest = |psig: f64| {
        page_of(&format!(
            "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n\
             [conditions]\nambient = '70 °F'\naltitude = '1600 m'\nengine_speed = '0 rpm'\n\
             [readings]\nlow_side = '{psig} psig'\nhigh_side = '{psig} psig'\n"
        ))
    };
    let tells = |page: &Page, details: bool| {
        let finding = page.result.rest.unwrap().description().to_lowercase();
        told(page, details).contains(&finding)
    };
    let full = at_rest(71.0);
    assert!(full.stop.is_none() && full.result.rest.is_some());
    assert!(tells(&full, false) && tells(&full, true));
    let air = at_rest(110.0);
    assert!(air.stop.is_some() && air.result.rest == Some(RestFinding::AirPresent));
    assert!(!tells(&air, false) && tells(&air, true));
}

/// A ratio that is known better than half a tenth has two decimals; other figures keep those of their unit.
#[test]
fn a_ratio_has_the_digits_that_its_spread_needs() {
    let mut page = example("low-charge");
    let ratio = page
        .figures
        .iter()
        .position(|figure| figure.scale == Scale::Ratio)
        .unwrap();
    let kelvins = page
        .figures
        .iter()
        .position(|figure| figure.scale == Scale::Difference)
        .unwrap();
    page.figures[ratio].estimate.value = 4.321;
    page.figures[ratio].estimate.standard_uncertainty = 0.02;
    page.figures[kelvins].estimate.value = 12.345;
    page.figures[kelvins].estimate.standard_uncertainty = 0.02;
    let text = told(&page, true);
    assert!(text.contains("4.32 ± 0.04") && text.contains("12.3 ± 0.0 k"), "{text}");
    page.figures[ratio].estimate.standard_uncertainty = 0.03;
    assert!(told(&page, true).contains("4.3 ± 0.1"));
}
