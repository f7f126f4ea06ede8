//! The square root.

/// The square root of `x`; NaN below zero.
///
/// Every machine rounds it correctly (IEEE 754), so the bits are the same with the standard library and without; with it,
/// a loop over many of them becomes vector code.
#[inline(always)]
pub(crate) fn sqrt(x: f64) -> f64 {
    #[cfg(feature = "std")]
    let root = x.sqrt();
    #[cfg(not(feature = "std"))]
    let root = libm::sqrt(x);
    root
}

#[cfg(test)]
mod tests {
    use super::sqrt;

    #[test]
    fn it_is_that_of_libm_to_the_bit() {
        for k in 0..100_000 {
            let x = f64::from(k) * 1.234_567_89e-3;
            assert_eq!(sqrt(x).to_bits(), libm::sqrt(x).to_bits(), "{x}");
        }
        assert!(sqrt(-1.0).is_nan() && sqrt(f64::INFINITY).is_infinite());
    }
}
