//! One function over floats or over arrays of floats, with the interpreter released.

use crate::errors::raised;
use coldloop::Error;
use numpy::{PyArray1, PyArrayMethods, PyReadonlyArray1};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// A float for floats, an array for arrays.
pub(crate) type Answer<'py> = PyResult<Bound<'py, PyAny>>;

/// Several figures of one element, as floats for floats and as arrays for arrays.
pub(crate) type Columns<'py> = PyResult<Vec<Bound<'py, PyAny>>>;

/// `f` of floats, or of arrays of one length element by element; with `strict`, the first element that fails is
/// raised, otherwise it becomes NaN.
pub(crate) fn each<'py, const N: usize>(
    py: Python<'py>,
    arguments: [&Bound<'py, PyAny>; N],
    strict: bool,
    f: impl Fn([f64; N]) -> Result<f64, Error> + Sync,
) -> Answer<'py> {
    let [column] = several(py, arguments, strict, |numbers| f(numbers).map(|figure| [figure]))?;
    Ok(column)
}

/// As [`each`], for a function with several figures.
pub(crate) fn several<'py, const N: usize, const M: usize>(
    py: Python<'py>,
    arguments: [&Bound<'py, PyAny>; N],
    strict: bool,
    f: impl Fn([f64; N]) -> Result<[f64; M], Error> + Sync,
) -> PyResult<[Bound<'py, PyAny>; M]> {
    let none = [f64::NAN; M];
    if let Some(numbers) = floats(&arguments) {
        let figures = match f(numbers) {
            Ok(figures) => figures,
            Err(error) if strict => return Err(raised(py, error)),
            Err(_) => none,
        };
        return all(figures.map(|figure| Ok(figure.into_pyobject(py)?.into_any())));
    }
    let arrays = arrays(&arguments)?;
    let columns = slices(&arrays)?;
    let count = columns[0].len();
    let figures: Result<[Vec<f64>; M], Error> = py.detach(|| {
        let mut found = [const { Vec::new() }; M];
        for column in &mut found {
            column.reserve_exact(count);
        }
        for index in 0..count {
            let figures = match f(columns.map(|column| column[index])) {
                Ok(figures) => figures,
                Err(error) if strict => return Err(error),
                Err(_) => none,
            };
            for (column, figure) in found.iter_mut().zip(figures) {
                column.push(figure);
            }
        }
        Ok(found)
    });
    let figures = figures.map_err(|error| raised(py, error))?;
    Ok(figures.map(|column| PyArray1::from_vec(py, column).into_any()))
}

/// `one` of a float, or `many` of a whole array; `many` tells the first element that has no answer, in whose place it
/// wrote NaN.
pub(crate) fn whole<'py>(
    py: Python<'py>,
    argument: &Bound<'py, PyAny>,
    strict: bool,
    one: impl Fn(f64) -> Result<f64, Error> + Sync,
    many: impl Fn(&[f64], &mut [f64]) -> Result<(), Error> + Sync,
) -> Answer<'py> {
    if argument.extract::<f64>().is_ok() {
        return each(py, [argument], strict, |[number]| one(number));
    }
    let array: PyReadonlyArray1<'_, f64> = argument.extract()?;
    let numbers = array.as_slice()?;
    // NumPy asks the system for large pages, which a `Vec` does not, and a tenth of the time is the first access to the pages.
    // Its `empty` accesses them once, `zeros` twice.
    let empty = py.import("numpy")?.getattr("empty")?;
    let answer: Bound<'py, PyArray1<f64>> = empty.call1((numbers.len(),))?.extract()?;
    let mut writable = answer.try_readwrite()?;
    let figures = writable.as_slice_mut()?;
    match py.detach(|| many(numbers, figures)) {
        Err(error) if strict => Err(raised(py, error)),
        Ok(()) | Err(_) => {
            drop(writable);
            Ok(answer.into_any())
        }
    }
}

/// The arguments as floats, when all of them are.
fn floats<const N: usize>(arguments: &[&Bound<'_, PyAny>; N]) -> Option<[f64; N]> {
    let mut numbers = [f64::NAN; N];
    for (number, argument) in numbers.iter_mut().zip(arguments) {
        *number = argument.extract().ok()?;
    }
    Some(numbers)
}

fn arrays<'py, const N: usize>(arguments: &[&Bound<'py, PyAny>; N]) -> PyResult<[PyReadonlyArray1<'py, f64>; N]> {
    all(arguments.map(|argument| argument.extract()))
}

/// The numbers of arrays of one length.
fn slices<'a, const N: usize>(arrays: &'a [PyReadonlyArray1<'_, f64>; N]) -> PyResult<[&'a [f64]; N]> {
    let columns = all(arrays.each_ref().map(|array| array.as_slice().map_err(PyErr::from)))?;
    if columns.iter().any(|column| column.len() != columns[0].len()) {
        return Err(PyValueError::new_err("the arrays have different lengths"));
    }
    Ok(columns)
}

/// All of them, or the first failure.
fn all<T, const N: usize>(results: [PyResult<T>; N]) -> PyResult<[T; N]> {
    let found: Vec<T> = results.into_iter().collect::<PyResult<_>>()?;
    found
        .try_into()
        .map_err(|_| PyValueError::new_err("the number of columns changed"))
}
