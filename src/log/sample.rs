//! One sample of a log.

use crate::error::Error;
use crate::names::{Channel, Quantity};
use crate::range::{GAUGE_PRESSURE, LINE_TEMPERATURE, ROTATIONAL_SPEED, Range};

/// How many channels a log can hold.
pub const CHANNELS: usize = Channel::ALL.len();

/// 0 released, 1 engaged; in between for a mean over some time.
const CLUTCH: Range = Range::new(Quantity::Probability, 0.0, 1.0);

/// What was logged at one time; any of the channels may be missing.
///
/// Pressures in Pa from the datum of the [`Recorder`](super::Recorder), temperatures in K, speeds in
/// revolutions per second, the clutch as 0 or 1.
///
/// ```
/// use coldloop::{Channel, log::Sample};
/// let sample = Sample::at(3.0).with(Channel::LowSide, 208_000.0).with(Channel::Vent, 284.05);
/// assert_eq!(sample.value(Channel::Vent), Some(284.05));
/// assert_eq!(sample.value(Channel::HighSide), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Time by the clock of the logger, s; only differences count.
    pub time_s: f64,
    /// A value for each of [`Channel::ALL`]; NaN where there is none.
    pub values: [f64; CHANNELS],
}

impl Sample {
    /// A sample at this time without any value yet.
    pub const fn at(time_s: f64) -> Self {
        Self {
            time_s,
            values: [f64::NAN; CHANNELS],
        }
    }

    /// This sample with one value added or changed.
    pub const fn with(mut self, channel: Channel, value: f64) -> Self {
        self.values[place(channel)] = value;
        self
    }

    /// The value of a channel, where there is one.
    pub fn value(&self, channel: Channel) -> Option<f64> {
        Some(self.values[place(channel)]).filter(|value| !value.is_nan())
    }
}

/// The place of a channel in arrays over the vocabulary; codes count from one.
pub(super) const fn place(channel: Channel) -> usize {
    channel.code() as usize - 1
}

/// The value, if the channel can have it.
///
/// Errors: `NotFinite`, `OutOfRange`.
pub(super) fn check(channel: Channel, value: f64) -> Result<f64, Error> {
    range(channel).check(value)
}

/// The values that a channel can have.
const fn range(channel: Channel) -> Range {
    match channel {
        Channel::LowSide | Channel::HighSide | Channel::HighSideTransducer => GAUGE_PRESSURE,
        Channel::Vent
        | Channel::Cabin
        | Channel::SuctionLine
        | Channel::DischargeLine
        | Channel::LiquidLine
        | Channel::CondenserOutlet
        | Channel::EvaporatorSensor => LINE_TEMPERATURE,
        Channel::EngineSpeed | Channel::CompressorSpeed => ROTATIONAL_SPEED,
        Channel::Clutch => CLUTCH,
    }
}

/// What kind of instrument a channel comes from.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    LowPressure,
    HighPressure,
    Temperature,
    Speed,
    Clutch,
}

pub(super) const fn kind(channel: Channel) -> Kind {
    match channel {
        Channel::LowSide => Kind::LowPressure,
        Channel::HighSide | Channel::HighSideTransducer => Kind::HighPressure,
        Channel::Vent
        | Channel::Cabin
        | Channel::SuctionLine
        | Channel::DischargeLine
        | Channel::LiquidLine
        | Channel::CondenserOutlet
        | Channel::EvaporatorSensor => Kind::Temperature,
        Channel::EngineSpeed | Channel::CompressorSpeed => Kind::Speed,
        Channel::Clutch => Kind::Clutch,
    }
}
