//! The result of a page as text: the explanation, its probability, and the other explanations.

use super::lines::{Lines, capital};
use super::page::TOLD_FROM;
use super::proof_text;
use super::text::Writer;
use super::texts::{Named, Sentence, Text};
use crate::names::{ClosingFinding, Fault, QualityNote, VerdictKind};
use crate::proof::Proof;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// From this probability of "no fault" on, slight faults are not mentioned.
const LIKELIER_THAN_NOT: f64 = 0.5;
/// Largest number of explanations on a page without details.
const CANDIDATES: usize = 3;
/// Least probability of misleading instruments, and of two faults at once, on a page without details.
const DOUBTFUL_FROM: f64 = 0.05;

impl Writer<'_> {
    /// The result; with the odds, unless they are drawn as bars.
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
        let proof = self.page.proof.as_ref();
        if let Some(proof) = proof {
            let told = proof_text::closing(proof, self.wording).filter(|_| self.tested_only().is_none());
            let weakest = proof_text::weakest(proof, self.wording);
            weakest.or(told).iter().for_each(|told| out.wrapped("  ", told));
        }
        let closing = proof.and_then(|proof| proof.closing.as_ref());
        let failed = closing.is_some_and(|closing| closing.finding == ClosingFinding::Fails);
        let no_fault = result.kind == VerdictKind::Healthy;
        if no_fault && result.probability < LIKELIER_THAN_NOT {
            out.wrapped("  ", self.says(Text::SlightFault));
        }
        let told_from = if self.wording.details { 0.0 } else { DOUBTFUL_FROM };
        // The reason to stop already says so.
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
            // A failed test matters more than the other explanations.
            (false, false) if failed && !self.wording.details => {}
            (false, true) => out.wrapped("  ", &(odds + ".")),
            (false, false) => out.wrapped("  ", &format!("{}: {odds}.", self.says(Text::WhatElse))),
        }
    }

    /// The proof of the repair, where there are readings before and after it.
    pub(super) fn repair(&self) -> Option<&Proof> {
        self.page.proof.as_ref().and_then(|proof| proof.repair.as_deref())
    }

    /// Whether the headline is a short list with the odds of each fault.
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

    /// The finding of the tests, where nothing else was read.
    fn tested_only(&self) -> Option<ClosingFinding> {
        let closing = self.page.proof.as_ref()?.closing.as_ref()?;
        self.page.result.odds.is_empty().then_some(closing.finding)
    }

    /// The severity of the named fault.
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

    /// The explanations with their odds and severities, except those in the headline.
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

    /// Two faults at once, where they are likely enough and not the result.
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
}
