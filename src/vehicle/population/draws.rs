//! What is drawn by a uniform number: a deviate, a value in a range.

use crate::names::Quantity;
use crate::numerics::normal_quantile;
use crate::range::Range;

/// Farthest deviation that is drawn, in standard deviations: the outermost 1.6 % of a normal distribution are not built.
const FARTHEST: f64 = 2.4;

/// What a uniform number may be.
pub(in crate::vehicle) const UNIFORM: Range = Range::new(Quantity::Probability, 0.0, 1.0);

/// The standard normal deviate of a uniform number in 0 to 1, cut at [`FARTHEST`].
pub(in crate::vehicle) fn deviate(uniform: f64) -> f64 {
    normal_quantile(uniform.clamp(1e-9, 1.0 - 1e-9)).clamp(-FARTHEST, FARTHEST)
}

/// The value at the part `u` of a range.
pub(in crate::vehicle) const fn between(range: [f64; 2], u: f64) -> f64 {
    range[0] + (range[1] - range[0]) * u
}
