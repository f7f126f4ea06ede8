//! The diagnosis gives its reasons, refuses impossible input, and says when the readings are not enough.

#![allow(clippy::unwrap_used)] // tests fail by panicking

#[path = "shared/van.rs"]
mod van;

use coldloop::circuit::{Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Judge, Settings, Stakes, diagnose, judge};
use coldloop::units::{
    Frequency, GaugePressure, RelativeHumidity, RotationalSpeed, Surroundings, TimeSpan, celsius, fahrenheit, kelvins,
    kelvins_difference,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{
    Caution, Check, Compressor, EntryError, ErrorKind, Expansion, Fault, Feature, Observation, QualityNote, Quantity,
    Refrigerant, RestFinding, Thermometer, VerdictKind,
};
use proptest::prelude::*;
use van::{psig, van, with};

fn judged(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

fn sound_at_sea_level() -> Case {
    with(van(Surroundings::SEA_LEVEL), psig(40.0, 170.0), Some(41.0))
}

fn worn() -> Case {
    with(van(Surroundings::SEA_LEVEL), psig(70.0, 125.0), Some(64.0))
}

#[test]
fn contributions_add_up_to_the_log_odds() {
    let mut case = worn();
    case.readings.suction_line = Some(Reading::temperature(celsius(26.0), Thermometer::ClampThermistor));
    case.readings.liquid_line = Some(Reading::temperature(celsius(35.0), Thermometer::ClampThermistor));
    let seen = case.observations.with(Observation::HubTurnsFreely, true);
    case.observations = seen.with(Observation::SightGlassBubbles, false);
    let (answer, settings) = (judged(&case), Settings::default());
    let judgement = judge(&case, &settings).unwrap();
    let reasons = judgement.reasons(&settings);
    for one in &answer.faults {
        for other in &answer.faults {
            let because = reasons.because(one.fault, other.fault);
            let sum: f64 = because.iter().map(|contribution| contribution.log_odds).sum();
            let odds = (one.probability / other.probability).ln();
            assert!(
                (sum - odds).abs() < 1e-9 * (1.0 + odds.abs()),
                "{} {}: {sum} {odds}",
                one.fault,
                other.fault
            );
            assert_eq!(because.len(), 1 + 5 + 2); // prior, five figures, two answers
        }
    }
    let total: f64 = answer.faults.iter().map(|ranked| ranked.probability).sum();
    assert!((total + answer.none_of_these - 1.0).abs() < 1e-12);
}

#[test]
fn faults_that_the_system_cannot_have_are_not_named() {
    let usual = Settings::default();
    let mut case = worn();
    case.system.expansion = Expansion::OrificeTube;
    case.system.compressor = Compressor::Electric;
    let answer = judged(&case);
    for absent in [
        Fault::ExpansionValveStuckOpen,
        Fault::ExpansionValveStuckClosed,
        Fault::ClutchNotEngaged,
        Fault::ClutchSlipping,
    ] {
        assert!(answer.ranked(absent).is_none(), "{absent}");
        let because = judge(&case, &usual).map(|judged| judged.reasons(&usual).because(absent, Fault::Undercharge));
        assert!(because.unwrap().is_empty());
    }
    assert!(answer.ranked(Fault::OrificeRestricted).is_some());
    assert!(judged(&worn()).ranked(Fault::OrificeRestricted).is_none());
    for check in answer.next_checks.iter().map(|check| check.check) {
        assert!(
            ![
                Check::TurnHub,
                Check::WatchClutch,
                Check::LookAtSightGlass,
                Check::WarmAndChillBulb
            ]
            .contains(&check)
        );
    }
}

#[test]
fn a_reading_that_was_not_taken_gives_no_reason() {
    let without = with(van(Surroundings::SEA_LEVEL), psig(70.0, 125.0), None);
    let without = judge(&without, &Settings::default()).unwrap();
    let settings = Settings::default();
    let because = without
        .reasons(&settings)
        .because(Fault::WornCompressor, Fault::NoFault);
    let vent = coldloop::diagnosis::Evidence::Feature(Feature::Vent);
    assert!(!because.is_empty() && because.iter().all(|c| c.evidence != vent));
    assert!(
        without
            .diagnosis(&Settings::default())
            .unwrap()
            .quality
            .contains(&QualityNote::FewReadings)
    );
    let nothing = judged(&van(Surroundings::SEA_LEVEL));
    assert_eq!(nothing.verdict.kind, VerdictKind::NotEnoughEvidence);
    assert!(!nothing.next_checks.is_empty());
}

#[test]
fn swapped_hoses_and_wrong_units_are_recognised_for_what_they_are() {
    let place = Surroundings::SEA_LEVEL;
    for (pressures, entry_error) in [
        (psig(175.0, 40.0), EntryError::SwappedHoses),
        (psig(275.0, 1_200.0), EntryError::KpaTypedAsPsi),
    ] {
        let answer = judged(&with(van(place), pressures, Some(41.0)));
        let (found, probability) = answer.entry_error.unwrap();
        assert_eq!(found, entry_error);
        assert_eq!(*answer.verdict.faults, [Fault::GaugeError], "{entry_error}");
        assert!(probability > 0.8, "{entry_error}: {probability}");
        assert_eq!(answer.next_checks[0].check, Check::CompareGauges);
    }
}

#[test]
fn a_pressure_without_saturation_is_judged_and_noted_and_never_panics() {
    let answer = judged(&with(van(Surroundings::SEA_LEVEL), psig(275.0, 1_200.0), Some(41.0)));
    assert!(answer.quality.contains(&QualityNote::OffScale));
    assert!(answer.derived.high_dew.is_none());
}

#[test]
fn what_cannot_be_is_refused_by_name() {
    let settings = Settings::default();
    let refused = |case: &Case| diagnose(case, &settings).unwrap_err();
    let mut nan = sound_at_sea_level();
    nan.readings.vent = Some(Reading {
        value: kelvins(f64::NAN),
        standard_uncertainty: kelvins_difference(0.5),
    });
    assert_eq!(
        (refused(&nan).kind, refused(&nan).quantity),
        (ErrorKind::NotFinite, Quantity::Temperature)
    );
    let vacuum = with(van(Surroundings::SEA_LEVEL), psig(-15.0, 100.0), None);
    assert_eq!(refused(&vacuum).kind, ErrorKind::OutOfRange);
    let mut polar = sound_at_sea_level();
    polar.conditions.ambient = celsius(-20.0);
    assert_eq!(
        (refused(&polar).kind, refused(&polar).quantity),
        (ErrorKind::OutOfRange, Quantity::Temperature)
    );
    let mut humid = sound_at_sea_level();
    humid.conditions.relative_humidity = Some(RelativeHumidity::from_fraction(60.0));
    assert_eq!(refused(&humid).quantity, Quantity::RelativeHumidity);
    let unsettable = settings.with_prior(Fault::Undercharge, f64::NAN);
    assert_eq!(diagnose(&worn(), &unsettable).unwrap_err().kind, ErrorKind::NotFinite);
}

#[test]
fn readings_that_nothing_explains_are_called_so() {
    let answer = judged(&with(van(Surroundings::SEA_LEVEL), psig(110.0, 400.0), Some(37.0)));
    assert_eq!(answer.verdict.kind, VerdictKind::NothingFits);
    assert!(answer.none_of_these > 0.1 && answer.verdict.faults.is_empty());
}

#[test]
#[ignore = "not met: a leaking heater door explains such a vent alone, with the charge short by chance"]
fn two_faults_at_once_are_seen_when_none_fits_alone() {
    // Low charge, and warm air from the heater: a vent above the ambient, which no loss of capacity explains.
    let mut case = with(van(Surroundings::SEA_LEVEL), psig(30.0, 150.0), Some(85.0));
    case.readings.suction_line = Some(Reading::temperature(celsius(22.0), Thermometer::ClampThermistor));
    case.readings.liquid_line = Some(Reading::temperature(celsius(42.0), Thermometer::ClampThermistor));
    let answer = judged(&case);
    let pair = answer.two_faults.unwrap();
    assert_eq!(pair.faults, [Fault::Undercharge, Fault::HeaterAirMixing]);
    assert!(pair.probability > 0.5 && pair.any_pair >= pair.probability);
    assert!(answer.quality.contains(&QualityNote::TwoFaultsPossible));
    assert_eq!(answer.verdict.kind, VerdictKind::CannotTell);
    assert_eq!(*answer.verdict.faults, pair.faults);
    assert_eq!(judged(&worn()).two_faults, None);
    // Clutch cycles, for which there is no band with this compressor, do not lower the probability of the pair.
    case.system.compressor = Compressor::Electric;
    let without = judged(&case).two_faults.unwrap();
    case.readings.clutch_cycles = Some(Reading::counted(Frequency::from_hz(0.05)));
    let with = judged(&case).two_faults.unwrap();
    assert_eq!(with.faults, without.faults);
    assert!(without.probability > 0.5 && with.probability > 0.95 * without.probability);
}

#[test]
fn three_causes_of_a_high_high_side_cannot_be_told_apart_by_pressures() {
    let mut case = with(van(Surroundings::SEA_LEVEL), psig(50.0, 320.0), Some(52.0));
    case.conditions.ambient = fahrenheit(85.0);
    let answer = judged(&case);
    assert_eq!(answer.verdict.kind, VerdictKind::CannotTell);
    assert!(answer.verdict.faults.contains(&Fault::CondenserAirflowLoss));
    // 320 psig condenses R-134a at 73.7 °C
    let with_line = |c: f64| {
        let mut case = case;
        case.readings.liquid_line = Some(Reading::temperature(celsius(c), Thermometer::ClampThermistor));
        judged(&case).faults
    };
    // At an unknown engine speed sound systems reach such a high side too, so that no fault is left out.
    let first = with_line(67.5).iter().map(|f| f.fault).find(|f| *f != Fault::NoFault);
    assert_eq!(first, Some(Fault::CondenserAirflowLoss));
}

#[test]
fn a_system_at_rest_tells_only_what_its_pressure_can() {
    let at_rest = |low: f64, high: f64| {
        let mut case = with(van(Surroundings::SEA_LEVEL), psig(low, high), None);
        case.conditions.engine_speed = Some(RotationalSpeed::from_hz(0.0));
        judged(&case)
    };
    // R-134a at 23.3 °C: 632 kPa, 77 psig
    let full = at_rest(77.0, 78.0);
    assert_eq!(full.rest, Some(RestFinding::Consistent));
    assert_eq!(full.verdict.kind, VerdictKind::NotEnoughEvidence);
    assert_eq!(full.next_checks[0].check, Check::RunAndRead);
    assert!(full.expected.is_none() && full.quality.contains(&QualityNote::AtRest));
    let empty = at_rest(20.0, 20.0);
    assert_eq!(empty.rest, Some(RestFinding::NearlyEmpty));
    assert_eq!(empty.faults[0].fault, Fault::Undercharge);
    let air = at_rest(125.0, 125.0);
    assert_eq!(air.rest, Some(RestFinding::AirPresent));
    assert_eq!(air.faults[0].fault, Fault::NonCondensables);
    assert_eq!(at_rest(60.0, 110.0).rest, Some(RestFinding::NotEqualised));
}

#[test]
fn priors_are_the_users_own() {
    let case = with(van(Surroundings::SEA_LEVEL), psig(50.0, 250.0), Some(46.0));
    let fleet_of_dusty_roads = Settings::default().with_prior(Fault::CondenserAirflowLoss, 1.0);
    let share = |settings| {
        diagnose(&case, &settings)
            .unwrap()
            .probability_of(&[Fault::CondenserAirflowLoss])
    };
    assert!(share(fleet_of_dusty_roads) > 2.0 * share(Settings::default()));
    assert_eq!(
        share(Settings::default().with_prior(Fault::CondenserAirflowLoss, 0.0)),
        0.0
    );
}

/// The odds stay the same; the verdict depends on the cost of a wrong answer.
#[test]
fn a_verdict_needs_more_certainty_where_a_wrong_one_costs_more() {
    let case = worn();
    let p = judged(&case).faults[0].probability;
    let kind = |stakes: Stakes| {
        let settings = Settings::default().with_stakes(&stakes).unwrap();
        diagnose(&case, &settings).unwrap().verdict.kind
    };
    let look = Stakes::default().look;
    // Just below and just above the cost at which naming it costs as much as another look.
    let even = look / (1.0 - p);
    let naming = |sound_part: f64| Stakes {
        sound_part,
        ..Stakes::default()
    };
    assert_eq!(kind(naming(0.999 * even)), VerdictKind::NamedFault);
    assert_eq!(kind(naming(1.001 * even)), VerdictKind::CannotTell);
    // Where a missed fault costs more than another look, fewer systems are called sound.
    let sound = sound_at_sea_level();
    let careful = Settings::default()
        .with_stakes(&Stakes {
            missed_fault: 1e6,
            sound_part: 1e6,
            ..Stakes::default()
        })
        .unwrap();
    assert_eq!(judged(&sound).verdict.kind, VerdictKind::Healthy);
    assert_ne!(diagnose(&sound, &careful).unwrap().verdict.kind, VerdictKind::Healthy);
    // Where another look is free, only a certain verdict is given; where it costs more than any wrong answer, any verdict.
    let free = Settings::default()
        .with_stakes(&Stakes {
            look: 0.0,
            ..Stakes::default()
        })
        .unwrap();
    assert_eq!((free.named, free.short_list), (1.0, 1.0));
    let dear = Settings::default()
        .with_stakes(&Stakes {
            look: 1e6,
            ..Stakes::default()
        })
        .unwrap();
    assert_eq!((dear.named, dear.short_list), (0.0, 0.0));
    let broken = Stakes {
        wrong_list: f64::NAN,
        ..Stakes::default()
    };
    let error = Settings::default().with_stakes(&broken).unwrap_err();
    assert_eq!((error.kind, error.quantity), (ErrorKind::NotFinite, Quantity::Cost));
}

#[test]
fn checks_are_worth_what_they_save_and_each_outcome_is_told() {
    let answer = judged(&worn());
    assert!(!answer.next_checks.is_empty());
    let mut last = f64::INFINITY;
    for check in &answer.next_checks {
        let saving = check.saving.unwrap();
        assert!(saving > 0.0 && saving <= last);
        last = saving;
        let total: f64 = check.outcomes.iter().map(|outcome| outcome.probability).sum();
        assert!((total - 1.0).abs() < 1e-9, "{}: {total}", check.check);
    }
    // With a free-spinning hub the fault is nearly certain, and a further check saves less.
    let mut certain = worn();
    certain.observations = certain
        .observations
        .with(Observation::HubTurnsFreely, true)
        .with(Observation::ClutchEngaged, true)
        .with(Observation::SpeedLowersLowSide, false);
    let best = |answer: &Diagnosis| answer.next_checks.first().and_then(|check| check.saving).unwrap_or(0.0);
    assert!(best(&judged(&certain)) < best(&answer));
}

#[test]
fn a_judge_of_many_gives_each_the_answer_that_it_would_get_alone() {
    let settings = Settings::default();
    let judge = Judge::new(&settings).unwrap();
    let mut orifice = worn();
    orifice.system.expansion = Expansion::OrificeTube;
    let mut with_speed = worn();
    with_speed.conditions.engine_speed = Some(RotationalSpeed::from_hz(25.0));
    let mut with_line = sound_at_sea_level();
    with_line.readings.suction_line = Some(Reading::temperature(celsius(26.0), Thermometer::ClampThermistor));
    let mut at_rest = worn();
    at_rest.conditions.engine_speed = Some(RotationalSpeed::from_hz(0.0));
    for case in [
        worn(),
        with_line,
        orifice,
        with_speed,
        worn(),
        at_rest,
        with_line,
        with_speed,
        orifice,
    ] {
        assert_eq!(judge.diagnose(&case), diagnose(&case, &settings));
    }
    let mut impossible = settings;
    impossible.named = 2.0;
    assert_eq!(
        Judge::new(&impossible).err().map(|error| error.kind),
        Some(ErrorKind::OutOfRange)
    );
}

#[test]
fn cautions_follow_the_refrigerant_and_the_drive() {
    let mut case = sound_at_sea_level();
    assert!(!judged(&case).cautions.contains(&Caution::Flammable));
    assert!(judged(&case).cautions.contains(&Caution::MovingParts));
    case.system.refrigerant = Refrigerant::R1234yf;
    case.system.compressor = Compressor::Electric;
    let cautions = judged(&case).cautions;
    assert!(cautions.contains(&Caution::Flammable) && cautions.contains(&Caution::HighVoltage));
    for always in [
        Caution::Pressure,
        Caution::Frostbite,
        Caution::NoVenting,
        Caution::LocalRules,
    ] {
        assert!(cautions.contains(&always));
    }
}

#[test]
fn a_system_that_has_just_started_is_judged_more_mildly() {
    let mut case = with(van(Surroundings::SEA_LEVEL), psig(40.0, 170.0), Some(60.0));
    let settled = judged(&case).probability_of(&[Fault::NoFault]);
    case.conditions.running_for = Some(TimeSpan::from_seconds(60.0));
    let early = judged(&case);
    let milder = early.probability_of(&[Fault::NoFault]);
    // Soon after the start a sound system has a warm vent too.
    assert!(milder > settled, "{milder} {settled}");
    assert!(early.quality.contains(&QualityNote::NotSettled));
}

proptest! {
    #[test]
    fn any_input_gives_an_answer_or_an_error(
        low in -2e5..5e6f64, high in -2e5..5e7f64, vent in 150.0..500.0f64, line in 150.0..500.0f64,
        ambient in 200.0..350.0f64, altitude in -500.0..9_000.0f64, humidity in -0.2..1.2f64,
        system in 0usize..8, speed in -1.0..80.0f64, yf in any::<bool>(), answers in any::<u64>(),
    ) {
        let refrigerant = if yf { Refrigerant::R1234yf } else { Refrigerant::R134a };
        let system = System::new(refrigerant, Expansion::ALL[system / 4], Compressor::ALL[system % 4]);
        let mut conditions = Conditions::new(kelvins(ambient), Surroundings::at_altitude(altitude).unwrap());
        conditions.relative_humidity = Some(RelativeHumidity::from_fraction(humidity));
        conditions.engine_speed = (speed > 0.0).then_some(RotationalSpeed::from_hz(speed));
        let mut case = Case::new(system, conditions, Readings::default());
        case = with(case, [GaugePressure::from_pa(low).into(), GaugePressure::from_pa(high).into()], None);
        case.readings.vent = Some(Reading { value: kelvins(vent), standard_uncertainty: kelvins_difference(0.5) });
        case.readings.liquid_line = Some(Reading { value: kelvins(line), standard_uncertainty: kelvins_difference(1.0) });
        for (place, observation) in Observation::ALL.into_iter().enumerate() {
            if answers >> place & 1 == 1 {
                case.observations = case.observations.with(observation, answers >> (place + 20) & 1 == 1);
            }
        }
        if let Ok(answer) = diagnose(&case, &Settings::default()) {
            let total: f64 = answer.faults.iter().map(|ranked| ranked.probability).sum();
            prop_assert!((total + answer.none_of_these - 1.0).abs() < 1e-9);
        }
    }
}
