//! A line of the case file: what was read, through the crate's intake, and what is true.

use super::FEATURES;
use coldloop::circuit::{Derived, Estimate, FeatureVector, Reading};
use coldloop::saturation::Side;
use coldloop::units::{Temperature, difference_in_kelvins, in_kelvins};
use coldloop::vehicle::Conditions;
use coldloop::{Compressor, Expansion, Fault, Refrigerant, intake, saturation};
use serde::Deserialize;

/// The low side counts no colder than this, K: a needle at vacuum tells that it is there, not how deep.
/// Source: engineering judgement; 39 kPa of R-134a.
const COLDEST_K: f64 = FeatureVector::COLDEST_K;

#[derive(Deserialize)]
struct Line {
    id: String,
    case: serde_json::Value,
    truth: Vec<Truth>,
    world: World,
}

#[derive(Deserialize)]
struct Truth {
    fault: String,
    severity: f64,
}

#[derive(Deserialize)]
struct World {
    make: String,
}

/// One case as it is fitted.
pub(crate) struct Case {
    pub(crate) make: String,
    pub(crate) refrigerant: Refrigerant,
    pub(crate) expansion: Expansion,
    pub(crate) compressor: Compressor,
    pub(crate) conditions: Conditions,
    /// The one fault and its severity; `None` where there are two.
    pub(crate) truth: Option<(Fault, f64)>,
    /// The readings, K: saturation above ambient for the two sides, the temperature itself for the others.
    pub(crate) read: [Option<Estimate>; FEATURES],
}

impl Case {
    /// Whether this is the only fault.
    pub(crate) fn is(&self, fault: Fault) -> bool {
        self.truth.is_some_and(|(found, _)| found == fault)
    }
}

/// The cases of a file. Gauge errors are left out: they are transformations of readings, not shifts of the circuit's.
pub(crate) fn read(lines: &str) -> Result<Vec<Case>, String> {
    let mut cases = Vec::new();
    for line in lines.lines().filter(|line| !line.trim().is_empty()) {
        let line: Line = serde_json::from_str(line).map_err(|e| format!("case {}: {e}", cases.len() + 1))?;
        let named = |e: String| format!("case {}: {e}", line.id);
        let faults = line.faults().map_err(named)?;
        if faults.iter().all(|(fault, _)| *fault != Fault::GaugeError) {
            cases.push(line.case(&faults).map_err(named)?);
        }
    }
    Ok(cases)
}

impl Line {
    fn faults(&self) -> Result<Vec<(Fault, f64)>, String> {
        self.truth
            .iter()
            .map(|truth| {
                let fault = Fault::from_id(&truth.fault).ok_or(format!("{} is no fault", truth.fault))?;
                Ok((fault, truth.severity))
            })
            .collect()
    }

    fn case(&self, faults: &[(Fault, f64)]) -> Result<Case, String> {
        let case = intake::case_from_json(&self.case.to_string()).map_err(|e| e.to_string())?;
        let truth = match faults {
            [one] => Some(*one),
            [_, _] => None,
            _ => return Err(format!("{} faults", faults.len())),
        };
        let (system, readings, conditions) = (case.system, case.readings, case.conditions);
        let derived =
            Derived::new(system.refrigerant, &readings, conditions.surroundings, None).map_err(|e| e.to_string())?;
        let ambient_k = in_kelvins(conditions.ambient);
        let above = |t: Estimate| Estimate {
            value: t.value - ambient_k,
            ..t
        };
        let low = derived
            .low_side
            .map(|p| low_k(system.refrigerant, p.si(), derived.low_dew.map(Estimate::si)))
            .transpose()?;
        if derived.high_side.is_some() && derived.high_bubble.is_none() {
            return Err("no saturation temperature at the pressure of the high side".to_string());
        }
        Ok(Case {
            make: self.world.make.clone(),
            refrigerant: system.refrigerant,
            expansion: system.expansion,
            compressor: system.compressor,
            conditions,
            truth,
            read: [
                low.map(above),
                derived.high_bubble.map(Estimate::si).map(above),
                line(readings.suction_line),
                line(readings.discharge_line),
                line(readings.liquid_line),
                line(readings.condenser_outlet),
                line(readings.vent),
            ],
        })
    }
}

fn line(reading: Option<Reading<Temperature>>) -> Option<Estimate> {
    reading.map(|reading| Estimate {
        value: in_kelvins(reading.value),
        standard_uncertainty: difference_in_kelvins(reading.standard_uncertainty),
    })
}

/// Dew temperature of the low side, no colder than [`COLDEST_K`].
fn low_k(refrigerant: Refrigerant, pressure: Estimate, dew: Option<Estimate>) -> Result<Estimate, String> {
    match dew {
        Some(dew) if dew.value >= COLDEST_K => Ok(dew),
        _ => {
            let slope_pa_k = saturation::line_of(refrigerant)
                .slope_pa_k(Side::Dew, COLDEST_K)
                .map_err(|e| e.to_string())?;
            Ok(Estimate {
                value: COLDEST_K,
                standard_uncertainty: pressure.standard_uncertainty / slope_pa_k,
            })
        }
    }
}
