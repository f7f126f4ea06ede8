//! The facts of `tables/evidence` for which a model has a value.

use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, celsius};
use coldloop::vehicle::{Conditions, FaultCause, System};
use coldloop::{AirSource, Compressor, Expansion, Fault, Refrigerant};
use std::collections::BTreeMap;
use std::error::Error;
use std::path::Path;

const STANDARD_PA: f64 = 101_325.0;
const PSI_PA: f64 = 6_894.757_293_168;

/// What is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Reading {
    LowSide,
    HighSide,
    Vent,
    DischargeLine,
    Capacity,
    Efficiency,
}

impl Reading {
    const ALL: [Self; 6] = [
        Self::LowSide,
        Self::HighSide,
        Self::Vent,
        Self::DischargeLine,
        Self::Capacity,
        Self::Efficiency,
    ];

    /// Its name in the tables.
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::LowSide => "low_side",
            Self::HighSide => "high_side",
            Self::Vent => "vent",
            Self::DischargeLine => "discharge_line",
            Self::Capacity => "capacity",
            Self::Efficiency => "cop",
        }
    }
}

/// A median and the part between 10 and 90 %, in the unit of the fact.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Figure {
    pub(crate) median: f64,
    pub(crate) part: Option<[f64; 2]>,
}

/// One published fact.
pub(crate) struct Fact {
    pub(crate) id: String,
    pub(crate) systems: Vec<System>,
    pub(crate) conditions: Conditions,
    pub(crate) fault: Fault,
    /// The form of the fault, where the source says it.
    pub(crate) cause: Option<FaultCause>,
    /// How severe, where the source says it.
    pub(crate) severity: Option<f64>,
    pub(crate) reading: Reading,
    /// Whether the figure is that at which the clutch disengages, not the mean of its cycles.
    pub(crate) lowest: bool,
    /// Whether the figures are changes against the sound system.
    pub(crate) change: bool,
    low: Option<f64>,
    high: Option<f64>,
    pub(crate) unit: String,
}

impl Fact {
    /// Whether a printed range and the range from 10 to 90 % overlap.
    pub(crate) fn agrees(&self, figure: &Figure) -> Option<bool> {
        let [low, high] = figure.part?;
        Some(self.low.is_none_or(|least| high >= least) && self.high.is_none_or(|most| low <= most))
    }

    /// What is printed.
    pub(crate) fn printed(&self) -> String {
        match (self.low, self.high) {
            (Some(low), Some(high)) if low == high => format!("{low}"),
            (Some(low), Some(high)) => format!("{low} to {high}"),
            (Some(low), None) => format!("at least {low}"),
            (None, Some(high)) => format!("at most {high}"),
            (None, None) => String::new(),
        }
    }

    /// An absolute pressure (Pa) or a temperature (K) in the unit of the fact.
    pub(crate) fn in_unit(&self, value: f64) -> Result<f64, String> {
        Ok(match self.unit.as_str() {
            "psig" => (value - STANDARD_PA) / PSI_PA,
            "kPa gauge" => (value - STANDARD_PA) / 1e3,
            "MPa gauge" => (value - STANDARD_PA) / 1e6,
            "bar gauge" => (value - STANDARD_PA) / 1e5,
            "°C" => value - 273.15,
            "°F" if self.change => 1.8 * value,
            "°F" => 1.8 * value - 459.67,
            "psi" => value / PSI_PA,
            "kPa" => value / 1e3,
            "K" | "%" => value,
            other => return Err(format!("{}: unit {other}", self.id)),
        })
    }
}

type Row = BTreeMap<String, String>;

fn rows(path: &Path) -> Result<Vec<Row>, Box<dyn Error>> {
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path)?;
    Ok(reader.deserialize().collect::<Result<Vec<Row>, _>>()?)
}

/// Levels that gauges and thermometers show.
pub(crate) fn levels(path: &Path) -> Result<Vec<Fact>, Box<dyn Error>> {
    facts(path, "reading", ["low", "high"], false)
}

/// Measured changes whose severity is stated.
pub(crate) fn changes(path: &Path) -> Result<Vec<Fact>, Box<dyn Error>> {
    let all = facts(path, "quantity", ["change_low", "change_high"], true)?;
    Ok(all.into_iter().filter(|fact| fact.severity.is_some()).collect())
}

fn facts(path: &Path, reading: &str, ends: [&str; 2], change: bool) -> Result<Vec<Fact>, Box<dyn Error>> {
    let mut facts = Vec::new();
    for row in rows(path)? {
        let cell = |name: &str| row.get(name).map_or("", String::as_str);
        let number = |name: &str| {
            Some(cell(name))
                .filter(|text| !text.is_empty())
                .map(str::parse::<f64>)
                .transpose()
        };
        let known = Reading::ALL.into_iter().find(|known| known.id() == cell(reading));
        let (Some(reading), Some(fault)) = (known, Fault::from_id(cell("fault"))) else {
            continue;
        };
        let [low, high] = [number(ends[0])?, number(ends[1])?];
        let level = matches!(cell("unit"), "kPa gauge") && change;
        if low.or(high).is_none() || level {
            continue;
        }
        let systems = systems(cell("refrigerant"), cell("expansion"), cell("compressor"), change);
        if systems.is_empty() {
            continue;
        }
        let span =
            |low: &str, high: &str| number(low).and_then(|l| Ok(l.zip(number(high)?).map(|(l, h)| (l + h) / 2.0)));
        // Where the source does not state it: 30 °C. Judgement.
        let ambient_c = span("ambient_low_c", "ambient_high_c")?.unwrap_or(30.0);
        let humidity = span("humidity_low_percent", "humidity_high_percent")?.map_or(0.5, |percent| percent / 100.0);
        let electric = cell("compressor") == Compressor::Electric.id();
        let conditions = Conditions {
            relative_humidity: Some(RelativeHumidity::from_fraction(humidity)),
            engine_speed: Some(RotationalSpeed::from_hz(speed_rpm(cell("engine_speed"))? / 60.0)).filter(|_| !electric),
            air_source: Some(air_source(cell("note"))),
            blower: Some(1.0),
            vehicle_speed: Some(Speed::from_m_s(0.0)),
            ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
        };
        facts.push(Fact {
            id: cell("id").into(),
            systems,
            conditions,
            fault,
            cause: cause(cell("level")).filter(|cause| cause.fault() == fault),
            lowest: cell("note").contains("before the clutch lets go") || cell("says").starts_with("falls"),
            severity: number("severity")?,
            reading,
            change,
            low,
            high,
            unit: cell("unit").into(),
        });
    }
    Ok(facts)
}

/// What the evaporator draws: with doors open recirculated air is that of the weather.
fn air_source(note: &str) -> AirSource {
    let open = ["doors open", "doors and hood open"];
    if note.contains("recirc") && !open.iter().any(|words| note.contains(words)) {
        AirSource::Recirculated
    } else {
        AirSource::Fresh
    }
}

/// The form of a fault, from the words of its level.
fn cause(level: &str) -> Option<FaultCause> {
    if level.contains("of the face") {
        Some(FaultCause::FaceBlocked)
    } else if level.contains("fan current") {
        Some(FaultCause::FanSlow)
    } else {
        None
    }
}

/// Engine speed of a source: idle is 800 rpm, unstated 1,500, of a range the middle. Judgement.
fn speed_rpm(text: &str) -> Result<f64, Box<dyn Error>> {
    let numbers = text
        .split(' ')
        .filter_map(|word| word.parse::<f64>().ok())
        .collect::<Vec<_>>();
    match (text, numbers.as_slice()) {
        ("idle", _) => Ok(800.0),
        ("", _) => Ok(1_500.0),
        (_, [one]) => Ok(*one),
        (_, [low, high]) => Ok((low + high) / 2.0),
        _ => Err(format!("engine speed {text}").into()),
    }
}

/// The systems that a source may mean. R-134a replaces R-12 where only a change is stated.
fn systems(refrigerant: &str, expansion: &str, compressor: &str, change: bool) -> Vec<System> {
    let refrigerant = match Refrigerant::from_id(refrigerant) {
        Some(known @ (Refrigerant::R134a | Refrigerant::R1234yf)) => known,
        Some(Refrigerant::R12) if change => Refrigerant::R134a,
        None => Refrigerant::R134a,
        Some(_) => return Vec::new(),
    };
    let expansions = Expansion::from_id(expansion).map_or(Expansion::ALL.to_vec(), |one| vec![one]);
    let compressors = Compressor::from_id(compressor)
        .map_or(vec![Compressor::FixedClutch, Compressor::VariableInternal], |one| {
            vec![one]
        });
    expansions
        .iter()
        .flat_map(|expansion| {
            compressors
                .iter()
                .map(|compressor| System::new(refrigerant, *expansion, *compressor))
        })
        .collect()
}
