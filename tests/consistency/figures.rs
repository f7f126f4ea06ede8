//! An answer shows bands, readings and derived figures in several places; each has the same value in all of them.

use crate::{Answered, LIMIT_95, differ, no_answer};
use coldloop::circuit::{Estimate, FeatureVector};
use coldloop::diagnosis::{Deviation, Diagnosis};
use coldloop::expected::{Band, Bands, SoundModel};
use coldloop::units::{
    AbsolutePressure, GaugePressure, Temperature, difference_in_kelvins, in_kelvins, kelvins_difference,
};
use coldloop::{Fault, Feature, QualityNote, RestFinding, VerdictKind};

/// Whether every pressure has a saturation temperature on the line and above -45 °C.
pub(crate) fn counts(answer: &Diagnosis) -> bool {
    let counts = |dew: Estimate<Temperature>| in_kelvins(dew.value) > FeatureVector::COLDEST_K + 0.01;
    answer.derived.low_dew.is_none_or(counts) && !answer.quality.contains(&QualityNote::OffScale)
}

fn numbers<Q: Copy>(band: &Band<Q>) -> [Q; 5] {
    [band.low_95, band.low_80, band.median, band.high_80, band.high_95]
}

impl Answered {
    fn sound(&self) -> Option<SoundModel> {
        let case = &self.asked.case;
        self.answer.expected?;
        let model = SoundModel::of(&case.system, &case.conditions).unwrap();
        let (own, table) = (case.own_readings.as_ref(), case.own_table.as_ref());
        Some(model.knowing(&case.system, &case.conditions, own, table).unwrap())
    }

    /// A band of the answer as the sound model has it: K, and ln(1 + engagements per minute).
    fn expected(&self, feature: Feature) -> Option<[f64; 5]> {
        let bands = self.answer.expected.as_ref()?;
        let air = self.asked.case.conditions.surroundings;
        let refrigerant = self.asked.case.system.refrigerant;
        let pressures = |band: &Band<GaugePressure>, bubble: bool| {
            let at = |pressure: GaugePressure| {
                let absolute = pressure.absolute(air);
                let t = if bubble {
                    refrigerant.bubble_temperature(absolute)
                } else {
                    refrigerant.dew_temperature(absolute)
                };
                t.map_or(f64::NAN, in_kelvins)
            };
            [band.low_95, band.low_80, band.median, band.high_80, band.high_95].map(at)
        };
        let points =
            |band: &Band<_>| [band.low_95, band.low_80, band.median, band.high_80, band.high_95].map(in_kelvins);
        let differences = |band: &Band<_>| {
            [band.low_95, band.low_80, band.median, band.high_80, band.high_95].map(difference_in_kelvins)
        };
        match feature {
            Feature::LowSide => Some(pressures(&bands.low_side, false)),
            Feature::HighSide => Some(pressures(&bands.high_side, true)),
            Feature::Vent => Some(points(&bands.vent)),
            Feature::Superheat => Some(differences(&bands.superheat)),
            Feature::Subcooling => Some(differences(&bands.subcooling)),
            Feature::DischargeSuperheat => Some(differences(&bands.discharge_superheat)),
            Feature::ClutchCycles => Some(numbers(&bands.clutch_cycles?).map(|cycles| cycles.per_minute().ln_1p())),
            Feature::RestPressure => None,
            _ => unreachable!("a new member of the vocabulary"),
        }
    }
}

#[test]
fn no_reading_is_far_off_in_a_sound_system() {
    no_answer(|Answered { answer, .. }| {
        let off = |deviation: &&Deviation| deviation.deviation.abs() > LIMIT_95;
        let off: Vec<_> = answer.deviations.iter().filter(off).collect();
        let named = |feature: Feature| answer.out_of_line == Some(feature);
        let told = off.iter().all(|deviation| named(deviation.feature));
        let is_wrong = answer.verdict.kind == VerdictKind::Healthy && !told;
        is_wrong.then(|| {
            let off: Vec<String> = off
                .iter()
                .map(|d| format!("{} {:+.2}", d.feature, d.deviation))
                .collect();
            let sound = answer.probability_of(&[Fault::NoFault]);
            format!(
                "sound ({sound:.2}), with {}, out of line {:?}",
                off.join(", "),
                answer.out_of_line
            )
        })
    });
}

/// Compares the bands in `expected`, in the deviations, of the sound model, and of `Bands::of`.
#[test]
fn each_figure_has_the_same_band_everywhere() {
    no_answer(|one| {
        let Answered { asked, answer, .. } = one;
        let sound = one.sound()?;
        let case = &asked.case;
        let bands = Bands::from_model(&sound, case.system.refrigerant, case.conditions.surroundings).unwrap();
        if answer.expected != Some(bands) {
            return Some("other bands than those of the sound model".into());
        }
        let knows_nothing = case.own_readings.is_none() && case.own_table.is_none();
        if knows_nothing && Bands::of(&case.system, &case.conditions) != Ok(bands) {
            return Some("other bands than Bands::of".into());
        }
        for deviation in &answer.deviations {
            let own = numbers(&deviation.expected);
            if Some(deviation.expected) != sound.band(deviation.feature) {
                return Some(format!("{}: {own:?} differs from the sound model", deviation.feature));
            }
            let expected = one.expected(deviation.feature)?;
            // Beyond its end the saturation line is not followed, and a temperature below -45 °C counts as -45 °C: not compared.
            let critical_k = coldloop::saturation::line_of(case.system.refrigerant).critical_t_k();
            let on_line = |k: &f64| *k > FeatureVector::COLDEST_K + 0.01 && *k < critical_k - 0.11;
            let differs =
                |(own, expected): (&f64, &f64)| on_line(own) && on_line(expected) && (own - expected).abs() > 1e-6;
            if own.iter().zip(&expected).any(differs) {
                return Some(format!("{}: {own:?} and {expected:?}", deviation.feature));
            }
        }
        None
    });
}

/// Whether the condenser outlet is used in place of the liquid line, so that the subcooling that is judged is not that of the band.
fn by_outlet(one: &Answered, feature: Feature) -> bool {
    feature == Feature::Subcooling && one.asked.case.readings.liquid_line.is_none()
}

/// A reading is called high or low where it lies outside the band that is shown with it, and only there: an instrument's
/// uncertainty may take it back into the band, never out of it.
#[test]
fn deviations_agree_with_the_bands_beside_them() {
    no_answer(|one| {
        let mut own = one.answer.deviations.iter().filter(|d| !by_outlet(one, d.feature));
        own.find_map(against_its_band)
    });
}

#[test]
fn deviations_of_the_condenser_outlet_agree_with_the_band_beside_them() {
    no_answer(|one| {
        let mut outlet = one.answer.deviations.iter().filter(|d| by_outlet(one, d.feature));
        outlet.find_map(against_its_band)
    });
}

fn against_its_band(d: &Deviation) -> Option<String> {
    let Band {
        low_95,
        median,
        high_95,
        ..
    } = d.expected;
    let inside = (low_95..=high_95).contains(&d.measured);
    // The scatter of the instrument moves the median of a mixture slightly.
    let other_side = (d.measured - median) * d.deviation < 0.0 && d.deviation.abs() > 0.01;
    let called = inside && d.deviation.abs() > LIMIT_95 + 1e-6;
    // A reading outside the band by less than the uncertainty of its instrument may truly be inside.
    let beyond = f64::max(low_95 - d.measured, d.measured - high_95);
    let missed = beyond > 2.0 * d.standard_uncertainty + 1e-6 && d.deviation.abs() < 1.28;
    (other_side || called || missed).then(|| {
        format!(
            "{}: {:.3} beside {low_95:.3} to {high_95:.3}, median {median:.3}, {:+.3}",
            d.feature, d.measured, d.deviation
        )
    })
}

/// The figure of `derived` that is judged under this feature, where every pressure has a saturation temperature.
fn derived(answer: &Diagnosis, feature: Feature) -> Option<Estimate> {
    let derived = &answer.derived;
    let estimate = match feature {
        Feature::LowSide => derived.low_dew.map(Estimate::si),
        Feature::HighSide => derived.high_bubble.map(Estimate::si),
        Feature::Superheat => derived.superheat.map(Estimate::si),
        Feature::Subcooling => derived.subcooling.map(Estimate::si),
        Feature::DischargeSuperheat => derived.discharge_superheat.map(Estimate::si),
        Feature::Vent | Feature::ClutchCycles | Feature::RestPressure => None,
        _ => unreachable!("a new member of the vocabulary"),
    };
    estimate.filter(|_| counts(answer))
}

pub(crate) fn has_glide(one: &Answered) -> bool {
    let glide = one.asked.case.system.refrigerant.glide(AbsolutePressure::from_pa(1e6));
    glide.is_ok_and(|glide| glide > kelvins_difference(1e-9))
}

fn figures_differ(answer: &Diagnosis, d: &Deviation) -> Option<String> {
    let estimate = derived(answer, d.feature)?;
    let differs = (estimate.value - d.measured).abs() > 1e-6 * f64::max(1.0, d.measured.abs());
    differs.then(|| format!("{}: derived {:.4}, judged {:.4}", d.feature, estimate.value, d.measured))
}

/// Superheat, subcooling and the like have one value in `derived` and in the deviations.
#[test]
fn derived_figures_are_those_that_are_judged() {
    no_answer(|one| {
        one.answer.deviations.iter().find_map(|d| match d.feature {
            Feature::Vent => {
                let vent = in_kelvins(one.asked.case.readings.vent?.value);
                differ(vent, d.measured).then(|| format!("vent {vent}, judged {}", d.measured))
            }
            Feature::DischargeSuperheat if has_glide(one) => None,
            Feature::LowSide
            | Feature::HighSide
            | Feature::Superheat
            | Feature::Subcooling
            | Feature::DischargeSuperheat
            | Feature::ClutchCycles
            | Feature::RestPressure => figures_differ(&one.answer, d),
            _ => unreachable!("a new member of the vocabulary"),
        })
    });
}

#[test]
fn the_discharge_superheat_of_a_blend_is_the_one_that_is_judged() {
    no_answer(|Answered { answer, .. }| {
        let discharge = answer
            .deviations
            .iter()
            .find(|d| d.feature == Feature::DischargeSuperheat)?;
        figures_differ(answer, discharge)
    });
}

fn uncertainties_differ(answer: &Diagnosis, share: f64) -> Option<String> {
    answer.deviations.iter().find_map(|d| {
        let (derived, judged) = (derived(answer, d.feature)?.standard_uncertainty, d.standard_uncertainty);
        let differs = (derived - judged).abs() > share * derived;
        differs.then(|| format!("{}: derived {derived:.4}, judged {judged:.4}", d.feature))
    })
}

#[test]
fn derived_figures_are_about_as_uncertain_as_those_that_are_judged() {
    no_answer(|Answered { answer, .. }| uncertainties_differ(answer, 0.05));
}

#[test]
fn derived_figures_are_as_uncertain_as_those_that_are_judged() {
    no_answer(|Answered { answer, .. }| uncertainties_differ(answer, 1e-6));
}

#[test]
fn the_figure_out_of_line_was_measured() {
    no_answer(|Answered { answer, .. }| {
        let feature = answer.out_of_line?;
        let is_measured = answer.deviations.iter().any(|d| d.feature == feature);
        (!is_measured).then(|| format!("{feature}"))
    });
}

/// The finding at rest follows from the excess pressure and its uncertainty; while liquid is left, no loss of charge is found.
#[test]
fn the_finding_at_rest_is_that_of_its_excess() {
    no_answer(|Answered { answer, .. }| {
        let told = answer.rest.filter(|rest| *rest != RestFinding::NotEqualised);
        let of_excess = answer.resting.map(|resting| match resting.excess.si() {
            excess if excess.value > 2.0 * excess.standard_uncertainty => RestFinding::AirPresent,
            _ if resting.missing.is_some() => RestFinding::NearlyEmpty,
            _ => RestFinding::Consistent,
        });
        (told != of_excess).then(|| format!("{told:?}, by its excess {of_excess:?}"))
    });
}
