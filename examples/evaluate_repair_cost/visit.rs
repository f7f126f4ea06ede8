//! Vehicles that come to the shop, each with one significant fault.

use coldloop::circuit::{Reading, Readings};
use coldloop::diagnosis::{Case, Settings, diagnose, exists, questions};
use coldloop::units::{
    RelativeHumidity, RotationalSpeed, Speed, Surroundings, Temperature, TimeSpan, celsius, in_kelvins,
};
use coldloop::vehicle::{Conditions, Instruments, Make, Population, Simulation, System, simulate};
use coldloop::{AirSource, Check, Compressor, Error, Expansion, Fault, Observation, Refrigerant, VehicleClass};
use rand::{Rng, RngExt};
use rand_chacha::ChaCha8Rng;

/// One vehicle in the shop: what is wrong with it, what it would read, and how each question would be answered.
pub(crate) struct Visit {
    pub(crate) case: Case,
    /// The same with everything read.
    pub(crate) full: Case,
    /// Of which class it is.
    pub(crate) class: VehicleClass,
    pub(crate) fault: Fault,
    answers: [bool; Observation::ALL.len()],
}

impl Visit {
    /// What the check shows, taken into the case.
    pub(crate) fn look(&self, case: &mut Case, check: Check) {
        let mut full = self.full.readings;
        if let Some(shown) = reading(&mut case.readings, check) {
            *shown = reading(&mut full, check).and_then(|shown| *shown);
        }
        for question in questions(check, &case.system) {
            let place = question.code() as usize - 1;
            case.observations = case.observations.with(question, self.answers[place]);
        }
    }

    /// The answer to a question, the same for every way.
    pub(crate) fn answer(&self, observation: Observation) -> bool {
        self.answers[observation.code() as usize - 1]
    }
}

/// Where vehicles are drawn from.
#[derive(Clone, Copy)]
pub(crate) enum From {
    /// Anywhere up to 2,000 m, of any class.
    Anywhere,
    /// A garage at this altitude, m, with vehicles of these classes.
    Garage(f64, &'static [VehicleClass]),
}

/// The next vehicle. It is drawn again where the model has no steady state, the fault does not show, or a reading is beyond the
/// instruments of a shop.
pub(crate) fn drawn(rng: &mut ChaCha8Rng, from: From) -> Visit {
    loop {
        if let Ok(Some(visit)) = attempt(rng, from) {
            return visit;
        }
    }
}

fn attempt(rng: &mut ChaCha8Rng, from: From) -> Result<Option<Visit>, Error> {
    let pick = |rng: &mut ChaCha8Rng, many: usize| rng.random_range(0..many);
    let system = System::new(
        [Refrigerant::R134a, Refrigerant::R1234yf][pick(rng, 2)],
        Expansion::ALL[pick(rng, 2)],
        Compressor::ALL[pick(rng, 4)],
    );
    let class = match from {
        From::Anywhere => VehicleClass::ALL[pick(rng, 4)],
        From::Garage(_, classes) => classes[pick(rng, classes.len())],
    };
    let uniforms: [f64; Population::UNIFORMS] = std::array::from_fn(|_| rng.random());
    let make = Make::numbered(rng.random_range(0..Make::TO_JUDGE.end));
    let vehicle = Population::of_make(make, system, class).vehicle(&uniforms)?;
    let place = Surroundings::at_altitude(match from {
        From::Anywhere => rng.random_range(0.0..2_000.0),
        From::Garage(altitude_m, _) => altitude_m,
    })?;
    let engine_hz = rng.random_range(20.0..35.0);
    let conditions = Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(rng.random_range(0.2..0.8))),
        // The speed of a motor does not depend on the engine.
        engine_speed: Some(RotationalSpeed::from_hz(engine_hz)).filter(|_| system.compressor != Compressor::Electric),
        air_source: Some(AirSource::ALL[pick(rng, 2)]),
        blower: Some(1.0),
        vehicle_speed: Some(Speed::from_m_s(0.0)),
        running_for: Some(TimeSpan::from_seconds(900.0)),
        ..Conditions::new(celsius(rng.random_range(20.0..40.0)), place)
    };
    let possible: Vec<Fault> = Fault::ALL
        .into_iter()
        .filter(|f| !matches!(f, Fault::NoFault | Fault::GaugeError) && exists(*f, &system))
        .collect();
    let fault = by_prior(rng, &possible);
    let severity = rng.random_range(0.15..0.85);
    let sound = simulate(&vehicle, &conditions, &[])?;
    let fault_of_it = make.fault(&system, fault, severity, rng.random())?;
    let faulty = simulate(&vehicle, &conditions, &[fault_of_it])?;
    if !significant(&sound, &faulty) {
        return Ok(None);
    }
    let noted = make.habits.noted(&faulty, &vehicle, &conditions, &[fault_of_it])?;
    let errors: [f64; Instruments::UNIFORMS] = std::array::from_fn(|_| rng.random());
    let every = Instruments {
        missing: 0.0,
        ..Instruments::SHOP
    };
    let case = |instruments: Instruments| {
        instruments
            .measure(&noted, place, &errors)
            .map(|readings| Case::new(system, conditions, readings))
    };
    let settings = Settings::default();
    let visit = Visit {
        case: case(Instruments::SHOP)?,
        full: case(every)?,
        class,
        fault,
        answers: Observation::ALL.map(|observation| rng.random::<f64>() < settings.looks.yes(observation, fault)),
    };
    diagnose(&visit.full, &settings)?;
    Ok(Some(visit))
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
    faulty.capacity.w() < 0.95 * sound.capacity.w()
        || faulty.cop < 0.9 * sound.cop
        || in_kelvins(faulty.vent) > in_kelvins(sound.vent) + 1.5
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

/// Whether a check would give something new in this case.
pub(crate) fn missing(case: &Case, check: Check) -> bool {
    let mut readings = case.readings;
    match reading(&mut readings, check) {
        Some(shown) => shown.is_none(),
        None => questions(check, &case.system).next().is_some(),
    }
}
