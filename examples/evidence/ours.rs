//! The values of this library's vehicles for a fact.

use crate::fact::{Fact, Figure, Reading};
use coldloop::diagnosis::exists;
use coldloop::units::in_kelvins;
use coldloop::vehicle::{FaultSeverity, Make, Population, Simulation, System, Vehicle, simulate};
use coldloop::{Error, Fault, Refrigerant, VehicleClass};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Draws one vehicle of a system, and its make; vehicles are drawn nowhere else.
fn drawn(rng: &mut ChaCha8Rng, system: System) -> Result<(Make, Vehicle), Error> {
    let cars = Population::usual(system, VehicleClass::Car);
    let uniforms = std::array::from_fn(|_| rng.random());
    Ok((cars.make(&uniforms)?, cars.vehicle(&uniforms)?))
}

/// Median and spread over vehicles of the systems that the fact may be about.
pub(crate) fn figure(fact: &Fact, count: usize) -> Result<Option<Figure>, Box<dyn std::error::Error>> {
    if fact.fault == Fault::GaugeError {
        return Ok(None);
    }
    let mut rng = ChaCha8Rng::seed_from_u64(15);
    let mut values = Vec::new();
    for system in fact.systems.iter().filter(|system| exists(fact.fault, system)) {
        for _ in 0..count {
            let (make, vehicle) = drawn(&mut rng, *system)?;
            let (least, most) = if fact.fault == Fault::Overcharge {
                (0.25, 0.5)
            } else {
                (0.5, 0.95)
            };
            let severity = fact.severity.unwrap_or(rng.random_range(least..most));
            let faults = faults(fact, &make, system, severity, rng.random())?;
            // A vehicle that the model cannot solve is left out.
            let Ok(faulty) = simulate(&vehicle, &fact.conditions, &faults) else {
                continue;
            };
            let value = if fact.change {
                let Ok(sound) = simulate(&vehicle, &fact.conditions, &[]) else {
                    continue;
                };
                change(fact, &faulty, &sound)
            } else {
                level(fact, &faulty)
            };
            values.push(fact.in_unit(value)?);
        }
    }
    values.sort_by(f64::total_cmp);
    let at = |part: f64| {
        values
            .get((part * values.len().saturating_sub(1) as f64).round() as usize)
            .copied()
    };
    Ok(at(0.5).zip(at(0.1).zip(at(0.9))).map(|(median, (low, high))| Figure {
        median,
        part: Some([low, high]),
    }))
}

/// The fault in the form that the source states, or else as it comes to vehicles of the make.
fn faults(fact: &Fact, make: &Make, system: &System, severity: f64, u: f64) -> Result<Vec<FaultSeverity>, Error> {
    Ok(if fact.fault == Fault::NoFault {
        Vec::new()
    } else if fact.fault == Fault::WrongRefrigerant {
        vec![FaultSeverity::contaminated(Refrigerant::R22, severity)]
    } else if let Some(cause) = fact.cause {
        vec![FaultSeverity::caused(cause, severity)]
    } else {
        vec![make.fault(system, fact.fault, severity, u)?]
    })
}

fn level(fact: &Fact, s: &Simulation) -> f64 {
    match fact.reading {
        Reading::LowSide if fact.lowest => s.swing.map_or(s.low_side, |swing| swing.low_side.0).pa(),
        Reading::LowSide => s.low_side.pa(),
        Reading::HighSide => s.high_side.pa(),
        Reading::Vent => in_kelvins(s.vent),
        Reading::DischargeLine => in_kelvins(s.discharge_line),
        Reading::Capacity => s.capacity.w(),
        Reading::Efficiency => s.capacity.w() / s.power.w(),
    }
}

/// A difference; of capacity and efficiency in per cent.
fn change(fact: &Fact, faulty: &Simulation, sound: &Simulation) -> f64 {
    let (faulty, sound) = (level(fact, faulty), level(fact, sound));
    match fact.reading {
        Reading::Capacity | Reading::Efficiency => 100.0 * (faulty / sound - 1.0),
        Reading::LowSide | Reading::HighSide | Reading::Vent | Reading::DischargeLine => faulty - sound,
    }
}
