//! Curves over even cells, fitted piece by piece, each piece checked.

use crate::blend_line::node;
use crate::double::Double;
use coldloop::inner::numerics::{EvenCurve, Real, SHORT_PIECE, ShortPiece};

/// What a piece may differ where one cell alone does not meet the tolerance.
const LIMIT: f64 = 4e-13;

/// A curve with the greatest error that its check found.
pub(crate) struct Fitted {
    pub(crate) start: f64,
    pub(crate) density: f64,
    pub(crate) cells: Vec<u8>,
    pub(crate) pieces: Vec<ShortPiece>,
    pub(crate) error: f64,
}

impl Fitted {
    pub(crate) fn curve(&self) -> Result<EvenCurve, String> {
        Ok(EvenCurve {
            start: self.start,
            density: self.density,
            cells: self
                .cells
                .clone()
                .try_into()
                .map_err(|_| "the number of cells".to_string())?,
            pieces: Vec::leak(self.pieces.clone()),
        })
    }
}

/// Joins cells into the longest pieces that stay within the tolerance.
pub(crate) fn fit_curve(
    low: f64,
    high: f64,
    tolerance: f64,
    value: impl Fn(Double) -> Double,
) -> Result<Fitted, String> {
    let count = EvenCurve::CELLS;
    let width = (high - low) / count as f64;
    let mut fitted = Fitted {
        start: low,
        density: 1.0 / width,
        cells: vec![0; count],
        pieces: Vec::new(),
        error: 0.0,
    };
    let edge = |cell: usize| if cell == count { high } else { low + width * cell as f64 };
    let mut first = 0;
    while first < count {
        let fit = |end: usize| fit_piece(edge(first), edge(end), &value);
        // The longest piece, by bisection: errors grow with length.
        let (mut good, mut bad) = (first + 1, count + 1);
        let (mut piece, mut error) = fit(good);
        while bad - good > 1 {
            let middle = good + (bad - good) / 2;
            let (longer, longer_error) = fit(middle);
            if longer_error <= tolerance {
                (piece, error, good) = (longer, longer_error, middle);
            } else {
                bad = middle;
            }
        }
        if error > LIMIT {
            return Err(format!(
                "the piece from {} to {} is off by {error:.1e}",
                edge(first),
                edge(good)
            ));
        }
        let index = u8::try_from(fitted.pieces.len()).map_err(|e| e.to_string())?;
        fitted.cells[first..good].fill(index);
        fitted.error = fitted.error.max(error);
        fitted.pieces.push(piece);
        first = good;
    }
    Ok(fitted)
}

/// The polynomial through the Chebyshev nodes of an interval, and its greatest relative error at points between them.
fn fit_piece(start: f64, end: f64, value: &impl Fn(Double) -> Double) -> (ShortPiece, f64) {
    let number = Double::from_f64;
    let middle = 0.5 * (start + end);
    let scale = 2.0 / (end - start);
    let at = |y: f64| number(middle) + number(y) / number(scale);
    let nodes: Vec<f64> = (0..SHORT_PIECE).map(|k| node(k, SHORT_PIECE)).collect();
    let mut differences: Vec<Double> = nodes.iter().map(|&y| value(at(y))).collect();
    for order in 1..SHORT_PIECE {
        for k in (order..SHORT_PIECE).rev() {
            differences[k] = (differences[k] - differences[k - 1]) / (number(nodes[k]) - number(nodes[k - order]));
        }
    }
    let mut powers = [number(0.0); SHORT_PIECE];
    for k in (0..SHORT_PIECE).rev() {
        for power in (1..SHORT_PIECE).rev() {
            powers[power] = powers[power - 1] - powers[power] * number(nodes[k]);
        }
        powers[0] = differences[k] - powers[0] * number(nodes[k]);
    }
    // From a polynomial in y to one in x - middle.
    let mut factor = number(1.0);
    for power in &mut powers {
        *power = *power * factor;
        factor = factor * number(scale);
    }
    let all = powers.map(Real::to_f64);
    let head = std::array::from_fn(|k| all[k]);
    let from = SHORT_PIECE - 7;
    let tail: [f32; 7] = std::array::from_fn(|k| all[from + k] as f32);
    // Checked as they will be, with the digits that they keep.
    let coefficients: [f64; SHORT_PIECE] =
        std::array::from_fn(|k| if k < from { all[k] } else { f64::from(tail[k - from]) });
    let mut error: f64 = 0.0;
    for k in 0..=24 {
        let off = number((std::f64::consts::PI * f64::from(k) / 24.0).cos()) / number(scale);
        let exact = value(number(middle) + off);
        let found = coefficients
            .iter()
            .rev()
            .fold(number(0.0), |sum, &c| sum * off + number(c));
        error = error.max(((found - exact) / exact).to_f64().abs());
    }
    (ShortPiece { middle, head, tail }, error)
}
