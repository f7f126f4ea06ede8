//! What a proof leaves open, and what it does not take for granted.

use crate::{place, read};
use coldloop::circuit::{Derived, Readings};
use coldloop::proof::{Hold, Rise, Sample, VentSample, pull_down};
use coldloop::units::{AbsolutePressure, Surroundings, TimeSpan, celsius, in_kelvins};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, Expansion, HoldFinding, PullDownFinding, Refrigerant};

/// A vent that no longer falls a little above its band has stalled by a good thermometer; by one of 1 K it may be within.
#[test]
fn a_vent_near_its_band_stalls_only_by_a_good_thermometer() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(28.0), place());
    let judged = |above_k: [f64; 6], own_k: f64| {
        let flat = [VentSample {
            after: TimeSpan::from_seconds(60.0),
            vent: read(celsius(20.0), 0.5),
        }];
        let high_k = in_kelvins(pull_down(&system, &conditions, &flat).unwrap().expected.high_95);
        let samples: Vec<VentSample> = (1..)
            .zip(above_k)
            .map(|(n, above)| VentSample {
                after: TimeSpan::from_seconds(120.0 * f64::from(n)),
                vent: read(celsius(high_k - 273.15 + above), own_k),
            })
            .collect();
        pull_down(&system, &conditions, &samples).unwrap().finding
    };
    let near = [12.0, 6.0, 0.5, 0.5, 0.5, 0.5];
    assert_eq!(judged(near, 0.1), PullDownFinding::Stalled);
    assert_eq!(judged(near, 1.0), PullDownFinding::CannotTell);
}

/// The vent is compared with that of a system that has run long enough, whenever the readings of the case were taken.
#[test]
fn a_pull_down_ends_where_a_settled_system_stands() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let settled = Conditions::new(celsius(28.0), place());
    let just_started = Conditions {
        running_for: Some(TimeSpan::from_seconds(60.0)),
        ..settled
    };
    let samples = [VentSample {
        after: TimeSpan::from_seconds(60.0),
        vent: read(celsius(20.0), 0.5),
    }];
    let expected = |conditions: &Conditions| pull_down(&system, conditions, &samples).unwrap().expected;
    assert_eq!(expected(&just_started), expected(&settled));
}

/// A gauge that cannot tell a dry circuit from a wet one cannot do so later either: a hold of five minutes is not called too short.
#[test]
fn a_coarse_gauge_is_not_helped_by_waiting() {
    let held = |u_pa: f64| {
        let samples = [0.0, 100.0, 200.0, 300.0].map(|after_s| Sample {
            after: TimeSpan::from_seconds(after_s),
            pressure: read(AbsolutePressure::from_pa(60.0).into(), u_pa),
        });
        let hold = Hold {
            samples: &samples,
            warmest: read(celsius(22.0), 0.0),
            surroundings: place(),
            volume: None,
            allowed: Rise::USUAL,
        };
        hold.judge().unwrap().finding
    };
    assert_eq!(held(0.5), HoldFinding::TooShort);
    assert_eq!(held(100.0), HoldFinding::GaugeCannotTell);
}

/// A discharge line that is colder than the suction line was not compressed to: no efficiency follows, nor from a high side below the
/// low side.
#[test]
fn no_efficiency_follows_without_work() {
    let efficiency = |low_pa: f64, high_pa: f64, discharge_c: f64| {
        let readings = Readings {
            low_side: Some(read(AbsolutePressure::from_pa(low_pa).into(), 1.0)),
            high_side: Some(read(AbsolutePressure::from_pa(high_pa).into(), 1.0)),
            suction_line: Some(read(celsius(60.0), 0.1)),
            discharge_line: Some(read(celsius(discharge_c), 0.1)),
            ..Readings::default()
        };
        let derived = Derived::new(Refrigerant::R134a, &readings, Surroundings::SEA_LEVEL, None).unwrap();
        derived.isentropic_efficiency
    };
    assert!(efficiency(300e3, 600e3, 95.0).is_some());
    assert!(efficiency(300e3, 600e3, 50.0).is_none());
    assert!(efficiency(600e3, 300e3, 95.0).is_none());
}
