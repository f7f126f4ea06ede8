//! Cycles and tables as textbooks and handbooks print them.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use approx::assert_abs_diff_eq;
use coldloop::saturation::{self, Pure, State};
use coldloop::units::in_kelvins;
use coldloop::{Reference, Refrigerant};

fn r134a() -> &'static Pure {
    saturation::pure(Refrigerant::R134a).unwrap()
}

fn boiling(p_mpa: f64, quality: f64) -> State {
    r134a().state_pq(p_mpa * 1e6, quality, Reference::Ashrae).unwrap()
}

fn at(t_c: f64, p_mpa: f64) -> State {
    r134a().state_tp(t_c + 273.15, p_mpa * 1e6, Reference::Ashrae).unwrap()
}

/// Enthalpy of the vapour at a pressure and entropy, by halving the temperature range above the dew point.
fn compressed_j_kg(p_mpa: f64, s_j_kg_k: f64) -> f64 {
    let mut low = r134a().temperature_k(p_mpa * 1e6).unwrap() + 1e-6;
    let mut high = 400.0;
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        let state = at(middle - 273.15, p_mpa);
        if state.entropy().j_kg_k() > s_j_kg_k {
            high = middle;
        } else {
            low = middle;
        }
    }
    at(low - 273.15, p_mpa).enthalpy().j_kg()
}

/// Printed to 0.01 kJ/kg, but read from tables by interpolation: a few units of the last digit.
const TABLE: f64 = 0.05;

/// Cengel & Boles, Thermodynamics: An Engineering Approach, example 11-1: the ideal cycle between 0.14 and 0.8 MPa,
/// 0.05 kg/s. Enthalpy counts from the saturated liquid at -40 °C.
#[test]
fn ideal_cycle_of_cengel_and_boles() {
    let h1 = boiling(0.14, 1.0).enthalpy().j_kg() / 1e3;
    let s1 = boiling(0.14, 1.0).entropy().j_kg_k();
    let h2 = compressed_j_kg(0.8, s1) / 1e3;
    let h3 = boiling(0.8, 0.0).enthalpy().j_kg() / 1e3;
    assert_abs_diff_eq!(h1, 239.16, epsilon = TABLE);
    assert_abs_diff_eq!(s1 / 1e3, 0.944_56, epsilon = 1e-4);
    assert_abs_diff_eq!(h2, 275.39, epsilon = TABLE);
    assert_abs_diff_eq!(h3, 95.47, epsilon = TABLE);
    assert_abs_diff_eq!(0.05 * (h1 - h3), 7.18, epsilon = 0.005);
    assert_abs_diff_eq!(0.05 * (h2 - h1), 1.81, epsilon = 0.005);
    // the listing rounds 8.994 up to 9.00
    assert_abs_diff_eq!(0.05 * (h2 - h3), 9.0, epsilon = 0.01);
    assert_abs_diff_eq!((h1 - h3) / (h2 - h1), 3.97, epsilon = 0.005);
}

/// Cengel & Boles, example 11-2: the actual cycle. The book takes the subcooled liquid as saturated at its temperature.
#[test]
fn actual_cycle_of_cengel_and_boles() {
    let inlet = at(-10.0, 0.14);
    let h1 = inlet.enthalpy().j_kg() / 1e3;
    let h2 = at(50.0, 0.8).enthalpy().j_kg() / 1e3;
    let h2s = compressed_j_kg(0.8, inlet.entropy().j_kg_k()) / 1e3;
    let h3 = at(26.0, 0.72).enthalpy().j_kg() / 1e3;
    assert_abs_diff_eq!(h1, 246.36, epsilon = TABLE);
    assert_abs_diff_eq!(h2, 286.69, epsilon = TABLE);
    assert_abs_diff_eq!(h2s, 284.21, epsilon = TABLE);
    assert_abs_diff_eq!(h3, 87.83, epsilon = TABLE);
    assert_abs_diff_eq!(0.05 * (h1 - h3), 7.93, epsilon = 0.005);
    assert_abs_diff_eq!(0.05 * (h2 - h1), 2.02, epsilon = 0.005);
    assert_abs_diff_eq!((h2s - h1) / (h2 - h1), 0.938, epsilon = 0.001);
    assert_abs_diff_eq!((h1 - h3) / (h2 - h1), 3.93, epsilon = 0.005);
}

/// Cengel & Boles, example 11-4: two stages with a flash chamber at 0.32 MPa.
#[test]
fn two_stage_cycle_of_cengel_and_boles() {
    let (evaporator, flash) = (boiling(0.14, 1.0), boiling(0.32, 1.0));
    let liquid = boiling(0.32, 0.0).enthalpy().j_kg() / 1e3;
    let gas = flash.enthalpy().j_kg() / 1e3;
    let x6 = (boiling(0.8, 0.0).enthalpy().j_kg() / 1e3 - liquid) / (gas - liquid);
    let h1 = evaporator.enthalpy().j_kg() / 1e3;
    let h2 = compressed_j_kg(0.32, evaporator.entropy().j_kg_k()) / 1e3;
    let h9 = x6 * gas + (1.0 - x6) * h2;
    // The mixed vapour is superheated: its temperature from its enthalpy.
    let (mut low, mut high) = (r134a().temperature_k(0.32e6).unwrap() - 273.15 + 1e-6, 100.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if at(middle, 0.32).enthalpy().j_kg() / 1e3 > h9 {
            high = middle;
        } else {
            low = middle;
        }
    }
    let h4 = compressed_j_kg(0.8, at(low, 0.32).entropy().j_kg_k()) / 1e3;
    let cooling = (1.0 - x6) * (h1 - liquid);
    let work = (1.0 - x6) * (h2 - h1) + h4 - h9;
    assert_abs_diff_eq!(x6, 0.2049, epsilon = 1e-4);
    assert_abs_diff_eq!(cooling, 146.3, epsilon = 0.05);
    assert_abs_diff_eq!(h4, 274.48, epsilon = TABLE);
    assert_abs_diff_eq!(work, 32.71, epsilon = TABLE);
    assert_abs_diff_eq!(cooling / work, 4.47, epsilon = 0.01);
}

/// Moran & Shapiro, Fundamentals of Engineering Thermodynamics, example 10.1: 0 °C and 26 °C, 0.08 kg/s.
///
/// The book's tables come from an older equation of state: its enthalpies count from another reference state and are 2 to
/// 3 kJ/kg lower, its heats differ by up to 1 %.
#[test]
fn ideal_cycle_of_moran_and_shapiro() {
    let pure = r134a();
    let vapour = pure.state_tq(273.15, 1.0, Reference::Ashrae).unwrap();
    let p2 = pure.pressure_pa(299.15).unwrap();
    let h1 = vapour.enthalpy().j_kg() / 1e3;
    let h2 = compressed_j_kg(p2 / 1e6, vapour.entropy().j_kg_k()) / 1e3;
    let h3 = pure.state_tq(299.15, 0.0, Reference::Ashrae).unwrap().enthalpy().j_kg() / 1e3;
    assert_abs_diff_eq!(p2 / 1e5, 6.853, epsilon = 0.002);
    assert_abs_diff_eq!(h1 - h3, 247.23 - 85.75, epsilon = 0.01 * 161.48);
    assert_abs_diff_eq!(h2 - h1, 264.7 - 247.23, epsilon = 0.01 * 17.47);
    assert_abs_diff_eq!(0.08 * (h2 - h1), 1.4, epsilon = 0.014);
    assert_abs_diff_eq!(0.08 * 60.0 * (h1 - h3) / 211.0, 3.67, epsilon = 0.037);
    assert_abs_diff_eq!((h1 - h3) / (h2 - h1), 9.24, epsilon = 0.01);
    assert_abs_diff_eq!(273.15 / 26.0, 10.5, epsilon = 0.01);
}

/// Mechanical Engineers' Handbook, volume 4, table 14: p in bar, t in °C, v'' in m3/kg, h' and h'' in kJ/kg.
///
/// The same older equation of state: boiling points differ by up to 0.16 K, enthalpies by up to 0.7 kJ/kg.
#[test]
fn saturation_table_of_the_mechanical_engineers_handbook() {
    for (p_bar, t_c, volume, liquid, vapour) in [
        (1.0, -26.52, 0.1926, 16.8, 234.2),
        (2.0, -10.18, 0.1001, 37.8, 243.6),
        (5.0, 15.68, 0.0413, 72.8, 258.8),
        (10.0, 39.41, 0.0204, 106.9, 270.9),
    ] {
        let dew = boiling(p_bar / 10.0, 1.0);
        assert_abs_diff_eq!(in_kelvins(dew.temperature()) - 273.15, t_c, epsilon = 0.17);
        assert_abs_diff_eq!(1.0 / dew.density().kg_m3(), volume, epsilon = 0.005 * volume);
        assert_abs_diff_eq!(
            boiling(p_bar / 10.0, 0.0).enthalpy().j_kg() / 1e3,
            liquid,
            epsilon = 0.7
        );
        assert_abs_diff_eq!(dew.enthalpy().j_kg() / 1e3, vapour, epsilon = 0.9);
    }
}

/// ASHRAE Handbook Fundamentals, chapter 30, R-134a (ISO 17584), from memory: t in °C, p in MPa, rho' in kg/m3, v'' in
/// m3/kg, h' and h'' in kJ/kg, s'' in kJ/(kg K); to the printed digit.
#[test]
fn saturation_table_of_ashrae() {
    for (t_c, p, rho, volume, liquid, vapour, entropy) in [
        (0.0, 0.2928, 1294.8, Some(0.069_31), 200.0, 398.6, 1.7271),
        (25.0, 0.665_38, 1206.7, None, 234.55, 412.33, 1.7162),
        (40.0, 1.0166, 1146.7, Some(0.019_97), 256.41, 419.43, 1.7111),
    ] {
        let side = |quality| r134a().state_tq(t_c + 273.15, quality, Reference::Iir).unwrap();
        let (bubble, dew) = (side(0.0), side(1.0));
        assert_abs_diff_eq!(dew.pressure().pa() / 1e6, p, epsilon = 0.5e-4);
        if let Some(volume) = volume {
            assert_abs_diff_eq!(1.0 / dew.density().kg_m3(), volume, epsilon = 0.5e-5);
        }
        assert_abs_diff_eq!(bubble.density().kg_m3(), rho, epsilon = 0.05);
        assert_abs_diff_eq!(bubble.enthalpy().j_kg() / 1e3, liquid, epsilon = 0.005_001);
        assert_abs_diff_eq!(dew.enthalpy().j_kg() / 1e3, vapour, epsilon = 0.005_001);
        assert_abs_diff_eq!(dew.entropy().j_kg_k() / 1e3, entropy, epsilon = 0.5e-4);
    }
}
