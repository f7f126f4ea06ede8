//! Readings over time: rows of numbers in; states, readings and verdict out.

use crate::diagnosis::settings;
use crate::errors::{raised, refused, refused_key, unknown};
use crate::table::log_cell;
use coldloop::circuit::{Estimate, Gauge};
use coldloop::diagnosis::{Case, judge_states, log_cases};
use coldloop::intake::{self, LogColumns};
use coldloop::log::{Datum, Fall, Instruments, LogState, LowSwing, Recorder as Recording, Sample, Summary};
use coldloop::units::{Pressure, TimeSpan, in_kelvins};
use coldloop::{Channel, Error, ErrorKind, GaugeClass, LogNote, Observation, Quantity, Thermometer, report};
use numpy::PyReadonlyArray1;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

/// The header cell of each column of a log by its name; `None` for a column that is no channel.
#[pyfunction]
pub(crate) fn log_header(py: Python<'_>, names: Vec<String>) -> PyResult<Vec<Option<String>>> {
    let cells = names
        .iter()
        .map(|name| log_cell(name).map_err(|error| refused_key(py, error, name)));
    cells.collect()
}

/// A log so far, with the instruments that it was read with.
#[pyclass(module = "coldloop._core")]
pub(crate) struct Recorder {
    recording: Option<(Datum, Box<Recording>)>,
    instruments: Instruments,
}

#[pymethods]
impl Recorder {
    /// An empty log, read with instruments by the ids of `low_side`, `high_side`, `high_side_transducer` (gauges), `air` and `lines`
    /// (thermometers).
    #[new]
    fn new(py: Python<'_>, instruments: Vec<(String, String)>) -> PyResult<Self> {
        let mut known = Instruments::default();
        for (place, id) in &instruments {
            let gauge = |gauge: &mut Gauge| {
                let class =
                    GaugeClass::from_id(id).ok_or_else(|| unknown(py, id, GaugeClass::ALL.map(GaugeClass::id)))?;
                *gauge = gauge.of_class(class);
                Ok::<(), PyErr>(())
            };
            let thermometer = |thermometer: &mut Thermometer| {
                *thermometer =
                    Thermometer::from_id(id).ok_or_else(|| unknown(py, id, Thermometer::ALL.map(Thermometer::id)))?;
                Ok::<(), PyErr>(())
            };
            match place.as_str() {
                "low_side" => gauge(&mut known.low_side)?,
                "high_side" => gauge(&mut known.high_side)?,
                "high_side_transducer" => gauge(&mut known.transducer)?,
                "air" => thermometer(&mut known.air)?,
                "lines" => thermometer(&mut known.lines)?,
                _ => {
                    let places = ["low_side", "high_side", "high_side_transducer", "air", "lines"];
                    return Err(unknown(py, place, places));
                }
            }
        }
        Ok(Self {
            recording: None,
            instruments: known,
        })
    }

    /// Takes columns of numbers of one length, under header cells.
    fn extend(&mut self, py: Python<'_>, header: Vec<String>, columns: Vec<PyReadonlyArray1<'_, f64>>) -> PyResult<()> {
        let meaning = columns_of(py, &header)?;
        let columns = columns
            .iter()
            .map(|column| Ok(column.as_slice()?))
            .collect::<PyResult<Vec<&[f64]>>>()?;
        let rows = columns.first().map_or(0, |column| column.len());
        if columns.len() != header.len() || columns.iter().any(|column| column.len() != rows) {
            return Err(raised(py, Error::of(ErrorKind::Inconsistent, Quantity::Rows)));
        }
        let sample = |row: usize| meaning.sample_of(columns.iter().map(|column| column[row]));
        self.take(py, meaning.datum(), rows, sample)
    }

    /// Takes rows of cells under a header, as a CSV file has them.
    fn extend_cells(&mut self, py: Python<'_>, header: Vec<String>, rows: Vec<Vec<String>>) -> PyResult<()> {
        let meaning = columns_of(py, &header)?;
        let sample = |row: usize| meaning.sample(rows[row].iter().map(String::as_str));
        self.take(py, meaning.datum(), rows.len(), sample)
    }

    fn summary<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let summary = self.now(py)?;
        let told = PyDict::new(py);
        told.set_item("phase", summary.phase.id())?;
        told.set_item("says", summary.phase.description())?;
        told.set_item("elapsed_s", summary.elapsed.seconds())?;
        told.set_item("wait_s", summary.wait.seconds())?;
        told.set_item("vent", summary.vent.map(|of| fall(py, of)).transpose()?)?;
        told.set_item("cabin", summary.cabin.map(|of| fall(py, of)).transpose()?)?;
        told.set_item("equal_after_s", summary.equal_after.map(TimeSpan::seconds))?;
        told.set_item("recoveries", summary.recoveries)?;
        let notes = PyDict::new(py);
        for (note, count) in summary.notes.iter() {
            notes.set_item(LogNote::id(note), count)?;
        }
        told.set_item("notes", notes)?;
        Ok(told)
    }

    fn states<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyList>> {
        let (summary, datum) = (self.now(py)?, self.recorded(py)?.0);
        let judged: Vec<LogState> = summary.judged().copied().collect();
        let states = PyList::empty(py);
        for of in summary.states() {
            states.append(state(py, of, datum, judged.contains(of))?)?;
        }
        Ok(states)
    }

    /// The readings of the state that is known best, as JSON in the shape of a readings file; nothing where none lasted long enough.
    fn readings(&self, py: Python<'_>) -> PyResult<Option<String>> {
        let summary = self.now(py)?;
        let best = summary.judged().next();
        Ok(best.map(|state| intake::readings_to_json(&state.readings(&self.instruments))))
    }

    fn observations(&self, py: Python<'_>) -> PyResult<Vec<(&'static str, bool)>> {
        let seen = self.now(py)?.observations();
        Ok(seen
            .answered()
            .map(|(seen, answer)| (Observation::id(seen), answer))
            .collect())
    }

    /// The answer to all states together as JSON, for a readings file; nothing where none lasted long enough.
    fn judge(&self, py: Python<'_>, readings: &str, options: Option<&str>) -> PyResult<Option<String>> {
        let visit = intake::visit_from_text(readings);
        let visit = visit.map_err(|refusal| refused(py, &refusal))?;
        let settings = options.map_or(Ok(visit.settings), |json| settings(py, json))?;
        let summary = self.now(py)?;
        let cases: Vec<Case> = log_cases(&visit.case, &summary, &self.instruments).collect();
        let Some(first) = cases.first() else {
            return Ok(None);
        };
        let told = py.detach(|| {
            let judgement = judge_states(&cases, &settings)?;
            let diagnosis = judgement.diagnosis(&settings)?;
            Ok(report::json(
                first,
                &diagnosis,
                &judgement.reasons(&settings),
                settings.language,
            ))
        });
        told.map(Some).map_err(|error| raised(py, error))
    }
}

impl Recorder {
    fn recorded(&self, py: Python<'_>) -> PyResult<&(Datum, Box<Recording>)> {
        let nothing = || refused_key(py, Error::of(ErrorKind::Missing, Quantity::Rows), "log");
        self.recording.as_ref().ok_or_else(nothing)
    }

    pub(crate) fn now(&self, py: Python<'_>) -> PyResult<Summary> {
        Ok(self.recorded(py)?.1.summary())
    }

    pub(crate) const fn instruments(&self) -> &Instruments {
        &self.instruments
    }

    /// Takes the samples of rows; all of them, or none where one is refused.
    fn take(
        &mut self,
        py: Python<'_>,
        datum: Datum,
        rows: usize,
        sample: impl Fn(usize) -> Result<Sample, intake::Refusal>,
    ) -> PyResult<()> {
        let recording = self.recording.as_ref();
        let (before, mut longer) = recording.map_or_else(
            || (datum, Box::new(Recording::new(datum))),
            |(datum, recording)| (*datum, recording.clone()),
        );
        if before != datum {
            return Err(refused_key(
                py,
                Error::of(ErrorKind::Inconsistent, Quantity::GaugePressure),
                "log",
            ));
        }
        for row in 0..rows {
            let sample = sample(row).map_err(|refusal| {
                let key = format!("row {row}, column {}", refusal.first.key);
                refused_key(py, refusal.error(), &key)
            })?;
            longer.push(&sample);
        }
        self.recording = Some((datum, longer));
        Ok(())
    }
}

fn columns_of(py: Python<'_>, header: &[String]) -> PyResult<LogColumns> {
    LogColumns::from_header(header.iter().map(String::as_str)).map_err(|refusal| refused(py, &refusal))
}

fn fall<'py>(py: Python<'py>, fall: Fall) -> PyResult<Bound<'py, PyDict>> {
    let told = PyDict::new(py);
    told.set_item("from_k", in_kelvins(fall.from))?;
    told.set_item("to_k", in_kelvins(fall.to))?;
    told.set_item("half_s", fall.half.seconds())?;
    told.set_item("falls", fall.falls)?;
    Ok(told)
}

/// The unit behind the name of a channel.
const fn unit(channel: Channel, datum: Datum) -> &'static str {
    match channel {
        Channel::LowSide | Channel::HighSide | Channel::HighSideTransducer => match datum {
            Datum::Gauge => "_pa_gauge",
            Datum::Absolute => "_pa_abs",
        },
        Channel::Vent
        | Channel::Cabin
        | Channel::SuctionLine
        | Channel::DischargeLine
        | Channel::LiquidLine
        | Channel::CondenserOutlet
        | Channel::EvaporatorSensor => "_k",
        Channel::EngineSpeed | Channel::CompressorSpeed => "_hz",
        Channel::Clutch => "",
        _ => "",
    }
}

fn state<'py>(py: Python<'py>, state: &LogState, datum: Datum, judged: bool) -> PyResult<Bound<'py, PyDict>> {
    let (told, means) = (PyDict::new(py), PyDict::new(py));
    for channel in Channel::ALL {
        if let Some(mean) = state.mean(channel) {
            let of = estimate(py, mean)?;
            of.set_item("drift", state.drift(channel))?;
            means.set_item(format!("{}{}", channel.id(), unit(channel, datum)), of)?;
        }
    }
    told.set_item("began_s", state.began().seconds())?;
    told.set_item("seconds", state.lasted().seconds())?;
    told.set_item("judged", judged)?;
    told.set_item("means", means)?;
    told.set_item("swing", state.swing().map(|of| swing(py, &of)).transpose()?)?;
    Ok(told)
}

fn estimate<'py>(py: Python<'py>, estimate: Estimate) -> PyResult<Bound<'py, PyDict>> {
    let told = PyDict::new(py);
    told.set_item("value", estimate.value)?;
    told.set_item("standard_uncertainty", estimate.standard_uncertainty)?;
    Ok(told)
}

/// The number of pascals that was logged.
const fn as_logged(pressure: Pressure) -> f64 {
    match pressure {
        Pressure::Absolute(pressure) => pressure.pa(),
        Pressure::Gauge(pressure) => pressure.pa(),
    }
}

fn swing<'py>(py: Python<'py>, swing: &LowSwing) -> PyResult<Bound<'py, PyDict>> {
    let told = PyDict::new(py);
    told.set_item("cycles", swing.count)?;
    told.set_item("cycles_hz", estimate(py, swing.cycles.si())?)?;
    told.set_item("on_share", swing.on_share)?;
    told.set_item("cut_out_pa", as_logged(swing.cut_out))?;
    told.set_item("cut_in_pa", as_logged(swing.cut_in))?;
    told.set_item("high_low_pa", swing.high_side.map(|(low, _)| as_logged(low)))?;
    told.set_item("high_high_pa", swing.high_side.map(|(_, high)| as_logged(high)))?;
    told.set_item("repeats", swing.repeats)?;
    Ok(told)
}
