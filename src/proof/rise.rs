//! The shapes of a pressure that rises in a closed circuit, and which of them its readings support.
//!
//! p(t) = a + b (1 - exp(-t/s)) + c (1 - exp(-t/w)) + r t: gas that leaves oil and rubber (b, within minutes), water that dries
//! (c, within minutes to hours), and a leak (r, constant, as the inflow into a vacuum is choked). None of the three can fall.
//! Every pair of time constants of a grid is fitted by weighted least squares under these bounds, with r at most the allowed
//! slope and with r at least that. The readings rule a kind out when its best fit is worse in chi squared than the best of all
//! by more than a limit: a likelihood ratio test (Wilks 1938).

use super::hold::Rise;
use super::line::Point;
use crate::numerics::sqrt;

/// Time constants in which gas leaves oil, rubber and the gauge's hose, s. Source: engineering judgement: a quarter of an hour at
/// most.
const OUTGASSING_S: [f64; 6] = [30.0, 60.0, 120.0, 240.0, 480.0, 900.0];

/// Time constants in which water dries, s. Source: engineering judgement: free water in minutes, ice or wet desiccant in hours.
const DRYING_S: [f64; 7] = [120.0, 240.0, 480.0, 960.0, 1_920.0, 3_840.0, 7_200.0];

/// Median of the time in which water dries, s, and the standard deviation of its natural logarithm. Source: engineering
/// judgement: the trade watches a vacuum for 10 to 30 minutes and expects moisture to level off within that time. The standard
/// deviation was chosen on traces as `tests/hold.rs` draws them: 23 of 2,130 definite answers are wrong; with 0.7, 96 of 2,212
/// are.
const USUAL_DRYING: (f64, f64) = (600.0, 1.0);

/// Drying is distinguished from outgassing where it takes at least this many times as long. Source: engineering judgement.
const SLOWER: f64 = 2.0;

/// The readings rule a fit out that is worse in chi squared by this much: two standard deviations, one-sided 97.7 %. Source:
/// Wilks 1938, doi:10.1214/aoms/1177732360; the bounds make it an approximation.
pub(super) const RULED_OUT: f64 = 4.0;

/// No shape fits when chi squared lies above its mean by more than this many of its standard deviations. Source: engineering
/// judgement.
const FITS: f64 = 3.0;

/// The least standard uncertainty of a reading, Pa: the last digit of a gauge that shows whole microns, 0.133 Pa / sqrt(12).
const LEAST_PA: f64 = 0.04;

/// Unknowns: start, outgassing, drying, leak; the readings follow them in [`Moments`].
const TERMS: usize = 4;

/// What the readings support.
#[derive(Clone, Copy)]
pub(super) struct Shapes {
    /// Whether every fit without a leak above the allowed slope is ruled out.
    pub(super) leaks: bool,
    /// Whether every fit with a leak above the allowed slope is ruled out.
    pub(super) no_leak: bool,
    /// The lowest and the highest pressure at which the rise would end without its leak, Pa, over all fits not ruled out.
    pub(super) levels_pa: (f64, f64),
}

/// The shapes that four readings or more support; `None` where none of the shapes fits.
///
/// `most_pa` bounds the pressure that drying comes to.
pub(super) fn shapes<T>(samples: &[T], point: impl Fn(&T) -> Point, allowed: Rise, most_pa: f64) -> Option<Shapes> {
    let first = samples.first().map(&point)?;
    let bounds = Bounds {
        allowed_pa_s: allowed.pa_s(),
        most_pa: most_pa - first.value,
    };
    let mut best = [f64::INFINITY; 2];
    each(samples, &point, bounds, |fit| {
        let side = usize::from(fit.leaks);
        best[side] = f64::min(best[side], fit.chi_squared);
    });
    let least = f64::min(best[0], best[1]);
    let count = samples.iter().map(|_| 1.0).sum::<f64>();
    if least > count + FITS * sqrt(2.0 * count) {
        return None;
    }
    let mut levels_pa = (f64::INFINITY, f64::NEG_INFINITY);
    each(samples, &point, bounds, |fit| {
        if fit.chi_squared < least + RULED_OUT {
            let level_pa = first.value + fit.level_pa;
            levels_pa = (f64::min(levels_pa.0, level_pa), f64::max(levels_pa.1, level_pa));
        }
    });
    Some(Shapes {
        leaks: best[0] >= least + RULED_OUT,
        no_leak: best[1] >= least + RULED_OUT,
        levels_pa,
    })
}

#[derive(Clone, Copy)]
struct Bounds {
    allowed_pa_s: f64,
    most_pa: f64,
}

/// One fit within the bounds.
struct Fit {
    chi_squared: f64,
    /// Whether it is one of those with at least the allowed slope.
    leaks: bool,
    /// Where it would end without a leak, Pa above the first reading.
    level_pa: f64,
}

/// Every fit at every pair of time constants: with and without each of outgassing and drying, the leak free, absent or at the
/// allowed slope. The best within the bounds is among them, as a quadratic form has its minimum at a free point or at a bound.
fn each<T>(samples: &[T], point: &impl Fn(&T) -> Point, bounds: Bounds, mut take: impl FnMut(Fit)) {
    for fast_s in OUTGASSING_S {
        for slow_s in DRYING_S {
            if slow_s < SLOWER * fast_s {
                continue;
            }
            let usual = libm::log(slow_s / USUAL_DRYING.0) / USUAL_DRYING.1;
            let moments = Moments::of(samples, point, [fast_s, slow_s]);
            for used in [[false, false], [true, false], [false, true], [true, true]] {
                let unusual = if used[1] { usual * usual } else { 0.0 };
                for slope in [None, Some(0.0), Some(bounds.allowed_pa_s)] {
                    let Some((terms, chi_squared)) = moments.fit(used, slope) else {
                        continue;
                    };
                    let [start, outgassing, drying, leak] = terms;
                    if outgassing < 0.0 || drying < 0.0 || leak < 0.0 || start + drying > bounds.most_pa {
                        continue;
                    }
                    let fit = |leaks| Fit {
                        chi_squared: chi_squared + unusual,
                        leaks,
                        level_pa: start + outgassing + drying,
                    };
                    if leak <= bounds.allowed_pa_s {
                        take(fit(false));
                    }
                    if leak >= bounds.allowed_pa_s {
                        take(fit(true));
                    }
                }
            }
        }
    }
}

/// Weighted sums of products of the four terms and the readings, the readings counted from the first.
struct Moments([[f64; TERMS + 1]; TERMS + 1]);

impl Moments {
    fn of<T>(samples: &[T], point: &impl Fn(&T) -> Point, time_s: [f64; 2]) -> Self {
        let mut moments = Self([[0.0; TERMS + 1]; TERMS + 1]);
        let Some(first) = samples.first().map(point) else {
            return moments;
        };
        for sample in samples {
            let Point {
                after_s,
                value,
                standard_uncertainty,
            } = point(sample);
            let after_s = after_s - first.after_s;
            let [outgassed, dried] = time_s.map(|time_s| -libm::expm1(-after_s / time_s));
            let terms = [1.0, outgassed, dried, after_s, value - first.value];
            let u_pa = f64::max(standard_uncertainty, LEAST_PA);
            for (row, a) in moments.0.iter_mut().zip(terms) {
                for (sum, b) in row.iter_mut().zip(terms) {
                    *sum += a * b / (u_pa * u_pa);
                }
            }
        }
        moments
    }

    /// The terms and their chi squared, outgassing and drying only where used, the leak free or given; `None` where the
    /// readings do not determine them.
    fn fit(&self, used: [bool; 2], slope: Option<f64>) -> Option<([f64; TERMS], f64)> {
        let free = [true, used[0], used[1], slope.is_none()];
        let given = slope.unwrap_or(0.0);
        let m = &self.0;
        // Normal equations with the given slope taken off the readings, by Gauss and Jordan.
        let mut rows = [[0.0; TERMS + 1]; TERMS];
        for i in 0..TERMS {
            for j in 0..TERMS {
                let both = free[i] && free[j];
                rows[i][j] = if both { m[i][j] } else { f64::from(u8::from(i == j)) };
            }
            rows[i][TERMS] = if free[i] {
                m[i][TERMS] - given * m[i][TERMS - 1]
            } else {
                0.0
            };
        }
        for pivot in 0..TERMS {
            let own = rows[pivot][pivot];
            if free[pivot] && own.is_nan() | (own <= SINGULAR * m[pivot][pivot]) {
                return None;
            }
            let row = rows[pivot].map(|entry| entry / own);
            for (at, other) in rows.iter_mut().enumerate() {
                if at != pivot {
                    let share = other[pivot];
                    for (entry, by) in other.iter_mut().zip(row) {
                        *entry -= share * by;
                    }
                }
            }
            rows[pivot] = row;
        }
        let mut terms = rows.map(|row| row[TERMS]);
        if slope.is_some() {
            terms[TERMS - 1] = given;
        }
        let mut chi_squared = m[TERMS][TERMS];
        for i in 0..TERMS {
            chi_squared -= 2.0 * terms[i] * m[i][TERMS];
            for j in 0..TERMS {
                chi_squared += terms[i] * terms[j] * m[i][j];
            }
        }
        Some((terms, f64::max(chi_squared, 0.0)))
    }
}

/// A pivot below this share of its diagonal element is lost to rounding.
const SINGULAR: f64 = 1e-10;

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::units::{PressureDifference, TimeSpan};
    use alloc::vec::Vec;

    const ALLOWED: Rise = Rise {
        rise: PressureDifference::from_pa(6.0),
        over: TimeSpan::from_seconds(600.0),
    };

    fn trace(times: impl IntoIterator<Item = f64>, u_pa: f64, pa: impl Fn(f64) -> f64) -> Vec<Point> {
        let point = |after_s| Point {
            after_s,
            value: pa(after_s),
            standard_uncertainty: u_pa,
        };
        times.into_iter().map(point).collect()
    }

    fn found(points: &[Point]) -> Option<Shapes> {
        shapes(points, |point| *point, ALLOWED, 3_000.0)
    }

    fn settled(t: f64, by: f64, within_s: f64) -> f64 {
        by * (1.0 - f64::exp(-t / within_s))
    }

    /// Chi squared and level of the best fit to a trace without errors that comes to 1,810 Pa by gas of one time constant and water
    /// of another.
    fn fitted(fast_s: f64, slow_s: f64) -> (f64, f64) {
        let times = (0..60).map(|n| slow_s * f64::from(n * n) / 600.0);
        let rises = |t: f64| 10.0 + settled(t, 900.0, fast_s) + settled(t, 900.0, slow_s);
        let bounds = Bounds {
            allowed_pa_s: ALLOWED.pa_s(),
            most_pa: 3_000.0,
        };
        let mut best = (f64::INFINITY, 0.0);
        each(&trace(times, 0.0, rises), &|point| *point, bounds, |fit| {
            if fit.chi_squared < best.0 {
                best = (fit.chi_squared, fit.level_pa);
            }
        });
        best
    }

    /// Each pair of times of which drying is at least twice as long fits a trace of its own to the last digit of a gauge; pairs
    /// that are nearer together do not.
    #[test]
    fn gas_leaves_within_a_quarter_of_an_hour_and_water_dries_within_hours() {
        for fast_s in [30.0, 60.0, 120.0, 240.0, 480.0, 900.0] {
            for slow_s in [120.0, 240.0, 480.0, 960.0, 1_920.0, 3_840.0, 7_200.0] {
                let (chi_squared, level_pa) = fitted(fast_s, slow_s);
                if slow_s >= 2.0 * fast_s {
                    // What is left of chi squared is the prior of the drying time: median ten minutes, one standard deviation a
                    // factor of e.
                    let unusual = f64::ln(slow_s / 600.0);
                    assert!(
                        libm::fabs(chi_squared - unusual * unusual) < 0.01,
                        "{fast_s} {slow_s}: {chi_squared}"
                    );
                    assert!(libm::fabs(level_pa - 1_800.0) < 0.5, "{fast_s} {slow_s}: {level_pa}");
                } else if slow_s > fast_s {
                    assert!(chi_squared > 100.0, "{fast_s} {slow_s}: {chi_squared}");
                }
            }
        }
    }

    /// Constant readings rule out a leak of r once the sum of (r (t - mean))² over their variance is 4: r = 0.01 Pa/s at 0,
    /// 200, 400 and 600 s gives 20 Pa², so that the edge is a standard uncertainty of the root of 5.
    #[test]
    fn two_standard_deviations_rule_a_leak_out() {
        let no_leak = |u_pa: f64| {
            found(&trace([0.0, 200.0, 400.0, 600.0], u_pa, |_| 50.0))
                .unwrap()
                .no_leak
        };
        assert_eq!((no_leak(2.18), no_leak(2.29)), (true, false));
    }

    /// The last digit of a gauge, 0.04 Pa, is the least that counts: with it, the same leak is ruled out until the readings are
    /// so close in time that their sum of squares is below 4 times 0.0016 Pa².
    #[test]
    fn a_reading_is_no_better_than_the_last_digit_of_its_gauge() {
        let no_leak = |apart_s: f64| {
            let times = [0.0, apart_s, 2.0 * apart_s, 3.0 * apart_s];
            found(&trace(times, 0.0, |_| 50.0)).unwrap().no_leak
        };
        // 5 (0.01 Pa/s apart)² = 0.0064 Pa²: 3.58 s.
        assert_eq!((no_leak(3.5), no_leak(3.65)), (false, true));
    }

    /// The mean of chi squared is the number of readings and its standard deviation the root of twice that; 3 of these are the
    /// limit: 16 + 3 √32 = 32.97 for sixteen readings that go up and down, where a fit of a rise removes no more than their
    /// mean and trend.
    #[test]
    fn readings_that_scatter_beyond_three_standard_deviations_fit_nothing() {
        let fits = |scatter: f64| {
            let points = trace((0..16).map(|n| 60.0 * f64::from(n)), 1.0, |t| {
                50.0 + scatter * f64::cos(core::f64::consts::PI * t / 60.0)
            });
            found(&points).is_some()
        };
        assert_eq!((fits(1.43), fits(1.445)), (true, false));
    }

    /// Drying comes to no more than the pressure of water: a slowing rise beyond it fits no shape.
    #[test]
    fn drying_ends_at_the_pressure_of_water() {
        let points = trace((0..20).map(|n| 300.0 * f64::from(n)), 1.0, |t| {
            10.0 + settled(t, 2_000.0, 1_920.0)
        });
        let with = |most_pa: f64| shapes(&points, |point| *point, ALLOWED, most_pa);
        assert!(with(2_020.0).is_some() && with(1_900.0).is_none());
    }
}
