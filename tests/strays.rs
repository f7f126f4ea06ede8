//! Gauges that are off and probes in the wrong place are found where the other readings tell, and sound ones are left alone.

#![allow(clippy::unwrap_used)] // helpers of tests

#[allow(dead_code, unreachable_pub)] // the evaluation, which shares it, needs more of it
#[path = "../examples/evaluate_diagnosis/draws.rs"]
mod draws;

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Action, Case, Diagnosis, Settings, diagnose, judge};
use coldloop::units::{
    GaugePressure, Pressure, RotationalSpeed, Surroundings, Temperature, TimeSpan, celsius, in_kelvins, kelvins,
    kelvins_difference,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Check, Compressor, EntryError, Expansion, Fault, Refrigerant, RestFinding, VerdictKind};
use draws::{Draw, KINDS, Lines, World};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

/// Vehicles of each kind.
const EACH: usize = 25;

fn by_pa(reading: Option<Reading<Pressure>>, pa: f64) -> Option<Reading<Pressure>> {
    reading.map(|reading| Reading {
        value: match reading.value {
            Pressure::Gauge(pressure) => GaugePressure::from_pa(pressure.pa() + pa).into(),
            absolute @ Pressure::Absolute(_) => absolute,
        },
        ..reading
    })
}

/// A probe that reads this share of the way to the air.
fn toward(reading: Option<Reading<Temperature>>, air: Temperature, share: f64) -> Option<Reading<Temperature>> {
    reading.map(|reading| Reading {
        value: kelvins(in_kelvins(reading.value) + share * (in_kelvins(air) - in_kelvins(reading.value))),
        ..reading
    })
}

/// Counts over the answers of many vehicles.
#[derive(Default, Debug)]
struct Said {
    all: usize,
    /// The instruments named as the fault; the likeliest; among the three likeliest.
    named: usize,
    first: usize,
    three: usize,
    /// The right way in which they mislead, where they are the likeliest.
    rightly: usize,
}

impl Said {
    fn add(&mut self, answer: &Diagnosis, entry_error: Option<EntryError>) {
        self.all += 1;
        let blamed = |fault: &Fault| *fault == Fault::GaugeError;
        self.named += usize::from(answer.verdict.kind == VerdictKind::NamedFault && blamed(&answer.verdict.faults[0]));
        let first = blamed(&answer.faults[0].fault);
        self.first += usize::from(first);
        self.three += usize::from(answer.faults.iter().take(3).any(|ranked| blamed(&ranked.fault)));
        self.rightly += usize::from(first && answer.entry_error.map(|(entry_error, _)| entry_error) == entry_error);
    }
}

/// Vehicles of every kind with this fault, their readings spoilt.
fn said(
    fault: Fault,
    severity: f64,
    entry_error: Option<EntryError>,
    spoil: impl Fn(&mut Readings, &Conditions),
) -> Said {
    let mut settings = Settings::default();
    settings.next_checks = false;
    let mut said = Said::default();
    for kind in 0..KINDS {
        let mut rng = ChaCha8Rng::seed_from_u64(62);
        rng.set_stream(kind as u64);
        for _ in 0..EACH {
            let draw: Draw = draws::solved(&mut rng, World::Own, kind, fault, severity).unwrap();
            let mut readings = draws::taken(&mut rng, &draw.readings, Lines::All);
            spoil(&mut readings, &draw.actual);
            // A line that is hotter than possible is refused.
            if let Ok(answer) = diagnose(&Case::new(draw.system, draw.conditions, readings), &settings) {
                said.add(&answer, entry_error);
            }
        }
    }
    said
}

/// The instruments may be named in one vehicle of two hundred, sound or faulty, and lead in one of a hundred; on 2026-11-26 none were
/// named.
#[test]
fn good_instruments_are_left_alone() {
    for (fault, severity) in [
        (Fault::NoFault, 0.0),
        (Fault::Undercharge, 0.5),
        (Fault::WornCompressor, 0.5),
        (Fault::CondenserAirflowLoss, 0.5),
        (Fault::SuctionLineRestriction, 0.5),
        (Fault::HeaterAirMixing, 0.5),
    ] {
        let said = said(fault, severity, None, |_, _| ());
        println!("{fault}: {said:?}");
        assert!(
            said.named * 200 <= said.all && said.first * 100 <= said.all,
            "{fault}: {said:?}"
        );
    }
}

/// On 2026-11-26, of 200 sound vehicles each: low gauge 80 kPa too low, likeliest 47 %, among the first three 75 %; 150 kPa too high 60 % and
/// 82 %; high gauge 250 kPa too low 8 % and 18 %, for faults move the high side as far; discharge probe 60 % of the way to
/// the air 53 % and 74 %, suction probe 26 % and 56 %, vent probe 8 % and 74 %. A probe on the liquid line, which is hardly
/// warmer than the air, shows nothing.
#[test]
#[ignore = "not met: makes differ by as much as a gauge that is 80 kPa off"]
fn instruments_that_stray_far_are_found() {
    type Spoil = fn(&mut Readings, &Conditions);
    // In per cent of the vehicles, how often it is first and among three; and of the firsts, how often the right instrument is told.
    let cases: [(EntryError, Spoil, [usize; 3]); 6] = [
        (
            EntryError::LowGaugeOff,
            |r, _| r.low_side = by_pa(r.low_side, -80e3),
            [15, 45, 40],
        ),
        (
            // Absolute pressures noted as gauge pressures read nearly the same, and are commoner.
            EntryError::LowGaugeOff,
            |r, _| r.low_side = by_pa(r.low_side, 150e3),
            [25, 65, 8],
        ),
        (
            EntryError::HighGaugeOff,
            |r, _| r.high_side = by_pa(r.high_side, -250e3),
            [5, 12, 40],
        ),
        (
            EntryError::DischargeProbeLoose,
            |r, c| r.discharge_line = toward(r.discharge_line, c.ambient, 0.6),
            [30, 55, 40],
        ),
        (
            EntryError::SuctionProbeLoose,
            |r, c| r.suction_line = toward(r.suction_line, c.ambient, 0.6),
            [8, 30, 40],
        ),
        (
            // A leaking heater door is the commoner reason for such a vent: the probe is among three, not first.
            EntryError::VentProbeAside,
            |r, c| r.vent = toward(r.vent, c.ambient, 0.6),
            [0, 55, 40],
        ),
    ];
    for (entry_error, spoil, [first, three, rightly]) in cases {
        let said = said(Fault::NoFault, 0.0, Some(entry_error), spoil);
        println!("{entry_error}: {said:?}");
        assert!(100 * said.first >= first * said.all, "{entry_error}: {said:?}");
        assert!(100 * said.three >= three * said.all, "{entry_error}: {said:?}");
        assert!(100 * said.rightly >= rightly * said.first, "{entry_error}: {said:?}");
    }
}

/// R-134a at 25 °C, 665.8 kPa above vacuum at saturation: 564.5 kPa gauge at sea level.
#[test]
fn a_system_at_rest_tells_which_gauge_is_off() {
    let at_rest = |low_kpa: f64, high_kpa: f64| {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let mut conditions = Conditions::new(celsius(25.0), Surroundings::SEA_LEVEL);
        conditions.engine_speed = Some(RotationalSpeed::from_hz(0.0));
        let read = |kpa: f64, gauge| Some(Reading::pressure(GaugePressure::from_kpa(kpa), gauge));
        let readings = Readings {
            low_side: read(low_kpa, Gauge::LOW_SIDE),
            high_side: read(high_kpa, Gauge::HIGH_SIDE),
            ..Readings::default()
        };
        diagnose(&Case::new(system, conditions, readings), &Settings::default()).unwrap()
    };
    let equal = at_rest(564.0, 566.0);
    assert_eq!((equal.rest, equal.entry_error), (Some(RestFinding::Consistent), None));
    // One side agrees with the ambient, and the other with nothing.
    for (low, high, off) in [
        (640.0, 566.0, EntryError::LowGaugeOff),
        (490.0, 566.0, EntryError::LowGaugeOff),
        (564.0, 640.0, EntryError::HighGaugeOff),
    ] {
        let apart = at_rest(low, high);
        let (entry_error, probability) = apart.entry_error.unwrap();
        assert_eq!((apart.rest, entry_error), (Some(RestFinding::NotEqualised), off));
        assert!(probability > 0.1, "{low} {high}: {probability}");
        assert!(equal.probability_of(&[Fault::GaugeError]) < 0.5 * probability);
    }
    // Sides that are far apart only need time.
    assert_eq!(at_rest(300.0, 900.0).entry_error, None);
}

/// A coupler that is shut leaves its gauge at the air's pressure; the other side is judged alone.
#[test]
fn a_hose_that_is_shut_is_found() {
    let read = |psig: f64, gauge| Some(Reading::pressure(GaugePressure::from_psig(psig), gauge));
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let judged = |low: f64, high: f64, running: bool| {
        let mut conditions = Conditions::new(celsius(27.0), Surroundings::SEA_LEVEL);
        conditions.running_for = running.then_some(TimeSpan::from_seconds(720.0));
        conditions.engine_speed = Some(RotationalSpeed::from_hz(if running { 25.0 } else { 0.0 }));
        let readings = Readings {
            low_side: read(low, Gauge::LOW_SIDE),
            high_side: read(high, Gauge::HIGH_SIDE),
            ..Readings::default()
        };
        diagnose(&Case::new(system, conditions, readings), &Settings::default()).unwrap()
    };
    // 27 °C is 89 psig at saturation. Low charge and a closed valve bring the low side to zero, too.
    for (low, high, running, shut, least) in [
        (35.0, 0.0, true, EntryError::HighHoseShut, 0.3),
        (35.0, 2.0, true, EntryError::HighHoseShut, 0.3),
        (0.0, 180.0, true, EntryError::LowHoseShut, 0.02),
        (89.0, 0.0, false, EntryError::HighHoseShut, 0.1),
        (0.0, 89.0, false, EntryError::LowHoseShut, 0.1),
    ] {
        let answer = judged(low, high, running);
        let (entry_error, probability) = answer.entry_error.unwrap();
        assert_eq!(entry_error, shut, "{low} {high} {running}");
        assert!(probability > least, "{low} {high} {running}: {probability}");
    }
    assert_eq!(judged(35.0, 0.0, true).faults[0].fault, Fault::GaugeError);
    // A gauge well away from both is that of an open hose, and so is one of two that agree at rest.
    for (low, high, running) in [(60.0, 25.0, true), (89.0, 89.0, false), (35.0, 180.0, true)] {
        let told = judged(low, high, running).entry_error;
        let shut = [EntryError::LowHoseShut, EntryError::HighHoseShut];
        assert!(
            told.is_none_or(|(entry_error, _)| !shut.contains(&entry_error)),
            "{low} {high}: {told:?}"
        );
    }
}

/// One side typed in kPa as psi, the other right: whichever error is likeliest, the step that finds it comes first.
#[test]
fn one_side_in_another_unit_sends_to_the_instruments_first() {
    let kpa_in_a_psi = 6.894_757;
    for (low, high) in [(40.0 * kpa_in_a_psi, 175.0), (40.0, 175.0 * kpa_in_a_psi)] {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let mut conditions = Conditions::new(celsius(23.0), Surroundings::SEA_LEVEL);
        conditions.running_for = Some(TimeSpan::from_seconds(720.0));
        let readings = Readings {
            low_side: Some(Reading::pressure(GaugePressure::from_psig(low), Gauge::LOW_SIDE)),
            high_side: Some(Reading::pressure(GaugePressure::from_psig(high), Gauge::HIGH_SIDE)),
            vent: Some(Reading::within(celsius(6.0), kelvins_difference(1.0))),
            ..Readings::default()
        };
        let settings = Settings::default();
        let judgement = judge(&Case::new(system, conditions, readings), &settings).unwrap();
        let answer = judgement.diagnosis(&settings).unwrap();
        let named = answer.verdict.kind == VerdictKind::NamedFault;
        assert!(
            !named || *answer.verdict.faults == [Fault::GaugeError],
            "{:?}",
            answer.verdict
        );
        assert_eq!(answer.next_checks[0].check, Check::CompareGauges);
        let plan = judgement.plan(&settings);
        assert_eq!(plan.steps[0].action, Action::Check(Check::CompareGauges));
    }
}
