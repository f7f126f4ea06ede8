//! From the library's error to the Python exception of its kind.

use pyo3::prelude::*;

/// The exception for an error; an import that fails is raised instead.
pub(crate) fn raised(py: Python<'_>, error: coldloop::Error) -> PyErr {
    exception(py, error).map_or_else(|failure| failure, PyErr::from_value)
}

fn exception(py: Python<'_>, error: coldloop::Error) -> PyResult<Bound<'_, PyAny>> {
    let classes = py.import("coldloop._errors")?.getattr("BY_CODE")?;
    let class = classes.get_item(error.kind.code())?;
    class.call1((
        error.to_string(),
        error.quantity.id(),
        error.value,
        error.low,
        error.high,
    ))
}
