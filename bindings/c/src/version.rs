//! Version
//!
//! The macros above tell the header's version, the function the library's. Within one major version a newer library
//! serves an older header; compare them at start if they may come from different places.

use crate::names::VERSION;
use core::ffi::c_char;

/// The version of the library as "major.minor.patch".
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_version() -> *const c_char {
    VERSION.as_ptr()
}
