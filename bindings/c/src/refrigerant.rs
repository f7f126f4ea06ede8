//! Refrigerants
//!
//! A refrigerant is a number from coldloop_refrigerant; text names it by its ANSI/ASHRAE Standard 34 designation.

use crate::boundary::{Failure, answer, text};
use crate::error::ColdloopError;
use crate::names::{ColdloopRefrigerant, ColdloopStatus};
use coldloop::{Error, ErrorKind, Quantity, Refrigerant};
use core::ffi::{CStr, c_char};
use core::mem::MaybeUninit;

/// The designation of a refrigerant, such as "R-134a"; NULL for a number that is no coldloop_refrigerant.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerant_name(refrigerant: u32) -> *const c_char {
    ColdloopRefrigerant::text(refrigerant).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The refrigerant of a designation, which may be written R-134a, R134a, r134a or 134a; 0 on failure.
///
/// Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerant_from_name(
    name: *const c_char,
    refrigerant: Option<&mut MaybeUninit<u32>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    let Some(refrigerant) = refrigerant else {
        return answer(error, || Err(Failure::Door(ColdloopStatus::NullPointer)));
    };
    refrigerant.write(0);
    answer(error, || {
        let found = Refrigerant::from_id(text(name)?);
        refrigerant.write(found.ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))?.code());
        Ok(())
    })
}
