//! Medians and spreads of drawn figures as sums of the weather's terms.

/// Imbalance below which a deviation weighs no more, in the unit of the figure.
const SOFT: f64 = 0.02;
/// Weight of keeping coefficients small, per sample.
const RIDGE: f64 = 3e-6;
const ROUNDS: usize = 25;
/// Normal quantiles that bound the middle 80 and 95 %, with the parts beyond.
const TAILS: [(f64, f64); 2] = [(1.281_551_565_544_6, 0.10), (1.959_963_984_540_054, 0.025)];
/// Rounding of a spread towards zero: that of the crate.
const LEAST_SPREAD: f64 = 0.1;

/// The coefficients of the median: those of the least sum of absolute deviations.
///
/// By reweighted least squares, each round's weight the inverse of the last deviation: the majorisation of Hunter &
/// Lange 2000 (J. Comput. Graph. Stat. 9(1), 60).
pub(super) fn median<const N: usize>(terms: &[&[f64; N]], values: &[f64]) -> Vec<f64> {
    let mut coefficients = vec![0.0; N];
    let mut deviations: Vec<f64> = vec![1.0; values.len()];
    for _ in 0..ROUNDS {
        let mut matrix = vec![vec![0.0; N]; N];
        let mut right = vec![0.0; N];
        for ((x, value), deviation) in terms.iter().zip(values).zip(&deviations) {
            let weight = 1.0 / (SOFT + deviation.abs());
            accumulate(&mut matrix, &mut right, &x[..], weight, weight * value);
        }
        coefficients = solved(matrix, right, RIDGE * values.len() as f64);
        for ((x, value), deviation) in terms.iter().zip(values).zip(&mut deviations) {
            *deviation = value - product(&coefficients, &x[..]);
        }
    }
    coefficients
}

/// The coefficients of the spread of deviations on one side: `sign` -1 for downwards, 1 for upwards.
///
/// The spread is that whose 1.28-fold leaves a tenth, and whose 1.96-fold a fortieth, of the deviations beyond; where
/// these two differ, the least sum of both check functions decides (same majorisation, Newton steps on it).
pub(super) fn spread(terms: &[&[f64]], deviations: &[f64], sign: f64) -> Vec<f64> {
    let count = terms.first().map_or(0, |x| x.len());
    let mut theta = vec![0.0; count];
    let mut sorted: Vec<f64> = deviations.iter().map(|d| sign * d).collect();
    sorted.sort_by(f64::total_cmp);
    theta[0] = sorted[(0.9 * sorted.len() as f64) as usize].max(0.05) / TAILS[0].0;
    for _ in 0..ROUNDS {
        let mut matrix = vec![vec![0.0; count]; count];
        let mut right = vec![0.0; count];
        for (x, deviation) in terms.iter().zip(deviations) {
            let (kept, slope) = kept(product(&theta, x));
            for (quantile, beyond) in TAILS {
                // Beyond the quantile of the side lies the part `beyond`: a check function of 1 - beyond.
                let miss = sign * deviation - quantile * kept;
                let pull = quantile * slope;
                let weight = 1.0 / (SOFT + miss.abs());
                let gradient = 0.5 * weight * miss + 0.25 * (4.0 * (1.0 - beyond) - 2.0);
                accumulate(&mut matrix, &mut right, x, 0.5 * weight * pull * pull, pull * gradient);
            }
        }
        let step = solved(matrix, right, RIDGE * deviations.len() as f64);
        for (theta, step) in theta.iter_mut().zip(&step) {
            *theta += 0.7 * step;
        }
    }
    theta
}

/// A spread kept positive, as the crate does it, and the slope of that.
fn kept(x: f64) -> (f64, f64) {
    let root = x.hypot(LEAST_SPREAD);
    (0.5 * (x + root), (0.5 * (1.0 + x / root)).max(0.05))
}

fn product(coefficients: &[f64], terms: &[f64]) -> f64 {
    coefficients.iter().zip(terms).map(|(c, x)| c * x).sum()
}

/// Adds one sample to the normal equations.
fn accumulate(matrix: &mut [Vec<f64>], right: &mut [f64], x: &[f64], weight: f64, value: f64) {
    for (row, (entries, right)) in matrix.iter_mut().zip(right).enumerate() {
        let weighted = weight * x[row];
        *right += value * x[row];
        for (entry, x) in entries.iter_mut().zip(x).take(row + 1) {
            *entry += weighted * x;
        }
    }
}

/// The solution of a symmetric system given by its lower triangle, with `ridge` on the diagonal: Cholesky.
fn solved(mut matrix: Vec<Vec<f64>>, mut right: Vec<f64>, ridge: f64) -> Vec<f64> {
    let n = right.len();
    for (i, row) in matrix.iter_mut().enumerate() {
        row[i] += ridge;
    }
    for i in 0..n {
        for j in 0..=i {
            let sum: f64 = matrix[i][j] - (0..j).map(|k| matrix[i][k] * matrix[j][k]).sum::<f64>();
            matrix[i][j] = if i == j {
                sum.max(1e-12).sqrt()
            } else {
                sum / matrix[j][j]
            };
        }
    }
    for i in 0..n {
        right[i] = (right[i] - (0..i).map(|k| matrix[i][k] * right[k]).sum::<f64>()) / matrix[i][i];
    }
    for i in (0..n).rev() {
        right[i] = (right[i] - (i + 1..n).map(|k| matrix[k][i] * right[k]).sum::<f64>()) / matrix[i][i];
    }
    right
}

/// Covariances of what vehicles keep in any weather and of what changes with it, as lower triangles, from deviations of
/// vehicles in several weathers each.
pub(super) fn covariances(vehicles: &[Vec<Vec<f64>>]) -> (Vec<f64>, Vec<f64>) {
    let figures = vehicles.first().and_then(|v| v.first()).map_or(0, Vec::len);
    let (mut changing, mut means) = (vec![vec![0.0; figures]; figures], vec![vec![0.0; figures]; figures]);
    let weathers = vehicles.first().map_or(1, Vec::len) as f64;
    for vehicle in vehicles {
        let mean: Vec<f64> = (0..figures)
            .map(|i| vehicle.iter().map(|z| z[i]).sum::<f64>() / weathers)
            .collect();
        for i in 0..figures {
            for j in 0..=i {
                means[i][j] += mean[i] * mean[j] / vehicles.len() as f64;
                for z in vehicle {
                    changing[i][j] += (z[i] - mean[i]) * (z[j] - mean[j]) / (weathers - 1.0) / vehicles.len() as f64;
                }
            }
        }
    }
    let mut kept = means;
    for i in 0..figures {
        for j in 0..=i {
            kept[i][j] -= changing[i][j] / weathers;
        }
    }
    // As estimated it may fall short of a covariance by a little: the diagonal makes up for it.
    while !positive(&kept) {
        (0..figures).for_each(|i| kept[i][i] += 0.005);
    }
    let triangle = |matrix: &[Vec<f64>]| (0..figures).flat_map(|i| matrix[i][..=i].to_vec()).collect();
    (triangle(&kept), triangle(&changing))
}

/// Whether a symmetric matrix, given by its lower triangle, is positive definite.
fn positive(matrix: &[Vec<f64>]) -> bool {
    let n = matrix.len();
    let mut lower = vec![vec![0.0; n]; n];
    for i in 0..n {
        for j in 0..=i {
            let sum: f64 = matrix[i][j] - (0..j).map(|k| lower[i][k] * lower[j][k]).sum::<f64>();
            if i == j && sum <= 1e-6 {
                return false;
            }
            lower[i][j] = if i == j { sum.sqrt() } else { sum / lower[j][j] };
        }
    }
    true
}
