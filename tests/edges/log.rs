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
/// the high side stands above twice the low side.
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
            let s = state.seconds();
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
