//! The C door of coldloop: check, convert, call, map.
//!
//! The modules are the chapters of `coldloop.h`, which is generated from them. Pointers arrive raw, and only
//! `memory` reads and writes the memory behind them: it copies all arguments before an answer is written, and makes no reference
//! to that memory, because a caller may pass the same memory twice. Each exported function runs inside `boundary::answer`, returns a
//! constant, or is arithmetic that cannot panic, so that no panic crosses into C.

pub mod air;
mod arrays;
mod boundary;
pub mod charge;
pub mod circuit;
#[cfg(test)]
mod corpus;
pub mod diagnosis;
pub mod error;
pub mod expected;
#[cfg(test)]
mod in_place;
pub mod log;
pub mod log_verdict;
mod memory;
pub mod moist_air;
pub mod names;
pub mod refrigerant;
pub mod saturation;
pub mod session;
mod session_input;
pub mod state;
pub mod transport;
pub mod units;
pub mod version;
pub mod vocabulary;
