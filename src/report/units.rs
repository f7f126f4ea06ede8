//! The units of a text report.

use super::page::Scale;
use super::texts::Text;
use crate::names::Language;
use crate::units::{GaugePressure, in_celsius, in_fahrenheit, kelvins};
use alloc::format;
use alloc::string::String;

/// The units of a text report.
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// assert!(report::html(&visit, report::Units::Us)?.contains("psi"));
/// assert!(report::html(&visit, report::Units::Metric)?.contains("kPa"));
/// # Ok::<(), intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Units {
    /// kPa, °C.
    Metric,
    /// bar, °C.
    Bar,
    /// psi, °F.
    Us,
}

impl Units {
    /// The units of a readings file: [`Units::Us`] when its pressures are in psi, [`Units::Bar`] when the readings of a running
    /// or resting system are in bar.
    ///
    /// ```
    /// use coldloop::report::Units;
    /// assert_eq!(Units::as_written("low_side = \"35 psig\""), Units::Us);
    /// assert_eq!(Units::as_written("low_side = \"2.4 bar gauge\""), Units::Bar);
    /// assert_eq!(Units::as_written("low_side = \"240 kPa gauge\""), Units::Metric);
    /// ```
    pub fn as_written(readings_file: &str) -> Self {
        let text = readings_file.to_ascii_lowercase();
        let of_side = |line: &&str| line.contains("low_side") || line.contains("high_side");
        let in_bar = |line: &str| line.contains(" bar") || line.contains("barg") || line.contains("bara");
        if text.contains("psi") {
            Units::Us
        } else if text.lines().find(of_side).is_some_and(in_bar) {
            Units::Bar
        } else {
            Units::Metric
        }
    }

    pub(super) fn value(self, scale: Scale, si: f64) -> String {
        match (self, scale) {
            (Units::Metric, Scale::PaGauge | Scale::PaDifference) => format!("{:.0}", si / 1e3),
            (Units::Bar, Scale::PaGauge | Scale::PaDifference) => format!("{:.1}", si / 1e5),
            (Units::Us, Scale::PaGauge | Scale::PaDifference) => format!("{:.0}", GaugePressure::from_pa(si).psig()),
            (Units::Metric | Units::Bar, Scale::Kelvin) => format!("{:.1}", in_celsius(kelvins(si))),
            (Units::Us, Scale::Kelvin) => format!("{:.0}", in_fahrenheit(kelvins(si))),
            (Units::Metric | Units::Bar, Scale::Difference) => format!("{si:.1}"),
            (Units::Us, Scale::Difference) => format!("{:.0}", si * 1.8),
            (Units::Metric | Units::Bar | Units::Us, Scale::PerSecond) => format!("{:.0}", si * 60.0),
            (Units::Metric | Units::Bar | Units::Us, Scale::Ratio) => format!("{si:.1}"),
        }
    }

    pub(super) const fn unit(self, scale: Scale, language: Language) -> &'static str {
        match (self, scale) {
            (Units::Metric, Scale::PaGauge) => Text::KpaGauge.of(language),
            (Units::Bar, Scale::PaGauge) => Text::BarGauge.of(language),
            (Units::Us, Scale::PaGauge) => "psig",
            (Units::Metric, Scale::PaDifference) => "kPa",
            (Units::Bar, Scale::PaDifference) => "bar",
            (Units::Us, Scale::PaDifference) => "psi",
            (Units::Metric | Units::Bar, Scale::Kelvin) => "°C",
            (Units::Us, Scale::Kelvin) => "°F",
            (Units::Us, Scale::Difference) => "F°",
            (Units::Metric | Units::Bar, Scale::Difference) => "K",
            (Units::Metric | Units::Bar | Units::Us, Scale::PerSecond) => "/min",
            (Units::Metric | Units::Bar | Units::Us, Scale::Ratio) => "",
        }
    }

    pub(super) fn with_unit(self, scale: Scale, si: f64, language: Language) -> String {
        format!("{} {}", self.value(scale, si), self.unit(scale, language))
    }
}
