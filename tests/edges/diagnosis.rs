//! What a diagnosis says of readings, instruments and time.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::units::{
    AbsolutePressure, GaugePressure, RotationalSpeed, Surroundings, TimeSpan, celsius, kelvins_difference,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Check, Compressor, Expansion, QualityNote, Refrigerant, Thermometer};

fn case() -> Case {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let air = Surroundings::at_altitude(1_600.0).unwrap();
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_bar(2.0), Gauge::DIGITAL)),
        high_side: Some(Reading::pressure(GaugePressure::from_bar(13.0), Gauge::DIGITAL)),
        vent: Some(Reading::temperature(celsius(8.0), Thermometer::PocketDigital)),
        ..Readings::default()
    };
    Case::new(system, Conditions::new(celsius(28.0), air), readings)
}

fn noted(case: &Case, note: QualityNote) -> bool {
    told(case).quality.contains(&note)
}

fn told(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

/// A system counts as settled after ten minutes, and starting, settling and reading are priced at just these.
#[test]
fn a_run_costs_the_time_in_which_a_system_settles() {
    let minutes = Settings::default().prices.check(Check::RunAndRead).minutes;
    let settled = |minutes: f64| {
        let mut case = case();
        case.conditions.running_for = Some(TimeSpan::from_minutes(minutes));
        !noted(&case, QualityNote::NotSettled)
    };
    assert_eq!((settled(9.9), settled(10.0)), (false, true));
    assert_eq!((settled(0.99 * minutes), settled(minutes)), (false, true));
}

/// From 95 % of its cut-out on the high side stands near it, above the air of the place.
#[test]
fn the_high_side_is_near_its_cut_out_from_ninety_five_per_cent_on() {
    let near = |cut_out_pa: f64| {
        let mut case = case();
        case.system.high_cut_out_pa = Some(cut_out_pa);
        case.readings.high_side = Some(Reading::pressure(GaugePressure::from_pa(2_850_000.0), Gauge::DIGITAL));
        noted(&case, QualityNote::NearHighCutOut)
    };
    assert_eq!((near(2_980_000.0), near(3_020_000.0)), (true, false));
}

/// Below half its displacement, from 25 °C on, a compressor is asked for little.
#[test]
fn little_displacement_is_noted_below_half_of_it_and_where_it_is_warm() {
    let low = |commanded: f64, ambient_c: f64| {
        let mut case = case();
        case.system.compressor = Compressor::VariableExternal;
        case.conditions.commanded_displacement = Some(commanded);
        case.conditions.ambient = celsius(ambient_c);
        noted(&case, QualityNote::DisplacementLow)
    };
    assert_eq!((low(0.49, 25.1), low(0.51, 25.1)), (true, false));
    assert_eq!((low(0.49, 24.9), low(0.49, 25.0)), (false, true));
}

/// Fins freeze below 0 °C, and a vent that is colder than them by more than two standard uncertainties of both, here 2 * 0.5 K,
/// contradicts them.
#[test]
fn the_sensor_of_the_evaporator_is_noted_where_it_freezes_or_contradicts() {
    let with = |fins_c: f64, vent_c: f64, note| {
        let mut case = case();
        let read = |c: f64, u: f64| Reading {
            value: celsius(c),
            standard_uncertainty: kelvins_difference(u),
        };
        case.readings.evaporator_sensor = Some(read(fins_c, 0.4));
        case.readings.vent = Some(read(vent_c, 0.3));
        noted(&case, note)
    };
    assert!(with(-0.1, 5.0, QualityNote::EvaporatorFreezing) && !with(0.1, 5.0, QualityNote::EvaporatorFreezing));
    assert!(with(9.0, 7.95, QualityNote::VentBelowEvaporator) && !with(9.0, 8.05, QualityNote::VentBelowEvaporator));
}

/// Where the air differs from that of sea level by more than 6 kPa, at 510 m, it matters where a gauge was zeroed.
#[test]
fn the_zero_of_a_gauge_matters_from_six_kilopascals_on() {
    let matters = |air_pa: f64| {
        let mut case = case();
        case.conditions.surroundings = Surroundings::measured(AbsolutePressure::from_pa(air_pa)).unwrap();
        noted(&case, QualityNote::GaugeZeroUnknown)
    };
    assert_eq!(
        (matters(101_325.0 - 5_900.0), matters(101_325.0 - 6_100.0)),
        (false, true)
    );
}

/// A compressor of variable displacement is at the end of its stroke above 32 °C and below 1,200 rpm.
#[test]
fn the_end_of_the_stroke_is_noted_in_heat_and_at_idle() {
    let noted_at = |ambient_c: f64, speed_hz: f64| {
        let mut case = case();
        case.system.compressor = Compressor::VariableInternal;
        case.conditions.ambient = celsius(ambient_c);
        case.conditions.engine_speed = Some(RotationalSpeed::from_hz(speed_hz));
        noted(&case, QualityNote::StrokeLimit)
    };
    assert_eq!((noted_at(31.9, 14.0), noted_at(32.1, 14.0)), (false, true));
    assert_eq!((noted_at(35.0, 19.9), noted_at(35.0, 20.1)), (true, false));
}
