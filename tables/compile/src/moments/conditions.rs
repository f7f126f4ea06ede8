//! The conditions of a case as the terms of a regression, and what is usual where one was not noted.

use super::truth::Case;
use crate::features::ln_engine_speed;
use coldloop::air::MoistAir;
use coldloop::inner::expected::AtlasWeather;
use coldloop::units::{RelativeHumidity, in_kelvins};
use coldloop::{AirSource, Compressor, Refrigerant};

/// What the cases have of a condition that not all of them note.
#[derive(Clone, Copy)]
pub(crate) struct Spread {
    pub(crate) name: &'static str,
    pub(crate) unit: &'static str,
    pub(crate) cases: usize,
    pub(crate) mean: f64,
    pub(crate) deviation: f64,
}

/// The conditions that a case may leave out.
const LEFT_OUT: usize = 4;
const HUMIDITY: usize = 0;
const SPEED: usize = 1;
const RECIRCULATED: usize = 2;
const BLOWER: usize = 3;

/// Means and standard deviations of the conditions that a case may leave out, over the cases that note them.
pub(crate) struct Usual(pub(crate) [Spread; LEFT_OUT]);

/// The conditions in the order of [`Usual`]; `None` where one was not noted.
fn noted(case: &Case) -> [Option<f64>; LEFT_OUT] {
    let conditions = &case.conditions;
    [
        conditions.relative_humidity.map(RelativeHumidity::fraction),
        // A motor's own speed is controlled and was not noted; the term is zero for all of them.
        ln_engine_speed(case.compressor, conditions),
        conditions
            .air_source
            .map(|source| f64::from(u8::from(source == AirSource::Recirculated))),
        conditions.blower,
    ]
}

impl Usual {
    /// Of these cases. Errors: a condition that no case notes, and an engine that stands.
    pub(crate) fn of(cases: &[Case]) -> Result<Self, String> {
        let about = [
            ("relative_humidity", "1"),
            ("ln_engine_speed", "ln(speed / 1,500 rpm)"),
            ("recirculated", "1"),
            ("blower", "1"),
        ];
        let mut usual = [Spread {
            name: "",
            unit: "",
            cases: 0,
            mean: 0.0,
            deviation: 0.0,
        }; LEFT_OUT];
        for (index, (name, unit)) in about.into_iter().enumerate() {
            let belted = |case: &&Case| index != SPEED || case.compressor != Compressor::Electric;
            let values: Vec<f64> = cases
                .iter()
                .filter(belted)
                .filter_map(|case| noted(case)[index])
                .collect();
            let count = values.len() as f64;
            let mean = values.iter().sum::<f64>() / count;
            let square = values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / count;
            if !square.is_finite() {
                return Err(format!("no mean of {name} over {count} cases"));
            }
            usual[index] = Spread {
                name,
                unit,
                cases: values.len(),
                mean,
                deviation: square.sqrt(),
            };
        }
        Ok(Self(usual))
    }

    /// The terms of a case, the usual standing for what was not noted.
    pub(crate) fn terms(&self, case: &Case) -> Result<Vec<f64>, String> {
        self.moved(case, [0.0; LEFT_OUT])
    }

    /// For each condition that was not noted, the change of the terms over one of its standard deviations.
    pub(crate) fn doubts(&self, case: &Case) -> Result<Vec<Vec<f64>>, String> {
        let noted = noted(case);
        let mut doubts = Vec::new();
        for index in (0..LEFT_OUT).filter(|index| noted[*index].is_none()) {
            let at = |sign: f64| {
                let mut by = [0.0; LEFT_OUT];
                by[index] = sign * self.0[index].deviation;
                self.moved(case, by)
            };
            let (up, down) = (at(1.0)?, at(-1.0)?);
            doubts.push(up.iter().zip(&down).map(|(up, down)| (up - down) / 2.0).collect());
        }
        Ok(doubts)
    }

    fn moved(&self, case: &Case, by: [f64; LEFT_OUT]) -> Result<Vec<f64>, String> {
        let noted = noted(case);
        let value = |index: usize| noted[index].unwrap_or(self.0[index].mean) + by[index];
        let t_k = in_kelvins(case.conditions.ambient);
        let air_pa = case.conditions.surroundings.pressure().pa();
        let humidity = value(HUMIDITY).clamp(0.0, 1.0);
        let air = MoistAir::from_relative_humidity(t_k, air_pa, humidity).map_err(|e| e.to_string())?;
        let plain = AtlasWeather {
            ambient_k: t_k,
            air_pa,
            humidity_ratio: air.humidity_ratio(),
            ln_speed: value(SPEED),
            recirculated: value(RECIRCULATED),
            blower: value(BLOWER),
        }
        .terms();
        let [_, a, w, s, r, b, ..] = plain;
        let mut terms = plain.to_vec();
        for compressor in &COMPRESSORS {
            let is = f64::from(u8::from(case.compressor == *compressor));
            let of = [1.0, a, w, s, r, b].map(|term| is * term);
            terms.extend(&of[..if *compressor == Compressor::Electric { 3 } else { 6 }]);
        }
        let is = f64::from(u8::from(case.refrigerant == Refrigerant::R1234yf));
        terms.extend([1.0, a, w, s].map(|term| is * term));
        Ok(terms)
    }
}

/// Compressors with terms of their own, beside the fixed one with a clutch.
const COMPRESSORS: [Compressor; 3] = [
    Compressor::VariableInternal,
    Compressor::VariableExternal,
    Compressor::Electric,
];

/// The names of the terms, in the order of [`Usual::terms`], and whether each belongs to a kind of system.
pub(crate) fn names() -> Vec<(String, bool)> {
    let plain: [&str; AtlasWeather::TERMS] = [
        "1", "a", "w", "s", "r", "b", "p", "a a", "a w", "w w", "a s", "s s", "a r", "w r", "a b", "w b",
    ];
    let mut names: Vec<(String, bool)> = plain.iter().map(|name| ((*name).to_string(), false)).collect();
    for compressor in &COMPRESSORS {
        let many = if *compressor == Compressor::Electric { 3 } else { 6 };
        let of = ["1", "a", "w", "s", "r", "b"].into_iter().take(many);
        names.extend(of.map(|name| (format!("{} {name}", compressor.id()), true)));
    }
    names.extend(["1", "a", "w", "s"].map(|name| (format!("R-1234yf {name}"), true)));
    names
}
