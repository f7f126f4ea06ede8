//! Gauges that are off and probes in the wrong place: readings that stray by nobody knows how much.
//!
//! A gauge that does not return to zero reads too much or too little by the same all along its scale. How much is unknown
//! and may be either way, so that it adds to what the gauge is uncertain by anyhow: integrated over its normal prior, it
//! is a wider uncertainty of that pressure, and of that alone. A probe in the wrong place reads a share of the way towards
//! the air about it; the way is that of a sound system, the share has a normal prior too.

use super::case::Case;
use crate::circuit::{FeatureVector, Reading, Readings};
use crate::expected::SoundModel;
use crate::names::MixUp;
use crate::units::{Pressure, Temperature, in_kelvins, kelvins};

/// How far a gauge is off that is off, as a standard deviation, Pa. Source: engineering judgement: 7 psi.
const ZERO_PA: f64 = 50_000.0;
/// A coarse gauge must be off by more to be worth suspecting: this many times what it is uncertain by.
const COARSE: f64 = 3.0;

/// The share of the way to the air about it that a probe in the wrong place reads, and its standard deviation. Source:
/// engineering judgement: a vent thermometer stands beside the stream or in another one, a line is touched from one side.
const VENT: Share = Share { mean: 0.4, sd: 0.2 };
const LINE: Share = Share { mean: 0.35, sd: 0.2 };

/// A probe is not suspected whose reading strays less than this many standard deviations towards the air, for it has
/// nothing to explain.
const SUSPECT: f64 = 1.0;

#[derive(Clone, Copy)]
struct Share {
    mean: f64,
    sd: f64,
}

/// Probes.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Probe {
    Vent,
    Suction,
    Liquid,
    Discharge,
}

/// The probe of which a mix-up speaks.
pub(super) const fn probe(mix_up: MixUp) -> Option<Probe> {
    match mix_up {
        MixUp::VentProbeAside => Some(Probe::Vent),
        MixUp::SuctionProbeLoose => Some(Probe::Suction),
        MixUp::LiquidProbeLoose => Some(Probe::Liquid),
        MixUp::DischargeProbeLoose => Some(Probe::Discharge),
        MixUp::SwappedHoses
        | MixUp::KpaTypedAsPsi
        | MixUp::PsiTypedAsKpa
        | MixUp::AbsoluteTypedAsGauge
        | MixUp::GaugeTypedAsAbsolute
        | MixUp::ZeroedAtSeaLevel
        | MixUp::LowGaugeOff
        | MixUp::HighGaugeOff
        | MixUp::BothGaugesOff => None,
    }
}

/// Whether the low gauge is off.
pub(super) const fn low_is_off(mix_up: MixUp) -> bool {
    matches!(mix_up, MixUp::LowGaugeOff | MixUp::BothGaugesOff)
}

/// Whether the high gauge is off.
pub(super) const fn high_is_off(mix_up: MixUp) -> bool {
    matches!(mix_up, MixUp::HighGaugeOff | MixUp::BothGaugesOff)
}

/// What a pressure is uncertain by, Pa.
pub(super) fn uncertain_pa(side: Reading<Pressure>, off: bool) -> f64 {
    let own_pa = side.standard_uncertainty;
    if off {
        libm::hypot(own_pa, zero_pa(own_pa))
    } else {
        own_pa
    }
}

fn zero_pa(own_pa: f64) -> f64 {
    f64::max(ZERO_PA, COARSE * own_pa)
}

/// The readings with that of a probe in the wrong place corrected as far as it can be; `None` when it was not taken, or
/// has nothing to explain.
pub(super) fn corrected(case: &Case, sound: &SoundModel, mix_up: Option<MixUp>) -> Option<Readings> {
    let mut readings = case.readings;
    let Some(probe) = mix_up.and_then(probe) else {
        return Some(readings);
    };
    let air_k = in_kelvins(case.conditions.ambient);
    let (place, share) = match probe {
        Probe::Vent => (FeatureVector::VENT, VENT),
        Probe::Suction => (FeatureVector::SUCTION_LINE, LINE),
        Probe::Liquid => (FeatureVector::LIQUID_LINE, LINE),
        Probe::Discharge => (FeatureVector::DISCHARGE_LINE, LINE),
    };
    let reading = match probe {
        Probe::Vent => &mut readings.vent,
        Probe::Suction => &mut readings.suction_line,
        Probe::Liquid if readings.liquid_line.is_some() => &mut readings.liquid_line,
        Probe::Liquid => &mut readings.condenser_outlet,
        Probe::Discharge => &mut readings.discharge_line,
    };
    let reading = reading.as_mut()?;
    let (way_k, spread_k) = sound.below_ambient(place);
    let toward_k = libm::copysign(1.0, way_k) * (in_kelvins(reading.value) - air_k + way_k);
    if toward_k < SUSPECT * libm::hypot(spread_k, reading.standard_uncertainty) {
        return None;
    }
    *reading = Reading {
        value: moved(reading.value, -share.mean * way_k),
        standard_uncertainty: libm::hypot(reading.standard_uncertainty, share.sd * way_k),
    };
    Some(readings)
}

fn moved(temperature: Temperature, by_k: f64) -> Temperature {
    kelvins(in_kelvins(temperature) + by_k)
}

/// Chance that the sides of a system that rests are not yet equal. Source: engineering judgement.
const NOT_YET_EQUAL: f64 = 0.1;
/// How far they may then still be apart: evenly up to this, Pa. Source: engineering judgement.
const APART_PA: f64 = 500_000.0;
/// The pressure of one gauge, when the other is set aside, could have been anything: this much of an even density, 1/K.
const ANYWHERE_PER_K: f64 = 1.0 / 60.0;

/// The two sides, as far as they were read.
type BothSides = [Option<Reading<Pressure>>; 2];

/// The sides of a system at rest when one gauge is off: only the other one counts, and the likelihood of their difference
/// beside that of sides that are not yet equal. `None` where no gauge is off, or none is left.
pub(super) fn at_rest(mix_up: MixUp, [low, high]: BothSides) -> Option<(BothSides, f64)> {
    let (left, right) = (low?, high?);
    let sides = match (low_is_off(mix_up), high_is_off(mix_up)) {
        (true, false) => [None, high],
        (false, true) => [low, None],
        (true, true) | (false, false) => return None,
    };
    let apart_pa = pa(right) - pa(left);
    let normal = |sd_pa: f64| {
        let z = apart_pa / sd_pa;
        libm::exp(-0.5 * z * z) / (sd_pa * SQRT_2_PI)
    };
    // One of the two uncertainties holds what the gauge is off by.
    let strayed = normal(libm::hypot(left.standard_uncertainty, right.standard_uncertainty));
    let own_pa = f64::min(left.standard_uncertainty, right.standard_uncertainty);
    let at_face = if sides_equal(Some(left), Some(right)) == Some(true) {
        (1.0 - NOT_YET_EQUAL) * normal(core::f64::consts::SQRT_2 * own_pa) + NOT_YET_EQUAL / APART_PA
    } else {
        // The figure at rest is judged here and not at face value: what it could have been there stands against it.
        NOT_YET_EQUAL / APART_PA * ANYWHERE_PER_K
    };
    Some((sides, strayed / at_face))
}

/// The square root of two pi.
const SQRT_2_PI: f64 = 2.506_628_274_631_000_7;

/// Whether the two sides read the same within their instruments; `None` when one is missing.
pub(super) fn sides_equal(low: Option<Reading<Pressure>>, high: Option<Reading<Pressure>>) -> Option<bool> {
    let (low, high) = (low?, high?);
    let tolerance = 2.0 * libm::hypot(low.standard_uncertainty, high.standard_uncertainty);
    Some(libm::fabs(pa(high) - pa(low)) <= tolerance.clamp(SURELY_EQUAL_PA, EQUAL_PA))
}

/// Sides that differ by more never count as equal, however coarse the gauges, Pa. Source: engineering judgement (5 psi).
const EQUAL_PA: f64 = 35_000.0;

/// Sides that differ by no more always count as equal, Pa. Source: engineering judgement (1 psi).
const SURELY_EQUAL_PA: f64 = 7_000.0;

pub(super) fn pa(reading: Reading<Pressure>) -> f64 {
    match reading.value {
        Pressure::Absolute(pressure) => pressure.pa(),
        Pressure::Gauge(pressure) => pressure.pa(),
    }
}
