//! What a recorder takes for a mistake, for another state and for a cycle of the clutch.

use coldloop::log::{Datum, Recorder, Sample, Summary};
use coldloop::{Channel, LogNote, LogPhase};

fn of(samples: impl IntoIterator<Item = Sample>) -> Summary {
    let mut recorder = Recorder::new(Datum::Gauge);
    for sample in samples {
        recorder.push(&sample);
    }
    recorder.summary()
}

fn seconds(count: u32, sample: impl Fn(f64) -> Sample) -> Vec<Sample> {
    (0..count).map(|t| sample(f64::from(t))).collect()
}

fn sides(t: f64, low_pa: f64, high_pa: f64) -> Sample {
    Sample::at(t)
        .with(Channel::LowSide, low_pa)
        .with(Channel::HighSide, high_pa)
}

/// How far a saw-tooth is down: at its top at the start and the end of a period, at the bottom in the middle.
fn down(t: f64, period_s: f64) -> f64 {
    1.0 - (2.0 * t.rem_euclid(period_s) / period_s - 1.0).abs()
}

/// The saw-tooth of a clutch: the low side falls and the high side rises while the compressor is driven.
fn cycling(t: f64, period_s: f64, low_pa: f64, swing_pa: f64) -> Sample {
    let down = down(t, period_s);
    sides(t, low_pa + swing_pa * (1.0 - down), 1e6 + 2e5 * down)
}

/// A value that lies more than four times as far from its neighbours as they lie from each other is a spike: a clutch that opens is a
/// step, and leaves the neighbours apart as well (engineering judgement).
#[test]
fn a_spike_stands_out_by_four_times_what_its_neighbours_differ() {
    let spikes = |spike_pa: f64| {
        let low = |t: f64| match t {
            t if t < 50.0 => 200e3,
            t if t < 51.0 => spike_pa,
            _ => 300e3,
        };
        of(seconds(100, |t| sides(t, low(t), 1.4e6))).notes.of(LogNote::Spike)
    };
    assert_eq!((spikes(690e3), spikes(710e3)), (0, 1));
}

/// A low side counts as written in psi where it comes within 4 % of 6.894757 times the former value, and 100 kPa from it: a real
/// pressure moves by some per cent between two samples, and near the air's pressure a ratio says nothing.
#[test]
fn a_step_of_unit_comes_near_the_ratio_and_is_large() {
    let foreign = |from_pa: f64, to_pa: f64| {
        let low = |t: f64| if t < 50.0 { from_pa } else { to_pa };
        of(seconds(60, |t| sides(t, low(t), 1.4e6))).notes.of(LogNote::UnitStep)
    };
    let off = |share: f64| foreign(900e3, 900e3 / 6.894_757 / (1.0 + share));
    assert_eq!((off(-0.045), off(-0.035), off(0.035), off(0.045)), (0, 10, 10, 0));
    let apart = |pa: f64| foreign(pa * 6.894_757 / 5.894_757, pa / 5.894_757);
    assert_eq!((apart(95e3), apart(105e3)), (0, 10));
}

/// The scales of Celsius and Fahrenheit cross at -40 degrees: near there a step from one to the other is no larger than what a line can
/// do, and below 10 K it is believed.
#[test]
fn a_step_to_fahrenheit_is_larger_than_ten_kelvins() {
    let foreign = |celsius: f64| {
        let line = |t: f64| 273.15 + if t < 50.0 { celsius } else { 1.8 * celsius + 32.0 };
        let sample = |t| Sample::at(t).with(Channel::SuctionLine, line(t));
        of(seconds(60, sample)).notes.of(LogNote::UnitStep)
    };
    // The step is 32 K and 0.8 of the temperature.
    assert_eq!((foreign(-28.1), foreign(-26.9)), (0, 10));
}

/// Five points of eight seconds tell how the vent came down, so from the fortieth second on: the last quarter of fewer is none. When
/// half of the way was reached is told to a point.
#[test]
fn five_points_of_eight_seconds_tell_a_fall() {
    let vent = |count: u32, falls_s: f64| {
        let sample = |t| Sample::at(t).with(Channel::Vent, if t < falls_s { 300.0 } else { 280.0 });
        of(seconds(count, sample)).vent
    };
    assert!(vent(40, 16.0).is_none() && vent(41, 16.0).is_some());
    for falls_s in [8.0, 16.0, 24.0] {
        assert_eq!(vent(60, falls_s).unwrap().half.seconds(), falls_s);
    }
}

/// A vent that was not logged for a while lies on the straight line between what is known: half of the way is reached in the middle of it.
#[test]
fn a_missed_part_of_a_fall_is_a_straight_line() {
    let mut samples = seconds(40, |t| Sample::at(t).with(Channel::Vent, 300.0));
    samples.extend(seconds(80, |t| Sample::at(200.0 + t).with(Channel::Vent, 280.0)));
    let fall = of(samples).vent.unwrap();
    assert!((fall.half.seconds() - 120.0).abs() <= 8.0, "{fall:?}");
}

/// Below one sample in two seconds a turn of the low side may fall between two of them; a tenth beside it is the jitter of a logger.
#[test]
fn cycles_are_seen_from_half_a_sample_a_second() {
    let sees = |interval_s: f64| {
        let samples = (0..200).map(|at| sides(f64::from(at) * interval_s, 200e3, 1.4e6));
        let summary = of(samples);
        let state = summary.states().last().unwrap();
        state.readings(&Default::default()).clutch_cycles.is_some()
    };
    assert_eq!((sees(2.1), sees(2.3)), (true, false));
}

/// Another speed is another state where it lasts for three samples: one or two are a gear change or a slip of the reading.
#[test]
fn another_speed_lasts_for_three_samples() {
    let states = |other_s: f64| {
        let speed = |t: f64| {
            if (100.0..100.0 + other_s).contains(&t) {
                40.0
            } else {
                25.0
            }
        };
        let sample = |t| sides(t, 200e3, 1.4e6).with(Channel::EngineSpeed, speed(t));
        of(seconds(200, sample)).states().len()
    };
    assert_eq!((states(2.0), states(3.0)), (1, 2));
}

/// What began within 15 s of another speed belongs to no state, the time that pressures take to turn. At a sample every 7 s that is
/// two blocks of 14 s; at one every 8 s it is one of 16 s.
#[test]
fn what_follows_a_change_within_fifteen_seconds_is_left_out() {
    let left_out_s = |interval_s: f64| {
        let speed = |at: u32| if at < 40 { 25.0 } else { 40.0 };
        let samples = (0..=82_u32).map(|at| {
            let sample = sides(f64::from(at) * interval_s, 200e3, 1.4e6);
            sample.with(Channel::EngineSpeed, speed(at))
        });
        let summary = of(samples);
        let state = summary.states().last().unwrap();
        // The third sample of another speed begins the state.
        assert_eq!(state.began().seconds(), 42.0 * interval_s);
        82.0 * interval_s - state.began().seconds() - state.lasted().seconds()
    };
    assert_eq!((left_out_s(7.0), left_out_s(8.0)), (28.0, 16.0));
}

/// The first block of 10 s is the first that is known of a state: shorter ones would only show the noise of a gauge.
#[test]
fn a_state_is_known_from_ten_seconds_on() {
    let after = |count: u32| {
        let summary = of(seconds(count, |t| sides(t, 200e3, 1.4e6)));
        (
            summary.phase == LogPhase::Empty,
            summary.states().last().unwrap().lasted().seconds(),
        )
    };
    assert_eq!((after(10), after(11)), ((true, 0.0), (false, 10.0)));
}

/// Another load shows at one speed by a step of 10 kPa on the low side or 40 kPa on the high side, where both stood still: about three
/// times what a gauge does by itself (engineering judgement).
#[test]
fn a_step_of_either_side_is_another_state() {
    let states = |low_pa: f64, high_pa: f64| {
        let on = |t: f64| f64::from(u8::from(t >= 100.0));
        of(seconds(200, |t| {
            sides(t, 200e3 + low_pa * on(t), 1.4e6 + high_pa * on(t))
        }))
        .states()
        .len()
    };
    assert_eq!((states(9.5e3, 38e3), states(10.5e3, 0.0), states(0.0, 42e3)), (1, 2, 2));
}

/// Where the pressures move from block to block, a step is another load only beyond eight times that, so that a system that is never
/// quite still has one state.
#[test]
fn a_step_stands_out_by_eight_times_the_usual_ones() {
    let states = |step_pa: f64| {
        let usual = |t: f64| f64::from(u8::from(t >= 100.0 || t.rem_euclid(20.0) >= 10.0));
        let step = |t: f64| if t >= 100.0 { step_pa } else { 0.0 };
        of(seconds(200, |t| sides(t, 200e3 + 3e3 * usual(t) + step(t), 1.4e6)))
            .states()
            .len()
    };
    assert_eq!((states(7.5 * 3e3), states(8.5 * 3e3)), (1, 2));
}

/// Six blocks tell what steps are usual; a step before that is the end of the start.
#[test]
fn steps_are_judged_after_six_blocks() {
    let states = |at_s: f64| {
        let low = |t: f64| if t < at_s { 200e3 } else { 230e3 };
        of(seconds(200, |t| sides(t, low(t), 1.4e6))).states().len()
    };
    assert_eq!((states(50.0), states(60.0)), (1, 2));
}

/// Fan steps and doors come once or twice: from the third step at one speed on, the steps are the system's own and all that follows is
/// one state.
#[test]
fn three_steps_at_one_speed_make_a_restless_system() {
    let last_began_s = |steps: u32| {
        let low = |t: f64| 200e3 + 30e3 * (t / 100.0).floor().min(f64::from(steps));
        let summary = of(seconds(600, |t| sides(t, low(t), 1.4e6)));
        summary.states().last().unwrap().began().seconds()
    };
    assert_eq!([2, 3, 4].map(last_began_s), [200.0, 300.0, 300.0]);
}

/// A moment weighs with the square of the time since the state began, so that the mean of a straight climb lies three quarters up;
/// in the mean of the last part it weighs with the eighth power, nine tenths up (the means of t^3 and t^9 over those of t^2 and t^8).
#[test]
fn a_climb_has_its_mean_at_three_quarters_and_drifts_by_the_rest() {
    let sample = |t| sides(t, 200e3, 1.4e6).with(Channel::Cabin, 290.0 + 0.01 * t);
    let summary = of(seconds(2_001, sample));
    let state = summary.states().last().unwrap();
    let mean = (state.mean(Channel::Cabin).unwrap().value - 290.0) / 20.0;
    let drift = state.drift(Channel::Cabin).unwrap() / 20.0;
    assert!((mean - 0.75).abs() < 0.005, "{mean}");
    assert!((drift - 0.15).abs() < 0.005, "{drift}");
}

/// The low side turns where it has come back by 12 kPa: half of the 25 kPa that frozen moisture swings by, ten times a transducer's noise.
#[test]
fn a_low_side_turns_after_twelve_kilopascals() {
    let swings = |swing_pa: f64| {
        let summary = of(seconds(300, |t| cycling(t, 20.0, 200e3, swing_pa)));
        summary.states().last().unwrap().swing().is_some()
    };
    assert_eq!((swings(11e3), swings(13e3)), (false, true));
}

/// Means are taken over whole cycles of 20 s together: the mean of a shorter one would move with the sample at which it turns.
#[test]
fn a_block_holds_whole_cycles_of_twenty_seconds() {
    let grows_by = |period_s: f64| {
        let mut recorder = Recorder::new(Datum::Gauge);
        let mut known_s = Vec::new();
        for sample in seconds(500, |t| cycling(t, period_s, 160e3, 80e3)) {
            recorder.push(&sample);
            known_s.push(recorder.summary().states().last().unwrap().lasted().seconds());
        }
        let mut steps = known_s
            .windows(2)
            .map(|two| two[1] - two[0])
            .filter(|step| *step != 0.0);
        steps.next_back().unwrap()
    };
    assert_eq!((grows_by(19.0), grows_by(21.0)), (38.0, 21.0));
}

/// What was seen before a system began to cycle weighs as much as 20 s, two blocks: it was the pull-down, and cycles are the rest.
#[test]
fn what_came_before_the_cycles_weighs_twenty_seconds() {
    let mut recorder = Recorder::new(Datum::Gauge);
    let mut least_s = f64::INFINITY;
    // Cycles of 10 s have their mean in each block: no step leads to them.
    let low = |t: f64| {
        if t < 200.0 {
            200e3
        } else {
            160e3 + 80e3 * (1.0 - down(t, 10.0))
        }
    };
    for sample in seconds(300, |t| sides(t, low(t), 1.4e6)) {
        recorder.push(&sample);
        let summary = recorder.summary();
        assert_eq!(summary.states().len(), 1);
        if sample.time_s > 205.0 {
            least_s = least_s.min(summary.states()[0].lasted().seconds());
        }
    }
    assert_eq!(least_s, 20.0);
}

/// A state that cycles has settled with its third cycle, from when on a scatter of their length is known, and is judged from then on
/// where it lasted for a minute.
#[test]
fn three_cycles_settle_a_state() {
    let mut recorder = Recorder::new(Datum::Gauge);
    let mut first = None;
    for sample in seconds(300, |t| cycling(t, 24.0, 165e3, 130e3)) {
        recorder.push(&sample);
        let summary = recorder.summary();
        if let (None, Some(state)) = (first, summary.judged().next()) {
            first = Some((state.swing().unwrap().count, state.lasted().seconds()));
        }
    }
    let (count, seconds) = first.unwrap();
    assert!(count == 3 && (60.0..180.0).contains(&seconds), "{count} {seconds}");
}

/// Cycles that scatter by more than 0.35 of their length do not repeat: a switch cycles by the load, and the load of one state is one.
#[test]
fn cycles_that_scatter_by_a_third_do_not_repeat() {
    let repeats = |short_s: f64| {
        let two = |t: f64| {
            let at = t.rem_euclid(80.0);
            // From trough to trough, the low side up in the middle.
            let up = if at < short_s {
                down(at, short_s)
            } else {
                down(at - short_s, 80.0 - short_s)
            };
            sides(t, 165e3 + 130e3 * up, 1e6 + 2e5 * (1.0 - up))
        };
        let summary = of(seconds(1_200, two));
        summary.states().last().unwrap().swing().unwrap().repeats
    };
    // 28 s and 52 s scatter by 0.3 of 40 s, 24 s and 56 s by 0.4.
    assert_eq!((repeats(28.0), repeats(24.0)), (true, false));
}

/// A compressor that switches moves the sides against each other, even where the high side hardly moves and the low side rises from cycle
/// to cycle; sides that move together are swung by something else.
#[test]
fn a_switching_compressor_moves_the_sides_against_each_other() {
    let repeats = |high_pa: f64| {
        let sample = |t| {
            let down = down(t, 40.0);
            sides(t, 150e3 + 100e3 * (1.0 - down) + 100.0 * t, 1e6 + high_pa * down)
        };
        let summary = of(seconds(400, sample));
        summary.states().last().unwrap().swing().unwrap().repeats
    };
    assert_eq!((repeats(10e3), repeats(-10e3)), (true, false));
}
