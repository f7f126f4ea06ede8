//! The multivariate t distribution with eight degrees of freedom: vehicles stray farther than a normal distribution would
//! have them.

use super::coordinates::FIGURES;
use super::lanes::Lanes;
use crate::numerics::sqrt;

/// Degrees of freedom.
pub(super) const FREEDOM: f64 = 8.0;

/// Factor by which each further dimension d changes the peak of the density at unit scale:
/// gamma((n + d) / 2) / (gamma((n + d - 1) / 2) sqrt(n pi)).
pub(super) const CONSTANT: [f64; FIGURES] = [
    0.3866990209613931,
    0.4115731731003915,
    0.43503639858156734,
    0.4573035256671016,
    0.47854003843972415,
    0.49887657345501984,
    0.5184183749763678,
];

/// Density at a squared distance, `narrow` one over the determinant of the scales:
/// peak sqrt(narrow) (1 + q / n)^-((n + d) / 2), n the degrees of freedom: eight, so that half of it is four.
#[inline(never)] // it is large
pub(super) fn density<const L: usize>(distance: &[Lanes; L], narrow: &Lanes, dimensions: usize) -> [Lanes; L] {
    let peak: f64 = CONSTANT[..dimensions].iter().product();
    // An odd dimension leaves half a power, which goes under the same root.
    let odd = dimensions % 2 == 1;
    let root = if odd { *narrow } else { narrow.root() };
    core::array::from_fn(|l| {
        let tail = Lanes::of(|lane| 1.0 / (1.0 + 1.0 / FREEDOM * distance[l].at(lane)));
        let root = if odd {
            Lanes::of(|lane| root.at(lane) * tail.at(lane)).root()
        } else {
            root
        };
        let fourth = |lane: usize| {
            let square = tail.at(lane) * tail.at(lane);
            peak * root.at(lane) * (square * square)
        };
        match dimensions / 2 {
            0 => Lanes::of(fourth),
            1 => Lanes::of(|lane| fourth(lane) * tail.at(lane)),
            2 => Lanes::of(|lane| fourth(lane) * (tail.at(lane) * tail.at(lane))),
            _ => Lanes::of(|lane| fourth(lane) * (tail.at(lane) * tail.at(lane)) * tail.at(lane)),
        }
    })
}

/// Density of one figure, `z` standard scales from the middle, and the scale.
pub(super) fn density_of_one(z: f64, scale: f64) -> f64 {
    let tail = 1.0 / (1.0 + z * z / FREEDOM);
    let square = tail * tail;
    CONSTANT[0] / scale * square * square * sqrt(tail)
}

/// Probability below `z`.
///
/// Source: Abramowitz & Stegun 26.7.4.
pub(super) fn below(z: f64) -> f64 {
    let cosine2 = FREEDOM / (FREEDOM + z * z);
    let sine = z / sqrt(FREEDOM + z * z);
    0.5 + 0.5 * sine * (1.0 + cosine2 * (0.5 + cosine2 * (0.375 + cosine2 * 0.3125)))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: Student's t, eight degrees of freedom, two-sided 5 % and 1 %: 2.3060, 3.3554.
    #[test]
    fn quantiles_are_those_of_the_printed_tables() {
        assert!((below(2.306_004) - 0.975).abs() < 1e-7);
        assert!((below(-3.355_387) - 0.005).abs() < 1e-7);
    }

    #[test]
    fn the_density_is_the_slope_of_the_probability() {
        for step in -20..20 {
            let z = 0.3 * f64::from(step) + 0.1;
            let slope = (below(z + 1e-5) - below(z - 1e-5)) / 2e-5;
            let [of_many] = density(&[Lanes::of(|_| z * z)], &Lanes::ONE, 1);
            assert!((slope - density_of_one(z, 1.0)).abs() < 1e-8, "{z}");
            assert!((slope - of_many.at(3)).abs() < 1e-8, "{z}");
        }
    }

    /// Numerical integration over one of two independent scales.
    #[test]
    fn a_dimension_that_is_integrated_over_drops_out() {
        for dimensions in 2..=FIGURES {
            let (at, narrow) = (2.0, Lanes::of(|_| 0.25));
            let [fewer] = density(&[Lanes::of(|_| at)], &narrow, dimensions - 1);
            let step = 0.01;
            let mut sum = 0.0;
            for k in -10_000..10_000 {
                let x = step * f64::from(k);
                let [all] = density(&[Lanes::of(|_| at + x * x)], &narrow, dimensions);
                sum += step * all.at(1);
            }
            assert!((sum / fewer.at(1) - 1.0).abs() < 1e-7, "{dimensions}: {sum}");
        }
    }
}
