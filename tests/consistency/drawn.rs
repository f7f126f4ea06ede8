//! The cases: vehicles of the project's own population, of the independent simulator, and the readings files.

#[allow(dead_code, unreachable_pub)] // the evaluation, which shares it, needs more of it
#[path = "../../examples/evaluate_diagnosis/draws.rs"]
mod draws;

use coldloop::circuit::{Gauge, Observations, Reading, Readings};
use coldloop::diagnosis::{Case, Looks, Settings, diagnose};
use coldloop::expected::OwnVehicle;
use coldloop::intake::{cases_of, confirmed_from_json};
use coldloop::units::{GaugePressure, Pressure};
use coldloop::{Fault, Observation, Refrigerant, intake};
use draws::{BUSES, Draw, KINDS, Lines, World};
use flate2::read::GzDecoder;
use rand::seq::IndexedRandom;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::io::Read;

/// Vehicles of the population, and of the independent simulator.
const OWN: usize = 1_400;
const OTHERS: usize = 600;

/// A case, the settings of its judgement, and its name in messages.
pub(crate) struct Asked {
    pub(crate) name: String,
    pub(crate) case: Case,
    pub(crate) settings: Settings,
}

/// All of them.
pub(crate) fn cases() -> Vec<Asked> {
    let mut cases = files();
    cases.extend(own());
    cases.extend(of_others());
    cases
}

fn files() -> Vec<Asked> {
    let mut paths: Vec<_> = std::fs::read_dir("examples/readings")
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| !path.file_name().unwrap().to_str().unwrap().starts_with("bad"))
        .collect();
    paths.sort();
    let read = |path: &std::path::PathBuf| {
        let visit = intake::visit_from_toml(&std::fs::read_to_string(path).unwrap()).unwrap();
        Asked {
            name: path.display().to_string(),
            case: visit.case,
            settings: visit.settings,
        }
    };
    paths.iter().map(read).collect()
}

/// Every third of the file.
fn of_others() -> Vec<Asked> {
    let mut lines = String::new();
    let packed: &[u8] = include_bytes!("../data/independent_judging.jsonl.gz");
    GzDecoder::new(packed).read_to_string(&mut lines).unwrap();
    let read = |(_, line): (usize, &str)| {
        let confirmed = confirmed_from_json(line).unwrap();
        Asked {
            name: format!("independent {}", confirmed.id),
            case: confirmed.visit.case,
            settings: confirmed.visit.settings,
        }
    };
    cases_of(&lines).step_by(3).take(OTHERS).map(read).collect()
}

fn own() -> Vec<Asked> {
    let mut rng = ChaCha8Rng::seed_from_u64(1_600);
    let mut cases = Vec::new();
    while cases.len() < OWN {
        let world = match rng.random_range(0..10) {
            0..4 => World::OtherMakes,
            4..6 => World::Shifted,
            6 => World::With(Refrigerant::R744),
            7 => World::With(Refrigerant::R152a),
            8 => World::With(BUSES[rng.random_range(0..BUSES.len())]),
            _ => World::Own,
        };
        let kind = rng.random_range(0..KINDS);
        if !draws::is_built(world, kind) {
            continue;
        }
        let fault = draws::even(&mut rng, &draws::faults_in(world, kind));
        let severity = draws::severity(&mut rng, fault);
        let Ok(draw) = draws::solved(&mut rng, world, kind, fault, severity) else {
            continue;
        };
        let case = written(&mut rng, world, &draw);
        // Weather that no source covers is refused, and so is a gauge that shows less than a vacuum.
        if diagnose(&case, &Settings::default()).is_err() {
            continue;
        }
        cases.push(Asked {
            name: format!("own {} ({} at {severity:.2})", cases.len(), fault.id()),
            case,
            settings: Settings::default(),
        });
    }
    cases
}

/// What a workshop notes of a vehicle: not all readings, now and then a wrong one, and some of what can be seen.
fn written(rng: &mut ChaCha8Rng, world: World, draw: &Draw) -> Case {
    let lines = [Lines::All, Lines::Some, Lines::None][rng.random_range(0..3)];
    let mut readings = draws::taken(rng, &draw.readings, lines);
    if rng.random_bool(0.1) {
        readings.low_side = None;
    }
    if rng.random_bool(0.1) {
        let pressure = readings.high_side.map(|reading| reading.value);
        readings.high_side_transducer = pressure.map(|pressure| Reading::pressure(pressure, Gauge::TRANSDUCER));
        readings.high_side = readings.high_side.filter(|_| rng.random());
    }
    if rng.random_bool(0.06) {
        mistaken(rng, &mut readings);
    }
    let mut conditions = draws::told(rng, &draw.conditions);
    if rng.random_bool(0.04) {
        conditions.compressor_running = Some(false);
    }
    let mut case = Case::new(draw.system, conditions, readings);
    case.observations = seen(rng, draw);
    if rng.random_bool(0.1) {
        case.own_readings = earlier(rng, world, draw);
    }
    case
}

/// A pressure in the wrong unit, or hoses changed over.
fn mistaken(rng: &mut ChaCha8Rng, readings: &mut Readings) {
    if rng.random() {
        std::mem::swap(&mut readings.low_side, &mut readings.high_side);
        return;
    }
    for reading in [&mut readings.low_side, &mut readings.high_side].into_iter().flatten() {
        if let Pressure::Gauge(pressure) = reading.value {
            reading.value = GaugePressure::from_kpa(pressure.psig()).into();
        }
    }
}

/// Some of what can be seen, heard and felt, by its chances under the fault.
fn seen(rng: &mut ChaCha8Rng, draw: &Draw) -> Observations {
    let looks = Looks::default();
    let mut seen = Observations::NONE;
    if rng.random() {
        return seen;
    }
    for _ in 0..rng.random_range(1..8) {
        let observation = *Observation::ALL.choose(rng).unwrap();
        let yes = rng.random_bool(looks.yes(observation, draw.fault.fault));
        let with = seen.with(observation, yes);
        // Two answers that cannot both be right are refused elsewhere.
        if !contradicts(&with) {
            seen = with;
        }
    }
    seen
}

fn contradicts(seen: &Observations) -> bool {
    const PAIRS: [[Observation; 2]; 3] = [
        [Observation::HubTurnsFreely, Observation::HubLocked],
        [Observation::RestPressureHigh, Observation::RestPressureLow],
        [Observation::RecoveredBelowLabel, Observation::RecoveredAboveLabel],
    ];
    PAIRS
        .iter()
        .any(|pair| pair.iter().all(|one| seen.answer(*one) == Some(true)))
}

/// Two visits while it was sound.
fn earlier(rng: &mut ChaCha8Rng, world: World, draw: &Draw) -> Option<OwnVehicle> {
    let mut own = OwnVehicle::new(draw.system);
    let sound = coldloop::vehicle::FaultSeverity::new(Fault::NoFault, 0.0);
    for _ in 0..2 {
        let actual = draws::conditions(rng, world, &draw.system).ok()?;
        let day = Draw::of(rng, world, (draw.make, draw.vehicle), actual, sound).ok()?;
        own.learn(&draws::written(rng, world, &actual), &day.readings).ok()?;
    }
    Some(own)
}
