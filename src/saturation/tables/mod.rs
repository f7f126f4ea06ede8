//! The saturation curves of every refrigerant.
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
pub(crate) mod r401c;
pub(crate) mod r404a;
pub(crate) mod r406a;
pub(crate) mod r407a;
pub(crate) mod r407c;
pub(crate) mod r407f;
pub(crate) mod r409a;
pub(crate) mod r410a;
pub(crate) mod r413a;
pub(crate) mod r414a;
pub(crate) mod r414b;
pub(crate) mod r416a;
pub(crate) mod r420a;
pub(crate) mod r422d;
pub(crate) mod r426a;
pub(crate) mod r437a;
pub(crate) mod r438a;
pub(crate) mod r444a;
pub(crate) mod r445a;
pub(crate) mod r448a;
pub(crate) mod r449a;
pub(crate) mod r450a;
pub(crate) mod r452a;
pub(crate) mod r454b;
pub(crate) mod r454c;
pub(crate) mod r455a;
pub(crate) mod r456a;
pub(crate) mod r457a;
pub(crate) mod r474a;
pub(crate) mod r500;
pub(crate) mod r502;
pub(crate) mod r507a;
pub(crate) mod r513a;
pub(crate) mod r516a;
pub(crate) mod r600;
pub(crate) mod r600a;
pub(crate) mod r601;
pub(crate) mod r601a;
pub(crate) mod r744;

use crate::names::Refrigerant;
use crate::saturation::Line;

/// The saturation curves of a refrigerant.
pub const fn line_of(refrigerant: Refrigerant) -> Line {
    match refrigerant {
        Refrigerant::R1132E => Line::Pure(&r1132e::R1132E),
        Refrigerant::R115 => Line::Pure(&r115::R115),
        Refrigerant::R12 => Line::Pure(&r12::R12),
        Refrigerant::R1234yf => Line::Pure(&r1234yf::R1234YF),
        Refrigerant::R1234zeE => Line::Pure(&r1234zee::R1234ZEE),
        Refrigerant::R124 => Line::Pure(&r124::R124),
        Refrigerant::R125 => Line::Pure(&r125::R125),
        Refrigerant::R1336mzzE => Line::Pure(&r1336mzze::R1336MZZE),
        Refrigerant::R134a => Line::Pure(&r134a::R134A),
        Refrigerant::R13I1 => Line::Pure(&r13i1::R13I1),
        Refrigerant::R142b => Line::Pure(&r142b::R142B),
        Refrigerant::R143a => Line::Pure(&r143a::R143A),
        Refrigerant::R152a => Line::Pure(&r152a::R152A),
        Refrigerant::R218 => Line::Pure(&r218::R218),
        Refrigerant::R22 => Line::Pure(&r22::R22),
        Refrigerant::R227ea => Line::Pure(&r227ea::R227EA),
        Refrigerant::R290 => Line::Pure(&r290::R290),
        Refrigerant::R32 => Line::Pure(&r32::R32),
        Refrigerant::R600 => Line::Pure(&r600::R600),
        Refrigerant::R600a => Line::Pure(&r600a::R600A),
        Refrigerant::R601 => Line::Pure(&r601::R601),
        Refrigerant::R601a => Line::Pure(&r601a::R601A),
        Refrigerant::R744 => Line::Pure(&r744::R744),
        Refrigerant::R401C => Line::Blend(&r401c::R401C),
        Refrigerant::R404A => Line::Blend(&r404a::R404A),
        Refrigerant::R406A => Line::Blend(&r406a::R406A),
        Refrigerant::R407A => Line::Blend(&r407a::R407A),
        Refrigerant::R407C => Line::Blend(&r407c::R407C),
        Refrigerant::R407F => Line::Blend(&r407f::R407F),
        Refrigerant::R409A => Line::Blend(&r409a::R409A),
        Refrigerant::R410A => Line::Blend(&r410a::R410A),
        Refrigerant::R413A => Line::Blend(&r413a::R413A),
        Refrigerant::R414A => Line::Blend(&r414a::R414A),
        Refrigerant::R414B => Line::Blend(&r414b::R414B),
        Refrigerant::R416A => Line::Blend(&r416a::R416A),
        Refrigerant::R420A => Line::Blend(&r420a::R420A),
        Refrigerant::R422D => Line::Blend(&r422d::R422D),
        Refrigerant::R426A => Line::Blend(&r426a::R426A),
        Refrigerant::R437A => Line::Blend(&r437a::R437A),
        Refrigerant::R438A => Line::Blend(&r438a::R438A),
        Refrigerant::R444A => Line::Blend(&r444a::R444A),
        Refrigerant::R445A => Line::Blend(&r445a::R445A),
        Refrigerant::R448A => Line::Blend(&r448a::R448A),
        Refrigerant::R449A => Line::Blend(&r449a::R449A),
        Refrigerant::R450A => Line::Blend(&r450a::R450A),
        Refrigerant::R452A => Line::Blend(&r452a::R452A),
        Refrigerant::R454B => Line::Blend(&r454b::R454B),
        Refrigerant::R454C => Line::Blend(&r454c::R454C),
        Refrigerant::R455A => Line::Blend(&r455a::R455A),
        Refrigerant::R456A => Line::Blend(&r456a::R456A),
        Refrigerant::R457A => Line::Blend(&r457a::R457A),
        Refrigerant::R474A => Line::Blend(&r474a::R474A),
        Refrigerant::R500 => Line::Blend(&r500::R500),
        Refrigerant::R502 => Line::Blend(&r502::R502),
        Refrigerant::R507A => Line::Blend(&r507a::R507A),
        Refrigerant::R513A => Line::Blend(&r513a::R513A),
        Refrigerant::R516A => Line::Blend(&r516a::R516A),
    }
}
