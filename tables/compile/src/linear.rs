//! Small symmetric systems.

/// A symmetric matrix, its lower triangle filled.
pub(crate) type Matrix<const N: usize> = [[f64; N]; N];

/// The lower triangle whose product with its transpose is a matrix (Cholesky).
pub(crate) struct Factor<const N: usize>(pub(crate) Matrix<N>);

impl<const N: usize> Factor<N> {
    /// The factor of a positive definite matrix; pivots that are too small are raised to a least value.
    pub(crate) fn of(matrix: &Matrix<N>) -> Self {
        let mut l = [[0.0; N]; N];
        for i in 0..N {
            for j in 0..=i {
                let sum = matrix[i][j] - (0..j).map(|k| l[i][k] * l[j][k]).sum::<f64>();
                l[i][j] = if i == j {
                    sum.max(1e-10 * matrix[i][i]).max(1e-300).sqrt()
                } else {
                    sum / l[j][j]
                };
            }
        }
        Self(l)
    }

    /// L z = b.
    pub(crate) fn solve(&self, mut b: [f64; N]) -> [f64; N] {
        for i in 0..N {
            for k in 0..i {
                b[i] -= self.0[i][k] * b[k];
            }
            b[i] /= self.0[i][i];
        }
        b
    }

    /// L L' x = b.
    pub(crate) fn solve_both(&self, b: [f64; N]) -> [f64; N] {
        let mut x = self.solve(b);
        for i in (0..N).rev() {
            for k in i + 1..N {
                x[i] -= self.0[k][i] * x[k];
            }
            x[i] /= self.0[i][i];
        }
        x
    }
}
