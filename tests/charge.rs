//! Charges of any composition by mass, the mean of the evaporating range, and blends from enthalpy and entropy.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::LeakPhase;
use coldloop::saturation::{self, Charge};
use coldloop::units::{AbsolutePressure, Density, in_kelvins, kelvins};
use coldloop::{ErrorKind, Phase, Quantity, Reference, Refrigerant};

const WARM_K: f64 = 298.15;

fn listed(refrigerant: Refrigerant) -> Charge {
    Charge::new(&[(refrigerant, 1.0)], 0.0).unwrap()
}

#[test]
fn a_listed_blend_has_its_own_lines() {
    for refrigerant in Refrigerant::ALL
        .into_iter()
        .filter(|refrigerant| refrigerant.is_blend())
    {
        let charge = listed(refrigerant);
        for t_k in [263.15, WARM_K] {
            let line = saturation::line_of(refrigerant);
            let dew = charge.dew_pressure(kelvins(t_k)).unwrap().pa()
                / line.pressure_pa(coldloop::saturation::Side::Dew, t_k).unwrap();
            assert!((dew - 1.0).abs() < 1e-9, "{refrigerant:?} {dew}");
            let line_pa = line.pressure_pa(coldloop::saturation::Side::Bubble, t_k).unwrap();
            let bubble = charge.bubble_pressure(kelvins(t_k)).unwrap().pa() / line_pa;
            assert!((bubble - 1.0).abs() < 1e-9, "{refrigerant:?} {bubble}");
            let back_k = in_kelvins(charge.bubble_temperature(AbsolutePressure::from_pa(line_pa)).unwrap());
            assert!((back_k - t_k).abs() < 1e-6, "{refrigerant:?} {back_k}");
        }
    }
}

#[test]
fn a_pure_charge_is_the_pure_refrigerant() {
    let charge = listed(Refrigerant::R134a);
    let p_pa = saturation::dew_pressure_pa(Refrigerant::R134a, WARM_K).unwrap();
    // The mixture model has the gas constant of CODATA 2018, 4e-6 from that of the paper.
    for found in [
        charge.bubble_pressure(kelvins(WARM_K)),
        charge.dew_pressure(kelvins(WARM_K)),
    ] {
        assert!((found.unwrap().pa() / p_pa - 1.0).abs() < 1e-4);
    }
    let vapour = charge
        .split(kelvins(WARM_K), AbsolutePressure::from_pa(0.9 * p_pa))
        .unwrap();
    let liquid = charge
        .split(kelvins(WARM_K), AbsolutePressure::from_pa(1.1 * p_pa))
        .unwrap();
    assert!(vapour.quality.is_none() && vapour.density.kg_m3() < 40.0);
    assert!(liquid.quality.is_none() && liquid.density.kg_m3() > 1_100.0);
    let left = charge
        .leaked(kelvins(WARM_K), Density::from_kg_m3(300.0), LeakPhase::Vapour, 0.5)
        .unwrap();
    assert!(left.has_liquid && (left.pressure.pa() / p_pa - 1.0).abs() < 1e-4);
    assert!((left.shares.of(Refrigerant::R134a) - 1.0).abs() < 1e-15);
}

/// Only the ratios of masses matter; a blend counts as its components; a refrigerant that is given twice is added up.
#[test]
fn shares_are_by_mass_whatever_the_unit() {
    let kilograms = Charge::new(&[(Refrigerant::R407C, 0.8), (Refrigerant::R134a, 0.2)], 0.0).unwrap();
    let percent = [
        (Refrigerant::R32, 18.4),
        (Refrigerant::R125, 20.0),
        (Refrigerant::R134a, 61.6),
        (Refrigerant::R22, 0.0),
    ];
    let percent = Charge::new(&percent, 0.0).unwrap();
    assert_eq!(kilograms.shares().refrigerants().count(), 3);
    for (refrigerant, share) in percent.shares().refrigerants() {
        assert!((kilograms.shares().of(refrigerant) - share).abs() < 1e-14);
    }
    let again = Charge::of(kilograms.shares()).unwrap();
    assert!(
        (again.dew_pressure(kelvins(WARM_K)).unwrap().pa() / percent.dew_pressure(kelvins(WARM_K)).unwrap().pa() - 1.0)
            .abs()
            < 1e-12
    );
    let all: f64 = kilograms.shares().refrigerants().map(|(_, share)| share).sum();
    assert!((all - 1.0).abs() < 1e-15);
}

/// Mass and volume balance: both phases together hold the whole charge.
#[test]
fn a_phase_split_keeps_every_component() {
    let charge = Charge::new(&[(Refrigerant::R407C, 0.9), (Refrigerant::R22, 0.08)], 0.02).unwrap();
    let p_pa = 0.5 * charge.bubble_pressure(kelvins(WARM_K)).unwrap().pa()
        + 0.5 * charge.dew_pressure(kelvins(WARM_K)).unwrap().pa();
    let phase_split = charge.split(kelvins(WARM_K), AbsolutePressure::from_pa(p_pa)).unwrap();
    let (quality, liquid, vapour) = (
        phase_split.quality.unwrap(),
        phase_split.liquid.unwrap(),
        phase_split.vapour.unwrap(),
    );
    assert!(quality > 0.05 && quality < 1.0);
    let mixed = |of: fn(&saturation::Shares) -> f64| (1.0 - quality) * of(&liquid.1) + quality * of(&vapour.1);
    assert!((mixed(|shares| shares.of(Refrigerant::R22)) - 0.08).abs() < 1e-9);
    assert!((mixed(saturation::Shares::air) - 0.02).abs() < 1e-9);
    assert!(vapour.1.air() > 5.0 * liquid.1.air()); // air hardly dissolves
    let volume = (1.0 - quality) / liquid.0.kg_m3() + quality / vapour.0.kg_m3();
    assert!((volume * phase_split.density.kg_m3() - 1.0).abs() < 1e-9);
}

#[test]
fn what_is_no_charge_is_refused() {
    let kind = |parts: &[(Refrigerant, f64)], air| Charge::new(parts, air).map(|_| ()).unwrap_err();
    assert_eq!(kind(&[], 0.5).kind, ErrorKind::Missing);
    assert_eq!(kind(&[(Refrigerant::R134a, 0.0)], 0.0).kind, ErrorKind::Missing);
    assert_eq!(kind(&[(Refrigerant::R134a, f64::NAN)], 0.0).kind, ErrorKind::NotFinite);
    assert_eq!(kind(&[(Refrigerant::R134a, -0.1)], 0.0).quantity, Quantity::Mass);
    assert_eq!(kind(&[(Refrigerant::R134a, 1.0)], -0.1).kind, ErrorKind::OutOfRange);
    let many = kind(&[(Refrigerant::R438A, 1.0), (Refrigerant::R22, 1.0)], 0.1);
    assert_eq!(
        (many.kind, many.quantity, many.value),
        (ErrorKind::OutOfRange, Quantity::Rows, 9.0)
    );
    let charge = listed(Refrigerant::R407C);
    assert_eq!(
        charge
            .split(kelvins(f64::NAN), AbsolutePressure::from_pa(1e6))
            .unwrap_err()
            .kind,
        ErrorKind::NotFinite
    );
    assert_eq!(
        charge
            .split(kelvins(50.0), AbsolutePressure::from_pa(1e6))
            .unwrap_err()
            .quantity,
        Quantity::Temperature
    );
    assert_eq!(
        charge
            .split(kelvins(WARM_K), AbsolutePressure::from_pa(-1.0))
            .unwrap_err()
            .quantity,
        Quantity::AbsolutePressure
    );
    assert_eq!(
        charge.dew_pressure(kelvins(460.0)).unwrap_err().kind,
        ErrorKind::OutOfRange
    );
}

#[test]
fn the_evaporating_mean_lies_between_inlet_and_dew() {
    for refrigerant in [Refrigerant::R134a, Refrigerant::R407C, Refrigerant::R455A] {
        let line = saturation::line_of(refrigerant);
        let dew_k = saturation::dew_temperature_k(refrigerant, 400e3).unwrap();
        let bubble_k = saturation::bubble_temperature_k(refrigerant, 400e3).unwrap();
        let at = |quality| line.evaporating_mean_pq(400e3, quality).unwrap();
        assert!((at(0.0) - 0.5 * (bubble_k + dew_k)).abs() < 1e-9);
        assert!((at(1.0) - dew_k).abs() < 1e-9);
        assert!(at(0.3) >= at(0.0) && at(0.3) <= at(1.0));
        let inlet = line.state_pq(400e3, 0.3, Reference::Iir).unwrap();
        let by_enthalpy = line
            .evaporating_mean_ph(400e3, inlet.enthalpy().j_kg(), Reference::Iir)
            .unwrap();
        assert!((by_enthalpy - at(0.3)).abs() < 1e-8);
        // Liquid that enters below its bubble point begins to boil there.
        let cold = line.state_tp(bubble_k - 3.0, 400e3, Reference::Iir).unwrap();
        let from_liquid = line
            .evaporating_mean_ph(400e3, cold.enthalpy().j_kg(), Reference::Iir)
            .unwrap();
        assert!((from_liquid - at(0.0)).abs() < 1e-9);
        let warm = line.state_tp(dew_k + 5.0, 400e3, Reference::Iir).unwrap();
        let refused = line
            .evaporating_mean_ph(400e3, warm.enthalpy().j_kg(), Reference::Iir)
            .unwrap_err();
        assert_eq!(
            (refused.kind, refused.quantity),
            (ErrorKind::OutOfRange, Quantity::Enthalpy)
        );
        assert_eq!(
            line.evaporating_mean_pq(400e3, 1.2).unwrap_err().quantity,
            Quantity::Quality
        );
    }
}

/// Pressure and temperature come back from enthalpy and entropy: of vapour, of two phases, of a fluid above its critical point,
/// and of liquid, whose pressure hardly changes them, with a wider tolerance.
#[test]
fn a_blend_comes_back_from_enthalpy_and_entropy() {
    for refrigerant in Refrigerant::ALL
        .into_iter()
        .filter(|refrigerant| refrigerant.is_blend())
    {
        let line = saturation::line_of(refrigerant);
        let (t_c, p_c) = (line.critical_t_k(), line.critical_p_pa());
        let mut states = Vec::new();
        for (t, p) in [(0.9, 0.05), (0.95, 0.3), (1.05, 1.5), (0.8, 1.1), (0.75, 0.6)] {
            states.extend(line.state_tp(t * t_c, p * p_c, Reference::Ashrae));
        }
        for (p, quality) in [(0.05, 0.2), (0.2, 0.7), (0.5, 0.05)] {
            states.extend(line.state_pq(p * p_c, quality, Reference::Ashrae));
        }
        assert!(states.len() > 5, "{refrigerant:?}");
        for state in states {
            let found = line.state_hs(state.enthalpy().j_kg(), state.entropy().j_kg_k(), Reference::Ashrae);
            let found = found.unwrap_or_else(|error| panic!("{refrigerant:?} {state:?}: {error}"));
            assert!(
                (in_kelvins(found.temperature()) - in_kelvins(state.temperature())).abs() < 1e-6,
                "{state:?} {found:?}"
            );
            let tolerance = if state.phase == Phase::Liquid { 1e-6 } else { 1e-8 };
            assert!(
                (found.pressure().pa() / state.pressure().pa() - 1.0).abs() < tolerance,
                "{state:?} {found:?}"
            );
            assert!((found.entropy().j_kg_k() - state.entropy().j_kg_k()).abs() < 1e-6);
        }
    }
    let line = saturation::line_of(Refrigerant::R407C);
    let refused = |h, s| line.state_hs(h, s, Reference::Iir).unwrap_err().kind;
    assert_eq!(refused(f64::NAN, 1e3), ErrorKind::NotFinite);
    assert_eq!(refused(400e3, f64::INFINITY), ErrorKind::NotFinite);
    for (h, s) in [(400e3, -1e4), (400e3, 1e4), (1e9, 1e3), (-1e9, 1e3)] {
        assert_eq!(refused(h, s), ErrorKind::OutOfRange, "{h} {s}");
    }
}
