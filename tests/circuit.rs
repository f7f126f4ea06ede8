//! What follows from readings: against hand calculation, worked examples and another library.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

#[path = "shared/readings.rs"]
mod readings;

use approx::assert_relative_eq;
use coldloop::circuit::{Derived, Estimate, Gauge, Reading, Readings, subcooling, superheat};
use coldloop::units::{
    AbsolutePressure, GaugePressure, InSi, PressureDifference, Surroundings, celsius, in_kelvins, kelvins,
    kelvins_difference,
};
use coldloop::{Error, ErrorKind, Quantity, Refrigerant, Thermometer};
use proptest::prelude::*;
use readings::{FIGURES, gauge, healthy, line};

fn derived(readings: &Readings) -> Derived {
    Derived::new(Refrigerant::R134a, readings, Surroundings::SEA_LEVEL, Some(line(24.0))).unwrap()
}

fn value<Q: InSi>(estimate: Option<Estimate<Q>>) -> f64 {
    estimate.unwrap().si().value
}

/// Saturation of R-134a: ASHRAE Handbook - Fundamentals, ch. 30 (from memory): 0.2928 MPa at 0 °C, 1.0166 MPa at 40 °C.
#[test]
fn saturation_temperatures_are_those_of_the_tables() {
    let absolute = |mpa: f64| {
        Some(Reading::within(
            AbsolutePressure::from_pa(mpa * 1e6).into(),
            PressureDifference::from_pa(0.0),
        ))
    };
    let d = derived(&Readings {
        low_side: absolute(0.2928),
        high_side: absolute(1.0166),
        ..healthy()
    });
    // half a digit of the printed pressures
    assert_relative_eq!(value(d.low_dew), 273.15, epsilon = 0.01);
    assert_relative_eq!(value(d.high_bubble), 313.15, epsilon = 0.01);
    assert_relative_eq!(value(d.superheat), 12.0, epsilon = 0.01);
    assert_relative_eq!(value(d.subcooling), -2.0, epsilon = 0.01);
}

#[test]
fn figures_are_differences_of_readings_and_saturation() {
    let d = derived(&healthy());
    assert_relative_eq!(value(d.low_side), 342_643.0, max_relative = 1e-5); // (35 + 14.696) psi
    assert_relative_eq!(value(d.pressure_ratio), 189.696 / 49.696, max_relative = 1e-5);
    assert_relative_eq!(
        value(d.superheat),
        in_kelvins(celsius(12.0)) - value(d.low_dew),
        epsilon = 1e-12
    );
    assert_relative_eq!(value(d.subcooling), value(d.high_bubble) - 315.15, epsilon = 1e-12);
    assert_relative_eq!(
        value(d.discharge_superheat),
        345.15 - value(d.high_dew),
        epsilon = 1e-12
    );
    assert_relative_eq!(
        value(d.condensing_above_ambient),
        value(d.high_dew) - 297.15,
        epsilon = 1e-12
    );
    assert_relative_eq!(
        value(d.vent_above_evaporating),
        279.15 - value(d.low_dew),
        epsilon = 1e-12
    );
}

/// Cengel & Boles, example 11-2: R-134a enters the compressor at 0.14 MPa and -10 °C (246.36 kJ/kg), leaves it at
/// 0.8 MPa and 50 °C (286.69 kJ/kg) and the condenser at 0.72 MPa and 26 °C (87.83 kJ/kg); isentropic efficiency 93.9 %
/// (284.21 kJ/kg). The book counts the liquid as saturated.
#[test]
fn cooling_and_efficiency_are_those_of_cengel_and_boles() {
    let absolute = |mpa: f64| {
        Some(Reading::within(
            AbsolutePressure::from_pa(mpa * 1e6).into(),
            PressureDifference::from_pa(0.0),
        ))
    };
    let exact = |t_c: f64| Some(Reading::within(celsius(t_c), kelvins_difference(0.0)));
    let mut readings = Readings {
        low_side: absolute(0.14),
        high_side: absolute(0.72),
        suction_line: exact(-10.0),
        liquid_line: exact(26.0),
        ..Readings::default()
    };
    assert_relative_eq!(
        value(derived(&readings).cooling),
        246_360.0 - 87_830.0,
        max_relative = 1e-3
    );
    readings.high_side = absolute(0.8);
    readings.discharge_line = exact(50.0);
    assert_relative_eq!(value(derived(&readings).isentropic_efficiency), 0.939, epsilon = 2e-3);
}

/// CoolProp 8.0.0, with the same equations of state, by the definitions of the figures.
#[test]
fn figures_are_those_of_coolprop() {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path("tests/data/circuit.csv")
        .unwrap();
    let mut rows = 0;
    for row in reader.records() {
        let row = row.unwrap();
        let number = |column: usize| row[column].parse::<f64>().unwrap();
        let pressure = |column| {
            Some(Reading::within(
                AbsolutePressure::from_pa(number(column)).into(),
                PressureDifference::from_pa(0.0),
            ))
        };
        let temperature = |column| Some(Reading::within(kelvins(number(column)), kelvins_difference(0.0)));
        let readings = Readings {
            low_side: pressure(1),
            high_side: pressure(2),
            suction_line: temperature(3),
            discharge_line: temperature(4),
            liquid_line: temperature(5),
            ..Readings::default()
        };
        let refrigerant = Refrigerant::from_id(&row[0]).unwrap();
        let d = Derived::new(refrigerant, &readings, Surroundings::SEA_LEVEL, None).unwrap();
        // differences of temperatures near 300 K, each good to a few units in the last place
        assert_relative_eq!(value(d.superheat), number(6), epsilon = 1e-9);
        assert_relative_eq!(value(d.subcooling), number(7), epsilon = 1e-9);
        assert_relative_eq!(value(d.discharge_superheat), number(8), epsilon = 1e-9);
        assert_relative_eq!(value(d.cooling), number(9), max_relative = 1e-9);
        // the isentropic state is solved to 1e-5 J/(kg K), 3 mJ in 30 kJ
        assert_relative_eq!(value(d.isentropic_efficiency), number(10), max_relative = 1e-6);
        rows += 1;
    }
    assert_eq!(rows, 36);
}

/// R-1234yf is above its critical temperature, 94.7 °C, in a hot discharge line, and still a gas there.
#[test]
fn a_discharge_line_above_the_critical_temperature_has_an_efficiency() {
    let readings = Readings {
        discharge_line: Some(line(100.0)),
        ..healthy()
    };
    let d = Derived::new(Refrigerant::R1234yf, &readings, Surroundings::SEA_LEVEL, None).unwrap();
    let (hot, healthy) = (
        value(d.isentropic_efficiency),
        value(derived(&healthy()).isentropic_efficiency),
    );
    assert!(hot > 0.2 && hot < healthy, "{hot} {healthy}");
}

#[test]
fn a_reading_that_was_not_taken_leaves_its_figures_out() {
    let d = derived(&Readings {
        low_side: healthy().low_side,
        ..Readings::default()
    });
    assert!(d.low_dew.is_some() && d.low_bubble.is_some());
    assert_eq!(
        (d.pressure_ratio, d.superheat, d.subcooling, d.high_dew),
        (None, None, None, None)
    );
    assert_eq!((d.cooling, d.isentropic_efficiency), (None, None));
    // the condenser outlet stands in for the liquid line
    let outlet = Readings {
        liquid_line: None,
        condenser_outlet: healthy().liquid_line,
        ..healthy()
    };
    assert_eq!(derived(&outlet).subcooling, derived(&healthy()).subcooling);
}

#[test]
fn odd_figures_are_noted_and_impossible_readings_refused() {
    let air = Surroundings::SEA_LEVEL;
    let flooded = superheat(Refrigerant::R134a, line(0.0), gauge(35.0, Gauge::LOW_SIDE), air).unwrap();
    assert!(flooded.value < kelvins_difference(-4.0));
    let bubbly = subcooling(Refrigerant::R134a, line(55.0), gauge(175.0, Gauge::HIGH_SIDE), air).unwrap();
    assert!(bubbly.value < kelvins_difference(-5.0));
    assert_eq!(
        derived(&Readings {
            liquid_line: Some(line(55.0)),
            ..healthy()
        })
        .cooling,
        None
    );
    let refused = |readings: Readings| {
        let error = Derived::new(Refrigerant::R134a, &readings, air, None).unwrap_err();
        (error.kind, error.quantity)
    };
    let low = |psig| Readings {
        low_side: Some(gauge(psig, Gauge::LOW_SIDE)),
        ..Readings::default()
    };
    assert_eq!(refused(low(f64::NAN)), (ErrorKind::NotFinite, Quantity::GaugePressure));
    assert_eq!(refused(low(-14.8)), (ErrorKind::OutOfRange, Quantity::AbsolutePressure));
    assert_eq!(refused(low(-50.0)), (ErrorKind::OutOfRange, Quantity::GaugePressure));
    let hot = Readings {
        suction_line: Some(line(400.0)),
        ..Readings::default()
    };
    assert_eq!(refused(hot), (ErrorKind::OutOfRange, Quantity::Temperature));
    let sure = Readings {
        vent: Some(Reading {
            value: celsius(5.0),
            standard_uncertainty: kelvins_difference(-1.0),
        }),
        ..Readings::default()
    };
    assert_eq!(refused(sure), (ErrorKind::OutOfRange, Quantity::TemperatureDifference));
}

#[test]
fn a_deep_vacuum_and_a_supercritical_pressure_have_no_saturation_temperature() {
    let absolute = |pa: f64| {
        Some(Reading::within(
            AbsolutePressure::from_pa(pa).into(),
            PressureDifference::from_pa(0.0),
        ))
    };
    let d = derived(&Readings {
        low_side: absolute(50.0),
        high_side: absolute(5e6),
        ..healthy()
    });
    assert_eq!((d.low_dew, d.high_dew, d.superheat), (None, None, None));
    assert!(d.pressure_ratio.is_some());
    let error = superheat(
        Refrigerant::R134a,
        line(5.0),
        absolute(50.0).unwrap(),
        Surroundings::SEA_LEVEL,
    )
    .unwrap_err();
    assert_eq!(
        (error.kind, error.quantity),
        (ErrorKind::OutOfRange, Quantity::AbsolutePressure)
    );
    let d = derived(&Readings {
        low_side: absolute(0.0),
        ..healthy()
    });
    assert_eq!(d.pressure_ratio, None);
}

/// A sealed gauge that was zeroed at sea level and is read at 1,600 m is right with its own datum; without it the pressure is
/// off by 18 kPa, and the superheat accordingly.
#[test]
fn gauges_keep_the_datum_of_the_place_where_they_were_zeroed() {
    let garage = Surroundings::at_altitude(1_600.0).unwrap();
    let figures = |gauge_zero| {
        let readings = Readings {
            gauge_zero,
            ..healthy()
        };
        Derived::new(Refrigerant::R134a, &readings, garage, None).unwrap()
    };
    let (there, here) = (figures(Some(Surroundings::SEA_LEVEL)), figures(None));
    assert_eq!(there.low_side, derived(&healthy()).low_side);
    assert_relative_eq!(
        value(there.low_side) - value(here.low_side),
        17_792.0,
        max_relative = 1e-3
    );
    assert!(value(here.superheat) - value(there.superheat) > 1.5);
}

proptest! {
    /// Any readings give finite figures or a typed error.
    #[test]
    fn no_reading_breaks_the_figures(pa in [prop::num::f64::ANY; 2], t_k in [prop::num::f64::ANY; 3], near in any::<bool>()) {
        let pa = if near { pa.map(|x| x.sin() * 5e6) } else { pa };
        let t_k = if near { t_k.map(|x| 300.0 + 100.0 * x.cos()) } else { t_k };
        let readings = Readings {
            low_side: Some(Reading::pressure(GaugePressure::from_pa(pa[0]), Gauge::LOW_SIDE)),
            high_side: Some(Reading::pressure(AbsolutePressure::from_pa(pa[1]), Gauge::DIGITAL)),
            suction_line: Some(Reading::temperature(kelvins(t_k[0]), Thermometer::Infrared)),
            discharge_line: Some(Reading::temperature(kelvins(t_k[1]), Thermometer::PocketDial)),
            liquid_line: Some(Reading::temperature(kelvins(t_k[2]), Thermometer::ClampThermocouple)),
            ..Readings::default()
        };
        let result: Result<Derived, Error> = Derived::new(Refrigerant::R134a, &readings, Surroundings::SEA_LEVEL, None);
        if let Ok(d) = result {
            for (name, figure) in FIGURES {
                if let Some(estimate) = figure(&d) {
                    prop_assert!(estimate.value.is_finite() && estimate.standard_uncertainty >= 0.0, "{name}");
                }
            }
        }
    }
}
