//! Many vehicles at once: a table in, a table out, in threads, with the interpreter released.

mod answers;
mod columns;

use crate::diagnosis::settings;
use crate::errors::{refused_key, told};
use answers::{Answers, BLOCK, Block};
use coldloop::diagnosis::{Judge, Settings};
use coldloop::{Error, ErrorKind, Observation, Quantity};
pub(crate) use columns::log_cell;
use columns::{Kind, Table, kind};
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::{self, RecvTimeoutError};
use std::time::{Duration, Instant};

/// How often progress is reported and an interrupt is noticed.
const PULSE: Duration = Duration::from_millis(100);

/// What a column of this name holds: `number`, `word` or `answer`.
#[pyfunction]
pub(crate) fn column(py: Python<'_>, name: &str) -> PyResult<&'static str> {
    match kind(name).map_err(|error| refused_key(py, error, name))? {
        Kind::Number(..) => Ok("number"),
        Kind::Word => Ok("word"),
        Kind::Answer(_) => Ok("answer"),
    }
}

/// The code of a word in its column.
#[pyfunction]
pub(crate) fn word(py: Python<'_>, column: &str, word: &str) -> PyResult<u32> {
    columns::code(column, word).ok_or_else(|| {
        let advice = match columns::meant_by(column, word) {
            Some(meant) => meant.to_string(),
            None => format!("one of {}", columns::ids(column).join(", ")),
        };
        let error = Error::of(ErrorKind::UnknownName, Quantity::Name);
        let message = format!("{column} = {word:?}: {error}; write {advice}");
        told(py, error, &message, &format!("{column} = {word:?}"))
    })
}

/// The entries that a column can be called after: of numbers, of words, of answers.
#[pyfunction]
pub(crate) fn entries() -> (Vec<&'static str>, Vec<&'static str>, Vec<&'static str>) {
    (
        columns::NUMBERS.iter().map(|(entry, _)| *entry).collect(),
        columns::WORDS.to_vec(),
        Observation::ALL.iter().map(|observation| observation.id()).collect(),
    )
}

/// The answers to the rows: columns of numbers, then columns of codes with what each code stands for.
#[pyfunction]
#[allow(clippy::too_many_arguments)] // called from one place, by name
pub(crate) fn diagnose_table<'py>(
    py: Python<'py>,
    rows: usize,
    numbers: Vec<(String, PyReadonlyArray1<'py, f64>)>,
    words: Vec<(String, PyReadonlyArray1<'py, u32>)>,
    strict: bool,
    threads: usize,
    options: &str,
    progress: Option<Py<PyAny>>,
) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
    let mut settings = settings(py, options)?;
    settings.next_checks = false;
    let mut table = Table::new(rows);
    for (name, values) in &numbers {
        let values = of_length(rows, values.as_slice()?).map_err(|error| refused_key(py, error, name))?;
        table
            .add_numbers(name, values)
            .map_err(|error| refused_key(py, error, name))?;
    }
    for (name, codes) in &words {
        let codes = of_length(rows, codes.as_slice()?).map_err(|error| refused_key(py, error, name))?;
        table
            .add_words(name, codes)
            .map_err(|error| refused_key(py, error, name))?;
    }
    let answers = py.detach(|| judge(&table, &settings, strict, threads, progress))?;
    let (figures, codes) = answers.columns();
    let (figures_by_name, codes_by_name) = (PyDict::new(py), PyDict::new(py));
    for (name, column) in figures {
        figures_by_name.set_item(name, PyArray1::from_vec(py, column))?;
    }
    for (name, column, labels) in codes {
        figures_by_name.set_item(&name, PyArray1::from_vec(py, column))?;
        codes_by_name.set_item(name, PyList::new(py, labels)?)?;
    }
    Ok((figures_by_name, codes_by_name))
}

fn of_length<T>(rows: usize, column: &[T]) -> Result<&[T], Error> {
    if column.len() == rows {
        Ok(column)
    } else {
        Err(Error::of(ErrorKind::Inconsistent, Quantity::Rows))
    }
}

/// Judges the rows in blocks; the caller's thread gathers them, reports progress and checks for an interrupt.
fn judge(
    table: &Table<'_>,
    settings: &Settings,
    strict: bool,
    threads: usize,
    progress: Option<Py<PyAny>>,
) -> PyResult<Answers> {
    let (next, stop) = (AtomicUsize::new(0), AtomicBool::new(false));
    let blocks = table.rows.div_ceil(BLOCK);
    let mut answers = Answers::new(table.rows);
    std::thread::scope(|scope| {
        let (sender, receiver) = mpsc::channel::<Block>();
        let mut started = 0;
        let judge = || Judge::new(settings).map_err(|error| Python::attach(|py| refused_key(py, error, "settings")));
        let (next, stop) = (&next, &stop);
        let another = move |judge: &Judge| {
            let block = next.fetch_add(1, Ordering::Relaxed);
            (block < blocks && !stop.load(Ordering::Relaxed)).then(|| Block::judged(table, judge, block))
        };
        for _ in 0..threads.clamp(1, blocks.max(1)) {
            let (sender, judge) = (sender.clone(), judge()?);
            let work = move || {
                while let Some(block) = another(&judge) {
                    if sender.send(block).is_err() {
                        break;
                    }
                }
            };
            // If the system starts no further thread, those that run do the work.
            if std::thread::Builder::new().spawn_scoped(scope, work).is_err() {
                break;
            }
            started += 1;
        }
        drop(sender);
        let gathered = if started > 0 {
            gather(
                || receiver.recv_timeout(PULSE),
                &mut answers,
                (strict, stop),
                progress.as_ref(),
            )
        } else {
            let judge = judge()?;
            let own = || another(&judge).ok_or(RecvTimeoutError::Disconnected);
            gather(own, &mut answers, (strict, stop), progress.as_ref())
        };
        stop.store(true, Ordering::Relaxed);
        gathered
    })?;
    Ok(answers)
}

/// Blocks are begun in order, so that all blocks before a refused row have been begun as well. They are waited for, so that
/// the first refused row is the one that is raised, whatever the number of threads. `receive` waits for a judged block for no
/// longer than a pulse, or judges one itself.
fn gather(
    receive: impl Fn() -> Result<Block, RecvTimeoutError>,
    answers: &mut Answers,
    (strict, stop): (bool, &AtomicBool),
    progress: Option<&Py<PyAny>>,
) -> PyResult<()> {
    let mut first: Option<(usize, Error, String)> = None;
    let (rows, mut done, mut told) = (answers.rows(), 0, Instant::now());
    while done < rows {
        match receive() {
            Ok(block) => {
                if let Some((row, refused)) = block.first_refused().filter(|_| strict)
                    && first.as_ref().is_none_or(|(known, ..)| row < *known)
                {
                    stop.store(true, Ordering::Relaxed);
                    first = Some((row, refused.error, format!("row {row}, column {}", refused.column)));
                }
                done += block.rows();
                answers.put(block);
            }
            Err(RecvTimeoutError::Timeout) => (),
            // The threads ended early: a row was refused, or one of them panicked, and the scope panics too.
            Err(RecvTimeoutError::Disconnected) => break,
        }
        if told.elapsed() >= PULSE || done == rows {
            told = Instant::now();
            Python::attach(|py| {
                py.check_signals()?;
                match progress {
                    Some(progress) => progress.call1(py, (done, rows)).map(|_| ()),
                    None => Ok(()),
                }
            })?;
        }
    }
    match first {
        Some((_, error, key)) => Err(Python::attach(|py| refused_key(py, error, &key))),
        None => Ok(()),
    }
}
