//! `tests/cases/charges.csv` and `rest.csv`: charges of any composition, and pressures at rest.

use crate::cases::{ABSURD, bits, number};
use coldloop::LeakPhase;
use coldloop::circuit::{Reading, at_rest};
use coldloop::saturation::{Charge, Shares};
use coldloop::units::{
    AbsolutePressure, Density, GaugePressure, Pressure, PressureDifference, Surroundings, in_kelvins, kelvins,
    kelvins_difference,
};
use coldloop::{Error, Refrigerant};
use tables_names::Output;

/// Figures of a row; what a call does not tell stands as `nan`.
const FIGURES: usize = 11;

/// Charges as the table writes them: names, each with its mass.
const CHARGES: [&str; 7] = [
    "R-134a 1",
    "R-407C 1",
    "R-134a 0.9 R-22 0.1",
    "R-134a 0.7 R-1234yf 0.25 R-290 0.05",
    "R-32 0.23 R-125 0.25 R-134a 0.52 air 0.01",
    "R-407C 4 R-134a 1",
    "R-438A 99.5 air 0.5",
];

/// What is no charge.
const NO_CHARGES: [&str; 5] = [
    "air 1",
    "R-134a nan",
    "R-134a -1",
    "R-134a 1 air inf",
    "R-438A 1 R-22 1 air 1",
];

/// Writes both tables.
pub(crate) fn compile(out: &mut Output) -> Result<(), String> {
    out.text("tests/cases/charges.csv", &charges()?)?;
    out.text("tests/cases/rest.csv", &rest()?)
}

fn charges() -> Result<String, String> {
    let names: Vec<String> = (1..=FIGURES).map(|i| format!("f{i}")).collect();
    let mut table = format!("call,charge,x,y,z,status,{}\n", names.join(","));
    for text in CHARGES {
        for t in ["233.15", "298.15", "330.0", "460.0"] {
            table += &row("bubble_pressure", text, [t, "", ""])?;
            table += &row("dew_pressure", text, [t, "", ""])?;
            for p in ["50000.0", "700000.0", "1150000.0", "5000000.0"] {
                table += &row("split", text, [t, p, ""])?;
            }
        }
        for p in ["60000.0", "400000.0", "2000000.0", "9000000.0"] {
            table += &row("bubble_temperature", text, [p, "", ""])?;
            table += &row("dew_temperature", text, [p, "", ""])?;
        }
        for call in ["leaked_vapour", "leaked_liquid"] {
            for [rho, lost] in [
                ["300.0", "0.5"],
                ["300.0", "0.0"],
                ["120.0", "0.97"],
                ["2000.0", "0.5"],
                ["300.0", "1.0"],
            ] {
                table += &row(call, text, ["298.15", rho, lost])?;
            }
        }
    }
    for text in NO_CHARGES {
        table += &row("dew_pressure", text, ["298.15", "", ""])?;
    }
    for x in ABSURD {
        table += &row("dew_pressure", CHARGES[1], [x, "", ""])?;
        table += &row("bubble_temperature", CHARGES[1], [x, "", ""])?;
        table += &row("split", CHARGES[1], [x, "1e6", ""])?;
        table += &row("split", CHARGES[1], ["298.15", x, ""])?;
        table += &row("leaked_vapour", CHARGES[1], ["298.15", x, "0.5"])?;
        table += &row("leaked_vapour", CHARGES[1], ["298.15", "300.0", x])?;
    }
    Ok(table)
}

fn row(call: &str, text: &str, [x, y, z]: [&str; 3]) -> Result<String, String> {
    let value = |text: &str| if text.is_empty() { Ok(f64::NAN) } else { number(text) };
    let numbers = [value(x)?, value(y)?, value(z)?];
    let answer = charge(text)?.and_then(|charge| figures(call, &charge, numbers));
    let told = match answer {
        Ok(figures) => format!("0{}", bits(&figures)),
        Err(error) => format!("{},{}", error.kind.code(), ",".repeat(FIGURES - 1)),
    };
    Ok(format!("{call},{text},{x},{y},{z},{told}\n"))
}

fn charge(text: &str) -> Result<Result<Charge, Error>, String> {
    let words: Vec<&str> = text.split(' ').collect();
    let (mut parts, mut air) = (Vec::new(), 0.0);
    for pair in words.chunks(2) {
        let [name, mass] = pair else {
            return Err(format!("{text}: a name without a mass"));
        };
        match Refrigerant::from_id(name) {
            Some(refrigerant) => parts.push((refrigerant, number(mass)?)),
            None => air = number(mass)?,
        }
    }
    Ok(Charge::new(&parts, air))
}

fn figures(call: &str, charge: &Charge, [x, y, z]: [f64; 3]) -> Result<[f64; FIGURES], Error> {
    let mut figures = [f64::NAN; FIGURES];
    match call {
        "bubble_pressure" => figures[0] = charge.bubble_pressure(kelvins(x))?.pa(),
        "dew_pressure" => figures[0] = charge.dew_pressure(kelvins(x))?.pa(),
        "bubble_temperature" => figures[0] = in_kelvins(charge.bubble_temperature(AbsolutePressure::from_pa(x))?),
        "dew_temperature" => figures[0] = in_kelvins(charge.dew_temperature(AbsolutePressure::from_pa(x))?),
        "split" => {
            let phase_split = charge.split(kelvins(x), AbsolutePressure::from_pa(y))?;
            figures[0] = phase_split.density.kg_m3();
            if let (Some(quality), Some(liquid), Some(vapour)) =
                (phase_split.quality, phase_split.liquid, phase_split.vapour)
            {
                let first = |shares: &Shares| shares.refrigerants().next().map_or(f64::NAN, |(_, share)| share);
                figures[1..4].copy_from_slice(&[quality, liquid.0.kg_m3(), vapour.0.kg_m3()]);
                figures[4..8].copy_from_slice(&[first(&liquid.1), first(&vapour.1), liquid.1.air(), vapour.1.air()]);
            }
        }
        _ => {
            let leak_phase = if call == "leaked_vapour" {
                LeakPhase::Vapour
            } else {
                LeakPhase::Liquid
            };
            let left = charge.leaked(kelvins(x), Density::from_kg_m3(y), leak_phase, z)?;
            (figures[0], figures[1]) = (left.pressure.pa(), f64::from(u8::from(left.has_liquid)));
            figures[2..].fill(0.0);
            for (figure, (_, share)) in figures[2..].iter_mut().zip(left.shares.refrigerants()) {
                *figure = share;
            }
            figures[FIGURES - 1] = left.shares.air();
        }
    }
    Ok(figures)
}

/// Pressures at rest, absolute where there is no air, beside a few refrigerants.
fn rest() -> Result<String, String> {
    let mut table = String::from(
        "refrigerant,pressure_pa,pressure_uncertainty_pa,air_pa_abs,temperature_k,temperature_uncertainty_k,status,pressure_match,\
         excess_pa,excess_uncertainty_pa,above_dew_pa,above_dew_uncertainty_pa,gas_share\n",
    );
    let usual = ["292800.0", "665400.0", "800000.0", "1317900.0", "-20000.0"];
    for refrigerant in [
        Refrigerant::R134a,
        Refrigerant::R407C,
        Refrigerant::R744,
        Refrigerant::R12,
    ] {
        for pressure in usual.iter().chain(&ABSURD) {
            for temperature in ["273.15", "298.15", "323.15", "nan"] {
                for (air, uncertainties) in [
                    ("", ["3000.0", "0.3"]),
                    ("84000.0", ["10000.0", "1.0"]),
                    ("1.0", ["1.0", "-1.0"]),
                ] {
                    table += &rest_row(
                        refrigerant,
                        [pressure, uncertainties[0], air, temperature, uncertainties[1]],
                    )?;
                }
            }
        }
    }
    Ok(table)
}

fn rest_row(refrigerant: Refrigerant, fields: [&str; 5]) -> Result<String, String> {
    let [pressure, uncertainty_pa, air, temperature, uncertainty_k] = fields;
    let pa = number(pressure)?;
    let surroundings = match air {
        "" => Ok((
            Pressure::Absolute(AbsolutePressure::from_pa(pa)),
            Surroundings::SEA_LEVEL,
        )),
        air => Surroundings::measured(AbsolutePressure::from_pa(number(air)?))
            .map(|air| (Pressure::Gauge(GaugePressure::from_pa(pa)), air)),
    };
    let (standard_uncertainty_pa, standard_uncertainty_k) = (number(uncertainty_pa)?, number(uncertainty_k)?);
    let temperature = Reading {
        value: kelvins(number(temperature)?),
        standard_uncertainty: kelvins_difference(standard_uncertainty_k),
    };
    let found = surroundings.and_then(|(value, air)| {
        let pressure = Reading {
            value,
            standard_uncertainty: PressureDifference::from_pa(standard_uncertainty_pa),
        };
        at_rest(refrigerant, pressure, temperature, air)
    });
    let told = match found {
        Ok(found) => {
            let figures = [
                found.excess.value.pa(),
                found.excess.standard_uncertainty.pa(),
                found.above_dew.value.pa(),
                found.above_dew.standard_uncertainty.pa(),
                found.gas_share,
            ];
            format!("0,{}{}", found.pressure_match.code(), bits(&figures))
        }
        Err(error) => format!("{},,,,,,", error.kind.code()),
    };
    Ok(format!("{},{},{told}\n", refrigerant.id(), fields.join(",")))
}
