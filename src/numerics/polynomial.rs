//! Curves as piecewise polynomials; the look-up has one branch.

/// Coefficients of one piece.
pub const PIECE: usize = 16;
const CELLS: usize = 128;
const HALVES: usize = 17;

/// One piece of a curve: a polynomial in x - middle.
#[derive(Clone, Copy, Debug)]
pub struct Piece {
    /// The middle of the piece.
    pub middle: f64,
    /// The coefficients of the powers 0, 1, 2, ...
    pub coefficients: [f64; PIECE],
}

/// A curve over a closed interval, made of pieces.
///
/// The interval is divided into cells of equal width from `start` on, and the first cell again by halves towards `start`,
/// because near the critical point, where a curve starts, it varies on ever smaller scales.
#[derive(Clone, Copy, Debug)]
pub struct Curve {
    /// The argument at which the cells start.
    pub start: f64,
    /// Cells per unit of the argument; negative where the argument falls from `start`.
    pub density: f64,
    /// The piece of each half of the first cell: the outer half, the outer half of the rest, and so on.
    pub halves: [u8; HALVES],
    /// The piece of each cell, of the first that of its outer half.
    pub cells: [u8; CELLS],
    /// The pieces.
    pub pieces: &'static [Piece],
}

impl Curve {
    /// Cells of equal width.
    pub const CELLS: usize = CELLS;
    /// Halvings of the first cell.
    pub const HALVES: usize = HALVES;

    /// The value at `x`; beyond the ends the outermost piece is continued.
    #[inline]
    pub fn at(&self, x: f64) -> f64 {
        let piece = self.piece(x);
        piece.at(x - piece.middle)
    }

    /// The value and the first derivative at `x`.
    #[inline]
    pub fn with_slope(&self, x: f64) -> (f64, f64) {
        let piece = self.piece(x);
        piece.with_slope(x - piece.middle)
    }

    #[inline]
    fn piece(&self, x: f64) -> &Piece {
        /// Adding it leaves the nearest whole number in the low bits.
        const WHOLE: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52
        const LAST: f64 = CELLS as f64 - 0.5;
        let place = (x - self.start) * self.density;
        let index = if place >= 1.0 {
            let inside = if place < LAST { place } else { LAST };
            self.cells[((inside - 0.5) + WHOLE).to_bits() as usize % CELLS]
        } else {
            // The exponent counts the halvings: 1022 for the outer half.
            let halvings = 1022u64.saturating_sub((place.to_bits() >> 52) & 0x7ff) as usize;
            self.halves[if halvings < HALVES { halvings } else { HALVES - 1 }]
        };
        &self.pieces[index as usize]
    }
}

impl Piece {
    /// The polynomial at `y`.
    #[inline]
    pub fn at(&self, y: f64) -> f64 {
        sum(&self.coefficients, y)
    }

    /// The polynomial and its derivative at `y`.
    #[inline]
    pub fn with_slope(&self, y: f64) -> (f64, f64) {
        let mut slopes = [0.0; PIECE];
        for (k, slope) in slopes.iter_mut().take(PIECE - 1).enumerate() {
            *slope = self.coefficients[k + 1] * (k + 1) as f64;
        }
        (self.at(y), sum(&slopes, y))
    }
}

/// A polynomial by Estrin's scheme: four levels deep instead of fifteen, in one fixed order.
#[inline]
fn sum(c: &[f64; PIECE], y: f64) -> f64 {
    let y2 = y * y;
    let y4 = y2 * y2;
    let y8 = y4 * y4;
    let first = (c[0] + c[1] * y) + (c[2] + c[3] * y) * y2;
    let second = (c[4] + c[5] * y) + (c[6] + c[7] * y) * y2;
    let third = (c[8] + c[9] * y) + (c[10] + c[11] * y) * y2;
    let fourth = (c[12] + c[13] * y) + (c[14] + c[15] * y) * y2;
    (first + second * y4) + (third + fourth * y4) * y8
}
