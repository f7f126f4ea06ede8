//! Removes impossible values: spikes, sensors that stick, and channels that change their unit.

use super::bins::Row;
use super::notes::Counts;
use super::sample::{CHANNELS, Kind, kind};
use crate::names::{Channel, LogNote};

/// Least distance of a spike from both its neighbours, in SI.
///
/// Source: engineering judgement: a clutch moves a pressure by less within a second.
const fn spike(kind: Kind) -> f32 {
    match kind {
        Kind::LowPressure => 150e3,
        Kind::HighPressure => 400e3,
        Kind::Temperature => 8.0,
        Kind::Speed => 10.0,
        Kind::Clutch => f32::INFINITY,
    }
}
/// The same distance as a multiple of the difference of the neighbours; the larger of the two counts.
const SPIKE_RATIO: f32 = 4.0;

/// Seconds of the same value after which a sensor that had moved counts as stuck.
const STICKS_S: u16 = 60;
/// A sensor moves if more than this share of its seconds brought a new value.
///
/// Source: engineering judgement: a sensor that shows whole degrees keeps its value most of the time.
const MOVES: f32 = 0.5;

/// Ratios of units that one pressure is written in: psi and kPa, bar and kPa, psi and bar.
const RATIOS: [f32; 3] = [6.894_757, 100.0, 14.503_774];
/// A step changes the unit if its ratio is within this share of one of those, and it is at least so large.
const NEAR: f32 = 0.04;
const STEP_PA: f32 = 100e3;
const STEP_K: f32 = 10.0;
/// Seconds after which a step counts as real.
const REAL_S: u16 = 120;

/// The state of one channel.
#[derive(Clone, Copy, Debug)]
struct Memory {
    last: f32,
    same: u16,
    moves: f32,
    /// Seconds in another unit.
    foreign: u16,
}

/// Cleans the rows, one for each second.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cleaner([Memory; CHANNELS]);

impl Cleaner {
    pub(super) const NEW: Self = Self(
        [Memory {
            last: f32::NAN,
            same: 0,
            moves: 0.0,
            foreign: 0,
        }; CHANNELS],
    );

    /// The row without impossible values; `next` is the following value of a channel, NaN where none is known.
    pub(super) fn clean(&mut self, mut row: Row, next: impl Fn(usize) -> f32, notes: &mut Counts) -> Row {
        for ((value, memory), channel) in row.values.iter_mut().zip(&mut self.0).zip(Channel::ALL) {
            let kind = kind(channel);
            if value.is_nan() {
                if !memory.last.is_nan() {
                    notes.add(LogNote::Dropout, 1);
                }
                continue;
            }
            let next = next(channel.code() as usize - 1);
            if let Some(note) = memory.doubt(*value, next, kind) {
                notes.add(note, 1);
                *value = f32::NAN;
            }
        }
        row
    }
}

impl Memory {
    /// The reason to refuse a value; `None` for a good one.
    fn doubt(&mut self, value: f32, next: f32, kind: Kind) -> Option<LogNote> {
        let (step, on) = (value - self.last, next - value);
        let least = spike(kind).max(SPIKE_RATIO * (next - self.last).abs());
        if step.abs() > least && on.abs() > least && step * on < 0.0 {
            return Some(LogNote::Spike);
        }
        if self.foreign < REAL_S && is_other_unit(self.last, value, kind) {
            self.foreign += 1;
            return Some(LogNote::UnitStep);
        }
        self.foreign = 0;
        let moved = value.to_bits() != self.last.to_bits();
        self.same = if moved { 0 } else { self.same.saturating_add(1) };
        if self.same < STICKS_S {
            // While the value stays the same, the share from before is kept.
            if self.same <= 1 {
                self.moves += 0.05 * (f32::from(u8::from(moved)) - self.moves);
            }
        } else if self.moves > MOVES && kind != Kind::Clutch {
            return Some(LogNote::Stuck);
        }
        self.last = value;
        None
    }
}

/// Whether a value is the one before it in another unit.
fn is_other_unit(before: f32, value: f32, kind: Kind) -> bool {
    match kind {
        Kind::LowPressure | Kind::HighPressure => {
            let (small, large) = (before.abs().min(value.abs()), before.abs().max(value.abs()));
            large - small > STEP_PA && RATIOS.iter().any(|ratio| (large / small / ratio - 1.0).abs() < NEAR)
        }
        Kind::Temperature => {
            let fahrenheit = |kelvin: f32| 1.8 * (kelvin - 273.15) + 32.0 + 273.15;
            let near = |one: f32, other: f32| (fahrenheit(one) - other).abs() < 2.0;
            (value - before).abs() > STEP_K && (near(before, value) || near(value, before))
        }
        Kind::Speed | Kind::Clutch => false,
    }
}
