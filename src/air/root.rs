//! The root of a function between two points where its signs differ.

use crate::error::Error;

/// Steps after which the search stops; bisection alone needs about 55 from any bracket in this module.
const STEPS: usize = 100;

/// The `x` between `a` and `b` at which `f` crosses zero, to within `tolerance`.
///
/// Assumes that `f` has opposite signs (or a zero) at `a` and `b`; it may jump. Guarantees a point within `tolerance` of
/// a change of sign. Inverse quadratic interpolation where it is safe, bisection elsewhere.
/// Source: Chandrupatla, T. R. (1997), Advances in Engineering Software 28, 145-149, doi:10.1016/S0965-9978(96)00051-8.
///
/// Errors: `NoConvergence` with the residual when the signs do not differ, `f` is NaN, or the steps run out.
pub(super) fn root(mut f: impl FnMut(f64) -> f64, a: f64, b: f64, tolerance: f64) -> Result<f64, Error> {
    // In the loop, a is the newest point, b the one across the root, c the one that was replaced.
    let (mut a, mut b) = (a, b);
    let (mut f_a, mut f_b) = (f(a), f(b));
    let failed = |residual: f64| Err(Error::no_convergence(residual, tolerance));
    if f_a.is_nan() || f_b.is_nan() || f_a * f_b > 0.0 {
        return failed(f_b);
    }
    let mut step = 0.5;
    for _ in 0..STEPS {
        let x = a + step * (b - a);
        let f_x = f(x);
        if f_x.is_nan() {
            return failed(f_x);
        }
        let (c, f_c);
        if (f_x > 0.0) == (f_a > 0.0) {
            (c, f_c) = (a, f_a);
        } else {
            (c, f_c) = (b, f_b);
            (b, f_b) = (a, f_a);
        }
        (a, f_a) = (x, f_x);
        let (best, f_best) = if libm::fabs(f_a) < libm::fabs(f_b) {
            (a, f_a)
        } else {
            (b, f_b)
        };
        let nearest = tolerance / libm::fabs(b - a);
        if f_best == 0.0 || nearest > 0.5 {
            return Ok(best);
        }
        let xi = (a - b) / (c - b);
        let phi = (f_a - f_b) / (f_c - f_b);
        let quadratic =
            f_a / (f_b - f_a) * (f_c / (f_b - f_c)) + (c - a) / (b - a) * (f_a / (f_c - f_a)) * (f_b / (f_c - f_b));
        let safe = phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi && quadratic.is_finite();
        step = if safe {
            quadratic.clamp(nearest, 1.0 - nearest)
        } else {
            0.5
        };
    }
    failed(f_b)
}

#[cfg(test)]
mod tests {
    use super::root;

    #[test]
    fn roots_are_found_from_any_bracket() {
        // Chandrupatla (1997), table 1: x^3 - 2x - 5 has its root at 2.0945514815423265
        let found = root(|x| x * x * x - 2.0 * x - 5.0, 2.0, 3.0, 1e-14).unwrap();
        assert!((found - 2.094_551_481_542_326_5).abs() < 1e-14);
        // a triple root, a jump, and an infinite end
        assert!((root(|x| (x - 1.0) * (x - 1.0) * (x - 1.0), -5.0, 9.0, 1e-6).unwrap() - 1.0).abs() < 2e-6);
        assert!((root(|x| if x < 0.3 { -1.0 } else { 2.0 }, 0.0, 1.0, 1e-12).unwrap() - 0.3).abs() < 2e-12);
        assert!((root(|x| 1.0 / (1.0 - x) - 3.0, 0.0, 1.0, 1e-14).unwrap() - 2.0 / 3.0).abs() < 1e-13);
    }

    #[test]
    fn no_change_of_sign_is_an_error() {
        assert!(root(|x| x * x + 1.0, -1.0, 1.0, 1e-9).is_err());
        assert!(root(|_| f64::NAN, -1.0, 1.0, 1e-9).is_err());
    }
}
