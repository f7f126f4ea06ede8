//! A number with its derivative, to reach the third derivatives that the critical point needs.

use coldloop::inner::numerics::Real;
use std::cmp::Ordering;
use std::ops::{Add, Div, Mul, Neg, Sub};

/// A value and its derivative by one variable.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Dual<R> {
    pub(crate) value: R,
    pub(crate) slope: R,
}

impl<R: Real> Dual<R> {
    /// The variable itself.
    pub(crate) fn variable(value: R) -> Self {
        Self {
            value,
            slope: R::from_f64(1.0),
        }
    }

    /// A number that does not depend on the variable.
    pub(crate) fn constant(value: R) -> Self {
        Self {
            value,
            slope: R::from_f64(0.0),
        }
    }
}

impl<R: Real> PartialOrd for Dual<R> {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        self.value.partial_cmp(&other.value)
    }
}

impl<R: Real> Add for Dual<R> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            value: self.value + other.value,
            slope: self.slope + other.slope,
        }
    }
}

impl<R: Real> Sub for Dual<R> {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self + -other
    }
}

impl<R: Real> Neg for Dual<R> {
    type Output = Self;
    fn neg(self) -> Self {
        Self {
            value: -self.value,
            slope: -self.slope,
        }
    }
}

impl<R: Real> Mul for Dual<R> {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        Self {
            value: self.value * other.value,
            slope: self.slope * other.value + self.value * other.slope,
        }
    }
}

impl<R: Real> Div for Dual<R> {
    type Output = Self;
    fn div(self, other: Self) -> Self {
        let value = self.value / other.value;
        Self {
            value,
            slope: (self.slope - value * other.slope) / other.value,
        }
    }
}

impl<R: Real> Real for Dual<R> {
    fn from_f64(value: f64) -> Self {
        Self::constant(R::from_f64(value))
    }

    fn to_f64(self) -> f64 {
        self.value.to_f64()
    }

    fn exponential(self) -> Self {
        let value = self.value.exponential();
        Self {
            value,
            slope: value * self.slope,
        }
    }

    fn logarithm(self) -> Self {
        Self {
            value: self.value.logarithm(),
            slope: self.slope / self.value,
        }
    }

    fn square_root(self) -> Self {
        let value = self.value.square_root();
        Self {
            value,
            slope: self.slope / (value + value),
        }
    }
}
