//! The page as text that a technician reads in half a minute: 80 columns, and 30 lines in the usual case.

use super::finding::Finding;
use super::language::step_says;
use super::lines::{Lines, capital, whole};
use super::page::{Page, PageStep, Scale};
use super::proof_text;
use super::texts::{Named, Sentence, Short, Text};
use super::units::Units;
use super::words::Wording;
use crate::diagnosis::{Action, Case, Diagnosis, Reasons};
use crate::names::{AirSource, Caution, Compressor, QualityNote};
use crate::numerics::put_in_order;
use crate::units::in_kelvins;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// So many cautions stand above a step that has none of its own.
const GENERAL: usize = 3;
/// At most so many limits stand on a page without the details.
const LIMITS: usize = 1;

/// The page of a diagnosis as text, in English and without the details, with the next checks in the place of a plan.
///
/// ```
/// use coldloop::{diagnosis::{Settings, judge}, intake, report};
/// let file = include_str!("../../examples/readings/low-charge.toml");
/// let case = intake::case_from_toml(file)?;
/// let settings = Settings::default();
/// let judgement = judge(&case, &settings)?;
/// let units = report::Units::as_written(file);
/// let text = report::text(&case, &judgement.diagnosis(&settings)?, &judgement.reasons(&settings), units);
/// assert!(text.contains("UNDERCHARGE"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn text(case: &Case, diagnosis: &Diagnosis, reasons: &Reasons<'_>, units: Units) -> String {
    Page::of_diagnosis(case, diagnosis, reasons).text(Wording::new(units))
}

impl Page {
    /// The page as text: what it is, what to do first with its cautions above it, what then, the readings, why, what
    /// limits the result. No line is wider than 80 columns.
    ///
    /// ```
    /// use coldloop::{intake, report::{Page, Units, Wording}};
    /// let visit = intake::visit_from_toml(include_str!("../../examples/readings/overcharge.toml"))?;
    /// let text = Page::of_visit(&visit)?.text(Wording::new(Units::Metric));
    /// assert!(text.lines().all(|line| line.chars().count() <= 80));
    /// # Ok::<(), intake::Refusal>(())
    /// ```
    pub fn text(&self, wording: Wording) -> String {
        let mut lines = Lines::default();
        Writer { page: self, wording }.write(&mut lines);
        lines.into_text()
    }
}

pub(super) struct Writer<'a> {
    pub(super) page: &'a Page,
    pub(super) wording: Wording,
}

impl Writer<'_> {
    fn write(&self, out: &mut Lines) {
        self.stop(out);
        self.heading(out);
        out.gap();
        self.result(out, false);
        out.gap();
        self.steps(out);
        out.gap();
        self.readings(out);
        self.figures(out);
        self.why(out);
        if let Some(proof) = &self.page.proof {
            proof_text::write(out, proof, &self.page.conditions, self.wording);
        }
        self.to_prove(out);
        self.limits(out);
        self.cautions(out);
    }

    pub(super) fn says(&self, text: Text) -> &'static str {
        self.wording.text(text)
    }

    /// Why the compressor must stand still, before all else.
    pub(super) fn stop(&self, out: &mut Lines) {
        for warning in &self.page.warnings {
            // The reason to stop says that it must not be run.
            if *warning != Caution::DoNotRun || self.page.stop.is_none() || self.wording.details {
                let says = match self.wording.details {
                    true => warning.sentence(self.wording.language).into(),
                    false => capital(warning.short(self.wording.language)) + ".",
                };
                out.wrapped("! ", &says);
            }
        }
        let Some(stop) = &self.page.stop else { return };
        let mut says = String::from(stop.reason.sentence(self.wording.language));
        if let Some(high) = &stop.high_side {
            let [read, limit] = [high.read, high.stop].map(|side| self.wording.with_unit(Scale::PaGauge, side.pa()));
            let text = match high.of_vehicle {
                true => Text::StopCutOut,
                false => Text::StopHighSide,
            };
            says = says + " " + &self.wording.filled(text, &[("read", &read), ("limit", &limit)]);
        }
        out.wrapped("", &says);
    }

    pub(super) fn heading(&self, out: &mut Lines) {
        let Page { system, conditions, .. } = self.page;
        let language = self.wording.language;
        let mut told = whole(&self.wording.with_unit(Scale::Kelvin, in_kelvins(conditions.ambient)));
        if let Some(humidity) = conditions.relative_humidity {
            let value = format!("{:.0}", humidity.percent());
            told = told + ", " + &whole(&self.wording.filled(Text::Humidity, &[("value", &value)]));
        }
        let air_pa = conditions.surroundings.pressure().pa();
        told = told + ", " + &whole(&format!("{:.1} kPa", air_pa / 1e3));
        let words = [
            ("refrigerant", system.refrigerant.id()),
            ("expansion", system.expansion.name(language)),
            ("compressor", system.compressor.name(language)),
            ("ambient", &told),
        ];
        out.wrapped("", &self.wording.filled(Text::Heading, &words));
    }

    /// The cautions that are told first: those of the first step, or those that go with the vehicle, `all` or the gravest of them.
    pub(super) fn first_cautions(&self, all: bool) -> &[Caution] {
        match self.page.first() {
            Some(first) if !first.cautions.is_empty() => &first.cautions,
            Some(_) | None => {
                let most = if all { usize::MAX } else { GENERAL };
                &self.page.cautions[..self.page.cautions.len().min(most)]
            }
        }
    }

    /// What to do where no step is planned: charge what was tested empty.
    pub(super) fn charge_first(&self) -> Option<&'static str> {
        let must_be_charged = self.page.warnings.contains(&Caution::DoNotRun) && self.page.proof.is_some();
        (must_be_charged && self.page.first().is_none()).then(|| self.says(Text::ChargeFirst))
    }

    /// The first step with its cautions above it, and what its outcomes mean; where there is none, only cautions.
    fn steps(&self, out: &mut Lines) {
        let Some(first) = self.page.first() else {
            let says = self.charge_first();
            out.heading(self.says(says.map_or(Text::TakeCare, |_| Text::DoFirst)));
            self.care(out, self.first_cautions(self.wording.details));
            says.into_iter().for_each(|says| out.wrapped("  ", says));
            return;
        };
        out.heading(self.says(Text::DoFirst));
        self.care(out, self.first_cautions(self.wording.details));
        self.step(out, "  ", first);
        let mut fixed = String::new();
        for outcome in &first.outcomes {
            let found = self.wording.finding(outcome.finding);
            let mut line = format!("{fixed}{found} ({})", self.wording.per_cent(outcome.probability));
            if outcome.finding == Finding::Fixed {
                fixed = line + "; ";
                continue;
            }
            if outcome.is_followed() {
                let leading = outcome.leading.name(self.wording.language);
                line = format!(
                    "{line}: {leading} {}",
                    self.wording.per_cent(outcome.leading_probability)
                );
            }
            out.wrapped("  - ", &line);
            let next = outcome.next.and_then(|at| self.page.steps.get(at));
            if let Some(next) = next.filter(|_| outcome.is_followed()) {
                self.step(out, "    > ", next);
            }
        }
        self.after_first(out);
    }

    /// What it comes to until the vehicle is repaired, and what else is worth checking.
    pub(super) fn after_first(&self, out: &mut Lines) {
        // What comes first without any choice has no costs ahead.
        if let Some(expected) = self.page.expected.filter(|expected| expected.minutes > 0.0) {
            let [minutes, without] =
                [expected.minutes, expected.without_checks_minutes].map(|minutes| format!("{minutes:.0}"));
            let saved = expected.without_checks_minutes > expected.minutes + 0.5;
            let text = if saved {
                Text::PlanWithoutChecks
            } else {
                Text::PlanTotal
            };
            let words = [("minutes", minutes.as_str()), ("without", without.as_str())];
            out.wrapped("  ", &self.wording.filled(text, &words));
        }
        if let Some((check, others)) = self.page.further_checks.split_first() {
            out.wrapped("", &format!("{}:", self.says(Text::AlsoCheck)));
            self.step(out, "  ", check);
            others.iter().take(1).for_each(|check| self.step(out, "  ", check));
        }
    }

    fn step(&self, out: &mut Lines, first: &'static str, step: &PageStep) {
        let says = step_says(step.action, &self.page.system, self.wording.language);
        let says = says.trim_end_matches('.');
        out.wrapped(first, &format!("{says} ({}).", self.wording.cost(step)));
    }

    /// Cautions in a few words each, or in full.
    fn care(&self, out: &mut Lines, cautions: &[Caution]) {
        if self.wording.details {
            for caution in cautions {
                out.wrapped("  ! ", caution.sentence(self.wording.language));
            }
            return;
        }
        let told: Vec<&str> = cautions
            .iter()
            .map(|caution| caution.short(self.wording.language))
            .collect();
        if !told.is_empty() {
            out.wrapped("  ! ", &(capital(&told.join("; ")) + "."));
        }
    }

    /// What makes the proof of a repair strong; before a check only in the details.
    pub(super) fn to_prove(&self, out: &mut Lines) {
        let Some(again) = &self.page.to_prove else { return };
        let Wording { language, details, .. } = self.wording;
        let check_first = self
            .page
            .first()
            .is_some_and(|step| !matches!(step.action, Action::Repair(_)));
        if check_first && !details {
            return;
        }
        let mut told = String::new();
        if again.at_rest {
            told = told + self.says(Text::ProveRunning) + " ";
        }
        if !again.before.is_empty() {
            let readings: Vec<&str> = again.before.iter().map(|kind| kind.name(language)).collect();
            let readings = readings.join(", ");
            told = told + &self.wording.filled(Text::ProveBefore, &[("readings", &readings)]) + " ";
        }
        let speed = match again.engine_speed {
            Some(speed) => {
                let rpm = format!("{:.0}", speed.rpm());
                self.wording.filled(Text::AtSpeed, &[("rpm", &rpm)])
            }
            None if self.page.system.compressor == Compressor::Electric => self.says(Text::SameSetting).into(),
            None => self.says(Text::SameSpeed).into(),
        };
        let air = self.says(match again.air_source {
            Some(AirSource::Fresh) => Text::FreshAir,
            Some(AirSource::Recirculated) => Text::RecirculatedAir,
            None => Text::SameAir,
        });
        told = told
            + &self
                .wording
                .filled(Text::ProveAfter, &[("speed", &speed), ("air", air)]);
        if details {
            told = told + " " + self.says(Text::ProveOnFile);
        }
        out.wrapped("", &told);
    }

    pub(super) fn limits(&self, out: &mut Lines) {
        let mut limits = self.page.limits.clone();
        if limits.is_empty() {
            return;
        }
        // What can be measured again comes first.
        put_in_order(&mut limits, |a, b| {
            a.note == QualityNote::ReadingOutOfLine && b.note != QualityNote::ReadingOutOfLine
        });
        let head = self.says(Text::Limits);
        let told: Vec<String> = limits.iter().map(|limit| self.wording.limit(limit)).collect();
        if self.wording.details {
            out.gap();
            out.heading(head);
            told.iter().for_each(|limit| out.wrapped("  ", limit));
            return;
        }
        let mut line = format!(
            "{head}: {}",
            told.iter().take(LIMITS).cloned().collect::<Vec<_>>().join(" ")
        );
        if told.len() > LIMITS {
            let count = format!("{}", told.len() - LIMITS);
            line = line + " " + &self.wording.filled(Text::MoreLimits, &[("count", &count)]);
        }
        out.wrapped("", &line);
    }

    fn cautions(&self, out: &mut Lines) {
        let told_above = self.page.first().is_none_or(|step| step.cautions.is_empty());
        if self.page.cautions.is_empty() || told_above {
            return;
        }
        if self.wording.details {
            out.gap();
            out.heading(self.says(Text::OtherCautions));
            self.care(out, &self.page.cautions);
        }
    }
}
