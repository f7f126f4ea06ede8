//! What was read, as the clouds see it.

use super::coordinates::FIGURES;
use super::list::List;
use crate::circuit::Estimate;

pub(super) const LOW: usize = 0;
pub(super) const HIGH: usize = 1;
#[cfg(test)]
pub(super) const VENT: usize = 2;
pub(super) const SUPERHEAT: usize = 3;
pub(super) const SUBCOOLING: usize = 4;
const DISCHARGE: usize = 5;

/// The figures that tell of the temperature of a line, and what is added to make it one: of which sign, and the saturation
/// temperature of which side.
///
/// As temperatures of lines they have no part in the error of a gauge, and are the same whatever a mix-up has made of the
/// pressures. The volume that they span is the same, so that densities are too.
pub(super) const LINES: [(usize, f64, usize); 3] =
    [(SUPERHEAT, 1.0, LOW), (SUBCOOLING, -1.0, HIGH), (DISCHARGE, 1.0, HIGH)];

/// What [`LINES`] says of a figure.
pub(super) fn line(figure: usize) -> Option<(usize, f64, usize)> {
    LINES.into_iter().find(|(line, ..)| *line == figure)
}

/// The first of the figures beside the two sides.
pub(super) const BESIDE_SIDES: usize = HIGH + 1;

/// A figure of which the value and the variance of what the instruments add are so much larger than in another set.
#[derive(Clone, Copy)]
pub(super) struct Change {
    pub(super) figure: usize,
    pub(super) value: f64,
    pub(super) noise: f64,
}

/// What one set of figures has otherwise than another: one figure, or the two sides.
pub(super) type Changes = List<Change, 2>;

/// Nothing is otherwise.
pub(super) const NO_CHANGES: Changes = List::new(Change {
    figure: LOW,
    value: 0.0,
    noise: 0.0,
});

/// Lines that differ by less are the same but for rounding, K.
const SAME_K: f64 = 1e-9;

/// Figures as temperatures of lines.
pub(super) fn sheared(mut figures: [f64; FIGURES]) -> [f64; FIGURES] {
    for (line, sign, side) in LINES {
        figures[line] += sign * figures[side];
    }
    figures
}

/// What was read.
#[derive(Clone, Copy)]
pub(super) struct Figures {
    pub(super) read: [bool; FIGURES],
    /// In the coordinates of [`LINES`].
    pub(super) value: [f64; FIGURES],
    /// Variance of what the instruments add, each by itself, and of what has not settled.
    pub(super) noise: [f64; FIGURES],
    /// Variance of what the two gauges add.
    pub(super) gauge: [f64; 2],
}

impl Figures {
    pub(super) const NOTHING: Self = Self {
        read: [false; FIGURES],
        value: [0.0; FIGURES],
        noise: [0.0; FIGURES],
        gauge: [0.0; 2],
    };

    /// The figures with what their instruments add, and `more` on top of that for the sides and the vent.
    pub(super) fn of(figures: &[Option<Estimate>; FIGURES], more: &[f64; 3]) -> Self {
        let mut of = Self::NOTHING;
        for (i, figure) in figures.iter().enumerate() {
            if let Some(figure) = figure {
                of.read[i] = true;
                of.value[i] = figure.value;
                of.noise[i] = figure.standard_uncertainty * figure.standard_uncertainty;
            }
        }
        of.gauge = [of.noise[LOW], of.noise[HIGH]];
        of.value = sheared(of.value);
        for (line, _, side) in LINES {
            // A line is read by itself, and judged beside a pressure.
            of.read[line] &= of.read[side];
            of.noise[line] = f64::max(of.noise[line] - of.gauge[side], 0.0);
        }
        for (noise, more) in of.noise.iter_mut().zip(more) {
            *noise += more * more;
        }
        of
    }

    /// What is otherwise than in another set; `None` when it is more than [`Changes`] can hold.
    pub(super) fn changes_from(&self, other: &Self) -> Option<Changes> {
        let mut changes = NO_CHANGES;
        for figure in 0..FIGURES {
            let (value, noise) = (
                self.value[figure] - other.value[figure],
                self.noise[figure] - other.noise[figure],
            );
            if self.read[figure] != other.read[figure] {
                return None;
            }
            if !self.read[figure] || f64::max(libm::fabs(value), libm::fabs(noise)) <= SAME_K {
                continue;
            }
            if !changes.is_empty() && figure > HIGH {
                return None;
            }
            changes.push(Change { figure, value, noise });
        }
        Some(changes)
    }
}
