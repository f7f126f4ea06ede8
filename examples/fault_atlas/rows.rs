//! The rows of a page: a line for each fault, source and severity.

use coldloop::diagnosis::{Effect, effects};
use coldloop::expected::{Band, SoundModel, Source};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Error, Fault, Feature};

/// All that is known of the faults of one system in some weather.
pub(crate) struct Page {
    pub(crate) system: System,
    pub(crate) day: Conditions,
    /// The figures, each with the band of sound systems, in K or as ln(1 + engagements per minute).
    pub(crate) figures: Vec<(Feature, Band<f64>)>,
    /// The faults, in the order of the vocabulary.
    pub(crate) faults: Vec<Fault>,
    rows: Vec<Row>,
}

/// One severity of a fault from one source.
#[derive(Clone)]
pub(crate) struct Row {
    pub(crate) source: Source,
    pub(crate) fault: Fault,
    pub(crate) severity: [f64; 3],
    pub(crate) share: f64,
    /// For each figure of the page.
    pub(crate) moves: Vec<Move>,
}

/// By how much a figure moves, and the scale of its spread.
#[derive(Clone, Copy)]
pub(crate) struct Move {
    pub(crate) shift: f64,
    pub(crate) spread: f64,
}

impl Page {
    pub(crate) fn of(system: &System, day: &Conditions) -> Result<Self, Error> {
        let sound = SoundModel::of(system, day)?;
        let bands = Feature::ALL
            .into_iter()
            .map(|figure| Some((figure, sound.band(figure)?)));
        let mut rows: Vec<Row> = Vec::new();
        for effect in effects(system, day)? {
            // The figures of one row follow each other.
            if effect.feature == Feature::LowSide {
                rows.push(Row::of(&effect));
            }
            if let Some(row) = rows.last_mut() {
                row.moves.push(Move {
                    shift: effect.shift,
                    spread: effect.spread,
                });
            }
        }
        let spoken_of = |fault: &Fault| rows.iter().any(|row| row.fault == *fault);
        Ok(Self {
            system: *system,
            day: *day,
            figures: bands.flatten().collect(),
            faults: Fault::ALL.into_iter().filter(spoken_of).collect(),
            rows,
        })
    }

    /// A name for its file.
    pub(crate) fn name(&self) -> String {
        let System {
            refrigerant,
            expansion,
            compressor,
            ..
        } = self.system;
        format!("{refrigerant}-{expansion}-{compressor}")
    }

    /// The rows of a fault, source after source.
    pub(crate) fn rows(&self, fault: Fault) -> impl Iterator<Item = &Row> {
        self.rows.iter().filter(move |row| row.fault == fault)
    }

    /// The sources with rows.
    pub(crate) fn sources(&self) -> impl Iterator<Item = Source> {
        let speaks = |source: &Source| self.rows.iter().any(|row| row.source == *source);
        [Source::VehicleModel, Source::IndependentSimulator, Source::Published]
            .into_iter()
            .filter(speaks)
    }

    /// The rows of a fault from a source, mild to severe, with the forms that have the same range of severities as one: means, and
    /// the spread within the forms and between them.
    pub(crate) fn drawn(&self, fault: Fault, source: Source) -> Vec<Row> {
        let mut drawn: Vec<Row> = Vec::new();
        for row in self.rows(fault).filter(|row| row.source == source) {
            let ends = |row: &Row| [row.severity[0], row.severity[2]];
            match drawn.iter_mut().find(|other| ends(other) == ends(row)) {
                Some(other) => other.join(row),
                None => drawn.push(row.clone()),
            }
        }
        drawn.sort_by(|a, b| a.severity[1].total_cmp(&b.severity[1]));
        drawn
    }
}

impl Row {
    fn of(effect: &Effect) -> Self {
        Self {
            source: effect.source,
            fault: effect.fault,
            severity: effect.severity,
            share: effect.share,
            moves: Vec::new(),
        }
    }

    fn join(&mut self, other: &Self) {
        let part = other.share / (self.share + other.share);
        for (one, other) in self.moves.iter_mut().zip(&other.moves) {
            let apart = other.shift - one.shift;
            let variance = (1.0 - part) * one.spread.powi(2) + part * other.spread.powi(2);
            one.shift += part * apart;
            one.spread = (variance + part * (1.0 - part) * apart.powi(2)).sqrt();
        }
        self.severity[1] += part * (other.severity[1] - self.severity[1]);
        self.share += other.share;
    }
}

/// What a source is called.
pub(crate) const fn called(source: Source) -> &'static str {
    match source {
        Source::VehicleModel => "vehicle model",
        Source::IndependentSimulator => "independent simulator",
        Source::Published => "tables of the trade",
    }
}

/// What a figure is called, and its unit.
pub(crate) fn titled(figure: Feature) -> [&'static str; 2] {
    match figure {
        Feature::LowSide => ["low side", "K of saturation temperature"],
        Feature::HighSide => ["high side", "K of saturation temperature"],
        Feature::Vent => ["vent", "K"],
        Feature::Superheat => ["superheat", "K"],
        Feature::Subcooling => ["subcooling", "K"],
        Feature::DischargeSuperheat => ["discharge superheat", "K"],
        Feature::ClutchCycles => ["clutch cycles", "ln(1 + per minute)"],
        Feature::RestPressure => ["pressure at rest", "K"],
        _ => unreachable!("a new member of the vocabulary"),
    }
}

/// An id as words.
pub(crate) fn spoken(id: &str) -> String {
    id.replace('-', " ")
}

/// The system in words.
pub(crate) fn system(page: &Page) -> String {
    let System {
        refrigerant,
        expansion,
        compressor,
        ..
    } = page.system;
    let expansion = match expansion {
        coldloop::Expansion::Txv => "thermostatic expansion valve",
        coldloop::Expansion::OrificeTube => "orifice tube",
        _ => unreachable!("a new member of the vocabulary"),
    };
    let compressor = match compressor {
        coldloop::Compressor::FixedClutch => "fixed compressor with a clutch",
        coldloop::Compressor::VariableInternal => "variable compressor, internally controlled",
        coldloop::Compressor::VariableExternal => "variable compressor, externally controlled",
        coldloop::Compressor::Electric => "electric compressor",
        _ => unreachable!("a new member of the vocabulary"),
    };
    format!("{refrigerant}, {expansion}, {compressor}")
}

/// The weather in words.
pub(crate) fn weather(page: &Page) -> String {
    let day = &page.day;
    let mut words = vec![format!("Ambient {:.0} °C", coldloop::units::in_celsius(day.ambient))];
    words.extend(
        day.relative_humidity
            .map(|part| format!("{:.0} % relative humidity", part.percent())),
    );
    words.push(format!("air {:.0} kPa", day.surroundings.pressure().pa() / 1e3));
    words.extend(
        day.engine_speed
            .map(|speed| format!("engine {} rpm", thousands(speed.rpm()))),
    );
    words.extend(day.air_source.map(|source| format!("{} air", source.id())));
    words.extend(day.blower.map(|part| format!("blower {:.0} %", 100.0 * part)));
    words.extend(day.vehicle_speed.map(|speed| match speed.km_h() {
        0.0 => "standing".to_string(),
        km_h => format!("{km_h:.0} km/h"),
    }));
    words.join(", ")
}

/// A whole number with a comma before its last three digits.
fn thousands(number: f64) -> String {
    let digits = format!("{number:.0}");
    match digits.len() {
        4.. => format!("{},{}", &digits[..digits.len() - 3], &digits[digits.len() - 3..]),
        _ => digits,
    }
}
