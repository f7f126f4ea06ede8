//! How often is the diagnosis right? Vehicles that no fit has seen, with known faults, are read and judged.
//!
//! `cargo run --release --example evaluate_diagnosis` draws 300 vehicles of each of the eight kinds from the population
//! of the fit (with other seeds) and 300 from a shifted one: parts of other sizes and efficiencies, other set points,
//! another climate, and instruments and people that err in other ways. `-- 2000` draws more; `-- 600 FOLDER` also writes
//! the cases, and 60,000 vehicles to learn from, as CSV for `examples/evaluate_diagnosis/classifier.py`, which judges the same cases
//! with a random forest.
//!
//! The five rates are those of Yuill & Braun 2012 (Purdue, paper 1307). A fault is significant when it costs 5 % of the
//! capacity, 10 % of the coefficient of performance, or 1.5 K at the vent; only those count below "significant".
//! "Even" mixes draw every fault as often as another and a sixth of the vehicles sound, and the diagnosis is told so;
//! "usual" mixes weigh the same cases by the default priors.

mod draws;

use coldloop::circuit::{Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::units::{Pressure, in_kelvins};
use coldloop::vehicle::Conditions;
use coldloop::{ErrorKind, Fault, VerdictKind};
use draws::{Draw, KINDS, Lines, World};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::error::Error;
use std::fs::File;
use std::io::Write;
use std::path::Path;
use std::thread;

/// Part of the vehicles of an even mix that is sound.
const SOUND: f64 = 1.0 / 6.0;
/// A classifier learns from this many vehicles of each kind.
const LEARNT: usize = 7_500;
const ALL_LINES: [Lines; 3] = [Lines::All, Lines::Some, Lines::None];

/// One vehicle as it is judged.
struct Judged {
    kind: usize,
    draw: Draw,
    significant: bool,
    conditions: Conditions,
    /// The readings with all, some and no line temperatures.
    readings: [Readings; 3],
}

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let count: usize = arguments.next().map_or(Ok(300), |text| text.parse())?;
    let folder = arguments.next();
    for (world, name, seed) in [(World::Own, "own", 71), (World::Shifted, "shifted", 72)] {
        let cases = drawn(world, seed, count)?;
        if let Some(folder) = &folder {
            write(&Path::new(folder).join(format!("{name}.csv")), &cases)?;
        }
        println!("{name} population, {} vehicles", cases.len());
        println!(
            "  {:<26} {:>6} {:>6} {:>6} {:>6} {:>7} {:>7} {:>7} {:>6} {:>6} {:>6} {:>6}",
            "", "false", "", "", "mis-", "list", "list", "no", "", "", "log", ""
        );
        println!(
            "  {:<26} {:>6} {:>6} {:>6} {:>6} {:>7} {:>7} {:>7} {:>6} {:>6} {:>6} {:>6}",
            "", "alarm", "named", "missed", "named", "with", "without", "answer", "first", "three", "loss", "ECE"
        );
        for (at, lines) in ALL_LINES.into_iter().enumerate() {
            for usual in [false, true] {
                let mut tally = Tally::default();
                for case in &cases {
                    let settings = settings(case.kind, usual);
                    let answer = answer(case, at, &settings)?;
                    tally.add(case, weight(case, usual), Standing::of(answer.as_ref()));
                }
                tally.print(&format!("{} lines, {}", words(lines), mix(usual)));
            }
        }
        for usual in [false, true] {
            let mut chart = Tally::default();
            for case in &cases {
                chart.add(case, weight(case, usual), Standing::chart(case));
            }
            chart.print(&format!("static chart, {}", mix(usual)));
        }
        by_fault(&cases)?;
    }
    if let Some(folder) = &folder {
        write(&Path::new(folder).join("learn.csv"), &drawn(World::Own, 73, LEARNT)?)?;
    }
    Ok(())
}

fn words(lines: Lines) -> &'static str {
    match lines {
        Lines::All => "all",
        Lines::Some => "some",
        Lines::None => "no",
    }
}

fn mix(usual: bool) -> &'static str {
    if usual { "usual mix" } else { "even mix" }
}

/// Vehicles of every kind, drawn on two threads.
fn drawn(world: World, seed: u64, count: usize) -> Result<Vec<Judged>, Box<dyn Error>> {
    let parts: Vec<Result<Vec<Judged>, coldloop::Error>> = thread::scope(|scope| {
        let workers: Vec<_> = [0..KINDS / 2, KINDS / 2..KINDS]
            .into_iter()
            .map(|kinds| {
                scope.spawn(move || {
                    kinds
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

fn of_kind(world: World, seed: u64, kind: usize, count: usize) -> Result<Vec<Judged>, coldloop::Error> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    rng.set_stream(kind as u64);
    let faults = draws::faults(kind);
    (0..count)
        .map(|_| {
            let fault = if rng.random_bool(SOUND) {
                Fault::NoFault
            } else {
                faults[rng.random_range(1..faults.len())]
            };
            let severity = draws::severity(&mut rng, fault);
            let draw = draws::solved(&mut rng, world, kind, fault, severity)?;
            let readings = ALL_LINES.map(|lines| draws::taken(&mut rng, &draw.readings, lines));
            Ok(Judged {
                kind,
                significant: fault != Fault::NoFault && draw.significant()?,
                conditions: draws::told(&mut rng, &draw.conditions),
                draw,
                readings,
            })
        })
        .collect()
}

/// The priors that fit a mix.
fn settings(kind: usize, usual: bool) -> Settings {
    let mut settings = Settings::default();
    if !usual {
        let faults = draws::faults(kind);
        let each = (1.0 - SOUND) / (faults.len() - 1) as f64;
        for fault in Fault::ALL {
            settings = settings.with_prior(fault, if faults.contains(&fault) { each } else { 0.0 });
        }
        settings = settings
            .with_prior(Fault::NoFault, SOUND)
            .with_prior(Fault::GaugeError, 0.01);
        settings.none_of_these = 0.01;
    }
    settings
}

/// How much a case counts in a mix.
fn weight(case: &Judged, usual: bool) -> f64 {
    let (even, settings) = (settings(case.kind, false), settings(case.kind, true));
    let fault = case.draw.fault.fault;
    if usual {
        settings.prior(fault) / even.prior(fault)
    } else {
        1.0
    }
}

/// The answer; `None` where a reading was refused (a discharge line hotter than any line can be), which counts as no
/// answer.
fn answer(case: &Judged, lines: usize, settings: &Settings) -> Result<Option<Diagnosis>, coldloop::Error> {
    let asked = Case::new(case.draw.system, case.conditions, case.readings[lines]);
    match diagnose(&asked, settings) {
        Ok(answer) => Ok(Some(answer)),
        Err(error) if error.kind == ErrorKind::OutOfRange => Ok(None),
        Err(error) => Err(error),
    }
}

/// What an answer says of the faults.
struct Standing {
    /// Faults with their probabilities, the likeliest first.
    ranked: Vec<(Fault, f64)>,
    kind: VerdictKind,
    listed: Vec<Fault>,
}

impl Standing {
    fn of(answer: Option<&Diagnosis>) -> Self {
        let Some(answer) = answer else {
            return Self {
                ranked: Vec::new(),
                kind: VerdictKind::NotEnoughEvidence,
                listed: Vec::new(),
            };
        };
        Self {
            ranked: answer.faults.iter().map(|f| (f.fault, f.probability)).collect(),
            kind: answer.verdict.kind,
            listed: answer.verdict.faults.to_vec(),
        }
    }

    /// A chart of pressures by ambient with fixed limits: high side by US Army TM 5-3805-291-23-1, table 1, low side 25
    /// to 45 psig; what the two say together is common practice, no source.
    fn chart(case: &Judged) -> Self {
        let psig = |reading: Option<Reading<Pressure>>| {
            let place = case.conditions.surroundings;
            reading.map_or(f64::NAN, |r| r.value.absolute(place).gauge(place).psig())
        };
        let readings = &case.readings[0];
        let (low, high) = (psig(readings.low_side), psig(readings.high_side));
        let ambient_f = (in_kelvins(case.conditions.ambient) - 273.15) * 1.8 + 32.0;
        let along = ((ambient_f - 70.0) / 40.0).clamp(-0.2, 1.0);
        let (least, most) = (120.0 + 90.0 * along, 190.0 + 110.0 * along);
        let valve = case.kind < KINDS / 2;
        let side = |value: f64, least: f64, most: f64| i8::from(value > most) - i8::from(value < least);
        let named = match (side(low, 25.0, 45.0), side(high, least, most)) {
            (0, 0) => Fault::NoFault,
            (-1, -1) => Fault::Undercharge,
            (1, -1) => Fault::WornCompressor,
            (1, 1) => Fault::Overcharge,
            (0, 1) => Fault::CondenserAirflowLoss,
            (-1, 1) => Fault::HighSideRestriction,
            (-1, _) if valve => Fault::ExpansionValveStuckClosed,
            (-1, _) => Fault::OrificeRestricted,
            (1, _) if valve => Fault::ExpansionValveStuckOpen,
            _ => Fault::Undercharge,
        };
        let sound = named == Fault::NoFault;
        Self {
            ranked: vec![(named, 1.0)],
            kind: if sound {
                VerdictKind::Healthy
            } else {
                VerdictKind::NamedFault
            },
            listed: if sound { Vec::new() } else { vec![named] },
        }
    }
}

/// Sums of weights.
#[derive(Default)]
struct Tally {
    sound: f64,
    alarms: f64,
    significant: f64,
    named: f64,
    missed: f64,
    misnamed: f64,
    list_with: f64,
    list_without: f64,
    no_answer: f64,
    first: f64,
    three: f64,
    all: f64,
    loss: f64,
    /// Weight, probability said, weight right.
    bins: [[f64; 3]; 10],
}

impl Tally {
    fn add(&mut self, case: &Judged, weight: f64, said: Standing) {
        let fault = case.draw.fault.fault;
        let (first, p) = said.ranked.first().map_or((None, 0.0), |(first, p)| (Some(*first), *p));
        self.all += weight;
        let given = said.ranked.iter().find(|(f, _)| *f == fault).map_or(0.0, |(_, p)| *p);
        self.loss -= weight * given.max(1e-6).ln();
        let bin = &mut self.bins[((10.0 * p) as usize).min(9)];
        bin[0] += weight;
        bin[1] += weight * p;
        bin[2] += weight * f64::from(u8::from(first == Some(fault)));
        let listed = said.listed.contains(&fault);
        if fault == Fault::NoFault {
            self.sound += weight;
            let alarm = match said.kind {
                VerdictKind::NamedFault => true,
                VerdictKind::CannotTell => !listed,
                VerdictKind::Healthy | VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence => false,
            };
            self.alarms += weight * f64::from(u8::from(alarm));
        } else if case.significant {
            self.significant += weight;
            let slot = match said.kind {
                VerdictKind::NamedFault if listed => &mut self.named,
                VerdictKind::NamedFault => &mut self.misnamed,
                VerdictKind::CannotTell if listed => &mut self.list_with,
                VerdictKind::CannotTell => &mut self.list_without,
                VerdictKind::Healthy => &mut self.missed,
                VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence => &mut self.no_answer,
            };
            *slot += weight;
            self.first += weight * f64::from(u8::from(first == Some(fault)));
            let three = said.ranked.iter().take(3).any(|(f, _)| *f == fault);
            self.three += weight * f64::from(u8::from(three));
        }
    }

    fn print(&self, name: &str) {
        let percent = |part: f64, whole: f64| 100.0 * part / whole.max(1e-9);
        let of = |part: f64| percent(part, self.significant);
        let error: f64 = self.bins.iter().map(|[_, said, right]| (said - right).abs()).sum();
        println!(
            "  {name:<26} {:>6.1} {:>6.1} {:>6.1} {:>6.1} {:>7.1} {:>7.1} {:>7.1} {:>6.1} {:>6.1} {:>6.3} {:>6.3}",
            percent(self.alarms, self.sound),
            of(self.named),
            of(self.missed),
            of(self.misnamed),
            of(self.list_with),
            of(self.list_without),
            of(self.no_answer),
            of(self.first),
            of(self.three),
            self.loss / self.all,
            error / self.all
        );
    }
}

/// First names right per fault and third of severity, all lines, even mix; and what the wrong ones are taken for.
fn by_fault(cases: &[Judged]) -> Result<(), Box<dyn Error>> {
    println!(
        "  first name right, % of significant cases by third of severity; most often taken for (all lines, even mix)"
    );
    for fault in Fault::ALL {
        let mut thirds = [[0.0; 2]; 3];
        let mut taken = vec![0usize; Fault::ALL.len()];
        for case in cases
            .iter()
            .filter(|case| case.draw.fault.fault == fault && case.significant)
        {
            let answer = answer(case, 0, &settings(case.kind, false))?;
            let most = if fault == Fault::Overcharge { 0.5 } else { 0.95 };
            let third = &mut thirds[((3.0 * case.draw.fault.severity / most) as usize).min(2)];
            third[0] += 1.0;
            let Some(first) = answer
                .as_ref()
                .and_then(|answer| answer.faults.first())
                .map(|f| f.fault)
            else {
                continue;
            };
            if first == fault {
                third[1] += 1.0;
            } else {
                taken[Fault::ALL.iter().position(|f| *f == first).unwrap_or(0)] += 1;
            }
        }
        let wrong: usize = taken.iter().sum();
        let most = (0..taken.len()).max_by_key(|at| taken[*at]);
        if let (Some(most), true) = (most, thirds.iter().any(|third| third[0] > 0.0)) {
            let cells: Vec<String> = thirds
                .iter()
                .map(|[all, right]| {
                    if *all > 0.0 {
                        format!("{:>4.0} of {all:<4.0}", 100.0 * right / all)
                    } else {
                        format!("{:>12}", "-")
                    }
                })
                .collect();
            let share = (100 * taken[most]).checked_div(wrong).unwrap_or(0);
            println!(
                "    {:<30} {}  {} ({share} % of the wrong)",
                fault.id(),
                cells.join("  "),
                Fault::ALL[most].id()
            );
        }
    }
    Ok(())
}

/// The cases as numbers, one row each: what `examples/evaluate_diagnosis/classifier.py` reads.
fn write(path: &Path, cases: &[Judged]) -> Result<(), Box<dyn Error>> {
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
                c.relative_humidity,
                Some(c.surroundings.pressure().pa()),
                c.engine_speed_hz,
                c.air_source.map(|source| f64::from(source.code())),
                c.blower,
                c.vehicle_speed_m_s,
                c.running_s,
                p(readings.low_side),
                p(readings.high_side),
                t(readings.vent),
                t(readings.suction_line),
                t(readings.liquid_line),
                t(readings.condenser_outlet),
                t(readings.discharge_line),
                readings.clutch_cycles_hz.map(|r| r.value),
            ];
            let row: Vec<String> = numbers.map(|n| n.map_or(String::new(), |n| format!("{n:.5}"))).to_vec();
            writeln!(file, "{}", row.join(","))?;
        }
    }
    Ok(())
}
