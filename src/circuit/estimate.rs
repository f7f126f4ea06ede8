//! Values with uncertainty, carried through formulas to first order.

use crate::numerics::sqrt;
use crate::units::{InSi, Measurable};

/// A value that follows from readings, with its standard uncertainty; a plain number has it in the same unit.
///
/// The uncertainty is the root of the sum of squares of what each instrument, the air's pressure and the property model
/// contribute through the derivative of the value. Source: JCGM 100:2008, equation 10.
///
/// The true value lies within twice the standard uncertainty in about 95 of 100 cases.
///
/// ```
/// use coldloop::Refrigerant;
/// use coldloop::circuit::{Gauge, Reading, superheat};
/// use coldloop::units::{GaugePressure, Surroundings, celsius, kelvins_difference};
/// let low_side = Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE);
/// let line = Reading::within(celsius(12.0), kelvins_difference(1.0));
/// let superheat = superheat(Refrigerant::R134a, line, low_side, Surroundings::SEA_LEVEL)?;
/// let within = |(low_k, high_k), t| (kelvins_difference(low_k)..kelvins_difference(high_k)).contains(t);
/// assert!(within((7.0, 8.5), &superheat.value) && within((0.5, 2.0), &superheat.standard_uncertainty));
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Estimate<Q: Measurable = f64> {
    /// The value.
    pub value: Q,
    /// Standard uncertainty (one sigma).
    pub standard_uncertainty: Q::Difference,
}

impl<Q: InSi> Estimate<Q> {
    /// Value and standard uncertainty as plain numbers in the SI unit.
    ///
    /// ```
    /// use coldloop::circuit::Estimate;
    /// use coldloop::units::{celsius, kelvins_difference};
    /// let dew = Estimate { value: celsius(4.4), standard_uncertainty: kelvins_difference(0.6) };
    /// assert_eq!(dew.si().standard_uncertainty, 0.6);
    /// ```
    pub fn si(self) -> Estimate {
        Estimate {
            value: self.value.si(),
            standard_uncertainty: self.standard_uncertainty.si(),
        }
    }

    /// The same from plain numbers in the SI unit.
    pub(crate) fn from_si(plain: Estimate) -> Self {
        Self {
            value: Q::from_si(plain.value),
            standard_uncertainty: Q::Difference::from_si(plain.standard_uncertainty),
        }
    }
}

/// What a value depends on; the inputs are independent of each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Input {
    LowSide,
    HighSide,
    Air,
    SuctionLine,
    DischargeLine,
    LiquidLine,
    Vent,
    Ambient,
    SaturationModel,
    EnthalpyModel,
}

const INPUTS: usize = 10;

impl Input {
    const fn place(self) -> usize {
        match self {
            Input::LowSide => 0,
            Input::HighSide => 1,
            Input::Air => 2,
            Input::SuctionLine => 3,
            Input::DischargeLine => 4,
            Input::LiquidLine => 5,
            Input::Vent => 6,
            Input::Ambient => 7,
            Input::SaturationModel => 8,
            Input::EnthalpyModel => 9,
        }
    }
}

/// A value and its contributions to the uncertainty: by how much one standard uncertainty of each input moves it, with sign.
///
/// Inputs that two values share (the air, the property model) cancel or add when the values are combined.
#[derive(Clone, Copy, Debug)]
pub(super) struct Known {
    pub(super) value: f64,
    moves: [f64; INPUTS],
}

impl Known {
    /// A value that depends on one input alone, with this standard uncertainty.
    pub(super) fn measured(value: f64, input: Input, standard_uncertainty: f64) -> Self {
        Self::of(value, &[]).and(input, standard_uncertainty)
    }

    /// A value with its derivatives by other values.
    pub(super) fn of(value: f64, derivatives: &[(f64, Known)]) -> Self {
        let mut moves = [0.0; INPUTS];
        for (derivative, by) in derivatives {
            for (sum, moved) in moves.iter_mut().zip(by.moves) {
                *sum += derivative * moved;
            }
        }
        Self { value, moves }
    }

    /// The same value, moved also by one more input.
    pub(super) fn and(mut self, input: Input, move_by: f64) -> Self {
        if let Some(moved) = self.moves.get_mut(input.place()) {
            *moved += move_by;
        }
        self
    }

    pub(super) fn minus(self, other: Self) -> Self {
        Self::of(self.value - other.value, &[(1.0, self), (-1.0, other)])
    }

    pub(super) fn over(self, other: Self) -> Self {
        let ratio = self.value / other.value;
        Self::of(ratio, &[(1.0 / other.value, self), (-ratio / other.value, other)])
    }

    pub(super) fn estimate<Q: InSi>(self) -> Estimate<Q> {
        let squares: f64 = self.moves.iter().map(|moved| moved * moved).sum();
        Estimate::from_si(Estimate {
            value: self.value,
            standard_uncertainty: sqrt(squares),
        })
    }
}
