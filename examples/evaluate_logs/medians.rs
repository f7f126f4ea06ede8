//! A log typed in by hand: the medians of its last two minutes, or of the two minutes before its speed changes.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::Case;
use coldloop::log::Sample;
use coldloop::units::{GaugePressure, RotationalSpeed, kelvins};
use coldloop::vehicle::Conditions;
use coldloop::{Channel, Thermometer};

const LAST_S: f64 = 120.0;

pub(crate) fn case(case: &Case, samples: &[Sample], changes: bool) -> Case {
    let end_s = samples.last().map_or(0.0, |sample| sample.time_s);
    let until_s = if changes { 0.5 * end_s } else { end_s };
    let window = |sample: &&Sample| sample.time_s > until_s - LAST_S && sample.time_s <= until_s;
    let median = |channel| {
        let mut values: Vec<f64> = samples
            .iter()
            .filter(window)
            .filter_map(|sample| sample.value(channel))
            .collect();
        values.sort_by(f64::total_cmp);
        values.get(values.len() / 2).copied()
    };
    let pressure = |channel, gauge| median(channel).map(|pa| Reading::pressure(GaugePressure::from_pa(pa), gauge));
    let temperature = |channel, thermometer| median(channel).map(|k| Reading::temperature(kelvins(k), thermometer));
    let line = |channel| temperature(channel, Thermometer::ClampThermocouple);
    Case {
        conditions: Conditions {
            engine_speed: median(Channel::EngineSpeed).map(RotationalSpeed::from_hz),
            ..case.conditions
        },
        readings: Readings {
            low_side: pressure(Channel::LowSide, Gauge::LOW_SIDE),
            high_side: pressure(Channel::HighSide, Gauge::HIGH_SIDE),
            vent: temperature(Channel::Vent, Thermometer::PocketDigital),
            suction_line: line(Channel::SuctionLine),
            discharge_line: line(Channel::DischargeLine),
            liquid_line: line(Channel::LiquidLine),
            ..Readings::default()
        },
        ..*case
    }
}
