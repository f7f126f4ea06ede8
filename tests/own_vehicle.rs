//! Earlier readings of a sound vehicle improve its later diagnosis, and do not only narrow its bands.

#![allow(clippy::unwrap_used, clippy::cast_precision_loss)] // helpers of tests; counts are small

#[allow(dead_code, unreachable_pub)] // the evaluation, which shares it, needs more of it
#[path = "../examples/evaluate_diagnosis/draws.rs"]
mod draws;

use coldloop::circuit::Readings;
use coldloop::diagnosis::{Case, Diagnosis, diagnose};
use coldloop::expected::OwnVehicle;
use coldloop::units::TimeSpan;
use coldloop::vehicle::{Conditions, FaultSeverity};
use coldloop::{Error, Fault, VerdictKind};
use draws::{Draw, KINDS, Lines, World};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Vehicles of each kind, and visits at which each was sound.
const EACH: usize = 100;
const VISITS: usize = 3;

/// Counts over the answers of many vehicles.
#[derive(Default, Debug)]
struct Said {
    answers: f64,
    /// Sum of the log losses: minus the logarithm of the probability of the true fault, nats.
    loss: f64,
    first: f64,
    three: f64,
    sound: f64,
    alarms: f64,
}

impl Said {
    fn add(&mut self, answer: &Diagnosis, truth: Fault) {
        let is = |rank: usize| answer.faults.get(rank).is_some_and(|ranked| ranked.fault == truth);
        let named = answer.verdict.kind == VerdictKind::NamedFault && answer.verdict.faults[0] != truth;
        self.answers += 1.0;
        self.loss -= answer.probability_of(&[truth]).max(1e-6).ln();
        self.first += f64::from(u8::from(is(0)));
        self.three += f64::from(u8::from((0..3).any(is)));
        if truth == Fault::NoFault {
            self.sound += 1.0;
            self.alarms += f64::from(u8::from(named));
        }
    }
}

/// The same vehicle on another day while it is sound, long enough on the road for the bands of its kind.
fn while_sound(rng: &mut impl Rng, draw: &Draw) -> Result<(Conditions, Readings), Error> {
    let mut actual = draws::conditions(rng, World::Own, &draw.system)?;
    actual.running_for = actual
        .running_for
        .map(|time| TimeSpan::from_seconds(time.seconds() + 300.0));
    let sound = FaultSeverity::new(Fault::NoFault, 0.0);
    let day = Draw::of(rng, World::Own, (draw.make, draw.vehicle), actual, sound)?;
    Ok((draws::written(rng, World::Own, &actual), day.readings))
}

/// The knowledge of a vehicle from its kind and from visits while it was sound.
fn known(rng: &mut impl Rng, draw: &Draw) -> OwnVehicle {
    let mut own = OwnVehicle::new(draw.system);
    let mut visits = 0;
    while visits < VISITS {
        // A day that the model has no steady state for, or on which its bands end, is drawn again.
        let day = while_sound(rng, draw);
        visits += usize::from(day.is_ok_and(|(conditions, readings)| own.learn(&conditions, &readings).is_ok()));
    }
    own
}

/// Vehicles of every kind, a sixth of them sound, judged with and without what they read before.
fn judged() -> [Said; 2] {
    let mut said: [Said; 2] = Default::default();
    for kind in 0..KINDS {
        let mut rng = ChaCha8Rng::seed_from_u64(63);
        rng.set_stream(kind as u64);
        let faults = draws::faults(kind);
        let mut settings = draws::even_settings(&faults);
        settings.next_checks = false;
        for _ in 0..EACH {
            let fault = draws::even(&mut rng, &faults);
            let severity = draws::severity(&mut rng, fault);
            let draw = draws::solved(&mut rng, World::Own, kind, fault, severity).unwrap();
            let readings = draws::taken(&mut rng, &draw.readings, Lines::All);
            let case = Case::new(draw.system, draw.conditions, readings);
            let own_readings = Some(known(&mut rng, &draw));
            for (said, case) in said.iter_mut().zip([case, Case { own_readings, ..case }]) {
                if let Ok(answer) = diagnose(&case, &settings) {
                    said.add(&answer, fault);
                }
            }
        }
    }
    said
}

/// Of these 792 vehicles on 2026-11-30: first name right of 295 and 350, among the first three 480 and 513, the same loss (2.10 nats).
#[test]
fn its_own_sound_readings_make_the_diagnosis_of_a_vehicle_surer() {
    let [kind_alone, own] = judged();
    let both = || format!("{kind_alone:?} {own:?}");
    println!("note: {}", both());
    assert!(own.answers == kind_alone.answers && own.answers > 0.98 * (EACH * KINDS) as f64);
    assert!(own.loss < kind_alone.loss + 0.01 * own.answers, "{}", both());
    assert!(
        own.first > kind_alone.first && own.three > kind_alone.three,
        "{}",
        both()
    );
    assert!(own.alarms <= kind_alone.alarms + 0.02 * own.sound, "{}", both());
}
