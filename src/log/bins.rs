//! The last half minute in bins of one second, so that late samples still find their place.

use super::sample::CHANNELS;

/// How late a sample may come, in bins of one second.
pub(super) const LATE: i64 = 30;
/// Number of bins: those into which a late sample may still fall, and the newest.
pub(super) const BINS: usize = 32;

/// The means of one second; NaN for a channel without a value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Row {
    /// Seconds since the start of the log.
    pub(super) second: i64,
    pub(super) values: [f32; CHANNELS],
}

impl Row {
    pub(super) fn is_empty(&self) -> bool {
        self.values.iter().all(|value| value.is_nan())
    }
}

#[derive(Clone, Copy, Debug)]
struct Bin {
    sums: [f32; CHANNELS],
    counts: [u16; CHANNELS],
}

impl Bin {
    const EMPTY: Self = Self {
        sums: [0.0; CHANNELS],
        counts: [0; CHANNELS],
    };

    /// The mean of a channel; NaN without a value.
    fn mean(&self, channel: usize) -> f32 {
        match self.counts[channel] {
            0 => f32::NAN,
            count => self.sums[channel] / f32::from(count),
        }
    }

    fn row(&self, second: i64) -> Row {
        Row {
            second,
            values: core::array::from_fn(|channel| self.mean(channel)),
        }
    }
}

/// A ring of bins: seconds from `first` to `first + BINS`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bins {
    first: i64,
    bins: [Bin; BINS],
}

impl Bins {
    pub(super) const EMPTY: Self = Self {
        first: 0,
        bins: [Bin::EMPTY; BINS],
    };

    fn place(second: i64) -> usize {
        usize::try_from(second.rem_euclid(BINS as i64)).unwrap_or(0)
    }

    /// The oldest second that is still kept.
    pub(super) const fn first(&self) -> i64 {
        self.first
    }

    /// Starts again at a second, with all bins empty.
    pub(super) const fn restart(&mut self, second: i64) {
        *self = Self {
            first: second,
            bins: [Bin::EMPTY; BINS],
        };
    }

    /// Adds a value to a second that is kept.
    pub(super) fn add(&mut self, second: i64, channel: usize, value: f64) {
        let bin = &mut self.bins[Self::place(second)];
        if bin.counts[channel] < u16::MAX {
            bin.sums[channel] += value as f32;
            bin.counts[channel] += 1;
        }
    }

    /// The mean of a channel over a second that is kept; NaN without a value.
    pub(super) fn value(&self, second: i64, channel: usize) -> f32 {
        self.bins[Self::place(second)].mean(channel)
    }

    /// Removes and returns the oldest second.
    pub(super) fn pop(&mut self) -> Row {
        let bin = &mut self.bins[Self::place(self.first)];
        let row = bin.row(self.first);
        *bin = Bin::EMPTY;
        self.first += 1;
        row
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A fast logger may give more values in one second than are counted; the mean stays that of those that were.
    #[test]
    fn more_values_than_are_counted_leave_the_mean() {
        let mut bins = Bins::EMPTY;
        for _ in 0..=u16::MAX {
            bins.add(0, 0, 2.0);
        }
        bins.add(0, 0, 1e9);
        assert_eq!(bins.value(0, 0), 2.0);
    }
}
