//! Axes: the position of a value in the drawing, and the labelled values.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// A linear scale from a range of values to a range of positions, px.
#[derive(Clone, Copy)]
pub(super) struct Axis {
    low: f64,
    high: f64,
    from: f64,
    to: f64,
}

impl Axis {
    /// Low values at `from`, high ones at `to`; a range without width is widened.
    pub(super) fn new([low, high]: [f64; 2], [from, to]: [f64; 2]) -> Self {
        let high = if high > low { high } else { low + 1.0 };
        Self { low, high, from, to }
    }

    /// The position of a value.
    pub(super) fn at(&self, value: f64) -> f64 {
        self.from + (self.to - self.from) * (value - self.low) / (self.high - self.low)
    }

    /// Round values within the range, about `count` of them, as numbers and as text.
    pub(super) fn ticks(&self, count: f64) -> Vec<(f64, String)> {
        let step = round_step((self.high - self.low) / count);
        let digits = f64::max(0.0, -libm::floor(libm::log10(step) + 1e-9)) as usize;
        let first = libm::ceil(self.low / step - 1e-9);
        let last = libm::floor(self.high / step + 1e-9);
        let mut ticks = Vec::new();
        let mut at = first;
        while at <= last {
            let value = at * step;
            ticks.push((value, format!("{:.digits$}", value + 0.0)));
            at += 1.0;
        }
        ticks
    }
}

/// The smallest of 1, 2, 5 times a power of ten that is at least `least`.
pub(super) fn round_step(least: f64) -> f64 {
    let decade = libm::pow(10.0, libm::floor(libm::log10(least)));
    let step = [1.0, 2.0, 5.0]
        .into_iter()
        .find(|step| step * decade >= least * (1.0 - 1e-9));
    step.unwrap_or(10.0) * decade
}

/// The range of these values, widened at both ends by this share of it; `None` without values.
pub(super) fn range(values: impl Iterator<Item = f64>, margin: f64) -> Option<[f64; 2]> {
    let ends = values.fold(None, |ends: Option<[f64; 2]>, value| {
        let [low, high] = ends.unwrap_or([value; 2]);
        Some([f64::min(low, value), f64::max(high, value)])
    });
    let [low, high] = ends?;
    let wide = margin * (high - low);
    Some([low - wide, high + wide])
}
