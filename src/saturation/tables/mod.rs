//! The saturation curves of every refrigerant.
//!
//! Generated from tables/refrigerants by tables/compile; edit the tables, not this file.

pub(crate) mod r1234yf;
pub(crate) mod r134a;

use crate::names::Refrigerant;
use crate::saturation::Pure;

/// The saturation curves of a refrigerant.
pub const fn of(refrigerant: Refrigerant) -> &'static Pure {
    match refrigerant {
        Refrigerant::R1234yf => &r1234yf::R1234YF,
        Refrigerant::R134a => &r134a::R134A,
    }
}
