//! Diagnosis and simulation
//!
//! One call with text on both sides, for every language that can pass a string. The readings are a JSON object of the
//! same shape as a readings file: "system", "conditions", "readings", "observations"; a quantity is text with its unit,
//! and a pressure says its datum:
//!
//!     const char *readings =
//!         "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
//!         " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
//!         " \"readings\": {\"low_side\": \"37 psig\", \"high_side\": \"172 psig\", \"vent\": \"40 degF\"}}";
//!     size_t length;
//!     char answer[65536];
//!     uint32_t status = coldloop_diagnose(readings, answer, sizeof answer, &length, NULL);
//!
//! The answer is one JSON object: "verdict", "faults" with their odds and reasons, "expected", "derived",
//! "next_checks", "cautions", "quality". Input that cannot be read is refused: the status says why, and the answer
//! is {"refused": {"key": ..., "value": ..., "message": ...}}, the message saying what to write instead.
//!
//! The functions here write text as snprintf does. At most `capacity` bytes go to the buffer, the zero byte
//! included, and `length` (may be NULL) receives the length of the whole text without it: when `length` is not less than
//! `capacity` the text was cut, after a whole character, and a second call with length + 1 bytes has all of it. The
//! buffer may be NULL to ask for the length. NULL_POINTER, NOT_UTF8 and INTERNAL leave the text empty.

use crate::boundary::{Page, page, text};
use crate::error::ColdloopError;
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::intake::{self, Refusal};
use coldloop::vehicle::simulate;
use coldloop::{Error, report};
use core::ffi::c_char;
use core::mem::MaybeUninit;
use serde_json::json;

/// Diagnoses a vehicle from its readings.
///
/// Errors: every kind that a readings file can be refused for, and those of the text above.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_diagnose(
    readings_json: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    let out = Page {
        buffer: answer,
        capacity,
        length,
    };
    page(out, error, || {
        let readings = text(readings_json)?;
        Ok(diagnosed(readings, report::json))
    })
}

/// The same diagnosis as a report for people, in the units in which the readings were written; a refusal is JSON as
/// above. Errors as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_report(
    readings_json: *const c_char,
    report: *mut c_char,
    capacity: usize,
    length: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    let out = Page {
        buffer: report,
        capacity,
        length,
    };
    page(out, error, || {
        let readings = text(readings_json)?;
        let units = report::Units::as_written(readings);
        Ok(diagnosed(readings, |case, diagnosis| {
            report::text(case, diagnosis, units)
        }))
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
    readings_json: *const c_char,
    plan: *mut c_char,
    capacity: usize,
    length: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    let out = Page {
        buffer: plan,
        capacity,
        length,
    };
    page(out, error, || {
        let readings = text(readings_json)?;
        Ok(diagnosed(readings, |case, diagnosis| {
            Ok(report::plan_json(&diagnosis.plan(&Settings::default()), &case.system))
        }))
    })
}

/// What a vehicle would read: the steady state of the whole system in its conditions, with its faults.
///
/// "system" and "conditions" are those of a readings file; "vehicle" may name the class ("small-car", "car", "large-car",
/// "van", "bus"; a car where it is left out) and "faults" gives each fault its severity, or the other refrigerant:
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
    trial_json: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    let out = Page {
        buffer: answer,
        capacity,
        length,
    };
    page(out, error, || {
        let trial = text(trial_json)?;
        Ok(simulated(trial))
    })
}

fn diagnosed(
    readings_json: &str,
    told: impl Fn(&Case, &Diagnosis) -> Result<String, Error>,
) -> Result<String, (Error, String)> {
    let case = intake::case_from_json(readings_json).map_err(refused)?;
    diagnose(&case, &Settings::default())
        .and_then(|diagnosis| told(&case, &diagnosis))
        .map_err(failed)
}

fn simulated(trial_json: &str) -> Result<String, (Error, String)> {
    let trial = intake::trial_from_json(trial_json).map_err(refused)?;
    simulate(&trial.vehicle, &trial.conditions, &trial.faults)
        .map(|simulation| report::simulation_json(&simulation, trial.conditions.surroundings))
        .map_err(failed)
}

fn refused(refusal: Refusal) -> (Error, String) {
    let message = refusal.to_string();
    (refusal.error, refusal_json(&refusal.key, &refusal.value, &message))
}

fn failed(error: Error) -> (Error, String) {
    (error, refusal_json("", "", &error.to_string()))
}

fn refusal_json(key: &str, value: &str, message: &str) -> String {
    json!({ "refused": { "key": key, "value": value, "message": message } }).to_string()
}
