//! What the crate says of vehicles: the density of their figures in a cloud, with its heavier tails.

use super::em::{Part, Point};
use super::linear::Factor;
use super::{Cloud, X, Y};
use std::fmt::Write;

/// Degrees of freedom; `src/diagnosis/student.rs` has the same.
const FREEDOM: f64 = 8.0;
/// Scale of the covariances; `src/diagnosis/part.rs` has the same.
const WIDER: f64 = 1.25;
/// The figures, without the severity.
const FIGURES: usize = Y - 1;

/// Mean log density of the figures.
pub(super) fn mean(parts: &[Part<X, Y>], points: &[Point<X, Y>]) -> f64 {
    points.iter().map(|point| density(parts, point).ln()).sum::<f64>() / points.len() as f64
}

/// Density of the figures in their conditions: the parts as near to these as they are, each a t distribution.
fn density(parts: &[Part<X, Y>], point: &Point<X, Y>) -> f64 {
    let (mut sum, mut all) = (0.0, 0.0);
    for part in parts {
        let off: [f64; X] = std::array::from_fn(|j| point.x[j] - part.centre[j]);
        let mut share = part.share;
        for (off, width) in off.iter().zip(part.width) {
            share *= (-0.5 * (off / width).powi(2)).exp() / width;
        }
        let left = std::array::from_fn(|i| {
            let along: f64 = (0..X).map(|j| part.slope[i][j] * off[j]).sum();
            point.y[i] - part.at[i] - along
        });
        let factor = Factor::of(&part.covariance);
        let z = factor.solve(left);
        let distance = z[..FIGURES].iter().map(|z| z * z).sum::<f64>() / WIDER;
        let scale: f64 = (0..FIGURES).map(|i| factor.0[i][i] * WIDER.sqrt()).product();
        sum += share * peak() / scale * (1.0 + distance / FREEDOM).powf(-0.5 * (FREEDOM + FIGURES as f64));
        all += share;
    }
    sum / all
}

/// Density of the t distribution of as many dimensions at its middle: gamma((n + d) / 2) / (gamma(n / 2) (n pi)^(d / 2)).
fn peak() -> f64 {
    let mut peak = (FREEDOM * std::f64::consts::PI).powf(-0.5 * FIGURES as f64);
    // gamma(15 / 2) / gamma(4), from gamma(1 / 2) up.
    let mut above = 0.5;
    let mut gamma = std::f64::consts::PI.sqrt();
    while above < 0.5 * (FREEDOM + FIGURES as f64) {
        gamma *= above;
        above += 1.0;
    }
    peak *= gamma;
    let whole: f64 = (1..(0.5 * FREEDOM) as usize).map(|k| k as f64).product();
    peak / whole
}

/// The mean log density of every cloud, as it was when the clouds were fitted.
pub(super) fn csv(kinds: &[Vec<Cloud>]) -> String {
    let mut text = String::from(
        "# Mean log density of the first vehicles that judged each cloud when it was fitted, by `tables-compile -- --fit-clouds`.\n\
         # src/diagnosis/stale.rs draws the same vehicles from the model as it is and asks the clouds as they are.\n\
         kind,fault,log_density\n",
    );
    for (kind, clouds) in kinds.iter().enumerate() {
        for cloud in clouds {
            let _ = writeln!(text, "{kind},{},{:.4}", cloud.fault.id(), cloud.said);
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Of seven dimensions: the product of the factors in `src/diagnosis/student.rs`.
    #[test]
    fn the_peak_is_that_of_the_crate() {
        let factors = [
            0.386_699_020_961_393_1,
            0.411_573_173_100_391_5,
            0.435_036_398_581_567_34,
            0.457_303_525_667_101_6,
            0.478_540_038_439_724_15,
            0.498_876_573_454_980_04,
            0.518_418_374_976_367_8,
        ];
        let product: f64 = factors.iter().product();
        assert!((peak() / product - 1.0).abs() < 1e-12, "{} {product}", peak());
    }
}
