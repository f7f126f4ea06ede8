//! The tables of the trade (`tables/faults`) as rows of the atlas.
//!
//! Some effects move a reading by a part of its distance to the pressure at rest, or to the air that enters, so that they are small
//! where this distance is small. They are averaged over weathers from 5 to 50 °C, round the sound mean of the vehicle model, as a
//! linear function of 1, a, w and s. Superheat, subcooling and discharge superheat move the lines that they are read on, together with the
//! pressure that they count from.

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::group::Group;
use super::{FaultRows, Row};
use crate::faults::{self, Effect};
use crate::features::{self, FEATURES, NOTHING};
use crate::linear::{Matrix, cholesky, solve};
use crate::sound::fit::Kind;
use crate::systems::systems;
use coldloop::units::{RelativeHumidity, RotationalSpeed, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Expansion, Fault, Feature, Refrigerant};
use std::path::Path;

/// Standard deviation of an effect between vehicles, per its size. Engineering judgement.
const SPREAD: f64 = 0.35;

/// Sound mean and covariance in one weather.
struct Weather {
    moves: [f64; 4],
    mean: [f64; FEATURES],
    covariance: Matrix<FEATURES>,
}

/// The rows of every fault, expansion device and family of refrigerants that the tables speak of.
pub(super) fn rows(root: &Path, sound: &[(System, Kind)]) -> Result<Vec<FaultRows>, String> {
    let table = faults::read(root)?;
    let mut found = Vec::new();
    for carbon_dioxide in [false, true] {
        for expansion in Expansion::ALL {
            let mut weathers = Vec::new();
            for group in Group::ALL {
                weathers.push((group, of_group(group, carbon_dioxide, expansion, sound)?));
            }
            for row in &table {
                let fault = Fault::from_id(&row.id).ok_or(format!("{} is no fault", row.id))?;
                if fault == Fault::NoFault || row.effect.is_empty() {
                    continue;
                }
                let of = FaultRows {
                    source: "published",
                    carbon_dioxide,
                    expansion,
                    fault,
                    scales: [NOTHING; 2],
                    rows: Vec::new(),
                    drawn: [0.0; FEATURES],
                };
                let of = of_fault(row, &weathers, of).map_err(|e| format!("tables/faults: {fault}: {e}"))?;
                if !of.rows.is_empty() {
                    found.push(of);
                }
            }
        }
    }
    Ok(found)
}

/// Sound systems of a group from 5 to 50 °C: three humidities, three speeds, fresh air at the highest blower.
fn of_group(
    group: Group,
    carbon_dioxide: bool,
    expansion: Expansion,
    sound: &[(System, Kind)],
) -> Result<Vec<Weather>, String> {
    let refrigerants: &[Refrigerant] = if carbon_dioxide {
        &[Refrigerant::R744]
    } else {
        &[Refrigerant::R134a, Refrigerant::R1234yf]
    };
    let mut weathers = Vec::new();
    for (system, kind) in sound {
        let own = refrigerants.contains(&system.refrigerant) && system.expansion == expansion;
        if !own || !group.compressors().contains(&system.compressor) {
            continue;
        }
        for ambient_c in (0..10).map(|step| 5.0 + 5.0 * f64::from(step)) {
            for (humidity, speed_hz) in [(0.2, 15.0), (0.2, 30.0), (0.45, 25.0), (0.7, 15.0), (0.7, 30.0)] {
                let conditions = Conditions {
                    relative_humidity: Some(RelativeHumidity::from_fraction(humidity)),
                    engine_speed: (group != Group::Electric).then_some(RotationalSpeed::from_hz(speed_hz)),
                    ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
                };
                let terms = features::weather(system, &conditions).map_err(|e| e.to_string())?;
                let (mean, deviation) = kind.at(terms.terms());
                weathers.push(Weather {
                    moves: features::moves(system, &conditions).map_err(|e| e.to_string())?,
                    mean,
                    covariance: std::array::from_fn(|i| {
                        std::array::from_fn(|j| deviation[i] * deviation[j] * (kind.lasting[i][j] + kind.passing[i][j]))
                    }),
                });
            }
        }
    }
    Ok(weathers)
}

fn of_fault(row: &faults::Row, weathers: &[(Group, Vec<Weather>)], mut of: FaultRows) -> Result<FaultRows, String> {
    let mut total = [0.0; 2];
    for (group, weathers) in weathers {
        // A group without systems of this family (no clutch cycles with R-744) has no rows.
        let bits = group
            .compressors()
            .iter()
            .map(|compressor| systems(&[of.expansion.id().to_string()], &[compressor.id().to_string()]));
        let bits = bits
            .collect::<Result<Vec<u8>, String>>()?
            .into_iter()
            .fold(0, |all, bit| all | bit);
        if weathers.is_empty() || systems(&row.expansion, &row.compressor)? & bits == 0 {
            continue;
        }
        let effects: Vec<&Effect> = row
            .effect
            .iter()
            .filter_map(|effect| match systems(&effect.expansion, &effect.compressor) {
                Ok(own) => (own & bits != 0).then_some(Ok(effect)),
                Err(e) => Some(Err(e)),
            })
            .collect::<Result<_, String>>()?;
        for place in 0..row.severity.len() {
            let (shift, scale) = moved(row, &effects, place, weathers)?;
            let weight = row.weight[place];
            let severe = usize::from(place >= 2);
            total[severe] += weight;
            for (sum, scale) in of.scales[severe].iter_mut().flatten().zip(scale.iter().flatten()) {
                *sum += weight * scale;
            }
            let half = |a: usize, b: usize| 0.5 * (row.severity[a] + row.severity[b]);
            of.rows.push(Row {
                group: *group,
                cause: String::new(),
                weight,
                severity: [
                    if place == 0 { 0.0 } else { half(place - 1, place) },
                    row.severity[place],
                    if place == 3 {
                        row.severity[3].max(1.0)
                    } else {
                        half(place, place + 1)
                    },
                ],
                cases: 0,
                shift,
            });
        }
    }
    for (scale, total) in of.scales.iter_mut().zip(total) {
        scale
            .iter_mut()
            .flatten()
            .for_each(|cell| *cell /= f64::max(total, 1e-9));
    }
    Ok(of)
}

/// The shift of one severity, and the covariance round it: that of sound systems, and the spread of every effect.
fn moved(
    row: &faults::Row,
    effects: &[&Effect],
    place: usize,
    weathers: &[Weather],
) -> Result<([[f64; 4]; FEATURES], Matrix<FEATURES>), String> {
    let mut normal = [[0.0; 4]; 4];
    let mut right = [[0.0; 4]; FEATURES];
    let mut scale = NOTHING;
    for weather in weathers {
        let mut shift = [0.0; FEATURES];
        let mut spread = weather.covariance;
        // What the spread of the temperature at rest does to both sides alike.
        let mut rest = [0.0; FEATURES];
        for effect in effects {
            let feature = Feature::from_id(&effect.feature).ok_or(format!("{} is no feature", effect.feature))?;
            let Some((read, direction)) = view(feature) else {
                continue;
            };
            let at = read[0];
            let size = match (effect.shift, effect.rest.zip(effect.rest_k), effect.inlet) {
                (Some(size), None, None) => size[place],
                (None, Some((share, rest_k)), None) => share[place] * (rest_k - weather.mean[at]),
                (None, None, Some(share)) => -share[place] * weather.mean[at],
                _ => return Err(format!("{feature}: give one of shift, rest with rest_k, and inlet")),
            };
            for first in read {
                shift[*first] += direction * size;
                for second in read {
                    spread[*first][*second] += (SPREAD * size).powi(2);
                }
                rest[*first] += effect.rest.map_or(0.0, |share| share[place] * row.rest_spread_k);
            }
        }
        for i in 0..FEATURES {
            for j in 0..FEATURES {
                scale[i][j] += (spread[i][j] + rest[i] * rest[j]) / weathers.len() as f64;
            }
        }
        for i in 0..4 {
            for j in 0..4 {
                normal[i][j] += weather.moves[i] * weather.moves[j];
            }
            for (right, shift) in right.iter_mut().zip(&shift) {
                right[i] += weather.moves[i] * shift;
            }
        }
    }
    // An electric compressor has no s: nothing is learnt of it.
    normal.iter_mut().enumerate().for_each(|(i, row)| row[i] += 1e-6);
    let factor = cholesky(&normal)?;
    Ok((right.map(|right| solve(&factor, right)), scale))
}

/// The features that a figure of the tables moves, and in which direction; `None` for the pressure at rest.
///
/// A line moves with the pressure that its figure counts from.
fn view(feature: Feature) -> Option<(&'static [usize], f64)> {
    Some(match feature {
        Feature::LowSide => (&[0, 3], 1.0),
        Feature::HighSide => (&[1, 4, 5, 6], 1.0),
        Feature::Vent => (&[2], 1.0),
        Feature::Superheat => (&[3], 1.0),
        Feature::Subcooling => (&[4, 5], -1.0),
        Feature::DischargeSuperheat => (&[6], 1.0),
        Feature::ClutchCycles => (&[7], 1.0),
        Feature::RestPressure => return None,
        _ => unreachable!("a new member of the vocabulary"),
    })
}
