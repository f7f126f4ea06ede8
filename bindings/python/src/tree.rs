//! An answer as dictionaries, lists, texts and numbers, made without the text of its JSON.

use coldloop::report::Json;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyString};

/// An answer that is not yet read.
#[pyclass(frozen)]
pub(crate) struct Told(pub(crate) Json);

#[pymethods]
impl Told {
    /// The whole answer, made anew, equal to its JSON.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        value(py, &self.0)
    }
}

fn value<'py>(py: Python<'py>, json: &Json) -> PyResult<Bound<'py, PyAny>> {
    Ok(match json {
        Json::Null => py.None().into_bound(py),
        Json::Bool(truth) => PyBool::new(py, *truth).to_owned().into_any(),
        Json::Number(number) if number.is_finite() => PyFloat::new(py, *number).into_any(),
        Json::Number(_) => py.None().into_bound(py),
        Json::Count(count) => PyInt::new(py, *count).into_any(),
        Json::Text(text) => PyString::new(py, text).into_any(),
        Json::List(items) => {
            let list = PyList::empty(py);
            for item in items {
                list.append(value(py, item)?)?;
            }
            list.into_any()
        }
        Json::Object(entries) => {
            let dict = PyDict::new(py);
            for (key, entry) in entries {
                dict.set_item(PyString::new(py, key), value(py, entry)?)?;
            }
            dict.into_any()
        }
    })
}
