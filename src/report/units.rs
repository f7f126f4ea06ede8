//! The units of a text report.

use super::page::Scale;
use crate::units::{GaugePressure, in_celsius, in_fahrenheit, kelvins};
use alloc::format;
use alloc::string::String;

/// The units of a text report.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Units {
    /// kPa, °C.
    Metric,
    /// psi, °F.
    Us,
}

impl Units {
    /// The units of a readings file: [`Units::Us`] when its pressures are in psi.
    ///
    /// ```
    /// use coldloop::report::Units;
    /// assert_eq!(Units::as_written("low_side = \"35 psig\""), Units::Us);
    /// assert_eq!(Units::as_written("low_side = \"2.4 bar gauge\""), Units::Metric);
    /// ```
    pub fn as_written(readings_file: &str) -> Self {
        if readings_file.to_ascii_lowercase().contains("psi") {
            Units::Us
        } else {
            Units::Metric
        }
    }

    pub(super) fn value(self, scale: Scale, si: f64) -> String {
        match (self, scale) {
            (Units::Metric, Scale::PaGauge | Scale::PaDifference) => format!("{:.0}", si / 1e3),
            (Units::Us, Scale::PaGauge | Scale::PaDifference) => format!("{:.0}", GaugePressure::from_pa(si).psig()),
            (Units::Metric, Scale::Kelvin) => format!("{:.1}", in_celsius(kelvins(si))),
            (Units::Us, Scale::Kelvin) => format!("{:.0}", in_fahrenheit(kelvins(si))),
            (Units::Metric, Scale::Difference) => format!("{si:.1}"),
            (Units::Us, Scale::Difference) => format!("{:.0}", si * 1.8),
            (Units::Metric | Units::Us, Scale::PerSecond) => format!("{:.0}", si * 60.0),
            (Units::Metric | Units::Us, Scale::Ratio) => format!("{si:.1}"),
        }
    }

    pub(super) fn unit(self, scale: Scale) -> &'static str {
        match (self, scale) {
            (Units::Metric, Scale::PaGauge) => "kPa gauge",
            (Units::Us, Scale::PaGauge) => "psig",
            (Units::Metric, Scale::PaDifference) => "kPa",
            (Units::Us, Scale::PaDifference) => "psi",
            (Units::Metric, Scale::Kelvin) => "°C",
            (Units::Us, Scale::Kelvin | Scale::Difference) => "°F",
            (Units::Metric, Scale::Difference) => "K",
            (Units::Metric | Units::Us, Scale::PerSecond) => "/min",
            (Units::Metric | Units::Us, Scale::Ratio) => "",
        }
    }

    pub(super) fn with_unit(self, scale: Scale, si: f64) -> String {
        format!("{} {}", self.value(scale, si), self.unit(scale))
    }
}
