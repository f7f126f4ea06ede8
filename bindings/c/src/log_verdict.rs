//! What a log says of the vehicle of a session
//!
//! A log may hold several states, at idle and at speed for instance. coldloop_session_add_log adds the one that is known best
//! to the session. The two functions here judge all of them together with what the session knows, and change nothing: a program
//! shows their answers while a log runs.

use crate::boundary::{Failure, record};
use crate::error::ColdloopError;
use crate::log::{ColdloopInstruments, best, instruments_of};
use crate::memory::kept;
use crate::session::{ColdloopRankedFault, ColdloopStanding, odds_of, standing_of};
use coldloop::diagnosis::{Case, Judgement, judge_states, log_cases};
use coldloop::log::Recorder;
use coldloop::session::Session;
use core::ffi::c_void;

/// The verdict from all judged states of a recorder's log together, with what the session knows beside it.
///
/// `instruments` may be NULL for the usual ones. After a repair the vehicle is judged by itself, without what was found before.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, UNKNOWN_NAME; MISSING where no state has lasted long enough, and those of
/// coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_log_standing(
    session: *const c_void,
    recorder: *const c_void,
    instruments: *const ColdloopInstruments,
    told: *mut ColdloopStanding,
    error: *mut ColdloopError,
) -> u32 {
    record(told, error, || {
        let known = kept::<Session>(session)?;
        Ok(standing_of(&*judged(&known, recorder, instruments)?, &known))
    })
}

/// The faults that were considered with their odds, from the same judgement. Places, capacity and count as for coldloop_session_odds.
///
/// Errors: as coldloop_session_log_standing; `count` is 0 then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_log_odds(
    session: *const c_void,
    recorder: *const c_void,
    instruments: *const ColdloopInstruments,
    faults: *mut ColdloopRankedFault,
    capacity: usize,
    count: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    odds_of(faults, capacity, count, error, || {
        let known = kept::<Session>(session)?;
        Ok((judged(&known, recorder, instruments)?, known))
    })
}

/// The judgement from all states of the log.
fn judged(
    known: &Session,
    recorder: *const c_void,
    instruments: *const ColdloopInstruments,
) -> Result<Box<Judgement>, Failure> {
    let summary = kept::<Recorder>(recorder)?.summary();
    let instruments = instruments_of(instruments)?;
    best(&summary)?;
    let cases: Vec<Case> = log_cases(&known.case(), &summary, &instruments).collect();
    Ok(Box::new(judge_states(&cases, &known.settings())?))
}
