//! A van was low on charge and a seal was changed: is it dry, tight, full and cold now?
//!
//! ```text
//! cargo run --release --example proof_of_repair
//! ```
//!
//! The garage is invented: municipal vehicles at 1,600 m. Every figure has the uncertainty of its instrument, and where
//! the instruments do not allow a judgement, the answer says so.

use coldloop::Refrigerant;
use coldloop::circuit::{Estimate, Gauge, Reading};
use coldloop::diagnosis::{Settings, repair_cautions};
use coldloop::intake::case_from_toml;
use coldloop::proof::{
    ChargeBook, Decay, DecayGas, Evacuation, Hold, Kept, MACHINE_SCALE, Rise, Sample, Served, prove,
};
use coldloop::units::{
    AbsolutePressure, GaugePressure, Mass, Pressure, PressureDifference, Surroundings, TimeSpan, Volume, celsius,
    difference_in_kelvins, kelvins_difference,
};
use std::error::Error;

/// The van after the repair, on a cooler day than before it.
const AFTER: &str = r#"
[system]
refrigerant = "R-134a"
expansion = "txv"
compressor = "fixed-clutch"
nominal_charge = "850 g"

[conditions]
ambient = "26 °C"
humidity = "35 %"
altitude = "1600 m"
engine_speed = "1500 rpm"
air_source = "recirculated"
blower = "100 %"
vehicle_speed = "0 km/h"
running = "15 min"

[readings]
low_side = "225 kPa gauge"
high_side = "1290 kPa gauge"
vent = "5.5 °C"
suction_line = "11 °C"
liquid_line = "41 °C"

[observations]
condenser_fan_running = true
sight_glass_bubbles = false
"#;

fn main() -> Result<(), Box<dyn Error>> {
    let place = Surroundings::at_altitude(1_600.0)?;
    println!("Van 9, R-134a, 850 g on the label. The seal at the compressor was changed.\n");
    pressed(place)?;
    pulled(place)?;
    weighed(place)?;
    let before = case_from_toml(include_str!("readings/low-charge.toml"))?;
    let proof = prove(&before, &case_from_toml(AFTER)?, &Settings::default())?;
    println!("Does it cool? {}", proof.finding.description());
    println!(
        "  before: {}\n  no fault now: {:.0} %; the same fault still there: {:.0} %",
        proof.fault.description(),
        100.0 * proof.sound,
        100.0 * proof.same_fault
    );
    if let Some(gained) = proof.vent_gained {
        println!(
            "  the vent, corrected for weather: {:.0} K colder",
            difference_in_kelvins(gained)
        );
    }
    println!("\nTake care, and follow local rules first:");
    for caution in &repair_cautions(proof.fault, &before.system) {
        println!("  - {}", caution.description());
    }
    Ok(())
}

/// Pressure test: dry nitrogen at 10 bar in the circuit for an hour, while the shop cooled down.
fn pressed(place: Surroundings) -> Result<(), Box<dyn Error>> {
    let test = Decay {
        gas: DecayGas::Nitrogen,
        start: Reading::pressure(GaugePressure::from_bar(10.0), Gauge::DIGITAL),
        start_temperature: Reading::within(celsius(26.0), kelvins_difference(0.5)),
        end: Reading::pressure(GaugePressure::from_bar(9.85), Gauge::DIGITAL),
        end_temperature: Reading::within(celsius(22.0), kelvins_difference(0.5)),
        repeatability: PressureDifference::from_kpa(1.0),
        held: TimeSpan::from_hours(1.0),
        surroundings: place,
        volume: Some(circuit()),
        allowed: None,
        label_pressure: None,
        served: Some(Served {
            refrigerant: Refrigerant::R134a,
            temperature: celsius(26.0),
            charge: Some(Mass::from_g(850.0)),
        }),
    };
    let leak = test.judge()?;
    println!("Does it hold 10 bar of nitrogen? {}", leak.finding.description());
    println!(
        "  a tight one would show {:.2} bar at the end, it showed 9.85",
        GaugePressure::from_pa(leak.tight_end.pa() - place.pressure().pa()).bar()
    );
    if let Some(least) = leak.least_seen {
        println!(
            "  a loss below {:.1} g of nitrogen an hour would not show",
            3.6e6 * least.kg_s()
        );
    }
    Ok(())
}

/// The evacuation, and the vacuum hold of twenty minutes.
fn pulled(place: Surroundings) -> Result<(), Box<dyn Error>> {
    let microns = |microns: f64| -> Reading<Pressure> {
        Reading::within(
            AbsolutePressure::from_microns(microns).into(),
            PressureDifference::from_pa(5.0),
        )
    };
    let evacuation = Evacuation {
        reached: microns(420.0),
        coldest: Reading::within(celsius(20.0), kelvins_difference(1.0)),
        surroundings: place,
    };
    println!("Is it dry? {}", evacuation.judge()?.finding.description());
    let at = |minutes: f64, shown: f64| Sample {
        after: TimeSpan::from_minutes(minutes),
        pressure: microns(shown),
    };
    let hold = Hold {
        samples: &[at(0.0, 420.0), at(5.0, 440.0), at(10.0, 445.0), at(20.0, 450.0)],
        warmest: Reading::within(celsius(24.0), kelvins_difference(1.0)),
        surroundings: place,
        volume: Some(circuit()),
        allowed: Rise::USUAL,
    };
    println!("Does the vacuum stay? {}", hold.judge()?.finding.description());
    Ok(())
}

/// The masses that the scales showed.
fn weighed(place: Surroundings) -> Result<(), Box<dyn Error>> {
    let scale = |grams: f64| Some(Reading::within(Mass::from_g(grams), MACHINE_SCALE));
    let book = ChargeBook {
        nominal: Some(Mass::from_g(850.0)),
        tolerance: Some(Mass::from_g(50.0)),
        recovered: scale(430.0),
        charged: scale(900.0),
        // Two metres of charging hose stayed full of liquid.
        hose: Some(Kept {
            volume: Reading::within(Volume::from_litres(0.040), Volume::from_litres(0.004)),
            temperature: Reading::within(celsius(24.0), kelvins_difference(2.0)),
            vapour: None,
        }),
        ..ChargeBook::new(Refrigerant::R134a, place)
    };
    let balance = book.balance()?;
    if let (Some(found), Some(finding)) = (balance.charge_found, balance.found) {
        println!("What was in it? {}: {}", grams(found), finding.description());
    }
    if let (Some(now), Some(finding)) = (balance.charge_now, balance.now) {
        println!("What is in it now? {}: {}", grams(now), finding.description());
    }
    Ok(())
}

/// The circuit with its hoses, m3.
fn circuit() -> Reading<Volume> {
    Reading::within(Volume::from_litres(2.4), Volume::from_litres(0.3))
}

fn grams(mass: Estimate<Mass>) -> String {
    format!("{:.0} ± {:.0} g", mass.value.g(), 2.0 * mass.standard_uncertainty.g())
}
