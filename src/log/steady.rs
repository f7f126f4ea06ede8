//! When readings have settled: the ratio of two estimates of the variance.
//!
//! In a steady state the variance about a filtered mean and that from successive differences are the same except for noise;
//! under a trend the first is larger. Source: Cao & Rhinehart, J. Process Control 5 (1995) 363-374,
//! doi:10.1016/0959-1524(95)00009-U (statistic, filters and sampling at intervals that outlast the autocorrelation from memory; the
//! critical value for the factors used here is computed in the test).

/// Factors of the three filters. The paper's usual ones (0.2, 0.1, 0.1) remember the start for twenty intervals, these for
/// eight.
const MEAN: f32 = 0.4;
const VARIANCE: f32 = 0.25;
const DIFFERENCES: f32 = 0.25;
/// Critical ratio: 99 % of steady normal noise stays below it; see the test. Three channels have to be settled at once.
const CRITICAL: f32 = 2.1;

/// The filters of one channel.
#[derive(Clone, Copy, Debug)]
pub(super) struct Steady {
    mean: f32,
    variance: f32,
    differences: f32,
    last: f32,
    count: u16,
}

impl Steady {
    pub(super) const NEW: Self = Self {
        mean: 0.0,
        variance: 0.0,
        differences: 0.0,
        last: 0.0,
        count: 0,
    };

    /// Takes the mean of one interval.
    pub(super) fn push(&mut self, value: f32) {
        if self.count == 0 {
            (self.mean, self.last) = (value, value);
        } else {
            let (off, step) = (value - self.mean, value - self.last);
            if self.count == 1 {
                (self.variance, self.differences) = (off * off, step * step);
            } else {
                self.variance += VARIANCE * (off * off - self.variance);
                self.differences += DIFFERENCES * (step * step - self.differences);
            }
            self.mean += MEAN * off;
            self.last = value;
        }
        self.count = self.count.saturating_add(1);
    }

    fn ratio(&self) -> f32 {
        (2.0 - MEAN) * self.variance / self.differences
    }

    /// Whether the channel is steady: by the ratio, or because its standard deviation is at most `least`.
    pub(super) fn is_settled(&self, least: f32) -> bool {
        if self.count < FEWEST {
            return false;
        }
        let spread = (2.0 - MEAN) * self.variance;
        spread <= least * least || (self.differences > 0.0 && self.ratio() < CRITICAL)
    }
}

/// Intervals before a state can count as settled. Source: engineering judgement: half of the memory of the filters.
const FEWEST: u16 = 4;

#[cfg(test)]
mod tests {
    use super::*;
    use rand::{RngExt, SeedableRng};

    /// Normal noise, approximated by sums of twelve uniform numbers.
    fn noise(random: &mut rand_chacha::ChaCha8Rng) -> f32 {
        (0..12).map(|_| random.random::<f32>()).sum::<f32>() - 6.0
    }

    #[test]
    fn the_critical_ratio_is_that_of_one_in_a_hundred() {
        let mut random = rand_chacha::ChaCha8Rng::seed_from_u64(1);
        let mut steady = Steady::NEW;
        let (mut above, mut all) = (0, 0);
        for at in 0..200_000 {
            steady.push(noise(&mut random));
            if at > 50 {
                all += 1;
                above += usize::from(steady.ratio() >= CRITICAL);
            }
        }
        let share = above as f64 / f64::from(all);
        assert!((0.008..0.012).contains(&share), "{share}");
    }

    #[test]
    fn a_trend_is_not_steady_and_its_end_is() {
        let mut random = rand_chacha::ChaCha8Rng::seed_from_u64(2);
        let mut steady = Steady::NEW;
        for at in 0..20 {
            steady.push(-0.8 * at as f32 + 0.1 * noise(&mut random));
        }
        assert!(!steady.is_settled(0.05));
        for _ in 0..60 {
            steady.push(-16.0 + 0.1 * noise(&mut random));
        }
        let mut settled = 0;
        for _ in 0..100 {
            steady.push(-16.0 + 0.1 * noise(&mut random));
            settled += usize::from(steady.is_settled(0.05));
        }
        assert!(settled > 80, "{settled}");
    }
}
