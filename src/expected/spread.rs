//! A location and a spread per side, and the bands that follow.

use crate::numerics::sqrt;

/// How a figure is distributed over sound vehicles: half of them on each side of the median, each half as one half
/// of a normal distribution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Median, in the unit of the figure.
    pub median: f64,
    /// Standard deviation of the lower half about the median.
    pub down: f64,
    /// Standard deviation of the upper half about the median.
    pub up: f64,
}

/// Normal quantile that bounds the middle 80 %.
pub(super) const QUANTILE_80: f64 = 1.281_551_565_544_600_4;
/// Normal quantile that bounds the middle 95 %.
pub(super) const QUANTILE_95: f64 = 1.959_963_984_540_054;

impl Spread {
    /// The figure `quantile` standard deviations above (or, negative, below) the median.
    pub fn at(self, quantile: f64) -> f64 {
        self.median + quantile * if quantile < 0.0 { self.down } else { self.up }
    }

    /// How many standard deviations of its side `value` lies from the median.
    pub fn deviation(self, value: f64) -> f64 {
        let distance = value - self.median;
        distance / if distance < 0.0 { self.down } else { self.up }
    }

    /// The spread with independent standard deviations added to both sides.
    pub(crate) fn widened(self, down: f64, up: f64) -> Self {
        Self {
            median: self.median,
            down: sqrt(self.down * self.down + down * down),
            up: sqrt(self.up * self.up + up * up),
        }
    }

    /// The bands, each limit converted by `convert`.
    pub(super) fn band<Q, E>(self, convert: impl Fn(f64) -> Result<Q, E>) -> Result<Band<Q>, E> {
        Ok(Band {
            low_95: convert(self.at(-QUANTILE_95))?,
            low_80: convert(self.at(-QUANTILE_80))?,
            median: convert(self.median)?,
            high_80: convert(self.at(QUANTILE_80))?,
            high_95: convert(self.at(QUANTILE_95))?,
        })
    }
}

/// Where a figure of a sound vehicle lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band<Q> {
    /// 2.5 % of sound vehicles lie below.
    pub low_95: Q,
    /// 10 % lie below.
    pub low_80: Q,
    /// Half lie below.
    pub median: Q,
    /// 10 % lie above.
    pub high_80: Q,
    /// 2.5 % lie above.
    pub high_95: Q,
}
