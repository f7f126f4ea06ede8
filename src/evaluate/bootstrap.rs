//! Bootstrap intervals: the groups are resampled.

use super::sums::{FIGURES, Sums};
use alloc::vec::Vec;

/// Number of bootstrap resamples. Source: Efron & Tibshirani 1993, section 19.3 (from memory).
const RESAMPLES: usize = 1_000;

/// Fixed seed, so that the same cases give the same intervals.
const SEED: u64 = 17;

/// Random numbers. Source: Steele, Lea & Flood 2014 (SplitMix64).
struct Random(u64);

impl Random {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// An index below `count`: the high half of the product, Lemire 2019 (doi 10.1145/3230636).
    fn below(&mut self, count: usize) -> usize {
        ((u128::from(self.next()) * count as u128) >> 64) as usize
    }
}

/// The 2.5 % and 97.5 % quantiles of each figure over the resamples in which it has a value; `None` for fewer than two
/// groups, and where fewer than half of the resamples have a value.
pub(super) fn intervals(groups: &[&Sums]) -> [Option<(f64, f64)>; FIGURES] {
    if groups.len() < 2 {
        return [None; FIGURES];
    }
    let mut random = Random(SEED);
    let mut values: [Vec<f64>; FIGURES] = core::array::from_fn(|_| Vec::with_capacity(RESAMPLES));
    for _ in 0..RESAMPLES {
        let mut drawn = Sums::default();
        for _ in groups {
            drawn.add(groups[random.below(groups.len())]);
        }
        for (values, figure) in values.iter_mut().zip(drawn.figures()) {
            values.extend(figure.value());
        }
    }
    values.map(|mut values| {
        values.sort_by(f64::total_cmp);
        (2 * values.len() >= RESAMPLES).then(|| (quantile(&values, 0.025), quantile(&values, 0.975)))
    })
}

/// The quantile of sorted values, by linear interpolation.
fn quantile(values: &[f64], share: f64) -> f64 {
    let at = share * (values.len() - 1) as f64;
    let below = at as usize;
    let above = usize::min(below + 1, values.len() - 1);
    values[below] + (at - below as f64) * (values[above] - values[below])
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two groups of one case each, one right and one wrong: each is drawn twice with a probability of a quarter, so that the
    /// quantiles are 0 and 1.
    #[test]
    fn the_ends_are_those_of_the_groups() {
        let (mut right, mut wrong) = (Sums::default(), Sums::default());
        right.first_right.count(true);
        wrong.first_right.count(false);
        assert_eq!(intervals(&[&right, &wrong])[0], Some((0.0, 1.0)));
        assert_eq!(intervals(&[&right])[0], None);
        assert_eq!(intervals(&[&right, &wrong])[2], None);
    }

    /// Of 100 cases 80 are right; the standard error of the share is sqrt(0.8 * 0.2 / 100) = 0.04, so that the normal interval is
    /// 0.8 +- 0.078. A thousand resamples give its ends to about 0.01.
    #[test]
    fn single_cases_give_the_interval_of_a_share() {
        let mut all = Vec::new();
        for at in 0..100 {
            let mut sums = Sums::default();
            sums.first_right.count(at < 80);
            all.push(sums);
        }
        let groups: Vec<&Sums> = all.iter().collect();
        let (low, high) = intervals(&groups)[0].unwrap_or_default();
        assert!(
            (low - 0.722).abs() < 0.02 && (high - 0.878).abs() < 0.02,
            "{low} {high}"
        );
    }

    #[test]
    fn quantiles_lie_between_the_values() {
        assert_eq!(quantile(&[1.0, 2.0, 4.0], 0.5), 2.0);
        assert_eq!(quantile(&[1.0, 2.0, 4.0], 0.75), 3.0);
        assert_eq!(quantile(&[1.0], 0.975), 1.0);
    }
}
