//! Curves of blends: cells of equal width, polynomials with the high coefficients in single precision.

const CELLS: usize = 64;
const HEAD: usize = 7;
const TAIL: usize = 7;

/// Coefficients of one short piece.
pub const SHORT_PIECE: usize = HEAD + TAIL;

/// One piece of an [`EvenCurve`]: a polynomial in x - middle.
///
/// What the higher coefficients add is a millionth of the value and less: half the digits are enough for them.
#[derive(Clone, Copy, Debug)]
pub struct ShortPiece {
    /// The middle of the piece.
    pub middle: f64,
    /// The coefficients of the powers 0, 1, 2, ...
    pub head: [f64; HEAD],
    /// The coefficients of the powers after those.
    pub tail: [f32; TAIL],
}

/// A curve over a closed interval that varies on no small scale anywhere: pieces over cells of equal width only.
#[derive(Clone, Copy, Debug)]
pub struct EvenCurve {
    /// The argument at which the cells start.
    pub start: f64,
    /// Cells per unit of the argument.
    pub density: f64,
    /// The piece of each cell.
    pub cells: [u8; CELLS],
    /// The pieces.
    pub pieces: &'static [ShortPiece],
}

impl EvenCurve {
    /// Cells of equal width.
    pub const CELLS: usize = CELLS;

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
    fn piece(&self, x: f64) -> &ShortPiece {
        // A float becomes an integer by saturation: NaN and all before the start land in the first cell.
        let cell = ((x - self.start) * self.density) as usize;
        let index = self.cells[if cell < CELLS { cell } else { CELLS - 1 }];
        &self.pieces[index as usize]
    }
}

impl ShortPiece {
    /// The polynomial at `y`, by Estrin's scheme, in one fixed order.
    #[inline]
    pub fn at(&self, y: f64) -> f64 {
        let c = &self.head;
        let t = self.tail.map(f64::from);
        let y2 = y * y;
        let y4 = y2 * y2;
        let y8 = y4 * y4;
        let first = (c[0] + c[1] * y) + (c[2] + c[3] * y) * y2;
        let second = (c[4] + c[5] * y) + (c[6] + t[0] * y) * y2;
        let third = (t[1] + t[2] * y) + (t[3] + t[4] * y) * y2;
        let fourth = t[5] + t[6] * y;
        (first + second * y4) + (third + fourth * y4) * y8
    }

    /// The polynomial and its derivative at `y`.
    #[inline]
    pub fn with_slope(&self, y: f64) -> (f64, f64) {
        let mut slope = 0.0;
        for k in (1..SHORT_PIECE).rev() {
            let coefficient = if k < HEAD {
                self.head[k]
            } else {
                f64::from(self.tail[k - HEAD])
            };
            slope = slope * y + coefficient * k as f64;
        }
        (self.at(y), slope)
    }
}
