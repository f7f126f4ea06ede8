//! The saturation curves against equilibria computed by other programs, and against the equation itself.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::inner::eos::Isotherm;
use coldloop::saturation;
use coldloop::{ErrorKind, Quantity, Reference, Refrigerant};

/// Relative difference.
fn off(found: f64, right: f64) -> f64 {
    ((found - right) / right).abs()
}

/// Allowed relative difference of pressure (column 0) and densities.
fn allowed(refrigerant: Refrigerant, column: usize, reduced_t: f64) -> f64 {
    if refrigerant == Refrigerant::R152a {
        // The file was made with the Helmholtz form of another program, rounded; here it is the exact integral of the
        // printed equation, which tests/papers compares with the print. The effect on densities grows as 1/s.
        2e-7 / (1.0 - reduced_t).max(1e-12).sqrt()
    } else if column > 0 && reduced_t > 0.999 {
        // The last 0.1 %: the last digit of the temperature moves densities as 1/s, and those of R-744 follow no
        // polynomial there.
        1e-10
    } else if column > 0 && reduced_t < 0.4 {
        2e-14 // the last digit of the temperature moves the density of so thin a vapour twentyfold
    } else {
        1e-14
    }
}

/// Source of the rows: see the head of the file.
#[test]
fn curves_meet_equilibria_of_extended_precision() {
    let text = include_str!("data/saturation.csv");
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut rows = 0;
    let mut wrong = Vec::new();
    for record in reader.records() {
        let record = record.unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let Some(refrigerant) = Refrigerant::from_id(&record[0]) else {
            continue;
        };
        let pure = saturation::pure(refrigerant).unwrap();
        // One row was written a rounding error below the lowest temperature.
        let t_k = number(1).max(pure.fluid.lowest_t_k);
        let equation = &pure.fluid.equation;
        let denser = equation.reducing_rho_mol_m3 / number(5);
        let stiffer = denser * equation.gas_constant / number(6);
        let found = [
            pure.pressure_pa(t_k).unwrap(),
            pure.liquid(t_k).unwrap().rho_mol_m3,
            pure.vapour(t_k).unwrap().rho_mol_m3,
        ];
        // The pressures of the file were taken on the liquid, where the equation loses up to ten digits of them far
        // below the critical point. The pressure at the vapour density of the same row loses none there, but some
        // near the critical point. Either of the two has to be met.
        let printed = number(2) * stiffer;
        let of_vapour = Isotherm::new(equation, t_k).pressure_pa(number(4) * denser).0;
        for (k, found) in found.into_iter().enumerate() {
            let right = match k {
                0 if off(found, of_vapour) < off(found, printed) => of_vapour,
                0 => printed,
                _ => number(2 + k) * denser,
            };
            let allowed = allowed(refrigerant, k, t_k / pure.critical_t_k);
            let error = off(found, right);
            if error > allowed {
                wrong.push(format!(
                    "{refrigerant} {t_k} K column {k}: {found} is off by {error:.1e}"
                ));
            }
        }
        rows += 1;
    }
    assert!(rows >= 22, "{rows} rows");
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// Equilibria of every equation in 50 digits, by tests/python/equilibria.py, from half the critical temperature to 1e-12
/// below it.
///
/// Up to 0.999 of the critical temperature the budget is the rounding of a curve's value, 1e-14 at most. Above, the rounding
/// of T_c to a double moves densities by that rounding over s = sqrt(1 - T / T_c), and ten times as far for R-1234ze(E), whose
/// isotherms are nearly level over a wider range. The densities of R-744, whose critical terms are not polynomials, were found
/// within 7.2e-11 where its curves have the most pieces.
#[test]
fn curves_meet_equilibria_in_fifty_digits() {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path("tests/data/equilibria.csv")
        .unwrap();
    let mut rows = std::collections::BTreeMap::new();
    for record in reader.records() {
        let record = record.unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let refrigerant = Refrigerant::from_id(&record[0]).unwrap();
        let pure = saturation::pure(refrigerant).unwrap();
        let t_k = number(1);
        let below = 1.0 - t_k / pure.critical_t_k;
        *rows.entry(refrigerant).or_insert(0) += 1;
        let density = if below > 0.999e-3 {
            1e-14
        } else if refrigerant == Refrigerant::R744 {
            if below > 1.5e-5 { 1e-14 } else { 1e-10 }
        } else if refrigerant == Refrigerant::R1234zeE {
            1e-14 + 4e-15 / below.sqrt()
        } else {
            1e-14 + 4e-16 / below.sqrt()
        };
        for (found, right, allowed) in [
            (pure.pressure_pa(t_k).unwrap(), number(2), 1e-14),
            (pure.liquid(t_k).unwrap().rho_mol_m3, number(3), density),
            (pure.vapour(t_k).unwrap().rho_mol_m3, number(4), density),
        ] {
            let error = off(found, right);
            assert!(
                error < allowed,
                "{refrigerant} {below:.0e} below T_c: {found} is off by {error:.1e}"
            );
        }
    }
    assert!(
        rows.len() == Refrigerant::ALL.iter().filter(|r| !r.is_blend()).count() && rows.values().all(|n| *n >= 25),
        "{rows:?}"
    );
}

#[test]
fn temperature_of_pressure_of_temperature_comes_back() {
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let (low, high) = (pure.temperatures().low, pure.temperatures().high);
        for k in 0..=20_000 {
            let t_k = (low + (high - low) * f64::from(k) / 20_000.0).min(high);
            let back = pure
                .temperature_k(pure.pressure_pa(t_k).unwrap().min(pure.critical_p_pa))
                .unwrap();
            assert!(off(back, t_k) < 5e-14, "{refrigerant} {t_k} K comes back as {back} K");
        }
    }
}

#[test]
fn outside_the_line_the_error_names_the_bounds() {
    let error = saturation::dew_pressure_pa(Refrigerant::R134a, 400.0).unwrap_err();
    assert_eq!(
        (error.kind, error.quantity, error.value),
        (ErrorKind::OutOfRange, Quantity::Temperature, 400.0)
    );
    assert!(error.low == 169.85 && (error.high - 374.211_966_6).abs() < 1e-6);
    let error = saturation::dew_temperature_k(Refrigerant::R134a, f64::NAN).unwrap_err();
    assert_eq!(error.kind, ErrorKind::NotFinite);
}

/// Clapeyron: dp/dT = (s'' - s') rho' rho'' / (rho' - rho''), each from its own curve.
#[test]
fn the_slope_is_that_of_clapeyron() {
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let molar_mass = pure.fluid.equation.molar_mass;
        let (low, high) = (pure.temperatures().low, pure.temperatures().high);
        for k in 0..500 {
            let t_k = low + (high - low) * f64::from(k) / 500.0;
            let (liquid, vapour) = (pure.liquid(t_k).unwrap(), pure.vapour(t_k).unwrap());
            let volume = (1.0 / vapour.rho_mol_m3 - 1.0 / liquid.rho_mol_m3) / molar_mass;
            let clapeyron = (vapour.s_j_kg_k - liquid.s_j_kg_k) / volume;
            let slope = pure.slope_pa_k(t_k).unwrap();
            // The derivative of a narrow piece of the curve loses digits, and so do the differences of both sides near the
            // critical point: 1e-16 / s^2 at most.
            let s2 = 1.0 - t_k / pure.critical_t_k;
            assert!(
                off(slope, clapeyron) < 1e-11 + 1e-15 / s2,
                "{refrigerant} {t_k} K: {slope} {clapeyron}"
            );
        }
    }
}

#[test]
fn states_join_the_saturation_line() {
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        for part in [0.05, 0.3, 0.6, 0.9] {
            let t_k = pure.fluid.lowest_t_k + part * (0.99 * pure.critical_t_k - pure.fluid.lowest_t_k);
            let p_pa = pure.pressure_pa(t_k).unwrap();
            let dew = pure.state_tq(t_k, 1.0, Reference::Iir).unwrap();
            let bubble = pure.state_tq(t_k, 0.0, Reference::Iir).unwrap();
            let vapour = pure.state_tp(t_k, p_pa * (1.0 - 1e-11), Reference::Iir).unwrap();
            let liquid = pure.state_tp(t_k, p_pa * (1.0 + 1e-11), Reference::Iir).unwrap();
            for (near, line) in [(vapour, dew), (liquid, bubble)] {
                assert!(off(near.molar_density().mol_m3(), line.molar_density().mol_m3()) < 1e-9);
                assert!((near.enthalpy().j_kg() - line.enthalpy().j_kg()).abs() < 1e-9 * 200e3);
                assert!((near.entropy().j_kg_k() - line.entropy().j_kg_k()).abs() < 1e-9 * 1e3);
            }
            assert_eq!(
                pure.state_tp(t_k, p_pa, Reference::Iir).unwrap_err().kind,
                ErrorKind::TwoPhase
            );
        }
    }
}

/// In the critical point an isotherm is level: the pressure is met to rounding long before the density converges.
#[test]
fn a_state_in_the_critical_point_is_found() {
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        for k in 0..200 {
            let t_k = pure.critical_t_k * (1.0 + 1e-15 * f64::from(k) * f64::from(k));
            let p_pa = pure.critical_p_pa * (1.0 + 1e-13 * f64::from(k - 100));
            let state = pure.state_tp(t_k, p_pa, Reference::Iir);
            assert!(state.is_ok(), "{refrigerant} {t_k} K {p_pa} Pa: {state:?}");
        }
    }
}

/// Arrays go through the functions for one value, whatever the optimiser makes of the loop.
#[test]
fn arrays_have_the_bits_of_single_values() {
    let bits = |values: &[f64]| values.iter().map(|x| x.to_bits()).collect::<Vec<_>>();
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let (low, high) = (pure.temperatures().low, pure.temperatures().high);
        let t_k: Vec<f64> = (0..=1_000)
            .map(|k| low + (high - low) * f64::from(k) / 1_000.0)
            .map(|t_k| t_k.min(high))
            .collect();
        let alone: Vec<f64> = t_k
            .iter()
            .map(|&t| saturation::dew_pressure_pa(refrigerant, t).unwrap())
            .collect();
        let mut found = vec![0.0; t_k.len()];
        saturation::dew_pressures_pa(refrigerant, &t_k, &mut found).unwrap();
        assert_eq!(bits(&found), bits(&alone));
        saturation::bubble_pressures_pa(refrigerant, &t_k, &mut found).unwrap();
        assert_eq!(bits(&found), bits(&alone));
        let back: Vec<f64> = alone
            .iter()
            .map(|&p| saturation::dew_temperature_k(refrigerant, p).unwrap())
            .collect();
        saturation::dew_temperatures_k(refrigerant, &alone, &mut found).unwrap();
        assert_eq!(bits(&found), bits(&back));
        saturation::bubble_temperatures_k(refrigerant, &alone, &mut found).unwrap();
        assert_eq!(bits(&found), bits(&back));
    }
}

#[test]
fn elements_without_an_answer_are_told_and_the_rest_computed() {
    let t_k = [260.0, f64::NAN, 500.0, 280.0, -1.0];
    let mut found = [0.0; 5];
    let told = saturation::dew_pressures_pa(Refrigerant::R134a, &t_k, &mut found).unwrap_err();
    assert_eq!((told.count, told.first), (3, 1));
    assert_eq!(
        told.error,
        saturation::dew_pressure_pa(Refrigerant::R134a, f64::NAN).unwrap_err()
    );
    assert_eq!(found.map(f64::is_nan), [false, true, true, false, true]);
    let told = saturation::dew_temperatures_k(Refrigerant::R134a, &[1e5, 1e9], &mut found[..2]).unwrap_err();
    assert_eq!((told.count, told.first, told.error.kind), (1, 1, ErrorKind::OutOfRange));
    let told = saturation::dew_temperatures_k(Refrigerant::R134a, &t_k, &mut found[..2]).unwrap_err();
    assert_eq!(
        (told.error.kind, told.error.quantity),
        (ErrorKind::Inconsistent, Quantity::Rows)
    );
    assert!(found[..2].iter().all(|x| x.is_nan()));
    assert_eq!(saturation::dew_pressures_pa(Refrigerant::R134a, &[], &mut []), Ok(()));
}
