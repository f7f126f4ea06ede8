//! The recorder of logs: its findings in traces with a known answer, its refusals, and that order, rate and splits do not matter.

#![allow(clippy::unwrap_used)]

use coldloop::circuit::Estimate;
use coldloop::log::{CHANNELS, Datum, Recorder, Sample, Summary};
use coldloop::units::{GaugePressure, Pressure, in_kelvins, kelvins_difference};
use coldloop::{Channel, LogNote, LogPhase, Observation};
use proptest::prelude::*;

const PSI_PA: f64 = 6_894.757_293;

/// The summary of a log.
fn of(samples: &[Sample]) -> Summary {
    let mut recorder = Recorder::new(Datum::Gauge);
    recorder.extend(samples);
    recorder.summary()
}

/// Noise without a random number generator, from -1 to 1.
fn noise(at: f64) -> f64 {
    let x = (at * 12.9898).sin() * 43_758.545_3;
    2.0 * (x - x.floor()) - 1.0
}

/// A saw-tooth of the low side between two pressures, falling for `on` and rising for `off` seconds; the high side opposes it.
fn saw_tooth(t: f64, (low, high): (f64, f64), (on, off): (f64, f64)) -> Sample {
    let at = t.rem_euclid(on + off);
    let down = if at < on { at / on } else { 1.0 - (at - on) / off };
    Sample::at(t)
        .with(Channel::LowSide, high - (high - low) * down + 1e3 * noise(t))
        .with(Channel::HighSide, 1.0e6 + 3e5 * down + 4e3 * noise(t + 0.5))
        .with(Channel::Vent, 280.0 - 1.5 * down)
}

/// A system that settles with a time constant, at a speed.
fn settling(t: f64, tau: f64, rpm: f64) -> Sample {
    let left = (-t / tau).exp();
    Sample::at(t)
        .with(Channel::LowSide, 200e3 + 1e5 * left + 1.5e3 * noise(t))
        .with(Channel::HighSide, 1.4e6 - 3e5 * left + 5e3 * noise(t + 0.3))
        .with(Channel::Vent, 280.0 + 15.0 * left + 0.1 * noise(t + 0.7))
        .with(Channel::EngineSpeed, rpm / 60.0 + 0.1 * noise(t + 0.9))
}

fn every(step: f64, seconds: f64, sample: impl Fn(f64) -> Sample) -> Vec<Sample> {
    (0..(seconds / step) as usize)
        .map(|at| sample(at as f64 * step))
        .collect()
}

#[test]
fn the_recorder_fits_into_eight_kibibytes() {
    assert!(size_of::<Recorder>() <= 8 * 1024, "{}", size_of::<Recorder>());
}

/// A low side that falls by 30 kPa in ten minutes, as that of a slow leak or a frosting coil would, drifts; noise, a decay that has
/// ended and a clutch that cycles do not.
#[test]
fn a_slow_drift_is_noted_and_noise_is_none() {
    let drifts = |samples: &[Sample]| {
        let summary = of(samples);
        assert!(summary.judged().count() > 0);
        summary.notes.of(LogNote::Drift)
    };
    let falling = |per_s: f64| {
        every(1.0, 600.0, move |t| {
            let low_pa = settling(t, 20.0, 1_500.0).value(Channel::LowSide).unwrap();
            settling(t, 20.0, 1_500.0).with(Channel::LowSide, low_pa - per_s * t)
        })
    };
    assert_eq!(drifts(&falling(50.0)), 1);
    assert_eq!(drifts(&falling(0.0)), 0);
    let ends = (24.0 * PSI_PA, 43.0 * PSI_PA);
    assert_eq!(drifts(&every(1.0, 600.0, |t| saw_tooth(t, ends, (9.0, 21.0)))), 0);
}

/// A switch that opens near vacuum makes cycles that are alike: that is no cooling that comes and goes.
#[test]
fn a_clutch_that_cycles_down_to_vacuum_is_no_ice() {
    let summary = of(&every(1.0, 600.0, |t| saw_tooth(t, (5e3, 180e3), (9.0, 21.0))));
    assert!(summary.recoveries > 5 && summary.states().last().unwrap().swing().unwrap().repeats);
    assert_eq!(summary.observations().answer(Observation::CoolingComesAndGoes), None);
}

/// A pressure of a log that counts from the surrounding air.
fn gauge(pressure: Pressure) -> GaugePressure {
    let Pressure::Gauge(pressure) = pressure else {
        unreachable!("{pressure:?} of a log that counts from the air");
    };
    pressure
}

/// Sources: workshop manuals of 1993 and 1998 for cars with an orifice tube: the switch opens at 22 to 28 psi and closes at 40 to 47 psi;
/// the high side moves opposite to the low side; a cycle is on-time and off-time together.
#[test]
fn published_switch_pressures_are_found_from_the_swing() {
    for (opens, closes) in [(22.0, 40.0), (24.0, 43.0), (28.0, 47.0)] {
        let ends = (opens * PSI_PA, closes * PSI_PA);
        let summary = of(&every(1.0, 600.0, |t| saw_tooth(t, ends, (9.0, 21.0))));
        assert_eq!(summary.phase, LogPhase::Cycling);
        let state = summary.states().last().unwrap();
        let swing = state.swing().unwrap();
        assert!(
            (gauge(swing.cut_out).psig() - opens).abs() < 1.0,
            "{}",
            gauge(swing.cut_out).psig()
        );
        assert!(
            (gauge(swing.cut_in).psig() - closes).abs() < 1.0,
            "{}",
            gauge(swing.cut_in).psig()
        );
        assert!((swing.cycles.value.per_minute() - 2.0).abs() < 0.1 && swing.repeats);
        assert!((swing.on_share - 0.3).abs() < 0.07, "{}", swing.on_share);
        // The mean over whole cycles is that of the straight saw-tooth.
        let low = state.mean(Channel::LowSide).unwrap();
        assert!((low.value - 0.5 * (ends.0 + ends.1)).abs() < 1.5e3, "{}", low.value);
        assert!(low.standard_uncertainty < 2e3);
    }
}

/// Source: a bus specification of a state's school buses: from 110 °F, the inside must be 30 °F below the outside within 30 minutes,
/// logged every five minutes.
#[test]
fn a_pull_down_that_just_meets_the_specification_is_told_from_seven_samples() {
    let cabin = |t: f64| 299.8 + 16.7 * (-t / 600.0).exp();
    let samples = every(300.0, 2_100.0, |t| Sample::at(t).with(Channel::Cabin, cabin(t)));
    let summary = of(&samples);
    let fall = summary.cabin.unwrap();
    assert!((in_kelvins(fall.from) - 316.5).abs() < 0.1);
    assert!(fall.from - fall.to > kelvins_difference(14.0), "{fall:?}");
    assert!((300.0..=900.0).contains(&fall.half.seconds()), "{fall:?}");
    assert_eq!(summary.states().last().unwrap().swing(), None);
}

/// Sources: makers' procedures: five samples in five minutes at 2,000 rpm, the vent stable after about ten.
#[test]
fn a_vent_that_is_stable_after_ten_minutes_has_settled_by_then_and_not_in_the_second_minute() {
    let vent = |t: f64| Sample::at(t).with(Channel::Vent, 281.0 + 14.0 * (-t / 130.0).exp() + 0.05 * noise(t));
    let summary = of(&every(1.0, 120.0, vent));
    assert_eq!(summary.phase, LogPhase::Settling);
    assert!(summary.wait.seconds() > 0.0);
    let summary = of(&every(1.0, 900.0, vent));
    assert_eq!(summary.phase, LogPhase::Settled);
    let mean = summary.states().last().unwrap().mean(Channel::Vent).unwrap();
    assert!((mean.value - 281.0).abs() < 0.4, "{mean:?}");
}

/// Source: a workshop manual of 2000: with moisture that freezes the low side swings irregularly by 25 kPa below 120 kPa.
#[test]
fn the_irregular_swing_of_frozen_moisture_is_no_clutch() {
    let lengths = [40.0, 95.0, 30.0, 140.0, 60.0, 35.0, 120.0, 80.0];
    let trace = |t: f64| {
        let (mut left, mut at) = (t.rem_euclid(600.0), 0);
        while left >= lengths[at] {
            left -= lengths[at];
            at += 1;
        }
        let part = (std::f64::consts::PI * left / lengths[at]).sin();
        Sample::at(t)
            .with(Channel::LowSide, 120e3 - 25e3 * part + 0.5e3 * noise(t))
            .with(Channel::HighSide, 1.2e6 - 5e4 * part)
    };
    let summary = of(&every(1.0, 900.0, trace));
    assert_eq!(summary.phase, LogPhase::Irregular);
    let swing = summary.states().last().unwrap().swing().unwrap();
    assert!(
        !swing.repeats && (gauge(swing.cut_in).pa() - gauge(swing.cut_out).pa() - 25e3).abs() < 5e3,
        "{swing:?}"
    );
    assert_eq!(summary.observations().answer(Observation::CoolingComesAndGoes), None);
}

#[test]
fn another_speed_is_another_state() {
    let mut samples = every(1.0, 300.0, |t| settling(t, 20.0, 800.0));
    samples.extend(every(1.0, 300.0, |t| {
        let mut sample = settling(t, 20.0, 2_000.0).with(Channel::LowSide, 150e3 + 5e4 * (-t / 10.0).exp());
        sample.time_s += 300.0;
        sample
    }));
    let summary = of(&samples);
    let states = summary.states();
    assert_eq!(states.len(), 2);
    assert!((states[0].mean(Channel::LowSide).unwrap().value - 200e3).abs() < 3e3);
    assert!((states[1].mean(Channel::LowSide).unwrap().value - 150e3).abs() < 3e3);
    assert!((states[1].began().seconds() - 300.0).abs() < 5.0);
    assert_eq!(summary.judged().count(), 2);
}

#[test]
fn a_step_of_the_pressures_alone_is_another_state() {
    let trace = |t: f64| {
        let moved = if t < 300.0 {
            0.0
        } else {
            1.0 - (-(t - 300.0) / 8.0).exp()
        };
        Sample::at(t)
            .with(Channel::LowSide, 200e3 - 4e4 * moved + 1.5e3 * noise(t))
            .with(Channel::HighSide, 1.3e6 + 2e5 * moved + 5e3 * noise(t + 0.3))
    };
    let summary = of(&every(1.0, 600.0, trace));
    assert_eq!(summary.states().len(), 2);
    assert!((summary.states()[1].began().seconds() - 300.0).abs() <= 20.0);
}

#[test]
fn both_sides_come_together_after_the_stop() {
    let mut samples = every(1.0, 240.0, |t| settling(t, 10.0, 1_500.0));
    samples.extend(every(1.0, 240.0, |t| {
        Sample::at(240.0 + t)
            .with(Channel::LowSide, 600e3 - 400e3 * (-t / 30.0).exp())
            .with(Channel::HighSide, 600e3 + 800e3 * (-t / 30.0).exp())
            .with(Channel::EngineSpeed, 0.0)
    }));
    let summary = of(&samples);
    assert_eq!(summary.phase, LogPhase::AtRest);
    let seconds = summary.equal_after.unwrap().seconds();
    assert!((50.0..90.0).contains(&seconds), "{seconds}");
    assert_eq!(
        summary.observations().answer(Observation::SidesEqualiseQuickly),
        Some(true)
    );
}

#[test]
fn what_no_vehicle_shows_is_ignored_and_counted() {
    let clean = every(1.0, 400.0, |t| settling(t, 15.0, 1_500.0));
    let truth = of(&clean).states()[0].mean(Channel::LowSide).unwrap();
    let near = |samples: &[Sample], note: LogNote, least: u32| {
        let summary = of(samples);
        assert!(summary.notes.of(note) >= least, "{} {:?}", note.id(), summary.notes);
        let low = summary.states().last().unwrap().mean(Channel::LowSide).unwrap();
        assert!((low.value - truth.value).abs() < 2e3, "{} {low:?} {truth:?}", note.id());
    };
    let changed = |change: &dyn Fn(usize, &mut Sample)| {
        let mut samples = clean.clone();
        for (at, sample) in samples.iter_mut().enumerate() {
            change(at, sample);
        }
        samples
    };
    let spikes = changed(&|at, sample| {
        if at % 50 == 20 {
            *sample = sample.with(Channel::LowSide, 3.4e6);
        }
    });
    near(&spikes, LogNote::Spike, 7);
    let dropouts = changed(&|at, sample| {
        if at % 10 == 3 {
            *sample = sample.with(Channel::LowSide, f64::NAN);
        }
    });
    near(&dropouts, LogNote::Dropout, 38);
    let unit = changed(&|at, sample| {
        if (200..260).contains(&at) {
            *sample = sample.with(Channel::LowSide, sample.value(Channel::LowSide).unwrap() / 6.894_757);
        }
    });
    near(&unit, LogNote::UnitStep, 59);
    let infinite = changed(&|at, sample| {
        if at == 100 {
            *sample = sample.with(Channel::LowSide, f64::INFINITY).with(Channel::Vent, -20.0);
        }
    });
    near(&infinite, LogNote::NotFinite, 1);
    near(&infinite, LogNote::OutOfRange, 1);
    let gap: Vec<Sample> = clean
        .iter()
        .filter(|sample| !(200.0..240.0).contains(&sample.time_s))
        .copied()
        .collect();
    near(&gap, LogNote::Gap, 40);
    let twice: Vec<Sample> = clean.iter().flat_map(|sample| [*sample, *sample]).collect();
    near(&twice, LogNote::RepeatedTime, 400);
}

#[test]
fn a_stuck_sensor_is_told_from_one_that_stands_still() {
    let stuck = every(1.0, 600.0, |t| {
        let sample = settling(t, 15.0, 1_500.0);
        if t > 200.0 {
            sample.with(Channel::Vent, 282.4)
        } else {
            sample
        }
    });
    let summary = of(&stuck);
    assert!(summary.notes.of(LogNote::Stuck) > 300);
    // A sensor of whole degrees repeats its value most of the time.
    let whole = every(1.0, 600.0, |t| {
        let sample = settling(t, 60.0, 1_500.0);
        sample.with(Channel::Vent, sample.value(Channel::Vent).unwrap().round())
    });
    assert_eq!(of(&whole).notes.of(LogNote::Stuck), 0);
}

#[test]
fn a_clock_that_jumps_starts_another_state_and_one_wrong_time_does_not() {
    let mut samples = every(1.0, 600.0, |t| settling(t, 15.0, 1_500.0));
    samples[100].time_s = 1e9;
    samples[200].time_s = -4e4;
    samples[300].time_s = f64::NAN;
    let summary = of(&samples);
    assert_eq!(
        (
            summary.notes.of(LogNote::TooLate),
            summary.notes.of(LogNote::TimeNotFinite)
        ),
        (2, 1)
    );
    assert_eq!((summary.notes.of(LogNote::ClockJumped), summary.states().len()), (0, 1));
    for sample in &mut samples[400..] {
        sample.time_s -= 3_600.0;
    }
    let summary = of(&samples);
    assert_eq!((summary.notes.of(LogNote::ClockJumped), summary.states().len()), (1, 2));
    assert!((summary.elapsed.seconds() - 600.0).abs() < 10.0);
}

#[test]
fn below_half_a_sample_a_second_only_means_are_told() {
    let ends = (165e3, 296e3);
    let slow = of(&every(5.0, 1_500.0, |t| saw_tooth(t, ends, (9.0, 22.3))));
    let state = slow.states().last().unwrap();
    assert_eq!(state.swing(), None);
    assert_eq!(state.readings(&Default::default()).clutch_cycles, None);
    let low = state.mean(Channel::LowSide).unwrap();
    assert!(
        (low.value - 230.5e3).abs() < 3.0 * low.standard_uncertainty + 5e3,
        "{low:?}"
    );
}

/// Whether two means are the same within their uncertainty.
fn same(one: Estimate, other: Estimate) -> bool {
    let apart = (one.value - other.value).abs();
    apart <= 3.0 * one.standard_uncertainty.hypot(other.standard_uncertainty) + 1e-4 * one.value.abs()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Samples up to 30 s late are binned where they belong.
    #[test]
    fn late_samples_change_nothing(keys in proptest::collection::vec(0.0..29.0f64, 400), cycles in any::<bool>()) {
        let sample = |t: f64| if cycles { saw_tooth(t, (165e3, 296e3), (9.0, 21.0)) } else { settling(t, 30.0, 1_500.0) };
        let inorder = every(1.0, 400.0, sample);
        let mut late: Vec<(f64, Sample)> = inorder.iter().zip(keys).map(|(sample, key)| (sample.time_s + key, *sample)).collect();
        late[0].0 = -1.0;
        late.sort_by(|one, other| one.0.total_cmp(&other.0));
        let late: Vec<Sample> = late.into_iter().map(|(_, sample)| sample).collect();
        let (one, other) = (of(&inorder), of(&late));
        prop_assert_eq!(other.notes.of(LogNote::TooLate), 0);
        prop_assert_eq!(one.states().len(), other.states().len());
        for (one, other) in one.states().iter().zip(other.states()) {
            prop_assert_eq!(one, other);
        }
    }

    /// The rate of the samples, and how they are split into calls, do not matter.
    #[test]
    fn rate_and_split_change_nothing(hz in 0.5..20.0f64, split in 1usize..50, cycles in any::<bool>()) {
        let sample = |t: f64| if cycles { saw_tooth(t, (165e3, 296e3), (11.0, 23.0)) } else { settling(t, 30.0, 1_500.0) };
        let at_one = of(&every(1.0, 500.0, sample));
        let samples = every(1.0 / hz, 500.0, sample);
        let mut recorder = Recorder::new(Datum::Gauge);
        for part in samples.chunks(split) {
            recorder.extend(part);
            let _ = recorder.summary();
        }
        let other = recorder.summary();
        prop_assert_eq!(at_one.states().len(), other.states().len());
        let (one, other) = (at_one.states().last().unwrap(), other.states().last().unwrap());
        for channel in [Channel::LowSide, Channel::HighSide, Channel::Vent] {
            let (a, b) = (one.mean(channel).unwrap(), other.mean(channel).unwrap());
            prop_assert!(same(a, b), "{} at {hz} Hz: {a:?} {b:?}", channel.id());
        }
        prop_assert_eq!(one.swing().is_some(), other.swing().is_some());
        if let (Some(one), Some(other)) = (one.swing(), other.swing()) {
            prop_assert!(same(one.cycles.si(), other.cycles.si()), "{one:?} {other:?}");
        }
    }

    /// Any numbers at any times: nothing panics, and each value that cannot be is counted.
    #[test]
    fn any_numbers_are_taken_or_counted(
        rows in proptest::collection::vec((prop_oneof![Just(f64::NAN), Just(f64::INFINITY), Just(-1e300), Just(1e300), -100.0..4_000.0f64],
            prop_oneof![Just(f64::NAN), Just(f64::NEG_INFINITY), Just(1e308), -1e5..4e6f64, 200.0..400.0f64, 0.0..1.0f64], 0..CHANNELS), 0..400),
    ) {
        let mut recorder = Recorder::new(Datum::Gauge);
        for (time, value, channel) in &rows {
            recorder.push(&Sample::at(*time).with(Channel::ALL[*channel], *value));
        }
        let summary = recorder.summary();
        let bad_times = rows.iter().filter(|(time, _, _)| !time.is_finite()).count();
        prop_assert_eq!(summary.notes.of(LogNote::TimeNotFinite) as usize, bad_times);
        for state in summary.states() {
            for channel in Channel::ALL {
                if let Some(mean) = state.mean(channel) {
                    prop_assert!(mean.value.is_finite() && mean.standard_uncertainty >= 0.0);
                }
            }
        }
        let _ = (summary.judged().count(), summary.observations());
    }
}
