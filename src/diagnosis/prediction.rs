//! What a part of a cloud expects of figures that are still to be read, and of the severity.

use super::coordinates::FIGURES;
use super::student;
use crate::circuit::Estimate;
use crate::names::Fault;
use crate::numerics::sqrt;

/// What one part expects.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Prediction {
    pub(super) fault: Fault,
    /// Share in the likelihood of its fault.
    pub(super) share: f32,
    /// Mean and standard deviation of each figure; where it was read, without that.
    pub(super) mean: [f32; FIGURES],
    pub(super) spread: [f32; FIGURES],
    /// Mean of the severity, and its standard deviation.
    pub(super) severity: (f32, f32),
}

impl Prediction {
    pub(super) const BLANK: Self = Self {
        fault: Fault::NoFault,
        share: 0.0,
        mean: [0.0; FIGURES],
        spread: [0.0; FIGURES],
        severity: (0.0, 0.0),
    };

    /// Distance of a figure from what is expected, in spreads, and the spread.
    fn off(&self, figure: usize, x: f64, uncertainty: f64) -> (f64, f64) {
        let spread = f64::from(self.spread[figure]);
        let spread = sqrt(spread * spread + uncertainty * uncertainty);
        ((x - f64::from(self.mean[figure])) / spread, spread)
    }

    /// Density of a figure that was read.
    pub(super) fn density(&self, figure: usize, measured: Estimate, origin_k: f64) -> f64 {
        let (z, spread) = self.off(figure, measured.value - origin_k, measured.standard_uncertainty);
        student::density_of_one(z, spread)
    }

    /// Probability that a figure would read below `x`.
    pub(super) fn below(&self, figure: usize, x: f64, uncertainty: f64) -> f64 {
        let (z, _) = self.off(figure, x, uncertainty);
        student::below(z)
    }
}
