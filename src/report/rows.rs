//! The readings of a page, each with what is normal here today.

use super::page::{PageReading, Scale};
use super::words::standing;
use crate::circuit::{Estimate, Reading};
use crate::diagnosis::{Case, Diagnosis};
use crate::expected::Band;
use crate::names::Feature;
use crate::units::{Frequency, GaugePressure, Pressure, Temperature, TemperatureDifference};
use crate::units::{difference_in_kelvins, in_kelvins};
use alloc::vec::Vec;

/// A row for every band; none for a system at rest, for which there are no bands.
pub(super) fn rows(case: &Case, diagnosis: &Diagnosis) -> Vec<PageReading> {
    let Some(bands) = &diagnosis.expected else {
        return Vec::new();
    };
    let air = case.conditions.surroundings;
    let datum = case.readings.gauge_zero.unwrap_or(air);
    let gauge = |reading: Option<Reading<Pressure>>| Some(reading?.value.absolute(datum).gauge(air).pa());
    let kelvin = |reading: Option<Reading<Temperature>>| Some(in_kelvins(reading?.value));
    let (readings, derived) = (&case.readings, &diagnosis.derived);
    let value = |estimate: Option<Estimate<TemperatureDifference>>| Some(difference_in_kelvins(estimate?.value));
    let mut rows = alloc::vec![
        pressure(Feature::LowSide, bands.low_side, gauge(readings.low_side)),
        pressure(Feature::HighSide, bands.high_side, gauge(readings.high_side_known(air))),
        row(
            Feature::Vent,
            Scale::Kelvin,
            bands.vent,
            in_kelvins,
            kelvin(readings.vent)
        ),
        difference(Feature::Superheat, bands.superheat, value(derived.superheat)),
        difference(Feature::Subcooling, bands.subcooling, value(derived.subcooling)),
        difference(
            Feature::DischargeSuperheat,
            bands.discharge_superheat,
            value(derived.discharge_superheat)
        ),
    ];
    if let Some(band) = bands.clutch_cycles {
        let measured = readings.clutch_cycles.map(|reading| reading.value.hz());
        rows.push(row(
            Feature::ClutchCycles,
            Scale::PerSecond,
            band,
            Frequency::hz,
            measured,
        ));
    }
    for row in &mut rows {
        row.deviation = deviation(diagnosis, row.feature);
        row.standing = row.deviation.and_then(standing);
    }
    rows
}

/// Deviation of a figure from the middle of its band, in standard deviations of vehicle and instrument together.
pub(super) fn deviation(diagnosis: &Diagnosis, feature: Feature) -> Option<f64> {
    let measured = diagnosis
        .deviations
        .iter()
        .find(|measured| measured.feature == feature)?;
    Some(measured.deviation)
}

fn pressure(feature: Feature, band: Band<GaugePressure>, measured: Option<f64>) -> PageReading {
    row(feature, Scale::PaGauge, band, GaugePressure::pa, measured)
}

fn difference(feature: Feature, band: Band<TemperatureDifference>, measured: Option<f64>) -> PageReading {
    row(feature, Scale::Difference, band, difference_in_kelvins, measured)
}

fn row<Q: Copy>(
    feature: Feature,
    scale: Scale,
    band: Band<Q>,
    si: impl Fn(Q) -> f64,
    measured: Option<f64>,
) -> PageReading {
    PageReading {
        feature,
        scale,
        measured,
        median: si(band.median),
        band_80: (si(band.low_80), si(band.high_80)),
        band_95: (si(band.low_95), si(band.high_95)),
        deviation: None,
        standing: None,
    }
}
