//! ln x without branches, so that a loop over many of them becomes vector code with the same bits as one alone.

const SQRT_HALF: u64 = 0x3fe6_a09e_0000_0000; // the bits of sqrt(1/2), cut
const ONE: u64 = 0x3ff0_0000_0000_0000; // the bits of 1
const EXPONENT: u64 = 0xfff0_0000_0000_0000;
const TWO_TO_52: u64 = 0x4330_0000_0000_0000; // the bits of 2^52: a whole number set beneath them becomes a float
const BIASED: f64 = 4_503_599_627_370_496.0 + 1_023.0; // 2^52 and the bias of an exponent
const LN2_HIGH: f64 = 0.693_147_180_369_123_8; // ln 2 to 33 bits, so that k * LN2_HIGH is exact
const LN2_LOW: f64 = 1.908_214_929_270_587_7e-10; // ln 2 - LN2_HIGH

/// The natural logarithm of a positive normal number, to within one unit in the last place; for anything else the result has no
/// meaning.
///
/// x = 2^k (1 + f) with 1 + f from sqrt(1/2) to sqrt(2), and with s = f / (2 + f) the series
/// ln(1 + f) = 2 (s + s^3/3 + s^5/5 + ...) to s^21, whose remainder is below 1e-18. 2 s is taken as f - s f, which keeps
/// the rounding of s small.
///
/// ```
/// assert_eq!(coldloop::inner::numerics::ln(1.0), 0.0);
/// assert!((coldloop::inner::numerics::ln(10.0) - core::f64::consts::LN_10).abs() < 1e-15);
/// ```
#[inline]
pub fn ln(x: f64) -> f64 {
    let bits = x.to_bits();
    let place = bits.wrapping_sub(SQRT_HALF).wrapping_add(ONE);
    let k = f64::from_bits((place >> 52) | TWO_TO_52) - BIASED;
    let f = f64::from_bits(bits.wrapping_sub((place & EXPONENT).wrapping_sub(ONE))) - 1.0;
    let s = f / (2.0 + f);
    let z = s * s;
    let z2 = z * z;
    let z4 = z2 * z2;
    let low = (2.0 / 3.0 + z * (2.0 / 5.0)) + z2 * (2.0 / 7.0 + z * (2.0 / 9.0));
    let middle = (2.0 / 11.0 + z * (2.0 / 13.0)) + z2 * (2.0 / 15.0 + z * (2.0 / 17.0));
    let high = 2.0 / 19.0 + z * (2.0 / 21.0);
    let tail = z * (low + z4 * (middle + z4 * high));
    k * LN2_HIGH + (f - (s * (f - tail) - k * LN2_LOW))
}

/// [`ln`] of each value, in place.
#[inline]
pub fn ln_all(values: &mut [f64]) {
    let (fours, rest) = values.as_chunks_mut::<4>();
    for four in fours {
        *four = four.map(ln);
    }
    for value in rest {
        *value = ln(*value);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_agrees_with_an_independent_logarithm() {
        // libm's log is within one unit in the last place; so is ours, hence two units between them.
        let close = |x: f64| {
            let (ours, other) = (ln(x), libm::log(x));
            assert!(
                (ours - other).abs() <= 2.0 * f64::EPSILON * other.abs(),
                "ln({x}) = {ours}, not {other}"
            );
        };
        let mut x = f64::MIN_POSITIVE;
        while x < 1e308 {
            close(x);
            x *= 1.000_9;
        }
        for k in 1..=100_000 {
            close(0.5 + f64::from(k) * 2e-5);
            close(1.0 + f64::from(k) * 1e-12);
            close(1.0 - f64::from(k) * 1e-12);
        }
    }
}
