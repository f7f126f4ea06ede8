//! The figures and programs of README.md are what the library gives; `COLDLOOP_WRITE=1 cargo test --test readme` writes
//! them.

#![cfg(feature = "report")]
#![allow(clippy::panic, clippy::unwrap_used)] // a test ends that way

#[allow(dead_code)] // tests/papers.rs reads the rest of it
mod published;

use coldloop::air::MoistAir;
use coldloop::{Refrigerant, intake, report, saturation};
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
    let rows = [printed(), curves(), round_trip(), circuit(), moist_air()];
    block(
        "accuracy",
        &format!("| what | against | found |\n|---|---|---|\n{}", rows.concat()),
    );
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

fn printed() -> String {
    let (mut met, mut aside) = (0, 0);
    for paper in published::papers().iter().filter(|paper| paper.refrigerant().is_some()) {
        for cell in paper.cells() {
            if paper.is_erratum(&cell) {
                aside += 1;
            } else {
                assert!(cell.is_met());
                met += 1;
            }
        }
    }
    let found = format!("all {met} numbers at their last printed digit; {aside} more are set aside, with the reason");
    let pure = Refrigerant::ALL.iter().filter(|refrigerant| !refrigerant.is_blend());
    let what = format!("equations of state of {} refrigerants", pure.count());
    row(&what, "the check tables of their papers", &found)
}

/// The pressures of the file lose digits (tests/saturation.rs says where), so that densities are shown here.
fn curves() -> String {
    let mut worst: f64 = 0.0;
    for record in records("tests/data/saturation.csv") {
        let Some(refrigerant) = Refrigerant::from_id(&record[0]) else {
            continue;
        };
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let pure = saturation::pure(refrigerant).unwrap();
        let t_k = number(1).max(pure.fluid.lowest_t_k);
        let reduced = t_k / pure.critical_t_k;
        if refrigerant == Refrigerant::R152a || !(0.4..0.999).contains(&reduced) {
            continue;
        }
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
        "within {} relative from 0.4 to 0.999 of the critical temperature",
        at_most(worst)
    );
    row(
        "saturated densities, R-152a apart (below)",
        "equilibria in extended precision (open data, doi 10.1063/5.0191228)",
        &found,
    )
}

fn round_trip() -> String {
    let mut worst: f64 = 0.0;
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let (low, high) = (pure.fluid.lowest_t_k, pure.critical_t_k);
        for k in 0..=2_000 {
            let t_k = (low + (high - low) * f64::from(k) / 2_000.0).min(high);
            let back =
                saturation::dew_temperature_k(refrigerant, saturation::dew_pressure_pa(refrigerant, t_k).unwrap());
            worst = worst.max((back.unwrap() / t_k - 1.0).abs());
        }
    }
    row(
        "temperature to pressure and back",
        "itself",
        &format!("within {} relative", at_most(worst)),
    )
}

fn circuit() -> String {
    let mut worst: f64 = 0.0;
    for record in records("tests/data/circuit.csv") {
        let refrigerant = Refrigerant::from_id(&record[0]).unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let dew = |p_pa: f64| saturation::dew_temperature_k(refrigerant, p_pa).unwrap();
        for (found, right) in [
            (number(3) - dew(number(1)), number(6)),
            (dew(number(2)) - number(5), number(7)),
        ] {
            worst = worst.max((found - right).abs());
        }
    }
    row(
        "superheat and subcooling",
        "CoolProp 8.0.0",
        &format!("within {} K", at_most(worst)),
    )
}

fn moist_air() -> String {
    let mut worst: f64 = 0.0;
    for record in records("tests/data/moist_air.csv") {
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let air = MoistAir::from_relative_humidity(number(0) + 273.15, number(1), number(2)).unwrap();
        worst = worst.max((air.humidity_ratio() / number(4) - 1.0).abs());
    }
    let found = format!(
        "within {} relative; the difference is the enhancement factor, which the other leaves out",
        at_most(worst)
    );
    row("humidity ratio of moist air", "psychrolib 2.5.0", &found)
}

fn records(path: &str) -> Vec<csv::StringRecord> {
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).unwrap();
    reader.records().map(Result::unwrap).collect()
}
