//! One state of a vehicle: a stretch of a log at one speed and load, as running means.

use super::sample::{CHANNELS, place};
use super::swing::Cycle;
use crate::names::Channel;

/// Power with which the weight of a value grows with the time since the state began.
///
/// The start of the state fades, yet the mean rests on more and more values. Source: polynomial-decay averaging, Shamir &
/// Zhang, Proc. ICML 30 (2013), section 4 (from memory).
const MAIN: f64 = 2.0;
/// The same for a mean of the last part of the state only, which shows the remaining drift.
const RECENT: f64 = 8.0;

/// Variance of the difference of the two means of n blocks without a trend, as a multiple of the variance of one block over n.
///
/// With weights that grow as t^2 and t^8 it is 9/5 + 81/17 - 2 * 27/11.
const APART: f64 = 1.66;
/// Above so many standard deviations, that difference is a drift.
///
/// Source: engineering judgement: by chance one state in twenty exceeds it; a linear trend exceeds it from twelve blocks on.
const DRIFTS: f64 = 2.0;

/// The running mean of one channel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Mean {
    pub(super) mean: f64,
    pub(super) recent: f64,
    /// Variance of the means of single blocks.
    pub(super) variance: f32,
    pub(super) blocks: u32,
}

impl Mean {
    const NONE: Self = Self {
        mean: 0.0,
        recent: 0.0,
        variance: 0.0,
        blocks: 0,
    };

    fn push(&mut self, value: f64, main: f64, recent: f64) {
        if self.blocks == 0 {
            (self.mean, self.recent) = (value, value);
        } else {
            let off = value - self.mean;
            self.mean += main * off;
            self.recent += recent * (value - self.recent);
            let variance = f64::from(self.variance);
            self.variance = ((1.0 - main) * (variance + main * off * off)) as f32;
        }
        self.blocks = self.blocks.saturating_add(1);
    }

    /// Whether the last part differs from the mean by more than `still` and by more than the scatter of the blocks explains.
    pub(super) fn drifts(&self, still: f64) -> bool {
        let scatter = libm::sqrt(f64::from(self.variance) * APART / f64::from(self.blocks.max(1)));
        libm::fabs(self.recent - self.mean) > f64::max(still, DRIFTS * scatter)
    }

    /// Standard uncertainty of the mean: that of the sampling, and the remaining drift.
    pub(super) fn uncertainty(&self) -> f64 {
        // Blocks with weights that grow as t^k are worth (2 k + 1) / (k + 1)^2 times as many of equal weight.
        let worth = f64::from(self.blocks) * (2.0 * MAIN + 1.0) / ((MAIN + 1.0) * (MAIN + 1.0));
        let sampling = libm::sqrt(f64::from(self.variance) / f64::max(worth, 1.0));
        libm::hypot(sampling, self.recent - self.mean)
    }
}

/// The cycles of a state, as running means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cycles {
    pub(super) count: u32,
    /// Cycles in which the high side moves against the low side.
    pub(super) opposed: u32,
    pub(super) seconds: f32,
    /// Variance of the length of a cycle, s2.
    pub(super) variance: f32,
    pub(super) on: f32,
    pub(super) low: (f32, f32),
    pub(super) high: (f32, f32),
}

impl Cycles {
    const NONE: Self = Self {
        count: 0,
        opposed: 0,
        seconds: 0.0,
        variance: 0.0,
        on: 0.0,
        low: (0.0, 0.0),
        high: (0.0, 0.0),
    };

    pub(super) fn push(&mut self, cycle: &Cycle) {
        let before = self.count as f32;
        self.count = self.count.saturating_add(1);
        self.opposed += u32::from(cycle.opposed);
        // As for the means, the weight of the first cycles fades.
        let ratio = before / (before + 1.0);
        let part = 1.0 - ratio * ratio;
        let off = cycle.seconds - self.seconds;
        self.variance = (1.0 - part) * (self.variance + part * off * off);
        self.seconds += part * off;
        self.on += part * (cycle.on - self.on);
        let toward = |mean: &mut (f32, f32), value: (f32, f32)| {
            mean.0 += part * (value.0 - mean.0);
            mean.1 += part * (value.1 - mean.1);
        };
        toward(&mut self.low, cycle.low);
        toward(&mut self.high, cycle.high);
    }
}

/// A stretch of a log at one speed and load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct State {
    pub(super) began: i64,
    pub(super) ended: i64,
    /// Seconds over which the means were taken.
    pub(super) seconds: f64,
    pub(super) means: [Mean; CHANNELS],
    pub(super) cycles: Cycles,
    pub(super) cycling: bool,
    /// Whether it was steady at some time, or had a few like cycles.
    pub(super) settled: bool,
}

impl State {
    pub(super) const fn new(began: i64) -> Self {
        Self {
            began,
            ended: began,
            seconds: 0.0,
            means: [Mean::NONE; CHANNELS],
            cycles: Cycles::NONE,
            cycling: false,
            settled: false,
        }
    }

    /// Adds the means of a block of so many seconds; NaN where a channel had no value.
    pub(super) fn push(&mut self, values: &[f64; CHANNELS], seconds: f64) {
        let ratio = self.seconds / (self.seconds + seconds);
        let main = 1.0 - libm::pow(ratio, MAIN + 1.0);
        let recent = 1.0 - libm::pow(ratio, RECENT + 1.0);
        for (mean, value) in self.means.iter_mut().zip(values) {
            if !value.is_nan() {
                mean.push(*value, main, recent);
            }
        }
        self.seconds += seconds;
    }

    /// Reduces the weight of the past to at most so many seconds.
    pub(super) const fn fade(&mut self, seconds: f64) {
        self.seconds = self.seconds.min(seconds);
    }

    pub(super) fn mean(&self, channel: Channel) -> Option<&Mean> {
        Some(&self.means[place(channel)]).filter(|mean| mean.blocks > 0)
    }
}
