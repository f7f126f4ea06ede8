//! The figures and programs of README.md are what the library gives; `COLDLOOP_WRITE=1 cargo test --test readme` writes
//! them.

#![cfg(feature = "report")]
#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

#[allow(dead_code)] // tests/papers uses the rest of it
mod published;

use coldloop::air::MoistAir;
use coldloop::saturation::Side;
use coldloop::{Refrigerant, intake, report, saturation};
use std::collections::BTreeSet;
use std::fs;

/// The text between two markers of the README, written anew when asked.
fn block(name: &str, wanted: &str) {
    let (begin, end) = (format!("<!-- {name}:begin -->\n"), format!("<!-- {name}:end -->"));
    let readme = fs::read_to_string("README.md").unwrap();
    let (before, rest) = readme.split_once(&begin).unwrap();
    let (found, after) = rest.split_once(&end).unwrap();
    if found == wanted {
        return;
    }
    assert!(
        std::env::var_os("COLDLOOP_WRITE").is_some(),
        "the block {name} of README.md is stale; it should read\n{wanted}"
    );
    fs::write("README.md", format!("{before}{begin}{wanted}{end}{after}")).unwrap();
}

fn fenced(language: &str, text: &str) -> String {
    format!("```{language}\n{}\n```\n", text.trim())
}

/// One test, so that no two of them write the file at once.
#[test]
fn the_readme_says_what_the_library_does() {
    let file = fs::read_to_string("examples/readings/low-charge.toml").unwrap();
    let visit = intake::visit_from_toml(&file).unwrap();
    let text = report::visit_text(&visit, report::Units::as_written(&file)).unwrap();
    block("report", &fenced("text", &text));
    for (name, path) in [("c", "examples/c/gauges.c"), ("python", "examples/python/gauges.py")] {
        block(name, &fenced(name, &fs::read_to_string(path).unwrap()));
    }
    let rows = [
        printed(),
        curves(),
        round_trip(false),
        round_trip(true),
        circuit(),
        moist_air(),
    ];
    block(
        "accuracy",
        &format!("| what | against | found |\n|---|---|---|\n{}", rows.concat()),
    );
}

/// README.md is also shown where few other files of the project are: a link in it leads to a heading of the page, names a host, or is a
/// picture that is packed with the crate.
#[test]
fn no_link_of_the_readme_is_dead_elsewhere() {
    let readme = fs::read_to_string("README.md").unwrap();
    let mut targets: Vec<&str> = readme
        .split("](")
        .skip(1)
        .map(|rest| rest.split(')').next().unwrap())
        .collect();
    let referenced = readme
        .lines()
        .filter(|line| line.starts_with('['))
        .filter_map(|line| line.split_once("]: "));
    targets.extend(referenced.map(|(_, target)| target));
    let manifest = fs::read_to_string("Cargo.toml").unwrap();
    let dead: Vec<&str> = targets
        .into_iter()
        .filter(|target| !target.starts_with('#') && !target.starts_with("https://"))
        .filter(|target| !(target.ends_with(".svg") && manifest.contains(&format!("\"/{target}\","))))
        .collect();
    assert!(dead.is_empty(), "{dead:?}");
}

#[test]
fn the_oldest_rust_of_the_readme_is_that_of_the_manifest() {
    let manifest = fs::read_to_string("Cargo.toml").unwrap();
    let least = manifest
        .split("rust-version = \"")
        .nth(1)
        .unwrap()
        .split('"')
        .next()
        .unwrap();
    let readme = fs::read_to_string("README.md").unwrap();
    assert!(readme.contains(&format!("Rust {least} or newer")), "{least}");
}

/// A snippet is a whole program: pasted into an empty file it compiles, and nothing of it is hidden.
#[test]
fn every_snippet_of_the_readme_is_a_program() {
    let readme = fs::read_to_string("README.md").unwrap();
    let snippets: Vec<&str> = readme
        .split("```rust\n")
        .skip(1)
        .map(|rest| rest.split("```").next().unwrap())
        .collect();
    assert!(!snippets.is_empty());
    for snippet in snippets {
        assert!(snippet.contains("fn main()"), "no main:\n{snippet}");
        assert!(
            !snippet.lines().any(|line| line.starts_with("# ")),
            "a hidden line:\n{snippet}"
        );
    }
}

/// A figure rounded up to one digit, so that a last bit does not change the page.
fn at_most(worst: f64) -> String {
    let power = 10f64.powf(worst.log10().floor());
    let digit = (worst / power).ceil();
    format!("{:.0e}", digit * power)
}

fn row(what: &str, against: &str, found: &str) -> String {
    format!("| {what} | {against} | {found} |\n")
}

/// Papers of gases of the air are left out, and counted.
fn printed() -> String {
    let (mut met, mut aside, mut without, mut gases) = (0, 0, 0, 0);
    for paper in published::papers() {
        if paper.refrigerant().is_none() {
            gases += 1;
            continue;
        }
        without += usize::from(paper.cells().is_empty());
        for cell in paper.cells() {
            if paper.is_erratum(&cell) {
                aside += 1;
            } else {
                assert!(cell.is_met());
                met += 1;
            }
        }
    }
    let pure = Refrigerant::ALL
        .iter()
        .filter(|refrigerant| !refrigerant.is_blend())
        .count();
    let found = format!(
        "all {met} numbers at their last printed digit; {aside} more are set aside, with the reason; of {without} \
         refrigerants no numbers are at hand, and the {gases} gases of the air are not counted here"
    );
    let what = format!("equations of state, {} of {pure} pure refrigerants", pure - without);
    row(&what, "the check tables of their papers", &found)
}

/// The pressures of the file lose digits (tests/saturation.rs says where), so that densities are shown here.
fn curves() -> String {
    let (mut worst, mut used, mut aside, mut beyond): (f64, usize, usize, usize) = (0.0, 0, 0, 0);
    let mut refrigerants = BTreeSet::new();
    for record in records("tests/data/saturation.csv") {
        let refrigerant = Refrigerant::from_id(&record[0]).unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let pure = saturation::pure(refrigerant).unwrap();
        let t_k = number(1).max(pure.fluid.lowest_t_k);
        let reduced = t_k / pure.critical_t_k;
        if refrigerant == Refrigerant::R152a {
            aside += 1;
            continue;
        }
        if !(0.4..0.999).contains(&reduced) {
            beyond += 1;
            continue;
        }
        used += 1;
        refrigerants.insert(refrigerant);
        let denser = pure.fluid.equation.reducing_rho_mol_m3 / number(5);
        let found = [
            pure.liquid(t_k).unwrap().rho_mol_m3,
            pure.vapour(t_k).unwrap().rho_mol_m3,
        ];
        for (found, k) in found.into_iter().zip([3, 4]) {
            worst = worst.max((found / (number(k) * denser) - 1.0).abs());
        }
    }
    let found = format!(
        "within {} relative at {used} temperatures from 0.4 to 0.999 of the critical one; {beyond} outside that span and \
         {aside} of R-152a (next table) are left out",
        at_most(worst)
    );
    row(
        &format!("saturated densities, {} pure refrigerants", refrigerants.len()),
        "equilibria in extended precision (open data, doi 10.1063/5.0191228)",
        &found,
    )
}

/// Both lines over all their temperatures, the ends included; nothing is left out.
fn round_trip(blends: bool) -> String {
    const STEPS: u32 = 2_000;
    let (mut worst, mut count): (f64, usize) = (0.0, 0);
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| r.is_blend() == blends) {
        count += 1;
        let line = saturation::line_of(refrigerant);
        let (low, high) = (line.temperatures().low, line.temperatures().high);
        for side in [Side::Bubble, Side::Dew] {
            for k in 0..=STEPS {
                let t_k = (low + (high - low) * f64::from(k) / f64::from(STEPS)).min(high);
                let back = line.temperature_k(side, line.pressure_pa(side, t_k).unwrap()).unwrap();
                worst = worst.max((back / t_k - 1.0).abs());
            }
        }
    }
    let (kind, span) = if blends {
        ("blends", "to 0.99 of the critical one")
    } else {
        ("pure refrigerants", "to the critical one")
    };
    row(
        &format!("temperature to pressure and back, {count} {kind}, bubble and dew"),
        "itself",
        &format!(
            "within {} relative at {} temperatures each from the lowest {span}",
            at_most(worst),
            STEPS + 1
        ),
    )
}

fn circuit() -> String {
    let (mut worst, mut count): (f64, usize) = (0.0, 0);
    let mut refrigerants = BTreeSet::new();
    for record in records("tests/data/circuit.csv") {
        let refrigerant = Refrigerant::from_id(&record[0]).unwrap();
        refrigerants.insert(refrigerant);
        count += 1;
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let dew = |p_pa: f64| saturation::dew_temperature_k(refrigerant, p_pa).unwrap();
        for (found, right) in [
            (number(3) - dew(number(1)), number(6)),
            (dew(number(2)) - number(5), number(7)),
        ] {
            worst = worst.max((found - right).abs());
        }
    }
    let names: Vec<&str> = refrigerants.iter().map(|refrigerant| refrigerant.id()).collect();
    assert!(
        refrigerants.iter().all(|refrigerant| !refrigerant.is_blend()),
        "{names:?}"
    );
    row(
        &format!("superheat and subcooling, {}", names.join(", ")),
        "CoolProp 8.0.0",
        &format!("within {} K at {count} sets of readings", at_most(worst)),
    )
}

fn moist_air() -> String {
    let (mut worst, mut count): (f64, usize) = (0.0, 0);
    let (mut coldest, mut warmest) = (f64::INFINITY, f64::NEG_INFINITY);
    for record in records("tests/data/moist_air.csv") {
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        (coldest, warmest) = (coldest.min(number(0)), warmest.max(number(0)));
        count += 1;
        let air = MoistAir::from_relative_humidity(number(0) + 273.15, number(1), number(2)).unwrap();
        worst = worst.max((air.humidity_ratio() / number(4) - 1.0).abs());
    }
    let found = format!(
        "within {} relative at {count} states; the difference is the enhancement factor, which the other leaves out",
        at_most(worst)
    );
    let what = format!("humidity ratio of moist air, {coldest} to {warmest} °C");
    row(&what, "psychrolib 2.5.0", &found)
}

fn records(path: &str) -> Vec<csv::StringRecord> {
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).unwrap();
    reader.records().map(Result::unwrap).collect()
}
