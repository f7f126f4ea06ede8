//! Errors
//!
//! A status is enough to branch on; coldloop_status_text gives its sentence. A program that tells its user what to
//! change passes a coldloop_error and prints coldloop_error_message:
//!
//!     coldloop_error error = {.size = sizeof error};
//!     char message[256];
//!     if (coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 500.0, &pressure_pa_abs, &error))
//!         coldloop_error_message(&error, message, sizeof message);

use crate::boundary::{Record, sized};
use crate::memory::{given, write_text};
use crate::names::ColdloopStatus;
use coldloop::{ErrorKind, Quantity};
use core::ffi::{CStr, c_char};

/// The details of a failure. Set `size` to sizeof(coldloop_error) before the call; the call fills in the rest.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopError {
    /// sizeof(coldloop_error), so that the struct can grow.
    pub size: usize,
    /// A coldloop_status, the same that the function returns.
    pub status: u32,
    /// The coldloop_quantity that the failure concerns; 0 where there is none.
    pub quantity: u32,
    /// The value given, in SI; NaN where there is none.
    pub value: f64,
    /// The lowest value that has an answer, in SI; NaN where there is none.
    pub low: f64,
    /// The highest value that has an answer, in SI; NaN where there is none.
    pub high: f64,
}

sized!(
    ColdloopError,
    Self {
        size: 0,
        status: ColdloopStatus::Ok.code(),
        quantity: 0,
        value: f64::NAN,
        low: f64::NAN,
        high: f64::NAN,
    }
);

impl ColdloopError {
    pub(crate) fn from_door(status: ColdloopStatus) -> Self {
        Self {
            status: status.code(),
            ..Self::BLANK
        }
    }

    pub(crate) fn from_library(error: coldloop::Error) -> Self {
        let coldloop::Error {
            kind,
            quantity,
            value,
            low,
            high,
        } = error;
        Self {
            size: 0,
            status: kind.code(),
            quantity: quantity.code(),
            value,
            low,
            high,
        }
    }

    fn message(&self) -> String {
        let library = ErrorKind::from_code(self.status).zip(Quantity::from_code(self.quantity));
        match library {
            Some((kind, quantity)) => coldloop::Error {
                kind,
                quantity,
                value: self.value,
                low: self.low,
                high: self.high,
            }
            .to_string(),
            None => status_text(self.status).to_string_lossy().into_owned(),
        }
    }
}

fn status_text(status: u32) -> &'static CStr {
    ColdloopStatus::text(status).unwrap_or(c"This is not a status of coldloop.")
}

/// One sentence for a status; for a number that is no status, a sentence that says so.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_status_text(status: u32) -> *const c_char {
    status_text(status).as_ptr()
}

/// Writes a message that names quantity, value and bounds, and returns its length without the zero byte.
///
/// At most `capacity` bytes are written, the zero byte included, as snprintf does; a longer message is cut after a
/// whole character. `buffer` may be NULL to ask for the length. An `error` that is
/// NULL or whose size is too small has an empty message.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_error_message(error: *const ColdloopError, buffer: *mut c_char, capacity: usize) -> usize {
    let error = given(error).ok();
    let message = std::panic::catch_unwind(|| error.as_ref().map(ColdloopError::message));
    let message = message.unwrap_or_else(|_| {
        Some(
            status_text(ColdloopStatus::Internal.code())
                .to_string_lossy()
                .into_owned(),
        )
    });
    write_text(&message.unwrap_or_default(), buffer, capacity)
}
