//! Diagnosis, plan, proof and simulation
//!
//! Text on both sides, for every language that can pass a string. The readings are those of a readings file, as JSON or
//! as TOML of the same shape: "system", "conditions", "readings", "observations". A quantity is text with its unit, and
//! a pressure says its datum:
//!
//!     const char *readings =
//!         "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
//!         " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
//!         " \"readings\": {\"low_side\": \"37 psig\", \"high_side\": \"172 psig\", \"vent\": \"40 degF\"}}";
//!     size_t length;
//!     char answer[65536];
//!     uint32_t status = coldloop_diagnose(readings, answer, sizeof answer, &length, NULL);
//!
//! "settings" may say how to judge: "priors" of the faults, thresholds, "prices", the chances of "looks", and the
//! "counts" of confirmed cases. What was done to the vehicle since may stand beside them: "pressure_test",
//! "evacuation", "hold", "charge", "pull_down" and "after", the conditions and readings after the repair.
//!
//! Input that cannot be read is refused: the status says why, and the answer is {"refused": {"key": ..., "value": ...,
//! "message": ..., "mistakes": [...]}}. The message has a line for every mistake, up to a dozen, which says what to write
//! instead; "mistakes" has the same one by one, each with "key", "value", "line", "column" and "message". Status, key and
//! value are those of the first.
//!
//! The functions here write text as snprintf does. At most `capacity` bytes go to the buffer, the zero byte
//! included, and `length` (may be NULL) receives the length of the whole text without it: when `length` is not less than
//! `capacity` the text was cut, after a whole character, and a second call with length + 1 bytes has all of it. The
//! buffer may be NULL to ask for the length. NULL_POINTER, NOT_UTF8 and INTERNAL leave the text empty.

use crate::boundary::{Failure, Page, member, page};
use crate::error::ColdloopError;
use crate::memory::text;
use coldloop::intake::{self, Refusal, Visit};
use coldloop::vehicle::simulate;
use coldloop::{Error, Fault, report};
use core::ffi::c_char;

/// Diagnoses a vehicle from its readings.
///
/// The answer is one JSON object: "verdict", "faults" with their odds and reasons, "expected", "derived", "next_checks",
/// "cautions", "quality"; and "proof", as coldloop_prove gives it, where something was done since.
///
/// Errors: every kind that a readings file can be refused for, and those of the text above.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_diagnose(
    readings: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(answer, capacity, length);
    told(readings, page, error, |readings| report::visit_json(&visit(readings)?))
}

/// The same diagnosis as a report for people, with plan and proof, in the units in which the readings were written; a
/// refusal is JSON as above. Errors as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_report(
    readings: *const c_char,
    report: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(report, capacity, length);
    told(readings, page, error, |readings| {
        report::visit_text(&visit(readings)?, report::Units::as_written(readings))
    })
}

/// What to do next, three steps deep: the checks worth their cost and the repairs that they lead to, by the readings that
/// coldloop_diagnose takes. Times are those of work, in minutes.
///
/// The answer is one JSON object: "expected_minutes", "without_checks_minutes", "steps", each step with its cautions, its
/// cost and its "branches", one for every result.
///
/// Errors: as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_plan(
    readings: *const c_char,
    plan: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(plan, capacity, length);
    told(readings, page, error, |readings| {
        let visit = visit(readings)?;
        let plan = visit.diagnose()?.plan(&visit.settings);
        Ok(report::plan_json(&plan, &visit.case.system))
    })
}

/// What was done to a vehicle, judged: whether it was dry, tight and rightly charged, and whether it cools now, by the
/// readings that coldloop_diagnose takes:
///
///     {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
///      "conditions": {"ambient": "20 °C", "altitude": "1600 m"},
///      "evacuation": {"reached": "420 micron", "coldest": "18 °C"},
///      "hold": {"samples": [{"after": "0 min", "pressure": "420 micron"}, {"after": "20 min", "pressure": "450 micron"}]}}
///
/// The answer is one JSON object: "pressure_test", "evacuation", "hold", "charge", "pull_down", "repair", each with its
/// "finding", what that "says" and its figures in plain SI; null for what was not done.
///
/// Errors: as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_prove(
    readings: *const c_char,
    proof: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(proof, capacity, length);
    told(readings, page, error, |readings| {
        Ok(report::proof_json(&visit(readings)?.prove()?))
    })
}

/// What a vehicle would read: the steady state of the whole system in its conditions, with its faults.
///
/// "system" and "conditions" are those of a readings file; "vehicle" may name the class ("small-car", "car", "large-car",
/// "van", "bus"; a car where it is left out) and "faults" gives each fault its severity, a wrong refrigerant its name or
/// also how much of the charge it is, as "30 % R-22":
///
///     {"vehicle": {"class": "van"},
///      "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal"},
///      "conditions": {"ambient": "30 °C", "altitude": "1600 m"},
///      "faults": {"undercharge": "40 %"}}
///
/// The answer is one JSON object: "readings", "swing", "looks", "states", "figures", "solver", in plain SI.
///
/// Errors: as coldloop_diagnose; NOT_AVAILABLE for a fault that the system cannot have; NO_CONVERGENCE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_simulate(
    trial: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(answer, capacity, length);
    told(trial, page, error, |trial| {
        let trial = intake::trial_from_text(trial)?;
        let simulation = simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
        Ok(report::simulation_json(&simulation, trial.conditions.surroundings))
    })
}

/// What a program has to know to ask the right questions about a system: the "system" of a readings file, whose other tables
/// are not looked at.
///
/// The answer is one JSON object: "faults" that the system can have (what each "says", the "measure" of its severity, its
/// "prior", its "repair" with cost and cautions), "checks" that exist for it (with cost, cautions and the "questions" that
/// they answer) and "observations", the entries of that table of a readings file.
///
/// Errors: as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_catalogue(
    readings: *const c_char,
    catalogue: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(catalogue, capacity, length);
    told(readings, page, error, |readings| {
        Ok(report::catalogue_json(&intake::system_from_text(readings)?))
    })
}

/// Counts one confirmed case: `counts` is the TOML text of the cases so far (empty for none) and `learned` receives that
/// text with one case more, to be kept and given back as the "counts" of the "settings".
///
/// `readings` are those of the case, of which the observations before the repair count; `cause` is the coldloop_fault that
/// the repair confirmed, or 0 for a cause that is none of them.
///
/// Errors: as coldloop_diagnose; UNKNOWN_NAME for a number that is neither 0 nor a coldloop_fault.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_record(
    counts: *const c_char,
    readings: *const c_char,
    cause: u32,
    learned: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let out = Page::new(learned, capacity, length);
    page(out, error, || {
        let (counts, readings) = (text(counts)?, text(readings)?);
        let cause = match cause {
            0 => None,
            code => Some(member(code, Fault::from_code).map_err(Failure::Library)?),
        };
        Ok(recorded(&counts, &readings, cause).map_err(refused))
    })
}

fn recorded(counts: &str, readings: &str, cause: Option<Fault>) -> Result<String, Refusal> {
    let mut counts = intake::counts_from_toml(counts)?;
    counts.record(cause, &visit(readings)?.case.observations);
    Ok(intake::counts_to_toml(&counts))
}

fn visit(readings: &str) -> Result<Visit, Refusal> {
    intake::visit_from_text(readings)
}

/// Runs `body` on a text from C and writes what it tells, or the refusal.
fn told(
    given: *const c_char,
    out: Page,
    error: *mut ColdloopError,
    body: impl FnOnce(&str) -> Result<String, Refusal>,
) -> u32 {
    page(out, error, || Ok(body(&text(given)?).map_err(refused)))
}

fn refused(refusal: Refusal) -> (Error, String) {
    (refusal.error(), report::refusal_json(&refusal))
}
