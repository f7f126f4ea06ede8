//! The findings of a vacuum hold over traces whose cause is known.
//!
//! Each trace adds gas that leaves oil and rubber, water that dries, a leak, and the scatter of a gauge; the finding is
//! compared with the cause.

#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::HoldFinding;
use coldloop::air::water_saturation_pressure_pa;
use coldloop::circuit::Reading;
use coldloop::proof::{DRY, Hold, LEAST_HOLD, Rise, Sample};
use coldloop::units::constants::MICRON_PA;
use coldloop::units::{
    AbsolutePressure, GaugePressure, Pressure, PressureDifference, Surroundings, TimeSpan, celsius, kelvins_difference,
};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

fn hold(samples: &[Sample], warmest_c: f64) -> Hold<'_> {
    Hold {
        samples,
        warmest: Reading::within(celsius(warmest_c), kelvins_difference(1.0)),
        surroundings: Surroundings::at_altitude(1_600.0).unwrap(),
        volume: None,
        allowed: Rise::USUAL,
    }
}

/// Readings of a vacuum gauge that is read again within 2 %, and within 0.7 Pa; minutes and microns.
fn samples(minutes: &[f64], microns: impl Fn(f64) -> f64) -> Vec<Sample> {
    let read = |&after_min: &f64| {
        let pa = microns(after_min) * MICRON_PA;
        Sample {
            after: TimeSpan::from_seconds(60.0 * after_min),
            pressure: Reading::within(
                AbsolutePressure::from_pa(pa).into(),
                PressureDifference::from_pa(f64::max(0.02 * pa, 0.7)),
            ),
        }
    };
    minutes.iter().map(read).collect()
}

fn finding(minutes: &[f64], microns: impl Fn(f64) -> f64) -> HoldFinding {
    hold(&samples(minutes, microns), 22.0).judge().unwrap().finding
}

fn settled(by: f64, within_min: f64) -> impl Fn(f64) -> f64 {
    move |after_min| by * (1.0 - f64::exp(-after_min / within_min))
}

const EVERY_FIVE: [f64; 7] = [0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0];
const EVERY_FOUR: [f64; 6] = [0.0, 4.0, 8.0, 12.0, 16.0, 20.0];

/// 30 microns a minute once the rubber has gassed out is a leak, however much steeper the beginning was.
#[test]
fn a_steady_late_slope_is_a_leak() {
    let gas = settled(300.0, 3.0);
    assert_eq!(finding(&EVERY_FIVE, |t| 400.0 + gas(t) + 30.0 * t), HoldFinding::Leak);
    assert_eq!(finding(&EVERY_FIVE, |t| 400.0 + 30.0 * t), HoldFinding::Leak);
    // With the same beginning and no leak, the circuit is tight.
    assert_eq!(finding(&EVERY_FIVE, |t| 400.0 + gas(t)), HoldFinding::Tight);
}

/// Drying that takes longer than the hold looks like a leak for a while, and is called neither.
#[test]
fn slow_drying_far_below_the_pressure_of_water_is_no_definite_leak() {
    for within_min in [20.0, 40.0] {
        let told = finding(&EVERY_FOUR, |t| 300.0 + settled(1_500.0, within_min)(t));
        assert_eq!(told, HoldFinding::RiseUnclear, "{within_min}");
    }
    let told = finding(&EVERY_FIVE, |t| 450.0 + settled(18_000.0, 6.0)(t));
    assert_eq!(told, HoldFinding::Moisture);
}

#[test]
fn a_falling_pressure_is_a_pump_that_still_pulls() {
    let told = finding(&EVERY_FOUR, |t| 300.0 + 600.0 * f64::exp(-t / 10.0));
    assert_eq!(told, HoldFinding::Falling);
    // The scatter of a gauge is no fall.
    let scatter = |t: f64| 500.0 - if t > 10.0 { 10.0 } else { 0.0 };
    assert_ne!(finding(&EVERY_FOUR, scatter), HoldFinding::Falling);
}

#[test]
fn a_steady_pressure_above_the_limit_of_a_dry_circuit_is_not_deep_enough() {
    assert_eq!(finding(&EVERY_FOUR, |_| 18_000.0), HoldFinding::NotDeep);
    // The limit of a dry circuit is 1,000 micron; 2 % of that cannot be told apart from it.
    assert_eq!(finding(&EVERY_FOUR, |_| 0.95 * DRY.microns()), HoldFinding::Tight);
    assert_eq!(finding(&EVERY_FOUR, |_| 1.05 * DRY.microns()), HoldFinding::NotDeep);
}

/// The limit is the shop's: 20 microns in ten minutes are within 50, and not surely within 20; 300 are beyond 50, and not
/// surely beyond 290.
#[test]
fn a_slow_rise_is_judged_by_the_limit_that_is_set() {
    let [rise, leak] = [2.0, 30.0].map(|a_minute| samples(&EVERY_FIVE, |t| 400.0 + a_minute * t));
    let by = |rise: &[Sample], microns: f64| {
        let allowed = Rise {
            rise: PressureDifference::from_pa(microns * MICRON_PA),
            ..Rise::USUAL
        };
        let hold = Hold {
            allowed,
            ..hold(rise, 22.0)
        };
        hold.judge().unwrap().finding
    };
    assert_eq!(by(&rise, 50.0), HoldFinding::Tight);
    assert_eq!(by(&rise, 20.0), HoldFinding::RiseUnclear);
    assert_eq!(by(&leak, 50.0), HoldFinding::Leak);
    assert_eq!(by(&leak, 290.0), HoldFinding::RiseUnclear);
    let nonsense = Hold {
        allowed: Rise {
            over: TimeSpan::from_seconds(0.0),
            ..Rise::USUAL
        },
        ..hold(&rise, 22.0)
    };
    assert!(nonsense.judge().is_err());
}

/// 50 microns in ten minutes is the usual limit, at its edge; the readings are exact here.
#[test]
fn the_usual_limit_is_fifty_microns_in_ten_minutes() {
    let exact = |per_min: f64| {
        let all: Vec<Sample> = samples(&EVERY_FIVE, |t| 300.0 + per_min * t)
            .into_iter()
            .map(|sample| Sample {
                pressure: Reading::within(sample.pressure.value, PressureDifference::from_pa(0.1)),
                ..sample
            })
            .collect();
        hold(&all, 22.0).judge().unwrap().finding
    };
    assert_eq!((exact(4.9), exact(5.3)), (HoldFinding::Tight, HoldFinding::Leak));
}

#[test]
fn a_hold_of_less_than_ten_minutes_proves_nothing() {
    let held = |held_s: f64| finding(&[0.0, 0.3, 0.6, 1.0].map(|part| part * held_s / 60.0), |_| 400.0);
    assert_eq!(held(LEAST_HOLD.seconds() - 1.0), HoldFinding::TooShort);
    assert_eq!(held(LEAST_HOLD.seconds()), HoldFinding::Tight);
}

/// A dial counts from the air of the place: at 1,600 m it cannot show 30 inches, and what it shows of a hold tells nothing.
#[test]
fn a_dial_does_not_see_the_rise_that_matters() {
    let dial = |inhg: f64| -> Vec<Sample> {
        let pressure: Pressure = GaugePressure::from_inhg_vacuum(inhg).into();
        EVERY_FOUR
            .iter()
            .map(|after_min| Sample {
                after: TimeSpan::from_seconds(60.0 * after_min),
                pressure: Reading::within(pressure, PressureDifference::from_pa(1_700.0)),
            })
            .collect()
    };
    for inhg in [24.5, 30.0] {
        let told = hold(&dial(inhg), 22.0).judge().unwrap().finding;
        assert_eq!(told, HoldFinding::GaugeCannotTell, "{inhg}");
    }
}

/// Readings of a gauge that is exact but for its last digit.
fn exact(minutes: &[f64], microns: impl Fn(f64) -> f64) -> HoldFinding {
    let read = |sample: Sample| Sample {
        pressure: Reading::within(sample.pressure.value, PressureDifference::from_pa(0.1)),
        ..sample
    };
    let all: Vec<Sample> = samples(minutes, microns).into_iter().map(read).collect();
    hold(&all, 22.0).judge().unwrap().finding
}

/// A fall is told from three standard uncertainties on.
#[test]
fn a_fall_has_to_stand_out_of_the_scatter() {
    let fallen = |uncertainties: f64| {
        let at = |after_s: f64, pa: f64| Sample {
            after: TimeSpan::from_seconds(after_s),
            pressure: Reading {
                value: AbsolutePressure::from_pa(pa).into(),
                standard_uncertainty: PressureDifference::from_pa(1.0),
            },
        };
        let both = [at(0.0, 60.0), at(900.0, 60.0 - uncertainties * 2f64.sqrt())];
        hold(&both, 22.0).judge().unwrap().finding == HoldFinding::Falling
    };
    assert_eq!((fallen(2.95), fallen(3.05)), (false, true));
}

/// Moisture is told where the rise settles above 1,000 micron by more than the tenth that a vacuum gauge may be off.
#[test]
fn moisture_settles_above_what_a_gauge_may_be_off() {
    let settles_at = |microns: f64| exact(&EVERY_FIVE, |t| 400.0 + settled(microns - 400.0, 2.0)(t));
    let dry = DRY.microns();
    assert_eq!(settles_at(0.99 * dry), HoldFinding::Tight);
    assert_eq!(settles_at(1.08 * dry), HoldFinding::RiseUnclear);
    assert_eq!(settles_at(1.12 * dry), HoldFinding::Moisture);
}

/// A jump fits none of the shapes: somebody moved a valve.
#[test]
fn what_fits_no_shape_is_not_named() {
    let jump = |t: f64| if t > 12.0 { 900.0 } else { 400.0 };
    assert_eq!(exact(&EVERY_FIVE, jump), HoldFinding::RiseUnclear);
}

/// A trace and what it truly is.
struct Drawn {
    samples: Vec<Sample>,
    warmest_c: f64,
    altitude_m: f64,
    truth: usize,
}

/// What a trace truly is; the findings that are right for it follow from these.
const TRUTHS: [&str; 4] = ["tight", "moist", "leak", "leak and moist"];

/// Outgassing of up to 500 micron within 1 to 5 minutes; every other circuit is wet, and dries within 2 to 60 minutes to the
/// pressure of water in its coldest part, or part of the way; two of five leak, 2 to 300 micron a minute. Read 4 to 10 times in 10
/// to 40 minutes by a gauge that is off by up to a tenth throughout and scatters within 1, 2 or 5 %. 0 to 3,000 m, 5 to 40 °C.
fn drawn(rng: &mut ChaCha8Rng) -> Drawn {
    let count = rng.random_range(4..11_u32);
    let held_s = 60.0 * rng.random_range(10.0..40.0);
    let coldest_c = rng.random_range(5.0..38.0);
    let warmest_c = coldest_c + rng.random_range(0.0..8.0);
    let log_uniform =
        |rng: &mut ChaCha8Rng, low: f64, high: f64| low * f64::powf(high / low, rng.random_range(0.0..1.0));
    let start_pa = log_uniform(rng, 200.0, 900.0) * MICRON_PA;
    let gas_pa = log_uniform(rng, 10.0, 500.0) * MICRON_PA;
    let gas_s = 60.0 * log_uniform(rng, 1.0, 5.0);
    let water_pa = water_saturation_pressure_pa(coldest_c + 273.15).unwrap();
    let (wet, leaky) = (rng.random_range(0..2) == 0, rng.random_range(0..5) < 2);
    let share = if rng.random_range(0..2) == 0 {
        1.0
    } else {
        rng.random_range(0.02..1.0)
    };
    let (dry_pa, dry_s) = match wet {
        true => (share * (water_pa - start_pa), 60.0 * log_uniform(rng, 2.0, 60.0)),
        false => (0.0, 60.0),
    };
    let leak_pa_s = if leaky {
        log_uniform(rng, 2.0, 300.0) * MICRON_PA / 60.0
    } else {
        0.0
    };
    let (scale, scatter) = (
        rng.random_range(0.9..1.1),
        [0.01, 0.02, 0.05][rng.random_range(0..3_usize)],
    );
    let samples = (0..count)
        .map(|at| {
            let after_s = held_s * f64::from(at) / f64::from(count - 1);
            let settled = |pa: f64, s: f64| pa * (1.0 - f64::exp(-after_s / s));
            let pa = scale * (start_pa + settled(gas_pa, gas_s) + settled(dry_pa, dry_s) + leak_pa_s * after_s);
            let limit_pa = f64::max(scatter * pa, 0.7);
            let shown_pa = pa + limit_pa * rng.random_range(-1.0..1.0);
            Sample {
                after: TimeSpan::from_seconds(after_s),
                pressure: Reading::within(
                    AbsolutePressure::from_pa(shown_pa).into(),
                    PressureDifference::from_pa(limit_pa),
                ),
            }
        })
        .collect();
    let moist = start_pa + gas_pa + dry_pa > DRY.pa();
    let leaks = leak_pa_s > Rise::USUAL.rise.pa() / Rise::USUAL.over.seconds();
    Drawn {
        samples,
        warmest_c,
        altitude_m: rng.random_range(0.0..3_000.0),
        truth: usize::from(moist) + 2 * usize::from(leaks),
    }
}

fn place(finding: HoldFinding) -> usize {
    HoldFinding::ALL.iter().position(|one| *one == finding).unwrap()
}

/// Of 2,500 traces, at most one definite answer in fifty is wrong; and most of what can be told is told.
#[test]
fn definite_answers_are_right() {
    let mut rng = ChaCha8Rng::seed_from_u64(11);
    let mut table = [[0_u32; HoldFinding::ALL.len()]; TRUTHS.len()];
    for _ in 0..2_500 {
        let drawn = drawn(&mut rng);
        let hold = Hold {
            surroundings: Surroundings::at_altitude(drawn.altitude_m).unwrap(),
            ..hold(&drawn.samples, drawn.warmest_c)
        };
        let found = hold.judge().unwrap().finding;
        table[drawn.truth][place(found)] += 1;
    }
    let told = |truth: usize, finding: HoldFinding| table[truth][place(finding)];
    for (truth, name) in TRUTHS.iter().enumerate() {
        println!(
            "{name:15}{:?}",
            HoldFinding::ALL.map(|finding| (finding.id(), told(truth, finding)))
        );
    }
    let [tight, moist, leak, both] = [0, 1, 2, 3];
    let wrong = |truth: usize| match truth {
        0 => told(tight, HoldFinding::Leak) + told(tight, HoldFinding::Moisture),
        1 => told(moist, HoldFinding::Leak) + told(moist, HoldFinding::Tight),
        2 => told(leak, HoldFinding::Tight) + told(leak, HoldFinding::Moisture),
        _ => told(both, HoldFinding::Tight),
    } + told(truth, HoldFinding::Falling)
        + told(truth, HoldFinding::NotDeep);
    let all_wrong: u32 = (0..TRUTHS.len()).map(wrong).sum();
    let sum = |finding: HoldFinding| (0..TRUTHS.len()).map(|truth| told(truth, finding)).sum::<u32>();
    let definite =
        sum(HoldFinding::Tight) + sum(HoldFinding::Leak) + sum(HoldFinding::Moisture) + sum(HoldFinding::Falling);
    println!("{all_wrong} of {definite} definite answers are wrong");
    assert!(50 * all_wrong <= definite, "{all_wrong} of {definite}");
    assert!(3 * definite >= 2 * 2_500, "{definite} of 2500");
}
