//! One function over a float or over arrays of floats, with the interpreter released.

use crate::errors::raised;
use coldloop::Error;
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::prelude::*;

type Answer<'py> = PyResult<Bound<'py, PyAny>>;

/// `f` of one argument; with `strict`, the first element that fails is raised, otherwise it becomes NaN.
pub(crate) fn unary<'py>(
    x: &Bound<'py, PyAny>,
    strict: bool,
    f: impl Fn(f64) -> Result<f64, Error> + Sync,
) -> Answer<'py> {
    let py = x.py();
    if let Ok(x) = x.extract::<f64>() {
        return number(py, f(x), strict);
    }
    let x: PyReadonlyArray1<'_, f64> = x.extract()?;
    let x = x.as_slice()?;
    array(py, strict, || x.iter().map(|x| f(*x)))
}

/// `f` of two arguments, both floats or both arrays of one length.
pub(crate) fn binary<'py>(
    x: &Bound<'py, PyAny>,
    y: &Bound<'py, PyAny>,
    strict: bool,
    f: impl Fn(f64, f64) -> Result<f64, Error> + Sync,
) -> Answer<'py> {
    let py = x.py();
    if let (Ok(x), Ok(y)) = (x.extract::<f64>(), y.extract::<f64>()) {
        return number(py, f(x, y), strict);
    }
    let (x, y): (PyReadonlyArray1<'_, f64>, PyReadonlyArray1<'_, f64>) = (x.extract()?, y.extract()?);
    let (x, y) = (x.as_slice()?, y.as_slice()?);
    array(py, strict, || x.iter().zip(y).map(|(x, y)| f(*x, *y)))
}

fn number<'py>(py: Python<'py>, result: Result<f64, Error>, strict: bool) -> Answer<'py> {
    match result {
        Err(error) if strict => Err(raised(py, error)),
        result => Ok(result.unwrap_or(f64::NAN).into_pyobject(py)?.into_any()),
    }
}

fn array<'py, I>(py: Python<'py>, strict: bool, results: impl FnOnce() -> I + Send) -> Answer<'py>
where
    I: Iterator<Item = Result<f64, Error>>,
{
    let values: Result<Vec<f64>, Error> = py.detach(|| {
        let each = |result: Result<f64, Error>| if strict { result } else { Ok(result.unwrap_or(f64::NAN)) };
        results().map(each).collect()
    });
    values
        .map(|values| PyArray1::from_vec(py, values).into_any())
        .map_err(|error| raised(py, error))
}
