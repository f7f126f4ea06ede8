//! What a diagnosis says of readings, instruments and time.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Action, Case, Cost, Diagnosis, Settings, diagnose, judge};
use coldloop::units::{
    AbsolutePressure, GaugePressure, RotationalSpeed, Surroundings, TimeSpan, celsius, kelvins_difference,
};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Check, Compressor, Expansion, Fault, QualityNote, Refrigerant, Thermometer, VerdictKind};

fn case() -> Case {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let air = Surroundings::at_altitude(1_600.0).unwrap();
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_bar(2.0), Gauge::DIGITAL)),
        high_side: Some(Reading::pressure(GaugePressure::from_bar(13.0), Gauge::DIGITAL)),
        vent: Some(Reading::temperature(celsius(8.0), Thermometer::PocketDigital)),
        ..Readings::default()
    };
    Case::new(system, Conditions::new(celsius(28.0), air), readings)
}

fn noted(case: &Case, note: QualityNote) -> bool {
    told(case).quality.contains(&note)
}

fn told(case: &Case) -> Diagnosis {
    diagnose(case, &Settings::default()).unwrap()
}

/// A system counts as settled after ten minutes, and starting, settling and reading are priced at just these.
#[test]
fn a_run_costs_the_time_in_which_a_system_settles() {
    let minutes = Settings::default().prices.check(Check::RunAndRead).minutes;
    let settled = |minutes: f64| {
        let mut case = case();
        case.conditions.running_for = Some(TimeSpan::from_minutes(minutes));
        !noted(&case, QualityNote::NotSettled)
    };
    assert_eq!((settled(9.9), settled(10.0)), (false, true));
    assert_eq!((settled(0.99 * minutes), settled(minutes)), (false, true));
}

/// The high side counts as near its cut-out from 95 % of it on, in gauge pressure.
#[test]
fn the_high_side_is_near_its_cut_out_from_ninety_five_per_cent_on() {
    let near = |cut_out_pa: f64| {
        let mut case = case();
        case.system.high_cut_out = Some(GaugePressure::from_pa(cut_out_pa));
        case.readings.high_side = Some(Reading::pressure(GaugePressure::from_pa(2_850_000.0), Gauge::DIGITAL));
        noted(&case, QualityNote::NearHighCutOut)
    };
    assert_eq!((near(2_980_000.0), near(3_020_000.0)), (true, false));
}

/// A commanded displacement below one half counts as little from an ambient of 25 °C on.
#[test]
fn little_displacement_is_noted_below_half_of_it_and_where_it_is_warm() {
    let low = |commanded: f64, ambient_c: f64| {
        let mut case = case();
        case.system.compressor = Compressor::VariableExternal;
        case.conditions.commanded_displacement = Some(commanded);
        case.conditions.ambient = celsius(ambient_c);
        noted(&case, QualityNote::DisplacementLow)
    };
    assert_eq!((low(0.49, 25.1), low(0.51, 25.1)), (true, false));
    assert_eq!((low(0.49, 24.9), low(0.49, 25.0)), (false, true));
}

/// Fins freeze below 0 °C, and a vent that is colder than them by more than two standard uncertainties of both, here 2 * 0.5 K,
/// contradicts them.
#[test]
fn the_sensor_of_the_evaporator_is_noted_where_it_freezes_or_contradicts() {
    let with = |fins_c: f64, vent_c: f64, note| {
        let mut case = case();
        let read = |c: f64, u: f64| Reading {
            value: celsius(c),
            standard_uncertainty: kelvins_difference(u),
        };
        case.readings.evaporator_sensor = Some(read(fins_c, 0.4));
        case.readings.vent = Some(read(vent_c, 0.3));
        noted(&case, note)
    };
    assert!(with(-0.1, 5.0, QualityNote::EvaporatorFreezing) && !with(0.1, 5.0, QualityNote::EvaporatorFreezing));
    assert!(with(9.0, 7.95, QualityNote::VentBelowEvaporator) && !with(9.0, 8.05, QualityNote::VentBelowEvaporator));
}

/// Where the air differs from that of sea level by more than 6 kPa, at 510 m, it matters where a gauge was zeroed.
#[test]
fn the_zero_of_a_gauge_matters_from_six_kilopascals_on() {
    let matters = |air_pa: f64| {
        let mut case = case();
        case.conditions.surroundings = Surroundings::measured(AbsolutePressure::from_pa(air_pa)).unwrap();
        noted(&case, QualityNote::GaugeZeroUnknown)
    };
    assert_eq!(
        (matters(101_325.0 - 5_900.0), matters(101_325.0 - 6_100.0)),
        (false, true)
    );
}

/// A compressor of variable displacement is at the end of its stroke above 32 °C and below 1,200 rpm.
#[test]
fn the_end_of_the_stroke_is_noted_in_heat_and_at_idle() {
    let noted_at = |ambient_c: f64, speed_hz: f64| {
        let mut case = case();
        case.system.compressor = Compressor::VariableInternal;
        case.conditions.ambient = celsius(ambient_c);
        case.conditions.engine_speed = Some(RotationalSpeed::from_hz(speed_hz));
        noted(&case, QualityNote::StrokeLimit)
    };
    assert_eq!((noted_at(31.9, 14.0), noted_at(32.1, 14.0)), (false, true));
    assert_eq!((noted_at(35.0, 19.9), noted_at(35.0, 20.1)), (true, false));
}

/// The default settings, with these faults and no others.
fn only(faults: &[(Fault, f64)]) -> Settings {
    let mut settings = Settings::default();
    for fault in Fault::ALL {
        settings = settings.with_prior(fault, 0.0);
    }
    for (fault, prior) in faults {
        settings = settings.with_prior(*fault, *prior);
    }
    settings.none_of_these = 0.0;
    settings
}

fn probability(told: &Diagnosis, fault: Fault) -> f64 {
    told.faults
        .iter()
        .find(|ranked| ranked.fault == fault)
        .unwrap()
        .probability
}

/// A rival is a fault with at least a fiftieth of the probability of the leading one: at the usual 0.7 from which a fault is
/// named, one cause in seventy (engineering judgement). Priors move the odds to both sides of the edge.
#[test]
fn a_rival_has_a_fiftieth_of_the_leading_probability() {
    let (leads, follows) = (Fault::Undercharge, Fault::WornCompressor);
    let told = |prior: f64| {
        let mut settings = only(&[(leads, 1.0), (follows, prior)]);
        (settings.least_information, settings.two_faults) = (0.0, 0.0);
        diagnose(&case(), &settings).unwrap()
    };
    let share = |told: &Diagnosis| probability(told, follows) / probability(told, leads);
    let even = share(&told(1.0));
    let at = |wanted: f64| told(wanted / even);
    assert!((share(&at(0.0195)) - 0.0195).abs() < 1e-4, "{}", share(&at(0.0195)));
    assert_eq!(at(0.0195).verdict.rival, None);
    assert_eq!(at(0.0205).verdict.rival, Some(follows));
}

/// Gauges that mislead with a probability of 0.3 or more are compared before anything else: every other step depends on what
/// they show (engineering judgement).
#[test]
fn gauges_are_compared_first_from_a_suspicion_of_three_tenths() {
    let cause = Fault::Undercharge;
    let told = |prior: f64| diagnose(&case(), &only(&[(cause, 1.0), (Fault::GaugeError, prior)])).unwrap();
    let odds = |told: &Diagnosis| probability(told, Fault::GaugeError) / probability(told, cause);
    let even = odds(&told(1.0));
    let at = |p: f64| told(p / (1.0 - p) / even);
    let compared = |told: &Diagnosis| {
        let step = told.next_step;
        step == Some(Action::Check(Check::CompareGauges)) || step == Some(Action::Check(Check::CompareTransducer))
    };
    assert!((probability(&at(0.29), Fault::GaugeError) - 0.29).abs() < 1e-3);
    assert_eq!((compared(&at(0.29)), compared(&at(0.31))), (false, true));
}

/// Two faults are weighed together where they would meet by chance in one vehicle of two thousand, and not where they are rarer
/// (engineering judgement). A vent as warm as the air, beside the pressures of a sound system, asks for two.
#[test]
fn pairs_are_tried_down_to_one_vehicle_in_two_thousand() {
    let mut case = case();
    case.readings.vent = Some(Reading::temperature(celsius(28.0), Thermometer::PocketDigital));
    let tried = |prior: f64| {
        let faults = [
            (Fault::NoFault, 0.9 - 2.0 * prior),
            (Fault::Undercharge, prior),
            (Fault::CondenserAirflowLoss, prior),
        ];
        let mut settings = only(&faults);
        settings.none_of_these = 0.1;
        diagnose(&case, &settings).unwrap().two_faults.is_some()
    };
    // 0.0220 squared is one in 2,066, and 0.0227 squared one in 1,941.
    assert_eq!((tried(0.022_0), tried(0.022_7)), (false, true));
}

/// Information is counted in nats from the prior on (Kullback & Leibler 1951). Between two causes that were equally likely it is
/// ln 2 less the entropy that is left, and never more than ln 2.
#[test]
fn a_verdict_needs_the_information_of_the_settings() {
    let mut case = case();
    case.readings.high_side = Some(Reading::pressure(GaugePressure::from_bar(20.0), Gauge::DIGITAL));
    let told = |least: f64| {
        let mut settings = only(&[(Fault::Undercharge, 1.0), (Fault::CondenserAirflowLoss, 1.0)]);
        (settings.least_information, settings.two_faults) = (least, 0.0);
        diagnose(&case, &settings).unwrap()
    };
    let causes = [Fault::Undercharge, Fault::CondenserAirflowLoss];
    let nats: f64 = causes
        .map(|fault| probability(&told(0.0), fault))
        .map(|p| p * (2.0 * p).ln())
        .iter()
        .sum();
    assert!((0.1..=2.0_f64.ln()).contains(&nats), "{nats}");
    let enough = |least: f64| told(least).verdict.kind != VerdictKind::NotEnoughEvidence;
    assert_eq!((enough(0.99 * nats), enough(1.01 * nats)), (true, false));
}

/// A step that was told before is kept until another one saves more than two minutes, the cost of a look, and more than 2 % of what
/// is expected: readings that tremble do not send a mechanic to and fro (319 readings of an independent simulator).
#[test]
fn a_step_is_held_within_two_minutes_and_two_per_cent() {
    let case = case();
    let usual = Settings::default();
    let judgement = judge(&case, &usual).unwrap();
    let all_cost = |minutes: f64| {
        let cost = Cost { minutes, money: 0.0 };
        let mut prices = usual.prices.with_unknown(cost).unwrap();
        for fault in Fault::ALL {
            prices = prices.with_repair(fault, cost).unwrap();
        }
        prices
    };
    for (repair_minutes, dear) in [(30.0, false), (1_500.0, true)] {
        let mut settings = usual;
        settings.prices = all_cost(repair_minutes);
        let first = judgement.plan(&settings).steps[0].action;
        let other = Check::ALL.into_iter().map(Action::Check).find(|action| {
            let mut held = settings;
            held.held = Some(*action);
            *action != first && judgement.plan(&held).steps[0].action == *action
        });
        let Some(Action::Check(check)) = other else {
            panic!("no other check is held at {repair_minutes}")
        };
        // By how much a plan that begins with this check costs more, and whether it is held.
        let at = |minutes: f64| {
            let mut settings = settings;
            let cost = Cost { minutes, money: 0.0 };
            settings.prices = settings.prices.with_check(check, cost).unwrap();
            let least = judgement.plan(&settings).expected_minutes;
            settings.held = Some(Action::Check(check));
            let plan = judgement.plan(&settings);
            let held = plan.steps[0].action == Action::Check(check);
            (held, plan.expected_minutes - least, least)
        };
        let (mut kept, mut left) = (settings.prices.check(check).minutes, 500.0);
        for _ in 0..20 {
            let middle = 0.5 * (kept + left);
            if at(middle).0 { kept = middle } else { left = middle }
        }
        let (_, more, least) = at(kept);
        assert_eq!(least > 100.0, dear, "{least}");
        let wanted = if dear { 0.02 * least } else { 2.0 };
        assert!((more - wanted).abs() < 0.01, "{more} more than {least}");
    }
}
