//! The readings of a page as text, with the derived figures and the reasons.

use super::lines::{Lines, uncapital};
use super::page::{PageArgument, PageReading, Scale};
use super::text::Writer;
use super::texts::{Named, Sentence, Text};
use super::words::{Wording, figure_text};
use crate::names::RepairFinding;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Largest number of arguments on a page without details.
const ARGUMENTS: usize = 2;

impl Writer<'_> {
    pub(super) fn readings(&self, out: &mut Lines) {
        let rows = self.page.readings.iter();
        let rows = rows.filter(|row| self.wording.details || row.measured.is_some());
        let rows: Vec<[String; 4]> = rows.map(|row| self.reading(row)).collect();
        if rows.is_empty() {
            return;
        }
        let head = [
            self.says(self.readings_text()).to_uppercase(),
            self.says(Text::Measured).to_string(),
            format!("{} ({})", self.says(Text::NormalHereToday), self.says(Text::Usual)),
            String::new(),
        ];
        let width = |column: usize| {
            let all = rows.iter().chain([&head]);
            all.map(|row| row[column].chars().count()).max().unwrap_or(0)
        };
        let [name, measured, normal] = [0, 1, 2].map(width);
        for row in [&head].into_iter().chain(&rows) {
            let [a, b, c, d] = row;
            out.line(&format!("{a:name$} {b:>measured$}  {c:<normal$}  {d}"));
        }
        if let Some(basis) = self.page.basis.filter(|_| self.wording.details) {
            let basis = &uncapital(basis.sentence(self.wording.language));
            out.wrapped("  ", &self.wording.filled(Text::Basis, &[("basis", basis)]));
        }
    }

    /// The heading of the readings; after a repair, bands and reasons are those of the readings before it.
    pub(super) fn readings_text(&self) -> Text {
        match self.repair() {
            Some(_) => Text::ReadingsBefore,
            None => Text::Readings,
        }
    }

    fn reading(&self, row: &PageReading) -> [String; 4] {
        let language = self.wording.language;
        let value = |si| self.wording.units.value(row.scale, si);
        let (low, high) = row.band_95;
        let band = self
            .wording
            .filled(Text::Range, &[("low", &value(low)), ("high", &value(high))]);
        [
            format!(
                "  {}, {}",
                row.feature.name(language),
                self.wording.units.unit(row.scale, language)
            ),
            row.measured.map_or("-".into(), value),
            format!("{band} ({})", value(row.median)),
            row.standing.map_or("", |standing| standing.name(language)).into(),
        ]
    }

    pub(super) fn figures(&self, out: &mut Lines) {
        // Without details, a running system has its figures among the readings.
        let told = self.wording.details || self.page.readings.is_empty();
        if self.page.figures.is_empty() || !told {
            return;
        }
        let Wording { units, language, .. } = self.wording;
        let figures = self.page.figures.iter().map(|figure| {
            let spread_scale = if figure.scale == Scale::Kelvin {
                Scale::Difference
            } else {
                figure.scale
            };
            let spread = 2.0 * figure.estimate.standard_uncertainty;
            // A ratio has as many digits as its spread needs.
            let (value, spread) = if figure.scale == Scale::Ratio && spread < 0.05 {
                (format!("{:.2}", figure.estimate.value), format!("{spread:.2}"))
            } else {
                let value = units.value(figure.scale, figure.estimate.value);
                (value, units.value(spread_scale, spread))
            };
            let line = format!(
                "{} {value} ± {spread} {}",
                self.says(figure_text(figure.kind)),
                units.unit(figure.scale, language)
            );
            line.trim_end().to_string()
        });
        out.gap();
        out.heading(self.says(Text::Figures));
        out.wrapped("  ", &figures.collect::<Vec<_>>().join("; "));
    }

    pub(super) fn why(&self, out: &mut Lines) {
        let Some(why) = &self.page.why else { return };
        // A fault that is repaired needs no argument.
        let is_proven = self
            .repair()
            .is_some_and(|repair| repair.finding == RepairFinding::Proven);
        if is_proven {
            return;
        }
        let [fault, rival] = [why.fault, why.rival].map(|fault| fault.name(self.wording.language));
        let head = self.wording.filled(Text::Why, &[("fault", fault), ("rival", rival)]);
        let argument = |argument: &PageArgument| {
            let text = if argument.log_odds > 0.0 {
                Text::SpeaksFor
            } else {
                Text::SpeaksAgainst
            };
            let strength = argument.strength.name(self.wording.language);
            let how = self.wording.filled(text, &[("strength", strength)]);
            format!("{} ({how})", self.wording.argument(argument))
        };
        out.gap();
        if self.wording.details {
            out.heading(&head);
            for told in &why.arguments {
                out.wrapped("  ", &argument(told));
            }
            return;
        }
        let told: Vec<String> = why.arguments.iter().take(ARGUMENTS).map(argument).collect();
        out.wrapped("", &format!("{head}: {}.", told.join("; ")));
    }
}
