//! Numbers: the trait that the equations of state are written in, elementary functions, distributions, linear systems.

mod even;
mod exponential;
mod linear;
mod logarithm;
pub(crate) mod multivariate_t;
mod normal;
mod order;
mod polynomial;
pub(crate) mod random;
mod real;
mod root;

pub use even::{EvenCurve, SHORT_PIECE, ShortPiece};
pub use exponential::{exp, exp_all};
pub(crate) use linear::solve;
pub use logarithm::{ln, ln_all};
pub(crate) use normal::normal_quantile;
pub(crate) use order::put_in_order;
pub use polynomial::{Curve, PIECE, Piece};
pub use real::Real;
pub(crate) use root::sqrt;

/// The molar gas constant, J/(mol K): CODATA 2018, doi 10.1103/RevModPhys.93.025010; exact in the SI of 2019.
pub const GAS_J_MOL_K: f64 = 8.314_462_618_153_24;
