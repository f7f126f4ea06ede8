//! A pressure-temperature table to hang beside the gauges.
//!
//! ```text
//! cargo run --release --example saturation_chart -- [REFRIGERANT [psig | kPa [ALTITUDE]]]
//! cargo run --release --example saturation_chart -- R-1234yf kPa "1600 m"
//! ```
//!
//! The pressures are those of a gauge zeroed at that altitude; below the air around it, psig turns into inches of
//! mercury vacuum. Without arguments: R-134a in psig at 1,600 m. Input that cannot be read ends with status 2.

use coldloop::units::{AbsolutePressure, Surroundings, Temperature, celsius, fahrenheit, text};
use coldloop::{Error, Refrigerant};
use std::process::ExitCode;

const USAGE: &str = "usage: saturation_chart [REFRIGERANT [psig | kPa [ALTITUDE]]]";
/// Temperatures of the table, in the unit of its scale: from, to, step.
const ROWS_F: (i32, i32, usize) = (-40, 200, 5);
const ROWS_C: (i32, i32, usize) = (-40, 90, 2);

/// The scales that go together: psig with Fahrenheit, kPa with Celsius.
#[derive(Clone, Copy)]
enum Scale {
    Us,
    Metric,
}

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match answer(&arguments) {
        Ok(chart) => {
            print!("{chart}");
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("{message}");
            ExitCode::from(2)
        }
    }
}

fn answer(arguments: &[&str]) -> Result<String, String> {
    if arguments.len() > 3 {
        return Err(USAGE.to_string());
    }
    let name = arguments.first().copied().unwrap_or("R-134a");
    let refrigerant = Refrigerant::from_id(name).ok_or_else(|| {
        let known = Refrigerant::ALL.map(Refrigerant::id).join(", ");
        format!("{name}: not a refrigerant known here; one of {known}")
    })?;
    let scale = match arguments.get(1).copied().unwrap_or("psig") {
        "psig" => Scale::Us,
        "kPa" => Scale::Metric,
        other => return Err(format!("{other}: write psig or kPa; {USAGE}")),
    };
    let altitude = arguments.get(2).copied().unwrap_or("1600 m");
    let surroundings = text::altitude_m(altitude)
        .and_then(Surroundings::at_altitude)
        .map_err(|error| format!("{altitude}: {error}"))?;
    Ok(chart(refrigerant, scale, altitude, surroundings))
}

fn chart(refrigerant: Refrigerant, scale: Scale, altitude: &str, surroundings: Surroundings) -> String {
    let (unit, (from, to, step)) = match scale {
        Scale::Us => ("psig, \" = inHg vacuum", ROWS_F),
        Scale::Metric => ("kPa gauge", ROWS_C),
    };
    let degree = match scale {
        Scale::Us => "°F",
        Scale::Metric => "°C",
    };
    let mut lines = format!(
        "{refrigerant}, gauge zeroed at {altitude} (air {:.1} kPa), {unit}\n\n{:>6}  {:>8}  {:>8}\n",
        surroundings.pressure().kpa(),
        degree,
        "bubble",
        "dew"
    );
    for degrees in (from..=to).step_by(step) {
        let temperature = match scale {
            Scale::Us => fahrenheit(f64::from(degrees)),
            Scale::Metric => celsius(f64::from(degrees)),
        };
        // A refrigerant has no saturation above its critical point or below its triple point: the table ends there.
        if let Ok((bubble, dew)) = both(refrigerant, temperature) {
            let [bubble, dew] = [bubble, dew].map(|pressure| shown(pressure, scale, surroundings));
            lines += &format!("{degrees:>6}  {bubble:>8}  {dew:>8}\n");
        }
    }
    lines
}

fn both(refrigerant: Refrigerant, temperature: Temperature) -> Result<(AbsolutePressure, AbsolutePressure), Error> {
    Ok((
        refrigerant.bubble_pressure(temperature)?,
        refrigerant.dew_pressure(temperature)?,
    ))
}

/// What the gauge shows.
fn shown(pressure: AbsolutePressure, scale: Scale, surroundings: Surroundings) -> String {
    let gauge = pressure.gauge(surroundings);
    match scale {
        Scale::Us if gauge.pa() < 0.0 => format!("{:.1}\"", gauge.inhg_vacuum()),
        Scale::Us => format!("{:.1}", gauge.psig()),
        Scale::Metric => format!("{:.0}", gauge.kpa()),
    }
}
