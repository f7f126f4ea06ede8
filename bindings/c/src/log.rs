//! Readings over time
//!
//! A recorder takes the samples of one vehicle and finds what they say: states at one speed and load, cycles of a clutch, readings
//! with their uncertainty. It lives in memory of the caller, of coldloop_recorder_size() bytes, whatever the length of the log, and
//! needs no freeing:
//!
//!     void *recorder = malloc(coldloop_recorder_size());
//!     coldloop_recorder_init(recorder, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL);
//!     const uint32_t channels[] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE};
//!     double time_s = 0.0, sample[] = {210e3, 1150e3};
//!     coldloop_recorder_push(recorder, 1, &time_s, 0, 2, channels, sample, 0, sizeof(double), NULL);
//!
//! Values are in SI: pressures in Pa from the datum of the recorder, temperatures in K, speeds in revolutions per second, the clutch
//! as 1 or 0. NaN is a value that was not logged. A sample may come up to 30 s late; what is refused, ignored or doubted is counted.
//! Memory that holds no recorder gives NOT_INITIALISED. A recorder belongs to the version of the library that initialised it; no
//! other version can use it.

use crate::boundary::{Failure, Growing, Record, answer, member, record, sized};
use crate::circuit::ColdloopEstimate;
use crate::error::ColdloopError;
use crate::memory::{Codes, Column, Kept, given, has_room, keep, kept, room};
use crate::names::ColdloopStatus;
use crate::units::{COLDLOOP_DATUM_ABSOLUTE, COLDLOOP_DATUM_GAUGE};
use coldloop::circuit::{Estimate, Gauge, Measured};
use coldloop::log::{CHANNELS, Datum, Fall, Instruments, LogState, Recorder, Sample, Summary};
use coldloop::units::{Pressure, TimeSpan, difference_in_kelvins, in_kelvins};
use coldloop::{Channel, Error, ErrorKind, GaugeClass, LogNote, Observation, Quantity, ReadingKind, Thermometer};
use core::ffi::c_void;

/// Places for channels: that of a coldloop_channel is its number less 1. More than there are today.
pub const COLDLOOP_MOST_CHANNELS: usize = 16;

/// Places for notes: that of a coldloop_log_note is its number less 1. More than there are today.
pub const COLDLOOP_MOST_LOG_NOTES: usize = 16;

const _: () = assert!(COLDLOOP_MOST_CHANNELS >= CHANNELS && COLDLOOP_MOST_LOG_NOTES >= LogNote::ALL.len());

const NAN: f64 = f64::NAN;

const UNKNOWN: ColdloopEstimate = ColdloopEstimate {
    value: NAN,
    standard_uncertainty: NAN,
};

impl Kept for Recorder {
    const MARK: u64 = u64::from_le_bytes(*b"recorder") ^ size_of::<Self>() as u64;
}

/// What a log was read with. Set `size` to sizeof(coldloop_instruments); 0 for the usual: an electronic manifold, the vehicle's own
/// transducer, a pocket thermometer in the air, thermocouples on the lines.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopInstruments {
    /// sizeof(coldloop_instruments), so that the struct can grow.
    pub size: usize,
    /// The low side's coldloop_gauge_class.
    pub low_side: u32,
    /// The high side's.
    pub high_side: u32,
    /// That of the vehicle's own transducer.
    pub high_side_transducer: u32,
    /// The coldloop_thermometer of vent, cabin and evaporator.
    pub air: u32,
    /// That of the lines.
    pub lines: u32,
}

impl Growing for ColdloopInstruments {}

/// How a temperature came down after the start; NaN where it was not logged or did not come down.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopFall {
    /// Where it started, K.
    pub from_k: f64,
    /// Its level in the last quarter of the log, K.
    pub to_k: f64,
    /// When it had come down half of the way, s.
    pub half_s: f64,
    /// 1 where it still falls in that quarter, by more than 0.5 K.
    pub falls: u32,
}

const STAYS: ColdloopFall = ColdloopFall {
    from_k: NAN,
    to_k: NAN,
    half_s: NAN,
    falls: 0,
};

/// What a log says so far. Set `size` to sizeof(coldloop_log_summary).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopLogSummary {
    /// sizeof(coldloop_log_summary), so that the struct can grow.
    pub size: usize,
    /// The state of its last part, a coldloop_log_phase.
    pub phase: u32,
    /// Number of its states, as coldloop_recorder_state gives them.
    pub states: u32,
    /// How many of them settled, or lasted long enough to be judged all the same.
    pub judged: u32,
    /// How often the low side fell near vacuum and came back.
    pub recoveries: u32,
    /// Length of the log, s.
    pub elapsed_s: f64,
    /// How much longer the present state should last before more is told, s; 0 when it has lasted long enough.
    pub wait_s: f64,
    /// Seconds after the compressor's stop until both sides were equal; NaN where that was not seen.
    pub equal_after_s: f64,
    /// How the vent came down.
    pub vent: ColdloopFall,
    /// How the cabin came down.
    pub cabin: ColdloopFall,
    /// How often each coldloop_log_note happened.
    pub notes: [u32; COLDLOOP_MOST_LOG_NOTES],
}

sized!(
    ColdloopLogSummary,
    Self {
        size: 0,
        phase: 0,
        states: 0,
        judged: 0,
        recoveries: 0,
        elapsed_s: NAN,
        wait_s: NAN,
        equal_after_s: NAN,
        vent: STAYS,
        cabin: STAYS,
        notes: [0; COLDLOOP_MOST_LOG_NOTES],
    }
);

/// A stretch of a log at one speed and load. Set `size` to sizeof(coldloop_log_state).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopLogState {
    /// sizeof(coldloop_log_state), so that the struct can grow.
    pub size: usize,
    /// 1 where it settled or lasted long enough to be judged.
    pub judged: u32,
    /// Whole cycles of the clutch that were seen; 0 where it does not cycle, and the figures of the swing are NaN.
    pub cycles: u32,
    /// 1 where its cycles are alike and a switching compressor explains them.
    pub repeats: u32,
    /// When it began, s since the first sample.
    pub began_s: f64,
    /// Seconds over which the means are taken.
    pub seconds: f64,
    /// Cycles per second.
    pub cycles_hz: ColdloopEstimate,
    /// Part of the time that the clutch is engaged.
    pub on_share: f64,
    /// Low side at which the compressor is switched off, Pa as logged.
    pub cut_out_pa: f64,
    /// Low side at which it is switched on, Pa as logged.
    pub cut_in_pa: f64,
    /// Lowest high side of a cycle, Pa as logged.
    pub high_low_pa: f64,
    /// Highest high side of a cycle, Pa as logged.
    pub high_high_pa: f64,
    /// Mean of each coldloop_channel over the state; NaN where it was not logged.
    pub means: [f64; COLDLOOP_MOST_CHANNELS],
    /// Standard uncertainty of each mean from the scatter of the samples, without that of the instrument.
    pub uncertainties: [f64; COLDLOOP_MOST_CHANNELS],
    /// How far each still drifts: the last part of the state less its mean.
    pub drifts: [f64; COLDLOOP_MOST_CHANNELS],
}

sized!(
    ColdloopLogState,
    Self {
        size: 0,
        judged: 0,
        cycles: 0,
        repeats: 0,
        began_s: NAN,
        seconds: NAN,
        cycles_hz: UNKNOWN,
        on_share: NAN,
        cut_out_pa: NAN,
        cut_in_pa: NAN,
        high_low_pa: NAN,
        high_high_pa: NAN,
        means: [NAN; COLDLOOP_MOST_CHANNELS],
        uncertainties: [NAN; COLDLOOP_MOST_CHANNELS],
        drifts: [NAN; COLDLOOP_MOST_CHANNELS],
    }
);

/// Bytes that a recorder takes.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_size() -> usize {
    room::<Recorder>()
}

/// Makes an empty recorder in `size` bytes of memory, for a log whose pressures count from this datum:
/// COLDLOOP_DATUM_GAUGE or COLDLOOP_DATUM_ABSOLUTE.
///
/// Errors: NULL_POINTER, STRUCT_SIZE for less than coldloop_recorder_size(), MISSING_DATUM; nothing is written then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_init(
    recorder: *mut c_void,
    size: usize,
    datum: u32,
    error: *mut ColdloopError,
) -> u32 {
    answer(error, || {
        has_room::<Recorder>(recorder, size)?;
        let datum = match datum {
            COLDLOOP_DATUM_GAUGE => Datum::Gauge,
            COLDLOOP_DATUM_ABSOLUTE => Datum::Absolute,
            _ => return Err(Error::of(ErrorKind::MissingDatum, Quantity::Name).into()),
        };
        keep(recorder, &Recorder::new(datum));
        Ok(())
    })
}

/// Takes `count` samples: their times, and of each the values of the coldloop_channels in `channels`.
///
/// `row_stride` are the bytes from each sample to the next, `channel_stride` those from each channel to the next, so that rows of a
/// struct and columns of arrays are served alike. Time is that of the logger's clock, s; only differences count. Impossible values are
/// refused and counted, see coldloop_log_note.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME for a number that is no coldloop_channel; no sample is taken then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_push(
    recorder: *mut c_void,
    count: usize,
    time_s: *const f64,
    time_stride: isize,
    channel_count: usize,
    channels: *const u32,
    values: *const f64,
    row_stride: isize,
    channel_stride: isize,
    error: *mut ColdloopError,
) -> u32 {
    answer(error, || {
        let mut known = kept::<Recorder>(recorder)?;
        let mut times = Column::new(time_s, time_stride);
        let mut codes = Codes::new(channels);
        let null = times.is_null() || (channel_count > 0 && (codes.is_null() || values.is_null()));
        if count > 0 && null {
            return Err(Failure::Door(ColdloopStatus::NullPointer));
        }
        if channel_count > CHANNELS {
            let most = CHANNELS as f64;
            return Err(Error::out_of_range(Quantity::Size, channel_count as f64, 0.0, most).into());
        }
        if count == 0 {
            return Ok(());
        }
        let mut columns = [(Channel::LowSide, Column::new(values, row_stride)); CHANNELS];
        let mut at = values;
        for place in &mut columns[..channel_count] {
            *place = (member(codes.take(), Channel::from_code)?, Column::new(at, row_stride));
            at = at.wrapping_byte_offset(channel_stride);
        }
        for _ in 0..count {
            let sample = Sample::at(times.take());
            let all = columns[..channel_count].iter_mut();
            let sample = all.fold(sample, |sample, (channel, column)| sample.with(*channel, column.take()));
            known.push(&sample);
        }
        keep(recorder, &*known);
        Ok(())
    })
}

/// What the log says so far. Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_summary(
    recorder: *const c_void,
    summary: *mut ColdloopLogSummary,
    error: *mut ColdloopError,
) -> u32 {
    record(summary, error, || {
        let now = kept::<Recorder>(recorder)?.summary();
        let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
        let mut notes = [0; COLDLOOP_MOST_LOG_NOTES];
        for (place, note) in notes.iter_mut().zip(LogNote::ALL) {
            *place = now.notes.of(note);
        }
        Ok(ColdloopLogSummary {
            phase: now.phase.code(),
            states: count(now.states().len()),
            judged: count(now.judged().count()),
            recoveries: now.recoveries,
            elapsed_s: now.elapsed.seconds(),
            wait_s: now.wait.seconds(),
            equal_after_s: now.equal_after.map_or(NAN, TimeSpan::seconds),
            vent: now.vent.map_or(STAYS, fall),
            cabin: now.cabin.map_or(STAYS, fall),
            notes,
            ..ColdloopLogSummary::BLANK
        })
    })
}

/// A state of the log, counted from 0 in the order of time; the present one is the last.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, OUT_OF_RANGE for a state that is not there.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_state(
    recorder: *const c_void,
    place: usize,
    state: *mut ColdloopLogState,
    error: *mut ColdloopError,
) -> u32 {
    record(state, error, || {
        let now = kept::<Recorder>(recorder)?.summary();
        let states = now.states();
        let most = states.len() as f64 - 1.0;
        let there = states.get(place);
        let of = there.ok_or_else(|| Error::out_of_range(Quantity::Rows, place as f64, 0.0, most))?;
        Ok(told(of, now.judged().any(|judged| judged == of)))
    })
}

/// A reading of the state that is known best, with its standard uncertainty, from the instrument and from the scatter of the samples.
///
/// `kind` is a coldloop_reading_kind; `instruments` may be NULL for the usual ones. Pa from the datum of the log, K, or cycles per
/// second.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, UNKNOWN_NAME; MISSING where no state has lasted long enough or the log does
/// not tell it.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_reading(
    recorder: *const c_void,
    instruments: *const ColdloopInstruments,
    kind: u32,
    reading: *mut ColdloopEstimate,
    error: *mut ColdloopError,
) -> u32 {
    crate::boundary::value(reading, UNKNOWN, error, || {
        let now = kept::<Recorder>(recorder)?.summary();
        let instruments = instruments_of(instruments)?;
        let kind = member(kind, ReadingKind::from_code)?;
        let read = best(&now)?.readings(&instruments).get(kind);
        Ok(match read.ok_or(Error::of(ErrorKind::Missing, Quantity::Name))? {
            Measured::Pressure(reading) => ColdloopEstimate {
                value: match reading.value {
                    Pressure::Gauge(pressure) => pressure.pa(),
                    Pressure::Absolute(pressure) => pressure.pa(),
                },
                standard_uncertainty: reading.standard_uncertainty.pa(),
            },
            Measured::Temperature(reading) => ColdloopEstimate {
                value: in_kelvins(reading.value),
                standard_uncertainty: difference_in_kelvins(reading.standard_uncertainty),
            },
            Measured::Frequency(reading) => ColdloopEstimate {
                value: reading.value.hz(),
                standard_uncertainty: reading.standard_uncertainty.hz(),
            },
            _ => return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name).into()),
        })
    })
}

/// What the log tells of a coldloop_observation: 1 for yes, 0 for no.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME; MISSING where the log does not tell it.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_recorder_observation(
    recorder: *const c_void,
    observation: u32,
    seen: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    crate::boundary::code(seen, error, || {
        let now = kept::<Recorder>(recorder)?.summary();
        let observation = member(observation, Observation::from_code)?;
        let answer = now.observations().answer(observation);
        Ok(u32::from(answer.ok_or(Error::of(ErrorKind::Missing, Quantity::Name))?))
    })
}

/// The state that is known best.
pub(crate) fn best(summary: &Summary) -> Result<&LogState, Error> {
    let best = summary.judged().next();
    best.ok_or(Error::of(ErrorKind::Missing, Quantity::Duration))
}

/// The given instruments; the usual ones for null.
pub(crate) fn instruments_of(given_at: *const ColdloopInstruments) -> Result<Instruments, Failure> {
    let mut instruments = Instruments::default();
    if given_at.is_null() {
        return Ok(instruments);
    }
    let told = given(given_at)?;
    let gauge = |gauge: Gauge, code: u32| match code {
        0 => Ok(gauge),
        code => Ok::<_, Error>(gauge.of_class(member(code, GaugeClass::from_code)?)),
    };
    let thermometer = |thermometer: Thermometer, code: u32| match code {
        0 => Ok(thermometer),
        code => member(code, Thermometer::from_code),
    };
    instruments.low_side = gauge(instruments.low_side, told.low_side)?;
    instruments.high_side = gauge(instruments.high_side, told.high_side)?;
    instruments.transducer = gauge(instruments.transducer, told.high_side_transducer)?;
    instruments.air = thermometer(instruments.air, told.air)?;
    instruments.lines = thermometer(instruments.lines, told.lines)?;
    Ok(instruments)
}

fn told(state: &LogState, judged: bool) -> ColdloopLogState {
    let mut told = ColdloopLogState {
        judged: u32::from(judged),
        began_s: state.began().seconds(),
        seconds: state.lasted().seconds(),
        ..ColdloopLogState::BLANK
    };
    for (at, channel) in Channel::ALL.into_iter().enumerate() {
        if let Some(mean) = state.mean(channel) {
            (told.means[at], told.uncertainties[at]) = (mean.value, mean.standard_uncertainty);
        }
        told.drifts[at] = state.drift(channel).unwrap_or(NAN);
    }
    let Some(swing) = state.swing() else {
        return told;
    };
    ColdloopLogState {
        cycles: swing.count,
        repeats: u32::from(swing.repeats),
        cycles_hz: estimate(swing.cycles.si()),
        on_share: swing.on_share,
        cut_out_pa: as_logged(swing.cut_out),
        cut_in_pa: as_logged(swing.cut_in),
        high_low_pa: swing.high_side.map_or(NAN, |(low, _)| as_logged(low)),
        high_high_pa: swing.high_side.map_or(NAN, |(_, high)| as_logged(high)),
        ..told
    }
}

/// The number of pascals that was logged.
const fn as_logged(pressure: Pressure) -> f64 {
    match pressure {
        Pressure::Absolute(pressure) => pressure.pa(),
        Pressure::Gauge(pressure) => pressure.pa(),
    }
}

const fn estimate(estimate: Estimate) -> ColdloopEstimate {
    ColdloopEstimate {
        value: estimate.value,
        standard_uncertainty: estimate.standard_uncertainty,
    }
}

fn fall(fall: Fall) -> ColdloopFall {
    ColdloopFall {
        from_k: in_kelvins(fall.from),
        to_k: in_kelvins(fall.to),
        half_s: fall.half.seconds(),
        falls: u32::from(fall.falls),
    }
}
