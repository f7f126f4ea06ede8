//! The values of the independent simulator for a fact, from its moments.

use crate::fact::{Fact, Figure, Reading};
use coldloop::air::MoistAir;
use coldloop::saturation::Side;
use coldloop::units::{RelativeHumidity, RotationalSpeed, in_kelvins};
use coldloop::vehicle::System;
use coldloop::{AirSource, Compressor, Fault, Refrigerant, saturation};
use std::collections::BTreeMap;
use std::error::Error;
use std::path::Path;

/// Quantile of 90 % of the t distribution with 5 degrees of freedom.
const T_90: f64 = 1.476;

type Row = BTreeMap<String, String>;

/// The rows of `independent-simulator.csv`.
pub(crate) struct Atlas(Vec<Row>);

impl Atlas {
    pub(crate) fn read(folder: &Path) -> Result<Self, Box<dyn Error>> {
        let mut reader = csv::ReaderBuilder::new()
            .comment(Some(b'#'))
            .from_path(folder.join("independent-simulator.csv"))?;
        Ok(Self(reader.deserialize().collect::<Result<Vec<Row>, _>>()?))
    }

    /// The mean over the systems that the fact may be about; their spread is that of one of them.
    pub(crate) fn figure(&self, fact: &Fact) -> Result<Option<Figure>, Box<dyn Error>> {
        let column = match fact.reading {
            Reading::LowSide | Reading::HighSide | Reading::Vent | Reading::DischargeLine => fact.reading.id(),
            Reading::Capacity | Reading::Efficiency => return Ok(None),
        };
        let mut sums = [0.0; 3];
        let mut count = 0.0;
        for system in &fact.systems {
            let Some((mean, spread)) = self.reading(fact, system, column)? else {
                continue;
            };
            let sound = self.sound(fact, system, column)?;
            for (sum, by) in sums.iter_mut().zip([0.0, -T_90, T_90]) {
                let value = |k: f64| value(fact, system, k);
                let value = if fact.change {
                    value(mean)? - value(sound)?
                } else {
                    value(mean + by * spread)?
                };
                *sum += fact.in_unit(value)?;
            }
            count += 1.0;
        }
        let [median, low, high] = sums.map(|sum| sum / count);
        Ok((count > 0.0).then_some(Figure {
            median,
            part: (!fact.change).then_some([low, high]),
        }))
    }

    /// Mean, K, and scale of the spread, K, of a reading.
    fn reading(&self, fact: &Fact, system: &System, column: &str) -> Result<Option<(f64, f64)>, Box<dyn Error>> {
        let sound = self.sound(fact, system, column)?;
        let rows = |group: &'static str, part: &'static str| {
            let wanted = [
                ("expansion", system.expansion.id()),
                ("compressor", group),
                ("fault", fact.fault.id()),
                ("part", part),
            ];
            self.0
                .iter()
                .filter(move |row| wanted.iter().all(|(key, value)| row[*key] == **value))
        };
        // Sound systems differ between makes and between vehicles.
        let parts: &[&'static str] = if fact.fault == Fault::NoFault {
            &["makes", "vehicles"]
        } else {
            &["covariance"]
        };
        let mut variance = 0.0;
        for part in parts {
            let Some(row) = rows("all", part).find(|row| row["term"] == column) else {
                return Ok(None);
            };
            variance += row[column].parse::<f64>()?;
        }
        if fact.fault == Fault::NoFault {
            return Ok(Some((sound, variance.sqrt())));
        }
        let group = match system.compressor {
            Compressor::VariableInternal | Compressor::VariableExternal => "variable",
            Compressor::FixedClutch => "fixed-clutch",
            Compressor::Electric => "electric",
            _ => unreachable!("a new member of the vocabulary"),
        };
        let group = if rows(group, "shift").next().is_some() {
            group
        } else {
            "all"
        };
        let mut shifts: Vec<(f64, f64)> = Vec::new();
        for row in rows(group, "shift") {
            let (severity, shift) = (row["severity"].parse()?, row[column].parse::<f64>()?);
            let moved = shift * term(&row["term"], fact, system)?;
            match shifts.last_mut() {
                Some((of, sum)) if *of == severity => *sum += moved,
                Some(_) | None => shifts.push((severity, moved)),
            }
        }
        Ok(at(fact, &shifts).map(|shift| (sound + shift, variance.sqrt())))
    }

    /// The regression of sound systems.
    fn sound(&self, fact: &Fact, system: &System, column: &str) -> Result<f64, Box<dyn Error>> {
        let mut sum = 0.0;
        for row in self
            .0
            .iter()
            .filter(|row| row["part"] == "sound" && row["expansion"] == system.expansion.id())
        {
            sum += term(&row["term"], fact, system)? * row[column].parse::<f64>()?;
        }
        Ok(sum)
    }
}

/// A term of the regression, a product of its words.
fn term(name: &str, fact: &Fact, system: &System) -> Result<f64, Box<dyn Error>> {
    let conditions = &fact.conditions;
    let t_k = in_kelvins(conditions.ambient);
    let air_pa = conditions.surroundings.pressure().pa();
    let humidity = conditions.relative_humidity.map_or(0.5, RelativeHumidity::fraction);
    let air = MoistAir::from_relative_humidity(t_k, air_pa, humidity)?;
    let electric = system.compressor == Compressor::Electric;
    let speed_hz = conditions
        .engine_speed
        .filter(|_| !electric)
        .map_or(25.0, RotationalSpeed::hz);
    let factor = |word: &str| -> Option<f64> {
        Some(match word {
            "1" => 1.0,
            "a" => (t_k - 303.15) / 10.0,
            "w" => (air.humidity_ratio() - 0.012) / 0.010,
            "s" => (speed_hz / 25.0).ln(),
            "r" => f64::from(u8::from(conditions.air_source == Some(AirSource::Recirculated))),
            "b" => conditions.blower.unwrap_or(1.0) - 1.0,
            "p" => (air_pa / 101_325.0).ln(),
            kind => {
                let compressor = Compressor::from_id(kind).map(|known| known == system.compressor);
                let refrigerant = Refrigerant::from_id(kind).map(|known| known == system.refrigerant);
                f64::from(u8::from(compressor.or(refrigerant)?))
            }
        })
    };
    let product: Option<f64> = name.split(' ').map(factor).product();
    Ok(product.ok_or(format!("term {name}"))?)
}

/// The value at the fact's severity, interpolated between values at rising severities; the last one where none is stated.
fn at(fact: &Fact, values: &[(f64, f64)]) -> Option<f64> {
    let Some(severity) = fact.severity else {
        return values.last().map(|(_, value)| *value);
    };
    let (first, last) = (values.first()?, values.last()?);
    if severity <= first.0 {
        // No shift at severity 0.
        return Some(first.1 * severity / first.0);
    }
    let between = values.windows(2).find(|pair| severity <= pair[1].0);
    Some(between.map_or(last.1, |pair| {
        let part = (severity - pair[0].0) / (pair[1].0 - pair[0].0);
        pair[0].1 + part * (pair[1].1 - pair[0].1)
    }))
}

/// A fitted reading, K, as an absolute pressure, Pa, or a temperature, K.
fn value(fact: &Fact, system: &System, fitted_k: f64) -> Result<f64, coldloop::Error> {
    let line = saturation::line_of(system.refrigerant);
    let t_k = fitted_k + in_kelvins(fact.conditions.ambient);
    match fact.reading {
        Reading::LowSide => line.pressure_pa(Side::Dew, t_k),
        Reading::HighSide => line.pressure_pa(Side::Bubble, t_k),
        Reading::Vent | Reading::DischargeLine | Reading::Capacity | Reading::Efficiency => Ok(fitted_k),
    }
}
