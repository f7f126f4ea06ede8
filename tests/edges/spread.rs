//! How the uncertainty of what was read passes into what is told.

use coldloop::air::water_boiling_point_k;
use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Settings};
use coldloop::proof::{
    ChargeBook, Decay, DecayGas, Evacuation, Hold, Kept, Rise, Sample, VentSample, prove, pull_down,
};
use coldloop::units::{AbsolutePressure, GaugePressure, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, Expansion, Feature, Refrigerant, RepairFinding, Thermometer};

fn place() -> Surroundings {
    Surroundings::at_altitude(1_600.0).unwrap()
}

fn system() -> System {
    System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch)
}

fn read<Q>(value: Q, standard_uncertainty: f64) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty,
    }
}

/// The boiling point is uncertain by what the uncertainty of the pressure moves it by (Hyland & Wexler 1983).
#[test]
fn the_boiling_point_moves_with_the_pressure() {
    let evacuation = Evacuation {
        reached: read(AbsolutePressure::from_pa(1_000.0).into(), 200.0),
        coldest: read(celsius(20.0), 0.0),
        surroundings: place(),
    };
    let told = evacuation.judge().unwrap().boiling_point_k.unwrap();
    let [low, high] = [800.0, 1_200.0].map(|pa| water_boiling_point_k(pa).unwrap());
    assert!(
        (told.standard_uncertainty - 0.5 * (high - low)).abs() < 1e-9,
        "{told:?}"
    );
}

/// Air that leaks in is known no better than the volume: a tenth of the volume is a tenth of the rate.
#[test]
fn a_leak_rate_is_known_as_well_as_the_volume() {
    let samples = [0.0, 600.0, 1_200.0].map(|s| Sample {
        after_s: s,
        pressure: read(AbsolutePressure::from_pa(3_000.0 + s).into(), 0.0),
    });
    let hold = Hold {
        samples: &samples,
        warmest: read(celsius(22.0), 0.0),
        surroundings: place(),
        volume_m3: Some(read(0.002, 0.000_2)),
        allowed: Rise::USUAL,
    };
    let rate = hold.judge().unwrap().air_kg_s.unwrap();
    assert!((rate.standard_uncertainty / rate.value - 0.1).abs() < 1e-9, "{rate:?}");
}

/// Liquid in a hose that may be 3 K warmer or colder weighs what its density says of that.
#[test]
fn what_a_hose_holds_moves_with_its_temperature() {
    let hose = |c: f64, u_k: f64| {
        let book = ChargeBook {
            charged_kg: Some(read(0.6, 0.0)),
            hose: Some(Kept {
                volume_m3: read(60e-6, 0.0),
                temperature: read(celsius(c), u_k),
                vapour: None,
            }),
            ..ChargeBook::new(Refrigerant::R134a, place())
        };
        book.balance().unwrap().hose_kg.unwrap()
    };
    let per_k = hose(24.5, 0.0).value - hose(25.5, 0.0).value;
    let told = hose(25.0, 3.0).standard_uncertainty;
    assert!((told / (3.0 * per_k) - 1.0).abs() < 0.02, "{told} {per_k}");
}

/// Where a vent levels off is known twice as well by a thermometer that is twice as good.
#[test]
fn where_a_vent_levels_off_is_as_good_as_its_thermometer() {
    let spread = |u_k: f64| {
        let samples = [0.0, 120.0, 240.0, 360.0, 480.0, 600.0].map(|s| VentSample {
            after_s: s,
            vent: read(celsius(12.0 + 14.0 * f64::exp(-s / 240.0)), u_k),
        });
        let fall = pull_down(&system(), &Conditions::new(celsius(28.0), place()), &samples).unwrap();
        fall.levels_off_k.unwrap().standard_uncertainty
    };
    let ratio = spread(0.02) / spread(0.01);
    assert!((ratio - 2.0).abs() < 0.05, "{ratio}");
}

/// Nitrogen at constant temperature that falls from 10.0 to 9.9 bar, with air of 0.835 bar around it, has lost 0.1/10.835 of its mass,
/// as an ideal gas; the real gas differs from that by a few per cent.
#[test]
fn the_share_that_is_lost_is_that_of_the_pressure() {
    let pressure = |bar: f64| read(GaugePressure::from_bar(bar).into(), 0.0);
    let test = Decay {
        gas: DecayGas::Nitrogen,
        start: pressure(10.0),
        start_temperature: read(celsius(20.0), 0.0),
        end: pressure(9.9),
        end_temperature: read(celsius(20.0), 0.0),
        repeatability_pa: 500.0,
        held_s: 3_600.0,
        surroundings: place(),
        volume_m3: None,
        allowed_kg_s: None,
        label_pa_gauge: None,
        served: None,
    };
    let lost = test.judge().unwrap().lost.unwrap();
    assert!((lost.value / (0.1 / 10.835) - 1.0).abs() < 0.05, "{lost:?}");
    // Two readings that repeat within 500 Pa.
    let wanted = f64::sqrt(2.0) * 500.0 / 1_083_500.0;
    assert!((lost.standard_uncertainty / wanted - 1.0).abs() < 0.05, "{lost:?}");
}

/// A gauge has the same error for one pressure, whether it is written from vacuum or from the air at sea level.
#[test]
fn a_gauge_errs_alike_for_both_ways_to_write_a_pressure() {
    let pa = 2_400_000.0;
    for gauge in [Gauge::DIGITAL, Gauge::LOW_SIDE, Gauge::HIGH_SIDE] {
        let written = Reading::pressure(GaugePressure::from_pa(pa), gauge);
        let absolute = Reading::pressure(AbsolutePressure::from_pa(pa + 101_325.0), gauge);
        assert!((written.standard_uncertainty - absolute.standard_uncertainty).abs() < 1e-9);
    }
}

/// After a repair the pressures and the vent show that it cools; without one of them nothing is proven, and what was read at one
/// visit alone is told as such.
#[test]
fn without_the_vent_no_repair_is_proven() {
    let case = |low: f64, high: f64, vent: Option<f64>| {
        let readings = Readings {
            low_side: Some(Reading::pressure(GaugePressure::from_bar(low), Gauge::DIGITAL)),
            high_side: Some(Reading::pressure(GaugePressure::from_bar(high), Gauge::DIGITAL)),
            vent: vent.map(|c| Reading::temperature(celsius(c), Thermometer::PocketDigital)),
            ..Readings::default()
        };
        Case::new(system(), Conditions::new(celsius(28.0), place()), readings)
    };
    let before = case(0.9, 8.0, Some(19.0));
    let proof = prove(&before, &case(2.0, 13.0, None), &Settings::default()).unwrap();
    assert_eq!(proof.finding, RepairFinding::CannotTell);
    let vent = proof.seen.iter().find(|seen| seen.feature == Feature::Vent).unwrap();
    assert!(vent.before.is_some() && vent.after.is_none());
    let read_again = prove(&before, &case(2.0, 13.0, Some(8.0)), &Settings::default()).unwrap();
    assert_ne!(read_again.finding, RepairFinding::CannotTell);
}
