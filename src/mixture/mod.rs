//! Mixtures: the multi-fluid model of published equations and pairs, and equilibria of any composition of the known
//! fluids, air among them.
//!
//! The lines of listed blends are calculated beforehand, see `saturation`; this room is for leaked, mixed and contaminated
//! charges.

mod boiling;
mod component;
mod density;
mod departure;
mod incipient;
mod leak;
mod pairs;
mod phase;
mod properties;
mod reducing;
mod search;
mod split;
mod stability;
pub(crate) mod tables;

pub use crate::names::LeakPhase;
pub use boiling::Boiling;
pub use component::{Component, Pair};
pub use incipient::{Fixed, Incipient};
pub use leak::{LOST, Leaked};
pub use phase::{Mixture, PhaseProperties, Vector};
pub use search::{Side, TEMPERATURES};
pub use split::{Closing, Split, Two};
pub use tables::component_of;

/// The most components of a mixture: the five of the largest blend and the three gases of the air.
pub const MOST_COMPONENTS: usize = 8;

/// Dry air as a mixture holds it: nitrogen, oxygen and argon with their mole fractions.
///
/// Source: ISO 2533:1975, table 1, the three normalised to one.
pub fn air() -> [(&'static Component, f64); 3] {
    let [nitrogen, oxygen, argon] = tables::AIR;
    [(nitrogen, 0.781_2), (oxygen, 0.209_5), (argon, 0.009_3)]
}
