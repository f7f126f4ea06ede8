//! What a pressure at rest says of the charge.

#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::circuit::{AtRest, PressureMatch, Reading, at_rest};
use coldloop::units::{AbsolutePressure, PressureDifference, Surroundings, celsius, kelvins_difference};
use coldloop::{ErrorKind, Refrigerant};

fn at(refrigerant: Refrigerant, pa: f64, t_c: f64) -> Result<AtRest, coldloop::Error> {
    let pressure = Reading::within(
        AbsolutePressure::from_pa(pa).into(),
        PressureDifference::from_pa(3_000.0),
    );
    at_rest(
        refrigerant,
        pressure,
        Reading::within(celsius(t_c), kelvins_difference(0.3)),
        Surroundings::SEA_LEVEL,
    )
}

/// Every refrigerant whose lines a pressure agrees with.
fn agreeing(pa: f64, t_c: f64) -> Vec<Refrigerant> {
    let agrees = |r: &Refrigerant| at(*r, pa, t_c).is_ok_and(|found| found.pressure_match == PressureMatch::Agrees);
    Refrigerant::ALL.iter().copied().filter(agrees).collect()
}

/// Saturation pressures of R-134a from its published table, kPa. Source: Tillner-Roth & Baehr 1994, table 10 (values from
/// memory, to 0.1 kPa).
#[test]
fn a_pure_charge_agrees_with_itself_and_with_few_others() {
    for (t_c, kpa) in [(0.0, 292.8), (25.0, 665.4), (50.0, 1317.9)] {
        assert!(agreeing(1e3 * kpa, t_c).contains(&Refrigerant::R134a), "{t_c}");
    }
    let cold = agreeing(292.8e3, 0.0);
    for other in [
        Refrigerant::R22,
        Refrigerant::R1234yf,
        Refrigerant::R290,
        Refrigerant::R744,
    ] {
        assert!(!cold.contains(&other), "{cold:?}");
    }
}

/// Two readings at different temperatures leave fewer refrigerants possible than one.
#[test]
fn a_second_temperature_tells_more() {
    let (cold, warm) = (agreeing(292.8e3, 0.0), agreeing(1_317.9e3, 50.0));
    let both = cold.iter().filter(|r| warm.contains(r)).count();
    assert!(
        both >= 1 && both <= cold.len() && both < cold.len().max(warm.len()),
        "{cold:?} {warm:?}"
    );
}

#[test]
fn air_shows_as_its_partial_pressure() {
    let found = at(Refrigerant::R134a, 665.4e3 + 120e3, 25.0).unwrap();
    assert_eq!(found.pressure_match, PressureMatch::TooHigh);
    assert!((found.excess.value.pa() - 120e3).abs() < 200.0);
    assert!((found.gas_share - 120.0 / 785.4).abs() < 1e-3);
    // 3 kPa and 0.3 K, rectangular, at 19.5 kPa/K: 1.7 and 3.4 kPa
    assert!(
        (found.excess.standard_uncertainty.pa() / 3.8e3 - 1.0).abs() < 0.1,
        "{found:?}"
    );
}

/// A blend agrees between its two lines, as its liquid fills the room or none is left but a trace.
#[test]
fn a_blend_agrees_between_its_lines() {
    let r407c = Refrigerant::R407C;
    let (dew, bubble) = (
        coldloop::saturation::dew_pressure_pa(r407c, 298.15).unwrap(),
        coldloop::saturation::bubble_pressure_pa(r407c, 298.15).unwrap(),
    );
    for share in [0.0, 0.5, 1.0] {
        assert_eq!(
            at(r407c, dew + share * (bubble - dew), 25.0).unwrap().pressure_match,
            PressureMatch::Agrees
        );
    }
    assert_eq!(
        at(r407c, 0.9 * dew, 25.0).unwrap().pressure_match,
        PressureMatch::TooLow
    );
    assert_eq!(
        at(r407c, 1.1 * bubble, 25.0).unwrap().pressure_match,
        PressureMatch::TooHigh
    );
}

#[test]
fn what_has_no_line_there_is_told() {
    assert_eq!(
        at(Refrigerant::R744, 6e6, 45.0).unwrap_err().kind,
        ErrorKind::OutOfRange
    );
    assert_eq!(
        at(Refrigerant::R134a, f64::NAN, 25.0).unwrap_err().kind,
        ErrorKind::NotFinite
    );
}
