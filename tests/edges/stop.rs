//! When the compressor must stand still: each limit a little below and a little above it.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::expected::SoundModel;
use coldloop::units::{AbsolutePressure, GaugePressure, PressureDifference, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Caution, Compressor, Expansion, Refrigerant, StopReason};

fn case(refrigerant: Refrigerant, compressor: Compressor, high_bar: f64) -> Case {
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_bar(3.0), Gauge::DIGITAL)),
        high_side: Some(Reading::pressure(GaugePressure::from_bar(high_bar), Gauge::DIGITAL)),
        ..Readings::default()
    };
    let air = Surroundings::at_altitude(1_600.0).unwrap();
    let system = System::new(refrigerant, Expansion::Txv, compressor);
    Case::new(system, Conditions::new(celsius(30.0), air), readings)
}

fn told(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

fn stops(case: &Case) -> bool {
    let stop = told(case).stop;
    stop.is_some_and(|stop| stop.reason == StopReason::HighPressure)
}

fn near(case: &Case) -> bool {
    told(case).cautions.contains(&Caution::HighSideNearLimit)
}

/// 27 bar gauge: the lowest cut-out that makers print for R-134a, `tables/evidence/limits.csv`.
#[test]
fn r134a_is_stopped_at_the_lowest_cut_out_of_the_makers() {
    let at = |bar: f64| stops(&case(Refrigerant::R134a, Compressor::FixedClutch, bar));
    assert_eq!((at(26.95), at(27.05)), (false, true));
}

/// One limit does for all refrigerants of which a sound system is known, R-744 aside: at 45 °C, an ordinary condensing temperature,
/// each of them stands below the caution at 24 bar gauge. A refrigerant like R-410A, with 27.3 bar there (Lemmon 2003), would need
/// a limit of its own.
#[test]
fn no_ordinary_high_side_is_near_the_limit() {
    let air = Surroundings::at_altitude(1_600.0).unwrap();
    let most_pa = 24.0e5 + air.pressure().pa();
    let ordinary = |refrigerant: Refrigerant| refrigerant.bubble_pressure(celsius(45.0)).unwrap().pa();
    let known = SoundModel::systems().map(|system| system.refrigerant);
    for refrigerant in known.filter(|refrigerant| *refrigerant != Refrigerant::R744) {
        assert!(ordinary(refrigerant) < most_pa, "{refrigerant}");
        let at = |bar: f64| stops(&case(refrigerant, Compressor::FixedClutch, bar));
        if SoundModel::speaks_of(&System::new(refrigerant, Expansion::Txv, Compressor::FixedClutch)) {
            assert_eq!((at(26.95), at(27.05)), (false, true), "{refrigerant}");
        }
    }
    assert!(ordinary(Refrigerant::R410A) > most_pa);
}

/// The control of an R-744 system works up to 128 bar gauge, from where a caution is given; at 133 bar it has reached its limit.
#[test]
fn r744_is_near_its_limit_from_where_its_control_ends() {
    let at = |bar: f64| case(Refrigerant::R744, Compressor::Electric, bar);
    assert_eq!((near(&at(127.8)), near(&at(128.2))), (false, true));
    assert_eq!((stops(&at(132.8)), stops(&at(133.2))), (false, true));
}

/// 95 % of the cut-out that the vehicle states, down to the lowest that can be stated: 21.5 bar gauge. From 24 of 27 parts of the
/// limit on a caution is given.
#[test]
fn the_lowest_cut_out_that_can_be_stated_is_still_watched() {
    let at = |bar: f64| {
        let mut case = case(Refrigerant::R134a, Compressor::FixedClutch, bar);
        case.system.high_cut_out = Some(GaugePressure::from_pa(2_150_000.0));
        case
    };
    assert_eq!((stops(&at(20.4)), stops(&at(20.45))), (false, true));
    assert_eq!((near(&at(18.1)), near(&at(18.2))), (false, true));
}

/// A gauge that hardly errs, at the saturation temperature of R-134a.
fn saturated(t_c: f64) -> Reading<coldloop::units::Pressure> {
    let pressure = Refrigerant::R134a.dew_pressure(celsius(t_c)).unwrap();
    Reading {
        value: AbsolutePressure::from_pa(pressure.pa()).into(),
        standard_uncertainty: PressureDifference::from_pa(10.0),
    }
}

/// Heat does not flow from cold to warm. 8 K are left for the sun and for the place of the thermometer (engineering judgement), and
/// twice the standard uncertainty of an ambient that may be off by 1.5 K either way: 1.5 / sqrt(3) (JCGM 100:2008, 4.3.7).
#[test]
fn a_running_system_is_empty_where_it_condenses_far_below_the_ambient() {
    let ambient_c = 32.0;
    let edge_c = ambient_c - 8.0 - 2.0 * 1.5 / 3.0_f64.sqrt();
    let empty = |t_c: f64| {
        let mut case = case(Refrigerant::R134a, Compressor::FixedClutch, 10.0);
        case.conditions.ambient = celsius(ambient_c);
        case.readings.low_side = Some(saturated(-20.0));
        case.readings.high_side = Some(saturated(t_c));
        told(&case)
            .stop
            .is_some_and(|stop| stop.reason == StopReason::NearlyEmpty)
    };
    assert_eq!((empty(edge_c + 0.1), empty(edge_c - 0.1)), (false, true));
}

/// At rest the sides may still differ: where both lie more than 8 K below the saturation temperature at the ambient, neither holds
/// liquid; where one lies higher, it may.
#[test]
fn a_system_at_rest_that_has_not_equalised_is_empty_where_both_sides_lie_far_below_saturation() {
    let ambient_c = 21.0;
    let empty = |low_c: f64, high_c: f64| {
        let mut case = case(Refrigerant::R134a, Compressor::FixedClutch, 10.0);
        case.conditions = Conditions {
            compressor_running: Some(false),
            ..Conditions::new(celsius(ambient_c), case.conditions.surroundings)
        };
        (case.readings.low_side, case.readings.high_side) = (Some(saturated(low_c)), Some(saturated(high_c)));
        told(&case)
            .stop
            .is_some_and(|stop| stop.reason == StopReason::NearlyEmpty)
    };
    let at = |below_k: f64| empty(ambient_c - below_k, ambient_c - 14.0);
    assert_eq!((at(7.9), at(8.1)), (false, true));
    let other_way = |below_k: f64| empty(ambient_c - 14.0, ambient_c - below_k);
    assert_eq!((other_way(7.9), other_way(8.1)), (false, true));
}
