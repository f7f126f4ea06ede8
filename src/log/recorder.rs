//! The recorder, which takes samples in constant memory.

use super::bins::{BINS, Bins, LATE};
use super::clean::Cleaner;
use super::instruments::Datum;
use super::notes::Counts;
use super::sample::{Sample, check};
use super::summary::Summary;
use super::track::Track;
use crate::names::{Channel, LogNote};

/// A clock that is this far ahead of the newest sample has jumped, s. Source: engineering judgement: logs of buses have a
/// sample every five minutes.
const AHEAD_S: f64 = 1_800.0;
/// After so many consecutive samples that agree with each other, the new time is accepted.
const AGREE: u8 = 5;

/// Takes the samples of one vehicle and finds what they say.
///
/// Samples may come up to 30 s late, twice at one time, with gaps and without some of their values; impossible values are
/// refused or ignored, and counted ([`Summary::notes`]). The last half minute is kept in bins of one second, all before it as
/// running means: less than 8 KiB whatever the length of the log.
///
/// ```
/// use coldloop::log::{Datum, Recorder, Sample};
/// use coldloop::{Channel, LogPhase};
/// let mut recorder = Recorder::new(Datum::Gauge);
/// for second in 0..300 {
///     let vent_k = 280.0 + 8.0 * (-f64::from(second) / 40.0).exp();
///     let sample = Sample::at(f64::from(second)).with(Channel::LowSide, 200e3).with(Channel::Vent, vent_k);
///     recorder.push(&sample);
/// }
/// let summary = recorder.summary();
/// assert_eq!(summary.phase, LogPhase::Settled);
/// let vent = summary.states().last().and_then(|state| state.mean(Channel::Vent)).unwrap();
/// assert!((vent.value - 280.0).abs() < 3.0 * vent.standard_uncertainty + 0.1);
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Recorder {
    /// What is added to the time of a sample to get the time since the first one.
    offset_s: Option<f64>,
    newest_s: f64,
    /// A time that does not continue the log, and how many samples agree with it.
    other: (f64, u8),
    last_s: f64,
    bins: Bins,
    past: Past,
}

/// What is computed from the bins once they are closed.
#[derive(Clone, Copy, Debug)]
struct Past {
    cleaner: Cleaner,
    track: Track,
    notes: Counts,
}

impl Recorder {
    /// A recorder without samples, for a log whose pressures have this datum.
    pub const fn new(datum: Datum) -> Self {
        Self {
            offset_s: None,
            newest_s: 0.0,
            other: (f64::NAN, 0),
            last_s: f64::NAN,
            bins: Bins::EMPTY,
            past: Past {
                cleaner: Cleaner::NEW,
                track: Track::new(datum),
                notes: Counts::NONE,
            },
        }
    }

    /// Takes one sample.
    pub fn push(&mut self, sample: &Sample) {
        if !sample.time_s.is_finite() {
            self.past.notes.add(LogNote::TimeNotFinite, 1);
            return;
        }
        let Some(time_s) = self.follow(sample.time_s) else {
            return;
        };
        if time_s.to_bits() == self.last_s.to_bits() {
            self.past.notes.add(LogNote::RepeatedTime, 1);
        }
        self.last_s = time_s;
        self.newest_s = f64::max(self.newest_s, time_s);
        let second = libm::floor(time_s) as i64;
        self.advance(second);
        for (at, channel) in Channel::ALL.into_iter().enumerate() {
            let value = sample.values[at];
            if value.is_nan() {
                continue;
            }
            match check(channel, value) {
                Ok(value) => self.bins.add(second, at, value),
                Err(_) if value.is_infinite() => self.past.notes.add(LogNote::NotFinite, 1),
                Err(_) => self.past.notes.add(LogNote::OutOfRange, 1),
            }
        }
    }

    /// Takes many samples.
    pub fn extend<'a>(&mut self, samples: impl IntoIterator<Item = &'a Sample>) {
        for sample in samples {
            self.push(sample);
        }
    }

    /// What the log says so far.
    #[inline(never)]
    pub fn summary(&self) -> Summary {
        let (mut past, mut bins) = (self.past, self.bins);
        if self.offset_s.is_some() {
            past.close(&mut bins, libm::floor(self.newest_s) as i64 + 1);
        }
        Summary::of(&past.track, past.notes, self.newest_s)
    }

    /// The time of a sample since the first one; `None` when it is refused.
    fn follow(&mut self, time_s: f64) -> Option<f64> {
        let Some(offset_s) = self.offset_s else {
            self.offset_s = Some(-time_s);
            self.bins.restart(-LATE);
            return Some(0.0);
        };
        let since_s = time_s + offset_s;
        let oldest_s = f64::max(self.newest_s - LATE as f64, self.bins.first() as f64);
        if since_s >= oldest_s && since_s <= self.newest_s + AHEAD_S {
            self.other.1 = 0;
            return Some(since_s);
        }
        let (last_s, agree) = self.other;
        let agrees = libm::fabs(time_s - last_s) <= LATE as f64;
        self.other = (time_s, if agrees { agree + 1 } else { 1 });
        self.past.notes.add(LogNote::TooLate, 1);
        if self.other.1 < AGREE {
            return None;
        }
        // The clock has jumped and stays there: the log continues a second later.
        self.other.1 = 0;
        self.past.notes.add(LogNote::ClockJumped, 1);
        let next = libm::floor(self.newest_s) as i64 + 1;
        self.past.close(&mut self.bins, next);
        self.bins.restart(next);
        self.past.track.begin(next);
        self.offset_s = Some(next as f64 - time_s);
        Some(next as f64)
    }

    /// Closes the bins into which no late sample can fall any more.
    fn advance(&mut self, second: i64) {
        if second - LATE > self.bins.first() {
            self.past.close(&mut self.bins, second - LATE);
        }
    }
}

impl Past {
    /// Closes all bins before a second; of a long gap only those that can hold samples, one by one.
    fn close(&mut self, bins: &mut Bins, before: i64) {
        let emptied = i64::min(before, bins.first() + BINS as i64);
        while bins.first() < emptied {
            self.take(bins);
        }
        if bins.first() < before {
            self.gap(u32::try_from(before - bins.first()).unwrap_or(u32::MAX));
            bins.restart(before);
        }
    }

    fn take(&mut self, bins: &mut Bins) {
        let row = bins.pop();
        if row.is_empty() {
            self.gap(1);
            return;
        }
        let next = |channel: usize| {
            let mut following = (1..=3).map(|ahead| bins.value(row.second + ahead, channel));
            following.find(|value| !value.is_nan()).unwrap_or(f32::NAN)
        };
        let row = self.cleaner.clean(row, next, &mut self.notes);
        self.track.push(&row);
    }

    /// Seconds without any sample, once there was one.
    fn gap(&mut self, seconds: u32) {
        if self.track.rows > 0 && self.track.sees_cycles() {
            self.notes.add(LogNote::Gap, seconds);
        }
    }
}
