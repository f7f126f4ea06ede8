//! How severe a fault is: the severities of the atlas, weighed by how well each explains the readings.

use crate::names::Fault;

/// Number of equal steps into which severities from 0 to 1 are divided.
const STEPS: usize = 20;

/// Weight of each step of severity of each fault.
pub(super) struct Tally([[f64; STEPS]; Fault::ALL.len()]);

impl Tally {
    pub(super) const NONE: Self = Self([[0.0; STEPS]; Fault::ALL.len()]);

    /// Adds the density of a term of the likelihood, spread evenly over the severities that the term covers.
    #[inline]
    pub(super) fn add(&mut self, fault: usize, &[low, _, high]: &[f32; 3], density: f64) {
        let Some(steps) = self.0.get_mut(fault) else { return };
        const MANY: f64 = STEPS as f64;
        // In steps, counted from 0.
        let (low, high) = (MANY * f64::from(low), MANY * f64::from(high));
        let span = f64::max(high - low, 1.0);
        let (each, high) = (density / span, low + span);
        let (first, last) = (low as usize, high as usize);
        for step in steps.iter_mut().take(last).skip(first + 1) {
            *step += each;
        }
        if let Some(step) = steps.get_mut(first) {
            *step += each * ((first + 1) as f64 - low);
        }
        if let Some(step) = steps.get_mut(last) {
            *step += each * (high - last as f64);
        }
    }

    /// Between which severities the middle 80 % lie; all of them where nothing was weighed.
    pub(super) fn middle_80(&self) -> [(f64, f64); Fault::ALL.len()] {
        core::array::from_fn(|fault| {
            let steps = &self.0[fault];
            let all: f64 = steps.iter().sum();
            if all > 0.0 {
                (below(steps, 0.1 * all), below(steps, 0.9 * all))
            } else {
                (0.0, 1.0)
            }
        })
    }
}

/// The severity below which this much weight lies.
fn below(steps: &[f64; STEPS], weight: f64) -> f64 {
    let width = 1.0 / STEPS as f64;
    let mut sum = 0.0;
    for (at, step) in steps.iter().enumerate() {
        if sum + step >= weight && *step > 0.0 {
            return width * (at as f64 + (weight - sum) / step);
        }
        sum += step;
    }
    1.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_middle_80_percent_follows_the_weights() {
        let mut even = Tally::NONE;
        even.0[3] = [0.2; STEPS];
        let (low, high) = even.middle_80()[3];
        assert!((low - 0.1).abs() < 1e-12 && (high - 0.9).abs() < 1e-12);
        let mut one = Tally::NONE;
        one.0[4][7] = 5.0;
        let (low, high) = one.middle_80()[4];
        assert!(
            (low - 0.355).abs() < 1e-12 && (high - 0.395).abs() < 1e-12,
            "{low} {high}"
        );
        assert_eq!(one.middle_80()[5], (0.0, 1.0));
    }
}
