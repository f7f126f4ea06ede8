//! Units: plain arithmetic without a check of range.

use crate::arrays::{Answer, each};
use coldloop::units::constants::{INHG_PA, MICRON_PA, PSI_PA};
use coldloop::units::{
    AbsolutePressure, GaugePressure, celsius, fahrenheit, in_celsius, in_fahrenheit, in_kelvins, kelvins,
};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// A number in another unit.
#[pyfunction]
pub(crate) fn converted<'py>(py: Python<'py>, x: &Bound<'py, PyAny>, strict: bool, what: &str) -> Answer<'py> {
    let convert: fn(f64) -> f64 = match what {
        "celsius_to_kelvin" => |x| in_kelvins(celsius(x)),
        "fahrenheit_to_kelvin" => |x| in_kelvins(fahrenheit(x)),
        "kelvin_to_celsius" => |x| in_celsius(kelvins(x)),
        "kelvin_to_fahrenheit" => |x| in_fahrenheit(kelvins(x)),
        "psi_to_pa" => |x| x * PSI_PA,
        "pa_to_psi" => |x| GaugePressure::from_pa(x).psig(),
        "bar_to_pa" => |x| GaugePressure::from_bar(x).pa(),
        "pa_to_bar" => |x| GaugePressure::from_pa(x).bar(),
        "inhg_to_pa" => |x| x * INHG_PA,
        "pa_to_inhg" => |x| x / INHG_PA,
        "microns_to_pa" => |x| x * MICRON_PA,
        "pa_to_microns" => |x| AbsolutePressure::from_pa(x).microns(),
        _ => return Err(PyValueError::new_err("this is no conversion")),
    };
    each(py, [x], strict, |[x]| Ok(convert(x)))
}
