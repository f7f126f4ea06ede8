//! The lines of a report: each reading beside what a sound system shows.

use crate::circuit::Reading;
use crate::diagnosis::{Case, Diagnosis};
use crate::expected::{Band, Spread};
use crate::names::{Feature, ReadingKind};
use crate::saturation::pseudo_critical;
use crate::units::{AbsolutePressure, GaugePressure, Pressure, Temperature, TemperatureDifference};
use crate::units::{difference_in_kelvins, in_kelvins};
use alloc::vec::Vec;

/// The unit and datum in which a row stands.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Scale {
    /// Pa above the air of the place.
    PaGauge,
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
    /// Medians at named points of a clutch's cycle, in the same unit.
    pub(super) cycle: Vec<(&'static str, f64)>,
}

/// A row for every band; none for a system at rest, of which there are no bands.
pub(super) fn rows(case: &Case, diagnosis: &Diagnosis) -> Vec<Row> {
    let (Some(bands), Some(expectation)) = (&diagnosis.expected, &diagnosis.expectation) else {
        return Vec::new();
    };
    let air = case.conditions.surroundings;
    let datum = case.readings.gauge_zero.unwrap_or(air);
    let gauge = |reading: Option<Reading<Pressure>>| Some(reading?.value.absolute(datum).gauge(air).pa());
    let kelvin = |reading: Option<Reading<Temperature>>| Some(in_kelvins(reading?.value));
    let deviation = |feature: Feature, sound: Spread| beside(diagnosis, feature, Some(sound));
    let healthy = &expectation.healthy;
    let at = |t_k: f64| {
        let p_pa = pseudo_critical::along_pa(case.system.refrigerant, t_k).ok()?;
        Some(AbsolutePressure::from_pa(p_pa).gauge(air).pa())
    };
    let cycle = |points: &[(&'static str, f64)]| {
        let named = points.iter().filter_map(|(name, t_k)| Some((*name, at(*t_k)?)));
        named.collect::<Vec<_>>()
    };
    let (low_cycle, high_cycle) = expectation.swing.map_or((Vec::new(), Vec::new()), |swing| {
        (
            cycle(&[
                ("clutch_opens", swing.opens.median),
                ("clutch_closes", swing.closes.median),
            ]),
            cycle(&[("clutch_opens", swing.engaged.median)]),
        )
    });
    let (readings, derived) = (&case.readings, &diagnosis.derived);
    let mut rows = alloc::vec![
        Row {
            measured: gauge(readings.low_side),
            deviation: deviation(Feature::LowSide, healthy.low_side),
            cycle: low_cycle,
            ..pressure(ReadingKind::LowSide.id(), bands.low_side)
        },
        Row {
            measured: gauge(readings.high_side_known(case.conditions.surroundings)),
            deviation: deviation(Feature::HighSide, healthy.high_side),
            cycle: high_cycle,
            ..pressure(ReadingKind::HighSide.id(), bands.high_side)
        },
        Row {
            measured: kelvin(readings.vent),
            deviation: deviation(Feature::Vent, healthy.vent),
            ..temperature(ReadingKind::Vent.id(), bands.vent)
        },
        Row {
            measured: derived.superheat_k.map(|estimate| estimate.value),
            deviation: deviation(Feature::Superheat, healthy.superheat),
            ..difference(Feature::Superheat.id(), bands.superheat)
        },
        Row {
            measured: derived.subcooling_k.map(|estimate| estimate.value),
            deviation: deviation(Feature::Subcooling, healthy.subcooling),
            ..difference(Feature::Subcooling.id(), bands.subcooling)
        },
        Row {
            measured: derived.discharge_superheat_k.map(|estimate| estimate.value),
            deviation: deviation(Feature::DischargeSuperheat, healthy.discharge_superheat),
            ..difference(Feature::DischargeSuperheat.id(), bands.discharge_superheat)
        },
    ];
    if let (Some(band), Some(sound)) = (bands.clutch_cycles_hz, healthy.clutch_cycles) {
        rows.push(Row {
            measured: readings.clutch_cycles_hz.map(|reading| reading.value),
            deviation: deviation(Feature::ClutchCycles, sound),
            ..row(ReadingKind::ClutchCycles.id(), Scale::PerSecond, band, |hz| hz)
        });
    }
    rows
}

/// How a figure lies to the band that stands beside it, in standard deviations of vehicle and instrument together.
pub(super) fn deviation(diagnosis: &Diagnosis, feature: Feature) -> Option<f64> {
    let shown = diagnosis.expectation.and_then(|expectation| {
        let healthy = expectation.healthy;
        match feature {
            Feature::LowSide => Some(healthy.low_side),
            Feature::HighSide => Some(healthy.high_side),
            Feature::Vent => Some(healthy.vent),
            Feature::Superheat => Some(healthy.superheat),
            Feature::Subcooling => Some(healthy.subcooling),
            Feature::DischargeSuperheat => Some(healthy.discharge_superheat),
            Feature::ClutchCycles => healthy.clutch_cycles,
            Feature::RestPressure => None,
        }
    });
    beside(diagnosis, feature, shown)
}

/// The same beside a distribution; beside that of the judgement, where none is shown.
fn beside(diagnosis: &Diagnosis, feature: Feature, shown: Option<Spread>) -> Option<f64> {
    let measured = diagnosis
        .deviations
        .iter()
        .find(|measured| measured.feature == feature)?;
    let uncertainty = measured.standard_uncertainty;
    Some(shown.map_or(measured.deviation, |sound| {
        sound.widened(uncertainty, uncertainty).deviation(measured.measured)
    }))
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
        cycle: Vec::new(),
    }
}
