//! One function over floats or over arrays of floats, with the interpreter released.

use crate::errors::raised;
use coldloop::Error;
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// A float for floats, an array for arrays.
pub(crate) type Answer<'py> = PyResult<Bound<'py, PyAny>>;

/// `f` of floats, or of arrays of one length element by element; with `strict`, the first element that fails is
/// raised, otherwise it becomes NaN.
pub(crate) fn each<'py, const N: usize>(
    py: Python<'py>,
    arguments: [&Bound<'py, PyAny>; N],
    strict: bool,
    f: impl Fn([f64; N]) -> Result<f64, Error> + Sync,
) -> Answer<'py> {
    let answer = |numbers| {
        if strict {
            f(numbers)
        } else {
            Ok(f(numbers).unwrap_or(f64::NAN))
        }
    };
    let numbers: Vec<f64> = arguments.iter().map_while(|argument| argument.extract().ok()).collect();
    if let Ok(numbers) = <[f64; N]>::try_from(numbers) {
        let number = answer(numbers).map_err(|error| raised(py, error))?;
        return Ok(number.into_pyobject(py)?.into_any());
    }
    let arrays: Vec<PyReadonlyArray1<'_, f64>> = arguments
        .iter()
        .map(|argument| argument.extract())
        .collect::<Result<_, _>>()?;
    let columns: Vec<&[f64]> = arrays.iter().map(|array| array.as_slice()).collect::<Result<_, _>>()?;
    let count = columns.first().map_or(0, |column| column.len());
    if columns.iter().any(|column| column.len() != count) {
        return Err(PyValueError::new_err("the arrays have different lengths"));
    }
    let values: Result<Vec<f64>, Error> = py.detach(|| {
        let row = |index: usize| {
            let mut numbers = [f64::NAN; N];
            for (number, column) in numbers.iter_mut().zip(&columns) {
                *number = column[index];
            }
            answer(numbers)
        };
        (0..count).map(row).collect()
    });
    values
        .map(|values| PyArray1::from_vec(py, values).into_any())
        .map_err(|error| raised(py, error))
}
