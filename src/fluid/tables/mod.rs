//! The constants of the equation of state of every pure refrigerant.
//!
//! Generated from tables/refrigerants and tables/blends by tables/compile; edit the tables, not this file.

pub(crate) mod r1132e;
pub(crate) mod r115;
pub(crate) mod r12;
pub(crate) mod r1234yf;
pub(crate) mod r1234zee;
pub(crate) mod r124;
pub(crate) mod r125;
pub(crate) mod r1336mzze;
pub(crate) mod r134a;
pub(crate) mod r13i1;
pub(crate) mod r142b;
pub(crate) mod r143a;
pub(crate) mod r152a;
pub(crate) mod r218;
pub(crate) mod r22;
pub(crate) mod r227ea;
pub(crate) mod r290;
pub(crate) mod r32;
pub(crate) mod r600;
pub(crate) mod r600a;
pub(crate) mod r601;
pub(crate) mod r601a;
pub(crate) mod r728;
pub(crate) mod r732;
pub(crate) mod r740;
pub(crate) mod r744;

use crate::error::Error;
use crate::fluid::Fluid;
use crate::names::{ErrorKind, Quantity, Refrigerant};

/// The fluid that a pure refrigerant is.
///
/// Errors: `NotAvailable` for a blend.
pub const fn fluid_of(refrigerant: Refrigerant) -> Result<&'static Fluid, Error> {
    match refrigerant {
        Refrigerant::R1132E => Ok(&r1132e::R1132E),
        Refrigerant::R115 => Ok(&r115::R115),
        Refrigerant::R12 => Ok(&r12::R12),
        Refrigerant::R1234yf => Ok(&r1234yf::R1234YF),
        Refrigerant::R1234zeE => Ok(&r1234zee::R1234ZEE),
        Refrigerant::R124 => Ok(&r124::R124),
        Refrigerant::R125 => Ok(&r125::R125),
        Refrigerant::R1336mzzE => Ok(&r1336mzze::R1336MZZE),
        Refrigerant::R134a => Ok(&r134a::R134A),
        Refrigerant::R13I1 => Ok(&r13i1::R13I1),
        Refrigerant::R142b => Ok(&r142b::R142B),
        Refrigerant::R143a => Ok(&r143a::R143A),
        Refrigerant::R152a => Ok(&r152a::R152A),
        Refrigerant::R218 => Ok(&r218::R218),
        Refrigerant::R22 => Ok(&r22::R22),
        Refrigerant::R227ea => Ok(&r227ea::R227EA),
        Refrigerant::R290 => Ok(&r290::R290),
        Refrigerant::R32 => Ok(&r32::R32),
        Refrigerant::R600 => Ok(&r600::R600),
        Refrigerant::R600a => Ok(&r600a::R600A),
        Refrigerant::R601 => Ok(&r601::R601),
        Refrigerant::R601a => Ok(&r601a::R601A),
        Refrigerant::R744 => Ok(&r744::R744),
        Refrigerant::R401C
        | Refrigerant::R404A
        | Refrigerant::R406A
        | Refrigerant::R407A
        | Refrigerant::R407C
        | Refrigerant::R407F
        | Refrigerant::R409A
        | Refrigerant::R410A
        | Refrigerant::R413A
        | Refrigerant::R414A
        | Refrigerant::R414B
        | Refrigerant::R416A
        | Refrigerant::R420A
        | Refrigerant::R422D
        | Refrigerant::R426A
        | Refrigerant::R437A
        | Refrigerant::R438A
        | Refrigerant::R444A
        | Refrigerant::R445A
        | Refrigerant::R448A
        | Refrigerant::R449A
        | Refrigerant::R450A
        | Refrigerant::R452A
        | Refrigerant::R454B
        | Refrigerant::R454C
        | Refrigerant::R455A
        | Refrigerant::R456A
        | Refrigerant::R457A
        | Refrigerant::R474A
        | Refrigerant::R500
        | Refrigerant::R502
        | Refrigerant::R507A
        | Refrigerant::R513A
        | Refrigerant::R516A => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),
    }
}
