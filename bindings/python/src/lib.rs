//! The Python door of coldloop: check, convert, call, map.
//!
//! This is `coldloop._core`. It takes floats or one-dimensional arrays of floats and gives the same back; shapes,
//! broadcasting, tables and foreign quantities are handled by the package's Python files.

mod air;
mod arrays;
mod charge;
mod circuit;
mod diagnosis;
mod errors;
mod facts;
mod log;
mod saturation;
mod session;
mod state;
mod table;
mod text;
mod transport;
mod tree;
mod units;

use coldloop::Refrigerant;
use pyo3::prelude::*;

/// The compiled part of coldloop; use the package instead.
#[pymodule]
mod _core {
    #[pymodule_export]
    use super::air::{
        absolute_pressure, enhancement_factor, gauge_pressure, moist_air, standard_altitude, standard_density,
        standard_pressure, standard_temperature, water_boiling_point, water_saturation_pressure,
    };
    #[pymodule_export]
    use super::charge::{charge_leaked, charge_point, charge_shares, charge_split};
    #[pymodule_export]
    use super::circuit::{
        at_rest, derive, gauge_uncertainty, pressure_matches, subcooling, superheat, thermometer_uncertainty,
    };
    #[pymodule_export]
    use super::diagnosis::{
        cases, catalogue, counts, diagnose, evaluate, expected, learn, page_html, picture_svg, plan, prove, record,
        report_text, simulate,
    };
    #[pymodule_export]
    use super::facts::facts;
    #[pymodule_export]
    use super::log::{Recorder, log_header};
    #[pymodule_export]
    use super::saturation::{
        bubble_pressure, bubble_slope, bubble_temperature, dew_pressure, dew_temperature, evaporating_mean, glide,
        latent_heat, liquid_density, saturation_slope, vapour_density,
    };
    #[pymodule_export]
    use super::session::Session;
    #[pymodule_export]
    use super::state::{phases, second_virial, state, third_virial};
    #[pymodule_export]
    use super::table::{column, diagnose_table, entries, word};
    #[pymodule_export]
    use super::text::{quantities, quantity};
    #[pymodule_export]
    use super::transport::{conductivity, surface_tension, viscosity};
    #[pymodule_export]
    use super::tree::Told;
    #[pymodule_export]
    use super::units::converted;
    #[pymodule_export]
    use super::{refrigerant, refrigerants};

    #[pymodule_export]
    #[allow(non_upper_case_globals)] // a Python name
    const __version__: &str = env!("CARGO_PKG_VERSION");
}

/// The designation of every refrigerant.
#[pyfunction]
fn refrigerants() -> Vec<&'static str> {
    Refrigerant::ALL.iter().map(|refrigerant| refrigerant.id()).collect()
}

/// Designation and code of a refrigerant, however it is spelled.
#[pyfunction]
fn refrigerant(py: Python<'_>, name: &str) -> PyResult<(&'static str, u32)> {
    let found = Refrigerant::from_id(name).ok_or_else(|| errors::unknown_refrigerant(py, name))?;
    Ok((found.id(), found.code()))
}
