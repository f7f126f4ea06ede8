//! The bands of sound systems, over weather, altitude, refrigerants and a vehicle's own table.

#![allow(clippy::unwrap_used)] // tests fail by panicking

#[path = "shared/van.rs"]
mod van;

use coldloop::circuit::Reading;
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::expected::{Bands, PressureTable, TableRow};
use coldloop::units::{GaugePressure, Surroundings, celsius};
use coldloop::vehicle::System;
use coldloop::{Compressor, Expansion, Fault, QualityNote, Quantity, Refrigerant, Thermometer, VerdictKind};
use van::{psig, van, with};

/// The bands that the answer shows.
fn expected(case: &Case) -> Bands {
    Bands::of(&case.system, &case.conditions).unwrap()
}

fn judged(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

#[test]
fn a_vehicles_own_table_replaces_the_bands_of_all() {
    let kpa = |low: f64, high: f64| (GaugePressure::from_kpa(low), GaugePressure::from_kpa(high));
    let row = |c: f64, low, high| TableRow {
        ambient: celsius(c),
        low_side: low,
        high_side: high,
    };
    let rows = [
        row(15.0, kpa(150.0, 200.0), kpa(700.0, 900.0)),
        row(25.0, kpa(170.0, 220.0), kpa(900.0, 1_100.0)),
        row(35.0, kpa(190.0, 240.0), kpa(1_200.0, 1_500.0)),
    ];
    let table = PressureTable::new(&rows, Surroundings::SEA_LEVEL).unwrap();
    let mut case = with(van(Surroundings::SEA_LEVEL), psig(40.0, 170.0), Some(41.0));
    case.conditions.ambient = celsius(30.0);
    assert!(judged(&case).quality.contains(&QualityNote::GenericBand));
    case.own_table = Some(table);
    let answer = judged(&case);
    let bands = answer.expected.unwrap();
    assert!((bands.low_side.low_95.kpa() - 180.0).abs() < 0.5 && (bands.low_side.high_95.kpa() - 230.0).abs() < 0.5);
    assert!(
        (bands.high_side.low_95.kpa() - 1_050.0).abs() < 1.0 && (bands.high_side.high_95.kpa() - 1_300.0).abs() < 1.0
    );
    assert!(!answer.quality.contains(&QualityNote::GenericBand));
    case.conditions.ambient = celsius(38.0);
    assert_eq!(diagnose(&case, &Settings::default()).unwrap_err().high, 308.15); // the last row

    let refused = |rows: &[TableRow]| PressureTable::new(rows, Surroundings::SEA_LEVEL).unwrap_err();
    assert_eq!(refused(&[rows[0], rows[2], rows[1]]).row, 2);
    assert_eq!(
        refused(&[rows[0], row(25.0, kpa(220.0, 170.0), kpa(900.0, 1_100.0))]).row,
        1
    );
    assert_eq!(refused(&[row(15.0, kpa(f64::NAN, 1.0), kpa(1.0, 2.0)), rows[1]]).row, 0);
    assert_eq!(refused(&rows[..1]).error.quantity, Quantity::Rows);
    assert_eq!(refused(&[rows[0]; 30]).error.quantity, Quantity::Rows);
}

#[test]
fn the_middle_of_every_band_is_sound() {
    for refrigerant in [Refrigerant::R134a, Refrigerant::R1234yf] {
        for (expansion, compressor) in Expansion::ALL.into_iter().flat_map(|e| Compressor::ALL.map(|c| (e, c))) {
            for (ambient_c, altitude_m) in [
                (13.0, 0.0),
                (20.0, 1_600.0),
                (27.0, 3_000.0),
                (35.0, 1_600.0),
                (43.0, 0.0),
            ] {
                let mut case = van(Surroundings::at_altitude(altitude_m).unwrap());
                case.system = System::new(refrigerant, expansion, compressor);
                case.conditions.ambient = celsius(ambient_c);
                let bands = expected(&case);
                case = with(
                    case,
                    [bands.low_side.median.into(), bands.high_side.median.into()],
                    None,
                );
                case.readings.vent = Some(Reading::temperature(bands.vent.median, Thermometer::PocketDigital));
                let answer = judged(&case);
                let kind = answer.verdict.kind;
                assert_eq!(
                    kind,
                    VerdictKind::Healthy,
                    "{refrigerant} {expansion} {compressor} {ambient_c} {altitude_m}"
                );
            }
        }
    }
}

#[test]
fn the_same_vehicle_is_judged_alike_at_1600_m() {
    let high_up = Surroundings::at_altitude(1_600.0).unwrap();
    let bands = |place| expected(&van(place));
    let (below, above) = (bands(Surroundings::SEA_LEVEL), bands(high_up));
    // The same saturation temperature is 17.8 kPa more on a gauge in thinner air, which cools the condenser a little less and
    // brings the evaporator less heat: its saturation temperature may lie 0.4 K (4 kPa) lower.
    let rise_kpa = above.low_side.median.kpa() - below.low_side.median.kpa();
    assert!((17.8 - 4.0..17.8 + 1.2).contains(&rise_kpa), "{rise_kpa}");
    assert!(above.high_side.median > below.high_side.median);
    let shifted = |low: f64, high: f64| psig(low + 2.6, high + 2.6);
    assert_eq!(
        judged(&with(van(high_up), shifted(40.0, 182.0), Some(41.0)))
            .verdict
            .kind,
        VerdictKind::Healthy
    );
    let sick = judged(&with(van(high_up), shifted(70.0, 128.0), Some(64.0)));
    assert_eq!(sick.faults[0].fault, Fault::WornCompressor);
    assert!(sick.quality.contains(&QualityNote::GaugeZeroUnknown));
}

/// A gauge zeroed at sea level shows 17.8 kPa too little at 1,600 m, which is 1.3 K of R-134a on the low side.
#[test]
fn a_known_zero_is_taken_into_account() {
    let high_up = Surroundings::at_altitude(1_600.0).unwrap();
    let mut told = with(van(high_up), psig(40.0, 180.0), Some(41.0));
    let untold = judged(&told);
    told.readings.gauge_zero = Some(Surroundings::SEA_LEVEL);
    let answer = judged(&told);
    let low_side = |answer: &Diagnosis| answer.deviations[0].measured;
    let difference_k = low_side(&answer) - low_side(&untold);
    assert!((1.1..1.6).contains(&difference_k), "{difference_k}");
    assert!(!answer.quality.contains(&QualityNote::GaugeZeroUnknown));
}
