//! The station over time: a recorder and a session in memory of fixed size, and the step that follows from what they hold.

use crate::station::{Counts, Station};
use coldloop::circuit::Measured;
use coldloop::diagnosis::Settings;
use coldloop::log::{Datum, Instruments, Recorder, Sample};
use coldloop::session::{NextStep, Session};
use coldloop::units::{Pressure, in_kelvins};
use coldloop::{Channel, Error, ErrorKind, Quantity, ReadingKind};

/// All that the station keeps between two samples; it allocates nothing.
pub struct Live {
    station: Station,
    recorder: Recorder,
    session: Session,
}

/// RAM that it takes at most, bytes, without the stack of a judgement.
pub const MOST_BYTES: usize = 26 * 1024;

const _: () = assert!(size_of::<Live>() <= MOST_BYTES);

/// Which reading goes into which channel.
const CHANNELS: [(ReadingKind, Channel); 4] = [
    (ReadingKind::LowSide, Channel::LowSide),
    (ReadingKind::HighSide, Channel::HighSide),
    (ReadingKind::SuctionLine, Channel::SuctionLine),
    (ReadingKind::LiquidLine, Channel::LiquidLine),
];

impl Live {
    /// A station without samples, in this ambient.
    pub fn new(station: Station, ambient_k: f64) -> Result<Self, Error> {
        let (system, conditions) = station.vehicle(ambient_k);
        Ok(Self {
            station,
            recorder: Recorder::new(Datum::Gauge),
            session: Session::new(system, conditions, Settings::default())?,
        })
    }

    /// Takes one sample. An impossible count refuses the sample, and the recorder counts the missing second.
    pub fn take(&mut self, time_s: f64, counts: Counts, engine_speed_hz: f64) -> Result<(), Error> {
        let readings = self.station.readings(counts)?;
        let mut sample = Sample::at(time_s).with(Channel::EngineSpeed, engine_speed_hz);
        for (kind, channel) in CHANNELS {
            let value = match readings.get(kind) {
                Some(Measured::Pressure(reading)) => match reading.value {
                    Pressure::Gauge(pressure) => pressure.pa(),
                    Pressure::Absolute(pressure) => pressure.pa(),
                },
                Some(Measured::Temperature(reading)) => in_kelvins(reading.value),
                Some(_) | None => continue,
            };
            sample = sample.with(channel, value);
        }
        self.recorder.push(&sample);
        Ok(())
    }

    /// Puts what was logged into the session; `Missing` where no state has lasted long enough.
    pub fn conclude(&mut self) -> Result<(), Error> {
        let summary = self.recorder.summary();
        let best = summary.judged().next();
        let state = best.ok_or(Error::of(ErrorKind::Missing, Quantity::Duration))?;
        self.session
            .set_conditions(state.conditions(&self.session.case().conditions))?;
        let readings = state.readings(&Instruments::default());
        self.session.add_log(&readings, &summary.observations())
    }

    /// What to do next.
    pub fn next_step(&mut self) -> Result<Option<NextStep>, Error> {
        self.session.next_step()
    }

    /// The session, for further questions.
    pub const fn session(&self) -> &Session {
        &self.session
    }
}
