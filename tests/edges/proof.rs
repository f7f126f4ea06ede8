//! Vacuum, hold, test pressure, masses and pull-down.

use crate::{place, read};
use coldloop::air::water_saturation_pressure_pa;
use coldloop::circuit::Reading;
use coldloop::proof::{
    ChargeBook, Decay, DecayGas, Evacuation, Hold, Kept, Rise, Sample, Served, VentSample, pull_down, usual_tolerance,
};
use coldloop::units::{
    AbsolutePressure, GaugePressure, Mass, Pressure, PressureDifference, Surroundings, TimeSpan, Volume, celsius,
    in_kelvins,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{ChargeFinding, Compressor, ErrorKind, EvacuationFinding, Expansion, HoldFinding, LeakFinding};
use coldloop::{PullDownFinding, Refrigerant};

fn absolute(pa: f64) -> Pressure {
    AbsolutePressure::from_pa(pa).into()
}

fn evacuation(pa: f64, u_pa: f64, coldest_c: f64) -> Evacuation {
    Evacuation {
        reached: read(absolute(pa), u_pa),
        coldest: read(celsius(coldest_c), 0.0),
        surroundings: place(),
    }
}

/// 1,000 micron: 133.32 Pa.
#[test]
fn a_circuit_counts_as_dry_at_a_thousand_micron() {
    let found = |pa: f64| evacuation(pa, 0.0, 20.0).judge().unwrap().finding;
    assert_eq!(found(132.0), EvacuationFinding::Deep);
    assert_eq!(found(134.6), EvacuationFinding::WaterBoils);
    // Over ice at -30 °C water stays below 38 Pa, which is then the limit.
    assert_eq!(
        evacuation(37.0, 0.0, -30.0).judge().unwrap().finding,
        EvacuationFinding::Deep
    );
    assert_ne!(
        evacuation(40.0, 0.0, -30.0).judge().unwrap().finding,
        EvacuationFinding::Deep
    );
}

/// Two standard uncertainties on either side are the 95 % interval.
#[test]
fn a_vacuum_is_judged_by_twice_its_uncertainty() {
    let water_pa = water_saturation_pressure_pa(in_kelvins(celsius(20.0))).unwrap();
    let found = |pa: f64| evacuation(pa, 100.0, 20.0).judge().unwrap().finding;
    assert_eq!(found(water_pa + 205.0), EvacuationFinding::WaterStays);
    assert_eq!(found(water_pa + 195.0), EvacuationFinding::GaugeCannotTell);
    assert_eq!(found(water_pa - 195.0), EvacuationFinding::GaugeCannotTell);
    assert_eq!(found(water_pa - 205.0), EvacuationFinding::WaterBoils);
}

/// The triple point of water, 611.657 Pa.
#[test]
fn water_freezes_below_its_triple_point() {
    let freezes = |pa: f64| evacuation(pa, 0.0, 20.0).judge().unwrap().water_freezes;
    assert_eq!((freezes(611.0), freezes(612.0)), (true, false));
}

/// The weather moves the air by 1,400 Pa at two standard uncertainties; a barometer by 200 Pa.
#[test]
fn a_dial_that_shows_too_much_vacuum_is_off_beyond_the_weather() {
    let off = |air: Surroundings, too_much_pa: f64| {
        let shown = GaugePressure::from_pa(-air.pressure().pa() - too_much_pa);
        let judged = Evacuation {
            reached: read(shown.into(), 0.0),
            surroundings: air,
            ..evacuation(0.0, 0.0, 20.0)
        }
        .judge();
        judged.unwrap().zero_off.is_some()
    };
    assert_eq!((off(place(), 1_380.0), off(place(), 1_420.0)), (false, true));
    let barometer = Surroundings::measured(AbsolutePressure::from_pa(84_000.0)).unwrap();
    assert_eq!((off(barometer, 196.0), off(barometer, 204.0)), (false, true));
}

fn samples(readings: &[(f64, f64)], u_pa: f64) -> Vec<Sample> {
    let sample = |&(after_s, pa): &(f64, f64)| Sample {
        after: TimeSpan::from_seconds(after_s),
        pressure: read(absolute(pa), u_pa),
    };
    readings.iter().map(sample).collect()
}

fn held(readings: &[(f64, f64)], u_pa: f64) -> HoldFinding {
    let hold = Hold {
        samples: &samples(readings, u_pa),
        warmest: read(celsius(22.0), 0.0),
        surroundings: place(),
        volume: None,
        allowed: Rise::USUAL,
    };
    hold.judge().unwrap().finding
}

/// Ten minutes are the least; nine and a half prove nothing.
#[test]
fn a_hold_proves_from_ten_minutes_on() {
    let flat = |held_s: f64| {
        let readings = [0.0, 0.25, 0.5, 0.75, 1.0].map(|part| (part * held_s, 50.0));
        held(&readings, 0.5)
    };
    assert_eq!((flat(595.0), flat(600.0)), (HoldFinding::TooShort, HoldFinding::Tight));
}

/// A fall counts from three standard uncertainties of the difference on.
#[test]
fn a_fall_is_three_standard_uncertainties() {
    let fall = |of_u: f64| held(&[(0.0, 100.0), (900.0, 100.0 - of_u * f64::sqrt(2.0))], 1.0);
    assert_ne!(fall(2.9), HoldFinding::Falling);
    assert_eq!(fall(3.1), HoldFinding::Falling);
}

/// A rise counts from two standard uncertainties of the difference on, and of two readings all of it is a leak once it ends
/// above what water can lift it to.
#[test]
fn a_rise_is_two_standard_uncertainties() {
    let rise = |of_u: f64| held(&[(0.0, 3_000.0), (900.0, 3_000.0 + of_u * f64::sqrt(2.0))], 1.0);
    assert_eq!((rise(1.9), rise(2.1)), (HoldFinding::NotDeep, HoldFinding::Leak));
}

/// Moisture is told where the rise settles above the limit of a dry circuit by more than a vacuum gauge is off: 146.7 Pa.
#[test]
fn moisture_settles_above_the_limit_and_a_tenth() {
    let settles = |at_pa: f64| {
        let readings: Vec<(f64, f64)> = (0..25)
            .map(|n| 240.0 * f64::from(n))
            .map(|t| (t, at_pa - (at_pa - 20.0) * f64::exp(-t / 480.0)))
            .collect();
        held(&readings, 0.05)
    };
    assert_eq!(settles(144.0), HoldFinding::RiseUnclear);
    assert_eq!(settles(149.0), HoldFinding::Moisture);
}

fn decay(gas: DecayGas, start_pa: f64, end_pa: f64) -> Decay {
    let (start, end) = (GaugePressure::from_pa(start_pa), GaugePressure::from_pa(end_pa));
    Decay {
        gas,
        start: read(start.into(), 0.0),
        start_temperature: read(celsius(20.0), 0.0),
        end: read(end.into(), 0.0),
        end_temperature: read(celsius(20.0), 0.0),
        repeatability: PressureDifference::from_pa(500.0),
        held: TimeSpan::from_seconds(3_600.0),
        surroundings: place(),
        volume: None,
        allowed: None,
        label_pressure: None,
        served: None,
    }
}

/// 30 bar where no label names a limit, and the label's own where there is one.
#[test]
fn a_test_pressure_has_a_word_of_care_above_thirty_bar() {
    let above = |pa: f64, label: Option<f64>| {
        let test = Decay {
            label_pressure: label.map(GaugePressure::from_pa),
            ..decay(DecayGas::Nitrogen, pa, pa)
        };
        test.judge().unwrap().above.map(GaugePressure::pa)
    };
    assert_eq!(above(2_990_000.0, None), None);
    assert_eq!(above(3_010_000.0, None), Some(3_000_000.0));
    assert_eq!(above(1_510_000.0, Some(1_500_000.0)), Some(1_500_000.0));
    assert_eq!(above(1_490_000.0, Some(1_500_000.0)), None);
}

/// A loss counts from two standard uncertainties on: here the gauge is read again within 500 Pa at both ends, 707 Pa together.
#[test]
fn a_loss_is_two_standard_uncertainties() {
    let loss = |pa: f64| {
        let test = decay(DecayGas::Nitrogen, 1_000_000.0, 1_000_000.0 - pa);
        test.judge().unwrap().finding
    };
    assert_eq!(
        (loss(1_380.0), loss(1_450.0)),
        (LeakFinding::NoLossSeen, LeakFinding::Leaks)
    );
    assert_eq!(
        (loss(-1_380.0), loss(-1_450.0)),
        (LeakFinding::NoLossSeen, LeakFinding::GasGained)
    );
}

/// Vapour within two standard uncertainties of saturation may be liquid. R-134a at 20 °C: 571.7 kPa (Tillner-Roth & Baehr 1994).
#[test]
fn vapour_near_its_saturation_may_be_liquid() {
    let at = |below_pa: f64| {
        let pa = 571_700.0 - place().pressure().pa() - below_pa;
        let test = Decay {
            start: read(GaugePressure::from_pa(pa).into(), 10_000.0),
            ..decay(DecayGas::Vapour(Refrigerant::R134a), pa, pa - 100_000.0)
        };
        test.judge().unwrap().finding
    };
    assert_eq!(at(19_000.0), LeakFinding::LiquidPresent);
    assert_ne!(at(21_000.0), LeakFinding::LiquidPresent);
}

/// The test has to last until a leak that empties the vehicle in 365.25 days shows: twice as long for half the charge.
#[test]
fn a_leak_that_empties_within_a_year_sets_the_time_to_hold() {
    let test = |charge_kg: f64| {
        let test = Decay {
            volume: Some(read(Volume::from_m3(0.002), 0.0)),
            served: Some(Served {
                refrigerant: Refrigerant::R134a,
                temperature: celsius(20.0),
                charge: Some(Mass::from_kg(charge_kg)),
            }),
            ..decay(DecayGas::Nitrogen, 1_000_000.0, 990_000.0)
        };
        test.judge().unwrap()
    };
    let judged = test(0.6);
    // The time in which twice the least rate that shows, the geometric mean of hole and crack, is the charge in a year.
    let (least, most) = judged.least_seen_refrigerant.unwrap();
    let wanted_s = 2.0 * (least.kg_s() * most.kg_s()).sqrt() / (0.6 / (365.25 * 86_400.0)) * 3_600.0;
    assert!((judged.needed_for_a_year.unwrap().seconds() / wanted_s - 1.0).abs() < 1e-9);
    assert!((test(0.3).needed_for_a_year.unwrap().seconds() / wanted_s - 2.0).abs() < 1e-9);
}

/// Nothing leaks out of a circuit whose pressure is not above that of the air: a test below it, and R-134a at -35 °C, 66 kPa
/// (Tillner-Roth & Baehr 1994).
#[test]
fn a_circuit_below_the_pressure_of_the_air_does_not_leak_out() {
    let told = |start_pa: f64, at_c: f64| {
        let test = Decay {
            surroundings: Surroundings::SEA_LEVEL,
            volume: Some(read(Volume::from_m3(0.002), 0.0)),
            served: Some(Served {
                refrigerant: Refrigerant::R134a,
                temperature: celsius(at_c),
                charge: Some(Mass::from_kg(0.6)),
            }),
            ..decay(DecayGas::Nitrogen, start_pa, start_pa - 1_000.0)
        };
        test.judge().unwrap().needed_for_a_year.is_some()
    };
    assert!(told(500_000.0, 20.0));
    assert!(!told(-20_000.0, 20.0) && !told(500_000.0, -35.0) && !told(-20_000.0, -35.0));
}

fn book() -> ChargeBook {
    ChargeBook {
        nominal: Some(Mass::from_kg(0.600)),
        tolerance: Some(Mass::from_kg(0.020)),
        ..ChargeBook::new(Refrigerant::R134a, place())
    }
}

/// The middle 95 % of an error that is bounded are 1.645 of its standard uncertainties, 0.95 of its limit.
#[test]
fn a_charge_by_the_scale_alone_is_known_within_nearly_its_limit() {
    let now = |kg: f64| {
        let book = ChargeBook {
            charged: Some(Reading::within(Mass::from_kg(kg), Mass::from_kg(0.010))),
            ..book()
        };
        book.balance().unwrap().now.unwrap()
    };
    // 580 g and 620 g are the edges; the scale's 9.5 g on either side.
    assert_eq!(
        (now(0.5702), now(0.5708)),
        (ChargeFinding::Under, ChargeFinding::CannotTell)
    );
    assert_eq!(
        (now(0.5892), now(0.5898)),
        (ChargeFinding::CannotTell, ChargeFinding::Within)
    );
    assert_eq!(
        (now(0.6102), now(0.6108)),
        (ChargeFinding::Within, ChargeFinding::CannotTell)
    );
    assert_eq!(
        (now(0.6292), now(0.6298)),
        (ChargeFinding::CannotTell, ChargeFinding::Over)
    );
}

/// What was not weighed counts with two standard uncertainties: liquid in the hose, with a scale that is exact.
#[test]
fn what_stays_in_the_hose_counts_with_twice_its_uncertainty() {
    let hose = Kept {
        volume: read(Volume::from_m3(60e-6), 3e-6),
        temperature: read(celsius(25.0), 0.0),
        vapour: None,
    };
    let now = |kg: f64| {
        let book = ChargeBook {
            charged: Some(read(Mass::from_kg(kg), 0.0)),
            hose: Some(hose),
            ..book()
        };
        book.balance().unwrap()
    };
    let in_hose = now(0.6).hose.unwrap().si();
    let edge_kg = 0.580 + in_hose.value - 2.0 * in_hose.standard_uncertainty;
    assert!((in_hose.standard_uncertainty / in_hose.value - 0.05).abs() < 1e-6);
    assert_eq!(now(edge_kg - 2e-4).now, Some(ChargeFinding::Under));
    assert_eq!(now(edge_kg + 2e-4).now, Some(ChargeFinding::CannotTell));
}

/// 15 g up to a charge of 300 g, 5 % from there on.
#[test]
fn the_usual_tolerance_is_the_larger_of_two() {
    let kg = |nominal_kg: f64| usual_tolerance(Mass::from_kg(nominal_kg)).kg();
    assert_eq!((kg(0.250), kg(0.290)), (0.015, 0.015));
    assert!((kg(0.320) - 0.016).abs() < 1e-12 && (kg(1.0) - 0.050).abs() < 1e-12);
}

/// A machine takes out 95 % or more: of 950 g recovered up to 50 g are left, and 25 g are counted, within 25 g.
#[test]
fn what_a_recovery_leaves_is_a_twentieth_at_most() {
    let book = ChargeBook {
        recovered: Some(read(Mass::from_kg(0.950), 0.0)),
        ..book()
    };
    let found = book.balance().unwrap().charge_found.unwrap().si();
    assert!((found.value - 0.975).abs() < 1e-12, "{found:?}");
    assert!((found.standard_uncertainty - 0.025 / f64::sqrt(3.0)).abs() < 1e-12);
}

/// Vapour denser than saturated is no vapour. R-134a at 25 °C: 665.4 kPa (Tillner-Roth & Baehr 1994).
#[test]
fn vapour_above_its_saturation_is_refused() {
    let hose = |pa: f64| Kept {
        volume: read(Volume::from_m3(60e-6), 0.0),
        temperature: read(celsius(25.0), 0.0),
        vapour: Some(read(absolute(pa), 0.0)),
    };
    let kept = |pa: f64| {
        let book = ChargeBook {
            charged: Some(read(Mass::from_kg(0.6), 0.0)),
            hose: Some(hose(pa)),
            ..book()
        };
        book.balance()
    };
    assert!(kept(664_000.0).is_ok());
    assert_eq!(kept(667_000.0).unwrap_err().kind, ErrorKind::Inconsistent);
}

fn vent(readings_c: &[f64]) -> PullDownFinding {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(28.0), place());
    let samples: Vec<VentSample> = readings_c
        .iter()
        .enumerate()
        .map(|(n, &c)| VentSample {
            after: TimeSpan::from_seconds(120.0 * (n as f64 + 1.0)),
            vent: read(celsius(c), 0.0),
        })
        .collect();
    pull_down(&system, &conditions, &samples).unwrap().finding
}

/// A vent that climbs by more than 2 K from its lowest reading rises, and what falls below 0 °C freezes.
#[test]
fn a_vent_rises_by_two_kelvins_and_freezes_below_zero() {
    assert_eq!(vent(&[24.0, 5.0, 6.9]), PullDownFinding::Reached);
    assert_eq!(vent(&[24.0, 5.0, 7.1]), PullDownFinding::Rising);
    assert_eq!(vent(&[24.0, 8.0, 0.1]), PullDownFinding::Reached);
    assert_eq!(vent(&[24.0, 8.0, -0.1]), PullDownFinding::Freezing);
    assert_eq!(vent(&[8.0]), PullDownFinding::CannotTell);
    assert_eq!(vent(&[24.0, 8.0]), PullDownFinding::Reached);
}

/// With readings of 0.5 K standard uncertainty the climb has to exceed 2 K by 2 √2 of them: 3.41 K.
#[test]
fn a_rise_of_the_vent_stands_out_from_its_thermometer() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(28.0), place());
    // A fall that does not slow has no end.
    let straight = [0.0, 1.0, 2.0, 3.0].map(|n| VentSample {
        after: TimeSpan::from_seconds(120.0 * n),
        vent: read(celsius(30.0 - 2.0 * n), 0.0),
    });
    let fall = pull_down(&system, &conditions, &straight).unwrap();
    assert_eq!((fall.finding, fall.levels_off), (PullDownFinding::CannotTell, None));
    let climbs = |by_k: f64| {
        let at = |after_s: f64, c: f64| VentSample {
            after: TimeSpan::from_seconds(after_s),
            vent: read(celsius(c), 0.5),
        };
        let samples = [at(120.0, 24.0), at(240.0, 5.0), at(360.0, 5.0 + by_k)];
        pull_down(&system, &conditions, &samples).unwrap().finding == PullDownFinding::Rising
    };
    assert_eq!((climbs(3.35), climbs(3.48)), (false, true));
}
