//! Notes on data from scan tools and labels: what contradicts the readings, and what is only noted.

use super::case::Case;
use super::list::List;
use crate::circuit::{Derived, Reading};
use crate::names::QualityNote;
use crate::units::{GaugePressure, Temperature, difference_in_kelvins, in_kelvins};

/// From this part of its cut-out on, the high side counts as near it. Source: engineering judgement.
const NEAR: f64 = 0.95;
/// Below this displacement the control asks for little. Source: engineering judgement.
const LITTLE: f64 = 0.5;
/// From this ambient on a low displacement is unusual, K. Source: engineering judgement: 25 °C.
const HOT_K: f64 = 298.15;
/// Freezing point of water, K.
const FREEZING_K: f64 = 273.15;
/// Two temperatures that differ by more than this many standard uncertainties contradict each other: 95 %.
const APART: f64 = 2.0;

/// Whether gauge and transducer of the high side contradict each other.
pub(super) fn contradicts(case: &Case) -> bool {
    case.readings.transducer_agrees(case.conditions.surroundings) == Some(false)
}

/// Adds the notes that hold.
pub(super) fn add(case: &Case, derived: &Derived, notes: &mut List<QualityNote, { QualityNote::ALL.len() }>) {
    let (system, conditions, readings) = (&case.system, &case.conditions, &case.readings);
    let running = !conditions.at_rest(system.compressor);
    let air_pa = conditions.surroundings.pressure().pa();
    let near = |limit: GaugePressure| {
        derived
            .high_side
            .is_some_and(|high| high.value.pa() - air_pa >= NEAR * limit.pa())
    };
    let little = conditions
        .commanded_displacement
        .is_some_and(|commanded| commanded < LITTLE && in_kelvins(conditions.ambient) >= HOT_K);
    let below = |vent: Reading<Temperature>, fins: Reading<Temperature>| {
        let [vent_k, fins_k] = [vent, fins].map(|reading| difference_in_kelvins(reading.standard_uncertainty));
        let uncertain_k = libm::hypot(vent_k, fins_k);
        in_kelvins(vent.value) < in_kelvins(fins.value) - APART * uncertain_k
    };
    let fins = readings.evaporator_sensor;
    for (note, holds) in [
        (
            QualityNote::TransducerStandsIn,
            readings.high_side.is_none() && readings.high_side_transducer.is_some(),
        ),
        (QualityNote::TransducerContradicts, contradicts(case)),
        (QualityNote::NearHighCutOut, system.high_cut_out.is_some_and(near)),
        (
            QualityNote::EvaporatorFreezing,
            fins.is_some_and(|fins| in_kelvins(fins.value) < FREEZING_K),
        ),
        (
            QualityNote::VentBelowEvaporator,
            readings.vent.zip(fins).is_some_and(|(vent, fins)| below(vent, fins)),
        ),
        (QualityNote::DisplacementLow, running && little),
        (
            QualityNote::DisplacementNoted,
            conditions.commanded_displacement.is_some() && !(running && little),
        ),
        (
            QualityNote::SecondEvaporator,
            running && system.evaporators.is_some_and(|number| number > 1),
        ),
        (
            QualityNote::PortsNoted,
            running && (system.low_port.is_some() || system.high_port.is_some()),
        ),
        (
            QualityNote::CompressorSpeedNoted,
            running && conditions.compressor_speed.is_some(),
        ),
        (
            QualityNote::FanCommandNoted,
            running && conditions.fan_command.is_some(),
        ),
    ] {
        if holds {
            notes.push(note);
        }
    }
}
