//! From probabilities to a verdict, and the notes that go with it.

use super::answer::{Deviation, RankedFault, TwoFaults, Verdict};
use super::case::Case;
use super::faults::{index, row};
use super::features::{FEATURES, equal_sides, place};
use super::list::List;
use super::looks;
use super::posterior::Posterior;
use super::rest;
use super::scene::Scene;
use super::settings::Settings;
use crate::circuit::{Derived, Estimate, FeatureVector};
use crate::expected::{Band, SoundModel, settled, stroke_limit};
use crate::names::{Fault, Feature, QualityNote, VerdictKind};
use crate::numerics::{put_in_order, sqrt};
use crate::units::STANDARD_PRESSURE_PA;

/// A rival below this share of the leading fault does not matter.
const RIVAL_SHARE: f64 = 0.02;

/// Two faults at once are named, and a list of four faults with less than `settings.short_list` is given, when they are
/// likelier than not.
const EVEN_ODDS: f64 = 0.5;

/// A figure is out of line below this share of the density that it has under an unlisted cause.
const OUT_OF_LINE: f64 = 0.6;

/// Normal quantile of the middle 80 %.
const LIMIT_80: f64 = 1.281_551_565_544_600_4;

/// The faults that exist in the system, the likeliest first.
pub(super) fn ranked(posterior: &Posterior, scene: &Scene) -> List<RankedFault, { Fault::ALL.len() }> {
    let mut ranked = List::new(RankedFault::BLANK);
    for fault in Fault::ALL {
        if row(fault).exists(scene.bit) {
            let probability = posterior.probability[index(fault)];
            ranked.push(RankedFault {
                fault,
                probability,
                severity: severity(posterior, fault),
                ..RankedFault::BLANK
            });
        }
    }
    put_in_order(ranked.items_mut(), |a, b| {
        b.probability
            .total_cmp(&a.probability)
            .then(a.fault.cmp(&b.fault))
            .is_lt()
    });
    let first = ranked.first().map_or(Fault::NoFault, |f| f.fault);
    let second = ranked.get(1).map_or(Fault::NoFault, |f| f.fault);
    for fault in ranked.items_mut() {
        fault.rival = if fault.fault == first { second } else { first };
    }
    ranked
}

/// Without liquid the charge is the mass of its vapour, which is known better than its effect on the pressure at rest.
pub(super) fn weigh_missing(faults: &mut [RankedFault], missing: (f64, f64)) {
    for ranked in faults.iter_mut().filter(|ranked| ranked.fault == Fault::Undercharge) {
        ranked.severity = Some(missing);
    }
}

fn severity(posterior: &Posterior, fault: Fault) -> Option<(f64, f64)> {
    (!row(fault).measure.is_empty()).then(|| posterior.severity(fault))
}

/// A figure that was measured, and how far it lies from the median of sound systems.
#[derive(Clone, Copy)]
pub(super) struct Measured {
    feature: Feature,
    measured: f64,
    standard_uncertainty: f64,
    deviation: f64,
}

/// What was measured against what a sound system shows.
///
/// The condenser outlet speaks for the liquid line where that was not read, and is judged by its band.
pub(super) fn measured(posterior: &Posterior, scene: &Scene, derived: &Derived) -> List<Measured, FEATURES> {
    let mut all = List::new(Measured {
        feature: Feature::LowSide,
        measured: 0.0,
        standard_uncertainty: 0.0,
        deviation: 0.0,
    });
    if let Some(measured) = posterior.rest() {
        all.push(Measured {
            feature: Feature::RestPressure,
            measured: measured.value,
            standard_uncertainty: measured.standard_uncertainty,
            deviation: rest::deviation(measured),
        });
    }
    let (Some(sound), Some(features)) = (&scene.sound, posterior.features()) else {
        return all;
    };
    for feature in Feature::ALL {
        let Some(view) = sound.view(feature) else {
            continue;
        };
        let mut as_read = view;
        if feature == Feature::Subcooling && features.read[FeatureVector::LIQUID_LINE].is_none() {
            as_read.minus = Some(FeatureVector::CONDENSER_OUTLET);
        }
        let (mut value, mut variance) = (view.from, 0.0);
        let mut read = true;
        for (i, one) in as_read.features() {
            match features.read[i] {
                Some(reading) => {
                    value += one * reading.value;
                    variance += reading.standard_uncertainty * reading.standard_uncertainty;
                }
                None => read = false,
            }
        }
        if read {
            let mut known = Estimate {
                value,
                standard_uncertainty: sqrt(variance),
            };
            // The glide of a blend is that at the reading, not that of the median.
            if let (Feature::DischargeSuperheat, Some(superheat)) = (feature, derived.discharge_superheat) {
                known = superheat.si();
            }
            all.push(Measured {
                feature,
                measured: known.value,
                standard_uncertainty: known.standard_uncertainty,
                deviation: sound.deviation_along(&view, known.value, known.standard_uncertainty),
            });
        }
    }
    all
}

/// The same with the bands of a sound system.
pub(super) fn deviations(all: &[Measured], bands: &[Option<Band<f64>>; FEATURES]) -> List<Deviation, FEATURES> {
    let told = |measured: &Measured| Deviation {
        feature: measured.feature,
        measured: measured.measured,
        standard_uncertainty: measured.standard_uncertainty,
        expected: bands[place(measured.feature)].unwrap_or(REST_BAND),
        deviation: measured.deviation,
    };
    let mut deviations = List::new(Deviation {
        feature: Feature::LowSide,
        measured: 0.0,
        standard_uncertainty: 0.0,
        expected: REST_BAND,
        deviation: 0.0,
    });
    for measured in all {
        deviations.push(told(measured));
    }
    deviations
}

/// Where the pressure of a sound system at rest lies.
const REST_BAND: Band<f64> = {
    let (median, down, up) = rest::AT_REST;
    Band {
        low_95: median - LIMIT_95 * down,
        low_80: median - LIMIT_80 * down,
        median,
        high_80: median + LIMIT_80 * up,
        high_95: median + LIMIT_95 * up,
    }
};

/// The measured figure that fits the leading explanation clearly worse than an unlisted cause.
#[inline(never)]
pub(super) fn out_of_line(
    posterior: &Posterior,
    scene: &Scene,
    measured: &[Measured],
    leading: Fault,
) -> Option<Feature> {
    let mut worst = (OUT_OF_LINE, None);
    for (feature, fit) in Feature::ALL.into_iter().zip(posterior.fits(scene, leading)) {
        if let Some(fit) = fit
            && fit < worst.0
            && measured.iter().any(|one| one.feature == feature)
        {
            worst = (fit, Some(feature));
        }
    }
    worst.1
}

/// What the readings allow one to say.
pub(super) fn verdict(
    settings: &Settings,
    posterior: &Posterior,
    ranked: &[RankedFault],
    measured: &[Measured],
    (out_of_line, two_faults): (Option<Feature>, Option<TwoFaults>),
) -> Verdict {
    let Some(first) = ranked.first() else {
        return Verdict::of(VerdictKind::NotEnoughEvidence);
    };
    // Normal readings bring little information over the prior, yet three or more of them suffice for a sound system.
    let contradicted = looks::speak_against_sound(posterior.observations(), &settings.looks);
    let in_order = !contradicted && sound(settings, ranked, measured, out_of_line);
    if posterior.information() < settings.least_information && !(in_order && measured.len() > 2) {
        return Verdict::of(VerdictKind::NotEnoughEvidence);
    }
    if let Some(pair) = two_faults.filter(|pair| pair.probability > EVEN_ODDS) {
        // No single fault is named then.
        let mut faults = List::new(Fault::NoFault);
        for fault in pair.faults {
            faults.push(fault);
        }
        return Verdict {
            kind: VerdictKind::CannotTell,
            faults,
            rival: None,
        };
    }
    let none = posterior.unexplained;
    if none >= settings.nothing_fits {
        return Verdict::of(VerdictKind::NothingFits);
    }
    let rival = ranked
        .iter()
        .skip(1)
        .find(|other| other.fault != Fault::NoFault && other.probability >= RIVAL_SHARE * first.probability)
        .map(|other| other.fault);
    if in_order {
        // One reading in its band is not enough for a sound system.
        let kind = if measured.len() >= 2 {
            VerdictKind::Healthy
        } else {
            VerdictKind::NotEnoughEvidence
        };
        return Verdict {
            rival,
            ..Verdict::of(kind)
        };
    }
    let mut faults = List::new(Fault::NoFault);
    if first.fault != Fault::NoFault && first.probability >= settings.named {
        faults.push(first.fault);
        return Verdict {
            kind: VerdictKind::NamedFault,
            faults,
            rival,
        };
    }
    let mut held = 0.0;
    for fault in ranked.iter().take(4) {
        faults.push(fault.fault);
        held += fault.probability;
        // "No fault" is not listed alone where an answer contradicts it.
        let alone = contradicted && fault.fault == Fault::NoFault && faults.len() == 1;
        if held >= settings.short_list && !alone {
            break;
        }
    }
    if held < f64::min(EVEN_ODDS, settings.short_list) {
        return Verdict {
            rival,
            ..Verdict::of(VerdictKind::NotEnoughEvidence)
        };
    }
    Verdict {
        kind: VerdictKind::CannotTell,
        faults,
        rival,
    }
}

/// Slight faults read like a sound system and keep a share of the probability, low charge most of all; so a system counts as
/// sound when every figure lies in its 95 % band, no single fault leads, and the probability is at least `settings.healthy`; or
/// when its probability is at least `settings.named`, and each figure outside its band is reported as out of line.
fn sound(settings: &Settings, ranked: &[RankedFault], measured: &[Measured], out_of_line: Option<Feature>) -> bool {
    let likeliest = |sound: bool| {
        let of = ranked.iter().filter(|ranked| (ranked.fault == Fault::NoFault) == sound);
        of.map(|ranked| ranked.probability).fold(0.0, f64::max)
    };
    let within = |figure: &Measured| libm::fabs(figure.deviation) <= LIMIT_95;
    let told = |figure: &Measured| within(figure) || out_of_line == Some(figure.feature);
    let (none, most) = (likeliest(true), likeliest(false));
    (none >= settings.named && measured.iter().all(told))
        || (none >= settings.healthy && none >= LEADS * most && measured.iter().all(within))
}

/// A fault leads when the sound system has less than this share of its probability. Source: engineering judgement.
const LEADS: f64 = 0.8;

/// Normal quantile of the middle 95 %.
pub(super) const LIMIT_95: f64 = 1.959_963_984_540_054;

/// What made the answer less certain.
pub(super) fn quality(
    case: &Case,
    scene: &Scene,
    posterior: &Posterior,
    (out_of_line, two_faults): (Option<Feature>, Option<TwoFaults>),
) -> List<QualityNote, { QualityNote::ALL.len() }> {
    let conditions = &case.conditions;
    let at_rest = conditions.at_rest(case.system.compressor);
    let running = !at_rest;
    let knows_all = [Feature::LowSide, Feature::HighSide, Feature::Vent]
        .into_iter()
        .all(|f| posterior.knows(f));
    let air_pa = conditions.surroundings.pressure().pa();
    let zero_matters = libm::fabs(air_pa - STANDARD_PRESSURE_PA) > 6_000.0;
    let cycles = case
        .readings
        .clutch_cycles
        .is_some_and(|reading| reading.value.hz() > 0.0);
    let by_transducer = case.readings.high_side_transducer.is_some();
    let gauges = case.readings.low_side.is_some() || case.readings.high_side.is_some() || !by_transducer;
    let pressures = posterior.knows(Feature::LowSide) || posterior.knows(Feature::HighSide);
    let mut notes = List::new(QualityNote::FewReadings);
    for (note, holds) in [
        (QualityNote::AtRest, at_rest),
        (QualityNote::FewReadings, running && !knows_all),
        (QualityNote::SidesEqual, running && equal_sides(case) == Some(true)),
        (QualityNote::OffScale, posterior.off_scale()),
        (QualityNote::ReadingOutOfLine, out_of_line.is_some()),
        (
            QualityNote::TwoFaultsPossible,
            two_faults.is_some_and(|pairs| pairs.any_pair > EVEN_ODDS),
        ),
        (QualityNote::NotSettled, running && settled(conditions) == Some(false)),
        (
            QualityNote::OutsideFit,
            scene.sound.as_ref().is_some_and(SoundModel::is_beyond_fit),
        ),
        (
            QualityNote::RunningTimeUnknown,
            running && settled(conditions).is_none(),
        ),
        (
            QualityNote::HumidityUnknown,
            running && conditions.relative_humidity.is_none(),
        ),
        (
            QualityNote::AirSourceUnknown,
            posterior.knows(Feature::Vent) && conditions.air_source.is_none(),
        ),
        (
            QualityNote::GaugeZeroUnknown,
            zero_matters && gauges && case.readings.gauge_zero.is_none(),
        ),
        (QualityNote::ClutchCycling, running && cycles),
        (
            QualityNote::StrokeLimit,
            running && stroke_limit(&case.system, conditions),
        ),
        (
            QualityNote::GenericBand,
            pressures && case.own_table.is_none() && case.own_readings.is_none_or(|own| own.readings() == 0),
        ),
    ] {
        if holds {
            notes.push(note);
        }
    }
    notes
}

#[cfg(test)]
mod tests {
    use super::*;

    fn is_sound(none: f64, most: f64, deviation: f64, out_of_line: Option<Feature>) -> bool {
        let ranked = [(Fault::NoFault, none), (Fault::Undercharge, most)].map(|(fault, probability)| RankedFault {
            fault,
            probability,
            ..RankedFault::BLANK
        });
        let vent = Measured {
            feature: Feature::Vent,
            measured: 0.0,
            standard_uncertainty: 0.0,
            deviation,
        };
        sound(&Settings::default(), &ranked, &[vent], out_of_line)
    }

    /// No single fault leads: a sound system has at least 0.8 of the probability of the likeliest one, and 1 - 45 / 60 = 0.25 of all.
    #[test]
    fn a_system_is_sound_where_no_fault_leads() {
        assert!(is_sound(0.40, 0.49, 0.0, None) && !is_sound(0.40, 0.51, 0.0, None));
        assert!(is_sound(0.26, 0.20, 0.0, None) && !is_sound(0.24, 0.20, 0.0, None));
    }

    /// Every figure lies in its 95 % band, or is reported as out of line where the sound system has the probability to be
    /// named, 0.7.
    #[test]
    fn a_system_is_sound_where_its_figures_are() {
        assert!(is_sound(0.9, 0.05, 1.95, None) && is_sound(0.9, 0.05, -1.95, None));
        assert!(!is_sound(0.9, 0.05, 1.97, None) && !is_sound(0.9, 0.05, -1.97, None));
        let told = Some(Feature::Vent);
        assert!(is_sound(0.71, 0.05, 2.5, told) && !is_sound(0.69, 0.05, 2.5, told));
        assert!(!is_sound(0.71, 0.05, 2.5, Some(Feature::LowSide)));
    }
}
