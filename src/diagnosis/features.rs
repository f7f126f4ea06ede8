//! From readings to the figures that are judged.

use super::case::Case;
use crate::circuit::{Reading, Readings};
use crate::error::Error;
use crate::names::{Feature, MixUp, Quantity, Refrigerant};
use crate::range::{ABSOLUTE_PRESSURE, FREQUENCY, Range};
use crate::saturation;
use crate::units::constants::PSI_PA;
use crate::units::{Pressure, STANDARD_PRESSURE_PA, Surroundings, Temperature, in_kelvins};

/// Figures.
pub(super) const FEATURES: usize = Feature::ALL.len();

/// The place of a figure in arrays over the vocabulary; codes count from one.
pub(super) const fn place(feature: Feature) -> usize {
    feature.code() as usize - 1
}

/// Temperatures that a line or a vent of a vehicle can have.
const LINE: Range = Range::new(Quantity::Temperature, 193.15, 473.15);
/// The highest pressure that is read as one, whatever its unit was.
const HIGHEST_PA: f64 = 20_000_000.0;
/// How far beyond the median a pressure without saturation temperature is placed, K.
const OFF_SCALE_K: f64 = 60.0;

/// A measured figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Measured {
    pub(super) value: f64,
    pub(super) uncertainty: f64,
}

/// The figures that the readings give.
#[derive(Clone, Copy, Debug)]
pub(super) struct Features {
    pub(super) measured: [Option<Measured>; FEATURES],
    /// Whether a pressure had no saturation temperature.
    pub(super) off_scale: bool,
}

/// Nothing, when every reading can be one.
///
/// Errors: `NotFinite`; `OutOfRange` for a pressure below vacuum or beyond any gauge, a temperature that no line has,
/// or a negative uncertainty.
pub(super) fn check(readings: &Readings, surroundings: Surroundings) -> Result<(), Error> {
    let deepest_pa = f64::max(surroundings.pressure().pa(), STANDARD_PRESSURE_PA);
    let gauge = Range::new(Quantity::GaugePressure, -deepest_pa, HIGHEST_PA);
    let absolute = Range::new(ABSOLUTE_PRESSURE.quantity, 0.0, HIGHEST_PA);
    for reading in [readings.low_side, readings.high_side].into_iter().flatten() {
        match reading.value {
            Pressure::Gauge(pressure) => gauge.check(pressure.pa())?,
            Pressure::Absolute(pressure) => absolute.check(pressure.pa())?,
        };
        Range::new(Quantity::AbsolutePressure, 0.0, HIGHEST_PA).check(reading.standard_uncertainty)?;
    }
    let temperatures = [
        readings.vent,
        readings.cabin,
        readings.suction_line,
        readings.discharge_line,
        readings.liquid_line,
        readings.condenser_outlet,
    ];
    for reading in temperatures.into_iter().flatten() {
        LINE.check(in_kelvins(reading.value))?;
        Range::new(Quantity::TemperatureDifference, 0.0, 100.0).check(reading.standard_uncertainty)?;
    }
    if let Some(reading) = readings.clutch_cycles_hz {
        FREQUENCY.check(reading.value)?;
        FREQUENCY.check(reading.standard_uncertainty)?;
    }
    Ok(())
}

/// The figures of a running system, with the pressures as a mix-up would have them.
///
/// `None` when the mix-up cannot have happened here.
pub(super) fn running(case: &Case, medians_k: [f64; 2], mix_up: Option<MixUp>) -> Option<Features> {
    let readings = &case.readings;
    let mut off_scale = false;
    let mut side = |reading: Option<Reading<f64>>, median_k: f64| {
        reading.map(|p| {
            let (measured, off) = saturation_temperature(case.system.refrigerant, p, median_k);
            off_scale |= off;
            measured
        })
    };
    let [low_pa, high_pa] = pressures(case, mix_up)?;
    let low = side(low_pa, medians_k[0]);
    let high = side(high_pa, medians_k[1]);
    if mix_up.is_some() && off_scale {
        return None;
    }
    let line = |reading: Option<Reading<Temperature>>| {
        reading.map(|r| Measured {
            value: in_kelvins(r.value),
            uncertainty: r.standard_uncertainty,
        })
    };
    let above = |upper: Option<Measured>, lower: Option<Measured>| {
        let (upper, lower) = (upper?, lower?);
        Some(Measured {
            value: upper.value - lower.value,
            uncertainty: libm::hypot(upper.uncertainty, lower.uncertainty),
        })
    };
    let bubble = high_pa.zip(high).map(|(p, dew)| {
        let value = saturation::bubble_temperature_k(case.system.refrigerant, p.value).unwrap_or(dew.value);
        Measured { value, ..dew }
    });
    let liquid = line(readings.liquid_line).or(line(readings.condenser_outlet));
    let mut measured = [None; FEATURES];
    measured[place(Feature::LowSide)] = low;
    measured[place(Feature::HighSide)] = high;
    measured[place(Feature::Vent)] = line(readings.vent);
    measured[place(Feature::Superheat)] = above(line(readings.suction_line), low);
    measured[place(Feature::Subcooling)] = above(bubble, liquid);
    measured[place(Feature::DischargeSuperheat)] = above(line(readings.discharge_line), high);
    measured[place(Feature::ClutchCycles)] = readings.clutch_cycles_hz.map(|r| {
        let per_minute = 60.0 * r.value;
        Measured {
            value: libm::log1p(per_minute),
            uncertainty: 60.0 * r.standard_uncertainty / (1.0 + per_minute),
        }
    });
    Some(Features { measured, off_scale })
}

/// The figure of a system at rest: saturation temperature above the ambient. `None` when the sides differ, nothing was
/// read, or the mix-up cannot have happened here.
pub(super) fn resting(case: &Case, mix_up: Option<MixUp>) -> Option<Features> {
    let ambient_k = in_kelvins(case.conditions.ambient);
    let [low, high] = pressures(case, mix_up)?;
    if sides_equal(low, high) == Some(false) {
        return None;
    }
    let pressure = match (low, high) {
        (Some(low), Some(high)) => Reading {
            value: 0.5 * (low.value + high.value),
            standard_uncertainty: 0.5 * libm::hypot(low.standard_uncertainty, high.standard_uncertainty),
        },
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => return None,
    };
    let (saturated, off_scale) = saturation_temperature(case.system.refrigerant, pressure, ambient_k);
    if mix_up.is_some() && off_scale {
        return None;
    }
    let mut measured = [None; FEATURES];
    measured[place(Feature::RestPressure)] = Some(Measured {
        value: saturated.value - ambient_k,
        uncertainty: saturated.uncertainty,
    });
    Some(Features { measured, off_scale })
}

/// Whether the two sides read the same within their instruments; `None` when one is missing.
pub(super) fn equal_sides(case: &Case) -> Option<bool> {
    let [low, high] = pressures(case, None)?;
    sides_equal(low, high)
}

fn sides_equal(low: Option<Reading<f64>>, high: Option<Reading<f64>>) -> Option<bool> {
    let (low, high) = (low?, high?);
    let tolerance = 2.0 * libm::hypot(low.standard_uncertainty, high.standard_uncertainty);
    Some(libm::fabs(high.value - low.value) <= f64::max(tolerance, EQUAL_PA))
}

/// Sides that differ by less count as equal, Pa. Source: engineering judgement (3 psi).
const EQUAL_PA: f64 = 20_000.0;

/// Air pressures that differ by less make no difference worth a suspicion, Pa.
const SAME_AIR_PA: f64 = 4_000.0;

/// Absolute pressures of both sides, Pa, as they are or as a mix-up would have them; `None` when it cannot have
/// happened.
fn pressures(case: &Case, mix_up: Option<MixUp>) -> Option<[Option<Reading<f64>>; 2]> {
    let Readings {
        low_side,
        high_side,
        gauge_zero,
        ..
    } = case.readings;
    let air = case.conditions.surroundings;
    let datum_pa = gauge_zero.unwrap_or(air).pressure().pa();
    let scaled = |pressure: Pressure, factor: f64| match pressure {
        Pressure::Gauge(p) => Some(p.pa() * factor + datum_pa),
        Pressure::Absolute(p) => Some(p.pa() * factor),
    };
    let meant = |pressure: Pressure| match mix_up {
        None | Some(MixUp::SwappedHoses) => scaled(pressure, 1.0),
        Some(MixUp::KpaTypedAsPsi) => scaled(pressure, 1_000.0 / PSI_PA),
        Some(MixUp::PsiTypedAsKpa) => scaled(pressure, PSI_PA / 1_000.0),
        Some(MixUp::AbsoluteTypedAsGauge) => match pressure {
            Pressure::Gauge(p) => Some(p.pa()),
            Pressure::Absolute(_) => None,
        },
        Some(MixUp::GaugeTypedAsAbsolute) => match pressure {
            Pressure::Gauge(_) => None,
            Pressure::Absolute(p) => Some(p.pa() + datum_pa),
        },
        Some(MixUp::ZeroedAtSeaLevel) => match pressure {
            Pressure::Gauge(p) => Some(p.pa() + STANDARD_PRESSURE_PA),
            Pressure::Absolute(_) => None,
        },
    };
    let moved = |reading: Option<Reading<Pressure>>| match reading {
        None => Some(None),
        Some(r) => {
            let value = meant(r.value)?;
            Some(Some(Reading {
                value,
                standard_uncertainty: r.standard_uncertainty,
            }))
        }
    };
    let sides = [moved(low_side)?, moved(high_side)?];
    let possible = match mix_up {
        None => true,
        Some(MixUp::SwappedHoses) => low_side.is_some() && high_side.is_some(),
        Some(MixUp::ZeroedAtSeaLevel) => {
            let differs = libm::fabs(air.pressure().pa() - STANDARD_PRESSURE_PA) > SAME_AIR_PA;
            gauge_zero.is_none() && differs && sides.iter().any(Option::is_some)
        }
        Some(
            MixUp::KpaTypedAsPsi | MixUp::PsiTypedAsKpa | MixUp::AbsoluteTypedAsGauge | MixUp::GaugeTypedAsAbsolute,
        ) => sides.iter().any(Option::is_some),
    };
    let [low, high] = sides;
    match mix_up {
        _ if !possible => None,
        Some(MixUp::SwappedHoses) => Some([high, low]),
        None
        | Some(
            MixUp::KpaTypedAsPsi
            | MixUp::PsiTypedAsKpa
            | MixUp::AbsoluteTypedAsGauge
            | MixUp::GaugeTypedAsAbsolute
            | MixUp::ZeroedAtSeaLevel,
        ) => Some([low, high]),
    }
}

/// Saturation (dew) temperature of a pressure with its uncertainty; where there is none, the end of the scale about
/// `median_k`, and `true`.
fn saturation_temperature(refrigerant: Refrigerant, pressure: Reading<f64>, median_k: f64) -> (Measured, bool) {
    let Reading {
        value: p_pa,
        standard_uncertainty,
    } = pressure;
    let Ok(t_k) = saturation::dew_temperature_k(refrigerant, p_pa) else {
        let beyond_k = if p_pa > STANDARD_PRESSURE_PA {
            OFF_SCALE_K
        } else {
            -OFF_SCALE_K
        };
        return (
            Measured {
                value: median_k + beyond_k,
                uncertainty: 0.0,
            },
            true,
        );
    };
    // A figure beyond the scale is no more off than its end.
    let t_k = t_k.clamp(median_k - OFF_SCALE_K, median_k + OFF_SCALE_K);
    let slope = [0.5, -0.5].map(|step_k| saturation::dew_pressure_pa(refrigerant, t_k + step_k));
    let uncertainty = match slope {
        [Ok(above), Ok(below)] => standard_uncertainty / (above - below),
        [Err(_), _] | [_, Err(_)] => 0.0,
    };
    (
        Measured {
            value: t_k,
            uncertainty,
        },
        false,
    )
}
