//! The root of a rising function in numbers of twice the usual precision.

use crate::double::Double;
use coldloop::inner::numerics::Real;

/// Where `miss` is zero between two ends, by so many halvings and then the secant rule.
pub(crate) fn root_between(low: Double, high: Double, halvings: usize, miss: impl Fn(Double) -> Double) -> Double {
    let half = Double::from_f64(0.5);
    let (mut a, mut b) = (low, high);
    for _ in 0..halvings {
        let middle = (a + b) * half;
        if miss(middle).to_f64() > 0.0 {
            b = middle;
        } else {
            a = middle;
        }
    }
    let (mut fa, mut fb) = (miss(a), miss(b));
    for _ in 0..12 {
        if (fb - fa).to_f64() == 0.0 || fb.to_f64() == 0.0 {
            break;
        }
        let next = b - fb * (b - a) / (fb - fa);
        (a, fa) = (b, fb);
        (b, fb) = (next, miss(next));
        if ((b - a) / b).to_f64().abs() < 1e-22 {
            break;
        }
    }
    b
}
