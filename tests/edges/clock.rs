//! What does not depend on when the clock was started, and what several uncertainties make of a vacuum and a charge.

use crate::{place, read};
use coldloop::circuit::Reading;
use coldloop::proof::{ChargeBook, Evacuation, Hold, Kept, Rise, Sample, VentSample, pull_down};
use coldloop::units::{AbsolutePressure, GaugePressure, Mass, Surroundings, TimeSpan, Volume, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{ChargeFinding, Compressor, EvacuationFinding, Expansion, HoldFinding, Refrigerant};

/// A vent falls by the same curve whether its minutes count from the start of the run or from an hour before.
#[test]
fn a_fall_ends_at_the_same_temperature_whenever_the_clock_starts() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(28.0), place());
    let levels_off_k = |from_s: f64| {
        let samples = [0.0, 120.0, 240.0, 360.0, 480.0, 600.0].map(|s| VentSample {
            after: TimeSpan::from_seconds(from_s + s),
            vent: read(celsius(12.0 + 14.0 * f64::exp(-s / 240.0)), 0.1),
        });
        pull_down(&system, &conditions, &samples)
            .unwrap()
            .levels_off
            .unwrap()
            .si()
    };
    let (at_once, later) = (levels_off_k(0.0), levels_off_k(3_600.0));
    assert!((at_once.value - later.value).abs() < 1e-6, "{at_once:?} {later:?}");
    // 12 °C is where the curve ends; two lines in place of a curve miss it by a kelvin or so.
    assert!((at_once.value - 285.15).abs() < 1.5, "{at_once:?}");
}

/// A vacuum that settles as water dries, and one that rises at a steady rate, are told apart at any time of day.
#[test]
fn a_hold_is_judged_alike_whenever_the_clock_starts() {
    let held = |from_s: f64, pa: &dyn Fn(f64) -> f64| {
        let samples: Vec<Sample> = (0..25)
            .map(|n| 240.0 * f64::from(n))
            .map(|s| Sample {
                after: TimeSpan::from_seconds(from_s + s),
                pressure: read(AbsolutePressure::from_pa(pa(s)).into(), 0.05),
            })
            .collect();
        let hold = Hold {
            samples: &samples,
            warmest: read(celsius(22.0), 0.0),
            surroundings: place(),
            volume: None,
            allowed: Rise::USUAL,
        };
        let judged = hold.judge().unwrap();
        assert_eq!(judged.held.seconds(), 5_760.0);
        judged.finding
    };
    let moist = |s: f64| 200.0 - 180.0 * f64::exp(-s / 480.0);
    let leaks = |s: f64| 50.0 + 0.5 * s;
    let flat = |_: f64| 50.0;
    for from_s in [0.0, 60.0, 3_600.0, 86_400.0] {
        assert_eq!(held(from_s, &moist), HoldFinding::Moisture, "{from_s} s");
        assert_eq!(held(from_s, &leaks), HoldFinding::Leak, "{from_s} s");
        assert_eq!(held(from_s, &flat), HoldFinding::Tight, "{from_s} s");
    }
}

/// A dial of 2 kPa standard uncertainty that shows up to 4 kPa too much vacuum is as good as its own error; beyond that, what it
/// shows too much counts, and water at 35 °C, 5.6 kPa (IAPWS), is no longer below what it may show.
#[test]
fn a_dial_is_off_beyond_twice_its_uncertainty() {
    let air = Surroundings::measured(AbsolutePressure::from_pa(84_000.0)).unwrap();
    let cannot_tell = |too_much_pa: f64| {
        let shown = GaugePressure::from_pa(-84_000.0 - too_much_pa);
        let evacuation = Evacuation {
            reached: read(shown.into(), 2_000.0),
            coldest: read(celsius(35.0), 0.0),
            surroundings: air,
        };
        evacuation.judge().unwrap().finding == EvacuationFinding::GaugeCannotTell
    };
    assert_eq!((cannot_tell(3_900.0), cannot_tell(4_100.0)), (false, true));
}

/// A scale of 10 g and a hose: 0.95 of the limit of the scale and twice the rest where that is little, twice the uncertainty of both
/// where it is not.
#[test]
fn the_rest_counts_beside_the_limit_of_the_scale() {
    let balance = |kg: f64, u_m3: f64| {
        let book = ChargeBook {
            nominal: Some(Mass::from_kg(0.600)),
            tolerance: Some(Mass::from_kg(0.020)),
            charged: Some(Reading::within(Mass::from_kg(kg), Mass::from_kg(0.010))),
            hose: Some(Kept {
                volume: read(Volume::from_m3(60e-6), u_m3),
                temperature: read(celsius(25.0), 0.0),
                vapour: None,
            }),
            ..ChargeBook::new(Refrigerant::R134a, place())
        };
        book.balance().unwrap()
    };
    for u_m3 in [0.5e-6, 3e-6] {
        let hose = balance(0.6, u_m3).hose.unwrap().si();
        let both = 2.0 * f64::hypot(0.010 / f64::sqrt(3.0), hose.standard_uncertainty);
        let half_kg = f64::min(0.95 * 0.010 + 2.0 * hose.standard_uncertainty, both);
        let edge_kg = 0.580 + hose.value - half_kg;
        assert_eq!(balance(edge_kg - 2e-4, u_m3).now, Some(ChargeFinding::Under));
        assert_eq!(balance(edge_kg + 2e-4, u_m3).now, Some(ChargeFinding::CannotTell));
    }
}
