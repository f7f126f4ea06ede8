//! By how much known facts of a sound system move the readings of the vehicle model: drawn into
//! `tables/atlas/vehicle-model-known.csv` by `--fit-known`.
//!
//! The same vehicles are drawn once as they come and once with what is known: a command of the condenser's fan, one evaporator or
//! two, where a port stands. Two evaporators are met in large cars and vans only, so that vehicles weigh there by the share of
//! their class that has them.

use super::draw::{self, CLASSES};
use super::fit::{Kind, NOTED};
use super::{known_table, table};
use crate::features::{self, FEATURES};
use crate::work;
use coldloop::air::MoistAir;
use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, celsius, in_kelvins};
use coldloop::vehicle::{Conditions, HighPort, LowPort, Make, Options, Population, System, Vehicle, simulate};
use coldloop::{AirSource, Compressor, Error, Expansion, Refrigerant};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::path::Path;

/// What may be known, in the order of the rows of `src/expected/known_table.rs`.
pub(crate) const INPUTS: [(&str, Known); 9] = [
    ("fan-0.25", Known::Fan(0.25)),
    ("fan-0.5", Known::Fan(0.5)),
    ("fan-1", Known::Fan(1.0)),
    ("evaporators-1", Known::Evaporators(false)),
    ("evaporators-2", Known::Evaporators(true)),
    ("low-port-compressor", Known::Low(LowPort::Compressor)),
    ("low-port-evaporator", Known::Low(LowPort::Evaporator)),
    ("high-port-liquid-line", Known::High(HighPort::Liquid)),
    ("high-port-discharge-line", Known::High(HighPort::Discharge)),
];
/// Compressors that are pooled.
pub(crate) const GROUPS: [(&str, &[Compressor]); 3] = [
    ("fixed-clutch", &[Compressor::FixedClutch]),
    (
        "variable",
        &[Compressor::VariableInternal, Compressor::VariableExternal],
    ),
    ("electric", &[Compressor::Electric]),
];
/// Ambient temperatures, °C, and speeds of the engine per 1,500 rpm, or of a motor per 6,000 rpm.
pub(crate) const AMBIENTS_C: [f64; 3] = [20.0, 30.0, 40.0];
pub(crate) const SPEEDS: [f64; 2] = [800.0 / 1_500.0, 2_000.0 / 1_500.0];
/// Where the blower draws from.
pub(crate) const AIRS: [AirSource; 2] = [AirSource::Fresh, AirSource::Recirculated];

const SEED: u64 = 4_711;
/// The usual weather of `Weather::of`: half the water that air holds, but no dew point above about 23 °C.
const HUMIDITY: (f64, f64) = (0.5, 0.018);
/// Half of the vehicles stand at sea level, half at this altitude, m.
const ALTITUDE_M: f64 = 1_600.0;

#[derive(Clone, Copy)]
pub(crate) enum Known {
    /// Command of the condenser's fan.
    Fan(f64),
    /// Whether there is a second evaporator.
    Evaporators(bool),
    Low(LowPort),
    High(HighPort),
}

/// Shift of every feature and factor on its standard deviation, for one input in one group, ambient and speed.
#[derive(Clone)]
pub(crate) struct Cell {
    pub(crate) vehicles: usize,
    pub(crate) shift: [f64; FEATURES],
    pub(crate) factor: [f64; FEATURES],
}

/// One cell of each input, in their order.
pub(crate) type Cells = Vec<Cell>;

/// Where cells stand: expansion device, group of compressors, ambient, speed and air source.
#[derive(Clone, Copy)]
pub(crate) struct Place {
    pub(crate) expansion: Expansion,
    pub(crate) group: usize,
    pub(crate) ambient: usize,
    pub(crate) speed: usize,
    pub(crate) air: AirSource,
}

/// All places, in the order of the table.
pub(crate) fn places() -> Vec<Place> {
    let mut places = Vec::new();
    for expansion in Expansion::ALL {
        for group in 0..GROUPS.len() {
            for ambient in 0..AMBIENTS_C.len() {
                for speed in 0..SPEEDS.len() {
                    places.extend(AIRS.map(|air| Place {
                        expansion,
                        group,
                        ambient,
                        speed,
                        air,
                    }));
                }
            }
        }
    }
    places
}

/// Draws `count` vehicles for every place, and writes the table.
pub(crate) fn fit(root: &Path, count: usize) -> Result<(), String> {
    let kinds = table::read(root)?;
    let began = std::time::Instant::now();
    let fitted = work::all(&places(), |place| {
        let cells = cells(&kinds, place, count, Make::TO_FIT, SEED)?;
        eprintln!("{:.0?} {}", began.elapsed(), known_table::id(place));
        Ok((*place, cells))
    })?;
    known_table::write(root, &fitted)
}

/// The cells of one place, from `count` vehicles of R-134a: of every compressor of the group alike, and of every class its share.
pub(crate) fn cells(
    kinds: &[(System, Kind)],
    place: &Place,
    count: usize,
    makes: std::ops::Range<u32>,
    seed: u64,
) -> Result<Cells, String> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let (_, compressors) = GROUPS[place.group];
    let mut drawn = Moments::default();
    let mut known: [Moments; INPUTS.len()] = Default::default();
    for number in 0..count {
        let compressor = compressors[number % compressors.len()];
        let system = System::new(Refrigerant::R134a, place.expansion, compressor);
        let kind = kinds.iter().find(|(of, _)| *of == system);
        let (_, kind) = kind.ok_or(format!("{}: no row", table::id(&system)))?;
        // The streams are those of the numbers: a vehicle is the same one in every weather.
        rng.set_stream(number as u64);
        rng.set_word_pos(0);
        let Ok(states) = states(&system, kind, place, makes.clone(), &mut rng) else {
            continue;
        };
        drawn.add(1.0, &states.drawn);
        for (moments, (weight, features)) in known.iter_mut().zip(&states.known) {
            moments.add(*weight, features);
        }
    }
    Ok(known.iter().map(|own| own.beside(&drawn)).collect())
}

/// One vehicle in one weather, as it comes and with each input known: weight and deviation from the mean of its kind.
struct States {
    drawn: [f64; FEATURES],
    known: [(f64, [f64; FEATURES]); INPUTS.len()],
}

fn states(
    system: &System,
    kind: &Kind,
    place: &Place,
    makes: std::ops::Range<u32>,
    rng: &mut ChaCha8Rng,
) -> Result<States, Error> {
    let class = draw::class(rng);
    let make = Make::numbered(rng.random_range(makes));
    let uniforms = std::array::from_fn(|_| rng.random());
    let population = Population::of_make(make, *system, class);
    let built = |rear: Option<bool>| {
        let options = Options {
            rear: rear.map_or(population.options.rear, |rear| {
                [f64::from(u8::from(rear)); CLASSES.len()]
            }),
            ..population.options
        };
        Population { options, ..population }.vehicle(&uniforms)
    };
    let vehicle = built(None)?;
    let actual = weather(place, rng.random())?;
    let written = draw::written(rng, &actual);
    let terms = *features::weather(system, &written)?.terms();
    let (mean, _) = kind.at(&terms);
    let read = |vehicle: &Vehicle, actual: &Conditions| {
        let simulation = simulate(vehicle, actual, &[])?;
        let noted = make.habits.noted(&simulation, vehicle, actual, &[])?;
        let features = features::of(system, &written, &features::readings(&noted, actual)?)?;
        Ok::<[f64; FEATURES], Error>(std::array::from_fn(|i| features[i] - mean[i]))
    };
    let drawn = read(&vehicle, &actual)?;
    let rear = population.options.rear[class.code() as usize - 1];
    let mut known = [(1.0, drawn); INPUTS.len()];
    for ((weight, features), (_, input)) in known.iter_mut().zip(INPUTS) {
        let mut own = vehicle;
        match input {
            Known::Fan(command) => {
                let commanded = Conditions {
                    fan_command: Some(command),
                    ..actual
                };
                *features = read(&vehicle, &commanded)?;
                continue;
            }
            Known::Evaporators(two) => {
                *weight = if two { rear } else { 1.0 - rear };
                if *weight > 0.0 && two != vehicle.rear.is_some() {
                    own = built(Some(two))?;
                }
            }
            Known::Low(port) => own.low_port = port,
            Known::High(port) => own.high_port = port,
        }
        if own != vehicle {
            *features = read(&own, &actual)?;
        }
    }
    Ok(States { drawn, known })
}

/// A workshop with the highest blower, at sea level or high up.
fn weather(place: &Place, high: bool) -> Result<Conditions, Error> {
    let ambient = celsius(AMBIENTS_C[place.ambient]);
    let air = Surroundings::at_altitude(if high { ALTITUDE_M } else { 0.0 })?;
    let (t_k, air_pa) = (in_kelvins(ambient), air.pressure().pa());
    let ratio = MoistAir::from_relative_humidity(t_k, air_pa, HUMIDITY.0)?.humidity_ratio();
    let moist = MoistAir::from_humidity_ratio(t_k, air_pa, ratio.min(HUMIDITY.1))?;
    let (_, compressors) = GROUPS[place.group];
    let per_hz = if compressors.contains(&Compressor::Electric) {
        100.0
    } else {
        25.0
    };
    Ok(Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(moist.relative_humidity())),
        engine_speed: Some(RotationalSpeed::from_hz(per_hz * SPEEDS[place.speed])),
        air_source: Some(place.air),
        blower: Some(1.0),
        vehicle_speed: Some(Speed::from_m_s(0.0)),
        ..Conditions::new(ambient, air)
    })
}

/// Weighted sums of deviations and of their squares.
#[derive(Default)]
struct Moments {
    count: usize,
    weight: f64,
    sum: [f64; FEATURES],
    squares: [f64; FEATURES],
}

impl Moments {
    fn add(&mut self, weight: f64, features: &[f64; FEATURES]) {
        self.count += usize::from(weight > 0.0);
        self.weight += weight;
        for (i, feature) in features.iter().enumerate() {
            self.sum[i] += weight * feature;
            self.squares[i] += weight * feature * feature;
        }
    }

    fn mean(&self, i: usize) -> f64 {
        self.sum[i] / self.weight
    }

    /// Standard deviation, with the steps in which readings are noted: where nothing varies, the factor is one.
    fn deviation(&self, i: usize) -> f64 {
        let mean = self.mean(i);
        (f64::max(self.squares[i] / self.weight - mean * mean, 0.0) + NOTED[i] * NOTED[i]).sqrt()
    }

    fn beside(&self, drawn: &Self) -> Cell {
        Cell {
            vehicles: self.count,
            shift: std::array::from_fn(|i| self.mean(i) - drawn.mean(i)),
            factor: std::array::from_fn(|i| self.deviation(i) / drawn.deviation(i)),
        }
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)] // tests

    use super::*;

    /// Other vehicles are moved as the table says: within 1.5 K, which is three standard errors of the mean of this many.
    #[test]
    fn the_known_table_is_of_the_model_as_it_is() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let (kinds, table) = (table::read(&root).unwrap(), known_table::read(&root).unwrap());
        let at = 4;
        let place = places()[at];
        let now = cells(&kinds, &place, 200, Make::TO_FIT, SEED + 1).unwrap();
        for (input, (now, then)) in now.iter().zip(&table[at]).enumerate() {
            let (name, known) = INPUTS[input];
            if matches!(known, Known::Evaporators(_)) {
                continue; // too few vans among them
            }
            for i in 0..features::THERMAL {
                let apart = (now.shift[i] - then.shift[i]).abs();
                assert!(
                    apart < 1.5,
                    "{name}: {} now, {} when fitted",
                    now.shift[i],
                    then.shift[i]
                );
            }
        }
    }
}
