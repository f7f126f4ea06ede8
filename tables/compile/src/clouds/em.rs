//! A mixture of linear regressions, fitted by expectation and maximisation.
//!
//! Each part has a share, a centre and widths in the conditions (independent of each other), and within it the figures
//! follow the conditions linearly with a full covariance about that. Source: Dempster, Laird & Rubin 1977; the parts are
//! those of a cluster-weighted model (Gershenfeld, Schoner & Metois 1999).

#![allow(clippy::needless_range_loop)] // matrices are written as on paper

use super::linear::{Factor, Matrix};

/// One case: its conditions and its figures.
#[derive(Clone, Copy)]
pub(crate) struct Point<const X: usize, const Y: usize> {
    pub(crate) x: [f64; X],
    pub(crate) y: [f64; Y],
}

/// One part of a mixture.
#[derive(Clone, Copy)]
pub(crate) struct Part<const X: usize, const Y: usize> {
    pub(crate) share: f64,
    pub(crate) centre: [f64; X],
    pub(crate) width: [f64; X],
    pub(crate) at: [f64; Y],
    pub(crate) slope: [[f64; X]; Y],
    pub(crate) covariance: Matrix<Y>,
}

/// What keeps a part from shrinking to a point.
#[derive(Clone, Copy)]
pub(crate) struct Floor<const Y: usize> {
    /// Least standard deviation of each figure.
    pub(crate) spread: [f64; Y],
    /// Least width of a part in a condition.
    pub(crate) width: f64,
    /// Cases by which slopes are drawn towards none.
    pub(crate) ridge: f64,
}

/// Rounds at most, and the gain of log likelihood per case below which the search ends.
const ROUNDS: usize = 60;
const GAIN: f64 = 2e-3;

/// A part with what its density needs.
struct Ready<'a, const X: usize, const Y: usize> {
    part: &'a Part<X, Y>,
    factor: Factor<Y>,
    inverse_width: [f64; X],
    /// Logarithms of share over widths, and over the scale of the figures too.
    gate: f64,
    whole: f64,
}

impl<'a, const X: usize, const Y: usize> Ready<'a, X, Y> {
    fn of(part: &'a Part<X, Y>) -> Self {
        let factor = Factor::of(&part.covariance);
        let half_turn = 0.5 * std::f64::consts::TAU.ln();
        let gate = part.share.ln() - part.width.iter().map(|w| w.ln() + half_turn).sum::<f64>();
        let scale: f64 = (0..Y).map(|i| factor.0[i][i].ln() + half_turn).sum();
        Self {
            part,
            factor,
            inverse_width: part.width.map(|w| 1.0 / w),
            gate,
            whole: gate - scale,
        }
    }

    /// Logarithm of share times density of the conditions, and of the figures in them too.
    fn logs(&self, point: &Point<X, Y>) -> (f64, f64) {
        let p = self.part;
        let off: [f64; X] = std::array::from_fn(|j| point.x[j] - p.centre[j]);
        let mut gate = 0.0;
        for j in 0..X {
            let z = off[j] * self.inverse_width[j];
            gate -= 0.5 * z * z;
        }
        let mut left = [0.0; Y];
        for i in 0..Y {
            let mut sum = point.y[i] - p.at[i];
            for j in 0..X {
                sum -= p.slope[i][j] * off[j];
            }
            left[i] = sum;
        }
        let z = self.factor.solve(left);
        let distance: f64 = z.iter().map(|z| z * z).sum();
        (self.gate + gate, self.whole + gate - 0.5 * distance)
    }
}

/// Mean log density of the figures given the conditions.
pub(crate) fn score<const X: usize, const Y: usize>(parts: &[Part<X, Y>], points: &[Point<X, Y>]) -> f64 {
    let ready: Vec<Ready<X, Y>> = parts.iter().map(Ready::of).collect();
    let total: f64 = points
        .iter()
        .map(|point| {
            let (gates, wholes): (Vec<f64>, Vec<f64>) = ready.iter().map(|r| r.logs(point)).unzip();
            log_sum(&wholes) - log_sum(&gates)
        })
        .sum();
    total / points.len() as f64
}

fn log_sum(logs: &[f64]) -> f64 {
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    most + logs.iter().map(|l| (l - most).exp()).sum::<f64>().ln()
}

/// Fits a mixture from a first guess of who belongs where.
pub(crate) fn fit<const X: usize, const Y: usize>(
    points: &[Point<X, Y>],
    first: &[usize],
    parts: usize,
    floor: &Floor<Y>,
) -> Vec<Part<X, Y>> {
    let mut belongs: Vec<Vec<f64>> = first
        .iter()
        .map(|own| (0..parts).map(|k| if k == *own { 1.0 } else { 0.0 }).collect())
        .collect();
    let mut best = f64::NEG_INFINITY;
    let mut mixture = Vec::new();
    for _ in 0..ROUNDS {
        mixture = (0..parts)
            .filter_map(|k| maximised(points, belongs.iter().map(|b| b[k]), floor))
            .collect();
        let ready: Vec<Ready<X, Y>> = mixture.iter().map(Ready::of).collect();
        let mut total = 0.0;
        for (point, belongs) in points.iter().zip(&mut belongs) {
            let logs: Vec<f64> = ready.iter().map(|r| r.logs(point).1).collect();
            let sum = log_sum(&logs);
            total += sum;
            *belongs = logs.iter().map(|l| (l - sum).exp()).collect();
            belongs.resize(parts, 0.0);
        }
        let now = total / points.len() as f64;
        if now - best < GAIN {
            break;
        }
        best = now;
    }
    mixture
}

/// The part that explains these cases best, each counting as much as it belongs; `None` for hardly any.
fn maximised<const X: usize, const Y: usize>(
    points: &[Point<X, Y>],
    belongs: impl Iterator<Item = f64> + Clone,
    floor: &Floor<Y>,
) -> Option<Part<X, Y>> {
    let total: f64 = belongs.clone().sum();
    if total < (2 * (X + Y)) as f64 {
        return None;
    }
    let (mut centre, mut middle) = ([0.0; X], [0.0; Y]);
    for (point, weight) in points.iter().zip(belongs.clone()) {
        for j in 0..X {
            centre[j] += weight * point.x[j] / total;
        }
        for i in 0..Y {
            middle[i] += weight * point.y[i] / total;
        }
    }
    let (mut xx, mut xy, mut yy) = ([[0.0; X]; X], [[0.0; X]; Y], [[0.0; Y]; Y]);
    for (point, weight) in points.iter().zip(belongs) {
        if weight < 1e-9 {
            continue;
        }
        let x: [f64; X] = std::array::from_fn(|j| point.x[j] - centre[j]);
        let y: [f64; Y] = std::array::from_fn(|i| point.y[i] - middle[i]);
        for j in 0..X {
            for l in 0..=j {
                xx[j][l] += weight * x[j] * x[l] / total;
            }
        }
        for i in 0..Y {
            for j in 0..X {
                xy[i][j] += weight * y[i] * x[j] / total;
            }
            for l in 0..=i {
                yy[i][l] += weight * y[i] * y[l] / total;
            }
        }
    }
    let width = std::array::from_fn(|j| xx[j][j].max(floor.width * floor.width).sqrt());
    for (j, row) in xx.iter_mut().enumerate() {
        row[j] += floor.ridge / total + 1e-6;
    }
    let factor = Factor::of(&xx);
    let slope: [[f64; X]; Y] = xy.map(|row| factor.solve_both(row));
    let mut covariance = yy;
    for i in 0..Y {
        for l in 0..=i {
            // Cov(y - Bx) with a ridge: yy - B xy' - xy B' + B xx B'
            let mut explained = 0.0;
            for j in 0..X {
                explained += slope[i][j] * xy[l][j] + slope[l][j] * xy[i][j];
                for m in 0..X {
                    let (a, b) = (j.max(m), j.min(m));
                    let ridge = if a == b { floor.ridge / total + 1e-6 } else { 0.0 };
                    explained -= slope[i][j] * slope[l][m] * (xx[a][b] - ridge);
                }
            }
            covariance[i][l] -= explained;
        }
        covariance[i][i] += floor.spread[i] * floor.spread[i];
    }
    Some(Part {
        share: total / points.len() as f64,
        centre,
        width,
        at: middle,
        slope,
        covariance,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use rand::{RngExt, SeedableRng};
    use rand_chacha::ChaCha8Rng;

    const FLOOR: Floor<2> = Floor {
        spread: [0.01, 0.01],
        width: 0.05,
        ridge: 1e-6,
    };

    /// Two lines over one condition, each with its own correlated spread.
    fn points(count: usize) -> Vec<Point<1, 2>> {
        let mut rng = ChaCha8Rng::seed_from_u64(5);
        let mut normal = move || (0..12).map(|_| rng.random::<f64>()).sum::<f64>() - 6.0;
        (0..count)
            .map(|at| {
                let first = at % 4 != 0;
                let x = if first { 0.5 * normal() } else { 3.0 + 0.4 * normal() };
                let (a, b) = (normal(), normal());
                let y = if first {
                    [1.0 + 2.0 * x + 0.5 * a, -x + 0.3 * a + 0.4 * b]
                } else {
                    [-9.0 - x + 0.2 * a, 4.0 + 0.1 * b]
                };
                Point { x: [x], y }
            })
            .collect()
    }

    #[test]
    fn two_lines_are_found_again() {
        let points = points(8_000);
        // A poor first guess, but not one that tells nothing: from there the first rounds would gain too little to go on.
        let first: Vec<usize> = points.iter().map(|point| usize::from(point.x[0] > 1.0)).collect();
        let mut parts = fit(&points, &first, 2, &FLOOR);
        parts.sort_by(|a, b| b.share.total_cmp(&a.share));
        let [large, small] = &parts[..] else {
            unreachable!("two parts were asked for")
        };
        assert!((large.share - 0.75).abs() < 0.01 && (small.share - 0.25).abs() < 0.01);
        assert!((large.slope[0][0] - 2.0).abs() < 0.03 && (large.slope[1][0] + 1.0).abs() < 0.03);
        assert!((large.at[0] - 2.0 * large.centre[0] - 1.0).abs() < 0.03);
        assert!((large.covariance[0][0] - 0.25).abs() < 0.02 && (large.covariance[1][0] - 0.15).abs() < 0.02);
        assert!((small.slope[0][0] + 1.0).abs() < 0.03 && (small.width[0] - 0.4).abs() < 0.02);
    }

    /// The mean log density of a normal distribution in its own cases is minus its entropy.
    #[test]
    fn the_score_is_minus_the_entropy() {
        let points: Vec<Point<1, 2>> = points(8_000).into_iter().filter(|p| p.x[0] < 1.5).collect();
        let parts = fit(&points, &vec![0; points.len()], 1, &FLOOR);
        // Half ln((2 pi e)^2 det), det = 0.25 (0.09 + 0.16) - 0.15^2
        let det: f64 = 0.25 * 0.25 - 0.15 * 0.15;
        let entropy = 0.5 * ((std::f64::consts::TAU * std::f64::consts::E).powi(2) * det).ln();
        assert!((score(&parts, &points) + entropy).abs() < 0.03);
    }
}
