//! Every row of tests/cases through the Rust door; the C and Python doors run the same files.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::LeakPhase;
use coldloop::air::{self, MoistAir};
use coldloop::circuit::{Reading, at_rest, subcooling, superheat};
use coldloop::saturation::{self, Charge, Shares, State};
use coldloop::saturation::{bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use coldloop::units::{
    AbsolutePressure, Density, GaugePressure, InSi, Measurable, Pressure, PressureDifference, SpecificEnergy,
    Surroundings, absolute_pressure_pa, gauge_pressure_pa, in_kelvins, kelvins, kelvins_difference,
};
use coldloop::units::{standard_altitude_m, standard_pressure_pa};
use coldloop::{Error, Reference, Refrigerant};
use std::path::Path;

#[test]
fn every_case_has_its_status_and_bits() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/functions.csv");
    let mut count = 0;
    for row in csv::Reader::from_path(file).unwrap().records() {
        let row = row.unwrap();
        let [function, refrigerant, x, y, status, bits] = [0, 1, 2, 3, 4, 5].map(|column| row[column].to_string());
        let x: f64 = x.parse().unwrap();
        let y: f64 = if y.is_empty() { f64::NAN } else { y.parse().unwrap() };
        let found = match call(&function, Refrigerant::from_id(&refrigerant), x, y) {
            Ok(value) => ("0".to_string(), format!("{:016x}", value.to_bits())),
            Err(error) => (error.kind.code().to_string(), String::new()),
        };
        assert_eq!(found, (status, bits), "{row:?}");
        count += 1;
    }
    assert!(count > 100, "{count} cases");
}

fn call(function: &str, refrigerant: Option<Refrigerant>, x: f64, y: f64) -> Result<f64, Error> {
    match (function, refrigerant) {
        ("standard_pressure", None) => standard_pressure_pa(x),
        ("standard_temperature", None) => air::standard_temperature_k(x),
        ("standard_density", None) => air::standard_density_kg_m3(x),
        ("standard_altitude", None) => standard_altitude_m(x),
        ("water_boiling_point", None) => air::water_boiling_point_k(x),
        ("water_saturation_pressure", None) => air::water_saturation_pressure_pa(x),
        ("enhancement_factor", None) => air::enhancement_factor(x, y),
        ("saturation_slope", Some(refrigerant)) => saturation::slope_pa_k(refrigerant, x),
        ("latent_heat", Some(refrigerant)) => saturation::latent_heat_j_kg(refrigerant, x),
        ("absolute_pressure", None) => absolute_pressure_pa(x, y),
        ("gauge_pressure", None) => gauge_pressure_pa(x, y),
        ("bubble_slope", Some(refrigerant)) => saturation::bubble_slope_pa_k(refrigerant, x),
        ("glide", Some(refrigerant)) => saturation::glide_k(refrigerant, x),
        ("second_virial", Some(refrigerant)) => {
            saturation::pure(refrigerant).and_then(|pure| pure.second_virial_m3_mol(x))
        }
        ("third_virial", Some(refrigerant)) => {
            saturation::pure(refrigerant).and_then(|pure| pure.third_virial_m6_mol2(x))
        }
        ("evaporating_mean", Some(refrigerant)) => {
            let mean = refrigerant.evaporating_mean(AbsolutePressure::from_pa(x), y);
            mean.map(in_kelvins)
        }
        ("evaporating_mean_ph", Some(refrigerant)) => {
            let enthalpy = SpecificEnergy::from_j_kg(y);
            let mean = refrigerant.evaporating_mean_ph(AbsolutePressure::from_pa(x), enthalpy, Reference::Iir);
            mean.map(in_kelvins)
        }
        ("viscosity", Some(refrigerant)) => {
            let state = saturation::line_of(refrigerant).state_tp(x, y, Reference::Iir)?;
            Ok(refrigerant.viscosity(&state)?.pa_s())
        }
        ("conductivity", Some(refrigerant)) => {
            let state = saturation::line_of(refrigerant).state_tp(x, y, Reference::Iir)?;
            Ok(refrigerant.conductivity(&state)?.w_m_k())
        }
        ("saturated_viscosity", Some(refrigerant)) => {
            let state = saturation::line_of(refrigerant).state_tq(x, y, Reference::Iir)?;
            Ok(refrigerant.viscosity(&state)?.pa_s())
        }
        ("saturated_conductivity", Some(refrigerant)) => {
            let state = saturation::line_of(refrigerant).state_tq(x, y, Reference::Iir)?;
            Ok(refrigerant.conductivity(&state)?.w_m_k())
        }
        ("surface_tension", Some(refrigerant)) => coldloop::transport::surface_tension_n_m(refrigerant, x),
        ("bubble_pressure", Some(refrigerant)) => bubble_pressure_pa(refrigerant, x),
        ("dew_pressure", Some(refrigerant)) => dew_pressure_pa(refrigerant, x),
        ("bubble_temperature", Some(refrigerant)) => bubble_temperature_k(refrigerant, x),
        ("dew_temperature", Some(refrigerant)) => dew_temperature_k(refrigerant, x),
        ("superheat", Some(refrigerant)) => {
            superheat(refrigerant, exact(kelvins(x)), absolute(y), Surroundings::SEA_LEVEL).map(|k| k.si().value)
        }
        ("subcooling", Some(refrigerant)) => {
            subcooling(refrigerant, exact(kelvins(x)), absolute(y), Surroundings::SEA_LEVEL).map(|k| k.si().value)
        }
        _ => panic!("{function} with {refrigerant:?} is not a case"),
    }
}

#[test]
fn every_state_has_its_status_and_bits() {
    let mut count = 0;
    for row in csv::Reader::from_path("tests/cases/states.csv").unwrap().records() {
        let row = row.unwrap();
        let refrigerant = Refrigerant::from_id(&row[1]).unwrap();
        let reference = Reference::from_id(&row[2]).unwrap();
        let [x, y] = [3, 4].map(|column| row[column].parse::<f64>().unwrap());
        let found = match state(&row[0], refrigerant, x, y, reference) {
            Ok(state) => told(&format!("0,{}", state.phase.code()), &figures(&state)),
            Err(error) => format!("{},{}", error.kind.code(), ",".repeat(10)),
        };
        assert_eq!(found, row.iter().skip(5).collect::<Vec<_>>().join(","), "{row:?}");
        count += 1;
    }
    assert!(count > 1_000, "{count} cases");
}

fn state(pair: &str, refrigerant: Refrigerant, x: f64, y: f64, reference: Reference) -> Result<State, Error> {
    let line = saturation::line_of(refrigerant);
    match pair {
        "tp" => line.state_tp(x, y, reference),
        "td" => line.state_t_rho(x, y / line.molar_mass(), reference),
        "tq" => line.state_tq(x, y, reference),
        "pq" => line.state_pq(x, y, reference),
        "ph" => line.state_ph(x, y, reference),
        "ps" => line.state_ps(x, y, reference),
        "hs" => line.state_hs(x, y, reference),
        "superheated_liquid" => line.superheated_liquid(x, y, reference),
        "subcooled_vapour" => line.subcooled_vapour(x, y, reference),
        _ => panic!("{pair} is not a pair"),
    }
}

fn figures(state: &State) -> [f64; 10] {
    [
        state.quality.unwrap_or(f64::NAN),
        in_kelvins(state.temperature()),
        state.pressure().pa(),
        state.density().kg_m3(),
        state.enthalpy().j_kg(),
        state.entropy().j_kg_k(),
        state.internal_energy().j_kg(),
        state.response.map_or(f64::NAN, |r| r.cv.j_kg_k()),
        state.response.map_or(f64::NAN, |r| r.cp.j_kg_k()),
        state.response.map_or(f64::NAN, |r| r.speed_of_sound.m_s()),
    ]
}

#[test]
fn all_moist_air_has_its_status_and_bits() {
    let mut count = 0;
    for row in csv::Reader::from_path("tests/cases/moist_air.csv").unwrap().records() {
        let row = row.unwrap();
        let [t_k, p_pa, x] = [1, 2, 3].map(|column| row[column].parse::<f64>().unwrap());
        let found = match moist_air(&row[0], t_k, p_pa, x) {
            Ok(figures) => told("0", &figures),
            Err(error) => format!("{},{}", error.kind.code(), ",".repeat(7)),
        };
        assert_eq!(found, row.iter().skip(4).collect::<Vec<_>>().join(","), "{row:?}");
        count += 1;
    }
    assert!(count > 500, "{count} cases");
}

fn moist_air(humidity: &str, t_k: f64, p_pa: f64, x: f64) -> Result<[f64; 8], Error> {
    let air = match humidity {
        "relative_humidity" => MoistAir::from_relative_humidity(t_k, p_pa, x),
        "humidity_ratio" => MoistAir::from_humidity_ratio(t_k, p_pa, x),
        "dew_point_k" => MoistAir::from_dew_point(t_k, p_pa, x),
        "wet_bulb_k" => MoistAir::from_wet_bulb(t_k, p_pa, x),
        _ => panic!("{humidity} is not a humidity"),
    }?;
    Ok([
        air.humidity_ratio(),
        air.relative_humidity(),
        air.dew_point_k().unwrap_or(f64::NAN),
        air.wet_bulb_k()?,
        air.vapour_pressure_pa(),
        air.enthalpy_j_kg(),
        air.volume_m3_kg(),
        air.density_kg_m3(),
    ])
}

#[test]
fn every_charge_has_its_status_and_bits() {
    let mut count = 0;
    for row in csv::Reader::from_path("tests/cases/charges.csv").unwrap().records() {
        let row = row.unwrap();
        let numbers = [2, 3, 4].map(|column| row[column].parse::<f64>().unwrap_or(f64::NAN));
        let found = match charge(&row[1]).and_then(|charge| charge_figures(&row[0], &charge, numbers)) {
            Ok(figures) => told("0", &figures),
            Err(error) => format!("{},{}", error.kind.code(), ",".repeat(10)),
        };
        assert_eq!(found, row.iter().skip(5).collect::<Vec<_>>().join(","), "{row:?}");
        count += 1;
    }
    assert!(count > 300, "{count} cases");
}

fn charge(text: &str) -> Result<Charge, Error> {
    let words: Vec<&str> = text.split(' ').collect();
    let (mut parts, mut air) = (Vec::new(), 0.0);
    for pair in words.chunks(2) {
        match Refrigerant::from_id(pair[0]) {
            Some(refrigerant) => parts.push((refrigerant, pair[1].parse().unwrap())),
            None => air = pair[1].parse().unwrap(),
        }
    }
    Charge::new(&parts, air)
}

fn charge_figures(call: &str, charge: &Charge, [x, y, z]: [f64; 3]) -> Result<[f64; 11], Error> {
    let mut figures = [f64::NAN; 11];
    let leaked = |leak_phase| charge.leaked(kelvins(x), Density::from_kg_m3(y), leak_phase, z);
    let left = match call {
        "bubble_pressure" => return Ok(first(charge.bubble_pressure(kelvins(x))?.pa())),
        "dew_pressure" => return Ok(first(charge.dew_pressure(kelvins(x))?.pa())),
        "bubble_temperature" => {
            return Ok(first(in_kelvins(
                charge.bubble_temperature(AbsolutePressure::from_pa(x))?,
            )));
        }
        "dew_temperature" => return Ok(first(in_kelvins(charge.dew_temperature(AbsolutePressure::from_pa(x))?))),
        "split" => {
            let phase_split = charge.split(kelvins(x), AbsolutePressure::from_pa(y))?;
            figures[0] = phase_split.density.kg_m3();
            if let (Some(liquid), Some(vapour)) = (phase_split.liquid, phase_split.vapour) {
                let one = |shares: &Shares| shares.refrigerants().next().unwrap().1;
                figures[1..4].copy_from_slice(&[phase_split.quality.unwrap(), liquid.0.kg_m3(), vapour.0.kg_m3()]);
                figures[4..8].copy_from_slice(&[one(&liquid.1), one(&vapour.1), liquid.1.air(), vapour.1.air()]);
            }
            return Ok(figures);
        }
        "leaked_vapour" => leaked(LeakPhase::Vapour)?,
        "leaked_liquid" => leaked(LeakPhase::Liquid)?,
        _ => panic!("{call} is not a call"),
    };
    (figures[0], figures[1]) = (left.pressure.pa(), f64::from(u8::from(left.has_liquid)));
    figures[2..].fill(0.0);
    for (figure, (_, share)) in figures[2..].iter_mut().zip(left.shares.refrigerants()) {
        *figure = share;
    }
    figures[10] = left.shares.air();
    Ok(figures)
}

const fn first(figure: f64) -> [f64; 11] {
    let mut figures = [f64::NAN; 11];
    figures[0] = figure;
    figures
}

#[test]
fn every_pressure_at_rest_has_its_status_and_bits() {
    let mut count = 0;
    for row in csv::Reader::from_path("tests/cases/rest.csv").unwrap().records() {
        let row = row.unwrap();
        let refrigerant = Refrigerant::from_id(&row[0]).unwrap();
        let [pa, uncertainty_pa, t_k, uncertainty_k] = [1, 2, 4, 5].map(|column| row[column].parse::<f64>().unwrap());
        let reading = |value, uncertainty_pa| Reading {
            value,
            standard_uncertainty: PressureDifference::from_pa(uncertainty_pa),
        };
        let found = match row[3].parse() {
            Err(_) => Ok((AbsolutePressure::from_pa(pa).into(), Surroundings::SEA_LEVEL)),
            Ok(air) => Surroundings::measured(AbsolutePressure::from_pa(air))
                .map(|air| (GaugePressure::from_pa(pa).into(), air)),
        }
        .and_then(|(pressure, air)| {
            let temperature = Reading {
                value: kelvins(t_k),
                standard_uncertainty: kelvins_difference(uncertainty_k),
            };
            at_rest(refrigerant, reading(pressure, uncertainty_pa), temperature, air)
        });
        let found = match found {
            Ok(found) => {
                let (excess, above) = (found.excess.si(), found.above_dew.si());
                let figures = [
                    excess.value,
                    excess.standard_uncertainty,
                    above.value,
                    above.standard_uncertainty,
                ];
                let share = told("", &[found.gas_share]);
                told(&format!("0,{}", found.pressure_match.code()), &figures) + &share
            }
            Err(error) => format!("{},,,,,,", error.kind.code()),
        };
        assert_eq!(found, row.iter().skip(6).collect::<Vec<_>>().join(","), "{row:?}");
        count += 1;
    }
    assert!(count > 300, "{count} cases");
}

/// The columns of an answer as the tables write them: bits, or `nan` for a figure that is missing.
fn told(head: &str, figures: &[f64]) -> String {
    let bits = figures.iter().map(|x| match x.is_nan() {
        true => "nan".to_string(),
        false => format!("{:016x}", x.to_bits()),
    });
    std::iter::once(head.to_string())
        .chain(bits)
        .collect::<Vec<_>>()
        .join(",")
}

fn absolute(pa: f64) -> Reading<Pressure> {
    exact(Pressure::Absolute(AbsolutePressure::from_pa(pa)))
}

fn exact<Q: Measurable>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(0.0),
    }
}
