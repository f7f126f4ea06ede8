//! From readings to the figures that are judged.

mod strays;

use super::case::Case;
use crate::circuit::{Estimate, Reading, Readings, dew_temperature, subcooling, superheat};
use crate::error::Error;
use crate::expected::{Healthy, Spread};
use crate::names::{Expansion, Feature, MixUp, Refrigerant};
use crate::range::{ABSOLUTE_PRESSURE, FREQUENCY, GAUGE_PRESSURE, LINE_TEMPERATURE, TEMPERATURE};
use crate::units::constants::PSI_PA;
use crate::units::{AbsolutePressure, Pressure, STANDARD_PRESSURE_PA, Surroundings, Temperature, in_kelvins, kelvins};
use crate::vehicle::System;

/// Figures.
pub(super) const FEATURES: usize = Feature::ALL.len();

/// The place of a figure in arrays over the vocabulary; codes count from one.
pub(super) const fn place(feature: Feature) -> usize {
    feature.code() as usize - 1
}

/// How far beyond the median a pressure without saturation temperature is placed, K.
const OFF_SCALE_K: f64 = 60.0;

/// The figures that the readings give.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Features {
    pub(super) measured: [Option<Estimate>; FEATURES],
    /// Whether a pressure had no saturation temperature.
    pub(super) off_scale: bool,
    /// What the likelihood is multiplied by for all that is no figure.
    pub(super) beside: f64,
}

/// No figures.
pub(super) const NOTHING: Features = Features {
    measured: [None; FEATURES],
    off_scale: false,
    beside: 1.0,
};

/// What a sound running system shows of each figure.
pub(super) fn sound(healthy: &Healthy) -> [Option<Spread>; FEATURES] {
    let mut spreads = [None; FEATURES];
    spreads[place(Feature::LowSide)] = Some(healthy.low_side);
    spreads[place(Feature::HighSide)] = Some(healthy.high_side);
    spreads[place(Feature::Vent)] = Some(healthy.vent);
    spreads[place(Feature::Superheat)] = Some(healthy.superheat);
    spreads[place(Feature::Subcooling)] = Some(healthy.subcooling);
    spreads[place(Feature::DischargeSuperheat)] = Some(healthy.discharge_superheat);
    spreads[place(Feature::ClutchCycles)] = healthy.clutch_cycles;
    spreads
}

/// Nothing, when the readings that the circuit does not look at can be.
///
/// Errors: `NotFinite`; `OutOfRange` for a temperature that no line has, or a negative uncertainty.
pub(super) fn check(readings: &Readings) -> Result<(), Error> {
    if let Some(reading) = readings.high_side_transducer {
        match reading.value {
            Pressure::Absolute(pressure) => ABSOLUTE_PRESSURE.check(pressure.pa())?,
            Pressure::Gauge(pressure) => GAUGE_PRESSURE.check(pressure.pa())?,
        };
        ABSOLUTE_PRESSURE.check(reading.standard_uncertainty)?;
    }
    let others = [readings.cabin, readings.condenser_outlet, readings.evaporator_sensor];
    for reading in others.into_iter().flatten() {
        LINE_TEMPERATURE.check(in_kelvins(reading.value))?;
        TEMPERATURE.check(reading.standard_uncertainty)?;
    }
    if let Some(reading) = readings.clutch_cycles_hz {
        FREQUENCY.check(reading.value)?;
        FREQUENCY.check(reading.standard_uncertainty)?;
    }
    Ok(())
}

/// The figures of a running system, with the readings as a mix-up would have them; `healthy` is what a sound one shows.
///
/// `None` when the mix-up cannot have happened here.
pub(super) fn running(case: &Case, healthy: &Healthy, mix_up: Option<MixUp>) -> Option<Features> {
    let readings = &strays::corrected(case, healthy, mix_up)?;
    let medians_k = [healthy.low_side.median, healthy.high_side.median];
    let refrigerant = case.system.refrigerant;
    let air = case.conditions.surroundings;
    let [low_side, high_side] = pressures(case, mix_up)?;
    let mut off_scale = false;
    let mut side = |pressure: Option<Reading<Pressure>>, median_k: f64| {
        let (dew_k, beyond_k, off) = dew_k(refrigerant, pressure?, air, median_k);
        off_scale |= off;
        Some((dew_k, beyond_k))
    };
    let (low, high) = (side(low_side, medians_k[0]), side(high_side, medians_k[1]));
    let beyond_k = [low, high].map(|side| side.map_or(0.0, |(_, beyond_k)| beyond_k));
    let [low, high] = [low, high].map(|side| side.map(|(dew_k, _)| dew_k));
    if mix_up.is_some() && off_scale {
        return None;
    }
    let above = |line: Option<Reading<Temperature>>, pressure: Option<Reading<Pressure>>| {
        superheat(refrigerant, line?, pressure?, air).ok()
    };
    let liquid = liquid_line(&case.system, readings);
    let mut measured = [None; FEATURES];
    measured[place(Feature::LowSide)] = low;
    measured[place(Feature::HighSide)] = high;
    measured[place(Feature::Vent)] = readings.vent.map(|vent| Estimate {
        value: in_kelvins(vent.value),
        standard_uncertainty: vent.standard_uncertainty,
    });
    measured[place(Feature::Superheat)] = above(readings.suction_line, low_side);
    measured[place(Feature::Subcooling)] = liquid
        .zip(high_side)
        .and_then(|(line, pressure)| subcooling(refrigerant, line, pressure, air).ok());
    measured[place(Feature::DischargeSuperheat)] = above(readings.discharge_line, high_side);
    measured[place(Feature::ClutchCycles)] = readings.clutch_cycles_hz.map(|cycles| {
        let per_minute = 60.0 * cycles.value;
        Estimate {
            value: libm::log1p(per_minute),
            standard_uncertainty: 60.0 * cycles.standard_uncertainty / (1.0 + per_minute),
        }
    });
    if mix_up.is_some() {
        // A mix-up of pressures touches no thermometer: the lines stay as warm as they were, from wherever they are counted.
        for (feature, beyond_k) in [
            (Feature::Superheat, beyond_k[0]),
            (Feature::Subcooling, -beyond_k[1]),
            (Feature::DischargeSuperheat, beyond_k[1]),
        ] {
            if let Some(line) = &mut measured[place(feature)] {
                line.value += beyond_k;
            }
        }
    }
    Some(Features {
        measured,
        off_scale,
        ..NOTHING
    })
}

/// The liquid line, or what the condenser outlet tells of it.
fn liquid_line(system: &System, readings: &Readings) -> Option<Reading<Temperature>> {
    readings.liquid_line.or_else(|| {
        let outlet = readings.condenser_outlet?;
        let (cooler_k, sd_k) = behind_outlet(system);
        Some(Reading {
            value: kelvins(in_kelvins(outlet.value) - cooler_k),
            standard_uncertainty: libm::hypot(outlet.standard_uncertainty, sd_k),
        })
    })
}

/// How much cooler the liquid line before the expansion device is than the condenser outlet, K: mean and standard
/// deviation, the error of the thermometers taken off. An internal heat exchanger may stand between the two.
///
/// Source: 1,200 to 2,400 vehicles of the model each, a quarter of them sound, the others short of charge, with a worn
/// compressor or with little air at the condenser.
const fn behind_outlet(system: &System) -> (f64, f64) {
    match (system.refrigerant, system.expansion) {
        (Refrigerant::R744, _) => (5.0, 4.2),
        (Refrigerant::R1234yf, Expansion::Txv) => (5.0, 5.2),
        (_, Expansion::Txv) => (0.6, 2.2),
        (_, Expansion::OrificeTube) => (0.0, 0.0),
    }
}

/// The figure of a system at rest: saturation temperature above the ambient. `None` when the sides differ, nothing was
/// read, or the mix-up cannot have happened here.
pub(super) fn resting(case: &Case, mix_up: Option<MixUp>) -> Option<Features> {
    let ambient_k = in_kelvins(case.conditions.ambient);
    let [low, high] = pressures(case, mix_up)?;
    let strays = mix_up.and_then(|mix_up| strays::at_rest(mix_up, [low, high]));
    if sides_equal(low, high) == Some(false) && strays.is_none() {
        return None;
    }
    let ([low, high], beside) = strays.unwrap_or(([low, high], 1.0));
    let pressure = match (low, high) {
        (Some(low), Some(high)) => absolute(
            0.5 * (pa(low) + pa(high)),
            0.5 * libm::hypot(low.standard_uncertainty, high.standard_uncertainty),
        ),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => return None,
    };
    let (dew, _, off_scale) = dew_k(
        case.system.refrigerant,
        pressure,
        case.conditions.surroundings,
        ambient_k,
    );
    if mix_up.is_some() && off_scale {
        return None;
    }
    let mut measured = [None; FEATURES];
    measured[place(Feature::RestPressure)] = Some(Estimate {
        value: dew.value - ambient_k,
        ..dew
    });
    Some(Features {
        measured,
        off_scale,
        beside,
    })
}

/// Whether the two sides read the same within their instruments; `None` when one is missing.
pub(super) fn equal_sides(case: &Case) -> Option<bool> {
    let [low, high] = pressures(case, None)?;
    sides_equal(low, high)
}

fn sides_equal(low: Option<Reading<Pressure>>, high: Option<Reading<Pressure>>) -> Option<bool> {
    let (low, high) = (low?, high?);
    let tolerance = 2.0 * libm::hypot(low.standard_uncertainty, high.standard_uncertainty);
    Some(libm::fabs(pa(high) - pa(low)) <= tolerance.clamp(SURELY_EQUAL_PA, EQUAL_PA))
}

/// Sides that differ by more never count as equal, however coarse the gauges, Pa. Source: engineering judgement (5 psi).
const EQUAL_PA: f64 = 35_000.0;

/// Sides that differ by no more always count as equal, Pa. Source: engineering judgement (1 psi).
const SURELY_EQUAL_PA: f64 = 7_000.0;

/// Air pressures that differ by less make no difference worth a suspicion, Pa.
const SAME_AIR_PA: f64 = 4_000.0;

/// Both sides above vacuum, as they are or as a mix-up would have them; `None` when it cannot have happened.
fn pressures(case: &Case, mix_up: Option<MixUp>) -> Option<[Option<Reading<Pressure>>; 2]> {
    let Readings {
        low_side, gauge_zero, ..
    } = case.readings;
    let air = case.conditions.surroundings;
    let high_side = case.readings.high_side_known(air);
    let gauge = case.readings.high_side.is_some();
    // A transducer that agrees with the gauge clears its zero and its hose.
    let cleared = case.readings.transducer_agrees(air) == Some(true);
    let sides = [low_side, high_side].map(|side| side.map(|reading| (reading, reading.value)));
    let air_pa = case.conditions.surroundings.pressure().pa();
    let datum_pa = gauge_zero.unwrap_or(case.conditions.surroundings).pressure().pa();
    let possible = match mix_up {
        None => true,
        Some(MixUp::SwappedHoses | MixUp::BothGaugesOff) => low_side.is_some() && gauge && !cleared,
        Some(MixUp::LowGaugeOff) => low_side.is_some(),
        Some(MixUp::HighGaugeOff) => high_side.is_some() && !cleared,
        Some(
            MixUp::VentProbeAside | MixUp::SuctionProbeLoose | MixUp::LiquidProbeLoose | MixUp::DischargeProbeLoose,
        ) => !case.conditions.at_rest(case.system.compressor),
        Some(MixUp::ZeroedAtSeaLevel) => {
            gauge_zero.is_none() && libm::fabs(air_pa - STANDARD_PRESSURE_PA) > SAME_AIR_PA
        }
        Some(
            MixUp::KpaTypedAsPsi | MixUp::PsiTypedAsKpa | MixUp::AbsoluteTypedAsGauge | MixUp::GaugeTypedAsAbsolute,
        ) => true,
    };
    let of_pressures = mix_up.is_some_and(|mix_up| strays::probe(mix_up).is_none());
    if !possible || (of_pressures && sides.iter().flatten().count() == 0) {
        return None;
    }
    let mut meant = [None; 2];
    for ((meant, side), off) in meant
        .iter_mut()
        .zip(sides)
        .zip([strays::low_is_off, strays::high_is_off])
    {
        if let Some((reading, shown)) = side {
            let uncertain_pa = strays::uncertain_pa(reading, mix_up.is_some_and(off));
            *meant = Some(absolute(meant_pa(shown, datum_pa, mix_up)?, uncertain_pa));
        }
    }
    let [low, high] = meant;
    Some(if mix_up == Some(MixUp::SwappedHoses) {
        [high, low]
    } else {
        [low, high]
    })
}

/// What a noted pressure was above vacuum, if a mix-up stood between; `None` when it cannot have.
fn meant_pa(noted: Pressure, datum_pa: f64, mix_up: Option<MixUp>) -> Option<f64> {
    let rescaled = |factor: f64| match noted {
        Pressure::Gauge(p) => p.pa() * factor + datum_pa,
        Pressure::Absolute(p) => p.pa() * factor,
    };
    match (mix_up, noted) {
        (
            None
            | Some(
                MixUp::SwappedHoses
                | MixUp::LowGaugeOff
                | MixUp::HighGaugeOff
                | MixUp::BothGaugesOff
                | MixUp::VentProbeAside
                | MixUp::SuctionProbeLoose
                | MixUp::LiquidProbeLoose
                | MixUp::DischargeProbeLoose,
            ),
            _,
        ) => Some(rescaled(1.0)),
        (Some(MixUp::KpaTypedAsPsi), _) => Some(rescaled(1_000.0 / PSI_PA)),
        (Some(MixUp::PsiTypedAsKpa), _) => Some(rescaled(PSI_PA / 1_000.0)),
        (Some(MixUp::AbsoluteTypedAsGauge), Pressure::Gauge(p)) => Some(p.pa()),
        (Some(MixUp::GaugeTypedAsAbsolute), Pressure::Absolute(p)) => Some(p.pa() + datum_pa),
        (Some(MixUp::ZeroedAtSeaLevel), Pressure::Gauge(p)) => Some(p.pa() + STANDARD_PRESSURE_PA),
        (Some(MixUp::AbsoluteTypedAsGauge | MixUp::ZeroedAtSeaLevel), Pressure::Absolute(_))
        | (Some(MixUp::GaugeTypedAsAbsolute), Pressure::Gauge(_)) => None,
    }
}

fn absolute(pa: f64, standard_uncertainty: f64) -> Reading<Pressure> {
    Reading {
        value: AbsolutePressure::from_pa(pa).into(),
        standard_uncertainty,
    }
}

fn pa(reading: Reading<Pressure>) -> f64 {
    match reading.value {
        Pressure::Absolute(pressure) => pressure.pa(),
        Pressure::Gauge(pressure) => pressure.pa(),
    }
}

/// Dew temperature of a pressure above vacuum, by how much it lies beyond the end of the scale about `median_k` where it is
/// put, K, and `false`; where there is none, the end of the scale, and `true`.
fn dew_k(
    refrigerant: Refrigerant,
    pressure: Reading<Pressure>,
    air: Surroundings,
    median_k: f64,
) -> (Estimate, f64, bool) {
    match dew_temperature(refrigerant, pressure, air) {
        Ok(dew) => {
            // A figure far beyond the scale is no more off than its end.
            let value = dew.value.clamp(median_k - OFF_SCALE_K, median_k + OFF_SCALE_K);
            (Estimate { value, ..dew }, dew.value - value, false)
        }
        Err(_) => {
            let beyond_k = if pa(pressure) > STANDARD_PRESSURE_PA {
                OFF_SCALE_K
            } else {
                -OFF_SCALE_K
            };
            (
                Estimate {
                    value: median_k + beyond_k,
                    standard_uncertainty: 0.0,
                },
                0.0,
                true,
            )
        }
    }
}
