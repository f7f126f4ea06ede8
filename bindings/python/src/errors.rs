//! From the library's error to the Python exception of its kind.

use coldloop::intake::Refusal;
use coldloop::{Error, ErrorKind, Quantity, Refrigerant};
use pyo3::prelude::*;

/// The exception for an error, or that of an import that fails.
pub(crate) fn raised(py: Python<'_>, error: Error) -> PyErr {
    told(py, error, &error.to_string(), "")
}

/// The exception for a refused entry of the readings.
pub(crate) fn refused(py: Python<'_>, refusal: &Refusal) -> PyErr {
    told(py, refusal.error(), &refusal.to_string(), &refusal.first.key)
}

/// The exception for an error at this place of the input.
pub(crate) fn refused_key(py: Python<'_>, error: Error, key: &str) -> PyErr {
    told(py, error, &format!("{key}: {error}"), key)
}

/// The exception for an error with a text of its own.
pub(crate) fn told(py: Python<'_>, error: Error, message: &str, key: &str) -> PyErr {
    exception(py, error, message, key).map_or_else(|failure| failure, PyErr::from_value)
}

/// The exception for a name that is no refrigerant; a common name leads to the designation.
pub(crate) fn unknown_refrigerant(py: Python<'_>, name: &str) -> PyErr {
    match Refrigerant::meant_by(name) {
        None => unknown(py, name, Refrigerant::ALL.map(Refrigerant::id)),
        Some(meant) => {
            let error = Error::of(ErrorKind::UnknownName, Quantity::Name);
            told(py, error, &format!("{name:?} is not known here; write {meant}"), "")
        }
    }
}

/// The exception for a name that is none of the ids; it says which may have been meant, or which there are.
pub(crate) fn unknown(py: Python<'_>, name: &str, ids: impl IntoIterator<Item = &'static str>) -> PyErr {
    let letters = |text: &str| {
        text.to_lowercase()
            .replace(|letter: char| !letter.is_alphanumeric(), "")
    };
    let ids: Vec<&str> = ids.into_iter().collect();
    let asked = letters(name);
    let near: Vec<&str> = ids
        .iter()
        .copied()
        .filter(|id| !asked.is_empty() && letters(id).contains(&asked))
        .collect();
    let message = if near.is_empty() {
        format!("{name:?} is not known here; write one of {}", ids.join(", "))
    } else {
        format!("{name:?} is not known here; did you mean {}?", near.join(" or "))
    };
    let error = Error::of(ErrorKind::UnknownName, Quantity::Name);
    told(py, error, &message, "")
}

fn exception<'py>(py: Python<'py>, error: Error, message: &str, key: &str) -> PyResult<Bound<'py, PyAny>> {
    let classes = py.import("coldloop._errors")?.getattr("BY_CODE")?;
    let class = classes.get_item(error.kind.code())?;
    class.call1((message, error.quantity.id(), error.value, error.low, error.high, key))
}
