//! What follows from readings is uncertain by what each reading moves it by.

use coldloop::circuit::{Derived, Estimate, FeatureVector, Reading, Readings};
use coldloop::units::{AbsolutePressure, Frequency, GaugePressure, InSi, Surroundings, celsius};
use coldloop::{Refrigerant, Thermometer};

/// Low and high side, Pa; suction, liquid and discharge line, vent and ambient, °C: a sound R-134a system.
const READ: [f64; 7] = [340_000.0, 1_300_000.0, 12.0, 42.0, 72.0, 6.0, 24.0];
/// How far each is moved, and how uncertain it is.
const MOVED: [f64; 7] = [2_000.0, 5_000.0, 0.3, 0.3, 0.3, 0.3, 0.3];

fn derived(read: [f64; 7], u: [f64; 7]) -> Derived {
    let pressure = |at: usize| {
        Some(Reading {
            value: AbsolutePressure::from_pa(read[at]).into(),
            standard_uncertainty: InSi::from_si(u[at]),
        })
    };
    let temperature = |at: usize| {
        Some(Reading {
            value: celsius(read[at]),
            standard_uncertainty: InSi::from_si(u[at]),
        })
    };
    let readings = Readings {
        low_side: pressure(0),
        high_side: pressure(1),
        suction_line: temperature(2),
        liquid_line: temperature(3),
        discharge_line: temperature(4),
        vent: temperature(5),
        ..Readings::default()
    };
    Derived::new(Refrigerant::R134a, &readings, Surroundings::SEA_LEVEL, temperature(6)).unwrap()
}

/// Propagation of first order: what one uncertain input adds to the variance is the square of the difference that moving it makes
/// (JCGM 100:2008, 5.1.2), for every figure and every input.
#[test]
fn every_input_adds_what_it_moves() {
    let figures: [fn(&Derived) -> Option<Estimate>; 11] = [
        |d| d.pressure_ratio,
        |d| d.low_dew.map(Estimate::si),
        |d| d.high_bubble.map(Estimate::si),
        |d| d.superheat.map(Estimate::si),
        |d| d.subcooling.map(Estimate::si),
        |d| d.discharge_superheat.map(Estimate::si),
        |d| d.condensing_above_ambient.map(Estimate::si),
        |d| d.vent_above_evaporating.map(Estimate::si),
        |d| d.cooling.map(Estimate::si),
        |d| d.isentropic_efficiency,
        |d| d.low_side.map(Estimate::si),
    ];
    let exact = derived(READ, [0.0; 7]);
    let mut moved = 0;
    for at in 0..READ.len() {
        let mut u = [0.0; 7];
        u[at] = MOVED[at];
        let unsure = derived(READ, u);
        let side = |sign: f64| {
            let mut read = READ;
            read[at] += sign * MOVED[at];
            derived(read, [0.0; 7])
        };
        let (low, high) = (side(-1.0), side(1.0));
        for (n, figure) in figures.iter().enumerate() {
            let of = |d: &Derived| figure(d).unwrap();
            let wanted = 0.5 * (of(&high).value - of(&low).value).abs();
            let (with, without) = (of(&unsure).standard_uncertainty, of(&exact).standard_uncertainty);
            let added = (with * with - without * without).max(0.0).sqrt();
            // Curvature is left out: 1 %.
            let allowed = 0.01 * wanted + 1e-4 * without.max(1e-9 * of(&exact).value.abs());
            assert!(
                (added - wanted).abs() <= allowed,
                "figure {n}, input {at}: {added} {wanted}"
            );
            moved += u32::from(wanted > 0.0);
        }
    }
    assert!(moved > 20, "{moved}");
}

/// Clutch cycles count as ln(1 + cycles a minute), whose uncertainty is that of the cycles over 1 + cycles.
#[test]
fn clutch_cycles_count_by_their_logarithm() {
    let readings = Readings {
        clutch_cycles: Some(Reading {
            value: Frequency::from_hz(0.05),
            standard_uncertainty: Frequency::from_hz(0.01),
        }),
        vent: Some(Reading::temperature(celsius(8.0), Thermometer::PocketDigital)),
        ..Readings::default()
    };
    let features = FeatureVector::of(Refrigerant::R134a, &readings, celsius(25.0), Surroundings::SEA_LEVEL).unwrap();
    let cycles = features.read[FeatureVector::COUNT - 1].unwrap();
    // Three a minute, and 0.6 a minute uncertain.
    assert!((cycles.value - 4f64.ln()).abs() < 1e-12, "{cycles:?}");
    assert!((cycles.standard_uncertainty - 0.6 / 4.0).abs() < 1e-12, "{cycles:?}");
}

/// A gauge and the vehicle's own transducer that agree are read as one, as deep into the scale as either.
#[test]
fn a_gauge_and_a_transducer_that_agree_are_one_reading() {
    let gauge = Reading {
        value: GaugePressure::from_pa(1_300_000.0).into(),
        standard_uncertainty: InSi::from_si(10_000.0),
    };
    let readings = Readings {
        high_side: Some(gauge),
        high_side_transducer: Some(Reading {
            value: AbsolutePressure::from_pa(1_401_325.0).into(),
            standard_uncertainty: InSi::from_si(10_000.0),
        }),
        ..Readings::default()
    };
    let told = Derived::new(Refrigerant::R134a, &readings, Surroundings::SEA_LEVEL, None).unwrap();
    let high = told.high_side.unwrap().si();
    assert!((high.value - 1_401_325.0).abs() < 1e-6, "{high:?}");
}

/// With exact readings the property model is left: 1 % of a difference of enthalpies, for R-134a (Tillner-Roth & Baehr 1994), and
/// √2 of that in a quotient of two; the saturation line is known as well as its publication states, which adds far less.
#[test]
fn exact_readings_leave_the_uncertainty_of_the_model() {
    let told = derived(READ, [0.0; 7]);
    let relative = |figure: Estimate| figure.standard_uncertainty / figure.value;
    let of_one = 0.01 / 3f64.sqrt();
    let cooling = relative(told.cooling.unwrap().si());
    assert!((cooling / of_one - 1.0).abs() < 0.01, "{cooling}");
    let efficiency = relative(told.isentropic_efficiency.unwrap());
    assert!((efficiency / (2f64.sqrt() * of_one) - 1.0).abs() < 0.01, "{efficiency}");
    let stated = Refrigerant::R134a.facts().saturation_uncertainty.unwrap();
    let dew = told.low_dew.unwrap().si().standard_uncertainty;
    let warmer = |pa: f64| {
        let mut read = READ;
        read[0] = pa;
        derived(read, [0.0; 7]).low_dew.unwrap().si().value
    };
    let by_line = 0.5 * (warmer(341_000.0) - warmer(339_000.0)) / 1_000.0 * stated * READ[0] / 3f64.sqrt();
    assert!((dew / by_line - 1.0).abs() < 0.01, "{dew} {by_line}");
}
