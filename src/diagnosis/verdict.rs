//! From probabilities to a verdict, and the notes that go with it.

use super::answer::{Deviation, RankedFault, TwoFaults, Verdict};
use super::case::{Case, Settings};
use super::cloud::Cloud;
use super::faults::{index, row};
use super::features::{FEATURES, Features, equal_sides, place};
use super::list::List;
use super::posterior::{NONE, Posterior};
use super::scene::Scene;
use crate::expected::{settled, stroke_limit};
use crate::names::{Check, Fault, Feature, QualityNote, VerdictKind};
use crate::numerics::{put_in_order, sqrt};
use crate::units::STANDARD_PRESSURE_PA;

/// A rival below this share of the leading fault does not matter.
const RIVAL_SHARE: f64 = 0.02;

/// An explanation leads clearly when it is this many times as likely as the next.
const CLEAR_LEAD: f64 = 2.0;

/// A list of four that holds this share of what a short list should is told all the same. Source: engineering judgement.
const FULL_LIST: f64 = 0.8;

/// Two faults at once are spoken of when they are likelier than not.
const EVEN_ODDS: f64 = 0.5;

/// A figure is out of line from this share of the density that it has when the cause is anything.
const OUT_OF_LINE: f64 = 0.6;

/// Normal quantile of the middle 80 %: the range that is told of a severity.
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

fn severity(posterior: &Posterior, fault: Fault) -> Option<(f64, f64)> {
    let row = row(fault);
    if row.measure.is_empty() {
        return None;
    }
    let (mean, sd) = posterior.severity(fault);
    let (mean, sd) = between_none_and_all(mean, sd);
    let reach = LIMIT_80 * sd;
    Some((f64::max(mean - reach, 0.0), f64::min(mean + reach, 1.0)))
}

/// Mean and standard deviation of a normal distribution that is cut off below zero and above one: a severity is a share,
/// which the straight lines of the clouds do not know.
///
/// Source: Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions 1, 2nd ed., section 13.10.1.
fn between_none_and_all(mean: f64, sd: f64) -> (f64, f64) {
    /// Farther outside than this many standard deviations is as good as on the limit, and keeps the tails above zero.
    const FAR: f64 = 30.0;
    if sd <= 0.0 {
        return (mean.clamp(0.0, 1.0), 0.0);
    }
    // Mirrored so that the larger part of what is cut off lies below: the difference of the tails is then exact.
    let mirrored = mean > 0.5;
    let mean = f64::max(if mirrored { 1.0 - mean } else { mean }, -FAR * sd);
    let (from, to) = (-mean / sd, (1.0 - mean) / sd);
    let tail = |z: f64| 0.5 * libm::erfc(z * core::f64::consts::FRAC_1_SQRT_2);
    let density = |z: f64| libm::exp(-0.5 * z * z) * INVERSE_SQRT_2_PI;
    let inside = tail(from) - tail(to);
    let (at_from, at_to) = (density(from) / inside, density(to) / inside);
    let shift = at_from - at_to;
    let variance = f64::max(1.0 + from * at_from - to * at_to - shift * shift, 0.0);
    let mean = mean + sd * shift;
    (if mirrored { 1.0 - mean } else { mean }, sd * sqrt(variance))
}

/// Peak of the normal distribution.
const INVERSE_SQRT_2_PI: f64 = 0.398_942_280_401_432_7;

/// What was measured beside what a sound system shows.
pub(super) fn deviations(figures: &Features, scene: &Scene) -> List<Deviation, FEATURES> {
    let blank = Deviation {
        feature: Feature::LowSide,
        measured: 0.0,
        standard_uncertainty: 0.0,
        expected: crate::expected::Spread {
            median: 0.0,
            down: 1.0,
            up: 1.0,
        },
        deviation: 0.0,
    };
    let mut deviations = List::new(blank);
    for feature in Feature::ALL {
        let i = place(feature);
        if let (Some(measured), Some(expected)) = (figures.measured[i], scene.healthy[i]) {
            let with_instrument = expected.widened(measured.standard_uncertainty, measured.standard_uncertainty);
            deviations.push(Deviation {
                feature,
                measured: measured.value,
                standard_uncertainty: measured.standard_uncertainty,
                expected,
                deviation: with_instrument.deviation(measured.value),
            });
        }
    }
    deviations
}

/// The figure that fits the leading explanation clearly worse than anything at all would.
pub(super) fn out_of_line(posterior: &Posterior, scene: &Scene, figures: &Features, leading: Fault) -> Option<Feature> {
    let mut worst = (OUT_OF_LINE, None);
    for feature in Feature::ALL {
        if let Some(fit) = posterior.fit(scene, figures, leading, feature)
            && fit < worst.0
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
    deviations: &[Deviation],
    two_faults: Option<TwoFaults>,
    parting: &dyn Fn(Fault, Fault) -> Option<Check>,
) -> Verdict {
    let Some(first) = ranked.first() else {
        return Verdict::of(VerdictKind::NotEnoughEvidence);
    };
    // That a system is as sound as most says little against the prior, and yet much when both sides and more were read.
    let in_order = sound(settings, ranked, deviations);
    if posterior.information() < settings.least_information && !(in_order && deviations.len() > 2) {
        return Verdict::of(VerdictKind::NotEnoughEvidence);
    }
    if let Some(pair) = two_faults.filter(|pair| pair.probability > EVEN_ODDS) {
        // No single name is right then; which of the two to see to first, the check tells.
        let [first, second] = pair.faults;
        let mut faults = List::new(Fault::NoFault);
        faults.push(first);
        faults.push(second);
        return Verdict {
            kind: VerdictKind::CannotTell,
            faults,
            rival: None,
            parting_check: parting(first, second),
        };
    }
    let none = posterior.probability[NONE];
    if none >= settings.nothing_fits || none >= CLEAR_LEAD * first.probability {
        return Verdict::of(VerdictKind::NothingFits);
    }
    let rival = ranked
        .iter()
        .skip(1)
        .find(|other| other.fault != Fault::NoFault && other.probability >= RIVAL_SHARE * first.probability)
        .map(|other| other.fault);
    let parting_check = rival.and_then(|rival| parting(first.fault, rival));
    if in_order {
        // A sound system is more than one reading in its band.
        let kind = if deviations.len() >= 2 {
            VerdictKind::Healthy
        } else {
            VerdictKind::NotEnoughEvidence
        };
        return Verdict {
            rival,
            parting_check,
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
            parting_check,
        };
    }
    let mut held = 0.0;
    for fault in ranked.iter().take(4) {
        faults.push(fault.fault);
        held += fault.probability;
        if held >= settings.short_list {
            break;
        }
    }
    if held < FULL_LIST * settings.short_list {
        return Verdict {
            rival,
            parting_check,
            ..Verdict::of(VerdictKind::NotEnoughEvidence)
        };
    }
    let parting_check = match *faults {
        [first, second, ..] => parting(first, second),
        [_] | [] => parting_check,
    };
    Verdict {
        kind: VerdictKind::CannotTell,
        faults,
        rival,
        parting_check,
    }
}

/// Slight faults read like a sound system and keep a share of the probability, low charge most of all; so a system counts
/// as sound when every figure lies in its 95 % band, no single fault leads, and the probability is at least
/// `settings.healthy`; or when its probability would do to name a fault.
fn sound(settings: &Settings, ranked: &[RankedFault], deviations: &[Deviation]) -> bool {
    let likeliest = |sound: bool| {
        let of = ranked.iter().filter(|ranked| (ranked.fault == Fault::NoFault) == sound);
        of.map(|ranked| ranked.probability).fold(0.0, f64::max)
    };
    let within = deviations
        .iter()
        .all(|deviation| libm::fabs(deviation.deviation) <= LIMIT_95);
    let (none, most) = (likeliest(true), likeliest(false));
    none >= settings.named || (within && none >= settings.healthy && none >= LEADS * most)
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
    off_scale: bool,
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
        .clutch_cycles_hz
        .is_some_and(|reading| reading.value > 0.0);
    let by_transducer = case.readings.high_side_transducer.is_some();
    let gauges = case.readings.low_side.is_some() || case.readings.high_side.is_some() || !by_transducer;
    let pressures = posterior.knows(Feature::LowSide) || posterior.knows(Feature::HighSide);
    let mut notes = List::new(QualityNote::FewReadings);
    for (note, holds) in [
        (QualityNote::AtRest, at_rest),
        (QualityNote::FewReadings, running && !knows_all),
        (QualityNote::SidesEqual, running && equal_sides(case) == Some(true)),
        (QualityNote::OffScale, off_scale),
        (QualityNote::ReadingOutOfLine, out_of_line.is_some()),
        (
            QualityNote::TwoFaultsPossible,
            two_faults.is_some_and(|pairs| pairs.any_pair > EVEN_ODDS),
        ),
        (QualityNote::NotSettled, running && settled(conditions) == Some(false)),
        (
            QualityNote::OutsideFit,
            scene.cloud.as_ref().is_some_and(Cloud::is_beyond_fit),
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
    use super::{between_none_and_all, sqrt};

    /// Source: the same integrals by the midpoint rule.
    #[test]
    fn what_is_told_of_a_severity_lies_between_none_and_all() {
        for (mean, sd) in [
            (0.5, 0.1),
            (0.1, 0.3),
            (0.95, 0.2),
            (1.2, 0.15),
            (-0.4, 0.2),
            (0.5, 5.0),
        ] {
            let n = 200_000;
            let (mut mass, mut first, mut second) = (0.0, 0.0, 0.0);
            for i in 0..n {
                let x = (f64::from(i) + 0.5) / f64::from(n);
                let z = (x - mean) / sd;
                let density = libm::exp(-0.5 * z * z);
                mass += density;
                first += density * x;
                second += density * x * x;
            }
            let expected = first / mass;
            let spread = sqrt(second / mass - expected * expected);
            let (cut_mean, cut_sd) = between_none_and_all(mean, sd);
            assert!(
                (cut_mean - expected).abs() < 1e-8,
                "{mean} {sd}: {cut_mean}, not {expected}"
            );
            assert!((cut_sd - spread).abs() < 1e-7, "{mean} {sd}: {cut_sd}, not {spread}");
        }
        for far in [-1e6, -40.0, 41.0, 1e6] {
            let (mean, sd) = between_none_and_all(far, 0.5);
            assert!(
                (0.0..=1.0).contains(&mean) && (0.0..0.5).contains(&sd),
                "{far}: {mean} {sd}"
            );
        }
        assert_eq!(between_none_and_all(1.5, 0.0), (1.0, 0.0));
    }
}
