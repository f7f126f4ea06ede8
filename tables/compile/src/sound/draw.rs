//! Sound vehicles in drawn weather, as the vehicle model has them and as somebody notes them.

use crate::features::{self, FEATURES};
use coldloop::air::MoistAir;
use coldloop::expected::Weather;
use coldloop::range::Range;
use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, in_kelvins, kelvins};
use coldloop::vehicle::{Conditions, Make, Population, System, simulate};
use coldloop::{AirSource, Compressor, Error, Expansion, Refrigerant, VehicleClass};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// How many weathers each vehicle stands in.
pub(crate) const WEATHERS: usize = 4;

/// Parts of the fleet by class. Judgement: what comes to a shop that sees everything.
pub(crate) const CLASSES: [(VehicleClass, f64); 5] = [
    (VehicleClass::SmallCar, 0.25),
    (VehicleClass::Car, 0.35),
    (VehicleClass::LargeCar, 0.20),
    (VehicleClass::Van, 0.15),
    (VehicleClass::Bus, 0.05),
];

/// How far the ambient and the humidity as written down may lie from those at the vehicle: 1.5 K and 8 %, as in the
/// evaluation. Engineering judgement.
const WRITTEN: (f64, f64) = (1.5, 0.08);

/// One vehicle in one weather.
#[derive(Clone, Copy)]
pub(crate) struct Sample {
    pub(crate) terms: [f64; Weather::TERMS],
    pub(crate) features: [f64; FEATURES],
}

/// Vehicles of these makes, each in [`WEATHERS`] weathers; a vehicle of which one state has no answer is left out.
pub(crate) fn vehicles(
    system: &System,
    count: usize,
    makes: std::ops::Range<u32>,
    (seed, stream): (u64, u64),
) -> Vec<[Sample; WEATHERS]> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    rng.set_stream(stream);
    (0..count)
        .filter_map(|_| vehicle(system, makes.clone(), &mut rng).ok())
        .collect()
}

fn vehicle(system: &System, makes: std::ops::Range<u32>, rng: &mut ChaCha8Rng) -> Result<[Sample; WEATHERS], Error> {
    let mut class = class(rng);
    if BUSES.contains(&system.refrigerant) {
        class = VehicleClass::Bus;
    }
    let make = Make::numbered(rng.random_range(makes));
    let uniforms = std::array::from_fn(|_| rng.random());
    let vehicle = Population::of_make(make, *system, class).vehicle(&uniforms)?;
    let mut sample = || {
        let actual = conditions(system, rng)?;
        let simulation = simulate(&vehicle, &actual, &[])?;
        let noted = make.habits.noted(&simulation, &vehicle, &actual, &[])?;
        let written = written(rng, &actual);
        Ok::<_, Error>(Sample {
            terms: *features::weather(system, &written)?.terms(),
            features: features::of(system, &written, &features::readings(&noted, &actual)?)?,
        })
    };
    Ok([sample()?, sample()?, sample()?, sample()?])
}

/// A class as the fleet has it.
pub(super) fn class(rng: &mut ChaCha8Rng) -> VehicleClass {
    let mut left = rng.random::<f64>();
    let mut class = VehicleClass::Car;
    for (one, part) in CLASSES {
        class = one;
        left -= part;
        if left < 0.0 {
            break;
        }
    }
    class
}

/// The conditions as somebody measures them.
pub(super) fn written(rng: &mut ChaCha8Rng, actual: &Conditions) -> Conditions {
    let (off_k, off_humidity) = (
        rng.random_range(-WRITTEN.0..WRITTEN.0),
        rng.random_range(-WRITTEN.1..WRITTEN.1),
    );
    let ambient_k = (in_kelvins(actual.ambient) + off_k).clamp(Weather::AMBIENT.low, Weather::AMBIENT.high);
    Conditions {
        ambient: kelvins(ambient_k),
        relative_humidity: actual
            .relative_humidity
            .map(|h| RelativeHumidity::from_fraction((h.fraction() + off_humidity).clamp(0.05, 1.0))),
        ..*actual
    }
}

fn between(range: Range, u: f64) -> f64 {
    range.low + (range.high - range.low) * u
}

/// Even over the ranges of the fit: ambient, humidity ratio up to saturation, logarithm of speed, blower; half of the
/// vehicles at sea level and half anywhere up to 4,100 m; half at a standstill; half with recirculated air.
pub(crate) fn conditions(system: &System, rng: &mut ChaCha8Rng) -> Result<Conditions, Error> {
    let ambient_k = between(Weather::AMBIENT, rng.random());
    let surroundings = if rng.random() {
        Surroundings::at_altitude(4_100.0 * rng.random::<f64>())?
    } else {
        Surroundings::SEA_LEVEL
    };
    let air_pa = surroundings.pressure().pa();
    let saturated = MoistAir::saturated(ambient_k, air_pa)?.humidity_ratio();
    let most = f64::min(Weather::HUMIDITY_RATIO.high, 0.98 * saturated);
    let ratio = Weather::HUMIDITY_RATIO.low + (most - Weather::HUMIDITY_RATIO.low) * rng.random::<f64>();
    let relative_humidity = MoistAir::from_humidity_ratio(ambient_k, air_pa, ratio)?.relative_humidity();
    let even = |range: Range, u: f64| range.low * (range.high / range.low).powf(u);
    let engine_speed_hz = match system.compressor {
        Compressor::Electric => rng.random::<bool>().then(|| even(Weather::MOTOR_SPEED, rng.random())),
        Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
            Some(even(Weather::ENGINE_SPEED, rng.random()))
        }
        _ => unreachable!("a new member of the vocabulary"),
    };
    Ok(Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(relative_humidity)),
        engine_speed: engine_speed_hz.map(RotationalSpeed::from_hz),
        air_source: Some(if rng.random() {
            AirSource::Recirculated
        } else {
            AirSource::Fresh
        }),
        blower: Some(between(Weather::BLOWER, rng.random())),
        vehicle_speed: Some(Speed::from_m_s(if rng.random() {
            between(Weather::SPEED, rng.random())
        } else {
            0.0
        })),
        ..Conditions::new(kelvins(ambient_k), surroundings)
    })
}

/// The refrigerants that are met on buses only.
const BUSES: [Refrigerant; 2] = [Refrigerant::R407C, Refrigerant::R513A];

/// The systems that are fitted: of buses those with a valve, and with a clutch or a motor; with R-744 no clutch cycles.
pub(crate) fn systems() -> Vec<System> {
    let mut systems = Vec::new();
    for refrigerant in [
        Refrigerant::R134a,
        Refrigerant::R1234yf,
        Refrigerant::R152a,
        Refrigerant::R744,
    ] {
        for expansion in Expansion::ALL {
            let kinds = Compressor::ALL.into_iter();
            for compressor in kinds.filter(|kind| refrigerant != Refrigerant::R744 || *kind != Compressor::FixedClutch)
            {
                systems.push(System::new(refrigerant, expansion, compressor));
            }
        }
    }
    for refrigerant in BUSES {
        for compressor in [Compressor::FixedClutch, Compressor::Electric] {
            systems.push(System::new(refrigerant, Expansion::Txv, compressor));
        }
    }
    systems
}
