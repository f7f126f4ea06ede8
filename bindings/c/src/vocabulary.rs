//! Names of the numbers
//!
//! Each vocabulary of this header has its ids, which are those of readings files and answers. Back from an id,
//! case does not matter.
//!
//! Generated from tables/names.toml.

use crate::boundary::{code, named};
use crate::error::ColdloopError;
use crate::memory::text;
use crate::names as n;
use core::ffi::{CStr, c_char};

/// The id of a coldloop_quantity, such as "temperature"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_quantity_name(quantity: u32) -> *const c_char {
    n::ColdloopQuantity::text(quantity).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_quantity of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_quantity_from_name(
    name: *const c_char,
    quantity: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(quantity, error, || {
        Ok(named(coldloop::Quantity::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_refrigerant, such as "R-134a"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerant_name(refrigerant: u32) -> *const c_char {
    n::ColdloopRefrigerant::text(refrigerant).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_refrigerant of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_refrigerant_from_name(
    name: *const c_char,
    refrigerant: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(refrigerant, error, || {
        Ok(named(coldloop::Refrigerant::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_safety_group, such as "A1"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_safety_group_name(safety_group: u32) -> *const c_char {
    n::ColdloopSafetyGroup::text(safety_group).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_safety_group of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_safety_group_from_name(
    name: *const c_char,
    safety_group: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(safety_group, error, || {
        Ok(named(coldloop::SafetyGroup::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_phase, such as "liquid"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_phase_name(phase: u32) -> *const c_char {
    n::ColdloopPhase::text(phase).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_phase of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_phase_from_name(name: *const c_char, phase: *mut u32, error: *mut ColdloopError) -> u32 {
    code(phase, error, || {
        Ok(named(coldloop::Phase::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_reference, such as "liquid-at-0-celsius"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_reference_name(reference: u32) -> *const c_char {
    n::ColdloopReference::text(reference).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_reference of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_reference_from_name(
    name: *const c_char,
    reference: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(reference, error, || {
        Ok(named(coldloop::Reference::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_expansion, such as "txv"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_expansion_name(expansion: u32) -> *const c_char {
    n::ColdloopExpansion::text(expansion).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_expansion of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_expansion_from_name(
    name: *const c_char,
    expansion: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(expansion, error, || {
        Ok(named(coldloop::Expansion::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_compressor, such as "fixed-clutch"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_compressor_name(compressor: u32) -> *const c_char {
    n::ColdloopCompressor::text(compressor).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_compressor of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_compressor_from_name(
    name: *const c_char,
    compressor: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(compressor, error, || {
        Ok(named(coldloop::Compressor::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_air_source, such as "fresh"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_source_name(air_source: u32) -> *const c_char {
    n::ColdloopAirSource::text(air_source).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_air_source of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_source_from_name(
    name: *const c_char,
    air_source: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(air_source, error, || {
        Ok(named(coldloop::AirSource::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_gauge_class, such as "class-1.0"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_gauge_class_name(gauge_class: u32) -> *const c_char {
    n::ColdloopGaugeClass::text(gauge_class).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_gauge_class of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_gauge_class_from_name(
    name: *const c_char,
    gauge_class: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(gauge_class, error, || {
        Ok(named(coldloop::GaugeClass::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_thermometer, such as "clamp-thermocouple"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_thermometer_name(thermometer: u32) -> *const c_char {
    n::ColdloopThermometer::text(thermometer).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_thermometer of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_thermometer_from_name(
    name: *const c_char,
    thermometer: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(thermometer, error, || {
        Ok(named(coldloop::Thermometer::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_fault, such as "no-fault"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_fault_name(fault: u32) -> *const c_char {
    n::ColdloopFault::text(fault).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_fault of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_fault_from_name(name: *const c_char, fault: *mut u32, error: *mut ColdloopError) -> u32 {
    code(fault, error, || {
        Ok(named(coldloop::Fault::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_verdict, such as "healthy"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_verdict_name(verdict: u32) -> *const c_char {
    n::ColdloopVerdict::text(verdict).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_verdict of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_verdict_from_name(name: *const c_char, verdict: *mut u32, error: *mut ColdloopError) -> u32 {
    code(verdict, error, || {
        Ok(named(coldloop::VerdictKind::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_pressure_match, such as "agrees"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_pressure_match_name(pressure_match: u32) -> *const c_char {
    n::ColdloopPressureMatch::text(pressure_match).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_pressure_match of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_pressure_match_from_name(
    name: *const c_char,
    pressure_match: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(pressure_match, error, || {
        Ok(named(coldloop::PressureMatch::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_leak_phase, such as "vapour"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_leak_phase_name(leak_phase: u32) -> *const c_char {
    n::ColdloopLeakPhase::text(leak_phase).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_leak_phase of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_leak_phase_from_name(
    name: *const c_char,
    leak_phase: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(leak_phase, error, || {
        Ok(named(coldloop::LeakPhase::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_low_port, such as "evaporator"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_low_port_name(low_port: u32) -> *const c_char {
    n::ColdloopLowPort::text(low_port).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_low_port of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_low_port_from_name(
    name: *const c_char,
    low_port: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(low_port, error, || {
        Ok(named(coldloop::LowPort::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_high_port, such as "discharge-line"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_high_port_name(high_port: u32) -> *const c_char {
    n::ColdloopHighPort::text(high_port).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_high_port of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_high_port_from_name(
    name: *const c_char,
    high_port: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(high_port, error, || {
        Ok(named(coldloop::HighPort::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_reading_kind, such as "low_side"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_reading_kind_name(reading_kind: u32) -> *const c_char {
    n::ColdloopReadingKind::text(reading_kind).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_reading_kind of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_reading_kind_from_name(
    name: *const c_char,
    reading_kind: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(reading_kind, error, || {
        Ok(named(coldloop::ReadingKind::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_observation, such as "clutch_engaged"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_observation_name(observation: u32) -> *const c_char {
    n::ColdloopObservation::text(observation).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_observation of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_observation_from_name(
    name: *const c_char,
    observation: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(observation, error, || {
        Ok(named(coldloop::Observation::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_check, such as "read-low-side"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_check_name(check: u32) -> *const c_char {
    n::ColdloopCheck::text(check).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_check of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_check_from_name(name: *const c_char, check: *mut u32, error: *mut ColdloopError) -> u32 {
    code(check, error, || {
        Ok(named(coldloop::Check::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_result_kind, such as "yes"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_result_kind_name(result_kind: u32) -> *const c_char {
    n::ColdloopResultKind::text(result_kind).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_result_kind of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_result_kind_from_name(
    name: *const c_char,
    result_kind: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(result_kind, error, || {
        Ok(named(coldloop::ResultKind::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_caution, such as "pressure"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_caution_name(caution: u32) -> *const c_char {
    n::ColdloopCaution::text(caution).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_caution of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_caution_from_name(name: *const c_char, caution: *mut u32, error: *mut ColdloopError) -> u32 {
    code(caution, error, || {
        Ok(named(coldloop::Caution::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_channel, such as "low_side"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_channel_name(channel: u32) -> *const c_char {
    n::ColdloopChannel::text(channel).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_channel of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_channel_from_name(name: *const c_char, channel: *mut u32, error: *mut ColdloopError) -> u32 {
    code(channel, error, || {
        Ok(named(coldloop::Channel::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_log_phase, such as "empty"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_log_phase_name(log_phase: u32) -> *const c_char {
    n::ColdloopLogPhase::text(log_phase).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_log_phase of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_log_phase_from_name(
    name: *const c_char,
    log_phase: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(log_phase, error, || {
        Ok(named(coldloop::LogPhase::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_log_note, such as "time-not-finite"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_log_note_name(log_note: u32) -> *const c_char {
    n::ColdloopLogNote::text(log_note).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_log_note of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_log_note_from_name(
    name: *const c_char,
    log_note: *mut u32,
    error: *mut ColdloopError,
) -> u32 {
    code(log_note, error, || {
        Ok(named(coldloop::LogNote::from_id(&text(name)?))?.code())
    })
}

/// The id of a coldloop_picture, such as "readings"; NULL for a number that is none.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_picture_name(picture: u32) -> *const c_char {
    n::ColdloopPicture::text(picture).map_or(core::ptr::null(), CStr::as_ptr)
}

/// The coldloop_picture of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_picture_from_name(name: *const c_char, picture: *mut u32, error: *mut ColdloopError) -> u32 {
    code(picture, error, || {
        Ok(named(coldloop::Picture::from_id(&text(name)?))?.code())
    })
}
