//! Sound vehicles in drawn weather, as the vehicle model has them, of the makes to fit with.

use coldloop::air::MoistAir;
use coldloop::expected::{
    FLEET_AMBIENT, FLEET_BLOWER, FLEET_ENGINE_SPEED, FLEET_HUMIDITY_RATIO, FLEET_MOTOR_SPEED, FLEET_SPEED, Weather,
    simulated_figures,
};
use coldloop::range::Range;
use coldloop::units::{Surroundings, kelvins};
use coldloop::vehicle::{Conditions, Make, Population, System, simulate};
use coldloop::{AirSource, Compressor, Error, Refrigerant, VehicleClass};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// How many weathers each vehicle stands in.
pub(super) const WEATHERS: usize = 4;
/// How many figures the crate states.
pub(super) const FIGURES: usize = 10;

/// Parts of the fleet by class. Judgement: what comes to a shop that sees everything.
const CLASSES: [(VehicleClass, f64); 5] = [
    (VehicleClass::SmallCar, 0.25),
    (VehicleClass::Car, 0.35),
    (VehicleClass::LargeCar, 0.20),
    (VehicleClass::Van, 0.15),
    (VehicleClass::Bus, 0.05),
];

/// One vehicle in one weather.
pub(super) struct Sample {
    pub conditions: Conditions,
    pub terms: [f64; Weather::TERMS],
    pub figures: [f64; FIGURES],
}

/// `count` vehicles, each in [`WEATHERS`] weathers; a vehicle of which one state does not converge is left out.
pub(super) fn vehicles(system: &System, count: usize, seed: u64) -> Vec<[Sample; WEATHERS]> {
    let threads = std::thread::available_parallelism().map_or(1, |n| n.get());
    std::thread::scope(|scope| {
        let workers: Vec<_> = (0..threads)
            .map(|index| {
                scope.spawn(move || {
                    let mut rng = ChaCha8Rng::seed_from_u64(seed);
                    rng.set_stream(index as u64);
                    (0..count.div_ceil(threads))
                        .filter_map(|_| vehicle(system, &mut rng).ok())
                        .collect::<Vec<_>>()
                })
            })
            .collect();
        workers
            .into_iter()
            .filter_map(|worker| worker.join().ok())
            .flatten()
            .collect()
    })
}

fn vehicle(system: &System, rng: &mut ChaCha8Rng) -> Result<[Sample; WEATHERS], Error> {
    let mut left = rng.random::<f64>();
    let mut class = VehicleClass::Car;
    for (one, part) in CLASSES {
        class = one;
        left -= part;
        if left < 0.0 {
            break;
        }
    }
    if BUSES.contains(&system.refrigerant) {
        class = VehicleClass::Bus;
    }
    let make = Make::numbered(rng.random_range(Make::TO_FIT));
    let uniforms = std::array::from_fn(|_| rng.random());
    let vehicle = Population::of_make(make, *system, class).vehicle(&uniforms)?;
    let mut sample = || {
        let conditions = conditions(system, rng)?;
        let simulation = simulate(&vehicle, &conditions, &[])?;
        Ok::<_, Error>(Sample {
            conditions,
            terms: *Weather::of(system, &conditions)?.terms(),
            figures: simulated_figures(system.refrigerant, &simulation)?,
        })
    };
    Ok([sample()?, sample()?, sample()?, sample()?])
}

fn between(range: Range, u: f64) -> f64 {
    range.low + (range.high - range.low) * u
}

/// Even over the ranges of the fit: ambient, humidity ratio up to saturation, logarithm of speed, blower; half of the
/// vehicles at sea level and half anywhere up to 4,100 m; half at a standstill; half with recirculated air.
pub(super) fn conditions(system: &System, rng: &mut ChaCha8Rng) -> Result<Conditions, Error> {
    let ambient_k = between(FLEET_AMBIENT, rng.random());
    let surroundings = if rng.random() {
        Surroundings::at_altitude(4_100.0 * rng.random::<f64>())?
    } else {
        Surroundings::SEA_LEVEL
    };
    let air_pa = surroundings.pressure().pa();
    let saturated = MoistAir::saturated(ambient_k, air_pa)?.humidity_ratio();
    let most = f64::min(FLEET_HUMIDITY_RATIO.high, 0.98 * saturated);
    let ratio = FLEET_HUMIDITY_RATIO.low + (most - FLEET_HUMIDITY_RATIO.low) * rng.random::<f64>();
    let relative_humidity = MoistAir::from_humidity_ratio(ambient_k, air_pa, ratio)?.relative_humidity();
    let even = |range: Range, u: f64| range.low * (range.high / range.low).powf(u);
    let engine_speed_hz = match system.compressor {
        Compressor::Electric => rng.random::<bool>().then(|| even(FLEET_MOTOR_SPEED, rng.random())),
        Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
            Some(even(FLEET_ENGINE_SPEED, rng.random()))
        }
    };
    Ok(Conditions {
        relative_humidity: Some(relative_humidity),
        engine_speed_hz,
        air_source: Some(if rng.random() {
            AirSource::Recirculated
        } else {
            AirSource::Fresh
        }),
        blower: Some(between(FLEET_BLOWER, rng.random())),
        vehicle_speed_m_s: Some(if rng.random() {
            between(FLEET_SPEED, rng.random())
        } else {
            0.0
        }),
        ..Conditions::new(kelvins(ambient_k), surroundings)
    })
}

/// The refrigerants that are met on buses only.
const BUSES: [Refrigerant; 2] = [Refrigerant::R407C, Refrigerant::R513A];

/// The systems whose bands are fitted: of buses those with a valve, and with a clutch or a motor.
pub(super) fn systems() -> Vec<System> {
    let mut systems = Vec::new();
    for refrigerant in [
        Refrigerant::R134a,
        Refrigerant::R1234yf,
        Refrigerant::R152a,
        Refrigerant::R744,
    ] {
        for expansion in coldloop::Expansion::ALL {
            let kinds = Compressor::ALL.into_iter();
            // No clutch cycles in an R-744 system.
            for compressor in kinds.filter(|kind| refrigerant != Refrigerant::R744 || *kind != Compressor::FixedClutch)
            {
                systems.push(System::new(refrigerant, expansion, compressor));
            }
        }
    }
    for refrigerant in BUSES {
        for compressor in [Compressor::FixedClutch, Compressor::Electric] {
            systems.push(System::new(refrigerant, coldloop::Expansion::Txv, compressor));
        }
    }
    systems
}
