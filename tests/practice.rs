//! The practice example: a seed repeats a case, a file of answers plays it, and the bill is that of the prices.

#![allow(clippy::unwrap_used)] // tests fail by panicking
#![cfg(feature = "report")]

#[path = "../examples/practice/game.rs"]
mod game;
#[allow(dead_code)] // the evaluation uses the rest of it
#[path = "../examples/evaluate_repair_cost/visit.rs"]
mod visit;
#[allow(dead_code)] // as above
#[path = "../examples/evaluate_repair_cost/work.rs"]
mod work;

use coldloop::Fault;
use coldloop::diagnosis::{Settings, repair};

fn played(seed: u64, answers: &str) -> (game::Played, String) {
    let mut out = Vec::new();
    let played = game::play(seed, answers.as_bytes(), &mut out, true).unwrap();
    (played, String::from_utf8(out).unwrap())
}

#[test]
fn a_seed_repeats_a_case_and_its_bill_is_that_of_the_prices() {
    let (first, told) = played(11, "# who hands over at once\nhand-over\n");
    assert_eq!(played(11, "hand-over").1, told);
    assert!(
        told.starts_with("Case 11. ") && told.contains("The page of the case"),
        "{told}"
    );
    let prices = Settings::default().prices;
    let least = work::Minutes::least(first.fault);
    assert_eq!(first.minutes[0], least + prices.in_minutes(prices.unknown()));
    // Who knows it pays for the right repair alone; who looks first, for the looks as well.
    let fault = first.fault.id();
    let (known, told) = played(11, fault);
    assert_eq!(known.minutes[0], least);
    assert!(
        told.contains("It helped.") && told.contains(&format!("It was {fault}")),
        "{told}"
    );
    let (looked, told) = played(11, &format!("checks\nvent\nread-low-side\n{fault}\n"));
    let looks =
        [coldloop::Check::ReadVent, coldloop::Check::ReadLowSide].map(|check| prices.in_minutes(prices.check(check)));
    assert_eq!(looked.minutes[0], least + looks[0] + looks[1]);
    assert!(
        told.contains("vent: ") && told.contains("°C") && told.contains("kPa gauge"),
        "{told}"
    );
    // A repair in vain is paid, and the page knows that it was none.
    let wrong = if fault == "worn-compressor" {
        Fault::Undercharge
    } else {
        Fault::WornCompressor
    };
    let (vain, told) = played(11, &format!("{}\n{fault}\n", wrong.id()));
    assert!(told.contains("It did not help."), "{told}");
    let recovery = match repair(wrong).recovery && !repair(first.fault).recovery {
        true => prices.in_minutes(prices.recovery()),
        false => 0.0,
    };
    let paid = prices.in_minutes(prices.repair(wrong)) + prices.in_minutes(prices.verify()) + recovery;
    assert_eq!(vain.minutes[0], least + paid);
}

#[test]
fn what_is_not_understood_ends_a_file_of_answers() {
    let error = game::play(3, "look harder\n".as_bytes(), &mut Vec::new(), true).unwrap_err();
    assert!(
        error
            .to_string()
            .starts_with("look harder: not understood; Write one of these"),
        "{error}"
    );
    let mut out = Vec::new();
    game::play(3, "look harder\n".as_bytes(), &mut out, false).unwrap();
    assert!(String::from_utf8(out).unwrap().contains("look harder: not understood."));
}

/// On average over some cases; one case can go against it.
#[test]
fn the_plan_costs_less_than_handing_over_at_once() {
    let (mut handed, mut planned) = (0.0, 0.0);
    for seed in 0..12 {
        let (played, told) = played(seed, "");
        assert!(played.minutes[1] >= work::Minutes::least(played.fault), "{told}");
        handed += played.minutes[0];
        planned += played.minutes[1];
    }
    assert!(planned < handed, "{planned} {handed}");
}
