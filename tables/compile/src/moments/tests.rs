//! The moments of a few cases, worked out by hand.

#![allow(clippy::unwrap_used)] // tests

use super::conditions::Usual;
use super::fit::mean;
use super::lasting::{Residual, split};
use super::shifts;
use super::sound::{Sound, diagonal};
use super::truth::{Case, read};
use super::{FEATURES, tables};
use coldloop::Fault;

const VENT: usize = 6;

/// One case in the same weather as all others: 30 °C, 50 %, 1,500 rpm, fresh air, highest blower, at the sea.
fn case(make: &str, compressor: &str, truth: &str, readings: &str) -> String {
    weather(make, compressor, truth, readings, r#""humidity": "50 %","#)
}

fn weather(make: &str, compressor: &str, truth: &str, readings: &str, humidity: &str) -> String {
    format!(
        r#"{{"id": "{make}", "case": {{"system": {{"refrigerant": "R-134a", "expansion": "txv", "compressor": "{compressor}"}},
        "conditions": {{"ambient": "30 °C", "altitude": "0 m", {humidity} "engine_speed": "1500 rpm", "air_source": "fresh", "blower": "100 %"}},
        "readings": {{{readings}}}}}, "truth": [{truth}], "world": {{"make": "{make}"}}}}"#
    )
    .replace('\n', " ")
}

fn vent(celsius: f64) -> String {
    format!(r#""vent": {{"value": "{celsius} °C", "within": "0.1 K"}}"#)
}

const SOUND: &str = r#"{"fault": "no-fault", "severity": 0.0}"#;
const OVERCHARGE: &str = r#"{"fault": "overcharge", "severity": 0.3}"#;

/// Sound vents of 6 and 8 °C from two makes, and overcharged ones.
fn file() -> String {
    let mut lines = vec![
        case("A", "fixed-clutch", SOUND, &vent(6.0)),
        case("B", "fixed-clutch", SOUND, &vent(8.0)),
    ];
    for (compressor, warm) in [("fixed-clutch", [10.0, 12.0]), ("electric", [16.0, 18.0])] {
        lines.extend(warm.map(|warm| case("A", compressor, OVERCHARGE, &vent(warm))));
    }
    lines.join("\n")
}

fn close(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{found} instead of {wanted}");
}

/// The mean of 6 and 8 °C is 7 °C. Both lie one kelvin from it, where the t distribution weighs each case as one, so the scale is
/// their mean square less the variance of a thermometer that is wrong by 0.1 K at most.
#[test]
fn the_sound_mean_and_its_spread_are_those_of_two_cases() {
    let cases = read(&file()).unwrap();
    let usual = Usual::of(&cases).unwrap();
    let sound = Sound::of(&cases, &usual).unwrap();
    assert_eq!((sound.kinds.len(), sound.makes), (1, 2));
    let kind = &sound.kinds[0];
    assert_eq!((kind.cases, kind.makes), (2, 2));
    let mean = mean(&usual.terms(&cases[0]).unwrap(), &kind.fit.coefficients);
    close(mean[VENT], 280.15, 1e-3);
    close(kind.fit.scale[(VENT, VENT)], 1.0 - 0.01 / 3.0, 1e-3);
}

/// Overcharged vents of 10, 12, 16 and 18 °C lie round 14 °C, 7 K above the sound mean, and in weather without slopes. What a group
/// of compressors adds is its two cases' mean deviation, drawn towards nought by fifteen cases without any: sum u d / (sum u + 15),
/// with the weights u = (5 + 1) / (5 + (x - shift)^2 / scale) of the t distribution. In turn the shift of all is the weighted mean of
/// what is left of the cases, both groups being solved for at once.
#[test]
fn shifts_are_pooled_with_the_weights_that_are_stated() {
    let cases = read(&file()).unwrap();
    let usual = Usual::of(&cases).unwrap();
    let sound = Sound::of(&cases, &usual).unwrap();
    let all = shifts::all(&cases, &usual, &sound).unwrap();
    let [of_fault] = all.iter().filter(|s| s.fault == Fault::Overcharge).collect::<Vec<_>>()[..] else {
        unreachable!("one expansion device has the fault")
    };
    assert_eq!((of_fault.cases, of_fault.makes), (4, 1));
    let of = |group: &str| of_fault.rows.iter().find(|row| row.group == group).unwrap();
    // The weather of all cases is that of 30 °C, 1,500 rpm: only w is not nought.
    let w = usual.terms(&cases[0]).unwrap()[2];
    let at = |group: &str| of(group).shift[0][VENT] + w * of(group).shift[2][VENT];
    close(at("all"), 7.0, 2e-3);
    assert_eq!((of("all").cases, of("all").makes, of("all").read[VENT]), (4, 1, 4));
    assert_eq!(of("all").severity, [0.3, 0.3, 0.3]);
    let scale = of_fault.covariance[(VENT, VENT)];
    for (group, own) in [("fixed-clutch", [3.0, 5.0]), ("electric", [9.0, 11.0])] {
        let added = [0, 2].map(|term| of(group).shift[term][VENT] - of("all").shift[term][VENT]);
        let weights = own.map(|x: f64| 6.0 / (5.0 + (x - at(group)).powi(2) / scale));
        // The stationary point of sum u (d - b0 - w b2)^2 + 15 b0^2 + 30 b2^2.
        let left: f64 = weights.iter().zip(&own).map(|(u, x)| u * (x - at(group))).sum();
        close(left, 15.0 * added[0], 2e-2);
        close(w * left, 30.0 * added[1], 2e-2);
        assert!((at(group) - 7.0).abs() > 0.2, "{group}: {}", at(group));
    }
    assert!(of_fault.rows.iter().all(|row| row.group != "variable"));
}

/// A reading that no case has keeps what is believed beforehand, and is counted as none.
#[test]
fn a_table_has_the_figures_of_its_cases() {
    let [moments, conditions] = tables(&file()).unwrap();
    let row = |start: &str| {
        moments
            .lines()
            .find(|line| line.starts_with(start))
            .unwrap()
            .to_string()
    };
    assert_eq!(
        row("independent-simulator,txv,all,overcharge,0.300,0.300,0.300,read"),
        "independent-simulator,txv,all,overcharge,0.300,0.300,0.300,read,,4,1,0,0,0,0,0,0,4"
    );
    let shift = row("independent-simulator,txv,all,overcharge,0.300,0.300,0.300,shift,1,");
    close(shift.rsplit(',').next().unwrap().parse().unwrap(), 7.0, 2e-3);
    assert!(conditions.contains("independent-simulator,relative_humidity,\"1\",6,0.500,0.000\n"));
    let columns = row("source,").split(',').count();
    assert!(moments.lines().skip(2).all(|line| line.split(',').count() == columns));
}

/// 292.80 kPa of R-134a boil at 0 °C (Tillner-Roth & Baehr 1994), 30 K below the ambient; at 1 kPa the low side stands at its floor.
#[test]
fn pressures_are_saturation_temperatures_above_the_ambient() {
    let low = |kpa: &str| {
        let line = case("A", "fixed-clutch", SOUND, &format!(r#""low_side": "{kpa} kPa abs""#));
        read(&line).unwrap()[0].read[0].unwrap().value
    };
    close(low("292.80"), -30.0, 0.01);
    close(low("1"), 228.15 - 303.15, 1e-9);
}

#[test]
fn gauge_errors_are_left_out_and_pairs_are_no_single_fault() {
    let error = r#"{"fault": "gauge-error", "severity": 0.5}"#;
    let lines = [
        case("A", "electric", error, &vent(6.0)),
        case("A", "electric", &format!("{OVERCHARGE}, {error}"), &vent(6.0)),
        case("A", "electric", &format!("{OVERCHARGE}, {OVERCHARGE}"), &vent(6.0)),
    ];
    let cases = read(&lines.join("\n")).unwrap();
    assert_eq!(cases.len(), 1);
    assert_eq!(cases[0].truth, None);
    let unknown = case("A", "electric", r#"{"fault": "gremlins", "severity": 1.0}"#, &vent(6.0));
    let complaint = read(&unknown).map(|_: Vec<Case>| ()).unwrap_err();
    assert!(complaint.contains("gremlins is no fault"), "{complaint}");
}

/// Humidities of 40 and 60 % stand in for one that was not noted with 50 +- 10 %; nothing else is in doubt then.
#[test]
fn what_was_not_noted_has_the_mean_and_the_spread_of_what_was() {
    let humid = |percent: &str| weather("A", "fixed-clutch", SOUND, &vent(6.0), percent);
    let lines = [
        humid(r#""humidity": "40 %","#),
        humid(r#""humidity": "60 %","#),
        humid(""),
        humid(r#""humidity": "50 %","#),
    ];
    let cases = read(&lines.join("\n")).unwrap();
    let usual = Usual::of(&cases[..3]).unwrap();
    close(usual.0[0].mean, 0.5, 1e-12);
    close(usual.0[0].deviation, 0.1, 1e-12);
    let terms = |index: usize| usual.terms(&cases[index]).unwrap();
    for (unknown, known) in terms(2).iter().zip(&terms(3)) {
        close(*unknown, *known, 1e-12);
    }
    let doubts = usual.doubts(&cases[2]).unwrap();
    assert_eq!(doubts.len(), 1);
    assert!(usual.doubts(&cases[3]).unwrap().is_empty());
    for (index, change) in doubts[0].iter().enumerate() {
        close(*change, (terms(1)[index] - terms(0)[index]) / 2.0, 1e-12);
    }
    assert!(doubts[0][2] > 0.2 && doubts[0][0] == 0.0);
}

/// Two makes stand 2 K above and below the mean, their 200 cases each 1 K above and below the make's: the covariance between makes
/// is 4 K2, that within one 1 K2, as closely as 200 cases tell a make's mean.
#[test]
fn makes_and_vehicles_are_told_apart() {
    let residual = |make: &'static str, vent: f64| {
        let mut read = [None; FEATURES];
        read[VENT] = Some(vent);
        Residual {
            make,
            read,
            known: diagonal(0.0),
        }
    };
    let mut residuals = Vec::new();
    for _ in 0..100 {
        for (make, mean) in [("A", 2.0), ("B", -2.0)] {
            residuals.extend([-1.0, 1.0].map(|by| residual(make, mean + by)));
        }
    }
    let found = split(&residuals, (&diagonal(16.0), 1e-6), &diagonal(16.0)).unwrap();
    close(found.makes[(VENT, VENT)], 4.0, 0.05);
    close(found.vehicles[(VENT, VENT)], 1.0, 0.02);
}
