//! The working fluid of the circuit, pure or mixed: equilibria at a pressure, and states by enthalpy, entropy or superheat.

mod chart;
mod charted;
mod co2_chart_table;
mod co2_charts;
pub(super) mod equilibrium;
mod film;
pub(super) mod made;
pub(super) mod mixed;
mod mixed_table;
mod pure;
pub(super) mod pure_or_mixed;
mod states;
