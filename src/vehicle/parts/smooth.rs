//! Smooth forms of functions with corners, so that a solver has a slope everywhere.

use crate::numerics::sqrt;

/// Rises from 0 to 1 as `x` goes from 0 to 1, with corners rounded over `width` and nearly flat outside.
///
/// `(sqrt(x^2 + w^2) - sqrt((x - 1)^2 + w^2) + 1) / 2`; the slope is positive for every `x`.
pub(in crate::vehicle) fn ramp(x: f64, width: f64) -> f64 {
    let corner = |x: f64| sqrt(x * x + width * width);
    0.5 * (corner(x) - corner(x - 1.0) + 1.0)
}

/// The larger of `x` and 0, rounded over `width`; always positive.
pub(in crate::vehicle) fn positive(x: f64, width: f64) -> f64 {
    let root = sqrt(x * x + width * width);
    // The second form avoids the cancellation of the first.
    if x > 0.0 {
        0.5 * (x + root)
    } else {
        0.5 * width * width / (root - x)
    }
}

/// What is left of 1 after a loss of `loss`: `1 - loss` up to one half, then an exponential that stays above zero.
pub(in crate::vehicle) fn remainder(loss: f64) -> f64 {
    if loss <= 0.5 {
        1.0 - loss
    } else {
        0.5 * libm::exp(-2.0 * (loss - 0.5))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ramp_rises_from_zero_to_one() {
        for width in [0.02, 0.1] {
            assert!(ramp(-3.0, width) < 0.01 && ramp(4.0, width) > 0.99);
            assert!((ramp(0.5, width) - 0.5).abs() < 1e-12);
        }
    }

    #[test]
    fn the_positive_part_keeps_its_digits() {
        assert!((positive(2.0, 0.01) - 2.0).abs() < 1e-4);
        let low = positive(-1e6, 0.01);
        assert!(low > 0.0 && low < 1e-9);
    }

    #[test]
    fn a_remainder_has_no_step_and_no_end() {
        assert!((remainder(0.5 + 1e-9) - remainder(0.5)).abs() < 1e-8);
        assert!(remainder(30.0) > 0.0);
    }
}
