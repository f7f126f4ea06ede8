//! A vehicle's own visits and table.

#![allow(clippy::unwrap_used)] // a test ends that way

use super::*;
use crate::circuit::{Gauge, Reading};
use crate::names::{Compressor, Expansion, Feature, Refrigerant};
use crate::units::celsius;

fn van() -> (System, Conditions) {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    (system, Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL))
}

/// Five degrees of freedom and one more for each reading, up to eight: the passing part is new at every visit, and its tails stay
/// as heavy as they are (engineering judgement).
#[test]
fn no_number_of_visits_makes_the_tails_of_a_visit_normal() {
    let (system, conditions) = van();
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_bar(2.2), Gauge::DIGITAL)),
        ..Readings::default()
    };
    let mut own = OwnVehicle::new(system);
    let mut freedoms = alloc::vec::Vec::new();
    for _ in 0..12 {
        own.learn(&conditions, &readings).unwrap();
        let model = SoundModel::of(&system, &conditions).unwrap();
        let known = model.knowing(&system, &conditions, Some(&own), None).unwrap();
        freedoms.push(known.components()[0].freedom.0);
    }
    assert_eq!(freedoms[..5], [6, 7, 8, 8, 8]);
    assert_eq!(freedoms[11], 8);
}

/// A table's limits are the 95 % band of its readings, and nothing of that scatter is left to the vehicle: the standard error of
/// its middle is a fiftieth of it (engineering judgement), which leaves 0.9996 of the variance to what passes.
#[test]
fn the_limits_of_a_table_are_the_band_of_its_readings() {
    let (system, conditions) = van();
    let bar = GaugePressure::from_bar;
    let row = |ambient_c: f64| TableRow {
        ambient: celsius(ambient_c),
        low_side: (bar(1.8), bar(2.4)),
        high_side: (bar(11.0), bar(14.0)),
    };
    let table = PressureTable::new(&[row(20.0), row(40.0)], Surroundings::SEA_LEVEL).unwrap();
    let sides = table.at(system.refrigerant, conditions.ambient).unwrap();
    let model = SoundModel::of(&system, &conditions).unwrap();
    let model = model.knowing(&system, &conditions, None, Some(&table)).unwrap();
    for (at, (middle_k, deviation_k)) in sides.into_iter().enumerate() {
        for component in model.components() {
            let variance = component.lasting.at(at, at) + component.passing.at(at, at);
            assert!((sqrt(variance) / deviation_k - 1.0).abs() < 1e-6);
            let lasts = component.lasting.at(at, at) / variance;
            assert!((lasts - 0.000_4).abs() < 0.000_04, "{lasts}");
            assert!((component.mean[at] - middle_k).abs() < 0.05 * deviation_k);
        }
    }
    let band = model.band(Feature::LowSide).unwrap();
    let dew = |bar: f64| {
        let pressure = GaugePressure::from_bar(bar).absolute(Surroundings::SEA_LEVEL);
        in_kelvins(Refrigerant::R134a.dew_temperature(pressure).unwrap())
    };
    assert!((band.low_95 - dew(1.8)).abs() < 0.3 && (band.high_95 - dew(2.4)).abs() < 0.3);
}
