//! Any samples at the recorder, as the text of a CSV file and as numbers: what the log says is finite and can be judged or is refused,
//! and it does not depend on where the samples were divided.

use coldloop::diagnosis::{Case, Settings, judge_states, log_cases};
use coldloop::intake::{self, LogColumns};
use coldloop::log::{Datum, Instruments, Recorder, Sample, Summary};
use coldloop::units::{Pressure, in_kelvins};
use coldloop::{Channel, report};

/// The vehicle of every log.
const VAN: &str = "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n\
                   [conditions]\nambient = '29 °C'\naltitude = '1600 m'\n";

/// Special figures, and some of the low side, a line and a speed.
const FIGURES: [f64; 12] = [
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::MAX,
    f64::MIN_POSITIVE,
    0.0,
    1.0,
    -101_325.0,
    200e3,
    1.4e6,
    280.0,
    13.0,
];

/// Panics where a log breaks a promise. A text is the rows of a CSV file, with a header; in any case the bytes are samples.
pub fn holds(input: &[u8]) {
    if let Some((datum, samples)) = core::str::from_utf8(input).ok().and_then(of_text) {
        recorded(datum, &samples, input);
    }
    let datum = match input.first() {
        Some(byte) if byte % 2 == 0 => Datum::Gauge,
        Some(_) | None => Datum::Absolute,
    };
    recorded(datum, &of_bytes(input), input);
}

/// The samples of a text, by its header; `None` where a line is refused, and says why.
fn of_text(text: &str) -> Option<(Datum, Vec<Sample>)> {
    let mut rows = text.lines().map(|line| line.split(','));
    let refused = |refusal: intake::Refusal| assert!(!refusal.to_string().is_empty());
    let columns = LogColumns::from_header(rows.next()?).map_err(refused).ok()?;
    let samples: Result<Vec<Sample>, _> = rows.map(|row| columns.sample(row)).collect();
    Some((columns.datum(), samples.map_err(refused).ok()?))
}

/// Samples of six bytes each: a channel, a second one, the time since the last sample, a figure (two bytes), and how often it comes.
fn of_bytes(input: &[u8]) -> Vec<Sample> {
    let channel = |code: u8| Channel::ALL[usize::from(code) % Channel::ALL.len()];
    let (mut time_s, mut samples) = (0.0, Vec::new());
    for record in input.chunks_exact(6).take(400) {
        let [one, other, step, low, high, times] = *record else {
            continue;
        };
        let bits = u16::from_le_bytes([low, high]);
        let share = f64::from(bits) / f64::from(u16::MAX);
        let value = match other >> 6 {
            0 => f64::from_bits(u64::from(bits) << 48),
            1 => FIGURES[usize::from(low) % FIGURES.len()],
            2 => 2e6 * share,
            _ => 400.0 * share,
        };
        let step_s = match step {
            0..=249 => f64::from(step) / 4.0 - 20.0,
            _ => FIGURES[usize::from(step) % FIGURES.len()],
        };
        for turn in 0..=times % 64 {
            time_s += step_s;
            // Every second one of a row differs, so that something swings.
            let swung = if turn % 2 == 0 { value } else { value * share };
            let sample = Sample::at(time_s);
            samples.push(sample.with(channel(one), value).with(channel(other), swung));
            if !time_s.is_finite() {
                time_s = 0.0;
            }
        }
    }
    samples
}

fn recorded(datum: Datum, samples: &[Sample], input: &[u8]) {
    let mut whole = Recorder::new(datum);
    whole.extend(samples);
    let summary = whole.summary();
    // Where it is divided follows from the input, and what is asked in between changes nothing.
    let at = input
        .iter()
        .fold(0_usize, |sum, byte| sum * 31 % 65_521 + usize::from(*byte))
        % (samples.len() + 1);
    let (before, after) = samples.split_at(at);
    let mut divided = Recorder::new(datum);
    divided.extend(before);
    told(&divided.summary());
    divided.extend(after);
    // As text, in which NaN is like NaN.
    assert_eq!(
        format!("{:?}", divided.summary()),
        format!("{summary:?}"),
        "divided at {at}"
    );
    told(&summary);
    judged(&summary);
}

fn as_logged(pressure: Pressure) -> f64 {
    match pressure {
        Pressure::Absolute(pressure) => pressure.pa(),
        Pressure::Gauge(pressure) => pressure.pa(),
    }
}

/// All figures that are told are finite, and the shares of them are shares.
fn told(summary: &Summary) {
    assert!(
        summary.elapsed.seconds().is_finite() && summary.elapsed.seconds() >= 0.0,
        "{}",
        summary.elapsed.seconds()
    );
    assert!(
        summary.wait.seconds().is_finite() && summary.wait.seconds() >= 0.0,
        "{}",
        summary.wait.seconds()
    );
    assert!(summary.states().len() <= 4);
    assert!(summary.equal_after.is_none_or(|after| after.seconds() >= 0.0));
    for fall in [summary.vent, summary.cabin].into_iter().flatten() {
        let (from_k, to_k, half_s) = (in_kelvins(fall.from), in_kelvins(fall.to), fall.half.seconds());
        assert!(from_k > 0.0 && to_k > 0.0 && half_s >= 0.0, "{fall:?}");
        assert!(from_k.is_finite() && to_k.is_finite() && half_s.is_finite(), "{fall:?}");
    }
    for state in summary.states() {
        let seconds = state.lasted().seconds();
        assert!(seconds.is_finite() && seconds >= 0.0 && state.began().seconds().is_finite());
        for channel in Channel::ALL {
            let Some(mean) = state.mean(channel) else { continue };
            assert!(mean.value.is_finite(), "{channel:?} {mean:?}");
            assert!(
                mean.standard_uncertainty.is_finite() && mean.standard_uncertainty >= 0.0,
                "{channel:?} {mean:?}"
            );
            assert!(state.drift(channel).is_some_and(f64::is_finite), "{channel:?}");
        }
        if let Some(swing) = state.swing() {
            let cycles = swing.cycles.si();
            assert!(swing.count > 0 && cycles.value > 0.0, "{swing:?}");
            assert!(
                cycles.value.is_finite() && cycles.standard_uncertainty.is_finite(),
                "{swing:?}"
            );
            assert!((0.0..=1.0).contains(&swing.on_share), "{swing:?}");
            assert!(
                as_logged(swing.cut_out).is_finite() && as_logged(swing.cut_in).is_finite(),
                "{swing:?}"
            );
        }
    }
}

/// Its states are judged, or refused with an error.
fn judged(summary: &Summary) {
    let (instruments, settings) = (Instruments::default(), Settings::default());
    let Ok(van) = intake::case_from_toml(VAN) else {
        unreachable!("the vehicle of every log can be read");
    };
    let cases: Vec<Case> = log_cases(&van, summary, &instruments).collect();
    let Ok(judgement) = judge_states(&cases, &settings) else {
        return;
    };
    if let (Some(first), Ok(diagnosis)) = (cases.first(), judgement.diagnosis(&settings)) {
        let answer = report::json(first, &diagnosis, &judgement.reasons(&settings), settings.language);
        assert!(
            serde_json::from_str::<serde_json::Value>(&answer).is_ok(),
            "not JSON: {answer}"
        );
        assert!(!answer.contains("NaN"), "{answer}");
    }
}
