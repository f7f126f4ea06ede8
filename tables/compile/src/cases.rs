//! `tests/cases/functions.csv`: inputs as text, and the status and bits that every door has to give for them.
//!
//! The table holds the answers of this build of the crate. It says nothing about their truth (the other tests do);
//! it says that Rust, C and Python agree to the bit, on this machine and on the one that wrote the table.

use crate::output::Output;
use coldloop::circuit::{Reading, subcooling, superheat};
use coldloop::saturation::{bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use coldloop::units::{AbsolutePressure, Pressure, Surroundings, absolute_pressure_pa, kelvins, standard_pressure_pa};
use coldloop::{Error, Refrigerant};

const HEAD: &str = "function,refrigerant,x,y,status,bits\n";

/// Numbers that no physical quantity is.
const ABSURD: [&str; 8] = ["nan", "inf", "-inf", "0", "-1", "5e-324", "1e308", "-1e300"];

/// Writes `tests/cases/functions.csv`.
pub(crate) fn compile(out: &mut Output) -> Result<(), String> {
    let mut table = String::from(HEAD);
    for x in steps(-600.0, 9_100.0, 37) {
        table += &row("standard_pressure", "", &x, "", standard_pressure_pa(number(&x)?));
    }
    for (gauge, air) in pairs(&steps(-101_325.0, 4e6, 13), &steps(27_000.0, 113_000.0, 5)) {
        table += &row(
            "absolute_pressure",
            "",
            &gauge,
            &air,
            absolute_pressure_pa(number(&gauge)?, number(&air)?),
        );
    }
    for refrigerant in Refrigerant::ALL {
        let name = refrigerant.id();
        for x in steps(100.0, 460.0, 41) {
            let t_k = number(&x)?;
            table += &row("bubble_pressure", name, &x, "", bubble_pressure_pa(refrigerant, t_k));
            table += &row("dew_pressure", name, &x, "", dew_pressure_pa(refrigerant, t_k));
        }
        for x in steps(300.0, 7_500_000.0, 41) {
            let p_pa = number(&x)?;
            table += &row(
                "bubble_temperature",
                name,
                &x,
                "",
                bubble_temperature_k(refrigerant, p_pa),
            );
            table += &row("dew_temperature", name, &x, "", dew_temperature_k(refrigerant, p_pa));
        }
    }
    for (line, pressure) in pairs(&steps(190.0, 475.0, 9), &steps(50_000.0, 4e6, 9)) {
        for refrigerant in Refrigerant::ALL {
            let (name, line_k, pa) = (refrigerant.id(), number(&line)?, number(&pressure)?);
            let line_reading = exact(kelvins(line_k));
            let absolute = exact(Pressure::Absolute(AbsolutePressure::from_pa(pa)));
            let heated = superheat(refrigerant, line_reading, absolute, Surroundings::SEA_LEVEL);
            table += &row(
                "superheat",
                name,
                &line,
                &pressure,
                heated.map(|estimate| estimate.value),
            );
            let cooled = subcooling(refrigerant, line_reading, absolute, Surroundings::SEA_LEVEL);
            table += &row(
                "subcooling",
                name,
                &line,
                &pressure,
                cooled.map(|estimate| estimate.value),
            );
        }
    }
    out.text("tests/cases/functions.csv", &table)
}

const fn exact<Q>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: 0.0,
    }
}

/// `count` numbers from `low` to `high` with odd digits, and the absurd ones.
fn steps(low: f64, high: f64, count: u32) -> Vec<String> {
    let step = |i| low + (high - low) * f64::from(i) / f64::from(count - 1);
    let even = (0..count).map(|i| format!("{:?}", step(i)));
    even.chain(ABSURD.map(str::to_string)).collect()
}

fn pairs(xs: &[String], ys: &[String]) -> Vec<(String, String)> {
    xs.iter()
        .flat_map(|x| ys.iter().map(move |y| (x.clone(), y.clone())))
        .collect()
}

fn number(text: &str) -> Result<f64, String> {
    text.parse().map_err(|e| format!("{text}: {e}"))
}

fn row(function: &str, refrigerant: &str, x: &str, y: &str, answer: Result<f64, Error>) -> String {
    match answer {
        Ok(value) => format!("{function},{refrigerant},{x},{y},0,{:016x}\n", value.to_bits()),
        Err(error) => format!("{function},{refrigerant},{x},{y},{},\n", error.kind.code()),
    }
}
