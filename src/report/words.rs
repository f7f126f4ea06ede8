//! Words for numbers and findings: deviations, strengths, probabilities, in a language.

use super::finding::Finding;
use super::language::fill;
use super::lines::whole;
use super::page::{FigureKind, PageArgument, PageLimit, PageOdds, PageStep, Scale};
use super::texts::{Named, Sentence, Text, none_of, seen, severity as severity_text};
use super::units::Units;
use crate::diagnosis::{Evidence, Resting};
use crate::names::{Fault, Feature, Language, QualityNote, ResultKind, Standing, Strength};
use crate::units::difference_in_kelvins;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// Units, language and length of the text of a page.
///
/// ```
/// use coldloop::{Language, report::{Units, Wording}};
/// let spanish = Wording { language: Language::Spanish, ..Wording::new(Units::Metric) };
/// assert!(!spanish.details);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wording {
    /// The units.
    pub units: Units,
    /// The language.
    pub language: Language,
    /// Whether all figures, limits and cautions are listed in full.
    pub details: bool,
}

impl Wording {
    /// In English, without details.
    pub const fn new(units: Units) -> Self {
        Self {
            units,
            language: Language::English,
            details: false,
        }
    }

    pub(super) const fn text(self, text: Text) -> &'static str {
        text.of(self.language)
    }

    pub(super) fn filled(self, text: Text, words: &[(&str, &str)]) -> String {
        fill(self.text(text), words)
    }

    /// A number with its unit.
    pub(super) fn with_unit(self, scale: Scale, si: f64) -> String {
        self.units.with_unit(scale, si, self.language)
    }

    /// A probability in per cent; above 99 % and below 1 % as "over" and "under".
    pub(super) fn per_cent(self, probability: f64) -> String {
        match probability {
            p if p > 0.99 => whole(self.text(Text::Over99)),
            p if p < 0.01 => whole(self.text(Text::Under1)),
            p => whole(&format!("{:.0} %", 100.0 * p)),
        }
    }

    /// Faults by name, joined by commas and a last word.
    pub(super) fn faults(self, faults: &[Fault], last: Text) -> String {
        let names = faults.iter().map(|fault| fault.name(self.language).into());
        self.joined(names.collect(), last)
    }

    /// Items joined by commas and a last word.
    pub(super) fn joined(self, items: Vec<String>, last: Text) -> String {
        match items.split_last() {
            Some((end, [])) => end.clone(),
            Some((end, others)) => format!("{} {} {end}", others.join(", "), self.text(last)),
            None => String::new(),
        }
    }

    /// The severity of a fault in its own measure.
    pub(super) fn severity(self, odds: &PageOdds) -> Option<String> {
        let (low, high) = odds.severity?;
        let text = severity_text(odds.fault, self.language)?;
        let shown = |x: f64| match crate::diagnosis::measure(odds.fault).starts_with("share") {
            true => format!("{:.0}", 100.0 * x),
            false => format!("{x:.1}"),
        };
        let [low, high] = [low, high].map(shown);
        // "0 to 100 %" says nothing.
        let is_known = (low.as_str(), high.as_str()) != ("0", "100");
        is_known.then(|| fill(text, &[("low", &low), ("high", &high)]))
    }

    /// What a step finds.
    pub(super) fn finding(self, finding: Finding) -> String {
        finding_says(finding, self.language)
    }

    /// The text of an argument, without its strength.
    pub(super) fn argument(self, argument: &PageArgument) -> String {
        match argument.evidence {
            Evidence::Prior => {
                let commoner = argument.log_odds > 0.0;
                self.text(if commoner { Text::Commoner } else { Text::Rarer }).into()
            }
            Evidence::Feature(feature) => {
                let name = feature.name(self.language);
                format!("{name} {}", self.leaning(argument)).trim_end().into()
            }
            Evidence::Observation(question) => {
                let yes = argument.seen.is_some_and(|(_, yes)| yes);
                seen(question, yes, self.language).into()
            }
        }
    }

    /// The standing of a figure; within its band, the side where it is more than half a standard deviation from the median.
    fn leaning(self, argument: &PageArgument) -> &'static str {
        match (argument.standing, argument.deviation) {
            (Some(Standing::Normal), Some(z)) if z < -0.5 => self.text(Text::LowInBand),
            (Some(Standing::Normal), Some(z)) if z > 0.5 => self.text(Text::HighInBand),
            (Some(standing), _) => standing.name(self.language),
            (None, _) => "",
        }
    }

    /// A limit of the result, in a sentence.
    pub(super) fn limit(self, limit: &PageLimit) -> String {
        match limit.feature {
            Some(feature) if limit.note == QualityNote::ReadingOutOfLine => {
                let figure = super::lines::capital(feature.name(self.language));
                self.filled(Text::DoesNotFit, &[("figure", &figure)])
            }
            Some(_) | None => limit.note.sentence(self.language).into(),
        }
    }

    /// The cost of a step.
    pub(super) fn cost(self, step: &PageStep) -> String {
        let [minutes, parts] = [step.minutes, step.parts_in_minutes].map(|minutes| format!("{minutes:.0}"));
        match parts.as_str() {
            "0" => whole(&self.filled(Text::Minutes, &[("minutes", &minutes)])),
            _ => self.filled(Text::MinutesAndParts, &[("minutes", &minutes), ("parts", &parts)]),
        }
    }

    /// The arithmetic of a pressure at rest.
    pub(super) fn resting(self, resting: &Resting) -> String {
        let pressure = |pa: f64| self.with_unit(Scale::PaDifference, libm::fabs(pa));
        let (excess, missing) = (resting.excess.si(), resting.missing);
        let off = pressure(excess.value);
        if let Some((low, high)) = missing {
            let [low, high] = [low, high].map(|share| format!("{:.0}", 100.0 * share));
            let share = match low == high {
                true => low,
                false => self.filled(Text::Range, &[("low", &low), ("high", &high)]),
            };
            return self.filled(Text::RestingMissing, &[("off", &off), ("share", &share)]);
        }
        if resting.gas_share > 0.0 {
            let warmer = self.with_unit(Scale::Difference, difference_in_kelvins(resting.warmer));
            let share = format!("{:.0}", 100.0 * resting.gas_share);
            return self.filled(
                Text::RestingGas,
                &[("off", &off), ("share", &share), ("warmer", &warmer)],
            );
        }
        let below = excess.value < 0.0;
        let spread = pressure(2.0 * excess.standard_uncertainty);
        // A difference that rounds to zero is neither above nor below.
        let is_nothing = off.starts_with("0 ") || off.starts_with("0.0 ");
        let text = match (is_nothing, below) {
            (true, _) => Text::RestingAt,
            (false, true) => Text::RestingBelow,
            (false, false) => Text::RestingAbove,
        };
        self.filled(text, &[("off", &off), ("spread", &spread)])
    }
}

/// What a step finds.
pub(super) fn finding_says(finding: Finding, language: Language) -> String {
    let figure = |text: Text, feature: Feature| fill(text.of(language), &[("figure", feature.name(language))]);
    match finding {
        Finding::Seen(question, yes) => seen(question, yes, language).into(),
        Finding::Read(feature, ResultKind::Below | ResultKind::No) => figure(Text::BelowNormal, feature),
        Finding::Read(feature, ResultKind::Within) => figure(Text::WithinNormal, feature),
        Finding::Read(feature, ResultKind::Above | ResultKind::Yes) => figure(Text::AboveNormal, feature),
        Finding::NoneOf(check) => none_of(check, language).unwrap_or_default().into(),
        Finding::Fixed => Text::Fixed.of(language).into(),
        Finding::NotFixed => Text::NotFixed.of(language).into(),
    }
}

/// The name of a figure that follows from the readings.
pub(super) const fn figure_text(kind: FigureKind) -> Text {
    match kind {
        FigureKind::Evaporating => Text::Evaporating,
        FigureKind::Condensing => Text::Condensing,
        FigureKind::PseudoCritical => Text::PseudoCritical,
        FigureKind::CondensingAboveAmbient => Text::CondensingAboveAmbient,
        FigureKind::PseudoCriticalAboveAmbient => Text::PseudoCriticalAboveAmbient,
        FigureKind::Superheat => Text::Superheat,
        FigureKind::Subcooling => Text::Subcooling,
        FigureKind::PressureRatio => Text::PressureRatio,
        FigureKind::SaturationAtRest => Text::SaturationAtRest,
    }
}

/// The standing of a figure, by standard deviations from the median; the limits are the 80 % band, the 95 % band and three
/// standard deviations.
pub(super) fn standing(deviation: f64) -> Option<Standing> {
    match deviation {
        z if z.is_nan() => None,
        z if z < -3.0 => Some(Standing::FarTooLow),
        z if z < -1.96 => Some(Standing::TooLow),
        z if z < -1.28 => Some(Standing::RatherLow),
        z if z <= 1.28 => Some(Standing::Normal),
        z if z <= 1.96 => Some(Standing::RatherHigh),
        z if z <= 3.0 => Some(Standing::TooHigh),
        _ => Some(Standing::FarTooHigh),
    }
}

/// The strength of a factor in the odds; the limits are factors of 1.2, 3 and 10.
///
/// Source: Kass & Raftery 1995, table in section 3.2: positive evidence from 3, strong from 20; 10 is Jeffreys' limit of
/// strong evidence.
pub(super) fn strength(log_odds: f64) -> Strength {
    match libm::fabs(log_odds) {
        x if x < 0.18 => Strength::Hardly,
        x if x < 1.1 => Strength::Slightly,
        x if x < 2.3 => Strength::Clearly,
        _ => Strength::Strongly,
    }
}
