//! Values in the unit that is shown, as numbers.

use crate::report::page::Scale;
use crate::report::units::Units;
use crate::units::constants::PSI_PA;
use crate::units::{in_celsius, in_fahrenheit, kelvins};

/// A value in the unit that is shown.
pub(super) fn shown(units: Units, scale: Scale, si: f64) -> f64 {
    match (scale, units) {
        (Scale::PaGauge | Scale::PaDifference, units) => si / pressure_unit_pa(units),
        (Scale::Kelvin, Units::Metric | Units::Bar) => in_celsius(kelvins(si)),
        (Scale::Kelvin, Units::Us) => in_fahrenheit(kelvins(si)),
        (Scale::Difference, Units::Metric | Units::Bar) | (Scale::Ratio, Units::Metric | Units::Bar | Units::Us) => si,
        (Scale::Difference, Units::Us) => 1.8 * si,
        (Scale::PerSecond, Units::Metric | Units::Bar | Units::Us) => 60.0 * si,
    }
}

/// The unit in which pressures are shown, Pa.
pub(super) const fn pressure_unit_pa(units: Units) -> f64 {
    match units {
        Units::Metric => 1e3,
        Units::Bar => 1e5,
        Units::Us => PSI_PA,
    }
}
