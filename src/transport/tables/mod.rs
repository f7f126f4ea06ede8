//! The correlations of every refrigerant that has any.
//!
//! Generated from tables/transport by tables/compile; edit the tables, not this file.

mod r12;
mod r1234yf;
mod r1234zee;
mod r125;
mod r134a;
mod r152a;
mod r22;
mod r290;
mod r32;
mod r600a;
mod r744;

use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::transport::Transport;

/// What is published of the transport properties of a refrigerant.
///
/// Errors: `NotAvailable` where nothing is, and for a blend.
#[allow(clippy::wildcard_enum_match_arm)] // a refrigerant without a table has no correlation
pub const fn of(refrigerant: Refrigerant) -> Result<&'static Transport, Error> {
    match refrigerant {
        Refrigerant::R12 => Ok(&r12::R12),
        Refrigerant::R1234yf => Ok(&r1234yf::R1234YF),
        Refrigerant::R1234zeE => Ok(&r1234zee::R1234ZEE),
        Refrigerant::R125 => Ok(&r125::R125),
        Refrigerant::R134a => Ok(&r134a::R134A),
        Refrigerant::R152a => Ok(&r152a::R152A),
        Refrigerant::R22 => Ok(&r22::R22),
        Refrigerant::R290 => Ok(&r290::R290),
        Refrigerant::R32 => Ok(&r32::R32),
        Refrigerant::R600a => Ok(&r600a::R600A),
        Refrigerant::R744 => Ok(&r744::R744),
        _ => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),
    }
}
