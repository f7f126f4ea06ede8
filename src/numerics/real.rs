//! The number that an equation of state is evaluated in.

use super::exponential::{exp, exp_all};
use super::logarithm::{ln, ln_all};
use core::ops::{Add, Div, Mul, Neg, Sub};

/// A real number of some precision: `f64` at run time, more digits where the saturation curves are made.
///
/// The functions have long names so that they cannot be taken for the inherent ones of `f64`, whose last bits
/// differ from machine to machine.
pub trait Real:
    Copy
    + PartialOrd
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Neg<Output = Self>
{
    /// The number equal to `value`.
    fn from_f64(value: f64) -> Self;

    /// The nearest `f64`.
    fn to_f64(self) -> f64;

    /// e to this power.
    fn exponential(self) -> Self;

    /// The natural logarithm.
    fn logarithm(self) -> Self;

    /// The square root.
    fn square_root(self) -> Self;

    /// e to the power of each value, in place.
    fn exponential_all(values: &mut [Self]) {
        for value in values {
            *value = value.exponential();
        }
    }

    /// The natural logarithm of each value, in place.
    fn logarithm_all(values: &mut [Self]) {
        for value in values {
            *value = value.logarithm();
        }
    }

    /// A whole power, by repeated squaring.
    fn whole_power(self, mut exponent: u32) -> Self {
        let mut result = Self::from_f64(1.0);
        let mut square = self;
        while exponent > 0 {
            if exponent & 1 == 1 {
                result = result * square;
            }
            square = square * square;
            exponent >>= 1;
        }
        result
    }
}

impl Real for f64 {
    #[inline]
    fn from_f64(value: f64) -> Self {
        value
    }

    #[inline]
    fn to_f64(self) -> f64 {
        self
    }

    #[inline]
    fn exponential(self) -> Self {
        exp(self)
    }

    #[inline]
    fn logarithm(self) -> Self {
        ln(self)
    }

    #[inline]
    fn square_root(self) -> Self {
        crate::numerics::sqrt(self)
    }

    #[inline]
    fn exponential_all(values: &mut [Self]) {
        exp_all(values);
    }

    #[inline]
    fn logarithm_all(values: &mut [Self]) {
        ln_all(values);
    }
}
