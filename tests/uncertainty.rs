//! How uncertain the readings are, and what follows from them: against the classes of the instruments, and against a
//! simulation.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

#[path = "shared/readings.rs"]
mod readings;

use approx::assert_relative_eq;
use coldloop::circuit::{Derived, Estimate, Gauge, Reading, Readings};
use coldloop::units::{
    AbsolutePressure, GaugePressure, Pressure, PressureDifference, Surroundings, Temperature, celsius,
    difference_in_kelvins, in_kelvins, kelvins,
};
use coldloop::{ErrorKind, GaugeClass, Refrigerant, Thermometer};
use proptest::prelude::*;
use proptest::test_runner::{RngAlgorithm, TestRng};
use readings::{FIGURES, healthy, line};

#[test]
fn limits_of_error_are_those_of_the_classes() {
    // EN 837-1: per cent of the span; ASME B40.100: the middle half of the scale is better than its outer quarters
    let scale = |class| Gauge::new(class, GaugePressure::from_pa(0.0), GaugePressure::from_pa(1_000_000.0)).unwrap();
    for (class, shown_pa, limit_pa) in [
        (GaugeClass::Class1, 100_000.0, 10_000.0),
        (GaugeClass::Class1p6, 100_000.0, 16_000.0),
        (GaugeClass::Class2p5, 900_000.0, 25_000.0),
        (GaugeClass::GradeA, 500_000.0, 10_000.0),
        (GaugeClass::GradeA, 100_000.0, 20_000.0),
        (GaugeClass::GradeB, 500_000.0, 20_000.0),
        (GaugeClass::GradeB, 800_000.0, 30_000.0),
        (GaugeClass::Digital, 800_000.0, 5_000.0),
    ] {
        let limit = scale(class).limit_of_error(GaugePressure::from_pa(shown_pa));
        assert_relative_eq!(limit.pa(), limit_pa, max_relative = 1e-14);
    }
    let one = GaugePressure::from_pa(5.0);
    assert_eq!(
        Gauge::new(GaugeClass::Class1, one, one).unwrap_err().kind,
        ErrorKind::OutOfRange
    );
    // IEC 60584-1:2013, type K, class 2: 2.5 K, above 333 °C 0.75 % of the Celsius temperature
    let limit_k = |c: f64| difference_in_kelvins(Thermometer::ClampThermocouple.limit_of_error(celsius(c)));
    assert_eq!(limit_k(80.0), 2.5);
    assert_relative_eq!(limit_k(400.0), 3.0, max_relative = 1e-12);
}

/// Readings moved at random within their instruments' limits, and the air's pressure with them.
struct Simulation {
    rng: TestRng,
}

impl Simulation {
    fn moved(&mut self, standard_uncertainty: f64) -> f64 {
        let limit = 3f64.sqrt() * standard_uncertainty;
        if limit > 0.0 {
            self.rng.random_range(-limit..limit)
        } else {
            0.0
        }
    }

    fn pressure(&mut self, reading: Option<Reading<Pressure>>) -> Option<Reading<Pressure>> {
        reading.map(|r| {
            let by_pa = self.moved(r.standard_uncertainty.pa());
            let value = match r.value {
                Pressure::Absolute(p) => AbsolutePressure::from_pa(p.pa() + by_pa).into(),
                Pressure::Gauge(p) => GaugePressure::from_pa(p.pa() + by_pa).into(),
            };
            Reading { value, ..r }
        })
    }

    fn temperature(&mut self, reading: Option<Reading<Temperature>>) -> Option<Reading<Temperature>> {
        reading.map(|r| {
            let value = kelvins(in_kelvins(r.value) + self.moved(difference_in_kelvins(r.standard_uncertainty)));
            Reading { value, ..r }
        })
    }
}

/// JCGM 101:2008: the spread of the figures when the readings are drawn at random is the propagated uncertainty. Twenty
/// thousand draws give a standard deviation to 0.5 %; the rest of the allowance is for curvature, which the first-order
/// rule leaves out. The property model is not drawn; its part is taken out of the comparison where it counts.
#[test]
fn propagated_uncertainty_is_that_of_a_simulation() {
    const DRAWS: usize = 20_000;
    let barometer = AbsolutePressure::from_kpa(84.0);
    let air = Surroundings::measured(barometer).unwrap();
    for (refrigerant, readings) in [
        (Refrigerant::R134a, healthy()),
        (
            Refrigerant::R1234yf,
            Readings {
                liquid_line: Some(line(38.0)),
                ..healthy()
            },
        ),
    ] {
        let ambient = Some(line(24.0));
        let stated = Derived::new(refrigerant, &readings, air, ambient).unwrap();
        let mut simulation = Simulation {
            rng: TestRng::deterministic_rng(RngAlgorithm::ChaCha),
        };
        let mut sums = [(0.0, 0.0); FIGURES.len()];
        for _ in 0..DRAWS {
            let drawn_air =
                AbsolutePressure::from_pa(barometer.pa() + simulation.moved(air.standard_uncertainty().pa()));
            let drawn = Readings {
                low_side: simulation.pressure(readings.low_side),
                high_side: simulation.pressure(readings.high_side),
                vent: simulation.temperature(readings.vent),
                suction_line: simulation.temperature(readings.suction_line),
                discharge_line: simulation.temperature(readings.discharge_line),
                liquid_line: simulation.temperature(readings.liquid_line),
                ..readings
            };
            let drawn_ambient = simulation.temperature(ambient);
            let surroundings = Surroundings::measured(drawn_air).unwrap();
            let d = Derived::new(refrigerant, &drawn, surroundings, drawn_ambient).unwrap();
            for ((_, figure), (sum, squares)) in FIGURES.iter().zip(&mut sums) {
                // from the stated value, so that squares keep their digits
                let off = figure(&d).unwrap().value - figure(&stated).unwrap().value;
                *sum += off;
                *squares += off * off;
            }
        }
        for ((name, figure), (sum, squares)) in FIGURES.iter().zip(sums) {
            let mean = sum / DRAWS as f64;
            let spread = (squares / DRAWS as f64 - mean * mean).sqrt();
            let Estimate {
                value,
                standard_uncertainty,
            } = figure(&stated).unwrap();
            let model = match *name {
                "cooling" => 0.01 / 3f64.sqrt() * value,
                "isentropic efficiency" => 2f64.sqrt() * 0.01 / 3f64.sqrt() * value,
                _ => 0.0,
            };
            let instruments = (standard_uncertainty * standard_uncertainty - model * model).sqrt();
            assert_relative_eq!(instruments, spread, max_relative = 0.02);
            assert!(mean.abs() < 0.1 * spread, "{refrigerant} {name}: {mean} {spread}");
        }
    }
}

/// The pressure of the air moves both sides at once: with that correlation the ratio is less uncertain than without it.
#[test]
fn what_two_figures_share_cancels_in_their_difference() {
    let absolute = |pa: f64| {
        Some(Reading::within(
            GaugePressure::from_pa(pa).into(),
            PressureDifference::from_pa(0.0),
        ))
    };
    let same = Readings {
        low_side: absolute(500_000.0),
        high_side: absolute(500_000.0),
        ..Readings::default()
    };
    let d = Derived::new(Refrigerant::R134a, &same, Surroundings::SEA_LEVEL, None).unwrap();
    assert_eq!(
        d.pressure_ratio,
        Some(Estimate {
            value: 1.0,
            standard_uncertainty: 0.0
        })
    );
    assert!(d.low_side.map(Estimate::si).unwrap().standard_uncertainty > 600.0);
}
