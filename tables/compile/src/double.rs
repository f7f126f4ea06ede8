//! Numbers of twice the precision of `f64`, 106 bits, for the equilibria that the saturation curves are fitted to.
//!
//! The sum of two `f64` without overlap; error-free sums and products after Dekker (Numerische Mathematik 18 (1971)
//! 224-242, doi 10.1007/BF01397083) and Knuth. The maintained crate for this, twofloat 0.8, was measured first: its
//! exp and ln are good to 1e-12 to 1e-19 only, where 1e-30 is needed.

use coldloop::inner::numerics::Real;
use std::ops::{Add, Div, Mul, Neg, Sub};

/// high + low, with |low| at most half a unit in the last place of high.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub(crate) struct Double {
    high: f64,
    low: f64,
}

/// ln 2 to 32 digits.
const LN2: Double = Double {
    high: std::f64::consts::LN_2,
    low: 2.319_046_813_846_299_6e-17,
};
/// e^x is taken as (e^(x / 2^HALVINGS))^(2^HALVINGS).
const HALVINGS: u32 = 8;

fn sum(a: f64, b: f64) -> Double {
    let high = a + b;
    let part = high - a;
    Double {
        high,
        low: (a - (high - part)) + (b - part),
    }
}

/// The sum of two numbers of which the first is the larger.
fn quick_sum(a: f64, b: f64) -> Double {
    let high = a + b;
    Double {
        high,
        low: b - (high - a),
    }
}

fn split(a: f64) -> (f64, f64) {
    let scaled = 134_217_729.0 * a; // 2^27 + 1
    let high = scaled - (scaled - a);
    (high, a - high)
}

fn product(a: f64, b: f64) -> Double {
    let high = a * b;
    let ((a1, a2), (b1, b2)) = (split(a), split(b));
    Double {
        high,
        low: ((a1 * b1 - high) + a1 * b2 + a2 * b1) + a2 * b2,
    }
}

impl Add for Double {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        let high = sum(self.high, other.high);
        let low = sum(self.low, other.low);
        let first = quick_sum(high.high, high.low + low.high);
        quick_sum(first.high, first.low + low.low)
    }
}

impl Neg for Double {
    type Output = Self;
    fn neg(self) -> Self {
        Self {
            high: -self.high,
            low: -self.low,
        }
    }
}

impl Sub for Double {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self + -other
    }
}

impl Mul for Double {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        let main = product(self.high, other.high);
        quick_sum(main.high, main.low + (self.high * other.low + self.low * other.high))
    }
}

impl Div for Double {
    type Output = Self;
    fn div(self, other: Self) -> Self {
        let first = self.high / other.high;
        let rest = self - other * Self::from_f64(first);
        let second = rest.high / other.high;
        let rest = rest - other * Self::from_f64(second);
        quick_sum(first, second) + Self::from_f64(rest.high / other.high)
    }
}

impl Double {
    fn scaled(self, factor: f64) -> Self {
        Self {
            high: self.high * factor,
            low: self.low * factor,
        }
    }
}

impl Real for Double {
    fn from_f64(value: f64) -> Self {
        Self { high: value, low: 0.0 }
    }

    fn to_f64(self) -> f64 {
        self.high + self.low
    }

    fn exponential(self) -> Self {
        if self.high < -690.0 {
            return Self::from_f64(0.0);
        }
        let k = (self.high / LN2.high).round();
        let r = (self - LN2 * Self::from_f64(k)).scaled(1.0 / f64::from(1u32 << HALVINGS));
        // e^r - 1 by its series, |r| < 0.0014: the thirteenth term is below 1e-47.
        let mut term = r;
        let mut less_one = r;
        for n in 2..12 {
            term = term * r / Self::from_f64(f64::from(n));
            less_one = less_one + term;
        }
        // (1 + x)^2 - 1 = 2 x + x^2 keeps the digits that squaring 1 + x would lose.
        for _ in 0..HALVINGS {
            less_one = less_one.scaled(2.0) + less_one * less_one;
        }
        (less_one + Self::from_f64(1.0)).scaled(2f64.powi(k as i32))
    }

    fn logarithm(self) -> Self {
        // Newton's method for e^y = x; from 16 digits one step gives 32, the second removes its rounding.
        let mut y = Self::from_f64(self.high.ln());
        for _ in 0..2 {
            y = y + self * (-y).exponential() - Self::from_f64(1.0);
        }
        y
    }

    fn square_root(self) -> Self {
        if self.high <= 0.0 {
            return Self::from_f64(0.0);
        }
        let mut y = Self::from_f64(self.high.sqrt());
        for _ in 0..2 {
            y = (y + self / y).scaled(0.5);
        }
        y
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn number(high: f64, low: f64) -> Double {
        Double { high, low }
    }

    fn error(found: Double, right: Double) -> f64 {
        ((found - right) / right).to_f64().abs()
    }

    #[test]
    fn functions_agree_with_known_digits() {
        // ln 10, e, sqrt 2 and pi^e to 32 digits: Abramowitz and Stegun, tables 1.1 and 1.2, or mpmath 1.3
        let ten = number(10.0, 0.0);
        assert!(
            error(
                ten.logarithm(),
                number(std::f64::consts::LN_10, -2.170_756_223_382_249_4e-16)
            ) < 1e-31
        );
        let e = number(std::f64::consts::E, 1.445_646_891_729_250_2e-16);
        assert!(error(number(1.0, 0.0).exponential(), e) < 1e-31);
        let root = number(std::f64::consts::SQRT_2, -9.667_293_313_452_913e-17);
        assert!(error(number(2.0, 0.0).square_root(), root) < 1e-31);
    }

    #[test]
    fn exponential_and_logarithm_undo_each_other() {
        let mut x = -60.0;
        while x < 60.0 {
            let x_double = number(x, x * 3e-17);
            assert!(
                (x_double.exponential().logarithm() - x_double).to_f64().abs() < 1e-29,
                "{x}"
            );
            x += 0.37;
        }
    }

    #[test]
    fn quotients_and_products_undo_each_other() {
        let a = number(std::f64::consts::PI, 1.224_646_799_147_353_2e-16);
        for b in [3.0, 1e-7, 12_345.678] {
            assert!(error(a / number(b, 0.0) * number(b, 0.0), a) < 1e-31);
        }
    }
}
