//! What an evaluation tells of answers is what a person counts by hand, and does not depend on the order of the cases.

#![allow(clippy::unwrap_used)]

use approx::assert_relative_eq;
use coldloop::diagnosis::{Counts, Settings};
use coldloop::evaluate::{Answer, Evaluation, Mix, Priors, Summary, evaluate};
use coldloop::intake::{self, Cause};
use coldloop::vehicle::System;
use coldloop::{Compressor, ErrorKind, Expansion, Fault, Refrigerant, VerdictKind};
use proptest::prelude::*;

const GARAGE: &str = include_str!("../examples/cases/garage.jsonl");
const SOUND: Fault = Fault::NoFault;
const LOW: Fault = Fault::Undercharge;
const HIGH: Fault = Fault::Overcharge;
const WORN: Fault = Fault::WornCompressor;

fn cause(fault: Fault) -> Cause {
    Cause {
        fault: Some(fault),
        severity: None,
    }
}

/// An answer with the probabilities of no fault, low charge, overcharge, a worn compressor, and none of these.
fn answer(p: [f64; 5], kind: VerdictKind, named: &[Fault]) -> Answer {
    let faults = [Some(SOUND), Some(LOW), Some(HIGH), Some(WORN), None];
    let causes: Vec<_> = faults.into_iter().zip(p).collect();
    Answer::new(&causes, kind, named)
}

/// The answer, what was found, and whether it was significant.
type Row = (Answer, Vec<Cause>, bool);

/// Eight cases, two sound.
fn eight() -> Vec<Row> {
    use VerdictKind::{CannotTell, Healthy, NamedFault, NotEnoughEvidence, NothingFits};
    let none = Cause {
        fault: None,
        severity: None,
    };
    vec![
        // Sound: one rightly led, the other led by a fault that is named.
        (
            answer([0.6, 0.3, 0.05, 0.03, 0.02], Healthy, &[]),
            vec![cause(SOUND)],
            false,
        ),
        (
            answer([0.1, 0.85, 0.02, 0.02, 0.01], NamedFault, &[LOW]),
            vec![cause(SOUND)],
            false,
        ),
        // Faults: named rightly, named wrongly, called sound, in the list, not in the list.
        (
            answer([0.05, 0.9, 0.02, 0.02, 0.01], NamedFault, &[LOW]),
            vec![cause(LOW)],
            true,
        ),
        (
            answer([0.05, 0.05, 0.82, 0.04, 0.04], NamedFault, &[HIGH]),
            vec![cause(WORN)],
            true,
        ),
        (
            answer([0.7, 0.2, 0.05, 0.03, 0.02], Healthy, &[]),
            vec![cause(LOW)],
            true,
        ),
        (
            answer([0.1, 0.4, 0.45, 0.03, 0.02], CannotTell, &[HIGH, LOW]),
            vec![cause(LOW)],
            true,
        ),
        (
            answer([0.2, 0.3, 0.3, 0.1, 0.1], NotEnoughEvidence, &[]),
            vec![cause(WORN), cause(HIGH)],
            true,
        ),
        (answer([0.1, 0.1, 0.1, 0.1, 0.6], NothingFits, &[]), vec![none], true),
    ]
}

fn counted(rows: &[Row], groups: &[Option<&str>]) -> Summary {
    let settings = Settings::default();
    let mut evaluation = Evaluation::new(&settings).unwrap();
    for (at, (answer, truth, significant)) in rows.iter().enumerate() {
        evaluation.count(answer, truth, *significant, groups[at % groups.len()]);
    }
    evaluation.summary()
}

#[test]
fn the_figures_are_those_counted_by_hand() {
    let summary = counted(&eight(), &[None]);
    let of = |name: &str| {
        let (_, score) = summary.scores().into_iter().find(|(of, _)| *of == name).unwrap();
        (score.value.unwrap(), score.cases)
    };
    assert_eq!(summary.cases, 8);
    // Leaders: sound right, low wrong, low right, high wrong, sound wrong, high wrong, low wrong (0.3 against 0.3: the
    // order of the vocabulary), none of these right.
    assert_eq!(of("first_right"), (3.0 / 8.0, 8));
    // In the fourth case the truth is third: 0.82, 0.05 (no fault), 0.05 (low charge), and only then 0.04.
    assert_eq!(of("in_first_three"), (7.0 / 8.0, 8));
    assert_eq!(of("sound_led"), (0.5, 2));
    assert_eq!(of("sound_named"), (0.5, 2));
    assert_eq!(of("named_right"), (1.0 / 6.0, 6));
    assert_eq!(of("named_wrong"), (1.0 / 6.0, 6));
    assert_eq!(of("missed"), (1.0 / 6.0, 6));
    assert_eq!(of("not_told"), (3.0 / 6.0, 6));
    // The list with low charge, and "nothing fits" where the cause was none of the list.
    assert_eq!(of("list_holds"), (2.0 / 3.0, 3));
    // 0.85 wrong, 0.9 right, 0.82 wrong.
    assert_eq!(of("sure_right"), (1.0 / 3.0, 3));
    let given: [f64; 8] = [0.6, 0.1, 0.9, 0.04, 0.2, 0.4, 0.4, 0.6];
    let loss = -given.iter().map(|p| p.ln()).sum::<f64>() / 8.0;
    assert_relative_eq!(of("log_loss").0, loss, max_relative = 1e-14);
    // By bins: 0.3 to 0.4 said 0.3, none right; 0.4 to 0.5 said 0.45, none right; 0.6 to 0.7 said 0.6 and 0.6, both right;
    // 0.7 to 0.8 said 0.7, none right; 0.8 to 0.9 said 0.85 and 0.82, none right; 0.9 to 1 said 0.9, right.
    let error = (0.3 + 0.45 + 0.8 + 0.7 + 1.67 + 0.1) / 8.0;
    assert_relative_eq!(of("calibration_error").0, error, max_relative = 1e-13);
    let cases = summary.reliability.map(|bin| bin.cases);
    assert_eq!(cases, [0, 0, 0, 1, 1, 0, 2, 1, 2, 1]);
    assert_eq!(summary.reliability[6].right, Some(1.0));
    assert_relative_eq!(summary.reliability[8].probability.unwrap(), 0.835, max_relative = 1e-14);
    assert_eq!(summary.reliability[0].right, None);
}

#[test]
fn an_insignificant_fault_counts_among_all_cases_only() {
    let mut rows = eight();
    for row in &mut rows {
        row.2 = false;
    }
    let summary = counted(&rows, &[None]);
    assert_eq!((summary.missed.value, summary.missed.cases), (None, 0));
    assert_eq!(summary.first_right.value, Some(3.0 / 8.0));
}

/// One impossible truth counts as 1e-6.
#[test]
fn the_log_loss_has_a_longest_distance() {
    let row = (
        answer([1.0, 0.0, 0.0, 0.0, 0.0], VerdictKind::Healthy, &[]),
        vec![cause(LOW)],
        true,
    );
    let summary = counted(&[row], &[None]);
    assert_relative_eq!(summary.log_loss.value.unwrap(), 1e6_f64.ln(), max_relative = 1e-14);
}

/// Cases of one make are alike: of two groups, one all right and one all wrong, nothing is known of a third.
#[test]
fn the_interval_is_over_groups_where_there_are_any() {
    let right = eight()[2].clone();
    let wrong = eight()[3].clone();
    let rows: Vec<Row> = (0..100)
        .map(|at| if at % 2 == 0 { right.clone() } else { wrong.clone() })
        .collect();
    let by_make = counted(&rows, &[Some("first"), Some("second")]);
    assert_eq!(by_make.groups, 2);
    assert_eq!(by_make.first_right.value, Some(0.5));
    assert_eq!(by_make.first_right.interval, Some((0.0, 1.0)));
    // In ten groups of five right and five wrong each, every resample has half of them right.
    let names: Vec<String> = (0..10).map(|at| at.to_string()).collect();
    let ten: Vec<Option<&str>> = (0..20).map(|at| Some(names[at / 2].as_str())).collect();
    assert_eq!(counted(&rows, &ten).first_right.interval, Some((0.5, 0.5)));
    assert_eq!(counted(&rows, &[Some("one")]).first_right.interval, None);
}

fn alike(one: &Summary, other: &Summary) {
    assert_eq!(
        (one.cases, one.refused, one.groups),
        (other.cases, other.refused, other.groups)
    );
    assert_eq!(one.refusals, other.refusals);
    for ((name, a), (_, b)) in one.scores().into_iter().zip(other.scores()) {
        assert_eq!(a.cases, b.cases, "{name}");
        let figures = |s: coldloop::evaluate::Score| {
            let (low, high) = s.interval.unwrap_or((-1.0, -1.0));
            [s.value.unwrap_or(-1.0), low, high]
        };
        for (a, b) in figures(a).into_iter().zip(figures(b)) {
            // Sums in another order differ in their last digits.
            assert!((a - b).abs() < 1e-12, "{name}: {a} {b}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn neither_order_nor_division_matters(
        p in prop::collection::vec((prop::array::uniform5(0.01..1.0), 0_usize..4, 0_usize..4), 2..40),
        turn in 0_usize..40,
        cut in 0_usize..40,
    ) {
        let faults = [SOUND, LOW, HIGH, WORN];
        let groups = ["a", "b", "c"];
        let rows: Vec<(Answer, Vec<Cause>, Option<&str>)> = p.iter().map(|(weights, found, group)| {
            let sum: f64 = weights.iter().sum();
            let answer = answer(weights.map(|w| w / sum), VerdictKind::NamedFault, &[LOW]);
            (answer, vec![cause(faults[*found])], groups.get(*group).copied())
        }).collect();
        let settings = Settings::default();
        let judged = |rows: &[(Answer, Vec<Cause>, Option<&str>)]| {
            let mut evaluation = Evaluation::new(&settings).unwrap();
            for (answer, truth, group) in rows {
                evaluation.count(answer, truth, true, *group);
            }
            evaluation
        };
        let whole = judged(&rows).summary();
        let mut turned = rows.clone();
        turned.reverse();
        turned.rotate_left(turn % rows.len());
        alike(&whole, &judged(&turned).summary());
        let (first, second) = rows.split_at(cut % rows.len());
        alike(&whole, &judged(second).merged(judged(first)).summary());
    }
}

#[test]
fn a_file_is_judged_in_any_order() {
    let whole = evaluate(GARAGE, &Settings::default(), Priors::Given).unwrap();
    let mut lines: Vec<&str> = GARAGE.lines().collect();
    lines.reverse();
    let turned = evaluate(&lines.join("\n"), &Settings::default(), Priors::Given).unwrap();
    alike(&whole, &turned);
    assert_eq!((whole.cases, whole.groups), (12, 2));
    assert_eq!(whole.sound_led.cases, 4);
    assert_eq!(whole.missed.cases, 7);
}

/// A line that cannot be read, and one whose weather no source speaks of, are counted and told, and the others are judged.
#[test]
fn what_cannot_be_judged_is_told_by_its_line() {
    let wrong = GARAGE.lines().next().unwrap().replace("\"vent\"", "\"vents\"");
    let cold = GARAGE.lines().next().unwrap().replace("74 °F", "-20 °C");
    let lines = format!("{GARAGE}\n{wrong}\n\n{cold}\nno json\n");
    let summary = evaluate(&lines, &Settings::default(), Priors::Told).unwrap();
    assert_eq!((summary.cases, summary.refused), (12, 3));
    let told: Vec<(usize, &str)> = summary
        .refusals
        .iter()
        .map(|refused| (refused.line, refused.refusal.first.key.as_str()))
        .collect();
    assert_eq!(
        told,
        [(14, "case.readings.vents"), (16, "conditions.ambient"), (17, "")]
    );
    assert_eq!(summary.refusals[1].id, "sedan-03");
    assert!(
        summary.refusals[0]
            .refusal
            .to_string()
            .starts_with("line 14, column 1: ")
    );
}

/// Twelve of which four sound, four low on charge and four others of one each.
#[test]
fn the_priors_of_a_file_are_its_shares() {
    let mut mix = Mix::default();
    for (_, line) in intake::cases_of(GARAGE) {
        let case = intake::confirmed_from_json(line).unwrap();
        mix.add(&case.visit.case.system, &case.truth);
    }
    let told = mix.applied(&Settings::default()).unwrap();
    assert_relative_eq!(told.prior(SOUND), 4.0 / 12.0, max_relative = 1e-14);
    assert_relative_eq!(told.prior(WORN), 1.0 / 12.0, max_relative = 1e-14);
    assert_eq!((told.prior(Fault::HighSideRestriction), told.none_of_these), (0.0, 0.0));
    let by_hand = evaluate(GARAGE, &told, Priors::Given).unwrap();
    assert_eq!(evaluate(GARAGE, &Settings::default(), Priors::Told).unwrap(), by_hand);
    let mut two = Mix::default();
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    two.add(&system, &[cause(LOW), cause(HIGH)]);
    let half = two.applied(&Settings::default()).unwrap();
    assert_eq!((half.prior(LOW), half.prior(HIGH)), (0.5, 0.5));
    let none = evaluate("\n", &Settings::default(), Priors::Told).unwrap_err();
    assert_eq!(none.kind, ErrorKind::Missing);
}

#[test]
fn a_shop_learns_from_the_same_file() {
    let counts = intake::counts_from_cases(&Counts::default(), GARAGE).unwrap();
    assert_eq!((counts.cases(Some(LOW)), counts.cases(Some(SOUND))), (4, 4));
    assert_eq!(counts.answers(coldloop::Observation::OilTraces, LOW), [2, 1]);
    // Two causes at once teach nothing.
    let two = GARAGE.replace(
        r#"[{"fault": "worn-compressor"}]"#,
        r#"[{"fault": "worn-compressor"}, {"fault": "undercharge"}]"#,
    );
    assert_ne!(two, GARAGE);
    let without = intake::counts_from_cases(&Counts::default(), &two).unwrap();
    assert_eq!((without.cases(Some(WORN)), without.cases(Some(LOW))), (0, 4));
    let refusal = intake::counts_from_cases(&Counts::default(), &format!("{GARAGE}{{}}")).unwrap_err();
    assert_eq!(refusal.first.position.map(|at| at.line), Some(13));
}

/// What a line may say, and what it may not.
#[test]
fn a_line_is_read_as_described() {
    let line = |rest: &str| {
        intake::confirmed_from_json(&format!(
            r#"{{"case": {{"system": {{"refrigerant": "R-134a", "expansion": "txv", "compressor": "electric"}},
            "conditions": {{"ambient": "24 °C", "altitude": "1600 m"}}}}, {rest}}}"#
        ))
    };
    let case = line(r#""truth": [{"fault": "undercharge", "severity": "30 %"}, {"fault": "none-of-these"}]"#).unwrap();
    assert_eq!((case.truth[0].fault, case.truth[0].severity), (Some(LOW), Some(0.3)));
    assert_eq!((case.truth[1].fault, case.significant, case.group), (None, true, None));
    let simulated = line(r#""truth": [{"fault": "no-fault"}], "id": 7, "world": {"make": "K", "seed": 3}"#).unwrap();
    assert_eq!((simulated.id.as_str(), simulated.group.as_deref()), ("7", Some("K")));
    for (rest, key) in [
        (r#""truth": []"#, "truth"),
        (r#""found": [{"fault": "no-fault"}]"#, "found"),
        (r#""truth": [{"fault": "no-fault"}, {"fault": "undercharge"}]"#, "truth"),
        (
            r#""truth": [{"fault": "undercharge"}, {"fault": "undercharge"}]"#,
            "truth",
        ),
        (r#""truth": [{"fault": "low"}]"#, "truth[1].fault"),
        (
            r#""truth": [{"fault": "undercharge", "severity": 30}]"#,
            "truth[1].severity",
        ),
        (
            r#""truth": [{"fault": "undercharge"}], "significant": "no""#,
            "significant",
        ),
        (r#""truth": [{"fault": "undercharge"}], "group": 1.5"#, "group"),
        (
            r#""truth": [{"fault": "undercharge"}], "world": {"make": []}"#,
            "world.make",
        ),
    ] {
        let refusal = line(rest).unwrap_err();
        assert_eq!(refusal.first.key, key, "{rest}: {refusal}");
    }
}
