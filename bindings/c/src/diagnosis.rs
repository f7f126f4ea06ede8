//! Diagnosis
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
//! "next_checks", "cautions", "quality". Readings that cannot be read are refused: the status says why, and the answer
//! is {"refused": {"key": ..., "value": ..., "message": ...}}, the message saying what to write instead.

use crate::boundary::{Failure, answer as answered, text, write_text};
use crate::error::ColdloopError;
use coldloop::diagnosis::{Settings, diagnose};
use coldloop::{Error, intake, report};
use core::ffi::c_char;
use core::mem::MaybeUninit;
use serde_json::json;

/// Diagnoses a vehicle from its readings.
///
/// At most `capacity` bytes are written to `answer`, the zero byte included, and `length` (may be NULL) receives the
/// length of the whole answer without it, as snprintf tells it: when `length` is not less than `capacity` the answer
/// was cut, and a second call with length + 1 bytes has all of it. `answer` may be NULL to ask for the length.
///
/// Errors: every kind that a readings file can be refused for; NULL_POINTER, NOT_UTF8 and INTERNAL leave the answer
/// empty.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_diagnose(
    readings_json: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    let mut written = String::new();
    let status = answered(error, || {
        let outcome = diagnosed(text(readings_json)?);
        let refused = outcome.as_ref().err().map(|(error, _)| *error);
        written = outcome.unwrap_or_else(|(_, refusal)| refusal);
        refused.map_or(Ok(()), |error| Err(Failure::Library(error)))
    });
    let whole = write_text(&written, answer, capacity);
    if let Some(length) = length {
        length.write(whole);
    }
    status
}

fn diagnosed(readings_json: &str) -> Result<String, (Error, String)> {
    let case = intake::case_from_json(readings_json).map_err(|refusal| {
        (
            refusal.error,
            refused(&refusal.key, &refusal.value, &refusal.to_string()),
        )
    })?;
    diagnose(&case, &Settings::default())
        .and_then(|diagnosis| report::json(&case, &diagnosis))
        .map_err(|error| (error, refused("", "", &error.to_string())))
}

fn refused(key: &str, value: &str, message: &str) -> String {
    json!({ "refused": { "key": key, "value": value, "message": message } }).to_string()
}
