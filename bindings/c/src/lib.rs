//! The C door of coldloop: check, convert, call, map.
//!
//! The modules are the chapters of `coldloop.h`, which is generated from them. Out-pointers arrive as
//! `Option<&mut MaybeUninit<_>>`, which is what a C pointer is that may be null; raw pointers, for text and arrays,
//! are read in `boundary`. Each exported function runs inside `boundary::answer`, returns a constant, or is arithmetic
//! that cannot panic, so that no panic crosses into C.

pub mod air;
mod boundary;
pub mod charge;
pub mod circuit;
pub mod diagnosis;
pub mod error;
pub mod expected;
pub mod moist_air;
pub mod names;
pub mod refrigerant;
pub mod saturation;
pub mod state;
pub mod units;
pub mod version;
pub mod vocabulary;
