//! Small symmetric systems.

use nalgebra::{Cholesky, Const, SMatrix, SVector};

/// A symmetric matrix, its lower triangle filled.
pub(crate) type Matrix<const N: usize> = [[f64; N]; N];

/// The Cholesky factor of a positive definite matrix.
///
/// Errors: one that is not.
pub(crate) fn cholesky<const N: usize>(matrix: &Matrix<N>) -> Result<Cholesky<f64, Const<N>>, String> {
    // The factorisation reads the lower triangle only.
    SMatrix::<f64, N, N>::from_fn(|i, j| matrix[i][j])
        .cholesky()
        .ok_or_else(|| "a matrix is not positive definite".to_string())
}

/// x of A x = b for the factor of A.
pub(crate) fn solve<const N: usize>(factor: &Cholesky<f64, Const<N>>, right: [f64; N]) -> [f64; N] {
    let mut x = SVector::from(right);
    factor.solve_mut(&mut x);
    x.into()
}

/// z' A^-1 z over the first `count` rows of the factor of A.
pub(crate) fn distance<const N: usize>(factor: &Cholesky<f64, Const<N>>, z: [f64; N], count: usize) -> f64 {
    let mut z = SVector::from(z);
    factor.l_dirty().solve_lower_triangular_mut(&mut z);
    z.rows(0, count).norm_squared()
}
