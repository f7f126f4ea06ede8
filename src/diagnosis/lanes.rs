//! Numbers of many parts side by side, so that the compiler can work on several of them with one instruction.
//!
//! Each lane is computed by itself and in the same order on every machine: the bits are those of plain numbers.

use crate::numerics::sqrt;

/// Numbers side by side.
pub(super) const LANES: usize = 32;

/// Numbers side by side; they are changed in place, in loops that know their length.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(align(16))]
pub(super) struct Lanes([f64; LANES]);

impl Lanes {
    pub(super) const ZERO: Self = Self([0.0; LANES]);
    pub(super) const ONE: Self = Self([1.0; LANES]);

    /// What `f` gives for each lane.
    #[inline(always)]
    pub(super) fn of(f: impl FnMut(usize) -> f64) -> Self {
        let mut lanes = Self::ZERO;
        lanes.set(f);
        lanes
    }

    /// Sets each lane to what `f` gives for it.
    #[inline(always)]
    pub(super) fn set(&mut self, mut f: impl FnMut(usize) -> f64) {
        for (lane, value) in self.0.iter_mut().enumerate() {
            *value = f(lane);
        }
    }

    /// Adds to each lane what `f` gives for it.
    #[inline(always)]
    pub(super) fn add(&mut self, mut f: impl FnMut(usize) -> f64) {
        for (lane, value) in self.0.iter_mut().enumerate() {
            *value += f(lane);
        }
    }

    /// Multiplies each lane by what `f` gives for it.
    #[inline(always)]
    pub(super) fn multiply(&mut self, mut f: impl FnMut(usize) -> f64) {
        for (lane, value) in self.0.iter_mut().enumerate() {
            *value *= f(lane);
        }
    }

    /// Sets each lane to what `f` makes of it.
    #[inline(always)]
    pub(super) fn change(&mut self, mut f: impl FnMut(usize, f64) -> f64) {
        for (lane, value) in self.0.iter_mut().enumerate() {
            *value = f(lane, *value);
        }
    }

    /// One lane.
    #[inline(always)]
    pub(super) const fn at(&self, lane: usize) -> f64 {
        self.0[lane]
    }

    /// The square root of each lane.
    #[inline(always)]
    pub(super) fn root(self) -> Self {
        Self(self.0.map(sqrt))
    }
}
