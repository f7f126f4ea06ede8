//! The sums that are kept for the cases of a group.

/// Bins of the reliability table.
pub(super) const BINS: usize = 10;

/// A part and its whole: the cases in which something is true and all cases, or a sum and the number of its terms.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Ratio {
    pub(super) part: f64,
    pub(super) whole: f64,
}

impl Ratio {
    pub(super) fn count(&mut self, holds: bool) {
        self.mean(f64::from(u8::from(holds)));
    }

    pub(super) fn mean(&mut self, value: f64) {
        self.part += value;
        self.whole += 1.0;
    }

    fn add(&mut self, other: &Self) {
        self.part += other.part;
        self.whole += other.whole;
    }

    /// The quotient; `None` where the whole is zero.
    pub(super) fn value(&self) -> Option<f64> {
        (self.whole > 0.0).then(|| self.part / self.whole)
    }
}

/// The cases whose leader has a probability between two limits.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Bin {
    pub(super) cases: f64,
    /// Sum of the probabilities of the leaders.
    pub(super) probability: f64,
    pub(super) right: f64,
}

/// The sums of some cases.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Sums {
    pub(super) first_right: Ratio,
    pub(super) in_first_three: Ratio,
    pub(super) sound_led: Ratio,
    pub(super) sound_named: Ratio,
    pub(super) named_right: Ratio,
    pub(super) named_wrong: Ratio,
    pub(super) missed: Ratio,
    pub(super) not_told: Ratio,
    pub(super) list_holds: Ratio,
    pub(super) sure_right: Ratio,
    pub(super) log_loss: Ratio,
    pub(super) bins: [Bin; BINS],
}

/// Number of figures that follow from the sums.
pub(super) const FIGURES: usize = 12;

impl Sums {
    pub(super) fn add(&mut self, other: &Self) {
        for (ratio, other) in self.ratios_mut().into_iter().zip(other.ratios()) {
            ratio.add(&other);
        }
        for (bin, other) in self.bins.iter_mut().zip(&other.bins) {
            bin.cases += other.cases;
            bin.probability += other.probability;
            bin.right += other.right;
        }
    }

    /// All quotients, in the order of the figures.
    pub(super) fn ratios(&self) -> [Ratio; FIGURES - 1] {
        [
            self.first_right,
            self.in_first_three,
            self.sound_led,
            self.sound_named,
            self.named_right,
            self.named_wrong,
            self.missed,
            self.not_told,
            self.list_holds,
            self.sure_right,
            self.log_loss,
        ]
    }

    fn ratios_mut(&mut self) -> [&mut Ratio; FIGURES - 1] {
        [
            &mut self.first_right,
            &mut self.in_first_three,
            &mut self.sound_led,
            &mut self.sound_named,
            &mut self.named_right,
            &mut self.named_wrong,
            &mut self.missed,
            &mut self.not_told,
            &mut self.list_holds,
            &mut self.sure_right,
            &mut self.log_loss,
        ]
    }

    /// Expected calibration error: the mean distance between the probability of the leader and the share of leaders that are
    /// right, over the bins, weighted by their cases.
    ///
    /// Source: Naeini, Cooper & Hauskrecht 2015 (AAAI, Obtaining well calibrated probabilities using Bayesian binning).
    pub(super) fn calibration_error(&self) -> Ratio {
        let distance = |bin: &Bin| libm::fabs(bin.probability - bin.right);
        Ratio {
            part: self.bins.iter().map(distance).sum(),
            whole: self.first_right.whole,
        }
    }

    /// All figures: the quotients, and last the calibration error.
    pub(super) fn figures(&self) -> [Ratio; FIGURES] {
        let mut figures = [self.calibration_error(); FIGURES];
        for (figure, ratio) in figures.iter_mut().zip(self.ratios()) {
            *figure = ratio;
        }
        figures
    }
}
