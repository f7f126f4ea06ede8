//! A test pressure tells a loss as far as its instruments do, and what it means for the vehicle.

#![allow(clippy::unwrap_used)] // tests fail by panicking

#[path = "shared/garage.rs"]
mod garage;

use approx::assert_relative_eq;
use coldloop::circuit::Reading;
use coldloop::proof::{Decay, DecayGas, MOST_TEST, Served};
use coldloop::units::{GaugePressure, Mass, MassFlow, PressureDifference, TimeSpan, Volume, celsius};
use coldloop::{LeakFinding, Reference, Refrigerant};
use garage::{degrees, garage, pascals};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

fn nitrogen(start_pa: f64, end_pa: f64, end_c: f64) -> Decay {
    Decay {
        gas: DecayGas::Nitrogen,
        start: pascals(start_pa, 5_000.0),
        start_temperature: degrees(26.0, 0.5),
        end: pascals(end_pa, 5_000.0),
        end_temperature: degrees(end_c, 0.5),
        repeatability: PressureDifference::from_pa(1_000.0),
        held: TimeSpan::from_seconds(3_600.0),
        surroundings: garage(),
        volume: Some(Reading::within(Volume::from_m3(2.2e-3), Volume::from_m3(0.2e-3))),
        allowed: None,
        label_pressure: None,
        served: None,
    }
}

#[test]
fn a_test_pressure_falls_with_its_temperature_and_that_is_no_leak() {
    let cooled = nitrogen(1_083_500.0, 1_053_500.0, 18.0).judge().unwrap();
    // Charles: 1083.5 kPa * 291.15 / 299.15; nitrogen at 10 bar is within 0.1 % of ideal here.
    assert_relative_eq!(
        cooled.tight_end.pa(),
        1_083_500.0 * 291.15 / 299.15,
        max_relative = 1e-3
    );
    assert_eq!(cooled.finding, LeakFinding::NoLossSeen);
    // The same fall without the cooling is a leak.
    let leaking = nitrogen(1_083_500.0, 1_053_500.0, 26.0).judge().unwrap();
    assert_eq!(leaking.finding, LeakFinding::Leaks);
    assert_relative_eq!(leaking.lost.unwrap().value, 30.0 / 1_083.5, max_relative = 0.01);
    // 2.2 L of nitrogen at 10.8 bar weigh 27 g; 2.8 % of that in an hour.
    let rate = leaking.rate.unwrap().si();
    assert_relative_eq!(rate.value * 3_600.0, 0.028 * 0.0269, max_relative = 0.03);
    assert!(rate.standard_uncertainty > 0.05 * rate.value);
    let warmed = nitrogen(1_083_500.0, 1_120_000.0, 26.0).judge().unwrap();
    assert_eq!(warmed.finding, LeakFinding::GasGained);
}

#[test]
fn tight_is_said_only_against_an_allowed_loss() {
    let mut test = nitrogen(1_083_500.0, 1_083_500.0, 26.0);
    assert_eq!(test.judge().unwrap().finding, LeakFinding::NoLossSeen);
    test.allowed = Some(MassFlow::from_kg_s(1e-3 / 3_600.0));
    let judged = test.judge().unwrap();
    assert_eq!(judged.finding, LeakFinding::Tight);
    assert!(judged.least_seen.unwrap().kg_s() < 1e-3 / 3_600.0);
    // A leak of 40 g a year does not show in an hour: the answer says how long it would take.
    test.allowed = Some(MassFlow::from_g_per_year(40.0));
    let judged = test.judge().unwrap();
    assert_eq!(judged.finding, LeakFinding::NoLossSeen);
    assert!(judged.needed.unwrap().hours() > 40.0);
}

#[test]
fn with_liquid_present_the_pressure_tells_the_temperature_and_nothing_else() {
    let saturation_pa = Refrigerant::R134a.dew_pressure(celsius(26.0)).unwrap().pa();
    let test = |start_pa: f64| Decay {
        gas: DecayGas::Vapour(Refrigerant::R134a),
        ..nitrogen(start_pa, 0.99 * start_pa, 26.0)
    };
    let wet = test(saturation_pa).judge().unwrap();
    assert_eq!(
        (wet.finding, wet.lost, wet.rate),
        (LeakFinding::LiquidPresent, None, None)
    );
    // Close below the line the thermometer cannot rule liquid out.
    assert_eq!(
        test(0.99 * saturation_pa).judge().unwrap().finding,
        LeakFinding::LiquidPresent
    );
    let dry = test(0.6 * saturation_pa).judge().unwrap();
    assert!(dry.lost.is_some());
    // Vapour that starts superheated and cools onto its line is liquid at the end.
    let cold = Decay {
        end_temperature: degrees(-5.0, 0.5),
        ..test(0.6 * saturation_pa)
    };
    let judged = Decay {
        end: pascals(Refrigerant::R134a.dew_pressure(celsius(-5.0)).unwrap().pa(), 5_000.0),
        ..cold
    };
    assert_eq!(judged.judge().unwrap().finding, LeakFinding::LiquidPresent);
}

/// Vapour of a blend keeps its density where nothing is lost, and may be liquid from dew on.
#[test]
fn the_vapour_of_a_blend_is_watched_too() {
    let blend = coldloop::saturation::blend(Refrigerant::R407C).unwrap();
    let rho = |c: f64, pa: f64| {
        blend
            .state_tp(c + 273.15, pa, Reference::Iir)
            .unwrap()
            .density()
            .kg_m3()
    };
    let test = |start_pa: f64, end_c: f64| Decay {
        gas: DecayGas::Vapour(Refrigerant::R407C),
        end_temperature: degrees(end_c, 0.5),
        ..nitrogen(start_pa, 0.9 * start_pa, 26.0)
    };
    let judged = test(5e5, 18.0).judge().unwrap();
    assert_relative_eq!(rho(18.0, judged.tight_end.pa()), rho(26.0, 5e5), max_relative = 1e-9);
    assert_eq!(judged.finding, LeakFinding::Leaks);
    let lost = 1.0 - rho(18.0, 4.5e5) / rho(26.0, 5e5);
    assert_relative_eq!(judged.lost.unwrap().value, lost, max_relative = 1e-6);
    // Dew, not bubble, is where liquid may be: at 26 °C the two lie a tenth apart.
    let dew_pa = Refrigerant::R407C.dew_pressure(celsius(26.0)).unwrap().pa();
    assert!(Refrigerant::R407C.bubble_pressure(celsius(26.0)).unwrap().pa() > 1.1 * dew_pa);
    assert_eq!(test(dew_pa, 26.0).judge().unwrap().finding, LeakFinding::LiquidPresent);
}

/// Errors drawn within the limits of the instruments: the 95 % interval of the loss holds the true one in at least that
/// share of 2,000 tests, less three standard errors of it.
#[test]
fn the_interval_of_a_loss_holds_the_true_one() {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    let mut held = 0;
    for _ in 0..2_000 {
        let (start_pa, start_c, end_c): (f64, f64, f64) = (
            rng.random_range(6e5..1.2e6),
            rng.random_range(15.0..35.0),
            rng.random_range(15.0..35.0),
        );
        let lost = rng.random_range(0.0..0.05);
        let end_pa = start_pa * (1.0 - lost) * (end_c + 273.15) / (start_c + 273.15);
        let gauge_pa = rng.random_range(-5e3..5e3);
        let mut read = |pa: f64| pa + gauge_pa + 1_732.0 * rng.random_range(-1.0..1.0);
        let (start, end) = (read(start_pa), read(end_pa));
        let test = Decay {
            start: pascals(start, 5_000.0),
            end: pascals(end, 5_000.0),
            start_temperature: degrees(start_c + rng.random_range(-0.5..0.5), 0.5),
            end_temperature: degrees(end_c + rng.random_range(-0.5..0.5), 0.5),
            ..nitrogen(start, end, end_c)
        };
        let found = test.judge().unwrap().lost.unwrap();
        held += usize::from((found.value - lost).abs() <= 2.0 * found.standard_uncertainty);
    }
    assert!(held >= 1_870, "{held} of 2000");
}

fn served(test: Decay) -> Decay {
    Decay {
        served: Some(Served {
            refrigerant: Refrigerant::R134a,
            temperature: celsius(26.0),
            charge: Some(Mass::from_kg(0.850)),
        }),
        ..test
    }
}

fn kg_s((low, high): (MassFlow, MassFlow)) -> (f64, f64) {
    (low.kg_s(), high.kg_s())
}

/// Saturated R-134a at 26 °C has 685 kPa and 33.4 kg/m3, nitrogen 1,083 kPa and 12.2 kg/m3. The flow through a hole goes with
/// the root of pressure times density (choked: 0.633 and 0.685 of it), that through a crack with density times pressure over
/// viscosity (12.0 and 17.8 uPa s).
#[test]
fn a_loss_of_nitrogen_is_told_as_one_of_refrigerant() {
    let leak = served(nitrogen(1_083_500.0, 1_053_500.0, 26.0)).judge().unwrap();
    let rate = leak.rate.unwrap().si();
    let hole = 0.630 / 0.685 * (685e3 * 33.4 / (1.0535e6 * 11.87_f64)).sqrt();
    let crack = 33.4 / 685e3 * (685e3_f64.powi(2) - 83.5e3_f64.powi(2))
        / 12.0
        / (11.87 / 1.0535e6 * (1.0535e6_f64.powi(2) - 83.5e3_f64.powi(2)) / 17.8);
    let (low, high) = kg_s(leak.refrigerant.unwrap());
    assert_relative_eq!(
        low,
        (rate.value - 2.0 * rate.standard_uncertainty) * hole,
        max_relative = 0.02
    );
    assert_relative_eq!(
        high,
        (rate.value + 2.0 * rate.standard_uncertainty) * crack,
        max_relative = 0.02
    );
    let (soon, late) = leak.empty.unwrap();
    assert_relative_eq!(soon.seconds(), 0.850 / high, max_relative = 1e-12);
    assert_relative_eq!(late.seconds(), 0.850 / low, max_relative = 1e-12);
    let least = leak.least_seen.unwrap().kg_s();
    let (least_low, least_high) = kg_s(leak.least_seen_refrigerant.unwrap());
    assert_relative_eq!(least_low, least * hole, max_relative = 0.02);
    assert_relative_eq!(least_high, least * crack, max_relative = 0.02);
    // No allowance was given: what matters is a leak that empties the vehicle within a year.
    let a_year = 0.850 / (365.25 * 86_400.0) / (hole * crack).sqrt();
    assert_relative_eq!(
        leak.needed_for_a_year.unwrap().seconds(),
        2.0 * least / a_year * 3_600.0,
        max_relative = 0.02
    );
    // The same gas at the same pressure differs only by its temperature: 12.08 kg/m3 and 10.54 uPa s at -5 °C against 10.51
    // and 11.82 at 26 °C (CoolProp 8.0.0).
    let own = Decay {
        gas: DecayGas::Vapour(Refrigerant::R134a),
        served: Some(Served {
            temperature: celsius(-5.0),
            ..served(nitrogen(1e6, 1e6, 26.0)).served.unwrap()
        }),
        ..nitrogen(2.6e5, 2.4337e5, 26.0)
    };
    let (low, high) = kg_s(own.judge().unwrap().least_seen_refrigerant.unwrap());
    let seen = own.judge().unwrap().least_seen.unwrap().kg_s();
    assert_relative_eq!(low, (12.08 / 10.51_f64).sqrt() * seen, max_relative = 5e-3);
    assert_relative_eq!(high, 12.08 / 10.51 * 11.82 / 10.54 * seen, max_relative = 5e-3);
}

#[test]
fn a_loss_or_an_allowance_that_is_missing_is_not_mentioned() {
    let tight = served(nitrogen(1_083_500.0, 1_083_500.0, 26.0)).judge().unwrap();
    assert_eq!((tight.refrigerant, tight.empty), (None, None));
    assert!(tight.least_seen_refrigerant.is_some());
    for finding in [LeakFinding::Leaks, LeakFinding::NoLossSeen] {
        assert!(!finding.description().contains("allowed"), "{finding:?}");
    }
    // A loss that shows, and may be more or less than what is allowed.
    let rate = nitrogen(1_083_500.0, 1_053_500.0, 26.0).judge().unwrap().rate.unwrap();
    let near = Decay {
        allowed: Some(rate.value),
        ..nitrogen(1_083_500.0, 1_053_500.0, 26.0)
    };
    assert_eq!(near.judge().unwrap().finding, LeakFinding::LimitUnclear);
}

#[test]
fn a_test_pressure_above_the_label_or_thirty_bar_is_told() {
    let above = |gauge_pa: f64, label_pa: Option<f64>| {
        let start_pa = garage().pressure().pa() + gauge_pa;
        let test = Decay {
            label_pressure: label_pa.map(GaugePressure::from_pa),
            ..nitrogen(start_pa, start_pa, 26.0)
        };
        test.judge().unwrap().above.map(GaugePressure::pa)
    };
    assert_eq!((above(2.99e6, None), above(3.01e6, None)), (None, Some(MOST_TEST.pa())));
    assert_eq!(MOST_TEST.pa(), 3e6);
    assert_eq!((above(1.99e6, Some(2e6)), above(2.01e6, Some(2e6))), (None, Some(2e6)));
    assert_eq!(above(3.01e6, Some(3.2e6)), None);
}

/// With R-1234yf a hundredth below its saturation pressure the gauge cannot exclude liquid. The pressure at which a tight circuit ends
/// follows from its density, not from saturation: vapour that warms up does not reach saturation by itself.
#[test]
fn vapour_near_saturation_ends_at_the_pressure_of_its_density() {
    let pure = coldloop::saturation::pure(Refrigerant::R1234yf).unwrap();
    let saturation_pa = |c: f64| Refrigerant::R1234yf.dew_pressure(celsius(c)).unwrap().pa();
    let start_pa = 0.99 * saturation_pa(26.0);
    let test = Decay {
        gas: DecayGas::Vapour(Refrigerant::R1234yf),
        ..nitrogen(start_pa, start_pa, 40.0)
    };
    let judged = test.judge().unwrap();
    assert_eq!(judged.finding, LeakFinding::LiquidPresent);
    assert!(judged.tight_end.pa() < 0.8 * saturation_pa(40.0));
    let rho = |c: f64, pa: f64| pure.state_tp(c + 273.15, pa, Reference::Iir).unwrap().density().kg_m3();
    assert_relative_eq!(
        rho(40.0, judged.tight_end.pa()),
        rho(26.0, start_pa),
        max_relative = 1e-9
    );
    // Colder, it condenses onto its line.
    let cooled = Decay {
        end_temperature: degrees(15.0, 0.5),
        ..test
    };
    assert_relative_eq!(
        cooled.judge().unwrap().tight_end.pa(),
        saturation_pa(15.0),
        max_relative = 1e-9
    );
}
