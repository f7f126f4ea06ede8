//! The lines of a report: each reading beside what a sound system shows.

use crate::circuit::Reading;
use crate::diagnosis::{Case, Diagnosis};
use crate::expected::Band;
use crate::names::{Feature, ReadingKind};
use crate::units::{GaugePressure, Pressure, Temperature, TemperatureDifference};
use crate::units::{difference_in_kelvins, in_kelvins};
use alloc::vec::Vec;

/// The unit and datum in which a row stands.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Scale {
    /// Pa above the air of the place.
    PaGauge,
    /// Pa as a difference.
    PaDifference,
    /// K as a point on the scale.
    Kelvin,
    /// K as a difference.
    Difference,
    /// Events per second.
    PerSecond,
}

/// One reading beside the band of a sound system, in SI.
pub(super) struct Row {
    pub(super) id: &'static str,
    pub(super) scale: Scale,
    pub(super) low: f64,
    pub(super) median: f64,
    pub(super) high: f64,
    pub(super) measured: Option<f64>,
    /// Standard deviations from the median, vehicle and instrument together.
    pub(super) deviation: Option<f64>,
}

/// A row for every band; none for a system at rest, of which there are no bands.
pub(super) fn rows(case: &Case, diagnosis: &Diagnosis) -> Vec<Row> {
    let Some(bands) = &diagnosis.expected else {
        return Vec::new();
    };
    let air = case.conditions.surroundings;
    let datum = case.readings.gauge_zero.unwrap_or(air);
    let gauge = |reading: Option<Reading<Pressure>>| Some(reading?.value.absolute(datum).gauge(air).pa());
    let kelvin = |reading: Option<Reading<Temperature>>| Some(in_kelvins(reading?.value));
    let deviation = |feature: Feature| deviation(diagnosis, feature);
    let (readings, derived) = (&case.readings, &diagnosis.derived);
    let mut rows = alloc::vec![
        Row {
            measured: gauge(readings.low_side),
            deviation: deviation(Feature::LowSide),
            ..pressure(ReadingKind::LowSide.id(), bands.low_side)
        },
        Row {
            measured: gauge(readings.high_side_known(case.conditions.surroundings)),
            deviation: deviation(Feature::HighSide),
            ..pressure(ReadingKind::HighSide.id(), bands.high_side)
        },
        Row {
            measured: kelvin(readings.vent),
            deviation: deviation(Feature::Vent),
            ..temperature(ReadingKind::Vent.id(), bands.vent)
        },
        Row {
            measured: derived.superheat_k.map(|estimate| estimate.value),
            deviation: deviation(Feature::Superheat),
            ..difference(Feature::Superheat.id(), bands.superheat)
        },
        Row {
            measured: derived.subcooling_k.map(|estimate| estimate.value),
            deviation: deviation(Feature::Subcooling),
            ..difference(Feature::Subcooling.id(), bands.subcooling)
        },
        Row {
            measured: derived.discharge_superheat_k.map(|estimate| estimate.value),
            deviation: deviation(Feature::DischargeSuperheat),
            ..difference(Feature::DischargeSuperheat.id(), bands.discharge_superheat)
        },
    ];
    if let Some(band) = bands.clutch_cycles_hz {
        rows.push(Row {
            measured: readings.clutch_cycles_hz.map(|reading| reading.value),
            deviation: deviation(Feature::ClutchCycles),
            ..row(ReadingKind::ClutchCycles.id(), Scale::PerSecond, band, |hz| hz)
        });
    }
    rows
}

/// How a figure lies to the band that stands beside it, in standard deviations of vehicle and instrument together.
pub(super) fn deviation(diagnosis: &Diagnosis, feature: Feature) -> Option<f64> {
    let measured = diagnosis
        .deviations
        .iter()
        .find(|measured| measured.feature == feature)?;
    Some(measured.deviation)
}

fn pressure(id: &'static str, band: Band<GaugePressure>) -> Row {
    row(id, Scale::PaGauge, band, GaugePressure::pa)
}

fn temperature(id: &'static str, band: Band<Temperature>) -> Row {
    row(id, Scale::Kelvin, band, in_kelvins)
}

fn difference(id: &'static str, band: Band<TemperatureDifference>) -> Row {
    row(id, Scale::Difference, band, difference_in_kelvins)
}

fn row<Q: Copy>(id: &'static str, scale: Scale, band: Band<Q>, si: impl Fn(Q) -> f64) -> Row {
    Row {
        id,
        scale,
        low: si(band.low_95),
        median: si(band.median),
        high: si(band.high_95),
        measured: None,
        deviation: None,
    }
}
