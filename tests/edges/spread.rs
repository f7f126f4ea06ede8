//! How the uncertainty of what was read passes into what is told.

use coldloop::air::{water_boiling_point_k, water_saturation_pressure_pa};
use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Settings};
use coldloop::proof::{
    ChargeBook, Decay, DecayGas, Evacuation, Hold, Kept, Rise, Sample, VentSample, prove, pull_down,
};
use coldloop::units::{
    AbsolutePressure, GaugePressure, InSi, Mass, MassFlow, Measurable, PressureDifference, Surroundings, TimeSpan,
    Volume, celsius, in_kelvins,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    Compressor, Expansion, Feature, GaugeClass, HoldFinding, LeakFinding, Refrigerant, RepairFinding, Thermometer,
};

fn place() -> Surroundings {
    Surroundings::at_altitude(1_600.0).unwrap()
}

fn system() -> System {
    System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch)
}

fn read<Q: Measurable>(value: Q, standard_uncertainty: f64) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(standard_uncertainty),
    }
}

/// Nitrogen that falls from 10.0 to 9.9 bar in an hour.
fn decay() -> Decay {
    let pressure = |bar: f64| read(GaugePressure::from_bar(bar).into(), 0.0);
    Decay {
        gas: DecayGas::Nitrogen,
        start: pressure(10.0),
        start_temperature: read(celsius(20.0), 0.0),
        end: pressure(9.9),
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

/// The boiling point is uncertain by what the uncertainty of the pressure moves it by (Hyland & Wexler 1983).
#[test]
fn the_boiling_point_moves_with_the_pressure() {
    let evacuation = Evacuation {
        reached: read(AbsolutePressure::from_pa(1_000.0).into(), 200.0),
        coldest: read(celsius(20.0), 0.0),
        surroundings: place(),
    };
    let told = evacuation.judge().unwrap().boiling_point.unwrap().si();
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
        after: TimeSpan::from_seconds(s),
        pressure: read(AbsolutePressure::from_pa(3_000.0 + s).into(), 0.0),
    });
    let hold = Hold {
        samples: &samples,
        warmest: read(celsius(22.0), 0.0),
        surroundings: place(),
        volume: Some(read(Volume::from_m3(0.002), 0.000_2)),
        allowed: Rise::USUAL,
    };
    let rate = hold.judge().unwrap().air.unwrap().si();
    assert!((rate.standard_uncertainty / rate.value - 0.1).abs() < 1e-9, "{rate:?}");
}

/// Liquid in a hose that may be 3 K warmer or colder weighs what its density says of that.
#[test]
fn what_a_hose_holds_moves_with_its_temperature() {
    let hose = |c: f64, u_k: f64| {
        let book = ChargeBook {
            charged: Some(read(Mass::from_kg(0.6), 0.0)),
            hose: Some(Kept {
                volume: read(Volume::from_m3(60e-6), 0.0),
                temperature: read(celsius(c), u_k),
                vapour: None,
            }),
            ..ChargeBook::new(Refrigerant::R134a, place())
        };
        book.balance().unwrap().hose.unwrap().si()
    };
    let per_k = hose(24.5, 0.0).value - hose(25.5, 0.0).value;
    let told = hose(25.0, 3.0).standard_uncertainty;
    assert!((told / (3.0 * per_k) - 1.0).abs() < 0.02, "{told} {per_k}");
}

/// Vapour in a hose, 4 bar of R-134a at 25 °C: its density falls with temperature and is nearly proportional to the pressure.
#[test]
fn vapour_in_a_hose_moves_with_temperature_and_pressure() {
    let hose = |c: f64, u_k: f64, u_pa: f64| {
        let book = ChargeBook {
            charged: Some(read(Mass::from_kg(0.6), 0.0)),
            hose: Some(Kept {
                volume: read(Volume::from_m3(60e-6), 0.0),
                temperature: read(celsius(c), u_k),
                vapour: Some(read(AbsolutePressure::from_pa(400_000.0).into(), u_pa)),
            }),
            ..ChargeBook::new(Refrigerant::R134a, place())
        };
        book.balance().unwrap().hose.unwrap().si()
    };
    let per_k = hose(24.5, 0.0, 0.0).value - hose(25.5, 0.0, 0.0).value;
    let by_temperature = hose(25.0, 3.0, 0.0).standard_uncertainty;
    assert!(
        (by_temperature / (3.0 * per_k) - 1.0).abs() < 0.02,
        "{by_temperature} {per_k}"
    );
    let by_pressure = hose(25.0, 0.0, 20_000.0);
    assert!((by_pressure.standard_uncertainty / by_pressure.value - 0.05).abs() < 1e-9);
}

/// The pressure at which water boils moves with the temperature of the coldest part (Hyland & Wexler 1983).
#[test]
fn the_pressure_of_water_moves_with_the_coldest_part() {
    let evacuation = Evacuation {
        reached: read(AbsolutePressure::from_pa(1_000.0).into(), 0.0),
        coldest: read(celsius(20.0), 2.0),
        surroundings: place(),
    };
    let told = evacuation.judge().unwrap().water.si();
    let [low, high] = [19.0, 21.0].map(|c| water_saturation_pressure_pa(in_kelvins(celsius(c))).unwrap());
    assert!(
        (told.standard_uncertainty / (high - low) - 1.0).abs() < 0.01,
        "{told:?}"
    );
}

/// Of two readings the mean rise counts: 1 Pa/s into 2 L at 22 °C is p V M / (R T) = 2.3606e-8 kg/s of air (ideal gas), and a
/// reading of 3 Pa standard uncertainty at both ends makes the rise uncertain by 3 √2 Pa.
#[test]
fn two_readings_of_a_hold_tell_a_mean_rate() {
    let hold = |rise_pa: f64, held_s: f64, u_pa: f64, allowed: Rise| {
        let samples = [(0.0, 50.0), (held_s, 50.0 + rise_pa)].map(|(after_s, pa)| Sample {
            after: TimeSpan::from_seconds(after_s),
            pressure: read(AbsolutePressure::from_pa(pa).into(), u_pa),
        });
        let hold = Hold {
            samples: &samples,
            warmest: read(celsius(22.0), 0.0),
            surroundings: place(),
            volume: Some(read(Volume::from_m3(0.002), 0.0)),
            allowed,
        };
        hold.judge().unwrap()
    };
    let rate = hold(1_200.0, 1_200.0, 3.0, Rise::USUAL).air.unwrap().si();
    assert!((rate.value / 2.360_6e-8 - 1.0).abs() < 1e-3, "{rate:?}");
    let of_rise = 3.0 * f64::sqrt(2.0) / 1_200.0;
    assert!(
        (rate.standard_uncertainty / rate.value - of_rise).abs() < 1e-9,
        "{rate:?}"
    );
    // 6 Pa in ten minutes are allowed: 12 Pa in twenty.
    let allowed = Rise {
        rise: PressureDifference::from_pa(6.0),
        over: TimeSpan::from_seconds(600.0),
    };
    let tight = |rise_pa: f64| hold(rise_pa, 1_200.0, 0.0, allowed).finding == HoldFinding::Tight;
    assert_eq!((tight(11.9), tight(12.1)), (true, false));
}

/// The slope of a straight line through readings of one uncertainty is uncertain by u / √Σ(t - t̄)² (least squares), and readings
/// that crowd at the start leave two for the end.
#[test]
fn slopes_are_those_of_least_squares() {
    let hold = |readings: &[(f64, f64)]| {
        let samples: Vec<Sample> = readings
            .iter()
            .map(|&(after_s, pa)| Sample {
                after: TimeSpan::from_seconds(after_s),
                pressure: read(AbsolutePressure::from_pa(pa).into(), 0.3),
            })
            .collect();
        let hold = Hold {
            samples: &samples,
            warmest: read(celsius(22.0), 0.0),
            surroundings: place(),
            volume: None,
            allowed: Rise::USUAL,
        };
        hold.judge().unwrap()
    };
    let even = hold(&[
        (0.0, 50.0),
        (300.0, 50.0),
        (600.0, 50.0),
        (900.0, 50.0),
        (1_200.0, 50.0),
    ]);
    let wanted = 0.3 / f64::sqrt(2.0 * 300.0 * 300.0);
    assert!((even.early.unwrap().standard_uncertainty.pa_s() / wanted - 1.0).abs() < 1e-9);
    let crowded = hold(&[(0.0, 50.0), (10.0, 50.0), (20.0, 50.0), (30.0, 50.0), (1_200.0, 61.7)]);
    assert!((crowded.late.unwrap().value.pa_s() - 0.01).abs() < 1e-9, "{crowded:?}");
    // Down and up again is no fall, though the first half of it is.
    let dip = hold(&[
        (0.0, 100.0),
        (300.0, 94.0),
        (600.0, 88.0),
        (900.0, 94.0),
        (1_200.0, 100.0),
    ]);
    assert_ne!(dip.finding, HoldFinding::Falling);
}

/// Vapour over liquid keeps the pressure of saturation: R-134a, 665.4 kPa at 25 °C (Tillner-Roth & Baehr 1994).
#[test]
fn a_saturated_circuit_ends_at_saturation() {
    let test = Decay {
        gas: DecayGas::Vapour(Refrigerant::R134a),
        start: read(AbsolutePressure::from_pa(571_900.0).into(), 0.0),
        end: read(AbsolutePressure::from_pa(660_000.0).into(), 0.0),
        end_temperature: read(celsius(25.0), 0.0),
        ..decay()
    };
    let told = test.judge().unwrap();
    assert!((told.tight_end.pa() / 665_400.0 - 1.0).abs() < 1e-3, "{told:?}");
}

/// A rate leaks where all of its 95 % interval lies above what is allowed, is tight where all of it lies below, and else unclear.
#[test]
fn a_rate_is_held_against_what_is_allowed() {
    let judged = |allowed_kg_s: Option<f64>| {
        let test = Decay {
            volume: Some(read(Volume::from_m3(0.002), 0.0)),
            allowed: allowed_kg_s.map(MassFlow::from_kg_s),
            ..decay()
        };
        test.judge().unwrap()
    };
    let rate = judged(None).rate.unwrap().si();
    let end = |side: f64| rate.value + side * 2.0 * rate.standard_uncertainty;
    let found = |allowed: f64| judged(Some(allowed)).finding;
    assert_eq!(
        (found(0.99 * end(-1.0)), found(1.01 * end(-1.0))),
        (LeakFinding::Leaks, LeakFinding::LimitUnclear)
    );
    assert_eq!(
        (found(0.99 * end(1.0)), found(1.01 * end(1.0))),
        (LeakFinding::LimitUnclear, LeakFinding::Tight)
    );
}

/// Where a vent levels off is known twice as well by a thermometer that is twice as good.
#[test]
fn where_a_vent_levels_off_is_as_good_as_its_thermometer() {
    let spread = |u_k: f64| {
        let samples = [0.0, 120.0, 240.0, 360.0, 480.0, 600.0].map(|s| VentSample {
            after: TimeSpan::from_seconds(s),
            vent: read(celsius(12.0 + 14.0 * f64::exp(-s / 240.0)), u_k),
        });
        let fall = pull_down(&system(), &Conditions::new(celsius(28.0), place()), &samples).unwrap();
        fall.levels_off.unwrap().si().standard_uncertainty
    };
    let ratio = spread(0.02) / spread(0.01);
    assert!((ratio - 2.0).abs() < 0.05, "{ratio}");
}

/// Nitrogen at constant temperature that falls from 10.0 to 9.9 bar, with air of 0.835 bar around it, has lost 0.1/10.835 of its mass,
/// as an ideal gas; the real gas differs from that by a few per cent.
#[test]
fn the_share_that_is_lost_is_that_of_the_pressure() {
    let lost = decay().judge().unwrap().lost.unwrap();
    assert!((lost.value / (0.1 / 10.835) - 1.0).abs() < 0.05, "{lost:?}");
    // Two readings that repeat within 500 Pa.
    let wanted = f64::sqrt(2.0) * 500.0 / 1_083_500.0;
    assert!((lost.standard_uncertainty / wanted - 1.0).abs() < 0.05, "{lost:?}");
}

/// A gauge has the same error for one pressure, whether it is written from vacuum or from the air at sea level.
#[test]
fn a_gauge_errs_alike_for_both_ways_to_write_a_pressure() {
    // The better half of a scale to 1 MPa begins at 250 kPa.
    let graded = Gauge::new(
        GaugeClass::GradeA,
        GaugePressure::from_pa(0.0),
        GaugePressure::from_pa(1_000_000.0),
    )
    .unwrap();
    for (gauge, pa) in [
        (Gauge::HIGH_SIDE, 2_400_000.0),
        (graded, 240_000.0),
        (graded, 260_000.0),
    ] {
        let written = Reading::pressure(GaugePressure::from_pa(pa), gauge);
        let absolute = Reading::pressure(AbsolutePressure::from_pa(pa + 101_325.0), gauge);
        assert!((written.standard_uncertainty.si() - absolute.standard_uncertainty.si()).abs() < 1e-9);
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
