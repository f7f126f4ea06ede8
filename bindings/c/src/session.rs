//! A visit as it grows
//!
//! A session holds what is known of a vehicle: readings, logs, looks and repairs are added one by one, each can be undone, and it
//! says what to do next. Verdict, odds and steps are numbers and enumerators. It lives in memory of the caller, of
//! coldloop_session_size() bytes, and needs no freeing:
//!
//!     coldloop_vehicle_system van = {
//!         .size = sizeof van, .refrigerant = COLDLOOP_REFRIGERANT_R134A, .expansion = COLDLOOP_EXPANSION_TXV,
//!         .compressor = COLDLOOP_COMPRESSOR_FIXED_CLUTCH, .nominal_charge_kg = NAN, .high_cut_out_pa_gauge = NAN};
//!     void *session = malloc(coldloop_session_size());
//!     coldloop_session_init(session, coldloop_session_size(), &van, &conditions, NULL, NULL);
//!     coldloop_session_add_reading(session, COLDLOOP_READING_KIND_LOW_SIDE, COLDLOOP_DATUM_GAUGE, 427e3, 10e3, NULL);
//!     coldloop_next_step next = {.size = sizeof next};
//!     coldloop_session_next(session, &next, NULL);
//!
//! The next step is held, because the technician may already be on the way to do it: it changes only when another one saves
//! clearly more. Memory that holds no session gives NOT_INITIALISED; a call that is refused leaves the session as it was. A session
//! belongs to the version of the library that initialised it: store it as text to keep it or to hand it to another version.

use crate::boundary::{Failure, Growing, Page, Record, answer, code, member, page, record, sized};
use crate::diagnosis::refused;
use crate::error::ColdloopError;
use crate::expected::{ColdloopConditions, conditions_of};
use crate::log::{ColdloopInstruments, best, instruments_of};
use crate::memory::{Answers, Kept, given, has_room, keep, kept, room, text, write};
use crate::names::ColdloopStatus;
use crate::session_input::{measured, system_of, yes_or_no};
use coldloop::diagnosis::{Action, Judgement, Key, Settings, step_cautions};
use coldloop::intake::{self, SessionFile};
use coldloop::log::Recorder;
use coldloop::session::{Session, Undone};
use coldloop::{Caution, Check, Error, ErrorKind, Fault, Observation, Quantity, ReadingKind, ResultKind};
use core::ffi::{c_char, c_void};

/// Places for the cautions of a step. More than there are today.
pub const COLDLOOP_MOST_CAUTIONS: usize = 32;

const _: () = assert!(COLDLOOP_MOST_CAUTIONS >= Caution::ALL.len());

/// Bytes of stack that any function of a recorder or a session takes at most, on a 64-bit machine; a test measures them.
pub const COLDLOOP_SESSION_STACK_MAX: usize = 131_072;

/// The most faults that a verdict names.
pub const COLDLOOP_MOST_NAMED: usize = 4;

const NAN: f64 = f64::NAN;

impl Kept for Session {
    const MARK: u64 = u64::from_le_bytes(*b"sessions") ^ size_of::<Self>() as u64;
}

/// The system of a vehicle. Set `size` to sizeof(coldloop_vehicle_system); the first three are needed.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopVehicleSystem {
    /// sizeof(coldloop_vehicle_system), so that the struct can grow.
    pub size: usize,
    /// The coldloop_refrigerant on the label.
    pub refrigerant: u32,
    /// A coldloop_expansion.
    pub expansion: u32,
    /// A coldloop_compressor.
    pub compressor: u32,
    /// A coldloop_low_port; 0 where it is not known, as all codes that follow.
    pub low_port: u32,
    /// A coldloop_high_port.
    pub high_port: u32,
    /// 1 where there is a sight glass, 2 where there is none.
    pub sight_glass: u32,
    /// Number of evaporators, 1 or 2.
    pub evaporators: u32,
    /// The charge on the label, kg; NaN where it is not known, as the next field.
    pub nominal_charge_kg: f64,
    /// Pressure at which a switch or the control stops the compressor, Pa above the air.
    pub high_cut_out_pa_gauge: f64,
}

impl Growing for ColdloopVehicleSystem {}

/// The verdict of a visit, and what was done. Set `size` to sizeof(coldloop_standing).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopStanding {
    /// sizeof(coldloop_standing), so that the struct can grow.
    pub size: usize,
    /// A coldloop_verdict.
    pub verdict: u32,
    /// How many places of `named` are in use.
    pub named_count: u32,
    /// The coldloop_fault that is named, or the short list.
    pub named: [u32; COLDLOOP_MOST_NAMED],
    /// The likeliest coldloop_fault beside the first; 0 where none is left that matters.
    pub rival: u32,
    /// 1 once a repair was done.
    pub after_repair: u32,
    /// Steps that can be undone.
    pub undoable: u32,
    /// Probability that the cause is none of the faults.
    pub none_of_these: f64,
}

sized!(
    ColdloopStanding,
    Self {
        size: 0,
        verdict: 0,
        named_count: 0,
        named: [0; COLDLOOP_MOST_NAMED],
        rival: 0,
        after_repair: 0,
        undoable: 0,
        none_of_these: NAN,
    }
);

/// A fault with its odds.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopRankedFault {
    /// A coldloop_fault.
    pub fault: u32,
    /// The likeliest other one.
    pub rival: u32,
    /// Its probability.
    pub probability: f64,
    /// The severities that explain the readings, in the fault's own measure: the least; NaN where it has none.
    pub severity_low: f64,
    /// The greatest.
    pub severity_high: f64,
}

/// What to do next: one of check, repair and handing over; none of them where nothing is left to do. Set `size` to
/// sizeof(coldloop_next_step).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopNextStep {
    /// sizeof(coldloop_next_step), so that the struct can grow.
    pub size: usize,
    /// A coldloop_check, or 0.
    pub check: u32,
    /// The coldloop_fault that is to be set right, or 0.
    pub repair: u32,
    /// 1 where the work is handed over to a specialist.
    pub hand_over: u32,
    /// The coldloop_reading_kind that the check fills, or 0.
    pub reading: u32,
    /// The coldloop_observation that it fills, or 0; the first one where it answers two questions.
    pub observation: u32,
    /// How many places of `cautions` are in use.
    pub caution_count: u32,
    /// Each a coldloop_caution, the gravest first: to be read before the step is done.
    pub cautions: [u32; COLDLOOP_MOST_CAUTIONS],
    /// Labour time, min.
    pub minutes: f64,
    /// Parts and materials, as minutes of work.
    pub parts_in_minutes: f64,
}

sized!(
    ColdloopNextStep,
    Self {
        size: 0,
        check: 0,
        repair: 0,
        hand_over: 0,
        reading: 0,
        observation: 0,
        caution_count: 0,
        cautions: [0; COLDLOOP_MOST_CAUTIONS],
        minutes: NAN,
        parts_in_minutes: NAN,
    }
);

/// Bytes that a session takes.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_size() -> usize {
    room::<Session>()
}

/// Makes a session without readings in `size` bytes of memory.
///
/// `settings` may be NULL, or a JSON object in the shape of the "settings" of a readings file.
///
/// Errors: NULL_POINTER, STRUCT_SIZE for less than coldloop_session_size() and for structs, UNKNOWN_NAME, NOT_FINITE, OUT_OF_RANGE,
/// INCONSISTENT for contradictions, NOT_UTF8 and those of a readings file for settings; nothing is written then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_init(
    session: *mut c_void,
    size: usize,
    system: *const ColdloopVehicleSystem,
    conditions: *const ColdloopConditions,
    settings: *const c_char,
    error: *mut ColdloopError,
) -> u32 {
    answer(error, || {
        has_room::<Session>(session, size)?;
        let system = system_of(&given(system)?)?;
        let conditions = conditions_of(&given(conditions)?)?;
        let settings = match settings.is_null() {
            true => Settings::default(),
            false => intake::settings_from_json(&text(settings)?).map_err(|refusal| refusal.error())?,
        };
        keep(session, &Session::new(system, conditions, settings)?);
        Ok(())
    })
}

/// Makes a session of a text: a stored session, or the start of one from any readings file, in TOML or JSON.
///
/// A refusal of the text is written to `refusal` as coldloop_diagnose writes it; `refusal` may be NULL.
///
/// Errors: those of coldloop_diagnose, and STRUCT_SIZE for less than coldloop_session_size(); the session is not written then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_from_text(
    session: *mut c_void,
    size: usize,
    stored: *const c_char,
    refusal: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    page(Page::new(refusal, capacity, length), error, || {
        has_room::<Session>(session, size)?;
        Ok(match intake::session_from_text(&text(stored)?) {
            Ok(file) => {
                keep(session, &file.session);
                Ok(String::new())
            }
            Err(refusal) => Err(refused(refusal)),
        })
    })
}

/// Adds a reading of a coldloop_reading_kind, which replaces one of the same kind: Pa from the datum, K, or engagements per second,
/// with its standard uncertainty in the same unit.
///
/// `datum` is COLDLOOP_DATUM_GAUGE or COLDLOOP_DATUM_ABSOLUTE for a pressure, and does not matter otherwise;
/// coldloop_gauge_uncertainty and coldloop_thermometer_uncertainty tell the uncertainty of an instrument.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME, MISSING_DATUM, NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_add_reading(
    session: *mut c_void,
    kind: u32,
    datum: u32,
    reading: f64,
    standard_uncertainty: f64,
    error: *mut ColdloopError,
) -> u32 {
    changed(session, error, |session| {
        let kind = member(kind, ReadingKind::from_code)?;
        Ok(session.add_reading(kind, measured(kind, datum, reading, standard_uncertainty)?)?)
    })
}

/// Adds the state of a recorder's log that is known best, and before it, as a step of its own, the speeds that were logged in that
/// state. `instruments` may be NULL for the usual ones. coldloop_session_log_standing judges all states of the log together.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, UNKNOWN_NAME; MISSING where no state has lasted long enough, and those of
/// coldloop_session_add_reading.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_add_log(
    session: *mut c_void,
    recorder: *const c_void,
    instruments: *const ColdloopInstruments,
    error: *mut ColdloopError,
) -> u32 {
    changed(session, error, |session| {
        let summary = kept::<Recorder>(recorder)?.summary();
        let instruments = instruments_of(instruments)?;
        let state = best(&summary)?;
        let before = session.case().conditions;
        let conditions = state.conditions(&before);
        if conditions != before {
            session.set_conditions(conditions)?;
        }
        Ok(session.add_log(&state.readings(&instruments), &summary.observations())?)
    })
}

/// Adds the answer to a question, a coldloop_observation: 1 for yes, 0 for no.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME, OUT_OF_RANGE for another answer, INCONSISTENT.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_add_observation(
    session: *mut c_void,
    observation: u32,
    seen: u32,
    error: *mut ColdloopError,
) -> u32 {
    changed(session, error, |session| {
        let observation = member(observation, Observation::from_code)?;
        Ok(session.add_observation(observation, yes_or_no(seen)?)?)
    })
}

/// Adds how a coldloop_check came out, a coldloop_result_kind: yes or no; of a check with two questions with the coldloop_observation
/// to which a yes belongs, 0 otherwise.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME; MISSING for a check whose result is a number (add it as a reading), INCONSISTENT.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_add_outcome(
    session: *mut c_void,
    check: u32,
    result: u32,
    question: u32,
    error: *mut ColdloopError,
) -> u32 {
    changed(session, error, |session| {
        let question = match question {
            0 => None,
            code => Some(member(code, Observation::from_code)?),
        };
        let check = member(check, Check::from_code)?;
        Ok(session.add_outcome(check, member(result, ResultKind::from_code)?, question)?)
    })
}

/// Replaces the conditions. Errors: as coldloop_session_init.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_set_conditions(
    session: *mut c_void,
    conditions: *const ColdloopConditions,
    error: *mut ColdloopError,
) -> u32 {
    changed(session, error, |session| {
        Ok(session.set_conditions(conditions_of(&given(conditions)?)?)?)
    })
}

/// Notes that a coldloop_fault was repaired: what is added from now on describes the vehicle after the repair. With 0 for `helped`
/// the repair did not help: its fault is ruled out, and all readings still hold.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME, OUT_OF_RANGE for another `helped` than 0 and 1, INCONSISTENT for a fault that
/// the system cannot have.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_add_repair(
    session: *mut c_void,
    fault: u32,
    helped: u32,
    error: *mut ColdloopError,
) -> u32 {
    changed(session, error, |session| {
        let fault = member(fault, Fault::from_code)?;
        Ok(match yes_or_no(helped)? {
            true => session.add_repair(fault),
            false => session.add_vain_repair(fault),
        }?)
    })
}

/// Takes the last step back; `undone` receives 1, or 0 where nothing was added yet.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, NOT_AVAILABLE where only steps are left that are too old.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_undo(session: *mut c_void, undone: *mut u32, error: *mut ColdloopError) -> u32 {
    code(undone, error, || {
        let mut known = kept::<Session>(session)?;
        let undone = match known.undo() {
            Undone::Step(_) => 1,
            Undone::Nothing => 0,
            Undone::TooOld => return Err(Error::of(ErrorKind::NotAvailable, Quantity::Rows).into()),
            _ => return Err(Error::of(ErrorKind::NotAvailable, Quantity::Rows).into()),
        };
        keep(session, &*known);
        Ok(undone)
    })
}

/// The verdict now. Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, and those of coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_standing(
    session: *const c_void,
    standing: *mut ColdloopStanding,
    error: *mut ColdloopError,
) -> u32 {
    record(standing, error, || {
        let known = kept::<Session>(session)?;
        Ok(standing_of(&known.judge()?, &known))
    })
}

/// The faults that were considered with their odds, the most likely first. At most `capacity` of them go to `faults`; `count` receives
/// how many there are.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, and those of coldloop_diagnose; `count` is 0 then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_odds(
    session: *const c_void,
    faults: *mut ColdloopRankedFault,
    capacity: usize,
    count: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    odds_of(faults, capacity, count, error, || {
        let known = kept::<Session>(session)?;
        Ok((Box::new(known.judge()?), known))
    })
}

/// What to do next, with its cautions and the entry that its result belongs to; it is held from here on.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, and those of coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_next(
    session: *mut c_void,
    next: *mut ColdloopNextStep,
    error: *mut ColdloopError,
) -> u32 {
    record(next, error, || {
        let mut known = kept::<Session>(session)?;
        let step = known.next_step()?;
        let planned = known.plan()?.steps.first().copied();
        keep(session, &*known);
        let Some(step) = step else {
            return Ok(ColdloopNextStep::BLANK);
        };
        let mut told = ColdloopNextStep {
            minutes: planned.map_or(NAN, |planned| planned.minutes),
            parts_in_minutes: planned.map_or(NAN, |planned| planned.parts_in_minutes),
            ..ColdloopNextStep::BLANK
        };
        match step.action {
            Action::Check(check) => told.check = check.code(),
            Action::Repair(fault) => told.repair = fault.code(),
            Action::HandOver => told.hand_over = 1,
            _ => return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name).into()),
        }
        match step.key {
            Some(Key::Reading(kind)) => told.reading = kind.code(),
            Some(Key::Observation(observation)) => told.observation = observation.code(),
            None => {}
            Some(_) => return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name).into()),
        }
        let cautions = step_cautions(step.action, &known.case().system);
        for (place, caution) in told.cautions.iter_mut().zip(cautions.iter()) {
            *place = caution.code();
            told.caution_count += 1;
        }
        Ok(told)
    })
}

/// The session as a readings file in TOML, from which it is resumed to the same bits. `file` is the text that it began with, whose
/// "meta" and further tables are kept as they were written, or NULL.
///
/// Buffer, capacity and length as for coldloop_diagnose.
///
/// Errors: NULL_POINTER, NOT_INITIALISED, those of a readings file for `file`; NOT_AVAILABLE for a pressure table or earlier visits of a
/// text that is not given.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_session_text(
    session: *const c_void,
    file: *const c_char,
    stored: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    page(Page::new(stored, capacity, length), error, || {
        let known = kept::<Session>(session)?;
        let file = match file.is_null() {
            true => None,
            false => Some(text(file)?),
        };
        let written = file.map_or_else(
            || Ok(Box::new(SessionFile::new((*known).clone()))),
            |file| intake::session_from_text(&file),
        );
        let written = written.and_then(|mut file| {
            file.session = *known;
            intake::session_to_toml(&file)
        });
        Ok(written.map_err(refused))
    })
}

/// The state of a visit by a judgement.
pub(crate) fn standing_of(judgement: &Judgement, known: &Session) -> ColdloopStanding {
    let verdict = judgement.verdict();
    let mut told = ColdloopStanding {
        verdict: verdict.kind.code(),
        rival: verdict.rival.map_or(0, Fault::code),
        after_repair: u32::from(known.is_after_repair()),
        undoable: u32::try_from(known.undoable()).unwrap_or(u32::MAX),
        none_of_these: judgement.none_of_these(),
        ..ColdloopStanding::BLANK
    };
    for (place, fault) in told.named.iter_mut().zip(verdict.faults.iter()) {
        *place = fault.code();
        told.named_count += 1;
    }
    told
}

/// Writes the odds by the judgement that `body` makes of a session.
pub(crate) fn odds_of(
    faults: *mut ColdloopRankedFault,
    capacity: usize,
    count: *mut usize,
    error: *mut ColdloopError,
    body: impl FnOnce() -> Result<(Box<Judgement>, Box<Session>), Failure>,
) -> u32 {
    let mut told = Vec::new();
    let status = answer(error, || {
        if count.is_null() || (faults.is_null() && capacity > 0) {
            return Err(Failure::Door(ColdloopStatus::NullPointer));
        }
        let (judgement, known) = body()?;
        let mut settings = known.settings();
        settings.next_checks = false;
        let diagnosis = judgement.diagnosis(&settings)?;
        told.extend(diagnosis.faults.iter().map(|ranked| ColdloopRankedFault {
            fault: ranked.fault.code(),
            rival: ranked.rival.code(),
            probability: ranked.probability,
            severity_low: ranked.severity.map_or(NAN, |(low, _)| low),
            severity_high: ranked.severity.map_or(NAN, |(_, high)| high),
        }));
        Ok(())
    });
    let mut places = Answers::new(faults, size_of::<ColdloopRankedFault>().cast_signed());
    for ranked in told.iter().take(if faults.is_null() { 0 } else { capacity }) {
        places.put(*ranked);
    }
    write(count, told.len());
    status
}

/// Runs `body` on a copy of the session, which replaces the session if nothing is refused.
fn changed(
    session: *mut c_void,
    error: *mut ColdloopError,
    body: impl FnOnce(&mut Session) -> Result<(), Failure>,
) -> u32 {
    answer(error, || {
        let mut known = kept::<Session>(session)?;
        body(&mut known)?;
        keep(session, &*known);
        Ok(())
    })
}
