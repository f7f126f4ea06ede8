//! Facts of the trade about two gauges, of every expansion device and of R-1234yf at the same temperatures as of R-134a. Each figure is
//! common practice, no source.

#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Case, Diagnosis, Settings, diagnose};
use coldloop::units::{GaugePressure, Surroundings, TimeSpan, fahrenheit, in_fahrenheit};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, EntryError, Expansion, Fault, Observation, Refrigerant, Thermometer};

/// What was read and seen of a vehicle with a fixed clutch, at sea level, after twelve minutes; pressures are those of R-134a.
#[derive(Clone, Copy, Debug)]
struct Seen {
    ambient_f: f64,
    low_psig: f64,
    high_psig: f64,
    vent_f: Option<f64>,
    looks: &'static [(Observation, bool)],
}

impl Seen {
    const fn gauges(ambient_f: f64, low_psig: f64, high_psig: f64) -> Self {
        Self {
            ambient_f,
            low_psig,
            high_psig,
            vent_f: None,
            looks: &[],
        }
    }

    fn judged(&self, (expansion, refrigerant): (Expansion, Refrigerant)) -> Diagnosis {
        let psig = |psig: f64| {
            if refrigerant == Refrigerant::R134a {
                return GaugePressure::from_psig(psig);
            }
            let of_r134a = GaugePressure::from_psig(psig).absolute(Surroundings::SEA_LEVEL);
            let temperature = Refrigerant::R134a.dew_temperature(of_r134a).unwrap();
            let pressure = refrigerant.dew_pressure(temperature).unwrap();
            pressure.gauge(Surroundings::SEA_LEVEL)
        };
        let system = System::new(refrigerant, expansion, Compressor::FixedClutch);
        let mut conditions = Conditions::new(fahrenheit(self.ambient_f), Surroundings::SEA_LEVEL);
        conditions.running_for = Some(TimeSpan::from_seconds(720.0));
        let vent = |f: f64| Reading::temperature(fahrenheit(f), Thermometer::PocketDigital);
        let readings = Readings {
            low_side: Some(Reading::pressure(psig(self.low_psig), Gauge::LOW_SIDE)),
            high_side: Some(Reading::pressure(psig(self.high_psig), Gauge::HIGH_SIDE)),
            vent: self.vent_f.map(vent),
            ..Readings::default()
        };
        let mut case = Case::new(system, conditions, readings);
        for (observation, answer) in self.looks {
            case.observations = case.observations.with(*observation, *answer);
        }
        diagnose(&case, &Settings::default()).unwrap()
    }
}

/// Saturation of R-134a at an ambient in °F, psig.
fn saturated(ambient_f: f64) -> f64 {
    let pressure = Refrigerant::R134a.dew_pressure(fahrenheit(ambient_f)).unwrap();
    pressure.gauge(Surroundings::SEA_LEVEL).psig()
}

/// Checks a fact for both expansion devices and both refrigerants.
fn of_every_kind(each: impl IntoIterator<Item = Seen>, fails: impl Fn(&Diagnosis) -> Option<String>) {
    let mut failures = Vec::new();
    for seen in each {
        for expansion in Expansion::ALL {
            for refrigerant in [Refrigerant::R134a, Refrigerant::R1234yf] {
                if let Some(why) = fails(&seen.judged((expansion, refrigerant))) {
                    failures.push(format!("{expansion} {refrigerant} {seen:?}: {why}"));
                }
            }
        }
    }
    assert!(failures.is_empty(), "{} fail:\n{}", failures.len(), failures.join("\n"));
}

fn place(answer: &Diagnosis, fault: Fault) -> usize {
    let place = answer.faults.iter().position(|ranked| ranked.fault == fault);
    place.unwrap_or(usize::MAX)
}

fn leaders(answer: &Diagnosis) -> String {
    let first = answer.faults.iter().take(4);
    first
        .map(|ranked| format!("{} {:.2} ", ranked.fault, ranked.probability))
        .collect()
}

/// The compressor pumps little: the low side from 60 psig up to saturation at the ambient, the high side 15 to 60 psi above that
/// saturation. With the clutch seen engaged and the hub turning freely the compressor is worn; readings alone must not lead to a
/// fault of its control.
fn hardly_pumped() -> impl Iterator<Item = Seen> {
    [80.0, 90.0, 105.0].into_iter().flat_map(|ambient_f| {
        let most = saturated(ambient_f);
        [60.0, 0.5 * (60.0 + most), most].into_iter().flat_map(move |low_psig| {
            [15.0, 35.0, 60.0].map(|above| Seen {
                // Between saturation at the low side and the ambient.
                vent_f: Some(ambient_f - 0.4 * f64::max(ambient_f - dew_f(low_psig), 2.0)),
                ..Seen::gauges(ambient_f, low_psig, most + above)
            })
        })
    })
}

/// Saturation of R-134a at a gauge pressure, °F.
fn dew_f(psig: f64) -> f64 {
    let pressure = GaugePressure::from_psig(psig).absolute(Surroundings::SEA_LEVEL);
    in_fahrenheit(Refrigerant::R134a.dew_temperature(pressure).unwrap())
}

#[test]
fn a_compressor_that_pumps_little_is_never_the_control_of_a_fixed_clutch() {
    of_every_kind(hardly_pumped(), |answer| {
        let control = answer.probability_of(&[Fault::CompressorControlFault]);
        (control > 0.5).then(|| leaders(answer))
    });
}

#[test]
#[ignore = "not met: 17 of 108: with the sides 15 psi apart at saturation the clutch has 0.6 to 0.9, for two gauges may differ so; an orifice tube at 105 F may be short"]
fn a_compressor_that_pumps_little_is_worn_first_or_second() {
    of_every_kind(hardly_pumped(), |answer| {
        let worn = answer.probability_of(&[Fault::WornCompressor]);
        (place(answer, Fault::WornCompressor) > 1 || worn < 0.3).then(|| leaders(answer))
    });
}

#[test]
#[ignore = "not met: 13 of 108, of 60 psig at 105 F: 0.78 to 0.90"]
fn a_free_hub_behind_an_engaged_clutch_is_a_worn_compressor() {
    const SEEN: &[(Observation, bool)] = &[(Observation::ClutchEngaged, true), (Observation::HubTurnsFreely, true)];
    of_every_kind(hardly_pumped().map(|seen| Seen { looks: SEEN, ..seen }), |answer| {
        let worn = answer.probability_of(&[Fault::WornCompressor]);
        (worn < 0.9).then(|| leaders(answer))
    });
}

#[test]
#[ignore = "not met: 1 of 72: with 60 against 160 psig at 80 F an orifice tube may be short, 0.25 against 0.24"]
fn a_low_side_of_60_to_80_psig_against_115_to_160_is_led_by_a_worn_compressor() {
    let each = [80.0, 90.0].into_iter().flat_map(|ambient_f| {
        [60.0, 70.0, 80.0]
            .into_iter()
            .flat_map(move |low| [115.0, 140.0, 160.0].map(|high| Seen::gauges(ambient_f, low, high)))
    });
    of_every_kind(each, |answer| {
        (place(answer, Fault::WornCompressor) > 0).then(|| leaders(answer))
    });
}

const BOTH_HIGH: [Seen; 3] = [
    Seen::gauges(86.0, 55.0, 350.0),
    Seen::gauges(86.0, 60.0, 370.0),
    Seen::gauges(86.0, 65.0, 400.0),
];

#[test]
#[ignore = "not met: overcharge has 0.05 to 0.10, air 0.03 to 0.08"]
fn both_sides_high_are_airflow_overcharge_or_air() {
    of_every_kind(BOTH_HIGH, |answer| {
        let names = [Fault::CondenserAirflowLoss, Fault::Overcharge, Fault::NonCondensables];
        let told = |fault: Fault| place(answer, fault) < 4 && answer.probability_of(&[fault]) >= 0.1;
        (!names.into_iter().all(told)).then(|| leaders(answer))
    });
}

#[test]
#[ignore = "not met: no fault and airflow stay before them"]
fn both_sides_high_behind_a_running_fan_and_a_clean_face_are_overcharge_or_air() {
    const SEEN: &[(Observation, bool)] = &[
        (Observation::CondenserFanRunning, true),
        (Observation::CondenserFaceBlocked, false),
    ];
    of_every_kind(BOTH_HIGH.map(|seen| Seen { looks: SEEN, ..seen }), |answer| {
        let names = [Fault::Overcharge, Fault::NonCondensables];
        (!names.into_iter().all(|fault| place(answer, fault) < 2)).then(|| leaders(answer))
    });
}

/// Faults that block the flow of liquid.
const SHUT: [Fault; 5] = [
    Fault::ExpansionValveStuckClosed,
    Fault::OrificeRestricted,
    Fault::LiquidLineRestriction,
    Fault::HighSideRestriction,
    Fault::MoistureIcing,
];

#[test]
#[ignore = "not met: 26 of 36: low charge is 17 times as common, and both simulators have starved systems in vacuum"]
fn a_low_side_in_vacuum_is_a_blocked_flow_of_liquid() {
    let each = [-10.0, -5.0, 0.0]
        .into_iter()
        .flat_map(|low| [100.0, 140.0, 170.0].map(|high| Seen::gauges(86.0, low, high)));
    of_every_kind(each, |answer| {
        let low_charge = answer.probability_of(&[Fault::Undercharge]);
        (answer.probability_of(&SHUT) < low_charge).then(|| leaders(answer))
    });
}

#[test]
#[ignore = "not met: in both simulators a restriction before the port lowers the high side or trips the cut-out"]
fn a_low_low_side_against_a_high_high_side_may_be_a_restriction() {
    let each = [5.0, 10.0]
        .into_iter()
        .flat_map(|low| [300.0, 330.0].map(|high| Seen::gauges(86.0, low, high)));
    of_every_kind(each, |answer| {
        let first = answer.faults.iter().take(2);
        (!first.into_iter().any(|ranked| SHUT.contains(&ranked.fault))).then(|| leaders(answer))
    });
}

#[test]
fn equal_sides_at_saturation_are_a_compressor_that_does_not_pump() {
    let each = [75.0, 90.0, 100.0].map(|ambient_f| {
        let low = saturated(ambient_f - 3.0);
        Seen::gauges(ambient_f, low, low + 1.0)
    });
    of_every_kind(each, |answer| {
        let names = [Fault::ClutchNotEngaged, Fault::WornCompressor];
        (!names.contains(&answer.faults[0].fault)).then(|| leaders(answer))
    });
}

#[test]
fn equal_sides_far_below_saturation_are_a_system_that_is_nearly_empty() {
    let each = [75.0, 90.0]
        .into_iter()
        .flat_map(|ambient_f| [8.0, 20.0, 30.0].map(|low| Seen::gauges(ambient_f, low, low + 1.0)));
    of_every_kind(each, |answer| {
        let misled = answer.probability_of(&[Fault::GaugeError]);
        (place(answer, Fault::Undercharge) > 0 || misled > 0.9).then(|| leaders(answer))
    });
}

#[test]
fn a_high_side_at_nought_is_a_hose_that_is_shut() {
    let each = [80.0, 90.0].map(|ambient_f| Seen::gauges(ambient_f, 40.0, 0.0));
    of_every_kind(each, |answer| {
        let shut = matches!(answer.entry_error, Some((EntryError::HighHoseShut, _)));
        (!shut || place(answer, Fault::GaugeError) > 0).then(|| leaders(answer))
    });
}

/// Middles of the bands that makers print for passenger cars.
#[test]
fn sound_cars_are_not_led_by_a_fault_above_four_tenths() {
    let each = [
        (60.0, 25.0, 115.0),
        (70.0, 28.0, 140.0),
        (80.0, 32.0, 175.0),
        (90.0, 38.0, 215.0),
        (100.0, 42.0, 255.0),
        (105.0, 45.0, 280.0),
    ]
    .map(|(ambient_f, low, high)| Seen::gauges(ambient_f, low, high));
    of_every_kind(each, |answer| {
        let first = answer.faults[0];
        (first.fault != Fault::NoFault && first.probability > 0.4).then(|| leaders(answer))
    });
}
