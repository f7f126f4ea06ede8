//! The constants of the equation of state of every refrigerant.
//!
//! Generated from tables/refrigerants by tables/compile; edit the tables, not this file.

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
pub(crate) mod r601a;
pub(crate) mod r728;
pub(crate) mod r732;
pub(crate) mod r740;
pub(crate) mod r744;

use crate::fluid::Fluid;
use crate::names::Refrigerant;

/// The constants of the equation of state of a refrigerant.
pub const fn of(refrigerant: Refrigerant) -> &'static Fluid {
    match refrigerant {
        Refrigerant::R1132E => &r1132e::R1132E,
        Refrigerant::R115 => &r115::R115,
        Refrigerant::R12 => &r12::R12,
        Refrigerant::R1234yf => &r1234yf::R1234YF,
        Refrigerant::R1234zeE => &r1234zee::R1234ZEE,
        Refrigerant::R124 => &r124::R124,
        Refrigerant::R125 => &r125::R125,
        Refrigerant::R1336mzzE => &r1336mzze::R1336MZZE,
        Refrigerant::R134a => &r134a::R134A,
        Refrigerant::R13I1 => &r13i1::R13I1,
        Refrigerant::R142b => &r142b::R142B,
        Refrigerant::R143a => &r143a::R143A,
        Refrigerant::R152a => &r152a::R152A,
        Refrigerant::R218 => &r218::R218,
        Refrigerant::R22 => &r22::R22,
        Refrigerant::R227ea => &r227ea::R227EA,
        Refrigerant::R290 => &r290::R290,
        Refrigerant::R32 => &r32::R32,
        Refrigerant::R600 => &r600::R600,
        Refrigerant::R600a => &r600a::R600A,
        Refrigerant::R601a => &r601a::R601A,
        Refrigerant::R744 => &r744::R744,
    }
}
