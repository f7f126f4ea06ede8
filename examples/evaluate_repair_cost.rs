//! What it costs to come to the right repair: the plan against two habits, on vehicles drawn afresh.
//!
//! ```text
//! cargo run --release --example evaluate_repair_cost -- [VEHICLES]
//! ```
//!
//! Every vehicle has one significant fault (5 % of capacity, 10 % of COP or 1.5 K at the vent). Readings are simulated
//! and measured as in a shop; what eyes and hands find is drawn from `tables/checks`, so that the answers come as the
//! plan expects them, for all three ways alike. The checklist reads what is missing and goes through every look in the
//! order of its minutes until a fault is named, then repairs by likelihood with the same inference; dearest first
//! repairs in the order of price without looking. Costs are the defaults, in minutes of work.

#![allow(clippy::cast_precision_loss)] // counts are small

use coldloop::circuit::{Reading, Readings};
use coldloop::diagnosis::{Action, Case, Settings, diagnose, exists, questions, repair};
use coldloop::units::{Surroundings, Temperature, celsius};
use coldloop::vehicle::{Conditions, FaultSeverity, Instruments, Population, Simulation, System, simulate};
use coldloop::{Check, Compressor, Error, Expansion, Fault, Observation, Refrigerant, VehicleClass, VerdictKind};
use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::error::Error as AnyError;
use std::time::Instant;

/// More steps than anybody takes: the vehicle is handed over.
const MOST_STEPS: usize = 60;

/// One vehicle in the shop: what is wrong with it, what it would read, and how each question would be answered.
struct Visit {
    case: Case,
    full: Case,
    fault: Fault,
    answers: [bool; Observation::ALL.len()],
}

fn main() -> Result<(), Box<dyn AnyError>> {
    let vehicles = std::env::args()
        .nth(1)
        .map_or(Ok(400), |count| count.parse::<usize>())?;
    let mut rng = ChaCha8Rng::seed_from_u64(20_261_125);
    let mut visits = Vec::new();
    while visits.len() < vehicles {
        // A draw that the model has no steady state for, or in which the fault does not show, is drawn again.
        if let Ok(Some(visit)) = visit(&mut rng) {
            visits.push(visit);
        }
    }
    let (mut planned, mut listed, mut dearest, mut times_us) = (0.0, 0.0, 0.0, Vec::new());
    for visit in &visits {
        planned += follow_plan(visit, &mut times_us)?;
        listed += follow_checklist(visit)?;
        dearest += dearest_first(visit);
    }
    let count = visits.len() as f64;
    println!("{vehicles} vehicles with one significant fault, minutes of work until the right repair, mean");
    println!("plan             {:6.0}", planned / count);
    println!(
        "fixed checklist  {:6.0}   the plan saves {:.0} %",
        listed / count,
        100.0 * (1.0 - planned / listed)
    );
    println!(
        "dearest first    {:6.0}   the plan saves {:.0} %",
        dearest / count,
        100.0 * (1.0 - planned / dearest)
    );
    times_us.sort_by(f64::total_cmp);
    let middle_us = times_us[times_us.len() / 2];
    let slow_us = times_us[times_us.len() * 99 / 100];
    println!("one diagnosis with plan: median {middle_us:.0} us, 99 % within {slow_us:.0} us");
    Ok(())
}

fn visit(rng: &mut ChaCha8Rng) -> Result<Option<Visit>, Error> {
    let pick = |rng: &mut ChaCha8Rng, many: usize| rng.random_range(0..many);
    let system = System::new(
        [Refrigerant::R134a, Refrigerant::R1234yf][pick(rng, 2)],
        Expansion::ALL[pick(rng, 2)],
        Compressor::ALL[pick(rng, 4)],
    );
    let class = VehicleClass::ALL[pick(rng, 4)];
    let uniforms: [f64; Population::UNIFORMS] = std::array::from_fn(|_| rng.random());
    let vehicle = Population::usual(system, class).vehicle(&uniforms)?;
    let place = Surroundings::at_altitude(rng.random_range(0.0..2_000.0))?;
    let conditions = Conditions {
        relative_humidity: Some(rng.random_range(0.2..0.8)),
        engine_speed_hz: Some(rng.random_range(20.0..35.0)),
        vehicle_speed_m_s: Some(0.0),
        running_s: Some(900.0),
        ..Conditions::new(celsius(rng.random_range(20.0..40.0)), place)
    };
    let possible: Vec<Fault> = Fault::ALL
        .into_iter()
        .filter(|f| !matches!(f, Fault::NoFault | Fault::GaugeError) && exists(*f, &system))
        .collect();
    let fault = by_prior(rng, &possible);
    let severity = rng.random_range(0.15..0.85);
    let sound = simulate(&vehicle, &conditions, &[])?;
    let faulty = simulate(&vehicle, &conditions, &[FaultSeverity::new(fault, severity)])?;
    if !significant(&sound, &faulty) {
        return Ok(None);
    }
    let errors: [f64; Instruments::UNIFORMS] = std::array::from_fn(|_| rng.random());
    let every = Instruments {
        missing: 0.0,
        ..Instruments::SHOP
    };
    let case = |instruments: Instruments| {
        instruments
            .measure(&faulty, place, &errors)
            .map(|readings| Case::new(system, conditions, readings))
    };
    let looks = Settings::default().looks;
    Ok(Some(Visit {
        case: case(Instruments::SHOP)?,
        full: case(every)?,
        fault,
        answers: Observation::ALL.map(|observation| rng.random::<f64>() < looks.yes(observation, fault)),
    }))
}

/// A fault as common as the default priors say.
fn by_prior(rng: &mut impl Rng, possible: &[Fault]) -> Fault {
    let settings = Settings::default();
    let total: f64 = possible.iter().map(|fault| settings.prior(*fault)).sum();
    let mut left = rng.random_range(0.0..total);
    for fault in possible {
        left -= settings.prior(*fault);
        if left <= 0.0 {
            return *fault;
        }
    }
    possible[0]
}

fn significant(sound: &Simulation, faulty: &Simulation) -> bool {
    faulty.capacity_w < 0.95 * sound.capacity_w || faulty.cop < 0.9 * sound.cop || faulty.vent_k > sound.vent_k + 1.5
}

/// The temperature that a check reads; none for one that asks questions.
fn reading(readings: &mut Readings, check: Check) -> Option<&mut Option<Reading<Temperature>>> {
    if check == Check::ReadVent {
        Some(&mut readings.vent)
    } else if check == Check::ReadSuctionLine {
        Some(&mut readings.suction_line)
    } else if check == Check::ReadLiquidLine {
        Some(&mut readings.liquid_line)
    } else if check == Check::ReadDischargeLine {
        Some(&mut readings.discharge_line)
    } else {
        None
    }
}

/// What the check shows, taken into the case.
fn look(case: &mut Case, visit: &Visit, check: Check) {
    let mut full = visit.full.readings;
    if let Some(shown) = reading(&mut case.readings, check) {
        *shown = reading(&mut full, check).and_then(|shown| *shown);
    }
    for question in questions(check, &case.system) {
        let place = question.code() as usize - 1;
        case.observations = case.observations.with(question, visit.answers[place]);
    }
}

/// The state of the work: what it has cost, and what is ruled out.
struct Work {
    settings: Settings,
    minutes: f64,
}

impl Work {
    fn new() -> Self {
        Self {
            settings: Settings::default(),
            minutes: 0.0,
        }
    }

    fn recover(&mut self, needed: bool) {
        if needed && !self.settings.recovered {
            self.minutes += self.settings.prices.in_minutes(self.settings.prices.recovery);
            self.settings.recovered = true;
        }
    }

    /// Tries a repair; whether it helped.
    fn mend(&mut self, fault: Fault, visit: &Visit) -> bool {
        self.recover(repair(fault).recovery);
        let prices = &self.settings.prices;
        self.minutes += prices.in_minutes(prices.repair(fault)) + prices.in_minutes(prices.verify);
        self.settings = self.settings.with_prior(fault, 0.0);
        fault == visit.fault
    }

    fn hand_over(mut self) -> f64 {
        self.minutes += self.settings.prices.in_minutes(self.settings.prices.unknown);
        self.minutes
    }
}

fn follow_plan(visit: &Visit, times_us: &mut Vec<f64>) -> Result<f64, Error> {
    let (mut case, mut work) = (visit.case, Work::new());
    for _ in 0..MOST_STEPS {
        let began = Instant::now();
        let plan = diagnose(&case, &work.settings)?.plan(&work.settings);
        times_us.push(began.elapsed().as_secs_f64() * 1e6);
        match plan.steps.first().map(|step| (step.action, step.recovers)) {
            None => break,
            Some((Action::Check(check), recovers)) => {
                work.recover(recovers);
                work.minutes += work.settings.prices.in_minutes(work.settings.prices.check(check));
                look(&mut case, visit, check);
            }
            Some((Action::Repair(fault), _)) => {
                if work.mend(fault, visit) {
                    return Ok(work.minutes);
                }
            }
        }
    }
    Ok(work.hand_over())
}

fn follow_checklist(visit: &Visit) -> Result<f64, Error> {
    let (mut case, mut work) = (visit.case, Work::new());
    let mut checks: Vec<Check> = Check::ALL
        .into_iter()
        .filter(|check| *check != Check::RecoverAndWeigh && missing(&case, *check))
        .collect();
    let minutes = |check: &Check| {
        Settings::default()
            .prices
            .in_minutes(Settings::default().prices.check(*check))
    };
    checks.sort_by(|a, b| minutes(a).total_cmp(&minutes(b)));
    for check in checks {
        if diagnose(&case, &work.settings)?.verdict.kind == VerdictKind::NamedFault {
            break;
        }
        work.minutes += minutes(&check);
        look(&mut case, visit, check);
    }
    for _ in 0..Fault::ALL.len() {
        let answer = diagnose(&case, &work.settings)?;
        let Some(likeliest) = answer.faults.iter().find(|ranked| ranked.probability > 0.0) else {
            break;
        };
        if work.mend(likeliest.fault, visit) {
            return Ok(work.minutes);
        }
    }
    Ok(work.hand_over())
}

/// Whether a check would tell something in this case.
fn missing(case: &Case, check: Check) -> bool {
    let mut readings = case.readings;
    match reading(&mut readings, check) {
        Some(shown) => shown.is_none(),
        None => questions(check, &case.system).next().is_some(),
    }
}

fn dearest_first(visit: &Visit) -> f64 {
    let mut work = Work::new();
    let price = |fault: &Fault| work.settings.prices.in_minutes(work.settings.prices.repair(*fault));
    let mut faults: Vec<Fault> = Fault::ALL
        .into_iter()
        .filter(|fault| *fault != Fault::NoFault && exists(*fault, &visit.case.system))
        .collect();
    faults.sort_by(|a, b| price(b).total_cmp(&price(a)));
    for fault in faults {
        if work.mend(fault, visit) {
            return work.minutes;
        }
    }
    work.hand_over()
}
