//! Curves as polynomials by pieces, looked up without a branch.

/// Coefficients of one piece.
pub const PIECE: usize = 12;
const CELLS: usize = 256;
const HALVES: usize = 16;

/// One piece of a curve: a polynomial in (x - middle) * scale, which runs from -1 to 1 over the piece.
#[derive(Clone, Copy, Debug)]
pub struct Piece {
    /// The middle of the piece.
    pub middle: f64,
    /// One over half its width.
    pub scale: f64,
    /// The coefficients of the powers 0, 1, 2, ...
    pub coefficients: [f64; PIECE],
}

/// A curve over a closed interval, made of pieces.
///
/// The interval is divided into cells of equal width from `start` on, and the first cell again by halves towards
/// `start`, because near the critical point, where a curve starts, things happen on ever smaller scales.
#[derive(Clone, Copy, Debug)]
pub struct Curve {
    /// The argument at which the cells start.
    pub start: f64,
    /// Cells per unit of the argument; negative where the argument falls from `start`.
    pub density: f64,
    /// The piece of each half of the first cell: the outer half, the outer half of the rest, and so on.
    pub halves: [u8; HALVES],
    /// The piece of each cell.
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
        piece.at((x - piece.middle) * piece.scale)
    }

    /// The value and the first derivative at `x`.
    #[inline]
    pub fn with_slope(&self, x: f64) -> (f64, f64) {
        let piece = self.piece(x);
        let (value, slope) = piece.with_slope((x - piece.middle) * piece.scale);
        (value, slope * piece.scale)
    }

    #[inline]
    fn piece(&self, x: f64) -> &Piece {
        let place = (x - self.start) * self.density;
        // A float becomes an integer by saturation: NaN and all before the start land in the first cell.
        let cell = place as usize;
        let index = if cell == 0 {
            // The exponent counts the halvings: 1022 for the outer half.
            let halvings = 1022u64.saturating_sub((place.to_bits() >> 52) & 0x7ff) as usize;
            self.halves[if halvings < HALVES { halvings } else { HALVES - 1 }]
        } else {
            self.cells[if cell < CELLS { cell } else { CELLS - 1 }]
        };
        &self.pieces[index as usize]
    }
}

impl Piece {
    /// The polynomial at `y`, by Estrin's scheme: four levels deep instead of eleven, in one fixed order.
    #[inline]
    pub fn at(&self, y: f64) -> f64 {
        let c = &self.coefficients;
        let y2 = y * y;
        let y4 = y2 * y2;
        let y8 = y4 * y4;
        let a = (c[0] + c[1] * y) + (c[2] + c[3] * y) * y2;
        let b = (c[4] + c[5] * y) + (c[6] + c[7] * y) * y2;
        let d = (c[8] + c[9] * y) + (c[10] + c[11] * y) * y2;
        (a + b * y4) + d * y8
    }

    /// The polynomial and its derivative at `y`.
    #[inline]
    pub fn with_slope(&self, y: f64) -> (f64, f64) {
        let mut slope = 0.0;
        for k in (1..PIECE).rev() {
            slope = slope * y + self.coefficients[k] * k as f64;
        }
        (self.at(y), slope)
    }
}
