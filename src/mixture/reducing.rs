//! The reducing functions of a mixture: the temperature and volume with which tau and delta are formed.
//!
//! Source: Kunz and Wagner, J. Chem. Eng. Data 57 (2012) 3032, doi 10.1021/je300655b, equations 16 and 17.

use super::MOST_COMPONENTS;
use crate::numerics::Real;

/// Y(x) = sum x_i^2 Y_i + sum_{i<j} Y_ij x_i x_j (x_i + x_j) / (beta_ij^2 x_i + x_j).
#[derive(Clone, Copy, Debug)]
pub(super) struct Reducing<R> {
    /// Y_i.
    pub(super) own: [R; MOST_COMPONENTS],
    /// Y_ij, for i < j.
    pub(super) cross: [[R; MOST_COMPONENTS]; MOST_COMPONENTS],
    /// beta_ij^2, for i < j.
    pub(super) skew: [[R; MOST_COMPONENTS]; MOST_COMPONENTS],
}

/// Y at one composition, with D_i = rho d/drho_i, which is free of the constraint that the fractions sum to one.
#[derive(Clone, Copy, Debug)]
pub(super) struct Reduced<R> {
    /// Y.
    pub(super) value: R,
    /// D_i ln Y.
    pub(super) first: [R; MOST_COMPONENTS],
    /// D_j D_i ln Y + D_j ln Y, which is symmetric.
    pub(super) second: [[R; MOST_COMPONENTS]; MOST_COMPONENTS],
}

impl<R: Real> Reducing<R> {
    /// Y and its derivatives at the mole fractions `x`, all above zero.
    pub(super) fn at(&self, x: &[R]) -> Reduced<R> {
        let (zero, one, two) = (R::from_f64(0.0), R::from_f64(1.0), R::from_f64(2.0));
        let mut value = zero;
        let mut slope = [zero; MOST_COMPONENTS];
        let mut bend = [[zero; MOST_COMPONENTS]; MOST_COMPONENTS];
        for i in 0..x.len() {
            let own = self.own[i];
            value = value + x[i] * x[i] * own;
            slope[i] = slope[i] + two * x[i] * own;
            bend[i][i] = bend[i][i] + two * own;
            for j in i + 1..x.len() {
                let (a, b, y, skew) = (x[i], x[j], self.cross[i][j], self.skew[i][j]);
                let bottom = skew * a + b;
                // g = (a + b) / (beta^2 a + b); its derivatives share the factor 1 - beta^2.
                let lean = (one - skew) / (bottom * bottom);
                let leaning = lean / bottom;
                let g = (a + b) / bottom;
                let (g_a, g_b) = (b * lean, -(a * lean));
                let ab = a * b;
                value = value + y * ab * g;
                slope[i] = slope[i] + y * (b * g + ab * g_a);
                slope[j] = slope[j] + y * (a * g + ab * g_b);
                bend[i][i] = bend[i][i] + y * two * (b * g_a - ab * skew * b * leaning);
                bend[j][j] = bend[j][j] + y * two * (a * g_b + ab * a * leaning);
                let mixed = y * (g + a * g_a + b * g_b + ab * (skew * a - b) * leaning);
                bend[i][j] = mixed;
                bend[j][i] = mixed;
            }
        }
        // Y is homogeneous of the second degree in the amounts, hence the twos.
        let mut first = [zero; MOST_COMPONENTS];
        for i in 0..x.len() {
            first[i] = slope[i] / value - two;
        }
        let mut second = bend;
        for i in 0..x.len() {
            for j in 0..x.len() {
                second[i][j] = (bend[i][j] - slope[i] - slope[j]) / value + two - first[i] * first[j];
            }
        }
        Reduced { value, first, second }
    }
}
