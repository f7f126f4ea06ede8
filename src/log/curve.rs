//! The course of one temperature over the whole log, in as many points as there is room for.

/// Points of a curve.
const POINTS: usize = 32;
/// Seconds of a point at first; when the room is full, two points become one.
const POINT_S: i64 = 8;

/// A course of means over equal times.
#[derive(Clone, Copy, Debug)]
pub(super) struct Curve {
    points: [f32; POINTS],
    count: usize,
    /// Seconds of a point.
    length: i64,
    began: Option<i64>,
    sum: f32,
    values: u16,
}

impl Curve {
    pub(super) const NEW: Self = Self {
        points: [0.0; POINTS],
        count: 0,
        length: POINT_S,
        began: None,
        sum: 0.0,
        values: 0,
    };

    pub(super) fn push(&mut self, second: i64, value: f32) {
        if value.is_nan() {
            return;
        }
        let began = *self.began.get_or_insert(second);
        let at = usize::try_from((second - began) / self.length).unwrap_or(0);
        if at > self.count {
            self.end_point(at);
        }
        self.sum += value;
        self.values = self.values.saturating_add(1);
    }

    /// Ends a point; what was missed up to `until` repeats it.
    fn end_point(&mut self, until: usize) {
        let mean = self.sum / f32::from(self.values.max(1));
        (self.sum, self.values) = (0.0, 0);
        for _ in self.count..until.min(self.count + POINTS) {
            if self.count == POINTS {
                for at in 0..POINTS / 2 {
                    self.points[at] = 0.5 * (self.points[2 * at] + self.points[2 * at + 1]);
                }
                self.count = POINTS / 2;
                self.length *= 2;
                break;
            }
            self.points[self.count] = mean;
            self.count += 1;
        }
    }

    /// How it came down.
    pub(super) fn fall(&self) -> Option<Fall> {
        let points = &self.points[..self.count];
        let (first, rest) = points.split_first()?;
        if rest.len() < 4 {
            return None;
        }
        let late = &points[points.len() - points.len() / 4..];
        let mean = |points: &[f32]| points.iter().sum::<f32>() / points.len() as f32;
        let (start, end) = (f64::from(*first), f64::from(mean(late)));
        let half = 0.5 * (start + end);
        let above = points.iter().position(|point| f64::from(*point) <= half)?;
        let last = points.last()?;
        Some(Fall {
            from_k: start,
            to_k: end,
            half_s: above as f64 * self.length as f64,
            falls: late.first().is_some_and(|first| first - last > 0.5),
        })
    }
}

/// How a temperature came down after the start.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fall {
    /// Where it started, K.
    pub from_k: f64,
    /// Where the last quarter of the log stands, K.
    pub to_k: f64,
    /// When it had come down half of the way, s.
    pub half_s: f64,
    /// Whether it still falls in that quarter, by more than 0.5 K.
    pub falls: bool,
}
