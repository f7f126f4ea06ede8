//! One case of practice.

use crate::visit::{From, Visit, drawn};
use crate::work::{Minutes, Work};
use coldloop::circuit::{Measured, Readings};
use coldloop::diagnosis::{Action, Key, Settings, can_check, exists, questions, repair};
use coldloop::intake::SessionFile;
use coldloop::report::{Units, visit_text};
use coldloop::session::Session;
use coldloop::units::{in_celsius, in_kelvins};
use coldloop::{Check, Error, Fault, Observation, ResultKind, VehicleClass};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use std::error::Error as AnyError;
use std::io::{BufRead, Write};

/// The garage: its altitude, m, and what it has; the street sweeper has the cab of a car of the middle class.
const GARAGE: From = From::Garage(1_600.0, &[VehicleClass::Van, VehicleClass::Bus, VehicleClass::Car]);

/// After this many steps the vehicle is handed over.
const MOST_STEPS: usize = 60;

const HELP: &str = "Write one of these:
  checks              what can be read, looked at and tried, with its price
  faults              what can be wrong
  NAME of a check     do it: read-vent, or the entry that it fills: vent, clutch_engaged
  NAME of a fault     set it right, and look whether that helped
  hand-over           somebody who knows more finds it";

/// How a case ended.
#[derive(Debug)]
pub(crate) struct Played {
    /// What was wrong.
    #[allow(dead_code)] // the test reads it
    pub(crate) fault: Fault,
    /// What it cost the learner, and what it costs by the plan, min.
    #[allow(dead_code)] // the test reads it
    pub(crate) minutes: [f64; 2],
}

/// Plays the case of a seed. With `strict` a line that is not understood is an error.
pub(crate) fn play(
    seed: u64,
    input: impl BufRead,
    out: &mut dyn Write,
    strict: bool,
) -> Result<Played, Box<dyn AnyError>> {
    let visit = drawn(&mut ChaCha8Rng::seed_from_u64(seed), GARAGE);
    let mut session = start(&visit, Settings::default())?;
    let mut work = Work::new(&visit);
    introduce(seed, &visit, out)?;
    for line in input.lines() {
        let line = line?;
        let said = line.split('#').next().unwrap_or_default().trim();
        match said {
            "" => continue,
            "help" | "?" => writeln!(out, "{HELP}")?,
            "checks" => checks(&visit, out)?,
            "faults" => faults(&visit, out)?,
            "hand-over" => break,
            _ => {
                let check = check_called(said).filter(|check| can_check(*check, &visit.case.system));
                let fault = Fault::from_id(said).filter(|fault| can_be(*fault, &visit));
                match (check, fault) {
                    (Some(check), _) => writeln!(out, "{}", look(&visit, &mut session, &mut work, check)?)?,
                    (None, Some(fault)) => {
                        if work.mend(fault) {
                            writeln!(out, "{} It helped.", repair(fault).says)?;
                            break;
                        }
                        session.add_vain_repair(fault)?;
                        writeln!(out, "{} It did not help.", repair(fault).says)?;
                    }
                    (None, None) if strict => return Err(format!("{said}: not understood; {HELP}").into()),
                    (None, None) => writeln!(out, "{said}: not understood. {HELP}")?,
                }
                writeln!(out, "  {:.0} min so far", work.spent())?;
            }
        }
    }
    conclude(&visit, work.close(), session, out)
}

/// The vehicle as it comes in: nothing is read yet.
fn start(visit: &Visit, settings: Settings) -> Result<Session, Error> {
    let mut case = visit.case;
    case.readings = Readings::default();
    Session::of(case, settings)
}

fn introduce(seed: u64, visit: &Visit, out: &mut dyn Write) -> Result<(), Box<dyn AnyError>> {
    let vehicle = match visit.class {
        VehicleClass::Van => "A van",
        VehicleClass::Bus => "A bus",
        VehicleClass::SmallCar | VehicleClass::Car | VehicleClass::LargeCar => "The street sweeper",
        _ => "A vehicle",
    };
    let (system, conditions) = (&visit.case.system, &visit.case.conditions);
    writeln!(
        out,
        "Case {seed}. {vehicle} of the garage at 1,600 m does not cool as it should.\n{} with {} and {}; it stands at {:.0} °C, the blower on high.\n{HELP}",
        system.refrigerant,
        system.expansion,
        system.compressor,
        in_celsius(conditions.ambient)
    )?;
    Ok(())
}

fn checks(visit: &Visit, out: &mut dyn Write) -> Result<(), Box<dyn AnyError>> {
    let prices = Settings::default().prices;
    for check in Check::ALL
        .into_iter()
        .filter(|check| can_check(*check, &visit.case.system))
    {
        let minutes = prices.in_minutes(prices.check(check));
        writeln!(out, "  {:24}{minutes:4.0} min  {}", check.id(), check.description())?;
    }
    Ok(())
}

fn faults(visit: &Visit, out: &mut dyn Write) -> Result<(), Box<dyn AnyError>> {
    let prices = Settings::default().prices;
    for fault in Fault::ALL.into_iter().filter(|fault| can_be(*fault, visit)) {
        let minutes = prices.in_minutes(prices.repair(fault)) + prices.in_minutes(prices.verify());
        let recovery = if repair(fault).recovery {
            ", and the charge recovered"
        } else {
            ""
        };
        writeln!(
            out,
            "  {:28}{minutes:4.0} min{recovery}: {}",
            fault.id(),
            fault.description()
        )?;
    }
    Ok(())
}

/// Whether a fault can be hidden in this vehicle.
fn can_be(fault: Fault, visit: &Visit) -> bool {
    !matches!(fault, Fault::NoFault | Fault::GaugeError) && exists(fault, &visit.case.system)
}

/// The check of this name, or the first that fills the entry of this name.
fn check_called(name: &str) -> Option<Check> {
    let fills = |check: &Check| {
        check.keys().iter().any(|key| {
            let key = key.to_string();
            key == name || key.split('.').next_back() == Some(name)
        })
    };
    Check::from_id(name).or_else(|| Check::ALL.into_iter().find(fills))
}

/// Does a check: adds its cost, takes its result into the case, and prints it.
fn look(visit: &Visit, session: &mut Session, work: &mut Work<'_>, check: Check) -> Result<String, Error> {
    let asked: Vec<Observation> = questions(check, &visit.case.system).collect();
    let told = if asked.is_empty() {
        let mut told = String::new();
        for key in &check.keys() {
            let Key::Reading(kind) = key else { continue };
            match visit.full.readings.get(*kind) {
                Some(measured) => {
                    session.add_reading(*kind, measured)?;
                    told += &format!("{}: {}  ", kind.id(), shown(measured));
                }
                None => told += &format!("{}: nothing to read here  ", kind.id()),
            }
        }
        told.trim_end().to_string()
    } else {
        let yes = asked.iter().copied().find(|question| visit.answer(*question));
        let result = if yes.is_some() { ResultKind::Yes } else { ResultKind::No };
        session.add_outcome(check, result, yes)?;
        match yes {
            Some(question) => format!("Yes: {}", question.description()),
            None => format!(
                "No: {}",
                asked
                    .iter()
                    .map(|question| question.description())
                    .collect::<Vec<_>>()
                    .join(" ")
            ),
        }
    };
    work.check(check, session.settings().recovered);
    Ok(told)
}

fn shown(measured: Measured) -> String {
    match measured {
        Measured::Pressure(reading) => match reading.value {
            coldloop::units::Pressure::Gauge(p) => format!("{:.0} kPa gauge", p.kpa()),
            coldloop::units::Pressure::Absolute(p) => format!("{:.0} kPa abs", p.pa() / 1e3),
        },
        Measured::Temperature(reading) => format!("{:.1} °C", in_kelvins(reading.value) - 273.15),
        Measured::Frequency(reading) => format!("{:.1} /min", reading.value.per_minute()),
        _ => "unknown".to_string(),
    }
}

/// Always the next step, with what was found; the bill, and what was done.
fn by_plan(visit: &Visit) -> Result<(Minutes, Vec<String>), Error> {
    let mut session = start(visit, Settings::default())?;
    let (mut work, mut told) = (Work::new(visit), Vec::new());
    for _ in 0..MOST_STEPS {
        match session.next_step()?.map(|next| next.action) {
            Some(Action::Check(check)) => {
                told.push(format!(
                    "{}: {}",
                    check.id(),
                    look(visit, &mut session, &mut work, check)?
                ));
            }
            Some(Action::Repair(fault)) => {
                let helped = work.mend(fault);
                told.push(format!(
                    "{}: {}",
                    fault.id(),
                    if helped { "it helped" } else { "it did not help" }
                ));
                if helped {
                    break;
                }
                session.add_vain_repair(fault)?;
            }
            Some(Action::HandOver) => {
                told.push("hand-over".to_string());
                break;
            }
            None => {
                // Returned as sound; the customer comes back, because the fault is still there.
                told.push("given back".to_string());
                work.mend(Fault::NoFault);
                let settings = session.settings().with_prior(Fault::NoFault, 0.0);
                session = Session::of(session.case(), settings)?;
            }
            Some(_) => unreachable!("a new member of the vocabulary"),
        }
    }
    Ok((work.close(), told))
}

/// What was wrong, what it cost, what the plan would have cost, and the page of the case with all that the learner found.
fn conclude(
    visit: &Visit,
    minutes: Minutes,
    session: Session,
    out: &mut dyn Write,
) -> Result<Played, Box<dyn AnyError>> {
    let (planned, steps) = by_plan(visit)?;
    writeln!(out, "\nIt was {}: {}", visit.fault.id(), visit.fault.description())?;
    writeln!(out, "\n{:22}{:>8}{:>8}", "minutes of work", "yours", "plan")?;
    for (name, of) in [
        ("looking and reading", (|m| m.checks) as fn(&Minutes) -> f64),
        ("repairs in vain", |m| m.wrong),
        ("handed over", |m| m.handed),
        ("the right repair", |m| m.right),
        ("all", Minutes::total),
    ] {
        writeln!(out, "{name:22}{:8.0}{:8.0}", of(&minutes), of(&planned))?;
    }
    writeln!(out, "\nThe plan went so:")?;
    for step in steps {
        writeln!(out, "  {step}")?;
    }
    let page = visit_text(&*SessionFile::new(session).visit()?, Units::Metric)?;
    writeln!(
        out,
        "\nThe page of the case, with what you found:\n\n{}",
        page.trim_end()
    )?;
    Ok(Played {
        fault: visit.fault,
        minutes: [minutes.total(), planned.total()],
    })
}
