//! Nothing on the page is told twice, folded away on paper, or told of a vehicle that was not measured.

#![cfg(feature = "report")]
#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

mod pages;

use coldloop::report::{self, Page, Units, Wording};
use coldloop::{Fault, VerdictKind};
use pages::{files, flat, wordings};
use std::fs;

/// The page's name of a fault.
fn name_of(fault: Fault) -> String {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tables/texts.toml");
    let texts: toml::Value = toml::from_str(&fs::read_to_string(path).unwrap()).unwrap();
    texts["names"]["Fault"][fault.id()]["en"].as_str().unwrap().to_string()
}

/// The faults of a short list are in its headline with their odds and nowhere else; in HTML the odds are shown as bars only.
#[test]
fn no_odds_are_told_twice() {
    let mut lists = 0;
    for (name, file, visit) in files() {
        let page = Page::of_visit(&visit).unwrap();
        let result = &page.result;
        if result.kind != VerdictKind::CannotTell || result.both {
            continue;
        }
        lists += 1;
        let text = flat(&page.text(Wording::new(Units::as_written(&file)))).to_lowercase();
        let told = text.split("do first").next().unwrap();
        let html = report::html(&visit, Units::as_written(&file)).unwrap();
        let (_, body) = html.split_once("<body>").unwrap();
        let (before_bars, _) = body.split_once("<svg").unwrap();
        for fault in &result.faults {
            let odds = result.odds.iter().find(|odds| odds.fault == *fault).unwrap();
            let says = format!("{} {:.0} %", name_of(*fault), 100.0 * odds.probability);
            assert_eq!(told.matches(&says).count(), 1, "{name}: {says}: {told}");
            assert_eq!(told.matches(&name_of(*fault)).count(), 1, "{name}: {told}");
            let says = says.replace(" %", "\u{a0}%");
            assert!(!before_bars.contains(&says), "{name}: {says}: {before_bars}");
        }
    }
    assert!(lists > 4, "{lists}");
}

/// Where nothing speaks for or against any fault, the odds are the priors of a shop and no result of this vehicle.
#[test]
fn priors_are_no_result() {
    let named = |name: &str| files().into_iter().find(|(found, _, _)| found == name).unwrap();
    let page = Page::of_visit(&named("evacuation-with-leak").2).unwrap();
    assert_eq!(
        page.result.faults[..],
        [Fault::Undercharge],
        "a vacuum that was lost speaks for a leak"
    );
    for name in ["evacuation-with-water", "pressure-test"] {
        let (_, file, visit) = named(name);
        let page = Page::of_visit(&visit).unwrap();
        assert!(page.result.odds.is_empty(), "{name}");
        for wording in wordings(&file) {
            let text = page.text(wording);
            assert!(
                !text.contains("0 to 100 %") && !text.contains("0 a 100 %"),
                "{name}:\n{text}"
            );
            assert!(
                !text.contains("undercharge") && !text.contains("carga insuficiente"),
                "{name}:\n{text}"
            );
        }
    }
}

/// Readings of a vehicle that is repaired by now are those of before.
#[test]
fn readings_before_a_repair_say_so() {
    for (name, file, visit) in files() {
        let page = Page::of_visit(&visit).unwrap();
        let repaired = page.proof.as_ref().is_some_and(|proof| proof.repair.is_some());
        let text = page.text(Wording::new(Units::as_written(&file)));
        let html = report::html(&visit, Units::as_written(&file)).unwrap();
        assert_eq!(text.contains("READINGS BEFORE THE REPAIR"), repaired, "{name}");
        assert_eq!(html.contains("Readings before the repair"), repaired, "{name}");
    }
}

/// What is folded on a screen is printed on paper.
#[test]
fn other_cautions_are_printed() {
    let mut printed = 0;
    for (name, file, visit) in files() {
        let html = report::html(&visit, Units::as_written(&file)).unwrap();
        let folded = html
            .split_once("<details>")
            .map(|(_, rest)| rest.split_once("</details>").unwrap());
        let Some((folded, rest)) = folded else {
            assert!(!html.contains("class=\"paper\""), "{name}");
            continue;
        };
        let (paper, _) = rest
            .split_once("class=\"paper\"")
            .unwrap()
            .1
            .split_once("</section>")
            .unwrap();
        assert_eq!(folded.matches("<li>").count(), paper.matches("<li>").count(), "{name}");
        printed += 1;
    }
    assert!(printed > 10);
    let style = include_str!("../src/report/page.css");
    let (screen, print) = style.split_once("@media print").unwrap();
    assert!(screen.contains(".paper { display: none }") && print.contains(".paper { display: block }"));
}
