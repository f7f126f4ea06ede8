//! The page as text that a technician reads in half a minute: 80 columns, and 30 lines in the usual case.

use super::finding::Finding;
use super::language::step_says;
use super::lines::{Lines, capital, whole};
use super::page::{Page, PageStep, Scale, TOLD_FROM};
use super::proof_text;
use super::texts::{Named, Sentence, Short, Text};
use super::units::Units;
use super::words::Wording;
use crate::diagnosis::{Action, Case, Diagnosis, Reasons};
use crate::names::{AirSource, Caution, ClosingFinding, Compressor, Fault, QualityNote, VerdictKind};
use crate::numerics::put_in_order;
use crate::proof::Proof;
use crate::units::in_kelvins;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// From this probability of "no fault" on, slight faults need no word.
const LIKELIER_THAN_NOT: f64 = 0.5;
/// So many cautions stand above a step that has none of its own.
const GENERAL: usize = 3;
/// At most so many limits stand on a page without the details.
const LIMITS: usize = 1;
/// A page without the details tells of so many explanations, and of misleading instruments and two faults at once from this
/// probability on.
const CANDIDATES: usize = 3;
const DOUBTFUL_FROM: f64 = 0.05;

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
            let [read, limit] = [high.read_pa, high.stop_pa].map(|pa| self.wording.with_unit(Scale::PaGauge, pa));
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
            let value = format!("{:.0}", 100.0 * humidity);
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

    /// What it is; in text with the odds, which stand as bars where they are drawn.
    pub(super) fn result(&self, out: &mut Lines, odds_drawn: bool) {
        let result = &self.page.result;
        let headline = if odds_drawn {
            self.headline()
        } else {
            self.headline_with_odds()
        };
        match self.repair() {
            Some(proof) => {
                let finding = proof.finding.sentence(self.wording.language);
                out.heading(finding.trim_end_matches('.'));
                out.wrapped("  ", &self.wording.filled(Text::BeforeRepair, &[("result", &headline)]));
            }
            None => match self.severity() {
                Some(severity) if odds_drawn => out.heading(&format!("{headline}: {severity}")),
                Some(severity) => out.wrapped("", &format!("{}: {severity}", headline.to_uppercase())),
                None => out.heading(&headline),
            },
        }
        if let Some(proof) = &self.page.proof {
            let told = proof_text::closing(proof, self.wording).filter(|_| self.tested_only().is_none());
            let weakest = proof_text::weakest(proof, self.wording);
            weakest.or(told).iter().for_each(|told| out.wrapped("  ", told));
        }
        let no_fault = result.kind == VerdictKind::Healthy;
        if no_fault && result.probability < LIKELIER_THAN_NOT {
            out.wrapped("  ", self.says(Text::SlightFault));
        }
        let told_from = if self.wording.details { 0.0 } else { DOUBTFUL_FROM };
        // The reason to stop has said so.
        let is_said = self.page.stop.is_some() && result.resting.is_some() && !self.wording.details;
        if let Some(finding) = result.rest.filter(|_| !is_said) {
            out.wrapped("  ", finding.sentence(self.wording.language));
        }
        if let Some(resting) = &result.resting {
            out.wrapped("  ", &(capital(&self.wording.resting(resting)) + "."));
        }
        if let Some((way, probability)) = result.entry_error.filter(|(_, probability)| *probability >= told_from) {
            let odds = self.wording.per_cent(probability);
            let way = way.sentence(self.wording.language);
            out.wrapped(
                "  ",
                &self.wording.filled(Text::Instruments, &[("odds", &odds), ("way", way)]),
            );
        }
        let listed = self.lists_odds();
        let odds = if odds_drawn {
            self.pair().into_iter().collect()
        } else {
            self.odds(listed)
        };
        let odds: Vec<String> = odds;
        let odds = odds.join("; ");
        let is_list = matches!(
            result.kind,
            VerdictKind::CannotTell | VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence
        );
        match (odds.is_empty(), is_list && !result.both && !listed) {
            (true, _) => {}
            (false, true) => out.wrapped("  ", &(odds + ".")),
            (false, false) => out.wrapped("  ", &format!("{}: {odds}.", self.says(Text::WhatElse))),
        }
    }

    /// Before against after a repair, where both were read.
    pub(super) fn repair(&self) -> Option<&Proof> {
        self.page.proof.as_ref().and_then(|proof| proof.repair.as_deref())
    }

    /// Whether the headline is a short list that has the odds of each fault beside it.
    fn lists_odds(&self) -> bool {
        let result = &self.page.result;
        let is_short = !self.wording.details && result.kind == VerdictKind::CannotTell && !result.both;
        is_short && !result.odds.is_empty()
    }

    /// The result in a line, each fault of a short list with its odds.
    fn headline_with_odds(&self) -> String {
        if !self.lists_odds() {
            return self.headline();
        }
        let result = &self.page.result;
        let listed = result.faults.iter().map(|fault| {
            let name = fault.name(self.wording.language);
            match result.odds.iter().find(|odds| odds.fault == *fault) {
                Some(odds) => format!("{name} {}", self.wording.per_cent(odds.probability)),
                None => name.into(),
            }
        });
        let faults = self.wording.joined(listed.collect(), Text::Or);
        self.wording.filled(Text::NotSettled, &[("faults", &faults)])
    }

    /// What the tests come to, where nothing else was read.
    fn tested_only(&self) -> Option<ClosingFinding> {
        let closing = self.page.proof.as_ref()?.closing.as_ref()?;
        self.page.result.odds.is_empty().then_some(closing.finding)
    }

    /// How severe the fault that is named is.
    fn severity(&self) -> Option<String> {
        let result = &self.page.result;
        let named = result.odds.iter().find(|odds| result.faults[..] == [odds.fault])?;
        self.wording.severity(named)
    }

    /// The result in a line.
    pub(super) fn headline(&self) -> String {
        let result = &self.page.result;
        let odds = self.wording.per_cent(result.probability);
        let named = |text: Text, last: Text| {
            let faults = self.wording.faults(&result.faults, last);
            self.wording.filled(text, &[("faults", &faults)])
        };
        match result.kind {
            VerdictKind::Healthy => format!("{} ({odds})", self.says(Text::NoFaultStandsOut)),
            VerdictKind::CannotTell if result.both => format!("{} ({odds})", named(Text::TwoAtOnce, Text::And)),
            VerdictKind::CannotTell => format!("{} ({odds})", named(Text::NotSettled, Text::Or)),
            VerdictKind::NamedFault => format!("{} ({odds})", self.wording.faults(&result.faults, Text::Or)),
            VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence if result.bands_only => {
                let says = QualityNote::BandsOnly.sentence(self.wording.language);
                says.trim_end_matches('.').into()
            }
            VerdictKind::NothingFits => self.says(Text::NothingFits).into(),
            VerdictKind::NotEnoughEvidence => match self.tested_only() {
                Some(finding) => finding.sentence(self.wording.language).trim_end_matches('.').into(),
                None => self.says(Text::NotEnough).into(),
            },
        }
    }

    /// The explanations with their odds and severities; what the headline tells is not repeated.
    fn odds(&self, listed: bool) -> Vec<String> {
        let result = &self.page.result;
        let mut all = Vec::new();
        let most = if self.wording.details { usize::MAX } else { CANDIDATES };
        if result.kind == VerdictKind::NotEnoughEvidence && !self.wording.details {
            return all; // they are the priors
        }
        for odds in result.odds.iter().take(most) {
            let told = result.faults[..] == [odds.fault]
                || listed && result.faults.contains(&odds.fault)
                || result.kind == VerdictKind::Healthy && odds.fault == Fault::NoFault;
            if told {
                continue;
            }
            let name = odds.fault.name(self.wording.language);
            let chance = self.wording.per_cent(odds.probability);
            match self.wording.severity(odds).filter(|_| self.wording.details) {
                Some(severity) => all.push(format!("{name} {chance} ({severity})")),
                None => all.push(format!("{name} {chance}")),
            }
        }
        all.extend(self.pair());
        if result.none_of_these >= TOLD_FROM {
            let odds = self.wording.per_cent(result.none_of_these);
            all.push(format!("{} {odds}", self.says(Text::NoneOfThese)));
        }
        all
    }

    /// Two faults at once, where they are likely enough to be told and not the result.
    fn pair(&self) -> Option<String> {
        let told_from = if self.wording.details { 0.0 } else { DOUBTFUL_FROM };
        let result = &self.page.result;
        let two = result
            .two_faults
            .filter(|two| !result.both && two.probability >= told_from)?;
        let faults = self.wording.faults(&two.faults, Text::And);
        let odds = self.wording.per_cent(two.probability);
        Some(self.wording.filled(Text::Pair, &[("faults", &faults), ("odds", &odds)]))
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
        let speed = match again.engine_speed_hz {
            Some(speed_hz) => {
                let rpm = format!("{:.0}", 60.0 * speed_hz);
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
