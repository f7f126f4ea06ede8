//! Units: plain arithmetic on whatever is given.

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
        "kelvin_of_celsius" => |x| in_kelvins(celsius(x)),
        "kelvin_of_fahrenheit" => |x| in_kelvins(fahrenheit(x)),
        "celsius_of_kelvin" => |x| in_celsius(kelvins(x)),
        "fahrenheit_of_kelvin" => |x| in_fahrenheit(kelvins(x)),
        "pa_of_psi" => |x| x * PSI_PA,
        "psi_of_pa" => |x| GaugePressure::from_pa(x).psig(),
        "pa_of_bar" => |x| GaugePressure::from_bar(x).pa(),
        "bar_of_pa" => |x| GaugePressure::from_pa(x).bar(),
        "pa_of_inhg" => |x| x * INHG_PA,
        "inhg_of_pa" => |x| x / INHG_PA,
        "pa_of_microns" => |x| x * MICRON_PA,
        "microns_of_pa" => |x| AbsolutePressure::from_pa(x).microns(),
        _ => return Err(PyValueError::new_err("this is no conversion")),
    };
    each(py, [x], strict, |[x]| Ok(convert(x)))
}
