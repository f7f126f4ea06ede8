//! Small linear systems.

use super::Real;

/// The solution of `matrix x = right` by Gaussian elimination with row pivots, in place of `right`; false where the matrix
/// is singular: where no pivot is larger than `least`. Only the first `count` rows and columns are used.
#[inline(never)] // one copy of it for each size of system
pub(crate) fn solve<R: Real, const N: usize>(
    matrix: &mut [[R; N]; N],
    right: &mut [R; N],
    count: usize,
    least: f64,
) -> bool {
    let (zero, least) = (R::from_f64(0.0), R::from_f64(least));
    let size = |value: R| if value < zero { -value } else { value };
    for column in 0..count {
        let mut pivot = column;
        for row in column + 1..count {
            if size(matrix[row][column]) > size(matrix[pivot][column]) {
                pivot = row;
            }
        }
        let size = size(matrix[pivot][column]);
        if size <= least || size.partial_cmp(&least).is_none() {
            return false; // too small, or NaN
        }
        matrix.swap(column, pivot);
        right.swap(column, pivot);
        let top = matrix[column];
        for row in column + 1..count {
            let factor = matrix[row][column] / top[column];
            for k in column + 1..count {
                matrix[row][k] = matrix[row][k] - factor * top[k];
            }
            right[row] = right[row] - factor * right[column];
        }
    }
    for row in (0..count).rev() {
        let mut sum = right[row];
        for k in row + 1..count {
            sum = sum - matrix[row][k] * right[k];
        }
        right[row] = sum / matrix[row][row];
    }
    true
}
