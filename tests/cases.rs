//! Every row of tests/cases/functions.csv through the Rust door; the C and Python doors run the same file.

#![allow(clippy::panic, clippy::unwrap_used)] // a test ends that way

use coldloop::circuit::{Reading, subcooling, superheat};
use coldloop::saturation::{bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use coldloop::units::{AbsolutePressure, Pressure, Surroundings, absolute_pressure_pa, kelvins, standard_pressure_pa};
use coldloop::{Error, Refrigerant};
use std::path::Path;

#[test]
fn every_case_has_its_status_and_bits() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/functions.csv");
    let mut count = 0;
    for row in csv::Reader::from_path(file).unwrap().records() {
        let row = row.unwrap();
        let [function, refrigerant, x, y, status, bits] = [0, 1, 2, 3, 4, 5].map(|column| row[column].to_string());
        let x: f64 = x.parse().unwrap();
        let y: f64 = if y.is_empty() { f64::NAN } else { y.parse().unwrap() };
        let found = match call(&function, Refrigerant::from_id(&refrigerant), x, y) {
            Ok(value) => ("0".to_string(), format!("{:016x}", value.to_bits())),
            Err(error) => (error.kind.code().to_string(), String::new()),
        };
        assert_eq!(found, (status, bits), "{row:?}");
        count += 1;
    }
    assert!(count > 100, "{count} cases");
}

fn call(function: &str, refrigerant: Option<Refrigerant>, x: f64, y: f64) -> Result<f64, Error> {
    match (function, refrigerant) {
        ("standard_pressure", None) => standard_pressure_pa(x),
        ("absolute_pressure", None) => absolute_pressure_pa(x, y),
        ("bubble_pressure", Some(refrigerant)) => bubble_pressure_pa(refrigerant, x),
        ("dew_pressure", Some(refrigerant)) => dew_pressure_pa(refrigerant, x),
        ("bubble_temperature", Some(refrigerant)) => bubble_temperature_k(refrigerant, x),
        ("dew_temperature", Some(refrigerant)) => dew_temperature_k(refrigerant, x),
        ("superheat", Some(refrigerant)) => {
            superheat(refrigerant, exact(kelvins(x)), absolute(y), Surroundings::SEA_LEVEL).map(|k| k.value)
        }
        ("subcooling", Some(refrigerant)) => {
            subcooling(refrigerant, exact(kelvins(x)), absolute(y), Surroundings::SEA_LEVEL).map(|k| k.value)
        }
        _ => panic!("{function} with {refrigerant:?} is not a case"),
    }
}

fn absolute(pa: f64) -> Reading<Pressure> {
    exact(Pressure::Absolute(AbsolutePressure::from_pa(pa)))
}

const fn exact<Q>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: 0.0,
    }
}
