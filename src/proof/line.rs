//! Straight lines through readings over time.

use crate::circuit::Estimate;
use crate::numerics::sqrt;

/// One reading over time.
#[derive(Clone, Copy)]
pub(super) struct Point {
    pub(super) after_s: f64,
    pub(super) value: f64,
    pub(super) standard_uncertainty: f64,
}

/// Slopes of the readings in the first and in the second half of their time, per second.
pub(super) struct Halves {
    pub(super) early: Estimate,
    pub(super) late: Estimate,
    /// From the middle of the first half to that of the second, s.
    pub(super) apart_s: f64,
}

/// The two halves of four readings or more that follow each other in time; the middle one belongs to both.
pub(super) fn halves<T>(samples: &[T], point: impl Fn(&T) -> Point) -> Option<Halves> {
    let [first, inner @ .., last] = samples else {
        return None;
    };
    if inner.len() < 2 {
        return None;
    }
    let time_s = |sample: &T| point(sample).after_s;
    let half_s = 0.5 * (time_s(first) + time_s(last));
    let middle = 1 + inner.iter().take_while(|sample| time_s(sample) < half_s).count();
    let middle = middle.min(samples.len() - 2);
    let (early, late) = (&samples[..=middle], &samples[middle..]);
    Some(Halves {
        early: slope(early, &point),
        late: slope(late, &point),
        apart_s: mean_s(late, &point) - mean_s(early, &point),
    })
}

fn mean_s<T>(samples: &[T], point: &impl Fn(&T) -> Point) -> f64 {
    let (count, sum) = samples
        .iter()
        .fold((0.0, 0.0), |(n, sum), sample| (n + 1.0, sum + point(sample).after_s));
    sum / count
}

/// The line of least squares through readings of two different times or more.
fn slope<T>(samples: &[T], point: &impl Fn(&T) -> Point) -> Estimate {
    let mean_s = mean_s(samples, point);
    let (mut squares, mut slope, mut variance) = (0.0, 0.0, 0.0);
    for sample in samples {
        let Point {
            after_s,
            value,
            standard_uncertainty,
        } = point(sample);
        let distance = after_s - mean_s;
        squares += distance * distance;
        slope += distance * value;
        variance += distance * distance * standard_uncertainty * standard_uncertainty;
    }
    Estimate {
        value: slope / squares,
        standard_uncertainty: sqrt(variance) / squares,
    }
}
