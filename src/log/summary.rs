//! What a log says: states, readings with their uncertainty, observations, and what is not known yet.

use super::curve::Fall;
use super::instruments::{Datum, Instruments};
use super::notes::Counts;
use super::state::State;
use super::track::{STATES, STILL, TELLING, Track};
use crate::circuit::{Estimate, Observations, Reading, Readings};
use crate::names::{Channel, LogNote, LogPhase, Observation};
use crate::units::{Frequency, Pressure, RotationalSpeed, TimeSpan};
use crate::vehicle::Conditions;

/// Seconds that a settled state must last to be judged. Source: engineering judgement: six blocks.
const JUDGED_S: f64 = 60.0;
/// Seconds, and cycles, after which a state has lasted long enough. Source: makers' procedures ask for five minutes at a steady
/// speed (published), and cycles are counted over three minutes (common practice).
const ENOUGH_S: f64 = 180.0;
const ENOUGH_CYCLES: u32 = 3;
/// Cycles whose length scatters by more than this share of it do not repeat. Source: engineering judgement.
const IRREGULAR: f64 = 0.35;
/// Least number of returns of the low side from near vacuum. Source: engineering judgement: one may be a hose or a stop.
const COMES_AND_GOES: u32 = 2;
/// A compressor is engaged if its clutch is commanded for more than this share of the time, and the high side is more than
/// this many times the low side.
const ENGAGED: f64 = 0.97;
const PUMPS: f64 = 2.0;
/// Sides equalise quickly if they are equal within this time after the stop, s. Source: the wording of the observation.
const QUICKLY_S: f64 = 120.0;

/// What a log says so far.
///
/// ```
/// use coldloop::log::{Datum, Recorder, Sample};
/// use coldloop::{Channel, LogPhase};
/// let mut recorder = Recorder::new(Datum::Gauge);
/// recorder.push(&Sample::at(0.0).with(Channel::LowSide, 200e3));
/// let summary = recorder.summary();
/// assert_ne!(summary.phase, LogPhase::Settled);
/// assert!(summary.vent.is_none() && summary.elapsed.seconds() < 1.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Summary {
    /// The phase of its last part.
    pub phase: LogPhase,
    /// Length of the log.
    pub elapsed: TimeSpan,
    /// How much longer the present state should last; zero when it has lasted long enough.
    pub wait: TimeSpan,
    /// How the vent air came down.
    pub vent: Option<Fall>,
    /// How the cabin air came down.
    pub cabin: Option<Fall>,
    /// What was refused, ignored or doubted.
    pub notes: Counts,
    /// How long after the compressor's stop both sides were equal.
    pub equal_after: Option<TimeSpan>,
    /// How often the low side fell near vacuum and came back.
    pub recoveries: u32,
    states: [LogState; STATES],
    count: usize,
}

impl Summary {
    pub(super) fn of(track: &Track, notes: Counts, newest_s: f64) -> Self {
        let now = LogState::of(&track.now, track);
        let mut summary = Self {
            phase: phase(track, &now),
            elapsed: TimeSpan::from_seconds(newest_s),
            wait: TimeSpan::from_seconds(wait_s(track, &now)),
            vent: track.vent.fall(),
            cabin: track.cabin.fall(),
            notes,
            equal_after: track.equal_after.map(|seconds| TimeSpan::from_seconds(seconds as f64)),
            recoveries: track.recoveries,
            states: [now; STATES],
            count: 0,
        };
        // The earlier states fill all places but one; the last is for the present state.
        for state in track.earlier.iter().flatten() {
            summary.states[summary.count] = LogState::of(state, track);
            summary.count += 1;
        }
        summary.states[..summary.count].sort_unstable_by_key(|state| state.state.began);
        if track.rows > 0 {
            summary.states[summary.count] = now;
            summary.count += 1;
        }
        let drifts = summary.judged().map(LogState::drifting).sum();
        summary.notes.add(LogNote::Drift, drifts);
        summary
    }

    /// The states of the log in the order of time; the present one last.
    pub fn states(&self) -> &[LogState] {
        &self.states[..self.count]
    }

    /// The states that settled, or lasted long enough to be judged anyway; the longest first, the others in the order of time.
    pub fn judged(&self) -> impl Iterator<Item = &LogState> {
        let long = |state: &&LogState| {
            let least_s = if state.state.settled { JUDGED_S } else { ENOUGH_S };
            state.state.seconds >= least_s && !state.is_at_rest()
        };
        let best = self.states().iter().filter(long).max_by(|one, other| {
            let seconds = |state: &LogState| state.state.seconds;
            seconds(one).total_cmp(&seconds(other))
        });
        let others = self.states().iter().filter(long);
        let others = others.filter(move |state| best.is_some_and(|best| !core::ptr::eq(best, *state)));
        best.into_iter().chain(others)
    }

    /// The observations that follow from the log.
    ///
    /// The clutch is engaged where it is commanded all the time and the pressures of the sides differ. The sides equalise quickly
    /// or not, where a stop was seen. Cooling comes and goes where the low side fell near vacuum and came back at least twice,
    /// unless the regular cycles of a clutch explain that.
    pub fn observations(&self) -> Observations {
        let mut seen = Observations::NONE;
        if self.judged().next().is_some_and(LogState::is_driven) {
            seen = seen.with(Observation::ClutchEngaged, true);
        }
        let swing = self.judged().next().and_then(LogState::swing);
        if self.recoveries >= COMES_AND_GOES && !swing.is_some_and(|swing| swing.repeats) {
            seen = seen.with(Observation::CoolingComesAndGoes, true);
        }
        if let Some(after) = self.equal_after {
            seen = seen.with(Observation::SidesEqualiseQuickly, after.seconds() < QUICKLY_S);
        }
        seen
    }
}

/// The phase of the present state.
fn phase(track: &Track, now: &LogState) -> LogPhase {
    if track.rows == 0 || now.state.seconds <= 0.0 {
        LogPhase::Empty
    } else if track.is_at_rest() {
        LogPhase::AtRest
    } else if now.state.cycling {
        match now.swing() {
            Some(swing) if swing.repeats => LogPhase::Cycling,
            Some(_) if now.state.cycles.count >= ENOUGH_CYCLES => LogPhase::Irregular,
            Some(_) | None => LogPhase::Settling,
        }
    } else if track.is_settled() {
        LogPhase::Settled
    } else if track.is_restless() {
        LogPhase::Irregular
    } else {
        LogPhase::Settling
    }
}

fn wait_s(track: &Track, now: &LogState) -> f64 {
    let cycles = ENOUGH_CYCLES.saturating_sub(now.state.cycles.count);
    let cycles_s = if now.state.cycling {
        f64::from(cycles) * f64::from(now.state.cycles.seconds)
    } else {
        0.0
    };
    let still_falls = !now.state.cycling && !track.is_settled();
    let falling_s = if still_falls {
        track.vent.fall().map_or(0.0, |fall| fall.half.seconds())
    } else {
        0.0
    };
    f64::max(
        f64::max(ENOUGH_S - now.state.seconds, 0.0),
        f64::max(cycles_s, falling_s),
    )
}

/// A stretch of a log at one speed and load.
///
/// ```
/// use coldloop::Channel;
/// use coldloop::log::{Datum, Instruments, Recorder, Sample};
/// let mut recorder = Recorder::new(Datum::Gauge);
/// for second in 0..300 {
///     recorder.push(&Sample::at(f64::from(second)).with(Channel::LowSide, 200e3).with(Channel::Vent, 280.0));
/// }
/// let summary = recorder.summary();
/// let state = summary.states().last().expect("it has settled");
/// assert!(state.readings(&Instruments::default()).vent.is_some());
/// assert!(state.mean(Channel::Cabin).is_none());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogState {
    state: State,
    sees_cycles: bool,
    datum: Datum,
}

/// The swing of a low side.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct LowSwing {
    /// Whole cycles that were seen.
    pub count: u32,
    /// How often it cycles, with the scatter of the length of a cycle.
    pub cycles: Estimate<Frequency>,
    /// Share of the time in which the clutch is engaged, or in which the low side falls where the clutch is not logged.
    pub on_share: f64,
    /// Low side at which the compressor is switched off, from the datum of the log.
    pub cut_out: Pressure,
    /// Low side at which it is switched on.
    pub cut_in: Pressure,
    /// Lowest and highest high side of a cycle; `None` where it was not logged.
    pub high_side: Option<(Pressure, Pressure)>,
    /// Whether cycles are alike, and the high side rises while the low side falls, as with a compressor that is switched.
    pub repeats: bool,
}

impl LogState {
    fn of(state: &State, track: &Track) -> Self {
        Self {
            state: *state,
            sees_cycles: track.sees_cycles(),
            datum: track.datum,
        }
    }

    /// When it began, since the first sample.
    pub const fn began(&self) -> TimeSpan {
        TimeSpan::from_seconds(self.state.began as f64)
    }

    /// Time over which the means were taken: without the transition at its start, and without an incomplete cycle.
    pub const fn lasted(&self) -> TimeSpan {
        TimeSpan::from_seconds(self.state.seconds)
    }

    /// The mean of a channel over the state, over whole cycles where it cycles, in SI as the samples are.
    ///
    /// Its standard uncertainty is that of the sampling, the scatter from cycle to cycle and the remaining drift.
    pub fn mean(&self, channel: Channel) -> Option<Estimate> {
        self.state.mean(channel).map(|mean| Estimate {
            value: mean.mean,
            standard_uncertainty: mean.uncertainty(),
        })
    }

    /// How far a channel still drifts, in SI: the last part of the state less its mean.
    pub fn drift(&self, channel: Channel) -> Option<f64> {
        self.state.mean(channel).map(|mean| mean.recent - mean.mean)
    }

    /// How many of the two pressures and the vent still drift at its end.
    fn drifting(&self) -> u32 {
        let drifts = |(channel, still): &(Channel, f32)| {
            let mean = self.state.mean(*channel);
            mean.is_some_and(|mean| mean.drifts(f64::from(*still)))
        };
        TELLING.into_iter().zip(STILL).filter(drifts).count() as u32
    }

    /// The swing of the low side where it cycles.
    pub fn swing(&self) -> Option<LowSwing> {
        let cycles = &self.state.cycles;
        if !self.state.cycling || cycles.count == 0 {
            return None;
        }
        let seconds = f64::from(cycles.seconds);
        let pressure = |pa: f32| self.datum.pressure(f64::from(pa));
        let hz = 1.0 / seconds;
        let scatter = libm::sqrt(f64::from(cycles.variance)) / seconds;
        Some(LowSwing {
            count: cycles.count,
            cycles: Estimate {
                value: Frequency::from_hz(hz),
                standard_uncertainty: Frequency::from_hz(
                    hz * f64::max(scatter, RESOLVED) / libm::sqrt(f64::from(cycles.count)),
                ),
            },
            on_share: f64::from(cycles.on),
            cut_out: pressure(cycles.low.0),
            cut_in: pressure(cycles.low.1),
            high_side: (!cycles.high.0.is_nan()).then(|| (pressure(cycles.high.0), pressure(cycles.high.1))),
            repeats: cycles.count >= ENOUGH_CYCLES && scatter < IRREGULAR && 2 * cycles.opposed > cycles.count,
        })
    }

    /// Whether engine or compressor are known to stand still.
    pub fn is_at_rest(&self) -> bool {
        let hz = self
            .mean(Channel::CompressorSpeed)
            .or_else(|| self.mean(Channel::EngineSpeed));
        hz.is_some_and(|hz| hz.value < 1.5)
    }

    /// Whether a commanded clutch drives the compressor.
    fn is_driven(&self) -> bool {
        let mean = |channel| self.mean(channel).map(|mean| mean.value);
        let apart = mean(Channel::LowSide).zip(mean(Channel::HighSide));
        mean(Channel::Clutch).is_some_and(|share| share > ENGAGED)
            && apart.is_some_and(|(low, high)| high > PUMPS * f64::max(low, 0.0))
    }

    /// The readings of the state: the means, whose uncertainty includes that of the instruments, and how often the clutch cycles,
    /// where samples came often enough to see it.
    pub fn readings(&self, instruments: &Instruments) -> Readings {
        let pressure = |channel, gauge| {
            self.mean(channel)
                .map(|mean| Instruments::pressure(mean, gauge, self.datum))
        };
        let temperature = |channel, thermometer| {
            self.mean(channel)
                .map(|mean| Instruments::temperature(mean, thermometer))
        };
        Readings {
            low_side: pressure(Channel::LowSide, instruments.low_side),
            high_side: pressure(Channel::HighSide, instruments.high_side),
            vent: temperature(Channel::Vent, instruments.air),
            cabin: temperature(Channel::Cabin, instruments.air),
            suction_line: temperature(Channel::SuctionLine, instruments.lines),
            discharge_line: temperature(Channel::DischargeLine, instruments.lines),
            liquid_line: temperature(Channel::LiquidLine, instruments.lines),
            condenser_outlet: temperature(Channel::CondenserOutlet, instruments.lines),
            high_side_transducer: pressure(Channel::HighSideTransducer, instruments.transducer),
            evaporator_sensor: temperature(Channel::EvaporatorSensor, instruments.air),
            clutch_cycles: self.clutch_cycles(),
            gauge_zero: None,
        }
    }

    /// Clutch engagements per second; `None` where they are unknown.
    fn clutch_cycles(&self) -> Option<Reading<Frequency>> {
        if !self.sees_cycles || self.state.mean(Channel::LowSide).is_none() {
            return None;
        }
        match self.swing() {
            // Irregular swings have another cause beside the clutch.
            Some(swing) if !swing.repeats => None,
            Some(swing) => Some(Reading {
                value: swing.cycles.value,
                standard_uncertainty: Frequency::from_hz(libm::hypot(
                    swing.cycles.standard_uncertainty.hz(),
                    ONE_RUN * swing.cycles.value.hz(),
                )),
            }),
            None if self.state.cycling || self.state.seconds <= 0.0 => None,
            None => Some(Reading::within(
                Frequency::from_hz(0.0),
                Frequency::from_hz(1.0 / self.state.seconds),
            )),
        }
    }

    /// The conditions with the speeds that were logged in this state.
    pub fn conditions(&self, conditions: &Conditions) -> Conditions {
        let mean = |channel| {
            self.mean(channel)
                .map(|mean| RotationalSpeed::from_hz(f64::max(mean.value, 0.0)))
        };
        let mut here = *conditions;
        here.engine_speed = mean(Channel::EngineSpeed).or(here.engine_speed);
        here.compressor_speed = mean(Channel::CompressorSpeed).or(here.compressor_speed);
        here
    }
}

/// Standard uncertainty of the rate of cycles of one run for that of the vehicle, relative.
///
/// Fitted by log loss to logs of an independent simulator: 0.3 to 1 do equally well; without it a fiftieth of the right
/// answers is lost.
const ONE_RUN: f64 = 0.6;
/// Least relative uncertainty of the length of a cycle. Source: engineering judgement: samples of a second or two.
const RESOLVED: f64 = 0.05;
