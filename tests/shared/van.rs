//! A van of the fleet with what was read on it.

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::Case;
use coldloop::units::{GaugePressure, Pressure, Surroundings, TimeSpan, fahrenheit};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, Expansion, Refrigerant, Thermometer};

pub(crate) fn van(place: Surroundings) -> Case {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let mut conditions = Conditions::new(fahrenheit(74.0), place);
    conditions.running_for = Some(TimeSpan::from_seconds(720.0));
    Case::new(system, conditions, Readings::default())
}

pub(crate) fn psig(low: f64, high: f64) -> [Pressure; 2] {
    [
        GaugePressure::from_psig(low).into(),
        GaugePressure::from_psig(high).into(),
    ]
}

pub(crate) fn with(mut case: Case, [low, high]: [Pressure; 2], vent_f: Option<f64>) -> Case {
    case.readings.low_side = Some(Reading::pressure(low, Gauge::LOW_SIDE));
    case.readings.high_side = Some(Reading::pressure(high, Gauge::HIGH_SIDE));
    case.readings.vent = vent_f.map(|f| Reading::temperature(fahrenheit(f), Thermometer::PocketDigital));
    case
}
