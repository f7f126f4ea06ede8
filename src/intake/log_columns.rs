//! The columns of a log: which channel each one is, and in which unit.

use super::refusal::{Mistake, Refusal};
use crate::error::Error;
use crate::log::{Datum, Sample};
use crate::names::{Channel, ErrorKind, Quantity};
use crate::units::{Pressure, RotationalSpeed, TimeSpan, in_kelvins, text};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// What a log writes for a value that is missing, beside nothing at all.
const MISSING: [&str; 7] = ["nan", "na", "n/a", "null", "none", "-", "--"];

/// What the cells of a log mean, by its header.
///
/// A header cell is the name of the channel, as in a readings file or with spaces, and its unit in brackets: `low side [kPa gauge]`,
/// `vent [°C]`, `engine speed [rpm]`; a pressure says its datum. `time [s]` must be there; `clutch` is 0 or 1 and needs no unit.
/// Other columns are left out, and [`LogColumns::ignored`] names them.
///
/// ```
/// use coldloop::{Channel, intake::LogColumns};
/// let columns = LogColumns::from_header(["time [s]", "low side [psi gauge]", "vent [°F]", "clutch"])?;
/// let sample = columns.sample(["3.5", "30", "", "1"])?;
/// assert_eq!(sample.time_s, 3.5);
/// assert!((sample.value(Channel::LowSide).unwrap() - 206_842.7).abs() < 0.1);
/// assert_eq!(sample.value(Channel::Vent), None);
/// assert!(LogColumns::from_header(["time [s]", "low side [psi]"]).is_err());
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct LogColumns {
    columns: Vec<Option<Column>>,
    datum: Datum,
    ignored: Vec<String>,
}

/// One column: SI = from + per * number.
#[derive(Clone, Debug, PartialEq)]
struct Column {
    name: String,
    /// `None` for the time.
    channel: Option<Channel>,
    from: f64,
    per: f64,
}

impl LogColumns {
    /// The columns of a header.
    ///
    /// Errors: a refusal that names the cell, for a missing or unknown unit, a pressure without datum, a channel that stands twice,
    /// pressures of both datums, or a header without time or without any channel.
    pub fn from_header<'a>(cells: impl IntoIterator<Item = &'a str>) -> Result<Self, Refusal> {
        let (mut columns, mut ignored, mut datum) = (Vec::new(), Vec::new(), None);
        for cell in cells {
            let column = Column::of(cell.trim(), &mut datum)?;
            if let Some(column) = &column {
                let twice =
                    |other: &Option<Column>| other.as_ref().is_some_and(|other| other.channel == column.channel);
                if columns.iter().any(twice) {
                    return Err(refused(cell, ErrorKind::Inconsistent, "this channel stands twice"));
                }
            } else {
                ignored.push(cell.trim().to_string());
            }
            columns.push(column);
        }
        let has = |time: bool| {
            columns
                .iter()
                .flatten()
                .any(|column: &Column| column.channel.is_none() == time)
        };
        if !has(true) {
            return Err(refused("time", ErrorKind::Missing, "write \"time [s]\" in the header"));
        }
        if !has(false) {
            return Err(refused(
                "",
                ErrorKind::Missing,
                "no column is a channel: \"low side [kPa gauge]\"",
            ));
        }
        Ok(Self {
            columns,
            datum: datum.unwrap_or(Datum::Gauge),
            ignored,
        })
    }

    /// From what the pressures count.
    pub const fn datum(&self) -> Datum {
        self.datum
    }

    /// The columns that are no channel.
    pub fn ignored(&self) -> &[String] {
        &self.ignored
    }

    /// The sample of a row; empty cells and `nan`, `na`, `null` and their like are missing values.
    ///
    /// Errors: a refusal that names the column, for a cell that is no number; one for a row without its time. What is a number and cannot
    /// be is for the recorder to refuse.
    pub fn sample<'a>(&self, cells: impl IntoIterator<Item = &'a str>) -> Result<Sample, Refusal> {
        let mut numbers = Vec::with_capacity(self.columns.len());
        for (column, cell) in self.columns.iter().zip(cells) {
            let cell = cell.trim();
            let missing = cell.is_empty() || MISSING.iter().any(|word| cell.eq_ignore_ascii_case(word));
            numbers.push(match column {
                Some(column) if !missing => cell.parse::<f64>().map_err(|_| {
                    let error = Error::of(ErrorKind::NotANumber, Quantity::Name);
                    Refusal::from(Mistake::new(
                        &column.name,
                        cell,
                        error,
                        "write a number, or leave the cell empty",
                    ))
                })?,
                Some(_) | None => f64::NAN,
            });
        }
        self.sample_of(numbers)
    }

    /// The sample of a row of numbers, each in the unit of its column; NaN is a missing value.
    ///
    /// Errors: a refusal for a row without its time.
    ///
    /// ```
    /// use coldloop::{Channel, intake::LogColumns};
    /// let columns = LogColumns::from_header(["time [min]", "vent [°C]"])?;
    /// let sample = columns.sample_of([2.0, 7.5])?;
    /// assert_eq!((sample.time_s, sample.value(Channel::Vent)), (120.0, Some(280.65)));
    /// assert!(columns.sample_of([f64::NAN, 7.5]).is_err());
    /// # Ok::<(), coldloop::intake::Refusal>(())
    /// ```
    pub fn sample_of(&self, numbers: impl IntoIterator<Item = f64>) -> Result<Sample, Refusal> {
        let (mut time_s, mut sample) = (None, Sample::at(0.0));
        for (column, number) in self.columns.iter().zip(numbers) {
            let Some(column) = column.as_ref().filter(|_| !number.is_nan()) else {
                continue;
            };
            let value = column.from + column.per * number;
            match column.channel {
                None => time_s = Some(value),
                Some(channel) => sample = sample.with(channel, value),
            }
        }
        match time_s {
            Some(time_s) => Ok(Sample { time_s, ..sample }),
            None => Err(refused("time", ErrorKind::Missing, "every row needs its time")),
        }
    }
}

impl Column {
    /// The meaning of a header cell; `None` for one that is no channel.
    fn of(cell: &str, datum: &mut Option<Datum>) -> Result<Option<Self>, Refusal> {
        let (name, unit) = match cell.split_once('[') {
            Some((name, unit)) => (name.trim(), unit.trim_end_matches(']').trim()),
            None => (cell, ""),
        };
        let key = name.to_lowercase().replace([' ', '-'], "_");
        if key == "time" {
            let line = line(cell, unit, |text| text::duration(text).map(TimeSpan::seconds))?;
            return Ok(Some(Self::new(name, None, line)));
        }
        let Some(channel) = Channel::from_id(&key) else {
            return Ok(None);
        };
        let line = match channel {
            Channel::LowSide | Channel::HighSide | Channel::HighSideTransducer => line(cell, unit, |text| {
                let (pa, of) = match text::pressure(text)? {
                    Pressure::Gauge(pressure) => (pressure.pa(), Datum::Gauge),
                    Pressure::Absolute(pressure) => (pressure.pa(), Datum::Absolute),
                };
                if *datum.get_or_insert(of) != of {
                    return Err(Error::of(ErrorKind::Inconsistent, Quantity::GaugePressure));
                }
                Ok(pa)
            })?,
            Channel::Vent
            | Channel::Cabin
            | Channel::SuctionLine
            | Channel::DischargeLine
            | Channel::LiquidLine
            | Channel::CondenserOutlet
            | Channel::EvaporatorSensor => line(cell, unit, |text| text::temperature(text).map(in_kelvins))?,
            Channel::EngineSpeed | Channel::CompressorSpeed => {
                line(cell, unit, |text| text::rotational_speed(text).map(RotationalSpeed::hz))?
            }
            Channel::Clutch => (0.0, 1.0),
        };
        Ok(Some(Self::new(name, Some(channel), line)))
    }

    fn new(name: &str, channel: Option<Channel>, (from, per): (f64, f64)) -> Self {
        Self {
            name: name.to_string(),
            channel,
            from,
            per,
        }
    }
}

/// The straight line from numbers in a unit to SI, from the values at 0 and 100.
fn line(cell: &str, unit: &str, mut read: impl FnMut(&str) -> Result<f64, Error>) -> Result<(f64, f64), Refusal> {
    let mut at = |number: &str| {
        read(&format!("{number} {unit}")).map_err(|error| {
            Refusal::from(Mistake::new(
                cell,
                unit,
                error,
                "write the unit in brackets: \"low side [kPa gauge]\", \"vent [°C]\"",
            ))
        })
    };
    let (from, hundred) = (at("0")?, at("100")?);
    Ok((from, (hundred - from) / 100.0))
}

fn refused(key: &str, kind: ErrorKind, advice: &str) -> Refusal {
    Mistake::new(key, "", Error::of(kind, Quantity::Name), advice).into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_header_is_refused_with_the_cell_that_is_wrong() {
        let told = |cells: &[&str]| LogColumns::from_header(cells.iter().copied()).unwrap_err();
        assert_eq!(told(&["low side [kPa gauge]"]).error().kind, ErrorKind::Missing);
        assert_eq!(told(&["time [s]"]).error().kind, ErrorKind::Missing);
        assert_eq!(told(&["time [s]", "vent"]).error().kind, ErrorKind::MissingUnit);
        assert_eq!(told(&["time [s]", "vent [psi]"]).error().kind, ErrorKind::UnknownUnit);
        assert_eq!(
            told(&["time [s]", "low side [kPa]"]).error().kind,
            ErrorKind::MissingDatum
        );
        let both = told(&["time [s]", "low side [kPa gauge]", "high side [kPa abs]"]);
        assert_eq!(both.error().kind, ErrorKind::Inconsistent);
        assert!(both.first.key.starts_with("high side"));
        let twice = told(&["time [s]", "vent [°C]", "Vent [°F]"]);
        assert_eq!(twice.error().kind, ErrorKind::Inconsistent);
    }

    #[test]
    fn a_row_is_a_sample_in_si() {
        let columns = LogColumns::from_header(["time [min]", "note", "vent [°F]", "engine speed [rpm]"]).unwrap();
        assert_eq!(columns.ignored(), ["note"]);
        let sample = columns.sample(["2", "warm", "50", "1500"]).unwrap();
        assert_eq!(sample.time_s, 120.0);
        assert!((sample.value(Channel::Vent).unwrap() - 283.15).abs() < 1e-9);
        assert_eq!(sample.value(Channel::EngineSpeed), Some(25.0));
        assert_eq!(columns.sample(["2", "", "NaN", ""]).unwrap().value(Channel::Vent), None);
        assert_eq!(columns.sample(["2", "", "cold"]).unwrap_err().first.key, "vent");
        assert_eq!(
            columns.sample(["", "", "50"]).unwrap_err().error().kind,
            ErrorKind::Missing
        );
    }
}
