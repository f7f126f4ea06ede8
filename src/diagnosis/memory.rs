//! What diagnoses that follow each other keep.

use super::cloud::MOST_PARTS;
use super::part::{EVERY, Part, Shape, Told};

/// The shapes of the parts of one kind of system where the same conditions are known.
pub(super) struct Memory {
    /// Of which kind, and which conditions nobody told, one bit each.
    of: (usize, u16),
    known: [bool; MOST_PARTS],
    shapes: [Shape; MOST_PARTS],
}

impl Memory {
    pub(super) const EMPTY: Self = Self {
        of: (0, 0),
        known: [false; MOST_PARTS],
        shapes: [Shape::NONE; MOST_PARTS],
    };
}

/// Where shapes are found: kept for the diagnoses that follow, or one after the other and forgotten.
pub(super) struct Shapes<'a> {
    memory: Option<&'a mut Memory>,
    passing: Shape,
}

impl<'a> Shapes<'a> {
    /// In this memory, if there is one.
    pub(super) fn of(mut memory: Option<&'a mut Memory>, kind: usize, told: &Told) -> Self {
        let of = (kind, told.untold_bits());
        if let Some(memory) = memory.as_deref_mut().filter(|memory| memory.of != of) {
            memory.of = of;
            memory.known = [false; MOST_PARTS];
        }
        Self {
            memory,
            passing: Shape::NONE,
        }
    }

    /// The shape of a part, which stands there among those of its kind; along `dimensions` at least.
    pub(super) fn shape(&mut self, place: usize, part: &Part, told: &Told, dimensions: &[usize]) -> &Shape {
        let Some(memory) = self.memory.as_deref_mut() else {
            part.shape(told, dimensions, &mut self.passing);
            return &self.passing;
        };
        if !memory.known[place] {
            part.shape(told, &EVERY, &mut memory.shapes[place]);
            memory.known[place] = true;
        }
        &memory.shapes[place]
    }
}
