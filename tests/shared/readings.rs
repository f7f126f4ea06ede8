//! Readings of a sound system, and the figures that follow from readings.

use coldloop::Thermometer;
use coldloop::circuit::{Derived, Estimate, Gauge, Reading, Readings};
use coldloop::units::{GaugePressure, Pressure, Temperature, celsius};

pub(crate) fn gauge(psig: f64, gauge: Gauge) -> Reading<Pressure> {
    Reading::pressure(GaugePressure::from_psig(psig), gauge)
}

pub(crate) fn line(t_c: f64) -> Reading<Temperature> {
    Reading::temperature(celsius(t_c), Thermometer::ClampThermistor)
}

/// A sound R-134a system on a mild day.
pub(crate) fn healthy() -> Readings {
    Readings {
        low_side: Some(gauge(35.0, Gauge::LOW_SIDE)),
        high_side: Some(gauge(175.0, Gauge::HIGH_SIDE)),
        vent: Some(line(6.0)),
        suction_line: Some(line(12.0)),
        discharge_line: Some(line(72.0)),
        liquid_line: Some(line(42.0)),
        ..Readings::default()
    }
}

/// One figure of all that follows.
pub(crate) type Figure = fn(&Derived) -> Option<Estimate>;

pub(crate) const FIGURES: [(&str, Figure); 14] = [
    ("low side", |d| d.low_side.map(Estimate::si)),
    ("high side", |d| d.high_side.map(Estimate::si)),
    ("pressure ratio", |d| d.pressure_ratio),
    ("low dew", |d| d.low_dew.map(Estimate::si)),
    ("low bubble", |d| d.low_bubble.map(Estimate::si)),
    ("high dew", |d| d.high_dew.map(Estimate::si)),
    ("high bubble", |d| d.high_bubble.map(Estimate::si)),
    ("superheat", |d| d.superheat.map(Estimate::si)),
    ("subcooling", |d| d.subcooling.map(Estimate::si)),
    ("discharge superheat", |d| d.discharge_superheat.map(Estimate::si)),
    ("condensing above ambient", |d| {
        d.condensing_above_ambient.map(Estimate::si)
    }),
    ("vent above evaporating", |d| d.vent_above_evaporating.map(Estimate::si)),
    ("cooling", |d| d.cooling.map(Estimate::si)),
    ("isentropic efficiency", |d| d.isentropic_efficiency),
];
