//! Gauges that are off, hoses that are shut and probes in the wrong place: readings with an unknown error.
//!
//! A gauge that does not return to zero has the same offset all along its scale. The offset is unknown and may have either
//! sign: integrated over its normal prior, it is a larger uncertainty of that pressure alone. A probe in the wrong place shows
//! a temperature between that of the part and that of the air around it: a share, with a normal prior, of the difference that a
//! sound system has. Behind a hose that is shut the pressure of that side counts as unread, and what its gauge shows is judged
//! by itself.

use super::case::Case;
use crate::circuit::{Estimate, FeatureVector, Reading, Readings};
use crate::expected::SoundModel;
use crate::names::EntryError;
use crate::units::{
    AbsolutePressure, Pressure, Temperature, difference_in_kelvins, in_kelvins, kelvins, kelvins_difference,
};

/// Standard deviation of the offset of a gauge that is off, Pa. Source: engineering judgement: 7 psi.
const ZERO_PA: f64 = 50_000.0;
/// For a coarse gauge it is at least this many times its own uncertainty, or it would not be worth suspecting.
const COARSE: f64 = 3.0;

/// Share of the difference from the part to the air around it by which a probe in the wrong place is wrong, and its standard
/// deviation. Source: engineering judgement: a vent thermometer beside the stream, a line touched from one side only.
const VENT: Share = Share { mean: 0.4, sd: 0.2 };
const LINE: Share = Share { mean: 0.35, sd: 0.2 };

/// A probe is suspected only where its reading deviates at least this many standard deviations towards the air.
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

/// The probe that an entry error is about.
pub(super) const fn probe(entry_error: EntryError) -> Option<Probe> {
    match entry_error {
        EntryError::VentProbeAside => Some(Probe::Vent),
        EntryError::SuctionProbeLoose => Some(Probe::Suction),
        EntryError::LiquidProbeLoose => Some(Probe::Liquid),
        EntryError::DischargeProbeLoose => Some(Probe::Discharge),
        EntryError::SwappedHoses
        | EntryError::KpaTypedAsPsi
        | EntryError::PsiTypedAsKpa
        | EntryError::AbsoluteTypedAsGauge
        | EntryError::GaugeTypedAsAbsolute
        | EntryError::ZeroedAtSeaLevel
        | EntryError::LowGaugeOff
        | EntryError::HighGaugeOff
        | EntryError::BothGaugesOff
        | EntryError::LowHoseShut
        | EntryError::HighHoseShut => None,
    }
}

/// Whether the low gauge is off.
pub(super) const fn low_is_off(entry_error: EntryError) -> bool {
    matches!(entry_error, EntryError::LowGaugeOff | EntryError::BothGaugesOff)
}

/// Whether the high gauge is off.
pub(super) const fn high_is_off(entry_error: EntryError) -> bool {
    matches!(entry_error, EntryError::HighGaugeOff | EntryError::BothGaugesOff)
}

/// Standard uncertainty of a pressure, Pa; with the offset of a gauge that is off.
pub(super) fn uncertain_pa(side: Reading<Pressure>, off: bool) -> f64 {
    let own_pa = side.standard_uncertainty.pa();
    if off {
        libm::hypot(own_pa, zero_pa(own_pa))
    } else {
        own_pa
    }
}

fn zero_pa(own_pa: f64) -> f64 {
    f64::max(ZERO_PA, COARSE * own_pa)
}

/// Standard deviation of the pressure that stays in a shut hose, Pa. Source: engineering judgement: 1 psi.
const HOSE_PA: f64 = 7_000.0;
/// Part of the shut hoses whose gauge shows the air; that of the others shows the other side, through an open manifold. Source:
/// engineering judgement.
const SHOWS_AIR: f64 = 0.9;
/// A hose is not suspected where its gauge is more than this many standard deviations from both.
const FAR_FROM_SHUT: f64 = 3.0;
/// Standard deviation of a pressure that counts as unread, K: far more than any state allows.
const UNREAD_K: f64 = 200.0;

/// Density of what the gauge of a shut hose shows, 1/Pa; both sides above vacuum.
fn behind_a_shut_hose(own: Reading<Pressure>, other: Option<Reading<Pressure>>, air_pa: f64) -> f64 {
    let from = |at_pa: f64, uncertain_pa: f64| {
        let sd_pa = libm::hypot(libm::hypot(own.standard_uncertainty.pa(), uncertain_pa), HOSE_PA);
        let z = (pa(own) - at_pa) / sd_pa;
        if libm::fabs(z) > FAR_FROM_SHUT {
            return 0.0;
        }
        libm::exp(-0.5 * z * z) / (sd_pa * SQRT_2_PI)
    };
    let as_other = other.map_or(0.0, |other| from(pa(other), other.standard_uncertainty.pa()));
    SHOWS_AIR * from(air_pa, 0.0) + (1.0 - SHOWS_AIR) * as_other
}

/// The features with the side behind a shut hose as unread, and the density of what its gauge shows over that of an unread
/// pressure. For other entry errors the features stay as they are; `None` where the gauge does not read like one of a shut
/// hose.
pub(super) fn beyond_a_shut_hose(
    case: &Case,
    sound: &SoundModel,
    entry_error: EntryError,
    mut features: FeatureVector,
) -> Option<(FeatureVector, f64)> {
    let Some(place) = shut_side(entry_error) else {
        return Some((features, 1.0));
    };
    let air = case.conditions.surroundings;
    let absolute = |side: Reading<Pressure>| Reading {
        value: side.value.absolute(air).into(),
        ..side
    };
    let [low, high] = [case.readings.low_side, case.readings.high_side].map(|side| side.map(absolute));
    let (own, other) = if place == FeatureVector::LOW_SIDE {
        (low?, high)
    } else {
        (high?, low)
    };
    let per_pa = behind_a_shut_hose(own, other, air.pressure().pa());
    let saturated = |pa: f64| {
        let pressure = AbsolutePressure::from_pa(pa);
        Some(in_kelvins(case.system.refrigerant.dew_temperature(pressure).ok()?))
    };
    let (below, above) = (0.99 * pa(own), 1.01 * pa(own));
    let pa_per_k = (above - below) / (saturated(above)? - saturated(below)?);
    features.read[place] = Some(Estimate {
        value: -sound.below_ambient(place).0,
        standard_uncertainty: UNREAD_K,
    });
    (per_pa > 0.0).then_some((features, per_pa * pa_per_k * UNREAD_K * SQRT_2_PI))
}

/// The feature of the side whose hose is shut by an entry error.
pub(super) const fn shut_side(entry_error: EntryError) -> Option<usize> {
    if matches!(entry_error, EntryError::LowHoseShut) {
        Some(FeatureVector::LOW_SIDE)
    } else if matches!(entry_error, EntryError::HighHoseShut) {
        Some(FeatureVector::HIGH_SIDE)
    } else {
        None
    }
}

/// The readings with that of a probe in the wrong place corrected by its mean error; `None` when it was not read, or is not
/// suspected.
pub(super) fn corrected(case: &Case, sound: &SoundModel, entry_error: Option<EntryError>) -> Option<Readings> {
    let mut readings = case.readings;
    let Some(probe) = entry_error.and_then(probe) else {
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
    let own_k = difference_in_kelvins(reading.standard_uncertainty);
    if toward_k < SUSPECT * libm::hypot(spread_k, own_k) {
        return None;
    }
    *reading = Reading {
        value: moved(reading.value, -share.mean * way_k),
        standard_uncertainty: kelvins_difference(libm::hypot(own_k, share.sd * way_k)),
    };
    Some(readings)
}

fn moved(temperature: Temperature, by_k: f64) -> Temperature {
    kelvins(in_kelvins(temperature) + by_k)
}

/// Chance that the sides of a system that rests are not yet equal. Source: engineering judgement.
const NOT_YET_EQUAL: f64 = 0.1;
/// Largest difference between them then, with a uniform density up to it, Pa. Source: engineering judgement.
const APART_PA: f64 = 500_000.0;
/// Uniform density of the pressure of one gauge when the other is set aside, 1/K.
const ANYWHERE_PER_K: f64 = 1.0 / 60.0;

/// The two sides, as far as they were read.
type BothSides = [Option<Reading<Pressure>>; 2];

/// The sides of a system at rest when one gauge is off or its hose shut: only the other one counts, and the likelihood of their
/// difference over that of sides that are not yet equal. `None` where no gauge is off, or none is left.
pub(super) fn at_rest(entry_error: EntryError, [low, high]: BothSides, air_pa: f64) -> Option<(BothSides, f64)> {
    let (left, right) = (low?, high?);
    let shut = shut_side(entry_error);
    let low_is_out = low_is_off(entry_error) || shut == Some(FeatureVector::LOW_SIDE);
    let high_is_out = high_is_off(entry_error) || shut == Some(FeatureVector::HIGH_SIDE);
    let sides = match (low_is_out, high_is_out) {
        (true, false) => [None, high],
        (false, true) => [low, None],
        (true, true) | (false, false) => return None,
    };
    let equal = sides_equal(Some(left), Some(right)) == Some(true);
    let apart_pa = pa(right) - pa(left);
    let normal = |sd_pa: f64| {
        let z = apart_pa / sd_pa;
        libm::exp(-0.5 * z * z) / (sd_pa * SQRT_2_PI)
    };
    let strayed = match shut {
        // Equal sides give no reason to suspect a hose.
        Some(_) if equal => return None,
        Some(FeatureVector::LOW_SIDE) => behind_a_shut_hose(left, None, air_pa),
        Some(_) => behind_a_shut_hose(right, None, air_pa),
        // One of the two uncertainties includes the offset of the gauge.
        None => normal(libm::hypot(
            left.standard_uncertainty.pa(),
            right.standard_uncertainty.pa(),
        )),
    };
    let own_pa = f64::min(left.standard_uncertainty.pa(), right.standard_uncertainty.pa());
    let at_face = if equal {
        (1.0 - NOT_YET_EQUAL) * normal(core::f64::consts::SQRT_2 * own_pa) + NOT_YET_EQUAL / APART_PA
    } else {
        // With one gauge set aside the pressure at rest is judged, at face value it is not: a uniform density takes its place.
        NOT_YET_EQUAL / APART_PA * ANYWHERE_PER_K
    };
    Some((sides, strayed / at_face))
}

/// The square root of two pi.
const SQRT_2_PI: f64 = 2.506_628_274_631_000_7;

/// Whether the two sides read the same within their instruments; `None` when one is missing.
pub(super) fn sides_equal(low: Option<Reading<Pressure>>, high: Option<Reading<Pressure>>) -> Option<bool> {
    let (low, high) = (low?, high?);
    let tolerance = 2.0 * libm::hypot(low.standard_uncertainty.pa(), high.standard_uncertainty.pa());
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

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::names::{Compressor, Expansion, Refrigerant};
    use crate::units::{GaugePressure, PressureDifference, Surroundings, celsius};
    use crate::vehicle::{Conditions, System};

    fn side(pa: f64, u_pa: f64) -> Reading<Pressure> {
        Reading {
            value: AbsolutePressure::from_pa(pa).into(),
            standard_uncertainty: PressureDifference::from_pa(u_pa),
        }
    }

    /// A gauge that does not return to zero is off by some 7 psi (engineering judgement), a coarse one by three times what it may err
    /// by anyway: it is worth suspecting only where its reading then says less by as much.
    #[test]
    fn a_gauge_that_is_off_is_off_by_seven_psi_or_three_times_its_own_error() {
        let seven_psi = 7.0 * 6_894.757;
        for own_pa in [500.0, 2_000.0, 5_000.0] {
            let off_pa = uncertain_pa(side(1e6, own_pa), true);
            assert!((off_pa / seven_psi - 1.0).abs() < 0.05, "{off_pa}");
            assert!((uncertain_pa(side(1e6, own_pa), false) - own_pa).abs() < 1e-9);
        }
        for own_pa in [20_000.0, 50_000.0] {
            let times = uncertain_pa(side(1e6, own_pa), true) / own_pa;
            assert!((3.0..3.3).contains(&times), "{times}");
        }
    }

    /// Nine of ten gauges behind a shut hose show the air, the others show the other side through an open manifold; what they show
    /// scatters by 1 psi, and a gauge that shows more than three times that of either is behind no shut hose (engineering judgement).
    #[test]
    fn a_gauge_behind_a_shut_hose_shows_the_air_or_the_other_side() {
        let (air_pa, other_pa) = (83_500.0, 1_400_000.0);
        let density = |pa: f64| behind_a_shut_hose(side(pa, 0.0), Some(side(other_pa, 0.0)), air_pa);
        let share = |about_pa: f64| {
            let steps = (-400..=400).map(|step| density(about_pa + 100.0 * f64::from(step)));
            100.0 * steps.sum::<f64>()
        };
        // Within three standard deviations lie 99.73 % of a normal distribution.
        assert!((share(air_pa) - 0.9 * 0.997_3).abs() < 1e-3, "{}", share(air_pa));
        assert!((share(other_pa) - 0.1 * 0.997_3).abs() < 1e-3, "{}", share(other_pa));
        for sign in [1.0, -1.0] {
            for (psi, shut) in [(2.9, true), (3.2, false)] {
                let pa = air_pa + sign * psi * 6_894.757;
                assert_eq!(density(pa) > 0.0, shut, "{psi}");
            }
        }
    }

    /// At rest one side in ten is not yet equal to the other, by anything up to 5 bar, and any pressure from the coldest to the hottest
    /// day counts as likely then: 60 K (engineering judgement). A gauge that is off by two of its 50 kPa explains 100 kPa between the
    /// sides better than that: exp(-2) / (50 kPa sqrt(2 pi)) over 0.1 / 500 kPa / 60 is 324.
    #[test]
    fn a_gauge_that_is_off_explains_sides_at_rest_that_differ() {
        let sides = [Some(side(600_000.0, 50_000.0)), Some(side(500_000.0, 0.0))];
        let (left, times) = at_rest(EntryError::LowGaugeOff, sides, 83_500.0).unwrap();
        assert!(left[0].is_none() && left[1].is_some());
        assert!((times - 324.0).abs() < 1.0, "{times}");
        // Sides that read the same give a gauge no blame: with 2 kPa each, 0.5 / 50 over 0.9 / 2 sqrt(2).
        let sides = [Some(side(500_000.0, 50_000.0)), Some(side(500_000.0, 2_000.0))];
        let (_, times) = at_rest(EntryError::LowGaugeOff, sides, 83_500.0).unwrap();
        assert!((times - 0.062_8).abs() < 0.001, "{times}");
    }

    /// A vent thermometer beside the stream reads too warm by 0.4 of what a sound vent lies below the air (engineering judgement). It is
    /// suspected from one standard deviation of sound vents and of the thermometer on.
    #[test]
    fn a_vent_that_reads_warm_is_corrected_from_one_standard_deviation_on() {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let mut case = Case::new(
            system,
            Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL),
            Readings::default(),
        );
        let sound = SoundModel::of(&system, &case.conditions).unwrap();
        let band = sound.band(crate::names::Feature::Vent).unwrap();
        let (below_k, spread_k) = sound.below_ambient(FeatureVector::VENT);
        assert!((303.15 - below_k - band.median).abs() < 1.0 && below_k > 10.0);
        let mut corrected_k = |deviations: f64| {
            let own_k = 0.5;
            let noted_k = 303.15 - below_k + deviations * libm::hypot(spread_k, own_k);
            case.readings.vent = Some(Reading {
                value: kelvins(noted_k),
                standard_uncertainty: kelvins_difference(own_k),
            });
            let corrected = corrected(&case, &sound, Some(EntryError::VentProbeAside))?;
            Some(noted_k - in_kelvins(corrected.vent?.value))
        };
        assert_eq!(corrected_k(0.95), None);
        assert_eq!(corrected_k(-3.0), None, "a cold vent is in the stream");
        let by_k = corrected_k(1.05).unwrap();
        assert!((by_k - 0.4 * below_k).abs() < 1e-9, "{by_k}");
    }

    /// 1 psi apart is equal however fine the gauges, 5 psi is not however coarse they are; between them 2 standard uncertainties of
    /// the difference count, here 2 * 10 kPa.
    #[test]
    fn sides_are_equal_within_their_gauges_and_two_bounds() {
        let equal = |apart_pa: f64, u_pa: f64| {
            let side = |pa: f64, u_pa: f64| {
                Some(Reading {
                    value: GaugePressure::from_pa(pa).into(),
                    standard_uncertainty: PressureDifference::from_pa(u_pa),
                })
            };
            sides_equal(side(500_000.0, 0.6 * u_pa), side(500_000.0 + apart_pa, 0.8 * u_pa))
        };
        for sign in [1.0, -1.0] {
            assert_eq!(
                (equal(6_900.0 * sign, 0.0), equal(7_100.0 * sign, 0.0)),
                (Some(true), Some(false))
            );
            assert_eq!(
                (equal(34_500.0 * sign, 1e6), equal(35_500.0 * sign, 1e6)),
                (Some(true), Some(false))
            );
            assert_eq!(
                (equal(19_800.0 * sign, 1e4), equal(20_200.0 * sign, 1e4)),
                (Some(true), Some(false))
            );
        }
        assert_eq!(sides_equal(None, None), None);
    }
}
