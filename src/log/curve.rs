//! The course of one temperature over the whole log, in as many points as there is room for.

use crate::units::{Temperature, TimeSpan, kelvins};

/// Points of a curve.
const POINTS: usize = 32;
/// Seconds of a point at first; when the room is full, two points become one.
const POINT_S: i64 = 8;

/// The fewest points that show how a temperature came down: a quarter of them is one.
const FEWEST: usize = 5;

/// A course of means over equal times.
#[derive(Clone, Copy, Debug)]
pub(super) struct Curve {
    points: [f32; POINTS],
    count: usize,
    /// Seconds of a point.
    length: i64,
    /// When the first value came, and what it was.
    first: Option<(i64, f32)>,
    sum: f32,
    values: u16,
}

impl Curve {
    pub(super) const NEW: Self = Self {
        points: [0.0; POINTS],
        count: 0,
        length: POINT_S,
        first: None,
        sum: 0.0,
        values: 0,
    };

    pub(super) fn push(&mut self, second: i64, value: f32) {
        if value.is_nan() {
            return;
        }
        let (began, _) = *self.first.get_or_insert((second, value));
        loop {
            let at = (second - began) / self.length;
            let ahead = at - i64::try_from(self.count).unwrap_or(at);
            if ahead <= 0 {
                break;
            }
            if self.count == POINTS {
                self.halve();
            } else {
                self.end_point(value, ahead);
            }
        }
        self.sum += value;
        self.values = self.values.saturating_add(1);
    }

    /// Two points become one.
    fn halve(&mut self) {
        for at in 0..POINTS / 2 {
            self.points[at] = 0.5 * (self.points[2 * at] + self.points[2 * at + 1]);
        }
        self.count = POINTS / 2;
        self.length *= 2;
    }

    /// Ends a point; one that was missed lies on the straight line to a value so many points ahead.
    fn end_point(&mut self, value: f32, ahead: i64) {
        self.points[self.count] = if self.values > 0 {
            self.sum / f32::from(self.values)
        } else {
            let before = self.points[self.count.saturating_sub(1)];
            before + (value - before) / (ahead + 1) as f32
        };
        self.count += 1;
        (self.sum, self.values) = (0.0, 0);
    }

    /// How it came down.
    pub(super) fn fall(&self) -> Option<Fall> {
        let points = &self.points[..self.count];
        let (_, first) = self.first?;
        if points.len() < FEWEST {
            return None;
        }
        let late = &points[points.len() - points.len() / 4..];
        let mean = |points: &[f32]| points.iter().sum::<f32>() / points.len() as f32;
        let (start, end) = (f64::from(first), f64::from(mean(late)));
        let half = 0.5 * (start + end);
        let above = points.iter().position(|point| f64::from(*point) <= half)?;
        let last = points.last()?;
        Some(Fall {
            from: kelvins(start),
            to: kelvins(end),
            half: TimeSpan::from_seconds(above as f64 * self.length as f64),
            falls: late.first().is_some_and(|first| first - last > 0.5),
        })
    }
}

/// How a temperature came down after the start.
///
/// ```
/// use coldloop::log::{Datum, Recorder, Sample};
/// use coldloop::units::{TimeSpan, celsius};
/// use coldloop::{Channel, units::in_kelvins};
/// let mut recorder = Recorder::new(Datum::Gauge);
/// for second in 0..600 {
///     let vent_k = in_kelvins(celsius(8.0)) + 20.0 * (-f64::from(second) / 100.0).exp();
///     recorder.push(&Sample::at(f64::from(second)).with(Channel::Vent, vent_k));
/// }
/// let fall = recorder.summary().vent.expect("ten minutes of the vent");
/// assert!(fall.from > celsius(25.0) && fall.to < celsius(9.0));
/// assert!(fall.half > TimeSpan::from_seconds(50.0) && fall.half < TimeSpan::from_seconds(90.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Fall {
    /// Where it started.
    pub from: Temperature,
    /// Where the last quarter of the log stands.
    pub to: Temperature,
    /// When it had come down half of the way, since its first sample.
    pub half: TimeSpan,
    /// Whether it still falls in that quarter, by more than 0.5 K.
    pub falls: bool,
}
