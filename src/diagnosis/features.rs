//! From readings to the feature vector: as noted, and corrected for each entry error.

use super::case::Case;
use super::strays::{self, pa, sides_equal};
use crate::circuit::{FeatureVector, Reading, Readings};
use crate::error::Error;
use crate::expected::SoundModel;
use crate::names::{EntryError, Feature};
use crate::units::constants::PSI_PA;
use crate::units::{AbsolutePressure, Pressure, PressureDifference, STANDARD_PRESSURE_PA};

/// Number of figures.
pub(super) const FEATURES: usize = Feature::ALL.len();

/// The place of a figure in arrays over the vocabulary; codes count from one.
pub(super) const fn place(feature: Feature) -> usize {
    feature.code() as usize - 1
}

/// The figure that a place of the feature vector is read for.
pub(super) const FIGURE_OF: [Feature; FeatureVector::COUNT] = [
    Feature::LowSide,
    Feature::HighSide,
    Feature::Vent,
    Feature::Superheat,
    Feature::Subcooling,
    Feature::Subcooling,
    Feature::DischargeSuperheat,
    Feature::ClutchCycles,
];

/// The features of a running system, with the readings corrected for an entry error; `sound` is what a sound system shows.
///
/// `None` when the entry error cannot have happened here.
///
/// Errors: those of [`FeatureVector::of`].
pub(super) fn running(
    case: &Case,
    sound: &SoundModel,
    entry_error: Option<EntryError>,
) -> Result<Option<FeatureVector>, Error> {
    let Some(mut readings) = strays::corrected(case, sound, entry_error) else {
        return Ok(None);
    };
    if entry_error.and_then(strays::probe).is_none() {
        let Some([low, high]) = pressures(case, entry_error) else {
            return Ok(None);
        };
        readings.low_side = low;
        readings.high_side = high;
        readings.high_side_transducer = None;
    }
    let cycles = sound.view(Feature::ClutchCycles).is_some();
    readings.clutch_cycles = readings.clutch_cycles.filter(|_| cycles);
    let air = case.conditions.surroundings;
    let features = FeatureVector::of(case.system.refrigerant, &readings, case.conditions.ambient, air);
    match features {
        // A corrected pressure that no gauge shows rules the entry error out.
        Ok(features) if entry_error.is_some() && features.off_scale => Ok(None),
        Ok(features) => Ok(Some(features)),
        Err(_) if entry_error.is_some() => Ok(None),
        Err(error) => Err(error),
    }
}

/// The mean of the two sides, or the only one that was read.
fn mean(low: Option<Reading<Pressure>>, high: Option<Reading<Pressure>>) -> Option<Reading<Pressure>> {
    match (low, high) {
        (Some(low), Some(high)) => Some(absolute(
            0.5 * (pa(low) + pa(high)),
            0.5 * libm::hypot(low.standard_uncertainty.pa(), high.standard_uncertainty.pa()),
        )),
        (Some(one), None) | (None, Some(one)) => Some(one),
        (None, None) => None,
    }
}

/// The pressure of a system at rest: its saturation temperature above the ambient, whether it is off the scale of gauges, and
/// the factor of its likelihood for the difference between the sides. `None` when the sides differ, nothing was read, or the
/// entry error cannot have happened here.
pub(super) fn resting(case: &Case, entry_error: Option<EntryError>) -> Option<(crate::circuit::Estimate, bool, f64)> {
    let [low, high] = pressures(case, entry_error)?;
    let strays = entry_error.and_then(|entry_error| {
        strays::at_rest(entry_error, [low, high], case.conditions.surroundings.pressure().pa())
    });
    if sides_equal(low, high) == Some(false) && strays.is_none() {
        return None;
    }
    let ([low, high], beside) = strays.unwrap_or(([low, high], 1.0));
    let readings = Readings {
        low_side: Some(mean(low, high)?),
        ..Readings::default()
    };
    let air = case.conditions.surroundings;
    let features = FeatureVector::of(case.system.refrigerant, &readings, case.conditions.ambient, air).ok()?;
    let off_scale = features.off_scale;
    if entry_error.is_some() && off_scale {
        return None;
    }
    Some((features.read[FeatureVector::LOW_SIDE]?, off_scale, beside))
}

/// The pressure at rest of both sides together, above vacuum, and its saturation temperature above the ambient; `None` when the
/// sides differ or nothing was read.
pub(super) fn rest_pressure(case: &Case) -> Option<(Reading<Pressure>, crate::circuit::Estimate)> {
    let (warmer, _, _) = resting(case, None)?;
    let [low, high] = pressures(case, None)?;
    Some((mean(low, high)?, warmer))
}

/// Whether the two sides read the same within their instruments; `None` when one is missing.
pub(super) fn equal_sides(case: &Case) -> Option<bool> {
    let [low, high] = pressures(case, None)?;
    sides_equal(low, high)
}

/// A gauge zeroed at sea level is suspected where the air pressure differs by more from the standard one, Pa.
const SAME_AIR_PA: f64 = 4_000.0;

/// Both sides above vacuum, as noted or corrected for an entry error; `None` when that error cannot have happened.
fn pressures(case: &Case, entry_error: Option<EntryError>) -> Option<[Option<Reading<Pressure>>; 2]> {
    let Readings {
        low_side, gauge_zero, ..
    } = case.readings;
    let air = case.conditions.surroundings;
    let high_side = case.readings.high_side_known(air);
    let gauge = case.readings.high_side.is_some();
    // A transducer that agrees with the gauge shows that its zero and its hose are right.
    let cleared = case.readings.transducer_agrees(air) == Some(true);
    let sides = [low_side, high_side].map(|side| side.map(|reading| (reading, reading.value)));
    let air_pa = case.conditions.surroundings.pressure().pa();
    let datum = gauge_zero.unwrap_or(air);
    let (datum_pa, air_uncertain_pa) = (datum.pressure().pa(), datum.standard_uncertainty().pa());
    let possible = match entry_error {
        None => true,
        Some(EntryError::SwappedHoses | EntryError::BothGaugesOff) => low_side.is_some() && gauge && !cleared,
        Some(EntryError::LowGaugeOff | EntryError::LowHoseShut) => low_side.is_some(),
        Some(EntryError::HighGaugeOff) => high_side.is_some() && !cleared,
        Some(EntryError::HighHoseShut) => gauge && !cleared,
        Some(
            EntryError::VentProbeAside
            | EntryError::SuctionProbeLoose
            | EntryError::LiquidProbeLoose
            | EntryError::DischargeProbeLoose,
        ) => !case.conditions.at_rest(case.system.compressor),
        Some(EntryError::ZeroedAtSeaLevel) => {
            gauge_zero.is_none() && libm::fabs(air_pa - STANDARD_PRESSURE_PA) > SAME_AIR_PA
        }
        Some(
            EntryError::KpaTypedAsPsi
            | EntryError::PsiTypedAsKpa
            | EntryError::AbsoluteTypedAsGauge
            | EntryError::GaugeTypedAsAbsolute,
        ) => true,
    };
    let of_pressures = entry_error.is_some_and(|entry_error| strays::probe(entry_error).is_none());
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
            let own_pa = strays::uncertain_pa(reading, entry_error.is_some_and(off));
            let uncertain_pa = match shown {
                Pressure::Gauge(_) => libm::hypot(own_pa, air_uncertain_pa),
                Pressure::Absolute(_) => own_pa,
            };
            *meant = Some(absolute(meant_pa(shown, datum_pa, entry_error)?, uncertain_pa));
        }
    }
    let [low, high] = meant;
    Some(if entry_error == Some(EntryError::SwappedHoses) {
        [high, low]
    } else {
        [low, high]
    })
}

/// The pressure above vacuum that was meant by a noted one, given an entry error; `None` when that error cannot have happened.
fn meant_pa(noted: Pressure, datum_pa: f64, entry_error: Option<EntryError>) -> Option<f64> {
    let rescaled = |factor: f64| match noted {
        Pressure::Gauge(p) => p.pa() * factor + datum_pa,
        Pressure::Absolute(p) => p.pa() * factor,
    };
    match (entry_error, noted) {
        (
            None
            | Some(
                EntryError::SwappedHoses
                | EntryError::LowGaugeOff
                | EntryError::HighGaugeOff
                | EntryError::BothGaugesOff
                | EntryError::LowHoseShut
                | EntryError::HighHoseShut
                | EntryError::VentProbeAside
                | EntryError::SuctionProbeLoose
                | EntryError::LiquidProbeLoose
                | EntryError::DischargeProbeLoose,
            ),
            _,
        ) => Some(rescaled(1.0)),
        (Some(EntryError::KpaTypedAsPsi), _) => Some(rescaled(1_000.0 / PSI_PA)),
        (Some(EntryError::PsiTypedAsKpa), _) => Some(rescaled(PSI_PA / 1_000.0)),
        (Some(EntryError::AbsoluteTypedAsGauge), Pressure::Gauge(p)) => Some(p.pa()),
        (Some(EntryError::GaugeTypedAsAbsolute), Pressure::Absolute(p)) => Some(p.pa() + datum_pa),
        (Some(EntryError::ZeroedAtSeaLevel), Pressure::Gauge(p)) => Some(p.pa() + STANDARD_PRESSURE_PA),
        (Some(EntryError::AbsoluteTypedAsGauge | EntryError::ZeroedAtSeaLevel), Pressure::Absolute(_))
        | (Some(EntryError::GaugeTypedAsAbsolute), Pressure::Gauge(_)) => None,
    }
}

fn absolute(pa: f64, uncertain_pa: f64) -> Reading<Pressure> {
    Reading {
        value: AbsolutePressure::from_pa(pa).into(),
        standard_uncertainty: PressureDifference::from_pa(uncertain_pa),
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::circuit::Gauge;
    use crate::names::{Compressor, Expansion, Refrigerant};
    use crate::units::{GaugePressure, Surroundings, celsius};
    use crate::vehicle::{Conditions, System};

    /// A gauge zeroed at sea level is suspected where the air differs by 4 kPa, at 340 m or lower than -330 m: the weather
    /// alone moves it by 1.4 kPa at two standard uncertainties, and a needle of a dial is 7 kPa thick.
    #[test]
    fn a_zero_at_sea_level_is_suspected_from_four_kilopascals_on() {
        let suspected = |air_pa: f64| {
            let air = Surroundings::measured(AbsolutePressure::from_pa(air_pa)).unwrap();
            let low = Reading::pressure(GaugePressure::from_pa(200_000.0), Gauge::LOW_SIDE);
            let readings = Readings {
                low_side: Some(low),
                ..Readings::default()
            };
            let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
            let case = Case::new(system, Conditions::new(celsius(25.0), air), readings);
            pressures(&case, Some(EntryError::ZeroedAtSeaLevel)).is_some()
        };
        assert_eq!(
            (suspected(101_325.0 - 3_900.0), suspected(101_325.0 - 4_100.0)),
            (false, true)
        );
        assert_eq!(
            (suspected(101_325.0 + 3_900.0), suspected(101_325.0 + 4_100.0)),
            (false, true)
        );
    }
}
