//! The columns of a table of vehicles: what their names say, and the case of each row.
//!
//! A column of numbers is called after an entry of a readings file with its unit behind it, `low_side_kpa_gauge`; the
//! unit is what may stand in the text of that entry, with underscores for spaces and strokes. A column of words is
//! called after its entry alone, and `low_side_instrument` names a gauge or a thermometer.

use coldloop::circuit::{Gauge, Observations, Reading, Readings};
use coldloop::diagnosis::Case;
use coldloop::units::{AbsolutePressure, Pressure, Surroundings, Temperature, text};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    AirSource, Channel, Compressor, Error, ErrorKind, Expansion, GaugeClass, HighPort, LowPort, Observation, Quantity,
    Refrigerant, Thermometer,
};
use std::fmt::Write;

/// The entries that are numbers, with their quantity.
pub(super) const NUMBERS: [(&str, Quantity); 26] = [
    ("high_side_transducer", Quantity::GaugePressure), // before `high_side`, with which its name begins
    ("high_cut_out", Quantity::GaugePressure),
    ("compressor_speed", Quantity::RotationalSpeed),
    ("commanded_displacement", Quantity::Displacement),
    ("fan_command", Quantity::FanCommand),
    ("evaporator_sensor", Quantity::Temperature),
    ("nominal_charge", Quantity::Mass),
    ("ambient", Quantity::Temperature),
    ("humidity", Quantity::RelativeHumidity),
    ("altitude", Quantity::Altitude),
    ("barometer", Quantity::AbsolutePressure),
    ("engine_speed", Quantity::RotationalSpeed),
    ("blower", Quantity::BlowerSetting),
    ("vehicle_speed", Quantity::Speed),
    ("running", Quantity::Duration),
    ("low_side", Quantity::GaugePressure),
    ("high_side", Quantity::GaugePressure),
    ("vent", Quantity::Temperature),
    ("cabin", Quantity::Temperature),
    ("suction_line", Quantity::Temperature),
    ("discharge_line", Quantity::Temperature),
    ("liquid_line", Quantity::Temperature),
    ("condenser_outlet", Quantity::Temperature),
    ("clutch_cycles", Quantity::Frequency),
    ("gauge_zero_altitude", Quantity::Altitude),
    ("gauge_zero_barometer", Quantity::AbsolutePressure),
];

/// The entries that are words.
pub(super) const WORDS: [&str; 16] = [
    "refrigerant",
    "expansion",
    "compressor",
    "air_source",
    "compressor_running",
    "sight_glass",
    "low_port",
    "high_port",
    "low_side_instrument",
    "high_side_instrument",
    "vent_instrument",
    "cabin_instrument",
    "suction_line_instrument",
    "discharge_line_instrument",
    "liquid_line_instrument",
    "condenser_outlet_instrument",
];

/// The words of a column that is answered with yes or no.
const YES_OR_NO: [&str; 2] = ["yes", "no"];

fn is_so(code: u32) -> Option<bool> {
    match code {
        1 => Some(true),
        2 => Some(false),
        _ => None,
    }
}

/// What a column holds.
pub(super) enum Kind {
    /// Numbers of this entry, in this unit.
    Number(&'static str, String),
    /// Words.
    Word,
    /// Answers to a yes-or-no question.
    Answer(Observation),
}

/// What the name of a column says.
///
/// Errors: `UnknownName`, and for a unit that does not fit `MissingUnit`, `MissingDatum` or `UnknownUnit`.
pub(super) fn kind(name: &str) -> Result<Kind, Error> {
    if WORDS.contains(&name) {
        return Ok(Kind::Word);
    }
    if let Some(observation) = Observation::from_id(name) {
        return Ok(Kind::Answer(observation));
    }
    let (entry, unit) = entry_and_unit(name, &NUMBERS)?;
    Ok(Kind::Number(entry, unit))
}

/// The entry that the name of a column of numbers begins with, and the unit that follows.
///
/// Errors: `UnknownName`, and for a unit that does not fit `MissingUnit`, `MissingDatum` or `UnknownUnit`.
fn entry_and_unit(name: &str, entries: &[(&'static str, Quantity)]) -> Result<(&'static str, String), Error> {
    let unit_of = |entry: &str| match name.strip_prefix(entry)? {
        "" => Some(""),
        rest => rest.strip_prefix('_'),
    };
    let (entry, quantity, unit) = entries
        .iter()
        .find_map(|(entry, quantity)| Some((*entry, *quantity, unit_of(entry)?)))
        .ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))?;
    let spaced = unit.replace('_', " ");
    match fits(quantity, &spaced) {
        Ok(()) => Ok((entry, spaced)),
        Err(error) => {
            let divided = unit.replace('_', "/");
            fits(quantity, &divided).map_err(|_| error)?;
            Ok((entry, divided))
        }
    }
}

/// The header cell of a log for the name of a column: the time, a channel with its unit, the clutch; none for another column.
///
/// A name with brackets is a header cell already.
///
/// Errors: as [`kind`] for the unit.
pub(crate) fn log_cell(name: &str) -> Result<Option<String>, Error> {
    let plain = name.split('[').next().unwrap_or(name).trim().to_lowercase();
    let plain = plain.replace([' ', '-'], "_");
    if name.contains('[') || plain == Channel::Clutch.id() {
        let known = plain == "time" || Channel::from_id(&plain).is_some();
        return Ok(known.then(|| name.to_string()));
    }
    let channels = NUMBERS
        .into_iter()
        .filter(|(entry, _)| Channel::from_id(entry).is_some());
    let entries: Vec<_> = channels.chain([("time", Quantity::Duration)]).collect();
    match entry_and_unit(name, &entries) {
        Ok((entry, unit)) => Ok(Some(format!("{entry} [{unit}]"))),
        Err(error) if error.kind == ErrorKind::UnknownName => Ok(None),
        Err(error) => Err(error),
    }
}

/// Whether a number with this unit can be read, in range or not.
fn fits(quantity: Quantity, unit: &str) -> Result<(), Error> {
    let one = format!("1 {unit}");
    let read = if quantity == Quantity::GaugePressure {
        text::pressure(&one).map(|_| ()) // of either datum
    } else {
        let unread = Error::of(ErrorKind::UnknownName, Quantity::Name);
        crate::text::reader(quantity).map_or(Err(unread), |read| read(&one).map(|_| ()))
    };
    read.or_else(|error| {
        if error.kind == ErrorKind::OutOfRange {
            Ok(())
        } else {
            Err(error)
        }
    })
}

/// The code of a word in its column, from 1; 0 stands for no word.
pub(super) fn code(entry: &str, word: &str) -> Option<u32> {
    match entry {
        "refrigerant" => Refrigerant::from_id(word).map(Refrigerant::code),
        "expansion" => Expansion::from_id(word).map(Expansion::code),
        "compressor" => Compressor::from_id(word).map(Compressor::code),
        "air_source" => AirSource::from_id(word).map(AirSource::code),
        "low_port" => LowPort::from_id(word).map(LowPort::code),
        "high_port" => HighPort::from_id(word).map(HighPort::code),
        "compressor_running" | "sight_glass" => {
            let place = YES_OR_NO.iter().position(|known| *known == word)?;
            u32::try_from(place + 1).ok()
        }
        "low_side_instrument" | "high_side_instrument" => GaugeClass::from_id(word).map(GaugeClass::code),
        _ => Thermometer::from_id(word).map(Thermometer::code),
    }
}

/// The refrigerant that a common name means, in the column of refrigerants.
pub(super) fn meant_by(entry: &str, word: &str) -> Option<&'static str> {
    let meant = Refrigerant::meant_by(word).filter(|_| entry == "refrigerant");
    meant.map(Refrigerant::id)
}

/// The words of a column.
pub(super) fn ids(entry: &str) -> Vec<&'static str> {
    match entry {
        "refrigerant" => Refrigerant::ALL.map(Refrigerant::id).to_vec(),
        "expansion" => Expansion::ALL.map(Expansion::id).to_vec(),
        "compressor" => Compressor::ALL.map(Compressor::id).to_vec(),
        "air_source" => AirSource::ALL.map(AirSource::id).to_vec(),
        "low_port" => LowPort::ALL.map(LowPort::id).to_vec(),
        "high_port" => HighPort::ALL.map(HighPort::id).to_vec(),
        "compressor_running" | "sight_glass" => YES_OR_NO.to_vec(),
        "low_side_instrument" | "high_side_instrument" => GaugeClass::ALL.map(GaugeClass::id).to_vec(),
        _ => Thermometer::ALL.map(Thermometer::id).to_vec(),
    }
}

/// A column of numbers.
pub(super) struct Numbers<'a> {
    pub(super) name: &'a str,
    pub(super) unit: String,
    pub(super) values: &'a [f64],
}

/// A column of words by their codes.
pub(super) struct Words<'a> {
    pub(super) name: &'a str,
    pub(super) codes: &'a [u32],
}

/// The columns by their entry.
pub(super) struct Table<'a> {
    pub(super) rows: usize,
    numbers: Vec<Option<Numbers<'a>>>,
    words: Vec<Option<Words<'a>>>,
    answers: Vec<(Observation, &'a [f64])>,
}

/// A row without a case: the column that was refused, and why.
pub(super) struct Refused {
    pub(super) column: String,
    pub(super) error: Error,
}

impl<'a> Table<'a> {
    pub(super) fn new(rows: usize) -> Self {
        Self {
            rows,
            numbers: NUMBERS.iter().map(|_| None).collect(),
            words: WORDS.iter().map(|_| None).collect(),
            answers: Vec::new(),
        }
    }

    /// Adds a column of numbers or of answers (1 yes, 0 no, NaN not looked at).
    ///
    /// Errors: those of [`kind`]; `Inconsistent` for two columns of one entry.
    pub(super) fn add_numbers(&mut self, name: &'a str, values: &'a [f64]) -> Result<(), Error> {
        match kind(name)? {
            Kind::Answer(observation) => self.answers.push((observation, values)),
            Kind::Number(entry, unit) => {
                let place = NUMBERS.iter().position(|(known, _)| *known == entry);
                put(&mut self.numbers, place, Numbers { name, unit, values })?;
            }
            Kind::Word => return Err(Error::of(ErrorKind::NotANumber, Quantity::Name)),
        }
        Ok(())
    }

    /// Adds a column of words.
    ///
    /// Errors: as [`Table::add_numbers`].
    pub(super) fn add_words(&mut self, name: &'a str, codes: &'a [u32]) -> Result<(), Error> {
        let place = WORDS.iter().position(|known| *known == name);
        put(&mut self.words, place, Words { name, codes })
    }

    /// The case of a row; `text` is a buffer.
    pub(super) fn case(&self, row: usize, text: &mut String) -> Result<Case, Refused> {
        let mut cells = Cells { table: self, row, text };
        let mut system = System::new(
            cells.required("refrigerant", Refrigerant::from_code)?,
            cells.required("expansion", Expansion::from_code)?,
            cells.required("compressor", Compressor::from_code)?,
        );
        system.nominal_charge = cells.number("nominal_charge", text::mass)?;
        system.low_port = cells.word("low_port", LowPort::from_code)?;
        system.high_port = cells.word("high_port", HighPort::from_code)?;
        system.sight_glass = cells.word("sight_glass", is_so)?;
        system.high_cut_out = cells.number("high_cut_out", text::gauge_pressure)?;
        let missing = |entry: &str, quantity| Refused {
            column: entry.into(),
            error: Error::of(ErrorKind::Missing, quantity),
        };
        let ambient = cells
            .number("ambient", text::temperature)?
            .ok_or_else(|| missing("ambient", Quantity::Temperature))?;
        let air = cells
            .surroundings("altitude", "barometer")?
            .ok_or_else(|| missing("altitude", Quantity::Altitude))?;
        let conditions = Conditions {
            relative_humidity: cells.number("humidity", text::relative_humidity)?,
            engine_speed: cells.number("engine_speed", text::rotational_speed)?,
            blower: cells.number("blower", text::blower_setting)?,
            vehicle_speed: cells.number("vehicle_speed", text::speed)?,
            running_for: cells.number("running", text::duration)?,
            air_source: cells.word("air_source", AirSource::from_code)?,
            compressor_running: cells.word("compressor_running", is_so)?,
            compressor_speed: cells.number("compressor_speed", text::rotational_speed)?,
            commanded_displacement: cells.number("commanded_displacement", text::commanded_displacement)?,
            fan_command: cells.number("fan_command", text::fan_command)?,
            ..Conditions::new(ambient, air)
        };
        let (in_air, on_line) = (Thermometer::PocketDigital, Thermometer::ClampThermocouple);
        let readings = Readings {
            low_side: cells.pressure("low_side", "low_side_instrument", Gauge::LOW_SIDE)?,
            high_side: cells.pressure("high_side", "high_side_instrument", Gauge::HIGH_SIDE)?,
            vent: cells.temperature("vent", "vent_instrument", in_air)?,
            cabin: cells.temperature("cabin", "cabin_instrument", in_air)?,
            suction_line: cells.temperature("suction_line", "suction_line_instrument", on_line)?,
            discharge_line: cells.temperature("discharge_line", "discharge_line_instrument", on_line)?,
            liquid_line: cells.temperature("liquid_line", "liquid_line_instrument", on_line)?,
            condenser_outlet: cells.temperature("condenser_outlet", "condenser_outlet_instrument", on_line)?,
            high_side_transducer: cells
                .number("high_side_transducer", text::pressure)?
                .map(|pressure| Reading::pressure(pressure, Gauge::TRANSDUCER)),
            evaporator_sensor: cells
                .number("evaporator_sensor", text::temperature)?
                .map(|sensed| Reading::temperature(sensed, Thermometer::ClampThermistor)),
            clutch_cycles: cells.number("clutch_cycles", text::frequency)?.map(Reading::counted),
            gauge_zero: cells.surroundings("gauge_zero_altitude", "gauge_zero_barometer")?,
        };
        let mut case = Case::new(system, conditions, readings);
        case.observations = self.observations(row)?;
        Ok(case)
    }

    /// What was seen: 1 is yes and 0 is no.
    fn observations(&self, row: usize) -> Result<Observations, Refused> {
        let mut all = Observations::NONE;
        for (observation, answers) in self.answers.iter().filter(|(_, answers)| !answers[row].is_nan()) {
            if answers[row] != 0.0 && answers[row] != 1.0 {
                return Err(Refused {
                    column: observation.id().into(),
                    error: Error::of(ErrorKind::UnknownName, Quantity::Name),
                });
            }
            all = all.with(*observation, answers[row] != 0.0);
        }
        Ok(all)
    }
}

fn put<T>(columns: &mut [Option<T>], place: Option<usize>, column: T) -> Result<(), Error> {
    let cell = place
        .and_then(|place| columns.get_mut(place))
        .ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))?;
    if cell.is_some() {
        return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
    }
    *cell = Some(column);
    Ok(())
}

/// The cells of one row.
struct Cells<'t, 'a> {
    table: &'t Table<'a>,
    row: usize,
    text: &'t mut String,
}

impl Cells<'_, '_> {
    /// A number, read as the text of a readings file is, so that tables and files give the same bits.
    fn number<T>(&mut self, entry: &str, read: impl Fn(&str) -> Result<T, Error>) -> Result<Option<T>, Refused> {
        let place = NUMBERS.iter().position(|(known, _)| *known == entry);
        let Some(column) = place.and_then(|place| self.table.numbers[place].as_ref()) else {
            return Ok(None);
        };
        let value = column.values[self.row];
        if value.is_nan() {
            return Ok(None);
        }
        self.text.clear();
        let read = match write!(self.text, "{value} {}", column.unit) {
            Ok(()) => read(self.text),
            Err(_) => Err(Error::of(ErrorKind::NotANumber, Quantity::Name)),
        };
        read.map(Some).map_err(|error| Refused {
            column: column.name.into(),
            error,
        })
    }

    fn word<T>(&self, entry: &str, member: impl Fn(u32) -> Option<T>) -> Result<Option<T>, Refused> {
        let place = WORDS.iter().position(|known| *known == entry);
        let Some(column) = place.and_then(|place| self.table.words[place].as_ref()) else {
            return Ok(None);
        };
        match column.codes[self.row] {
            0 => Ok(None),
            code => member(code).map(Some).ok_or_else(|| Refused {
                column: column.name.into(),
                error: Error::of(ErrorKind::UnknownName, Quantity::Name),
            }),
        }
    }

    fn required<T>(&self, entry: &str, member: impl Fn(u32) -> Option<T>) -> Result<T, Refused> {
        self.word(entry, member)?.ok_or_else(|| Refused {
            column: entry.into(),
            error: Error::of(ErrorKind::Missing, Quantity::Name),
        })
    }

    /// The air of a place by its altitude or its barometer; both at once contradict each other.
    fn surroundings(&mut self, altitude: &str, barometer: &str) -> Result<Option<Surroundings>, Refused> {
        let metres = self.number(altitude, text::altitude_m)?;
        let pressure: Option<AbsolutePressure> = self.number(barometer, text::absolute_pressure)?;
        let air = match (metres, pressure) {
            (Some(_), Some(_)) => Err(Error::of(ErrorKind::Inconsistent, Quantity::Altitude)),
            (Some(metres), None) => Surroundings::at_altitude(metres).map(Some),
            (None, Some(pressure)) => Surroundings::measured(pressure).map(Some),
            (None, None) => Ok(None),
        };
        air.map_err(|error| Refused {
            column: altitude.into(),
            error,
        })
    }

    fn pressure(&mut self, entry: &str, instrument: &str, dial: Gauge) -> Result<Option<Reading<Pressure>>, Refused> {
        let Some(value) = self.number(entry, text::pressure)? else {
            return Ok(None);
        };
        let class = self.word(instrument, GaugeClass::from_code)?;
        let gauge = class.map_or(dial, |class| dial.of_class(class));
        Ok(Some(Reading::pressure(value, gauge)))
    }

    fn temperature(
        &mut self,
        entry: &str,
        instrument: &str,
        usual: Thermometer,
    ) -> Result<Option<Reading<Temperature>>, Refused> {
        let Some(value) = self.number(entry, text::temperature)? else {
            return Ok(None);
        };
        let thermometer = self.word(instrument, Thermometer::from_code)?.unwrap_or(usual);
        Ok(Some(Reading::temperature(value, thermometer)))
    }
}
