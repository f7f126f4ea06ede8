//! The distribution of one figure about its median: heavy-tailed, with a spread per side.

use crate::expected::Spread;
use crate::numerics::sqrt;

/// Scale of the t distribution with five degrees of freedom whose middle 95 % is that of a normal distribution with
/// unit standard deviation: 1.95996 / 2.57058.
const SCALE: f64 = 0.762_459_4;

/// Peak of that distribution at unit scale: 8 / (3 pi sqrt(5)).
const PEAK: f64 = 0.379_606_689_822_494_44;

const SQRT_5: f64 = 2.236_067_977_499_79;

/// A two-piece t distribution with five degrees of freedom.
///
/// Five degrees let one reading be badly wrong without ruling the fault out, and need no exponential:
/// p(x) = 2 / (s_down + s_up) * peak * (1 + z^2 / 5)^-3, z = distance / s of its side. The 95 % limits of each side are
/// those of a normal half with the given variance.
#[derive(Clone, Copy)]
pub(super) struct TwoPiece {
    pub(super) median: f64,
    /// Variances of the normal halves.
    pub(super) down: f64,
    pub(super) up: f64,
}

impl TwoPiece {
    /// To be replaced; all its bits are zero.
    pub(super) const NOWHERE: Self = Self {
        median: 0.0,
        down: 0.0,
        up: 0.0,
    };

    /// As wide as these normal halves.
    pub(super) fn of(spread: Spread) -> Self {
        Self {
            median: spread.median,
            down: spread.down * spread.down,
            up: spread.up * spread.up,
        }
    }

    /// As an instrument shows it that adds this standard uncertainty.
    #[inline(always)]
    pub(super) fn as_read(self, uncertainty: f64) -> Self {
        let noise = uncertainty * uncertainty;
        Self {
            down: self.down + noise,
            up: self.up + noise,
            ..self
        }
    }

    /// Median, and standard deviations of the normal halves.
    #[cfg(test)]
    pub(super) fn spread(self) -> Spread {
        Spread {
            median: self.median,
            down: sqrt(self.down),
            up: sqrt(self.up),
        }
    }

    /// Density at `x`.
    #[inline(always)]
    pub(super) fn density(self, x: f64) -> f64 {
        let distance = x - self.median;
        let variance = if distance < 0.0 { self.down } else { self.up };
        // Both sides of the fraction times the cube of the variance, which leaves one division.
        let tail = variance + 0.2 / (SCALE * SCALE) * distance * distance;
        let both = sqrt(self.down) + sqrt(self.up);
        2.0 * PEAK / SCALE * (variance * variance * variance) / (both * (tail * tail * tail))
    }

    /// Probability below `x`.
    pub(super) fn below(self, x: f64) -> f64 {
        let (down, up) = (sqrt(self.down), sqrt(self.up));
        let both = down + up;
        let distance = (x - self.median) / SCALE;
        if distance < 0.0 {
            2.0 * down / both * t5(distance / down)
        } else {
            1.0 - 2.0 * up / both * t5(-distance / up)
        }
    }
}

/// Probability of the t distribution with five degrees of freedom below `z`.
///
/// Source: Abramowitz & Stegun 26.7.3 for five degrees of freedom.
fn t5(z: f64) -> f64 {
    let theta = libm::atan(z / SQRT_5);
    let cosine2 = 1.0 / (1.0 + 0.2 * z * z);
    let sine_cosine = z / SQRT_5 * cosine2;
    0.5 + (theta + sine_cosine * (1.0 + 2.0 / 3.0 * cosine2)) / core::f64::consts::PI
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: Student's t, five degrees of freedom, two-sided 5 % and 1 %: 2.5706, 4.0321.
    #[test]
    fn quantiles_are_those_of_the_printed_tables() {
        assert!((t5(2.570_581_8) - 0.975).abs() < 1e-8);
        assert!((t5(-4.032_143) - 0.005).abs() < 1e-8);
    }

    #[test]
    fn ninety_five_in_a_hundred_lie_within_the_limits_of_the_normal_halves() {
        let even = TwoPiece {
            median: 10.0,
            down: 9.0,
            up: 9.0,
        };
        let within = even.below(10.0 + 1.959_964 * 3.0) - even.below(10.0 - 1.959_964 * 3.0);
        assert!((within - 0.95).abs() < 1e-6);
    }

    #[test]
    fn the_density_is_the_slope_of_the_probability() {
        let uneven = TwoPiece {
            median: -2.0,
            down: 2.25,
            up: 16.0,
        };
        for step in -40..40 {
            let x = 0.5 * f64::from(step) + 0.1;
            let slope = (uneven.below(x + 1e-5) - uneven.below(x - 1e-5)) / 2e-5;
            assert!((slope - uneven.density(x)).abs() < 1e-8, "{x}");
        }
    }
}
