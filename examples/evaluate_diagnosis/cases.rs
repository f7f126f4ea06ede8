//! The cases that are judged, and the same cases as numbers.

use crate::draws::{self, Draw, KINDS, Lines, World};
use coldloop::circuit::{Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::expected::SoundModel;
use coldloop::units::{Pressure, RelativeHumidity, RotationalSpeed, Speed, TimeSpan, in_kelvins};
use coldloop::vehicle::Conditions;
use coldloop::{ErrorKind, Fault};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use std::error::Error;
use std::fs::File;
use std::io::Write;
use std::path::Path;
use std::thread;

pub(crate) const ALL_LINES: [Lines; 3] = [Lines::All, Lines::Some, Lines::None];

/// One vehicle as it is judged.
pub(crate) struct Judged {
    pub(crate) kind: usize,
    pub(crate) draw: Draw,
    pub(crate) significant: bool,
    pub(crate) conditions: Conditions,
    /// The readings with all, some and no line temperatures.
    pub(crate) readings: [Readings; 3],
}

/// Vehicles of every kind, drawn on two threads.
pub(crate) fn drawn(world: World, seed: u64, count: usize) -> Result<Vec<Judged>, Box<dyn Error>> {
    let parts: Vec<Result<Vec<Judged>, coldloop::Error>> = thread::scope(|scope| {
        let workers: Vec<_> = [0..KINDS / 2, KINDS / 2..KINDS]
            .into_iter()
            .map(|kinds| {
                scope.spawn(move || {
                    kinds
                        .filter(|kind| draws::is_built(world, *kind))
                        .map(|kind| of_kind(world, seed, kind, count))
                        .collect::<Result<Vec<_>, _>>()
                        .map(|k| k.into_iter().flatten().collect())
                })
            })
            .collect();
        workers.into_iter().filter_map(|worker| worker.join().ok()).collect()
    });
    let mut cases = Vec::new();
    for part in parts {
        cases.extend(part?);
    }
    Ok(cases)
}

pub(crate) fn of_kind(world: World, seed: u64, kind: usize, count: usize) -> Result<Vec<Judged>, coldloop::Error> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    rng.set_stream(kind as u64);
    let faults = draws::faults_in(world, kind);
    (0..count)
        .map(|_| {
            let fault = draws::even(&mut rng, &faults);
            one(&mut rng, world, kind, fault)
        })
        .collect()
}

/// A vehicle of this kind with this fault, at any severity, in any conditions, as it is read and described. One that the model
/// cannot solve, with or without its fault, is drawn again, and so is weather that no source of the sound model covers.
pub(crate) fn one(rng: &mut ChaCha8Rng, world: World, kind: usize, fault: Fault) -> Result<Judged, coldloop::Error> {
    let severity = draws::severity(rng, fault);
    loop {
        let draw = draws::solved(rng, world, kind, fault, severity)?;
        let significant = match draw.significant() {
            Err(error) if error.kind == ErrorKind::NoConvergence => continue,
            known => fault != Fault::NoFault && known?,
        };
        let readings = ALL_LINES.map(|lines| draws::taken(rng, &draw.readings, lines));
        let conditions = draws::told(rng, &draw.conditions);
        match SoundModel::of(&draw.system, &conditions) {
            Err(error) if error.kind == ErrorKind::NotAvailable => continue,
            known => known?,
        };
        return Ok(Judged {
            kind,
            significant,
            conditions,
            draw,
            readings,
        });
    }
}

/// The priors that fit a mix.
pub(crate) fn settings(case: &Judged, usual: bool) -> Settings {
    if usual {
        Settings::default()
    } else {
        draws::even_settings(&draws::faults_in(World::With(case.draw.system.refrigerant), case.kind))
    }
}

/// How much a case counts in a mix.
pub(crate) fn weight(case: &Judged, usual: bool) -> f64 {
    let (even, settings) = (settings(case, false), settings(case, true));
    let fault = case.draw.fault.fault;
    if usual {
        settings.prior(fault) / even.prior(fault)
    } else {
        1.0
    }
}

/// The answer; `None` where a reading was refused (a discharge line hotter than any line can be), which counts as no
/// answer.
pub(crate) fn answer(case: &Judged, lines: usize, settings: &Settings) -> Result<Option<Diagnosis>, coldloop::Error> {
    let asked = Case::new(case.draw.system, case.conditions, case.readings[lines]);
    match diagnose(&asked, settings) {
        Ok(answer) => Ok(Some(answer)),
        Err(error) if error.kind == ErrorKind::OutOfRange => Ok(None),
        Err(error) => Err(error),
    }
}

/// The cases as numbers, one row each: what `examples/evaluate_diagnosis/classifier.py` reads.
pub(crate) fn write(path: &Path, cases: &[Judged]) -> Result<(), Box<dyn Error>> {
    let mut file = std::io::BufWriter::new(File::create(path)?);
    writeln!(
        file,
        "kind,refrigerant,fault,significant,lines,ambient_k,humidity,air_pa,speed_hz,fresh,blower,vehicle_m_s,running_s,low_pa,high_pa,\
         vent_k,suction_k,liquid_k,outlet_k,discharge_k,cycles_hz"
    )?;
    for case in cases {
        for (lines, readings) in case.readings.iter().enumerate() {
            let c = &case.conditions;
            let t = |reading: Option<Reading<coldloop::units::Temperature>>| reading.map(|r| in_kelvins(r.value));
            let p = |reading: Option<Reading<Pressure>>| reading.map(|r| r.value.absolute(c.surroundings).pa());
            let numbers = [
                Some(case.kind as f64),
                Some(f64::from(case.draw.system.refrigerant.code())),
                Some(f64::from(case.draw.fault.fault.code())),
                Some(f64::from(u8::from(case.significant))),
                Some(lines as f64),
                Some(in_kelvins(c.ambient)),
                c.relative_humidity.map(RelativeHumidity::fraction),
                Some(c.surroundings.pressure().pa()),
                c.engine_speed.map(RotationalSpeed::hz),
                c.air_source.map(|source| f64::from(source.code())),
                c.blower,
                c.vehicle_speed.map(Speed::m_s),
                c.running_for.map(TimeSpan::seconds),
                p(readings.low_side),
                p(readings.high_side),
                t(readings.vent),
                t(readings.suction_line),
                t(readings.liquid_line),
                t(readings.condenser_outlet),
                t(readings.discharge_line),
                readings.clutch_cycles.map(|r| r.value.hz()),
            ];
            let row: Vec<String> = numbers.map(|n| n.map_or(String::new(), |n| format!("{n:.5}"))).to_vec();
            writeln!(file, "{}", row.join(","))?;
        }
    }
    Ok(())
}
