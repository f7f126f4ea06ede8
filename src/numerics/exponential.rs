//! e^x without branches, so that a loop over many of them becomes vector code with the same bits as one alone.

const LOG2_E: f64 = core::f64::consts::LOG2_E;
const LN2_HIGH: f64 = 0.693_147_180_369_123_8; // ln 2 to 33 bits, so that k * LN2_HIGH is exact
const LN2_LOW: f64 = 1.908_214_929_270_587_7e-10; // ln 2 - LN2_HIGH
const ROUND: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52: adding it leaves the nearest whole number in the low bits

/// Below this the result is a subnormal number, which the terms of an equation of state never need.
const LOWEST: f64 = -708.0;
/// Above this the result overflows.
const HIGHEST: f64 = 709.0;

/// e^x for x from -708 to 709, to within one unit in the last place; x outside is taken as the nearer end.
///
/// Argument reduction after Cody and Waite, e^x = 2^k e^r with |r| <= ln 2 / 2, and the Taylor series of e^r to r^13,
/// whose remainder is below 5e-18.
///
/// ```
/// assert_eq!(coldloop::inner::numerics::exp(0.0), 1.0);
/// assert!((coldloop::inner::numerics::exp(1.0) - core::f64::consts::E).abs() < 1e-15);
/// ```
#[inline]
pub fn exp(x: f64) -> f64 {
    let x = if x < LOWEST { LOWEST } else { x };
    let x = if x > HIGHEST { HIGHEST } else { x };
    let shifted = x * LOG2_E + ROUND;
    let k = shifted - ROUND;
    let r = (x - k * LN2_HIGH) - k * LN2_LOW;
    let r2 = r * r;
    let r4 = r2 * r2;
    let low = (1.0 / 2.0 + r * (1.0 / 6.0)) + r2 * (1.0 / 24.0 + r * (1.0 / 120.0));
    let middle = (1.0 / 720.0 + r * (1.0 / 5_040.0)) + r2 * (1.0 / 40_320.0 + r * (1.0 / 362_880.0));
    let high =
        (1.0 / 3_628_800.0 + r * (1.0 / 39_916_800.0)) + r2 * (1.0 / 479_001_600.0 + r * (1.0 / 6_227_020_800.0));
    let tail = low + r4 * (middle + r4 * high);
    let significand = 1.0 + (r + r2 * tail);
    f64::from_bits(significand.to_bits().wrapping_add(shifted.to_bits() << 52))
}

/// [`exp`] of each value, in place.
#[inline]
pub fn exp_all(values: &mut [f64]) {
    let (fours, rest) = values.as_chunks_mut::<4>();
    for four in fours {
        *four = four.map(exp);
    }
    let (pairs, rest) = rest.as_chunks_mut::<2>();
    for pair in pairs {
        *pair = pair.map(exp);
    }
    for value in rest {
        *value = exp(*value);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_agrees_with_an_independent_exponential() {
        // libm's exp is within one unit in the last place; so is ours, hence two units between them.
        let mut x = -707.9;
        while x < 708.9 {
            let (ours, other) = (exp(x), libm::exp(x));
            assert!((ours / other - 1.0).abs() <= 4.5e-16, "exp({x}) = {ours}, not {other}");
            x += 0.003_17;
        }
    }

    #[test]
    fn nan_stays_nan() {
        assert!(exp(f64::NAN).is_nan());
    }

    #[test]
    fn outside_its_range_it_gives_the_ends() {
        assert_eq!(exp(-1e9), exp(LOWEST));
        assert_eq!(exp(f64::INFINITY), exp(HIGHEST));
    }
}
