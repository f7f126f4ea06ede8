//! When a sample of a log comes too late, when a sensor sticks, and when a state is long enough to be judged.

use coldloop::log::{Datum, Recorder, Sample, Summary};
use coldloop::{Channel, LogNote, LogPhase, Observation};

fn of(samples: &[Sample]) -> Summary {
    let mut recorder = Recorder::new(Datum::Gauge);
    recorder.extend(samples);
    recorder.summary()
}

/// A sample each second.
fn seconds(count: u32, sample: impl Fn(f64) -> Sample) -> Vec<Sample> {
    (0..count).map(|t| sample(f64::from(t))).collect()
}

/// A sound system in its steady state.
fn steady(t: f64) -> Sample {
    Sample::at(t)
        .with(Channel::LowSide, 200e3 + 100.0 * t.sin())
        .with(Channel::HighSide, 1.4e6 + 400.0 * t.cos())
        .with(Channel::Vent, 280.0 + 0.02 * t.sin())
}

/// Samples find their place up to 30 s late, the longest that the recorder of the log keeps them for; a clock that runs ahead by
/// more than half an hour has jumped: logs of buses have a sample every five minutes.
#[test]
fn a_sample_comes_half_a_minute_late_and_half_an_hour_ahead() {
    let refused = |time_s: f64| {
        let mut samples = seconds(101, steady);
        samples.push(steady(time_s));
        of(&samples).notes.of(LogNote::TooLate)
    };
    assert_eq!((refused(70.0), refused(69.0)), (0, 1));
    assert_eq!((refused(1_900.0), refused(1_901.0)), (0, 1));
}

/// Five samples that agree make another time the true one: four wrong times in a row are still mistakes.
#[test]
fn five_samples_that_agree_set_the_clock() {
    let jumps = |wrong: u32| {
        let mut samples = seconds(100, steady);
        samples.extend(seconds(wrong, |t| steady(1e6 + t)));
        of(&samples).notes.of(LogNote::ClockJumped)
    };
    assert_eq!((jumps(4), jumps(5)), (0, 1));
}

/// A sensor that moved every second and then tells the same value sticks from the sixtieth repetition on.
#[test]
fn a_sensor_sticks_after_a_minute() {
    let stuck = |repeated: u32| {
        let mut samples = seconds(200, steady);
        let last = samples[199].value(Channel::Vent).unwrap();
        samples.extend(seconds(repeated, |t| steady(200.0 + t).with(Channel::Vent, last)));
        of(&samples).notes.of(LogNote::Stuck)
    };
    assert_eq!((stuck(59), stuck(60), stuck(70)), (0, 1, 11));
}

/// A low side that is suddenly written in psi is left out for two minutes; what lasts longer has really changed.
#[test]
fn a_step_by_the_ratio_of_two_units_is_real_after_two_minutes() {
    let mut samples = seconds(200, steady);
    samples.extend(seconds(200, |t| {
        let sample = steady(200.0 + t);
        sample.with(Channel::LowSide, sample.value(Channel::LowSide).unwrap() / 6.894_757)
    }));
    assert_eq!(of(&samples[..300]).notes.of(LogNote::UnitStep), 100);
    assert_eq!(of(&samples).notes.of(LogNote::UnitStep), 120);
}

/// A clutch is engaged where it is commanded for 97 % of the time and more, so that a short break of the signal does not count, and
/// the high side is above twice the low side.
#[test]
fn a_clutch_is_engaged_by_its_command_and_by_what_it_pumps() {
    let engaged = |share: f64, high_pa: f64| {
        let sample = |t| steady(t).with(Channel::Clutch, share).with(Channel::HighSide, high_pa);
        of(&seconds(300, sample))
            .observations()
            .answer(Observation::ClutchEngaged)
    };
    assert_eq!((engaged(0.96, 1.4e6), engaged(0.98, 1.4e6)), (None, Some(true)));
    assert_eq!((engaged(1.0, 395e3), engaged(1.0, 405e3)), (None, Some(true)));
}

/// A state is judged from one minute on where it has settled, and from three minutes on where it has not.
#[test]
fn a_state_is_judged_after_one_minute_or_three() {
    let judged_from = |sample: &dyn Fn(f64) -> Sample, settles: bool| {
        let mut recorder = Recorder::new(Datum::Gauge);
        let (mut longest_unjudged, mut shortest_judged) = (0.0, f64::INFINITY);
        for sample in seconds(260, sample) {
            recorder.push(&sample);
            let summary = recorder.summary();
            let Some(state) = summary.states().last() else {
                continue;
            };
            let s = state.lasted().seconds();
            assert!(settles || summary.phase != LogPhase::Settled, "{s} s");
            assert!(!settles || s < 55.0 || summary.phase == LogPhase::Settled, "{s} s");
            if summary.judged().next().is_some() {
                shortest_judged = f64::min(shortest_judged, s);
            } else {
                longest_unjudged = f64::max(longest_unjudged, s);
            }
        }
        (longest_unjudged, shortest_judged)
    };
    // A state grows by blocks of 10 s.
    let (unjudged, judged) = judged_from(&steady, true);
    assert!(
        unjudged < 60.0 && (60.0..=70.0).contains(&judged),
        "{unjudged} {judged}"
    );
    // The high side that climbs by 1 kPa/s never settles.
    let climbs = |t| steady(t).with(Channel::HighSide, 1e6 + 1e3 * t);
    let (unjudged, judged) = judged_from(&climbs, false);
    assert!(
        unjudged < 180.0 && (180.0..=190.0).contains(&judged),
        "{unjudged} {judged}"
    );
}

/// A low side that falls and rises by a straight line, 20 s each, the high side against it.
fn swings(t: f64, low_pa: f64, high_pa: f64) -> Sample {
    let at = t.rem_euclid(40.0);
    let down = if at < 20.0 { at / 20.0 } else { 2.0 - at / 20.0 };
    Sample::at(t)
        .with(Channel::LowSide, high_pa - (high_pa - low_pa) * down)
        .with(Channel::HighSide, 1.0e6 + 3e5 * down)
}

/// Cooling comes and goes where the low side fell below 20 kPa, near vacuum, and came back above 80 kPa, twice at least: once may be the
/// start of a run.
#[test]
fn cooling_that_came_back_twice_comes_and_goes() {
    let comes_and_goes = |low_pa: f64, high_pa: f64, times: u32| {
        let samples = seconds(40 * times + 2, |t| swings(t, low_pa, high_pa));
        of(&samples).observations().answer(Observation::CoolingComesAndGoes)
    };
    assert_eq!(
        (comes_and_goes(15e3, 150e3, 1), comes_and_goes(15e3, 150e3, 2)),
        (None, Some(true))
    );
    assert_eq!(
        (comes_and_goes(21e3, 150e3, 4), comes_and_goes(19e3, 150e3, 4)),
        (None, Some(true))
    );
    assert_eq!(
        (comes_and_goes(10e3, 79e3, 4), comes_and_goes(10e3, 81e3, 4)),
        (None, Some(true))
    );
}

/// Three cycles tell that a swing repeats. One run tells how often a clutch cycles within a factor of about two, 0.6 of it; how often it
/// did in this run is known within 5 % of a cycle, a second in twenty.
#[test]
fn three_cycles_repeat_and_one_run_tells_little() {
    let mut recorder = Recorder::new(Datum::Gauge);
    let (mut most_unsure, mut least_sure) = (0, u32::MAX);
    for sample in seconds(400, |t| swings(t, 165e3, 296e3)) {
        recorder.push(&sample);
        let summary = recorder.summary();
        if let Some(swing) = summary.states().last().and_then(|state| state.swing()) {
            if swing.repeats {
                least_sure = least_sure.min(swing.count);
            } else {
                most_unsure = most_unsure.max(swing.count);
            }
        }
    }
    assert_eq!((most_unsure, least_sure), (2, 3));
    let summary = recorder.summary();
    let state = summary.states().last().unwrap();
    let (swing, told) = (state.swing().unwrap(), state.readings(&Default::default()));
    let hz = swing.cycles.si();
    let of_one = hz.standard_uncertainty * f64::from(swing.count).sqrt() / hz.value;
    assert!((of_one - 0.05).abs() < 1e-6, "{hz:?}");
    let told = told.clutch_cycles.unwrap();
    let wanted = hz.standard_uncertainty.hypot(0.6 * hz.value);
    assert!((told.standard_uncertainty.hz() / wanted - 1.0).abs() < 1e-9, "{told:?}");
}

/// After a stop the sides count as equal where a tenth of their difference is left, and as equal quickly within two minutes: an orifice
/// tube lets them meet sooner than a valve that shuts (engineering judgement).
#[test]
fn sides_are_equal_within_a_tenth_and_quickly_within_two_minutes() {
    let quickly = |left: f64, after_s: f64| {
        let running = |t| steady(t).with(Channel::EngineSpeed, 25.0);
        let mut samples = seconds(200, running);
        // Low and high side meet around 800 kPa; they were 1,200 kPa apart.
        samples.extend(seconds(200, |t| {
            let apart = 1.2e6 * if t < after_s { 0.11 } else { left };
            Sample::at(200.0 + t)
                .with(Channel::LowSide, 800e3 - 0.5 * apart)
                .with(Channel::HighSide, 800e3 + 0.5 * apart)
                .with(Channel::EngineSpeed, 0.0)
        }));
        of(&samples).observations().answer(Observation::SidesEqualiseQuickly)
    };
    assert_eq!((quickly(0.105, 60.0), quickly(0.095, 60.0)), (None, Some(true)));
    assert_eq!((quickly(0.05, 110.0), quickly(0.05, 130.0)), (Some(true), Some(false)));
}

/// A high side that climbs drifts: the last part of the state lies above its mean; the others stay. Only what happened is counted.
#[test]
fn what_drifts_and_what_was_noted_is_told() {
    let climbs = |t| steady(t).with(Channel::HighSide, 1e6 + 1e3 * t);
    let mut samples = seconds(200, climbs);
    samples.push(steady(10.0));
    let summary = of(&samples);
    let state = summary.states().last().unwrap();
    assert!(state.drift(Channel::HighSide).unwrap() > 5e3);
    assert!(state.drift(Channel::LowSide).unwrap().abs() < 1e3);
    let noted: Vec<_> = summary.notes.iter().collect();
    assert_eq!(noted, [(LogNote::TooLate, 1), (LogNote::Drift, 1)]);
}
