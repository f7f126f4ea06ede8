//! `tests/cases`: inputs as text, and the status and bits that every door has to give for them.
//!
//! `functions.csv` holds the functions from one or two numbers to one, `states.csv` states from every pair, `moist_air.csv`
//! moist air from each of its humidities; `charges.csv` and `rest.csv` are written by `charge_cases`.
//!
//! The tables hold the answers of this build of the crate. They say nothing about their truth (the other tests do);
//! they say that Rust, C and Python agree to the bit, on this machine and on the one that wrote the tables.

use coldloop::air::{self, MoistAir};
use coldloop::circuit::{Reading, subcooling, superheat};
use coldloop::saturation::Side;
use coldloop::saturation::{self, Line, Pure, State};
use coldloop::saturation::{bubble_pressure_pa, bubble_temperature_k, dew_pressure_pa, dew_temperature_k};
use coldloop::units::{
    AbsolutePressure, InSi, Measurable, Pressure, Surroundings, absolute_pressure_pa, gauge_pressure_pa, in_kelvins,
    kelvins,
};
use coldloop::units::{standard_altitude_m, standard_pressure_pa};
use coldloop::{Error, Reference, Refrigerant, transport};
use tables_names::Output;

const HEAD: &str = "function,refrigerant,x,y,status,bits\n";

/// Numbers that no physical quantity is.
pub(crate) const ABSURD: [&str; 8] = ["nan", "inf", "-inf", "0", "-1", "5e-324", "1e308", "-1e300"];

/// Writes `tests/cases`.
pub(crate) fn compile(out: &mut Output) -> Result<(), String> {
    out.text("tests/cases/functions.csv", &functions()?)?;
    out.text("tests/cases/states.csv", &states()?)?;
    out.text("tests/cases/moist_air.csv", &moist_air()?)
}

fn functions() -> Result<String, String> {
    let mut table = String::from(HEAD);
    for x in steps(-600.0, 9_100.0, 37) {
        let altitude_m = number(&x)?;
        table += &row("standard_pressure", "", &x, "", standard_pressure_pa(altitude_m));
        let t_k = air::standard_temperature_k(altitude_m);
        table += &row("standard_temperature", "", &x, "", t_k);
        table += &row("standard_density", "", &x, "", air::standard_density_kg_m3(altitude_m));
    }
    for (gauge, air) in pairs(&steps(-101_325.0, 4e6, 13), &steps(27_000.0, 113_000.0, 5)) {
        table += &row(
            "absolute_pressure",
            "",
            &gauge,
            &air,
            absolute_pressure_pa(number(&gauge)?, number(&air)?),
        );
        let absolute = gauge_pressure_pa(number(&gauge)?, number(&air)?);
        table += &row("gauge_pressure", "", &gauge, &air, absolute);
    }
    for x in steps(1.0, 120_000.0, 37) {
        let p_pa = number(&x)?;
        table += &row("standard_altitude", "", &x, "", standard_altitude_m(p_pa));
        table += &row("water_boiling_point", "", &x, "", air::water_boiling_point_k(p_pa));
    }
    for x in steps(170.0, 480.0, 37) {
        let t_k = number(&x)?;
        let p_pa = air::water_saturation_pressure_pa(t_k);
        table += &row("water_saturation_pressure", "", &x, "", p_pa);
    }
    for (t, p) in pairs(&steps(200.0, 380.0, 7), &steps(27_000.0, 113_000.0, 5)) {
        let factor = air::enhancement_factor(number(&t)?, number(&p)?);
        table += &row("enhancement_factor", "", &t, &p, factor);
    }
    for refrigerant in Refrigerant::ALL {
        let name = refrigerant.id();
        for x in steps(100.0, 460.0, 41) {
            let t_k = number(&x)?;
            let slope = saturation::slope_pa_k(refrigerant, t_k);
            table += &row("saturation_slope", name, &x, "", slope);
            let latent = saturation::latent_heat_j_kg(refrigerant, t_k);
            table += &row("latent_heat", name, &x, "", latent);
            table += &row("bubble_pressure", name, &x, "", bubble_pressure_pa(refrigerant, t_k));
            table += &row("dew_pressure", name, &x, "", dew_pressure_pa(refrigerant, t_k));
        }
        for x in steps(300.0, 7_500_000.0, 41) {
            let p_pa = number(&x)?;
            table += &row(
                "bubble_temperature",
                name,
                &x,
                "",
                bubble_temperature_k(refrigerant, p_pa),
            );
            table += &row("dew_temperature", name, &x, "", dew_temperature_k(refrigerant, p_pa));
        }
    }
    for refrigerant in Refrigerant::ALL {
        let (name, line) = (refrigerant.id(), saturation::line_of(refrigerant));
        for x in steps(150.0, 460.0, 13) {
            let t_k = number(&x)?;
            table += &row(
                "bubble_slope",
                name,
                &x,
                "",
                saturation::bubble_slope_pa_k(refrigerant, t_k),
            );
            for (function, coefficient) in VIRIALS {
                table += &row(
                    function,
                    name,
                    &x,
                    "",
                    line.pure().and_then(|pure| coefficient(pure, t_k)),
                );
            }
        }
        for x in steps(20_000.0, 5_000_000.0, 7) {
            let p_pa = number(&x)?;
            table += &row("glide", name, &x, "", saturation::glide_k(refrigerant, p_pa));
            for y in ["0.0", "0.3", "1.0", "1.5", "nan"] {
                let mean = line.evaporating_mean_pq(p_pa, number(y)?);
                table += &row("evaporating_mean", name, &x, y, mean);
            }
            for y in ["100000.0", "250000.0", "500000.0", "inf"] {
                let mean = line.evaporating_mean_ph(p_pa, number(y)?, Reference::Iir);
                table += &row("evaporating_mean_ph", name, &x, y, mean);
            }
        }
    }
    table += &transport_cases()?;
    for (line, pressure) in pairs(&steps(190.0, 475.0, 9), &steps(50_000.0, 4e6, 9)) {
        for refrigerant in Refrigerant::ALL {
            let (name, line_k, pa) = (refrigerant.id(), number(&line)?, number(&pressure)?);
            let line_reading = exact(kelvins(line_k));
            let absolute = exact(Pressure::Absolute(AbsolutePressure::from_pa(pa)));
            let heated = superheat(refrigerant, line_reading, absolute, Surroundings::SEA_LEVEL);
            table += &row(
                "superheat",
                name,
                &line,
                &pressure,
                heated.map(|estimate| estimate.si().value),
            );
            let cooled = subcooling(refrigerant, line_reading, absolute, Surroundings::SEA_LEVEL);
            table += &row(
                "subcooling",
                name,
                &line,
                &pressure,
                cooled.map(|estimate| estimate.si().value),
            );
        }
    }
    Ok(table)
}

/// Viscosity and conductivity at temperature and pressure, and of the saturated liquid and vapour; surface tension.
fn transport_cases() -> Result<String, String> {
    type Property = fn(Refrigerant, &State) -> Result<f64, Error>;
    const PROPERTIES: [(&str, Property); 2] = [
        ("viscosity", transport::viscosity_pa_s),
        ("conductivity", transport::conductivity_w_m_k),
    ];
    let mut table = String::new();
    for refrigerant in Refrigerant::ALL {
        let (name, line) = (refrigerant.id(), saturation::line_of(refrigerant));
        for (property, function) in PROPERTIES {
            for (x, y) in pairs(&steps(190.0, 475.0, 7), &steps(50_000.0, 9e6, 4)) {
                let state = line.state_tp(number(&x)?, number(&y)?, Reference::Iir);
                table += &row(
                    property,
                    name,
                    &x,
                    &y,
                    state.and_then(|state| function(refrigerant, &state)),
                );
            }
            for (x, y) in pairs(
                &steps(190.0, 420.0, 5),
                &["0.0".to_string(), "0.5".to_string(), "1.0".to_string()],
            ) {
                let state = line.state_tq(number(&x)?, number(&y)?, Reference::Iir);
                let found = state.and_then(|state| function(refrigerant, &state));
                table += &row(&format!("saturated_{property}"), name, &x, &y, found);
            }
        }
        for x in steps(150.0, 420.0, 7) {
            table += &row(
                "surface_tension",
                name,
                &x,
                "",
                transport::surface_tension_n_m(refrigerant, number(&x)?),
            );
        }
    }
    Ok(table)
}

/// A virial coefficient, under the name that it has in the table.
type Virial = fn(&Pure, f64) -> Result<f64, Error>;

const VIRIALS: [(&str, Virial); 2] = [
    ("second_virial", Pure::second_virial_m3_mol),
    ("third_virial", Pure::third_virial_m6_mol2),
];

/// A pair of figures that fixes a state, under the name that it has in the table.
type Pair = fn(Line, f64, f64, Reference) -> Result<State, Error>;

const PAIRS: [(&str, Pair); 7] = [
    ("tp", Line::state_tp),
    ("td", |line, t_k, rho_kg_m3, reference| {
        line.state_t_rho(t_k, rho_kg_m3 / line.molar_mass(), reference)
    }),
    ("tq", Line::state_tq),
    ("pq", Line::state_pq),
    ("ph", Line::state_ph),
    ("ps", Line::state_ps),
    ("hs", Line::state_hs),
];

/// Metastable states of a temperature and pressure.
const METASTABLE: [(&str, Pair); 2] = [
    ("superheated_liquid", Line::superheated_liquid),
    ("subcooled_vapour", Line::subcooled_vapour),
];

/// A gas, a liquid, a fluid above its critical point, and boiling liquid, of every refrigerant by every pair; and what is
/// no state, of one refrigerant.
fn states() -> Result<String, String> {
    let mut table = String::from(
        "pair,refrigerant,reference,x,y,status,phase,quality,temperature_k,pressure_pa_abs,density_kg_m3,enthalpy_j_kg,\
         entropy_j_kg_k,internal_energy_j_kg,cv_j_kg_k,cp_j_kg_k,speed_of_sound_m_s\n",
    );
    let mut references = Reference::ALL.iter().cycle().copied();
    for refrigerant in Refrigerant::ALL {
        let line = saturation::line_of(refrigerant);
        let (t_c, p_c) = (line.critical_t_k(), line.critical_p_pa());
        for reference in references.by_ref().take(2) {
            let homogeneous = [(0.9, 0.05), (0.8, 1.1), (1.05, 1.5)]
                .iter()
                .filter_map(|(t, p)| line.state_tp(t * t_c, p * p_c, reference).ok());
            let boiling = line.state_tq(0.85 * t_c, 0.3, reference).ok();
            for state in homogeneous.chain(boiling) {
                for (name, pair) in PAIRS {
                    let quality = state.quality.unwrap_or(0.4);
                    let (x, y) = match name {
                        "tp" => (in_kelvins(state.temperature()), state.pressure().pa()),
                        "td" => (in_kelvins(state.temperature()), state.density().kg_m3()),
                        "tq" => (in_kelvins(state.temperature()), quality),
                        "pq" => (state.pressure().pa(), quality),
                        "ph" => (state.pressure().pa(), state.enthalpy().j_kg()),
                        "ps" => (state.pressure().pa(), state.entropy().j_kg_k()),
                        _ => (state.enthalpy().j_kg(), state.entropy().j_kg_k()),
                    };
                    let answer = pair(line, x, y, reference);
                    table += &state_row(
                        name,
                        refrigerant,
                        reference,
                        (&format!("{x:?}"), &format!("{y:?}")),
                        answer,
                    );
                }
            }
        }
    }
    for refrigerant in Refrigerant::ALL {
        let line = saturation::line_of(refrigerant);
        let t_k = 0.85 * line.critical_t_k();
        let p_pa = line.pressure_pa(Side::Bubble, t_k).map_err(|error| error.to_string())?;
        for (name, pair) in METASTABLE {
            for share in [0.95, 1.05, 1e-9] {
                let (x, y) = (format!("{t_k:?}"), format!("{:?}", share * p_pa));
                let answer = pair(line, t_k, share * p_pa, Reference::NormalBoilingPoint);
                table += &state_row(name, refrigerant, Reference::NormalBoilingPoint, (&x, &y), answer);
            }
        }
    }
    let line = saturation::line_of(Refrigerant::R134a);
    for (x, y) in pairs(&ABSURD.map(str::to_string), &ABSURD.map(str::to_string)) {
        for (name, pair) in PAIRS.into_iter().chain(METASTABLE) {
            let answer = pair(line, number(&x)?, number(&y)?, Reference::Iir);
            table += &state_row(name, Refrigerant::R134a, Reference::Iir, (&x, &y), answer);
        }
    }
    Ok(table)
}

fn state_row(
    pair: &str,
    refrigerant: Refrigerant,
    reference: Reference,
    (x, y): (&str, &str),
    answer: Result<State, Error>,
) -> String {
    let head = format!("{pair},{},{},{x},{y}", refrigerant.id(), reference.id());
    match answer {
        Ok(s) => {
            let response = |figure: fn(&saturation::Response) -> f64| s.response.as_ref().map_or(f64::NAN, figure);
            let figures = [
                s.quality.unwrap_or(f64::NAN),
                in_kelvins(s.temperature()),
                s.pressure().pa(),
                s.density().kg_m3(),
                s.enthalpy().j_kg(),
                s.entropy().j_kg_k(),
                s.internal_energy().j_kg(),
                response(|r| r.cv.j_kg_k()),
                response(|r| r.cp.j_kg_k()),
                response(|r| r.speed_of_sound.m_s()),
            ];
            format!("{head},0,{}{}\n", s.phase.code(), bits(&figures))
        }
        Err(error) => format!("{head},{},{}\n", error.kind.code(), ",".repeat(10)),
    }
}

/// A humidity of moist air, under the name that it has in the table.
type Humidity = fn(f64, f64, f64) -> Result<MoistAir, Error>;

/// Moist air of every humidity, in the cold, at the freezing point and in the heat, high up and at sea level.
fn moist_air() -> Result<String, String> {
    let humidities: [(&str, Humidity, Vec<String>); 4] = [
        (
            "relative_humidity",
            MoistAir::from_relative_humidity,
            steps(-0.1, 1.1, 7),
        ),
        ("humidity_ratio", MoistAir::from_humidity_ratio, steps(-0.001, 0.03, 7)),
        ("dew_point_k", MoistAir::from_dew_point, steps(190.0, 320.0, 7)),
        ("wet_bulb_k", MoistAir::from_wet_bulb, steps(250.0, 320.0, 7)),
    ];
    let mut table = String::from(
        "humidity,temperature_k,pressure_pa_abs,x,status,humidity_ratio,relative_humidity,dew_point_k,wet_bulb_k,\
         vapour_pressure_pa,enthalpy_j_kg,volume_m3_kg,density_kg_m3\n",
    );
    for (name, from, values) in humidities {
        for (t, p) in pairs(&["253.15", "273.15", "303.15", "nan"], &["70000.0", "101325.0", "inf"]) {
            for x in &values {
                let answer = from(number(t)?, number(p)?, number(x)?).and_then(air_figures);
                table += &match answer {
                    Ok(figures) => format!("{name},{t},{p},{x},0{}\n", bits(&figures)),
                    Err(error) => format!("{name},{t},{p},{x},{},{}\n", error.kind.code(), ",".repeat(7)),
                };
            }
        }
    }
    Ok(table)
}

fn air_figures(air: MoistAir) -> Result<[f64; 8], Error> {
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

/// Each figure after a comma; any NaN is written as `nan`.
pub(crate) fn bits(figures: &[f64]) -> String {
    let figure = |x: &f64| match x.is_nan() {
        true => ",nan".to_string(),
        false => format!(",{:016x}", x.to_bits()),
    };
    figures.iter().map(figure).collect()
}

fn exact<Q: Measurable>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(0.0),
    }
}

/// `count` numbers from `low` to `high` with many digits, and numbers that no function accepts.
fn steps(low: f64, high: f64, count: u32) -> Vec<String> {
    let step = |i| low + (high - low) * f64::from(i) / f64::from(count - 1);
    let even = (0..count).map(|i| format!("{:?}", step(i)));
    even.chain(ABSURD.map(str::to_string)).collect()
}

fn pairs<T: Clone>(xs: &[T], ys: &[T]) -> Vec<(T, T)> {
    xs.iter()
        .flat_map(|x| ys.iter().map(move |y| (x.clone(), y.clone())))
        .collect()
}

pub(crate) fn number(text: &str) -> Result<f64, String> {
    text.parse().map_err(|e| format!("{text}: {e}"))
}

fn row(function: &str, refrigerant: &str, x: &str, y: &str, answer: Result<f64, Error>) -> String {
    match answer {
        Ok(value) => format!("{function},{refrigerant},{x},{y},0,{:016x}\n", value.to_bits()),
        Err(error) => format!("{function},{refrigerant},{x},{y},{},\n", error.kind.code()),
    }
}
