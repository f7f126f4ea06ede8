//! What makes the proof of a repair stronger, reported before the repair is made.

use crate::circuit::Readings;
use crate::diagnosis::Key;
#[cfg(feature = "report")]
use crate::diagnosis::{Case, List};
#[cfg(feature = "report")]
use crate::names::{AirSource, Compressor};
use crate::names::{Check, ReadingKind};
#[cfg(feature = "report")]
use crate::units::RotationalSpeed;

/// What to read before a repair and again after it, and how.
#[cfg(feature = "report")]
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Again {
    /// Readings that are still missing from the visit before the repair, as only what both visits have is compared. Empty where
    /// the system must not run.
    pub(crate) before: List<ReadingKind, 6>,
    /// Whether nothing was read with the system running, so that only later readings can prove the repair.
    pub(crate) at_rest: bool,
    /// The engine speed to read at again; `None` where it is not known, and for an electric compressor.
    pub(crate) engine_speed: Option<RotationalSpeed>,
    /// The air source to read with again.
    pub(crate) air_source: Option<AirSource>,
}

#[cfg(feature = "report")]
impl Again {
    /// Source: pairs of visits of an independent simulator (`tests/repair_pairs.rs`): more repairs are proven with both lines,
    /// with the discharge line, and with the same speed and air source at both visits; for R-744, which it does not have,
    /// engineering judgement.
    pub(crate) fn of(case: &Case, must_stand: bool) -> Self {
        let (readings, conditions) = (&case.readings, &case.conditions);
        let compressor = case.system.compressor;
        let mut before = List::new(ReadingKind::Vent);
        for kind in missing(readings).filter(|_| !must_stand) {
            before.push(kind);
        }
        Self {
            before,
            at_rest: conditions.at_rest(compressor),
            engine_speed: conditions.engine_speed.filter(|_| compressor != Compressor::Electric),
            air_source: conditions.air_source,
        }
    }
}

/// The most readings that a proof of a repair compares.
pub(crate) const PROVING: usize = 6;

/// The checks that read after a repair what its proof still lacks, the most wanted first: without both pressures and the vent nothing
/// is proven; of the rest, what was read before the repair comes first, for what both visits have is compared.
pub(crate) fn left_to_read(before: &Readings, after: &Readings) -> [Option<Check>; PROVING] {
    let was_read = |kind: ReadingKind| missing(before).all(|unread| unread != kind);
    let needed = |kind: ReadingKind| matches!(kind, ReadingKind::LowSide | ReadingKind::HighSide | ReadingKind::Vent);
    let mut left = [None; PROVING];
    let ranks: [&dyn Fn(ReadingKind) -> bool; 3] = [&needed, &|kind| !needed(kind) && was_read(kind), &|kind| {
        !needed(kind) && !was_read(kind)
    }];
    let ranked = ranks
        .into_iter()
        .flat_map(|rank| missing(after).filter(move |kind| rank(*kind)));
    for (place, kind) in left.iter_mut().zip(ranked) {
        *place = Check::ALL.into_iter().find(|check| check.key() == Key::Reading(kind));
    }
    left
}

/// What was not read of all that a proof compares.
fn missing(readings: &Readings) -> impl Iterator<Item = ReadingKind> {
    let high = readings.high_side.or(readings.high_side_transducer);
    [
        (ReadingKind::LowSide, readings.low_side.is_none()),
        (ReadingKind::HighSide, high.is_none()),
        (ReadingKind::Vent, readings.vent.is_none()),
        (ReadingKind::SuctionLine, readings.suction_line.is_none()),
        (ReadingKind::LiquidLine, readings.liquid_line.is_none()),
        (ReadingKind::DischargeLine, readings.discharge_line.is_none()),
    ]
    .into_iter()
    .filter_map(|(kind, missing)| missing.then_some(kind))
}
