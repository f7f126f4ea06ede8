//! Counts of what was refused, ignored or doubted.

use crate::names::LogNote;

/// How often each [`LogNote`] happened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Counts([u32; LogNote::ALL.len()]);

impl Counts {
    /// Nothing happened.
    pub const NONE: Self = Self([0; LogNote::ALL.len()]);

    /// How often this happened.
    pub const fn of(&self, note: LogNote) -> u32 {
        self.0[note.code() as usize - 1]
    }

    /// The notes that happened at least once, each with its count.
    pub fn iter(&self) -> impl Iterator<Item = (LogNote, u32)> + '_ {
        LogNote::ALL.into_iter().zip(self.0).filter(|(_, count)| *count > 0)
    }

    pub(super) const fn add(&mut self, note: LogNote, times: u32) {
        let count = &mut self.0[note.code() as usize - 1];
        *count = count.saturating_add(times);
    }
}
